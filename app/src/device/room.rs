//! The room the browser gives this app on the disk.

use super::browser::{call, navigator, promised, property};
use tussock_flow::views::photo::Space;
use wasm_bindgen_futures::JsFuture;

/// Asks the browser not to clear this app's databases when the disk gets full. Without an answer, or with a no, the
/// records stay where they are, as lasting as the browser lets them be.
pub async fn ask_to_last() {
    let Some(window) = web_sys::window() else {
        return;
    };
    if let Ok(answer) = window.navigator().storage().persist() {
        // What the browser answers changes nothing here.
        let _ = JsFuture::from(answer).await;
    }
}

/// How much room there is, by what the browser says; `None` when it does not say.
pub async fn space() -> Option<Space> {
    let storage = property(&navigator(), "storage");
    let said = promised(call(&storage, "estimate", &[])).await.ok()?;
    Some(Space {
        used: property(&said, "usage").as_f64()?,
        given: property(&said, "quota").as_f64()?,
    })
}
