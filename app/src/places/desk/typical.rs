//! A typical food: every number with its source, and the way into the shed.

use crate::device::ids;
use crate::parts::{Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Sentence, Sourced};
use crate::places::Saving;
use crate::places::shed::yard;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::FoodId;
use tussock_core::ration::TypicalFood;
use tussock_flow::forms::food::take;
use tussock_flow::routes::Route;
use tussock_flow::views::foods::{NumberRow, typical};
use tussock_flow::words::{DeskWords, English, FoodsWords, HorsesWords, RationWords, SourceWords};

/// A typical food.
#[component]
pub fn Typical(
    /// Which.
    food: TypicalFood,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let (failed, busy) = (RwSignal::new(false), RwSignal::new(false));
    let rows = typical(food).into_iter().map(number).collect_view();
    let into_shed = Callback::new(move |()| {
        if busy.get_untracked() {
            return;
        }
        let id = FoodId(ids::new());
        let Ok(act) = take(food, words.typical_food(food), &yard(world), &id) else {
            failed.set(true);
            return;
        };
        busy.set(true);
        failed.set(false);
        leptos::task::spawn_local(async move {
            let done = world.act(act, None).await;
            busy.try_set(false);
            if done.is_ok() {
                world.go(&Route::Food(id));
            } else {
                failed.try_set(true);
            }
        });
    });
    let foot = move || {
        view! {
            <Saving failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Foods.to_string()) }>
                <Action says=words.take_into_shed() press=into_shed busy />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.desk() when=words.food_class(food.class()).to_owned() foot=foot>
            <Sentence said=words.typical_sentence(food) />
            <Caution said=words.typical_caution() />
            <h2>{words.what_is_in_it()}</h2>
            <ul class="rows" aria-label=words.what_is_in_it()>{rows}</ul>
        </Frame>
    }
}

/// A content with its number and where that stands; "not known" where nobody says.
fn number(row: NumberRow) -> impl IntoView {
    let words = English::default();
    let name = words.content(row.content);
    let shown = match row.number {
        None => view! { {words.not_known_of_it()} }.into_any(),
        Some(number) => {
            let shown = words.food_number(&number);
            view! {
                <Sourced
                    shown=shown.clone()
                    asks=words.where_from()
                    value=format!("{name}: {shown}")
                    mark=words.mark_means(number.mark)
                    citation=words.food_number_from(&number)
                />
            }
            .into_any()
        }
    };
    view! {
        <li>
            <div class="row">
                <span class="row-name">{name}</span>
                " "
                <span class="row-value">{shown}</span>
            </div>
        </li>
    }
}
