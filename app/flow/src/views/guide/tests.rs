//! Each tape goes where it belongs, and no two pictures can be taken for each other.

use super::*;

const KINDS: [Kind; 5] = [
    Kind::Horse,
    Kind::Pony,
    Kind::Miniature,
    Kind::Donkey,
    Kind::Mule,
];

fn tape(lines: &[Line]) -> Vec<Point> {
    lines
        .iter()
        .filter(|line| line.ink == Ink::Tape)
        .flat_map(|line| line.points.clone())
        .collect()
}

fn near(a: Point, b: Point) -> bool {
    (a.0 - b.0).hypot(a.1 - b.1) < 1.0
}

fn long(points: &[Point]) -> f64 {
    points
        .windows(2)
        .map(|pair| (pair[0].0 - pair[1].0).hypot(pair[0].1 - pair[1].1))
        .sum()
}

#[test]
fn every_picture_has_one_tape_and_stays_in_its_frame() {
    for kind in KINDS {
        for picture in Picture::of(kind) {
            let Drawn { side, above } = drawn(picture, kind);
            let tapes = |lines: &[Line]| lines.iter().filter(|l| l.ink == Ink::Tape).count();
            assert_eq!(tapes(&side), 1, "{picture:?} {kind:?}");
            assert!(tapes(&above) <= 1);
            for (lines, height) in [(&side, SIDE), (&above, ABOVE)] {
                for (x, y) in lines.iter().flat_map(|line| &line.points) {
                    assert!((0.0..=WIDTH).contains(x) && (0.0..=height).contains(y));
                }
            }
        }
    }
}

#[test]
fn each_tape_goes_to_its_landmarks() {
    for (kind, of) in [(Kind::Horse, &HORSE), (Kind::Donkey, &DONKEY)] {
        let ends = |picture| {
            let points = tape(&drawn(picture, kind).side);
            (points[0], points[points.len() - 1])
        };
        let (top, under) = ends(Picture::HeartGirth);
        assert!(near(top, of.withers) && near(under, of.girth));
        // Behind the elbow, and not over it.
        assert!(of.elbow.0 + 5.0 < under.0);
        let (back, navel) = ends(Picture::BellyGirth);
        assert!(near(back, of.loin) && under.0 + 30.0 < navel.0 && navel.0 < of.buttock.0);
        let (crest, throat) = ends(Picture::Neck);
        let middle = f64::midpoint(of.poll.0, of.withers.0);
        assert!((crest.0 - middle).abs() < 3.0, "{crest:?} {middle}");
        assert!(crest.1 + 20.0 < throat.1 && throat.1 < of.shoulder.1);
        let (ground, withers) = ends(Picture::Height);
        assert!(near(withers, of.withers) && (ground.0 - withers.0).abs() < 1e-9);
    }
    let from = |length, kind| tape(&drawn(Picture::Length(length), kind).side);
    let wrap = from(LengthKind::Wrap, Kind::Horse);
    let elbow = from(LengthKind::ElbowToTuber, Kind::Donkey);
    assert!(near(wrap[0], HORSE.shoulder) && near(wrap[wrap.len() - 1], HORSE.buttock));
    assert!(near(elbow[0], DONKEY.elbow) && near(elbow[1], DONKEY.buttock));
    assert!(long(&elbow) < long(&wrap));
}

#[test]
fn wrap_and_straight_are_told_apart_by_the_drawing() {
    let of = |length| drawn(Picture::Length(length), Kind::Horse);
    let (wrap, straight) = (of(LengthKind::Wrap), of(LengthKind::Straight));
    let (round, line) = (tape(&wrap.above), tape(&straight.above));
    // The straight one is straight, lies beside the body, and ends at a line held square.
    assert_eq!(line.len(), 2);
    assert!((line[0].1 - line[1].1).abs() < 1e-9);
    let squares = |drawn: &Drawn| {
        let all = drawn.side.iter().chain(&drawn.above);
        all.filter(|line| line.ink == Ink::Square).count()
    };
    assert!(squares(&straight) == 3 && squares(&wrap) == 0);
    // The wrapped one follows the body and turns in behind the buttock.
    assert!(round.len() > 4 && long(&round) > long(&line));
    let turn = round[round.len() - 2];
    assert!(BUTTOCK_ABOVE.1 + 10.0 < turn.1);
}

#[test]
fn a_donkey_has_its_own_length_and_a_mule_those_of_a_horse() {
    let lengths = |kind| {
        Picture::of(kind)
            .into_iter()
            .filter(|picture| picture.measure() == Measure::Length)
            .collect::<Vec<_>>()
    };
    assert_eq!(
        lengths(Kind::Donkey),
        [Picture::Length(LengthKind::ElbowToTuber)]
    );
    assert_eq!(
        lengths(Kind::Mule),
        [
            Picture::Length(LengthKind::Wrap),
            Picture::Length(LengthKind::Straight)
        ]
    );
    assert!(
        drawn(lengths(Kind::Donkey)[0], Kind::Donkey)
            .above
            .is_empty()
    );
}

#[test]
fn a_line_is_drawn_through_its_points_and_a_straight_one_straight() {
    let points = vec![(1.0, 2.0), (3.0, 4.5), (6.0, 2.0)];
    let line = |smooth| Line {
        ink: Ink::Tape,
        points: points.clone(),
        smooth,
    };
    assert_eq!(line(false).path(), "M1.0 2.0L3.0 4.5L6.0 2.0");
    let smooth = line(true).path();
    assert!(smooth.starts_with("M1.0 2.0C") && smooth.ends_with(" 6.0 2.0"));
    assert_eq!(smooth.matches('C').count(), 2);
}
