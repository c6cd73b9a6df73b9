//! Weighbridge day: all animals on a scale, a line an animal, each saved as it is finished.

mod line;

use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, FrameWidth, Keyboard, Offer,
    Press, Sentence,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use line::{Line, Lines};
use tussock_core::animal::AnimalId;
use tussock_core::assess::ScaleInstrument;
use tussock_flow::forms::weighbridge::Head;
use tussock_flow::forms::weight::{INSTRUMENT, INSTRUMENTS, WITHOUT, Wrong, echo_mass, text_of};
use tussock_flow::routes::Route;
use tussock_flow::views::beside::list_needs;
use tussock_flow::views::weighbridge::{Weighbridge as Day, weighbridge};
use tussock_flow::words::{
    AssessWords, English, HorsesWords, LogWords, MeasureWords, UnitWords, WeighbridgeWords,
};

/// What the lines have in common.
#[derive(Clone, Copy)]
struct Scale {
    words: English,
    world: World,
    /// The animals, once they are read.
    seen: Memo<Option<Day>>,
    /// The form of what is said once.
    once: Form,
    /// What is said once, as it is typed.
    head: Memo<Option<Head>>,
    /// What is wrong with the vehicle without an animal.
    without: RwSignal<Option<Wrong>>,
    /// The lines in sight, in their order.
    lines: StoredValue<Lines>,
    /// The person wants to go back to the list, once everything typed is saved.
    leaving: RwSignal<bool>,
    /// That could not be, for a line is not saved.
    held_up: RwSignal<bool>,
    /// The disk refused.
    failed: RwSignal<bool>,
}

impl Scale {
    fn is_vehicle(self) -> bool {
        self.head.with(|head| {
            head.as_ref()
                .is_some_and(|head| head.instrument == ScaleInstrument::VehicleWeighbridge)
        })
    }

    /// Saves what is typed and goes back to the list, unless a line cannot be saved.
    fn finish(self) {
        self.leaving.set(true);
        self.held_up.set(false);
        for line in self.lines.get_value() {
            line.finish(self);
        }
        self.leave();
    }

    /// Goes back to the list when the person wants to and nothing typed is left.
    fn leave(self) {
        if self.leaving.try_get_untracked() != Some(true) {
            return;
        }
        let lines = self.lines.get_value();
        if lines.iter().any(|line| line.is_busy()) {
            return;
        }
        self.leaving.set(false);
        if untrack(|| lines.iter().any(|line| line.is_typed(self))) {
            self.held_up.set(true);
            return;
        }
        // What was said once is known from the weights of today.
        self.once.throw_away();
        self.world.go(&Route::Horses);
    }

    /// What is wrong with a field, in words.
    fn said_of(self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Parse(_, error) => self.words.parse_error(error),
            Wrong::Assess(error) => self.words.assess_error(error),
            Wrong::NoDifference => self.words.no_difference().to_owned(),
            Wrong::Log(error) => self.words.log_error(error),
        }
    }
}

/// All animals on a scale.
#[component]
pub fn Weighbridge() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let once = Form::open_today(world, Route::Weighbridge.to_string());
    let shelf = world.shelf(list_needs);
    let minute = world.minute();
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => Some(weighbridge(&shelf, now, &DeviceZone)),
        _ => None,
    });
    let head = Memo::new(move |_| {
        let text = |field: &str| once.held(field).unwrap_or_default();
        seen.with(|seen| seen.as_ref().map(|seen| Head::of(seen, text)))
    });
    let scale = Scale {
        words,
        world,
        seen,
        once,
        head,
        without: RwSignal::new(None),
        lines: StoredValue::new(Lines::new()),
        leaving: RwSignal::new(false),
        held_up: RwSignal::new(false),
        failed: RwSignal::new(false),
    };
    let said = Signal::derive(move || {
        seen.with(|seen| match seen {
            None => words.opening().to_owned(),
            Some(seen) if seen.lines.is_empty() => words.no_horse_yet().to_owned(),
            Some(seen) => words.weighed_of(seen.saved(), seen.lines.len()),
        })
    });
    // A line that is saved stays where it stands, so that nothing moves under the hand.
    let order = Memo::new(move |before: Option<&Vec<AnimalId>>| {
        let before = before.map(Vec::as_slice).unwrap_or_default();
        seen.with(|seen| seen.as_ref().map(|seen| seen.order(before)))
            .unwrap_or_default()
    });
    let finish = Callback::new(move |()| scale.finish());
    let foot = move || {
        view! {
            <div role="alert">
                <Show when=move || scale.held_up.get()>
                    <p class="soft small">{words.some_lines_open()}</p>
                </Show>
            </div>
            <Saving failed=scale.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                <Action says=words.finish_weighing() press=finish />
            </ActionRow>
        }
    };
    let [_, last_head, today_head] = words.weighbridge_heads();
    let typed_head = move || {
        if scale.is_vehicle() {
            words.with_animal()
        } else {
            let [shows, _, _] = words.weighbridge_heads();
            shows
        }
    };
    view! {
        <Frame kind=FrameKind::Flow width=FrameWidth::Desk what=words.horses() foot=foot>
            <Sentence said=said />
            <Unread shelf />
            <p>{words.line_by_line()}</p>
            <SaidOnce scale />
            <table class="table scale-rows" data-wide="">
                <caption>{words.all_on_the_scale()}</caption>
                <thead>
                    <tr>
                        <th scope="col">{typed_head}</th>
                        <th scope="col">{last_head}</th>
                        <th scope="col">{today_head}</th>
                    </tr>
                </thead>
                <tbody>
                    <For
                        each=move || order.get()
                        key=|animal| animal.as_str().to_owned()
                        children=move |animal| view! { <Line scale animal /> }
                    />
                </tbody>
            </table>
            <Caution said=words.no_dose() />
        </Frame>
    }
}

/// What they stand on; of a vehicle, what it weighs without an animal.
#[component]
fn SaidOnce(scale: Scale) -> impl IntoView {
    let words = scale.words;
    let once = scale.once;
    let instrument = Signal::derive(move || {
        scale
            .head
            .with(|head| head.as_ref().map(|head| head.instrument))
    });
    let offers = vec![
        Offer::new(ScaleInstrument::AnimalScale, words.animal_scale()),
        Offer::new(
            ScaleInstrument::VehicleWeighbridge,
            words.vehicle_weighbridge(),
        ),
    ];
    // A field nobody touched shows what stands from today's last weight.
    let without = Signal::derive(move || {
        once.held(WITHOUT).unwrap_or_else(|| {
            scale
                .seen
                .with(|seen| seen.as_ref().map(|seen| seen.without.clone()))
                .unwrap_or_default()
        })
    });
    view! {
        <Choice
            legend=words.stood_on()
            offers
            chosen=instrument
            on_choose=move |of| once.set(INSTRUMENT, text_of(of, &INSTRUMENTS).to_owned())
        />
        <Show when=move || scale.is_vehicle()>
            <Field
                label=words.without_animal()
                hint=words.with_animal_hint().to_owned()
                value=without
                on_input=once.typed(WITHOUT)
                error=Signal::derive(move || scale.without.get().map(|wrong| scale.said_of(&wrong)))
                echo=Signal::derive(move || echo_mass(&without.get()).map(|mass| words.body(mass)))
                keyboard=Keyboard::Decimal
            />
        </Show>
    }
}
