//! It will not eat: what a handful of dry hay says, what to do, and how soon the vet is rung (practice rule 14).
//!
//! Either it leaves this hay and eats other forage, or it is off its feed. What nobody knows counts as the worse of the two.

use super::published::{AFTERNOON_FROM, EVENING_FROM, MORNING_FROM, OFF_FEED_HOURS};
use super::refusal::{Refusal, VetUrgency, left_its_forage};
use crate::animal::{Animal, Answer, Appetite, Handful};
use crate::day::published::GAP_LINE;
use crate::units::{Instant, LocalStamp, LocalTime, Span, Zone};
use chrono::Days;

/// When it was last seen eating, as people say it. The earlier end of each is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LastAte {
    /// Just now, of its own accord.
    Now,
    /// This afternoon.
    Afternoon,
    /// This morning.
    Morning,
    /// Last evening.
    Evening,
    /// Before that.
    Longer,
    /// Nobody knows.
    NotKnown,
}

impl LastAte {
    /// All of them, the latest first.
    pub const ALL: [Self; 6] = [
        Self::Now,
        Self::Afternoon,
        Self::Morning,
        Self::Evening,
        Self::Longer,
        Self::NotKnown,
    ];

    /// Those that can be meant at an instant: before noon there was no afternoon.
    pub fn offered(now: Instant, zone: &impl Zone) -> Vec<Self> {
        let before_noon = zone.to_local(now).time < *AFTERNOON_FROM;
        Self::ALL
            .into_iter()
            .filter(|said| !(before_noon && *said == Self::Afternoon))
            .collect()
    }

    /// The instant from which it is counted; `None` where nobody knows.
    pub fn at(self, now: Instant, zone: &impl Zone) -> Option<Instant> {
        let today = zone.to_local(now).date;
        let clock = |date, time| {
            let stamp = LocalStamp { date, time };
            zone.to_instant(stamp).planned().min(now)
        };
        let morning = clock(today, *MORNING_FROM);
        let evening = || {
            let yesterday = today.checked_sub_days(Days::new(1)).unwrap_or(today);
            clock(yesterday, *EVENING_FROM)
        };
        match self {
            Self::Now => Some(now),
            Self::Afternoon => Some(clock(today, *AFTERNOON_FROM)),
            // In the small hours "this morning" is since midnight.
            Self::Morning if morning == now => Some(clock(today, LocalTime::MIN)),
            Self::Morning => Some(morning),
            Self::Evening => Some(evening()),
            Self::Longer => Some(evening().min(now - Span::hours(*OFF_FEED_HOURS))),
            Self::NotKnown => None,
        }
    }
}

/// What was seen when a handful of dry hay was held out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Offered {
    /// When it was last seen eating before that; `None` where nobody knows.
    pub last_seen_eating: Option<Instant>,
    /// What it did; `None` until somebody says.
    pub handful: Option<Handful>,
    /// Whether it looks dull.
    pub dull: Answer,
}

/// What that says.
#[derive(Clone, Debug, PartialEq)]
pub enum WillNotEat {
    /// Nothing yet: a handful is held out first.
    HoldOutAHandful,
    /// It leaves this hay and eats other forage.
    ThisHay,
    /// It is for the vet, and how soon.
    Vet(Refusal, VetUrgency),
}

/// Something to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum EatStep {
    /// Feed other forage now.
    OtherForage,
    /// Rinse this hay instead of soaking it.
    Rinse,
    /// Soak it shorter.
    ShorterSoak,
    /// Mix it with the hay it knows.
    MixWithOld,
    /// Look again at the next visit.
    LookNextVisit,
    /// Feed now what it eats.
    FeedNow,
    /// Leave forage and water in front of it.
    LeaveForage,
    /// Take temperature, pulse and breathing, and tell the vet.
    TakeVitals,
    /// If it stops eating or turns dull, ring at once.
    RingAtOnceIfWorse,
}

/// What an offered handful says of an animal that leaves its forage.
///
/// It is this hay alone when it ate the handful, is not dull, and was seen eating within the longest gap that is not to be
/// passed (`day.gap_line`). An animal that was said to be off its feed before is not let off here: it is still rung about,
/// until somebody says that it eats as usual.
pub fn will_not_eat(animal: &Animal, offered: &Offered, now: Instant) -> WillNotEat {
    let Some(appetite) = offered.off() else {
        return WillNotEat::HoldOutAHandful;
    };
    let was_off = matches!(animal.health.appetite, Appetite::Off { .. });
    let ate_lately = offered
        .last_seen_eating
        .is_some_and(|at| now.since(at).to_hours() <= *GAP_LINE);
    let eats = offered.handful == Some(Handful::Eaten) && offered.dull == Answer::No;
    if eats && ate_lately && !was_off {
        return WillNotEat::ThisHay;
    }
    let mut seen = animal.clone();
    seen.health.appetite = appetite;
    left_its_forage(appetite, now)
        .and_then(|why| {
            let vet = why.vet_for(&seen)?;
            Some(WillNotEat::Vet(why, vet))
        })
        .unwrap_or(WillNotEat::HoldOutAHandful)
}

impl Offered {
    /// As an animal that left its forage; `None` while nobody held out a handful and nobody says that it is dull.
    fn off(&self) -> Option<Appetite> {
        let dull_alone = self.handful.is_none() && self.dull != Answer::Yes;
        (!dull_alone).then_some(Appetite::Off {
            last_seen_eating: self.last_seen_eating,
            handful: self.handful.unwrap_or(Handful::NotTried),
            dull: self.dull,
        })
    }
}

impl WillNotEat {
    /// How soon the vet is rung; `None` where it is not for the vet.
    pub const fn vet(&self) -> Option<VetUrgency> {
        match self {
            Self::HoldOutAHandful | Self::ThisHay => None,
            Self::Vet(_, vet) => Some(*vet),
        }
    }

    /// The appetite that the animal carries after it; `None` while nothing is said.
    pub fn appetite(&self, offered: &Offered) -> Option<Appetite> {
        match self {
            Self::HoldOutAHandful => None,
            Self::ThisHay => Some(Appetite::Eating),
            Self::Vet(..) => offered.off(),
        }
    }

    /// What to do, in its order.
    pub fn steps(&self) -> &'static [EatStep] {
        match self {
            Self::HoldOutAHandful => &[],
            Self::ThisHay => &[
                EatStep::OtherForage,
                EatStep::Rinse,
                EatStep::ShorterSoak,
                EatStep::MixWithOld,
                EatStep::LookNextVisit,
                EatStep::RingAtOnceIfWorse,
            ],
            Self::Vet(Refusal::AteWhenOffered, _) => &[
                EatStep::FeedNow,
                EatStep::TakeVitals,
                EatStep::RingAtOnceIfWorse,
            ],
            Self::Vet(..) => &[EatStep::LeaveForage, EatStep::TakeVitals],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::{
        AnimalId, Goal, Health, Kind, Phase, Ppid, StageFacts, State, Temperament, VetFlag,
        Workload,
    };

    struct Utc;
    impl Zone for Utc {
        fn offset_min(&self, _: Instant) -> i32 {
            0
        }
    }

    fn animal(kind: Kind) -> Animal {
        Animal {
            id: AnimalId("moss".into()),
            name: "Moss".into(),
            kind,
            body_type: None,
            sex: None,
            born: None,
            height: None,
            state: State::Adult,
            stage: StageFacts::default(),
            work: Workload::Maintenance(Temperament::Average),
            health: Health::default(),
            goal: Goal::Hold,
            phase: Phase::Holding,
            target: None,
        }
    }

    /// Seven in the morning of a day.
    fn seven() -> Instant {
        Instant::from_ms(0) + Span::hours(24 * 20_000 + 7)
    }

    fn seen(hours_ago: i64, handful: Handful, dull: Answer) -> Offered {
        Offered {
            last_seen_eating: Some(seven() - Span::hours(hours_ago)),
            handful: Some(handful),
            dull,
        }
    }

    fn vet(animal: &Animal, offered: &Offered) -> Option<VetUrgency> {
        will_not_eat(animal, offered, seven()).vet()
    }

    #[test]
    fn the_listed_are_rung_about_now_and_a_horse_this_morning_until_the_latest_hour() {
        let refused = seen(3, Handful::Refused, Answer::No);
        let dull = seen(3, Handful::Eaten, Answer::Yes);
        let mut listed: Vec<Animal> = [Kind::Pony, Kind::Miniature, Kind::Donkey, Kind::Mule]
            .map(animal)
            .to_vec();
        for state in [State::Pregnant, State::Lactating] {
            let mut mare = animal(Kind::Horse);
            mare.state = state;
            listed.push(mare);
        }
        let mut ppid = animal(Kind::Horse);
        ppid.health.ppid = Ppid::Treated;
        listed.push(ppid);
        let mut drug = animal(Kind::Horse);
        drug.health.flags.push(VetFlag::Sglt2Inhibitor);
        listed.push(drug);
        for animal in &listed {
            assert_eq!(vet(animal, &refused), Some(VetUrgency::Now));
            assert_eq!(vet(animal, &dull), Some(VetUrgency::Now));
        }
        let horse = animal(Kind::Horse);
        assert_eq!(vet(&horse, &refused), Some(VetUrgency::ThisMorning));
        assert_eq!(vet(&horse, &dull), Some(VetUrgency::ThisMorning));
        let late = seen(12, Handful::Refused, Answer::No);
        assert_eq!(vet(&horse, &late), Some(VetUrgency::Now));
    }

    #[test]
    fn untouched_overnight_and_eats_is_fed_now_and_rung_about_this_morning() {
        for kind in [Kind::Horse, Kind::Pony] {
            let found = will_not_eat(
                &animal(kind),
                &seen(10, Handful::Eaten, Answer::No),
                seven(),
            );
            assert_eq!(
                found,
                WillNotEat::Vet(Refusal::AteWhenOffered, VetUrgency::ThisMorning)
            );
            assert_eq!(found.steps().first(), Some(&EatStep::FeedNow));
        }
    }

    #[test]
    fn it_is_this_hay_alone_only_when_everything_says_so() {
        let moss = animal(Kind::Pony);
        let eats = seen(2, Handful::Eaten, Answer::No);
        let found = will_not_eat(&moss, &eats, seven());
        assert_eq!(found, WillNotEat::ThisHay);
        assert_eq!(found.appetite(&eats), Some(Appetite::Eating));
        assert_eq!(found.steps().first(), Some(&EatStep::OtherForage));
        for doubt in [
            Offered {
                dull: Answer::NotKnown,
                ..eats
            },
            Offered {
                last_seen_eating: None,
                ..eats
            },
            seen(7, Handful::Eaten, Answer::No),
        ] {
            assert_eq!(vet(&moss, &doubt), Some(VetUrgency::ThisMorning));
        }
    }

    #[test]
    fn a_stop_that_stands_is_eased_and_not_ended() {
        let mut moss = animal(Kind::Pony);
        moss.health.appetite = Appetite::Off {
            last_seen_eating: None,
            handful: Handful::Refused,
            dull: Answer::No,
        };
        let eats = seen(0, Handful::Eaten, Answer::No);
        let found = will_not_eat(&moss, &eats, seven());
        assert_eq!(found.vet(), Some(VetUrgency::ThisMorning));
        assert!(matches!(
            found.appetite(&eats),
            Some(Appetite::Off {
                handful: Handful::Eaten,
                ..
            })
        ));
    }

    #[test]
    fn nothing_is_said_before_a_handful_or_dullness() {
        let moss = animal(Kind::Donkey);
        let nothing = Offered {
            last_seen_eating: None,
            handful: None,
            dull: Answer::NotKnown,
        };
        assert_eq!(
            will_not_eat(&moss, &nothing, seven()),
            WillNotEat::HoldOutAHandful
        );
        let dull = Offered {
            dull: Answer::Yes,
            ..nothing
        };
        assert_eq!(vet(&moss, &dull), Some(VetUrgency::Now));
        // Refused, and nobody knows since when: the latest hour may have passed.
        let refused = Offered {
            handful: Some(Handful::Refused),
            ..nothing
        };
        assert_eq!(vet(&animal(Kind::Horse), &refused), Some(VetUrgency::Now));
    }

    #[test]
    fn each_part_of_a_day_is_counted_from_its_earlier_end() {
        let hours = |said: LastAte, now: Instant| {
            said.at(now, &Utc).map(|at| now.since(at).to_minutes() / 60)
        };
        let evening = seven() + Span::hours(11);
        let said = |now| LastAte::ALL.map(|said| hours(said, now));
        assert_eq!(
            said(evening),
            [Some(0), Some(6), Some(13), Some(25), Some(25), None]
        );
        assert_eq!(
            said(seven()),
            [Some(0), Some(0), Some(2), Some(14), Some(14), None]
        );
        let small_hours = seven() - Span::hours(5);
        assert_eq!(
            said(small_hours),
            [Some(0), Some(0), Some(2), Some(9), Some(12), None]
        );
        assert!(!LastAte::offered(seven(), &Utc).contains(&LastAte::Afternoon));
        assert!(LastAte::offered(evening, &Utc).contains(&LastAte::Afternoon));
    }
}
