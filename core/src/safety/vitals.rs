//! Temperature, pulse and breathing at rest, beside what is usual for its kind. They are told to the vet: a reading within
//! its range is no all-clear, and none is a diagnosis.

use super::published::{
    DONKEY_BREATHS_HIGH, DONKEY_BREATHS_LOW, DONKEY_PULSE_HIGH, DONKEY_PULSE_LOW,
    DONKEY_TEMPERATURE_HIGH, DONKEY_TEMPERATURE_LOW, FOAL_YEARS, HORSE_BREATHS_HIGH,
    HORSE_BREATHS_LOW, HORSE_PULSE_HIGH, HORSE_PULSE_LOW, HORSE_PULSE_RING, HORSE_TEMPERATURE_HIGH,
    HORSE_TEMPERATURE_LOW, HORSE_TEMPERATURE_RING,
};
use crate::animal::{Animal, Kind, State};
use crate::plan::{AtRest, Taken};
use crate::sources::{Provenance, Published};
use crate::units::{Bounds, LocalDate};

/// What is measured at rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Vital {
    /// Temperature, in degrees Celsius.
    Temperature,
    /// Pulse, in beats a minute.
    Pulse,
    /// Breathing, in breaths a minute.
    Breaths,
}

/// How a reading stands beside its range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum VitalStanding {
    /// Within it.
    Within,
    /// Under it.
    Under,
    /// Over it.
    Over,
    /// So far over it that the vet is rung for this alone.
    Ring,
}

/// What is usual at rest.
#[derive(Clone, Debug, PartialEq)]
pub struct Normal {
    /// Of a grown one of this kind: ponies and miniatures go by the horse, mules by the donkey.
    pub of: Kind,
    /// The lowest, in the unit of the vital.
    pub low: f64,
    /// The highest.
    pub high: f64,
    /// Above this the vet is rung; `None` where nobody gives a line.
    pub ring_above: Option<f64>,
    /// Where it comes from.
    pub sources: Provenance,
}

impl Vital {
    /// All of them, in the order in which a vet asks.
    pub const ALL: [Self; 3] = [Self::Temperature, Self::Pulse, Self::Breaths];

    /// The reading of it that stands.
    pub const fn taken(self, at_rest: &AtRest) -> Option<Taken> {
        match self {
            Self::Temperature => at_rest.temperature,
            Self::Pulse => at_rest.pulse,
            Self::Breaths => at_rest.breaths,
        }
    }

    /// The same readings with another one of it.
    #[must_use]
    pub const fn with(self, mut at_rest: AtRest, taken: Taken) -> AtRest {
        match self {
            Self::Temperature => at_rest.temperature = Some(taken),
            Self::Pulse => at_rest.pulse = Some(taken),
            Self::Breaths => at_rest.breaths = Some(taken),
        }
        at_rest
    }

    /// What is believed of a reading: outside it is a slip of the finger.
    // numeric: wider than any living equid
    pub const fn bounds(self) -> Bounds {
        match self {
            Self::Temperature => Bounds::new("temperature_degc", 30.0, 45.0),
            Self::Pulse => Bounds::new("pulse_per_minute", 10.0, 250.0),
            Self::Breaths => Bounds::new("breaths_per_minute", 4.0, 200.0),
        }
    }

    /// What is usual for an animal at rest on a day; `None` of a foal, and of one that is growing and whose age nobody
    /// knows.
    pub fn normal(self, animal: &Animal, day: LocalDate) -> Option<Normal> {
        let foal = match animal.born.map(|born| born.age_on(day)) {
            Some(years) => years < *FOAL_YEARS,
            None => animal.state == State::Growing,
        };
        (!foal).then(|| self.of_the_grown(animal.kind))
    }

    fn of_the_grown(self, kind: Kind) -> Normal {
        let (of, low, high, ring) = match (kind.is_donkey(), self) {
            (false, Self::Temperature) => (
                Kind::Horse,
                HORSE_TEMPERATURE_LOW,
                HORSE_TEMPERATURE_HIGH,
                Some(HORSE_TEMPERATURE_RING),
            ),
            (false, Self::Pulse) => (
                Kind::Horse,
                HORSE_PULSE_LOW,
                HORSE_PULSE_HIGH,
                Some(HORSE_PULSE_RING),
            ),
            (false, Self::Breaths) => (Kind::Horse, HORSE_BREATHS_LOW, HORSE_BREATHS_HIGH, None),
            (true, Self::Temperature) => (
                Kind::Donkey,
                DONKEY_TEMPERATURE_LOW,
                DONKEY_TEMPERATURE_HIGH,
                None,
            ),
            (true, Self::Pulse) => (Kind::Donkey, DONKEY_PULSE_LOW, DONKEY_PULSE_HIGH, None),
            (true, Self::Breaths) => (Kind::Donkey, DONKEY_BREATHS_LOW, DONKEY_BREATHS_HIGH, None),
        };
        let of_both = Provenance::new().constant(&low).constant(&high);
        Normal {
            of,
            low: *low,
            high: *high,
            ring_above: ring.as_ref().map(|ring: &Published<f64>| **ring),
            sources: match &ring {
                Some(ring) => of_both.constant(ring),
                None => of_both,
            },
        }
    }
}

/// A temperature in degrees Celsius, from degrees Fahrenheit.
pub fn from_fahrenheit(degrees: f64) -> f64 {
    // numeric: the definition of the Fahrenheit scale
    (degrees - 32.0) * 5.0 / 9.0
}

impl Normal {
    /// How a reading stands beside it.
    pub fn stands(&self, reading: f64) -> VitalStanding {
        if self.ring_above.is_some_and(|line| line < reading) {
            VitalStanding::Ring
        } else if self.high < reading {
            VitalStanding::Over
        } else if reading < self.low {
            VitalStanding::Under
        } else {
            VitalStanding::Within
        }
    }
}

/// The readings that stand and are not within what is usual, with how they stand; none of a foal, for which no range is
/// given here.
pub fn unusual(
    animal: &Animal,
    at_rest: &AtRest,
    day: LocalDate,
) -> Vec<(Vital, Taken, VitalStanding)> {
    Vital::ALL
        .into_iter()
        .filter_map(|vital| {
            let taken = vital.taken(at_rest)?;
            let stands = vital.normal(animal, day)?.stands(taken.reading);
            (stands != VitalStanding::Within).then_some((vital, taken, stands))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ponies_go_by_the_horse_and_mules_by_the_donkey() {
        for vital in Vital::ALL {
            for kind in [Kind::Horse, Kind::Pony, Kind::Miniature] {
                assert_eq!(vital.of_the_grown(kind).of, Kind::Horse);
            }
            for kind in [Kind::Donkey, Kind::Mule] {
                assert_eq!(vital.of_the_grown(kind).of, Kind::Donkey);
            }
            let normal = vital.of_the_grown(Kind::Horse);
            assert!(vital.bounds().check(normal.low).is_ok());
            assert!(vital.bounds().check(normal.high).is_ok());
            assert!(normal.low < normal.high);
            assert!(normal.ring_above.is_none_or(|line| normal.high < line));
        }
    }

    #[test]
    fn a_fever_is_rung_about_and_the_line_itself_is_not() {
        let horse = Vital::Temperature.of_the_grown(Kind::Pony);
        assert_eq!(horse.stands(39.0), VitalStanding::Ring);
        assert_eq!(horse.stands(38.9), VitalStanding::Over);
        assert_eq!(horse.stands(38.6), VitalStanding::Within);
        assert_eq!(horse.stands(37.1), VitalStanding::Under);
        // What is usual in a donkey's pulse is over a horse's.
        let pulse = |kind| Vital::Pulse.of_the_grown(kind).stands(48.0);
        assert_eq!(pulse(Kind::Donkey), VitalStanding::Within);
        assert_eq!(pulse(Kind::Horse), VitalStanding::Over);
    }
}
