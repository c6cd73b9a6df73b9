//! Many weeks of a pony or a donkey: it gains and loses, is scored, looked over, falls lame, is on pain relief and comes off it, the
//! vet says something and it runs out, the hay is another, less is asked for, and at each step the plan that is proposed is
//! taken. Whatever the order, no plan that is taken gives less than practice rule 2 allows, goes below the starting level
//! without everything that rule asks for, or asks for work that rule 17 forbids.
//!
//! What must hold is reckoned from the history that was made, in figures of its own: 1.0, 1.25, 1.3 and 1.5 % are written here
//! once more, and no rule of the core is asked.

mod history;
mod steps;

use crate::seed::config;
use history::{History, Who};
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use steps::{Step, a_clean_step, steps};
use tussock_core::animal::{Answer, Appetite, Goal, Laminitis, Phase, VetFlag};
use tussock_core::day::unsoaked;
use tussock_core::log::bodies::PlanV1;
use tussock_core::plan::Draft;
use tussock_core::safety::{Plan, SafetyVerdict, judge};
use tussock_core::soak::dry_loss;
use tussock_core::units::{LocalDate, PartOfBody};

/// Practice rule 2, as it is printed there.
const FLOOR: f64 = 1.0;
const WITHOUT_WORD: f64 = 1.25;
/// The starting level, and that of donkeys.
const fn start(history: &History) -> f64 {
    match history.who {
        Who::Pony => 1.5,
        Who::Donkey => 1.3,
    }
}
const FAT: f64 = 7.0;
const APART: i64 = 14;
const AT_START: i64 = 28;

const TINY: f64 = 1e-6;

fn days(from: LocalDate, to: LocalDate) -> i64 {
    (to - from).num_days()
}

/// The lowest level that the vet's last word allows on a day: of two given on one day the one that leaves more.
fn lowest_word(history: &History, day: LocalDate) -> Option<f64> {
    let holds = history.words.iter().filter(|word| {
        word.level.is_some() && word.given <= day && day <= word.expires && word.known <= day
    });
    let last = holds.clone().map(|word| word.given).max()?;
    holds
        .filter(|word| word.given == last)
        .filter_map(|word| word.level)
        .reduce(f64::max)
}

/// Whether something of the animal wants a vet's word before a restriction.
fn on_vets_list(history: &History, day: LocalDate) -> bool {
    let thin = history.scores.last().is_some_and(|(_, score)| *score < 5.0);
    let flag = history.flags.iter().any(|flag| match flag {
        VetFlag::Corticosteroid { last } => days(*last, day) <= 30,
        VetFlag::SurgeryOrTransport { on } => days(*on, day) <= 28,
        VetFlag::TrimmedOrShod { .. } | VetFlag::FootsoreAfterTrims => false,
        _ => true,
    });
    thin || flag
        || history.who == Who::Donkey
        || history.laminitis == Laminitis::Active
        || matches!(history.phase, Phase::Episode | Phase::Recovering)
        || history.appetite != Appetite::Eating
}

/// Condition of 7 or more twice, two weeks apart, with no lower one between; to begin, with no lower one since.
fn seen_fat_twice(history: &History, begins: bool) -> bool {
    let mut run: Option<LocalDate> = None;
    let mut ever = false;
    let mut stands = false;
    for (on, score) in &history.scores {
        if *score < FAT {
            (run, stands) = (None, false);
            continue;
        }
        let from = *run.get_or_insert(*on);
        stands |= APART <= days(from, *on);
        ever |= stands;
    }
    if begins { stands } else { ever }
}

/// Days since the first of the last plans, one after another, that fed no more than the starting level.
fn at_start(history: &History, day: LocalDate) -> i64 {
    let run = history.plans.iter().rev();
    run.take_while(|(_, level)| *level <= start(history) + TINY)
        .last()
        .map_or(0, |(from, _)| days(*from, day))
}

/// What is missing for a restriction.
fn missing(history: &History, day: LocalDate, word: Option<f64>) -> Vec<&'static str> {
    let begins = history
        .plans
        .last()
        .is_none_or(|(_, level)| start(history) - TINY <= *level);
    let on_scale = history.weighed.iter().any(|weighed| weighed.on_scale);
    let all = [
        (history.phase != Phase::New, "still new"),
        (
            history.phase != Phase::NeedsWeight && history.goal != Goal::Gain,
            "needs weight",
        ),
        (history.goal != Goal::Hold || !begins, "not to lose"),
        (seen_fat_twice(history, begins), "not scored 7 twice"),
        (on_scale || 2 <= history.weighed.len(), "not weighed"),
        (history.appetite == Appetite::Eating, "not eating"),
        (
            history.signs.iter().all(|sign| *sign == Answer::No),
            "not looked over",
        ),
        (
            word.is_some() || !on_vets_list(history, day),
            "on the vet's list",
        ),
        (AT_START <= at_start(history, day), "not long at the start"),
    ];
    all.iter()
        .filter(|(holds, _)| !holds)
        .map(|(_, what)| *what)
        .collect()
}

/// Dry matter that reaches the animal a day from the nets as issued and the bought feed, at the end that leaves it least:
/// soaked, and on a day on which it is hung dry.
fn least(draft: &Draft, issued: &PlanV1, history: &History) -> f64 {
    let hung: f64 = draft
        .layout
        .hangings
        .iter()
        .map(|hanging| hanging.dry.to_kg())
        .sum();
    let bought = draft.dry_matter.to_kg() - hung;
    let (mut soaked, mut dry_day) = (bought, bought);
    for net in &issued.nets {
        let hay = draft.hays.iter().find(|hay| hay.lot == net.lot).unwrap();
        let dry = hay.dry.low.to_fraction();
        let weighed = net.as_fed_g.as_fed();
        if net.soaked {
            let lost = dry_loss(history.recipe.soak()).part.most;
            soaked += weighed.to_kg() * dry * (1.0 - lost);
            dry_day += unsoaked(weighed, history.recipe).unwrap().hay.to_kg() * dry;
        } else {
            soaked += weighed.to_kg() * dry;
            dry_day += weighed.to_kg() * dry;
        }
    }
    soaked.min(dry_day)
}

/// Holds a plan that would be taken against the history.
fn hold(plan: &Plan, issued: &PlanV1, history: &History) -> Result<(), TestCaseError> {
    let draft = plan.planned();
    let day = history.day();
    let word = lowest_word(history, day);
    let level = draft.allowance.level.to_percent();
    let used = draft.weight.value.to_kg();

    // The weight is one that somebody read.
    let near = |kg: f64| (kg - used).abs() <= 0.01 * used;
    let mut read = history.weighed.iter();
    prop_assert!(
        read.any(|read| near(read.kg) || read.fat.is_some_and(near)),
        "{used} kg was never read"
    );
    // (a) Under no floor, with the heaviest it may be and the end that leaves it least.
    let heaviest = draft.allowance.floor_weight.to_kg().max(used);
    let floor = heaviest * FLOOR / 100.0;
    let reaches = least(draft, issued, history);
    prop_assert!(floor <= reaches + TINY, "{reaches} under {floor}");
    match word {
        None if on_vets_list(history, day) => {
            prop_assert!(
                start(history) - TINY <= level,
                "{level} % on the vet's list"
            );
        }
        None => prop_assert!(WITHOUT_WORD - TINY <= level, "{level} % without a word"),
        Some(lowest) => prop_assert!(lowest - TINY <= level, "{level} under the word's {lowest}"),
    }
    // (b) No restriction without everything it needs.
    if level < start(history) - TINY {
        let missing = missing(history, day, word);
        prop_assert!(missing.is_empty(), "{level} %: {missing:?}");
    }
    // (c) No work that is not allowed.
    if draft.work.a_week().is_some() {
        let stopped = history.flags.iter().any(|flag| {
            matches!(
                flag,
                VetFlag::Lame | VetFlag::PainRelief | VetFlag::BoxRest | VetFlag::Sick
            )
        });
        prop_assert!(!stopped, "work with {:?}", history.flags);
        prop_assert!(history.laminitis != Laminitis::Active && history.phase != Phase::Episode);
        let after = match history.laminitis {
            Laminitis::Ever { last } => Some(last.unwrap_or(LocalDate::MIN)),
            _ => None,
        };
        let word = |from: LocalDate| {
            history.words.iter().any(|word| {
                word.level.is_none()
                    && from <= word.given
                    && word.given <= day
                    && day <= word.expires
                    && word.known <= day
            })
        };
        prop_assert!(after.is_none_or(word), "work before the vet's word");
        prop_assert!(
            history.sign_since.is_none_or(word),
            "work with a sign that stands"
        );
    }
    Ok(())
}

/// What came of a history.
#[derive(Debug, Default)]
struct Taken {
    plans: usize,
    restricted: usize,
    below_without_word: usize,
    worked: usize,
}

/// Lives through the weeks; at each the plan that is proposed is held against the history, and taken.
fn live(who: Who, steps: Vec<Step>) -> Result<Taken, TestCaseError> {
    let mut history = History::new(who);
    let mut taken = Taken::default();
    for step in steps {
        history.happen(step);
        let gathered = history.gathered();
        // Without a draft, or refused, there is nothing to take.
        let Ok(draft) = gathered.draft() else {
            continue;
        };
        let SafetyVerdict::Allowed(plan) = judge(draft) else {
            continue;
        };
        let issued = PlanV1::of(&plan, &[], None).unwrap();
        hold(&plan, &issued, &history)?;
        let level = plan.planned().allowance.level.to_percent();
        taken.plans += 1;
        taken.restricted += usize::from(level < start(&history) - TINY);
        taken.below_without_word += usize::from(level < WITHOUT_WORD - TINY);
        taken.worked += usize::from(plan.planned().work.a_week().is_some());
        history.take(issued);
    }
    Ok(taken)
}

/// Half as many histories as other laws have cases: each is a dozen plans.
fn lived() -> ProptestConfig {
    let mut config = config();
    config.cases = config.cases.div_ceil(2);
    config
}

proptest! {
    #![proptest_config(lived())]

    #[test]
    fn no_history_gives_a_plan_under_a_floor_a_restriction_unfounded_or_work_forbidden(
        who in prop::sample::select(vec![Who::Pony, Who::Pony, Who::Donkey]),
        steps in prop::collection::vec(steps(), 1..16),
    ) {
        live(who, steps)?;
    }
}

/// What comes of so many long histories, the same at each run.
fn of_many(who: Who, histories: usize) -> Taken {
    let mut runner = TestRunner::deterministic();
    let weeks = prop::collection::vec(steps(), 10..16);
    let mut all = Taken::default();
    for _ in 0..histories {
        let steps = weeks.new_tree(&mut runner).unwrap().current();
        let taken = live(who, steps).unwrap();
        all.plans += taken.plans;
        all.restricted += taken.restricted;
        all.below_without_word += taken.below_without_word;
        all.worked += taken.worked;
    }
    println!("{who:?}: {all:?}");
    all
}

#[test]
fn the_law_is_tried_on_plans_restrictions_vets_words_and_work() {
    let pony = of_many(Who::Pony, 40);
    assert!(
        100 < pony.plans && 10 < pony.restricted && 0 < pony.below_without_word && 10 < pony.worked,
        "{pony:?}"
    );
    let donkey = of_many(Who::Donkey, 10);
    assert!(10 < donkey.plans && 0 < donkey.worked, "{donkey:?}");
}

#[test]
fn a_pony_of_which_everything_is_known_is_restricted_after_four_weeks_and_not_before() {
    let mut levels = Vec::new();
    let mut history = History::new(Who::Pony);
    for week in 0..7 {
        let asked = (week > 0).then(|| PartOfBody::percent(1.25));
        history.happen(Step {
            asked,
            ..a_clean_step()
        });
        let SafetyVerdict::Allowed(plan) = judge(history.gathered().draft().unwrap()) else {
            panic!("week {week} is not allowed");
        };
        let issued = PlanV1::of(&plan, &[], None).unwrap();
        hold(&plan, &issued, &history).unwrap();
        levels.push((plan.planned().allowance.level.to_percent() * 100.0).round());
        history.take(issued);
    }
    assert_eq!(levels, [150.0, 150.0, 150.0, 150.0, 125.0, 125.0, 125.0]);
}
