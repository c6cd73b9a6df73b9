//! The foods: the yard's own and the typical ones by class.

use crate::parts::{Action, ActionRow, Back, Frame, FrameKind, Press, Row, Rows, Sentence};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::routes::Route;
use tussock_flow::views::foods::{FoodRow, catalogue, needs, own};
use tussock_flow::words::{DeskWords, English, FoodsWords, HorsesWords, RationWords};

/// The foods.
#[component]
pub fn Foods() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(needs);
    let rows = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => Some(own(&shelf)),
        _ => None,
    });
    let said = Signal::derive(
        move || match rows.with(|rows| rows.as_ref().map(Vec::len)) {
            Some(own) => words.foods_sentence(own),
            None => words.opening().to_owned(),
        },
    );
    let row = move |food: FoodRow| {
        view! {
            <Row
                name=food.name.clone()
                value=food.price.map(|price| words.per_kg(price))
                second=words.food_line(&food)
                press=Route::Food(food.id).to_string()
            />
        }
    };
    let own = move || {
        let rows = rows.get().filter(|rows| !rows.is_empty())?;
        let rows = rows.into_iter().map(row).collect_view();
        Some(view! {
            <h2>{words.own_foods()}</h2>
            <Rows name=words.own_foods()>{rows}</Rows>
        })
    };
    let typical = catalogue()
        .into_iter()
        .map(|(class, foods)| {
            let rows = foods
                .into_iter()
                .map(|food| {
                    let to = Route::TypicalFood(food).to_string();
                    view! { <Row name=words.typical_food(food) press=to /> }
                })
                .collect_view();
            view! {
                <h3>{words.food_class(class)}</h3>
                <Rows name=words.food_class(class)>{rows}</Rows>
            }
        })
        .collect_view();
    let foot = move || {
        view! {
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Desk.to_string()) }>
                <Action says=words.add_food() press=Route::NewFood.to_string() />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.desk() foot=foot>
            <Sentence said />
            <Unread shelf />
            {own}
            <h2>{words.typical_foods()}</h2>
            <p class="soft">{words.typical_foods_mean()}</p>
            {typical}
        </Frame>
    }
}
