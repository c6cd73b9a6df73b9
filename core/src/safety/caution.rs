//! What must be known beside a plan that is allowed. A caution goes when its cause goes, and not before.

use super::published::{AFTER_TRIM_DAYS, PPID_AGE};
use super::vitals::{Vital, VitalStanding, unusual};
use crate::animal::{Animal, Appetite, Birth, Laminitis, Ppid, RiskLevel, VetFlag};
use crate::assess::WeightMethod;
use crate::day::GapVerdict;
use crate::forage::{Hazard, SugarOrigin, Verdict, WayOut};
use crate::limits::published::CORTICOSTEROID_DAYS;
use crate::limits::{AllowanceReason, CapVerdict, Nutrient, RestrictionBar, VetListReason};
use crate::plan::{AtRest, BucketLine, Draft, GrassLine};
use crate::ration::Standing;
use crate::units::{LocalDate, PartOfBody};

/// Something that must be known beside a plan.
#[derive(Clone, Debug, PartialEq)]
pub enum Caution {
    /// It is on the list of animals that are never restricted without a vet.
    OnVetList(Vec<VetListReason>),
    /// A restriction was asked for and is not given; the starting level holds.
    RestrictionNotGiven {
        /// What was asked for or held.
        wanted: PartOfBody,
        /// What stands in its way.
        bars: Vec<RestrictionBar>,
    },
    /// A vet's word has expired and the plan went back.
    VetsWordExpired {
        /// Its last day.
        expired: LocalDate,
    },
    /// On pain relief: it may walk sound and not be; no work, no restriction, and a clean look-over proves nothing.
    PainRelief,
    /// A warm hoof or lying more: no grass and no work, look again in two hours and tonight.
    LookAgain,
    /// Nobody looked it over.
    NotLookedOver,
    /// It ate a handful but left its hay: feed other forage now, ring this morning.
    LeftItsHay,
    /// Nobody said whether it eats.
    AppetiteNotKnown,
    /// The sugar of the day is not proven, or over the limit.
    Sugar {
        /// The verdict.
        verdict: Verdict,
        /// What it rests on.
        origin: SugarOrigin,
        /// What can be done.
        ways_out: Vec<WayOut>,
    },
    /// Soaking is a band, never a pass: the hay stays not proven until the soaked hay is tested.
    SoakingProvesNothing,
    /// No grass in this plan.
    NoGrass,
    /// Grass is not counted in this plan: what is eaten there comes on top.
    GrassNotCounted,
    /// Grass is counted by a model, with wide ends: it and a muzzle are no proof of what is eaten.
    GrassByModel {
        /// It wears a muzzle there.
        muzzle: bool,
    },
    /// Turnout was decided on, and the plan has no room for it.
    NoRoomForGrass,
    /// The longest gap is longer than planned for.
    LongGap {
        /// In hours.
        hours: f64,
        /// Whether it is over the line of six hours.
        over_the_line: bool,
    },
    /// Too much straw, or none allowed with these teeth.
    StrawOverCap,
    /// A hazard of a hay.
    HayHazard {
        /// Its name.
        lot: String,
        /// The hazard.
        hazard: Hazard,
    },
    /// The balancer is a typical one, from memory: type its label.
    TypicalBalancer,
    /// The label does not say sugar and starch, or no number of feeds keeps the bucket within its limit.
    BucketNotCleared,
    /// What stays short even with the balancer.
    StaysShort(Vec<Nutrient>),
    /// What is over a ceiling.
    OverCeiling(Vec<Nutrient>),
    /// What nobody knows.
    NotKnown(Vec<Nutrient>),
    /// The weight is from a tape: it is no dose, and it has a band.
    WeightFromTape {
        /// Half the band, as a part of the weight.
        either_way: f64,
    },
    /// A donkey: it goes by weight and condition, at most 5 kg a month, and its diet starts with the vet.
    Donkey,
    /// Ask the vet about a test for PPID.
    AskAboutPpid,
    /// Trimmed or shod a few days ago: footing says little.
    FreshlyTrimmed,
    /// A corticosteroid in the last weeks.
    Corticosteroid,
    /// A reading at rest that is not usual: it is told to the vet.
    Unusual {
        /// Of what.
        vital: Vital,
        /// The reading.
        reading: f64,
        /// How it stands.
        standing: VitalStanding,
    },
    /// More hay than the level gives, so that the least that reaches the animal keeps its floor.
    RaisedToFloor,
}

/// Every caution beside a draft, in the order of the loop.
pub fn cautions(draft: &Draft) -> Vec<Caution> {
    let mut found = Vec::new();
    of_the_animal(draft, &mut found);
    of_the_limits(draft, &mut found);
    of_the_hay(draft, &mut found);
    of_the_ration(draft, &mut found);
    let gap = &draft.layout;
    if gap.verdict != GapVerdict::Planned {
        found.push(Caution::LongGap {
            hours: gap.longest_h,
            over_the_line: gap.verdict == GapVerdict::OverTheLine,
        });
    }
    found.push(match &draft.grass {
        GrassLine::None { .. } => Caution::NoGrass,
        GrassLine::NotCounted => Caution::GrassNotCounted,
        GrassLine::Counted(day) if draft.grass.is_open() => Caution::GrassByModel {
            muzzle: day.grazing.muzzle,
        },
        GrassLine::Counted(_) => Caution::NoRoomForGrass,
    });
    found
}

fn of_the_animal(draft: &Draft, found: &mut Vec<Caution>) {
    let health = &draft.animal.health;
    if draft.animal.kind.is_donkey() {
        found.push(Caution::Donkey);
    }
    if !draft.vet_list.is_empty() {
        found.push(Caution::OnVetList(draft.vet_list.clone()));
    }
    match health.appetite {
        Appetite::Off { .. } => found.push(Caution::LeftItsHay),
        Appetite::NotKnown => found.push(Caution::AppetiteNotKnown),
        Appetite::Eating => {}
    }
    if draft.look_over.signs.look_again() {
        found.push(Caution::LookAgain);
    } else if draft.look_over.on.is_none() {
        found.push(Caution::NotLookedOver);
    }
    found.extend(of_health(
        &draft.animal,
        &draft.look_over.at_rest,
        draft.day,
    ));
    if !matches!(draft.weight.method, WeightMethod::Scale(_)) {
        let half = draft.weight.either_way();
        found.push(Caution::WeightFromTape {
            either_way: half / draft.weight.value,
        });
    }
}

/// What must be known of an animal on a day by its health and what was measured at rest, with or without a plan
/// (practice rule 19).
pub fn of_health(animal: &Animal, at_rest: &AtRest, day: LocalDate) -> Vec<Caution> {
    let within = |on: LocalDate, days: i64| (day - on).num_days() <= days;
    let mut found = Vec::new();
    for flag in &animal.health.flags {
        let caution = match flag {
            VetFlag::PainRelief => Caution::PainRelief,
            VetFlag::TrimmedOrShod { on } if within(*on, *AFTER_TRIM_DAYS) => {
                Caution::FreshlyTrimmed
            }
            VetFlag::Corticosteroid { last } if within(*last, *CORTICOSTEROID_DAYS) => {
                Caution::Corticosteroid
            }
            _ => continue,
        };
        if !found.contains(&caution) {
            found.push(caution);
        }
    }
    if asks_about_ppid(animal, day) {
        found.push(Caution::AskAboutPpid);
    }
    // What is so far over that it is rung about stops the animal and is no caution.
    let unusual = unusual(animal, at_rest, day).into_iter();
    found.extend(
        unusual
            .filter(|(_, _, standing)| *standing != VitalStanding::Ring)
            .map(|(vital, taken, standing)| Caution::Unusual {
                vital,
                reading: taken.reading,
                standing,
            }),
    );
    found
}

/// Fifteen years or more, laminitis now in autumn, or the last one ended in autumn; and nobody tested.
fn asks_about_ppid(animal: &Animal, day: LocalDate) -> bool {
    use chrono::Datelike;
    if animal.health.ppid != Ppid::NotKnown {
        return false;
    }
    let old = animal
        .born
        .map(|born: Birth| born.age_on(day))
        .is_some_and(|age| *PPID_AGE <= age);
    // numeric: September to November, the autumn of the northern hemisphere where the rule was written
    let in_autumn = |day: LocalDate| (9..=11).contains(&day.month());
    let autumn = match animal.health.laminitis {
        Laminitis::Active => in_autumn(day),
        Laminitis::Ever { last } => last.is_some_and(in_autumn),
        Laminitis::Never | Laminitis::NotKnown => false,
    };
    old || autumn
}

fn of_the_limits(draft: &Draft, found: &mut Vec<Caution>) {
    for reason in &draft.allowance.why {
        match reason {
            AllowanceReason::NotGiven { wanted } => found.push(Caution::RestrictionNotGiven {
                wanted: *wanted,
                bars: draft.allowance.bars.clone(),
            }),
            AllowanceReason::VetsWordExpired { expired } => {
                found.push(Caution::VetsWordExpired { expired: *expired });
            }
            _ => {}
        }
    }
    if !draft.raised.is_empty() {
        found.push(Caution::RaisedToFloor);
    }
}

fn of_the_hay(draft: &Draft, found: &mut Vec<Caution>) {
    if let Some(sugar) = &draft.sugar
        && !sugar.verdict.is_within()
        && draft.hay_risk.level != RiskLevel::Clear
    {
        found.push(Caution::Sugar {
            verdict: sugar.verdict,
            origin: sugar.origin,
            ways_out: sugar.ways_out.clone(),
        });
    }
    if draft.soaks() {
        found.push(Caution::SoakingProvesNothing);
    }
    if matches!(draft.straw, CapVerdict::Over { .. }) {
        found.push(Caution::StrawOverCap);
    }
    for hay in &draft.hays {
        for hazard in &hay.hazards {
            if !matches!(hazard, Hazard::Discard(_)) {
                found.push(Caution::HayHazard {
                    lot: hay.name.clone(),
                    hazard: *hazard,
                });
            }
        }
    }
}

fn of_the_ration(draft: &Draft, found: &mut Vec<Caution>) {
    let lines = &draft.with_buckets;
    let with = |wanted: fn(&Standing) -> bool| -> Vec<Nutrient> {
        lines
            .iter()
            .filter(|line| wanted(&line.standing))
            .map(|line| line.nutrient)
            .collect()
    };
    if draft.buckets.iter().any(BucketLine::wants_label) {
        found.push(Caution::TypicalBalancer);
    }
    if draft.buckets.iter().any(|line| line.dose.feeds.is_none()) {
        found.push(Caution::BucketNotCleared);
    }
    let lists = [
        (
            with(|s| matches!(s, Standing::Short { .. })),
            Caution::StaysShort as fn(Vec<Nutrient>) -> Caution,
        ),
        (
            with(|s| matches!(s, Standing::Over { .. })),
            Caution::OverCeiling,
        ),
        (with(|s| matches!(s, Standing::NotKnown)), Caution::NotKnown),
    ];
    for (nutrients, caution) in lists {
        if !nutrients.is_empty() {
            found.push(caution(nutrients));
        }
    }
}
