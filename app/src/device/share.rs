//! Hands a file to another app of this device, or saves it among the downloads.

use super::browser::{call, has, navigator, promised};
use js_sys::{Array, Object, Reflect};
use leptos::prelude::set_timeout;
use std::time::Duration;
use tussock_flow::views::remind::{Has, Sent};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, File, FilePropertyBag, HtmlElement, Url};

/// How long the address of a saved file stands: a browser reads it after the tap.
const STANDS: Duration = Duration::from_secs(20);

/// A file of text.
#[derive(Clone, Debug)]
pub struct TextFile {
    /// Its name.
    pub name: String,
    /// Its type, such as `text/calendar`.
    pub kind: &'static str,
    /// What is in it.
    pub text: String,
}

/// Whether this browser hands files of this type to other apps; where it does not, they are saved.
pub fn here(kind: &'static str) -> Has {
    let file = TextFile {
        name: "tussock.ics".to_owned(),
        kind,
        text: String::new(),
    };
    if shareable(&file).is_some() {
        Has::Available
    } else {
        Has::NotHere
    }
}

/// The argument for the browser, when it says that it can share this file.
fn shareable(file: &TextFile) -> Option<JsValue> {
    let navigator = navigator();
    if !has(&navigator, "canShare") || !has(&navigator, "share") {
        return None;
    }
    let kind = FilePropertyBag::new();
    kind.set_type(file.kind);
    let parts = Array::of1(&file.text.as_str().into());
    let made = File::new_with_str_sequence_and_options(&parts, &file.name, &kind).ok()?;
    let what = Object::new();
    Reflect::set(&what, &"files".into(), &Array::of1(&made)).ok()?;
    let what = JsValue::from(what);
    let can = call(&navigator, "canShare", &[&what])?;
    (can.as_bool() == Some(true)).then_some(what)
}

/// Shares a file, or saves it where sharing is not here. Call it on a tap.
pub async fn send(file: TextFile) -> Sent {
    let Some(what) = shareable(&file) else {
        return save(&file).map_or(Sent::Failed, |()| Sent::Saved);
    };
    match promised(call(&navigator(), "share", &[&what])).await {
        Ok(_) => Sent::Shared,
        Err(name) if name == "AbortError" => Sent::Left,
        Err(_) => Sent::Failed,
    }
}

/// Saves a file among the downloads. The address it is saved from is given back afterwards.
fn save(file: &TextFile) -> Option<()> {
    // An app on the Home Screen of an iPhone would show the file over itself, with no way back.
    if super::browser::property(&navigator(), "standalone").as_bool() == Some(true) {
        return None;
    }
    let kind = BlobPropertyBag::new();
    kind.set_type(file.kind);
    let parts = Array::of1(&file.text.as_str().into());
    let blob = Blob::new_with_str_sequence_and_options(&parts, &kind).ok()?;
    let address = Url::create_object_url_with_blob(&blob).ok()?;
    let link: HtmlElement = web_sys::window()?
        .document()?
        .create_element("a")
        .ok()?
        .dyn_into()
        .ok()?;
    link.set_attribute("href", &address).ok()?;
    link.set_attribute("download", &file.name).ok()?;
    link.click();
    set_timeout(
        move || {
            // An address that is gone already needs no giving back.
            let _ = Url::revoke_object_url(&address);
        },
        STANDS,
    );
    Some(())
}
