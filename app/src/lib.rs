//! The app in the browser: what is drawn, kept and asked of the device.
//!
//! No arithmetic of the trade stands here; that is `tussock_core`.

pub mod device;
pub mod keep;

pub mod parts;

use leptos::prelude::*;
use wasm_bindgen::prelude::wasm_bindgen;

/// Starts the app once the page has loaded the wasm.
#[wasm_bindgen(start)]
pub fn start() {
    leptos::mount::mount_to_body(|| view! { <p>"Tussock"</p> });
}
