//! The screen stays on.

use super::browser::{call, has, let_go, navigator, promised, property};
use std::cell::{Cell, RefCell};
use tussock_flow::views::remind::Has;
use wasm_bindgen::JsValue;

thread_local! {
    /// What holds the screen; the browser lets go of it when the page goes out of sight.
    static HELD: RefCell<Option<JsValue>> = const { RefCell::new(None) };
    /// It is wanted.
    static WANTED: Cell<bool> = const { Cell::new(false) };
    /// It was asked for and not answered yet.
    static ASKED: Cell<bool> = const { Cell::new(false) };
    /// The last answer was a no.
    static REFUSED: Cell<bool> = const { Cell::new(false) };
}

fn lock() -> JsValue {
    property(&navigator(), "wakeLock")
}

/// Whether this browser can keep the screen on, and did when it was last asked.
pub fn here() -> Has {
    if !has(&lock(), "request") {
        Has::NotHere
    } else if REFUSED.get() {
        Has::Denied
    } else {
        Has::Available
    }
}

/// Keeps it on, or lets it go. Asked again and again it does nothing that is done already; a page that came back in sight
/// takes it anew.
pub fn keep(on: bool) {
    WANTED.set(on);
    if !on {
        if let Some(held) = HELD.take() {
            let_go(call(&held, "release", &[]));
        }
        return;
    }
    let held = HELD.with_borrow(|held| {
        held.as_ref()
            .is_some_and(|held| property(held, "released").as_bool() == Some(false))
    });
    let visible = web_sys::window()
        .and_then(|window| window.document())
        .is_some_and(|document| !document.hidden());
    if held || ASKED.get() || REFUSED.get() || !visible {
        return;
    }
    ask();
}

/// Asks anew after a no: on a tap.
pub fn try_again() {
    REFUSED.set(false);
}

fn ask() {
    let answer = call(&lock(), "request", &[&"screen".into()]);
    if answer.is_none() {
        return;
    }
    ASKED.set(true);
    wasm_bindgen_futures::spawn_local(async move {
        let answer = promised(answer).await;
        ASKED.set(false);
        match answer {
            Ok(held) if WANTED.get() => {
                HELD.set(Some(held));
            }
            // Switched off meanwhile.
            Ok(held) => let_go(call(&held, "release", &[])),
            // Out of sight it is never given; that is no refusal.
            Err(_) => REFUSED.set(
                web_sys::window()
                    .and_then(|window| window.document())
                    .is_some_and(|document| !document.hidden()),
            ),
        }
    });
}
