//! The grass of the invented yard: a place in open country that is nobody's, two paddocks, what was seen there, and a
//! turnout.

use super::{ExampleFault, add};
use crate::acts::Act;
use tussock_core::animal::{AnimalId, Answer, PaddockId, YardId};
use tussock_core::graze::sward::Leaf;
use tussock_core::log::bodies::base::{MicroDegrees, SquareMetres};
use tussock_core::log::bodies::{
    Chip, GrazingMinutes, GrazingV1, PaddockV2, PlaceV2, SwardV1, TurnoutV1, WeatherV2, YardV2,
};
use tussock_core::log::{Body, LogError, Name, Subject};
use tussock_core::units::{Instant, LocalDate, Span, Zone};

/// The clock that the days of the example are counted by. Its place keeps this time or one hour more.
struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

fn day_of(at: Instant) -> LocalDate {
    Utc.to_local(at).date
}

/// The yard, at round figures in open country.
pub(super) fn yard() -> Result<YardV2, LogError> {
    Ok(YardV2 {
        place: Some(PlaceV2 {
            latitude: MicroDegrees::new(52_000_000)?,
            longitude: MicroDegrees::new(-2_500_000)?,
            zone: Some(Name::new("Europe/London")?),
        }),
        ..YardV2::named(Name::new("Hill Farm")?)
    })
}

fn paddock(name: &str, area: i64) -> Result<PaddockV2, LogError> {
    Ok(PaddockV2 {
        area_m2: Some(SquareMetres::new(area)?),
        ..PaddockV2::named(Name::new(name)?)
    })
}

/// Paddocks, what was seen today, the weather of today, how Moss goes out, and that it did yesterday.
pub(super) fn acts(
    yard: &YardId,
    now: Instant,
    days: &impl Fn(i64) -> Instant,
) -> Result<Vec<Act>, ExampleFault> {
    let top = PaddockId("top-field".to_owned());
    let strip = PaddockId("long-strip".to_owned());
    let moss = || Subject::animal(&AnimalId("moss".to_owned()));
    let out = days(1);
    Ok(vec![
        add(
            top.as_str(),
            Subject::paddock(&top),
            days(20),
            Body::Paddock(paddock("Top field", 8_000)?),
        ),
        add(
            strip.as_str(),
            Subject::paddock(&strip),
            days(20),
            Body::Paddock(paddock("Long strip", 2_400)?),
        ),
        add(
            "sward",
            Subject::paddock(&top),
            now,
            Body::Sward(SwardV1 {
                leaf: Some(Leaf::Ankle),
                seeding: Answer::No,
                heights_mm: Vec::new(),
                plate: None,
                note: None,
            }),
        ),
        add(
            "weather",
            Subject::yard(yard),
            now,
            Body::Weather(WeatherV2 {
                date: day_of(now),
                chips: vec![Chip::NightOverFive, Chip::Sunny],
                carried: false,
            }),
        ),
        add(
            "moss-grazing",
            moss(),
            days(7),
            Body::Grazing(GrazingV1 {
                paddock: Some(top.clone()),
                from: day_of(days(7)),
                minutes: GrazingMinutes::new(45)?,
                muzzle: false,
                adapted_since: None,
                out: None,
                stopped: false,
            }),
        ),
        add(
            "moss-turnout",
            moss(),
            out,
            Body::Turnout(TurnoutV1 {
                paddock: Some(top),
                muzzle: false,
                bring_in_by: Some(out + Span::minutes(45)),
                came_in: Some(out + Span::minutes(40)),
                job: None,
            }),
        ),
    ])
}
