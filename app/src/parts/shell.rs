//! The way between the app and the painted shell of `public/index.html`, whose comment has the whole contract.

use wasm_bindgen::JsCast;
use web_sys::{CustomEvent, CustomEventInit, Element, EventTarget, HtmlElement};

/// The id of the element the app mounts into.
pub const MOUNT: &str = "app";
/// The localStorage key that says, with the value `1`, that somebody has been here: the next start then shows the quiet
/// frame and no flash of the first-run screen.
pub const KNOWN_KEY: &str = "tussock-known";
/// The localStorage key of the theme: `system`, `paper` or `slate`. Call [`dress`] after a change.
pub const THEME_KEY: &str = "tussock-theme";
/// The localStorage key of the hand: `right` or `left`. Call [`dress`] after a change.
pub const HAND_KEY: &str = "tussock-hand";
/// The event that stops the page; its detail is a text.
const PANIC: &str = "tussock-panic";
/// The event by which the person's yes to a newer build reaches `start.js`.
const APPLY_UPDATE: &str = "tussock-apply-update";
/// The event after which theme and hand are read again.
const THEME: &str = "tussock-theme";

/// The event `start.js` sends when a newer build waits; listen for it and read [`waiting_build`].
pub const UPDATE: &str = "tussock-update";

/// Shows the app in place of the shell. After a panic the recovery panel stays.
pub fn show_app() {
    show("gone");
}

/// Leaves the first-run screen of the shell on the screen: the disk is empty and the route is `#/`.
pub fn show_first_run() {
    show("first");
}

/// The build that is downloaded and waits for the person's yes or the next cold start.
pub fn waiting_build() -> Option<String> {
    root()?.get_attribute("data-update")
}

/// The person has taken the offer: the waiting build takes over and this tab reloads.
pub fn apply_update() {
    tell(APPLY_UPDATE, None);
}

/// Another screen stands here: it is read from its top, and its sentence is where a screen reader goes on.
pub fn arrive() {
    let Some(window) = web_sys::window() else {
        return;
    };
    window.scroll_to_with_x_and_y(0.0, 0.0);
    let sentence = window
        .document()
        .and_then(|document| document.query_selector("#app h1").ok().flatten())
        .and_then(|element| element.dyn_into::<HtmlElement>().ok());
    if let Some(sentence) = sentence {
        // A sentence that cannot take the focus is still read when it changes.
        let _ = sentence.focus();
    }
}

/// Theme or hand were changed in localStorage: dress the page anew.
pub fn dress() {
    tell(THEME, None);
}

/// Stops the page and shows the recovery panel, which needs no wasm. For the panic hook.
pub fn stop(why: &str) {
    tell(PANIC, Some(why));
}

fn root() -> Option<Element> {
    web_sys::window()?.document()?.document_element()
}

fn show(what: &str) {
    let Some(root) = root() else { return };
    if root.get_attribute("data-shell").as_deref() == Some("stopped") {
        return;
    }
    // Setting an attribute fails only on a name that is none.
    let _ = root.set_attribute("data-app", "ready");
    let _ = root.set_attribute("data-shell", what);
}

fn tell(name: &str, detail: Option<&str>) {
    let Some(window) = web_sys::window() else {
        return;
    };
    let init = CustomEventInit::new();
    if let Some(detail) = detail {
        init.set_detail(&detail.into());
    }
    if let Ok(event) = CustomEvent::new_with_event_init_dict(name, &init) {
        let target: &EventTarget = window.as_ref();
        // The only failure is an event already under way, and this one is new.
        let _ = target.dispatch_event(&event);
    }
}
