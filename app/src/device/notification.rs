//! Notifications of this device: asked for by their own button, shown through the service worker.

use super::browser::{call, global, has, let_go, navigator, promised, property};
use js_sys::{Object, Reflect};
use tussock_flow::routes::Route;
use tussock_flow::views::remind::Has;
use wasm_bindgen::JsValue;

fn permission() -> Option<String> {
    property(&global("Notification"), "permission").as_string()
}

/// Whether this browser has them, and whether they were refused.
pub fn here() -> Has {
    let worker = property(&navigator(), "serviceWorker");
    match permission() {
        Some(permission) if has(&worker, "getRegistration") => {
            if permission == "denied" {
                Has::Denied
            } else {
                Has::Available
            }
        }
        _ => Has::NotHere,
    }
}

/// Whether the person has let this page show them.
pub fn allowed() -> bool {
    permission().as_deref() == Some("granted")
}

/// Asks the person; only ever on a tap of the button that needs it. Whether they said yes.
pub async fn ask() -> bool {
    if !allowed() && here() == Has::Available {
        // A question that is not answered is a no.
        let _ = promised(call(&global("Notification"), "requestPermission", &[])).await;
    }
    allowed()
}

/// Shows one. Of two under one key the later takes the place of the earlier. A tap on it opens the address.
pub fn show(title: &str, body: &str, key: &str, opens: &Route) {
    if !allowed() {
        return;
    }
    let options = Object::new();
    for (name, value) in [
        ("body", body),
        ("tag", &format!("tussock-{key}")),
        ("data", &opens.to_string()),
    ] {
        // Setting a property of a new object does not fail.
        let _ = Reflect::set(&options, &name.into(), &value.into());
    }
    let _ = Reflect::set(&options, &"requireInteraction".into(), &JsValue::TRUE);
    let title = JsValue::from_str(title);
    wasm_bindgen_futures::spawn_local(async move {
        let worker = property(&navigator(), "serviceWorker");
        if let Ok(registration) = promised(call(&worker, "getRegistration", &[])).await {
            let_go(call(
                &registration,
                "showNotification",
                &[&title, &options.into()],
            ));
        }
    });
}
