//! When there is no plan: why, how urgent the vet is, and what to do meanwhile.

use super::published::OFF_FEED_HOURS;
use super::vitals::{Vital, VitalStanding, unusual};
use crate::animal::{
    Animal, Answer, Appetite, Handful, Laminitis, Phase, Ppid, SaidOn, Seen, State, VetFlag,
    VetScope, VetWord,
};
use crate::forage::{Fault, Hazard};
use crate::limits::EnergyVerdict;
use crate::plan::{Draft, LookedOver};
use crate::progress::{Ring, TooFast};
use crate::units::{DryMatter, Instant, LocalDate, PartOfBody, Span};

/// How soon the vet is rung.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum VetUrgency {
    /// Before anything is changed.
    First,
    /// This morning.
    ThisMorning,
    /// Today.
    Today,
    /// Now.
    Now,
}

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq)]
pub enum Refusal {
    /// Off its feed; counted from when it was last seen eating.
    OffFeed {
        /// When it was last seen eating.
        last_seen_eating: Option<Instant>,
        /// Whether the latest hour has passed.
        past_the_latest: bool,
    },
    /// It left its forage and ate when some was held out: feed now, ring this morning (practice rule 14).
    AteWhenOffered,
    /// It has laminitis now and no vet's word holds.
    LaminitisNow,
    /// A look-over found a sign of laminitis and no vet's word holds.
    LaminitisSign,
    /// A warm hoof or lying more, and it had laminitis before.
    WarmHoofAfterLaminitis,
    /// An episode or recovery without a vet's word that holds.
    EpisodeWithoutWord,
    /// It got at grain.
    GotAtGrain,
    /// It escaped onto lush grass.
    EscapedOntoGrass,
    /// Sick, feverish or with colic.
    Sick,
    /// A reading at rest so far over what is usual that the vet is rung for it alone.
    FarOverUsual {
        /// Of what.
        vital: Vital,
        /// The reading.
        reading: f64,
    },
    /// Its weight falls too fast, and it was measured again.
    LosesTooFast(TooFast),
    /// Lame.
    Lame,
    /// Growing, in foal or in milk: its needs are not published here, and it is never restricted.
    NotPlannedHere(State),
    /// A donkey or mule to lose weight without a vet's word: every diet of a donkey starts with the vet.
    DonkeyDiet,
    /// The energy is under the floor.
    Energy(EnergyVerdict),
    /// The least dry matter that reaches the animal is under its floor.
    UnderDryMatterFloor {
        /// The least.
        least: DryMatter,
        /// The floor.
        floor: DryMatter,
    },
    /// A hay that must not be fed.
    DoNotFeed {
        /// Its name.
        lot: String,
        /// What is wrong with it.
        fault: Fault,
    },
}

/// What to do until there is a plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Meanwhile {
    /// Keep hay in front of it, at least this much dry matter a day; no sudden cut.
    HayAtLeast {
        /// As a part of its weight.
        level: PartOfBody,
        /// The same as dry matter.
        dry: DryMatter,
    },
    /// Feed now what it will eat.
    FeedNow,
    /// Hold out a handful of dry hay and watch.
    OfferAHandful,
    /// Stop grazing and work, soft bed.
    StopGrassAndWork,
    /// Write down the vet's word.
    WriteDownVetsWord,
    /// Feed another hay.
    AnotherHay,
}

/// A refusal with everything behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct Refused {
    /// Why, the most urgent first.
    pub why: Vec<Refusal>,
    /// How soon the vet is rung; `None` when the refusal is not for the vet.
    pub vet: Option<VetUrgency>,
    /// What to do meanwhile.
    pub meanwhile: Vec<Meanwhile>,
    /// What it would have been, for the workings; never an order.
    pub draft: Box<Draft>,
}

impl Refusal {
    /// How soon the vet is rung for it.
    pub fn vet(&self, draft: &Draft) -> Option<VetUrgency> {
        self.vet_for(&draft.animal)
    }

    pub(super) fn vet_for(&self, animal: &Animal) -> Option<VetUrgency> {
        match self {
            Self::GotAtGrain | Self::EscapedOntoGrass | Self::FarOverUsual { .. } => {
                Some(VetUrgency::Now)
            }
            Self::OffFeed {
                past_the_latest, ..
            } => Some(if *past_the_latest || off_feed_is_now(animal) {
                VetUrgency::Now
            } else {
                VetUrgency::ThisMorning
            }),
            Self::AteWhenOffered => Some(VetUrgency::ThisMorning),
            Self::LosesTooFast(too_fast) => Some(match too_fast.ring {
                Ring::SameDay => VetUrgency::Today,
                Ring::Soon => VetUrgency::First,
            }),
            Self::LaminitisNow
            | Self::LaminitisSign
            | Self::WarmHoofAfterLaminitis
            | Self::Sick
            | Self::Lame => Some(VetUrgency::Today),
            Self::EpisodeWithoutWord
            | Self::NotPlannedHere(_)
            | Self::DonkeyDiet
            | Self::Energy(_) => Some(VetUrgency::First),
            Self::UnderDryMatterFloor { .. } | Self::DoNotFeed { .. } => None,
        }
    }
}

/// Practice rule 14: those in which being off feed is for the vet now.
fn off_feed_is_now(animal: &Animal) -> bool {
    let Appetite::Off { handful, dull, .. } = animal.health.appetite else {
        return false;
    };
    let endangered = animal.kind.fat_in_blood_risk()
        || matches!(animal.state, State::Pregnant | State::Lactating)
        || matches!(animal.health.ppid, Ppid::Treated | Ppid::Untreated)
        || animal.health.flags.contains(&VetFlag::Sglt2Inhibitor);
    // Not tried yet is no "it eats": until it is seen eating, the endangered are treated as refusing.
    endangered && (handful != Handful::Eaten || dull == Answer::Yes)
}

/// What is known of an animal that may stop it, before there is any plan.
#[derive(Clone, Copy, Debug)]
pub struct StopsFor<'a> {
    /// The animal.
    pub animal: &'a Animal,
    /// Its last look-over.
    pub look_over: &'a LookedOver,
    /// Since when what is said of it stops it.
    pub said: SaidOn,
    /// Its weight falls so fast that the vet is rung.
    pub too_fast: Option<TooFast>,
    /// Vets' words, of any animal and any day.
    pub words: &'a [VetWord],
    /// The local day.
    pub day: LocalDate,
    /// Now.
    pub now: Instant,
}

/// What stops an animal by its health and its last look-over alone, the most urgent first, before there is any plan.
///
/// A vet's word lifts only what was there when it was given, and only in its own matter: what stops feeding is lifted by a
/// word about the lowest level. What is seen after it stands.
pub fn stops(of: &StopsFor<'_>) -> Vec<(Refusal, VetUrgency)> {
    let mut found: Vec<(Refusal, VetUrgency)> = by_health(of)
        .into_iter()
        .filter_map(|why| why.vet_for(of.animal).map(|vet| (why, vet)))
        .collect();
    found.sort_by_key(|(_, vet)| std::cmp::Reverse(*vet));
    found
}

impl StopsFor<'_> {
    /// Whether a vet's word about feeding was given since something was seen; what nobody dated is not lifted.
    fn lifted(&self, seen: Option<Seen>) -> bool {
        seen.is_some_and(|seen| {
            self.words
                .iter()
                .any(|word| word.lifts(&self.animal.id, VetScope::LowestLevel, self.day, seen))
        })
    }
}

/// What an appetite alone says against feeding on as before (practice rule 14).
pub(super) fn left_its_forage(appetite: Appetite, now: Instant) -> Option<Refusal> {
    let Appetite::Off {
        last_seen_eating,
        handful,
        dull,
    } = appetite
    else {
        return None;
    };
    if handful == Handful::Eaten && dull != Answer::Yes {
        return Some(Refusal::AteWhenOffered);
    }
    let past_the_latest = match last_seen_eating {
        Some(at) => Span::hours(*OFF_FEED_HOURS) <= now.since(at),
        // It was offered food and refused, or is dull, and nobody knows since when: the latest hour may have passed.
        None => handful == Handful::Refused || dull == Answer::Yes,
    };
    Some(Refusal::OffFeed {
        last_seen_eating,
        past_the_latest,
    })
}

/// The reasons that lie in its health and its last look-over.
fn by_health(of: &StopsFor<'_>) -> Vec<Refusal> {
    let StopsFor {
        animal,
        look_over,
        said,
        ..
    } = *of;
    let health = &animal.health;
    let mut found = Vec::new();
    found.extend(left_its_forage(health.appetite, of.now));
    for flag in &health.flags {
        match flag {
            VetFlag::GotAtGrain { .. } => found.push(Refusal::GotAtGrain),
            VetFlag::EscapedOntoGrass { .. } => found.push(Refusal::EscapedOntoGrass),
            VetFlag::Sick => found.push(Refusal::Sick),
            VetFlag::Lame if !of.lifted(said.lame.map(Seen::on)) => found.push(Refusal::Lame),
            _ => {}
        }
    }
    let rings = unusual(animal, &look_over.at_rest, of.day).into_iter();
    found.extend(
        rings
            .filter(|(_, taken, stands)| {
                *stands == VitalStanding::Ring && !of.lifted(Some(taken.seen))
            })
            .map(|(vital, taken, _)| Refusal::FarOverUsual {
                vital,
                reading: taken.reading,
            }),
    );
    found.extend(
        of.too_fast
            .filter(|too_fast| !of.lifted(Some(Seen::on(too_fast.seen))))
            .map(Refusal::LosesTooFast),
    );
    let vets_hands = matches!(animal.phase, Phase::Episode | Phase::Recovering);
    if health.laminitis == Laminitis::Active && !of.lifted(said.laminitis.map(Seen::on)) {
        found.push(Refusal::LaminitisNow);
    } else if vets_hands && !of.lifted(said.phase.map(Seen::on)) {
        found.push(Refusal::EpisodeWithoutWord);
    }
    let signs = &look_over.signs;
    if signs.for_the_vet() && !of.lifted(look_over.vet_since) {
        found.push(Refusal::LaminitisSign);
    } else if signs.look_again()
        && matches!(health.laminitis, Laminitis::Ever { .. })
        && !of.lifted(look_over.again_since)
    {
        found.push(Refusal::WarmHoofAfterLaminitis);
    }
    found
}

/// Every reason against a draft, in no order.
pub(super) fn refusals(draft: &Draft) -> Vec<Refusal> {
    let animal = &draft.animal;
    let about_feeding = |word: &VetWord| word.permit.scope() == VetScope::LowestLevel;
    let vets_word = draft.words.iter().any(about_feeding);
    let mut found = by_health(&StopsFor {
        animal,
        look_over: &draft.look_over,
        said: draft.said,
        too_fast: draft.too_fast,
        words: &draft.words,
        day: draft.day,
        now: draft.now,
    });
    if animal.state != State::Adult {
        found.push(Refusal::NotPlannedHere(animal.state));
    }
    let wants_less = animal.goal == crate::animal::Goal::Lose
        || draft
            .allowance
            .asked
            .is_some_and(|asked| asked < draft.allowance.start);
    if animal.kind.is_donkey() && wants_less && !vets_word {
        found.push(Refusal::DonkeyDiet);
    }
    match draft.energy.verdict {
        verdict @ (EnergyVerdict::NeedsVetsWord { .. } | EnergyVerdict::NeverAllowed { .. }) => {
            found.push(Refusal::Energy(verdict));
        }
        EnergyVerdict::Enough { .. }
        | EnergyVerdict::ByWeightAndCondition
        | EnergyVerdict::NotPublishedHere(_) => {}
    }
    let floor = draft.allowance.floor_dry_matter();
    found.extend(short_of(draft.least_dry_matter, floor));
    for hay in &draft.hays {
        for hazard in &hay.hazards {
            if let Hazard::Discard(fault) = hazard {
                found.push(Refusal::DoNotFeed {
                    lot: hay.name.clone(),
                    fault: *fault,
                });
            }
        }
    }
    found
}

/// The refusal where the least that reaches an animal does not keep its floor.
pub(super) fn short_of(least: DryMatter, floor: DryMatter) -> Option<Refusal> {
    // Written so that what is not a number fails it; the slack is the arithmetic's.
    let kept = floor.to_kg() <= least.to_kg() + SLACK_KG;
    (!kept).then_some(Refusal::UnderDryMatterFloor { least, floor })
}

/// What sums of floats may be off by.
// numeric: a microgram
const SLACK_KG: f64 = 1e-9;

/// What to do meanwhile, for the reasons there are.
pub(super) fn meanwhile(draft: &Draft, why: &[Refusal]) -> Vec<Meanwhile> {
    let mut steps = Vec::new();
    let mut add = |step: Meanwhile| {
        if !steps.contains(&step) {
            steps.push(step);
        }
    };
    for reason in why {
        match reason {
            Refusal::OffFeed { .. } => {
                add(Meanwhile::OfferAHandful);
                add(Meanwhile::FeedNow);
            }
            Refusal::AteWhenOffered => add(Meanwhile::FeedNow),
            Refusal::LaminitisNow
            | Refusal::LaminitisSign
            | Refusal::WarmHoofAfterLaminitis
            | Refusal::Lame
            | Refusal::GotAtGrain
            | Refusal::EscapedOntoGrass => {
                add(Meanwhile::StopGrassAndWork);
            }
            Refusal::DoNotFeed { .. } => add(Meanwhile::AnotherHay),
            Refusal::EpisodeWithoutWord | Refusal::DonkeyDiet | Refusal::Energy(_) => {
                add(Meanwhile::WriteDownVetsWord);
            }
            Refusal::Sick
            | Refusal::FarOverUsual { .. }
            | Refusal::LosesTooFast(_)
            | Refusal::NotPlannedHere(_)
            | Refusal::UnderDryMatterFloor { .. } => {}
        }
    }
    // After grain the vet says what it may eat; everybody else keeps forage in front of it.
    if !why.contains(&Refusal::GotAtGrain) {
        let level = draft.allowance.start;
        add(Meanwhile::HayAtLeast {
            level,
            dry: level.of(draft.weight.value),
        });
    }
    steps
}
