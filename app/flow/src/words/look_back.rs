//! The look-back on an episode.

use crate::views::look_back::LookedBack;
use tussock_core::progress::{Changed, NotLogged};

/// What the screen of the look-back says.
pub trait LookBackWords {
    /// What the screen is, and the link to it.
    fn look_back(&self) -> &'static str;
    /// The sentence of the screen.
    fn looked_back(&self, back: &LookedBack) -> String;
    /// From which day to which.
    fn looked_back_over(&self, back: &LookedBack) -> String;
    /// No episode is written down.
    fn no_episode(&self) -> &'static str;
    /// What came before is not the cause.
    fn no_cause(&self) -> &'static str;
    /// One thing that changed.
    fn changed(&self, changed: &Changed) -> String;
    /// Nothing that was written down changed.
    fn nothing_changed(&self) -> &'static str;
    /// A head: what nobody logged.
    fn not_logged_head(&self) -> &'static str;
    /// One of them.
    fn not_logged(&self, what: NotLogged) -> String;
}
