//! An animal for every row of the table.

use super::cob::{facts, pace, part, scored, still};
use crate::animal::{Goal, Phase};
use crate::limits::{Ends, RestrictionBar};
use crate::progress::step::*;

/// One animal for every row of the table: what the trade would say, the row, the animal.
#[allow(clippy::too_many_lines, reason = "a row of the table each")]
pub(crate) fn animals() -> Vec<(&'static str, &'static str, Facts)> {
    use Phase::{Episode, Holding, Losing, NeedsWeight, New, OtherHands, Plateau, Recovering};
    let of = |phase, change: fn(&mut Facts)| {
        let mut facts = facts(phase);
        change(&mut facts);
        facts
    };
    vec![
        (
            "it stands off its hay: ring now",
            "stopped",
            of(Losing, |f| f.stop = Some(HowSoon::Now)),
        ),
        (
            "2.4 % down and measured again: up to 1.5 % and ring",
            "far down, measured again",
            of(Losing, |f| {
                f.fast_loss = FastLoss::Confirmed { chance: 0.85 };
                f.level = Some(part(1.25));
            }),
        ),
        (
            "a donkey that loses more than 5 kg a month",
            "donkey, too fast",
            of(Losing, |f| {
                f.donkey = true;
                f.donkey_too_fast = 0.85;
            }),
        ),
        (
            "one reading 2.4 % down: measure again now",
            "far down once",
            of(Losing, |f| f.fast_loss = FastLoss::Once { part: 0.024 }),
        ),
        (
            "the vet lifted the stop and it has laminitis: an episode",
            "laminitis now",
            of(Losing, |f| f.laminitis_now = true),
        ),
        (
            "a warm hoof: nothing changes until somebody looked",
            "look again",
            of(Losing, |f| f.look_again = true),
        ),
        (
            "the vet said that it is over its worst",
            "episode, over",
            of(Episode, |f| f.vet_spoke = true),
        ),
        (
            "an episode: as the vet says",
            "episode",
            of(Episode, |f| {
                f.laminitis_now = true;
                f.vet_spoke = true;
            }),
        ),
        (
            "sound, clean and the vet spoke: over?",
            "recovering, over",
            of(Recovering, |f| f.vet_spoke = true),
        ),
        (
            "still on pain relief: it recovers on",
            "recovering",
            of(Recovering, |f| {
                f.vet_spoke = true;
                f.not_sound = true;
            }),
        ),
        (
            "at livery for a fortnight",
            "other hands",
            of(OtherHands, |_| {}),
        ),
        (
            "nobody weighed it ever",
            "never weighed",
            of(New, |f| f.weighed = false),
        ),
        (
            "condition 2.5 is for the vet",
            "very thin",
            of(NeedsWeight, |f| f.condition = Some(scored(2.5))),
        ),
        (
            "losing, and condition 4.5",
            "thin",
            of(Losing, |f| f.condition = Some(scored(4.5))),
        ),
        (
            "weighed, and no plan yet",
            "no plan",
            of(New, |f| f.level = None),
        ),
        (
            "nine days on the starting level",
            "new, settling",
            of(New, |f| f.days_at_start = 9),
        ),
        (
            "a fortnight, and taped once",
            "new, weighed once",
            of(New, |f| f.weighings = 1),
        ),
        (
            "a fat donkey: its diet starts with the vet",
            "new donkey, vet first",
            of(New, |f| f.donkey = true),
        ),
        (
            "a fortnight, weighed twice, to lose weight",
            "new, decide",
            of(New, |_| {}),
        ),
        (
            "was thin, and scored 5.5 twice",
            "filled out",
            of(NeedsWeight, |f| {
                f.condition = Some(scored(5.5));
                f.scores = vec![scored(5.5), scored(5.5)];
            }),
        ),
        (
            "thin, and still going down",
            "thin and losing",
            of(NeedsWeight, |f| {
                thin(f);
                f.pace = Some(pace(0.05, 0.55, 0.4, 0.0));
            }),
        ),
        (
            "thin, not gaining, and nobody saw what it ate",
            "no gain, eaten not known",
            of(NeedsWeight, |f| {
                thin(f);
                f.pace = Some(pace(0.3, 0.4, 0.2, 0.1));
                f.eaten = None;
            }),
        ),
        (
            "thin, and not gaining on what it gets",
            "no gain",
            of(NeedsWeight, |f| {
                thin(f);
                f.pace = Some(pace(0.3, 0.4, 0.2, 0.1));
            }),
        ),
        (
            "thin, and filling out",
            "needs weight",
            of(NeedsWeight, thin),
        ),
        (
            "two readings over the band",
            "regained",
            of(Holding, |f| {
                f.target = Some(TargetStands {
                    readings_over: 2,
                    ..TargetStands::default()
                });
            }),
        ),
        (
            "weighed once since it holds",
            "holding, weighed once",
            of(Holding, |f| f.weighings = 1),
        ),
        (
            "likely over the band, one reading so far",
            "holding, over the band",
            of(Holding, |f| {
                f.target = Some(TargetStands {
                    over_band: 0.85,
                    readings_over: 1,
                    ..TargetStands::default()
                });
            }),
        ),
        (
            "its weight holds within 2 %",
            "holding, holds",
            of(Holding, |f| {
                f.pace = Some(still());
                f.target = Some(TargetStands {
                    in_band: 0.9,
                    ..TargetStands::default()
                });
            }),
        ),
        (
            "at its target and still losing: a tenth of a percent more",
            "holding, raise",
            of(Holding, |f| {
                f.pace = Some(pace(0.1, 0.5, 0.4, 0.0));
                f.level = Some(part(1.25));
            }),
        ),
        (
            "at its target",
            "at target",
            of(Losing, |f| {
                f.target = Some(TargetStands {
                    reached: 0.85,
                    ..TargetStands::default()
                });
            }),
        ),
        (
            "three weeks say nothing yet",
            "too short",
            of(Losing, |f| {
                f.pace = Some(Pace {
                    weeks: 3.0,
                    ..still()
                });
            }),
        ),
        (
            "over 1 % a week for four weeks",
            "too fast",
            of(Losing, |f| f.pace = Some(pace(0.0, 0.0, 0.1, 0.9))),
        ),
        (
            "four weeks, and three readings",
            "too few readings",
            of(Losing, |f| {
                f.pace = Some(Pace {
                    readings: 3,
                    ..still()
                });
            }),
        ),
        (
            "it stands still, and ate more than planned",
            "slow, eats more",
            of(Losing, |f| {
                f.pace = Some(still());
                f.eaten = f.eaten.map(|eaten| Eaten {
                    level: Ends::exactly(part(1.8)),
                    ..eaten
                });
            }),
        ),
        (
            "it stands still, and everything was taken as planned",
            "slow, eaten not known",
            of(Losing, |f| {
                f.pace = Some(still());
                f.eaten = f.eaten.map(|eaten| Eaten { seen: 0.1, ..eaten });
            }),
        ),
        (
            "it stands still, and is out on grass",
            "slow, grass",
            of(Losing, |f| {
                f.pace = Some(still());
                f.grass_not_counted = true;
            }),
        ),
        (
            "it stands still on hay nobody tested that lasts two months",
            "slow, hay not tested",
            of(Losing, |f| {
                f.pace = Some(still());
                f.hay = HayKnown::NotTested { lasts: Some(60) };
            }),
        ),
        (
            "it stands still at the floor",
            "slow, nothing less",
            of(Plateau, |f| {
                f.pace = Some(still());
                f.level = Some(part(1.0));
                f.next_down = None;
                f.vets_level = Some(part(1.0));
            }),
        ),
        (
            "it stands still on 1.25 %: lower is for the vet",
            "slow, needs the vet",
            of(Plateau, |f| {
                f.pace = Some(still());
                f.level = Some(part(1.25));
                f.next_down = Some(part(1.15));
            }),
        ),
        (
            "it stands still, and was scored once",
            "slow, barred",
            of(Losing, |f| {
                f.pace = Some(still());
                f.bars = vec![RestrictionBar::TapeOnlyOnce];
            }),
        ),
        (
            "it stands still, and nothing stands in the way",
            "slow",
            of(Plateau, |f| f.pace = Some(still())),
        ),
        (
            "0.5 to 1 % a week",
            "on course",
            of(Losing, |f| f.pace = Some(pace(0.0, 0.1, 0.85, 0.05))),
        ),
        (
            "0.25 to 0.5 % a week",
            "steady",
            of(Losing, |f| f.pace = Some(pace(0.1, 0.85, 0.05, 0.0))),
        ),
        (
            "it loses, somewhere between",
            "loses",
            of(Losing, |f| f.pace = Some(pace(0.1, 0.5, 0.4, 0.0))),
        ),
        (
            "nothing is four in five",
            "not sure yet",
            of(Losing, |f| f.pace = Some(pace(0.5, 0.4, 0.1, 0.0))),
        ),
    ]
}

fn thin(facts: &mut Facts) {
    facts.goal = Goal::Gain;
    facts.condition = Some(scored(4.5));
    facts.scores = vec![scored(4.5)];
}
