//! The energy of work.
//!
//! Energy above maintenance by speed is that of horse, rider and tack together, on level ground (Pagan and Hintz 1986).
//! It is shown as a band and never fed for: an older equation of whole days of training (Anderson 1983) gives several
//! times as much. Heart rate only ranks sessions (Eaton 1995).

use super::error::WorkError;
use super::gait::{Gait, GaitTimes};
use super::published::{
    ANDERSON_BASE, ANDERSON_MOST, ANDERSON_SQUARE, ANDERSON_WEIGHT, ANDERSON_WORK, EATON_FACTOR,
    EATON_POWER, HEART_BELIEVED, LOAD_NOT_KNOWN, LONGEST_MINUTES, PH_BASE, PH_EFFICIENCY,
    PH_FASTEST, PH_HOUR, PH_REST, PH_SPEED,
};
use super::session::{How, Session};
use crate::animal::{Kind, Temperament, Workload};
use crate::limits::{Ends, energy_need};
use crate::sources::{Provenance, Source};
use crate::units::{BodyMass, Bounds, Energy, Span, Speed};

/// Digestible energy above maintenance, in kilocalories a kilogram of what moves and hour. It meets only a mass in its
/// own type, so that no rate a kilogram is ever taken for one a pound.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct WorkRate(f64);

impl WorkRate {
    /// In kcal/kg/h.
    pub const fn to_kcal_per_kg_h(self) -> f64 {
        self.0
    }

    /// The energy of moving a mass at this rate for a time.
    pub fn over(self, moved: BodyMass, time: Span) -> Energy {
        Energy::mcal(self.0 * moved.to_kg() * time.to_hours() / 1000.0)
    }
}

/// Energy above maintenance at a speed: `(e^(3.02 + 0.0065 v) - 13.92) x 0.06 / 0.57` kcal/kg/h, `v` in m/min, to
/// 400 m/min; Pagan and Hintz 1986.
///
/// # Errors
/// A speed below none or over what was measured.
pub fn work_rate(speed: Speed) -> Result<WorkRate, WorkError> {
    let measured = Bounds::new("speed_m_per_min", 0.0, *PH_FASTEST);
    let v = measured.check(speed.to_m_per_min())?;
    let spent = (*PH_BASE + *PH_SPEED * v).exp() - *PH_REST;
    Ok(WorkRate(spent * *PH_HOUR / *PH_EFFICIENCY))
}

/// Work as mass times distance, in thousands of kilogram kilometres.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct WorkDone(f64);

impl WorkDone {
    /// From thousands of kilogram kilometres.
    ///
    /// # Errors
    /// Less than none or more than was measured in a day.
    pub fn thousand_kg_km(value: f64) -> Result<Self, WorkError> {
        let measured = Bounds::new("work_thousand_kg_km", 0.0, *ANDERSON_MOST);
        Ok(Self(measured.check(value)?))
    }
}

/// Digestible energy of a day with work: `5.97 + 0.021 BW + 5.036 X - 0.48 X²` Mcal, `X` in thousands of kilogram
/// kilometres; Anderson 1983, on horses of about 500 kg in hard work.
pub fn anderson_day(body: BodyMass, work: WorkDone) -> Energy {
    let at_rest = *ANDERSON_BASE + *ANDERSON_WEIGHT * body.to_kg();
    Energy::mcal(at_rest + *ANDERSON_WORK * work.0 + *ANDERSON_SQUARE * work.0 * work.0)
}

/// A heart rate in work, in beats a minute.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct HeartRate(f64);

impl HeartRate {
    /// From beats a minute.
    ///
    /// # Errors
    /// What no heart does.
    pub fn beats(value: f64) -> Result<Self, WorkError> {
        let [least, most] = *HEART_BELIEVED;
        Ok(Self(
            Bounds::new("heart_beats_per_min", least, most).check(value)?,
        ))
    }

    /// In beats a minute.
    pub const fn to_beats(self) -> f64 {
        self.0
    }
}

/// Oxygen taken up at a heart rate, in mL/kg/min: `0.0019 HR^2.0653`; Eaton 1995. For ranking sessions, not for feeding.
pub fn oxygen(heart: HeartRate) -> f64 {
    *EATON_FACTOR * heart.0.powf(*EATON_POWER)
}

/// The energy of a session above maintenance.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkEnergy {
    /// How much, with its ends.
    pub energy: Ends<Energy>,
    /// Where it comes from.
    pub from: Provenance,
}

/// The energy of a session of a horse or pony, as a band: the slow and the fast end of each gait, the light and the heavy
/// end of the animal and of what it carries. `None` for donkeys and mules: the equation is of horses.
///
/// `load` is rider and tack of a ridden session; where nobody weighed them, a tenth to a fifth of the animal stands in.
///
/// # Errors
/// Times that are not believed.
pub fn session_energy(
    kind: Kind,
    body: Ends<BodyMass>,
    times: &GaitTimes,
    how: How,
    load: Option<BodyMass>,
) -> Result<Option<WorkEnergy>, WorkError> {
    if kind.is_donkey() {
        return Ok(None);
    }
    let mut from = Provenance::new()
        .constant(&PH_BASE)
        .constant(&PH_SPEED)
        .constant(&PH_REST)
        .constant(&PH_HOUR)
        .constant(&PH_EFFICIENCY);
    let moved = match (how, load) {
        (How::Ridden, Some(load)) => body.map(|body| body + load),
        (How::Ridden, None) => {
            from = from
                .constant(&LOAD_NOT_KNOWN)
                .with(Source::Default("load_kg"));
            let [least, most] = *LOAD_NOT_KNOWN;
            let parts = Ends::new(least, f64::midpoint(least, most), most);
            body.with(parts, |body, part| body * (1.0 + part))
        }
        (How::Led | How::Lunged | How::Free, _) => body,
    };
    let believed = Bounds::new("gait_minutes", 0.0, *LONGEST_MINUTES);
    let mut energy = Ends::exactly(Energy::ZERO);
    for gait in Gait::ALL {
        let time = times.of(gait);
        // numeric: milliseconds of a minute
        believed.check(time.to_ms() as f64 / 60_000.0)?;
        if time == Span::ZERO {
            continue;
        }
        from = from.constant(&gait.speeds());
        let speed = gait.speed();
        let at = |speed: Speed, moved: BodyMass| -> Result<Energy, WorkError> {
            Ok(work_rate(speed)?.over(moved, time))
        };
        let more = Ends::new(
            at(speed.least, moved.least)?,
            at(speed.likely, moved.likely)?,
            at(speed.most, moved.most)?,
        );
        energy = energy.with(more, |sum, more| sum + more);
    }
    Ok(Some(WorkEnergy { energy, from }))
}

/// The energy of some days of work.
#[derive(Clone, Debug, PartialEq)]
pub struct DaysEnergy {
    /// How much, with its ends.
    pub energy: Ends<Energy>,
    /// The same as a part of what an average animal of its weight needs in a week.
    pub of_a_week: Ends<f64>,
    /// Where it comes from.
    pub from: Provenance,
}

/// Days of a week.
// numeric: the calendar's
const WEEK: f64 = 7.0;

/// The energy of sessions together, and what part of a week's need it is. `None` for donkeys and mules, and where the
/// animal's weight or a session's times are not believed.
pub fn energy_of(kind: Kind, body: Ends<BodyMass>, sessions: &[Session]) -> Option<DaysEnergy> {
    let mut energy = Ends::exactly(Energy::ZERO);
    let mut from = Provenance::new();
    for session in sessions {
        let one = session_energy(kind, body, &session.times, session.how, session.load).ok()??;
        energy = energy.with(one.energy, |sum, one| sum + one);
        from = from.and(&one.from);
    }
    if kind.is_donkey() {
        return None;
    }
    let average = Workload::Maintenance(Temperament::Average);
    let need = energy_need(average, body.likely).ok()?;
    Some(DaysEnergy {
        energy,
        of_a_week: energy.map(|energy| energy / (need.energy * WEEK)),
        from: from.and(&need.from),
    })
}
