//! What is asked after a session, on the clock or written down.

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{Choice, Field, Keyboard, Offer, Rank, StopBlock};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{Animal, Answer};
use tussock_core::work::{Gait, How, Surface};
use tussock_flow::forms::look_over::{answer_of, text_of};
use tussock_flow::forms::work::{
    self as form_of, HEART, HOW, HOWS, LOAD, NOTE, SETTLED, SOUND, SURFACE, SURFACES, Typed, Wrong,
    chosen,
};
use tussock_flow::routes::Route;
use tussock_flow::words::{English, SessionWords, WorkWords};

/// The order in which the three answers stand.
const ANSWERS: [Answer; 3] = [Answer::Yes, Answer::No, Answer::NotKnown];

/// A session that is being written, and what is wrong with it.
#[derive(Clone, Copy)]
pub(super) struct Writing {
    pub world: World,
    pub words: English,
    pub form: Form,
    pub wrong: RwSignal<Vec<Wrong>>,
    pub failed: RwSignal<bool>,
    pub busy: RwSignal<bool>,
}

impl Writing {
    pub(super) fn new(world: World, form: Form) -> Self {
        Self {
            world,
            words: English::default(),
            form,
            wrong: RwSignal::new(Vec::new()),
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    /// What is wrong with a field.
    pub(super) fn said(self, field: &'static str) -> Signal<Option<String>> {
        Signal::derive(move || {
            self.wrong.with(|wrong| {
                wrong
                    .iter()
                    .find(|wrong| wrong.field() == field)
                    .map(|wrong| self.words.work_wrong(wrong))
            })
        })
    }

    /// Saves the session. After one that was not sound the look-over comes next, else what was done is shown.
    pub(super) fn save(self, animal: &Animal) {
        let typed = Typed::of(|field| self.form.now(field));
        let record = self.form.id("id");
        match typed.act(animal, clock::now(), &DeviceZone, &record) {
            Err(faults) => self.wrong.set(faults),
            Ok(act) => {
                self.wrong.set(Vec::new());
                self.busy.set(true);
                let id = animal.id.clone();
                let next = if answer_of(&typed.sound) == Some(Answer::No) {
                    Route::LookOver(id)
                } else {
                    Route::Work(id)
                };
                leptos::task::spawn_local(async move {
                    let done = self.form.save(act).await;
                    self.busy.try_set(false);
                    if done.is_ok() {
                        self.world.go(&next);
                    } else {
                        self.failed.try_set(true);
                    }
                });
            }
        }
    }
}

/// The minutes of each gait. `clock` says what the clock has of one.
#[component]
pub(super) fn Minutes(
    writing: Writing,
    #[prop(into)] clock: Callback<Gait, Option<String>>,
) -> impl IntoView {
    let Writing { words, form, .. } = writing;
    Gait::ALL
        .into_iter()
        .map(|gait| {
            let field = form_of::field(gait);
            view! {
                <Field
                    label=words.gait_minutes(gait)
                    hint=Signal::derive(move || clock.run(gait))
                    value=form.text(field)
                    on_input=form.typed(field)
                    error=writing.said(field)
                    keyboard=Keyboard::Decimal
                />
            }
        })
        .collect_view()
}

/// Whether it goes sound, how it worked, whether it settled, and what else is known.
#[component]
pub(super) fn After(writing: Writing) -> impl IntoView {
    let Writing { words, form, .. } = writing;
    let how_text = form.text(HOW);
    let how = Signal::derive(move || how_text.with(|text| chosen(&HOWS, text)));
    let surface_text = form.text(SURFACE);
    let surface = Signal::derive(move || surface_text.with(|text| chosen(&SURFACES, text)));
    let sound_text = form.text(SOUND);
    let sound = Signal::derive(move || sound_text.with(|text| answer_of(text)));
    let settled_text = form.text(SETTLED);
    let settled = Signal::derive(move || settled_text.with(|text| answer_of(text)));
    let sound_wrong = writing.said(SOUND);
    let not_sound = move || {
        (sound.get() == Some(Answer::No)).then(|| {
            let said = words.not_sound();
            view! {
                <StopBlock order=said.sentence rank=Rank::Line>
                    <p>{said.why}</p>
                </StopBlock>
            }
        })
    };
    let hows = HOWS
        .iter()
        .map(|(how, _)| Offer::new(*how, words.how_worked(*how)))
        .collect();
    let surfaces = SURFACES
        .iter()
        .map(|(of, _)| Offer::new(*of, words.surface(*of)).with(words.surface_means(*of)))
        .collect();
    view! {
        <Choice
            legend=words.how_did_it_work()
            hint=writing.said(HOW)
            offers=hows
            chosen=how
            on_choose=move |how: How| form.set(HOW, form_of::text_of(&HOWS, how).to_owned())
        />
        <Choice
            legend=words.sound_question()
            hint=Signal::derive(move || sound_wrong.get().or_else(|| Some(words.sound_how().to_owned())))
            offers=ANSWERS.iter().map(|of| Offer::new(*of, words.sound_after(*of))).collect()
            chosen=sound
            on_choose=move |answer: Answer| form.set(SOUND, text_of(answer).to_owned())
        />
        {not_sound}
        <Choice
            legend=words.settled_question()
            offers=ANSWERS.iter().map(|of| Offer::new(*of, words.settled_after(*of))).collect()
            chosen=settled
            on_choose=move |answer: Answer| form.set(SETTLED, text_of(answer).to_owned())
        />
        <Choice
            legend=words.on_what()
            offers=surfaces
            chosen=surface
            on_choose=move |of: Surface| form.set(SURFACE, form_of::text_of(&SURFACES, of).to_owned())
        />
        <Show when=move || how.get() == Some(How::Ridden)>
            <Field
                label=words.load_label()
                value=form.text(LOAD)
                on_input=form.typed(LOAD)
                error=writing.said(LOAD)
                keyboard=Keyboard::Decimal
            />
        </Show>
        <Field
            label=words.heart_label()
            hint=words.heart_hint()
            value=form.text(HEART)
            on_input=form.typed(HEART)
            error=writing.said(HEART)
            keyboard=Keyboard::Numeric
        />
        <Field
            label=words.work_note()
            value=form.text(NOTE)
            on_input=form.typed(NOTE)
            error=writing.said(NOTE)
        />
    }
}
