//! Addresses read back as themselves, and no text breaks the reader.

use super::*;
use proptest::prelude::*;

fn ids() -> impl Strategy<Value = String> {
    "[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}"
}

fn routes() -> impl Strategy<Value = Route> {
    let plain = prop::sample::select(vec![
        Route::Home,
        Route::Start,
        Route::Example,
        Route::Round,
        Route::Horses,
        Route::NewHorse,
        Route::Weighbridge,
        Route::NewGroup,
        Route::Visit,
        Route::VisitReport,
        Route::Shed,
        Route::Visits,
        Route::NewHay,
        Route::NewTub,
        Route::WeighNets,
        Route::YardNets,
        Route::NewNet,
        Route::Compare,
        Route::Reminders,
        Route::Soaks,
        Route::AddTub,
        Route::Paddock,
        Route::GrassPlace,
        Route::GrassWeek,
        Route::Season,
        Route::GrassModel,
        Route::Plants,
        Route::NewField,
        Route::Desk,
        Route::Foods,
        Route::NewFood,
        Route::TypicalFood(TypicalFood::CopperSulphate),
        Route::Copies,
        Route::Sources,
        Route::Settings,
    ]);
    let of_an_animal = (ids(), 0usize..28, 1u8..8).prop_map(|(id, which, step)| {
        let id = AnimalId(id);
        match which {
            0 => Route::Horse(id),
            1 => Route::Details(id),
            2 => Route::Weigh(id),
            3 => Route::Condition(id, Step::new(step).unwrap()),
            4 => Route::Crest(id),
            5 => Route::LookOver(id),
            6 => Route::Plan(id),
            7 => Route::Day(id),
            8 => Route::Ledger(id),
            9 => Route::NotEating(id),
            10 => Route::ConditionWho(id),
            11 => Route::ConditionTwo(id),
            12 => Route::Photos(id),
            13 => {
                let pose = Pose::ALL[usize::from(step) % Pose::ALL.len()];
                Route::PhotosOf(id, pose)
            }
            14 => Route::Photo(id.clone(), RecordId(id.0)),
            15 => Route::Work(id),
            16 => Route::WorkTimed(id),
            17 => Route::WorkDone(id),
            18 => Route::Weight(id),
            19 => Route::Measure(id),
            20 => Route::Measures(id),
            21 => Route::NextStep(id),
            22 => Route::LookBack(id),
            23 => Route::PlanAt(id, BodyHundredths::new(i64::from(step) * 25).unwrap()),
            24 => Route::Ration(id),
            25 => Route::Mend(id),
            26 => Route::ChangeOver(id),
            _ => Route::VetWord(id),
        }
    });
    let others = (ids(), 0usize..21).prop_map(|(id, which)| match which {
        0 => Route::Group(GroupId(id)),
        1 => Route::Hay(LotId(id)),
        2 => Route::Nets(AnimalId(id)),
        3 => Route::Hanging(AnimalId(id)),
        4 => Route::Net(NetId(id)),
        5 => Route::CountHay(LotId(id)),
        6 => Route::Tonight(LotId(id)),
        7 => Route::Remind(TubId(id)),
        8 => Route::WorthOfTest(LotId(id)),
        9 => Route::GroupLedger(GroupId(id)),
        10 => Route::TubForm(TubId(id)),
        11 => Route::GroupDay(GroupId(id)),
        12 => Route::WhoWillNotEat(GroupId(id)),
        13 => Route::Food(FoodId(id)),
        14 => Route::PaddockOf(AnimalId(id)),
        15 => Route::Grazing(AnimalId(id)),
        16 => Route::Field(PaddockId(id)),
        17 => Route::FieldForm(PaddockId(id)),
        18 => Route::Readings(PaddockId(id)),
        19 => Route::Strip(PaddockId(id)),
        _ => Route::Tub(TubId(id)),
    });
    prop_oneof![plain, of_an_animal, others]
}

proptest! {
    #[test]
    fn an_address_reads_back_as_itself(route in routes()) {
        prop_assert_eq!(Route::parse(&route.to_string()), Some(route));
    }

    #[test]
    fn no_text_breaks_the_reader(text in ".*") {
        let _ = Route::parse(&text);
    }
}

#[test]
fn what_is_not_an_address_is_none() {
    for text in [
        "#/nowhere",
        "#/horses/a/b/c",
        "#/horses/a/condition/9",
        "#/horses/weighbridge/weigh",
        "#/horses/a/plan/much",
        "#/horses/a/plan/1001",
        "#/shed/hay/",
        "#/horses/../x",
    ] {
        assert_eq!(Route::parse(text), None, "{text}");
    }
}
