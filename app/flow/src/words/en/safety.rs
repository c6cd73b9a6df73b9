//! The last word.

use super::English;
use super::fields::capital;
use super::grass::grass_caution;
use super::numbers::odds;
use crate::words::{
    AnimalWords, ForageWords, LimitsWords, NotEatingWords, SafetyWords, Said, UnitWords,
};
use tussock_core::forage::{Verdict, WayOut};
use tussock_core::limits::{Nutrient, RestrictionBar, VetListReason};
use tussock_core::progress::{Ring, TooFast};
use tussock_core::safety::published::{AFTER_TRIM_DAYS, OFF_FEED_HOURS};
use tussock_core::safety::{Caution, Meanwhile, Refusal, VetUrgency, VitalStanding};

impl English {
    fn vet_list(&self, reasons: &[VetListReason]) -> String {
        let words: Vec<String> = reasons
            .iter()
            .map(|reason| self.vet_list_reason(*reason))
            .collect();
        let words: Vec<&str> = words.iter().map(String::as_str).collect();
        self.list(&words)
    }

    /// A sentence about several nutrients, which are named in its reason.
    fn of_nutrients(&self, sentence: &str, nutrients: &[Nutrient], are: &str, more: &str) -> Said {
        Said::because(
            sentence,
            format!("{are} {}. {more}", self.nutrients(nutrients)),
        )
    }

    fn bars(&self, bars: &[RestrictionBar]) -> String {
        bars.iter()
            .map(|bar| format!("{}.", self.restriction_bar(bar).sentence))
            .collect::<Vec<_>>()
            .join(" ")
    }
}

impl SafetyWords for English {
    #[allow(clippy::too_many_lines, reason = "one arm a caution")]
    fn caution(&self, caution: &Caution) -> Said {
        match caution {
            Caution::OnVetList(reasons) => Said::because(
                "Never restrict it without the vet's word",
                format!("It is on the vet's list: {}.", self.vet_list(reasons)),
            ),
            Caution::RestrictionNotGiven { wanted, bars } => Said::because(
                format!(
                    "{} is not given yet: it stays on the starting level",
                    self.level(*wanted)
                ),
                self.bars(bars),
            ),
            Caution::VetsWordExpired { expired } => Said::because(
                format!(
                    "The vet's word ended on {}: ask the vet again",
                    self.date(*expired)
                ),
                "The plan has gone back to what holds without it.",
            ),
            Caution::PainRelief => Said::because(
                "On pain relief: no work, no restriction, whatever the look-over says",
                "It may walk sound and not be. A clean look-over proves nothing while it is on it.",
            ),
            Caution::LookAgain => Said::because(
                "No grass and no work: look again in 2 hours and tonight",
                "A warm hoof, or lying down more. Cool feet do not rule laminitis out.",
            ),
            Caution::NotLookedOver => Said::because(
                "Look it over before you use this plan",
                "Nobody has looked it over for signs of laminitis yet.",
            ),
            Caution::LeftItsHay => Said::because(
                "Feed other forage now, and ring the vet this morning",
                "It ate what was held out, so it may refuse this hay only. A rinse, a shorter soak or a mix may help later.",
            ),
            Caution::AppetiteNotKnown => Said::because(
                "See that it eats before you use this plan",
                "Nobody said whether it eats. One that does not is never cut.",
            ),
            Caution::Sugar {
                verdict,
                origin,
                ways_out,
            } => {
                let head = match verdict {
                    Verdict::Within { .. } => "The sugar of the day is within the limit".to_owned(),
                    Verdict::Over { .. } => "The sugar of the day is over the limit".to_owned(),
                    Verdict::NotProven { .. } => {
                        format!("The sugar of the day is {}", self.verdict(*verdict))
                    }
                };
                let ways: Vec<String> = ways_out
                    .iter()
                    .map(|way| super::fields::small(self.way_out(*way)))
                    .collect();
                let ways: Vec<&str> = ways.iter().map(String::as_str).collect();
                let soaking = if ways_out.contains(&WayOut::Soak) {
                    " Soaking lowers it and proves nothing."
                } else {
                    ""
                };
                let sentence = if ways.is_empty() {
                    head
                } else {
                    format!("{head}: {}", super::fields::either(&ways))
                };
                Said::because(
                    sentence,
                    format!("{}.{soaking}", capital(self.sugar_origin(*origin))),
                )
            }
            Caution::SoakingProvesNothing => Said::because(
                "Soaked hay stays not proven: send a sample of the soaked hay",
                "Between hays soaking takes anything from none to half of the sugar.",
            ),
            Caution::NoGrass
            | Caution::GrassNotCounted
            | Caution::GrassByModel { .. }
            | Caution::NoRoomForGrass => grass_caution(caution),
            Caution::LongGap {
                hours,
                over_the_line,
            } => Said::because(
                format!(
                    "It waits {} without forage: {}",
                    self.wait(*hours),
                    if *over_the_line {
                        "mend it, or accept it once"
                    } else {
                        "mend it if you can"
                    }
                ),
                "For a fast eater. What mends it stands beside the day, cheapest first.",
            ),
            Caution::StrawOverCap => Said::because(
                "Too much straw: give less of it",
                "With good teeth half of the forage, else 30 %, with poor teeth none; donkeys with good teeth more.",
            ),
            Caution::HayHazard { lot, hazard } => {
                let Said { sentence, why } = self.hazard(*hazard);
                Said {
                    sentence: format!("{lot}: {}", super::fields::small(&sentence)),
                    why,
                }
            }
            Caution::TypicalBalancer => Said::because(
                "Type the label of your balancer: a typical one stands in",
                "Its figures are from memory.",
            ),
            Caution::BucketNotCleared => Said::because(
                "Ask what sugar and starch the balancer holds before you feed it",
                "Its label does not say, or no number of feeds keeps one bucket within its limit.",
            ),
            Caution::StaysShort(nutrients) => self.of_nutrients(
                "Still short, balancer or not: change the balancer or ask your consultant for one",
                nutrients,
                "Short are",
                "What it lacks is listed in the balance.",
            ),
            Caution::OverCeiling(nutrients) => self.of_nutrients(
                "Over the ceiling: take out what brings it, and add no more",
                nutrients,
                "Over are",
                "What it has too much of is listed in the balance.",
            ),
            Caution::NotKnown(nutrients) => self.of_nutrients(
                "Nobody knows how much it gets: have the hay tested for its minerals",
                nutrients,
                "Not known are",
                "Selenium, iron and manganese follow the soil, so that no class mean stands in; the vitamins of hay are seldom tested.",
            ),
            Caution::WeightFromTape { either_way } => Said::because(
                format!(
                    "A tape weight, {} either way: never dose a drug by it",
                    super::numbers::percent_above_nothing(*either_way)
                ),
                "Weigh on a scale when you can. The same tape and the same person show a trend.",
            ),
            Caution::Donkey => Said::because(
                "A donkey: the vet first, and at most 5 kg lost a month",
                "It goes by weight and condition. Raised blood fats, from a cut or from not eating, threaten its life.",
            ),
            Caution::AskAboutPpid => Said::because(
                "Ask the vet about a test for PPID",
                "It is 15 or older, or had laminitis in autumn, and nobody tested it.",
            ),
            Caution::FreshlyTrimmed => Said::because(
                "Trimmed or shod lately: look it over again in a few days",
                format!(
                    "For {} days its footing says little either way.",
                    *AFTER_TRIM_DAYS
                ),
            ),
            Caution::Corticosteroid => Said::because(
                "A corticosteroid lately: ask the vet before any cut, and look it over",
                "It can bring on laminitis and alters insulin.",
            ),
            Caution::Unusual {
                vital,
                reading,
                standing,
            } => Said::because(
                format!(
                    "{}: {}",
                    self.vital(*vital),
                    self.vital_told(*vital, *reading, *standing)
                ),
                "It stands until it is taken again and is within what is usual.",
            ),
            Caution::RaisedToFloor => Said::because(
                "More hay than its level, so that it never has too little: do not take it off",
                "At the driest hay, the greatest loss and the heaviest it may be, it must keep its floor.",
            ),
        }
    }

    fn refusal_head(&self, refusal: &Refusal) -> &'static str {
        match refusal {
            Refusal::OffFeed { .. } => "No plan: it is off its feed",
            Refusal::AteWhenOffered => "Left its hay: feed now, ring this morning",
            Refusal::LaminitisNow => "No plan: laminitis, the vet decides",
            Refusal::LaminitisSign => "Stop grazing and work. Vet today",
            Refusal::WarmHoofAfterLaminitis => "Warm hoof or lying more: vet today",
            Refusal::EpisodeWithoutWord => "No plan without the vet's word",
            Refusal::GotAtGrain => "It got at grain: ring the vet now",
            Refusal::EscapedOntoGrass => "On lush grass: ring the vet now",
            Refusal::Sick => "No plan: it is sick",
            Refusal::FarOverUsual { .. } => "No plan. Ring the vet now",
            Refusal::LosesTooFast(_) => "Losing too fast: feed more, ring the vet",
            Refusal::Lame => "No plan: it is lame",
            Refusal::NotPlannedHere(_) => "No plan here for this animal. Vet first",
            Refusal::DonkeyDiet => "No plan. A donkey needs the vet first",
            Refusal::Energy(_) => "No plan: too little energy. Vet first",
            Refusal::UnderDryMatterFloor { .. } => "No plan: too little hay",
            Refusal::DoNotFeed { .. } => "Do not feed this hay",
        }
    }

    fn refusal(&self, refusal: &Refusal) -> Said {
        match refusal {
            Refusal::OffFeed {
                last_seen_eating,
                past_the_latest,
            } => {
                let counted = if last_seen_eating.is_some() {
                    "Counted from when it was last seen eating."
                } else {
                    "Nobody knows when it last ate."
                };
                Said::because(
                    if *past_the_latest {
                        format!(
                            "It has not been seen eating for {} h or more: ring the vet now",
                            *OFF_FEED_HOURS
                        )
                    } else {
                        "It is off its feed: hold out a handful of dry hay and ring the vet"
                            .to_owned()
                    },
                    format!(
                        "{counted} {} h is the latest, not the wait. In ponies, miniatures and donkeys raised blood fats threaten life.",
                        *OFF_FEED_HOURS
                    ),
                )
            }
            Refusal::AteWhenOffered => Said::because(
                "It left its hay and eats when it is offered: feed it now, ring the vet this morning",
                "If it leaves that too, or looks dull, ring at once.",
            ),
            Refusal::LaminitisNow => Said::because(
                "It has laminitis: the vet decides what it eats",
                "Write down the vet's word to go on. Hay stays in front of it, with no sudden cut.",
            ),
            Refusal::LaminitisSign => Said::because(
                "A sign of laminitis: stop grazing and work, soft bed, ring the vet today",
                "Any one sign is enough. Keep hay in front of it, and never force it to walk.",
            ),
            Refusal::WarmHoofAfterLaminitis => Said::because(
                "A warm hoof or lying down more, and it had laminitis: ring the vet today",
                "Until then no grass, no work, soft bed, hay in front of it.",
            ),
            Refusal::EpisodeWithoutWord => Said::because(
                "Laminitis is not over until the vet says so: write down the vet's word",
                "The vet's word says what it may have, and until when.",
            ),
            Refusal::GotAtGrain => Said::because(
                "It got at grain: ring the vet now, before signs show",
                "Say how much, of what, and when. Do not wait for lameness.",
            ),
            Refusal::EscapedOntoGrass => Said::because(
                "It escaped onto lush grass: ring the vet now, before signs show",
                "Say how long it was there. Take it off the grass and give it hay.",
            ),
            Refusal::Sick => Said::because(
                "It is sick, feverish or has colic: ring the vet today",
                "A sick animal is never cut.",
            ),
            Refusal::FarOverUsual { vital, reading } => Said::because(
                format!(
                    "{}: {}",
                    self.vital(*vital),
                    self.vital_told(*vital, *reading, VitalStanding::Ring)
                ),
                "It stands until it is taken again and is no longer so, or the vet has spoken. A sick animal is never cut.",
            ),
            Refusal::LosesTooFast(too_fast) => self.loses_too_fast(too_fast),
            Refusal::Lame => Said::because(
                "It is lame: no work, ring the vet today",
                "Lameness may be laminitis. Write down the vet's word to go on.",
            ),
            Refusal::NotPlannedHere(state) => Said::because(
                format!("{}: ask the vet for its ration", self.state(*state)),
                "Its needs are higher, no plan is made for it here, and it is never restricted.",
            ),
            Refusal::DonkeyDiet => Said::because(
                "A donkey or mule loses weight only with the vet: write down the vet's word first",
                "A cut can bring on raised blood fats, which threaten a donkey's life.",
            ),
            Refusal::Energy(verdict) => self.energy_verdict(*verdict),
            Refusal::UnderDryMatterFloor { least, floor } => Said::because(
                "It would have too little: give it more hay",
                format!(
                    "At the least {} kg of dry matter reach it, and its floor is {} kg.",
                    tussock_core::units::show::beside(least.to_kg(), floor.to_kg(), 1),
                    tussock_core::units::show::fixed(floor.to_kg(), 2)
                ),
            ),
            Refusal::DoNotFeed { lot, fault } => Said::because(
                format!("Do not feed {lot}: take another hay"),
                format!("It has {}.", self.fault(*fault)),
            ),
        }
    }

    fn meanwhile(&self, meanwhile: &Meanwhile) -> Said {
        match meanwhile {
            Meanwhile::HayAtLeast { level, dry } => Said::because(
                "Keep hay in front of it, no sudden cut",
                format!("At least {} a day, {}.", self.dry(*dry), self.level(*level)),
            ),
            Meanwhile::FeedNow => Said::because(
                "Feed now what it will eat",
                "Any forage is better than none.",
            ),
            Meanwhile::OfferAHandful => Said::because(
                "Hold out a handful of dry hay and watch",
                "Whether it eats that tells the vet much.",
            ),
            Meanwhile::StopGrassAndWork => Said::because(
                "Stop grazing and work, give it a soft bed",
                "Never force it to walk.",
            ),
            Meanwhile::WriteDownVetsWord => Said::because(
                "Write down the vet's word",
                "Who said it, on what day, what is allowed and until when.",
            ),
            Meanwhile::AnotherHay => Said::plain("Feed another hay"),
        }
    }

    fn vet(&self, urgency: VetUrgency) -> &'static str {
        match urgency {
            VetUrgency::First => "Ask the vet first",
            VetUrgency::ThisMorning => "Ring the vet this morning",
            VetUrgency::Today => "Ring the vet today",
            VetUrgency::Now => "Ring the vet now",
        }
    }
}

impl English {
    fn loses_too_fast(self, too_fast: &TooFast) -> Said {
        Said::because(
            format!(
                "It loses weight too fast, {}: feed up to {}, and {}",
                odds(too_fast.chance),
                self.level(too_fast.raise_to),
                match too_fast.ring {
                    Ring::SameDay => "ring the vet today",
                    Ring::Soon => "ring the vet",
                }
            ),
            "It was measured again. In ponies, miniatures, donkeys and mules a fast loss can flood the blood with fat. It stands until it is weighed again and loses more slowly, or the vet has spoken.",
        )
    }
}
