//! The only place that reads the time.

use js_sys::{Array, Date, Function, Intl, Object, Reflect};
use tussock_core::units::{Instant, LocalDate, Zone};
use wasm_bindgen::{JsCast, JsValue};

/// Milliseconds of a minute.
const MINUTE_MS: i64 = 60_000;

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

/// A zone by its IANA name, from the browser's own calendar, which has it without signal too; the zone of this device where
/// the browser does not know the name.
#[derive(Clone, Debug)]
pub struct NamedZone(Option<Intl::DateTimeFormat>);

impl NamedZone {
    /// The zone of this name.
    pub fn of(name: &str) -> Self {
        Self(writer_in(name))
    }
}

impl Zone for NamedZone {
    fn offset_min(&self, at: Instant) -> i32 {
        self.0
            .as_ref()
            .and_then(|writer| shown_offset(writer, at))
            .unwrap_or_else(|| DeviceZone.offset_min(at))
    }
}

/// Writes a date and time of a zone in figures. `None` for a name that the browser does not know: its constructor throws.
fn writer_in(name: &str) -> Option<Intl::DateTimeFormat> {
    let options = Object::new();
    for (key, value) in [
        ("timeZone", name),
        ("hourCycle", "h23"),
        ("year", "numeric"),
        ("month", "2-digit"),
        ("day", "2-digit"),
        ("hour", "2-digit"),
        ("minute", "2-digit"),
    ] {
        Reflect::set(&options, &key.into(), &value.into()).ok()?;
    }
    let intl = Reflect::get(&js_sys::global(), &"Intl".into()).ok()?;
    let constructor: Function = Reflect::get(&intl, &"DateTimeFormat".into())
        .ok()?
        .dyn_into()
        .ok()?;
    let arguments = Array::of2(&"en-GB".into(), &options);
    Reflect::construct(&constructor, &arguments)
        .ok()
        .map(JsCast::unchecked_into)
}

/// The offset from UTC of what the wall clock shows, in minutes east.
fn shown_offset(writer: &Intl::DateTimeFormat, at: Instant) -> Option<i32> {
    #[allow(clippy::cast_precision_loss, reason = "milliseconds stay below 2^53")]
    let date = Date::new(&JsValue::from_f64(at.to_ms() as f64));
    let parts = writer.format_to_parts(&date);
    let figure = |wanted: &str| {
        parts.iter().find_map(|part| {
            let kind = Reflect::get(&part, &"type".into()).ok()?.as_string()?;
            let value = Reflect::get(&part, &"value".into()).ok()?.as_string()?;
            (kind == wanted)
                .then(|| value.parse::<u32>().ok())
                .flatten()
        })
    };
    let year = i32::try_from(figure("year")?).ok()?;
    let day = LocalDate::from_ymd_opt(year, figure("month")?, figure("day")?)?;
    let shown = day.and_hms_opt(figure("hour")?, figure("minute")?, 0)?;
    let minutes =
        shown.and_utc().timestamp_millis().div_euclid(MINUTE_MS) - at.to_ms().div_euclid(MINUTE_MS);
    i32::try_from(minutes).ok()
}

/// The IANA name of this device's zone, such as `Europe/London`; `UTC` when the browser does not say.
pub fn zone_name() -> String {
    let options = Intl::DateTimeFormat::new(&Array::new(), &Object::new()).resolved_options();
    Reflect::get(&options, &JsValue::from_str("timeZone"))
        .ok()
        .and_then(|zone| zone.as_string())
        .unwrap_or_else(|| "UTC".to_owned())
}
