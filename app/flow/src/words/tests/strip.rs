//! Words for strips and tracks.

use super::{check, check_said, every, tongues};
use crate::forms::strip;
use crate::views::fields::{Against, Eats, NoStrip, Out, StripTold};
use crate::words::{FieldWords, StripWords};
use tussock_core::graze::GrazeError;
use tussock_core::graze::strip::{
    Field as Sides, LIMITS, StripAgainst, StripFor, StripLimit, TrackFinding, strip as size_of,
    track,
};
use tussock_core::limits::Ends;
use tussock_core::log::LogError;
use tussock_core::units::parse::ParseError;
use tussock_core::units::{DryMatter, Length, SwardMass};

fn cm(value: f64) -> Length {
    Length::cm(value)
}

fn told(back_fence: bool) -> StripTold {
    let asked = DryMatter::kg(6.0);
    StripTold {
        strip: size_of(&StripFor {
            asked,
            days: 2,
            available: Ends::new(0.0, 990.0, 1287.0).map(SwardMass::kg_per_ha),
            width: Length::m(30.0),
            back_fence,
        })
        .unwrap(),
        asked,
        hay_short: Some(DryMatter::kg(0.8)),
        several_days: true,
        more_than_all: true,
    }
}

#[test]
fn all_of_a_strip_is_said() {
    for say in tongues() {
        for what in every![
            StripAgainst::Flush => StripAgainst::Flush, StripAgainst::RecentCase => StripAgainst::RecentCase,
            StripAgainst::Seeding => StripAgainst::Seeding,
            StripAgainst::HighSugarSward => StripAgainst::HighSugarSward,
            StripAgainst::Short { .. } => StripAgainst::Short { height: cm(8.0) },
            StripAgainst::Bare { .. } => StripAgainst::Bare { height: cm(3.0) },
        ] {
            check_said(&say.strip_against(&what));
            check(say.strip_stopped(&Against { what, stops: true }));
        }
        for limit in every![
            StripLimit::MassIsAGuess => StripLimit::MassIsAGuess,
            StripLimit::SugarIsNotLowered => StripLimit::SugarIsNotLowered,
            StripLimit::ReckonAgainFromWhatIsLeft => StripLimit::ReckonAgainFromWhatIsLeft,
            StripLimit::WeighWeekly => StripLimit::WeighWeekly,
            StripLimit::BackFenceIsForTheSward => StripLimit::BackFenceIsForTheSward,
            StripLimit::HeightDoesNotRestrict => StripLimit::HeightDoesNotRestrict,
            StripLimit::OneTrial => StripLimit::OneTrial, StripLimit::NotForSafety => StripLimit::NotForSafety,
        ] {
            assert!(LIMITS.contains(&limit));
            check_said(&say.strip_limit(limit));
            check_said(&say.strip_while_open());
        }
        for why in every![
            NoStrip::NobodyOut => NoStrip::NobodyOut, NoStrip::NobodyChosen => NoStrip::NobodyChosen,
            NoStrip::NobodyLooked => NoStrip::NobodyLooked, NoStrip::NoWidth => NoStrip::NoWidth,
            NoStrip::Refused(_) => NoStrip::Refused(GrazeError::NothingAsked),
        ] {
            check(&say.no_strip(&why));
        }
        for field in strip::Field::ALL {
            check(say.strip_field(field));
            check(say.strip_field_hint(field));
        }
        for wrong in every![
            strip::Wrong::Width(_) => strip::Wrong::Width(ParseError::Empty),
            strip::Wrong::Log(_) => strip::Wrong::Log(LogError::Seal),
        ] {
            check(&say.strip_wrong(&wrong));
        }
        for eats in every![
            Eats::Grass { .. } => Eats::Grass {
                grass: Ends::new(1.0, 2.0, 3.0).map(DryMatter::kg), hay_less: DryMatter::kg(1.0),
            },
            Eats::NoRoom => Eats::NoRoom, Eats::NoGrass => Eats::NoGrass, Eats::NoPlan => Eats::NoPlan,
        ] {
            let out = Out {
                id: "moss".into(),
                name: "Moss".into(),
                paddock: None,
                animals: 1,
                eats,
                recent_case: false,
            };
            check(&say.asks_of_strip(&out));
            check(&say.left_out(&out));
            check(&say.who_grazes(&[out]));
        }
        for told in [told(false), told(true)] {
            let fences = &told.strip.fences;
            check(&say.strip_picture(fences));
            check(&say.lead_fence(fences));
            check(&say.fence_onward(fences));
            say.back_fence_at(fences).iter().for_each(|at| check(at));
            check(&say.strip_finds(&told));
            say.strip_minds(&told).iter().for_each(check_said);
            for row in say.strip_table(&told) {
                assert_eq!(row.len(), say.strip_table_heads().len());
                for cell in &row {
                    check(cell);
                }
            }
        }
        check(say.back_fence(false));
        check(say.back_fence(true));
        for days in strip::STRIP_DAYS {
            check(&say.strip_days(days));
        }
        for text in [
            say.strip_days_asked(),
            say.back_fence_asked(),
            say.strip_whom_asked(),
            say.strip_table_caption(),
            say.flush_not_known(),
            say.limits_head(),
            say.save_strip(),
            say.say_who_goes_out(),
        ] {
            check(text);
        }
    }
    let [say, _] = tongues();
    assert_eq!(say.paces(Ends::new(11.0, 12.9, 14.0)), "12 paces");
    assert_eq!(say.paces(Ends::new(3.0, 3.7, 4.0)), "3.5 paces");
    assert_eq!(say.paces(Ends::new(0.1, 0.4, 0.5)), "less than a pace");
}

#[test]
fn all_of_a_track_is_said() {
    let sides = Sides {
        length: Length::m(100.0),
        width: Length::m(60.0),
    };
    let laid = track(sides, Length::m(4.0), 3).unwrap();
    for say in tongues() {
        check(say.track_head());
        check(say.track_is());
        for finding in every![
            TrackFinding::TooShort { .. } => TrackFinding::TooShort { asked: 9, holds: 4 },
            TrackFinding::WalksFarther { .. } => TrackFinding::WalksFarther { part: 0.32 },
            TrackFinding::WeightNotProven => TrackFinding::WeightNotProven,
            TrackFinding::GrassOnItCounts => TrackFinding::GrassOnItCounts,
        ] {
            check_said(&say.track_finding(&finding));
        }
        let rows = say.track_rows(&laid);
        assert!(
            rows.iter()
                .filter(|[what, _]| what.starts_with("Hay place "))
                .count()
                == 4
        );
        for [what, how] in rows {
            check(&what);
            check(&how);
        }
    }
}
