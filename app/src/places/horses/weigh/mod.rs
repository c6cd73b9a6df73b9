//! The tape and the scale.

use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::forms::weight::{How, Typed, Wrong, echo_length, echo_mass};
use tussock_flow::routes::Route;
use tussock_flow::views::horses;
use tussock_flow::words::{AssessWords, English, HorsesWords, UnitWords};

/// Weighing one animal, by tape or scale.
#[component]
pub fn Weigh(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(world, Route::Weigh(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let minute = world.minute();
    let beside = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => horses::beside(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let name = Signal::derive(move || {
        beside
            .get()
            .map(|beside| beside.animal.name)
            .unwrap_or_default()
    });
    let donkey = Signal::derive(move || {
        beside
            .get()
            .is_some_and(|beside| beside.animal.kind.is_donkey())
    });
    let how_text = form.text("how");
    let how = Signal::derive(move || {
        if how_text.with(|text| text == "scale") {
            How::Scale
        } else {
            How::Tape
        }
    });
    let wrong = RwSignal::new(Vec::<Wrong>::new());
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let said_of = move |field: &'static str| {
        Signal::derive(move || {
            wrong
                .get()
                .into_iter()
                .find(|wrong| wrong.field() == field)
                .map(|wrong| match wrong {
                    Wrong::Parse(_, error) => words.parse_error(&error),
                    Wrong::Assess(error) => words.assess_error(&error),
                })
        })
    };
    let save = Callback::new(move |()| {
        let Some(beside) = beside.get_untracked() else {
            return;
        };
        let typed = Typed {
            how: how.get_untracked(),
            heart_girth: form.now("girth"),
            length: form.now("length"),
            scale: form.now("scale"),
        };
        let record = form.id("id");
        let today = beside.today;
        match typed.act(&beside.animal, today, &record) {
            Err(faults) => wrong.set(faults),
            Ok(act) => {
                wrong.set(Vec::new());
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Horse(beside.animal.id));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.save_weight() press=save busy=Signal::derive(move || busy.get() || beside.with(Option::is_none)) />
            </ActionRow>
        }
    };
    let girth = form.text("girth");
    let length = form.text("length");
    let scale = form.text("scale");
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.tape_or_scale(&name.get())) />
            <Unread shelf />
            {draft_line(form)}
            <Choice
                legend=words.how_weighed()
                offers=vec![Offer::new(How::Tape, words.by_tape()), Offer::new(How::Scale, words.by_scale())]
                chosen=Signal::derive(move || Some(how.get()))
                on_choose=move |how: How| form.set("how", if how == How::Scale { "scale" } else { "tape" }.to_owned())
            />
            <Show
                when=move || how.get() == How::Tape
                fallback=move || view! {
                    <Field
                        label=words.scale_weight()
                        value=scale
                        on_input=form.typed("scale")
                        error=said_of("scale")
                        echo=Signal::derive(move || echo_mass(&scale.get()).map(|mass| words.body(mass)))
                        keyboard=Keyboard::Decimal
                    />
                }
            >
                <Field
                    label=words.heart_girth()
                    hint=words.heart_girth_hint()
                    value=girth
                    on_input=form.typed("girth")
                    error=said_of("girth")
                    echo=Signal::derive(move || echo_length(&girth.get()).map(|length| words.length(length)))
                    keyboard=Keyboard::Decimal
                />
                <Field
                    label=words.length_label()
                    hint=Signal::derive(move || Some(words.length_hint(donkey.get()).to_owned()))
                    value=length
                    on_input=form.typed("length")
                    error=said_of("length")
                    echo=Signal::derive(move || echo_length(&length.get()).map(|length| words.length(length)))
                    keyboard=Keyboard::Decimal
                />
            </Show>
            <Caution said=words.no_dose() />
        </Frame>
    }
}
