//! Weighing and measuring, in English.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::words::{AssessWords, MeasureWords, Said, UnitWords};
use tussock_core::animal::Kind;
use tussock_core::assess::{
    Change, Doubt, DoubtAnswer, Earlier, Jump, LengthKind, Measure, NeckLine, TapeTool,
};
use tussock_core::units::Length;

fn percent_of_weight(jump: &Jump) -> String {
    format!("{} %", up_to((jump.part * 100.0).abs(), 1))
}

impl English {
    fn in_days(&self, days: i64) -> String {
        self.count(
            usize::try_from(days.max(0)).unwrap_or_default(),
            "day",
            "days",
        )
    }

    /// A length that may be less than nothing, without its sign.
    fn so_much(&self, by: Length) -> String {
        self.length(Length::cm(by.to_cm().abs()))
    }
}

impl MeasureWords for English {
    fn take(&self, measure: Option<Measure>, place: usize) -> String {
        let name = match measure {
            Some(Measure::HeartGirth) => "Heart girth",
            Some(Measure::UmbilicalGirth) => "Belly girth",
            Some(Measure::Neck) => "Neck",
            Some(Measure::Length) => "Length",
            Some(Measure::Height) => "Height at the withers",
            None => "The scale shows",
        };
        match place {
            0 => name.to_owned(),
            1 => format!("{name}, second time"),
            _ => format!("{name}, third time"),
        }
    }

    fn how_to_take(&self, measure: Measure, kind: LengthKind) -> String {
        match measure {
            Measure::HeartGirth => {
                "Round the chest just behind the elbow and over the withers, as it breathes out. Centimetres, or inches as 68 in.".to_owned()
            }
            Measure::UmbilicalGirth => {
                "Round the belly at the navel, level all the way. May be left out.".to_owned()
            }
            Measure::Neck => {
                "Round the neck halfway between poll and withers, head held as it carries it."
                    .to_owned()
            }
            Measure::Length => format!("{}.", self.where_to_lay(kind)),
            Measure::Height => {
                "On level ground, without shoes. Centimetres, or hands as 12.2 hh.".to_owned()
            }
        }
    }

    fn once_more(&self, measure: Option<Measure>) -> &'static str {
        match measure {
            Some(Measure::HeartGirth) => "Heart girth once more",
            Some(Measure::UmbilicalGirth) => "Belly girth once more",
            Some(Measure::Neck) => "Neck once more",
            Some(Measure::Length) => "Length once more",
            Some(Measure::Height) => "Height once more",
            None => "Weigh once more",
        }
    }

    fn more_measures(&self) -> &'static str {
        "Neck, length, height"
    }

    fn which_length(&self) -> &'static str {
        "Which length?"
    }

    fn which_tool(&self) -> &'static str {
        "Measured with"
    }

    fn tool(&self, tool: TapeTool) -> &'static str {
        match tool {
            TapeTool::Tape => "Tape",
            TapeTool::StringAndRuler => "String and ruler",
        }
    }

    fn stood_on(&self) -> &'static str {
        "What did it stand on?"
    }

    fn animal_scale(&self) -> &'static str {
        "Animal scale"
    }

    fn vehicle_weighbridge(&self) -> &'static str {
        "Vehicle weighbridge"
    }

    fn with_animal(&self) -> &'static str {
        "Trailer with the animal"
    }

    fn without_animal(&self) -> &'static str {
        "Trailer without it"
    }

    fn with_animal_hint(&self) -> &'static str {
        "Same vehicle, same fuel, nobody in it, both on one day. A weighbridge shows steps of 20 kg."
    }

    fn no_difference(&self) -> &'static str {
        "With the animal it must be heavier than without it: are the two the other way round?"
    }

    fn where_the_tape_goes(&self) -> &'static str {
        "Where the tape goes"
    }

    fn measures_so_far(&self) -> &'static str {
        "Measures so far"
    }

    fn about(&self, kg: &str, either_way: &str) -> String {
        format!("About {kg}, give or take {either_way}")
    }

    #[allow(clippy::too_many_lines, reason = "one sentence a question")]
    fn doubt(&self, doubt: &Doubt) -> Said {
        match doubt {
            Doubt::Inches {
                measure,
                read,
                as_inches,
            } => Said::because(
                format!(
                    "{} of {}: was that in inches?",
                    self.measure(*measure),
                    self.length(*read)
                ),
                format!("In inches it would be {}.", self.length(*as_inches)),
            ),
            Doubt::Pounds { read, as_pounds } => Said::because(
                format!("{}: was that in pounds?", self.body(*read)),
                format!("In pounds it would be {}.", self.body(*as_pounds)),
            ),
            Doubt::UnusualMeasure { measure, read } => Said::because(
                format!(
                    "{} of {} is unusual for it: measure again",
                    self.measure(*measure),
                    self.length(*read)
                ),
                "It does not go with its kind, its height, its other measures or the last time.",
            ),
            Doubt::UnusualWeight { read } => Said::because(
                format!("{} is unusual for it: weigh again", self.body(*read)),
                "It does not go with its kind, its height or the last time.",
            ),
            Doubt::OtherLength {
                taken,
                looks_like,
                length_to_girth,
            } => Said::because(
                match looks_like {
                    LengthKind::ElbowToTuber => {
                        "Was this length taken from the elbow, as of a donkey?"
                    }
                    LengthKind::Wrap | LengthKind::Straight => {
                        "Was this length taken from the shoulder, as of a horse?"
                    }
                },
                format!(
                    "It is {} of the girth, which is not usual. Needed here: {}. With the wrong one the weight is out by about a quarter.",
                    self.percent(*length_to_girth),
                    small(self.where_to_lay(*taken)),
                ),
            ),
            Doubt::SmallHorse { height } => Said::because(
                format!("A horse of {}: is that right?", self.height(*height)),
                "Under 112 cm the closer equations do not hold: the weight goes by girth and length only, within 15 %, and a scale is needed before any restriction.",
            ),
            Doubt::Apart(measure) => Said::because(
                format!(
                    "The two readings of the {} lie apart: take a third",
                    small(self.measure(*measure))
                ),
                "Their mean counts. A third shows which of them slipped.",
            ),
            Doubt::Odd { measure, read, .. } => Said::because(
                format!(
                    "{} of {} lies away from the other two",
                    self.measure(*measure),
                    self.length(*read)
                ),
                "Left out, the mean of the other two counts. It is kept either way.",
            ),
            Doubt::Scattered(measure) => Said::because(
                format!(
                    "No two readings of the {} lie together: take them again",
                    small(self.measure(*measure))
                ),
                "Let it stand square and breathe out, and lay the tape level.",
            ),
            Doubt::ScaleApart => Said::because(
                "The readings of the scale lie apart: weigh again",
                "All four feet on it, standing still.",
            ),
            Doubt::FrameDiffers {
                measure,
                before,
                now,
            } => Said::because(
                format!(
                    "{} was {}, now {}: measure again",
                    self.measure(*measure),
                    self.length(*before),
                    self.length(*now)
                ),
                "The bones of a grown animal do not change: lay the tape to the same two points.",
            ),
            Doubt::Fell(jump) => Said::because(
                format!(
                    "{} lighter than {} ago: measure again now",
                    percent_of_weight(jump),
                    self.in_days(jump.days)
                ),
                "1 cm of girth is 1 to 2 % of weight, so one reading may be the tape. If a second says the same, feed more and ring the vet.",
            ),
            Doubt::Rose(jump) => Said::because(
                format!(
                    "{} heavier than {} ago: measure again",
                    percent_of_weight(jump),
                    self.in_days(jump.days)
                ),
                "1 cm of girth is 1 to 2 % of weight, so one reading may be the tape.",
            ),
        }
    }

    fn doubt_answer(&self, doubt: &Doubt, answer: DoubtAnswer) -> &'static str {
        match answer {
            DoubtAnswer::Right => "It is right",
            DoubtAnswer::Again => match doubt {
                Doubt::Pounds { .. } | Doubt::UnusualWeight { .. } | Doubt::ScaleApart => {
                    "Weigh again"
                }
                _ => "Measure again",
            },
            DoubtAnswer::OtherUnit => match doubt {
                Doubt::Pounds { .. } => "It was pounds",
                _ => "It was inches",
            },
            DoubtAnswer::LeftOut => "Leave it out",
        }
    }

    fn answer_first(&self) -> &'static str {
        "Answer what is asked above, then save."
    }

    fn fell(&self, jump: &Jump, kind: Kind) -> Said {
        let vet = if kind.fat_in_blood_risk() {
            "ring the vet today"
        } else {
            "ring the vet"
        };
        Said::because(
            format!(
                "{} lighter in {}, measured twice: feed up to 1.5 % of its weight and {vet}",
                percent_of_weight(jump),
                self.in_days(jump.days)
            ),
            "More than 2 % in a week is too fast. In ponies, miniatures and donkeys it can flood the blood with fat, which kills.",
        )
    }

    fn since_last_time(&self) -> &'static str {
        "Since last time"
    }

    fn changed(&self, change: &Change) -> String {
        let cm = change.by.to_cm();
        if cm > 0.0 {
            format!("up {}", self.so_much(change.by))
        } else if cm < 0.0 {
            format!("down {}", self.so_much(change.by))
        } else {
            "the same".to_owned()
        }
    }

    fn change_means(&self, change: &Change) -> String {
        let line = self.so_much(change.noise);
        let means = if change.is_more_than_noise() {
            format!("more than a tape varies by itself, {line}")
        } else {
            format!("no more than a tape varies by itself, {line}")
        };
        let tool = if change.same_tool {
            ""
        } else {
            ", and not the same tape"
        };
        format!("Since {}: {means}{tool}", self.day(change.since))
    }

    fn neck_to_height(&self, ratio: f64, line: NeckLine) -> Said {
        let figure = self.ratio(ratio);
        match line {
            NeckLine::Pony { line, over: true } => Said::because(
                format!(
                    "The neck is {figure} of the height: over {}, where more ponies foundered later",
                    up_to(line, 2)
                ),
                "From memory, one study of ponies at pasture. It counted beside condition, crest and insulin: score the crest too, and ask the vet.",
            ),
            NeckLine::Pony { line, over: false } => Said::because(
                format!(
                    "The neck is {figure} of the height, not over {}",
                    up_to(line, 2)
                ),
                "Over that line more ponies foundered later at pasture (from memory, one study). Under it nothing is proven: score the crest too.",
            ),
            NeckLine::NotConfirmed => Said::because(
                format!("The neck is {figure} of the height"),
                "No line for this kind could be confirmed. Watch how it changes.",
            ),
        }
    }

    fn measures_of(&self, name: &str, belly: Option<&Change>) -> String {
        match belly {
            None => format!("Measures of {name}"),
            Some(change) => format!("{name}'s belly: {}", self.changed(change)),
        }
    }

    fn measure_heads(&self) -> Vec<&'static str> {
        vec![
            "Day",
            "Heart girth",
            "Belly girth",
            "Neck",
            "Length",
            "Height",
            "Neck to height",
        ]
    }

    fn measured(&self, earlier: &Earlier) -> String {
        let length = self.length(earlier.length);
        match earlier.takes {
            0 | 1 => length,
            takes => format!("{length}, mean of {takes}"),
        }
    }

    fn not_taken(&self) -> &'static str {
        "not taken"
    }

    fn ratio(&self, ratio: f64) -> String {
        tussock_core::units::show::fixed(ratio, 2)
    }

    fn measures_why(&self) -> Said {
        Said::because(
            "Girths follow weight before condition does",
            "In trials of weight loss the belly girth went with weight and inner fat while the condition score stood still for months. Same person, same tape, same time of day.",
        )
    }
}
