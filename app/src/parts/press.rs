//! What happens when something is pressed.

use leptos::ev::MouseEvent;
use leptos::prelude::*;

/// Where a press leads: to a route, as a real link, or to an act.
#[derive(Debug, Clone, Copy)]
pub enum Press {
    /// Opens a route, for example `#/round`.
    Route(Signal<String>),
    /// Does something here.
    Act(Callback<()>),
}

impl From<&str> for Press {
    fn from(href: &str) -> Self {
        Self::Route(Signal::stored(href.to_owned()))
    }
}

impl From<String> for Press {
    fn from(href: String) -> Self {
        Self::Route(Signal::stored(href))
    }
}

impl From<Signal<String>> for Press {
    fn from(href: Signal<String>) -> Self {
        Self::Route(href)
    }
}

impl From<Callback<()>> for Press {
    fn from(act: Callback<()>) -> Self {
        Self::Act(act)
    }
}

/// Milliseconds in which a second tap on the same control is taken for a slip of a cold hand.
const SLIP_MS: f64 = 600.0;

/// Runs `act` on a click, unless one came on this control less than 600 ms ago.
pub(super) fn once(act: Callback<()>) -> impl Fn(MouseEvent) + Clone + 'static {
    let last = StoredValue::new(None::<f64>);
    move |event| {
        let now = event.time_stamp();
        if last
            .get_value()
            .is_none_or(|before| now - before >= SLIP_MS)
        {
            last.set_value(Some(now));
            act.run(());
        }
    }
}
