//! The vet's word, written down.

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Quiet, QuietRow, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, VetScope};
use tussock_core::sources::RecordId;
use tussock_core::units::Zone;
use tussock_flow::forms::start::{key, of_key};
use tussock_flow::forms::vet::{ABOUT, How, Typed, Wrong, expires, given};
use tussock_flow::routes::Route;
use tussock_flow::views::horses;
use tussock_flow::views::vet::{Held, held, taken_back};
use tussock_flow::words::{
    AnimalWords, English, HorsesWords, LogWords, StartWords, UnitWords, VetWords,
};

/// What the vet said of one animal.
#[allow(clippy::too_many_lines, reason = "one form, a field a line")]
#[component]
pub fn VetWord(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::VetWord(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let name = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.animal(&id.get_value()).map(|animal| animal.name),
        _ => None,
    });
    let name = Signal::derive(move || name.get().unwrap_or_default());
    let minute = world.minute();
    let today = Memo::new(move |_| DeviceZone.to_local(minute.get()).date);
    let so_far = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => held(&shelf, &id.get_value(), today.get()),
        _ => Vec::new(),
    });
    let about_text = form.text("about");
    let about = Signal::derive(move || about_text.with(|text| of_key(ABOUT, text)));
    let how_text = form.text("how");
    let how = Signal::derive(move || how_text.with(|text| of_key(How::ALL, text)));
    let wrong = RwSignal::new(Vec::<Wrong>::new());
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let typed = Typed {
            about: about.get_untracked(),
            percent: form.now("percent"),
            vet: form.now("vet"),
            practice: form.now("practice"),
            how: how
                .get_untracked()
                .map(|how| words.given_by(how).to_owned())
                .unwrap_or_default(),
            given: form.now("given"),
            expires: form.now("expires"),
        };
        let record = RecordId(form.id("id"));
        match typed.act(
            &id.get_value(),
            DeviceZone.to_local(clock::now()).date,
            &record,
        ) {
            Err(faults) => wrong.set(faults),
            Ok(act) => {
                wrong.set(Vec::new());
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Plan(id.get_value()));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let back = Route::Plan(animal).to_string();
    let foot = move || {
        view! {
            <Show when=move || wrong.with(|wrong| !wrong.is_empty())>
                <p class="error" role="alert">{words.still_open()}</p>
            </Show>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.save_vets_word() press=save busy=busy />
            </ActionRow>
        }
    };
    let about_offers: Vec<Offer<VetScope>> = ABOUT
        .iter()
        .map(|scope| Offer::new(*scope, words.vet_scope(*scope)))
        .collect();
    let how_offers: Vec<Offer<How>> = How::ALL
        .iter()
        .map(|how| Offer::new(*how, words.given_by(*how)))
        .collect();
    let given_text = form.text("given");
    let expires_text = form.text("expires");
    let given_day = Signal::derive(move || given_text.with(|text| given(text, today.get())));
    let last_day = Signal::derive(move || {
        expires_text.with(|text| given_day.get().and_then(|given| expires(text, given)))
    });
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.what_the_vet_said(&name.get())) />
            <Unread shelf />
            {draft_line(form)}
            <Caution said=words.only_what_was_said() />
            {move || written_down(world, &so_far.get())}
            <Choice
                legend=words.about_what()
                hint=open(wrong, |wrong| matches!(wrong, Wrong::About))
                offers=about_offers
                chosen=about
                on_choose=move |scope: VetScope| form.set("about", key(ABOUT, &scope))
            />
            <Show when=move || about.get() == Some(VetScope::LowestLevel)>
                <Field
                    label=words.lowest_level_label()
                    hint=words.lowest_level_hint()
                    value=form.text("percent")
                    on_input=form.typed("percent")
                    unit=words.percent_sign()
                    error=said(wrong, |words, wrong| match wrong {
                        Wrong::Percent(error) => Some(words.parse_error(error)),
                        Wrong::Log(error) => Some(words.log_error(error)),
                        _ => None,
                    })
                    keyboard=Keyboard::Decimal
                />
            </Show>
            <Field
                label=words.vet_label()
                value=form.text("vet")
                on_input=form.typed("vet")
                error=said(wrong, |words, wrong| matches!(wrong, Wrong::NoVet).then(|| words.vet_wanted().to_owned()))
            />
            <Field
                label=words.practice_label()
                hint=words.may_be_left_out()
                value=form.text("practice")
                on_input=form.typed("practice")
            />
            <Choice
                legend=words.how_given()
                hint=open(wrong, |wrong| matches!(wrong, Wrong::NoHow))
                offers=how_offers
                chosen=how
                on_choose=move |how: How| form.set("how", key(How::ALL, &how))
            />
            <Field
                label=words.given_label()
                hint=words.given_hint()
                value=given_text
                on_input=form.typed("given")
                error=said(wrong, |words, wrong| matches!(wrong, Wrong::Given).then(|| words.given_wrong().to_owned()))
                echo=Signal::derive(move || given_day.get().map(|day| words.date(day)))
            />
            <Field
                label=words.expires_label()
                hint=words.expires_hint()
                value=expires_text
                on_input=form.typed("expires")
                error=said(wrong, |words, wrong| matches!(wrong, Wrong::Expires).then(|| words.expires_wrong().to_owned()))
                echo=Signal::derive(move || last_day.get().map(|day| words.date(day)))
            />
        </Frame>
    }
}

/// The words that were written down, each in full, and the key that takes one back.
fn written_down(world: World, held: &[Held]) -> Option<AnyView> {
    let words = English::default();
    if held.is_empty() {
        return None;
    }
    let rows = held
        .iter()
        .map(|held| {
            let act = taken_back(held);
            let back = Callback::new(move |()| {
                let act = act.clone();
                leptos::task::spawn_local(async move {
                    // What cannot be taken back still stands on the screen.
                    let _ = world.act(act, None).await;
                });
            });
            let quiet = held.holds.then(|| {
                view! { <QuietRow><Quiet says=words.taken_back() press=back /></QuietRow> }
            });
            view! {
                <p>{words.word_in_full(&held.word, held.holds)}</p>
                {quiet}
            }
        })
        .collect_view();
    Some(
        view! {
            <h2>{words.words_written_down()}</h2>
            {rows}
        }
        .into_any(),
    )
}

/// That a question wants an answer.
fn open(wrong: RwSignal<Vec<Wrong>>, which: fn(&Wrong) -> bool) -> Signal<Option<String>> {
    let words = English::default();
    Signal::derive(move || {
        wrong
            .with(|wrong| wrong.iter().any(which))
            .then(|| words.answer_wanted().to_owned())
    })
}

/// What is wrong with a field.
fn said(
    wrong: RwSignal<Vec<Wrong>>,
    of: fn(&English, &Wrong) -> Option<String>,
) -> Signal<Option<String>> {
    let words = English::default();
    Signal::derive(move || wrong.with(|wrong| wrong.iter().find_map(|wrong| of(&words, wrong))))
}
