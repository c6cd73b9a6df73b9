//! The camera's live view: asked for by the person's own tap, let go when it is not looked at.

use super::browser::{call, has, let_go, navigator, promised, property};
use js_sys::{Object, Reflect};
use tussock_flow::views::photo::Trouble;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{HtmlVideoElement, MediaStream, MediaStreamTrack};

fn devices() -> JsValue {
    property(&navigator(), "mediaDevices")
}

/// Whether this browser gives a page a camera at all.
pub fn here() -> bool {
    has(&devices(), "getUserMedia")
}

/// A camera that is on for as long as this is held.
pub struct Live(MediaStream);

/// Turns the camera on the back on. The browser asks the person; call it on a tap.
///
/// # Errors
/// There is none, it was refused, or it does not start.
pub async fn open() -> Result<Live, Trouble> {
    if !here() {
        return Err(Trouble::NoCamera);
    }
    let wanted = wanted().map_err(|_| Trouble::CameraFailed)?;
    let stream = promised(call(&devices(), "getUserMedia", &[&wanted]))
        .await
        .map_err(|name| match name.as_str() {
            "NotAllowedError" | "SecurityError" => Trouble::CameraRefused,
            "NotFoundError" | "OverconstrainedError" => Trouble::NoCamera,
            _ => Trouble::CameraFailed,
        })?;
    stream
        .dyn_into()
        .map(Live)
        .map_err(|_| Trouble::CameraFailed)
}

/// No sound, the camera that looks away from the person, and about as many pixels as are kept.
fn wanted() -> Result<JsValue, JsValue> {
    let ideal = |value: JsValue| -> Result<JsValue, JsValue> {
        let object = Object::new();
        Reflect::set(&object, &"ideal".into(), &value)?;
        Ok(object.into())
    };
    let video = Object::new();
    Reflect::set(&video, &"facingMode".into(), &ideal("environment".into())?)?;
    Reflect::set(&video, &"width".into(), &ideal(1280.into())?)?;
    let wanted = Object::new();
    Reflect::set(&wanted, &"audio".into(), &JsValue::FALSE)?;
    Reflect::set(&wanted, &"video".into(), &video)?;
    Ok(wanted.into())
}

impl Live {
    /// Shows it.
    pub fn show_in(&self, video: &HtmlVideoElement) {
        video.set_src_object(Some(&self.0));
        let_go(call(video, "play", &[]));
    }
}

impl Drop for Live {
    fn drop(&mut self) {
        for track in self.0.get_tracks().iter() {
            if let Ok(track) = track.dyn_into::<MediaStreamTrack>() {
                track.stop();
            }
        }
    }
}
