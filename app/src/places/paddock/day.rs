//! The day of one animal or group: its cord, and the chips that decide it.

use super::at::AtGrass;
use crate::device::clock;
use crate::device::ids;
use crate::parts::{Column, DayCord, DayLabel, Offer, Picture, Quiet, QuietRow, Several, Table};
use crate::places::shed::yard;
use leptos::prelude::*;
use tussock_core::log::bodies::Chip;
use tussock_flow::forms::shed::chip;
use tussock_flow::views::paddock::Goes;
use tussock_flow::views::paddock::picture::{Label, cord};
use tussock_flow::words::{English, LogWords, PaddockWords, ShedWords, UnitWords};

/// The chips that grass goes by.
const CHIPS: [Chip; 7] = [
    Chip::NightFiveOrUnder,
    Chip::NightOverFive,
    Chip::HardFrost,
    Chip::Mild,
    Chip::Dull,
    Chip::Sunny,
    Chip::DrySpell,
];

impl AtGrass {
    /// The chips of the night and the sky, each one tap.
    pub(super) fn chips(self) -> AnyView {
        let words = English::default();
        let chosen = Signal::derive(move || {
            self.view.with(|view| {
                let chips = view.as_ref().map(|view| view.weather.chips.clone());
                chips.unwrap_or_default()
            })
        });
        let hint = Signal::derive(move || {
            let carried = self
                .view
                .with(|view| view.as_ref().is_some_and(|view| view.weather.carried));
            carried.then(|| words.weather_carried().to_owned())
        });
        let about = yard(self.world);
        let choose = Callback::new(move |(which, on): (Chip, bool)| {
            let weather = self
                .view
                .with_untracked(|view| Some(view.as_ref()?.weather.clone()));
            if let Some(weather) = weather {
                self.write(chip(&about, &weather, which, on, &ids::new()));
            }
        });
        let offers = CHIPS
            .iter()
            .map(|chip| Offer::new(*chip, words.chip(*chip)))
            .collect();
        // Once the night is said, one line says it, and the keys are a tap away.
        let open = RwSignal::new(false);
        let said = Memo::new(move |_| {
            self.view.with(|view| {
                let weather = view.as_ref().map(|view| &view.weather);
                weather
                    .filter(|weather| !weather.carried)
                    .and_then(|weather| words.weather_line(&weather.chips))
            })
        });
        // The keys stand there once they can save: a tap before the records are read would be lost.
        let read = Memo::new(move |_| self.view.with(Option::is_some));
        let shown = Memo::new(move |_| open.get() || said.with(Option::is_none));
        let keys = StoredValue::new(offers);
        let change = Callback::new(move |()| open.set(true));
        let keys_or_line = move || {
            if !read.get() {
                return ().into_any();
            }
            if !shown.get() {
                return view! {
                    <QuietRow>
                        <span>{move || said.get().unwrap_or_default()}</span>
                        <Quiet says=words.change_weather() press=change />
                    </QuietRow>
                }
                .into_any();
            }
            view! {
                <Several
                    legend=words.last_night_and_sky()
                    offers=keys.get_value()
                    chosen=chosen
                    on_choose=choose
                    hint=hint
                />
            }
            .into_any()
        };
        view! { {keys_or_line} }.into_any()
    }

    /// The day as a cord, with its table.
    pub(super) fn day(self, goes: &Goes) -> AnyView {
        let words = English::default();
        let zone = self.zone();
        let drawn = cord(&goes.window, clock::now(), &zone);
        let labels = drawn
            .labels
            .iter()
            .map(|label| DayLabel {
                y: label.y,
                time: label
                    .at
                    .map(|at| words.time_at(at, &zone))
                    .unwrap_or_default(),
                word: words.day_label(&label.what),
                now: label.what == Label::Now,
            })
            .collect();
        let rows = words.day_rows(&goes.window, &drawn, &zone);
        let columns = words.day_columns().map(Column::words).to_vec();
        let name = words.day_picture(&goes.window, &zone);
        let hint = drawn.sugar.is_some().then(|| words.day_sugar());
        let rows = StoredValue::new(rows);
        let numbers = move || {
            view! { <Table caption=words.day_table() columns=columns.clone() rows=Signal::stored(rows.get_value()) /> }
        };
        view! {
            <Picture sentence=name numbers_word=words.day_numbers() numbers=numbers>
                <DayCord cord=drawn labels=labels />
            </Picture>
            {hint.map(|hint| view! { <p class="hint">{hint}</p> })}
        }
        .into_any()
    }
}
