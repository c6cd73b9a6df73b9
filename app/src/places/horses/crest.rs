//! The crest, 0 to 5.

use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, CutDrawing, Frame, FrameKind, Offer, Press, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::assess::{self, CrestFlag};
use tussock_flow::forms::condition::{crest, crest_act};
use tussock_flow::routes::Route;
use tussock_flow::views::condition::last_crest;
use tussock_flow::views::{cut, horses};
use tussock_flow::words::{AssessWords, ConditionWords, English, HorsesWords};

/// The field of the crest.
const SCORE: &str = "score";

/// Scoring the crest: six steps in words, the drawing of the one that is chosen, and what it says.
#[component]
pub fn Crest(
    /// Which animal.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(world, Route::Crest(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let name = Signal::derive(move || match shelf.get() {
        Some(Ok(shelf)) => shelf
            .animal(&id.get_value())
            .map(|animal| animal.name)
            .unwrap_or_default(),
        _ => String::new(),
    });
    let text = form.text(SCORE);
    let chosen = Signal::derive(move || crest(&text.get()));
    let wanted = RwSignal::new(false);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let Some(crest) = chosen.get_untracked() else {
            wanted.set(true);
            return;
        };
        let act = crest_act(&id.get_value(), crest, &form.id("id"));
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_ok() {
                world.go(&Route::Horse(id.get_value()));
            } else {
                failed.try_set(true);
            }
        });
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.save_crest() press=save busy=busy />
            </ActionRow>
        }
    };
    let offers = (0..=u8::MAX)
        .map_while(|score| assess::Crest::new(score).ok())
        .map(|crest| Offer::new(crest, crest.score().to_string()).with(words.crest(crest)))
        .collect();
    let flag = Memo::new(move |_| {
        chosen
            .get()
            .map(assess::Crest::flag)
            .filter(|flag| *flag != CrestFlag::None)
    });
    let minute = world.minute();
    // Last time is told only when this time is chosen: nobody scores from a score.
    let last = move || {
        chosen.get()?;
        let Some(Ok(shelf)) = shelf.get() else {
            return None;
        };
        let (crest, on) = last_crest(&shelf, &id.get_value(), minute.get(), &DeviceZone)?;
        Some(view! { <p class="soft" role="status">{words.last_crest(crest.score(), on)}</p> })
    };
    let flagged = move || {
        flag.get().map(|flag| {
            let said = words.crest_flag(flag);
            let why = said.why.unwrap_or_default();
            view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }
        })
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.how_is_the_crest(&name.get())) />
            <Unread shelf />
            {draft_line(form)}
            <p>{words.crest_hand()}</p>
            <p class="soft">{words.crest_coat()}</p>
            <CutDrawing
                name=words.crest_drawing()
                cut=Signal::derive(move || cut::crest(chosen.get().map(assess::Crest::score)))
            />
            {last}
            {flagged}
            <Choice
                legend=words.crest_steps()
                offers=offers
                chosen=chosen
                on_choose=move |crest: assess::Crest| form.set(SCORE, crest.score().to_string())
                hint=Signal::derive(move || {
                    (wanted.get() && chosen.get().is_none()).then(|| words.choose_a_crest().to_owned())
                })
            />
        </Frame>
    }
}
