use super::*;
use crate::animal::YardId;
use crate::log::{DeviceId, Known, Origin, Subject};
use crate::sources::RecordId;
use crate::units::{Instant, Span};

/// Rows of chips and notes, in the order in which they were set.
#[derive(Default)]
struct Said(Vec<Record>);

fn date(text: &str) -> LocalDate {
    text.parse().unwrap()
}

impl Said {
    fn body(&mut self, body: &Body) -> &mut Self {
        let index = i64::try_from(self.0.len()).unwrap();
        let at = Instant::from_ms(1_777_960_800_000) + Span::minutes(index);
        let yard = YardId("yard-1".to_owned());
        let origin = Origin {
            subject: Subject::yard(&yard),
            yard,
            at,
            offset_min: 60,
            zone: "Europe/London".to_owned(),
            by: None,
            known: Known::Seen,
        };
        let stamp = Stamp::first(at, DeviceId::of_number(7));
        let id = RecordId(format!("said-{index}"));
        self.0.push(Record::new(id, origin, stamp, body).unwrap());
        self
    }

    fn row(&mut self, day: &str, chips: &[Chip], carried: bool) -> &mut Self {
        self.body(&Body::Weather(WeatherV2 {
            date: date(day),
            chips: chips.to_vec(),
            carried,
        }))
    }

    fn note(&mut self, day: &str, what: Noted) -> &mut Self {
        self.body(&Body::SeasonNote(SeasonNoteV1 {
            date: date(day),
            what,
            note: None,
        }))
    }

    fn of(&self, day: &str) -> DayWeather {
        let records: Vec<&Record> = self.0.iter().collect();
        day_weather_of(&records, date(day))
    }
}

#[test]
fn a_night_is_said_on_its_own_day_or_not_at_all() {
    let mut said = Said::default();
    said.row(
        "2026-05-05",
        &[Chip::NightOverFive, Chip::Mild, Chip::Dull],
        false,
    );
    assert_eq!(said.of("2026-05-05").night, Night::Mild);
    assert_eq!(said.of("2026-05-05").sky, Sky::Dull);
    // The day after, nobody said anything yet.
    assert_eq!(said.of("2026-05-06").night, Night::NotSaid);
    assert_eq!(said.of("2026-05-06").sky, Sky::NotSaid);
    // A row that was carried over is nobody's word of this night.
    said.row("2026-05-06", &[Chip::NightOverFive, Chip::Dull], true);
    assert_eq!(said.of("2026-05-06").night, Night::NotSaid);
    // Neither does mild air speak of the night.
    said.row("2026-05-06", &[Chip::Mild], false);
    assert_eq!(said.of("2026-05-06").night, Night::NotSaid);
    said.row("2026-05-06", &[Chip::NightOverFive], false);
    assert_eq!(said.of("2026-05-06").night, Night::Over5);
    said.row("2026-05-06", &[Chip::NightFiveOrUnder, Chip::Mild], false);
    assert_eq!(said.of("2026-05-06").night, Night::Cold);
    // The last word of the day holds.
    said.row(
        "2026-05-06",
        &[Chip::NightOverFive, Chip::OverTwenty],
        false,
    );
    assert_eq!(said.of("2026-05-06").night, Night::Over5);
}

#[test]
fn of_two_that_cannot_both_be_the_stricter_holds() {
    let mut said = Said::default();
    let both = [
        Chip::NightFiveOrUnder,
        Chip::NightOverFive,
        Chip::Dull,
        Chip::Sunny,
    ];
    said.row("2026-05-05", &both, false);
    let day = said.of("2026-05-05");
    assert_eq!((day.night, day.sky), (Night::Cold, Sky::Sunny));
}

#[test]
fn frost_stays_said_and_is_remembered_for_a_fortnight() {
    let mut said = Said::default();
    said.row("2026-05-05", &[Chip::NightOverFive, Chip::HardFrost], false);
    // By noon it is mild, and the morning was frosty all the same.
    said.row("2026-05-05", &[Chip::NightOverFive, Chip::Mild], false);
    let day = said.of("2026-05-05");
    assert!(day.frost);
    assert_eq!(day.night, Night::Cold);
    assert_eq!(day.last_hard_freeze, Some(date("2026-05-05")));
    let later = said.of("2026-05-19");
    assert!(!later.frost);
    assert_eq!(later.last_hard_freeze, Some(date("2026-05-05")));
    assert_eq!(said.of("2026-05-20").last_hard_freeze, None);
    assert_eq!(
        said.of("2026-05-04").last_hard_freeze,
        None,
        "nothing is known before"
    );
    said.note("2026-05-10", Noted::HardFreeze)
        .note("2026-05-12", Noted::FirstFrost);
    assert_eq!(
        said.of("2026-05-19").last_hard_freeze,
        Some(date("2026-05-10"))
    );
}

#[test]
fn a_dry_spell_lasts_until_a_row_is_set_without_it() {
    let mut said = Said::default();
    said.row("2026-05-05", &[Chip::DrySpell], false);
    assert!(said.of("2026-05-08").dry_spell);
    assert!(
        !said.of("2026-05-20").dry_spell,
        "nobody has spoken for too long"
    );
    said.row("2026-05-07", &[Chip::NightOverFive], false);
    assert!(said.of("2026-05-06").dry_spell);
    assert!(!said.of("2026-05-08").dry_spell);
    said.note("2026-05-08", Noted::Drought);
    assert!(said.of("2026-05-09").dry_spell);
    assert!(!Said::default().of("2026-05-09").dry_spell);
}

#[test]
fn of_boot_and_ruler_the_lower_leaf_holds() {
    use crate::animal::Answer;
    use crate::log::bodies::base::Millimetres;
    let seen = |leaf, heights: &[i64]| SwardV1 {
        leaf,
        seeding: Answer::No,
        heights_mm: heights
            .iter()
            .map(|mm| Millimetres::new(*mm).unwrap())
            .collect(),
        plate: None,
        note: None,
    };
    let likely = |sward: &SwardV1| sward.leaf_height().map(|ends| ends.likely.to_cm());
    let boot = Some(Leaf::Ankle);
    assert_eq!(likely(&seen(None, &[])), None);
    assert_eq!(likely(&seen(boot, &[])), Some(10.0));
    assert_eq!(likely(&seen(None, &[60, 80])), Some(7.0));
    assert_eq!(likely(&seen(boot, &[60, 80])), Some(7.0));
    assert_eq!(likely(&seen(boot, &[200, 240])), Some(10.0));
}

#[test]
fn a_place_is_read_in_degrees() {
    use crate::log::bodies::base::MicroDegrees;
    let place = PlaceV2 {
        latitude: MicroDegrees::new(52_000_000).unwrap(),
        longitude: MicroDegrees::new(-2_500_000).unwrap(),
        zone: None,
    };
    assert_eq!(place.place(), Place::degrees(52.0, -2.5).ok());
    let beyond = PlaceV2 {
        latitude: MicroDegrees::new(120_000_000).unwrap(),
        ..place
    };
    assert_eq!(beyond.place(), None);
}
