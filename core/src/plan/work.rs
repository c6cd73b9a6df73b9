//! Work, by practice rule 17.

use super::draft::WorkLine;
use super::input::PlanFor;
use super::published::{
    BUILD_UP_WEEKS, RECOVERED_A_WEEK, UNFIT_MINUTES, WORK_A_WEEK, WORK_MINUTES,
};
use crate::animal::{Laminitis, Phase, VetFlag, VetScope};

/// What work it may have.
pub(super) fn work(of: &PlanFor<'_>) -> WorkLine {
    let health = &of.animal.health;
    let stopped = matches!(health.laminitis, Laminitis::Active)
        || of.animal.phase == Phase::Episode
        || of.stopped_by_signs(VetScope::Work)
        || health.flags.iter().any(|flag| {
            matches!(
                flag,
                VetFlag::Lame | VetFlag::PainRelief | VetFlag::BoxRest | VetFlag::Sick
            )
        });
    if stopped {
        return WorkLine::None;
    }
    // A word that was given before the last episode says nothing about what comes after it.
    let since = match health.laminitis {
        Laminitis::Ever { last } => last.max(of.said.laminitis),
        Laminitis::Active | Laminitis::Never | Laminitis::NotKnown => of.said.laminitis,
    };
    let allowed = of.words.iter().any(|word| {
        word.animal == of.animal.id
            && word.holds_on(of.day)
            && word.permit.scope() == VetScope::Work
            && since.is_none_or(|since| since <= word.given)
    });
    match health.laminitis {
        Laminitis::Active => WorkLine::None,
        Laminitis::Ever { .. } if allowed => WorkLine::Recovered {
            minutes: *WORK_MINUTES,
            a_week: *RECOVERED_A_WEEK,
        },
        Laminitis::Ever { .. } => WorkLine::VetsWordFirst,
        Laminitis::NotKnown => WorkLine::AskFirst,
        Laminitis::Never => WorkLine::Sound {
            minutes: *WORK_MINUTES,
            a_week: *WORK_A_WEEK,
            unfit_minutes: *UNFIT_MINUTES,
            build_up_weeks: *BUILD_UP_WEEKS,
        },
    }
}
