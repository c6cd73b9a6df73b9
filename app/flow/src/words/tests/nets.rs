//! The words of nets, of the scale and of what hangs.

use super::{check, check_head, tongues};
use crate::forms::hanging::Wrong as Left;
use crate::forms::net::{Field, From, Wrong};
use crate::views::hanging::HungNet;
use crate::views::net_list::NetPlace;
use crate::words::{HangingWords, NetWords, NetsWords};
use tussock_core::day::{DayError, NetKind, OnScale};
use tussock_core::log::bodies::Quarters;
use tussock_core::log::{Known, ZoneTable};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::ParseError;
use tussock_core::units::{AsFed, Instant};

fn zone() -> ZoneTable {
    crate::views::test_yard::zone()
}

#[test]
fn the_nets_say_what_they_are_in_words_of_the_yard() {
    for say in tongues() {
        for field in [Field::Name, Field::Own, Field::Capacity, Field::Hole] {
            check(say.net_field(field));
            check(say.net_field_hint(field));
        }
        for from in [From::Net, From::Loose] {
            check(say.eaten_from(from));
        }
        for kind in [
            NetKind::Loose,
            NetKind::LargeHoles,
            NetKind::MediumHoles,
            NetKind::SmallHoles,
            NetKind::DoubleSmall,
        ] {
            check(&say.eaten_as(kind));
        }
        for place in [
            NetPlace::Filled {
                hay: AsFed::kg(3.6),
                whose: "Moss".into(),
            },
            NetPlace::Hangs {
                whose: String::new(),
                since: Instant::from_ms(0),
            },
            NetPlace::Empty,
            NetPlace::NotKnown,
        ] {
            check(&say.net_place(&place, &zone()));
        }
        check(&say.net_wrong(&Wrong::NoName));
        check(&say.net_wrong(&Wrong::Parse(Field::Hole, ParseError::Empty)));
        check(say.double(true));
        check(say.new_net());
    }
}

#[test]
fn the_scale_and_what_hangs_say_what_to_do() {
    for say in tongues() {
        for quarters in Quarters::ALL {
            check(say.quarters(quarters));
        }
        for said in [
            say.eaten_up_means(),
            say.found_empty_means(),
            say.rest_hint(true),
            say.rest_hint(false),
            say.wet_hint(),
        ] {
            check(said);
        }
        for line in say.hardly_touched("Moss") {
            check(&line);
        }
        check(&say.left_wrong(&Left::Day(DayError::WetAsDry)));
        check(&say.left_wrong(&Left::NotKnown));
        let slice = Some(AsFed::kg(1.0));
        check(&say.on_scale_in(OnScale::Over { by: AsFed::kg(1.0) }, slice));
        for more in [true, false] {
            for name in say
                .step_key(AsFed::kg(0.1), more)
                .iter()
                .chain(&say.slice_key(AsFed::kg(1.8), more))
            {
                check(name);
            }
        }
        for days in 1..4 {
            check_head(&say.pass_weighed(days));
            check_head(&say.pass_none_left(days));
        }
        let now = Instant::from_ms(1_777_978_800_000);
        let today = "2026-05-07".parse().unwrap();
        let net = HungNet {
            id: RecordId("h".into()),
            at: now,
            net: None,
            name: None,
            own: None,
            kind: NetKind::SmallHoles,
            lot: None,
            hay: None,
            dry: None,
            soaked: true,
            known: Known::Seen,
        };
        check_head(&say.how_much_left(&net, today, &zone()));
        check_head(&say.nothing_hangs("Bramble"));
        check_head(say.new_net());
        check_head(say.no_such_net());
    }
}
