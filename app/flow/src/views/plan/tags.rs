//! The cord of a plan, in the order of the loop: each tag a result and its reason. A caution stands in its tag; what
//! finds no room there stands below.

use crate::words::{PlanScreenWords, Said, Words};
use tussock_core::assess::Finding;
use tussock_core::forage::{DryOrigin, SugarOrigin, Verdict};
use tussock_core::limits::RestrictionBar;
use tussock_core::plan::{BucketLine, Draft, Lever};
use tussock_core::safety::{Caution, Plan};
use tussock_core::sources::Source;
use tussock_core::units::AsFed;
use tussock_core::work::WorkLine;

/// A part of the loop.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// What it may have.
    Limits,
    /// Hay.
    Hay,
    /// What is bought.
    Ration,
    /// Visits and nets.
    Day,
    /// Grass.
    Grass,
    /// Work.
    Work,
    /// Look-over and review.
    Watch,
}

impl Part {
    /// All of them, in the order of the loop.
    pub const ALL: &'static [Self] = &[
        Self::Limits,
        Self::Hay,
        Self::Ration,
        Self::Day,
        Self::Grass,
        Self::Work,
        Self::Watch,
    ];

    /// The part a caution belongs to.
    pub const fn of(caution: &Caution) -> Self {
        match caution {
            Caution::OnVetList(_)
            | Caution::RestrictionNotGiven { .. }
            | Caution::VetsWordExpired { .. }
            | Caution::Donkey
            | Caution::WeightFromTape { .. }
            | Caution::RaisedToFloor => Self::Limits,
            Caution::Sugar { .. }
            | Caution::SoakingProvesNothing
            | Caution::StrawOverCap
            | Caution::HayHazard { .. }
            | Caution::LeftItsHay => Self::Hay,
            Caution::TypicalBalancer
            | Caution::BucketNotCleared
            | Caution::StaysShort(_)
            | Caution::OverCeiling(_)
            | Caution::NotKnown(_) => Self::Ration,
            Caution::LongGap { .. } => Self::Day,
            Caution::NoGrass
            | Caution::GrassNotCounted
            | Caution::GrassByModel { .. }
            | Caution::NoRoomForGrass => Self::Grass,
            Caution::PainRelief => Self::Work,
            Caution::LookAgain
            | Caution::NotLookedOver
            | Caution::AppetiteNotKnown
            | Caution::AskAboutPpid
            | Caution::FreshlyTrimmed
            | Caution::Corticosteroid
            | Caution::Unusual { .. } => Self::Watch,
        }
    }
}

/// The state of a tag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Told {
    /// Settled.
    Done,
    /// Wants care.
    Care,
    /// A stop that is true now.
    Stop,
    /// Not known, untested.
    NotKnown,
}

/// A tag of the cord.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TagLine {
    /// Which part of the loop.
    pub part: Part,
    /// Its state.
    pub told: Told,
    /// What comes of it.
    pub result: String,
    /// Why, or its caution.
    pub reason: String,
}

/// The decision as one short sentence.
pub fn decision(draft: &Draft, words: &(impl Words + PlanScreenWords)) -> String {
    let hay: AsFed = draft
        .layout
        .hangings
        .iter()
        .map(|hanging| hanging.as_fed)
        .sum();
    words.decision(
        &words.feed(hay),
        draft.soaks(),
        draft.allowance.is_restriction(),
        !draft.grass.is_open(),
    )
}

/// The tags, in the order of the loop.
pub fn tags(plan: &Plan, words: &(impl Words + PlanScreenWords)) -> Vec<TagLine> {
    Part::ALL
        .iter()
        .map(|part| {
            let caution = first(plan, *part);
            let settled = line(plan.planned(), *part, words);
            TagLine {
                part: *part,
                told: told(plan.planned(), *part, caution),
                result: settled.sentence,
                reason: caution
                    .filter(|_| *part != Part::Grass)
                    .map(|caution| words.caution(caution).sentence)
                    .or(settled.why)
                    .unwrap_or_default(),
            }
        })
        .collect()
}

/// The cautions that find no room in a tag, each with its reason.
pub fn besides(plan: &Plan, words: &impl Words) -> Vec<Said> {
    plan.cautions()
        .iter()
        .filter(|caution| first(plan, Part::of(caution)) != Some(caution))
        .map(|caution| words.caution(caution))
        .collect()
}

fn first(plan: &Plan, part: Part) -> Option<&Caution> {
    plan.cautions()
        .iter()
        .find(|caution| Part::of(caution) == part)
}

/// The reasons of the cautions that stand in the tags, and of everything else that decided the plan.
pub fn reasons(plan: &Plan, words: &impl Words) -> Vec<Said> {
    let draft = plan.planned();
    let in_tags = plan
        .cautions()
        .iter()
        .filter(|caution| first(plan, Part::of(caution)) == Some(caution))
        .map(|caution| words.caution(caution));
    let allowed = draft
        .allowance
        .why
        .iter()
        .map(|reason| words.allowance_reason(*reason));
    let bars = draft
        .allowance
        .bars
        .iter()
        .map(|bar| words.restriction_bar(bar));
    let raised = draft.raised.iter().map(|raised| words.raised(*raised));
    let hays = draft.hays.iter().map(|hay| words.hay(hay));
    let sugar = draft.sugar.iter().map(|judged| words.judgement(judged));
    let needed = draft.needed.iter().map(|found| words.needs_finding(*found));
    let mut said: Vec<Said> = vec![Said::plain(words.body_between(
        draft.weight.value,
        draft.weight.low,
        draft.weight.high,
    ))];
    said.extend(allowed);
    said.extend(in_tags);
    said.push(words.risk(&draft.risk));
    said.extend(raised.chain(hays).chain(sugar));
    said.push(words.energy_line(&draft.energy));
    said.extend(needed);
    said.extend(draft.buckets.iter().map(|line| words.bucket_line(line)));
    said.push(Said::plain(words.meal_limit(&draft.meal)));
    said.push(words.water(&draft.water));
    said.push(words.longest_gap(&draft.layout));
    said.push(words.work(&draft.work));
    said.extend(bars);
    said
}

fn told(draft: &Draft, part: Part, caution: Option<&Caution>) -> Told {
    match (part, caution) {
        (Part::Grass, _) if !draft.grass.is_open() => Told::Stop,
        (Part::Work, _) if !work_is_settled(&draft.work) => Told::Care,
        (
            _,
            Some(
                Caution::Sugar {
                    verdict: Verdict::NotProven { .. },
                    ..
                }
                | Caution::NotKnown(_)
                | Caution::TypicalBalancer
                | Caution::AppetiteNotKnown
                | Caution::NotLookedOver,
            ),
        ) => Told::NotKnown,
        (_, Some(_)) => Told::Care,
        (_, None) => Told::Done,
    }
}

const fn work_is_settled(work: &WorkLine) -> bool {
    match work {
        WorkLine::None
        | WorkLine::NotPlannedHere(_)
        | WorkLine::VetsWordFirst
        | WorkLine::AskFirst => false,
        WorkLine::Recovered { .. } | WorkLine::Donkey { .. } | WorkLine::Sound { .. } => true,
    }
}

/// What comes of a part, and why.
fn line(draft: &Draft, part: Part, words: &(impl Words + PlanScreenWords)) -> Said {
    match part {
        Part::Limits => {
            let allowed = &draft.allowance;
            Said {
                sentence: words.allowed_a_day(
                    &words.level(allowed.level),
                    &words.dry(draft.dry_matter),
                    !draft.raised.is_empty(),
                ),
                why: allowed
                    .why
                    .first()
                    .map(|reason| words.allowance_reason(*reason).sentence),
            }
        }
        Part::Hay => {
            let lines: Vec<Said> = draft.hays.iter().map(|hay| words.hay(hay)).collect();
            Said {
                sentence: joined(lines.iter().map(|said| said.sentence.as_str())),
                why: Some(joined(lines.iter().filter_map(|said| said.why.as_deref()))),
            }
        }
        Part::Ration if draft.buckets.is_empty() => Said::plain(words.hay_alone_covers()),
        Part::Ration => {
            let lines: Vec<Said> = draft
                .buckets
                .iter()
                .map(|line| words.bucket_line(line))
                .collect();
            Said {
                sentence: joined(lines.iter().map(|said| said.sentence.as_str())),
                why: Some(joined(lines.iter().filter_map(|said| said.why.as_deref()))),
            }
        }
        Part::Day => Said::because(
            words.nets_at(
                &draft
                    .layout
                    .hangings
                    .iter()
                    .map(|hanging| words.time(hanging.visit))
                    .collect::<Vec<_>>(),
            ),
            words.longest_gap(&draft.layout).sentence,
        ),
        Part::Grass => words.grass(&draft.grass),
        Part::Work => words.work(&draft.work),
        Part::Watch => Said::plain(words.watch(
            draft.watch.look_over_days,
            &words.review(draft.watch.review),
        )),
    }
}

fn joined<'a>(lines: impl Iterator<Item = &'a str>) -> String {
    lines.collect::<Vec<_>>().join(" ")
}

/// Every default that stands in for what nobody measured, in the order of the loop.
pub fn stands_in(draft: &Draft, words: &(impl Words + PlanScreenWords)) -> Vec<String> {
    let mut found: Vec<String> = draft
        .weight
        .from
        .sources()
        .iter()
        .filter(|source| matches!(source, Source::Default(_)))
        .filter_map(|source| words.source(source))
        .collect();
    if draft
        .allowance
        .bars
        .contains(&RestrictionBar::HeightNotKnown)
    {
        found.push(words.assess_finding(&Finding::HeightNotKnown).sentence);
    }
    found.extend(
        draft
            .assessed
            .iter()
            .map(|finding| words.assess_finding(finding).sentence),
    );
    for hay in &draft.hays {
        if hay.dry.origin == DryOrigin::Default {
            found.push(words.dry_stands_in(&hay.name, &words.dry_fraction(hay.dry.value)));
        }
        let untested = hay
            .as_it_comes
            .as_ref()
            .is_none_or(|judged| judged.origin == SugarOrigin::Class);
        if untested {
            found.push(words.hay_stands_in(&hay.name, &words.forage_class(hay.class)));
        }
    }
    if draft.buckets.iter().any(BucketLine::wants_label) {
        found.push(words.balancer_stands_in().to_owned());
    }
    if draft.levers.contains(&Lever::TimeANet) {
        found.push(words.rate_stands_in().to_owned());
    }
    found
}
