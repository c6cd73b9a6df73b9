//! Animals on one hay.
//!
//! The group's ration is what is offered to all; a member's share is a band: by weight, times 0.7 to 1.4 (ours). The most
//! at-risk member sets hay, grass and soaking; the thinnest or shyest the floor; there is one more feeding place than
//! animals. What hangs is laid out as one day for all of them.

mod grass;
mod share;

pub use grass::{GroupGrass, GroupGrassDay};
pub(crate) use share::{lowest_allowed, share_of};

use super::build::{draft, eaten_within_h};
use super::draft::Draft;
use super::error::PlanError;
use super::input::{PlanFor, Soaked, Soaking};
use super::published::{SHARE_LEAST, SHARE_MOST};
use crate::animal::{AnimalId, GroupId, LotId, Risk, RiskLevel};
use crate::day::published::{DAY_DRY_MATTER, SCALE_STEP};
use crate::day::{DayNeeds, EatingRate, Layout, Mend, in_nets, lay_out_all, mends, places};
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{AsFed, BodyMass, DryFraction, DryMatter, LocalTime, PartOfBody, show};
use share::{floor, pile, separate, shares};

/// A group and its members, each as for a plan of its own on the same hays, visits and nets.
#[derive(Clone, Debug)]
pub struct GroupFor<'a> {
    /// The group.
    pub group: GroupId,
    /// Its name.
    pub name: String,
    /// Its members on the day.
    pub members: Vec<PlanFor<'a>>,
    /// The most that can hang for all of them at one visit, as fed; `None` when nets enough are there.
    pub most_at_once: Option<AsFed>,
}

/// Why no draft could be made for a group.
#[derive(Clone, Debug, PartialEq)]
pub struct NoGroupDraft {
    /// Why.
    pub error: PlanError,
    /// For which member; `None` where it is about all of them.
    pub animal: Option<AnimalId>,
}

/// What a member likely gets of what is offered.
#[derive(Clone, Debug, PartialEq)]
pub struct MemberShare {
    /// Its draft as if it were fed alone, under the group's hay and sugar rules.
    pub alone: Draft,
    /// Dry matter it likely gets, with the ends of what it may get.
    pub share: Ends<DryMatter>,
    /// The same as a part of its weight.
    pub level: Ends<PartOfBody>,
}

impl MemberShare {
    /// Dry matter of its own bucket: nobody shares that.
    pub fn bought(&self) -> DryMatter {
        bought(&self.alone)
    }
}

/// One hay of the pile.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupHay {
    /// The lot.
    pub lot: LotId,
    /// Its name.
    pub name: String,
    /// It is soaked.
    pub soaked: bool,
    /// Dry matter eaten of it a day, likely, after soaking.
    pub eaten: DryMatter,
    /// What is weighed out a day, before soaking.
    pub weigh_out: AsFed,
}

/// Why all get more than the sum of what each would get alone.
#[derive(Clone, Debug, PartialEq)]
pub struct RaisedForAll {
    /// For whom: the member that sets the floor.
    pub animal: AnimalId,
    /// By this factor.
    pub factor: f64,
}

/// Why two animals need separating at hay time.
#[derive(Clone, Debug, PartialEq)]
pub enum Separate {
    /// The others may push it off: of what each needs alone it would get under its floor, so that all get more.
    UnderFloor {
        /// Who would get too little.
        animal: AnimalId,
        /// The least it would get.
        least: PartOfBody,
        /// Its floor.
        floor: PartOfBody,
    },
    /// One must lose and another gain: one hay pile cannot do both.
    GoalsApart {
        /// Who must lose.
        loses: AnimalId,
        /// Who must gain.
        gains: AnimalId,
    },
    /// An animal that must not be restricted stands with one that is.
    NotWithRestricted {
        /// Who must not be restricted.
        animal: AnimalId,
        /// Who is.
        restricted: AnimalId,
    },
}

/// A group's plan that safety has not judged.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupDraft {
    /// The group.
    pub group: GroupId,
    /// Its name.
    pub name: String,
    /// Its members, in their order.
    pub members: Vec<MemberShare>,
    /// Forage offered to all a day, likely dry matter.
    pub forage: DryMatter,
    /// The same, hay by hay.
    pub hays: Vec<GroupHay>,
    /// How the soaked ones are soaked; `None` when none is.
    pub soaking: Option<Soaking>,
    /// Feeding places: one more than animals.
    pub places: usize,
    /// How sugar is treated for all: as for the most at-risk member.
    pub risk: RiskLevel,
    /// Who sets that.
    pub strictest: AnimalId,
    /// Who sets the floor: the member whose least is nearest to what it must have.
    pub floor_by: AnimalId,
    /// The forage for all that it asks for.
    pub floor: DryMatter,
    /// For whom all get more, if they do.
    pub raised: Option<RaisedForAll>,
    /// What hangs when for all of them, and what they wait when all eat fast.
    pub layout: Layout,
    /// What would shorten the longest wait, cheapest first.
    pub mends: Vec<Mend>,
    /// Grass.
    pub grass: GroupGrass,
    /// Who needs separating at hay time, and why.
    pub separate: Vec<Separate>,
    /// Where it comes from.
    pub from: Provenance,
}

/// The nets that hang for a group at a visit.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupVisit {
    /// The visit.
    pub visit: LocalTime,
    /// The hay of each net, before soaking: one at every feeding place, none where nothing hangs.
    pub nets: Vec<AsFed>,
}

impl GroupDraft {
    /// The group's day: what hangs at a visit, shared over as many nets as there are feeding places.
    pub fn day(&self) -> Vec<GroupVisit> {
        let hangings = self.layout.hangings.iter();
        hangings
            .map(|hanging| GroupVisit {
                visit: hanging.visit,
                nets: in_nets(hanging.as_fed, None, self.places),
            })
            .collect()
    }

    /// Their weight together, as percent is taken of it.
    pub fn weight(&self) -> BodyMass {
        let members = self.members.iter();
        BodyMass::kg(
            members
                .map(|member| member.alone.allowance.weight.likely.to_kg())
                .sum(),
        )
    }

    /// Dry matter a day of all of them, with what each gets from its own bucket, as a part of that weight.
    pub fn level(&self) -> PartOfBody {
        let bought: DryMatter = self.members.iter().map(MemberShare::bought).sum();
        (self.forage + bought).part_of(self.weight())
    }
}

/// How strict a level is.
const fn strictness(level: RiskLevel) -> u8 {
    match level {
        RiskLevel::Clear => 0,
        RiskLevel::NotKnown => 1,
        RiskLevel::AtRisk => 2,
        // numeric: ranks of an order
        RiskLevel::Proven => 3,
    }
}

/// How fast animals eat that eat at the same time.
pub(crate) fn together(rates: impl IntoIterator<Item = EatingRate>) -> EatingRate {
    let none = EatingRate {
        slow: 0.0,
        likely: 0.0,
        fast: 0.0,
        from: Provenance::new(),
    };
    rates.into_iter().fold(none, |all, one| EatingRate {
        slow: all.slow + one.slow,
        likely: all.likely + one.likely,
        fast: all.fast + one.fast,
        from: all.from.and(&one.from),
    })
}

/// The part of the forage that could be straw for all: what every one of them may have.
pub(crate) fn straw_for_all(parts: impl IntoIterator<Item = Option<f64>>) -> Option<f64> {
    parts
        .into_iter()
        .reduce(|all, one| Some(all?.min(one?)))
        .flatten()
}

/// Makes a draft for a group.
///
/// Every member is drafted on the hays, the soaking and the sugar rules of the most at-risk member: where one must have its
/// hay soaked, all get it soaked. What is offered is the sum of what each would get alone. It is raised until the least
/// that each may get keeps its floor, and until each likely gets what it must not be kept under; the member that asks for
/// most of that sets the floor. Where the sum alone would leave one under its floor, it also needs separating.
///
/// The waits are those when all eat fast at once: then every net is empty at the same time.
///
/// # Errors
/// No member, a member's own error, or a day that cannot hang.
pub fn group(of: &GroupFor<'_>) -> Result<GroupDraft, NoGroupDraft> {
    let for_all = |error: PlanError| NoGroupDraft {
        error,
        animal: None,
    };
    let alone = drafts(&of.members, Clone::clone)?;
    let (strictest, sets) = alone
        .iter()
        .zip(&of.members)
        .max_by_key(|(member, _)| strictness(member.risk.level))
        .ok_or_else(|| for_all(PlanError::EmptyGroup))?;
    let asked = drafts(&of.members, |member| as_all(member, sets, &strictest.risk))?;
    let members = match grass::out_together(&of.members, &asked) {
        None => asked.clone(),
        Some(out) => {
            let together = of.members.iter().zip(&out).map(|(member, out)| PlanFor {
                grazing: out.as_ref(),
                ..as_all(member, sets, &strictest.risk)
            });
            drafts(&together.collect::<Vec<_>>(), Clone::clone)?
        }
    };
    let sum: DryMatter = members.iter().map(forage_of).sum();
    let floor = floor(&members).ok_or_else(|| for_all(PlanError::EmptyGroup))?;
    let raised = (sum < floor.forage).then(|| RaisedForAll {
        animal: floor.animal.clone(),
        factor: floor.forage / sum,
    });
    let pile = pile(&members);
    let weighed: AsFed = pile.iter().map(|hay| hay.weigh_out).sum();
    let dry = DryFraction::percent(sum.to_kg() / weighed.to_kg() * 100.0)
        .map_err(|error| for_all(error.into()))?;
    let offered = match &raised {
        // A floor goes up to a whole step of the scale.
        Some(raised) => show::step_up(weighed * raised.factor, AsFed::kg(*SCALE_STEP)).dry(dry),
        None => sum,
    };
    let soaked: Vec<bool> = pile.iter().map(|hay| hay.soaked).collect();
    let soaks = soaked.contains(&true);
    let how = match (soaks, soaked.contains(&false)) {
        (false, _) => Soaked::None,
        (true, false) => Soaked::All,
        (true, true) => Soaked::Some,
    };
    let rate = together(
        of.members
            .iter()
            .zip(&members)
            .map(|(member, draft)| member.net.rate(draft.weight.value, how)),
    );
    let needs = DayNeeds {
        visits: sets.visits,
        forage: offered,
        dry,
        rate: &rate,
        most_at_once: of.most_at_once,
        eaten_within_h: soaks.then(|| eaten_within_h(&sets.soaking)),
        aways: &[],
        straw_part: straw_for_all(members.iter().map(|member| member.could_be_straw)),
    };
    each_is_believed(&members)?;
    let layout = lay_out_all(&needs).map_err(|error| for_all(PlanError::Day(error)))?;
    let mends = mends(&needs, layout.longest_h);
    let hung: DryMatter = layout.hangings.iter().map(|hanging| hanging.dry).sum();
    let hays = pile
        .into_iter()
        .map(|hay| GroupHay {
            eaten: hay.eaten * (hung / sum),
            weigh_out: hay.weigh_out * (hung / sum),
            ..hay
        })
        .collect();
    let separate = separate(&members, sum);
    let shares: Vec<MemberShare> = shares(members, hung);
    let grass = grass::of_all(&shares, &asked);
    Ok(GroupDraft {
        group: of.group.clone(),
        name: of.name.clone(),
        places: places(shares.len()),
        risk: strictest.risk.level,
        strictest: strictest.animal.id.clone(),
        floor_by: floor.animal,
        floor: floor.forage,
        raised,
        soaking: soaks.then_some(sets.soaking),
        from: Provenance::new()
            .constant(&SHARE_LEAST)
            .constant(&SHARE_MOST)
            .and(&layout.from),
        grass,
        separate,
        members: shares,
        forage: hung,
        hays,
        layout,
        mends,
    })
}

/// A member under the hay and the rules of the one that sets them.
fn as_all<'a>(member: &PlanFor<'a>, sets: &PlanFor<'a>, strictest: &'a Risk) -> PlanFor<'a> {
    PlanFor {
        strictest: Some(strictest),
        hays: sets.hays,
        soaking: sets.soaking,
        visits: sets.visits,
        ..member.clone()
    }
}

/// A draft of each member. What hangs for all hangs in the group's nets: a member's own hold nothing back here.
fn drafts<'a, 'b>(
    members: &'b [PlanFor<'a>],
    with: impl Fn(&'b PlanFor<'a>) -> PlanFor<'b>,
) -> Result<Vec<Draft>, NoGroupDraft> {
    members
        .iter()
        .map(|member| {
            let mut of = with(member);
            of.net.most_at_once = None;
            draft(&of).map_err(|error| NoGroupDraft {
                error,
                animal: Some(member.animal.id.clone()),
            })
        })
        .collect()
}

/// Refuses forage that is not believed of a member.
fn each_is_believed(members: &[Draft]) -> Result<(), NoGroupDraft> {
    members.iter().try_for_each(|member| {
        DAY_DRY_MATTER
            .check(forage_of(member).to_kg())
            .map(|_| ())
            .map_err(|error| NoGroupDraft {
                error: PlanError::OutOfRange(error),
                animal: Some(member.animal.id.clone()),
            })
    })
}

fn forage_of(member: &Draft) -> DryMatter {
    member.hays.iter().map(|hay| hay.eaten).sum()
}

fn bought(member: &Draft) -> DryMatter {
    member.dry_matter - forage_of(member)
}
