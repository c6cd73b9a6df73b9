//! The phone shakes.

use super::browser::{call, global, has, navigator, property};
use js_sys::Array;
use tussock_flow::views::remind::Has;
use wasm_bindgen::JsValue;

/// Milliseconds of shaking and rest.
const PATTERN: [u32; 5] = [300, 150, 300, 150, 600];

/// Whether this browser can make the phone shake. Whether there is something in it that shakes, it does not tell.
pub fn here() -> Has {
    if has(&navigator(), "vibrate") && global("ontouchstart") != JsValue::UNDEFINED {
        Has::Available
    } else {
        Has::NotHere
    }
}

/// Shakes, once the page has been tapped: before that a browser refuses it and complains.
pub fn shake() {
    let navigator = navigator();
    let tapped = property(&property(&navigator, "userActivation"), "hasBeenActive");
    if here() == Has::Available && tapped.as_bool() != Some(false) {
        let pattern: Array = PATTERN.iter().map(|ms| JsValue::from(*ms)).collect();
        let _ = call(&navigator, "vibrate", &[&pattern.into()]);
    }
}
