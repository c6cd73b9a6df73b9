//! What is said holds to the rules of words: nothing empty, nothing that is not said here, no head too long.

mod animal;
mod cases;
mod condition;
mod foods;
mod guide;
mod loop_of_work;
mod measure;
mod nets;
mod next_step;
mod not_eating;
mod numbers;
mod paddock;
mod paddock_forms;
mod records;
mod remind;
mod strip;
mod sward;
mod work;

use super::{EnergyUnit, English, Region, Said, Shown};
use tussock_core::units::parse::{LengthUnit, MassUnit};

/// Lists every variant of an enum with an example each; a variant without one does not compile.
macro_rules! every {
    ($($pattern:pat => $example:expr),+ $(,)?) => {{
        #[allow(dead_code, clippy::match_same_arms)]
        fn guard<T>(_: &T, check: fn(&T)) -> fn(&T) { check }
        let examples = vec![$($example),+];
        if let Some(first) = examples.first() {
            let _ = guard(first, |value| match value { $($pattern => {}),+ });
        }
        examples
    }};
}
use every;

/// Words that are not said on a screen. A word in spaces is looked for as a whole word.
const NOT_SAID: &[&str] = &[
    "safe",
    " diet",
    "prescri",
    "calorie",
    " my ",
    "streak",
    "well done",
    "goal reached",
    "index",
    "tying up",
    " cord ",
    " knot ",
    " tie ",
    " tag ",
    "risk score",
    "grass score",
    "slimming",
    "cool feed",
];

/// English as most see it, and with everything set the other way.
fn tongues() -> [English; 2] {
    [
        English::default(),
        English::new(Shown {
            mass: MassUnit::Lb,
            length: LengthUnit::Inch,
            energy: EnergyUnit::Mj,
            region: Region::AUSTRALIA,
        }),
    ]
}

/// Holds a text to the rules that hold for all.
#[track_caller]
fn check(text: &str) {
    assert!(!text.trim().is_empty(), "empty");
    assert_eq!(text, text.trim(), "space at an end: {text:?}");
    assert!(
        !text.contains("  ") && !text.contains(" ."),
        "spaces: {text:?}"
    );
    assert!(!text.contains(".."), "two stops: {text:?}");
    assert!(
        !text.contains('{') && !text.contains('}'),
        "a hole: {text:?}"
    );
    assert!(
        !text.contains("NaN") && !text.contains("inf "),
        "no number: {text:?}"
    );
    let padded: String = format!(" {text} ")
        .to_lowercase()
        .chars()
        .map(|c| if ".,:;()?!\"".contains(c) { ' ' } else { c })
        .collect();
    for word in NOT_SAID {
        assert!(!padded.contains(word), "{word:?} is not said: {text:?}");
    }
}

/// A sentence has no stop at its end, fits a caution, and begins with a capital or a figure.
#[track_caller]
fn check_said(said: &Said) {
    check(&said.sentence);
    assert!(!said.sentence.ends_with('.'), "{:?}", said.sentence);
    assert!(said.sentence.chars().count() <= 120, "{:?}", said.sentence);
    assert!(
        said.sentence
            .chars()
            .next()
            .is_some_and(|c| !c.is_lowercase()),
        "{:?}",
        said.sentence
    );
    if let Some(why) = &said.why {
        check(why);
        assert!(why.ends_with('.'), "{why:?}");
    }
}

/// The head of a screen fits two lines of 28 px in 390 px.
#[track_caller]
fn check_head(head: &str) {
    check(head);
    assert!(
        head.chars().count() <= 44,
        "{head:?} is too long for a head"
    );
}

#[test]
fn the_rules_find_what_breaks_them() {
    let breaks = |text: &'static str| std::panic::catch_unwind(|| check(text)).is_err();
    for wrong in [
        "",
        "This hay is safe",
        "Change its diet",
        "My horse",
        " two",
        "Half. .",
    ] {
        assert!(breaks(wrong), "{wrong:?} passed");
    }
    assert!(!breaks("Hang it dry at the lighter reading"));
    let long = Said::plain("word ".repeat(30).trim());
    assert!(std::panic::catch_unwind(|| check_said(&long)).is_err());
}

#[test]
fn a_region_is_found_by_its_key() {
    for region in Region::ALL {
        assert_eq!(Region::of_key(region.key), Some(*region));
        for word in [
            region.slice,
            region.slices,
            region.lucerne,
            region.cocksfoot,
            region.bermuda,
        ] {
            check(word);
        }
    }
    assert_eq!(Region::of_key("moon"), None);
}
