//! New ids: UUIDv7, made when a form opens, so that saving twice saves one record.

use super::clock;
use uuid::{Builder, Uuid};

/// A new id as lower-case text.
pub fn new() -> String {
    let ms = u64::try_from(clock::now().to_ms()).unwrap_or_default();
    let random = Uuid::new_v4().into_bytes();
    let mut tail = [0; 10];
    for (to, from) in tail.iter_mut().zip(random.iter().rev()) {
        *to = *from;
    }
    Builder::from_unix_timestamp_millis(ms, &tail)
        .into_uuid()
        .to_string()
}

/// A new id for this device: eight letters and digits.
pub fn device() -> tussock_core::log::DeviceId {
    let (high, low) = Uuid::new_v4().as_u64_pair();
    tussock_core::log::DeviceId::of_number(high ^ low)
}
