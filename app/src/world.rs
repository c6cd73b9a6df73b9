//! What every screen stands in: the store, the route, the time, what was just saved.
//!
//! State goes down as signals, what a person does goes up as an [`Act`]. The disk is the state: a screen holds the answer
//! to its own bounded query ([`World::shelf`]) and runs it again when one of its subjects was touched, here or in another
//! tab. No signal is written from an effect.

use crate::device::{address, clock, ids, room, settings};
use crate::keep::{Keep, KeepError};
use leptos::prelude::*;
use std::cell::Cell;
use std::rc::Rc;
use tussock_core::animal::{PersonId, YardId};
use tussock_core::log::{DeviceId, Record, Stamp};
use tussock_core::units::{Instant, Zone};
use tussock_flow::acts::{Act, Context, DEVICE, LAST_STAMP, Problem, Saved, WHO, apply};
use tussock_flow::routes::Route;
use tussock_flow::rows::{Draft, Range, Writes};
use tussock_flow::shelf::Shelf;

/// The database of a person's own records, and of the invented yard.
pub const OWN: &str = "tussock";
/// The database of the invented yard.
pub const EXAMPLE: &str = "tussock-example";
/// The id of a person's first yard.
const YARD: &str = "yard";
/// The key under which a database keeps the id of its yard.
const YARD_KEY: &str = "yard";
/// The key under which a database keeps that the browser was asked to let it last.
const ASKED_KEY: &str = "asked-to-last";

/// How long "Saved. Undo" stands.
const UNDO_MS: i64 = 10_000;

/// Milliseconds of a minute: what is due, and the plan of the day, is worked out anew with each.
const MINUTE_MS: i64 = 60_000;

/// Why an act was not done.
#[derive(Clone, Debug, PartialEq)]
pub enum Failed {
    /// The disk.
    Keep(KeepError),
    /// The act.
    Act(Problem),
    /// A panic stopped all writing.
    Stopped,
}

impl From<KeepError> for Failed {
    fn from(error: KeepError) -> Self {
        Self::Keep(error)
    }
}

impl From<Problem> for Failed {
    fn from(problem: Problem) -> Self {
        Self::Act(problem)
    }
}

/// An answer of the disk: `None` while it is read first.
pub type Reading<T> = RwSignal<Option<T>, LocalStorage>;

/// Asks anew whenever what the question tracks changes; the last question asked is the one whose answer stands.
///
/// A plain signal holds the answer. Behind an asynchronous memo, whoever also stands on another memo could take its mark
/// of being out of date before it had asked again, and the screen kept what was there before a save.
pub fn reading<T, F>(ask: impl Fn() -> F + 'static) -> Reading<T>
where
    T: 'static,
    F: Future<Output = T> + 'static,
{
    let answer = RwSignal::new_local(None);
    let asked = StoredValue::new(0_u32);
    Effect::new(move |_| {
        let question = ask();
        let turn = asked.get_value().wrapping_add(1);
        asked.set_value(turn);
        leptos::task::spawn_local(async move {
            let answered = question.await;
            if asked.try_get_value() == Some(turn) {
                answer.try_set(Some(answered));
            }
        });
    });
    answer
}

/// What was saved last and may be taken back.
#[derive(Clone, Debug, PartialEq)]
pub struct JustSaved {
    /// What undo needs.
    pub saved: Saved,
    /// When it came on the disk.
    pub at: Instant,
}

/// The world of the screens.
#[derive(Clone, Copy)]
pub struct World {
    keep: StoredValue<Keep, LocalStorage>,
    last: StoredValue<Rc<Cell<Option<Stamp>>>, LocalStorage>,
    device: StoredValue<DeviceId>,
    yard: StoredValue<YardId>,
    /// Whether the browser was asked to let the records last.
    asked: StoredValue<bool>,
    /// Who said something on this device last.
    pub who: RwSignal<Option<PersonId>>,
    /// Whether this is the invented yard.
    pub example: bool,
    /// The address.
    pub route: RwSignal<Route>,
    /// Now, on the beat of the countdowns.
    pub now: RwSignal<Instant>,
    /// Counts up with every write, here or elsewhere.
    touched: RwSignal<u32>,
    /// What was saved last.
    just: RwSignal<Option<JustSaved>>,
    /// A newer build waits.
    pub update: RwSignal<bool>,
}

impl World {
    /// Opens the store: the disk, or memory where there is none.
    pub async fn open(example: bool, route: Route) -> Result<Self, KeepError> {
        let name = if example { EXAMPLE } else { OWN };
        let keep = match Keep::on_disk(name).await {
            Ok(keep) => keep,
            Err(KeepError::NoDisk) => Keep::in_memory(),
            Err(error) => return Err(error),
        };
        let device = match keep
            .meta(DEVICE)
            .await?
            .and_then(|text| DeviceId::from_text(&text).ok())
        {
            Some(device) => device,
            None => ids::device(),
        };
        let last = keep
            .meta(LAST_STAMP)
            .await?
            .and_then(|text| Stamp::from_text(&text).ok());
        let yard = keep
            .meta(YARD_KEY)
            .await?
            .unwrap_or_else(|| YARD.to_owned());
        let asked = keep.meta(ASKED_KEY).await?.is_some();
        let who = keep.meta(WHO).await?.map(PersonId);
        let touched = RwSignal::new(0_u32);
        let now = RwSignal::new(clock::now());
        keep.listen(move |_| {
            // What was just written is not later than now for the screens that read it.
            now.set(clock::now());
            touched.update(|count| *count = count.wrapping_add(1));
        });
        Ok(Self {
            keep: StoredValue::new_local(keep),
            last: StoredValue::new_local(Rc::new(Cell::new(last))),
            device: StoredValue::new(device),
            yard: StoredValue::new(YardId(yard)),
            asked: StoredValue::new(asked),
            who: RwSignal::new(who),
            example,
            route: RwSignal::new(route),
            now,
            touched,
            just: RwSignal::new(None),
            update: RwSignal::new(false),
        })
    }

    /// The world a screen stands in.
    pub fn here() -> Self {
        expect_context()
    }

    /// Whether what is kept here is gone with the page.
    pub fn vanishes(self) -> bool {
        self.keep.with_value(Keep::vanishes)
    }

    /// Now, told anew with every minute: a phone that is taken up again the next morning shows the next morning.
    ///
    /// It is the clock itself and not the last beat: an entry written since the beat must not lie in the future.
    pub fn minute(self) -> Signal<Instant> {
        let minute = Memo::new(move |_| self.now.get().to_ms().div_euclid(MINUTE_MS));
        Signal::derive(move || {
            let _ = minute.get();
            clock::now()
        })
    }

    /// The id of the yard.
    pub fn yard(self) -> YardId {
        self.yard.get_value()
    }

    /// The records of bounded ranges, read again whenever something was written. `None` while the disk is read.
    pub fn shelf(
        self,
        ranges: impl Fn() -> Vec<Range> + 'static,
    ) -> Reading<Result<Shelf, KeepError>> {
        let touched = self.touched;
        let keep = self.keep.get_value();
        reading(move || {
            touched.track();
            let (keep, ranges) = (keep.clone(), ranges());
            async move { read(&keep, &ranges).await }
        })
    }

    /// Whether the disk holds any record of a kind.
    pub async fn holds(self, kind: &str) -> Result<bool, KeepError> {
        Ok(0 < self.keep.get_value().count(kind).await?)
    }

    /// Does an act and writes it. When this comes back well it is on the disk, and "Saved. Undo" stands for ten seconds.
    ///
    /// `draft` is the address of the form that is saved: its draft is cleared in the same transaction.
    pub async fn act(self, act: Act, draft: Option<String>) -> Result<Saved, Failed> {
        if settings::stopped() {
            return Err(Failed::Stopped);
        }
        let keep = self.keep.get_value();
        let ranges: Vec<Range> = named(&act).into_iter().map(Range::One).collect();
        let shelf = read(&keep, &ranges).await?;
        let now = clock::now();
        let last = self.last.get_value();
        let context = Context {
            now,
            offset_min: clock::DeviceZone.offset_min(now),
            zone: clock::zone_name(),
            yard: self.yard(),
            by: None,
            device: self.device.get_value(),
            last: last.get(),
        };
        let mut outcome = apply(&act, &shelf, &context, draft.as_deref())?;
        if let Some(stamp) = outcome.writes.meta.get(LAST_STAMP) {
            // Before the disk answers: the next act of this tab must be later even if it comes at once.
            last.set(Stamp::from_text(stamp).ok());
            outcome
                .writes
                .meta
                .insert(DEVICE.to_owned(), context.device.to_string());
        }
        // Once, with the first save of a person's own yard: from then on there is something to lose.
        let asks = !self.example && !keep.vanishes() && !self.asked.get_value();
        if asks && !outcome.saved.is_empty() {
            outcome
                .writes
                .meta
                .insert(ASKED_KEY.to_owned(), String::new());
        }
        if outcome.writes != Writes::default() {
            keep.write(&outcome.writes).await?;
        }
        if asks && !outcome.saved.is_empty() {
            self.asked.set_value(true);
            leptos::task::spawn_local(room::ask_to_last());
        }
        if let Some(who) = outcome.writes.meta.get(WHO) {
            self.who.set(Some(PersonId(who.clone())));
        }
        if !outcome.saved.is_empty() {
            settings::known();
            self.just.set(Some(JustSaved {
                saved: outcome.saved.clone(),
                at: clock::now(),
            }));
        }
        Ok(outcome.saved)
    }

    /// Takes back what was saved last.
    pub async fn undo(self) -> Result<(), Failed> {
        let Some(just) = self.just.get_untracked() else {
            return Ok(());
        };
        self.act(Act::Undo(just.saved), None).await?;
        self.just.set(None);
        Ok(())
    }

    /// What was saved in the last ten seconds.
    pub fn just_saved(self) -> Option<JustSaved> {
        let now = self.now.get();
        self.just
            .get()
            .filter(|just| now.since(just.at).to_ms() < UNDO_MS)
    }

    /// The bytes of a picture; `None` when it is not on the disk.
    pub async fn picture(self, sha256: &str) -> Result<Option<Vec<u8>>, KeepError> {
        self.keep.get_value().picture(sha256).await
    }

    /// Keeps what is typed in a form.
    pub async fn keep_draft(self, draft: Draft) -> Result<(), KeepError> {
        self.keep.get_value().keep_draft(&draft).await
    }

    /// The draft of a form.
    pub async fn draft(self, key: &str) -> Result<Option<Draft>, KeepError> {
        self.keep.get_value().draft(key).await
    }

    /// Throws a draft away.
    pub async fn drop_draft(self, key: &str) -> Result<(), KeepError> {
        self.keep.get_value().drop_draft(key).await
    }

    /// Whether any form, in any tab, holds what is not saved.
    pub async fn has_drafts(self) -> Result<bool, KeepError> {
        Ok(0 < self.keep.get_value().drafts().await?)
    }

    /// Opens an address.
    pub fn go(self, route: &Route) {
        address::go(route);
    }
}

async fn read(keep: &Keep, ranges: &[Range]) -> Result<Shelf, KeepError> {
    let mut rows = Vec::new();
    for range in ranges {
        rows.extend(keep.read(range).await?);
    }
    Ok(Shelf::of(rows))
}

/// The ids of the records an act writes: what it must see of the disk.
fn named(act: &Act) -> Vec<String> {
    match act {
        Act::Add(new) => vec![new.id.0.clone()],
        Act::Keep(_) => Vec::new(),
        Act::Change { id, .. } | Act::Remove(id) => vec![id.0.clone()],
        Act::By(_, act) => named(act),
        Act::All(acts) => acts.iter().flat_map(named).collect(),
        Act::Undo(saved) => saved
            .records
            .iter()
            .map(|(id, _): &(_, Option<Record>)| id.0.clone())
            .collect(),
    }
}
