//! Transactions: begun with a durability, and broken off when the browser puts the page away for the way back.
//!
//! Such a page runs no more, so a transaction that it left open is never ended by it: WebKit then lets no other page to
//! the same stores, for as long as the page is kept. What is under way is therefore broken off and the connection let
//! go; nothing that was shown as saved is touched, and the next question opens the connection again.

use js_sys::Array;
use std::cell::RefCell;
use std::ops::Deref;
use wasm_bindgen::prelude::*;
use web_sys::{IdbDatabase, IdbTransaction};

#[wasm_bindgen]
extern "C" {
    /// The one call web-sys lacks: a transaction with a durability.
    #[wasm_bindgen(extends = IdbDatabase)]
    type Transact;

    #[wasm_bindgen(method, catch, js_name = transaction)]
    fn transact(
        this: &Transact,
        names: &Array,
        mode: &str,
        options: &JsValue,
    ) -> Result<IdbTransaction, JsValue>;

    /// A transaction that is told to end; web-sys calls it deprecated, which no standard does.
    #[wasm_bindgen(extends = IdbTransaction)]
    type Ending;

    #[wasm_bindgen(method, catch)]
    fn commit(this: &Ending) -> Result<(), JsValue>;
}

thread_local! {
    /// The transactions that wait for their end.
    static UNDER_WAY: RefCell<Vec<IdbTransaction>> = const { RefCell::new(Vec::new()) };
}

/// A transaction that is broken off when the page is left before it ends.
pub(super) struct Held(IdbTransaction);

impl Held {
    /// Begins a transaction and holds it until its caller lets go of it.
    pub(super) fn begin(
        database: &IdbDatabase,
        names: &Array,
        mode: &str,
        options: &JsValue,
    ) -> Result<Self, JsValue> {
        let database: &Transact = database.unchecked_ref();
        let transaction = database.transact(names, mode, options)?;
        UNDER_WAY.with_borrow_mut(|held| held.push(transaction.clone()));
        Ok(Self(transaction))
    }

    /// Ends it once what was asked is done, without waiting for this page: nothing more is asked of it.
    pub(super) fn end_now(&self) -> Result<(), JsValue> {
        self.0.unchecked_ref::<Ending>().commit()
    }
}

impl Deref for Held {
    type Target = IdbTransaction;

    fn deref(&self) -> &IdbTransaction {
        &self.0
    }
}

impl Drop for Held {
    fn drop(&mut self) {
        UNDER_WAY.with_borrow_mut(|held| held.retain(|other| *other != self.0));
    }
}

/// Has `let_go` called when the page is left and kept for the way back, after what is under way was broken off.
pub(super) fn on_leaving(let_go: impl Fn() + 'static) {
    let left = Closure::<dyn Fn(web_sys::PageTransitionEvent)>::new(
        move |event: web_sys::PageTransitionEvent| {
            if event.persisted() {
                UNDER_WAY.with_borrow(|held| {
                    for transaction in held {
                        // One that is ended or committed cannot be broken off, and need not be.
                        let _ = transaction.abort();
                    }
                });
                let_go();
            }
        },
    );
    if let Some(window) = web_sys::window() {
        let _ = window
            .add_event_listener_with_callback("pagehide", left.into_js_value().unchecked_ref());
    }
}
