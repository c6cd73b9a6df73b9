//! Where every number comes from.
//!
//! - [`Work`] is the bibliography: one variant a publication, with its citation.
//! - [`Mark`] says how far a value can be trusted: read in the publication, worked out from such values, from memory,
//!   common practice, or our own judgement.
//! - [`Published`] is a constant with its work, its place in it and its mark. Every room keeps its constants in its own
//!   `published.rs` and lists them; [`crate::constants`] joins the lists.
//! - [`Provenance`] is what a line of a plan carries: the constants and the records it came from.

mod published;
mod works;

pub use published::{Constant, Mark, Published};
pub use works::{Citation, Work};

pub(crate) use published::list_constants;

/// The id of a stored record, opaque here.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct RecordId(pub String);

/// What a figure came from.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Source {
    /// A constant, by its id; see [`crate::constants`].
    Constant(&'static str),
    /// A record that a person made.
    Record(RecordId),
    /// A default that stands in for something nobody has at hand; the field it stands for.
    Default(&'static str),
}

/// The sources of one figure, in the order they were used, each once.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Provenance(Vec<Source>);

impl Provenance {
    /// Nothing yet.
    pub const fn new() -> Self {
        Self(Vec::new())
    }

    /// Adds a constant.
    #[must_use]
    pub fn constant<T>(self, constant: &Published<T>) -> Self {
        self.with(Source::Constant(constant.id))
    }

    /// Adds a source, once.
    #[must_use]
    pub fn with(mut self, source: Source) -> Self {
        if !self.0.contains(&source) {
            self.0.push(source);
        }
        self
    }

    /// Adds everything another figure came from.
    #[must_use]
    pub fn and(self, other: &Self) -> Self {
        other.0.iter().cloned().fold(self, Self::with)
    }

    /// The sources in order.
    pub fn sources(&self) -> &[Source] {
        &self.0
    }
}

/// The exact conversions of the room `units`, each with its work.
pub fn constants() -> Vec<Constant> {
    use crate::units::published as u;
    let exact = |id, value: f64, unit| Constant {
        id,
        value: value.to_string(),
        unit,
        work: Work::ExactByDefinition,
        place: "definition",
        mark: Mark::Published,
    };
    vec![
        exact("units.kg_per_lb", u::KG_PER_LB, "kg"),
        exact("units.lb_per_stone", u::LB_PER_STONE, "lb"),
        exact("units.oz_per_lb", u::OZ_PER_LB, "oz"),
        exact("units.cm_per_inch", u::CM_PER_INCH, "cm"),
        exact("units.cm_per_m", u::CM_PER_M, "cm"),
        exact("units.sq_m_per_hectare", u::SQ_M_PER_HECTARE, "m2"),
        exact("units.sq_m_per_acre", u::SQ_M_PER_ACRE, "m2"),
        exact("units.inches_per_hand", u::INCHES_PER_HAND, "in"),
        exact("units.mj_per_mcal", u::MJ_PER_MCAL, "MJ"),
        exact("units.fahrenheit_at_zero", u::FAHRENHEIT_AT_ZERO, "degF"),
        exact(
            "units.fahrenheit_per_celsius",
            u::FAHRENHEIT_PER_CELSIUS,
            "degF",
        ),
        Constant {
            id: "units.lowest_dry_percent",
            value: u::LOWEST_DRY_PERCENT.to_string(),
            unit: "% dry matter",
            work: Work::Tussock,
            place: "units/published.rs",
            mark: Mark::Ours,
        },
    ]
}
