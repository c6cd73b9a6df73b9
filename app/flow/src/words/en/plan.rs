//! The plan.

use super::English;
use super::numbers::up_to_beside;
use crate::words::{
    AnimalWords, AssessWords, DayWords, ForageWords, LimitsWords, PlanWords, RationWords, Said,
    Sign, UnitWords,
};
use tussock_core::animal::{AnimalId, Answer, RiskFactor};
use tussock_core::forage::Fed;
use tussock_core::graze::intake::Shortened;
use tussock_core::limits::published::{ENERGY_FLOOR, ENERGY_FLOOR_WITHOUT_VET, FLOOR};
use tussock_core::plan::{
    BucketLine, EnergyLine, GrassLine, HayLine, Lever, PlanError, Raised, Separate, Signs,
};
use tussock_core::work::WorkLine;

impl PlanWords for English {
    fn sign_question(&self, sign: Sign) -> &'static str {
        match sign {
            Sign::Gait => "Does it walk shorter, stiffer or slower?",
            Sign::Stance => "Does it stand unlike itself?",
            Sign::Turning => "Does it turn with difficulty?",
            Sign::ShiftingWeight => "Does it shift weight foot to foot?",
            Sign::StrongPulse => "Is there a strong pulse at a foot?",
            Sign::FootPain => "Is a foot painful?",
            Sign::WarmHoof => "Is a hoof warmer than usual?",
            Sign::LyingMore => "Does it lie down more than usual?",
        }
    }

    fn sign_how(&self, sign: Sign) -> &'static str {
        match sign {
            Sign::Gait => "Watch it walk on hard and on soft ground. Never force it",
            Sign::Stance => {
                "Weight back on the heels, forefeet out in front, or all feet drawn together"
            }
            Sign::Turning => "Lead it round in a small circle each way",
            Sign::ShiftingWeight => "Stand back for two minutes and watch all four feet",
            Sign::StrongPulse => "Two fingers on the side of the pastern, each foot in turn",
            Sign::FootPain => "It will not lift a foot, or flinches when the toe is pressed",
            Sign::WarmHoof => "Back of the hand on each hoof wall. Cool feet do not rule it out",
            Sign::LyingMore => "More than is usual for it, or at hours when it never did",
        }
    }

    fn sign(&self, sign: Sign) -> &'static str {
        match sign {
            Sign::Gait => "a changed gait",
            Sign::Stance => "an odd stance",
            Sign::Turning => "difficulty in turning",
            Sign::ShiftingWeight => "shifting its weight",
            Sign::StrongPulse => "a strong pulse at a foot",
            Sign::FootPain => "pain in a foot",
            Sign::WarmHoof => "a warm hoof",
            Sign::LyingMore => "lying down more",
        }
    }

    fn signs(&self, signs: &Signs) -> Said {
        let seen = |answer: Answer| -> Vec<&str> {
            Sign::ALL
                .iter()
                .filter(|sign| sign.of(signs) == answer)
                .map(|sign| self.sign(*sign))
                .collect()
        };
        let (yes, open) = (seen(Answer::Yes), seen(Answer::NotKnown));
        let rest = if open.is_empty() {
            String::new()
        } else {
            format!(" Not looked at: {}.", self.list(&open))
        };
        if signs.for_the_vet() {
            Said::because(
                "Stop grazing and work. Soft bed. Vet today",
                format!("Seen: {}. Keep hay in front of it.{rest}", self.list(&yes)),
            )
        } else if signs.look_again() {
            Said::because(
                "No grass, no work. Look again in 2 hours",
                format!(
                    "Seen: {}. Look again tonight too; if it had laminitis before, ring the vet today.{rest}",
                    self.list(&yes)
                ),
            )
        } else if open.is_empty() {
            Said::because(
                "No signs seen",
                "No single sign is always there, and cool feet do not rule it out.",
            )
        } else {
            Said::because("Not complete", rest.trim_start().to_owned())
        }
    }

    fn lever(&self, lever: &Lever) -> Said {
        let at_the_ends = |ends| {
            format!(
                "Between the ends of its weight lie {} a day.",
                self.dry_ends(ends)
            )
        };
        match lever {
            Lever::TestTheHay { outlook } => {
                let Said { sentence, why } = self.test_outlook(outlook);
                let why: Vec<String> = std::iter::once(format!("{sentence}.")).chain(why).collect();
                Said::because("Have the hay tested", why.join(" "))
            }
            Lever::WeighOnAScale { dry_matter } => {
                Said::because("Weigh it on a scale", at_the_ends(*dry_matter))
            }
            Lever::MeasureTheLength { dry_matter } => {
                Said::because("Tape its length too", at_the_ends(*dry_matter))
            }
            Lever::ScoreTheSites => Said::because(
                "Score its condition site by site",
                "One answer about the ribs is a wide range.",
            ),
            Lever::TestInsulin => Said::because(
                "Ask the vet for an insulin test",
                "How strictly sugar is kept from it hangs on that.",
            ),
            Lever::ShortenTheGap { now_h, then_h } => Said::because(
                "Shorten the longest wait without forage",
                format!("Now {}, then {}.", self.wait(*now_h), self.wait(*then_h)),
            ),
            Lever::TypeTheLabel => Said::because(
                "Type the label of the balancer",
                "A typical one, from memory, stands in.",
            ),
            Lever::TimeANet => Said::because(
                "Time one net until it is empty",
                "How fast this animal eats decides how long it waits.",
            ),
        }
    }

    fn grass(&self, grass: &GrassLine) -> Said {
        match grass {
            GrassLine::None { why } if why.is_empty() => Said::plain("No grass in this plan"),
            GrassLine::None { why } => {
                let facts: Vec<&str> = why
                    .iter()
                    .map(|factor: &RiskFactor| self.risk_factor(*factor))
                    .collect();
                Said::because(
                    "No grass in this plan",
                    format!("What closes it: {}.", self.list(&facts)),
                )
            }
            GrassLine::NotCounted => Said::because(
                "Grass is not counted: limit its hours and area",
                "What it eats there comes on top of this plan.",
            ),
            GrassLine::Counted(day) => self.grass_day(day),
        }
    }

    fn shortened(&self, why: Shortened) -> &'static str {
        match why {
            Shortened::DryMatter => "the most it may eat there would be too much beside its hay",
            Shortened::Sugar => "the sugar of grass would take the day over its limit",
            Shortened::HayLeavesNoRoom => {
                "its hay is not proven within the limit, so there is no room for grass"
            }
            Shortened::AtRisk => "an animal at risk stays out 3 hours at most",
            Shortened::Muzzle => "a muzzle stays on 10 hours at most",
        }
    }

    fn work(&self, work: &WorkLine) -> Said {
        match work {
            WorkLine::None => Said::because(
                "No work",
                "None while it is lame, sick, on pain relief or box rest, in an episode, or while a sign stands.",
            ),
            WorkLine::NotPlannedHere(state) => Said::because(
                "Ask the vet what work it may do",
                format!("{}: no work is planned for it here.", self.state(*state)),
            ),
            WorkLine::VetsWordFirst => Said::because(
                "Work only after the vet's word",
                "It had laminitis. Ask the vet, and write the word down.",
            ),
            WorkLine::AskFirst => Said::because(
                "Walk only, until you know about laminitis",
                "Nobody knows whether it had laminitis: ask those who had it before, or the vet.",
            ),
            WorkLine::Recovered { minutes, a_week } => Said::because(
                format!("{minutes} min, {a_week} or more times a week, soft ground"),
                "Trot to canter, on the vet's word. Stop at the first odd step.",
            ),
            WorkLine::Donkey { minutes, a_week } => Said::because(
                format!("Walk it up to {minutes} min, {a_week} or more times a week"),
                "How much work suits a donkey is not published: in hand, at its own pace, never forced.",
            ),
            WorkLine::Sound {
                minutes,
                a_week,
                unfit_minutes,
                build_up_weeks,
            } => Said::because(
                format!("Over {minutes} min, {a_week} times a week or more"),
                format!(
                    "Canter to fast canter; blowing, but settled in 10 min. Unfit: begin with {unfit_minutes} min and build up over {build_up_weeks} weeks. Three sessions are better than none."
                ),
            ),
        }
    }

    fn raised(&self, raised: Raised) -> Said {
        let more = |factor: f64| super::numbers::percent_above_nothing((factor - 1.0).max(0.0));
        match raised {
            Raised::ToDryMatterFloor { factor } => Said::because(
                format!("{} more hay, so that it never has too little", more(factor)),
                format!(
                    "At the driest hay and the greatest loss it must still have {}.",
                    self.level(*FLOOR)
                ),
            ),
            Raised::ToEnergyFloor { factor } => Said::because(
                format!(
                    "{} more hay, so that its energy keeps its floor",
                    more(factor)
                ),
                format!(
                    "The least that reaches it must keep {} of what an average animal of its weight needs; with the vet's word {}.",
                    self.percent(*ENERGY_FLOOR_WITHOUT_VET),
                    self.percent(*ENERGY_FLOOR)
                ),
            ),
        }
    }

    fn hay(&self, hay: &HayLine) -> Said {
        let class = self.forage_class(hay.class);
        match hay.fed {
            Fed::Dry => Said::because(
                format!("{}: {} a day", hay.name, self.feed(hay.weigh_out)),
                format!("{} eaten. {class}.", self.dry(hay.eaten)),
            ),
            Fed::Soaked => Said::because(
                format!(
                    "{}: {} a day, weighed before soaking",
                    hay.name,
                    self.feed(hay.weigh_out)
                ),
                format!(
                    "{} eaten. {class}. Not soaked today: hang {} in all.",
                    self.dry(hay.eaten),
                    self.feed(hay.weigh_out_unsoaked)
                ),
            ),
        }
    }

    fn energy_line(&self, energy: &EnergyLine) -> Said {
        let verdict = self.energy_verdict(energy.verdict);
        let supplied = self.energy_ends(energy.supplied);
        let need = energy.need.map_or_else(
            || "no need is reckoned for it".to_owned(),
            |need| {
                format!(
                    "an average animal of its weight and work needs {}",
                    self.energy(need)
                )
            },
        );
        let why = verdict.why.map(|why| format!(" {why}")).unwrap_or_default();
        Said::because(
            verdict.sentence,
            format!("Forage brings {supplied}; {need}.{why}"),
        )
    }

    fn bucket_line(&self, line: &BucketLine) -> Said {
        let name = if line.name.is_empty() {
            "Balancer"
        } else {
            line.name.as_str()
        };
        let Said { sentence, why } = self.dose(&line.dose);
        let typical = if line.wants_label() {
            " Its numbers are typical, from memory: type the label of yours."
        } else {
            ""
        };
        Said::because(
            format!("{name}: {sentence}"),
            format!("{}{typical}", why.unwrap_or_default()),
        )
    }

    fn separate(&self, why: &Separate, name: &dyn Fn(&AnimalId) -> String) -> Said {
        match why {
            Separate::UnderFloor {
                animal,
                least,
                floor,
            } => Said::because(
                format!(
                    "Separate {} from the others at hay time: they may leave it too little",
                    name(animal)
                ),
                format!(
                    "Of what each needs alone it would get {} at the least, and the floor is {}: all get more for it.",
                    self.level_beside(*least, *floor),
                    self.level(*floor)
                ),
            ),
            Separate::GoalsApart { loses, gains } => Said::because(
                format!("Separate {} and {} at hay time", name(loses), name(gains)),
                "One must lose and one must gain: one pile of hay cannot do both.",
            ),
            Separate::NotWithRestricted { animal, restricted } => Said::because(
                format!(
                    "Separate {} and {} at hay time",
                    name(animal),
                    name(restricted)
                ),
                format!(
                    "{} must not be restricted, and {} is.",
                    name(animal),
                    name(restricted)
                ),
            ),
        }
    }

    fn plan_error(&self, error: &PlanError) -> Said {
        match error {
            PlanError::NoWeight => Said::plain("Tape or weigh it first"),
            PlanError::NoForage => Said::plain("Name a hay first"),
            PlanError::PartsDoNotAddUp { sum } => Said::plain(format!(
                "The parts of the hays make {} %, not 100: correct one",
                up_to_beside(sum * 100.0, 100.0, 0)
            )),
            PlanError::DryMatterNotKnown { lot: _ } => Said::because(
                "Ask for the dry matter of the haylage first",
                "Without it kilograms say little.",
            ),
            PlanError::EmptyGroup => Said::plain("Nobody is in this group today: add an animal"),
            PlanError::Assess(error) => Said::plain(self.assess_error(error)),
            PlanError::Limits(error) => Said::plain(self.limits_error(error)),
            PlanError::Day(error) => Said::plain(self.day_error(error)),
            PlanError::OutOfRange(error) => Said::plain(self.out_of_range(error)),
        }
    }
}
