//! Foods, labels and rations, against the tables and worked examples they come from.

use tussock_core::ration::{Content, TypicalFood};
use tussock_tests::reference::{Formula, Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![("ration.content", content as Formula)]
}

pub fn rows() -> RowCounts {
    vec![("nasem_2021", 27)]
}

pub fn food(inputs: &Inputs) -> Result<TypicalFood, String> {
    Ok(match inputs.text("food")? {
        "beet_pulp" => TypicalFood::BeetPulp,
        "beet_pulp_molassed" => TypicalFood::BeetPulpMolassed,
        "soya_hulls" => TypicalFood::SoyaHulls,
        "lucerne_chaff" => TypicalFood::LucerneChaff,
        "lucerne_pellets" => TypicalFood::LucernePellets,
        "wheat_bran" => TypicalFood::WheatBran,
        "oats" => TypicalFood::Oats,
        "salt" => TypicalFood::Salt,
        "copper_sulphate" => TypicalFood::CopperSulphate,
        "zinc_sulphate" => TypicalFood::ZincSulphate,
        _ => return Err(inputs.unknown("food")),
    })
}

/// A number of the catalogue on dry matter.
fn content(inputs: &Inputs) -> Result<f64, String> {
    let content =
        Content::from_key(inputs.text("content")?).ok_or_else(|| inputs.unknown("content"))?;
    food(inputs)?
        .number(content)
        .map(|stated| stated.value)
        .ok_or_else(|| "not known".to_owned())
}
