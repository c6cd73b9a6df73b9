//! Words for paddocks: what stands there and what grows there.

use super::{check, check_head, check_said, every, tongues};
use crate::forms::field::{Field, Wrong};
use crate::forms::readings::{self, Summed, Way};
use crate::views::fields::{By, Danger, FieldRow, Looked, Regrows};
use crate::words::{FieldWords, PlantsWords, SwardWords};
use tussock_core::animal::PaddockId;
use tussock_core::graze::GrazeError;
use tussock_core::graze::plants::{
    Act, CalciumToOxalate, Endophyte, Growth, Harm, Nitrate, PlantId, Region, SugarPotential, When,
    Whom, hazards,
};
use tussock_core::graze::sward::{
    GrowthSeason, Leaf, RegrowthDays, Rest, Stand, SwardFinding, SwardKind, readings as sum,
};
use tussock_core::limits::Ends;
use tussock_core::log::bodies::PaddockV2;
use tussock_core::log::{LogError, Name};
use tussock_core::units::parse::ParseError;
use tussock_core::units::{Area, Bounds, DryMatter, Length, LocalDate, OutOfRange, SwardMass};

fn cm(value: f64) -> Length {
    Length::cm(value)
}

fn day() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn out_of_range() -> OutOfRange {
    OutOfRange {
        bounds: Bounds::new("sward_height_cm", 0.0, 200.0),
        value: 900.0,
    }
}

fn graze_errors() -> Vec<GrazeError> {
    every![
        GrazeError::OutOfRange(_) => GrazeError::OutOfRange(out_of_range()),
        GrazeError::NoReadings => GrazeError::NoReadings,
        GrazeError::NothingAsked => GrazeError::NothingAsked,
        GrazeError::NothingToGraze { .. } => GrazeError::NothingToGraze { most: SwardMass::ZERO },
        GrazeError::TrackTooWide { .. } => GrazeError::TrackTooWide { width: cm(2000.0), under: cm(1000.0) },
    ]
}

#[test]
fn all_that_a_sward_asks_for_is_said() {
    for say in tongues() {
        for leaf in Leaf::ALL {
            check(say.leaf(leaf));
            check(say.leaf_key(leaf));
        }
        for stand in every![
            Stand::Fair => Stand::Fair, Stand::Good => Stand::Good, Stand::Excellent => Stand::Excellent,
        ] {
            check(say.stand(stand));
        }
        for finding in every![
            SwardFinding::Bare { .. } => SwardFinding::Bare { height: cm(2.0) },
            SwardFinding::TakeOff { .. } => SwardFinding::TakeOff { height: cm(7.49), residual: cm(7.5) },
            SwardFinding::Short { .. } => SwardFinding::Short { height: cm(9.0) },
            SwardFinding::Rank { .. } => SwardFinding::Rank { height: cm(30.0) },
            SwardFinding::FewReadings { .. } => SwardFinding::FewReadings { taken: 4, asked: 30 },
            SwardFinding::PlateOfItsOwn => SwardFinding::PlateOfItsOwn,
            SwardFinding::DensityNotKnown => SwardFinding::DensityNotKnown,
        ] {
            check_said(&say.sward_finding(&finding));
        }
        for error in graze_errors() {
            check(&say.graze_error(&error));
        }
        for season in GrowthSeason::ALL {
            check(say.growth_season(season));
            let days = RegrowthDays {
                soonest: 12.2,
                likely: 18.0,
                latest: (season != GrowthSeason::Winter).then_some(30.5),
            };
            for (days, rest) in [(Some(days), Some(Rest { from: 14, to: 21 })), (None, None)] {
                let regrows = Regrows { season, days, rest };
                say.regrows(&regrows).iter().for_each(|cell| check(cell));
            }
        }
        say.regrows_heads().into_iter().for_each(check);
        check(&say.stands(Ends::new(693.0, 990.0, 1287.0).map(SwardMass::kg_per_ha)));
        check(&say.stands_on_all(Ends::new(1.0, 2.0, 3.0).map(DryMatter::kg)));
    }
    let [say, _] = tongues();
    let beside = say.sward_finding(&SwardFinding::TakeOff {
        height: cm(7.49),
        residual: cm(7.5),
    });
    assert!(beside.why.unwrap().contains("7.49 cm"));
}

#[test]
fn all_of_the_readings_is_said() {
    for say in tongues() {
        for way in every![Way::Cm => Way::Cm, Way::Inch => Way::Inch, Way::Clicks => Way::Clicks] {
            check(&say.reading_line(way, 3));
            check(say.way(way));
            check(say.way_unit(way));
            check(say.how_to_read(way));
        }
        let few = sum(&[cm(8.0), cm(12.0)]).unwrap().0;
        let one = sum(&[cm(8.0)]).unwrap().0;
        for summed in every![
            Summed::Heights(_) => Summed::Heights(few),
            Summed::Clicks { .. } => Summed::Clicks { mean: 18.5, count: 2 },
        ] {
            check(&say.summed(&summed));
        }
        check(&say.summed(&Summed::Heights(one)));
        for left in [0, 1, 30] {
            check(&say.readings_left(left));
            check(&say.save_readings(left));
        }
        for wrong in every![
            readings::Wrong::Parse(_) => readings::Wrong::Parse(ParseError::Empty),
            readings::Wrong::NotWhole => readings::Wrong::NotWhole,
            readings::Wrong::NothingRead => readings::Wrong::NothingRead,
            readings::Wrong::Log(_) => readings::Wrong::Log(LogError::Seal),
        ] {
            check(&say.reading_not_taken(&wrong));
        }
        for by in every![
            By::Boot(_) => By::Boot(Leaf::Ankle),
            By::Heights(_) => By::Heights(vec![cm(8.0), cm(10.0)]),
            By::Plate { .. } => By::Plate { clicks: 18.0, count: 30 },
        ] {
            check(&say.seen_by(&by));
            let looked = Looked { by, on: day() };
            check(&say.last_looked(&looked, day()));
        }
        for text in [
            say.way_asked(),
            say.next_reading(),
            say.take_back_last(),
            &say.readings_of("Top field"),
        ] {
            check(text);
        }
    }
}

#[test]
fn all_of_a_paddock_is_said() {
    let before: LocalDate = "2026-05-01".parse().unwrap();
    for say in tongues() {
        check_head(say.new_field());
        check_head(say.no_such_field());
        for field in Field::ALL {
            check(say.paddock_field(field));
            check(say.paddock_field_hint(field));
        }
        for wrong in every![
            Wrong::NoName => Wrong::NoName, Wrong::Area(_) => Wrong::Area(ParseError::Empty),
            Wrong::NoDay => Wrong::NoDay, Wrong::DayToCome => Wrong::DayToCome,
            Wrong::Log(_) => Wrong::Log(LogError::Seal),
        ] {
            check(&say.paddock_wrong(&wrong));
        }
        for kind in SwardKind::ALL {
            check(say.sward_kind(kind));
        }
        for yes in [false, true] {
            check(say.shade(yes));
            check(say.seeding(yes));
            check(say.no_dangers(yes));
        }
        for looked in [
            None,
            Some(Looked {
                by: By::Boot(Leaf::Ankle),
                on: before,
            }),
        ] {
            for resting in [None, Some(before)] {
                check(&say.field_row(
                    &FieldRow {
                        id: PaddockId("top".into()),
                        name: "Top field".into(),
                        leaf: None,
                        looked: looked.clone(),
                        resting,
                        area: None,
                        body: PaddockV2::named(Name::new("Top field").unwrap()),
                    },
                    day(),
                ));
            }
        }
        check(&say.land(Area::hectares(0.8)));
        check(&say.on_ground(Length::m(12.25)));
        for text in [
            say.sward_kind_asked(),
            say.sward_kind_hint(),
            say.shade_asked(),
            say.plants_asked(),
            say.plants_hint(),
            say.save_field(),
            say.remove_field(),
            say.bare_is_no_forage(),
            say.height_is_no_leave(),
            say.boot_asked(),
            say.seeding_asked(),
            say.standing_head(),
            say.kind_stands_in(),
            say.area_not_said(),
            say.regrowth_head(),
            say.dangers_head(),
            say.to_readings(),
            say.to_strip(),
            say.to_field_form(),
            say.to_plants(),
            say.to_grass_today(),
        ] {
            check(text);
        }
        check(&say.rests_since(before));
    }
    let [say, _] = tongues();
    assert_eq!(say.land(Area::hectares(0.8)), "8000 m², 0.8 ha, 1.98 acres");
    assert_eq!(say.days_ago(before, day()), "4 days ago");
    assert_eq!(say.days_ago(day(), day()), "today");
}

#[test]
fn every_plant_and_what_it_does_is_said() {
    for say in tongues() {
        for plant in PlantId::ALL {
            check(&say.plant(*plant));
            check(say.scientific(*plant));
        }
        for growth in every![
            Growth::CoolGrass => Growth::CoolGrass, Growth::WarmGrass => Growth::WarmGrass,
            Growth::Cereal => Growth::Cereal, Growth::Legume => Growth::Legume,
            Growth::Herb => Growth::Herb, Growth::Tree => Growth::Tree,
        ] {
            check(say.growth(growth));
        }
        for harm in every![
            Harm::BonesLoseCalcium => Harm::BonesLoseCalcium, Harm::RyegrassStaggers => Harm::RyegrassStaggers,
            Harm::MaresFailAtFoaling => Harm::MaresFailAtFoaling, Harm::Slobbers => Harm::Slobbers,
            Harm::Cyanide => Harm::Cyanide, Harm::SunburnAndLiver => Harm::SunburnAndLiver,
            Harm::BlisterBeetle => Harm::BlisterBeetle, Harm::BladderAndGait => Harm::BladderAndGait,
            Harm::LiverOverTime => Harm::LiverOverTime, Harm::MouthBlisters => Harm::MouthBlisters,
            Harm::GutIrritated => Harm::GutIrritated, Harm::FibreBalls => Harm::FibreBalls,
            Harm::Stringhalt => Harm::Stringhalt, Harm::ThiamineLost => Harm::ThiamineLost,
            Harm::MuscleDeath => Harm::MuscleDeath, Harm::BloodDestroyed => Harm::BloodDestroyed,
            Harm::GutAndKidneys => Harm::GutAndKidneys, Harm::HeartStops => Harm::HeartStops,
            Harm::PhalarisStaggers => Harm::PhalarisStaggers,
            Harm::AnnualRyegrassToxicity => Harm::AnnualRyegrassToxicity,
            Harm::ErgotStaggers => Harm::ErgotStaggers,
        ] {
            check_said(&say.harm(harm));
        }
        for act in every![
            Act::NeverGraze => Act::NeverGraze, Act::TakeOff => Act::TakeOff, Act::FenceOff => Act::FenceOff,
            Act::ClearFallen => Act::ClearFallen, Act::PullAndBurn => Act::PullAndBurn,
            Act::MowSeedHeads => Act::MowSeedHeads, Act::NotInHay => Act::NotInHay,
            Act::LookThroughHay => Act::LookThroughHay, Act::HayBeforeTurnout => Act::HayBeforeTurnout,
            Act::FeedOtherHay => Act::FeedOtherHay, Act::FeedLegumeOrOtherHay => Act::FeedLegumeOrOtherHay,
            Act::BalanceCalcium => Act::BalanceCalcium, Act::LimitClover => Act::LimitClover,
            Act::WatchGait => Act::WatchGait, Act::TestForEndophyte => Act::TestForEndophyte,
            Act::MaresOffBeforeFoaling => Act::MaresOffBeforeFoaling, Act::RingVet => Act::RingVet,
            Act::RingVetNow => Act::RingVetNow,
        ] {
            check(say.act(act));
        }
        for whom in every![Whom::All => Whom::All, Whom::Broodmares => Whom::Broodmares] {
            check(say.whom(whom));
        }
        for when in every![
            When::AllYear => When::AllYear, When::GrowingSeason => When::GrowingSeason,
            When::SpringSummer => When::SpringSummer, When::SummerAutumn => When::SummerAutumn,
            When::AutumnAndSpring => When::AutumnAndSpring, When::AutumnBreak => When::AutumnBreak,
            When::WinterSpring => When::WinterSpring, When::WetWarm => When::WetWarm,
            When::SeedHeads => When::SeedHeads, When::WiltedLeaves => When::WiltedLeaves,
        ] {
            check(say.worst_when(when));
        }
        for region in Region::ALL {
            check(say.part_of_world(region));
        }
        check(&say.for_regions(&Region::ALL));
        for sugar in every![
            SugarPotential::Lower => SugarPotential::Lower, SugarPotential::Middle => SugarPotential::Middle,
            SugarPotential::Higher => SugarPotential::Higher,
        ] {
            check(say.sugar_potential(sugar));
            check(say.sugar_word(sugar));
            check(say.harms_too());
        }
        for hazard in hazards() {
            check(&say.hazard_line(hazard));
            assert!(!say.hazard_acts(hazard).is_empty());
            for seen in [false, true] {
                check(say.danger_from(&Danger { hazard, seen }));
            }
        }
        for text in [
            say.kind_is_not_all(),
            say.hazards_head(),
            say.find_plant(),
            say.find_plant_hint(),
            say.no_region(),
            say.tick_regions(),
            say.no_such_plant(),
            say.list_is_not_all(),
        ] {
            check(text);
        }
        check_head(say.plants_sentence());
    }
}

#[test]
fn what_a_test_of_grass_says_is_said() {
    for say in tongues() {
        for found in every![
            CalciumToOxalate::NoOxalate => CalciumToOxalate::NoOxalate,
            CalciumToOxalate::Enough { .. } => CalciumToOxalate::Enough { ratio: 0.8 },
            CalciumToOxalate::Unsafe { .. } => CalciumToOxalate::Unsafe { ratio: 0.3 },
        ] {
            check_said(&say.calcium_to_oxalate(&found));
        }
        for found in every![
            Endophyte::Under => Endophyte::Under, Endophyte::Doubtful => Endophyte::Doubtful,
            Endophyte::Over => Endophyte::Over,
        ] {
            check_said(&say.endophyte(found));
        }
        for found in every![
            Nitrate::Safe => Nitrate::Safe, Nitrate::Doubtful => Nitrate::Doubtful,
            Nitrate::Unsafe => Nitrate::Unsafe,
        ] {
            check_said(&say.nitrate(found));
        }
    }
}
