//! What a yard has and how an animal is fed there: forages, balancer, visits, nets, soaking, weather.

use super::bodies::{Body, FeedingV1, RationV1};
use super::entry::Entry;
use super::gather::{Problem, Wish};
use super::timed::own_rates_of;
use crate::animal::{AnimalId, FoodId, Group, LotId};
use crate::day::NetKind;
use crate::forage::{ForageKind, Lot, instead};
use crate::limits::WaterWeather;
use crate::plan::{NetUse, Soaking};
use crate::ration::{Food, typical_balancer};
use crate::soak::{Air, Recipe, Water};
use crate::units::{AsFed, LocalDate, LocalTime, PartOfBody};

/// How an animal is fed, as the records say it; what nobody said has its default.
pub(super) struct Feeds {
    /// The forages and their parts.
    pub hays: Vec<(Lot, f64)>,
    /// The balancer.
    pub balancer: Option<Food>,
    /// The bought feeds that somebody decided on.
    pub ration: Option<Vec<(AsFed, Food)>>,
    /// The visits.
    pub visits: Vec<LocalTime>,
    /// The nets.
    pub net: NetUse,
    /// How hay is soaked.
    pub soaking: Soaking,
    /// The weather for water.
    pub weather: WaterWeather,
    /// The level asked for.
    pub asked: Option<PartOfBody>,
}

impl Feeds {
    /// From the entries, oldest first. What is wished for beside the records comes first, then how the animal (or the
    /// group it is in) is said to be fed, then what the yard has.
    pub(super) fn of(
        entries: &[Entry<'_>],
        animal: &AnimalId,
        day: LocalDate,
        wish: &Wish,
        problems: &mut Vec<Problem>,
    ) -> Self {
        let said = said(entries, animal, day);
        let (air, weather) = weather(entries, day);
        let water = match air {
            Air::HardFrost | Air::Under16 => Water::TapWinter,
            Air::Mild | Air::Over20 | Air::Over25 => Water::TapSummer,
        };
        let recipe = said
            .and_then(|said| said.soaking.as_ref())
            .and_then(|soaking| soaking.recipe().ok())
            .unwrap_or_else(|| Recipe::usual(water));
        Self {
            hays: hays(entries, said, wish, day, problems),
            balancer: balancer(entries, said, problems),
            ration: decided(entries, animal, day, problems),
            visits: visits(entries, wish, day),
            net: net(entries, said, animal, &recipe),
            soaking: Soaking { recipe, air },
            weather,
            asked: said
                .and_then(|said| said.asked)
                .map(super::bodies::base::BodyHundredths::part),
        }
    }
}

/// How the animal is said to be fed: itself, else the group it is in on the day.
fn said<'a>(entries: &'a [Entry<'_>], animal: &AnimalId, day: LocalDate) -> Option<&'a FeedingV1> {
    let of = |subject: &str| {
        entries.iter().rev().find_map(|entry| match &entry.body {
            Body::Feeding(feeding) if entry.record.subject.id() == subject => Some(feeding),
            _ => None,
        })
    };
    let group = entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Group(group) => {
            let group = group.group(&entry.record.id);
            group.on(day).contains(&animal).then_some(group.id.0)
        }
        _ => None,
    });
    of(animal.as_str()).or_else(|| of(group.as_deref()?))
}

/// The forages that are wished for or said, or the one that came last; hay before haylage and straw.
fn hays(
    entries: &[Entry<'_>],
    said: Option<&FeedingV1>,
    wish: &Wish,
    day: LocalDate,
    problems: &mut Vec<Problem>,
) -> Vec<(Lot, f64)> {
    let lots: Vec<Lot> = entries
        .iter()
        .filter_map(|entry| {
            let Body::Lot(body) = &entry.body else {
                return None;
            };
            match body.lot(&entry.record.id) {
                Ok((lot, _)) => Some(lot),
                Err(error) => {
                    problems.push(Problem::Log(error));
                    None
                }
            }
        })
        .collect();
    let wanted: Vec<(String, f64)> = if wish.hays.is_empty() {
        said.map(|said| {
            said.hays
                .iter()
                .map(|hay| (hay.lot.0.clone(), hay.percent.get() as f64 / 100.0))
                .collect()
        })
        .unwrap_or_default()
    } else {
        wish.hays.clone()
    };
    if wanted.is_empty() {
        // What was opened last is what is fed; of what nobody opened, what came last.
        let hay = lots
            .iter()
            .filter(|lot| lot.class.kind() == ForageKind::Hay)
            .max_by_key(|lot| lot.opened_on.filter(|on| *on <= day));
        return hay
            .or(lots.last())
            .map(|lot| (lot.clone(), 1.0))
            .into_iter()
            .collect();
    }
    // What is said of a lot goes for the one that was opened in place of it. What is wished for goes as it is.
    let opened = |id: &str| {
        let of = LotId(id.to_owned());
        let said = wish.hays.is_empty();
        said.then(|| instead(&lots, &of, LocalDate::MIN, day))?
    };
    let mut fed: Vec<(Lot, f64)> = Vec::new();
    for (id, part) in wanted {
        let id = opened(&id).map_or(id, |instead| instead.lot.0);
        let Some(lot) = lots.iter().find(|lot| lot.id.0 == id) else {
            continue;
        };
        match fed.iter_mut().find(|(other, _)| other.id == lot.id) {
            Some((_, parts)) => *parts += part,
            None => fed.push((lot.clone(), part)),
        }
    }
    fed
}

/// The balancer that is said, else the one that came last.
fn balancer(
    entries: &[Entry<'_>],
    said: Option<&FeedingV1>,
    problems: &mut Vec<Problem>,
) -> Option<Food> {
    use crate::ration::FoodClass;
    let wanted = said.and_then(|said| said.balancer.as_ref());
    let (record, body) = entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Food(body)
            if wanted.map_or(body.class == FoodClass::Balancer, |id| {
                id.0 == entry.record.id.0
            }) =>
        {
            Some((&entry.record.id, body))
        }
        _ => None,
    })?;
    body.food(record).unwrap_or_else(|error| {
        problems.push(Problem::Log(error));
        None
    })
}

/// The bought feeds of the ration that was decided on last and has begun; `None` when nobody decided, and when one of its
/// foods is not there any more or cannot be read: what the hay is short of is then covered anew.
fn decided(
    entries: &[Entry<'_>],
    animal: &AnimalId,
    day: LocalDate,
    problems: &mut Vec<Problem>,
) -> Option<Vec<(AsFed, Food)>> {
    let ration = ration_on(entries, animal, day)?;
    let mut foods = Vec::new();
    for amount in &ration.foods {
        foods.push((
            amount.as_fed_g.as_fed(),
            food(entries, amount.food.as_ref(), problems)?,
        ));
    }
    Some(foods)
}

/// The ration that was decided on last and has begun.
pub(super) fn ration_on<'a>(
    entries: &'a [Entry<'_>],
    animal: &AnimalId,
    day: LocalDate,
) -> Option<&'a RationV1> {
    entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Ration(ration)
            if entry.record.subject.id() == animal.as_str() && ration.from <= day =>
        {
            Some(ration)
        }
        _ => None,
    })
}

/// A food of the yard; the typical balancer where no food is named. `None` when it is not there or cannot be read.
pub(super) fn food(
    entries: &[Entry<'_>],
    id: Option<&FoodId>,
    problems: &mut Vec<Problem>,
) -> Option<Food> {
    let Some(id) = id else {
        return Some(typical_balancer());
    };
    let (record, body) = entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Food(body) if entry.record.id.0 == id.0 => Some((&entry.record.id, body)),
        _ => None,
    })?;
    body.food(record).unwrap_or_else(|error| {
        problems.push(Problem::Log(error));
        None
    })
}

fn visits(entries: &[Entry<'_>], wish: &Wish, day: LocalDate) -> Vec<LocalTime> {
    if !wish.visits.is_empty() {
        return wish.visits.clone();
    }
    entries
        .iter()
        .rev()
        .find_map(|entry| match &entry.body {
            Body::Visits(body) if body.from.is_none_or(|from| from <= day) => {
                Some(body.times.clone())
            }
            _ => None,
        })
        .unwrap_or_default()
}

/// What is said of nets, else the kind of the net that came last and the most that all nets hold at once.
///
/// The animal's own rate is that of the nets of this kind that it was timed with.
fn net(
    entries: &[Entry<'_>],
    said: Option<&FeedingV1>,
    animal: &AnimalId,
    recipe: &Recipe,
) -> NetUse {
    let (kind, most_at_once) = kind_and_most(entries, said, animal);
    let [dry, soaked] = own_rates_of(entries, animal, kind, recipe);
    // A net of soaked hay that was found empty says as much of dry hay, which is eaten faster.
    let at_least = [dry.at_least, soaked.at_least].into_iter().flatten();
    NetUse {
        kind,
        most_at_once,
        at_least: at_least.reduce(f64::max),
        timed: dry.rate,
        timed_soaked: soaked.rate,
    }
}

/// The most that hangs for all of a group at once: what is said of how it is fed, else what the nets of the yard, of the
/// group and of its members hold; `None` when nobody said of one of them.
pub(super) fn most_for_all(
    entries: &[Entry<'_>],
    group: &Group,
    members: &[&AnimalId],
) -> Option<AsFed> {
    let said = entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Feeding(feeding) if entry.record.subject.id() == group.id.as_str() => Some(feeding),
        _ => None,
    });
    if let Some(said) = said {
        return said.most_at_once.as_ref().map(|most| most.g.as_fed());
    }
    let theirs = |entry: &Entry<'_>| {
        let about = &entry.record.subject;
        match about.kind() {
            "animal" => members.iter().any(|member| member.as_str() == about.id()),
            "group" => about.id() == group.id.as_str(),
            _ => true,
        }
    };
    entries
        .iter()
        .filter(|entry| theirs(entry))
        .filter_map(|entry| match &entry.body {
            Body::Net(body) => Some(body.capacity.as_ref().map(|most| most.g.as_fed())),
            _ => None,
        })
        .sum::<Option<AsFed>>()
        .filter(|most| AsFed::ZERO < *most)
}

fn kind_and_most(
    entries: &[Entry<'_>],
    said: Option<&FeedingV1>,
    animal: &AnimalId,
) -> (NetKind, Option<AsFed>) {
    if let Some(said) = said {
        let most = said.most_at_once.as_ref().map(|most| most.g.as_fed());
        return (said.net_kind, most);
    }
    // A net that hangs for another animal holds nothing for this one.
    let others = |entry: &Entry<'_>| {
        let about = &entry.record.subject;
        about.kind() == "animal" && about.id() != animal.as_str()
    };
    let nets = entries.iter().rev().filter_map(|entry| match &entry.body {
        Body::Net(body) if !others(entry) => Some(body),
        _ => None,
    });
    let mut kind = None;
    let mut most = Some(AsFed::ZERO);
    for net in nets {
        kind = kind.or(Some(net.eaten_from()));
        most = match (most, &net.capacity) {
            (Some(sum), Some(capacity)) => Some(sum + capacity.g.as_fed()),
            _ => None,
        };
    }
    (
        kind.unwrap_or(NetKind::of_hole(None)),
        most.filter(|most| AsFed::ZERO < *most),
    )
}

/// The air and the weather for water by the last chips that were set on the day or the one before it; mild
/// when nobody said.
fn weather(entries: &[Entry<'_>], day: LocalDate) -> (Air, WaterWeather) {
    let last = entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Weather(body) if (0..=1).contains(&(day - body.date).num_days()) => Some(body),
        _ => None,
    });
    (
        last.and_then(super::bodies::WeatherV2::air)
            .unwrap_or(Air::Mild),
        last.and_then(super::bodies::WeatherV2::water)
            .unwrap_or(WaterWeather::Mild),
    )
}
