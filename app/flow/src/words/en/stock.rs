//! The stock of hay in English.

use super::English;
use super::fields::small;
use super::numbers::{between, up_to};
use crate::forms::left_of_lot::{In, Wrong};
use crate::views::stock::{Eater, Since, Stock, StockRow, StorageNote, Unknown};
use crate::words::{ForageWords, LogWords, Said, StockWords, UnitWords};
use tussock_core::forage::published::{NET_WASTE, WEIGH_BALES, WEIGH_SLICES};
use tussock_core::forage::{
    CostBand, HeatVerdict, Held, Lasting, MoistureVerdict, NoStock, UseFrom,
};
use tussock_core::limits::Ends;
use tussock_core::units::show::fixed;
use tussock_core::units::{AsFed, Currency, LocalDate};

impl English {
    /// Feed of a stack: whole units, with its unit.
    pub(super) fn heap(&self, mass: AsFed) -> String {
        format!(
            "{} {}",
            self.feed_whole(mass),
            self.mass_unit(self.shown.mass)
        )
    }

    fn heap_between(&self, ends: Ends<AsFed>) -> String {
        let (low, high) = (self.feed_whole(ends.least), self.feed_whole(ends.most));
        if low == high {
            return self.heap(ends.likely);
        }
        format!("{}, between {low} and {high}", self.heap(ends.likely))
    }

    /// What is bought or counted: "120 bales", "4200 kg".
    pub(super) fn held(&self, held: Held) -> String {
        match held {
            Held::Bales(bales) => {
                let count = up_to(bales, 1);
                let noun = if count == "1" { "bale" } else { "bales" };
                format!("{count} {noun}")
            }
            Held::Weight(mass) => self.heap(mass),
        }
    }
}

/// Minor units as a price of something small, without the currency.
pub(super) fn figure_of(minor: f64, currency: Currency) -> String {
    let whole = currency.minor_in_whole();
    let decimals = if whole == 1 { 0 } else { 2 };
    fixed(minor / whole as f64, decimals)
}

/// The ends of such a price, with the currency.
fn price_ends(ends: Ends<f64>, currency: Currency) -> String {
    let figure = |minor| figure_of(minor, currency);
    let (low, high) = (figure(ends.least), figure(ends.most));
    let likely = format!("{} {}", figure(ends.likely), currency.code());
    if low == high {
        likely
    } else {
        format!("{likely}, between {low} and {high}")
    }
}

/// Whole days, down: a day that is not whole is not left.
fn days(value: f64) -> String {
    fixed(value.floor(), 0)
}

fn days_word(count: &str) -> String {
    let noun = if count == "1" { "day" } else { "days" };
    format!("{count} {noun}")
}

impl StockWords for English {
    fn days_left(&self, stock: &Stock) -> Option<String> {
        let lasting = stock.lasting.as_ref()?;
        Some(days_word(&days(lasting.days.likely)))
    }

    fn stock_line(&self, row: &StockRow) -> String {
        let mut parts = Vec::new();
        match row.stock.as_ref() {
            Some(stock) => {
                parts.push(match &stock.left {
                    Ok(left) => self.heap(left.mass.likely),
                    Err(Unknown::Stock(NoStock::BaleNotWeighed { bales })) => {
                        format!("{}, weight not known", self.held(Held::Bales(*bales)))
                    }
                    Err(_) => "stock not known".to_owned(),
                });
                if let Some(lasting) = &stock.lasting {
                    parts.push(if row.order_now {
                        "order now".to_owned()
                    } else {
                        format!("order by {}", self.day(lasting.order_by))
                    });
                }
                if let Some(cost) = &stock.cost {
                    let figure = figure_of(cost.per_kg_dry.likely, cost.currency);
                    parts.push(format!("{figure} a kg of dry matter"));
                }
            }
            None => parts.push("stock not known".to_owned()),
        }
        parts.push(match row.lot.verdict {
            Some(verdict) => format!("sugar {}", self.verdict(verdict)),
            None if row.lot.tested => "tested".to_owned(),
            None => "untested".to_owned(),
        });
        parts.push(small(&self.forage_class(row.lot.class)));
        parts.join(", ")
    }

    fn stock_head(&self) -> &'static str {
        "What is left"
    }

    fn left_line(&self, stock: &Stock) -> String {
        match &stock.left {
            Ok(left) => {
                let mass = self.heap_between(left.mass);
                match left.bales {
                    Some(bales) => {
                        format!("{mass}: about {}", self.held(Held::Bales(bales.round())))
                    }
                    None => mass,
                }
            }
            Err(_) => "Not known".to_owned(),
        }
    }

    fn left_unknown(&self, why: Unknown) -> String {
        match why {
            Unknown::Stock(NoStock::NothingSaid) => {
                "Nobody said how much there was: count what is left, or write down what was bought"
                    .to_owned()
            }
            Unknown::Stock(NoStock::BaleNotWeighed { bales }) => format!(
                "{}, and no bale was weighed: weigh {}",
                self.held(Held::Bales(bales)),
                *WEIGH_BALES
            ),
            Unknown::TooLongAgo => {
                "It was bought or counted too long ago to add up what went since: count what is left"
                    .to_owned()
            }
        }
    }

    fn went_line(&self, stock: &Stock) -> String {
        let there = match (stock.since, stock.start) {
            (Some(Since::Counted(day)), Some(held)) => {
                format!("Counted on {}: {}", self.day(day), self.held(held))
            }
            (Some(Since::Bought), Some(held)) => format!("Bought: {}", self.held(held)),
            _ => "How much there was is not known".to_owned(),
        };
        let went = match stock.out.seen_part() {
            None => "nothing weighed out since".to_owned(),
            Some(seen) => format!(
                "{} weighed out since, {} of it read off the scale and the rest taken as planned",
                self.heap(stock.out.total()),
                self.percent(seen)
            ),
        };
        format!("{there}; {went}")
    }

    fn count_because(&self, stock: &Stock) -> Vec<String> {
        let mut because = Vec::new();
        if stock.left.as_ref().is_ok_and(|left| left.overdrawn) {
            because.push(
                "More was weighed out than there can have been: count what is left".to_owned(),
            );
        }
        if 0 < stock.out.not_known {
            because.push(format!(
                "Nobody knows how much was in {}: count what is left",
                self.count(stock.out.not_known, "net", "nets")
            ));
        }
        if 0 < stock.not_logged {
            because.push(format!(
                "{} without a net written down: count what is left",
                days_word(&stock.not_logged.to_string())
            ));
        }
        because
    }

    fn bale_line(&self, stock: &Stock) -> String {
        let Some(bale) = &stock.bale else {
            return format!("What a bale weighs is not known: weigh {}", *WEIGH_BALES);
        };
        let weighed = match bale.weighed {
            0 => "as it was said".to_owned(),
            count => format!("{count} weighed"),
        };
        let spread = if bale.usual_spread {
            format!(
                "one bale lies from another by about {}, a usual spread from memory",
                self.feed(bale.spread)
            )
        } else {
            format!(
                "one bale lies from another by about {}",
                self.feed(bale.spread)
            )
        };
        let more = if bale.weighed < *WEIGH_BALES {
            format!("; weigh {} to know it better", *WEIGH_BALES)
        } else {
            String::new()
        };
        format!(
            "A bale weighs {}, give or take {} ({weighed}); {spread}{more}",
            self.feed(bale.value),
            self.feed(bale.error)
        )
    }

    fn slice_line(&self, stock: &Stock) -> String {
        let region = self.shown.region;
        match &stock.slice {
            None => format!(
                "What a {} weighs is not known: weigh {} once",
                region.slice, *WEIGH_SLICES
            ),
            Some(sampled) => {
                let spread = match sampled.spread {
                    Some(spread) => {
                        format!("; one lies from another by about {}", self.feed(spread))
                    }
                    None => String::new(),
                };
                format!(
                    "A {} weighs {} ({} weighed){spread}",
                    region.slice,
                    self.feed(sampled.mean),
                    sampled.count
                )
            }
        }
    }

    fn lasts_line(&self, stock: &Stock) -> String {
        let Some(used) = &stock.a_day else {
            return "Nothing goes of it in a day".to_owned();
        };
        let by = match used.from {
            UseFrom::Plans => "by the plans".to_owned(),
            UseFrom::WeighedOut { days } => {
                format!("weighed out over {}", days_word(&days.to_string()))
            }
        };
        let a_day = format!("{} a day {by}", self.feed(used.a_day));
        match &stock.lasting {
            None => format!("{a_day}; how long it lasts is not known"),
            Some(lasting) => {
                let likely = days(lasting.days.likely);
                let ends = between(&days(lasting.days.least), &days(lasting.days.most), "and");
                let band = if ends == likely {
                    String::new()
                } else {
                    format!(", between {ends}")
                };
                format!("Lasts {}{band}, at {a_day}", days_word(&likely))
            }
        }
    }

    fn order_line(&self, lasting: &Lasting, today: LocalDate) -> String {
        let lead = days_word(&lasting.lead_days.to_string());
        let whose = if lasting.lead_said {
            String::new()
        } else {
            ", a default of ours".to_owned()
        };
        let when = if lasting.order_by <= today {
            "Order now".to_owned()
        } else {
            format!("Order by {}", self.day(lasting.order_by))
        };
        format!(
            "{when}: there may be too little from {}, and delivery takes {lead}{whose}",
            self.day(lasting.runs_out)
        )
    }

    fn cost_line(&self, cost: &CostBand) -> String {
        format!(
            "{} a kg of dry matter eaten; {} a Mcal",
            price_ends(cost.per_kg_dry, cost.currency),
            price_ends(cost.per_mcal, cost.currency)
        )
    }

    fn cost_by(&self) -> String {
        let [least, most] = *NET_WASTE;
        format!(
            "After waste of {} to {} from nets, from memory, and what soaking takes.",
            up_to(least * 100.0, 0),
            self.percent(most)
        )
    }

    fn cost_unknown(&self, priced: bool) -> &'static str {
        if priced {
            "Cost not known: it needs what a bale weighs, and the dry matter"
        } else {
            "Cost not known: no price is written down"
        }
    }

    fn who_eats_it(&self) -> &'static str {
        "Who eats it"
    }

    fn nobody_eats_it(&self) -> &'static str {
        "No plan feeds it today"
    }

    fn eater_line(&self, eater: &Eater) -> String {
        if AsFed::ZERO < eater.soaked {
            format!("{} of it soaked", self.feed(eater.soaked))
        } else {
            "as it comes".to_owned()
        }
    }

    fn eater_a_day(&self, eater: &Eater) -> String {
        format!("{} a day", self.feed(eater.a_day))
    }

    fn storage_note(&self, note: &StorageNote) -> Said {
        super::store::note(self, note)
    }

    fn storage_cautions(&self, note: &StorageNote) -> bool {
        match note {
            StorageNote::Moisture { verdict, .. } => *verdict != MoistureVerdict::Dry,
            StorageNote::Heat { verdict, .. } => *verdict != HeatVerdict::Normal,
            StorageNote::WatchHeat { .. } => false,
            StorageNote::Stored(_) => true,
        }
    }

    fn count_what_is_left(&self) -> &'static str {
        "Count what is left"
    }
    fn compare_hays(&self) -> &'static str {
        "Compare with another"
    }
    fn hay_runs_out(&self) -> &'static str {
        "It runs out tonight"
    }
    fn how_much_is_left(&self, name: &str) -> String {
        format!("How much is left of {name}?")
    }
    fn counted_in(&self) -> &'static str {
        "Counted in"
    }
    fn amount_in(&self, of: In) -> &'static str {
        match of {
            In::Bales => "Bales",
            In::Weight => "Kilograms",
        }
    }
    fn left_label(&self) -> &'static str {
        "So much is left"
    }
    fn left_hint(&self) -> &'static str {
        "Half a bale counts: 31.5. Nothing left is 0."
    }
    fn count_starts_anew(&self) -> &'static str {
        "From this count on, only what is weighed out later goes off."
    }
    fn save_count(&self) -> &'static str {
        "Save the count"
    }
    fn amount_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoUnit => "Choose bales or kilograms".to_owned(),
            Wrong::Parse(error) => self.parse_error(error),
            Wrong::Log(error) => self.log_error(error),
        }
    }
}
