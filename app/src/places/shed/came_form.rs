//! The part of a lot's form that says what came, and how it is stored.

use super::hay_form::HayForm;
use crate::form::Form;
use crate::parts::{Choice, Field, Keyboard, Offer, Several};
use leptos::prelude::*;
use tussock_flow::forms::delivery::{
    BALES, FELT, PER, STORED, TEXTS, Typed, Wrong, of_word, word_of,
};
use tussock_flow::forms::hay::Wrong as OfHay;
use tussock_flow::forms::left_of_lot::In;
use tussock_flow::words::{DeliveryWords, English, StockWords};

/// What is typed of it.
pub(super) fn typed(form: Form) -> Signal<Typed> {
    let texts: Vec<(&'static str, Signal<String>)> = TEXTS
        .into_iter()
        .chain(["unit", "bale", "per", "stored", "felt"])
        .map(|name| (name, form.text(name)))
        .collect();
    let texts = StoredValue::new(texts);
    Signal::derive(move || {
        let text = |name: &str| {
            texts.with_value(|texts| {
                let mut all = texts.iter();
                all.find(|(held, _)| *held == name)
                    .map(|(_, text)| text.get())
                    .unwrap_or_default()
            })
        };
        Typed {
            unit: In::of(&text("unit")),
            bought: text("bought"),
            bale: of_word(&BALES, &text("bale")),
            bale_weights: text("bale-weights"),
            bale_said: text("bale-said"),
            slices: text("slices"),
            price: text("price"),
            per: of_word(&PER, &text("per")),
            currency: text("currency"),
            bought_on: text("bought-on"),
            baled_on: text("baled-on"),
            moisture: text("moisture"),
            stored: text("stored")
                .split(' ')
                .filter_map(|word| of_word(&STORED, word))
                .collect(),
            lead: text("lead"),
            rod: text("rod"),
            felt: of_word(&FELT, &text("felt")),
        }
    })
}

impl HayForm {
    fn came_wrong(
        self,
        which: impl Fn(&Wrong) -> bool + Send + Sync + 'static,
    ) -> Signal<Option<String>> {
        self.said(move |wrong| matches!(wrong, OfHay::Came(wrong) if which(wrong)))
    }

    /// A field of a number or a text.
    fn came_field(
        self,
        name: &'static str,
        label: String,
        hint: Option<String>,
        error: Signal<Option<String>>,
        unit: Option<String>,
    ) -> AnyView {
        // Several weights need a blank, a day its points, and a thermometer may say F.
        let keyboard = match name {
            "bought" | "bale-said" | "price" | "moisture" | "lead" => Keyboard::Decimal,
            _ => Keyboard::Text,
        };
        view! {
            <Field
                label=label
                hint=hint
                value=self.form.text(name)
                on_input=self.form.typed(name)
                error=error
                unit=unit
                keyboard=keyboard
            />
        }
        .into_any()
    }

    /// A choice that is kept as a word.
    fn came_choice<T>(
        self,
        name: &'static str,
        legend: &'static str,
        words: &'static [(T, &'static str)],
        says: fn(T) -> &'static str,
        hint: Signal<Option<String>>,
    ) -> AnyView
    where
        T: Copy + PartialEq + Send + Sync + 'static,
    {
        let form = self.form;
        let text = form.text(name);
        let offers = words
            .iter()
            .map(|(value, _)| Offer::new(*value, says(*value)))
            .collect();
        view! {
            <Choice
                legend=legend
                offers=offers
                chosen=Signal::derive(move || text.with(|text| of_word(words, text)))
                on_choose=move |value: T| form.set(name, word_of(words, Some(value)))
                hint=hint
            />
        }
        .into_any()
    }

    /// The fields of what came, and of the store.
    pub(super) fn came(self) -> AnyView {
        let words = English::default();
        let none = Signal::stored(None::<String>);
        let bought = self.came_wrong(|wrong| matches!(wrong, Wrong::Bought(_)));
        let day = || Some(words.day_hint().to_owned());
        view! {
            <h2>{words.what_came()}</h2>
            <p class="soft">{words.what_came_hint()}</p>
            {self.came_choice("unit", words.bought_in(), &In::ALL, |of| English::default().amount_in(of), none)}
            {self.came_field("bought", words.bought_label().to_owned(), None, bought, None)}
            {self.came_choice("bale", words.how_baled(), &BALES, |kind| English::default().bale_kind(kind), none)}
            {self.came_field(
                "bale-weights",
                words.bales_weighed_label().to_owned(),
                Some(words.bales_weighed_hint()),
                self.came_wrong(|wrong| matches!(wrong, Wrong::Bale(_))),
                Some("kg".to_owned()),
            )}
            {self.came_field(
                "bale-said",
                words.bale_said_label().to_owned(),
                Some(words.bale_said_hint().to_owned()),
                none,
                Some("kg".to_owned()),
            )}
            {self.came_field(
                "slices",
                words.slices_weighed_label(),
                Some(words.slices_weighed_hint()),
                self.came_wrong(|wrong| matches!(wrong, Wrong::Slice(_))),
                Some("kg".to_owned()),
            )}
            {self.came_field(
                "price",
                words.price_label().to_owned(),
                None,
                self.came_wrong(|wrong| matches!(wrong, Wrong::Price(_))),
                None,
            )}
            {self.came_choice(
                "per",
                words.price_per(),
                &PER,
                |per| English::default().per(per),
                self.came_wrong(|wrong| matches!(wrong, Wrong::NoPer)),
            )}
            {self.came_field(
                "currency",
                words.currency_label().to_owned(),
                Some(words.currency_hint().to_owned()),
                self.came_wrong(|wrong| matches!(wrong, Wrong::Currency(_))),
                None,
            )}
            {self.came_field(
                "bought-on",
                words.bought_on_label().to_owned(),
                day(),
                self.came_wrong(|wrong| matches!(wrong, Wrong::BoughtOn)),
                None,
            )}
            {self.came_field(
                "lead",
                words.lead_label().to_owned(),
                Some(words.lead_hint()),
                self.came_wrong(|wrong| matches!(wrong, Wrong::Lead(_))),
                Some(words.days_unit().to_owned()),
            )}
            <h2>{words.in_store()}</h2>
            {self.came_field(
                "baled-on",
                words.baled_on_label().to_owned(),
                day(),
                self.came_wrong(|wrong| matches!(wrong, Wrong::BaledOn)),
                None,
            )}
            {self.came_field(
                "moisture",
                words.moisture_label().to_owned(),
                Some(words.moisture_hint().to_owned()),
                self.came_wrong(|wrong| matches!(wrong, Wrong::Moisture(_))),
                Some("%".to_owned()),
            )}
            {self.stored()}
            {self.came_field(
                "rod",
                words.rod_label().to_owned(),
                Some(words.rod_hint().to_owned()),
                self.came_wrong(|wrong| matches!(wrong, Wrong::Rod(_))),
                Some("°C".to_owned()),
            )}
            {self.came_choice("felt", words.rod_felt(), &FELT, |felt| English::default().felt(felt), none)}
        }
        .into_any()
    }

    /// What spoils it in store.
    fn stored(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let text = form.text("stored");
        let chosen = Signal::derive(move || {
            text.with(|text| {
                text.split(' ')
                    .filter_map(|word| of_word(&STORED, word))
                    .collect::<Vec<_>>()
            })
        });
        let choose = Callback::new(move |(bad, on)| {
            let kept: Vec<String> = STORED
                .iter()
                .filter(|(held, _)| {
                    let was = chosen.with_untracked(|chosen| chosen.contains(held));
                    if *held == bad { on } else { was }
                })
                .map(|(_, word)| (*word).to_owned())
                .collect();
            form.set("stored", kept.join(" "));
        });
        let offers = STORED
            .iter()
            .map(|(bad, _)| Offer::new(*bad, words.stored_badly(*bad)))
            .collect();
        view! { <Several legend=words.how_stored() offers=offers chosen=chosen on_choose=choose /> }
            .into_any()
    }
}
