//! What the reckoning of grass rests on, in English.

use super::English;
use super::numbers::{between, up_to};
use crate::views::grass_model::{Base, TrialRow};
use crate::words::{GrassModelWords, Said, SourceWords, UnitWords};
use tussock_core::graze::intake::published as p;
use tussock_core::graze::intake::{Trial, Tried};
use tussock_core::sources::{Constant, Mark};
use tussock_core::units::PartOfBody;
use tussock_core::units::show::fixed;

/// A part of body weight in percent, as a column of a table has it.
fn percent(part: PartOfBody) -> String {
    fixed(part.to_percent(), 2)
}

impl English {
    /// Work and place of a constant; where there is no work, the place alone.
    fn work_and_place(&self, constant: &Constant) -> String {
        match constant.mark {
            Mark::Ours | Mark::CommonPractice | Mark::FromMemory => constant.place.to_owned(),
            Mark::Published | Mark::WorkedOut => {
                format!("{}, {}", self.citation(constant.work), constant.place)
            }
        }
    }
}

impl GrassModelWords for English {
    fn grass_model_head(&self) -> &'static str {
        "What the grass reckoning rests on"
    }
    fn tuned_to_these(&self) -> Said {
        Said::because(
            "The model was tuned to these very trials, and tested on no others",
            "That it agrees with them says nothing of other animals on other grass. Few animals were watched, on a few \
             swards. Weigh and look every week: that tells more than this table.",
        )
    }
    fn model_in_words(&self) -> &'static str {
        "An animal eats fast at first and slower later: each hour brings less than the one before, towards what it would \
         come to without end."
    }
    fn trials_head(&self) -> &'static str {
        "Seen in trials, and reckoned: % of body weight a day, as dry matter"
    }
    fn trial_columns(&self) -> [&'static str; 4] {
        ["Trial", "Seen", "Reckoned", "Least to most"]
    }
    fn trial(&self, trial: Trial) -> &'static str {
        match trial {
            Trial::FirstWeek => "Ponies, 3 h, first week",
            Trial::SixthWeek => "Ponies, 3 h, sixth week",
            Trial::EightHours => "Horses, 8 h",
            Trial::FirstFourHours => "Horses, first 4 h of them",
            Trial::DayAndNight => "Ponies, day and night, a year",
        }
    }
    fn seen_in_trial(&self, tried: &Tried) -> String {
        let (least, most) = tried.seen;
        between(&percent(least), &percent(most), "to")
    }
    fn reckoned_of_trial(&self, tried: &Tried) -> String {
        percent(tried.reckoned.likely)
    }
    fn ends_of_trial(&self, tried: &Tried) -> String {
        between(
            &percent(tried.reckoned.least),
            &percent(tried.reckoned.most),
            "to",
        )
    }
    fn beyond_the_most(&self, tried: &Tried) -> Option<String> {
        let (_, seen) = tried.seen;
        tried.beyond().then(|| {
            format!(
                "{}: up to {} % was seen, over the most that is reckoned, {} %. For whole days out the most here is no upper \
                 bound",
                self.trial(tried.trial),
                percent(seen),
                percent(tried.reckoned.most)
            )
        })
    }
    fn trial_from(&self, row: &TrialRow) -> [String; 2] {
        let mark = row
            .from
            .first()
            .map_or_else(String::new, |from| self.mark_means(from.mark).to_owned());
        let from: Vec<String> = row
            .from
            .iter()
            .map(|constant| self.work_and_place(constant))
            .collect();
        [mark, from.join("; ")]
    }
    fn model_numbers(&self) -> &'static str {
        "The numbers of the model"
    }
    fn ends_in_words(&self) -> &'static str {
        "Hay comes off by the least, and by nothing where nobody looked at the leaf. What must not be passed is judged with \
         the most, and with the sweetest grass."
    }
    fn muzzle_numbers(&self) -> &'static str {
        "The muzzle"
    }
    fn muzzle_in_words(&self) -> &'static str {
        "Two trials of a few hours with three to four animals each, and they do not agree. So the most counts a muzzle with \
         what it held back least, and the least with what it held back most."
    }
    fn base(&self, base: Base) -> &'static str {
        match base {
            Base::FirstHours => "Two thirds of it are eaten in",
            Base::Least => "Without end, at the least",
            Base::New => "Without end, new to it",
            Base::UsedHorse => "Without end, a horse used to it",
            Base::UsedPony => "Without end, any other used to it",
            Base::Weeks => "Used to it after",
            Base::Most => "Without end, at the most",
            Base::SugarMost => "Sugar and starch, at the most",
            Base::MuzzleLeast => "Held back, the least",
            Base::MuzzleLikely => "Held back, as it is reckoned",
            Base::MuzzleSeasons => "Held back in the other trial, from",
            Base::MuzzleMost => "Held back, the most",
            Base::MuzzleLongest => "Longest in a day",
        }
    }
    fn base_value(&self, base: Base) -> String {
        match base {
            Base::FirstHours => format!("{} h", up_to(*p::FIRST_HOURS, 1)),
            Base::Least => self.level(*p::LOWER),
            Base::New => self.level(*p::UNADAPTED),
            Base::UsedHorse => self.level(*p::ADAPTED_HORSE),
            Base::UsedPony => self.level(*p::ADAPTED_PONY),
            Base::Weeks => format!("{} weeks", up_to(*p::ADAPTED_WEEKS, 0)),
            Base::Most => self.level(*p::UPPER),
            Base::SugarMost => format!("{} % of dry matter", up_to(p::SUGAR_MOST.to_percent(), 0)),
            Base::MuzzleLeast => self.percent(*p::MUZZLE_LEAST),
            Base::MuzzleLikely => self.percent(*p::MUZZLE_LIKELY),
            Base::MuzzleSeasons => self.percent(*p::MUZZLE_SEASONS_LEAST),
            Base::MuzzleMost => self.percent(*p::MUZZLE_MOST),
            Base::MuzzleLongest => self.span(*p::MUZZLE_LONGEST),
        }
    }
    fn base_from(&self, base: Base) -> [String; 2] {
        let constant = base.constant();
        [
            self.mark_means(constant.mark).to_owned(),
            self.work_and_place(&constant),
        ]
    }
    fn back_to_the_paddock(&self) -> &'static str {
        "Back to the paddock"
    }
    fn number_from_where(&self) -> &'static str {
        "where it comes from"
    }
}
