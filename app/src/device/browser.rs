//! What this browser has, asked by name: much of what reminds somebody is missing in one browser or another, and what is
//! missing must be said and not thrown.

use js_sys::{Array, Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The browser's own object.
pub(super) fn navigator() -> JsValue {
    web_sys::window().map_or(JsValue::UNDEFINED, |window| window.navigator().into())
}

/// A property of the page's window; undefined where there is none.
pub(super) fn global(name: &str) -> JsValue {
    web_sys::window().map_or(JsValue::UNDEFINED, |window| property(&window, name))
}

/// A property; undefined where there is none.
pub(super) fn property(of: &JsValue, name: &str) -> JsValue {
    if of.is_object() || of.is_function() {
        Reflect::get(of, &name.into()).unwrap_or(JsValue::UNDEFINED)
    } else {
        JsValue::UNDEFINED
    }
}

/// Whether something has a method.
pub(super) fn has(of: &JsValue, method: &str) -> bool {
    property(of, method).is_function()
}

/// Calls a method; `None` when it is not there or throws.
pub(super) fn call(of: &JsValue, method: &str, with: &[&JsValue]) -> Option<JsValue> {
    let method: Function = property(of, method).dyn_into().ok()?;
    let with: Array = with.iter().copied().collect();
    method.apply(of, &with).ok()
}

/// Waits for what a method promised. The error is the name of what it threw; empty when the method is not there.
pub(super) async fn promised(answer: Option<JsValue>) -> Result<JsValue, String> {
    let promise: Promise = answer
        .and_then(|answer| answer.dyn_into().ok())
        .ok_or_else(String::new)?;
    JsFuture::from(promise)
        .await
        .map_err(|error| property(&error, "name").as_string().unwrap_or_default())
}

/// Waits for what a method promised and does nothing with it.
pub(super) fn let_go(answer: Option<JsValue>) {
    wasm_bindgen_futures::spawn_local(async move {
        // Whoever asks next is told how it stands.
        let _ = promised(answer).await;
    });
}
