//! The only place that reads the time.

use js_sys::{Date, Intl, Object, Reflect};
use tussock_core::units::{Instant, Zone};
use wasm_bindgen::JsValue;

/// Now.
pub fn now() -> Instant {
    #[allow(
        clippy::cast_possible_truncation,
        reason = "milliseconds stay below 2^53"
    )]
    Instant::from_ms(Date::now() as i64)
}

/// The zone of this device, from the browser's own calendar.
#[derive(Clone, Copy, Debug, Default)]
pub struct DeviceZone;

impl Zone for DeviceZone {
    fn offset_min(&self, at: Instant) -> i32 {
        #[allow(clippy::cast_precision_loss, reason = "milliseconds stay below 2^53")]
        let date = Date::new(&JsValue::from_f64(at.to_ms() as f64));
        #[allow(clippy::cast_possible_truncation, reason = "minutes of a day")]
        let west = date.get_timezone_offset() as i32;
        -west
    }
}

/// The IANA name of this device's zone, such as `Europe/London`; `UTC` when the browser does not say.
pub fn zone_name() -> String {
    let options =
        Intl::DateTimeFormat::new(&js_sys::Array::new(), &Object::new()).resolved_options();
    Reflect::get(&options, &JsValue::from_str("timeZone"))
        .ok()
        .and_then(|zone| zone.as_string())
        .unwrap_or_else(|| "UTC".to_owned())
}
