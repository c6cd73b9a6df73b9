//! The list of soaks in English.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::forms::soaks::TubWrong;
use crate::views::last_step::{LastStep, Step};
use crate::views::nets::{DayNet, NetState};
use crate::views::soaks::{DryHang, DrySeen, DrySugar, LoadSeen, Soaks, TubRow};
use crate::words::{ForageWords, LogWords, NetsWords, Said, SoakWords, SoaksWords, UnitWords};
use tussock_core::round::{Job, LoadPart, Visit};
use tussock_core::soak::{Liquor, water_needed};
use tussock_core::units::{AsFed, LocalDate, Zone};

impl SoaksWords for English {
    fn soaks_and_tubs(&self) -> &'static str {
        "Soaks and tubs"
    }
    fn soaks_stand(&self, soaks: &Soaks) -> String {
        let dry: usize = soaks.dry.iter().map(|seen| seen.nets.len()).sum();
        let mut parts = Vec::new();
        match soaks.loads.len() {
            0 => {}
            1 => parts.push("1 tub to start".to_owned()),
            count => parts.push(format!("{count} tubs to start")),
        }
        match dry {
            0 => {}
            1 => parts.push("1 net not soaked".to_owned()),
            count => parts.push(format!("{count} nets not soaked")),
        }
        if parts.is_empty() {
            self.nothing_to_soak().to_owned()
        } else {
            parts.join(", ")
        }
    }
    fn to_start(&self) -> &'static str {
        "To go into the water"
    }
    fn load_tub(&self, load: &LoadSeen) -> String {
        let tub = load.tub.clone().unwrap_or_else(|| "A new tub".to_owned());
        match load.load.filling {
            0 | 1 => tub,
            2 => format!("{tub}, second filling"),
            nth => format!("{tub}, filling {nth}"),
        }
    }
    fn load_times(&self, load: &LoadSeen, today: LocalDate, zone: &dyn Zone) -> String {
        let of = &load.load;
        format!(
            "Goes in at {}, lift out at {}, for {}",
            self.moment(of.goes_in, today, zone),
            self.time_at(of.lift_out, zone),
            self.visit_time(of.visit, today)
        )
    }
    fn load_part(&self, part: &LoadPart) -> String {
        let hay = self.feed(part.hay);
        match part.hangs.len() {
            0 => format!("{}: {hay}", part.name),
            1 => format!("{}: 1 net, {hay}", part.name),
            count => format!("{}: {count} nets, {hay}", part.name),
        }
    }
    fn load_hay(&self, load: &LoadSeen) -> String {
        let hay = self.feed(load.load.hay);
        match load.capacity {
            Some(capacity) => format!(
                "{} of {} this tub holds",
                self.feed_number(load.load.hay),
                self.feed(capacity)
            ),
            None => format!("{hay}; how much this tub holds is not known"),
        }
    }
    fn over_full(&self) -> &'static str {
        "One net is more than this tub holds: use a bigger one, or soak it in two parts"
    }
    fn start_tub(&self, load: &LoadSeen) -> String {
        format!("Start {}", small(&self.load_tub(load)))
    }
    fn not_soaked_today(&self, job: &Job, today: LocalDate) -> String {
        let when = job
            .visit
            .map(|visit| format!(", for {}", self.visit_time(visit, today)));
        format!("Not soaked today: {}{}", job.name, when.unwrap_or_default())
    }
    fn not_soaked_hang_until(&self) -> &'static str {
        "Not soaked: hang until the scale reads"
    }
    fn dry_whose(&self, seen: &DrySeen, hang: &DryHang, today: LocalDate) -> String {
        format!(
            "{}, for {}",
            self.net_name(&seen.name, hang.nth as usize),
            self.visit_time(seen.visit, today)
        )
    }
    fn dry_reading(&self, net: &DayNet) -> String {
        let made = self.hay_and_net(net.hay, &net.own);
        match (net.state, net.take_out()) {
            (NetState::Weighed(_), _) => format!("{made}. {}", self.weighed_lighter()),
            (_, Some(out)) => format!("{made}. Weighed already: take out {}", self.feed(out)),
            (_, None) => made,
        }
    }
    fn weighed_lighter(&self) -> &'static str {
        "Weighed for it already"
    }
    fn dry_line(&self, hang: &DryHang) -> String {
        format!(
            "Net {}: {} {}, {}",
            hang.nth,
            self.feed_number(hang.net.target()),
            self.mass_unit(self.shown.mass),
            self.dry_reading(&hang.net)
        )
    }
    fn dry_visit(&self, seen: &DrySeen, today: LocalDate) -> String {
        format!(
            "{}, for {}: {}",
            seen.name,
            self.visit_time(seen.visit, today),
            small(self.not_soaked(seen.said.why))
        )
    }
    fn soak_after_all(&self, seen: &DrySeen) -> String {
        format!("Soak it after all, {}", seen.name)
    }
    fn dry_sugar(&self, sugar: &DrySugar) -> Said {
        let verdict = self.verdict(sugar.judgement.verdict);
        let ways: Vec<&str> = sugar
            .ways_out
            .iter()
            .map(|way| self.way_out(*way))
            .collect();
        let ways = match ways.split_first() {
            Some((first, rest)) => {
                let rest = rest.iter().map(|way| small(way));
                let all: Vec<String> = std::iter::once((*first).to_owned()).chain(rest).collect();
                format!(". {}", all.join(", or "))
            }
            None => String::new(),
        };
        let judged = self.judgement(&sugar.judgement);
        Said::because(
            format!(
                "Dry, {} is {} for {}{ways}",
                sugar.hay,
                match verdict.as_str() {
                    "over it" => "over the sugar limit".to_owned(),
                    other => format!("{other} in sugar"),
                },
                sugar.name
            ),
            format!(
                "{} Nothing is washed out of dry hay, so that its sugar is what it is.",
                judged.why.unwrap_or(judged.sentence)
            ),
        )
    }
    fn all_liquor(&self) -> Vec<(Liquor, Said)> {
        Liquor::ALL
            .iter()
            .map(|liquor| (*liquor, self.liquor(*liquor)))
            .collect()
    }
    fn tubs_here(&self) -> &'static str {
        "Tubs"
    }
    fn tub_row(&self, row: &TubRow, today: LocalDate, zone: &dyn Zone) -> String {
        let holds = match row.capacity {
            Some(capacity) => format!("holds {}", self.feed(capacity)),
            None => "how much it holds is not known".to_owned(),
        };
        match row.soak {
            Some((_, out)) => format!(
                "{holds}. In the water, lift out at {}",
                self.moment(out, today, zone)
            ),
            None => holds,
        }
    }
    fn add_tub(&self) -> &'static str {
        "Add a tub"
    }
    fn tub_form(&self, there: bool) -> &'static str {
        if there {
            "What is this tub?"
        } else {
            "A new tub"
        }
    }
    fn tub_called(&self) -> &'static str {
        "Name"
    }
    fn tub_capacity(&self) -> &'static str {
        "How much hay it holds, dry"
    }
    fn tub_capacity_hint(&self) -> &'static str {
        "May be left out: then every net of a visit is put into it."
    }
    fn tub_water(&self, capacity: AsFed) -> String {
        let [least, better] = water_needed(capacity);
        format!(
            "For {} of hay: {} to {} l of water, fresh each time.",
            self.feed(capacity),
            up_to(least.to_l(), 0),
            up_to(better.to_l(), 0)
        )
    }
    fn save_tub(&self) -> &'static str {
        "Save the tub"
    }
    fn tub_form_wrong(&self, wrong: &TubWrong) -> String {
        match wrong {
            TubWrong::NoName => "Give it a name, as on the tub".to_owned(),
            TubWrong::NoRoom => "More than nothing, or leave it out".to_owned(),
            TubWrong::Parse(error) => self.parse_error(error),
            TubWrong::Log(error) => self.log_error(error),
        }
    }
    fn take_back(&self, last: &LastStep, zone: &dyn Zone) -> String {
        let what = match last.step {
            Step::Lifted => "lifted out",
            Step::Fed => "fed",
            Step::Eaten => "eaten up",
            Step::ThrownAway => "thrown away",
            Step::Stopped => "stopped",
        };
        format!("Not {what} at {} after all", self.time_at(last.at, zone))
    }
    fn eaten_up(&self) -> &'static str {
        "Eaten up"
    }
    fn not_soaked_instead(&self) -> &'static str {
        "Not soaked today"
    }
    fn nothing_to_soak(&self) -> &'static str {
        "Nothing to soak now"
    }
}

impl English {
    fn visit_time(&self, visit: Visit, today: LocalDate) -> String {
        self.due(visit.day, visit.time, today)
    }
}
