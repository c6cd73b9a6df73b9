//! The slip from one ration to another, in English.

use super::English;
use super::stock::figure_of;
use crate::views::slip::{Change, Line, Of, Slip, Sum};
use crate::words::{BalanceWords, SlipWords, UnitWords};
use tussock_core::forage::Fed;
use tussock_core::units::Currency;

/// A cost that is not worth its smallest coin.
fn hardly(currency: Currency, less: bool) -> String {
    let way = if less { "less" } else { "more" };
    format!("under {} {way}", figure_of(1.0, currency))
}

impl SlipWords for English {
    fn slip_name(&self) -> &'static str {
        "What changes, now and proposed"
    }

    fn change(&self, change: Change) -> &'static str {
        match change {
            Change::Out => "out",
            Change::In => "in",
            Change::More => "more",
            Change::Less => "less",
            Change::Same => "same",
        }
    }

    fn slip_of(&self, of: &Of) -> String {
        match of {
            Of::Forage { name, fed } => match fed {
                Fed::Dry => name.clone(),
                Fed::Soaked => format!("{name}, soaked"),
            },
            Of::Food(food) => self.food_name(food),
        }
    }

    fn slip_amount(&self, line: &Line) -> String {
        let shown = |mass| match &line.of {
            Of::Forage { .. } => self.feed(mass),
            Of::Food(_) => self.bucket(mass),
        };
        let (from, to) = (shown(line.from), shown(line.to));
        match line.change {
            Change::Out => from,
            Change::In | Change::Same => to,
            Change::More | Change::Less => format!("{from} → {to}"),
        }
    }

    fn slip_cost(&self, line: &Line) -> String {
        let Some([from, to]) = line.cost else {
            return "no price".to_owned();
        };
        let by = to.minor - from.minor;
        let figure = figure_of(by.abs(), to.currency);
        let nothing = figure.chars().all(|c| matches!(c, '0' | '.'));
        match line.change {
            Change::Same => figure_of(to.minor, to.currency),
            _ if nothing && by.abs() > 0.0 => hardly(to.currency, by < 0.0),
            _ if nothing => "as before".to_owned(),
            _ if by < 0.0 => format!("{figure} less"),
            _ => format!("{figure} more"),
        }
    }

    fn slip_sum(&self, sum: Sum) -> String {
        let figure = |minor| figure_of(minor, sum.currency);
        format!(
            "{} → {} {}",
            figure(sum.now),
            figure(sum.then),
            sum.currency.code()
        )
    }

    fn slip_sum_of(&self) -> [&'static str; 2] {
        ["a day", "in 30 days"]
    }

    fn slip_sum_of_bought(&self) -> [&'static str; 2] {
        ["bought food a day", "bought food in 30 days"]
    }

    fn slip_note(&self, slip: &Slip) -> Option<String> {
        if slip.is_same() {
            return Some("Nothing changes.".to_owned());
        }
        if slip.a_day.is_some() {
            return None;
        }
        let lacking: Vec<String> = slip
            .lines
            .iter()
            .filter(|line| line.cost.is_none())
            .map(|line| self.slip_of(&line.of))
            .collect();
        let names: Vec<&str> = lacking.iter().map(String::as_str).collect();
        Some(if names.is_empty() {
            "What it costs is not known: the prices are not of one currency.".to_owned()
        } else {
            format!(
                "What it costs is not known: no price for {}.",
                self.list(&names)
            )
        })
    }
}
