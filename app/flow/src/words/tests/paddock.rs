//! Grass: every reason, care, part of the year and fault has its words, and the heads fit.

use super::{check, check_head, check_said, every, tongues};
use crate::forms::turnout::Wrong;
use crate::views::paddock::picture::Label;
use crate::views::paddock::{Stands, WhyBy};
use crate::views::season::{ByFlush, Leaner};
use crate::words::{GrassWords, PaddockWords, SeasonWords};
use tussock_core::animal::AnimalId;
use tussock_core::graze::season::Noted;
use tussock_core::graze::season::{Band, UntilFlush, Watch, YearPart};
use tussock_core::graze::window::{Begins, Care, Closed, Stretch, WhyTo};
use tussock_core::log::bodies::SeasonNoteV1;
use tussock_core::progress::Forecast;
use tussock_core::units::{BodyMass, Instant, LocalDate, Span, Zone};

struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

fn day() -> LocalDate {
    LocalDate::from_ymd_opt(2026, 5, 5).unwrap()
}

fn stretch() -> Stretch {
    Stretch {
        from: Instant::from_ms(0),
        to: Instant::from_ms(3_600_000),
        begins: Begins::Sunrise,
    }
}

#[test]
fn every_closing_says_why_and_what_to_do_instead() {
    let closed = every![
        Closed::Flush => Closed::Flush, Closed::FlushNotKnown => Closed::FlushNotKnown,
        Closed::ColdNight => Closed::ColdNight, Closed::Frost => Closed::Frost,
        Closed::HardFreeze { .. } => Closed::HardFreeze { until: day() },
        Closed::Drought => Closed::Drought, Closed::Seeding => Closed::Seeding,
        Closed::NightNotSaid => Closed::NightNotSaid, Closed::Bare => Closed::Bare,
        Closed::ShortLeaf => Closed::ShortLeaf, Closed::Stopped => Closed::Stopped,
        Closed::HayLeavesNoRoom => Closed::HayLeavesNoRoom,
        Closed::NotInPlan => Closed::NotInPlan,
        Closed::Resting { .. } => Closed::Resting { until: Some(day()) },
    ];
    for say in tongues() {
        for one in &closed {
            check_said(&say.closed(one));
            assert!(say.closed(one).why.is_some(), "{one:?}");
            check(say.instead_of_grass(one));
        }
        check_said(&say.closed(&Closed::Resting { until: None }));
    }
}

#[test]
fn every_care_has_its_words() {
    let care = every![
        Care::Flush => Care::Flush, Care::FlushNear { .. } => Care::FlushNear { usual: day() },
        Care::FlushNotKnown => Care::FlushNotKnown, Care::AutumnGrowth => Care::AutumnGrowth,
        Care::ColdNight => Care::ColdNight, Care::NightNotSaid => Care::NightNotSaid,
        Care::IfNightOver5 => Care::IfNightOver5, Care::SkyNotSaid => Care::SkyNotSaid,
        Care::Drought => Care::Drought, Care::Seeding => Care::Seeding,
        Care::SeedingNotSaid => Care::SeedingNotSaid, Care::LeafNotSaid => Care::LeafNotSaid,
        Care::EveningIfMild => Care::EveningIfMild, Care::NoPlace => Care::NoPlace,
        Care::NoSun => Care::NoSun, Care::NoNight => Care::NoNight,
        Care::DarkUntil(_) => Care::DarkUntil(Instant::from_ms(0)),
        Care::ClockOfElsewhere { .. } => Care::ClockOfElsewhere { ahead: Span::hours(-9) },
    ];
    for say in tongues() {
        for one in &care {
            check_said(&say.care(one, &Utc));
        }
    }
}

#[test]
fn what_ends_a_morning_or_a_turnout_is_said() {
    let to = every![
        WhyTo::Clear => WhyTo::Clear, WhyTo::SkyNotSaid => WhyTo::SkyNotSaid,
        WhyTo::LastingCloud => WhyTo::LastingCloud, WhyTo::Shade => WhyTo::Shade,
    ];
    let by = every![
        WhyBy::Closes => WhyBy::Closes, WhyBy::Closed => WhyBy::Closed, WhyBy::Plan => WhyBy::Plan,
        WhyBy::Muzzle => WhyBy::Muzzle, WhyBy::Said => WhyBy::Said,
    ];
    let stands = every![
        Stands::Out => Stands::Out, Stands::Late => Stands::Late, Stands::Closed => Stands::Closed,
        Stands::HadIt => Stands::HadIt, Stands::Open(_) => Stands::Open(stretch()),
        Stands::Opens(_) => Stands::Opens(stretch()), Stands::Over(_) => Stands::Over(None),
    ];
    let labels = every![
        Label::Sunrise => Label::Sunrise, Label::Opens => Label::Opens,
        Label::OpenFor(_) => Label::OpenFor(Span::minutes(206)), Label::Closes => Label::Closes,
        Label::Now => Label::Now, Label::Sunset => Label::Sunset,
    ];
    for say in tongues() {
        for one in &to {
            check(say.why_to(*one));
        }
        for one in &by {
            check(say.why_by(*one));
        }
        for one in &stands {
            check(say.grass_stands(one));
        }
        for one in &labels {
            check(&say.day_label(one));
        }
        check(say.day_sugar());
        check_head(say.no_grass_today());
        assert_eq!(say.stretch(&stretch(), &Utc), "00:00 to 01:00");
        assert_eq!(
            say.day_label(&Label::OpenFor(Span::minutes(206))),
            "open 3 h 26 min"
        );
    }
}

#[test]
fn the_year_is_worded() {
    let parts = every![
        YearPart::EarlySpring => YearPart::EarlySpring, YearPart::Flush => YearPart::Flush,
        YearPart::Summer => YearPart::Summer, YearPart::AutumnBreak => YearPart::AutumnBreak,
        YearPart::Frosts => YearPart::Frosts, YearPart::AfterRains => YearPart::AfterRains,
    ];
    let watch = every![
        Watch::LeafGrowsFast => Watch::LeafGrowsFast, Watch::SunnyAfterCold => Watch::SunnyAfterCold,
        Watch::SeedHeads => Watch::SeedHeads, Watch::DryThenRain => Watch::DryThenRain,
        Watch::FrostOnGrass => Watch::FrostOnGrass, Watch::WeightComesOn => Watch::WeightComesOn,
        Watch::WeightComesOff => Watch::WeightComesOff, Watch::ShortStride => Watch::ShortStride,
    ];
    let until = every![
        UntilFlush::Begun => UntilFlush::Begun,
        UntilFlush::Begins { .. } => UntilFlush::Begins { on: day(), weeks: 11 },
        UntilFlush::NotKnown => UntilFlush::NotKnown,
    ];
    let by = every![
        ByFlush::There => ByFlush::There, ByFlush::Before => ByFlush::Before,
        ByFlush::Perhaps => ByFlush::Perhaps, ByFlush::NotBefore => ByFlush::NotBefore,
        ByFlush::NotKnown => ByFlush::NotKnown,
    ];
    for say in tongues() {
        for part in &parts {
            check_head(say.year_part(*part));
            check(&say.watch_next(*part));
            let band = Band {
                part: *part,
                from: day(),
                to: day(),
                noted: Some(day()),
            };
            assert_eq!(say.year_row(&band).len(), say.year_columns().len());
        }
        for one in &watch {
            check_said(&say.watch(*one));
        }
        for one in &until {
            check(&say.until_flush(*one));
        }
        for one in &by {
            check(say.leaner_word(*one));
        }
        check_said(&say.leaner_aim());
        check_said(&say.year_why());
        check_said(&say.week_why());
        check_said(&say.clock_of_yard());
        for what in Noted::ALL {
            check(say.season_event(what));
            check(&say.season_note(&SeasonNoteV1 {
                date: day(),
                what,
                note: Some("early".into()),
            }));
        }
        let leaner = Leaner {
            animal: AnimalId("moss".into()),
            name: "Moss".into(),
            to_go: Some(BodyMass::kg(12.0)),
            forecast: Forecast::Within {
                from_week: 9,
                to_week: Some(15),
            },
            by_flush: ByFlush::Perhaps,
        };
        check(&say.leaner_line(
            &leaner,
            UntilFlush::Begins {
                on: day(),
                weeks: 11,
            },
        ));
    }
}

#[test]
fn what_is_wrong_with_a_turnout_is_told() {
    let wrong = every![
        Wrong::Time(_) => Wrong::Time("soon".into()), Wrong::Day(_) => Wrong::Day("May".into()),
        Wrong::ToCome => Wrong::ToCome, Wrong::BeforeOut => Wrong::BeforeOut,
        Wrong::NoRemark => Wrong::NoRemark,
    ];
    for say in tongues() {
        for one in &wrong {
            check(&say.turnout_wrong(one));
        }
    }
}
