//! Why grass is open or closed, in English.

use super::English;
use crate::words::{GrassWords, Said, UnitWords};
use tussock_core::graze::window::{Care, Closed, Stretch, WhyTo};
use tussock_core::units::{Span, Zone};

impl GrassWords for English {
    fn instead_of_grass(&self, closed: &Closed) -> &'static str {
        match closed {
            Closed::Stopped => {
                "Soft bed or a yard, with hay in front of it. No walk in hand until the vet says so."
            }
            Closed::Bare | Closed::ShortLeaf | Closed::Resting { .. } => {
                "Another paddock, or a yard with hay split over more visits. A bare paddock is not forage."
            }
            Closed::Flush
            | Closed::FlushNotKnown
            | Closed::ColdNight
            | Closed::Frost
            | Closed::HardFreeze { .. }
            | Closed::Drought
            | Closed::Seeding
            | Closed::NightNotSaid
            | Closed::HayLeavesNoRoom
            | Closed::NotInPlan => {
                "A yard or bare ground, with tested or soaked hay split over more visits; a walk in hand if it is sound and may work."
            }
        }
    }
    fn closed(&self, closed: &Closed) -> Said {
        match closed {
            Closed::Flush => Said::because(
                "Grass is in its flush",
                "Most laminitis at grass begins now. For an animal that had laminitis, is insulin-dysregulated or was never tested, hours do not make it small enough.",
            ),
            Closed::FlushNotKnown => Said::because(
                "Say where the yard lies, or that the flush is over",
                "Nobody knows whether grass is in its flush here, so for an animal at risk it is taken to be.",
            ),
            Closed::ColdNight => Said::because(
                "The night was at 5 °C or under",
                "Grass that does not grow in the cold keeps the sugar that it made the day before.",
            ),
            Closed::Frost => Said::because(
                "A hard frost lies on the grass",
                "Frozen leaf keeps its sugar, and treading breaks it.",
            ),
            Closed::HardFreeze { until } => Said::because(
                format!(
                    "A hard freeze within the week: keep off until {}",
                    self.day(*until)
                ),
                "Sugar stays high for days after a hard freeze. After that only leaf over 7.5 cm is grazed.",
            ),
            Closed::Drought => Said::because(
                "A dry spell",
                "Grass under stress of drought makes sugar and does not grow.",
            ),
            Closed::Seeding => Said::because(
                "The grass is seeding",
                "Stem and seed head hold much sugar and starch.",
            ),
            Closed::NightNotSaid => Said::because(
                "Say what the night was",
                "After a night at 5 °C or under there is no grass for an animal at risk, and nobody said what this one was.",
            ),
            Closed::Bare => Said::because(
                "The leaf is under 5 cm: that is no forage",
                "What stands on a bare paddock has nothing in front of it, and eats roots and soil.",
            ),
            Closed::ShortLeaf => Said::because(
                "The leaf is under 7.5 cm: leave it to grow",
                "Grass that is grazed shorter does not come back, and the lowest part of it holds most sugar.",
            ),
            Closed::Stopped => Said::because(
                "A sign, lameness, an episode or a missing vet's word stops it",
                "The look-over and the plan say which.",
            ),
            Closed::HayLeavesNoRoom => Said::because(
                "Its plan has no room for grass",
                "The most that it may eat there would take the day over its limit, or its hay is not proven to be within it.",
            ),
            Closed::NotInPlan => Said::because(
                "Its plan has no grass",
                "It is at risk. Say how it goes out, and the plan says how much there is room for.",
            ),
            Closed::Resting { until: Some(until) } => Said::because(
                format!("The paddock rests until {}", self.day(*until)),
                "Leaf is left to grow back.",
            ),
            Closed::Resting { until: None } => {
                Said::because("The paddock rests", "Leaf is left to grow back.")
            }
        }
    }
    fn care(&self, care: &Care, zone: &dyn Zone) -> Said {
        match care {
            Care::Flush => Said::because(
                "Grass is in its flush: fewer hours, a smaller piece",
                "It eats more of it, and richer, than at any other time.",
            ),
            Care::FlushNear { usual } => Said::because(
                format!(
                    "The flush may begin any day, usually about {}",
                    self.day(*usual)
                ),
                "A year can be three weeks early. Note it on the season when leaf shoots up.",
            ),
            Care::FlushNotKnown => Said::because(
                "Whether grass is in its flush is not known",
                "Say where the yard lies, or note in the season what you see.",
            ),
            Care::AutumnGrowth => Said::because(
                "Rain after a dry time makes grass grow again",
                "The second time of the year with much laminitis.",
            ),
            Care::ColdNight => Said::because(
                "The night was at 5 °C or under: a shorter time",
                "The sugar of yesterday is still in the leaf.",
            ),
            Care::NightNotSaid => Said::because(
                "Nobody said what the night was",
                "After a night at 5 °C or under the time is shorter.",
            ),
            Care::IfNightOver5 => Said::plain("It holds if the night stays over 5 °C"),
            Care::SkyNotSaid => Said::because(
                "Nobody said what the sky is: taken for clear",
                "Under lasting cloud it is open until 11.",
            ),
            Care::Drought => Said::because(
                "A dry spell: a shorter time",
                "Sugar stays in grass that does not grow.",
            ),
            Care::Seeding => Said::because(
                "The grass is seeding: a shorter time",
                "Its sugar is in stem and seed head.",
            ),
            Care::SeedingNotSaid => Said::plain("Nobody said whether the grass is seeding"),
            Care::LeafNotSaid => Said::because(
                "Nobody looked how high the leaf stands",
                "Under 7.5 cm it is left to grow, and under 5 cm it is no forage.",
            ),
            Care::EveningIfMild => Said::because(
                "The late evening holds if it stays mild",
                "On a mild night grass uses up its sugar as it grows.",
            ),
            Care::NoPlace => Said::because(
                "Told by the clock: nobody said where the yard lies",
                "With the place come sunrise, sunset and the season.",
            ),
            Care::NoSun => Said::plain("The sun does not rise today"),
            Care::NoNight => Said::because(
                "The sun does not set today",
                "Grass makes sugar all night, and the clock is all there is to go by.",
            ),
            Care::DarkUntil(until) => {
                Said::plain(format!("It is dark until {}", self.time_at(*until, zone)))
            }
            Care::ClockOfElsewhere { ahead } => {
                let hours = Span::ms(ahead.to_ms().abs());
                let which = if *ahead < Span::ZERO {
                    "behind"
                } else {
                    "ahead of"
                };
                Said::because(
                    "This clock is not that of the yard: the times go by its sun",
                    format!("It is {} {which} the sun there.", self.span(hours)),
                )
            }
        }
    }
    fn why_to(&self, why: WhyTo) -> &'static str {
        match why {
            WhyTo::Clear => "Off by 9 on a clear day: sugar climbs with the sun.",
            WhyTo::SkyNotSaid => "Off by 9, as on a clear day, for nobody said what the sky is.",
            WhyTo::LastingCloud => "Under lasting cloud it may be until 11.",
            WhyTo::Shade => "In shade it may be until 11.",
        }
    }
    fn stretch(&self, stretch: &Stretch, zone: &dyn Zone) -> String {
        format!(
            "{} to {}",
            self.time_at(stretch.from, zone),
            self.time_at(stretch.to, zone)
        )
    }
}
