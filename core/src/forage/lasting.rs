//! How long a lot lasts, and by when the next is to be ordered.

use super::published::{LEAD_DAYS, LONGEST_DAYS, RECENT_DAYS};
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{AsFed, LocalDate};
use chrono::Days;

/// Where the use of a day comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UseFrom {
    /// The plans that are fed.
    Plans,
    /// What was weighed out in the last days.
    WeighedOut {
        /// Over how many days.
        days: i64,
    },
}

/// What goes of a lot in a day, as fed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DailyUse {
    /// How much.
    pub a_day: AsFed,
    /// Where it comes from.
    pub from: UseFrom,
}

/// The use of a day: what the plans feed of it, else what was weighed out in the last whole days, by the day it was
/// weighed out on. `None` when nothing goes.
pub fn daily_use(
    planned: AsFed,
    weighed_out: &[(LocalDate, AsFed)],
    today: LocalDate,
) -> Option<DailyUse> {
    if AsFed::ZERO < planned {
        return Some(DailyUse {
            a_day: planned,
            from: UseFrom::Plans,
        });
    }
    // Today is not over; a net of it says little of the day.
    let before = |day: &LocalDate| (today - *day).num_days();
    let recent = |day: &LocalDate| (1..=*RECENT_DAYS).contains(&before(day));
    let days = weighed_out
        .iter()
        .map(|(day, _)| before(day))
        .filter(|before| 1 <= *before)
        .max()?
        .min(*RECENT_DAYS);
    let went: AsFed = weighed_out
        .iter()
        .filter(|(day, _)| recent(day))
        .map(|(_, amount)| *amount)
        .sum();
    (AsFed::ZERO < went).then(|| DailyUse {
        a_day: went / days as f64,
        from: UseFrom::WeighedOut { days },
    })
}

/// How long it lasts.
#[derive(Clone, Debug, PartialEq)]
pub struct Lasting {
    /// Days from today, with their ends.
    pub days: Ends<f64>,
    /// The first day on which there may be too little: by the least that may be left.
    pub runs_out: LocalDate,
    /// The last day to order on: so many days before that. It may be past.
    pub order_by: LocalDate,
    /// Days from ordering to delivery.
    pub lead_days: i64,
    /// Somebody said them; else they are a default of ours.
    pub lead_said: bool,
    /// Where it comes from.
    pub from: Provenance,
}

/// How long what is left lasts at a use a day: mass / use. The day it runs out goes by the least that may be left.
/// `None` when nothing goes, or no number is one.
pub fn lasting(
    mass: Ends<AsFed>,
    a_day: AsFed,
    today: LocalDate,
    lead: Option<i64>,
) -> Option<Lasting> {
    if !(AsFed::ZERO < a_day && a_day.is_finite() && mass.most.is_finite()) {
        return None;
    }
    let days = mass.map(|mass| mass / a_day);
    let lead_days = lead.unwrap_or(*LEAD_DAYS).max(0);
    // Between nothing and the longest that is reckoned with.
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "bounded in the same line"
    )]
    let whole = days.least.clamp(0.0, *LONGEST_DAYS).floor() as u64;
    let runs_out = today.checked_add_days(Days::new(whole))?;
    let order_by = runs_out.checked_sub_days(Days::new(lead_days.unsigned_abs()))?;
    let from = Provenance::new();
    Some(Lasting {
        days,
        runs_out,
        order_by,
        lead_days,
        lead_said: lead.is_some(),
        from: if lead.is_some() {
            from
        } else {
            from.constant(&LEAD_DAYS)
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    #[test]
    fn it_is_ordered_by_the_least_that_may_be_left() {
        let mass = Ends::new(AsFed::kg(600.0), AsFed::kg(670.0), AsFed::kg(740.0));
        let lasting = lasting(mass, AsFed::kg(20.0), day("2026-05-05"), None).unwrap();
        assert!((lasting.days.likely - 33.5).abs() < 1e-9);
        assert_eq!(lasting.runs_out, day("2026-06-04"));
        assert_eq!(lasting.order_by, day("2026-05-28"));
        assert!(!lasting.lead_said);
    }

    #[test]
    fn a_lead_time_that_was_said_comes_before_ours() {
        let mass = Ends::exactly(AsFed::kg(100.0));
        let said = lasting(mass, AsFed::kg(10.0), day("2026-05-05"), Some(3)).unwrap();
        assert_eq!(said.order_by, day("2026-05-12"));
        assert!(said.lead_said && said.from.sources().is_empty());
    }

    #[test]
    fn what_nobody_eats_lasts_for_no_number_of_days() {
        let mass = Ends::exactly(AsFed::kg(100.0));
        assert_eq!(lasting(mass, AsFed::ZERO, day("2026-05-05"), None), None);
        assert_eq!(daily_use(AsFed::ZERO, &[], day("2026-05-05")), None);
    }

    #[test]
    fn without_a_plan_the_last_whole_days_say_what_goes() {
        let today = day("2026-05-05");
        let out = [
            (day("2026-05-05"), AsFed::kg(2.0)),
            (day("2026-05-04"), AsFed::kg(6.0)),
            (day("2026-05-02"), AsFed::kg(6.0)),
        ];
        let found = daily_use(AsFed::ZERO, &out, today).unwrap();
        assert_eq!(found.from, UseFrom::WeighedOut { days: 3 });
        assert!((found.a_day.to_kg() - 4.0).abs() < 1e-9);
        let planned = daily_use(AsFed::kg(8.0), &out, today).unwrap();
        assert_eq!(planned.from, UseFrom::Plans);
    }
}
