//! What an animal or a group was offered, left and ate in the last seven days.

use crate::rows::Range;
use crate::shelf::Shelf;
use chrono::Days;
use tussock_core::day::{DayOfLedger, HowKnown, LevelEaten, Serving, Totals};
use tussock_core::log::{Kind, Record, last_weight, ledger_of};
use tussock_core::round::Subject;
use tussock_core::units::{DryMatter, Instant, LocalDate, Span, Zone};

/// The days that are shown, today among them.
pub const DAYS: u64 = 7;
/// How far back entries are asked for: the days, what was filled before them, and days away.
const BACK_HOURS: i64 = 24 * 40;
/// The same for turnouts: the days, and six weeks before them.
const GRASS_BACK_HOURS: i64 = 24 * 50;
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
    let standing = [
        Kind::Animal,
        Kind::Group,
        Kind::Lot,
        Kind::Food,
        Kind::Plan,
        Kind::Grazing,
    ]
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
    // What it is used to at grass goes back six weeks from the first of the days.
    let from = (now - Span::hours(GRASS_BACK_HOURS)).to_ms();
    let grass = [Kind::Turnout, Kind::Sward].map(|of| kind(&of, from, OF_A_MONTH));
    standing
        .into_iter()
        .chain(readings)
        .chain(entries)
        .chain(grass)
        .collect()
}

/// What is known of grass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grass {
    /// No turnout was logged or decided on.
    NotLogged,
    /// All of it, by the model; it may be none.
    Known,
    /// Some of it.
    InPart,
    /// None of it: it is out still, nobody said whether it went out, or its weight is not known.
    NotKnown,
}

impl Grass {
    fn of<'a>(servings: impl IntoIterator<Item = &'a Serving>) -> Self {
        let grass = servings.into_iter().filter(|serving| serving.is_grass());
        let known: Vec<bool> = grass
            .map(|serving| serving.how_offered() != HowKnown::NotKnown)
            .collect();
        match (known.contains(&true), known.contains(&false)) {
            (false, false) => Self::NotLogged,
            (true, false) => Self::Known,
            (true, true) => Self::InPart,
            (false, true) => Self::NotKnown,
        }
    }
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
    /// What is known of its grass.
    pub grass: Grass,
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
            grass: Grass::of(&day.servings),
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
    /// What is known of its grass on all of them.
    pub grass: Grass,
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
        grass: Grass::of(ledger.days.iter().flat_map(|day| &day.servings)),
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
    use tussock_core::assess::{Reading, ScaleInstrument, ScaleWeight};
    use tussock_core::forage::ForageClass;
    use tussock_core::log::Body;
    use tussock_core::log::Name;
    use tussock_core::log::bodies::base::{FeedGrams, FeedWeight};
    use tussock_core::log::bodies::{
        LeftAmount, LeftOverV1, LotV1, NetHungV1, Quarters, TurnoutV1, WeightV1,
    };
    use tussock_core::units::BodyMass;

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

    #[test]
    fn grass_that_was_logged_stands_in_the_sums_with_its_ends_and_says_it_is_a_model() {
        let moss = animal("moss");
        let out = |day: i64, hours: Option<i64>| {
            Body::Turnout(TurnoutV1 {
                paddock: None,
                muzzle: false,
                bring_in_by: None,
                came_in: hours.map(|hours| at(day) + Span::hours(hours)),
                job: None,
            })
        };
        let weight = Body::Weight(
            WeightV1::of(&Reading::Scale(ScaleWeight {
                mass: BodyMass::kg(300.0),
                instrument: ScaleInstrument::AnimalScale,
            }))
            .unwrap(),
        );
        let of = Subject::Animal(AnimalId("moss".into()));
        let words = English::default();
        let mut entries = vec![
            add("moss", &moss, 0),
            ("kg", "moss", weight, 0),
            ("lot", "moss", lot(), 0),
            ("net-1", "moss", hung(Some(5_000)), 2),
            ("net-2", "moss", hung(Some(5_000)), 3),
        ];
        let none = week(&shelf_of(&entries), &of, at(3) + Span::hours(6), &zone()).unwrap();
        assert_eq!(none.grass, Grass::NotLogged);
        assert!(words.ledger_grass(&none).starts_with("Grass is not known"));
        entries.push(("out", "moss", out(2, Some(3)), 2));
        let shelf = shelf_of(&entries);
        let some = week(&shelf, &of, at(3) + Span::hours(6), &zone()).unwrap();
        assert_eq!(some.grass, Grass::Known);
        // 300 kg, three hours: nobody saw leaf there, so the least is nothing.
        assert_eq!(
            words.ledger_grass(&some),
            "Grass is in these sums by a model: 0.0 to 3.3 kg of dry matter, likely 1.5 kg of dry matter. Nobody weighed it."
        );
        let day = some.days.last().unwrap();
        assert!(
            words
                .ledger_day_known(day)
                .ends_with("; grass 0.0 to 3.3 kg by a model"),
            "{}",
            words.ledger_day_known(day)
        );
        let level = some.level.unwrap().level;
        assert!(level.least < level.likely && level.likely < level.most);
        assert_eq!(words.ledger_row(day)[3], "5.9");
        // Out still: not known until it is in.
        entries.push(("still", "moss", out(3, None), 3));
        let shelf = shelf_of(&entries);
        let still = week(&shelf, &of, at(3) + Span::hours(6), &zone()).unwrap();
        assert_eq!(still.grass, Grass::InPart);
        assert!(still.totals.eaten.at_least);
        let today = &still.days[0];
        assert!(words.ledger_day_known(today).ends_with("; grass not known"));
        assert!(words.ledger_grass(&still).ends_with("is in none of it."));
    }
}
