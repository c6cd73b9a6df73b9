//! What the screens of grass share: the records, the clock of the yard, and how grass stands.

use crate::device::clock::{self, DeviceZone, NamedZone};
use crate::keep::KeepError;
use crate::parts::Caution;
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::units::{Instant, Zone};
use tussock_flow::acts::Act;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::paddock::{Chosen, Goes, Paddock as View, needs, paddock, zone_name};
use tussock_flow::words::{English, PlanScreenWords, Said};

/// The clock that grass is told by: that of the yard, else that of this device.
#[derive(Clone, Debug)]
pub(super) enum YardZone {
    Device,
    Named(NamedZone),
}

impl Zone for YardZone {
    fn offset_min(&self, at: Instant) -> i32 {
        match self {
            Self::Device => DeviceZone.offset_min(at),
            Self::Named(zone) => zone.offset_min(at),
        }
    }
}

impl YardZone {
    pub(super) fn of(shelf: &Shelf) -> Self {
        zone_name(shelf).map_or(Self::Device, |name| Self::Named(NamedZone::of(&name)))
    }

    /// That of the records of a screen, as far as they are read.
    pub(super) fn read(shelf: Option<&Result<Shelf, KeepError>>) -> Self {
        match shelf {
            Some(Ok(shelf)) => Self::of(shelf),
            _ => Self::Device,
        }
    }
}

/// Everything that the screens of grass share.
#[derive(Clone, Copy)]
pub(super) struct AtGrass {
    pub world: World,
    pub shelf: Reading<Result<Shelf, KeepError>>,
    /// What was chosen beside what was decided.
    pub chosen: RwSignal<Chosen>,
    /// Grass now.
    pub view: Memo<Option<View>>,
    /// The one that the screen is about.
    pub goes: Memo<Option<Goes>>,
    pub failed: RwSignal<bool>,
    pub busy: RwSignal<bool>,
}

impl AtGrass {
    pub(super) fn new(world: World, of: Option<AnimalId>) -> Self {
        let shelf = world.shelf(|| needs(clock::now()));
        let minute = world.minute();
        let of = StoredValue::new(of.map(|id| id.0));
        let chosen = RwSignal::new(Chosen::default());
        let view = Memo::new(move |_| match (shelf.get(), minute.get()) {
            (Some(Ok(shelf)), now) => {
                let zone = YardZone::of(&shelf);
                Some(chosen.with(|chosen| paddock(&shelf, now, &zone, chosen)))
            }
            _ => None,
        });
        let goes = Memo::new(move |_| {
            view.with(|view| of.with_value(|of| view.as_ref()?.of(of.as_deref()).cloned()))
        });
        Self {
            world,
            shelf,
            chosen,
            view,
            goes,
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    /// The clock of the yard.
    pub(super) fn zone(self) -> YardZone {
        self.shelf.with(|shelf| YardZone::read(shelf.as_ref()))
    }

    /// Whether this device keeps another time than the yard.
    pub(super) fn other_clock(self) -> bool {
        let now = self.world.minute().get();
        self.zone().offset_min(now) != DeviceZone.offset_min(now)
    }

    /// Writes an act.
    pub(super) fn write(self, act: Act) {
        self.busy.set(true);
        leptos::task::spawn_local(async move {
            let done = self.world.act(act, None).await;
            self.busy.try_set(false);
            self.failed.try_set(done.is_err());
        });
    }
}

/// A caution with what stands behind it.
pub(super) fn told(said: Said) -> AnyView {
    let words = English::default();
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=PlanScreenWords::why(&words)><p>{why}</p></Caution> }
                .into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}
