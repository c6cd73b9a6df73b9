//! Counting what is left of a lot.

use super::work::Work;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_flow::forms::left_of_lot::{In, Wrong, count};
use tussock_flow::routes::Route;
use tussock_flow::words::{English, HayWords, HorsesWords, ShedWords, StockWords};

/// Counting what is left of a lot: from then on only what is weighed out later goes off.
#[component]
pub fn CountHay(
    /// Which.
    lot: LotId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::CountHay(lot.clone()).to_string());
    let work = Work::of(world);
    let id = StoredValue::new(lot);
    let back = Route::Hay(id.get_value());
    let name = move || {
        work.now.with(|now| {
            let (shelf, _) = now.as_ref()?;
            Some(shelf.lot_name(&id.get_value()))
        })
    };
    let said = move || match name() {
        None => words.opening().to_owned(),
        Some(None) => words.no_such_hay().to_owned(),
        Some(Some(name)) => words.how_much_is_left(&name),
    };
    let wrong = RwSignal::new(None::<Wrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let unit = form.text("unit");
    let there = back.clone();
    let save = Callback::new(move |()| {
        let of = In::of(&form.now("unit"));
        match count(&id.get_value(), of, &form.now("left"), &form.id("id")) {
            Err(fault) => wrong.set(Some(fault)),
            Ok(act) => {
                wrong.set(None);
                failed.set(false);
                busy.set(true);
                let there = there.clone();
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&there);
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let fault = move |of_unit: bool| {
        Signal::derive(move || {
            let wrong = wrong.get()?;
            (of_unit == (wrong == Wrong::NoUnit)).then(|| words.amount_wrong(&wrong))
        })
    };
    let back = back.to_string();
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.save_count() press=save busy=busy />
            </ActionRow>
        }
    };
    let offers = In::ALL
        .iter()
        .map(|(of, _)| Offer::new(*of, words.amount_in(*of)))
        .collect();
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=Signal::derive(said) />
            <Unread shelf=work.shelf />
            {draft_line(form)}
            <Choice
                legend=words.counted_in()
                offers=offers
                chosen=Signal::derive(move || unit.with(|unit| In::of(unit)))
                on_choose=move |of: In| form.set("unit", of.word().to_owned())
                hint=fault(true)
            />
            <Field
                label=words.left_label()
                hint=words.left_hint()
                value=form.text("left")
                on_input=form.typed("left")
                on_enter=save
                error=fault(false)
                keyboard=Keyboard::Decimal
            />
            <p class="soft">{words.count_starts_anew()}</p>
        </Frame>
    }
}
