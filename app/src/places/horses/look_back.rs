//! After an episode: what changed in the days before it, by day.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Row, Rows, Sentence,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::routes::Route;
use tussock_flow::views::look_back::{LookedBack, View, look_back, needs};
use tussock_flow::words::{English, HorsesWords, LookBackWords, PlanScreenWords, UnitWords};

/// The look-back on one animal's last episode.
#[component]
pub fn LookBack(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let minute = world.minute();
    let since = minute.get_untracked();
    let shelf = world.shelf(move || needs(&id.get_value(), since));
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => look_back(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let said = move || match seen.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
        Some(View { back: None, .. }) => words.no_episode().to_owned(),
        Some(View {
            back: Some(back), ..
        }) => words.looked_back(&back),
    };
    let name = Signal::derive(move || {
        seen.with(|seen| seen.as_ref().map(|seen| seen.animal.name.clone()))
            .unwrap_or_default()
    });
    let back = Route::NextStep(animal.clone()).to_string();
    let on = Route::Horse(animal).to_string();
    let foot = move || {
        let (back, on) = (back.clone(), on.clone());
        let says = Signal::derive(move || words.go_on_with(&name.get()));
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>
                <Action says=says press=on />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name when=words.look_back() foot=foot>
            <Sentence said=Signal::derive(said) />
            <Unread shelf />
            {move || seen.with(|seen| seen.as_ref()?.back.as_ref().map(shown))}
        </Frame>
    }
}

fn shown(back: &LookedBack) -> AnyView {
    let words = English::default();
    let days = back
        .days
        .iter()
        .map(|day| {
            let name = words.day(day.day);
            let rows = day
                .what
                .iter()
                .map(|changed| view! { <Row name=words.changed(changed) /> })
                .collect_view();
            view! {
                <h2>{name.clone()}</h2>
                <Rows name=name>{rows}</Rows>
            }
        })
        .collect_view();
    let nothing = back
        .days
        .is_empty()
        .then(|| view! { <p>{words.nothing_changed()}</p> });
    let not_logged = back
        .not_logged
        .iter()
        .map(|what| view! { <Row name=words.not_logged(*what) /> })
        .collect_view();
    view! {
        <p class="soft">{words.looked_back_over(back)}</p>
        <Caution said=words.no_cause() />
        {nothing}
        {days}
        <h2>{words.not_logged_head()}</h2>
        <Rows name=words.not_logged_head()>{not_logged}</Rows>
        <p class="soft small">{words.no_diagnosis()}</p>
    }
    .into_any()
}
