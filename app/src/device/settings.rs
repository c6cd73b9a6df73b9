//! Small settings in localStorage, and nothing else: theme, hand, units, that somebody has been here, and what reminds.

use crate::parts::shell::{HAND_KEY, KNOWN_KEY, THEME_KEY, dress};
use gloo_storage::{LocalStorage, Storage};
use std::cell::{Cell, RefCell};
use tussock_flow::views::remind::Reminders;

/// What reminds somebody on this device.
const REMIND_KEY: &str = "tussock-remind";
/// The deadlines that were told.
const TOLD_KEY: &str = "tussock-told";

thread_local! {
    /// Set by the panic hook: from then on nothing is written.
    static STOPPED: Cell<bool> = const { Cell::new(false) };
    /// What this page told, for a window in which nothing can be kept.
    static TOLD: RefCell<Vec<String>> = const { RefCell::new(Vec::new()) };
}

/// A panic has come: nothing more is written.
pub fn stop() {
    STOPPED.set(true);
}

/// Whether a panic has stopped all writing.
pub fn stopped() -> bool {
    STOPPED.get()
}

/// Somebody has saved something here: the next start shows no first-run screen.
pub fn known() {
    raw_set(KNOWN_KEY, "1");
}

/// The first-run screen again.
pub fn forget() {
    LocalStorage::delete(KNOWN_KEY);
}

/// The theme: `system`, `paper` or `slate`.
pub fn theme() -> String {
    raw(THEME_KEY).unwrap_or_else(|| "system".to_owned())
}

/// Sets the theme and dresses the page.
pub fn set_theme(theme: &str) {
    raw_set(THEME_KEY, theme);
    dress();
}

/// The hand the action lies under: `right` or `left`.
pub fn hand() -> String {
    raw(HAND_KEY).unwrap_or_else(|| "right".to_owned())
}

/// Sets the hand and dresses the page.
pub fn set_hand(hand: &str) {
    raw_set(HAND_KEY, hand);
    dress();
}

/// What reminds somebody here; nothing until it is switched on.
pub fn reminders() -> Reminders {
    LocalStorage::get(REMIND_KEY).unwrap_or_default()
}

/// Sets it.
pub fn set_reminders(on: Reminders) {
    // A window without storage keeps no settings.
    let _ = LocalStorage::set(REMIND_KEY, on);
}

/// The deadlines that were told here, the newest last.
pub fn told() -> Vec<String> {
    let mut told: Vec<String> = LocalStorage::get(TOLD_KEY).unwrap_or_default();
    TOLD.with_borrow(|here| {
        for key in here {
            if !told.contains(key) {
                told.push(key.clone());
            }
        }
    });
    told
}

/// Keeps them. The list is bounded by whoever makes it.
pub fn set_told(told: &[String]) {
    TOLD.set(told.to_vec());
    // Where nothing can be kept, a reload tells again.
    let _ = LocalStorage::set(TOLD_KEY, told);
}

/// A value as plain text: the shell reads these before wasm, so they are no JSON.
fn raw(key: &str) -> Option<String> {
    LocalStorage::raw().get_item(key).ok().flatten()
}

fn raw_set(key: &str, value: &str) {
    // A window without storage keeps no settings; the records do not depend on them.
    let _ = LocalStorage::raw().set_item(key, value);
}
