//! What typical foods hold.
//!
//! Facts typed one by one for the foods that a feed room meets, a few of each publication. All on dry matter: dry matter
//! itself in % as fed; protein, fibre, sugar, starch and what is shown in grams in %; what is shown in milligrams in
//! mg/kg; vitamins in IU/kg; energy in Mcal/kg. Selenium follows the soil, so no plant has a mean of it here; nor has
//! lucerne, which is forage, one of iron and manganese. What is not in a row is not known.

use super::super::content::Content;
use crate::limits::Nutrient as N;
use crate::sources::{Mark, Published, Work, list_constants};

/// Contents that stand together in one place of one publication.
pub type Row = &'static [(Content, f64)];

use Content::{Dha, DryMatter, Energy, NeutralFibre, Of, Starch, SugarStarch};

/// Protein, neutral fibre, starch, sugar and starch; calcium, phosphorus, magnesium, potassium, sodium; copper, zinc.
const fn library(
    dry: f64,
    [protein, fibre, starch, sugar_starch]: [f64; 4],
    [ca, p, mg, k, na]: [f64; 5],
    [cu, zn]: [f64; 2],
) -> [(Content, f64); 12] {
    [
        (DryMatter, dry),
        (Of(N::CrudeProtein), protein),
        (NeutralFibre, fibre),
        (Starch, starch),
        (SugarStarch, sugar_starch),
        (Of(N::Calcium), ca),
        (Of(N::Phosphorus), p),
        (Of(N::Magnesium), mg),
        (Of(N::Potassium), k),
        (Of(N::Sodium), na),
        (Of(N::Copper), cu),
        (Of(N::Zinc), zn),
    ]
}

/// Iron and manganese of what is no forage.
const fn soil(iron: f64, manganese: f64) -> [(Content, f64); 2] {
    [(Of(N::Iron), iron), (Of(N::Manganese), manganese)]
}

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("ration.food.", $key),
                value: $value,
                unit: $unit,
                work: Work::$work,
                place: $place,
                mark: Mark::$mark,
            };
        )*
        list_constants![$($name),*];
    };
}

published! {
    // ---- fibre ----
    /// Beet pulp without molasses.
    BEET_PULP: Row = &library(92.0, [9.9, 46.9, 0.6, 6.3], [0.77, 0.08, 0.26, 0.49, 0.11], [8.1, 21.0]); "beet_pulp", "of dry matter", Nasem2021, "feed library, beet pulp, dry, no molasses", Published;
    /// Iron and manganese of beet pulp, much of it soil.
    BEET_PULP_SOIL: Row = &soil(588.0, 78.0); "beet_pulp_soil", "mg/kg dry matter", Nasem2021, "feed library, beet pulp, dry, no molasses", Published;
    /// Energy of beet pulp, too low rather than too high: the equation undervalues pulp.
    BEET_PULP_ENERGY: Row = &[(Energy, 2.57)]; "beet_pulp_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library; poor for beet pulp", FromMemory;
    /// Beet pulp with molasses.
    BEET_PULP_MOLASSED: Row = &library(91.0, [8.9, 39.7, 1.1, 14.9], [1.18, 0.09, 0.25, 0.59, 0.14], [8.6, 24.0]); "beet_pulp_molassed", "of dry matter", Nasem2021, "feed library, beet pulp, molassed", Published;
    /// Iron and manganese of molassed beet pulp.
    BEET_PULP_MOLASSED_SOIL: Row = &soil(614.0, 63.0); "beet_pulp_molassed_soil", "mg/kg dry matter", Nasem2021, "feed library, beet pulp, molassed", Published;
    /// Energy of molassed beet pulp, too low rather than too high.
    BEET_PULP_MOLASSED_ENERGY: Row = &[(Energy, 2.66)]; "beet_pulp_molassed_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library; poor for beet pulp", FromMemory;
    /// Lysine of beet pulp, either kind.
    BEET_PULP_LYSINE: Row = &[(Of(N::Lysine), 0.5)]; "beet_pulp_lysine", "% of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;
    /// Soya hulls.
    SOYA_HULLS: Row = &library(90.0, [11.9, 66.7, 1.0, 3.7], [0.64, 0.13, 0.28, 1.40, 0.01], [7.6, 47.0]); "soya_hulls", "of dry matter", Nasem2021, "feed library, soya hulls", Published;
    /// Iron and manganese of soya hulls.
    SOYA_HULLS_SOIL: Row = &soil(464.0, 21.0); "soya_hulls_soil", "mg/kg dry matter", Nasem2021, "feed library, soya hulls", Published;
    /// Energy of soya hulls, too low rather than too high.
    SOYA_HULLS_ENERGY: Row = &[(Energy, 1.99)]; "soya_hulls_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library; poor for soya hulls", FromMemory;
    /// Lysine of soya hulls.
    SOYA_HULLS_LYSINE: Row = &[(Of(N::Lysine), 0.7)]; "soya_hulls_lysine", "% of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;
    /// A fibre feed for animals that founder: the high end of its sugar, the middle of the rest.
    LOW_SUGAR: Row = &[(DryMatter, 90.0), (Energy, 2.3), (Of(N::CrudeProtein), 11.0), (NeutralFibre, 45.0), (Starch, 4.0), (SugarStarch, 10.0), (Of(N::Calcium), 1.1), (Of(N::Phosphorus), 0.4), (Of(N::Magnesium), 0.3), (Of(N::Sodium), 0.3), (Of(N::Copper), 30.0), (Of(N::Zinc), 100.0), (Of(N::Selenium), 0.3), (Of(N::VitaminE), 200.0)]; "low_sugar", "of dry matter", CommonPractice, "labels of complete fibre feeds, general profile", FromMemory;

    // ---- lucerne ----
    /// Lucerne chaff: chopped lucerne hay, nothing added.
    LUCERNE_CHAFF: Row = &library(88.0, [20.7, 41.1, 1.5, 10.5], [1.40, 0.28, 0.32, 2.38, 0.21], [9.7, 26.0]); "lucerne_chaff", "of dry matter", Nasem2021, "feed library, legume hay, mid-maturity", Published;
    /// Energy of lucerne chaff.
    LUCERNE_CHAFF_ENERGY: Row = &[(Energy, 2.37)]; "lucerne_chaff_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library", FromMemory;
    /// Lucerne pellets.
    LUCERNE_PELLETS: Row = &library(91.0, [19.5, 42.9, 1.8, 10.1], [1.50, 0.27, 0.30, 2.33, 0.12], [8.8, 23.0]); "lucerne_pellets", "of dry matter", Nasem2021, "feed library, lucerne meal", Published;
    /// Energy of lucerne pellets.
    LUCERNE_PELLETS_ENERGY: Row = &[(Energy, 2.29)]; "lucerne_pellets_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library", FromMemory;
    /// Lysine of lucerne, either kind.
    LUCERNE_LYSINE: Row = &[(Of(N::Lysine), 0.9)]; "lucerne_lysine", "% of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;

    // ---- cereals ----
    /// Wheat bran.
    WHEAT_BRAN: Row = &library(90.0, [17.4, 40.1, 20.8, 28.8], [0.13, 1.05, 0.43, 1.22, 0.03], [10.8, 77.0]); "wheat_bran", "of dry matter", Nasem2021, "feed library, wheat bran", Published;
    /// Iron and manganese of wheat bran.
    WHEAT_BRAN_SOIL: Row = &soil(163.0, 133.0); "wheat_bran_soil", "mg/kg dry matter", Nasem2021, "feed library, wheat bran", Published;
    /// Energy of wheat bran.
    WHEAT_BRAN_ENERGY: Row = &[(Energy, 2.83)]; "wheat_bran_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library", FromMemory;
    /// Lysine of wheat bran.
    WHEAT_BRAN_LYSINE: Row = &[(Of(N::Lysine), 0.7)]; "wheat_bran_lysine", "% of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;
    /// Oats.
    OATS: Row = &library(89.0, [12.2, 28.6, 44.7, 47.7], [0.14, 0.38, 0.14, 0.56, 0.01], [6.6, 33.0]); "oats", "of dry matter", Nasem2021, "feed library, oat grain", Published;
    /// Iron and manganese of oats.
    OATS_SOIL: Row = &soil(129.0, 53.0); "oats_soil", "mg/kg dry matter", Nasem2021, "feed library, oat grain", Published;
    /// Energy of oats.
    OATS_ENERGY: Row = &[(Energy, 3.29)]; "oats_energy", "Mcal/kg dry matter", Pagan1998, "equation on the row of the feed library", FromMemory;
    /// Lysine of oats.
    OATS_LYSINE: Row = &[(Of(N::Lysine), 0.45)]; "oats_lysine", "% of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;

    // ---- protein and fat ----
    /// Linseed, cooked or micronised. Its energy is not known here.
    LINSEED: Row = &[(DryMatter, 92.0), (Of(N::CrudeProtein), 23.0), (Of(N::Lysine), 0.9), (NeutralFibre, 25.0), (SugarStarch, 5.0), (Of(N::Calcium), 0.25), (Of(N::Phosphorus), 0.6), (Of(N::Magnesium), 0.4), (Of(N::Potassium), 0.9), (Of(N::Copper), 12.0), (Of(N::Zinc), 50.0)]; "linseed", "of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;
    /// Soybean meal, dehulled.
    SOYBEAN_MEAL: Row = &[(DryMatter, 90.0), (Energy, 3.7), (Of(N::CrudeProtein), 53.0), (Of(N::Lysine), 3.3), (NeutralFibre, 10.0), (Starch, 2.0), (SugarStarch, 14.0), (Of(N::Calcium), 0.35), (Of(N::Phosphorus), 0.7), (Of(N::Magnesium), 0.3), (Of(N::Potassium), 2.3), (Of(N::Copper), 20.0), (Of(N::Zinc), 55.0)]; "soybean_meal", "of dry matter", Nrc2007, "feed tables, order of magnitude", FromMemory;
    /// Vegetable oil.
    OIL: Row = &[(DryMatter, 100.0), (Energy, 9.0)]; "oil", "Mcal/kg dry matter", Nrc2007, "feed tables, vegetable oil", FromMemory;

    // ---- single substances ----
    /// Salt.
    SALT: Row = &[(DryMatter, 100.0), (Of(N::Sodium), 39.34), (Of(N::Chloride), 60.66)]; "salt", "% of dry matter", ExactByDefinition, "atomic masses of sodium and chlorine", WorkedOut;
    /// Limestone (calcium carbonate) for feed; 40.04 % when pure.
    LIMESTONE: Row = &[(DryMatter, 99.0), (Of(N::Calcium), 38.0)]; "limestone", "% of dry matter", Nrc2007, "feed tables, calcium carbonate", FromMemory;
    /// Dicalcium phosphate for feed.
    DICALCIUM_PHOSPHATE: Row = &[(DryMatter, 97.0), (Of(N::Calcium), 22.0), (Of(N::Phosphorus), 19.0)]; "dicalcium_phosphate", "% of dry matter", Nrc2007, "feed tables, dicalcium phosphate", FromMemory;
    /// Magnesium oxide for feed; 60.3 % when pure.
    MAGNESIUM_OXIDE: Row = &[(DryMatter, 98.0), (Of(N::Magnesium), 55.0)]; "magnesium_oxide", "% of dry matter", Nrc2007, "feed tables, magnesium oxide", FromMemory;
    /// Copper sulphate with five waters, by its formula.
    COPPER_SULPHATE: Row = &[(DryMatter, 100.0), (Of(N::Copper), 254_500.0), (Of(N::Sulphur), 12.84)]; "copper_sulphate", "mg/kg, sulphur in %", ExactByDefinition, "atomic masses, CuSO4 with 5 H2O, its water counted in", WorkedOut;
    /// Zinc sulphate with one water, by its formula.
    ZINC_SULPHATE: Row = &[(DryMatter, 100.0), (Of(N::Zinc), 364_300.0), (Of(N::Sulphur), 17.87)]; "zinc_sulphate", "mg/kg, sulphur in %", ExactByDefinition, "atomic masses, ZnSO4 with H2O, its water counted in", WorkedOut;
    /// Vitamin E powder with half of it acetate: 500 IU a gram.
    VITAMIN_E: Row = &[(DryMatter, 98.0), (Of(N::VitaminE), 510_000.0)]; "vitamin_e", "IU/kg dry matter", CommonPractice, "powder of 50 % acetate, 500 IU/g as fed", FromMemory;
    /// Selenium yeast.
    SELENIUM_YEAST: Row = &[(DryMatter, 95.0), (Of(N::Selenium), 2_100.0)]; "selenium_yeast", "mg/kg dry matter", CommonPractice, "usual strength, 2,000 mg/kg as fed", FromMemory;
    /// Dried algae with DHA. The rest of it is not known.
    DHA_SOURCE: Row = &[(DryMatter, 95.0), (Dha, 17.0)]; "dha_source", "% of dry matter", CommonPractice, "labels of dried algae, 16 to 18 %", FromMemory;
    /// Live yeast. What it holds is not known and is not why it is fed.
    LIVE_YEAST: Row = &[(DryMatter, 93.0)]; "live_yeast", "% as fed", CommonPractice, "dried yeast", FromMemory;
    /// What a single substance holds of what it is not made of.
    PURE: f64 = 0.0; "pure", "", CommonPractice, "impurities of salts, oil and vitamins are not counted", CommonPractice;

    // ---- how much of a food is looked at, in g/kg body weight a day ----
    /// Lucerne as chaff or pellets; its cap within the forage decides first.
    MOST_LEGUME: f64 = 5.0; "most_legume", "g/kg body weight", Tussock, "bound of what is tried; caps and limits decide", Ours;
    /// Fibre in a bucket and compound feeds.
    MOST_FIBRE: f64 = 5.0; "most_fibre", "g/kg body weight", Tussock, "bound of what is tried; caps and limits decide", Ours;
    /// Cereals; the limit of the meal decides first.
    MOST_CEREAL: f64 = 3.0; "most_cereal", "g/kg body weight", Tussock, "bound of what is tried; caps and limits decide", Ours;
    /// Protein meals.
    MOST_PROTEIN: f64 = 1.5; "most_protein", "g/kg body weight", Tussock, "bound of what is tried; caps and limits decide", Ours;
    /// Oil.
    MOST_FAT: f64 = 1.0; "most_fat", "g/kg body weight", CommonPractice, "100 mL for 100 kg, built up slowly", FromMemory;
    /// A single mineral by the spoon.
    MOST_MINERAL: f64 = 0.2; "most_mineral", "g/kg body weight", Tussock, "bound of what is tried; ceilings decide", Ours;
    /// Trace elements, selenium yeast and vitamins by the gram.
    MOST_TRACE: f64 = 0.02; "most_trace", "g/kg body weight", Tussock, "bound of what is tried; ceilings decide", Ours;
}
