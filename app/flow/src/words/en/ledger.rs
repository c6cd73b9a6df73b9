//! What was really eaten, in English.

use super::English;
use super::numbers::between;
use crate::views::ledger::{Day, Grass, Week};
use crate::words::{LedgerWords, UnitWords};
use tussock_core::day::{LevelEaten, Shares, Sum, Totals};
use tussock_core::units::show::fixed;
use tussock_core::units::{DryMatter, PartOfBody};

/// Kilograms with a tenth, and "at least" before what is not whole.
fn sum_kg(sum: &Sum) -> String {
    let kg = fixed(sum.dry.likely.to_kg(), 1);
    if sum.at_least {
        format!("at least {kg}")
    } else {
        kg
    }
}

fn row_of(head: String, totals: &Totals) -> Vec<String> {
    vec![
        head,
        sum_kg(&totals.offered),
        sum_kg(&totals.left),
        sum_kg(&totals.eaten),
        totals
            .planned
            .map_or_else(|| "no plan".to_owned(), |dry| fixed(dry.to_kg(), 1)),
    ]
}

impl LedgerWords for English {
    fn what_was_eaten(&self) -> &'static str {
        "What was really eaten"
    }
    fn eaten_in_a_week(&self, week: &Week) -> String {
        if week.is_blank {
            return format!("{}: nothing is planned or logged yet", week.name);
        }
        let days = self.count(week.days.len(), "day", "days");
        match week.totals.offered_known {
            None => return format!("{}: nothing was due or logged yet", week.name),
            Some(shares) if shares.not_known >= 1.0 => {
                return format!("What {} ate is not known: nobody answered", week.name);
            }
            Some(_) => {}
        }
        format!(
            "{} ate {} in {days}",
            week.name,
            self.ledger_sum(&week.totals.eaten)
        )
    }
    fn ledger_sum(&self, sum: &Sum) -> String {
        let amount = if sum.at_least {
            format!("at least {}", self.dry(sum.dry.likely))
        } else {
            format!("about {}", self.dry(sum.dry.likely))
        };
        let ends = self.dry_ends(sum.dry);
        if self.dry(sum.dry.least) == self.dry(sum.dry.most) || sum.at_least {
            amount
        } else {
            format!("{amount}, {}", ends.replace(" of dry matter", ""))
        }
    }
    fn ledger_plan(&self, week: &Week) -> String {
        let to_come: DryMatter = week.days.iter().map(|day| day.to_come).sum();
        match week.totals.planned {
            None => "No plan held on these days.".to_owned(),
            Some(planned) if DryMatter::ZERO < to_come => format!(
                "The plan meant {} so far; {} of today is still to come.",
                self.dry(planned),
                self.dry(to_come)
            ),
            Some(planned) => format!("The plan meant {}.", self.dry(planned)),
        }
    }
    fn level_eaten(&self, level: &LevelEaten) -> String {
        let figure = |part: PartOfBody| fixed(part.to_percent(), 2);
        let days = self.count(
            level.days as usize,
            "day that is over",
            "days that are over",
        );
        let at_least = if level.at_least { "At least " } else { "" };
        let ends = if level.at_least {
            figure(level.level.likely)
        } else {
            between(&figure(level.level.least), &figure(level.level.most), "to")
        };
        format!("{at_least}{ends} % of its weight a day, over {days}")
    }
    fn ledger_shares(&self, shares: &Shares) -> String {
        format!(
            "Offered: {} seen, {} assumed, {} not known.",
            self.percent(shares.seen),
            self.percent(shares.assumed),
            self.percent(shares.not_known)
        )
    }
    fn ledger_left_shares(&self, shares: &Shares) -> String {
        format!(
            "Left: looked at for {}; nothing left is assumed for {}; not known for {}.",
            self.percent(shares.seen),
            self.percent(shares.assumed),
            self.percent(shares.not_known)
        )
    }
    fn ledger_days(&self) -> &'static str {
        "Day by day"
    }
    fn ledger_day(&self, day: &Day) -> String {
        if day.is_blank && !day.runs {
            return "not known".to_owned();
        }
        if day
            .totals
            .offered_known
            .is_some_and(|shares| shares.not_known >= 1.0)
        {
            return "not known".to_owned();
        }
        format!("{} kg", sum_kg(&day.totals.eaten))
    }
    fn ledger_day_known(&self, day: &Day) -> String {
        let plan = match day.totals.planned {
            Some(planned) => format!("plan {} kg", fixed(planned.to_kg(), 1)),
            None => "no plan".to_owned(),
        };
        let known = match day.totals.offered_known {
            None if day.runs => "nothing yet".to_owned(),
            None => "nobody said anything".to_owned(),
            Some(shares) if shares.not_known >= 1.0 => "nobody answered".to_owned(),
            Some(shares) => format!(
                "{} seen, {} assumed, {} not known",
                self.percent(shares.seen),
                self.percent(shares.assumed),
                self.percent(shares.not_known)
            ),
        };
        let known = format!("{known}{}", self.grass_of_day(day));
        if DryMatter::ZERO < day.to_come {
            let to_come = fixed(day.to_come.to_kg(), 1);
            format!("{plan} so far, {to_come} kg to come; {known}")
        } else {
            format!("{plan}; {known}")
        }
    }
    fn ledger_grass(&self, week: &Week) -> String {
        let grass = week.totals.grass.dry;
        let more = match week.grass {
            Grass::NotLogged => {
                return "Grass is not known until it is logged: it stands in none of these sums."
                    .to_owned();
            }
            Grass::NotKnown => {
                return "How much grass it ate is not known: that takes when it went out, when it came in and its weight."
                    .to_owned();
            }
            Grass::Known if grass.most <= DryMatter::ZERO => {
                return "It was not at grass on these days.".to_owned();
            }
            Grass::Known => "",
            Grass::InPart => {
                " Grass that nobody wrote down, or that it is on now, is in none of it."
            }
        };
        format!(
            "Grass is in these sums by a model: {}, likely {}. Nobody weighed it.{more}",
            self.dry_ends(grass),
            self.dry(grass.likely)
        )
    }
    fn ledger_at_least_why(&self) -> &'static str {
        "Some of it nobody answered for. It is not known, so the sums say at least."
    }
    fn ledger_table(&self) -> &'static str {
        "Dry matter in kg, after soaking"
    }
    fn ledger_columns(&self) -> [&'static str; 5] {
        ["Day", "Offered", "Left", "Eaten", "Plan"]
    }
    fn ledger_row(&self, day: &Day) -> Vec<String> {
        let mut row = row_of(self.day(day.day), &day.totals);
        if day.is_blank && !day.runs {
            for cell in row.iter_mut().skip(1).take(3) {
                "not known".clone_into(cell);
            }
        }
        row
    }
    fn ledger_week_row(&self, week: &Week) -> Vec<String> {
        row_of("Together".to_owned(), &week.totals)
    }
    fn ledger_to_the_plan(&self) -> &'static str {
        "See the plan"
    }
    fn ledger_to_the_group(&self) -> &'static str {
        "See the group"
    }
}

impl English {
    /// The grass of a day, after what is known of the rest; nothing where none was logged.
    fn grass_of_day(&self, day: &Day) -> String {
        let grass = day.totals.grass.dry;
        let ends = || self.dry_ends(grass).replace(" of dry matter", "");
        match day.grass {
            Grass::NotLogged => String::new(),
            Grass::NotKnown => "; grass not known".to_owned(),
            Grass::Known if grass.most <= DryMatter::ZERO => "; not at grass".to_owned(),
            Grass::Known => format!("; grass {} by a model", ends()),
            Grass::InPart => {
                format!("; grass {} by a model, and some that is not known", ends())
            }
        }
    }
}
