//! The sward in English.

use super::English;
use super::numbers::{between, up_to, up_to_beside};
use crate::forms::readings::{Summed, Way, Wrong};
use crate::views::fields::{By, Regrows};
use crate::words::{FieldWords, LogWords, Said, SwardWords, UnitWords};
use tussock_core::graze::GrazeError;
use tussock_core::graze::sward::published::LEAF_BARE;
use tussock_core::graze::sward::{GrowthSeason, Leaf, Stand, SwardFinding};
use tussock_core::limits::Ends;
use tussock_core::units::parse::{LengthUnit, MassUnit};
use tussock_core::units::{DryMatter, Length, SwardMass};

impl English {
    /// A height that is judged against another, on its side of it.
    fn height_beside(&self, height: Length, limit: Length) -> String {
        let (value, limit) = match self.shown.length {
            LengthUnit::Cm => (height.to_cm(), limit.to_cm()),
            LengthUnit::Inch => (height.to_inches(), limit.to_inches()),
        };
        let unit = self.length_unit(self.shown.length);
        format!("{} {unit}", up_to_beside(value, limit, 1))
    }

    fn sward_number(&self, mass: SwardMass) -> String {
        // To ten: a guess is not told to the kilogram.
        let ten = |value: f64| up_to((value / 10.0).round() * 10.0, 0);
        match self.shown.mass {
            MassUnit::Kg => ten(mass.to_kg_per_ha()),
            MassUnit::Lb => ten(mass.to_lb_per_acre()),
        }
    }

    const fn sward_unit(&self) -> &'static str {
        match self.shown.mass {
            MassUnit::Kg => "kg of dry matter a hectare",
            MassUnit::Lb => "lb of dry matter an acre",
        }
    }
}

impl SwardWords for English {
    fn leaf(&self, leaf: Leaf) -> &'static str {
        match leaf {
            Leaf::BelowAnkle => "below the ankle",
            Leaf::Ankle => "at the ankle",
            Leaf::AboveAnkle => "above the ankle",
        }
    }
    fn leaf_key(&self, leaf: Leaf) -> &'static str {
        match leaf {
            Leaf::BelowAnkle => "Below ankle",
            Leaf::Ankle => "Ankle",
            Leaf::AboveAnkle => "Above ankle",
        }
    }
    fn stand(&self, stand: Stand) -> &'static str {
        match stand {
            Stand::Fair => "Thin, soil to be seen",
            Stand::Good => "Ordinary",
            Stand::Excellent => "Dense, no soil to be seen",
        }
    }
    fn sward_finding(&self, finding: &SwardFinding) -> Said {
        match finding {
            SwardFinding::Bare { height } => Said::because(
                "Bare, or it may be: this is no forage, and hay must hang",
                format!(
                    "It may stand at {}; under {} there is nothing to eat, and what is left holds its sugar in the stem.",
                    self.height_beside(*height, *LEAF_BARE),
                    self.length(*LEAF_BARE)
                ),
            ),
            SwardFinding::TakeOff { height, residual } => Said::because(
                "Take them off: it is grazed down",
                format!(
                    "It stands at about {}, and {} is left standing so that it grows again.",
                    self.height_beside(*height, *residual),
                    self.length(*residual)
                ),
            ),
            SwardFinding::Short { height } => Said::because(
                "Too short to open yet",
                format!("It stands at about {}; let it grow.", self.length(*height)),
            ),
            SwardFinding::Rank { height } => Said::because(
                "Tall: look for stems and seed heads",
                format!(
                    "It stands at about {}. Tall grass is more of it, and stems hold sugar.",
                    self.length(*height)
                ),
            ),
            SwardFinding::FewReadings { taken, asked } => Said::because(
                format!("{taken} of {asked} readings: the mean may be far out"),
                "Walk the whole paddock, the rough patches and the bare ones too.",
            ),
            SwardFinding::PlateOfItsOwn => Said::because(
                "A plate's formula is for its own grass and season",
                "The band is that of two formulas, and wider than it looks on the counter.",
            ),
            SwardFinding::DensityNotKnown => Said::because(
                "How dense this kind of grass stands is not known here",
                "The band is that of all stands, from thin to dense.",
            ),
        }
    }
    fn growth_season(&self, season: GrowthSeason) -> &'static str {
        match season {
            GrowthSeason::EarlySpring => "Early spring",
            GrowthSeason::PeakSpring => "The flush",
            GrowthSeason::Summer => "Summer",
            GrowthSeason::Autumn => "Autumn with rain",
            GrowthSeason::Winter => "Winter",
        }
    }
    fn regrows(&self, regrows: &Regrows) -> [String; 2] {
        let days = match &regrows.days {
            None => "it is".to_owned(),
            Some(days) => {
                let soonest = up_to(days.soonest.ceil(), 0);
                match days.latest {
                    Some(latest) => {
                        format!("{} days", between(&soonest, &up_to(latest.ceil(), 0), "to"))
                    }
                    None => format!("{soonest} days, or not at all"),
                }
            }
        };
        let rest = match regrows.rest {
            Some(rest) => format!("{} to {} days", rest.from, rest.to),
            None => "until growth begins".to_owned(),
        };
        [days, rest]
    }
    fn regrows_heads(&self) -> [&'static str; 3] {
        ["Season", "Back at grazing height", "Rest"]
    }
    fn seen_by(&self, by: &By) -> String {
        match by {
            By::Boot(leaf) => format!("Leaf {}", self.leaf(*leaf)),
            By::Heights(heights) => {
                let readings = self.count(heights.len(), "reading", "readings");
                match tussock_core::graze::sward::readings(heights) {
                    Ok((read, _)) => format!("{} by {readings}", self.length(read.mean)),
                    Err(_) => readings,
                }
            }
            By::Plate { clicks, count } => format!(
                "{} clicks by {}",
                up_to(*clicks, 1),
                self.count(*count, "reading", "readings")
            ),
        }
    }
    fn stands(&self, available: Ends<SwardMass>) -> String {
        if available.most <= SwardMass::ZERO {
            return "Nothing stands above what is left standing".to_owned();
        }
        format!(
            "About {} {}, between {}, above what is left standing",
            self.sward_number(available.likely),
            self.sward_unit(),
            between(
                &self.sward_number(available.least),
                &self.sward_number(available.most),
                "and"
            )
        )
    }
    fn stands_on_all(&self, whole: Ends<DryMatter>) -> String {
        format!("{} on all of it", self.dry_ends(whole))
    }
    fn graze_error(&self, error: &GrazeError) -> String {
        match error {
            GrazeError::OutOfRange(error) => self.out_of_range(error),
            GrazeError::NoReadings => "No height was read".to_owned(),
            GrazeError::NothingAsked => "Nobody grazes, or nothing is asked for".to_owned(),
            GrazeError::NothingToGraze { .. } => {
                "Nothing stands above what is left standing: there is no strip in it".to_owned()
            }
            GrazeError::TrackTooWide { width, under } => format!(
                "A track of {} leaves no inside: it must be narrower than {}",
                self.on_ground(*width),
                self.on_ground(*under)
            ),
        }
    }
    fn reading_line(&self, way: Way, nth: usize) -> String {
        match way {
            Way::Cm | Way::Inch => format!("Height {nth}"),
            Way::Clicks => format!("Plate, reading {nth}"),
        }
    }
    fn way_asked(&self) -> &'static str {
        "Read with"
    }
    fn way(&self, way: Way) -> &'static str {
        match way {
            Way::Cm => "A ruler, cm",
            Way::Inch => "A ruler, inches",
            Way::Clicks => "A plate, clicks",
        }
    }
    fn way_unit(&self, way: Way) -> &'static str {
        match way {
            Way::Cm => self.length_unit(LengthUnit::Cm),
            Way::Inch => self.length_unit(LengthUnit::Inch),
            Way::Clicks => "clicks",
        }
    }
    fn summed(&self, summed: &Summed) -> String {
        match summed {
            Summed::Heights(read) => {
                let readings = self.count(read.count, "reading", "readings");
                let out = read.error.map_or_else(String::new, |error| {
                    let error = self.length(error * 2.0);
                    format!(", give or take {error}")
                });
                format!("Mean {}{out}, {readings}", self.length(read.mean))
            }
            Summed::Clicks { mean, count } => format!(
                "Mean {} clicks, {}",
                up_to(*mean, 1),
                self.count(*count, "reading", "readings")
            ),
        }
    }
    fn readings_left(&self, left: usize) -> String {
        match left {
            0 => "Enough".to_owned(),
            left => format!("{left} to go; fewer may be saved, and say so"),
        }
    }
    fn how_to_read(&self, way: Way) -> &'static str {
        match way {
            Way::Cm | Way::Inch => {
                "Walk across it. Every few paces hold the ruler on leaf that is not pressed down, whatever lies there."
            }
            Way::Clicks => {
                "Walk across it. Every few paces set the plate down and type what the counter went on by."
            }
        }
    }
    fn reading_not_taken(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Parse(error) => self.parse_error(error),
            Wrong::NotWhole => "A counter says whole clicks".to_owned(),
            Wrong::NothingRead => "Type the first reading".to_owned(),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn next_reading(&self) -> &'static str {
        "Next reading"
    }
    fn take_back_last(&self) -> &'static str {
        "Take back the last"
    }
    fn save_readings(&self, count: usize) -> String {
        format!("Save {}", self.count(count, "reading", "readings"))
    }
    fn readings_of(&self, name: &str) -> String {
        format!("{name}, readings")
    }
}
