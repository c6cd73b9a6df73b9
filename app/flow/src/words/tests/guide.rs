//! The guide, the measures over time and weighbridge day are worded for every kind.

use super::{check, check_head, every, tongues};
use crate::views::guide::Picture;
use crate::words::{GuideWords, WeighbridgeWords};
use std::collections::BTreeSet;
use tussock_core::animal::Kind;
use tussock_core::units::BodyMass;

#[test]
fn every_picture_has_a_head_its_place_in_words_and_says_what_it_shows() {
    for say in tongues() {
        for kind in every![
            Kind::Horse => Kind::Horse, Kind::Pony => Kind::Pony, Kind::Miniature => Kind::Miniature,
            Kind::Donkey => Kind::Donkey, Kind::Mule => Kind::Mule,
        ] {
            let pictures = Picture::of(kind);
            for picture in &pictures {
                check_head(say.picture_head(*picture));
                check(say.picture_how(*picture));
                let shows = say.picture_shows(*picture, kind);
                check(&shows);
                assert_eq!(shows.contains("donkey"), kind == Kind::Donkey, "{shows}");
            }
            // No two of an animal read alike.
            let heads: BTreeSet<&str> = pictures.iter().map(|p| say.picture_head(*p)).collect();
            let shows: BTreeSet<String> = pictures
                .iter()
                .map(|p| say.picture_shows(*p, kind))
                .collect();
            assert_eq!((heads.len(), shows.len()), (pictures.len(), pictures.len()));
        }
        check_head(&say.guide_for("Bramble"));
        check(say.guide_first());
        check(say.nothing_measured());
        check(say.belly_since_first());
        check(say.all_measures());
    }
}

#[test]
fn weighbridge_day_is_worded() {
    let day = "2026-05-05".parse().unwrap();
    for say in tongues() {
        check_head(&say.weighed_of(3, 20));
        for mass in [None, Some(BodyMass::kg(301.0))] {
            check(&say.last_on_scale(mass.map(|mass| (day, mass))));
            check(&say.saved_today(mass));
        }
        for text in [
            say.weighbridge_day(),
            say.line_by_line(),
            say.all_on_the_scale(),
            say.finish_weighing(),
            say.some_lines_open(),
        ] {
            check(text);
        }
        for head in say.weighbridge_heads() {
            check(head);
        }
    }
}
