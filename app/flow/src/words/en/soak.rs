//! Soaking.

use super::English;
use super::numbers::{between, up_to};
use crate::words::{Said, SoakWords, SourceWords, UnitWords};
use tussock_core::soak::published::{
    DRAIN_FROM, DRAIN_TO, KEEPS, KEEPS_LONG, KEEPS_OVER_20, KEEPS_OVER_25,
};
use tussock_core::soak::{
    Air, DryLoss, Ended, Liquor, LossBand, LossBasis, NotSoaked, RecipeFinding, Shortened,
    SoakError, SugarLoss, TubState, TubStep, Water,
};
use tussock_core::sources::Mark;
use tussock_core::units::{Span, Zone};

impl SoakWords for English {
    fn tub_head(&self, state: &TubState) -> &'static str {
        match state {
            TubState::Empty => "Nothing in the water",
            TubState::InWater { .. } => "Lift out in",
            TubState::LiftOut { .. } => "Lift out now, late by",
            TubState::Draining { .. } => "Drained in",
            TubState::Feed { .. } => "Feed it now. Throw away in",
            TubState::Fed { .. } => "Throw away what is left in",
            TubState::ThrowAway { .. } => "Throw away. Wet for",
            TubState::Done { how, .. } => self.ended(*how),
        }
    }

    fn tub(&self, state: &TubState, zone: &dyn Zone) -> Said {
        let time = |at| self.time_at(at, zone);
        match state {
            TubState::Empty => Said::plain("Nothing in the water"),
            TubState::InWater { lift_out, left } => Said::plain(format!(
                "Lift out at {}, in {}",
                time(*lift_out),
                self.span(*left)
            )),
            TubState::LiftOut {
                due,
                late,
                throw_away,
            } => {
                let late = if late.to_minutes() > 0 {
                    format!(", {} late", self.span(*late))
                } else {
                    String::new()
                };
                Said::because(
                    format!("Lift out now{late}"),
                    format!(
                        "Due at {}. Throw away by {}, counted from when it was first wet.",
                        time(*due),
                        time(*throw_away)
                    ),
                )
            }
            TubState::Draining {
                enough,
                drained,
                left,
                throw_away,
            } => Said::because(
                format!("Drained at {}, in {}", time(*drained), self.span(*left)),
                format!(
                    "From {} it is drained enough to feed. Throw away by {}.",
                    time(*enough),
                    time(*throw_away)
                ),
            ),
            TubState::Feed {
                since,
                throw_away,
                left,
            } => Said::because(
                format!("Feed it now, throw away by {}", time(*throw_away)),
                format!("Drained since {}; {} left.", time(*since), self.span(*left)),
            ),
            TubState::Fed {
                at,
                throw_away,
                left,
            } => Said::because(
                format!("Throw away what is left by {}", time(*throw_away)),
                format!("Given at {}; {} left.", time(*at), self.span(*left)),
            ),
            TubState::ThrowAway { since, wet_for } => Said::because(
                "Throw away what is left now",
                format!(
                    "Wet for {}; it was to be thrown away at {}.",
                    self.span(*wet_for),
                    time(*since)
                ),
            ),
            TubState::Done { at, how } => {
                Said::plain(format!("{} at {}", self.ended(*how), time(*at)))
            }
        }
    }

    fn tub_step(&self, step: TubStep) -> &'static str {
        match step {
            TubStep::Empty => "Empty",
            TubStep::InWater => "In the water",
            TubStep::LiftOut => "Lift out",
            TubStep::Draining => "Draining",
            TubStep::Feed => "Drained, feed it",
            TubStep::Fed => "Fed",
            TubStep::ThrowAway => "Throw away",
            TubStep::Done => "Over",
        }
    }

    fn tub_action(&self, step: TubStep) -> Option<&'static str> {
        match step {
            TubStep::Empty => Some("Start the soak"),
            TubStep::InWater | TubStep::LiftOut => Some("Lifted out now"),
            TubStep::Draining | TubStep::Feed => Some("Drained and fed"),
            TubStep::Fed | TubStep::ThrowAway => Some("Thrown away"),
            TubStep::Done => None,
        }
    }

    fn air(&self, air: Air) -> &'static str {
        match air {
            Air::HardFrost => "Hard frost",
            Air::Under16 => "Under 16 °C",
            Air::Mild => "16 to 20 °C",
            Air::Over20 => "Over 20 °C",
            Air::Over25 => "Over 25 °C",
        }
    }

    fn water_chip(&self, water: Water) -> &'static str {
        match water {
            Water::TapWinter => "Cold tap, winter",
            Water::TapSummer => "Cold tap, summer",
            Water::HandHot => "Hand-hot, 40 to 45 °C",
        }
    }

    fn recipe_finding(&self, finding: RecipeFinding) -> Said {
        match finding {
            RecipeFinding::TooShort { at_least } => Said::plain(format!(
                "Soak it longer, {} at least: little sugar goes before that",
                self.span(at_least)
            )),
            RecipeFinding::Long => Said::plain(format!(
                "A long soak: feed it at once, throw it away {} after lifting out",
                self.span(*KEEPS_LONG)
            )),
            RecipeFinding::LongInHeat => Said::because(
                "Soak it shorter in this heat: an hour at most",
                "In warm air germs grow fast on wet hay.",
            ),
            RecipeFinding::MayFreeze => Said::plain(
                "The tub may freeze: soak indoors, or hang dry hay at its lighter reading",
            ),
        }
    }

    fn shortened(&self, shortened: Shortened) -> Said {
        // The rule with its mark, and what it shortens.
        let why = |keeps: Span, mark: Mark, from: &str| {
            format!(
                "{} after {from}: {}. Otherwise it keeps for {} after wetting.",
                self.span(keeps),
                self.mark(mark),
                self.span(*KEEPS)
            )
        };
        match shortened {
            Shortened::Over20 => Said::because(
                "Thrown away sooner: the air is over 20 °C",
                why(*KEEPS_OVER_20, KEEPS_OVER_20.mark, "wetting"),
            ),
            Shortened::Over25 => Said::because(
                "Thrown away sooner: the air is over 25 °C",
                why(*KEEPS_OVER_25, KEEPS_OVER_25.mark, "wetting"),
            ),
            Shortened::LongSoak => Said::because(
                "Thrown away sooner: it lay in the water for more than two hours",
                why(*KEEPS_LONG, KEEPS_LONG.mark, "lifting out"),
            ),
        }
    }

    fn ended(&self, ended: Ended) -> &'static str {
        match ended {
            Ended::Eaten => "Eaten",
            Ended::ThrownAway => "Thrown away",
            Ended::Stopped => "Stopped",
        }
    }

    fn sugar_loss(&self, loss: &SugarLoss) -> Said {
        let band = |band: LossBand| {
            between(
                &up_to(band.low * 100.0, 0),
                &up_to(band.high * 100.0, 0),
                "to",
            )
        };
        let usual = loss
            .usual
            .map(|usual| format!(" Usually {} %.", band(usual)))
            .unwrap_or_default();
        Said::because(
            format!(
                "Expect {} % less sugar, not proven until the soaked hay is tested",
                band(loss.expected)
            ),
            format!(
                "{}.{usual} Between hays it was {} %.",
                self.loss_basis(loss.basis),
                band(loss.between_hays)
            ),
        )
    }

    fn loss_basis(&self, basis: LossBasis) -> &'static str {
        match basis {
            LossBasis::ShortSoak => "A soak of up to two hours",
            LossBasis::ColdWater => "Water under 10 °C takes little",
            LossBasis::TooShort => "The soak is shorter than it takes",
            LossBasis::Curve => "A long soak, by the curve of the trials",
        }
    }

    fn dry_loss(&self, loss: &DryLoss) -> Said {
        Said::because(
            format!(
                "About {} of the dry matter goes down the drain",
                self.percent(loss.part.likely)
            ),
            format!(
                "Between {} and {} %. It is made up for in what is weighed out.",
                up_to(loss.part.least * 100.0, 0),
                up_to(loss.part.most * 100.0, 0)
            ),
        )
    }

    fn not_soaked(&self, why: NotSoaked) -> &'static str {
        match why {
            NotSoaked::Frozen => "Frozen",
            NotSoaked::NoTime => "No time",
            NotSoaked::HoseBan => "Hose ban",
            NotSoaked::Refused => "It refuses soaked hay",
        }
    }

    fn not_soaked_means(&self, why: NotSoaked) -> Said {
        let lighter = "Nothing is washed out of dry hay, so that less of it holds the same.";
        match why {
            NotSoaked::Frozen | NotSoaked::NoTime | NotSoaked::HoseBan => {
                Said::because("Hang it dry at the lighter reading", lighter)
            }
            NotSoaked::Refused => Said::because(
                "Feed dry hay now at the lighter reading, and try a shorter soak or a rinse",
                format!("{lighter} Watch that it eats."),
            ),
        }
    }

    fn liquor(&self, liquor: Liquor) -> Said {
        let why = "It is rich in sugar and takes the oxygen out of a stream.";
        match liquor {
            Liquor::NotIntoWater => Said::because(
                "Keep the water out of ditches, streams and surface drains",
                why,
            ),
            Liquor::NotToDrink => Said::because(
                "Keep it away from the water buckets: it is full of sugar",
                why,
            ),
            Liquor::SpreadThinly => Said::because("Spread it thinly on land away from water", why),
        }
    }

    fn soak_error(&self, error: &SoakError, zone: &dyn Zone) -> String {
        match error {
            SoakError::OutOfRange(error) => self.out_of_range(error),
            SoakError::Haylage => "Haylage is not soaked: feed it as it comes".to_owned(),
            SoakError::LongSoakInWarmAir { air } => format!(
                "Soak for two hours at most in this air ({}): longer only under 16 °C",
                self.air(*air)
            ),
            SoakError::OutOfOrder { earlier, later } => format!(
                "{} comes before {}, the step it follows: correct one of them",
                self.time_at(*later, zone),
                self.time_at(*earlier, zone)
            ),
        }
    }
}

impl English {
    /// How long to let it drain: "10 to 15 min".
    pub fn drain_time(&self) -> String {
        let minutes = |span: Span| span.to_minutes().to_string();
        format!("{} to {} min", minutes(*DRAIN_FROM), minutes(*DRAIN_TO))
    }
}
