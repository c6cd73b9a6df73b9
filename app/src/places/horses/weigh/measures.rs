//! The fields of the tape and of the scale.

use super::sheet::Sheet;
use crate::parts::{Choice, Field, Keyboard, Offer, Quiet, QuietRow};
use leptos::prelude::*;
use tussock_core::assess::{LengthKind, Measure, ScaleInstrument};
use tussock_flow::forms::weight::{
    BEHIND, INSTRUMENT, INSTRUMENTS, KIND, KINDS, MORE, OF_SCALE, OPEN, TOOL, TOOLS, WITH, WITHOUT,
    chosen, echo_length, echo_mass, of_measure, text_of,
};
use tussock_flow::words::{AssessWords, MeasureWords, UnitWords};

/// The readings of a measure: the first, and those that were asked for.
#[component]
pub(super) fn Takes(sheet: Sheet, measure: Measure) -> impl IntoView {
    let words = sheet.words;
    let form = sheet.form;
    let kind = sheet.kind();
    let field = move |place: usize, name: &'static str| {
        let text = form.text(name);
        let hint =
            Signal::derive(move || (place == 0).then(|| words.how_to_take(measure, kind.get())));
        view! {
            <Field
                label=words.take(Some(measure), place)
                hint=hint
                value=text
                on_input=form.typed(name)
                error=sheet.said_of(name)
                echo=Signal::derive(move || echo_length(&text.get()).map(|length| words.length(length)))
                keyboard=Keyboard::Decimal
            />
        }
    };
    let [first, second, third] = of_measure(measure);
    let again = move |place: usize, name: &'static str| {
        let there = Memo::new(move |_| form.held(name).is_some());
        move || there.get().then(|| field(place, name))
    };
    view! { {field(0, first)} {again(1, second)} {again(2, third)} }
}

/// The key that opens the field of the next reading.
#[component]
fn OnceMore(sheet: Sheet, measure: Option<Measure>) -> impl IntoView {
    let next = sheet.once_more(measure);
    let press = Callback::new(move |()| {
        if let Some(field) = next.get_untracked() {
            sheet.form.set(field, String::new());
        }
    });
    // A field that is open already and still empty is the next reading.
    let offered = Memo::new(move |_| {
        next.get()
            .is_some_and(|field| sheet.form.held(field).is_none())
    });
    view! {
        <Show when=move || offered.get()>
            <Quiet says=sheet.words.once_more(measure) press=press />
        </Show>
    }
}

/// The tape: the girths of every week, and behind one line the rest.
#[component]
pub(super) fn ByTape(sheet: Sheet) -> impl IntoView {
    let words = sheet.words;
    let form = sheet.form;
    // Without the frame of an earlier tape the length is wanted: it stands open.
    let open = Memo::new(move |_| match form.held(MORE) {
        Some(text) => text == OPEN,
        None => sheet.beside.with(|beside| {
            beside.as_ref().is_some_and(|beside| {
                beside
                    .before
                    .tape
                    .is_none_or(|(_, tape)| tape.length.is_none())
            })
        }),
    });
    let more = Callback::new(move |()| form.set(MORE, OPEN.to_owned()));
    view! {
        <Takes sheet measure=Measure::HeartGirth />
        <Takes sheet measure=Measure::UmbilicalGirth />
        <QuietRow>
            <OnceMore sheet measure=Some(Measure::HeartGirth) />
            <OnceMore sheet measure=Some(Measure::UmbilicalGirth) />
            <Show when=move || !open.get()>
                <Quiet says=words.more_measures() press=more />
            </Show>
        </QuietRow>
        <Show when=move || open.get()>
            <Behind sheet />
        </Show>
    }
}

/// Length, neck and height, and with what they were taken.
#[component]
fn Behind(sheet: Sheet) -> impl IntoView {
    let words = sheet.words;
    let form = sheet.form;
    let kind = sheet.kind();
    let tool_text = form.text(TOOL);
    let tool = Signal::derive(move || Some(chosen(&tool_text.get(), &TOOLS)));
    let measures = [Measure::Length, Measure::Neck, Measure::Height];
    let takes = measures
        .map(|measure| view! { <Takes sheet measure /> })
        .collect_view();
    view! {
        <Show when=move || kind.get() != LengthKind::ElbowToTuber>
            <Choice
                legend=words.which_length()
                offers=KINDS.map(|(kind, _)| Offer::new(kind, words.length_kind(kind))).to_vec()
                chosen=Signal::derive(move || Some(kind.get()))
                on_choose=move |kind: LengthKind| form.set(KIND, text_of(kind, &KINDS).to_owned())
            />
        </Show>
        {takes}
        <QuietRow>
            {BEHIND.map(|measure| view! { <OnceMore sheet measure=Some(measure) /> }).collect_view()}
        </QuietRow>
        <Choice
            legend=words.which_tool()
            offers=TOOLS.map(|(tool, _)| Offer::new(tool, words.tool(tool))).to_vec()
            chosen=tool
            on_choose=move |tool| form.set(TOOL, text_of(tool, &TOOLS).to_owned())
        />
    }
}

/// The scale, or the weighbridge with and without the animal.
#[component]
pub(super) fn OnScale(sheet: Sheet) -> impl IntoView {
    let words = sheet.words;
    let form = sheet.form;
    let text = form.text(INSTRUMENT);
    let instrument = Memo::new(move |_| chosen(&text.get(), &INSTRUMENTS));
    let offers = vec![
        Offer::new(ScaleInstrument::AnimalScale, words.animal_scale()),
        Offer::new(
            ScaleInstrument::VehicleWeighbridge,
            words.vehicle_weighbridge(),
        ),
    ];
    let mass = move |name: &'static str, label: String, hint: Option<&'static str>| {
        let text = form.text(name);
        view! {
            <Field
                label=label
                hint=hint.map(str::to_owned)
                value=text
                on_input=form.typed(name)
                error=sheet.said_of(name)
                echo=Signal::derive(move || echo_mass(&text.get()).map(|mass| words.body(mass)))
                keyboard=Keyboard::Decimal
            />
        }
    };
    let [first, second, third] = OF_SCALE;
    let again = move |place: usize, name: &'static str| {
        let there = Memo::new(move |_| form.held(name).is_some());
        move || {
            there
                .get()
                .then(|| mass(name, words.take(None, place), None))
        }
    };
    view! {
        <Choice
            legend=words.stood_on()
            offers
            chosen=Signal::derive(move || Some(instrument.get()))
            on_choose=move |of| form.set(INSTRUMENT, text_of(of, &INSTRUMENTS).to_owned())
        />
        <Show
            when=move || instrument.get() == ScaleInstrument::AnimalScale
            fallback=move || view! {
                {mass(WITH, words.with_animal().to_owned(), Some(words.with_animal_hint()))}
                {mass(WITHOUT, words.without_animal().to_owned(), None)}
            }
        >
            {mass(first, words.take(None, 0), None)}
            {again(1, second)}
            {again(2, third)}
            <QuietRow><OnceMore sheet measure=None /></QuietRow>
        </Show>
    }
}
