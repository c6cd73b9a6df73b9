//! What the animal can reach at each hour: its nets, grass, or neither.

use super::gaps::{day_hours, hour_of};
use super::layout::is_night;
use crate::graze::sward::published::LEAF_BARE;
use crate::units::{Length, LocalTime};

/// What there is to eat where it is while it is not at its nets alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Eats {
    /// Grass; the nets wait.
    Grass,
    /// Grass, and its nets hang there: they are eaten on, which leaves it least.
    GrassAndNets,
    /// Nothing: at work, on the road, on a bare paddock.
    Nothing,
}

impl Eats {
    /// A paddock as forage. Leaf under about 5 cm is none (practice rule 10), and leaf that nobody looked at counts as
    /// none: a wait is judged with the end that leaves the animal least.
    pub fn on_sward(leaf: Option<Length>) -> Self {
        if leaf.is_some_and(|leaf| *LEAF_BARE <= leaf) {
            Self::Grass
        } else {
            Self::Nothing
        }
    }
}

/// A stretch of the day, by the clock on the wall, in which it is not at its nets alone. One that ends at or before its
/// beginning runs over midnight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Away {
    /// From when.
    pub from: LocalTime,
    /// Until when.
    pub to: LocalTime,
    /// What there is to eat.
    pub eats: Eats,
}

/// The same by hours of a day, 0 to 24.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Stretch {
    pub(super) from: f64,
    pub(super) to: f64,
    pub(super) eats: Eats,
}

/// Where it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Where {
    Nets,
    Out(Eats),
}

impl Where {
    /// Whether nets are eaten there.
    pub(super) fn has_nets(self) -> bool {
        matches!(self, Self::Nets | Self::Out(Eats::GrassAndNets))
    }

    /// Whether grass is eaten there.
    pub(super) fn has_grass(self) -> bool {
        matches!(self, Self::Out(Eats::Grass | Eats::GrassAndNets))
    }
}

/// A part of the day in one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Piece {
    pub(super) from: f64,
    pub(super) to: f64,
    pub(super) place: Where,
}

/// The day in pieces, from midnight to midnight.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Reach {
    pieces: Vec<Piece>,
    /// The stretches with nothing to eat: the hour of their middle, and their hours.
    bare: Vec<(f64, f64)>,
}

impl Reach {
    /// Of a day with these stretches. Where two overlap the one with less to eat counts.
    pub(super) fn of(aways: &[Away]) -> Self {
        let stretches: Vec<Stretch> = aways
            .iter()
            .map(|away| Stretch {
                from: hour_of(away.from),
                to: hour_of(away.to),
                eats: away.eats,
            })
            .collect();
        Self::of_hours(&stretches)
    }

    /// The same by hours of a day.
    pub(super) fn of_hours(stretches: &[Stretch]) -> Self {
        let day = day_hours();
        let mut edges: Vec<f64> = stretches
            .iter()
            .flat_map(|stretch| [stretch.from, stretch.to])
            .chain([0.0, day])
            .collect();
        edges.sort_unstable_by(f64::total_cmp);
        let pieces: Vec<Piece> = edges
            .iter()
            .zip(edges.iter().skip(1))
            .filter(|(from, to)| from < to)
            .map(|(from, to)| Piece {
                from: *from,
                to: *to,
                place: place(stretches, f64::midpoint(*from, *to)),
            })
            .collect();
        let bare = bare(&pieces);
        Self { pieces, bare }
    }

    /// The pieces of so many days, one after the other.
    pub(super) fn days(&self, count: u32) -> impl Iterator<Item = Piece> {
        (0..count).flat_map(|index| {
            let shift = f64::from(index) * day_hours();
            self.pieces.iter().map(move |piece| Piece {
                from: piece.from + shift,
                to: piece.to + shift,
                place: piece.place,
            })
        })
    }

    /// Hours in which nets can be eaten from the midnight of day 0 to an hour; negative before it.
    pub(super) fn at_nets(&self, hour: f64) -> f64 {
        let days = (hour / day_hours()).floor();
        let rest = hour - days * day_hours();
        let part: f64 = self
            .pieces
            .iter()
            .filter(|piece| piece.place.has_nets())
            .map(|piece| (piece.to.min(rest) - piece.from).max(0.0))
            .sum();
        days * self.day() + part
    }

    /// Hours of a day in which nets can be eaten.
    pub(super) fn day(&self) -> f64 {
        self.pieces
            .iter()
            .filter(|piece| piece.place.has_nets())
            .map(|piece| piece.to - piece.from)
            .sum()
    }

    /// Where it is at an hour.
    pub(super) fn at(&self, hour: f64) -> Where {
        let hour = hour.rem_euclid(day_hours());
        self.pieces
            .iter()
            .find(|piece| piece.from <= hour && hour < piece.to)
            .map_or(Where::Nets, |piece| piece.place)
    }

    /// The first hour from this one at which a net that hangs, or grass, is eaten; the hour itself when it never is.
    pub(super) fn eats_from(&self, hour: f64) -> f64 {
        let base = (hour / day_hours()).floor() * day_hours();
        self.days(2)
            .map(|piece| Piece {
                from: piece.from + base,
                to: piece.to + base,
                place: piece.place,
            })
            .filter(|piece| hour < piece.to && piece.place != Where::Out(Eats::Nothing))
            .map(|piece| piece.from.max(hour))
            .next()
            .unwrap_or(hour)
    }

    /// The hour until which what hangs at `here` must last so that no wait until the visit at `next` is longer than the
    /// limits by day and by night. `bit` is the hours of the smallest bit that can hang.
    pub(super) fn must_last(&self, here: f64, next: f64, bit: f64, [day, night]: [f64; 2]) -> f64 {
        let end = self.eats_from(next);
        // The stretches between grass, last first; in each the wait runs up to its end.
        let grass = self.grass_between(here, end);
        let starts = std::iter::once(here).chain(grass.iter().map(|(_, to)| *to));
        let ends = grass
            .iter()
            .map(|(from, _)| *from)
            .chain(std::iter::once(end));
        let stretches: Vec<(f64, f64)> = starts.zip(ends).collect();
        for (start, end) in stretches.into_iter().rev() {
            let middle = (end - night / 2.0).rem_euclid(day_hours());
            let until = end - if is_night(middle) { night } else { day };
            if start < until {
                // Forage that is gone when it goes away leaves it without until its return: then a bit must be left.
                let away = self.at(until) == Where::Out(Eats::Nothing);
                let bit = if away { bit } else { 0.0 };
                return (self.eats_from(until) + bit).min(next);
            }
        }
        here
    }

    /// Whether no stretch with nothing to eat is longer than the limits by day and by night.
    pub(super) fn bare_at_most(&self, day: f64, night: f64) -> bool {
        self.bare.iter().all(|(middle, hours)| {
            let limit = if is_night(*middle) { night } else { day };
            *hours <= limit
        })
    }

    /// The stretches of grass between two hours, in order.
    pub(super) fn grass_between(&self, from: f64, to: f64) -> Vec<(f64, f64)> {
        let base = (from / day_hours()).floor() * day_hours();
        let mut found: Vec<(f64, f64)> = Vec::new();
        let ahead = self
            // numeric: from any hour of one day to the same of the next lie parts of two; the third is for what comes late
            .days(3)
            .filter(|piece| piece.place.has_grass())
            .map(|piece| ((piece.from + base).max(from), (piece.to + base).min(to)))
            .filter(|(start, end)| start < end);
        for (start, end) in ahead {
            match found.last_mut() {
                // numeric: nothing lies between equal hours
                Some(last) if start - last.1 < 1e-9 => last.1 = end,
                _ => found.push((start, end)),
            }
        }
        found
    }
}

/// The stretches with nothing to eat, over midnight as one.
fn bare(pieces: &[Piece]) -> Vec<(f64, f64)> {
    let day = day_hours();
    let twice = pieces
        .iter()
        .copied()
        .chain(pieces.iter().map(|piece| Piece {
            from: piece.from + day,
            to: piece.to + day,
            place: piece.place,
        }));
    let mut found: Vec<(f64, f64)> = Vec::new();
    for piece in twice.filter(|piece| piece.place == Where::Out(Eats::Nothing)) {
        match found.last_mut() {
            // numeric: nothing lies between equal hours
            Some(last) if piece.from - last.1 < 1e-9 => last.1 = piece.to,
            _ => found.push((piece.from, piece.to)),
        }
    }
    found
        .into_iter()
        .map(|(from, to)| {
            (
                f64::midpoint(from, to).rem_euclid(day),
                (to - from).min(day),
            )
        })
        .collect()
}

fn place(stretches: &[Stretch], hour: f64) -> Where {
    let out: Vec<Eats> = stretches
        .iter()
        .filter(|stretch| {
            let (from, to) = (stretch.from, stretch.to);
            if from < to {
                from <= hour && hour < to
            } else {
                hour < to || from <= hour
            }
        })
        .map(|stretch| stretch.eats)
        .collect();
    for eats in [Eats::Nothing, Eats::Grass, Eats::GrassAndNets] {
        if out.contains(&eats) {
            return Where::Out(eats);
        }
    }
    Where::Nets
}
