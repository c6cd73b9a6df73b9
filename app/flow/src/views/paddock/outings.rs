//! The turnouts of the last days, with what was likely eaten there.

use super::asked::Grass;
use super::who::Who;
use tussock_core::graze::intake::OutFor;
use tussock_core::limits::Ends;
use tussock_core::log::Gathered;
use tussock_core::log::bodies::{GrazingV1, SwardV1, TurnoutV1};
use tussock_core::sources::RecordId;
use tussock_core::units::{DryMatter, Instant, LocalDate, Span, Zone};

/// So many days are shown.
const DAYS: i64 = 14;

/// A turnout.
#[derive(Clone, Debug, PartialEq)]
pub struct Outing {
    /// The record.
    pub id: RecordId,
    /// The local day on which it went out.
    pub day: LocalDate,
    /// When it went out.
    pub out: Instant,
    /// What the record says.
    pub body: TurnoutV1,
    /// How long it was out; `None` while it is.
    pub time: Option<Span>,
    /// The group it was out with, when the turnout is the group's.
    pub with: Option<String>,
    /// The name of the paddock.
    pub paddock: Option<String>,
    /// Dry matter by the model, of all of them; `None` while it is out, and where one was never weighed.
    pub dry: Option<Ends<DryMatter>>,
}

/// The turnouts of the last days, the newest first; of an animal with those of its groups.
pub(super) fn outings(
    grass: &Grass<'_, impl Zone>,
    who: &Who,
    members: &[Gathered],
    decided: Option<&GrazingV1>,
) -> Vec<Outing> {
    let paddocks = grass.paddocks();
    // Also one that lies ahead of a clock that was set back.
    grass
        .turnouts
        .iter()
        .filter(|(record, _)| who.is_out_by(&record.subject))
        .map(|(record, body)| (record, grass.zone.to_local(record.at).date, body.clone()))
        .filter(|(_, day, _)| (grass.day - *day).num_days() < DAYS)
        .map(|(record, day, body)| {
            let name = body
                .paddock
                .as_ref()
                .and_then(|of| paddocks.iter().find(|(id, _)| id == of));
            let time = body.time(record.at);
            let leaf = grass
                .sward(body.paddock.as_ref(), day)
                .is_some_and(|sward| SwardV1::has_leaf(&sward));
            Outing {
                id: record.id.clone(),
                day,
                out: record.at,
                time,
                with: who.with_whom(&record.subject),
                paddock: name.map(|(_, name)| name.clone()),
                dry: time.and_then(|time| {
                    let weeks = decided.map(|decided| decided.weeks(day));
                    of_all(members, time, weeks, body.muzzle, leaf)
                }),
                body,
            }
        })
        .collect()
}

fn of_all(
    members: &[Gathered],
    time: Span,
    weeks: Option<f64>,
    muzzle: bool,
    leaf: bool,
) -> Option<Ends<DryMatter>> {
    members
        .iter()
        .map(|one| {
            one.eats_at_grass(&OutFor {
                kind: one.animal.kind,
                time,
                weeks,
                muzzle,
                leaf,
            })
        })
        .reduce(|all, one| Some(all?.with(one?, |a, b| a + b)))
        .flatten()
}
