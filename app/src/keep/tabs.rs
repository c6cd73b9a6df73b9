//! Telling the other tabs which subjects were touched.

use super::Told;
use js_sys::Array;
use wasm_bindgen::prelude::*;
use web_sys::{BroadcastChannel, MessageEvent};

/// The channel of one database.
pub(super) struct Tabs(BroadcastChannel);

impl Tabs {
    /// Opens the channel; without one the app works in one tab.
    pub(super) fn open(name: &str, told: Told) -> Option<Self> {
        let channel = BroadcastChannel::new(&format!("{name}-touched")).ok()?;
        let hear = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            let subjects: Vec<String> = Array::from(&event.data())
                .iter()
                .filter_map(|subject| subject.as_string())
                .collect();
            for hear in told.borrow().iter() {
                hear(&subjects);
            }
        });
        channel.set_onmessage(Some(hear.into_js_value().unchecked_ref()));
        Some(Self(channel))
    }

    /// Tells the other tabs. A tab that does not hear it reads the disk at its next look.
    pub(super) fn tell(&self, subjects: &[String]) {
        let list: Array = subjects
            .iter()
            .map(|subject| JsValue::from_str(subject))
            .collect();
        let _ = self.0.post_message(&list);
    }
}
