//! Where this device is: asked for by the person's own tap, on the one screen that needs it. Nothing but the answer is kept,
//! and it stays on this device.

use super::browser::{has, navigator, property};
use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// How long the device may look for itself, in milliseconds. Without signal the satellites alone take a while.
const LOOKS_FOR: f64 = 45_000.0;

/// Why it does not say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// This browser does not know where it is.
    NotHere,
    /// The person said no, or the browser did.
    Refused,
    /// It looked, and did not find itself.
    NotFound,
}

/// Latitude and longitude, in degrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Found {
    /// North of the equator.
    pub latitude: f64,
    /// East of Greenwich.
    pub longitude: f64,
}

/// Where it is. The browser asks the person; call it on a tap.
///
/// # Errors
/// It has no way to know, was refused, or found nothing.
pub async fn find() -> Result<Found, Trouble> {
    let geolocation = property(&navigator(), "geolocation");
    if !has(&geolocation, "getCurrentPosition") {
        return Err(Trouble::NotHere);
    }
    let asked = Promise::new(&mut |found: Function, failed: Function| {
        ask(&geolocation, found, failed);
    });
    match JsFuture::from(asked).await {
        Ok(position) => {
            let coords = property(&position, "coords");
            let figure = |name: &str| property(&coords, name).as_f64();
            figure("latitude")
                .zip(figure("longitude"))
                .map(|(latitude, longitude)| Found {
                    latitude,
                    longitude,
                })
                .ok_or(Trouble::NotFound)
        }
        // 1 stands for the permission, whoever refused it.
        Err(error) if property(&error, "code").as_f64() == Some(1.0) => Err(Trouble::Refused),
        Err(_) => Err(Trouble::NotFound),
    }
}

fn ask(geolocation: &JsValue, found: Function, failed: Function) {
    // Answering a promise that nobody waits for any more does nothing.
    let found = Closure::once_into_js(move |position: JsValue| {
        let _ = found.call1(&JsValue::UNDEFINED, &position);
    });
    let failed = Closure::once_into_js(move |error: JsValue| {
        let _ = failed.call1(&JsValue::UNDEFINED, &error);
    });
    let options = Object::new();
    for name in ["timeout", "maximumAge"] {
        // Setting a property of a new object does not fail.
        let _ = Reflect::set(&options, &name.into(), &LOOKS_FOR.into());
    }
    if let Ok(method) = property(geolocation, "getCurrentPosition").dyn_into::<Function>() {
        // What it throws leaves the question open, and the person asks again.
        let _ = method.call3(geolocation, &found, &failed, &options);
    }
}
