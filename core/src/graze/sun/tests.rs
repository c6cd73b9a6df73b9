use super::*;

/// One offset all the year.
pub(crate) struct Fixed(pub(crate) i32);

impl Zone for Fixed {
    fn offset_min(&self, _: Instant) -> i32 {
        self.0
    }
}

fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

#[test]
fn an_event_is_never_the_neighbours_east_and_west_of_the_date_line() {
    // The same meridian, a day apart by the calendar.
    for (minutes, east) in [(-720, -179.9), (840, 179.9), (765, -176.5), (780, 180.0)] {
        let place = Place::degrees(-18.0, east).unwrap();
        let zone = Fixed(minutes);
        let sun = sun_day(place, day("2026-03-20"), &zone).unwrap();
        let dates = [sun.sunrise(), Some(sun.noon()), sun.sunset()]
            .map(|at| zone.to_local(at.unwrap()).date);
        assert_eq!(dates, [day("2026-03-20"); 3], "{minutes} {east}");
    }
}

#[test]
fn the_sun_of_the_far_north_never_sets_in_june_and_never_rises_in_december() {
    let place = Place::degrees(69.65, 18.96).unwrap();
    let june = sun_day(place, day("2026-06-21"), &Fixed(120)).unwrap();
    assert!(matches!(june, SunDay::NeverSets { .. }));
    let december = sun_day(place, day("2026-12-21"), &Fixed(60)).unwrap();
    assert!(matches!(december, SunDay::NeverRises { .. }));
    assert_eq!((december.sunrise(), december.sunset()), (None, None));
    for north in [90.0, -90.0] {
        let pole = Place::degrees(north, 0.0).unwrap();
        assert!(sun_day(pole, day("2026-06-21"), &Fixed(0)).is_ok());
    }
}

#[test]
fn a_sunset_after_midnight_belongs_to_the_day_it_ends() {
    // The last days before the sun stays up: by the clock of summer it goes down after midnight.
    let place = Place::degrees(69.65, 18.96).unwrap();
    let zone = Fixed(120);
    let sun = sun_day(place, day("2026-05-16"), &zone).unwrap();
    let sunset = zone.to_local(sun.sunset().unwrap());
    assert_eq!(sunset.date, day("2026-05-17"));
    assert!(sunset.time < "01:00:00".parse().unwrap());
}

#[test]
fn a_clock_of_elsewhere_is_seen() {
    let dublin = Place::degrees(53.35, -6.26).unwrap();
    let on = day("2026-06-01");
    let at_home = sun_day(dublin, on, &Fixed(60)).unwrap();
    assert!(clock_fits(at_home, on, &Fixed(60)));
    assert!(clock_ahead(at_home, on, &Fixed(60)) > Span::minutes(80));
    let abroad = sun_day(dublin, on, &Fixed(600)).unwrap();
    assert!(!clock_fits(abroad, on, &Fixed(600)));
}

#[test]
fn what_is_no_place_is_refused() {
    assert!(Place::degrees(90.1, 0.0).is_err());
    assert!(Place::degrees(0.0, f64::NAN).is_err());
    let place = Place::degrees(0.0, 0.0).unwrap();
    assert!(sun_day(place, LocalDate::MAX, &Fixed(0)).is_err());
    assert!(sun_day(place, LocalDate::MIN, &Fixed(0)).is_err());
}
