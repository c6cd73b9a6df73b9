//! A session of work.

use super::base::{BodyWeight, JobKey, from_measure, whole_number};
use crate::animal::Answer;
use crate::log::LogError;
use crate::log::stored::{twin, words};
use crate::sources::RecordId;
use crate::units::{Instant, LocalDate, Span};
use crate::work::{Gait, GaitTimes, HeartRate, How, Session, Surface};

words!(How {
    Ridden = "ridden",
    Led = "led",
    Lunged = "lunged",
    Free = "free",
});
words!(Surface {
    Soft = "soft",
    Firm = "firm",
    Hard = "hard",
});

whole_number! {
    /// How long one gait was gone, in seconds.
    // numeric: ten hours
    GaitSeconds = (0, 36_000)
}
whole_number! {
    /// A heart rate in work, in beats a minute.
    // numeric: wider than any living equid
    WorkBeats = (20, 260)
}
twin! {
    /// A session of work of the animal that the record is about. The record lies at its end, when somebody looked how the
    /// animal goes.
    WorkSessionV1 {
        /// When it began.
        start: Instant,
        /// Walk.
        walk_s: GaitSeconds,
        /// Trot.
        trot_s: GaitSeconds,
        /// Canter.
        canter_s: GaitSeconds,
        /// How it worked.
        how: How,
        /// On what.
        surface: Option<Surface>,
        /// Rider and tack.
        load: Option<BodyWeight>,
        /// The heart rate in the faster part, when it was measured.
        heart: Option<WorkBeats>,
        /// It blew and had settled ten minutes after.
        settled: Answer,
        /// It went sound after it.
        sound: Answer,
        /// Remarks.
        note: Option<String>,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

impl GaitSeconds {
    /// To the nearest second.
    ///
    /// Errors: longer than is believed.
    pub fn of(time: Span) -> Result<Self, LogError> {
        from_measure(time.to_ms() as f64 / 1000.0, Self::RANGE, Self::new)
    }

    /// As a length of time.
    pub const fn time(self) -> Span {
        Span::ms(self.get().saturating_mul(1000))
    }
}

impl WorkSessionV1 {
    /// A session without remarks, on the ground and with the heart rate that nobody said.
    ///
    /// Errors: a gait longer than is believed.
    pub fn of(
        start: Instant,
        times: &GaitTimes,
        how: How,
        sound: Answer,
    ) -> Result<Self, LogError> {
        Ok(Self {
            start,
            walk_s: GaitSeconds::of(times.of(Gait::Walk))?,
            trot_s: GaitSeconds::of(times.of(Gait::Trot))?,
            canter_s: GaitSeconds::of(times.of(Gait::Canter))?,
            how,
            surface: None,
            load: None,
            heart: None,
            settled: Answer::NotKnown,
            sound,
            note: None,
            job: None,
        })
    }

    /// How long each gait was gone.
    pub const fn times(&self) -> GaitTimes {
        GaitTimes {
            walk: self.walk_s.time(),
            trot: self.trot_s.time(),
            canter: self.canter_s.time(),
        }
    }

    /// The session; `day` is the local day it began on.
    pub fn session(&self, record: &RecordId, day: LocalDate) -> Session {
        Session {
            record: record.clone(),
            start: self.start,
            day,
            times: self.times(),
            how: self.how,
            surface: self.surface,
            load: self.load.as_ref().map(|load| load.g.mass()),
            heart: self
                .heart
                .and_then(|beats| HeartRate::beats(beats.get() as f64).ok()),
            settled: self.settled,
            sound: self.sound,
        }
    }
}
