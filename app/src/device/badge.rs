//! The count on the app's icon.

use super::browser::{call, has, let_go, navigator};
use tussock_flow::views::remind::Has;
use wasm_bindgen::JsValue;

/// Whether this browser shows one.
pub fn here() -> Has {
    if has(&navigator(), "setAppBadge") {
        Has::Available
    } else {
        Has::NotHere
    }
}

/// Shows a count; none is no badge.
pub fn show(count: usize) {
    if here() != Has::Available {
        return;
    }
    let navigator = navigator();
    let_go(match u32::try_from(count) {
        Ok(0) => call(&navigator, "clearAppBadge", &[]),
        Ok(count) => call(&navigator, "setAppBadge", &[&JsValue::from(count)]),
        Err(_) => None,
    });
}
