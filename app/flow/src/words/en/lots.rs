//! Lots beside each other in English.

use super::English;
use super::numbers::up_to;
use super::stock::figure_of;
use crate::forms::open_lot::Refused;
use crate::views::changeover::{Changeover, ForThem, Other};
use crate::views::compare::{Compared, Pair};
use crate::views::tonight::{ForOne, Night};
use crate::words::{ForageWords, LogWords, LotsWords, Said, StockWords, UnitWords};
use tussock_core::forage::{Comparison, NotInPlace, Side, Tonight};
use tussock_core::units::AsFed;

impl LotsWords for English {
    fn open_another_hay(&self) -> &'static str {
        "Open another hay"
    }
    fn leave_this_hay(&self) -> &'static str {
        "Stay with this hay"
    }
    fn other_hays(&self) -> &'static str {
        "Other hay here"
    }
    fn no_other_hay(&self) -> &'static str {
        "No other hay is written down"
    }
    fn open_hay(&self, name: &str) -> String {
        format!("Open {name}")
    }
    fn other_line(&self, other: &Other) -> String {
        match other.may {
            Ok(()) => self.sugar_for_them(&other.sugar),
            Err(why) => self.not_in_place(why),
        }
    }
    fn not_in_place(&self, why: NotInPlace) -> String {
        match why {
            NotInPlace::Same => "This one is open".to_owned(),
            NotInPlace::OldDryMatterNotKnown | NotInPlace::NewDryMatterNotKnown => {
                "Dry matter not known: make a new plan once it is".to_owned()
            }
            NotInPlace::OtherKind { old, new } => format!(
                "{} in place of {}: make a new plan",
                self.forage_kind(new),
                super::fields::small(self.forage_kind(old))
            ),
            NotInPlace::Lucerne => format!(
                "{} is only a part of the forage: make a new plan",
                super::fields::capital(self.shown.region.lucerne)
            ),
            NotInPlace::Discard(fault) => format!("Do not feed it: {}", self.fault(fault)),
        }
    }
    fn not_opened(&self, why: &Refused) -> String {
        match why {
            Refused::NotThere => "This hay is not here".to_owned(),
            Refused::NewPlan(why) => self.not_in_place(*why),
            Refused::Log(error) => self.log_error(error),
        }
    }
    fn change_over_slowly(&self, [least, better]: [i64; 2]) -> String {
        format!(
            "Every net of this hay is weighed from the one you open, with as much dry matter. Change over {least} to {better} days (common practice): mix the two while the old one lasts."
        )
    }
    fn in_place_of(&self, changeover: &Changeover) -> Said {
        let [least, better] = changeover.days;
        Said::because(
            format!(
                "From {} since {}, in place of {}: change over two to three weeks (common practice), review the plan",
                changeover.name,
                self.day(changeover.since),
                changeover.in_place_of
            ),
            format!(
                "The plan stays as it was made. Its nets hold as much dry matter of the new hay, never less than the least the old one may have held. Over {least} days, better {better}."
            ),
        )
    }
    fn sugar_in_place(&self, changeover: &Changeover) -> Option<String> {
        changeover.sugar.warns().then(|| {
            format!(
                "{}: {}",
                changeover.name,
                self.sugar_for_them(&changeover.sugar)
            )
        })
    }

    fn compare_two(&self) -> &'static str {
        "Compare two lots"
    }
    fn which_two(&self) -> &'static str {
        "Which two?"
    }
    fn one_hay(&self) -> &'static str {
        "This one"
    }
    fn other_hay(&self) -> &'static str {
        "With this one"
    }
    fn not_two_hays(&self) -> &'static str {
        "There are not two lots of hay yet"
    }
    fn compared(&self, pair: &Pair) -> Said {
        let [first, second] = &pair.lots;
        let of = |side| match side {
            Side::First => (first, second),
            Side::Second => (second, first),
        };
        let price = |minor: f64, lot: &Compared| match &lot.stock.cost {
            Some(cost) => format!(
                "{} {}",
                figure_of(minor, cost.currency),
                cost.currency.code()
            ),
            None => String::new(),
        };
        match &pair.outcome {
            Err(error) => Said::because(
                "Prices in two currencies cannot be compared",
                format!("{}.", self.forage_error(error)),
            ),
            Ok(Comparison::BothOver) => Said::because(
                "Neither: both are over the limit",
                "Judged for the strictest animal here. No price makes up for it.",
            ),
            Ok(Comparison::BySugar {
                better,
                other_over,
                dearer_by,
            }) => {
                let (better, other) = of(*better);
                let why = if *other_over {
                    format!(
                        "{} is over the limit for the strictest animal here.",
                        other.name
                    )
                } else {
                    format!("{} stands worse on sugar.", other.name)
                };
                let cost = match dearer_by {
                    None => "What one of them costs is not known.".to_owned(),
                    Some(by) if 0.0 < *by => format!(
                        "It costs about {} more a kg of dry matter eaten.",
                        price(*by, better)
                    ),
                    Some(by) => format!(
                        "It is also cheaper, by about {} a kg of dry matter eaten.",
                        price(by.abs(), better)
                    ),
                };
                Said::because(
                    format!("{}, by its sugar", better.name),
                    format!("{why} {cost}"),
                )
            }
            Ok(Comparison::ByCost {
                cheaper,
                by,
                surely,
            }) => {
                let (cheaper, _) = of(*cheaper);
                let sure = if *surely {
                    "Sugar does not tell them apart."
                } else {
                    "Sugar does not tell them apart, and the prices overlap: it may be the other way round."
                };
                Said::because(
                    format!("{} is cheaper as it is eaten", cheaper.name),
                    format!(
                        "By about {} a kg of dry matter. {sure}",
                        price(*by, cheaper)
                    ),
                )
            }
            Ok(Comparison::Alike) => Said::plain("Nothing tells them apart".to_owned()),
            Ok(Comparison::CostNotKnown) => Said::because(
                "Sugar does not tell them apart, and a cost is not known",
                "A cost needs a price, the weight of a bale and the dry matter.",
            ),
        }
    }
    fn compared_sugar(&self, lot: &Compared) -> String {
        match lot.verdict() {
            Some(verdict) => self.verdict(verdict),
            None => "no animal here needs a limit".to_owned(),
        }
    }
    fn compared_cost(&self, lot: &Compared) -> String {
        match &lot.stock.cost {
            Some(cost) => self.cost_line(cost),
            None => "not known".to_owned(),
        }
    }
    fn compared_stock(&self, lot: &Compared) -> String {
        let left = self.left_line(&lot.stock);
        match self.days_left(&lot.stock) {
            Some(days) => format!("{days}: {left}"),
            None => super::fields::small(&left),
        }
    }
    fn compared_heads(&self) -> [&'static str; 3] {
        ["Sugar", "Cost as eaten", "Left"]
    }

    fn night_sentence(&self, night: &Night) -> String {
        format!("Without {}: never a night with nothing", night.lot)
    }
    fn night_figures(&self, night: &Night) -> &'static str {
        if night.missing_now {
            "For the nets of today that are not filled yet."
        } else {
            "Every net of today is filled. This is for a usual night."
        }
    }
    fn night_for_nobody(&self) -> &'static str {
        "No plan feeds it today: nothing is missing"
    }
    fn missing_tonight(&self, ways: &Tonight) -> String {
        format!("{} missing", self.dry(ways.missing))
    }
    fn night_not_known(&self) -> &'static str {
        "Not known without its weight and the dry matter of its hay: give hay of a neighbour, as much as it had, and ring your vet if there is none"
    }
    fn night_ways(&self, one: &ForOne, ways: &Tonight) -> Vec<(String, String, String)> {
        let still = |missing: tussock_core::units::DryMatter| {
            if missing.to_kg() < STILL_KG {
                String::new()
            } else {
                format!(
                    " {} are missing still: join it with another way.",
                    self.dry(missing)
                )
            }
        };
        let pulp = &ways.pulp;
        let straw = &ways.straw;
        let straw_says = if straw.weight <= AsFed::ZERO {
            "None with poor teeth.".to_owned()
        } else {
            let donkey = if one.kind.is_donkey() {
                " A donkey with good teeth may have half to three quarters of its forage as straw."
            } else {
                ""
            };
            format!(
                "Clean cereal straw without ears, water always; up to {} % of the forage of its day. New to it: in small heaps.{donkey}{}",
                up_to(straw.cap.most.to_percent(), 0),
                still(straw.still_missing)
            )
        };
        let sugar = if ways.borrowed.not_proven {
            "Untested: its sugar is not proven. Soaking lowers it and proves nothing."
        } else {
            "Untested."
        };
        vec![
            (
                "A neighbour's hay".to_owned(),
                self.feed(ways.borrowed.weight),
                format!("As it comes, weighed dry. {sugar}"),
            ),
            (
                "Beet pulp, no molasses".to_owned(),
                format!("{} in {} feeds", self.feed(pulp.dry_weight), pulp.feeds),
                format!(
                    "Dry weight, {} each. Soak it as its bag says and never feed it dry.{}",
                    self.feed(pulp.each),
                    still(pulp.still_missing)
                ),
            ),
            ("Straw".to_owned(), self.feed(straw.weight), straw_says),
        ]
    }
    fn night_rules(&self) -> Vec<&'static str> {
        vec![
            "Spread what there is over the night: the longest wait is what harms.",
            "One that leaves it untouched, or is dull: ring the vet. A pony, a miniature or a donkey now.",
            "Order hay today, and change over slowly when it comes.",
        ]
    }
    fn to_the_hay(&self) -> &'static str {
        "Back to the hay"
    }
}

/// What is not worth saying that it is missing still.
const STILL_KG: f64 = 0.05;

impl English {
    /// The sugar of a lot for those who eat it, or would.
    fn sugar_for_them(&self, sugar: &ForThem) -> String {
        let tested = if sugar.tested { "tested" } else { "untested" };
        match sugar.verdict {
            Some(verdict) if sugar.warns() => format!(
                "{tested}, sugar {} for those who eat it: a new plan says whether to soak it",
                self.verdict(verdict)
            ),
            Some(verdict) => format!("{tested}, sugar {}", self.verdict(verdict)),
            None => format!("{tested}, no sugar limit needed"),
        }
    }
}
