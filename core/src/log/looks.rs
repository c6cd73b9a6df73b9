//! From look-overs to the signs that stand and the looks that are still to be made.

use super::bodies::{Body, LookOverV1};
use super::entry::Entry;
use crate::animal::{Answer, Seen};
use crate::plan::published::{LOOK_AGAIN_BEFORE, LOOK_AGAIN_SOON, LOOK_AGAIN_TONIGHT};
use crate::plan::{AtRest, LookAgain, LookedOver, Signs, Taken};
use crate::safety::Vital;
use crate::units::{Instant, LocalStamp, Zone};

/// A sign as it stands, and when it was first seen if it does.
#[derive(Clone, Copy, Default)]
struct Line {
    answer: Answer,
    since: Option<Instant>,
}

impl Line {
    /// A sign that was seen stands until somebody looks again and says it is gone: a look-over that left its line out
    /// does not take it away, and one that sees it still does not make it new.
    fn then(self, answer: Answer, at: Instant) -> Self {
        match (self.answer, answer) {
            (Answer::Yes, Answer::Yes | Answer::NotKnown) => self,
            (_, Answer::Yes) => Self {
                answer,
                since: Some(at),
            },
            _ => Self {
                answer,
                since: None,
            },
        }
    }
}

fn answers(body: &LookOverV1) -> [Answer; 8] {
    [
        body.gait,
        body.stance,
        body.turning,
        body.shifting_weight,
        body.strong_pulse,
        body.foot_pain,
        body.warm_hoof,
        body.lying_more,
    ]
}

/// What the look-overs of one animal say, oldest first, and the work after which it was not sound: that is a sign of its
/// gait, seen anew at the end of that work, whatever a vet allowed before it. Work after which it went sound takes no sign
/// away; that is for a look-over.
pub(super) fn looked_over<'a>(
    own: impl Iterator<Item = &'a Entry<'a>>,
    zone: &impl Zone,
) -> LookedOver {
    let own: Vec<&Entry<'_>> = own.collect();
    let mut looks: Vec<(Instant, &LookOverV1)> = Vec::new();
    let mut lines = [Line::default(); 8];
    for entry in &own {
        let at = entry.record.at;
        match &entry.body {
            Body::LookOver(body) => {
                looks.push((at, body));
                for (line, answer) in lines.iter_mut().zip(answers(body)) {
                    *line = line.then(answer, at);
                }
            }
            Body::WorkSession(body) if body.sound == Answer::No => {
                let [gait, ..] = &mut lines;
                *gait = Line {
                    answer: Answer::Yes,
                    since: Some(at),
                };
            }
            _ => {}
        }
    }
    let since = |lines: &[Line]| {
        let latest = lines.iter().filter_map(|line| line.since).max();
        latest.map(|at| Seen {
            day: zone.to_local(at).date,
            at: Some(at),
        })
    };
    let [
        gait,
        stance,
        turning,
        shifting_weight,
        strong_pulse,
        foot_pain,
        warm_hoof,
        lying_more,
    ] = lines;
    LookedOver {
        on: looks.last().map(|(at, _)| zone.to_local(*at).date),
        signs: Signs {
            gait: gait.answer,
            stance: stance.answer,
            turning: turning.answer,
            shifting_weight: shifting_weight.answer,
            strong_pulse: strong_pulse.answer,
            foot_pain: foot_pain.answer,
            warm_hoof: warm_hoof.answer,
            lying_more: lying_more.answer,
        },
        vet_since: since(&[
            gait,
            stance,
            turning,
            shifting_weight,
            strong_pulse,
            foot_pain,
        ]),
        again_since: since(&[warm_hoof, lying_more]),
        again: look_again(&looks, zone),
        at_rest: at_rest(&own, zone),
    }
}

/// The last reading of each vital, taken beside a look-over or an animal that would not eat; oldest first.
fn at_rest(own: &[&Entry<'_>], zone: &impl Zone) -> AtRest {
    let mut at_rest = AtRest::default();
    for entry in own {
        let reading = |vital: Vital| match &entry.body {
            Body::Vitals(body) => body.vital(vital),
            Body::Appetite(body) => body.vital(vital),
            _ => None,
        };
        let at = entry.record.at;
        let seen = Seen {
            day: zone.to_local(at).date,
            at: Some(at),
        };
        for vital in Vital::ALL {
            if let Some(reading) = reading(vital) {
                at_rest = vital.with(at_rest, Taken { reading, seen });
            }
        }
    }
    at_rest
}

/// The looks that the last warm hoof or lying more asks for, less those that were made and saw neither.
fn look_again(looks: &[(Instant, &LookOverV1)], zone: &impl Zone) -> LookAgain {
    let two = |body: &LookOverV1| [body.warm_hoof, body.lying_more];
    let Some(at) = looks
        .iter()
        .rfind(|(_, body)| two(body).contains(&Answer::Yes))
        .map(|(at, _)| *at)
    else {
        return LookAgain::default();
    };
    // What comes after it saw neither, or did not look.
    let made = |from: Instant| {
        looks
            .iter()
            .any(|(look, body)| at < *look && from <= *look && two(body) == [Answer::No; 2])
    };
    let soon = at + *LOOK_AGAIN_SOON;
    let evening = LocalStamp {
        date: zone.to_local(at).date,
        time: *LOOK_AGAIN_TONIGHT,
    };
    let tonight = zone.to_instant(evening).planned();
    let from_evening = (tonight - *LOOK_AGAIN_SOON).max(soon - *LOOK_AGAIN_BEFORE);
    LookAgain {
        soon: (!made(soon - *LOOK_AGAIN_BEFORE)).then_some(soon),
        tonight: (soon < tonight && !made(from_evening)).then_some(tonight),
    }
}
