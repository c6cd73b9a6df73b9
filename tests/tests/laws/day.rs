//! The day's layout against trying everything, in quarters of an hour and by nothing but counting.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::day::{
    Away, DayError, DayNeeds, EatingRate, Eats, GapVerdict, Mend, NetKind, lay_out, mends, rate,
};
use tussock_core::sources::Provenance;
use tussock_core::units::{AsFed, BodyMass, DryFraction, DryMatter, LocalTime};

const DAY: usize = 96;
/// At 80 % dry a step of the scale is 0.04 kg: a fast eater takes a quarter of an hour over two of them.
const FAST: f64 = 0.32;
/// A slow eater takes half an hour.
const SLOW: f64 = 0.16;
const QUARTER_KG: f64 = FAST / 4.0;

fn at(quarter: usize) -> LocalTime {
    let quarter = u32::try_from(quarter % DAY).unwrap();
    LocalTime::from_hms_opt(quarter / 4, quarter % 4 * 15, 0).unwrap()
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum There {
    Nets,
    Grass,
    Nothing,
}

#[derive(Clone, Debug)]
struct Case {
    visits: Vec<usize>,
    /// How many parts, and how many quarters of an hour a fast eater takes over one.
    parts: usize,
    quarters: usize,
    /// The most parts at one visit.
    most: usize,
    within: Option<usize>,
    /// From, how long, and whether there is grass.
    away: Option<(usize, usize, bool)>,
}

impl Case {
    fn there(&self) -> Vec<There> {
        let mut day = vec![There::Nets; DAY];
        if let Some((from, length, grass)) = self.away {
            for quarter in from..from + length {
                day[quarter % DAY] = if grass { There::Grass } else { There::Nothing };
            }
        }
        day
    }

    /// The longest wait in quarters of an hour when so many parts hang at each visit; `None` when it may not be.
    fn tried(&self, shares: &[usize], there: &[There]) -> Option<usize> {
        if shares.iter().any(|share| self.most < *share) {
            return None;
        }
        let hung = |quarter: usize| -> usize {
            self.visits
                .iter()
                .zip(shares)
                .filter(|(visit, _)| **visit == quarter % DAY)
                .map(|(_, share)| share * self.quarters)
                .sum()
        };
        // Six days by the slow end: what hangs in the last but one must be eaten in time.
        if let Some(within) = self.within {
            let mut stock = 0;
            for quarter in 0..6 * DAY {
                let more = 2 * hung(quarter);
                stock += more;
                if 4 * DAY <= quarter && 0 < more {
                    let time = (quarter..quarter + within)
                        .filter(|q| there[q % DAY] == There::Nets)
                        .count();
                    if time < stock {
                        return None;
                    }
                }
                if there[quarter % DAY] == There::Nets {
                    stock = stock.saturating_sub(1);
                }
            }
            let slow: usize = 2 * shares.iter().sum::<usize>() * self.quarters;
            if there.iter().filter(|there| **there == There::Nets).count() < slow {
                return None;
            }
        }
        // A month to settle by the fast end, then two that are read.
        let mut stock: usize = 0;
        let (mut wait, mut longest) = (0, 0);
        for quarter in 0..32 * DAY {
            stock += hung(quarter);
            let eats = match there[quarter % DAY] {
                There::Grass => true,
                There::Nothing => false,
                There::Nets => {
                    let eats = 0 < stock;
                    stock = stock.saturating_sub(1);
                    eats
                }
            };
            wait = if eats { 0 } else { wait + 1 };
            if 30 * DAY <= quarter {
                longest = longest.max(wait);
            }
        }
        Some(longest.min(DAY))
    }

    /// The best of all ways to share the parts over up to four of the visits.
    fn best(&self) -> Option<usize> {
        let there = self.there();
        let mut best = None;
        let mut shares = vec![0; self.visits.len()];
        self.go(0, self.parts, &mut shares, &there, &mut best);
        best
    }

    fn go(
        &self,
        index: usize,
        left: usize,
        shares: &mut Vec<usize>,
        there: &[There],
        best: &mut Option<usize>,
    ) {
        if index + 1 == shares.len() {
            shares[index] = left;
            if shares.iter().filter(|share| 0 < **share).count() <= 4
                && let Some(found) = self.tried(shares, there)
            {
                *best = Some(best.map_or(found, |best: usize| best.min(found)));
            }
            return;
        }
        for share in 0..=left.min(self.most) {
            shares[index] = share;
            self.go(index + 1, left - share, shares, there, best);
        }
    }
}

fn cases() -> impl Strategy<Value = Case> {
    (
        proptest::collection::btree_set(0..DAY, 1..=6),
        2_usize..=6,
        1_usize..=14,
        1_usize..=6,
        proptest::option::of(16_usize..=60),
        proptest::option::of((0..DAY, 1_usize..=32, any::<bool>())),
    )
        .prop_map(|(visits, parts, quarters, most, within, away)| Case {
            visits: visits.into_iter().collect(),
            parts,
            quarters,
            most,
            within,
            away,
        })
}

proptest! {
    #![proptest_config(config())]

    /// No way to hang up to four nets at up to six visits leaves a shorter longest wait than the layout: within what
    /// can hang, what must be eaten by its time, and hours away or at grass. And the layout itself keeps all of them,
    /// and tells its own longest wait truly.
    #[test]
    fn trying_everything_finds_no_shorter_wait(case in cases()) {
        let visits: Vec<LocalTime> = case.visits.iter().map(|visit| at(*visit)).collect();
        let rate = EatingRate { slow: SLOW, likely: FAST, fast: FAST, from: Provenance::new() };
        let dry = DryFraction::percent(80.0).unwrap();
        let part = case.quarters as f64 * QUARTER_KG;
        let aways: Vec<Away> = case
            .away
            .iter()
            .map(|(from, length, grass)| Away {
                from: at(*from),
                to: at(from + length),
                eats: if *grass { Eats::Grass } else { Eats::Nothing },
            })
            .collect();
        let needs = DayNeeds {
            visits: &visits,
            forage: DryMatter::kg(part * case.parts as f64),
            dry,
            rate: &rate,
            most_at_once: Some(AsFed::kg(part * case.most as f64 / 0.8)),
            eaten_within_h: case.within.map(|quarters| quarters as f64 / 4.0),
            aways: &aways,
            straw_part: None,
        };
        let best = case.best();
        let laid = lay_out(&needs);
        match (&laid, best) {
            (Ok(day), best) => {
                if let Some(best) = best {
                    let best = best as f64 / 4.0;
                    prop_assert!(day.longest_h <= best + 1e-5, "{} > {best}: {day:?}", day.longest_h);
                }
                let hung: f64 = day.hangings.iter().map(|hanging| hanging.dry.to_kg()).sum();
                prop_assert!((hung - part * case.parts as f64).abs() < 1e-6, "all of it hangs: {day:?}");
                let most = part * case.most as f64 + 1e-6;
                prop_assert!(day.hangings.iter().all(|hanging| hanging.dry.to_kg() <= most));
                // Counted again in single steps of the scale, an eighth of an hour each.
                let told = longest_in_eighths(&case, day);
                prop_assert!((told - day.longest_h).abs() < 1e-6, "{told} is not {}: {day:?}", day.longest_h);
            }
            (Err(DayError::CannotHang { left_kg }), None) => prop_assert!(0.0 < *left_kg),
            (Err(error), best) => prop_assert!(false, "{error:?}, and {best:?}"),
        }
    }
}

/// Glunk et al. 2014, J Equine Vet Sci 34:986: 1 % of body weight took 3.4, 5.1 and 6.5 h from nets with 15.2, 4.4 and
/// 3.2 cm holes. At 1.5 % in two visits twelve hours apart that leaves (24 - 1.5 x hours) / 2, 7 to 9.5 h without
/// forage; the end that is judged is longer, for a fast eater. What mends it stands cheapest first.
#[test]
fn two_visits_leave_what_the_net_trial_implies_with_the_mends_ranked() {
    let visits = [at(28), at(76)];
    let dry = DryFraction::percent(88.0).unwrap();
    for kg in [180.0, 300.0, 465.0, 600.0] {
        let body = BodyMass::kg(kg);
        for (net, hours) in [
            (NetKind::LargeHoles, 3.4),
            (NetKind::MediumHoles, 5.1),
            (NetKind::SmallHoles, 6.5),
        ] {
            let rate = rate(body, net);
            let needs = DayNeeds {
                visits: &visits,
                forage: DryMatter::kg(0.015 * kg),
                dry,
                rate: &rate,
                most_at_once: None,
                eaten_within_h: None,
                aways: &[],
                straw_part: Some(0.3),
            };
            let day = lay_out(&needs).unwrap();
            let implied = (24.0 - 1.5 * hours) / 2.0;
            // A step of the scale is up to a sixth of an hour for a small pony at a small-holed net.
            let off = (day.likely_h - implied).abs();
            assert!(off < 0.2, "{kg} {net:?}: {} h", day.likely_h);
            assert!((7.0..=9.6).contains(&day.likely_h), "{}", day.likely_h);
            assert!(
                day.likely_h <= day.longest_h,
                "the fast end is the one that is judged"
            );
            assert_eq!(day.verdict, GapVerdict::OverTheLine);
            let found = mends(&needs, day.longest_h);
            let ranks: Vec<u8> = found
                .iter()
                .map(|mend| match mend {
                    Mend::SecondNet { .. } => 0,
                    Mend::DoubleNet { .. } => 1,
                    Mend::Straw { .. } => 2,
                    Mend::OneMoreVisit { .. } => 3,
                    Mend::TimeRelease { .. } => 4,
                })
                .collect();
            assert_eq!(ranks, [1, 2, 3, 4], "{kg} {net:?}");
            assert!(found.iter().all(|mend| mend.longest_h() < day.longest_h));
            // Little can hang at once: then a second net apart is the cheapest.
            let little = DayNeeds {
                most_at_once: Some(DryMatter::kg(0.006 * kg).as_fed(dry)),
                visits: &[at(28), at(68), at(84)],
                ..needs.clone()
            };
            let day = lay_out(&little).unwrap();
            let found = mends(&little, day.longest_h);
            assert!(
                matches!(found.first(), Some(Mend::SecondNet { .. })),
                "{kg} {net:?}: {found:?}"
            );
        }
    }
}

/// The longest wait of a layout, counted in eighths of an hour: a step of the scale each.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "whole steps of a day, none below nothing"
)]
fn longest_in_eighths(case: &Case, day: &tussock_core::day::Layout) -> f64 {
    let there = case.there();
    let mut stock: usize = 0;
    let (mut wait, mut longest) = (0_usize, 0);
    for eighth in 0..2 * 32 * DAY {
        let quarter = eighth / 2 % DAY;
        if eighth % 2 == 0 {
            for hanging in day
                .hangings
                .iter()
                .filter(|hanging| hanging.visit == at(quarter))
            {
                stock += (hanging.as_fed.to_kg() / 0.05).round() as usize;
            }
        }
        let eats = match there[quarter] {
            There::Grass => true,
            There::Nothing => false,
            There::Nets => {
                let eats = 0 < stock;
                stock = stock.saturating_sub(1);
                eats
            }
        };
        wait = if eats { 0 } else { wait + 1 };
        if 60 * DAY <= eighth {
            longest = longest.max(wait);
        }
    }
    longest.min(2 * DAY) as f64 / 8.0
}
