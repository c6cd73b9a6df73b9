//! Waiting for IndexedDB: a request, an open request, a transaction.

use super::KeepError;
use js_sys::Promise;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{IdbOpenDbRequest, IdbRequest, IdbTransaction};

/// A handler that rejects with the request's error.
pub(super) fn failing(request: &IdbRequest, reject: js_sys::Function) -> js_sys::Function {
    let request = request.clone();
    Closure::once_into_js(move || {
        let error = request
            .error()
            .ok()
            .flatten()
            .map_or(JsValue::UNDEFINED, JsValue::from);
        let _ = reject.call1(&JsValue::NULL, &error);
    })
    .unchecked_into()
}

/// Waits for one request.
pub(super) async fn answered(request: &IdbRequest) -> Result<JsValue, KeepError> {
    let settled = Promise::new(&mut |resolve, reject| {
        let answer = request.clone();
        let success = Closure::once_into_js(move || {
            let _ = resolve.call1(
                &JsValue::NULL,
                &answer.result().unwrap_or(JsValue::UNDEFINED),
            );
        });
        request.set_onsuccess(Some(success.unchecked_ref()));
        request.set_onerror(Some(&failing(request, reject)));
    });
    JsFuture::from(settled).await.map_err(KeepError::of)
}

/// Waits for an open request; being blocked by another tab is an answer, not a wait without end.
pub(super) async fn opened(request: &IdbOpenDbRequest) -> Result<JsValue, KeepError> {
    let settled = Promise::new(&mut |resolve, reject| {
        let answer = request.clone();
        let success = Closure::once_into_js(move || {
            let _ = resolve.call1(
                &JsValue::NULL,
                &answer.result().unwrap_or(JsValue::UNDEFINED),
            );
        });
        request.set_onsuccess(Some(success.unchecked_ref()));
        let blocked_reject = reject.clone();
        let blocked = Closure::once_into_js(move || {
            let _ = blocked_reject.call1(&JsValue::NULL, &JsValue::from_str(super::BLOCKED));
        });
        request.set_onblocked(Some(blocked.unchecked_ref()));
        request.set_onerror(Some(&failing(request, reject)));
    });
    JsFuture::from(settled).await.map_err(KeepError::of)
}

/// Settles on `complete`, or fails on `abort` and `error`.
pub(super) fn completed(transaction: &IdbTransaction) -> Promise {
    Promise::new(&mut |resolve, reject| {
        let complete = Closure::once_into_js(move || {
            let _ = resolve.call0(&JsValue::NULL);
        });
        transaction.set_oncomplete(Some(complete.unchecked_ref()));
        let failed = transaction.clone();
        let abort = Closure::<dyn Fn()>::new(move || {
            let error = failed
                .error()
                .map_or_else(|| JsValue::from_str("AbortError"), JsValue::from);
            let _ = reject.call1(&JsValue::NULL, &error);
        })
        .into_js_value();
        transaction.set_onabort(Some(abort.unchecked_ref()));
        transaction.set_onerror(Some(abort.unchecked_ref()));
    })
}
