//! What a plan is made from: everything is an argument, and is frozen with the plan.

use crate::animal::{
    Animal, AnimalId, Answer, PaddockId, Risk, SaidOn, Seen, VetFlag, VetScope, VetWord,
};
use crate::assess::{ConditionRange, Crest, DatedWeight, Tape};
use crate::day::{EatingRate, NetKind, rate};
use crate::forage::Lot;
use crate::limits::WaterWeather;
use crate::progress::TooFast;
use crate::ration::Food;
use crate::soak::{Air, Recipe};
use crate::units::{AsFed, BodyMass, Instant, LocalDate, LocalTime, PartOfBody, Span};

/// A condition score on a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scored {
    /// The day.
    pub on: LocalDate,
    /// The score on 1 to 9, or the range that stands for it.
    pub condition: ConditionRange,
    /// Whether it was scored site by site; one answer about the ribs is not.
    pub by_sites: bool,
}

/// What a look-over saw: yes, no, or nobody looked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Signs {
    /// Its gait is not as usual.
    pub gait: Answer,
    /// It stands unlike itself.
    pub stance: Answer,
    /// It turns with difficulty.
    pub turning: Answer,
    /// It shifts its weight from foot to foot.
    pub shifting_weight: Answer,
    /// A strong pulse at the foot.
    pub strong_pulse: Answer,
    /// Pain in a foot.
    pub foot_pain: Answer,
    /// A warm hoof.
    pub warm_hoof: Answer,
    /// It lies down more than usual.
    pub lying_more: Answer,
}

impl Signs {
    /// Any one of these stops grass and work, and is for the vet today (practice rule 15).
    pub fn for_the_vet(&self) -> bool {
        [
            self.gait,
            self.stance,
            self.turning,
            self.shifting_weight,
            self.strong_pulse,
            self.foot_pain,
        ]
        .contains(&Answer::Yes)
    }

    /// A warm hoof or lying more alone: the same stops, look again in two hours and tonight.
    pub fn look_again(&self) -> bool {
        [self.warm_hoof, self.lying_more].contains(&Answer::Yes)
    }

    /// Whether nothing was found: not known as long as one line was not looked at.
    pub fn clean(&self) -> Answer {
        let all = [
            self.gait,
            self.stance,
            self.turning,
            self.shifting_weight,
            self.strong_pulse,
            self.foot_pain,
            self.warm_hoof,
            self.lying_more,
        ];
        if all.contains(&Answer::Yes) {
            Answer::No
        } else if all.contains(&Answer::NotKnown) {
            Answer::NotKnown
        } else {
            Answer::Yes
        }
    }
}

/// A reading at rest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taken {
    /// In the unit of what was measured.
    pub reading: f64,
    /// When it was taken.
    pub seen: Seen,
}

/// Temperature, pulse and breathing, each as it was taken last: it stands until it is taken again.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct AtRest {
    /// Temperature, in degrees Celsius.
    pub temperature: Option<Taken>,
    /// Pulse, in beats a minute.
    pub pulse: Option<Taken>,
    /// Breathing, in breaths a minute.
    pub breaths: Option<Taken>,
}

/// The last look-over.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct LookedOver {
    /// The day; `None` when nobody looked.
    pub on: Option<LocalDate>,
    /// What was seen.
    pub signs: Signs,
    /// When the last of the signs for the vet that stand was first seen.
    pub vet_since: Option<Seen>,
    /// When the last of a warm hoof and lying more, as far as they stand, was first seen.
    pub again_since: Option<Seen>,
    /// The looks again that are still to be made.
    pub again: LookAgain,
    /// What was measured at rest.
    pub at_rest: AtRest,
}

/// The looks that are still to be made after a warm hoof or lying more (practice rule 15). They are open until somebody
/// looked at their time and saw neither.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct LookAgain {
    /// The one a short while after; `None` when it was made or none is asked for.
    pub soon: Option<Instant>,
    /// The one of that evening; `None` when it was made, or when the one before it falls later.
    pub tonight: Option<Instant>,
}

impl LookAgain {
    /// Whether one is still to be made: until then no work and no grass.
    pub const fn is_open(&self) -> bool {
        self.soon.is_some() || self.tonight.is_some()
    }
}

/// A forage and its part of the forage dry matter.
#[derive(Clone, Copy, Debug)]
pub struct HayOffer<'a> {
    /// The lot.
    pub lot: &'a Lot,
    /// Its part, 0 to 1; the parts of all offers add up to 1.
    pub part: f64,
}

/// What the forage hangs in.
#[derive(Clone, Debug, PartialEq)]
pub struct NetUse {
    /// What it is eaten from.
    pub kind: NetKind,
    /// The most that can hang at one visit, as fed.
    pub most_at_once: Option<AsFed>,
    /// The animal's own rate with dry hay, when a net was timed: it always wins.
    pub timed: Option<EatingRate>,
    /// The same with soaked hay, which is eaten more slowly.
    pub timed_soaked: Option<EatingRate>,
    /// It eats at least so much an hour, in kilograms of dry matter, by nets that were found empty.
    pub at_least: Option<f64>,
}

/// How much of the forage of a day is soaked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Soaked {
    /// None of it.
    None,
    /// Some of it.
    Some,
    /// All of it.
    All,
}

impl NetUse {
    /// How fast the animal eats: its own rate, else the published one, raised to what it is known to eat at least.
    ///
    /// Where soaked hay was not timed, its fast end is that of dry hay, which leaves the animal longest without forage, and
    /// its slow end the slower of the two rates, which leaves soaked hay hanging longest.
    pub fn rate(&self, body: BodyMass, soaked: Soaked) -> EatingRate {
        let published = rate(body, self.kind);
        let slow = published.slow;
        let dry = self.timed.clone().unwrap_or(published);
        let dry = match self.at_least {
            Some(least) => dry.at_least(least),
            None => dry,
        };
        let wet = self.timed_soaked.clone().unwrap_or_else(|| EatingRate {
            slow: slow.min(dry.slow),
            ..dry.clone()
        });
        match soaked {
            Soaked::None => dry,
            Soaked::All => wet,
            Soaked::Some => EatingRate {
                slow: wet.slow.min(dry.slow),
                ..dry
            },
        }
    }
}

/// How hay is soaked here, when it must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Soaking {
    /// Water and time.
    pub recipe: Recipe,
    /// The air of the day.
    pub air: Air,
}

/// Turnout on grass that somebody decided on: so it goes on a day on which grass is open.
#[derive(Clone, Debug, PartialEq)]
pub struct Grazing {
    /// Where; `None` when nobody said.
    pub paddock: Option<PaddockId>,
    /// How long a day.
    pub time: Span,
    /// Whether it wears a muzzle.
    pub muzzle: bool,
    /// Weeks of such turnout behind it; `None` when nobody knows.
    pub weeks: Option<f64>,
    /// Whether somebody saw leaf enough there to eat.
    pub leaf: bool,
}

/// Everything a plan for one animal is made from.
#[derive(Clone, Debug)]
pub struct PlanFor<'a> {
    /// The animal.
    pub animal: &'a Animal,
    /// Now.
    pub now: Instant,
    /// The local day.
    pub day: LocalDate,
    /// Its weights.
    pub weights: &'a [DatedWeight],
    /// Its last tape, for the published ideal weight.
    pub tape: Option<&'a Tape>,
    /// Its condition scores.
    pub condition: &'a [Scored],
    /// Its crest as last scored.
    pub crest: Option<Crest>,
    /// Its last look-over.
    pub look_over: LookedOver,
    /// Days at the starting level that were really fed.
    pub days_at_start: u32,
    /// Vets' words.
    pub words: &'a [VetWord],
    /// Since when what is said of it stops it.
    pub said: SaidOn,
    /// Its weight falls so fast that the vet is rung.
    pub too_fast: Option<TooFast>,
    /// The level of the plan that holds now.
    pub level_now: Option<PartOfBody>,
    /// The level that is asked for.
    pub asked: Option<PartOfBody>,
    /// One or more forages.
    pub hays: &'a [HayOffer<'a>],
    /// The balancer in the feed room; the typical one stands in without.
    pub balancer: Option<&'a Food>,
    /// The bought feeds that somebody decided on; `None` leaves them to what the hay is short of.
    pub ration: Option<&'a [(AsFed, Food)]>,
    /// When somebody comes.
    pub visits: &'a [LocalTime],
    /// What the forage hangs in.
    pub net: NetUse,
    /// How hay is soaked here, when it must be.
    pub soaking: Soaking,
    /// The weather, for water.
    pub weather: WaterWeather,
    /// Turnout that somebody decided on; `None` when nobody did.
    pub grazing: Option<&'a Grazing>,
    /// The risk that sets hay and grass when it is fed with others: that of the most at-risk member.
    pub strictest: Option<&'a Risk>,
}

impl LookedOver {
    /// Whether a sign, or a look again that is still to be made, stops what a vet's word of this scope would open.
    pub fn stops(
        &self,
        animal: &AnimalId,
        words: &[VetWord],
        scope: VetScope,
        day: LocalDate,
    ) -> bool {
        let stands = |sign: bool, since: Option<Seen>| {
            let lifted =
                since.is_some_and(|seen| words.iter().any(|w| w.lifts(animal, scope, day, seen)));
            sign && !lifted
        };
        self.again.is_open()
            || stands(self.signs.for_the_vet(), self.vet_since)
            || stands(self.signs.look_again(), self.again_since)
    }
}

impl PlanFor<'_> {
    /// Whether a sign, or a look again that is still to be made, stops what a vet's word of this scope would open.
    pub(super) fn stopped_by_signs(&self, scope: VetScope) -> bool {
        let animal = &self.animal.id;
        self.look_over.stops(animal, self.words, scope, self.day)
    }

    /// Whether it is lame and no vet's word of this scope was given since.
    pub(super) fn stopped_by_lameness(&self, scope: VetScope) -> bool {
        self.animal.health.flags.contains(&VetFlag::Lame)
            && !self.lifted(scope, self.said.lame.map(Seen::on))
    }

    pub(super) fn lifted(&self, scope: VetScope, seen: Option<Seen>) -> bool {
        seen.is_some_and(|seen| {
            self.words
                .iter()
                .any(|word| word.lifts(&self.animal.id, scope, self.day, seen))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sources::Provenance;

    fn steady(kg_per_h: f64) -> EatingRate {
        EatingRate {
            slow: kg_per_h * 0.9,
            likely: kg_per_h,
            fast: kg_per_h * 1.1,
            from: Provenance::new(),
        }
    }

    fn net(timed: Option<f64>, soaked: Option<f64>, at_least: Option<f64>) -> NetUse {
        NetUse {
            kind: NetKind::SmallHoles,
            most_at_once: None,
            timed: timed.map(steady),
            timed_soaked: soaked.map(steady),
            at_least,
        }
    }

    #[test]
    fn the_animals_own_rate_wins_and_soaked_hay_stands_apart() {
        let body = BodyMass::kg(300.0);
        let published = rate(body, NetKind::SmallHoles);
        assert_eq!(net(None, None, None).rate(body, Soaked::None), published);
        let both = net(Some(0.6), Some(0.4), None);
        assert_eq!(both.rate(body, Soaked::None), steady(0.6));
        assert_eq!(both.rate(body, Soaked::All), steady(0.4));
        // Hunger goes by the faster, the time to eat soaked hay by the slower.
        let mixed = both.rate(body, Soaked::Some);
        assert_eq!(
            (mixed.fast, mixed.slow),
            (steady(0.6).fast, steady(0.4).slow)
        );
    }

    #[test]
    fn what_was_not_timed_is_taken_by_the_end_that_is_worse() {
        let body = BodyMass::kg(300.0);
        let published = rate(body, NetKind::SmallHoles);
        let wet = net(Some(2.0), None, None).rate(body, Soaked::All);
        assert_eq!((wet.fast, wet.slow), (steady(2.0).fast, published.slow));
        // Only soaked nets were timed: dry hay is eaten faster, so that rate is not taken for it.
        let dry = net(None, Some(0.1), None).rate(body, Soaked::None);
        assert_eq!(dry, published);
        let lifted = net(None, None, Some(3.0)).rate(body, Soaked::None);
        assert!(3.0 <= lifted.slow);
        // What was seen of dry hay does not make soaked hay eaten sooner.
        let wet = net(None, None, Some(3.0)).rate(body, Soaked::All);
        assert_eq!((wet.fast, wet.slow), (3.0, published.slow));
    }
}
