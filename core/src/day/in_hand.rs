//! The nets that hang at one visit: as many as it takes, and as many as there are places to eat.

use super::layout::whole;
use super::published::SCALE_STEP;
use crate::units::AsFed;

/// Feeding places for so many animals: one more than animals, so that the one that is driven off finds another.
pub const fn places(animals: usize) -> usize {
    if animals > 1 { animals + 1 } else { 1 }
}

/// Shares what hangs at a visit over nets: at least `places` of them, none over what a net holds, in whole steps of the
/// scale that add up to the amount. They differ by a step at most; a single animal with two nets loses nothing by that,
/// and a group needs it.
///
/// `holds` is what goes into one net; `None` when nobody said, and then the places alone count. An amount of fewer steps
/// than places gives a net a step.
pub fn in_nets(as_fed: AsFed, holds: Option<AsFed>, places: usize) -> Vec<AsFed> {
    let step = AsFed::kg(*SCALE_STEP);
    let steps = whole(as_fed / step);
    let per_net = holds.map_or(steps, |holds| whole(holds / step)).max(1);
    let wanted = i64::try_from(places).unwrap_or(1).max(1);
    // Rounded up: the last net may be smaller.
    let needed = (steps + per_net - 1) / per_net;
    let nets = needed.max(wanted).min(steps.max(1));
    if steps <= 0 {
        return Vec::new();
    }
    (0..nets)
        .map(|index| {
            let more = i64::from(index < steps % nets);
            step * (steps / nets + more) as f64
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kg(nets: &[AsFed]) -> Vec<f64> {
        nets.iter().map(|net| net.to_kg()).collect()
    }

    #[test]
    fn a_net_more_than_animals_and_none_over_what_it_holds() {
        let nets = in_nets(AsFed::kg(10.0), Some(AsFed::kg(4.0)), places(3));
        assert_eq!(kg(&nets), [2.5, 2.5, 2.5, 2.5]);
        let nets = in_nets(AsFed::kg(10.05), Some(AsFed::kg(4.0)), places(1));
        assert_eq!(nets.len(), 3);
        assert!((kg(&nets).iter().sum::<f64>() - 10.05).abs() < 1e-9);
        assert!(nets.iter().all(|net| net.to_kg() <= 4.0));
        assert!(in_nets(AsFed::ZERO, None, 4).is_empty());
        assert_eq!(in_nets(AsFed::kg(0.1), None, 4).len(), 2);
        assert_eq!(places(1), 1);
        assert_eq!(places(2), 3);
    }
}
