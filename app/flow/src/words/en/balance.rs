//! A ration against what is needed, in English.

use super::English;
use super::numbers::percent_above_nothing;
use super::stock::figure_of;
use crate::views::balance::{Balance, EnergyLine, EnergyStands, Judged, Look, NutrientRow};
use crate::words::{BalanceWords, ForageWords, LimitsWords, RationWords, Said, UnitWords};
use tussock_core::forage::Fed;
use tussock_core::limits::Nutrient;
use tussock_core::log::{DayRation, GivenBy, GivenFood, GivenForage};
use tussock_core::ration::{Food, Standing};

impl English {
    /// In how much of the ration something is not known; `None` where all is known.
    pub(super) fn not_known_of(unknown: f64) -> Option<String> {
        (unknown > 0.0).then(|| {
            format!(
                "not known in {} of the ration",
                percent_above_nothing(unknown)
            )
        })
    }

    /// The same beside a name, short.
    fn stands_not_known(unknown: f64) -> String {
        if unknown > 0.0 && unknown < 1.0 {
            format!("not known in {} of it", percent_above_nothing(unknown))
        } else {
            "not known".to_owned()
        }
    }
}

impl BalanceWords for English {
    fn a_day(&self) -> &'static str {
        "a day"
    }

    fn ration_against_needs(&self) -> &'static str {
        "The ration against its needs"
    }

    fn balance_sentence(&self, balance: &Balance) -> String {
        let counts = balance.counts();
        if balance.rows.is_empty() {
            return self.needs_not_reckoned().to_owned();
        }
        if counts.all_within() {
            return "Everything within".to_owned();
        }
        if counts.over == 0 && counts.short == 0 {
            return format!("Nothing over or short, {} not known", counts.not_known);
        }
        [
            (counts.over, Look::Over),
            (counts.short, Look::Short),
            (counts.not_known, Look::NotKnown),
        ]
        .into_iter()
        .filter(|(count, _)| 0 < *count)
        .map(|(count, look)| format!("{count} {}", self.look(look)))
        .collect::<Vec<_>>()
        .join(", ")
    }

    fn look(&self, look: Look) -> &'static str {
        match look {
            Look::Over => "over",
            Look::Short => "short",
            Look::NotKnown => "not known",
            Look::Remark => "worth a look",
            Look::Within => "within",
            Look::Told => "not judged",
        }
    }

    fn what_it_is_given(&self) -> &'static str {
        "What it is given"
    }

    fn given_by(&self, by: GivenBy) -> String {
        match by {
            GivenBy::Plan { from } => format!("By the plan in use since {}", self.day(from)),
            GivenBy::Draft => "No plan is in use: this is what today's would give".to_owned(),
        }
    }

    fn food_name(&self, food: &Food) -> String {
        match food.profile {
            _ if !food.name.is_empty() => food.name.clone(),
            Some(profile) => self.typical_food(profile).to_owned(),
            None => self.food_class(food.class).to_owned(),
        }
    }

    fn given_forage(&self, given: &GivenForage) -> String {
        let class = self.forage_class(given.class);
        let fed = match given.fed {
            Fed::Dry => "",
            Fed::Soaked => ", soaked, weighed before",
        };
        let tested = if given.tested { "tested" } else { "not tested" };
        format!("{class}{fed}, {tested}")
    }

    fn given_food(&self, given: &GivenFood) -> String {
        let class = self.food_class(given.of.food.class);
        if given.of.food.typical {
            format!("{class}; typical numbers, no label")
        } else {
            class.to_owned()
        }
    }

    fn ration_costs(&self, ration: &DayRation) -> String {
        ration.cost().map_or_else(
            || "What it costs a day is not known: a price is missing".to_owned(),
            |cost| {
                let figure = figure_of(cost.minor, cost.currency);
                format!("It costs {figure} {} a day", cost.currency.code())
            },
        )
    }

    fn in_buckets(&self, ration: &DayRation) -> Option<String> {
        let count = usize::try_from(ration.buckets()).unwrap_or(1);
        (!ration.foods.is_empty()).then(|| match count {
            1 => "Its foods are reckoned as one bucket".to_owned(),
            _ => format!("Its foods are reckoned as {count} buckets, shared evenly"),
        })
    }

    fn only_what_is_written_down(&self) -> &'static str {
        "Only this is counted. Grass, treats and licks beside it are not."
    }

    fn row_stands(&self, row: &NutrientRow) -> String {
        match row.is.standing {
            Standing::Within if row.is.look() == Look::NotKnown => {
                "need met; whether too much is not known".to_owned()
            }
            Standing::Within => self.look(Look::Within).to_owned(),
            Standing::Short { by } => self.short_by(row.nutrient, by),
            Standing::Over { .. } => row
                .is
                .supplied
                .zip(row.is.ceiling)
                .and_then(|(supplied, most)| supplied.plus(most.scaled(-1.0)))
                .map_or_else(
                    || self.look(Look::Over).to_owned(),
                    |by| format!("over by {}", self.amount(row.nutrient, by)),
                ),
            Standing::NotKnown => Self::stands_not_known(row.is.unknown),
        }
    }

    fn row_has(&self, row: &NutrientRow) -> String {
        match (row.is.supplied, row.is.ceiling) {
            (None, _) => "not known".to_owned(),
            (Some(supplied), ceiling) => {
                let least = if row.is.unknown > 0.0 {
                    "at least "
                } else {
                    ""
                };
                // Beside the bound that decides, so that the figure never contradicts the word.
                let near = ceiling.filter(|_| supplied.times(row.need) > Some(1.0));
                let bound = near.unwrap_or(row.need);
                format!(
                    "{least}{}",
                    self.amount_beside(row.nutrient, supplied, bound)
                )
            }
        }
    }

    fn row_needs(&self, row: &NutrientRow) -> String {
        self.amount(row.nutrient, row.need)
    }

    fn row_ceiling(&self, row: &NutrientRow) -> String {
        row.is.ceiling.map_or_else(
            || "none published".to_owned(),
            |most| self.amount(row.nutrient, most),
        )
    }

    fn row_cord(&self, row: &NutrientRow) -> String {
        let before = row
            .was
            .and_then(|was| was.supplied)
            .map_or_else(String::new, |was| {
                format!(" It was {}.", self.amount(row.nutrient, was))
            });
        format!(
            "{}: {}. Has {}, need {}, ceiling {}.{before}",
            self.nutrient(row.nutrient),
            self.row_stands(row),
            self.row_has(row),
            self.row_needs(row),
            self.row_ceiling(row)
        )
    }

    fn no_cord(&self) -> &'static str {
        "Not drawn: its ceiling is not above its need"
    }

    fn energy_name(&self) -> &'static str {
        "Energy"
    }

    fn energy_stands(&self, line: &EnergyLine) -> String {
        match line.stands {
            EnergyStands::Within => match line.of_need {
                Some(part) if part < 1.0 => {
                    format!("within, {} of its need", self.percent(part))
                }
                Some(_) | None => self.look(Look::Within).to_owned(),
            },
            EnergyStands::Short { floor } => {
                format!("short: at least {} wanted", self.energy(floor))
            }
            EnergyStands::NotKnown => Self::stands_not_known(line.unknown),
            EnergyStands::ByWeightAndCondition => "goes by weight and condition".to_owned(),
            EnergyStands::NotReckoned => "not known: no need is reckoned for it".to_owned(),
        }
    }

    fn energy_has(&self, line: &EnergyLine) -> String {
        let least = if line.unknown > 0.0 { "at least " } else { "" };
        format!("{least}{}", self.energy_ends(line.supplied))
    }

    fn energy_needs(&self, line: &EnergyLine) -> String {
        line.need
            .map_or_else(|| "not reckoned".to_owned(), |need| self.energy(need))
    }

    fn energy_ceiling(&self) -> &'static str {
        "no ceiling"
    }

    fn energy_cord(&self, line: &EnergyLine) -> String {
        let before = line.was.map_or_else(String::new, |was| {
            format!(" It was about {}.", self.energy(was))
        });
        format!(
            "{}: {}. Has {}, need {}.{before}",
            self.energy_name(),
            self.energy_stands(line),
            self.energy_has(line),
            self.energy_needs(line)
        )
    }

    fn need_word(&self) -> &'static str {
        "need"
    }

    fn ceiling_word(&self) -> &'static str {
        "ceiling"
    }

    fn row_heads(&self) -> [&'static str; 5] {
        ["a day", "stands", "has", "need", "ceiling"]
    }

    fn knots_are_level(&self) -> &'static str {
        "Needs and ceilings are set level; lengths in different rows do not compare. Dotted: not known in a part of the ration."
    }

    fn what_needs_a_look(&self) -> &'static str {
        "What needs a look"
    }

    fn no_nutrient_to_look_at(&self) -> &'static str {
        "No nutrient is over, short or not known."
    }

    fn unknown_show(&self, count: usize) -> String {
        format!("{count} not known, show")
    }

    fn within_show(&self, count: usize) -> String {
        format!("{count} within, show")
    }

    fn what_else(&self) -> &'static str {
        "Forage, sugar, buckets, ratios"
    }

    fn judged_name(&self, judged: &Judged) -> &'static str {
        super::judged::name(judged)
    }

    fn judged_stands(&self, judged: &Judged) -> Said {
        super::judged::stands(self, judged)
    }

    fn all_numbers(&self) -> &'static str {
        "All numbers"
    }

    fn numbers_caption(&self) -> &'static str {
        "Every nutrient of the ration a day"
    }

    fn numbers_columns(&self) -> [&'static str; 8] {
        [
            "Nutrient",
            "Has",
            "Need",
            "Ceiling",
            "In the feed as fed",
            "In its dry matter",
            "Not known in",
            "From",
        ]
    }

    fn numbers_row(&self, row: &NutrientRow) -> Vec<String> {
        super::ration_table::nutrient(self, row)
    }

    fn numbers_energy(&self, line: &EnergyLine) -> Vec<String> {
        super::ration_table::energy(self, line)
    }

    fn hays_not_tested(&self, names: &[&str], not_known: &[Nutrient]) -> Said {
        let lacking = if not_known.is_empty() {
            String::new()
        } else {
            let lacking = self.nutrients(not_known);
            format!("Not known in some of the ration: {lacking}. ")
        };
        Said::because(
            format!("Nobody tested {}", self.list(names)),
            format!(
                "Where there are numbers, they are what such hay usually holds. {lacking}Selenium differs from field to field and too much of it is poison: it is never taken from a mean. A test of the hay tells."
            ),
        )
    }

    fn balance_is_no_diagnosis(&self) -> Said {
        Said::because(
            "A balance is no diagnosis",
            "It says what the ration holds against published needs. Whether an animal lacks something, only an examination tells: ask the vet.",
        )
    }

    fn balance_while_refused(&self, by: GivenBy) -> Said {
        match by {
            GivenBy::Plan { .. } => Said::plain(
                "The plan in use does not hold today: look at the plan before anything is changed",
            ),
            GivenBy::Draft => Said::because(
                "No plan is made here for it: ask the vet for its ration",
                "What is held against its needs is hay at the starting level. It shows what such hay brings and what is lacking; it is no ration for it.",
            ),
        }
    }

    fn no_ration_to_show(&self) -> &'static str {
        "No ration: look at the plan first"
    }

    fn needs_not_reckoned(&self) -> &'static str {
        "Its needs are not reckoned here: ask the vet"
    }

    fn find_the_cheapest_mend(&self) -> &'static str {
        "Find the cheapest mend"
    }

    fn to_the_foods(&self) -> &'static str {
        "Foods of the yard"
    }
}
