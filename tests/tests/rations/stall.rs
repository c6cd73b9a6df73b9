//! An animal with its hay and its feed room, so that a case reads in a few lines.

use tussock_core::animal::{Kind, LotId, RiskLevel, State, Teeth, Workload};
use tussock_core::forage::{
    Analyte, Basis, Fed, ForageClass, LabReport, Lot, RawReport, SugarEstimate, Supply, estimate,
    supply,
};
use tussock_core::limits::{
    Ends, NeedFor, Needs, Nutrient, Stage, energy_floor, meal_limit, needs,
};
use tussock_core::ration::mend::{
    Aim, FoodChoice, ForageChoice, Mended, Mends, Topping, Wanted, mend,
};
use tussock_core::ration::{
    Against, Bucket, Food, Forage, Ration, TypicalFood, Whole, feeds_for, whole,
};
use tussock_core::units::{AsFed, BodyMass, DryFraction, DryMatter, Energy, PartOfBody};

/// A hay of the stall.
pub(crate) struct Hay {
    pub(crate) class: ForageClass,
    pub(crate) supply: Supply,
    pub(crate) sugar: SugarEstimate,
    pub(crate) dry: DryFraction,
    pub(crate) part: Option<f64>,
    pub(crate) price: Option<f64>,
}

/// A hay that nobody tested.
pub(crate) fn untested(class: ForageClass, price: f64) -> Hay {
    of_lot(&Lot::of_class(LotId("hay".into()), "Hay", class), price)
}

/// A hay that a laboratory tested, in the units of its report on dry matter.
pub(crate) fn tested(class: ForageClass, values: &[(Analyte, f64)], price: f64) -> Hay {
    let mut lot = Lot::of_class(LotId("hay".into()), "Hay", class);
    let raw = RawReport {
        dry_percent: Some(88.0),
        values: values.to_vec(),
        ..RawReport::empty(Basis::DryMatter)
    };
    lot.reports.push(LabReport::read(raw).expect("a report").0);
    of_lot(&lot, price)
}

fn of_lot(lot: &Lot, price: f64) -> Hay {
    Hay {
        class: lot.class,
        supply: supply(lot, Fed::Dry),
        sugar: estimate(lot, Fed::Dry),
        dry: lot.dry_matter().expect("hay").value,
        part: None,
        price: Some(price),
    }
}

/// A food of the feed room, with its price a kilogram in minor units.
pub(crate) struct InRoom {
    pub(crate) food: Food,
    pub(crate) price: Option<f64>,
    pub(crate) locked: Option<f64>,
    pub(crate) offered: bool,
}

/// A typical food at an invented price.
pub(crate) fn typical(food: TypicalFood, price: f64) -> InRoom {
    InRoom {
        food: food.food(),
        price: Some(price),
        locked: None,
        offered: true,
    }
}

impl InRoom {
    /// The same with an amount that the owner set, in kilograms.
    pub(crate) fn set(mut self, kg: f64) -> Self {
        self.locked = Some(kg);
        self
    }

    /// The same where it is not in the yard.
    pub(crate) fn not_here(mut self) -> Self {
        self.offered = false;
        self
    }
}

/// An animal with its hay and feed room.
pub(crate) struct Stall {
    pub(crate) kind: Kind,
    pub(crate) state: State,
    pub(crate) kg: f64,
    pub(crate) risk: RiskLevel,
    pub(crate) teeth: Teeth,
    pub(crate) loses: bool,
    pub(crate) needs: Needs,
    /// Dry matter, least and most, in percent of body weight.
    pub(crate) level: [f64; 2],
    /// Whether its energy is met, and not only the floor of a restriction.
    pub(crate) feeds_energy: bool,
    pub(crate) hays: Vec<Hay>,
    pub(crate) foods: Vec<InRoom>,
    pub(crate) feeds: u32,
    pub(crate) aim: Aim,
    pub(crate) at_most: Option<usize>,
}

impl Stall {
    /// A grown animal.
    pub(crate) fn grown(kind: Kind, kg: f64, work: Workload) -> Self {
        Self::at(kind, kg, Stage::Adult, work)
    }

    pub(crate) fn at(kind: Kind, kg: f64, stage: Stage, work: Workload) -> Self {
        let body = BodyMass::kg(kg);
        let (needs, _) = needs(&NeedFor {
            kind,
            stage,
            work,
            current: body,
            target: Some(body),
        })
        .expect("a weight that is believed");
        let state = stage.state();
        Self {
            feeds_energy: state != State::Adult,
            kind,
            state,
            kg,
            risk: RiskLevel::NotKnown,
            teeth: Teeth::Good,
            loses: false,
            needs,
            level: [1.5, 1.5],
            hays: Vec::new(),
            foods: Vec::new(),
            feeds: 2,
            aim: Aim::Cheapest,
            at_most: None,
        }
    }

    fn against(&self) -> Against<'_> {
        Against {
            kind: self.kind,
            state: self.state,
            weight: Ends::exactly(BodyMass::kg(self.kg)),
            teeth: self.teeth,
            risk: self.risk,
            needs: &self.needs,
        }
    }

    fn dry(&self, percent: f64) -> DryMatter {
        PartOfBody::percent(percent).of(BodyMass::kg(self.kg))
    }

    fn energy(&self) -> Option<Energy> {
        if self.feeds_energy {
            return self.needs.energy.as_ref().map(|need| need.energy);
        }
        energy_floor(self.kind, BodyMass::kg(self.kg))
            .expect("a weight that is believed")
            .map(|floor| floor.without_vet)
    }

    pub(crate) fn wanted(&self) -> Wanted<'_> {
        let [least, most] = self.level;
        Wanted {
            against: self.against(),
            dry_matter: [self.dry(least), self.dry(most)],
            forage_least: self.dry(1.0),
            hay: None,
            energy_least: self.energy(),
            meal: meal_limit(self.risk, BodyMass::kg(self.kg)).expect("a weight"),
            feeds: self.feeds,
            topping: Topping::of(self.loses, self.risk),
            at_most_bought: self.at_most,
            aim: self.aim,
        }
    }

    pub(crate) fn forages(&self) -> Vec<ForageChoice<'_>> {
        self.hays
            .iter()
            .map(|hay| ForageChoice {
                dry: hay.dry,
                class: hay.class,
                supply: &hay.supply,
                sugar: Some(&hay.sugar),
                between: [AsFed::ZERO, AsFed::kg(30.0)],
                part: hay.part,
                price: hay.price,
            })
            .collect()
    }

    pub(crate) fn choices(&self) -> Vec<FoodChoice<'_>> {
        self.foods
            .iter()
            .map(|one| FoodChoice {
                food: &one.food,
                between: match one.locked {
                    Some(kg) => [AsFed::kg(kg), AsFed::kg(kg)],
                    None => [AsFed::ZERO, one.food.most_a_day(BodyMass::kg(self.kg))],
                },
                step: one.food.step(),
                whole_steps: false,
                offered: one.offered,
                price: one.price,
            })
            .collect()
    }

    pub(crate) fn mend(&self) -> Mends {
        mend(&self.wanted(), &self.forages(), &self.choices()).expect("a problem that is one")
    }

    /// The ration that was found, held against the animal.
    pub(crate) fn signed(&self) -> (Mended, Whole) {
        let found = self.mend();
        let Mends::Found(mended) = found else {
            panic!("{found:?}");
        };
        let whole = self.hold(&mended);
        (mended, whole)
    }

    /// A ration held against the animal.
    pub(crate) fn hold(&self, mended: &Mended) -> Whole {
        let foods: Vec<(AsFed, &Food)> = self
            .foods
            .iter()
            .zip(&mended.foods)
            .map(|(one, fed)| (*fed, &one.food))
            .collect();
        let wanted = self.wanted();
        let buckets = feeds_for(&foods, &wanted.meal).unwrap_or(self.feeds);
        assert!(buckets <= self.feeds, "{buckets} buckets");
        let each = Bucket {
            foods: foods
                .iter()
                .map(|(fed, food)| (*fed * (1.0 / f64::from(buckets)), *food))
                .collect(),
        };
        let ration = Ration {
            forage: self
                .hays
                .iter()
                .zip(&mended.forages)
                .map(|(hay, fed)| Forage {
                    fed: *fed,
                    dry: hay.dry,
                    class: hay.class,
                    supply: &hay.supply,
                    sugar: Some(&hay.sugar),
                })
                .collect(),
            grass: DryMatter::ZERO,
            buckets: (0..buckets).map(|_| each.clone()).collect(),
        };
        whole(&ration, &self.against()).expect("amounts that are believed")
    }

    /// How much of a food is given, in kilograms.
    pub(crate) fn given(&self, mended: &Mended, food: TypicalFood) -> f64 {
        self.foods
            .iter()
            .zip(&mended.foods)
            .filter(|(one, _)| one.food.profile == Some(food))
            .map(|(_, fed)| fed.to_kg())
            .sum()
    }
}

/// How a nutrient stands.
pub(crate) fn row(whole: &Whole, nutrient: Nutrient) -> &tussock_core::ration::Row {
    whole
        .rows
        .iter()
        .find(|row| row.line.nutrient == nutrient)
        .expect("a need")
}
