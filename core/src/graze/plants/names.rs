//! The plants of the catalogue, each with its stable key, its common and its scientific name.

/// A plant of the catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PlantId {
    /// Perennial ryegrass, *Lolium perenne*.
    PerennialRyegrass,
    /// Italian ryegrass, *Lolium multiflorum*.
    ItalianRyegrass,
    /// Festulolium, *×Festulolium*.
    Festulolium,
    /// Timothy, *Phleum pratense*.
    Timothy,
    /// Oats, *Avena sativa*.
    Oats,
    /// Barley, *Hordeum vulgare*.
    Barley,
    /// Wheat, *Triticum aestivum*.
    Wheat,
    /// Tall fescue, *Festuca arundinacea*.
    TallFescue,
    /// Smooth meadow-grass (bluegrass), *Poa pratensis*.
    SmoothMeadowgrass,
    /// Smooth brome, *Bromus inermis*.
    SmoothBrome,
    /// Cocksfoot (orchardgrass), *Dactylis glomerata*.
    Cocksfoot,
    /// Meadow brome, *Bromus riparius*.
    MeadowBrome,
    /// Bent, *Agrostis species*.
    Bent,
    /// Red fescue, *Festuca rubra*.
    RedFescue,
    /// Annual (Wimmera) ryegrass, *Lolium rigidum*.
    AnnualRyegrass,
    /// Phalaris, *Phalaris aquatica*.
    Phalaris,
    /// Couch (bermudagrass), *Cynodon dactylon*.
    Bermudagrass,
    /// Teff, *Eragrostis tef*.
    Teff,
    /// Rhodes grass, *Chloris gayana*.
    RhodesGrass,
    /// Paspalum (dallis grass), *Paspalum dilatatum*.
    Paspalum,
    /// Crabgrass, *Digitaria species*.
    Crabgrass,
    /// Pangola grass, *Digitaria eriantha*.
    Pangola,
    /// Kangaroo grass (red grass), *Themeda triandra*.
    KangarooGrass,
    /// Buffel grass, *Cenchrus ciliaris*.
    Buffel,
    /// Kikuyu, *Cenchrus clandestinus*.
    Kikuyu,
    /// Setaria, *Setaria sphacelata*.
    Setaria,
    /// Guinea grass (green panic), *Megathyrsus maximus*.
    GuineaGrass,
    /// Para grass, *Urochloa mutica*.
    ParaGrass,
    /// Signal grass, *Urochloa decumbens*.
    SignalGrass,
    /// Koronivia grass, *Urochloa humidicola*.
    KoroniviaGrass,
    /// Sorghum and sudan grass, *Sorghum bicolor*.
    Sorghum,
    /// Johnson grass, *Sorghum halepense*.
    JohnsonGrass,
    /// White clover, *Trifolium repens*.
    WhiteClover,
    /// Red clover, *Trifolium pratense*.
    RedClover,
    /// Alsike clover, *Trifolium hybridum*.
    AlsikeClover,
    /// Lucerne (alfalfa), *Medicago sativa*.
    Lucerne,
    /// Ragwort, *Jacobaea vulgaris*.
    Ragwort,
    /// Buttercup, *Ranunculus species*.
    Buttercup,
    /// Wild radish, *Raphanus raphanistrum*.
    WildRadish,
    /// Onion grass, *Romulea rosea*.
    OnionGrass,
    /// Cat's ear (flatweed), *Hypochaeris radicata*.
    Flatweed,
    /// Horsetail, *Equisetum species*.
    Horsetail,
    /// Bracken, *Pteridium aquilinum*.
    Bracken,
    /// Sycamore, *Acer pseudoplatanus*.
    Sycamore,
    /// Box elder, *Acer negundo*.
    BoxElder,
    /// Red maple, *Acer rubrum*.
    RedMaple,
    /// Cherry and cherry laurel, *Prunus species*.
    Cherry,
    /// Oak, *Quercus species*.
    Oak,
    /// Yew, *Taxus species*.
    Yew,
}

/// What manner of plant it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Growth {
    /// A grass of cool seasons (C3): it stores fructan.
    CoolGrass,
    /// A grass of warm seasons (C4): sugars and starch, no fructan.
    WarmGrass,
    /// A cereal, grazed green.
    Cereal,
    /// A clover or lucerne.
    Legume,
    /// A herb, fern or horsetail.
    Herb,
    /// A tree or shrub.
    Tree,
}

/// The names of a plant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Names {
    key: &'static str,
    common: &'static str,
    scientific: &'static str,
    growth: Growth,
}

const fn names(
    key: &'static str,
    common: &'static str,
    scientific: &'static str,
    growth: Growth,
) -> Names {
    Names {
        key,
        common,
        scientific,
        growth,
    }
}

impl PlantId {
    /// All, in the order of the catalogue.
    pub const ALL: &'static [Self] = &[
        Self::PerennialRyegrass,
        Self::ItalianRyegrass,
        Self::Festulolium,
        Self::Timothy,
        Self::Oats,
        Self::Barley,
        Self::Wheat,
        Self::TallFescue,
        Self::SmoothMeadowgrass,
        Self::SmoothBrome,
        Self::Cocksfoot,
        Self::MeadowBrome,
        Self::Bent,
        Self::RedFescue,
        Self::AnnualRyegrass,
        Self::Phalaris,
        Self::Bermudagrass,
        Self::Teff,
        Self::RhodesGrass,
        Self::Paspalum,
        Self::Crabgrass,
        Self::Pangola,
        Self::KangarooGrass,
        Self::Buffel,
        Self::Kikuyu,
        Self::Setaria,
        Self::GuineaGrass,
        Self::ParaGrass,
        Self::SignalGrass,
        Self::KoroniviaGrass,
        Self::Sorghum,
        Self::JohnsonGrass,
        Self::WhiteClover,
        Self::RedClover,
        Self::AlsikeClover,
        Self::Lucerne,
        Self::Ragwort,
        Self::Buttercup,
        Self::WildRadish,
        Self::OnionGrass,
        Self::Flatweed,
        Self::Horsetail,
        Self::Bracken,
        Self::Sycamore,
        Self::BoxElder,
        Self::RedMaple,
        Self::Cherry,
        Self::Oak,
        Self::Yew,
    ];

    /// A stable key.
    pub const fn key(self) -> &'static str {
        self.names().key
    }

    /// The plant of a key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|plant| plant.key() == key)
    }

    /// Its common English name, with a second one in brackets where another country says so.
    pub const fn common(self) -> &'static str {
        self.names().common
    }

    /// Its scientific name.
    pub const fn scientific(self) -> &'static str {
        self.names().scientific
    }

    /// What manner of plant it is.
    pub const fn growth(self) -> Growth {
        self.names().growth
    }

    #[allow(clippy::too_many_lines, reason = "one arm a plant")]
    const fn names(self) -> Names {
        use Growth::{Cereal, CoolGrass, Herb, Legume, Tree, WarmGrass};
        match self {
            Self::PerennialRyegrass => names(
                "perennial_ryegrass",
                "perennial ryegrass",
                "Lolium perenne",
                CoolGrass,
            ),
            Self::ItalianRyegrass => names(
                "italian_ryegrass",
                "Italian ryegrass",
                "Lolium multiflorum",
                CoolGrass,
            ),
            Self::Festulolium => names("festulolium", "festulolium", "×Festulolium", CoolGrass),
            Self::Timothy => names("timothy", "timothy", "Phleum pratense", CoolGrass),
            Self::Oats => names("oats", "oats", "Avena sativa", Cereal),
            Self::Barley => names("barley", "barley", "Hordeum vulgare", Cereal),
            Self::Wheat => names("wheat", "wheat", "Triticum aestivum", Cereal),
            Self::TallFescue => names(
                "tall_fescue",
                "tall fescue",
                "Festuca arundinacea",
                CoolGrass,
            ),
            Self::SmoothMeadowgrass => names(
                "smooth_meadowgrass",
                "smooth meadow-grass (bluegrass)",
                "Poa pratensis",
                CoolGrass,
            ),
            Self::SmoothBrome => names("smooth_brome", "smooth brome", "Bromus inermis", CoolGrass),
            Self::Cocksfoot => names(
                "cocksfoot",
                "cocksfoot (orchardgrass)",
                "Dactylis glomerata",
                CoolGrass,
            ),
            Self::MeadowBrome => {
                names("meadow_brome", "meadow brome", "Bromus riparius", CoolGrass)
            }
            Self::Bent => names("bent", "bent", "Agrostis species", CoolGrass),
            Self::RedFescue => names("red_fescue", "red fescue", "Festuca rubra", CoolGrass),
            Self::AnnualRyegrass => names(
                "annual_ryegrass",
                "annual (Wimmera) ryegrass",
                "Lolium rigidum",
                CoolGrass,
            ),
            Self::Phalaris => names("phalaris", "phalaris", "Phalaris aquatica", CoolGrass),
            Self::Bermudagrass => names(
                "bermudagrass",
                "couch (bermudagrass)",
                "Cynodon dactylon",
                WarmGrass,
            ),
            Self::Teff => names("teff", "teff", "Eragrostis tef", WarmGrass),
            Self::RhodesGrass => names("rhodes_grass", "Rhodes grass", "Chloris gayana", WarmGrass),
            Self::Paspalum => names(
                "paspalum",
                "paspalum (dallis grass)",
                "Paspalum dilatatum",
                WarmGrass,
            ),
            Self::Crabgrass => names("crabgrass", "crabgrass", "Digitaria species", WarmGrass),
            Self::Pangola => names("pangola", "pangola grass", "Digitaria eriantha", WarmGrass),
            Self::KangarooGrass => names(
                "kangaroo_grass",
                "kangaroo grass (red grass)",
                "Themeda triandra",
                WarmGrass,
            ),
            Self::Buffel => names("buffel", "buffel grass", "Cenchrus ciliaris", WarmGrass),
            Self::Kikuyu => names("kikuyu", "kikuyu", "Cenchrus clandestinus", WarmGrass),
            Self::Setaria => names("setaria", "setaria", "Setaria sphacelata", WarmGrass),
            Self::GuineaGrass => names(
                "guinea_grass",
                "guinea grass (green panic)",
                "Megathyrsus maximus",
                WarmGrass,
            ),
            Self::ParaGrass => names("para_grass", "para grass", "Urochloa mutica", WarmGrass),
            Self::SignalGrass => names(
                "signal_grass",
                "signal grass",
                "Urochloa decumbens",
                WarmGrass,
            ),
            Self::KoroniviaGrass => names(
                "koronivia_grass",
                "koronivia grass",
                "Urochloa humidicola",
                WarmGrass,
            ),
            Self::Sorghum => names(
                "sorghum",
                "sorghum and sudan grass",
                "Sorghum bicolor",
                WarmGrass,
            ),
            Self::JohnsonGrass => names(
                "johnson_grass",
                "Johnson grass",
                "Sorghum halepense",
                WarmGrass,
            ),
            Self::WhiteClover => names("white_clover", "white clover", "Trifolium repens", Legume),
            Self::RedClover => names("red_clover", "red clover", "Trifolium pratense", Legume),
            Self::AlsikeClover => names(
                "alsike_clover",
                "alsike clover",
                "Trifolium hybridum",
                Legume,
            ),
            Self::Lucerne => names("lucerne", "lucerne (alfalfa)", "Medicago sativa", Legume),
            Self::Ragwort => names("ragwort", "ragwort", "Jacobaea vulgaris", Herb),
            Self::Buttercup => names("buttercup", "buttercup", "Ranunculus species", Herb),
            Self::WildRadish => names("wild_radish", "wild radish", "Raphanus raphanistrum", Herb),
            Self::OnionGrass => names("onion_grass", "onion grass", "Romulea rosea", Herb),
            Self::Flatweed => names(
                "flatweed",
                "cat's ear (flatweed)",
                "Hypochaeris radicata",
                Herb,
            ),
            Self::Horsetail => names("horsetail", "horsetail", "Equisetum species", Herb),
            Self::Bracken => names("bracken", "bracken", "Pteridium aquilinum", Herb),
            Self::Sycamore => names("sycamore", "sycamore", "Acer pseudoplatanus", Tree),
            Self::BoxElder => names("box_elder", "box elder", "Acer negundo", Tree),
            Self::RedMaple => names("red_maple", "red maple", "Acer rubrum", Tree),
            Self::Cherry => names("cherry", "cherry and cherry laurel", "Prunus species", Tree),
            Self::Oak => names("oak", "oak", "Quercus species", Tree),
            Self::Yew => names("yew", "yew", "Taxus species", Tree),
        }
    }
}
