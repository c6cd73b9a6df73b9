//! What an animal or a group was offered, left and ate in the last seven days.

use crate::rows::Range;
use crate::shelf::Shelf;
use chrono::Days;
use tussock_core::day::{DayOfLedger, LevelEaten, Totals};
use tussock_core::log::{Kind, Record, last_weight, ledger_of};
use tussock_core::round::Subject;
use tussock_core::units::{DryMatter, Instant, LocalDate, Span, Zone};

/// The days that are shown, today among them.
pub const DAYS: u64 = 7;
/// How far back entries are asked for: the days, what was filled before them, and days away.
const BACK_HOURS: i64 = 24 * 40;
const OF_A_YARD: u32 = 200;
const OF_A_MONTH: u32 = 3_000;

/// What the screen asks the disk for.
pub fn needs(now: Instant) -> Vec<Range> {
    let from = (now - Span::hours(BACK_HOURS)).to_ms();
    let kind = |kind: &Kind, from, limit| Range::Kind {
        kind: kind.word().to_owned(),
        from,
        limit,
    };
    let standing = [Kind::Animal, Kind::Group, Kind::Lot, Kind::Food, Kind::Plan]
        .map(|of| kind(&of, 0, OF_A_YARD));
    let readings = [Kind::Weight, Kind::Condition].map(|of| kind(&of, 0, OF_A_MONTH));
    let entries = [
        Kind::NetFilled,
        Kind::NetHung,
        Kind::SoakStep,
        Kind::LeftOver,
        Kind::Job,
    ]
    .map(|of| kind(&of, from, OF_A_MONTH));
    standing
        .into_iter()
        .chain(readings)
        .chain(entries)
        .collect()
}

/// One day.
#[derive(Clone, Debug, PartialEq)]
pub struct Day {
    /// The day.
    pub day: LocalDate,
    /// It is today.
    pub runs: bool,
    /// Whether a plan held.
    pub has_plan: bool,
    /// Whether anything was to be fed, or was.
    pub is_blank: bool,
    /// What of its plan is still to come.
    pub to_come: DryMatter,
    /// What it comes to.
    pub totals: Totals,
}

impl Day {
    fn of(day: &DayOfLedger) -> Self {
        Self {
            day: day.day,
            runs: day.runs,
            has_plan: day.has_plan,
            is_blank: day.servings.is_empty(),
            to_come: day.to_come,
            totals: Totals::of(&[day]),
        }
    }
}

/// The last seven days.
#[derive(Clone, Debug, PartialEq)]
pub struct Week {
    /// Whose.
    pub name: String,
    /// The days, today first.
    pub days: Vec<Day>,
    /// What they come to.
    pub totals: Totals,
    /// What was eaten a day as a part of body weight, where the weight is known; never of a group.
    pub level: Option<LevelEaten>,
    /// Nothing was planned and nothing was logged.
    pub is_blank: bool,
}

/// The last seven days of an animal or a group; `None` when it is not there.
pub fn week(shelf: &Shelf, of: &Subject, now: Instant, zone: &impl Zone) -> Option<Week> {
    let name = match of {
        Subject::Animal(id) => shelf.animal(id)?.name,
        Subject::Group(id) => shelf.group(id)?.name,
        Subject::Yard(_) => return None,
    };
    let today = zone.to_local(now).date;
    let from = today.checked_sub_days(Days::new(DAYS - 1)).unwrap_or(today);
    let records: Vec<&Record> = shelf.records().collect();
    let mut ledger = ledger_of(&records, of, (from, today), now, zone);
    // Before the first plan and the first entry there was nothing to log: those days are no gap.
    while ledger
        .days
        .first()
        .is_some_and(|day| day.is_blank() && !day.runs)
    {
        ledger.days.remove(0);
    }
    let level = match of {
        Subject::Animal(id) => {
            last_weight(&records, id, now, zone).and_then(|weight| ledger.level(weight))
        }
        Subject::Group(_) | Subject::Yard(_) => None,
    };
    let totals = ledger.totals();
    // Where nobody answered anything there is no level to tell, not one of nothing.
    let known = totals
        .offered_known
        .is_some_and(|shares| shares.not_known < 1.0);
    let mut days: Vec<Day> = ledger.days.iter().map(Day::of).collect();
    days.reverse();
    Some(Week {
        name,
        is_blank: days.iter().all(|day| day.is_blank && !day.has_plan),
        days,
        totals,
        level: level.filter(|_| known),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::views::test_yard::{add, animal, at, shelf_of, zone};
    use crate::words::{English, LedgerWords};
    use tussock_core::animal::{AnimalId, LotId};
    use tussock_core::forage::ForageClass;
    use tussock_core::log::Body;
    use tussock_core::log::Name;
    use tussock_core::log::bodies::base::{FeedGrams, FeedWeight};
    use tussock_core::log::bodies::{LeftAmount, LeftOverV1, LotV1, NetHungV1, Quarters};

    fn feed(g: i64) -> FeedWeight {
        FeedWeight {
            g: FeedGrams::new(g).unwrap(),
            typed: None,
        }
    }

    fn hung(hay: Option<i64>) -> Body {
        Body::NetHung(NetHungV1 {
            net: None,
            filling: None,
            lot: Some(LotId("lot".into())),
            hay: hay.map(feed),
            soak: None,
            not_soaked: None,
            job: None,
        })
    }

    fn lot() -> Body {
        Body::Lot(LotV1 {
            name: Name::new("Lane field").unwrap(),
            class: ForageClass::Grass,
            dry_matter: None,
            reports: Vec::new(),
            price: None,
            bought_on: None,
            delivery: None,
            opened_on: None,
            in_place_of: None,
            faults: Vec::new(),
            slice: None,
            note: None,
        })
    }

    #[test]
    fn a_week_shows_its_days_newest_first_and_what_was_left() {
        let moss = animal("moss");
        let left = Body::LeftOver(LeftOverV1 {
            hung: None,
            net: None,
            lot: None,
            left: LeftAmount::ByEye {
                quarters: Quarters::One,
            },
            job: None,
        });
        let shelf = shelf_of(&[
            add("moss", &moss, 0),
            ("lot", "moss", lot(), 0),
            ("net-1", "moss", hung(Some(5_000)), 2),
            ("left", "moss", left, 3),
            ("net-2", "moss", hung(Some(5_000)), 4),
            ("net-3", "moss", hung(None), 4),
        ]);
        let of = Subject::Animal(AnimalId("moss".into()));
        let week = week(&shelf, &of, at(4) + Span::hours(1), &zone()).unwrap();
        let days: Vec<LocalDate> = week.days.iter().map(|day| day.day).collect();
        assert_eq!(days.len(), 3);
        assert!(days.is_sorted_by(|a, b| a > b));
        // 5 kg at 88 %, less a quarter; then 5 kg, and a net of which nobody knows how much was in it.
        let kg = |day: usize| week.days[day].totals.eaten.dry.likely.to_kg();
        assert!((kg(2) - 3.3).abs() < 1e-9);
        assert!((kg(0) - 4.4).abs() < 1e-9);
        assert!(week.days[0].totals.eaten.at_least);
        assert!(week.totals.eaten.at_least);
        // Nobody said anything of the day between, and the sums say so.
        assert!(week.days[1].is_blank);
        assert_eq!(week.level, None);
        let words = English::default();
        assert_eq!(
            words.eaten_in_a_week(&week),
            "moss ate at least 7.7 kg of dry matter in 3 days"
        );
        assert_eq!(words.ledger_day(&week.days[1]), "not known");
        assert_eq!(words.ledger_row(&week.days[1])[3], "not known");
        assert_eq!(words.ledger_week_row(&week)[3], "at least 7.7");
        assert_eq!(
            super::week(
                &shelf,
                &Subject::Animal(AnimalId("fern".into())),
                at(4),
                &zone()
            ),
            None
        );
    }
}
