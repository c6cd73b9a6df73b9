//! The nets and feeds of a day: what was logged, what was taken as planned, and what nobody answered.

use super::dry::{Soaked, feed};
use super::{Book, Held};
use crate::animal::{LotId, NetId};
use crate::day::{HowKnown, LeftOver, Serving, Source, left_part};
use crate::limits::Ends;
use crate::log::bodies::base::JobKey;
use crate::log::bodies::{Body, JobAnswer, LeftAmount, LeftOverV1, NetHungV1};
use crate::log::entry::Entry;
use crate::log::envelope::{Known, Record};
use crate::round::{JobKind, Key, PlanSlot, Subject, slots};
use crate::sources::RecordId;
use crate::units::{AsFed, DryMatter, Instant, LocalDate, LocalStamp, Zone};

/// A serving with what an entry of what was left may name it by.
pub(super) struct Line {
    pub serving: Serving,
    at: Instant,
    hung: Option<RecordId>,
    net: Option<NetId>,
    soaked: bool,
}

/// A net that was hung.
struct Hung<'a> {
    record: &'a Record,
    body: &'a NetHungV1,
}

fn how(known: Known) -> HowKnown {
    match known {
        Known::Seen => HowKnown::Seen,
        Known::Assumed => HowKnown::Assumed,
        Known::NotKnown => HowKnown::NotKnown,
    }
}

impl<'a, Z: Zone> Book<'a, Z> {
    /// The servings of a day, and the dry matter of its plans that is still to come.
    pub(super) fn lines(
        &self,
        of: &Subject,
        day: LocalDate,
        plans: &[Held<'_>],
    ) -> (Vec<Line>, DryMatter) {
        let mut hung = self.hung(of, day);
        let mut found = Vec::new();
        let mut to_come = DryMatter::ZERO;
        let slots = plans
            .iter()
            .flat_map(|held| slots(&held.plan).into_iter().map(move |slot| (held, slot)));
        for (held, slot) in slots {
            let at = self.at(day, &slot);
            if at < held.since || held.until.is_some_and(|until| until <= at) {
                continue;
            }
            let plan = Some(held);
            let key = Key::Day {
                kind: slot.kind,
                subject: of.clone(),
                day,
                slot: slot.slot,
            };
            let planned = self.planned(&slot, plan);
            let own = (slot.kind == JobKind::HangNet)
                .then(|| take(&mut hung, &key))
                .flatten();
            if let Some(own) = own {
                found.push(self.of_hung(&own, day, Some(&slot), planned, plan));
            } else if let Some((known, offered)) = self.answered(&key, day, planned) {
                found.push(slot_line(&slot, day, at, planned, known, offered));
            } else if self.now < at {
                to_come = to_come + planned.map_or(DryMatter::ZERO, |dry| dry.likely);
            } else {
                found.push(slot_line(&slot, day, at, planned, HowKnown::NotKnown, None));
            }
        }
        // What no plan asked for was offered all the same.
        found.extend(
            hung.iter()
                .map(|own| self.of_hung(own, day, None, None, plans.last())),
        );
        (found, to_come)
    }

    fn at(&self, day: LocalDate, slot: &PlanSlot) -> Instant {
        self.zone
            .to_instant(LocalStamp {
                date: day,
                time: slot.time,
            })
            .planned()
    }

    fn planned(&self, slot: &PlanSlot, plan: Option<&Held<'_>>) -> Option<Ends<DryMatter>> {
        if slot.kind == JobKind::FeedBalancer {
            return feed(slot.amount, slot.food.as_ref(), plan?).map(Ends::exactly);
        }
        let soaked = if slot.soaked {
            Soaked::AsPlanned
        } else {
            Soaked::No
        };
        let part = self.reaches(slot.lot.as_ref(), soaked, plan)?;
        Some(part.map(|part| DryMatter::kg(slot.amount.to_kg() * part)))
    }

    /// The nets that were hung for a day: by the job they do, else by when they were hung. Two entries of one job are
    /// one net: the later counts.
    fn hung(&self, of: &Subject, day: LocalDate) -> Vec<Hung<'a>> {
        let mut found: Vec<Hung<'a>> = Vec::new();
        for entry in self.about(of) {
            let Body::NetHung(body) = &entry.body else {
                continue;
            };
            let key = body.job.as_ref().and_then(JobKey::key);
            let of_day = match &key {
                Some(Key::Day { day, .. }) => *day,
                _ => self.zone.to_local(entry.record.at).date,
            };
            if of_day != day {
                continue;
            }
            if body.job.is_some() {
                found.retain(|before| before.body.job != body.job);
            }
            found.push(Hung {
                record: entry.record,
                body,
            });
        }
        found
    }

    fn filling(&self, id: &RecordId) -> Option<(AsFed, LotId)> {
        self.entries.iter().find_map(|entry| match &entry.body {
            Body::NetFilled(body) if entry.record.id == *id => {
                Some((body.hay.g.as_fed(), body.lot.clone()))
            }
            _ => None,
        })
    }

    fn of_hung(
        &self,
        own: &Hung<'_>,
        day: LocalDate,
        slot: Option<&PlanSlot>,
        planned: Option<Ends<DryMatter>>,
        plan: Option<&Held<'_>>,
    ) -> Line {
        let body = own.body;
        let filling = body.filling.as_ref().and_then(|id| self.filling(id));
        let lot = body
            .lot
            .clone()
            .or_else(|| filling.as_ref().map(|(_, lot)| lot.clone()))
            .or_else(|| slot?.lot.clone());
        let hay = body.hay.as_ref().map(|hay| hay.g.as_fed());
        let hay = hay.or(filling.map(|(hay, _)| hay));
        let soaked = match (&body.soak, body.not_soaked) {
            (_, Some(_)) => Soaked::No,
            (Some(soak), None) => self.soaked(soak),
            (None, None) if slot.is_some_and(|slot| slot.soaked) => Soaked::AsPlanned,
            (None, None) => Soaked::No,
        };
        let known = how(own.record.known);
        let offered = hay.filter(|_| known != HowKnown::NotKnown).and_then(|hay| {
            let part = self.reaches(lot.as_ref(), soaked, plan)?;
            Some(part.map(|part| DryMatter::kg(hay.to_kg() * part)))
        });
        Line {
            at: own.record.at,
            hung: Some(own.record.id.clone()),
            net: body.net.clone(),
            soaked: !matches!(soaked, Soaked::No),
            serving: Serving {
                day,
                from: Source::Forage(lot),
                planned: planned.map(|dry| dry.likely),
                offered,
                known,
                left: LeftOver::NotSaid,
            },
        }
    }

    /// What an answer says of a job of the day: by its own key, else with days away. The latest answer counts.
    fn answered(
        &self,
        key: &Key,
        day: LocalDate,
        planned: Option<Ends<DryMatter>>,
    ) -> Option<(HowKnown, Option<Ends<DryMatter>>)> {
        let answers = || {
            self.entries
                .iter()
                .rev()
                .filter_map(|entry| match &entry.body {
                    Body::Job(body) => Some((body.job.key()?, body.answer, entry.record.known)),
                    _ => None,
                })
        };
        let away = |says: &Key| match says {
            Key::Away { from, to } => (*from..=*to).contains(&day),
            Key::Day { .. } | Key::Tub { .. } | Key::Out { .. } => false,
        };
        let (_, answer, known) = answers()
            .find(|(says, ..)| says == key)
            .or_else(|| answers().find(|(says, ..)| away(says)))?;
        Some(match (answer, known) {
            (JobAnswer::NotKnown, _) | (_, Known::NotKnown) => (HowKnown::NotKnown, None),
            (JobAnswer::NotDone, known) => (how(known), Some(Ends::exactly(DryMatter::ZERO))),
            (JobAnswer::Done, known) => (how(known), planned),
            (JobAnswer::AsPlanned | JobAnswer::SomebodyElse, _) => (HowKnown::Assumed, planned),
        })
    }

    /// Takes what was left off the servings it was left of. Of two entries for one net the later counts.
    pub(super) fn left_over(&self, of: &Subject, lines: &mut [Line]) {
        for entry in self.about(of) {
            let Body::LeftOver(body) = &entry.body else {
                continue;
            };
            let named = body
                .hung
                .as_ref()
                .and_then(|id| lines.iter().position(|line| line.hung.as_ref() == Some(id)));
            let place = named.or_else(|| {
                // A hanging that is named and is not here is of another day.
                if body.hung.is_some() {
                    return None;
                }
                latest(lines, entry, body)
            });
            if let Some(line) = place.and_then(|place| lines.get_mut(place)) {
                line.serving.left = self.left(entry, body, line);
            }
        }
    }

    fn left(&self, entry: &Entry<'_>, body: &LeftOverV1, line: &Line) -> LeftOver {
        if entry.record.known == Known::NotKnown {
            return LeftOver::CannotTell;
        }
        match &body.left {
            LeftAmount::ByEye { .. } | LeftAmount::Wet { .. } => {
                match left_part(body.left.left(), None, line.soaked) {
                    Ok(Some(part)) => LeftOver::Part(part),
                    Ok(None) | Err(_) => LeftOver::CannotTell,
                }
            }
            // Soaked hay that is left is wet, whatever the entry calls it.
            LeftAmount::Dry { hay } if !line.soaked => {
                let lot = match &line.serving.from {
                    Source::Forage(lot) => lot.as_ref().or(body.lot.as_ref()),
                    Source::Feed(_) | Source::Grass(_) => None,
                };
                self.reaches(lot, Soaked::No, None)
                    .map_or(LeftOver::CannotTell, |part| {
                        LeftOver::Dry(DryMatter::kg(hay.g.as_fed().to_kg() * part.likely))
                    })
            }
            LeftAmount::Dry { .. } => LeftOver::CannotTell,
        }
    }
}

/// The hanging of a job among those of the day, else the first that names no job.
fn take<'a>(hung: &mut Vec<Hung<'a>>, key: &Key) -> Option<Hung<'a>> {
    let of = |own: &Hung<'_>| own.body.job.as_ref().and_then(JobKey::key);
    let place = hung
        .iter()
        .position(|own| of(own).as_ref() == Some(key))
        .or_else(|| hung.iter().position(|own| own.body.job.is_none()))?;
    Some(hung.remove(place))
}

fn slot_line(
    slot: &PlanSlot,
    day: LocalDate,
    at: Instant,
    planned: Option<Ends<DryMatter>>,
    known: HowKnown,
    offered: Option<Ends<DryMatter>>,
) -> Line {
    Line {
        at,
        hung: None,
        net: None,
        soaked: slot.soaked,
        serving: Serving {
            day,
            from: match slot.kind {
                JobKind::HangNet => Source::Forage(slot.lot.clone()),
                _ => Source::Feed(slot.food.clone()),
            },
            planned: planned.map(|dry| dry.likely),
            offered,
            known,
            left: LeftOver::NotSaid,
        },
    }
}

/// The forage that was offered last before an entry, of the net or the lot that it names.
fn latest(lines: &[Line], entry: &Entry<'_>, body: &LeftOverV1) -> Option<usize> {
    lines
        .iter()
        .enumerate()
        .filter(|(_, line)| line.at <= entry.record.at)
        .filter(|(_, line)| match &line.serving.from {
            Source::Forage(lot) => {
                (body.net.is_none() || line.net == body.net)
                    && (body.lot.is_none() || *lot == body.lot)
            }
            Source::Feed(_) | Source::Grass(_) => false,
        })
        .max_by_key(|(_, line)| line.at)
        .map(|(place, _)| place)
}
