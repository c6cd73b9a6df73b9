//! Why the next step is what it is, in English: what was found, and how likely it is.

use super::English;
use super::fields::small;
use super::numbers::{odds, percent_above_nothing, sized, up_to};
use crate::words::{AnimalWords, BesideWords, LimitsWords, NextStepWords, Said, UnitWords};
use tussock_core::limits::published::CONDITION_THIN;
use tussock_core::limits::{Ends, RestrictionBar};
use tussock_core::progress::published::{
    RATE_FAST, RATE_READINGS, RATE_SLOW, RATE_WANTED, RATE_WEEKS, SCORES_FILLED,
};
use tussock_core::progress::{Band, Reason};

#[allow(clippy::too_many_lines, reason = "one reason an arm")]
pub(super) fn because(say: &English, reason: &Reason) -> Said {
    match reason {
        Reason::Stopped(ring) => Said::plain(format!(
            "Something stops it now: {}",
            small(say.ring_now(*ring))
        )),
        Reason::LookAgain => {
            Said::plain("A warm hoof or lying down more was seen, or a second look is still open")
        }
        Reason::FarDown { part } => Said::because(
            format!(
                "The last reading lies {} under the others",
                percent_above_nothing(*part)
            ),
            "One reading is not a trend: measure again now.",
        ),
        Reason::MeasuredAgain { chance } => Said::plain(format!(
            "Measured again: it loses too fast, {}",
            odds(*chance)
        )),
        Reason::DonkeyTooFast { chance } => Said::plain(format!(
            "It loses faster than a donkey may, {}",
            odds(*chance)
        )),
        Reason::InPhase(phase) => Said::plain(say.phase_means(*phase)),
        Reason::Wants(goal) => {
            Said::plain(format!("Wanted of its weight: {}", small(say.goal(*goal))))
        }
        Reason::NeverWeighed => Said::plain("It was never weighed or taped"),
        Reason::NoPlan => Said::plain("No plan holds"),
        Reason::ConditionUnder { condition, under } => Said::plain(format!(
            "Condition {}, which is under {}",
            say.condition_figure(*condition),
            up_to(*under, 1)
        )),
        Reason::FilledOut { condition } => Said::plain(format!(
            "Condition {}, and its last {} scores are {} or more",
            say.condition_figure(*condition),
            *SCORES_FILLED,
            up_to(*CONDITION_THIN, 1)
        )),
        Reason::LaminitisNow => Said::plain("It is said to have laminitis now"),
        Reason::LaminitisOver => {
            Said::plain("Nobody says that it has laminitis now, and no sign of it stands")
        }
        Reason::VetSpoke => Said::plain("The vet's word was given since"),
        Reason::LookedOverClean => Said::plain("Its last look-over was clean"),
        Reason::Sound => {
            Said::plain("Nobody says that it is lame, on pain relief, on box rest or sick")
        }
        Reason::ChangeProposed(phase) => Said::plain(format!(
            "A change of phase is due: {}",
            small(say.phase(*phase))
        )),
        Reason::AtStartFor { days, of } => {
            Said::plain(format!("{days} of {of} days at the starting level"))
        }
        Reason::Weighed { times, of } => Said::plain(format!(
            "Weighed on {} in this phase, of {of} that are asked",
            say.count(*times as usize, "day", "days")
        )),
        Reason::DonkeyWithoutWord => {
            Said::plain("What a donkey eats is changed with the vet's word, and none holds")
        }
        Reason::MayEatLess => Said::plain("Nothing of its kind stands in the way of less"),
        Reason::Watched {
            weeks,
            readings,
            enough,
        } => watched(say, *weeks, *readings, *enough),
        Reason::Rate { band, part, chance } => rate(*band, part, *chance),
        Reason::TargetReached { chance } => {
            Said::plain(format!("It is at its target, {}", odds(*chance)))
        }
        Reason::ReadingsOver { readings } => Said::plain(format!(
            "Its last {} over the band in which its weight holds",
            say.count(*readings as usize, "reading lies", "readings lie")
        )),
        Reason::GirthUp { by } => Said::plain(format!("Its girth grew by {}", say.length(*by))),
        Reason::OverBand { chance } => Said::plain(format!(
            "It is over the band in which its weight holds, {}",
            odds(*chance)
        )),
        Reason::Holds { chance } => Said::plain(format!("Its weight holds, {}", odds(*chance))),
        Reason::EatsMore { at_least, planned } => Said::plain(format!(
            "It ate at least {}, and {} was planned",
            say.level_beside(*at_least, *planned),
            say.level(*planned)
        )),
        Reason::EatenNotKnown { seen: None } => Said::plain("Nobody logged what it eats"),
        Reason::EatenNotKnown { seen: Some(seen) } => Said::plain(format!(
            "Of what it was offered only {} was seen",
            say.percent(*seen)
        )),
        Reason::GrassNotCounted => {
            Said::plain("It is at grass, and what it eats there is not counted")
        }
        Reason::AtStart { level } => Said::plain(format!(
            "It is on {}, which is no restriction",
            say.level(*level)
        )),
        Reason::HayNotTested { lasts } => Said::plain(format!(
            "Its hay is not tested, and lasts {lasts} days more"
        )),
        Reason::NoStepLeft { level: Some(level) } => Said::plain(format!(
            "It is on {}, and nothing less may be fed",
            say.level(*level)
        )),
        Reason::NoStepLeft { level: None } => Said::plain("Nothing less may be fed"),
        Reason::StepNeedsVet { to, bars } => {
            let sentence = format!("{} needs the vet's word", say.level(*to));
            barred(say, sentence, bars)
        }
        Reason::StepBarred { to, bars } => {
            let sentence = format!("Something stands in the way of {}", say.level(*to));
            barred(say, sentence, bars)
        }
    }
}

fn barred(say: &English, sentence: String, bars: &[RestrictionBar]) -> Said {
    let why: Vec<String> = bars
        .iter()
        .map(|bar| format!("{}.", say.restriction_bar(bar).sentence))
        .collect();
    if why.is_empty() {
        Said::plain(sentence)
    } else {
        Said::because(sentence, why.join(" "))
    }
}

fn watched(say: &English, weeks: f64, readings: usize, enough: bool) -> Said {
    let asked = format!(
        "A rate takes {} weeks and {} readings since its weight had settled.",
        up_to(*RATE_WEEKS, 0),
        *RATE_READINGS
    );
    if readings == 0 {
        return Said::because("Its rate is not known yet", asked);
    }
    let seen = format!(
        "{} weeks with {} so far",
        up_to(weeks, 1),
        say.count(readings, "reading", "readings")
    );
    if enough && *RATE_WEEKS <= weeks {
        Said::plain(seen)
    } else {
        Said::because(seen, asked)
    }
}

/// The band with its chance; behind it the rate itself with its ends.
fn rate(band: Band, part: &Ends<f64>, chance: f64) -> Said {
    let (slow, wanted, fast) = (
        up_to(*RATE_SLOW, 2),
        up_to(*RATE_WANTED, 2),
        up_to(*RATE_FAST, 2),
    );
    let band = match band {
        Band::UnderQuarter => format!("It loses under {slow} % a week, or nothing"),
        Band::ToHalf => format!("It loses {slow} to {wanted} % a week"),
        Band::ToOne => format!("It loses {wanted} to {fast} % a week"),
        Band::QuarterOrMore => format!("It loses {slow} % a week or more"),
        Band::OverOne => format!("It loses over {fast} % a week"),
        Band::NoGain => "It does not gain".to_owned(),
    };
    let lost = part.map(|part| part * PERCENT);
    let likely = if lost.likely < 0.0 {
        format!("a gain of {}", sized(-lost.likely))
    } else {
        format!("a loss of {}", sized(lost.likely))
    };
    Said::because(
        format!("{band}, {}", odds(chance)),
        format!(
            "Most likely {likely} % of its weight a week, between a loss of {} and of {}.",
            up_to(lost.least, 1),
            up_to(lost.most, 1)
        ),
    )
}

const PERCENT: f64 = 100.0;
