//! A paddock today: the boot in one tap, what stands there, how long it lasts, what harms.

use crate::device::{clock, ids};
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Column, Frame, FrameKind, Offer, Press, Quiet,
    QuietRow, Sentence, Sourced, Table,
};
use crate::places::{Saving, Unread};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::PaddockId;
use tussock_core::graze::GrazeError;
use tussock_core::graze::sward::{Leaf, Standing};
use tussock_core::units::Zone;
use tussock_flow::forms::sward::{Tapped, tap};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::fields::{Danger, OnField, field, look, needs_with_grazers};
use tussock_flow::words::{
    English, FieldWords, FoodsWords, HorsesWords, PaddockWords, PlantsWords, Said, SourceWords,
    SwardWords,
};

/// A paddock today.
#[component]
pub fn Field(
    /// Which.
    paddock: PaddockId,
) -> impl IntoView {
    let world = World::here();
    let shelf = world.shelf(move || needs_with_grazers(clock::now()));
    let id = StoredValue::new(paddock);
    let minute = world.minute();
    let on = Memo::new(move |_| {
        let now = minute.get();
        match shelf.get() {
            Some(Ok(shelf)) => id.with_value(|id| field(&shelf, id, now, &clock::DeviceZone)),
            _ => None,
        }
    });
    Seen {
        world,
        shelf,
        id,
        on,
        failed: RwSignal::new(false),
    }
    .screen()
}

#[derive(Clone, Copy)]
struct Seen {
    world: World,
    shelf: Reading<Result<Shelf, KeepError>>,
    id: StoredValue<PaddockId>,
    on: Memo<Option<OnField>>,
    failed: RwSignal<bool>,
}

impl Seen {
    fn screen(self) -> AnyView {
        let words = English::default();
        let opening = Signal::derive(move || self.shelf.with(Option::is_none));
        let said = Signal::derive(move || {
            self.on.with(|on| match on {
                Some(on) => words.field_sentence(on),
                None if opening.get() => words.opening().to_owned(),
                None => words.no_such_field().to_owned(),
            })
        });
        let name = Signal::derive(move || {
            let name = self
                .on
                .with(|on| on.as_ref().map(|on| on.body.name.as_str().to_owned()));
            name.unwrap_or_else(|| words.paddock().to_owned())
        });
        let foot = move || {
            view! {
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Paddock.to_string()) }>
                    <Action says=words.to_grass_today() press=Route::Paddock.to_string() />
                </ActionRow>
            }
        };
        let here = Memo::new(move |_| self.on.with(Option::is_some));
        view! {
            <Frame kind=FrameKind::Flow what=name foot=foot>
                <Sentence said />
                <Unread shelf=self.shelf />
                <Show when=move || here.get()>
                    {move || self.chips()}
                    {move || self.on.get().map(shown)}
                    {move || self.links()}
                </Show>
            </Frame>
        }
        .into_any()
    }

    /// The boot and the seed heads, each saved by its tap.
    fn chips(self) -> AnyView {
        let words = English::default();
        let leaves = Leaf::ALL
            .into_iter()
            .map(|leaf| Offer::new(leaf, words.leaf_key(leaf)))
            .collect();
        let seeds = [false, true]
            .into_iter()
            .map(|seeding| Offer::new(seeding, words.seeding(seeding)))
            .collect();
        let leaf = Signal::derive(move || {
            self.on.with(|on| {
                let on = on.as_ref()?;
                on.look.leaf.filter(|(_, seen)| *seen == on.day)
            })
        });
        let seeding = Signal::derive(move || {
            self.on.with(|on| {
                let on = on.as_ref()?;
                on.look.seeding.filter(|(_, seen)| *seen == on.day)
            })
        });
        view! {
            <Choice
                legend=words.boot_asked()
                offers=leaves
                chosen=Signal::derive(move || leaf.get().map(|(leaf, _)| leaf))
                on_choose=move |leaf: Leaf| self.tapped(Tapped::Leaf(leaf))
            />
            <Choice
                legend=words.seeding_asked()
                offers=seeds
                chosen=Signal::derive(move || seeding.get().map(|(seeding, _)| seeding))
                on_choose=move |seeding: bool| self.tapped(Tapped::Seeding(seeding))
            />
        }
        .into_any()
    }

    fn tapped(self, tapped: Tapped) {
        let zone = clock::DeviceZone;
        let id = self.id.get_value();
        let Some(look) = self.shelf.with_untracked(|shelf| match shelf {
            Some(Ok(shelf)) => Some(look(shelf, &id, &zone)),
            _ => None,
        }) else {
            return;
        };
        let today = zone.to_local(clock::now()).date;
        let act = tap(&id, &look, tapped, today, &ids::new());
        self.failed.set(false);
        leptos::task::spawn_local(async move {
            if self.world.act(act, None).await.is_err() {
                self.failed.try_set(true);
            }
        });
    }

    fn links(self) -> AnyView {
        let words = English::default();
        let id = self.id.get_value();
        let readings = Route::Readings(id.clone()).to_string();
        let strip = Route::Strip(id.clone()).to_string();
        let form = Route::FieldForm(id).to_string();
        view! {
            <QuietRow>
                <Quiet says=words.to_readings() press=readings />
                <Quiet says=words.to_strip() press=strip />
                <Quiet says=words.to_plants() press=Route::Plants.to_string() />
                <Quiet says=words.to_field_form() press=form />
            </QuietRow>
        }
        .into_any()
    }
}

/// All that follows from what was seen.
fn shown(on: OnField) -> AnyView {
    let words = English::default();
    let last = on
        .look
        .judged
        .as_ref()
        .filter(|_| !on.looked_today())
        .map(|looked| view! { <p>{words.last_looked(looked, on.day)}</p> });
    let rests = on
        .body
        .rest_from
        .map(|since| view! { <p>{words.rests_since(since)}</p> });
    let bare = on
        .bare()
        .then(|| view! { <Caution said=words.bare_is_no_forage() /> });
    let standing = on.standing.as_ref().map(|standing| stands(&on, standing));
    let harm = (!on.dangers.is_empty()).then(|| on.dangers.iter().map(danger).collect_view());
    let none = on
        .dangers
        .is_empty()
        .then(|| view! { <p>{words.no_dangers(!on.regions.is_empty())}</p> });
    view! {
        {last}
        {rests}
        {bare}
        {standing}
        {growing(&on)}
        <h2>{words.dangers_head()}</h2>
        {none}
        {harm.map(|harm| view! { <ul class="rows" aria-label=words.dangers_head()>{harm}</ul> })}
    }
    .into_any()
}

fn stands(on: &OnField, standing: &Result<Standing, GrazeError>) -> AnyView {
    let words = English::default();
    let standing = match standing {
        Ok(standing) => standing,
        Err(error) => return view! { <Caution said=words.graze_error(error) /> }.into_any(),
    };
    let findings = standing
        .findings
        .iter()
        .map(|finding| told(words.sward_finding(finding)))
        .collect_view();
    let days = match on.area() {
        Some(_) => words.days_of_grass(on),
        None => words.area_not_said().to_owned(),
    };
    let kind = on
        .kind_stands_in
        .then(|| view! { <p class="soft">{words.kind_stands_in()}</p> });
    view! {
        <h2>{words.standing_head()}</h2>
        <p>{words.stands(standing.available)}</p>
        {on.whole.map(|whole| view! { <p>{words.stands_on_all(whole)}</p> })}
        <p>{days}</p>
        {kind}
        {findings}
        <p class="soft">{words.height_is_no_leave()}</p>
    }
    .into_any()
}

/// When it is back and how long it rests, season by season.
fn growing(on: &OnField) -> AnyView {
    if on.regrows.is_empty() {
        return ().into_any();
    }
    let words = English::default();
    let rows: Vec<Vec<String>> = on
        .regrows
        .iter()
        .map(|regrows| {
            let [days, rest] = words.regrows(regrows);
            vec![words.growth_season(regrows.season).to_owned(), days, rest]
        })
        .collect();
    let columns = words.regrows_heads().map(Column::words).to_vec();
    view! {
        <details class="numbers">
            <summary>{words.regrowth_head()}</summary>
            <Table caption=words.regrowth_head() columns=columns rows=Signal::stored(rows) />
        </details>
    }
    .into_any()
}

/// A sentence with its reason, as a caution.
pub(super) fn told(said: Said) -> AnyView {
    let words = English::default();
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=tussock_flow::words::PlanScreenWords::why(&words)><p>{why}</p></Caution> }.into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}

fn danger(danger: &Danger) -> AnyView {
    let words = English::default();
    harmful(danger.hazard, Some(words.danger_from(danger).to_owned()))
}

/// A hazard with what it does, to whom and when, what to do, and where it stands.
pub(super) fn harmful(
    hazard: &'static tussock_core::graze::plants::Hazard,
    from: Option<String>,
) -> AnyView {
    let words = English::default();
    let harm = words.harm(hazard.harm.value);
    let source = harm.sentence.clone();
    let acts = words
        .hazard_acts(hazard)
        .into_iter()
        .map(|act| view! { <li>{act}</li> })
        .collect_view();
    let constant = hazard.harm.row();
    view! {
        <li class="hazard">
            <p><b>{words.plant(hazard.plant)}</b>" "<span class="soft">{words.scientific(hazard.plant)}</span></p>
            <p>
                <Sourced
                    shown=harm.sentence
                    asks=words.where_from()
                    value=source
                    mark=words.mark_means(hazard.harm.mark)
                    citation=words.constant(&constant)
                />
            </p>
            {harm.why.map(|why| view! { <p>{why}</p> })}
            <p class="soft">{words.hazard_line(hazard)}</p>
            {from.map(|from| view! { <p class="soft">{from}</p> })}
            <ol class="plain">{acts}</ol>
        </li>
    }
    .into_any()
}
