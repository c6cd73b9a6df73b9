//! Hay: its class, its report, its energy, its sugar and its cost.

mod storage;

use tussock_core::animal::{LotId, RiskLevel};
use tussock_core::forage::{
    Analyte, Basis, Belief, Fed, ForageClass, Hazard, LabReport, Losses, Lot, MixPart, Price,
    RawReport, SugarEstimate, Verdict, composite_error, estimate, feed_cost, forage_equation,
    hazards, judge, mix, normal_below, pagan_equation, supply, test_outlook,
};
use tussock_core::limits::sugar_limits;
use tussock_core::units::{
    AsFed, Currency, DryFraction, DryMatter, Energy, EnergyDensity, Money, ShareOfDm,
};
use tussock_tests::reference::{Formula, Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    let mut all = of_reports();
    all.extend(of_sugar());
    all.extend(of_classes_and_cost());
    all.extend(storage::formulas());
    all
}

pub fn rows() -> RowCounts {
    vec![
        ("fonnesbeck_1981", 7),
        ("forage_laboratory", 7),
        ("frank_2010", 24),
        ("hay_report_example", 3),
        ("huhnke_hay_heating", 10),
        ("mpmath", 38),
        ("nasem_2021", 39),
        ("osu_hay_moisture", 5),
        ("pagan_1998", 5),
    ]
}

fn of_reports() -> Formulas {
    vec![
        ("forage.report_nsc", |i| {
            let report = typed(i, &[("wsc", Analyte::Wsc), ("starch", Analyte::Starch)])?;
            believed(estimate(&lot(ForageClass::Grass, report), Fed::Dry).wsc_starch)
        }),
        ("forage.report_esc_starch", |i| {
            let report = typed(i, &[("esc", Analyte::Esc), ("starch", Analyte::Starch)])?;
            believed(estimate(&lot(ForageClass::Grass, report), Fed::Dry).esc_starch)
        }),
        ("forage.fructan", |i| {
            let report = typed(i, &[("wsc", Analyte::Wsc), ("esc", Analyte::Esc)])?;
            percent(report.fructan())
        }),
        ("forage.by_difference", |i| {
            let bound = ShareOfDm::percent(i.number("bound")?);
            percent(typed(i, &FULL)?.by_difference(Some(bound)))
        }),
        ("forage.calcium_to_phosphorus", |i| {
            let pair = [
                ("calcium", Analyte::Calcium),
                ("phosphorus", Analyte::Phosphorus),
            ];
            typed(i, &pair)?
                .calcium_to_phosphorus()
                .ok_or_else(|| "unknown".to_owned())
        }),
        ("forage.pagan", |i| {
            let mut with_adf = FULL.to_vec();
            with_adf.push(("adf", Analyte::Adf));
            dense(pagan_equation(&typed(i, &with_adf)?))
        }),
        ("forage.forage_equation", |i| {
            let share = |key| i.number(key).map(ShareOfDm::percent);
            dense(forage_equation(share("adf")?, share("protein")?))
        }),
        ("forage.to_dry_matter", |i| {
            let raw = RawReport {
                dry_percent: i.optional_number("dry")?,
                values: vec![(Analyte::Nsc, i.number("as_fed")?)],
                ..RawReport::empty(Basis::AsFed)
            };
            let (report, _) = LabReport::read(raw).map_err(|e| format!("{e:?}"))?;
            percent(report.share(Analyte::Nsc))
        }),
        ("forage.to_as_fed", |i| {
            let share = ShareOfDm::percent(i.number("dry_matter")?);
            Ok(share.as_fed(dry(i)?).to_percent())
        }),
        ("forage.as_fed_kg", |i| {
            Ok(DryMatter::kg(i.number("dry_kg")?).as_fed(dry(i)?).to_kg())
        }),
        ("forage.eaten_g", |i| {
            let eaten = AsFed::kg(i.number("as_fed_kg")?).dry(dry(i)?);
            Ok(ShareOfDm::percent(i.number("percent")?)
                .in_dry(eaten)
                .to_g())
        }),
        ("forage.energy_mcal", |i| {
            Ok(Energy::mj(i.number("mj")?).to_mcal())
        }),
    ]
}

fn of_sugar() -> Formulas {
    vec![
        ("forage.normal_above", |i| Ok(normal_below(-i.number("z")?))),
        (
            "forage.chance",
            |i| Ok(belief(i)?.chance_at_most(limit(i)?)),
        ),
        ("forage.passes_at_most", |i| {
            let any = Belief::percent(12.0, 4.5);
            Ok(test_outlook(any, limit(i)?).passes_at_most.to_percent())
        }),
        ("forage.test_within", |i| {
            Ok(test_outlook(belief(i)?, limit(i)?).within)
        }),
        ("forage.test_over", |i| {
            Ok(test_outlook(belief(i)?, limit(i)?).over)
        }),
        ("forage.mix_chance", |i| {
            let part = |kg, wsc| -> Result<MixPart, String> {
                let report = read(vec![(Analyte::Wsc, i.number(wsc)?), (Analyte::Starch, 1.0)])?;
                Ok(MixPart {
                    dry: DryMatter::kg(i.number(kg)?),
                    sugar: Some(estimate(&lot(ForageClass::Grass, report), Fed::Dry)),
                })
            };
            let day = mix(&[part("kg1", "wsc1")?, part("kg2", "wsc2")?]);
            let sum = day.and_then(|day| day.wsc_starch).ok_or("unknown")?;
            Ok(sum.chance_at_most(limit(i)?))
        }),
        ("forage.mix_nsc", |i| {
            let parts = classes(i)?.map(|(class, dry)| MixPart {
                dry,
                sugar: Some(untested(class)),
            });
            believed(mix(&parts).and_then(|day| day.wsc_starch))
        }),
        ("forage.verdict", |i| {
            let mut given = vec![("starch", Analyte::Starch), ("wsc", Analyte::Wsc)];
            if i.optional_text("esc").is_some() {
                given.push(("esc", Analyte::Esc));
            }
            let report = typed(i, &given)?;
            let level = match i.text("risk")? {
                "proven" => RiskLevel::Proven,
                "not_known" => RiskLevel::NotKnown,
                _ => return Err(i.unknown("risk")),
            };
            let limits = sugar_limits(level).ok_or("no limit")?;
            let sugar = estimate(&lot(ForageClass::Grass, report), Fed::Dry);
            Ok(rank(judge(&sugar, &limits).verdict))
        }),
        ("forage.composite_error", |i| {
            #[allow(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a small count in the table"
            )]
            let cores = i.number("cores")? as u32;
            percent(composite_error(
                ShareOfDm::percent(i.number("between")?),
                cores,
            ))
        }),
    ]
}

fn of_classes_and_cost() -> Formulas {
    vec![
        ("forage.class_nsc", |i| {
            Ok(class(i, "class")?.profile().nsc().mean.to_percent())
        }),
        ("forage.class_mean", class_mean as Formula),
        ("forage.class_energy", |i| {
            Ok(class(i, "class")?.profile().energy().to_mcal_per_kg())
        }),
        ("forage.wsc_from_esc", |i| {
            let report = read(vec![
                (Analyte::Esc, i.number("esc")?),
                (Analyte::Starch, 0.0),
            ])?;
            believed(estimate(&lot(class(i, "class")?, report), Fed::Dry).wsc_starch)
        }),
        ("forage.mix_calcium_to_phosphorus", |i| {
            let parts = classes(i)?;
            let grams = |analyte| -> Result<f64, String> {
                let mut sum = 0.0;
                for (class, dry) in parts {
                    let content = supply(&of_class(class), Fed::Dry)
                        .content(analyte)
                        .ok_or("unknown")?;
                    sum += content.value.in_dry(dry).to_g();
                }
                Ok(sum)
            };
            Ok(grams(Analyte::Calcium)? / grams(Analyte::Phosphorus)?)
        }),
        ("forage.lucerne_over", |i| {
            let kg = |key| i.number(key).map(DryMatter::kg);
            let lot = of_class(ForageClass::Lucerne);
            hazards(&lot, Fed::Dry, kg("kg")?, kg("all")?)
                .into_iter()
                .find_map(|hazard| match hazard {
                    Hazard::LucerneOverShare { part, .. } => Some(part * 100.0),
                    _ => None,
                })
                .ok_or_else(|| "within".to_owned())
        }),
        ("forage.cost_per_kg", |i| Ok(cost(i)?.0)),
        ("forage.cost_per_mcal", |i| Ok(cost(i)?.1)),
    ]
}

/// The parts of a full analysis, by the name of the input.
const FULL: [(&str, Analyte); 4] = [
    ("protein", Analyte::CrudeProtein),
    ("ndf", Analyte::Ndf),
    ("fat", Analyte::Fat),
    ("ash", Analyte::Ash),
];

fn read(values: Vec<(Analyte, f64)>) -> Result<LabReport, String> {
    let raw = RawReport {
        values,
        ..RawReport::empty(Basis::DryMatter)
    };
    LabReport::read(raw)
        .map(|(report, _)| report)
        .map_err(|e| format!("{e:?}"))
}

/// A report on dry matter of the inputs that are there.
fn typed(i: &Inputs, given: &[(&str, Analyte)]) -> Result<LabReport, String> {
    let mut values = Vec::new();
    for (key, analyte) in given {
        if let Some(value) = i.optional_number(key)? {
            values.push((*analyte, value));
        }
    }
    read(values)
}

fn of_class(class: ForageClass) -> Lot {
    Lot::of_class(LotId("lot".to_owned()), "hay", class)
}

pub(crate) fn lot(class: ForageClass, report: LabReport) -> Lot {
    Lot {
        reports: vec![report],
        ..of_class(class)
    }
}

fn untested(class: ForageClass) -> SugarEstimate {
    estimate(&of_class(class), Fed::Dry)
}

/// 0 over, 1 not proven, 2 within.
pub(crate) fn rank(verdict: Verdict) -> f64 {
    match verdict {
        Verdict::Over { .. } => 0.0,
        Verdict::NotProven { .. } => 1.0,
        Verdict::Within { .. } => 2.0,
    }
}

fn percent(share: Option<ShareOfDm>) -> Result<f64, String> {
    share
        .map(ShareOfDm::to_percent)
        .ok_or_else(|| "unknown".to_owned())
}

fn believed(belief: Option<Belief>) -> Result<f64, String> {
    percent(belief.map(|belief| belief.mean))
}

fn dense<E: std::fmt::Debug>(energy: Result<EnergyDensity, E>) -> Result<f64, String> {
    energy
        .map(EnergyDensity::to_mcal_per_kg)
        .map_err(|e| format!("{e:?}"))
}

fn dry(i: &Inputs) -> Result<DryFraction, String> {
    DryFraction::percent(i.number("dry")?).map_err(|e| e.to_string())
}

fn belief(i: &Inputs) -> Result<Belief, String> {
    Ok(Belief::percent(i.number("mean")?, i.number("spread")?))
}

fn limit(i: &Inputs) -> Result<ShareOfDm, String> {
    i.number("limit").map(ShareOfDm::percent)
}

fn class(i: &Inputs, key: &str) -> Result<ForageClass, String> {
    Ok(match i.text(key)? {
        "grass" => ForageClass::Grass,
        "timothy_orchard" => ForageClass::TimothyOrchard,
        "ryegrass" => ForageClass::Ryegrass,
        "grass_legume" => ForageClass::GrassLegume,
        "lucerne" => ForageClass::Lucerne,
        "oat" => ForageClass::Oat,
        "wheat" => ForageClass::Wheat,
        "barley" => ForageClass::Barley,
        "bermuda" => ForageClass::Bermuda,
        "wheat_straw" => ForageClass::WheatStraw,
        _ => return Err(i.unknown(key)),
    })
}

fn classes(i: &Inputs) -> Result<[(ForageClass, DryMatter); 2], String> {
    let kg = |key| i.number(key).map(DryMatter::kg);
    Ok([
        (class(i, "class1")?, kg("kg1")?),
        (class(i, "class2")?, kg("kg2")?),
    ])
}

fn class_mean(i: &Inputs) -> Result<f64, String> {
    let name = i.text("analyte")?;
    let analyte = Analyte::ALL
        .iter()
        .copied()
        .find(|analyte| {
            let field = analyte.field();
            field == format!("{name}_percent") || field == format!("{name}_mg_per_kg")
        })
        .ok_or_else(|| i.unknown("analyte"))?;
    supply(&of_class(class(i, "class")?), Fed::Dry)
        .content(analyte)
        .map(|content| analyte.in_unit(content.value))
        .ok_or_else(|| "not known".to_owned())
}

/// Minor units for a kilogram of dry matter and for a megacalorie.
fn cost(i: &Inputs) -> Result<(f64, f64), String> {
    #[allow(
        clippy::cast_possible_truncation,
        reason = "whole minor units in the table"
    )]
    let minor = i.number("tonne")? as i64;
    let currency = Currency::from_code("EUR").map_err(|e| format!("{e:?}"))?;
    let losses = Losses {
        waste: i.optional_number("waste")?.unwrap_or(0.0),
        soaked_out: i.optional_number("soaked_out")?.unwrap_or(0.0),
    };
    let energy = EnergyDensity::mcal_per_kg(i.number("energy")?);
    let price = Price::Tonne(Money { minor, currency });
    feed_cost(price, dry(i)?, energy, losses)
        .map(|cost| (cost.minor_per_kg_dry, cost.minor_per_mcal))
        .map_err(|e| format!("{e:?}"))
}
