//! The app in the browser: what is drawn, kept and asked of the device.
//!
//! No arithmetic of the trade stands here; that is `tussock_core`. What a screen shows and what an act writes is decided
//! in `tussock_flow`, which is tested without a browser.
#![allow(
    unreachable_pub,
    reason = "a component must be as visible as the struct of its props, which the macro makes public"
)]
#![allow(
    clippy::too_many_lines,
    clippy::needless_pass_by_value,
    clippy::large_types_passed_by_value,
    reason = "a component is one view in its order, and the macro hands its props over by value"
)]

pub mod device;
pub mod form;
pub mod keep;
pub mod parts;
pub mod places;
pub mod world;

use leptos::prelude::*;
use places::Opening;
use wasm_bindgen::prelude::*;

/// Starts the app once the page has loaded the wasm: opens the disk, then draws.
#[wasm_bindgen(start)]
pub fn start() {
    std::panic::set_hook(Box::new(|panic| {
        device::settings::stop();
        parts::shell::stop(&panic.to_string());
    }));
    let Some(mount) = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.get_element_by_id(parts::shell::MOUNT))
        .and_then(|element| element.dyn_into::<web_sys::HtmlElement>().ok())
    else {
        return;
    };
    leptos::mount::mount_to(mount, || view! { <Opening /> }).forget();
}
