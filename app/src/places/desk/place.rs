//! The desk: the rations of the yard.

use crate::device::clock::DeviceZone;
use crate::parts::{Action, ActionRow, Frame, FrameKind, Row, Rows, Sentence};
use crate::places::{Places, Saving, Unread, UpdateOffer};
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::desk::{desk, needs};
use tussock_flow::words::{DeskWords, English, FoodsWords, HorsesWords, UnitWords, YardVisitWords};

/// The desk.
#[component]
pub fn Desk() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(needs);
    let seen = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => Some(desk(&shelf)),
        _ => None,
    });
    let said = Signal::derive(move || {
        seen.with(|seen| match seen {
            Some(seen) => words.desk_sentence(seen.animals.len()),
            None => words.opening().to_owned(),
        })
    });
    let rations = move || {
        seen.with(|seen| {
            let seen = seen.as_ref()?;
            if seen.animals.is_empty() {
                return Some(view! { <p>{words.no_rations()}</p> }.into_any());
            }
            let rows = seen
                .animals
                .iter()
                .map(|(id, name)| {
                    let to = Route::Ration(id.clone()).to_string();
                    view! { <Row name=name.clone() second=words.ration_of() press=to /> }
                })
                .collect_view();
            Some(
                view! {
                    <h2>{words.rations()}</h2>
                    <Rows name=words.rations()>{rows}</Rows>
                }
                .into_any(),
            )
        })
    };
    let foods = move || {
        let count = seen.with(|seen| seen.as_ref().map(|seen| seen.foods))?;
        let to = Route::Foods.to_string();
        Some(view! {
            <Rows name=words.foods()>
                <Row name=words.foods() second=words.foods_count(count) press=to />
            </Rows>
        })
    };
    let foot = move || {
        view! {
            <UpdateOffer />
            <Saving />
            <ActionRow>
                <Action says=words.start_visit() press=Route::Visit.to_string() />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.desk()
            when=Signal::derive(move || Some(words.time_at(world.now.get(), &DeviceZone)))
            foot=foot
            places=move || view! { <Places here=Place::Desk /> }
        >
            <Sentence said=said />
            <Unread shelf />
            {rations}
            {foods}
        </Frame>
    }
}
