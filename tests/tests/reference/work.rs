//! The energy of work, and the sessions of a week.

use tussock_core::units::{BodyMass, Energy, Span, Speed};
use tussock_core::work::published::{BUILD_UP_WEEKS, UNFIT_MINUTES, WORK_A_WEEK, WORK_MINUTES};
use tussock_core::work::{
    Asked, Gait, HeartRate, WorkDone, WorkLine, anderson_day, asked, oxygen, work_rate,
};
use tussock_tests::reference::{Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![
        ("work.rate", |i| {
            let rate = work_rate(speed(i)?).map_err(|e| e.to_string())?;
            Ok(rate.to_kcal_per_kg_h())
        }),
        ("work.mcal", |i| Ok(energy(i, body(i)?)?.to_mcal())),
        // A rate a kilogram meets pounds as a mass only.
        ("work.mcal_of_pounds", |i| {
            Ok(energy(i, BodyMass::lb(i.number("lb")?))?.to_mcal())
        }),
        ("work.mj", |i| Ok(energy(i, body(i)?)?.to_mj())),
        ("work.anderson", |i| {
            let work = WorkDone::thousand_kg_km(i.number("x")?).map_err(|e| e.to_string())?;
            Ok(anderson_day(body(i)?, work).to_mcal())
        }),
        ("work.oxygen", |i| {
            let heart = HeartRate::beats(i.number("beats")?).map_err(|e| e.to_string())?;
            Ok(oxygen(heart))
        }),
        ("work.asked", |i| {
            let gait = match i.text("gait")? {
                "walk" => Gait::Walk,
                "trot" => Gait::Trot,
                "canter" => Gait::Canter,
                other => return Err(format!("no gait {other:?}")),
            };
            Ok(session(i)?.times.of(gait).to_hours() * 60.0)
        }),
        ("work.a_week", |i| Ok(f64::from(session(i)?.a_week))),
    ]
}

pub fn rows() -> RowCounts {
    vec![
        ("anderson_1983", 6),
        ("bamford_2019", 4),
        ("eaton_1995", 1),
        ("pagan_hintz_1986", 9),
    ]
}

fn speed(i: &Inputs) -> Result<Speed, String> {
    Ok(Speed::m_per_min(i.number("m_per_min")?))
}

fn body(i: &Inputs) -> Result<BodyMass, String> {
    Ok(BodyMass::kg(i.number("kg")?))
}

/// The energy of moving a mass.
fn energy(i: &Inputs, moved: BodyMass) -> Result<Energy, String> {
    let rate = work_rate(speed(i)?).map_err(|e| e.to_string())?;
    let seconds = i.number("minutes")? * 60.0;
    #[allow(clippy::cast_possible_truncation, reason = "seconds of a day")]
    let time = Span::ms(seconds.round() as i64 * 1000);
    Ok(rate.over(moved, time))
}

fn session(i: &Inputs) -> Result<Asked, String> {
    let line = WorkLine::Sound {
        minutes: *WORK_MINUTES,
        a_week: *WORK_A_WEEK,
        unfit_minutes: *UNFIT_MINUTES,
        build_up_weeks: *BUILD_UP_WEEKS,
    };
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a few weeks"
    )]
    asked(line, i.number("built")? as u32).ok_or_else(|| "nothing is asked".to_owned())
}
