//! What has come in sight: pictures are read from the disk then and not before.

use js_sys::Array;
use std::cell::Cell;
use wasm_bindgen::prelude::*;
use web_sys::{Element, IntersectionObserver, IntersectionObserverEntry, IntersectionObserverInit};

/// How far below or above the window something counts as in sight: it is there when it is scrolled to.
const NEAR: &str = "600px 0px";

/// Watches for as long as it is held.
pub struct Watch {
    observer: IntersectionObserver,
    /// The browser calls it until the watch ends.
    _seen: Closure<dyn Fn(Array)>,
}

/// Has `tell` called once, when the element is in sight or near it. `None` in a browser that cannot say.
pub fn when_seen(element: &Element, tell: impl FnOnce() + 'static) -> Option<Watch> {
    let tell = Cell::new(Some(tell));
    let seen = Closure::<dyn Fn(Array)>::new(move |entries: Array| {
        let any = entries.iter().any(|entry| {
            entry
                .dyn_into::<IntersectionObserverEntry>()
                .is_ok_and(|entry| entry.is_intersecting())
        });
        if any && let Some(tell) = tell.take() {
            tell();
        }
    });
    let near = IntersectionObserverInit::new();
    near.set_root_margin(NEAR);
    let observer =
        IntersectionObserver::new_with_options(seen.as_ref().unchecked_ref(), &near).ok()?;
    observer.observe(element);
    Some(Watch {
        observer,
        _seen: seen,
    })
}

impl Drop for Watch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}
