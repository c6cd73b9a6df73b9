//! The week of grass.

use super::at::{AtGrass, told};
use crate::parts::{
    Action, ActionRow, Cord, Frame, FrameKind, Hang, Quiet, QuietRow, Sentence, State, Tag,
};
use crate::places::{Places, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::paddock::week;
use tussock_flow::words::{English, FieldWords, HorsesWords, PaddockWords};

/// Seven days of grass for everybody that goes out.
#[component]
pub fn Week() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let at = AtGrass::new(world, None);
    let which = RwSignal::new(None::<String>);
    let goes = Memo::new(move |_| {
        let which = which.get();
        at.view
            .with(|view| view.as_ref()?.of(which.as_deref()).cloned())
    });
    let said = Signal::derive(move || match goes.get() {
        Some(goes) => words.week_sentence(&goes.name),
        None if at.view.with(Option::is_some) => words.no_horse_yet().to_owned(),
        None => words.opening().to_owned(),
    });
    let days = move || {
        let goes = goes.get()?;
        let shelf = at.shelf.get()?.ok()?;
        let zone = at.zone();
        let days = week(&shelf, &goes, world.minute().get(), &zone);
        let tags = days
            .iter()
            .map(|day| {
                let (what, word) = (words.week_day(day, &zone), words.week_word(day));
                let state = match (day.window.closed.is_empty(), day.today) {
                    (false, _) => State::Care,
                    (true, true) => State::Done,
                    (true, false) => State::Later,
                };
                let second = Some(words.week_second(day)).filter(|second| !second.is_empty());
                view! {
                    <Hang>
                        <Tag
                            state=state
                            word=word
                            what=what
                            second=second
                        />
                    </Hang>
                }
            })
            .collect_view();
        Some(view! { <Cord name=words.grass_week()>{tags}</Cord> })
    };
    let others = move || {
        let here = goes.with(|goes| goes.as_ref().map(|goes| goes.about.clone()));
        at.view.with(|view| {
            let all = view.iter().flat_map(|view| view.goes.iter());
            all.filter(|goes| Some(&goes.about) != here.as_ref())
                .map(|goes| {
                    let id = goes.about.id().to_owned();
                    let show = Callback::new(move |()| which.set(Some(id.clone())));
                    view! { <Quiet says=words.week_sentence(&goes.name) press=show /> }
                })
                .collect_view()
        })
    };
    let foot = move || {
        let back = goes.get().map_or(Route::Paddock, |goes| {
            Route::PaddockOf(AnimalId(goes.about.id().to_owned()))
        });
        view! {
            <ActionRow><Action says=words.to_grass_today() press=back.to_string() /></ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.paddock()
            foot=move || foot()
            places=move || view! { <Places here=Place::Paddock /> }
        >
            <Sentence said=said />
            <Unread shelf=at.shelf />
            {days}
            {told(words.week_why())}
            <QuietRow>{others}</QuietRow>
        </Frame>
    }
}
