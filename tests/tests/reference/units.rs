//! Conversions and local times, against other programs'.

use tussock_core::units::parse::{self, LengthUnit, MassUnit};
use tussock_core::units::{
    AsFed, BodyMass, Energy, Instant, Length, LocalStamp, NutrientMass, ShareOfDm, Span,
    Temperature, Zone,
};
use tussock_tests::reference::{Formula, Formulas, Inputs, RowCounts};
use tussock_tests::zone::TableZone;

pub fn formulas() -> Formulas {
    vec![
        ("units.body_mass", body_mass as Formula),
        ("units.body_mass_lb", |i| {
            Ok(BodyMass::kg(i.number("kg")?).to_lb())
        }),
        ("units.as_fed", as_fed),
        ("units.length", length),
        ("units.length_inches", |i| {
            Ok(Length::cm(i.number("cm")?).to_inches())
        }),
        ("units.temperature", |i| {
            parse::temperature(i.text("typed")?)
                .map(Temperature::to_celsius)
                .map_err(|e| format!("{e:?}"))
        }),
        ("units.temperature_f", |i| {
            Ok(Temperature::celsius(i.number("celsius")?).to_fahrenheit())
        }),
        ("units.energy_mcal", |i| {
            Ok(Energy::mj(i.number("mj")?).to_mcal())
        }),
        ("units.energy_mj", |i| {
            Ok(Energy::mcal(i.number("mcal")?).to_mj())
        }),
        ("units.mg_per_kg", |i| {
            Ok(ShareOfDm::percent(i.number("percent")?).to_mg_per_kg())
        }),
        ("units.nutrient_mg", |i| {
            Ok(NutrientMass::g(i.number("g")?).to_mg())
        }),
        ("units.span_hours", |i| {
            #[allow(
                clippy::cast_possible_truncation,
                reason = "whole minutes in the table"
            )]
            let minutes = i.number("minutes")? as i64;
            Ok(Span::minutes(minutes).to_hours())
        }),
        ("units.planned", planned),
    ]
}

pub fn rows() -> RowCounts {
    vec![("pint", 31), ("zoneinfo", 24)]
}

fn mass_unit(inputs: &Inputs) -> Result<MassUnit, String> {
    match inputs.text("bare")? {
        "kg" => Ok(MassUnit::Kg),
        "lb" => Ok(MassUnit::Lb),
        _ => Err(inputs.unknown("bare")),
    }
}

fn body_mass(inputs: &Inputs) -> Result<f64, String> {
    parse::body_mass(inputs.text("typed")?, mass_unit(inputs)?)
        .map(BodyMass::to_kg)
        .map_err(|e| format!("{e:?}"))
}

fn as_fed(inputs: &Inputs) -> Result<f64, String> {
    parse::as_fed(inputs.text("typed")?, mass_unit(inputs)?)
        .map(AsFed::to_kg)
        .map_err(|e| format!("{e:?}"))
}

fn length(inputs: &Inputs) -> Result<f64, String> {
    let bare = match inputs.text("bare")? {
        "cm" => LengthUnit::Cm,
        "in" => LengthUnit::Inch,
        _ => return Err(inputs.unknown("bare")),
    };
    parse::length(inputs.text("typed")?, bare)
        .map(Length::to_cm)
        .map_err(|e| format!("{e:?}"))
}

/// The instant of a local time near one change of the clock, in seconds of UTC.
fn planned(inputs: &Inputs) -> Result<f64, String> {
    #[allow(
        clippy::cast_possible_truncation,
        reason = "whole numbers in the table"
    )]
    let whole = |key: &str| inputs.number(key).map(|n| n as i64);
    let minutes = |key: &str| whole(key).and_then(|n| i32::try_from(n).map_err(|e| e.to_string()));
    inputs.text("zone")?;
    let zone = TableZone::new(
        minutes("before")?,
        &[(Instant::from_ms(whole("at")? * 1000), minutes("after")?)],
    );
    let stamp = LocalStamp {
        date: inputs
            .text("date")?
            .parse()
            .map_err(|_| inputs.unknown("date"))?,
        time: inputs
            .text("time")?
            .parse()
            .map_err(|_| inputs.unknown("time"))?,
    };
    Ok(zone.to_instant(stamp).planned().to_ms() as f64 / 1000.0)
}
