//! Laws of need and allowance that hold for any input.

use super::*;
use crate::animal::{
    Animal, AnimalId, Answer, Appetite, Birth, BodyType, Goal, Handful, Health, Kind, Laminitis,
    Phase, StageFacts, State, Teeth, Temperament, VetFlag, VetPermit, VetWord, Workload,
};
use crate::units::{BodyMass, Length, LocalDate, PartOfBody};
use chrono::Days;
use proptest::option;
use proptest::prelude::*;

fn epoch() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

/// A day some days before (or, when negative, after) the day that is judged.
fn days_ago(days: i64) -> LocalDate {
    let by = Days::new(days.unsigned_abs());
    if days < 0 { epoch() + by } else { epoch() - by }
}

fn kinds() -> impl Strategy<Value = Kind> {
    prop::sample::select(vec![
        Kind::Horse,
        Kind::Pony,
        Kind::Miniature,
        Kind::Donkey,
        Kind::Mule,
    ])
}

fn works() -> impl Strategy<Value = Workload> {
    prop::sample::select(vec![
        Workload::Maintenance(Temperament::Low),
        Workload::Maintenance(Temperament::Average),
        Workload::Maintenance(Temperament::Elevated),
        Workload::Light,
        Workload::Moderate,
        Workload::Heavy,
        Workload::VeryHeavy,
    ])
}

fn phases() -> impl Strategy<Value = Phase> {
    prop::sample::select(vec![
        Phase::New,
        Phase::Losing,
        Phase::Plateau,
        Phase::Holding,
        Phase::NeedsWeight,
        Phase::Episode,
        Phase::Recovering,
        Phase::OtherHands,
    ])
}

fn health() -> impl Strategy<Value = Health> {
    let appetite = prop_oneof![
        6 => Just(Appetite::Eating),
        1 => Just(Appetite::NotKnown),
        1 => Just(Appetite::Off {
            last_seen_eating: None,
            handful: Handful::NotTried,
            dull: Answer::NotKnown,
        }),
    ];
    let laminitis = prop_oneof![
        4 => Just(Laminitis::Never),
        2 => Just(Laminitis::Ever { last: None }),
        1 => Just(Laminitis::Active),
    ];
    let flags = prop_oneof![
        5 => Just(Vec::new()),
        1 => Just(vec![VetFlag::PainRelief]),
        1 => Just(vec![VetFlag::BoxRest]),
    ];
    let teeth = prop::sample::select(vec![Teeth::Good, Teeth::NotKnown, Teeth::Poor]);
    (appetite, laminitis, flags, teeth).prop_map(|(appetite, laminitis, flags, teeth)| Health {
        laminitis,
        teeth,
        appetite,
        flags,
        ..Health::default()
    })
}

prop_compose! {
    fn animals()(
        kind in kinds(),
        body_type in option::of(prop::sample::select(vec![BodyType::Shetland, BodyType::Pony, BodyType::Donkey])),
        born in option::weighted(0.9, 2000_i32..2026),
        height in option::weighted(0.8, 70.0..180.0_f64),
        state in prop_oneof![
            6 => Just(State::Adult),
            1 => Just(State::Growing),
            1 => Just(State::Pregnant),
            1 => Just(State::Lactating),
        ],
        work in works(),
        health in health(),
        goal in prop_oneof![
            4 => Just(Goal::Lose),
            2 => Just(Goal::Hold),
            1 => Just(Goal::Gain),
        ],
        phase in phases(),
    ) -> Animal {
        Animal {
            id: AnimalId("bramble".into()),
            name: "Bramble".into(),
            kind,
            body_type,
            sex: None,
            born: born.map(Birth::Year),
            height: height.map(Length::cm),
            state,
            stage: StageFacts::default(),
            work,
            health,
            goal,
            phase,
            target: None,
        }
    }
}

/// Everything an allowance is judged on, owned.
#[derive(Clone, Debug)]
struct Case {
    animal: Animal,
    weight: Ends<BodyMass>,
    target: Option<Ends<BodyMass>>,
    weighings: Weighings,
    condition: Vec<ConditionScore>,
    look_over_clean: Answer,
    days_at_start: u32,
    words: Vec<VetWord>,
    now: Option<PartOfBody>,
    asked: Option<PartOfBody>,
}

impl Case {
    fn of(&self) -> AllowanceFor<'_> {
        AllowanceFor {
            animal: &self.animal,
            day: epoch(),
            weight: self.weight,
            weighings: self.weighings,
            target: self.target,
            condition: &self.condition,
            look_over_clean: self.look_over_clean,
            days_at_start: self.days_at_start,
            words: &self.words,
            now: self.now,
            asked: self.asked,
        }
    }
}

fn weights() -> impl Strategy<Value = Ends<BodyMass>> {
    (60.0..900.0_f64, 0.0..0.3_f64, 0.0..0.3_f64).prop_map(|(kg, less, more)| {
        Ends::new(
            BodyMass::kg(kg * (1.0 - less)),
            BodyMass::kg(kg),
            BodyMass::kg(kg * (1.0 + more)),
        )
    })
}

prop_compose! {
    fn cases()(
        animal in animals(),
        weight in weights(),
        target in option::of(weights()),
        on_scale in 0_u32..2,
        by_tape in 0_u32..3,
        condition in prop::collection::vec((-10_i64..200, 4.0..9.0_f64), 0..5),
        look_over_clean in prop::sample::select(vec![Answer::Yes, Answer::Yes, Answer::Yes, Answer::No, Answer::NotKnown]),
        days_at_start in 0_u32..60,
        words in prop::collection::vec((0.0..2.0_f64, -3_i64..90, -60_i64..60), 0..3),
        now in option::of(0.0..3.0_f64),
        asked in option::weighted(0.8, 0.0..2.5_f64),
    ) -> Case {
        Case {
            words: words
                .into_iter()
                .map(|(lowest, given, expired)| VetWord {
                    animal: animal.id.clone(),
                    permit: VetPermit::LowestLevel(PartOfBody::percent(lowest)),
                    vet: "the vet".into(),
                    practice: "the practice".into(),
                    given: days_ago(given),
                    how: "at a visit".into(),
                    expires: days_ago(expired),
                    written: None,
                })
                .collect(),
            animal,
            weight,
            target,
            weighings: Weighings { on_scale, by_tape },
            condition: condition
                .into_iter()
                .map(|(ago, score)| ConditionScore { on: days_ago(ago), score })
                .collect(),
            look_over_clean,
            days_at_start,
            now: now.map(PartOfBody::percent),
            asked: asked.map(PartOfBody::percent),
        }
    }
}

/// A case with everything in order for a restriction, so that the laws below meet restrictions and not only refusals.
fn likely_restricted() -> impl Strategy<Value = Case> {
    cases().prop_map(|mut case| {
        case.animal.kind = Kind::Horse;
        case.animal.body_type = None;
        case.animal.born = Some(Birth::Year(2014));
        case.animal.state = State::Adult;
        case.animal.health = Health {
            appetite: Appetite::Eating,
            ..Health::default()
        };
        case.animal.goal = Goal::Lose;
        case.animal.phase = Phase::Losing;
        case.weighings.on_scale = 1;
        case.condition = [40, 10]
            .map(|ago| ConditionScore {
                on: days_ago(ago),
                score: 8.0,
            })
            .into();
        case.look_over_clean = Answer::Yes;
        case.days_at_start = 28;
        case
    })
}

fn any_case() -> impl Strategy<Value = Case> {
    prop_oneof![cases(), likely_restricted()]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn the_level_is_never_below_the_floor_of_the_heaviest_it_may_be(case in any_case()) {
        let given = allowance(&case.of()).unwrap();
        prop_assert!(given.level >= given.floor);
        prop_assert!(given.floor.to_percent() >= 1.0 - 1e-12);
        prop_assert!(given.floor_weight >= case.weight.most);
        prop_assert!(given.dry_matter().to_kg() >= given.floor_dry_matter().to_kg() * (1.0 - 1e-12));
    }

    #[test]
    fn below_the_start_everything_is_in_order(case in any_case()) {
        let given = allowance(&case.of()).unwrap();
        if given.is_restriction() {
            prop_assert!(given.bars.is_empty());
            let animal = &case.animal;
            let vets_word = case.words.iter().any(|word| word.holds_on(epoch()));
            let last = case.of().last_condition();
            prop_assert!(vets_word || vet_list(animal, epoch(), last).is_empty());
            prop_assert!(vets_word || given.level >= given.without_vet_floor);
            prop_assert!(vets_word || animal.state == State::Adult);
            prop_assert!(animal.born.is_some());
            prop_assert!(case.weighings.on_scale > 0 || case.weighings.by_tape > 1);
            prop_assert_eq!(animal.health.appetite, Appetite::Eating);
            prop_assert_eq!(case.look_over_clean, Answer::Yes);
            prop_assert!(case.days_at_start >= 28);
            prop_assert!(animal.phase != Phase::New && animal.phase != Phase::NeedsWeight);
            let fat: Vec<_> = case.condition.iter().filter(|score| score.score >= 7.0 && score.on <= epoch()).collect();
            let apart = fat.iter().flat_map(|a| fat.iter().map(move |b| (a.on - b.on).num_days())).max();
            prop_assert!(apart >= Some(14));
        }
    }

    #[test]
    fn a_bar_in_the_way_leaves_the_level_at_the_start_or_above(case in any_case()) {
        let given = allowance(&case.of()).unwrap();
        prop_assert!(given.bars.is_empty() || given.level >= given.start);
    }

    #[test]
    fn without_the_vets_words_it_never_has_less(case in any_case()) {
        let with = allowance(&case.of()).unwrap();
        let mut without = case.clone();
        without.words.clear();
        let without = allowance(&without.of()).unwrap();
        prop_assert!(with.level >= without.level || case.words.iter().any(|word| word.holds_on(epoch())));
        prop_assert!(without.level >= without.start.min(without.without_vet_floor));
    }

    #[test]
    fn a_heavier_animal_never_has_less_dry_matter_or_lower_needs(case in any_case(), more in 1.0..1.2_f64) {
        let mut heavier = case.clone();
        heavier.weight = case.weight.map(|weight| weight * more);
        heavier.target = case.target.map(|target| target.map(|weight| weight * more));
        let (light, heavy) = (allowance(&case.of()).unwrap(), allowance(&heavier.of()).unwrap());
        prop_assert!(heavy.dry_matter().to_kg() >= light.dry_matter().to_kg() * (1.0 - 1e-9));
        let need = |case: &Case| {
            needs(&NeedFor {
                kind: case.animal.kind,
                stage: Stage::of(case.animal.state),
                work: case.animal.work,
                current: case.weight.likely,
                target: case.target.map(|target| target.likely),
            })
            .unwrap()
            .0
        };
        let (light, heavy) = (need(&case), need(&heavier));
        for row in &light.rows {
            let other = heavy.of(row.nutrient).unwrap();
            let (a, b) = (row.nutrient.in_unit(row.amount).unwrap(), row.nutrient.in_unit(other.amount).unwrap());
            prop_assert!(0.0 < a && a <= b * (1.0 + 1e-9), "{:?}", row.nutrient);
        }
    }

    #[test]
    fn asking_for_more_never_gives_less(case in any_case(), more in 0.0..1.0_f64) {
        let asked = case.asked.unwrap_or(PartOfBody::percent(1.0));
        let mut first = case.clone();
        first.asked = Some(asked);
        let mut second = case;
        second.asked = Some(asked + PartOfBody::percent(more));
        let (less, more) = (allowance(&first.of()).unwrap(), allowance(&second.of()).unwrap());
        // What is barred goes back to the start, so only two levels that were given can be compared.
        let barred = |given: &Allowance| given.why.iter().any(|why| matches!(why, AllowanceReason::NotGiven { .. }));
        prop_assert!(barred(&less) || more.level >= less.level);
    }

    #[test]
    fn every_day_of_feeds_fits_its_meals(g in 0.0..2000.0_f64, kg in 60.0..900.0_f64) {
        let limit = meal_limit(crate::animal::RiskLevel::Proven, BodyMass::kg(kg)).unwrap();
        let day = crate::units::NutrientMass::g(g);
        let feeds = feeds_needed(&limit, day).unwrap();
        let MealLimit::SugarAndStarch { meal, .. } = limit else { panic!("the strict rule") };
        prop_assert!(day / f64::from(feeds) <= meal * (1.0 + 1e-12));
        prop_assert!(feeds == 1 || day / f64::from(feeds - 1) > meal * (1.0 - 1e-12));
    }
}
