//! The room the browser gives this app on the disk.

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
