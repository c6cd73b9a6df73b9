//! A soak to begin: what was chosen, what stands in where nothing was, and what it writes.

use super::work::{Work, yard};
use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{LotId, TubId};
use tussock_core::soak::{Air, Recipe, Water};
use tussock_flow::forms::tub::{self as form_of, InTub, Start, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::shed::weather;
use tussock_flow::views::tub::{Wanted, YardTub, lots, wanted, yard_tubs};
use tussock_flow::words::{English, SoakWords, TubWords};

/// The waters with their keys in a draft.
pub(super) const WATERS: [(Water, &str); 3] = [
    (Water::TapWinter, "winter"),
    (Water::TapSummer, "summer"),
    (Water::HandHot, "hot"),
];
/// The key of a tub that is not there yet.
pub(super) const NEW: &str = "new";

/// What is chosen and typed, with what stands in.
#[derive(Clone, Copy)]
pub(super) struct Begin {
    /// The app.
    pub world: World,
    /// What is typed.
    pub form: Form,
    /// The day's work.
    pub work: Work,
    /// For whom it may be.
    pub everyone: Memo<Vec<Wanted>>,
    /// For whom it is: the first that is planned until the person chooses.
    pub chosen: Memo<Option<Wanted>>,
    /// The lots.
    pub hays: Memo<Vec<(LotId, String)>>,
    /// From which: as planned, or the only one.
    pub lot: Memo<Option<LotId>>,
    /// In what water: as planned.
    pub water: Memo<Water>,
    /// The tubs.
    pub tubs: Memo<Vec<YardTub>>,
    /// In which: the first free one, else a new one.
    pub tub: Memo<String>,
    /// The air today.
    pub air: Memo<Option<Air>>,
    /// Water and time.
    pub recipe: Memo<Result<Recipe, Wrong>>,
    /// What is wrong, once starting was tried.
    pub wrong: RwSignal<Vec<Wrong>>,
    /// It was not saved.
    pub failed: RwSignal<bool>,
    /// It is being saved.
    pub busy: RwSignal<bool>,
}

impl Begin {
    /// Opens the form.
    pub(super) fn of(world: World) -> Self {
        let form = Form::open(world, Route::NewTub.to_string());
        let work = Work::of(world);
        let about = yard(world);
        let everyone = Memo::new(move |_| {
            work.now.with(|now| {
                now.as_ref()
                    .map(|(shelf, today)| wanted(shelf, today, &about))
                    .unwrap_or_default()
            })
        });
        let whose = form.text("whose");
        let chosen = Memo::new(move |_| {
            let (key, everyone) = (whose.get(), everyone.get());
            let of_key = everyone.iter().find(|wanted| wanted.key == key);
            of_key.or(everyone.first()).cloned()
        });
        let hays = Memo::new(move |_| {
            work.now.with(|now| {
                now.as_ref()
                    .map(|(shelf, _)| lots(shelf))
                    .unwrap_or_default()
            })
        });
        let tubs = Memo::new(move |_| {
            work.now.with(|now| {
                now.as_ref()
                    .map(|(shelf, today)| yard_tubs(shelf, today))
                    .unwrap_or_default()
            })
        });
        let air = Memo::new(move |_| {
            work.now.with(|now| {
                now.as_ref()
                    .map(|(shelf, today)| weather(shelf, today.day).air())
            })
        });
        let water = water_of(form, chosen);
        Self {
            world,
            form,
            work,
            everyone,
            chosen,
            hays,
            lot: lot_of(form, chosen, hays),
            water,
            tubs,
            tub: tub_of(form, tubs),
            air,
            recipe: recipe_of(form, chosen, water),
            wrong: RwSignal::new(Vec::new()),
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    /// What is wrong with a field.
    pub(super) fn say(self, field: &'static str) -> Signal<Option<String>> {
        let words = English::default();
        Signal::derive(move || {
            let wrong = self.wrong.get();
            let wrong = wrong.iter().find(|wrong| wrong.field() == field)?;
            Some(words.tub_wrong(wrong, &DeviceZone))
        })
    }

    /// What to know before the hay goes in.
    pub(super) fn findings(self) -> Vec<String> {
        let words = English::default();
        let (Ok(recipe), Some(air)) = (self.recipe.get(), self.air.get()) else {
            return Vec::new();
        };
        match form_of::checked(recipe, air) {
            Ok(findings) => findings
                .into_iter()
                .map(|finding| words.recipe_finding(finding).sentence)
                .collect(),
            Err(wrong) => vec![words.tub_wrong(&wrong, &DeviceZone)],
        }
    }

    /// There is no hay to soak.
    pub(super) fn no_hay(self) -> bool {
        self.work.now.with(Option::is_some) && self.hays.with(Vec::is_empty)
    }

    fn start(self, wanted: Wanted) -> Start {
        let tub = self.tub.get_untracked();
        let tub = if tub == NEW {
            let nth = self.tubs.with_untracked(Vec::len).saturating_add(1);
            InTub::New {
                id: self.form.id("tub-id"),
                name: English::default().tub_name(nth),
            }
        } else {
            InTub::There(TubId(tub))
        };
        let minutes = match self.recipe.get_untracked() {
            Ok(recipe) => recipe.soak().to_minutes().to_string(),
            Err(_) => self.form.now("minutes"),
        };
        Start {
            about: wanted.about,
            tub,
            lot: self.lot.get_untracked(),
            hay: self.form.now("hay"),
            amount: wanted.amount,
            water: self.water.get_untracked(),
            minutes,
            job: wanted.job,
        }
    }

    /// Writes it, and opens its screen.
    pub(super) fn save(self) {
        let (Some(wanted), Some(air)) = (self.chosen.get_untracked(), self.air.get_untracked())
        else {
            return;
        };
        let soak = self.form.id("id");
        let act = match self.start(wanted).act(&yard(self.world), air, &soak) {
            Ok(act) => act,
            Err(faults) => {
                self.wrong.set(faults);
                return;
            }
        };
        if self.busy.get_untracked() {
            return;
        }
        self.wrong.set(Vec::new());
        self.failed.set(false);
        self.busy.set(true);
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.world.go(&Route::Tub(TubId(soak)));
            } else {
                self.failed.try_set(true);
            }
        });
    }
}

fn lot_of(
    form: Form,
    chosen: Memo<Option<Wanted>>,
    hays: Memo<Vec<(LotId, String)>>,
) -> Memo<Option<LotId>> {
    let text = form.text("lot");
    Memo::new(move |_| {
        let text = text.get();
        if !text.is_empty() {
            return Some(LotId(text));
        }
        let only = || hays.with(|hays| Some(hays.first()?.0.clone()).filter(|_| hays.len() == 1));
        chosen.get().and_then(|wanted| wanted.lot).or_else(only)
    })
}

fn water_of(form: Form, chosen: Memo<Option<Wanted>>) -> Memo<Water> {
    let text = form.text("water");
    Memo::new(move |_| {
        let text = text.get();
        let typed = WATERS.iter().find(|(_, key)| *key == text);
        typed
            .map(|(water, _)| *water)
            .or_else(|| Some(chosen.get()?.recipe?.water()))
            .unwrap_or(Water::TapWinter)
    })
}

fn tub_of(form: Form, tubs: Memo<Vec<YardTub>>) -> Memo<String> {
    let text = form.text("tub");
    Memo::new(move |_| {
        let text = text.get();
        if !text.is_empty() {
            return text;
        }
        tubs.with(|tubs| {
            let free = tubs.iter().find(|tub| !tub.in_use);
            free.map_or(NEW.to_owned(), |tub| tub.id.0.clone())
        })
    })
}

/// Minutes as typed; without, those of the plan for its own water, else the least for this water.
fn recipe_of(
    form: Form,
    chosen: Memo<Option<Wanted>>,
    water: Memo<Water>,
) -> Memo<Result<Recipe, Wrong>> {
    let minutes = form.text("minutes");
    Memo::new(move |_| {
        let planned = chosen
            .get()
            .and_then(|wanted| wanted.recipe)
            .filter(|recipe| recipe.water() == water.get());
        match planned.filter(|_| minutes.with(|text| text.trim().is_empty())) {
            Some(planned) => Ok(planned),
            None => form_of::recipe(water.get(), &minutes.get()),
        }
    })
}
