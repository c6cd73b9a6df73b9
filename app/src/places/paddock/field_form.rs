//! A paddock: its name, its area, what grows there and what was seen there; and a new one.

use super::at::YardZone;
use crate::device::clock;
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Quiet, QuietRow, Sentence, Several,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::PaddockId;
use tussock_core::graze::plants::{PlantId, hazards_in};
use tussock_core::graze::sward::SwardKind;
use tussock_core::log::bodies::PaddockV2;
use tussock_core::sources::RecordId;
use tussock_core::units::{LocalDate, Zone};
use tussock_flow::acts::Act;
use tussock_flow::forms::delivery::{of_word, word_of};
use tussock_flow::forms::field::{
    Field as Which, KINDS, SHADES, Typed, Wrong, plants_in, plants_text,
};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::fields::{matches_text, needs, one, regions};
use tussock_flow::words::{English, FieldWords, HorsesWords, PaddockWords, PlantsWords};

/// A new paddock.
#[component]
pub fn NewField() -> impl IntoView {
    FieldForm::of(Route::NewField, None).screen()
}

/// What a paddock is.
#[component]
pub fn FieldForm(
    /// Which.
    paddock: PaddockId,
) -> impl IntoView {
    FieldForm::of(Route::FieldForm(paddock.clone()), Some(paddock)).screen()
}

#[derive(Clone, Copy)]
struct FieldForm {
    world: World,
    shelf: Reading<Result<Shelf, KeepError>>,
    form: Form,
    id: StoredValue<Option<PaddockId>>,
    /// The paddock that is changed, once it is read; `None` for a new one.
    there: Memo<Option<PaddockV2>>,
    /// What is typed, over what is stored.
    typed: Memo<Typed>,
    wrong: RwSignal<Vec<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl FieldForm {
    fn of(route: Route, id: Option<PaddockId>) -> Self {
        let world = World::here();
        let form = Form::open(world, route.to_string());
        let shelf = world.shelf(needs);
        let id = StoredValue::new(id);
        let there = Memo::new(move |_| {
            let id = id.get_value()?;
            match shelf.get() {
                Some(Ok(shelf)) => one(&shelf, &id),
                _ => None,
            }
        });
        Self {
            world,
            shelf,
            form,
            id,
            there,
            typed: Memo::new(move |_| typed(form, there.get().as_ref())),
            wrong: RwSignal::new(Vec::new()),
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    fn back(self) -> Route {
        self.id.get_value().map_or(Route::Paddock, Route::Field)
    }

    fn screen(self) -> AnyView {
        let words = English::default();
        let new = self.id.with_value(Option::is_none);
        let opening = Signal::derive(move || self.shelf.with(Option::is_none));
        let missing =
            Memo::new(move |_| !new && !opening.get() && self.there.with(Option::is_none));
        let said = Signal::derive(move || {
            if opening.get() {
                words.opening().to_owned()
            } else if new {
                words.new_field().to_owned()
            } else {
                self.there.with(|there| match there {
                    Some(field) => field.name.as_str().to_owned(),
                    None => words.no_such_field().to_owned(),
                })
            }
        });
        let action = move || {
            if missing.get() {
                let list = Route::Paddock.to_string();
                view! { <Action says=words.to_grass_today() press=list /> }.into_any()
            } else {
                let save = Callback::new(move |()| self.save());
                let busy = Signal::derive(move || self.busy.get() || opening.get());
                view! { <Action says=words.save_field() press=save busy /> }.into_any()
            }
        };
        let foot = move || {
            view! {
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: Press::from(self.back().to_string()) }>
                    {action}
                </ActionRow>
            }
        };
        view! {
            <Frame kind=FrameKind::Flow what=words.paddock() foot=foot>
                <Sentence said />
                <Unread shelf=self.shelf />
                {draft_line(self.form)}
                <Show when=move || !missing.get()>{move || self.fields(new)}</Show>
            </Frame>
        }
        .into_any()
    }

    fn fields(self, new: bool) -> AnyView {
        let words = English::default();
        let form = self.form;
        let kinds = KINDS
            .iter()
            .map(|(kind, _)| Offer::new(*kind, words.sward_kind(*kind)))
            .collect();
        let shades = SHADES
            .iter()
            .map(|(shade, _)| Offer::new(*shade, words.shade(*shade)))
            .collect();
        let remove = Callback::new(move |()| self.remove());
        view! {
            {self.field(Which::Name)}
            {self.field(Which::Area)}
            <Choice
                legend=words.sward_kind_asked()
                offers=kinds
                chosen=Signal::derive(move || self.typed.with(|typed| typed.kind))
                on_choose=move |kind: SwardKind| form.set("kind", word_of(&KINDS, Some(kind)))
                hint=words.sward_kind_hint().to_owned()
            />
            <Choice
                legend=words.shade_asked()
                offers=shades
                chosen=Signal::derive(move || self.typed.with(|typed| typed.shade))
                on_choose=move |shade: bool| form.set("shade", word_of(&SHADES, Some(shade)))
            />
            {self.field(Which::Rest)}
            {self.plants()}
            {self.field(Which::Note)}
            {self.of_the_whole()}
            {(!new).then(|| view! { <QuietRow><Quiet says=words.remove_field() press=remove /></QuietRow> })}
        }
        .into_any()
    }

    /// The catalogue by name: what is ticked, then what harms in the regions of the yard, then the rest.
    fn plants(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let find = form.text("find");
        let here = Memo::new(move |_| match self.shelf.get() {
            Some(Ok(shelf)) => regions(&shelf),
            _ => Vec::new(),
        });
        let chosen = Signal::derive(move || self.typed.with(|typed| typed.plants.clone()));
        let flip = Callback::new(move |(plant, on): (PlantId, bool)| {
            let mut plants = self.typed.with_untracked(|typed| typed.plants.clone());
            plants.retain(|held| *held != plant);
            if on {
                plants.push(plant);
            }
            form.set("plants", plants_text(&plants));
        });
        let list = move || {
            let typed = find.get();
            let regions = here.get();
            // Untracked: a key that was just tapped must not jump to another place of the list.
            let ticked = chosen.get_untracked();
            let harms = |plant: &PlantId| hazards_in(&regions).any(|hazard| hazard.plant == *plant);
            let mut meant: Vec<PlantId> = PlantId::ALL
                .iter()
                .copied()
                .filter(|plant| matches_text(*plant, &typed))
                .collect();
            meant.sort_by_key(|plant| (!ticked.contains(plant), !harms(plant)));
            if meant.is_empty() {
                return view! { <p class="soft" role="status">{words.no_such_plant()}</p> }
                    .into_any();
            }
            let offers = meant
                .into_iter()
                .map(|plant| Offer::new(plant, words.plant(plant)).with(words.scientific(plant)))
                .collect();
            view! {
                <Several
                    legend=words.plants_asked()
                    offers=offers
                    chosen=chosen
                    on_choose=flip
                    hint=words.plants_hint().to_owned()
                />
            }
            .into_any()
        };
        view! {
            <Field
                label=words.find_plant()
                hint=words.find_plant_hint().to_owned()
                value=find
                on_input=form.typed("find")
                keyboard=Keyboard::Search
            />
            {list}
        }
        .into_any()
    }

    fn field(self, which: Which) -> AnyView {
        let words = English::default();
        let error = Signal::derive(move || {
            self.wrong.with(|wrong| {
                let own = wrong.iter().find(|wrong| wrong.field() == Some(which));
                own.map(|wrong| words.paddock_wrong(wrong))
            })
        });
        let echo = Signal::derive(move || {
            let area = self.typed.with(|typed| typed.area().ok().flatten())?;
            (which == Which::Area).then(|| words.land(area))
        });
        view! {
            <Field
                label=words.paddock_field(which)
                hint=words.paddock_field_hint(which).to_owned()
                value=Signal::derive(move || self.typed.with(|typed| typed.text(which).to_owned()))
                on_input=self.form.typed(which.key())
                error=error
                echo=echo
                keyboard=Keyboard::Text
            />
        }
        .into_any()
    }

    /// What kept it from being saved and stands under no field.
    fn of_the_whole(self) -> AnyView {
        let words = English::default();
        let wrong = move || {
            self.wrong.with(|wrong| {
                let kept = wrong.iter().find(|wrong| wrong.field().is_none());
                kept.map(|wrong| view! { <Caution said=words.paddock_wrong(wrong) /> })
            })
        };
        view! { <div role="alert">{wrong}</div> }.into_any()
    }

    /// The day of the yard.
    fn today(self) -> LocalDate {
        let zone = self
            .shelf
            .with_untracked(|shelf| YardZone::read(shelf.as_ref()));
        zone.to_local(clock::now()).date
    }

    fn save(self) {
        let id = self
            .id
            .get_value()
            .unwrap_or_else(|| PaddockId(self.form.id("id")));
        let before = self.there.get_untracked();
        let act = self
            .typed
            .get_untracked()
            .act(&id, before.as_ref(), self.today());
        match act {
            Ok(act) => {
                self.wrong.set(Vec::new());
                self.write(act, Route::Field(id));
            }
            Err(wrong) => self.wrong.set(wrong),
        }
    }

    fn remove(self) {
        if let Some(id) = self.id.get_value() {
            self.write(Act::Remove(RecordId(id.0)), Route::Paddock);
        }
    }

    fn write(self, act: Act, then: Route) {
        if self.busy.get_untracked() {
            return;
        }
        self.busy.set(true);
        self.failed.set(false);
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.world.go(&then);
            } else {
                self.failed.try_set(true);
            }
        });
    }
}

/// What is typed: a field that nobody touched shows what is stored.
fn typed(form: Form, there: Option<&PaddockV2>) -> Typed {
    let stored = there.map(Typed::of).unwrap_or_default();
    let held = |field: Which| {
        form.held(field.key())
            .unwrap_or_else(|| stored.text(field).to_owned())
    };
    Typed {
        name: held(Which::Name),
        area: held(Which::Area),
        rest: held(Which::Rest),
        note: held(Which::Note),
        kind: form
            .held("kind")
            .and_then(|word| of_word(&KINDS, &word))
            .or(stored.kind),
        shade: form
            .held("shade")
            .and_then(|word| of_word(&SHADES, &word))
            .or(stored.shade),
        plants: form
            .held("plants")
            .map_or(stored.plants, |plants| plants_in(&plants)),
    }
}
