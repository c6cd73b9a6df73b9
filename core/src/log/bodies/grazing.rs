//! What somebody decided about an animal's or a group's grass.

use super::base::whole_number;
use crate::animal::PaddockId;
use crate::log::stored::twin;
use crate::units::published::DAYS_PER_WEEK;
use crate::units::{LocalDate, LocalTime, Span};

whole_number! {
    /// How long a day at grass, in minutes.
    // numeric: a day
    GrazingMinutes = (0, 1_440)
}

impl GrazingMinutes {
    /// As a length of time.
    pub const fn time(self) -> Span {
        Span::minutes(self.get())
    }
}

twin! {
    /// How the animal or group that the record is about goes out to grass. The latest whose day has come holds.
    GrazingV1 {
        /// Onto which paddock; `None` when paddocks are not told apart.
        paddock: Option<PaddockId>,
        /// From which day on.
        from: LocalDate,
        /// How long a day.
        minutes: GrazingMinutes,
        /// With a muzzle.
        muzzle: bool,
        /// Since when it has gone out every day, when somebody said.
        adapted_since: Option<LocalDate>,
        /// When it usually goes out; `None` stands for when grass is opened.
        out: Option<LocalTime>,
        /// It no longer goes out.
        stopped: bool,
    }
}

impl GrazingV1 {
    /// Whether it goes out on a day, as far as this decision says.
    pub fn holds(&self, day: LocalDate) -> bool {
        self.from <= day && !self.stopped && 0 < self.minutes.get()
    }

    /// Weeks of such turnout behind it on a day: since somebody said that it goes out so, else since it was decided.
    pub fn weeks(&self, day: LocalDate) -> f64 {
        let since = self.adapted_since.unwrap_or(self.from);
        (day - since).num_days().max(0) as f64 / DAYS_PER_WEEK as f64
    }
}
