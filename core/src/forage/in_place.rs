//! A lot that is opened in place of another: the changeover.
//!
//! A plan stays as it was issued. What it feeds of the old lot is weighed from the new one with the same dry matter, and
//! the least that the new one may hold is never less than the least of the old.

use super::class::{ForageClass, ForageKind};
use super::hazards::{Fault, Hazard, hazards};
use super::lot::{Fed, Lot};
use crate::animal::LotId;
use crate::units::{AsFed, DryMatter, LocalDate};

/// Why a lot cannot stand in for another without a new plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotInPlace {
    /// It is the same lot.
    Same,
    /// Nobody knows the dry matter of the old one.
    OldDryMatterNotKnown,
    /// Nobody knows the dry matter of the new one.
    NewDryMatterNotKnown,
    /// One is hay and the other is not.
    OtherKind {
        /// What the old one is.
        old: ForageKind,
        /// What the new one is.
        new: ForageKind,
    },
    /// It is lucerne and the old one is not: of lucerne a part of the forage is the most.
    Lucerne,
    /// It is not fed at all.
    Discard(Fault),
}

/// By how much the weight of the old lot is multiplied so that as much dry matter comes from the new one: the greater of
/// the likely and of the lowest dry matter of both, for a floor is kept with what leaves the animal least.
///
/// # Errors
/// A lot that needs a new plan, or that is not fed at all.
pub fn may_stand_in(old: &Lot, new: &Lot) -> Result<f64, NotInPlace> {
    if old.id == new.id {
        return Err(NotInPlace::Same);
    }
    let nothing = DryMatter::ZERO;
    for hazard in hazards(new, Fed::Dry, nothing, nothing) {
        if let Hazard::Discard(fault) = hazard {
            return Err(NotInPlace::Discard(fault));
        }
    }
    let (old_kind, new_kind) = (old.class.kind(), new.class.kind());
    if old_kind != new_kind {
        return Err(NotInPlace::OtherKind {
            old: old_kind,
            new: new_kind,
        });
    }
    if new.class == ForageClass::Lucerne && old.class != ForageClass::Lucerne {
        return Err(NotInPlace::Lucerne);
    }
    let old = old.dry_matter().ok_or(NotInPlace::OldDryMatterNotKnown)?;
    let new = new.dry_matter().ok_or(NotInPlace::NewDryMatterNotKnown)?;
    let likely = old.value.to_fraction() / new.value.to_fraction();
    let least = old.low.to_fraction() / new.low.to_fraction();
    Ok(likely.max(least))
}

/// A lot that stands in for another.
#[derive(Clone, Debug, PartialEq)]
pub struct Instead {
    /// The lot that the plan names.
    pub of: LotId,
    /// The lot that is weighed out.
    pub lot: LotId,
    /// Since when the last of them is open.
    pub since: LocalDate,
    /// What a weight of the old lot is multiplied by.
    pub factor: f64,
}

impl Instead {
    /// What is weighed of the new lot for so much of the old one.
    pub fn weigh(&self, old: AsFed) -> AsFed {
        old * self.factor
    }

    /// So much of the old lot is weighed out as so much of the new one.
    pub fn was(&self, new: AsFed) -> AsFed {
        new / self.factor
    }
}

/// The lot that stands in for one that a plan of `from` names, on a day: each that was opened in place of it from that
/// day on, in the order of opening. `None` when none does, or the last cannot without a new plan.
pub fn instead(lots: &[Lot], of: &LotId, from: LocalDate, today: LocalDate) -> Option<Instead> {
    let mut openings: Vec<(LocalDate, &LotId, &Lot)> = lots
        .iter()
        .filter_map(|lot| Some((lot.opened_on?, lot.in_place_of.as_ref()?, lot)))
        .filter(|(on, _, _)| from <= *on && *on <= today)
        .collect();
    openings.sort_by(|a, b| (a.0, &a.2.id).cmp(&(b.0, &b.2.id)));
    let mut here = of;
    let mut since = from;
    // Those of one day may stand in any order: each is taken once.
    let mut left = openings;
    while let Some(next) = left.iter().position(|(_, old, _)| *old == here) {
        let (on, _, lot) = left.remove(next);
        here = &lot.id;
        since = since.max(on);
    }
    if here == of {
        return None;
    }
    let old = lots.iter().find(|lot| lot.id == *of)?;
    let new = lots.iter().find(|lot| lot.id == *here)?;
    Some(Instead {
        of: of.clone(),
        lot: here.clone(),
        since,
        factor: may_stand_in(old, new).ok()?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::DryFraction;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    fn lot(id: &str, class: ForageClass) -> Lot {
        Lot::of_class(LotId(id.to_owned()), id, class)
    }

    fn opened(id: &str, in_place_of: &str, on: &str) -> Lot {
        Lot {
            opened_on: Some(day(on)),
            in_place_of: Some(LotId(in_place_of.to_owned())),
            ..lot(id, ForageClass::Grass)
        }
    }

    fn standing_in(lots: &[Lot], from: &str, today: &str) -> Option<String> {
        instead(lots, &LotId("back".to_owned()), day(from), day(today)).map(|found| found.lot.0)
    }

    #[test]
    fn a_lot_stands_in_from_the_day_it_is_opened() {
        let lots = [
            lot("back", ForageClass::Meadow),
            opened("lane", "back", "2026-05-05"),
        ];
        assert_eq!(standing_in(&lots, "2026-05-01", "2026-05-04"), None);
        assert_eq!(
            standing_in(&lots, "2026-05-01", "2026-05-05"),
            Some("lane".to_owned())
        );
        // A later plan that names the old lot means it.
        assert_eq!(standing_in(&lots, "2026-05-06", "2026-05-07"), None);
    }

    #[test]
    fn one_after_the_other_and_no_ring_without_end() {
        let lots = [
            opened("back", "hill", "2026-05-09"),
            opened("lane", "back", "2026-05-05"),
            opened("hill", "lane", "2026-05-05"),
        ];
        assert_eq!(
            standing_in(&lots, "2026-05-01", "2026-05-06"),
            Some("hill".to_owned())
        );
        assert_eq!(standing_in(&lots, "2026-05-01", "2026-05-09"), None);
    }

    #[test]
    fn as_much_dry_matter_comes_from_the_new_lot() {
        let dry = |id: &str, percent| Lot {
            dry: Some(DryFraction::percent(percent).unwrap()),
            ..lot(id, ForageClass::Grass)
        };
        let factor = may_stand_in(&dry("a", 90.0), &dry("b", 80.0)).unwrap();
        assert!((factor - 1.125).abs() < 1e-9);
        let alike = may_stand_in(
            &lot("a", ForageClass::Grass),
            &lot("b", ForageClass::Ryegrass),
        );
        assert!((alike.unwrap() - 1.0).abs() < 1e-9);
        // Where only the default is known, the least of it must still keep the floor.
        let unsure = may_stand_in(&dry("a", 88.0), &lot("b", ForageClass::Grass)).unwrap();
        assert!((unsure - 88.0 / 85.0).abs() < 1e-9);
    }

    #[test]
    fn what_needs_a_new_plan_is_refused() {
        let hay = lot("a", ForageClass::Grass);
        let refused = |new: &Lot| may_stand_in(&hay, new).unwrap_err();
        assert_eq!(refused(&hay), NotInPlace::Same);
        assert_eq!(
            refused(&lot("b", ForageClass::OatStraw)),
            NotInPlace::OtherKind {
                old: ForageKind::Hay,
                new: ForageKind::Straw
            }
        );
        assert_eq!(
            refused(&lot("b", ForageClass::Lucerne)),
            NotInPlace::Lucerne
        );
        let mouldy = Lot {
            faults: vec![Fault::Mould],
            ..lot("b", ForageClass::Grass)
        };
        assert_eq!(refused(&mouldy), NotInPlace::Discard(Fault::Mould));
        let wrapped = lot("b", ForageClass::Haylage);
        assert_eq!(
            may_stand_in(&lot("c", ForageClass::Haylage), &wrapped),
            Err(NotInPlace::OldDryMatterNotKnown)
        );
    }
}
