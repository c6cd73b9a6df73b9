//! Grasses to favour and to avoid, and what harms where the yard lies.

use super::field::harmful;
use crate::parts::{
    Action, ActionRow, Back, Caution, Field, Frame, FrameKind, Keyboard, Press, Quiet, QuietRow,
    Sentence, Sourced,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::graze::plants::{PlantId, SugarPotential, hazards_of};
use tussock_flow::routes::Route;
use tussock_flow::views::fields::{grass_rows, hazard_rows, needs, regions};
use tussock_flow::words::{
    English, FieldWords, FoodsWords, HorsesWords, PaddockWords, PlantsWords, SourceWords,
};

/// The potentials in the order of the screen: what to favour first.
const SUGARS: [SugarPotential; 3] = [
    SugarPotential::Lower,
    SugarPotential::Middle,
    SugarPotential::Higher,
];

/// Grasses and what harms at grass.
#[component]
pub fn Plants() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(needs);
    let find = RwSignal::new(String::new());
    let here = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => Some(regions(&shelf)),
        _ => None,
    });
    let grasses = SUGARS
        .into_iter()
        .map(|sugar| {
            move || {
                let rows = grass_rows(sugar, &find.get());
                if rows.is_empty() {
                    return ().into_any();
                }
                let rows = rows.into_iter().map(grass).collect_view();
                view! {
                    <h2>{words.sugar_potential(sugar)}</h2>
                    <ul class="rows" aria-label=words.sugar_potential(sugar)>{rows}</ul>
                }
                .into_any()
            }
        })
        .collect_view();
    let harm = move || {
        let regions = here.get()?;
        let where_from = if regions.is_empty() {
            view! { <Caution said=words.no_region() /> }.into_any()
        } else {
            view! { <p>{words.for_regions(&regions)}</p> }.into_any()
        };
        let rows = hazard_rows(&regions, &find.get());
        let list = (!rows.is_empty()).then(|| {
            let rows = rows
                .into_iter()
                .map(|hazard| harmful(hazard, None))
                .collect_view();
            view! { <ul class="rows" aria-label=words.hazards_head()>{rows}</ul> }
        });
        Some(view! { {where_from} {list} })
    };
    let nothing = move || {
        let typed = find.get();
        let regions = here.get().unwrap_or_default();
        let none = SUGARS
            .into_iter()
            .all(|sugar| grass_rows(sugar, &typed).is_empty())
            && hazard_rows(&regions, &typed).is_empty();
        none.then(|| words.no_such_plant())
    };
    let foot = move || {
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Paddock.to_string()) }>
                <Action says=words.to_grass_today() press=Route::Paddock.to_string() />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.paddock() foot=foot>
            <Sentence said=words.plants_sentence() />
            <Unread shelf />
            <Caution said=words.kind_is_not_all() />
            <Field
                label=words.find_plant()
                hint=words.find_plant_hint().to_owned()
                value=find
                on_input=move |text: String| find.set(text)
                keyboard=Keyboard::Search
            />
            <p role="status">{nothing}</p>
            {grasses}
            <h2>{words.hazards_head()}</h2>
            {harm}
            <QuietRow>
                <Quiet says=words.tick_regions() press=Route::GrassPlace.to_string() />
            </QuietRow>
            <p class="soft">{words.list_is_not_all()}</p>
        </Frame>
    }
}

/// A grass by its names, and where what is said of its sugar stands.
fn grass(plant: PlantId) -> impl IntoView {
    let words = English::default();
    let name = words.plant(plant);
    let sugar = plant.sugar().map(|sugar| {
        let said = words.sugar_word(sugar.value);
        view! {
            <Sourced
                shown=said
                asks=words.where_from()
                value=format!("{name}: {said}")
                mark=words.mark_means(sugar.mark)
                citation=words.constant(&sugar.row())
            />
        }
    });
    // Little sugar is no leave for a grass that harms otherwise.
    let harms = hazards_of(&[plant])
        .next()
        .map(|_| format!(". {}", words.harms_too()));
    view! {
        <li>
            <div class="row">
                <span class="row-name">{name}</span>
                " "
                <span class="row-value">{sugar}</span>
                " "
                <span class="row-second">
                    {words.scientific(plant)}", "{words.growth(plant.growth())}{harms}
                </span>
            </div>
        </li>
    }
}
