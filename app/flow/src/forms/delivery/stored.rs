//! What is stored of what came, as the raw text of its fields.

use super::{BALES, PER, Per, STORED, Typed, word_of};
use crate::forms::left_of_lot::In;
use tussock_core::log::bodies::base::FeedWeight;
use tussock_core::log::bodies::{DeliveryV1, HeldV1, LotV1, PriceV1};
use tussock_core::units::LocalDate;

impl Typed {
    /// The fields of what is stored, for a form that changes it: the raw text of each by its name in a draft.
    pub fn of(body: &LotV1) -> Vec<(&'static str, String)> {
        let empty = DeliveryV1::empty();
        let delivery = body.delivery.as_deref().unwrap_or(&empty);
        let mut fields: Vec<(&'static str, String)> = Vec::new();
        let mut set = |name, text: String| {
            if !text.is_empty() {
                fields.push((name, text));
            }
        };
        match &delivery.bought {
            Some(HeldV1::Bales { tenths }) => {
                set("unit", In::Bales.word().to_owned());
                set("bought", tenths.bales().to_string());
            }
            Some(HeldV1::Weight { weight }) => {
                set("unit", In::Weight.word().to_owned());
                set("bought", weight.as_fed().to_kg().to_string());
            }
            None => {}
        }
        set("bale", word_of(&BALES, delivery.bale));
        set("bale-weights", listed(&delivery.bales));
        set("slices", listed(&delivery.slices));
        if let Some(moisture) = &delivery.moisture {
            set("moisture", moisture.value.digits().to_owned());
        }
        let day = |day: Option<LocalDate>| day.map(|day| day.to_string()).unwrap_or_default();
        set("baled-on", day(delivery.baled_on));
        set("bought-on", day(body.bought_on));
        let stored: Vec<String> = delivery
            .stored
            .iter()
            .map(|stored| word_of(&STORED, Some(*stored)))
            .collect();
        set("stored", stored.join(" "));
        if let Some(days) = delivery.lead_days {
            set("lead", days.get().to_string());
        }
        let (price, per) = match &body.price {
            Some(PriceV1::Bale { price, weight }) => {
                set("bale-said", weight.as_ref().map(one).unwrap_or_default());
                (Some(price), Some(Per::Bale))
            }
            Some(PriceV1::Tonne { price }) => (Some(price), Some(Per::Tonne)),
            None => (None, None),
        };
        if let Some(price) = price {
            set("price", price.typed());
            set("currency", price.currency.code());
        }
        set("per", word_of(&PER, per));
        fields
    }
}

fn one(weight: &FeedWeight) -> String {
    weight.g.as_fed().to_kg().to_string()
}

fn listed(weights: &[FeedWeight]) -> String {
    weights.iter().map(one).collect::<Vec<_>>().join(" ")
}
