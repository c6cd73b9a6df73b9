//! An animal that will not eat, in English.

use super::English;
use super::numbers::up_to;
use crate::forms::not_eating::Wrong;
use crate::views::not_eating::{NotEating, Vet};
use crate::words::{
    AnimalWords, BesideWords, LedgerWords, LogWords, NotEatingWords, Said, SheetLine, SourceWords,
    UnitWords,
};
use tussock_core::animal::{Handful, Kind, Ppid, State};
use tussock_core::safety::{EatStep, LastAte, Normal, Offered, Vital, VitalStanding};
use tussock_core::sources::Source;
use tussock_core::units::{Instant, Zone};

const fn decimals(vital: Vital) -> usize {
    match vital {
        Vital::Temperature => 1,
        Vital::Pulse | Vital::Breaths => 0,
    }
}

impl English {
    fn of_a_vital(self, vital: Vital, value: f64) -> String {
        format!(
            "{} {}",
            up_to(value, decimals(vital)),
            self.vital_unit(vital)
        )
    }

    fn usual(self, vital: Vital, normal: &Normal) -> String {
        let whose = if normal.of == Kind::Donkey {
            "donkey"
        } else {
            "horse or pony"
        };
        let known = tussock_core::constants()
            .into_iter()
            .find(|constant| {
                normal
                    .sources
                    .sources()
                    .contains(&Source::Constant(constant.id))
            })
            .map(|constant| format!(" ({})", self.mark(constant.mark)));
        format!(
            "A grown {whose} at rest: {} to {}{}",
            up_to(normal.low, decimals(vital)),
            self.of_a_vital(vital, normal.high),
            known.unwrap_or_default()
        )
    }

    pub(super) fn who_is_it_about(self, view: &NotEating) -> String {
        let animal = &view.animal;
        let mut parts = vec![animal.name.clone(), super::fields::small(&self.who(animal))];
        if let Some(born) = animal.born {
            let years = usize::try_from(born.age_on(view.today)).unwrap_or_default();
            parts.push(self.count(years, "year", "years"));
        }
        if animal.state != State::Adult {
            parts.push(super::fields::small(self.state(animal.state)));
        }
        parts.join(", ")
    }

    fn on_what(self, view: &NotEating) -> String {
        let mut on: Vec<String> = view.drugs.iter().map(|flag| self.vet_flag(flag)).collect();
        if view.ppid_treated {
            on.push(format!(
                "PPID: {}",
                super::fields::small(self.ppid(Ppid::Treated))
            ));
        }
        if on.is_empty() {
            "None is written down. Say what it is on".to_owned()
        } else {
            on.join("; ")
        }
    }

    fn eaten(self, view: &NotEating) -> String {
        let Some(week) = &view.week else {
            return "Not known".to_owned();
        };
        let eaten = self.eaten_in_a_week(week);
        match &week.level {
            Some(level) => format!("{eaten}: {}", self.level_eaten(level)),
            None => eaten,
        }
    }

    fn what_changed(self, view: &NotEating) -> String {
        if view.changed.is_empty() {
            return "No other hay was opened, as far as it is written down".to_owned();
        }
        view.changed
            .iter()
            .map(|change| {
                format!(
                    "{} since {}, in place of {}",
                    change.name,
                    self.day(change.since),
                    change.in_place_of
                )
            })
            .collect::<Vec<_>>()
            .join("; ")
    }

    /// What every call sheet ends with: the readings, what it ate, its weight, its drugs, and what changed.
    pub(super) fn rest_of_the_sheet(
        self,
        view: &NotEating,
        readings: [Option<f64>; 3],
    ) -> Vec<SheetLine> {
        let mut lines = Vec::new();
        for (vital, reading) in Vital::ALL.into_iter().zip(readings) {
            let says = match (reading, view.normal(vital)) {
                (None, _) => "Not taken".to_owned(),
                (Some(reading), Some(normal)) => self.vital_stands(vital, reading, &normal),
                (Some(reading), None) => self.of_a_vital(vital, reading),
            };
            lines.push(line(self.vital(vital), says));
        }
        lines.push(line("Last seven days", self.eaten(view)));
        lines.push(line(
            "Weight",
            view.weight.as_ref().map_or_else(
                || "Never weighed".to_owned(),
                |dated| {
                    format!(
                        "{}, on {}. No drug is dosed by it: the vet doses",
                        self.body_between(dated.weight.value, dated.weight.low, dated.weight.high),
                        self.day(dated.day)
                    )
                },
            ),
        ));
        lines.push(line("Drugs", self.on_what(view)));
        lines.push(line("What changed", self.what_changed(view)));
        lines
    }
}

/// A line of a sheet.
pub(super) fn line(about: &str, says: String) -> SheetLine {
    SheetLine {
        about: about.to_owned(),
        says,
    }
}

impl NotEatingWords for English {
    fn will_not_eat(&self) -> &'static str {
        "Will not eat"
    }
    fn hold_out_a_handful(&self, name: &str) -> String {
        format!("Hold out a handful of dry hay to {name}")
    }
    fn leaves_this_hay(&self, name: &str) -> String {
        format!("{name} leaves this hay: feed other forage")
    }
    fn last_ate_question(&self) -> &'static str {
        "When was it last seen eating before that?"
    }
    fn last_ate_hint(&self) -> &'static str {
        "Of its own accord. Counted from the earliest that may be meant."
    }
    fn last_ate(&self, last: LastAte) -> &'static str {
        match last {
            LastAte::Now => "Just now",
            LastAte::Afternoon => "This afternoon",
            LastAte::Morning => "This morning",
            LastAte::Evening => "Last evening",
            LastAte::Longer => "Longer ago",
            LastAte::NotKnown => "Nobody knows",
        }
    }
    fn what_to_do(&self) -> &'static str {
        "What to do"
    }
    fn eat_step(&self, step: EatStep) -> Said {
        match step {
            EatStep::OtherForage => Said::because(
                "Feed other forage now",
                "The hay it knows, or clean straw within its share: never a night with nothing.",
            ),
            EatStep::Rinse => Said::because(
                "Rinse this hay instead of soaking it",
                "Rinsing takes dust and little sugar: hay that must be soaked is then not proven.",
            ),
            EatStep::ShorterSoak => Said::because(
                "Soak it shorter",
                "It takes less sugar out, and weighs less wet. Its sugar is then not proven.",
            ),
            EatStep::MixWithOld => Said::plain("Mix it with the hay it knows, more of it each day"),
            EatStep::LookNextVisit => Said::plain("Look at the next visit whether it eats"),
            EatStep::FeedNow => Said::because(
                "Feed it now what it eats",
                "Any forage is better than none.",
            ),
            EatStep::LeaveForage => Said::plain("Leave forage and water in front of it"),
            EatStep::TakeVitals => Said::because(
                "Take temperature, pulse and breathing if it lets you",
                "Do not wait with the call for them.",
            ),
            EatStep::RingAtOnceIfWorse => {
                Said::plain("If it stops eating or turns dull, ring the vet at once")
            }
        }
    }
    fn vitals(&self) -> &'static str {
        "Temperature, pulse, breathing"
    }
    fn vital(&self, vital: Vital) -> &'static str {
        match vital {
            Vital::Temperature => "Temperature",
            Vital::Pulse => "Pulse",
            Vital::Breaths => "Breathing",
        }
    }
    fn vital_unit(&self, vital: Vital) -> &'static str {
        match vital {
            Vital::Temperature => "°C",
            Vital::Pulse | Vital::Breaths => "a minute",
        }
    }
    fn vital_hint(&self, vital: Vital, normal: Option<&Normal>) -> String {
        let Some(normal) = normal else {
            return "May be left out. Foals differ: ask the vet what is usual.".to_owned();
        };
        let usual = self.usual(vital, normal);
        match normal.ring_above {
            Some(line) => format!(
                "May be left out. {usual}. Above {}, ring the vet.",
                self.of_a_vital(vital, line)
            ),
            None => format!("May be left out. {usual}."),
        }
    }
    fn vital_stands(&self, vital: Vital, reading: f64, normal: &Normal) -> String {
        self.vital_told(vital, reading, normal.stands(reading))
    }
    fn vital_told(&self, vital: Vital, reading: f64, standing: VitalStanding) -> String {
        let figure = self.of_a_vital(vital, reading);
        match standing {
            VitalStanding::Within => format!("{figure}, within what is usual"),
            VitalStanding::Under => format!("{figure}, under what is usual: tell the vet"),
            VitalStanding::Over => format!("{figure}, over what is usual: tell the vet"),
            VitalStanding::Ring => {
                format!("{figure}, far over what is usual: ring the vet now, whatever it eats")
            }
        }
    }
    fn vitals_are_no_diagnosis(&self) -> &'static str {
        "Nothing here is a diagnosis, and usual readings are no all-clear. Give no drug that the vet has not said."
    }
    fn call_sheet(&self) -> &'static str {
        "For the vet, to read aloud"
    }
    fn sheet(
        &self,
        view: &NotEating,
        offered: &Offered,
        readings: [Option<f64>; 3],
        zone: &dyn Zone,
    ) -> Vec<SheetLine> {
        let mut lines = vec![
            line("Who", self.who_is_it_about(view)),
            line(
                "Last seen eating",
                offered.last_seen_eating.map_or_else(
                    || "Nobody knows".to_owned(),
                    |at| format!("Counted from {}", self.moment(at, view.today, zone)),
                ),
            ),
            line(
                "A handful of dry hay",
                self.handful(offered.handful.unwrap_or(Handful::NotTried))
                    .to_owned(),
            ),
            line("Dull", self.answer(offered.dull).to_owned()),
        ];
        lines.extend(self.rest_of_the_sheet(view, readings));
        lines
    }
    fn ring_the_vet(&self, vet: &Vet) -> String {
        let whom = vet.named.as_deref().unwrap_or("the vet");
        match &vet.telephone {
            Some(number) => format!("Ring {whom}, {number}"),
            None => format!("Ring {whom}: the number is not known"),
        }
    }
    fn no_number(&self) -> &'static str {
        "The vet's number is not written down. Type it here: it is kept with the yard."
    }
    fn number_label(&self) -> &'static str {
        "The vet's telephone number"
    }
    fn the_vet(&self) -> &'static str {
        "The vet"
    }
    fn as_saved(&self, at: Instant, view: &NotEating, zone: &dyn Zone) -> String {
        format!("As saved at {}", self.moment(at, view.today, zone))
    }
    fn ends_with_a_look_over(&self) -> &'static str {
        "It eats as usual again: say so in a look-over"
    }
    fn save_what_it_did(&self) -> &'static str {
        "Save what it did"
    }
    fn not_eating_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Vital(_, error) => self.parse_error(error),
            Wrong::Telephone => "A telephone number has three digits or more".to_owned(),
            Wrong::Handful => "Say what it did with a handful of dry hay".to_owned(),
            Wrong::Log(error) => self.log_error(error),
        }
    }
}
