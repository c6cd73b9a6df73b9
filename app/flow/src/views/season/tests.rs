use super::*;

const ELEVEN: UntilFlush = UntilFlush::Begins {
    on: LocalDate::MAX,
    weeks: 11,
};

#[test]
fn a_target_is_held_against_the_weeks_that_are_left() {
    let within = |from_week, to_week| Forecast::Within { from_week, to_week };
    let cases = [
        (Forecast::Reached { chance: 0.9 }, ByFlush::There),
        (within(5, Some(9)), ByFlush::Before),
        (within(9, Some(15)), ByFlush::Perhaps),
        (within(9, None), ByFlush::Perhaps),
        (within(12, Some(20)), ByFlush::NotBefore),
        (Forecast::NotOnCourse { chance: 0.9 }, ByFlush::NotBefore),
        (Forecast::NotWithin { weeks: 52 }, ByFlush::NotBefore),
        (Forecast::NotKnown, ByFlush::NotKnown),
    ];
    for (forecast, wanted) in cases {
        assert_eq!(by_flush(&forecast, ELEVEN), wanted, "{forecast:?}");
    }
    assert_eq!(
        by_flush(&within(5, Some(9)), UntilFlush::Begun),
        ByFlush::NotKnown
    );
}
