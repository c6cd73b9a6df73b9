use super::*;
use crate::graze::sun::Latitude;
use crate::units::LocalDate;

fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

fn at(degrees: f64) -> Option<Latitude> {
    Latitude::degrees(degrees).ok()
}

fn note(date: &str, what: Noted) -> Note {
    Note {
        date: day(date),
        what,
    }
}

fn flush(degrees: f64, on: &str, notes: &[Note]) -> Flush {
    season_on(at(degrees), day(on), notes).flush
}

#[test]
fn may_is_the_flush_in_the_north_and_the_autumn_break_in_the_south() {
    let north = season_on(at(52.0), day("2026-05-15"), &[]);
    assert_eq!(north.flush, Flush::On(Known::ByLatitude));
    let south = season_on(at(-38.0), day("2026-05-15"), &[]);
    assert_eq!(south.flush, Flush::Off(Known::ByLatitude));
    assert!(south.autumn);
    assert!(flush(-38.0, "2026-10-15", &[]).is_on());
}

#[test]
fn the_flush_begins_earlier_in_the_south_and_lasts_longer_in_the_north() {
    assert!(flush(45.0, "2026-03-20", &[]).is_on());
    assert!(matches!(flush(52.0, "2026-03-20", &[]), Flush::Near { .. }));
    assert!(flush(45.0, "2026-06-20", &[]).is_on());
    assert!(!flush(52.0, "2026-07-10", &[]).is_on());
    assert!(flush(60.0, "2026-07-10", &[]).is_on());
}

#[test]
fn what_a_person_saw_this_year_holds() {
    let early = [note("2026-03-14", Noted::FlushBegan)];
    assert_eq!(
        flush(52.0, "2026-03-20", &early),
        Flush::On(Known::ByNote(day("2026-03-14")))
    );
    let over = [early[0], note("2026-06-02", Noted::FlushOver)];
    assert_eq!(
        flush(52.0, "2026-06-10", &over),
        Flush::Off(Known::ByNote(day("2026-06-02")))
    );
    // Last year's note says nothing about this year, and a note to come nothing about today.
    assert!(flush(52.0, "2027-05-01", &over).is_on());
    assert!(flush(52.0, "2026-05-20", &over).is_on());
    // Noted too early by mistake: the usual flush still comes.
    let mistaken = [note("2026-03-02", Noted::FlushOver)];
    assert!(flush(52.0, "2026-04-02", &mistaken).is_on());
    // A day with both.
    let both = [
        note("2026-08-02", Noted::FlushBegan),
        note("2026-08-02", Noted::FlushOver),
    ];
    assert!(flush(52.0, "2026-08-03", &both).is_on());
}

#[test]
fn near_the_equator_grass_follows_the_rain() {
    assert_eq!(flush(-12.0, "2026-11-20", &[]), Flush::NotKnown);
    let rain = [note("2026-11-15", Noted::AutumnRain)];
    assert!(flush(-12.0, "2026-11-20", &rain).is_on());
    assert_eq!(flush(-12.0, "2027-02-01", &rain), Flush::NotKnown);
    let bands = year(at(-12.0).unwrap(), 2026, &[]);
    assert_eq!(bands.len(), 1);
    assert_eq!(bands[0].part, YearPart::AfterRains);
    // Elsewhere it is a break and no flush.
    let ireland = season_on(
        at(53.0),
        day("2026-08-20"),
        &[note("2026-08-12", Noted::AutumnRain)],
    );
    assert!(ireland.autumn && !ireland.flush.is_on());
}

#[test]
fn without_a_place_only_a_note_knows() {
    assert_eq!(season_on(None, day("2026-05-15"), &[]), SeasonOn::NOT_KNOWN);
    let began = [note("2026-05-01", Noted::FlushBegan)];
    assert!(season_on(None, day("2026-05-15"), &began).flush.is_on());
    let over = [note("2026-05-10", Noted::FlushOver)];
    assert!(!season_on(None, day("2026-05-15"), &over).flush.is_on());
    assert_eq!(
        until_flush(None, day("2026-05-15"), &over),
        UntilFlush::NotKnown
    );
}

#[test]
fn notes_move_the_bands_and_keep_their_order() {
    let notes = [
        note("2026-03-20", Noted::FlushBegan),
        note("2026-06-10", Noted::FlushOver),
        note("2026-10-20", Noted::FirstFrost),
        note("2026-01-01", Noted::Drought),
        // Out of order: left aside.
        note("2026-02-01", Noted::FlushBegan),
    ];
    let bands = year(at(52.0).unwrap(), 2026, &notes);
    let parts: Vec<YearPart> = bands.iter().map(|b| b.part).collect();
    assert_eq!(
        parts,
        [
            YearPart::Frosts,
            YearPart::EarlySpring,
            YearPart::Flush,
            YearPart::Summer,
            YearPart::AutumnBreak,
            YearPart::Frosts,
        ]
    );
    assert_eq!(bands[2].from, day("2026-03-20"));
    assert_eq!(bands[2].to, day("2026-06-09"));
    assert_eq!(bands[2].noted, Some(day("2026-03-20")));
    assert_eq!(bands[5].from, day("2026-10-20"));
    assert_eq!(bands[5].to, day("2026-12-31"));
}

#[test]
fn weeks_are_left_until_the_flush() {
    assert_eq!(
        until_flush(at(52.0), day("2026-02-01"), &[]),
        UntilFlush::Begins {
            on: day("2026-04-01"),
            weeks: 8
        }
    );
    assert_eq!(
        until_flush(at(52.0), day("2026-04-02"), &[]),
        UntilFlush::Begun
    );
    assert_eq!(
        until_flush(at(-38.0), day("2026-12-15"), &[]),
        UntilFlush::Begins {
            on: day("2027-09-01"),
            weeks: 37
        }
    );
}

#[test]
fn every_part_has_something_to_watch() {
    for part in [
        YearPart::EarlySpring,
        YearPart::Flush,
        YearPart::Summer,
        YearPart::AutumnBreak,
        YearPart::Frosts,
        YearPart::AfterRains,
    ] {
        assert!(part.watch().len() > 2, "{part:?}");
    }
}
