//! Every screen has an address behind `#`, so that a killed phone returns to its form.
//!
//! [`Route::parse`] and `Display` are inverse. An address that is not understood opens the round, never an error.

mod step;
#[cfg(test)]
mod tests;

pub use step::Step;

use std::fmt;
use tussock_core::animal::{AnimalId, FoodId, GroupId, LotId, NetId, TubId};
use tussock_core::log::bodies::Pose;
use tussock_core::log::bodies::base::BodyHundredths;
use tussock_core::ration::TypicalFood;
use tussock_core::sources::RecordId;

/// A place of the app, in the order of the place bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Place {
    /// What is due now.
    Round,
    /// The animals and what is done beside one.
    Horses,
    /// Hay, nets and tubs.
    Shed,
    /// Grass.
    Paddock,
    /// Everything that is done sitting down.
    Desk,
}

/// An address.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Route {
    /// The first screen: the round when there are records, else the offer to start.
    Home,
    /// Six answers to a first plan.
    Start,
    /// The invented yard.
    Example,
    /// What is due.
    Round,
    /// The animals.
    Horses,
    /// A new animal.
    NewHorse,
    /// Beside one animal.
    Horse(AnimalId),
    /// Its details.
    Details(AnimalId),
    /// Tape or scale.
    Weigh(AnimalId),
    /// Its weight over time.
    Weight(AnimalId),
    /// Where the tape goes.
    Measure(AnimalId),
    /// Its measures over time.
    Measures(AnimalId),
    /// All animals on a scale, one after another.
    Weighbridge,
    /// Condition, site by site.
    Condition(AnimalId, Step),
    /// Who scores condition, and on which scale.
    ConditionWho(AnimalId),
    /// What two people scored on one day.
    ConditionTwo(AnimalId),
    /// The crest.
    Crest(AnimalId),
    /// The look-over.
    LookOver(AnimalId),
    /// Its work: what is asked and what was done.
    Work(AnimalId),
    /// A session of work on the clock.
    WorkTimed(AnimalId),
    /// A session of work, written down.
    WorkDone(AnimalId),
    /// Its photographs.
    Photos(AnimalId),
    /// Its photographs of one pose.
    PhotosOf(AnimalId, Pose),
    /// One of its photographs.
    Photo(AnimalId, RecordId),
    /// It will not eat.
    NotEating(AnimalId),
    /// Its next step and its phase.
    NextStep(AnimalId),
    /// What changed before its last episode.
    LookBack(AnimalId),
    /// Its plan.
    Plan(AnimalId),
    /// Its plan with a level asked for.
    PlanAt(AnimalId, BodyHundredths),
    /// What it gets now against what it needs.
    Ration(AnimalId),
    /// The cheapest mend of its ration.
    Mend(AnimalId),
    /// Changing over to the ration that was decided.
    ChangeOver(AnimalId),
    /// The day of its plan.
    Day(AnimalId),
    /// The vet's word.
    VetWord(AnimalId),
    /// What an animal really ate.
    Ledger(AnimalId),
    /// What a group really ate.
    GroupLedger(GroupId),
    /// The visit to the yard that is under way, or its start.
    Visit,
    /// The summary and the report of the visit.
    VisitReport,
    /// A new group.
    NewGroup,
    /// A group.
    Group(GroupId),
    /// The day of a group's plan.
    GroupDay(GroupId),
    /// Which of a group will not eat.
    WhoWillNotEat(GroupId),
    /// The shed.
    Shed,
    /// The times somebody comes.
    Visits,
    /// A new lot of hay.
    NewHay,
    /// A lot of hay.
    Hay(LotId),
    /// Counting what is left of a lot.
    CountHay(LotId),
    /// A night without a lot.
    Tonight(LotId),
    /// Two lots beside each other.
    Compare,
    /// Whether a laboratory test of a lot pays.
    WorthOfTest(LotId),
    /// Weighing the nets of an animal's day, from the first that is not weighed.
    Nets(AnimalId),
    /// Weighing all nets that are due, whoever they are for.
    WeighNets,
    /// What hangs in front of an animal or group, and what was left.
    Hanging(AnimalId),
    /// The nets of the yard.
    YardNets,
    /// A new net.
    NewNet,
    /// A net.
    Net(NetId),
    /// The soaks of the day, tub by tub, what is not soaked, and the tubs.
    Soaks,
    /// A new tub of the yard.
    AddTub,
    /// What a tub is called and holds.
    TubForm(TubId),
    /// Starting a soak.
    NewTub,
    /// A soak tub.
    Tub(TubId),
    /// What rings for a soak tub.
    Remind(TubId),
    /// What rings every day.
    Reminders,
    /// The desk.
    Desk,
    /// The foods of the yard and the typical ones.
    Foods,
    /// A new food.
    NewFood,
    /// A food of the yard.
    Food(FoodId),
    /// A typical food.
    TypicalFood(TypicalFood),
    /// Copies of the records.
    Copies,
    /// Where each number comes from.
    Sources,
    /// Settings.
    Settings,
}

impl Route {
    /// Reads an address, with or without `#` and leading slash.
    pub fn parse(hash: &str) -> Option<Self> {
        let path = hash.trim_start_matches('#').trim_matches('/');
        let parts: Vec<&str> = path.split('/').collect();
        let animal = |id: &str| id_text(id).map(AnimalId);
        Some(match parts.as_slice() {
            [""] => Self::Home,
            ["start"] => Self::Start,
            ["example"] => Self::Example,
            ["round"] => Self::Round,
            ["horses"] => Self::Horses,
            ["visit"] => Self::Visit,
            ["visit", "report"] => Self::VisitReport,
            ["horses", "new"] => Self::NewHorse,
            ["horses", "weighbridge"] => Self::Weighbridge,
            ["horses", "group", "new"] => Self::NewGroup,
            ["horses", "group", id, "ledger"] => Self::GroupLedger(GroupId(id_text(id)?)),
            ["horses", "group", id, "day"] => Self::GroupDay(GroupId(id_text(id)?)),
            ["horses", "group", id, "not-eating"] => Self::WhoWillNotEat(GroupId(id_text(id)?)),
            ["horses", "group", id] => Self::Group(GroupId(id_text(id)?)),
            ["horses", id] => Self::Horse(animal(id)?),
            ["horses", id, "details"] => Self::Details(animal(id)?),
            ["horses", id, "weigh"] => Self::Weigh(animal(id)?),
            ["horses", id, "weight"] => Self::Weight(animal(id)?),
            ["horses", id, "measure"] => Self::Measure(animal(id)?),
            ["horses", id, "measures"] => Self::Measures(animal(id)?),
            ["horses", id, "condition", "who"] => Self::ConditionWho(animal(id)?),
            ["horses", id, "condition", "two"] => Self::ConditionTwo(animal(id)?),
            ["horses", id, "condition", step] => {
                Self::Condition(animal(id)?, Step::new(step.parse().ok()?)?)
            }
            ["horses", id, "crest"] => Self::Crest(animal(id)?),
            ["horses", id, "look-over"] => Self::LookOver(animal(id)?),
            ["horses", id, "work"] => Self::Work(animal(id)?),
            ["horses", id, "work", "timed"] => Self::WorkTimed(animal(id)?),
            ["horses", id, "work", "done"] => Self::WorkDone(animal(id)?),
            ["horses", id, "photos"] => Self::Photos(animal(id)?),
            ["horses", id, "photos", pose] => Self::PhotosOf(animal(id)?, pose_of(pose)?),
            ["horses", id, "photo", photo] => Self::Photo(animal(id)?, RecordId(id_text(photo)?)),
            ["horses", id, "not-eating"] => Self::NotEating(animal(id)?),
            ["horses", id, "next"] => Self::NextStep(animal(id)?),
            ["horses", id, "look-back"] => Self::LookBack(animal(id)?),
            ["horses", id, "plan"] => Self::Plan(animal(id)?),
            ["horses", id, "plan", level] => {
                let level = BodyHundredths::new(level.parse().ok()?).ok()?;
                Self::PlanAt(animal(id)?, level)
            }
            ["horses", id, "ration"] => Self::Ration(animal(id)?),
            ["horses", id, "ration", "mend"] => Self::Mend(animal(id)?),
            ["horses", id, "ration", "change"] => Self::ChangeOver(animal(id)?),
            ["horses", id, "day"] => Self::Day(animal(id)?),
            ["horses", id, "vet"] => Self::VetWord(animal(id)?),
            ["horses", id, "ledger"] => Self::Ledger(animal(id)?),
            ["shed"] => Self::Shed,
            ["shed", "visits"] => Self::Visits,
            ["shed", "hay", "new"] => Self::NewHay,
            ["shed", "compare"] => Self::Compare,
            ["shed", "hay", id, "count"] => Self::CountHay(LotId(id_text(id)?)),
            ["shed", "hay", id, "tonight"] => Self::Tonight(LotId(id_text(id)?)),
            ["shed", "hay", id] => Self::Hay(LotId(id_text(id)?)),
            ["shed", "hay", id, "test"] => Self::WorthOfTest(LotId(id_text(id)?)),
            ["shed", "nets", id] => Self::Nets(animal(id)?),
            ["shed", "weigh"] => Self::WeighNets,
            ["shed", "hung", id] => Self::Hanging(animal(id)?),
            ["shed", "net"] => Self::YardNets,
            ["shed", "net", "new"] => Self::NewNet,
            ["shed", "net", id] => Self::Net(NetId(id_text(id)?)),
            ["shed", "soaks"] => Self::Soaks,
            ["shed", "tubs", "new"] => Self::AddTub,
            ["shed", "tubs", id] => Self::TubForm(TubId(id_text(id)?)),
            ["shed", "tub", "new"] => Self::NewTub,
            ["shed", "tub", id] => Self::Tub(TubId(id_text(id)?)),
            ["shed", "tub", id, "remind"] => Self::Remind(TubId(id_text(id)?)),
            ["shed", "reminders"] => Self::Reminders,
            ["desk"] => Self::Desk,
            ["desk", "foods"] => Self::Foods,
            ["desk", "foods", "new"] => Self::NewFood,
            ["desk", "foods", "typical", key] => Self::TypicalFood(TypicalFood::from_key(key)?),
            ["desk", "foods", id] => Self::Food(FoodId(id_text(id)?)),
            ["desk", "copies"] => Self::Copies,
            ["desk", "sources"] => Self::Sources,
            ["desk", "settings"] => Self::Settings,
            _ => return None,
        })
    }

    /// The place it belongs to; `None` on the screens before there is a yard.
    pub const fn place(&self) -> Option<Place> {
        match self {
            Self::Home | Self::Start | Self::Example => None,
            Self::Round => Some(Place::Round),
            Self::Horses
            | Self::NewHorse
            | Self::Horse(_)
            | Self::Details(_)
            | Self::Weigh(_)
            | Self::Weight(_)
            | Self::Measure(_)
            | Self::Measures(_)
            | Self::Weighbridge
            | Self::Condition(..)
            | Self::ConditionWho(_)
            | Self::ConditionTwo(_)
            | Self::Crest(_)
            | Self::LookOver(_)
            | Self::Work(_)
            | Self::WorkTimed(_)
            | Self::WorkDone(_)
            | Self::Photos(_)
            | Self::PhotosOf(..)
            | Self::Photo(..)
            | Self::NotEating(_)
            | Self::NextStep(_)
            | Self::LookBack(_)
            | Self::Plan(_)
            | Self::PlanAt(..)
            | Self::Ration(_)
            | Self::Mend(_)
            | Self::ChangeOver(_)
            | Self::Day(_)
            | Self::VetWord(_)
            | Self::Ledger(_)
            | Self::GroupLedger(_)
            | Self::Visit
            | Self::VisitReport
            | Self::NewGroup
            | Self::Group(_)
            | Self::GroupDay(_)
            | Self::WhoWillNotEat(_) => Some(Place::Horses),
            Self::Shed
            | Self::Visits
            | Self::NewHay
            | Self::Hay(_)
            | Self::CountHay(_)
            | Self::Tonight(_)
            | Self::Compare
            | Self::WorthOfTest(_)
            | Self::Nets(_)
            | Self::WeighNets
            | Self::Hanging(_)
            | Self::YardNets
            | Self::NewNet
            | Self::Net(_)
            | Self::Soaks
            | Self::AddTub
            | Self::TubForm(_)
            | Self::NewTub
            | Self::Tub(_)
            | Self::Remind(_)
            | Self::Reminders => Some(Place::Shed),
            Self::Desk
            | Self::Foods
            | Self::NewFood
            | Self::Food(_)
            | Self::TypicalFood(_)
            | Self::Copies
            | Self::Sources
            | Self::Settings => Some(Place::Desk),
        }
    }
}

/// A pose in an address.
const fn pose_word(pose: Pose) -> &'static str {
    match pose {
        Pose::Side => "side",
        Pose::Behind => "behind",
        Pose::Crest => "crest",
    }
}

fn pose_of(word: &str) -> Option<Pose> {
    Pose::ALL.into_iter().find(|pose| pose_word(*pose) == word)
}

/// An id in an address: letters, digits and dashes, not one of the words that stand in its place.
fn id_text(text: &str) -> Option<String> {
    let plain = !text.is_empty() && text.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
    (plain && text != "new" && text != "group" && text != "weighbridge" && text != "typical")
        .then(|| text.to_owned())
}

impl fmt::Display for Route {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Home => f.write_str("#/"),
            Self::Start => f.write_str("#/start"),
            Self::Example => f.write_str("#/example"),
            Self::Round => f.write_str("#/round"),
            Self::Horses => f.write_str("#/horses"),
            Self::NewHorse => f.write_str("#/horses/new"),
            Self::Horse(id) => write!(f, "#/horses/{}", id.0),
            Self::Details(id) => write!(f, "#/horses/{}/details", id.0),
            Self::Weigh(id) => write!(f, "#/horses/{}/weigh", id.0),
            Self::Weight(id) => write!(f, "#/horses/{}/weight", id.0),
            Self::Measure(id) => write!(f, "#/horses/{}/measure", id.0),
            Self::Measures(id) => write!(f, "#/horses/{}/measures", id.0),
            Self::Weighbridge => f.write_str("#/horses/weighbridge"),
            Self::Condition(id, step) => write!(f, "#/horses/{}/condition/{}", id.0, step.number()),
            Self::ConditionWho(id) => write!(f, "#/horses/{}/condition/who", id.0),
            Self::ConditionTwo(id) => write!(f, "#/horses/{}/condition/two", id.0),
            Self::Crest(id) => write!(f, "#/horses/{}/crest", id.0),
            Self::LookOver(id) => write!(f, "#/horses/{}/look-over", id.0),
            Self::Work(id) => write!(f, "#/horses/{}/work", id.0),
            Self::WorkTimed(id) => write!(f, "#/horses/{}/work/timed", id.0),
            Self::WorkDone(id) => write!(f, "#/horses/{}/work/done", id.0),
            Self::Photos(id) => write!(f, "#/horses/{}/photos", id.0),
            Self::PhotosOf(id, pose) => write!(f, "#/horses/{}/photos/{}", id.0, pose_word(*pose)),
            Self::Photo(id, photo) => write!(f, "#/horses/{}/photo/{}", id.0, photo.0),
            Self::NotEating(id) => write!(f, "#/horses/{}/not-eating", id.0),
            Self::NextStep(id) => write!(f, "#/horses/{}/next", id.0),
            Self::LookBack(id) => write!(f, "#/horses/{}/look-back", id.0),
            Self::Plan(id) => write!(f, "#/horses/{}/plan", id.0),
            Self::PlanAt(id, level) => write!(f, "#/horses/{}/plan/{}", id.0, level.get()),
            Self::Ration(id) => write!(f, "#/horses/{}/ration", id.0),
            Self::Mend(id) => write!(f, "#/horses/{}/ration/mend", id.0),
            Self::ChangeOver(id) => write!(f, "#/horses/{}/ration/change", id.0),
            Self::Day(id) => write!(f, "#/horses/{}/day", id.0),
            Self::VetWord(id) => write!(f, "#/horses/{}/vet", id.0),
            Self::Ledger(id) => write!(f, "#/horses/{}/ledger", id.0),
            Self::GroupLedger(id) => write!(f, "#/horses/group/{}/ledger", id.0),
            Self::Visit => f.write_str("#/visit"),
            Self::VisitReport => f.write_str("#/visit/report"),
            Self::NewGroup => f.write_str("#/horses/group/new"),
            Self::Group(id) => write!(f, "#/horses/group/{}", id.0),
            Self::GroupDay(id) => write!(f, "#/horses/group/{}/day", id.0),
            Self::WhoWillNotEat(id) => write!(f, "#/horses/group/{}/not-eating", id.0),
            Self::Shed => f.write_str("#/shed"),
            Self::Visits => f.write_str("#/shed/visits"),
            Self::NewHay => f.write_str("#/shed/hay/new"),
            Self::Hay(id) => write!(f, "#/shed/hay/{}", id.0),
            Self::CountHay(id) => write!(f, "#/shed/hay/{}/count", id.0),
            Self::Tonight(id) => write!(f, "#/shed/hay/{}/tonight", id.0),
            Self::Compare => f.write_str("#/shed/compare"),
            Self::WorthOfTest(id) => write!(f, "#/shed/hay/{}/test", id.0),
            Self::Nets(id) => write!(f, "#/shed/nets/{}", id.0),
            Self::WeighNets => f.write_str("#/shed/weigh"),
            Self::Hanging(id) => write!(f, "#/shed/hung/{}", id.0),
            Self::YardNets => f.write_str("#/shed/net"),
            Self::NewNet => f.write_str("#/shed/net/new"),
            Self::Net(id) => write!(f, "#/shed/net/{}", id.0),
            Self::Soaks => f.write_str("#/shed/soaks"),
            Self::AddTub => f.write_str("#/shed/tubs/new"),
            Self::TubForm(id) => write!(f, "#/shed/tubs/{}", id.0),
            Self::NewTub => f.write_str("#/shed/tub/new"),
            Self::Tub(id) => write!(f, "#/shed/tub/{}", id.0),
            Self::Remind(id) => write!(f, "#/shed/tub/{}/remind", id.0),
            Self::Reminders => f.write_str("#/shed/reminders"),
            Self::Desk => f.write_str("#/desk"),
            Self::Foods => f.write_str("#/desk/foods"),
            Self::NewFood => f.write_str("#/desk/foods/new"),
            Self::Food(id) => write!(f, "#/desk/foods/{}", id.0),
            Self::TypicalFood(food) => write!(f, "#/desk/foods/typical/{}", food.key()),
            Self::Copies => f.write_str("#/desk/copies"),
            Self::Sources => f.write_str("#/desk/sources"),
            Self::Settings => f.write_str("#/desk/settings"),
        }
    }
}
