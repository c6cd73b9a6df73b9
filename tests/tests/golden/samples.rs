//! At least one body of every kind, with every field filled and every variant used. A field that is added to a body
//! does not compile until it has its place here.

use tussock_core::animal::{AnimalId, LotId, NetId, PersonId, VetPermit, YardId};
use tussock_core::day::NetKind;
use tussock_core::log::bodies::base::*;
use tussock_core::log::bodies::*;
use tussock_core::log::{Body, Kind, Known, Name, Record, Stamp, Subject};
use tussock_core::soak::NotSoaked;
use tussock_core::sources::RecordId;
use tussock_core::units::{Currency, Instant, LocalDate, LocalTime, Money, PartOfBody};

mod documents;
mod entries;
mod grass;
mod weights;

use documents::{animals, counts, feeding, foods, group, lots, person, yard};
use entries::{
    appetites, conditions, day_relaid, left_overs, look_over, net_timings, photos, plan, rations,
    soak_steps, vet_word, vitals, work_sessions,
};
use grass::{grazings, paddocks, season_notes, swards, turnouts};
use weights::weights;

/// A name.
pub(crate) fn name(text: &str) -> Name {
    Name::new(text).unwrap()
}

fn said(text: &str) -> String {
    text.to_owned()
}

fn date(text: &str) -> LocalDate {
    text.parse().unwrap()
}

fn time(hour: u32, minute: u32) -> LocalTime {
    LocalTime::from_hms_opt(hour, minute, 0).unwrap()
}

fn at(minutes: i64) -> Instant {
    Instant::from_ms(1_777_960_800_000 + minutes * 60_000)
}

fn feed(g: i64, typed: Option<&str>) -> FeedWeight {
    FeedWeight {
        g: FeedGrams::new(g).unwrap(),
        typed: typed.map(str::to_owned),
    }
}

fn grams(g: i64) -> FeedGrams {
    FeedGrams::new(g).unwrap()
}

fn body(g: i64, typed: &str) -> BodyWeight {
    BodyWeight {
        g: BodyGrams::new(g).unwrap(),
        typed: Some(said(typed)),
    }
}

fn cm(tenths: i64, typed: &str) -> Distance {
    Distance {
        mm: Millimetres::new(tenths).unwrap(),
        typed: Some(said(typed)),
    }
}

fn reported(value: &str, unit: &str, typed: &str) -> Reported {
    Reported {
        value: Decimal::new(value).unwrap(),
        unit: name(unit),
        typed: Some(said(typed)),
    }
}

fn pounds(minor: i64) -> Money {
    Money {
        minor,
        currency: Currency::from_code("GBP").unwrap(),
    }
}

fn job(key: &str) -> JobKey {
    JobKey::new(key).unwrap()
}

fn lot() -> LotId {
    LotId("lot-back-field".to_owned())
}

fn net() -> NetId {
    NetId("net-blue".to_owned())
}

fn id(text: &str) -> RecordId {
    RecordId(text.to_owned())
}

/// The bodies of a kind.
#[allow(clippy::too_many_lines, reason = "one arm a kind")]
pub(crate) fn bodies(kind: &Kind) -> Vec<Body> {
    match kind {
        Kind::Yard => vec![Body::Yard(yard())],
        Kind::Person => [
            Role::Keeper,
            Role::Helper,
            Role::Consultant,
            Role::Vet,
            Role::Farrier,
        ]
        .map(|role| Body::Person(person(role)))
        .to_vec(),
        Kind::Animal => animals().into_iter().map(Body::Animal).collect(),
        Kind::Group => vec![Body::Group(group())],
        Kind::Lot => lots().into_iter().map(Body::Lot).collect(),
        Kind::LotCount => counts().into_iter().map(Body::LotCount).collect(),
        Kind::Paddock => paddocks().into_iter().map(Body::Paddock).collect(),
        Kind::Food => foods().into_iter().map(Body::Food).collect(),
        Kind::Net => [None, Some(true)]
            .map(|double| {
                Body::Net(NetV1 {
                    name: name("Blue 1"),
                    net_kind: Some(NetKind::SmallHoles),
                    own_weight: Some(feed(450, Some("0.45"))),
                    hole: Some(cm(25, "2.5 cm")),
                    capacity: Some(feed(6_000, Some("6 kg"))),
                    double,
                })
            })
            .to_vec(),
        Kind::Tub => vec![Body::Tub(TubV1 {
            name: name("Tub by the tap"),
            capacity: Some(feed(8_000, Some("8"))),
        })],
        Kind::Visits => vec![Body::Visits(VisitsV1 {
            times: vec![time(6, 30), time(17, 0), time(21, 45)],
            from: Some(date("2026-05-05")),
        })],
        Kind::Feeding => vec![Body::Feeding(feeding())],
        Kind::Weight => weights().into_iter().map(Body::Weight).collect(),
        Kind::Condition => conditions().into_iter().map(Body::Condition).collect(),
        Kind::Crest => vec![Body::Crest(CrestV1 {
            score: CrestPoints::new(3).unwrap(),
            job: Some(job("crest/moss/2026-05-05")),
        })],
        Kind::Photo => photos().into_iter().map(Body::Photo).collect(),
        Kind::LookOver => vec![Body::LookOver(look_over())],
        Kind::WorkSession => work_sessions().into_iter().map(Body::WorkSession).collect(),
        Kind::Appetite => appetites().into_iter().map(Body::Appetite).collect(),
        Kind::Vitals => vec![Body::Vitals(vitals())],
        Kind::VetWord => [
            VetPermit::LowestLevel(PartOfBody::percent(1.25)),
            VetPermit::Work,
            VetPermit::ReturnToGrass,
        ]
        .map(|permit| Body::VetWord(vet_word(permit)))
        .to_vec(),
        Kind::NetFilled => vec![Body::NetFilled(NetFilledV1 {
            net: Some(net()),
            lot: lot(),
            hay: feed(3_600, Some("4,05")),
            reading: Some(feed(4_050, Some("4,05"))),
            own_weight: Some(grams(450)),
            target: Some(grams(3_650)),
            slices: Some(Count::new(3).unwrap()),
            to_soak: true,
            job: Some(job("fill/moss/2026-05-05/1")),
        })],
        Kind::NetHung => vec![Body::NetHung(NetHungV1 {
            net: Some(net()),
            filling: Some(id("filling-1")),
            lot: Some(lot()),
            hay: Some(feed(3_600, None)),
            soak: Some(id("soak-1")),
            not_soaked: Some(NotSoaked::Frozen),
            job: Some(job("hang/moss/2026-05-05/1")),
        })],
        Kind::NetTimed => net_timings().into_iter().map(Body::NetTimed).collect(),
        Kind::SoakStep => soak_steps().into_iter().map(Body::SoakStep).collect(),
        Kind::LeftOver => left_overs().into_iter().map(Body::LeftOver).collect(),
        Kind::Job => [
            JobAnswer::Done,
            JobAnswer::AsPlanned,
            JobAnswer::NotDone,
            JobAnswer::SomebodyElse,
            JobAnswer::NotKnown,
        ]
        .map(|answer| {
            Body::Job(JobV1 {
                job: JobKey::new("walk/moss/2026-05-05").unwrap(),
                answer,
                note: Some(said("Rain.")),
                not_soaked: None,
            })
        })
        .to_vec(),
        Kind::Weather => vec![Body::Weather(WeatherV2 {
            date: date("2026-05-05"),
            chips: vec![
                Chip::NightFiveOrUnder,
                Chip::NightOverFive,
                Chip::HardFrost,
                Chip::UnderSixteen,
                Chip::Mild,
                Chip::OverTwenty,
                Chip::OverTwentyFive,
                Chip::Dull,
                Chip::Sunny,
                Chip::DrySpell,
            ],
            carried: false,
        })],
        Kind::Plan => vec![Body::Plan(plan())],
        Kind::Ration => rations().into_iter().map(Body::Ration).collect(),
        Kind::DayRelaid => vec![Body::DayRelaid(day_relaid())],
        Kind::YardVisit => vec![Body::YardVisit(YardVisitV1 {
            animals: vec![AnimalId("moss".to_owned()), AnimalId("fern".to_owned())],
            as_before: SharedFact::ALL.to_vec(),
            ended: Some(at(90)),
            report: Some(said("Visit of 5 May.\nMoss: 305 kg.")),
        })],
        Kind::Sward => swards().into_iter().map(Body::Sward).collect(),
        Kind::Grazing => grazings().into_iter().map(Body::Grazing).collect(),
        Kind::Turnout => turnouts().into_iter().map(Body::Turnout).collect(),
        Kind::SeasonNote => season_notes().into_iter().map(Body::SeasonNote).collect(),
        Kind::Other(_) => Vec::new(),
    }
}

/// The version a sample is written under. The later shapes of animal and food were once written under their first, and
/// both read it; every other kind says its own.
fn version(kind: &Kind) -> i64 {
    match kind {
        Kind::Animal | Kind::Food => 1,
        kind => kind.latest().unwrap_or(1),
    }
}

/// A record of a body.
pub(crate) fn record(kind: &Kind, index: usize, body: &Body) -> Record {
    let stamp = Stamp::from_text("1777960800123-0004-moss0001").unwrap();
    Record {
        id: RecordId(format!("{}-{index}", kind.word().replace('_', "-"))),
        kind: kind.clone(),
        v: version(kind),
        yard: YardId("yard-1".to_owned()),
        subject: Subject::animal(&AnimalId("moss".to_owned())),
        at: at(0),
        offset_min: 60,
        zone: "Europe/London".to_owned(),
        by: Some(PersonId("keeper".to_owned())),
        device: stamp.device(),
        stamp,
        after: Some(Stamp::from_text("1777960800000-0000-fern0001").unwrap()),
        gone: false,
        known: Known::Seen,
        body: body.to_value().unwrap(),
        extra: serde_json::Map::new(),
    }
}

/// Every record of every kind.
#[allow(dead_code, reason = "used by one of the binaries that share this file")]
pub(crate) fn records() -> Vec<Record> {
    Kind::KNOWN
        .iter()
        .flat_map(|kind| {
            bodies(kind)
                .iter()
                .enumerate()
                .map(|(index, body)| record(kind, index, body))
                .collect::<Vec<_>>()
        })
        .collect()
}
