//! Waiting for IndexedDB: a request, an open request, a transaction.

use super::KeepError;
use js_sys::Promise;
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{DomException, Event, IdbDatabase, IdbOpenDbRequest, IdbRequest, IdbTransaction};

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
        let late = Rc::new(Cell::new(false));
        let told = late.clone();
        let success = Closure::once_into_js(move || {
            let opened = answer.result().unwrap_or(JsValue::UNDEFINED);
            match opened.dyn_ref::<IdbDatabase>() {
                // Whoever asked was told no: a connection that nobody holds would block the next one.
                Some(database) if told.get() => database.close(),
                _ => {
                    let _ = resolve.call1(&JsValue::NULL, &opened);
                }
            }
        });
        request.set_onsuccess(Some(success.unchecked_ref()));
        let blocked_reject = reject.clone();
        let blocked = Closure::once_into_js(move || {
            late.set(true);
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
        // A request that fails tells it first, and then names why: a full disk must not read as an abort.
        let abort = Closure::<dyn Fn(Event)>::new(move |event: Event| {
            let error = failed
                .error()
                .or_else(|| error_of(&event))
                .map_or_else(|| JsValue::from_str("AbortError"), JsValue::from);
            let _ = reject.call1(&JsValue::NULL, &error);
        })
        .into_js_value();
        transaction.set_onabort(Some(abort.unchecked_ref()));
        transaction.set_onerror(Some(abort.unchecked_ref()));
    })
}

/// Why the request failed that an event comes from.
fn error_of(event: &Event) -> Option<DomException> {
    let request: IdbRequest = event.target()?.dyn_into().ok()?;
    request.error().ok().flatten()
}
