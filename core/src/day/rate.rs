//! How fast forage is eaten.

use super::error::DayError;
use super::published::{
    DOUBLE_NET, HOLE_LARGE, HOLE_MEDIUM, HOLE_SMALL, HOURS_LARGE, HOURS_LOOSE, HOURS_MEDIUM,
    HOURS_SMALL, LOOSE_PER_BODY, MEASURED_RATE, RATE_LARGE, RATE_LOOSE, RATE_MEDIUM, RATE_SMALL,
    RATE_SPREAD,
};
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{BodyMass, DryMatter, Length};

/// What the forage is eaten from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NetKind {
    /// From the floor or a manger.
    Loose,
    /// Holes of about 15 cm.
    LargeHoles,
    /// Holes of about 4.4 cm.
    MediumHoles,
    /// Holes of about 3.2 cm.
    SmallHoles,
    /// Two small-holed nets, one in the other.
    DoubleSmall,
}

/// Kilograms of dry matter an hour, with its ends.
#[derive(Clone, Debug, PartialEq)]
pub struct EatingRate {
    /// A slow eater: the net lasts longest.
    pub slow: f64,
    /// As likely as not.
    pub likely: f64,
    /// A fast eater: the animal is longest without forage.
    pub fast: f64,
    /// What it came from.
    pub from: Provenance,
}

impl NetKind {
    /// The kind that a hole size means; a net whose holes nobody measured counts as one with medium holes.
    ///
    /// A net between two of the trial counts as the coarser of them: it is eaten faster, which leaves the animal
    /// longest without forage.
    pub fn of_hole(hole: Option<Length>) -> Self {
        match hole {
            None => Self::MediumHoles,
            Some(hole) if hole <= *HOLE_SMALL => Self::SmallHoles,
            Some(hole) if hole <= *HOLE_MEDIUM => Self::MediumHoles,
            Some(hole) if hole <= *HOLE_LARGE => Self::LargeHoles,
            Some(_) => Self::Loose,
        }
    }

    /// The kind of a net by the width of its holes, hung by itself or one in another.
    ///
    /// Only small-holed nets were timed one in another; a double net with larger holes counts as a single one, which
    /// leaves the animal longest without forage.
    pub fn of_net(hole: Option<Length>, double: bool) -> Self {
        match Self::of_hole(hole) {
            Self::SmallHoles if double => Self::DoubleSmall,
            kind => kind,
        }
    }

    /// How many times as long a net takes as its mean rate says, because it gives less as it empties.
    ///
    /// The published time over the time that the published mean rate makes of the same meal, the meal being what was
    /// eaten loose: `hours x rate / (hours loose x rate loose)` (Glunk 2014). About 1.2 for medium and small holes, 1 for
    /// large ones and none. A double net slows down as a single one does.
    pub fn slowing(self) -> f64 {
        let (hours, relative) = self.measured();
        hours * relative / *HOURS_LOOSE
    }

    /// How many times as long as loose hay it lasts, slowing counted: the published times for one meal (Glunk 2014).
    pub fn times_as_long(self) -> f64 {
        self.measured().0 / *HOURS_LOOSE
    }

    /// Hours for 1 % of body weight, as measured, and the rate relative to loose hay.
    fn measured(self) -> (f64, f64) {
        let relative = |rate: f64| rate / *RATE_LOOSE;
        match self {
            Self::Loose => (*HOURS_LOOSE, relative(*RATE_LOOSE)),
            Self::LargeHoles => (*HOURS_LARGE, relative(*RATE_LARGE)),
            Self::MediumHoles => (*HOURS_MEDIUM, relative(*RATE_MEDIUM)),
            Self::SmallHoles => (*HOURS_SMALL, relative(*RATE_SMALL)),
            Self::DoubleSmall => (
                *HOURS_SMALL * *DOUBLE_NET,
                relative(*RATE_SMALL) / *DOUBLE_NET,
            ),
        }
    }
}

/// The published rate for a body weight and a net, until the animal's own has been timed.
///
/// The likely rate is from the time that 1 % of body weight took (Glunk 2014), which already holds that small-holed
/// nets slow down as they empty. The fast end is the faster of that and the mean rate scaled by body weight, and a
/// spread of 20 % (ours) for the animal.
pub fn rate(body: BodyMass, net: NetKind) -> EatingRate {
    let (hours, relative) = net.measured();
    let one_percent = body.to_kg() / 100.0;
    let by_time = one_percent / hours;
    let by_rate = LOOSE_PER_BODY.value / 1000.0 * body.to_kg() * relative;
    EatingRate {
        slow: by_time.min(by_rate) * (1.0 - *RATE_SPREAD),
        likely: by_time,
        fast: by_time.max(by_rate) * (1.0 + *RATE_SPREAD),
        from: Provenance::new()
            .constant(&HOURS_SMALL)
            .constant(&LOOSE_PER_BODY)
            .constant(&RATE_SPREAD),
    }
}

/// The hours that a net of so much takes, until the animal's own rate has been timed.
#[derive(Clone, Debug, PartialEq)]
pub struct EatingTime {
    /// What its mean rate alone would say.
    pub at_mean_rate: f64,
    /// How many times as long it takes because it slows down as it empties: [`NetKind::slowing`].
    pub slowing: f64,
    /// The hours, slowing counted: a fast eater, as likely as not, a slow eater.
    pub hours: Ends<f64>,
    /// What it came from.
    pub from: Provenance,
}

/// How long a net of this much dry matter lasts an animal of this weight.
///
/// `hours = dry matter / mean rate x slowing`. A constant rate would say about a fifth less for small holes. The likely
/// hours are those of [`rate`]; its ends are the ends here, turned round.
pub fn eating_time(body: BodyMass, net: NetKind, hay: DryMatter) -> EatingTime {
    let rate = rate(body, net);
    let hours = rate.hours_for(hay);
    let slowing = net.slowing();
    EatingTime {
        at_mean_rate: hours.likely / slowing,
        slowing,
        hours,
        from: rate.from.constant(&RATE_LOOSE).constant(&HOURS_LOOSE),
    }
}

impl EatingRate {
    /// The hours that so much dry matter lasts: a fast eater, as likely as not, a slow eater.
    pub fn hours_for(&self, hay: DryMatter) -> Ends<f64> {
        let kg = hay.to_kg();
        Ends::new(kg / self.fast, kg / self.likely, kg / self.slow)
    }

    /// The same rate where it was seen that the animal eats at least so much an hour.
    #[must_use]
    pub fn at_least(self, kg_per_h: f64) -> Self {
        Self {
            slow: self.slow.max(kg_per_h),
            likely: self.likely.max(kg_per_h),
            fast: self.fast.max(kg_per_h),
            from: self.from,
        }
    }
}

/// The animal's own rate: what it ate and the hours it took. It always wins over the published one.
pub fn measured_rate(eaten: DryMatter, hours: f64) -> Result<EatingRate, DayError> {
    let likely = MEASURED_RATE.check(eaten.to_kg() / hours)?;
    // One timing still scatters from net to net; half the spread between animals is kept.
    let spread = *RATE_SPREAD / 2.0;
    Ok(EatingRate {
        slow: likely * (1.0 - spread),
        likely,
        fast: likely * (1.0 + spread),
        from: Provenance::new().constant(&RATE_SPREAD),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_published_meal_takes_its_published_time() {
        // Glunk 2014: 1 % of body weight took 3.1, 3.4, 5.1 and 6.5 h.
        let body = BodyMass::kg(500.0);
        for (net, hours) in [
            (NetKind::Loose, 3.1),
            (NetKind::LargeHoles, 3.4),
            (NetKind::MediumHoles, 5.1),
            (NetKind::SmallHoles, 6.5),
        ] {
            assert!((5.0 / rate(body, net).likely - hours).abs() < 1e-9);
        }
    }

    #[test]
    fn a_constant_rate_makes_small_holes_about_a_fifth_too_fast() {
        let body = BodyMass::kg(500.0);
        let meal = DryMatter::kg(5.0);
        for (net, hours, slowing) in [
            (NetKind::Loose, 3.1, 1.0),
            (NetKind::LargeHoles, 3.4, 0.98),
            (NetKind::MediumHoles, 5.1, 1.23),
            (NetKind::SmallHoles, 6.5, 1.24),
        ] {
            let time = eating_time(body, net, meal);
            assert!((time.hours.likely - hours).abs() < 1e-9);
            assert!((time.slowing - slowing).abs() < 0.01, "{net:?}");
            assert!((time.at_mean_rate * time.slowing - hours).abs() < 1e-9);
            assert!(time.hours.least < time.hours.likely && time.hours.likely < time.hours.most);
        }
    }

    #[test]
    fn a_double_net_counts_where_it_was_timed() {
        let small = Some(Length::cm(2.5));
        assert_eq!(NetKind::of_net(small, true), NetKind::DoubleSmall);
        assert_eq!(NetKind::of_net(small, false), NetKind::SmallHoles);
        assert_eq!(
            NetKind::of_net(Some(Length::cm(4.4)), true),
            NetKind::MediumHoles
        );
    }

    #[test]
    fn the_ends_hold_the_likely_rate() {
        for net in [NetKind::Loose, NetKind::MediumHoles, NetKind::DoubleSmall] {
            let r = rate(BodyMass::kg(200.0), net);
            assert!(r.slow < r.likely && r.likely < r.fast);
        }
    }

    #[test]
    fn a_timed_net_wins_and_nonsense_is_refused() {
        let own = measured_rate(DryMatter::kg(3.0), 5.0).unwrap();
        assert!((own.likely - 0.6).abs() < 1e-12);
        assert!(measured_rate(DryMatter::kg(3.0), 0.0).is_err());
        assert!(measured_rate(DryMatter::kg(f64::NAN), 1.0).is_err());
    }
}
