//! Every screen has an address behind `#`, so that a killed phone returns to its form.
//!
//! [`Route::parse`] and `Display` are inverse. An address that is not understood opens the round, never an error.

mod place;
mod show;
mod step;
#[cfg(test)]
mod tests;

pub use step::Step;

use tussock_core::animal::{AnimalId, FoodId, GroupId, LotId, NetId, PaddockId, TubId};
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
    /// Grass: today's window, who is out.
    Paddock,
    /// Grass for one animal or group.
    PaddockOf(AnimalId),
    /// Where the yard lies.
    GrassPlace,
    /// How an animal or group goes out to grass.
    Grazing(AnimalId),
    /// The window of the week.
    GrassWeek,
    /// The year of grass.
    Season,
    /// What the model of intake is made of.
    GrassModel,
    /// Grasses and what is dangerous at grass.
    Plants,
    /// A new paddock.
    NewField,
    /// A paddock: what grows there and what was seen today.
    Field(PaddockId),
    /// What a paddock is: its form.
    FieldForm(PaddockId),
    /// Thirty heights of a paddock, one after another.
    Readings(PaddockId),
    /// Today's strip of a paddock.
    Strip(PaddockId),
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
            ["paddock"] => Self::Paddock,
            ["paddock", "place"] => Self::GrassPlace,
            ["paddock", "week"] => Self::GrassWeek,
            ["paddock", "season"] => Self::Season,
            ["paddock", "model"] => Self::GrassModel,
            ["paddock", "plants"] => Self::Plants,
            ["paddock", "of", id] => Self::PaddockOf(animal(id)?),
            ["paddock", "grazing", id] => Self::Grazing(animal(id)?),
            ["paddock", "field", "new"] => Self::NewField,
            ["paddock", "field", id] => Self::Field(PaddockId(id_text(id)?)),
            ["paddock", "field", id, "form"] => Self::FieldForm(PaddockId(id_text(id)?)),
            ["paddock", "field", id, "readings"] => Self::Readings(PaddockId(id_text(id)?)),
            ["paddock", "field", id, "strip"] => Self::Strip(PaddockId(id_text(id)?)),
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
