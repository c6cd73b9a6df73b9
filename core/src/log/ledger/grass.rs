//! The grass of a day, by a model of what is eaten in its hours.

use super::{Book, Weights};
use crate::animal::{AnimalId, PaddockId};
use crate::day::{HowKnown, LeftOver, Serving, Source};
use crate::graze::intake::{OutFor, eaten};
use crate::limits::Ends;
use crate::log::at_grass::{AtGrass, OnDay};
use crate::log::bodies::{Body, JobAnswer};
use crate::log::envelope::Known;
use crate::round::{Key, Subject};
use crate::units::{DryMatter, LocalDate, Span, Zone};

/// The word of the job of turning out, in the text of its key.
const TURN_OUT: &str = "turn_out";

/// How it was out.
struct Out<'a> {
    paddock: Option<&'a PaddockId>,
    time: Span,
    muzzle: bool,
}

impl<Z: Zone> Book<'_, Z> {
    pub(super) fn at_grass(&self) -> AtGrass<'_, Z> {
        AtGrass {
            entries: self.entries,
            groups: self.holding.groups(),
            zone: self.zone,
            now: self.now,
        }
    }

    /// Whether grass was logged of it, or decided on.
    pub(super) fn grazes(&self, of: &Subject, days: &[LocalDate]) -> bool {
        let grass = self.at_grass();
        let decided = || days.iter().any(|day| grass.decided(of, *day).is_some());
        !grass.outings(of).is_empty() || decided()
    }

    /// The grass of a day: a serving a turnout.
    ///
    /// A turnout that nobody ended is not known until it is: the model needs the hours, and those until now would be told
    /// as if they were all. A day on which nobody logged a turnout has none, unless turnout was decided on for it. Then
    /// the answer to the job says whether it went out, as it was decided; and without one the day, once it is over, is not
    /// known.
    pub(super) fn grass(&self, of: &Subject, day: LocalDate, weights: &Weights) -> Vec<Serving> {
        let grass = self.at_grass();
        let decided = grass.decided(of, day).map(|body| Out {
            paddock: body.paddock.as_ref(),
            time: body.minutes.time(),
            muzzle: body.muzzle,
        });
        let eats = |out: &Out<'_>, before| self.eats(of, day, out, before, weights);
        let planned = decided.as_ref().and_then(|out| eats(out, Span::ZERO));
        let mut planned = planned.map(|dry| dry.likely);
        let mut serving = |paddock: Option<&PaddockId>, offered, known| Serving {
            day,
            from: Source::Grass(paddock.cloned()),
            planned: planned.take(),
            offered,
            known,
            left: LeftOver::NotSaid,
        };
        let mut before = Span::ZERO;
        let mut found = Vec::new();
        for outing in grass.outings(of) {
            let paddock = outing.body.paddock.as_ref();
            match outing.on(day, self.zone) {
                Some(OnDay::For(time)) => {
                    let muzzle = outing.body.muzzle;
                    let out = Out {
                        paddock,
                        time,
                        muzzle,
                    };
                    found.push(serving(paddock, eats(&out, before), HowKnown::Assumed));
                    before = before + time;
                }
                Some(OnDay::NotKnown) => found.push(serving(paddock, None, HowKnown::NotKnown)),
                None => {}
            }
        }
        let Some(out) = decided.filter(|_| found.is_empty()) else {
            return found;
        };
        let nothing = Some(Ends::exactly(DryMatter::ZERO));
        match self.said_of_turnout(of, day) {
            Some((_, Known::NotKnown) | (JobAnswer::NotKnown, _)) => {
                vec![serving(out.paddock, None, HowKnown::NotKnown)]
            }
            Some((JobAnswer::NotDone, Known::Seen)) => {
                vec![serving(out.paddock, nothing, HowKnown::Seen)]
            }
            Some((JobAnswer::NotDone, Known::Assumed)) => {
                vec![serving(out.paddock, nothing, HowKnown::Assumed)]
            }
            Some((JobAnswer::Done | JobAnswer::AsPlanned | JobAnswer::SomebodyElse, _)) => {
                let offered = eats(&out, Span::ZERO);
                vec![serving(out.paddock, offered, HowKnown::Assumed)]
            }
            None if day < self.today => vec![serving(out.paddock, None, HowKnown::NotKnown)],
            None => Vec::new(),
        }
    }

    /// What was answered to the job of turning it out on a day, or of the days away that hold it. The latest counts.
    fn said_of_turnout(&self, of: &Subject, day: LocalDate) -> Option<(JobAnswer, Known)> {
        let group = match of {
            Subject::Animal(animal) => crate::animal::group_of(self.holding.groups(), animal, day)
                .map(|group| Subject::Group(group.id.clone())),
            Subject::Group(_) | Subject::Yard(_) => None,
        };
        let keys: Vec<String> = std::iter::once(of.clone())
            .chain(group)
            .map(|of| format!("{TURN_OUT}/{of}/{day}/"))
            .collect();
        let answers = || {
            self.entries
                .iter()
                .rev()
                .filter_map(|entry| match &entry.body {
                    Body::Job(body) => Some((body, entry.record.known)),
                    _ => None,
                })
        };
        let away = |key: Option<Key>| match key {
            Some(Key::Away { from, to }) => (from..=to).contains(&day),
            _ => false,
        };
        answers()
            .find(|(body, _)| keys.iter().any(|key| body.job.as_str().starts_with(key)))
            .or_else(|| answers().find(|(body, _)| away(body.job.key())))
            .map(|(body, known)| (body.answer, known))
    }

    /// What is eaten of grass by an animal, or by all that are in a group that day, each by its own weight; `None` while
    /// the weight of one is not known. `before` is how long they were out on the day already.
    fn eats(
        &self,
        of: &Subject,
        day: LocalDate,
        out: &Out<'_>,
        before: Span,
        weights: &Weights,
    ) -> Option<Ends<DryMatter>> {
        let one = |animal: &AnimalId| self.one_eats(animal, day, out, before, weights);
        match of {
            Subject::Animal(animal) => one(animal),
            Subject::Group(id) => {
                let group = self.holding.groups().iter().find(|group| group.id == *id)?;
                let each: Option<Vec<_>> = group.on(day).into_iter().map(one).collect();
                let nothing = Ends::exactly(DryMatter::ZERO);
                let all = each?.into_iter();
                Some(all.fold(nothing, |sum, one| sum.with(one, |a, b| a + b)))
            }
            Subject::Yard(_) => None,
        }
    }

    fn one_eats(
        &self,
        animal: &AnimalId,
        day: LocalDate,
        out: &Out<'_>,
        before: Span,
        weights: &Weights,
    ) -> Option<Ends<DryMatter>> {
        let weighed = weights.of_one(animal)?;
        let grass = self.at_grass();
        let of = OutFor {
            kind: weighed.kind,
            time: out.time,
            weeks: grass.used_to_it(animal, day),
            muzzle: out.muzzle,
            leaf: grass.has_leaf(out.paddock, day),
        };
        let by = |time| eaten(&OutFor { time, ..of }, weighed.weight);
        // It eats fastest in the first hours: at least as if it had been out all along, at most as if it came hungry.
        let (all, had, alone) = (by(before + out.time), by(before), by(out.time));
        Some(Ends::new(
            all.least - had.least,
            all.likely - had.likely,
            alone.most,
        ))
    }
}
