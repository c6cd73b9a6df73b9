//! What came of a lot, in English.

use super::English;
use crate::forms::delivery::{Bad, Felt, Per, Wrong};
use crate::words::{DeliveryWords, ForageWords, LogWords, StockWords, UnitWords};
use tussock_core::forage::published::{LEAD_DAYS, WEIGH_BALES, WEIGH_SLICES};
use tussock_core::forage::{BaleKind, StoredBadly};

impl DeliveryWords for English {
    fn what_came(&self) -> &'static str {
        "What came"
    }
    fn what_came_hint(&self) -> &'static str {
        "Leave out what nobody knows: it stays not known."
    }
    fn bought_in(&self) -> &'static str {
        "Bought in"
    }
    fn bought_label(&self) -> &'static str {
        "How much was bought"
    }
    fn how_baled(&self) -> &'static str {
        "How is it baled?"
    }
    fn bale_kind(&self, kind: BaleKind) -> &'static str {
        match kind {
            BaleKind::SmallSquare => "Small bales",
            BaleKind::Round => "Round bales",
            BaleKind::LargeSquare => "Large square bales",
        }
    }
    fn bales_weighed_label(&self) -> &'static str {
        "Bales that were weighed"
    }
    fn bales_weighed_hint(&self) -> String {
        format!(
            "Weigh {}, one after the other with a blank between: 18.4 19.1 18.8",
            *WEIGH_BALES
        )
    }
    fn bale_said_label(&self) -> &'static str {
        "A bale is said to weigh"
    }
    fn bale_said_hint(&self) -> &'static str {
        "Stands in until bales are weighed."
    }
    fn slices_weighed_label(&self) -> String {
        format!(
            "{} that were weighed",
            super::fields::capital(self.shown.region.slices)
        )
    }
    fn slices_weighed_hint(&self) -> String {
        format!(
            "Weigh {} once a lot, with a blank between each.",
            *WEIGH_SLICES
        )
    }
    fn price_label(&self) -> &'static str {
        "Price"
    }
    fn price_per(&self) -> &'static str {
        "The price is for"
    }
    fn per(&self, per: Per) -> &'static str {
        match per {
            Per::Bale => "A bale",
            Per::Tonne => "A tonne",
        }
    }
    fn currency_label(&self) -> &'static str {
        "Currency"
    }
    fn currency_hint(&self) -> &'static str {
        "Three letters, like GBP."
    }
    fn bought_on_label(&self) -> &'static str {
        "Bought on"
    }
    fn baled_on_label(&self) -> &'static str {
        "Baled on"
    }
    fn day_hint(&self) -> &'static str {
        "Like 5.5.2026."
    }
    fn lead_label(&self) -> &'static str {
        "Days from order to delivery"
    }
    fn lead_hint(&self) -> String {
        format!("{} days stand in, a default of ours.", *LEAD_DAYS)
    }
    fn days_unit(&self) -> &'static str {
        "days"
    }
    fn in_store(&self) -> &'static str {
        "In store"
    }
    fn moisture_label(&self) -> &'static str {
        "Moisture when it came"
    }
    fn moisture_hint(&self) -> &'static str {
        "From a moisture meter. It dries in the stack: this is not its dry matter today."
    }
    fn how_stored(&self) -> &'static str {
        "What is wrong with how it is stored?"
    }
    fn stored_badly(&self, bad: StoredBadly) -> &'static str {
        match bad {
            StoredBadly::OnGround => "On the ground",
            StoredBadly::Uncovered => "Not covered",
            StoredBadly::NoAir => "No air through it",
        }
    }
    fn rod_label(&self) -> &'static str {
        "Thermometer in the stack, today"
    }
    fn rod_hint(&self) -> &'static str {
        "In the middle of the stack. With an F for Fahrenheit."
    }
    fn rod_felt(&self) -> &'static str {
        "Or an iron rod, after some hours in the stack"
    }
    fn felt(&self, felt: Felt) -> &'static str {
        match felt {
            Felt::Held => "Can be held",
            Felt::TooHot => "Too hot to hold",
        }
    }
    fn delivery_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Bought(wrong) => self.amount_wrong(wrong),
            Wrong::Bale(bad)
            | Wrong::Slice(bad)
            | Wrong::Price(bad)
            | Wrong::Moisture(bad)
            | Wrong::Lead(bad)
            | Wrong::Rod(bad) => match bad {
                Bad::Parse(error) => self.parse_error(error),
                Bad::Forage(error) => self.forage_error(error),
                Bad::Log(error) => self.log_error(error),
            },
            Wrong::NoPer => "Choose what the price is for".to_owned(),
            Wrong::Currency(error) => self.money_error(error),
            Wrong::BoughtOn | Wrong::BaledOn => {
                "Type a day that has been, like 5.5.2026".to_owned()
            }
        }
    }
}
