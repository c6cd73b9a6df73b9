//! What a window is asked with.

use super::closed::Closed;
use super::published::COLD_NIGHT;
use crate::animal::{Answer, RiskLevel};
use crate::graze::season::SeasonOn;
use crate::graze::sun::Place;
use crate::limits::Ends;
use crate::units::{Length, LocalDate, Temperature};

/// What the last night was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Night {
    /// At 5 degrees or under.
    Cold,
    /// Over 5 degrees.
    Over5,
    /// Mild.
    Mild,
    /// Nobody said.
    #[default]
    NotSaid,
}

impl Night {
    /// What a night was whose lowest temperature is known: cold at 5 degrees or under. Nothing makes it mild but somebody
    /// who says so.
    pub fn of_lowest(lowest: Temperature) -> Self {
        if lowest <= Temperature::celsius(*COLD_NIGHT) {
            Self::Cold
        } else {
            Self::Over5
        }
    }
}

/// What the sky is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Sky {
    /// Sunny.
    Sunny,
    /// Dull, and lastingly so.
    Dull,
    /// Nobody said.
    #[default]
    NotSaid,
}

/// The weather of a day, as its chips say it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct DayWeather {
    /// The night before.
    pub night: Night,
    /// A hard frost this morning.
    pub frost: bool,
    /// The sky.
    pub sky: Sky,
    /// A dry spell: grass under stress of drought.
    pub dry_spell: bool,
    /// The last morning with a hard frost, when there was one.
    pub last_hard_freeze: Option<LocalDate>,
}

/// What a window is asked with: one animal or a group by its most at risk, one paddock, one day.
#[derive(Clone, Copy, Debug)]
pub struct WindowFor<'a> {
    /// The risk; not known counts as at risk.
    pub risk: RiskLevel,
    /// The local day.
    pub day: LocalDate,
    /// Whether the day is still to come, so that nobody can know its night.
    pub to_come: bool,
    /// Where the yard lies; `None` where nobody said.
    pub place: Option<Place>,
    /// The chips of the day.
    pub weather: DayWeather,
    /// The season of the day; see [`crate::graze::season::season_on`].
    pub season: SeasonOn,
    /// How high the leaf stands; `None` where nobody looked or no paddock is meant.
    pub leaf: Option<Ends<Length>>,
    /// Whether the grass is seeding.
    pub seeding: Answer,
    /// Whether the paddock lies in shade.
    pub shade: bool,
    /// What else closes it, found elsewhere: a sign, hay that leaves no room, rest.
    pub also: &'a [Closed],
}
