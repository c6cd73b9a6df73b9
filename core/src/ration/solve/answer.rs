//! What comes back.

/// What a problem came to.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// The cheapest, proven to be it.
    Cheapest(Solution),
    /// Nothing fits, and it is proven; [`super::shortfall`] says what comes closest, and what would mend it.
    NothingFits,
    /// The cost can fall without end: a column with a gain has no upper bound that holds it.
    WithoutEnd {
        /// The index of such a column.
        column: usize,
    },
    /// Whole doses and numbers of foods were tried for as long as is allowed, and it is not proven which is cheapest.
    CutOff {
        /// The cheapest that was found, if any.
        best: Option<Solution>,
        /// No ration costs less than this.
        least: f64,
    },
}

impl Answer {
    /// The ration, proven to be the cheapest or not.
    pub fn solution(&self) -> Option<&Solution> {
        match self {
            Self::Cheapest(solution) => Some(solution),
            Self::CutOff { best, .. } => best.as_ref(),
            Self::NothingFits | Self::WithoutEnd { .. } => None,
        }
    }
}

/// Where an amount or a sum stands between its bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// At its lower bound, which holds it.
    AtLower,
    /// Between its bounds.
    Between,
    /// At its upper bound, which holds it.
    AtUpper,
    /// At both: it is locked.
    Locked,
}

/// One amount of an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// How much, in the column's unit.
    pub value: f64,
    /// Where it stands.
    pub stands: Stands,
    /// How much the cost rises with one more unit of it than it has here, all else made to fit: at a lower bound, by how
    /// much a unit is too dear; below nothing at an upper bound, what one more unit would save. Nothing between bounds.
    pub price: f64,
}

/// One sum of an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sum {
    /// How much it comes to, in the row's unit.
    pub value: f64,
    /// Where it stands.
    pub stands: Stands,
    /// The shadow price: how much the cost rises with each unit by which the limit that holds it is raised. Above nothing
    /// at a lower limit, below at an upper one. Where raising and lowering the limit change the cost at two rates, it lies
    /// between them. Whole doses, and which foods are used, stay as they are.
    pub price: f64,
}

/// How closely an answer was held against the problem as it was given. Each is a share, and each was within what is
/// allowed, or there would be no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Certificate {
    /// The worst row or bound, as a share of the larger of 1, its limit and the sum of its terms without their signs.
    pub rows: f64,
    /// The worst price, as a share of what it is made up of.
    pub prices: f64,
    /// The cost less what the prices prove, as a share of the cost, with whole doses and foods as they are.
    pub gap: f64,
    /// No ration at all costs less than this; proven over every branch.
    pub least: f64,
    /// How many branches were looked at.
    pub branches: usize,
}

/// A ration.
#[derive(Clone, Debug, PartialEq)]
pub struct Solution {
    /// What it costs.
    pub cost: f64,
    /// The amounts, one a column.
    pub amounts: Vec<Amount>,
    /// The sums, one a row.
    pub sums: Vec<Sum>,
    /// How closely it was checked.
    pub certificate: Certificate,
}

impl Solution {
    /// The indices of the columns that are used.
    pub fn used(&self) -> Vec<usize> {
        self.amounts
            .iter()
            .enumerate()
            .filter(|(_, amount)| amount.value.abs() > 0.0)
            .map(|(column, _)| column)
            .collect()
    }
}
