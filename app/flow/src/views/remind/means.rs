//! What a device has to remind somebody with, and what of it is wanted.

use serde::{Deserialize, Serialize};

/// A way to remind somebody while a page is open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Means {
    /// A tone, and the phone shakes where it can.
    Sound,
    /// A notification.
    Notification,
    /// The screen stays on.
    Awake,
    /// The count on the app's icon.
    Badge,
}

/// Whether this device has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Has {
    /// It is there.
    Available,
    /// This browser does not have it.
    NotHere,
    /// It is there, and was refused.
    Denied,
}

/// How a means stands on this device.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stands {
    /// It is on.
    On,
    /// It is off.
    Off,
    /// It cannot be switched on: it is not here.
    NotHere,
    /// It was refused, whatever was wanted.
    Refused,
}

impl Stands {
    /// From what is wanted and what there is.
    pub const fn of(wanted: bool, has: Has) -> Self {
        match (has, wanted) {
            (Has::Available, true) => Self::On,
            (Has::Available, false) => Self::Off,
            (Has::NotHere, _) => Self::NotHere,
            (Has::Denied, _) => Self::Refused,
        }
    }
}

/// What became of a file that was handed over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sent {
    /// It went to another app.
    Shared,
    /// It was saved among the downloads.
    Saved,
    /// The person left it.
    Left,
    /// It did not go.
    Failed,
}

/// What somebody has switched on, on this device.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
#[allow(
    clippy::struct_excessive_bools,
    reason = "each is switched by itself, and any may be on beside any other"
)]
pub struct Reminders {
    /// Sound, and the phone shakes.
    pub sound: bool,
    /// Notifications.
    pub notification: bool,
    /// The screen stays on while a tub is open.
    pub awake: bool,
    /// The count on the app's icon.
    pub badge: bool,
}

impl Reminders {
    /// Whether one is on.
    pub const fn is_on(self, means: Means) -> bool {
        match means {
            Means::Sound => self.sound,
            Means::Notification => self.notification,
            Means::Awake => self.awake,
            Means::Badge => self.badge,
        }
    }

    /// The same with one of them on or off.
    #[must_use]
    pub const fn with(mut self, means: Means, on: bool) -> Self {
        match means {
            Means::Sound => self.sound = on,
            Means::Notification => self.notification = on,
            Means::Awake => self.awake = on,
            Means::Badge => self.badge = on,
        }
        self
    }

    /// Whether any is on.
    pub const fn any(self) -> bool {
        self.sound || self.notification || self.awake || self.badge
    }

    /// Whether anything tells of a deadline when it comes.
    pub const fn rings(self) -> bool {
        self.sound || self.notification
    }
}
