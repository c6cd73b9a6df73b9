//! Changes of phase: which one is due and why, and which ones a person may choose. A person confirms every change.

use super::step::{Facts, If, Origin, Reason};
use crate::animal::{Goal, Phase};
use crate::sources::{Mark, Work};

/// A change of phase that is proposed when all its conditions hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PhaseChange {
    /// From one of these.
    pub from: &'static [Phase],
    /// All of these hold.
    pub when: &'static [If],
    /// To this one.
    pub to: Phase,
    /// Where it comes from.
    pub origin: Origin,
}

const fn ours(place: &'static str) -> Origin {
    Origin {
        work: Work::Tussock,
        place,
        mark: Mark::Ours,
    }
}

/// The changes, the first of which that holds is proposed.
#[rustfmt::skip]
pub const CHANGES: &[PhaseChange] = &[
    PhaseChange { from: &[Phase::New, Phase::Losing, Phase::Plateau, Phase::Holding, Phase::NeedsWeight, Phase::Recovering, Phase::OtherHands],
        when: &[If::LaminitisNow], to: Phase::Episode, origin: ours("phases: episode") },
    PhaseChange { from: &[Phase::Episode], when: &[If::LaminitisOver, If::VetSpoke], to: Phase::Recovering, origin: ours("phases: episode") },
    PhaseChange { from: &[Phase::Recovering], when: &[If::LaminitisOver, If::LookedOverClean, If::Sound, If::VetSpoke],
        to: Phase::New, origin: ours("phases: recovering, until the vet says it is over") },
    PhaseChange { from: &[Phase::New, Phase::Losing, Phase::Plateau, Phase::Holding], when: &[If::Thin], to: Phase::NeedsWeight, origin: ours("phases: needs weight") },
    PhaseChange { from: &[Phase::New], when: &[If::Settled, If::WeighedTwice, If::Wants(Goal::Gain)], to: Phase::NeedsWeight, origin: ours("phases: new") },
    PhaseChange { from: &[Phase::New], when: &[If::Settled, If::WeighedTwice, If::Wants(Goal::Hold)], to: Phase::Holding, origin: ours("phases: new") },
    PhaseChange { from: &[Phase::New], when: &[If::Settled, If::WeighedTwice, If::TargetReached], to: Phase::Holding, origin: ours("phases: new") },
    PhaseChange { from: &[Phase::New], when: &[If::Settled, If::WeighedTwice, If::Wants(Goal::Lose), If::MayEatLess], to: Phase::Losing, origin: ours("phases: new") },
    PhaseChange { from: &[Phase::Losing, Phase::Plateau], when: &[If::TargetReached], to: Phase::Holding, origin: ours("phases: holding") },
    PhaseChange { from: &[Phase::Losing], when: &[If::LongEnough, If::Slow], to: Phase::Plateau, origin: ours("phases: plateau") },
    PhaseChange { from: &[Phase::Plateau], when: &[If::Loses], to: Phase::Losing, origin: ours("phases: plateau") },
    PhaseChange { from: &[Phase::Holding], when: &[If::Regained, If::MayEatLess], to: Phase::Losing, origin: ours("phases: holding") },
    PhaseChange { from: &[Phase::NeedsWeight], when: &[If::FilledOut], to: Phase::Holding, origin: ours("phases: needs weight") },
];

/// A change of phase that is proposed.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// To which phase.
    pub to: Phase,
    /// Why: what each of its conditions found.
    pub because: Vec<Reason>,
    /// Where it comes from.
    pub origin: Origin,
}

/// The change of phase that is due; `None` when none is. While something stops the animal only an episode is.
pub fn propose(of: &Facts) -> Option<Proposal> {
    CHANGES
        .iter()
        .filter(|change| change.from.contains(&of.phase))
        .filter(|change| of.stop.is_none() || change.to == Phase::Episode)
        .find_map(|change| {
            let because: Option<Vec<Reason>> =
                change.when.iter().map(|when| when.found(of)).collect();
            because.map(|because| Proposal {
                to: change.to,
                because,
                origin: change.origin,
            })
        })
}

/// Why a phase may not be chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WhyNot {
    /// It is in that phase.
    Already,
    /// It is in the vet's hands until the vet says otherwise.
    InVetsHands,
    /// The records do not say so yet.
    NotYet,
}

/// Whether a person may put an animal into a phase. What protects it is always open: an episode, that it needs weight, a
/// new beginning. Other hands take it and give it back to the phase it came from. Everything else must be due.
///
/// # Errors
/// Why not.
pub fn may_change(of: &Facts, to: Phase) -> Result<(), WhyNot> {
    if of.phase == to {
        return Err(WhyNot::Already);
    }
    let due = propose(of).is_some_and(|proposal| proposal.to == to);
    if due || to == Phase::Episode {
        return Ok(());
    }
    match (of.phase, to) {
        (Phase::Episode | Phase::Recovering, _) => Err(WhyNot::InVetsHands),
        (Phase::OtherHands, to) if to == back_to(of.phase_before) => Ok(()),
        (_, Phase::OtherHands | Phase::NeedsWeight | Phase::New) => Ok(()),
        _ => Err(WhyNot::NotYet),
    }
}

/// The phase an animal comes back to from other hands.
const fn back_to(before: Option<Phase>) -> Phase {
    match before {
        Some(Phase::Losing) => Phase::Losing,
        Some(Phase::Plateau) => Phase::Plateau,
        Some(Phase::Holding) => Phase::Holding,
        Some(Phase::NeedsWeight) => Phase::NeedsWeight,
        Some(Phase::New | Phase::Episode | Phase::Recovering | Phase::OtherHands) | None => {
            Phase::New
        }
    }
}

/// What is wanted of the weight of an animal in a phase; `None` where that stays as it was.
pub const fn goal_of(phase: Phase) -> Option<Goal> {
    match phase {
        Phase::Losing | Phase::Plateau => Some(Goal::Lose),
        Phase::Holding => Some(Goal::Hold),
        Phase::NeedsWeight => Some(Goal::Gain),
        Phase::New | Phase::Episode | Phase::Recovering | Phase::OtherHands => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::progress::step::tests::{facts, pace, still};
    use crate::progress::{HowSoon, TargetStands};

    /// From a phase, by something that happened, to a phase.
    type Case<'a> = (Phase, &'a dyn Fn(&mut Facts), Phase);

    fn proposed(of: &Facts) -> Option<Phase> {
        propose(of).map(|proposal| proposal.to)
    }

    #[test]
    fn every_change_of_phase_is_proposed_for_some_animal() {
        let reached = TargetStands {
            reached: 0.9,
            ..TargetStands::default()
        };
        let over = TargetStands {
            readings_over: 2,
            ..TargetStands::default()
        };
        let filled = |of: &mut Facts| {
            let score = crate::assess::ConditionRange::new(5.5, 5.5).ok();
            of.condition = score;
            of.scores = score.into_iter().chain(score).collect();
        };
        let thin = |of: &mut Facts| {
            of.condition = crate::assess::ConditionRange::new(4.0, 4.5).ok();
        };
        let animals: [Case<'_>; 13] = [
            (Phase::Losing, &|of| of.laminitis_now = true, Phase::Episode),
            (Phase::Episode, &|of| of.vet_spoke = true, Phase::Recovering),
            (Phase::Recovering, &|of| of.vet_spoke = true, Phase::New),
            (Phase::Losing, &thin, Phase::NeedsWeight),
            (Phase::New, &|of| of.goal = Goal::Gain, Phase::NeedsWeight),
            (Phase::New, &|of| of.goal = Goal::Hold, Phase::Holding),
            (Phase::New, &|of| of.target = Some(reached), Phase::Holding),
            (Phase::New, &|_| {}, Phase::Losing),
            (
                Phase::Plateau,
                &|of| of.target = Some(reached),
                Phase::Holding,
            ),
            (Phase::Losing, &|of| of.pace = Some(still()), Phase::Plateau),
            (
                Phase::Plateau,
                &|of| of.pace = Some(pace(0.1, 0.9, 0.0, 0.0)),
                Phase::Losing,
            ),
            (Phase::Holding, &|of| of.target = Some(over), Phase::Losing),
            (Phase::NeedsWeight, &filled, Phase::Holding),
        ];
        assert_eq!(animals.len(), CHANGES.len());
        for ((from, change, to), row) in animals.into_iter().zip(CHANGES) {
            let mut of = facts(from);
            change(&mut of);
            assert_eq!(proposed(&of), Some(to), "{from:?}");
            assert!(row.from.contains(&from) && row.to == to, "{row:?}");
            assert!(may_change(&of, to).is_ok());
        }
    }

    #[test]
    fn a_new_animal_is_not_decided_on_before_a_fortnight_and_two_weighings() {
        let mut of = facts(Phase::New);
        of.days_at_start = 13;
        assert_eq!(proposed(&of), None);
        of.days_at_start = 14;
        of.weighings = 1;
        assert_eq!(proposed(&of), None);
    }

    #[test]
    fn what_stops_it_comes_before_any_change_but_an_episode() {
        let mut of = facts(Phase::New);
        of.stop = Some(HowSoon::Today);
        assert_eq!(proposed(&of), None);
        of.laminitis_now = true;
        assert_eq!(proposed(&of), Some(Phase::Episode));
    }

    #[test]
    fn a_donkey_is_not_put_to_lose_without_the_vets_word() {
        let mut of = facts(Phase::New);
        of.donkey = true;
        assert_eq!(proposed(&of), None);
        of.vets_level = Some(crate::units::PartOfBody::percent(1.3));
        assert_eq!(proposed(&of), Some(Phase::Losing));
    }

    #[test]
    fn recovering_ends_only_when_it_is_sound_clean_and_the_vet_spoke() {
        let mut of = facts(Phase::Recovering);
        assert_eq!(may_change(&of, Phase::New), Err(WhyNot::InVetsHands));
        of.vet_spoke = true;
        assert!(may_change(&of, Phase::New).is_ok());
        of.not_sound = true;
        assert_eq!(may_change(&of, Phase::New), Err(WhyNot::InVetsHands));
        of.not_sound = false;
        of.sign_stands = true;
        assert_eq!(may_change(&of, Phase::New), Err(WhyNot::InVetsHands));
    }
}
