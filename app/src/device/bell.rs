//! Rings what has come due: once, and in one tab.

use super::browser::{call, has, let_go, navigator, property};
use super::{notification, settings, sound, vibration};
use tussock_flow::views::remind::{Fresh, Reminders, Ring, fresh};
use wasm_bindgen::prelude::*;

/// The lock that one tab at a time holds while it looks what was told and tells the rest.
const LOCK: &str = "tussock-bell";

/// What a notification says of a ring: its head and the line under it.
pub type Said = fn(&Ring) -> (String, String);

/// Rings what is due and was not told yet.
pub fn ring(due: Vec<Ring>, on: Reminders, said: Said) {
    // What nobody could hear or see is not told: after a reload a page sounds from the first tap on, and tells it then.
    let heard = on.sound && sound::ready();
    let shown = on.notification && notification::allowed();
    if !heard && !shown {
        return;
    }
    // Looked at first without the lock, so that a beat at which nothing is new costs nothing.
    if fresh(&due, &settings::told()).rings.is_empty() {
        return;
    }
    let locks = property(&navigator(), "locks");
    if !has(&locks, "request") {
        tell(&due, on, said);
        return;
    }
    let told = Closure::once_into_js(move |_lock: JsValue| tell(&due, on, said));
    let_go(call(&locks, "request", &[&LOCK.into(), &told]));
}

fn tell(due: &[Ring], on: Reminders, said: Said) {
    // Another tab may have told it while this one waited.
    let Fresh { rings, told } = fresh(due, &settings::told());
    if rings.is_empty() {
        return;
    }
    settings::set_told(&told);
    if on.sound {
        sound::play();
        vibration::shake();
    }
    if on.notification {
        for ring in &rings {
            let (title, body) = said(ring);
            notification::show(&title, &body, &ring.key, &ring.opens());
        }
    }
}
