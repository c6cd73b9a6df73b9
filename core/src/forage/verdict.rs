//! The verdict on sugar: within the limit, over it, or not proven.

use super::chance::Belief;
use super::estimate::{SugarEstimate, SugarNote, SugarOrigin};
use super::published as p;
use crate::limits::SugarLimits;
use crate::sources::Provenance;
use crate::units::ShareOfDm;

/// Which sum was judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SugarMeasure {
    /// Water-soluble carbohydrate + starch.
    WscStarch,
    /// Ethanol-soluble carbohydrate + starch.
    EscStarch,
}

/// Whether the forage is under its limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Verdict {
    /// The chance of being under the limit is at least 90 %, and nothing else speaks against it.
    Within {
        /// That chance, 0 to 1.
        chance: f64,
    },
    /// The chance of being under the limit is at most 10 %.
    Over {
        /// That chance, 0 to 1.
        chance: f64,
    },
    /// Neither.
    NotProven {
        /// The chance of being under the limit, 0 to 1; `None` when the sugar is not known.
        chance: Option<f64>,
    },
}

/// What keeps a forage from being proven, or should be known beside the verdict.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// Nobody tested it.
    Untested,
    /// Tested, and too near the limit for the spread of a test.
    NearLimit,
    /// ESC + starch passes and WSC + starch is over 12 %: two conventions disagree.
    ConventionsDisagree {
        /// WSC + starch.
        wsc_starch: ShareOfDm,
        /// It was reckoned from ESC, not tested.
        reckoned: bool,
    },
    /// Haylage raises insulin more than hay of the same sugar: passing is not enough for this animal.
    Haylage,
    /// It was soaked and the soaked hay was not tested.
    SoakedUntested,
    /// Cereal hay is high until tested.
    CerealUntested,
    /// Starch was not tested; the default for the class stands in.
    StarchAssumed,
    /// A part of the day whose sugar nobody knows.
    UnknownPart {
        /// How much of the dry matter, 0 to 1.
        part: f64,
    },
}

/// A way out of "not proven" or "over".
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WayOut {
    /// Soak it; that lowers the sugar and proves nothing by itself.
    Soak,
    /// Send a sample to a laboratory.
    Test,
    /// Send a sample of the soaked hay.
    TestSoaked,
    /// Feed another lot.
    AnotherLot,
    /// Give less grass.
    LessGrass,
}

/// A verdict with everything it rests on.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgement {
    /// The verdict.
    pub verdict: Verdict,
    /// Which sum was judged; `None` when the sugar is not known.
    pub measure: Option<SugarMeasure>,
    /// What is believed of that sum.
    pub belief: Option<Belief>,
    /// The limit it was held against.
    pub limit: ShareOfDm,
    /// What it rests on.
    pub origin: SugarOrigin,
    /// What keeps it from being proven, or should be known beside it.
    pub doubts: Vec<Doubt>,
    /// What can be done when it is not within.
    pub ways_out: Vec<WayOut>,
    /// Its sources.
    pub provenance: Provenance,
}

impl Verdict {
    /// Whether the forage may be fed to the limit without more ado.
    pub const fn is_within(self) -> bool {
        matches!(self, Self::Within { .. })
    }

    /// The chance of being under the limit.
    pub const fn chance(self) -> Option<f64> {
        match self {
            Self::Within { chance } | Self::Over { chance } => Some(chance),
            Self::NotProven { chance } => chance,
        }
    }

    /// By the chance alone.
    pub(crate) fn of_chance(chance: f64) -> Self {
        if chance >= *p::CHANCE_WITHIN {
            Self::Within { chance }
        } else if chance <= *p::CHANCE_OVER {
            Self::Over { chance }
        } else {
            Self::NotProven {
                chance: chance.is_finite().then_some(chance),
            }
        }
    }

    fn at_best_not_proven(self) -> Self {
        match self {
            Self::Within { chance } => Self::NotProven {
                chance: Some(chance),
            },
            other => other,
        }
    }
}

/// Judges a forage, or a whole day's dry matter, against the limits of an animal.
///
/// ESC + starch is judged where it is known, else WSC + starch. Where doubt counts against (an animal that had
/// laminitis, has insulin dysregulation, or is likely to), ESC + starch does not pass while WSC + starch is over 12 %,
/// and haylage is never within by its sugar alone. Hay that was soaked untested keeps the chance of the dry hay: it is
/// within only when the dry hay was, and over only when it would be even after the greatest loss.
pub fn judge(sugar: &SugarEstimate, limits: &SugarLimits) -> Judgement {
    let strict = limits.doubt_counts_against;
    let judged = match (sugar.esc_starch, sugar.wsc_starch) {
        (Some(belief), _) => Some((SugarMeasure::EscStarch, belief)),
        (None, Some(belief)) => Some((SugarMeasure::WscStarch, belief)),
        (None, None) => None,
    };
    let limit = match judged {
        Some((SugarMeasure::EscStarch, _)) => limits.esc_and_starch,
        Some((SugarMeasure::WscStarch, _)) | None => limits.wsc_and_starch,
    };
    let mut doubts = Vec::new();
    let mut verdict = match judged {
        Some((_, belief)) => Verdict::of_chance(belief.chance_at_most(limit)),
        None => Verdict::NotProven { chance: None },
    };
    if let (Some(esc), Some(wsc)) = (sugar.esc_starch, sugar.wsc_starch)
        && esc.mean <= limit
        && wsc.mean > limits.conventions_disagree_above
    {
        doubts.push(Doubt::ConventionsDisagree {
            wsc_starch: wsc.mean,
            reckoned: sugar.has(SugarNote::WscFromEsc),
        });
        if strict {
            verdict = verdict.at_best_not_proven();
        }
    }
    let mut provenance = sugar
        .provenance
        .clone()
        .constant(&p::CHANCE_WITHIN)
        .constant(&p::CHANCE_OVER)
        .and(&limits.from);
    if sugar.has(SugarNote::Haylage) && strict && !*p::HAYLAGE_ENOUGH {
        provenance = provenance.constant(&p::HAYLAGE_ENOUGH);
        doubts.push(Doubt::Haylage);
        verdict = verdict.at_best_not_proven();
    }
    if sugar.unknown_part > 0.0 {
        doubts.push(Doubt::UnknownPart {
            part: sugar.unknown_part,
        });
        verdict = verdict.at_best_not_proven();
    }
    if sugar.has(SugarNote::CerealUntested) {
        doubts.push(Doubt::CerealUntested);
        verdict = verdict.at_best_not_proven();
    }
    if sugar.origin == SugarOrigin::SoakedUntested {
        doubts.push(Doubt::SoakedUntested);
        let best = judged.map(|(_, belief)| belief.mean * sugar.least_left);
        if let (Verdict::Over { chance }, Some(best)) = (verdict, best)
            && best <= limit
        {
            verdict = Verdict::NotProven {
                chance: Some(chance),
            };
        }
    }
    if sugar.has(SugarNote::StarchAssumed) {
        doubts.push(Doubt::StarchAssumed);
    }
    if !verdict.is_within() {
        let by_chance = judged.map(|(_, belief)| Verdict::of_chance(belief.chance_at_most(limit)));
        if sugar.has(SugarNote::Untested) {
            doubts.push(Doubt::Untested);
        } else if sugar.origin != SugarOrigin::SoakedUntested
            && matches!(by_chance, Some(Verdict::NotProven { .. }))
        {
            doubts.push(Doubt::NearLimit);
        }
    }
    let ways_out = if verdict.is_within() {
        Vec::new()
    } else {
        ways_out(sugar)
    };
    Judgement {
        verdict,
        measure: judged.map(|(measure, _)| measure),
        belief: judged.map(|(_, belief)| belief),
        limit,
        origin: sugar.origin,
        doubts,
        ways_out,
        provenance,
    }
}

/// What can be done, cheapest first.
fn ways_out(sugar: &SugarEstimate) -> Vec<WayOut> {
    let mut ways = Vec::new();
    if sugar.has(SugarNote::Grass) {
        ways.push(WayOut::LessGrass);
    }
    let soaked = sugar.origin == SugarOrigin::SoakedUntested;
    // Of a day some part may be hay that can be soaked; haylage and grass alone cannot.
    let can_soak = sugar.origin == SugarOrigin::Mixed
        || !(sugar.has(SugarNote::Haylage) || sugar.has(SugarNote::Grass));
    if !soaked && can_soak {
        ways.push(WayOut::Soak);
    }
    if soaked {
        ways.push(WayOut::TestSoaked);
    } else if sugar.has(SugarNote::Untested) || sugar.unknown_part > 0.0 {
        ways.push(WayOut::Test);
    }
    ways.push(WayOut::AnotherLot);
    ways
}
