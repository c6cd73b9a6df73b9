//! Needs and allowances, against the tables they come from.

use tussock_core::animal::{Kind, RiskLevel, State, Temperament, Workload};
use tussock_core::limits::{
    Amount, DonkeyLossVerdict, Ends, EnergyVerdict, LimitsError, Litres, MealLimit, MealVerdict,
    Milk, NeedFor, Needs, Nutrient, NutrientUnit, Stage, UpperContent, WaterWeather, daily_gain,
    donkey_loss_cap, energy_need, feeds_needed, growing_weight, judge_donkey_loss, judge_energy,
    judge_meal, meal_limit, milk, needs, salt_for, upper_limit, vitamin_e_most, water_need,
};
use tussock_core::units::{
    BodyMass, DryMatter, Energy, EnergyDensity, Iu, NutrientMass, PartOfBody, ShareOfDm,
};
use tussock_tests::reference::{Formula, Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![
        ("limits.energy_mcal", energy_mcal as Formula),
        ("limits.energy_mj", |i| {
            Ok(Energy::mcal(energy_mcal(i)?).to_mj())
        }),
        ("limits.need", need),
        ("limits.stage_energy", stage_energy),
        ("limits.stage_need", stage_need),
        ("limits.growing_weight", |i| {
            growing_weight(whole(i, "months")?, mature(i)?)
                .map(BodyMass::to_kg)
                .map_err(refused)
        }),
        ("limits.daily_gain", |i| {
            daily_gain(whole(i, "months")?, mature(i)?)
                .map(BodyMass::to_kg)
                .map_err(refused)
        }),
        ("limits.milk", |i| {
            milk(whole(i, "month")?, weight(i)?)
                .map(Milk::to_kg)
                .map_err(refused)
        }),
        ("limits.need_lb", |i| {
            Ok(BodyMass::kg(need(i)? / 1000.0).to_lb())
        }),
        ("limits.salt", |i| {
            Ok(salt_for(NutrientMass::g(i.number("sodium_g")?)).to_g())
        }),
        ("limits.vitamin_e_most", |i| {
            vitamin_e_most(weight(i)?).map(Iu::to_iu).map_err(refused)
        }),
        ("limits.upper_iu", upper_iu),
        ("limits.upper_share", upper_share),
        ("limits.meal_starch", |i| starch(i).map(|(meal, _)| meal)),
        ("limits.day_starch", |i| starch(i).map(|(_, day)| day)),
        ("limits.meal_dry_kg", meal_dry_kg),
        ("limits.meal_verdict", meal_verdict),
        ("limits.feeds", |i| {
            let limit = meal_limit(risk(i)?, weight(i)?).map_err(refused)?;
            feeds_needed(&limit, NutrientMass::g(i.number("g")?))
                .map(f64::from)
                .ok_or_else(|| "no number of feeds".to_owned())
        }),
        ("limits.water_least", |i| Ok(water(i)?.0)),
        ("limits.water_usual", water_usual),
        ("limits.restricted_mcal", |i| Ok(eaten(i)?.to_mcal())),
        ("limits.share_of_low", |i| {
            let need = energy_need(Workload::Maintenance(Temperament::Low), weight(i)?);
            Ok(eaten(i)? / need.map_err(refused)?.energy * 100.0)
        }),
        ("limits.energy_verdict", energy_verdict),
        ("limits.dry_kg", |i| {
            Ok(PartOfBody::percent(i.number("percent")?)
                .of(weight(i)?)
                .to_kg())
        }),
        ("limits.mj_by_weight_mcal", |i| Ok(by_weight(i)?.to_mcal())),
        ("limits.share_by_weight", |i| {
            let need = energy_need(work(i, "of")?, weight(i)?).map_err(refused)?;
            Ok(by_weight(i)? / need.energy * 100.0)
        }),
        ("limits.donkey_loss_cap", |i| {
            donkey_loss_cap(weight(i)?)
                .map(BodyMass::to_kg)
                .map_err(refused)
        }),
        ("limits.donkey_loss_too_fast", donkey_loss_too_fast),
    ]
}

pub fn rows() -> RowCounts {
    vec![
        ("nrc_2007", 328),
        ("oklahoma_state_fact_sheet", 4),
        ("nrc_1987", 4),
        ("nrc_2005", 12),
        ("luthersson_2009", 2),
        ("macon_2023", 3),
        ("merck_manual", 6),
        ("dugdale_2010", 4),
        ("argo_2012", 4),
        ("donkey_sanctuary", 4),
    ]
}

fn refused(error: LimitsError) -> String {
    error.to_string()
}

fn weight(inputs: &Inputs) -> Result<BodyMass, String> {
    match inputs.optional_number("lb")? {
        Some(lb) => Ok(BodyMass::lb(lb)),
        None => inputs.number("kg").map(BodyMass::kg),
    }
}

fn work(inputs: &Inputs, key: &str) -> Result<Workload, String> {
    Ok(match inputs.text(key)? {
        "low" => Workload::Maintenance(Temperament::Low),
        "average" => Workload::Maintenance(Temperament::Average),
        "elevated" => Workload::Maintenance(Temperament::Elevated),
        "light" => Workload::Light,
        "moderate" => Workload::Moderate,
        "heavy" => Workload::Heavy,
        "very_heavy" => Workload::VeryHeavy,
        _ => return Err(inputs.unknown(key)),
    })
}

fn risk(inputs: &Inputs) -> Result<RiskLevel, String> {
    Ok(match inputs.text("risk")? {
        "proven" => RiskLevel::Proven,
        "at_risk" => RiskLevel::AtRisk,
        "not_known" => RiskLevel::NotKnown,
        "clear" => RiskLevel::Clear,
        _ => return Err(inputs.unknown("risk")),
    })
}

fn yes(inputs: &Inputs, key: &str) -> Result<bool, String> {
    match inputs.text(key)? {
        "yes" => Ok(true),
        "no" => Ok(false),
        _ => Err(inputs.unknown(key)),
    }
}

fn nutrient(inputs: &Inputs) -> Result<Nutrient, String> {
    Nutrient::from_key(inputs.text("nutrient")?).ok_or_else(|| inputs.unknown("nutrient"))
}

fn energy_mcal(inputs: &Inputs) -> Result<f64, String> {
    energy_need(work(inputs, "work")?, weight(inputs)?)
        .map(|need| need.energy.to_mcal())
        .map_err(refused)
}

/// A need in the unit its nutrient is shown in.
fn need(inputs: &Inputs) -> Result<f64, String> {
    let current = weight(inputs)?;
    let whose = NeedFor {
        kind: Kind::Horse,
        stage: Stage::Adult,
        work: work(inputs, "work")?,
        current,
        target: Some(current),
    };
    let (found, _) = needs(&whose).map_err(refused)?;
    let nutrient = nutrient(inputs)?;
    let row = found.of(nutrient).ok_or("no need is published here")?;
    nutrient
        .in_unit(row.amount)
        .ok_or_else(|| "the amount is of the other sort".to_owned())
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "whole months in the table"
)]
fn whole(inputs: &Inputs, key: &str) -> Result<u32, String> {
    inputs.number(key).map(|number| number as u32)
}

fn mature(inputs: &Inputs) -> Result<BodyMass, String> {
    inputs.number("mature").map(BodyMass::kg)
}

/// What a growing animal, or a mare in foal or in milk, needs.
fn of_stage(inputs: &Inputs) -> Result<Needs, String> {
    let current = weight(inputs)?;
    let stage = match inputs.text("stage")? {
        "growing" => Stage::Growing {
            months: whole(inputs, "months")?,
            mature: mature(inputs)?,
        },
        "pregnant" => Stage::Pregnant {
            month: whole(inputs, "month")?,
        },
        "lactating" => Stage::Lactating {
            month: whole(inputs, "month")?,
        },
        _ => return Err(inputs.unknown("stage")),
    };
    let whose = NeedFor {
        kind: Kind::Horse,
        stage,
        work: Workload::Maintenance(Temperament::Average),
        current,
        target: Some(current),
    };
    needs(&whose).map(|(needs, _)| needs).map_err(refused)
}

fn stage_energy(inputs: &Inputs) -> Result<f64, String> {
    let energy = of_stage(inputs)?.energy.ok_or("no energy")?;
    Ok(energy.energy.to_mcal())
}

fn stage_need(inputs: &Inputs) -> Result<f64, String> {
    let nutrient = nutrient(inputs)?;
    let needs = of_stage(inputs)?;
    let row = needs.of(nutrient).ok_or("no need is published here")?;
    nutrient
        .in_unit(row.amount)
        .ok_or_else(|| "the amount is of the other sort".to_owned())
}

fn upper_iu(inputs: &Inputs) -> Result<f64, String> {
    let limit = upper_limit(nutrient(inputs)?).ok_or("no limit is published here")?;
    match limit.most.in_dry(DryMatter::kg(inputs.number("dry_kg")?)) {
        Amount::Iu(units) => Ok(units.to_iu()),
        Amount::Mass(_) => Err("the limit is a mass".to_owned()),
    }
}

/// In percent for what is shown in grams, in mg/kg for what is shown in milligrams.
fn upper_share(inputs: &Inputs) -> Result<f64, String> {
    let nutrient = nutrient(inputs)?;
    let limit = upper_limit(nutrient).ok_or("no limit is published here")?;
    match (limit.most, nutrient.unit()) {
        (UpperContent::Share(share), NutrientUnit::Gram) => Ok(share.to_percent()),
        (UpperContent::Share(share), NutrientUnit::Milligram) => Ok(share.to_mg_per_kg()),
        _ => Err("the limit is in units".to_owned()),
    }
}

fn starch(inputs: &Inputs) -> Result<(f64, f64), String> {
    match meal_limit(RiskLevel::Clear, weight(inputs)?).map_err(refused)? {
        MealLimit::Starch { meal, day, .. } => Ok((meal.to_g(), day.to_g())),
        MealLimit::SugarAndStarch { .. } => Err("the strict rule".to_owned()),
    }
}

/// The most of a feed in one meal of an animal at risk.
fn meal_dry_kg(inputs: &Inputs) -> Result<f64, String> {
    let share = ShareOfDm::percent(inputs.number("sugar_and_starch_percent")?);
    match meal_limit(RiskLevel::Proven, weight(inputs)?).map_err(refused)? {
        MealLimit::SugarAndStarch { meal, .. } => Ok(meal / share.in_dry(DryMatter::kg(1.0))),
        MealLimit::Starch { .. } => Err("not the strict rule".to_owned()),
    }
}

fn meal_verdict(inputs: &Inputs) -> Result<f64, String> {
    let limit = meal_limit(risk(inputs)?, weight(inputs)?).map_err(refused)?;
    let part = |key: &str| {
        let g = inputs.optional_number(key)?;
        Ok::<_, String>(g.map(|g| Ends::exactly(NutrientMass::g(g))))
    };
    match judge_meal(&limit, part("sugar_g")?, part("starch_g")?) {
        MealVerdict::Within => Ok(0.0),
        MealVerdict::Over { .. } => Ok(1.0),
        MealVerdict::NotKnown => Err("not known".to_owned()),
    }
}

/// The least, and the usual band where there is one.
fn water(inputs: &Inputs) -> Result<(f64, Option<[f64; 2]>), String> {
    let weather = match inputs.text("weather")? {
        "near_freezing" => WaterWeather::NearFreezing,
        "cool" => WaterWeather::Cool,
        "mild" => WaterWeather::Mild,
        "hot" => WaterWeather::Hot,
        _ => return Err(inputs.unknown("weather")),
    };
    let dry_hay = inputs.optional_text("dry_hay").is_some() && yes(inputs, "dry_hay")?;
    let at_rest = Workload::Maintenance(Temperament::Average);
    let need =
        water_need(weight(inputs)?, State::Adult, at_rest, weather, dry_hay).map_err(refused)?;
    let usual = need.usual.map(|band| band.map(Litres::to_l));
    Ok((need.least.to_l(), usual))
}

fn water_usual(inputs: &Inputs) -> Result<f64, String> {
    let end = inputs.text("end")?;
    let [low, high] = water(inputs)?.1.ok_or("no band is published")?;
    match end {
        "low" => Ok(low),
        "high" => Ok(high),
        _ => Err(inputs.unknown("end")),
    }
}

/// The energy of a ration that is a percent of body weight.
fn eaten(inputs: &Inputs) -> Result<Energy, String> {
    let dry = PartOfBody::percent(inputs.number("dry_percent")?).of(weight(inputs)?);
    Ok(EnergyDensity::mj_per_kg(inputs.number("mj_per_kg")?).in_dry(dry))
}

/// The energy of a ration that is given by body weight.
fn by_weight(inputs: &Inputs) -> Result<Energy, String> {
    let rate = inputs.number("mj_per_kg_body")?;
    Ok(Energy::mj(rate * weight(inputs)?.to_kg()))
}

fn energy_verdict(inputs: &Inputs) -> Result<f64, String> {
    let word = yes(inputs, "vets_word")?;
    let verdict = judge_energy(
        Kind::Pony,
        State::Adult,
        weight(inputs)?,
        eaten(inputs)?,
        word,
    );
    match verdict.map_err(refused)? {
        EnergyVerdict::Enough { .. } => Ok(0.0),
        EnergyVerdict::NeedsVetsWord { .. } => Ok(1.0),
        EnergyVerdict::NeverAllowed { .. } => Ok(2.0),
        EnergyVerdict::ByWeightAndCondition | EnergyVerdict::NotPublishedHere(_) => {
            Err("no verdict".to_owned())
        }
    }
}

fn donkey_loss_too_fast(inputs: &Inputs) -> Result<f64, String> {
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole days in the table"
    )]
    let days = inputs.number("days")? as u32;
    let lost = BodyMass::kg(inputs.number("lost")?);
    match judge_donkey_loss(weight(inputs)?, lost, days).map_err(refused)? {
        DonkeyLossVerdict::Within => Ok(0.0),
        DonkeyLossVerdict::TooFast { .. } => Ok(1.0),
        DonkeyLossVerdict::NotKnown => Err("not known".to_owned()),
    }
}
