//! The bodies: one file a kind, each in its latest version.

use super::envelope::Record;
use super::error::{Allowed, LogError, Path};
use super::kind::{Kind, LADDER, climb};
use super::stored::Stored;
use serde_json::{Map, Value};
use std::borrow::Cow;

mod animal;
mod appetite;
pub mod base;
mod condition;
mod crest;
mod day_relaid;
mod delivery;
mod feeding;
mod food;
mod grazing;
mod group;
mod health;
mod issue;
mod job;
mod left_over;
mod look_over;
mod lot;
mod net;
mod net_entry;
mod net_timed;
mod paddock;
mod person;
mod photo;
mod plan;
mod ration;
mod reported;
mod season_note;
mod soak_step;
mod sward;
mod turnout;
mod vehicle;
mod vet_word;
mod visits;
mod vitals;
mod weather;
mod weight;
mod work_session;
mod yard;
mod yard_visit;

pub use animal::AnimalV2;
pub(crate) use animal::animal_with_stage;
pub use appetite::{AppetiteV1, CelsiusTenths, PerMinute};
pub use condition::{Condition, ConditionTakenV1, ConditionV1, SiteScoreV1};
pub use crest::{CrestPoints, CrestV1};
pub use day_relaid::DayRelaidV1;
pub use delivery::{
    BaleTenths, DeliveryV1, HeatV1, HeldV1, LotCountV1, LotGrams, LotWeight, RodV1, StackTenths,
};
pub use feeding::{FeedingV1, HayShareV1, PartPercent};
pub(crate) use food::food_with_class;
pub use food::{FoodV2, LabelBasis, LabelLineV2};
pub use grazing::{GrazingMinutes, GrazingV1};
pub use group::GroupV1;
pub use job::{JobAnswer, JobV1};
pub use left_over::{LeftAmount, LeftOverV1, Quarters};
pub use look_over::LookOverV1;
pub use lot::{LabReportV1, LabValueV1, LotV1, PriceV1};
pub use net::{NetV1, TubV1};
pub use net_entry::{NetFilledV1, NetHungV1};
pub use net_timed::NetTimedV1;
pub(crate) use paddock::paddock_with_sward;
pub use paddock::{GroundMillimetres, PaddockV2, StripV2};
pub use person::{PersonV1, Role};
pub use photo::{Dated, PhotoV1, PictureBytes, Pixels, Pose};
pub use plan::{AmountV1, GapMinutes, InputV1, NetShareV1, PlanV1, SugarSaid};
pub use ration::{DecidedAs, RationFoodV1, RationV1};
pub use season_note::SeasonNoteV1;
pub use soak_step::{RecipeV1, SoakMinutes, SoakStart, SoakStep, SoakStepV1, soak_times};
pub use sward::{PlateV1, SwardV1};
pub use turnout::TurnoutV1;
pub use vehicle::{VehicleGrams, VehicleWeight};
pub use vet_word::VetWordV1;
pub use visits::VisitsV1;
pub use vitals::VitalsV1;
pub(crate) use weather::weather_with_night;
pub use weather::{Chip, WeatherV2};
pub use weight::{ReadingV1, ScaleTakeV1, ScaleV1, TakeV1, TapeV1, WeightV1};
pub use work_session::{GaitSeconds, WorkBeats, WorkSessionV1};
pub(crate) use yard::yard_with_regions;
pub use yard::{PlaceV2, YardV2};
pub use yard_visit::{SharedFact, YardVisitV1};

macro_rules! bodies {
    ($($variant:ident($type:ty)),* $(,)?) => {
        /// The content of a record.
        #[derive(Clone, Debug, PartialEq)]
        pub enum Body {
            $(#[doc = concat!("See [`", stringify!($type), "`].")] $variant($type),)*
            /// Of a kind or a version of a later release: kept as it is, not read.
            Unread,
        }

        impl Body {
            /// Its kind; `None` for a body that is not read.
            pub const fn kind(&self) -> Option<Kind> {
                match self {
                    $(Self::$variant(_) => Some(Kind::$variant),)*
                    Self::Unread => None,
                }
            }

            /// The body as it is stored, in the latest version of its kind; `None` for one that is not read.
            pub fn to_value(&self) -> Option<Value> {
                match self {
                    $(Self::$variant(body) => body.write(),)*
                    Self::Unread => None,
                }
            }

            fn read_latest(kind: &Kind, value: &Value, path: &Path<'_>) -> Result<Self, LogError> {
                match kind {
                    $(Kind::$variant => Stored::read(Some(value), path).map(Self::$variant),)*
                    Kind::Other(_) => Ok(Self::Unread),
                }
            }
        }
    };
}

bodies! {
    Yard(YardV2),
    Person(PersonV1),
    Animal(AnimalV2),
    Group(GroupV1),
    Lot(LotV1),
    LotCount(LotCountV1),
    Paddock(PaddockV2),
    Food(FoodV2),
    Net(NetV1),
    Tub(TubV1),
    Visits(VisitsV1),
    Feeding(FeedingV1),
    Weight(WeightV1),
    Condition(ConditionV1),
    Crest(CrestV1),
    Photo(PhotoV1),
    LookOver(LookOverV1),
    WorkSession(WorkSessionV1),
    Appetite(AppetiteV1),
    Vitals(VitalsV1),
    VetWord(VetWordV1),
    NetFilled(NetFilledV1),
    NetHung(NetHungV1),
    NetTimed(NetTimedV1),
    SoakStep(SoakStepV1),
    LeftOver(LeftOverV1),
    Job(JobV1),
    Weather(WeatherV2),
    Plan(PlanV1),
    Ration(RationV1),
    DayRelaid(DayRelaidV1),
    YardVisit(YardVisitV1),
    Sward(SwardV1),
    Grazing(GrazingV1),
    Turnout(TurnoutV1),
    SeasonNote(SeasonNoteV1),
}

impl Body {
    /// The job that the record does, when it carries one: a tick elsewhere is known by it.
    pub const fn job(&self) -> Option<&base::JobKey> {
        match self {
            Self::Weight(body) => body.job.as_ref(),
            Self::Condition(body) => body.job.as_ref(),
            Self::Crest(body) => body.job.as_ref(),
            Self::LookOver(body) => body.job.as_ref(),
            Self::WorkSession(body) => body.job.as_ref(),
            Self::NetFilled(body) => body.job.as_ref(),
            Self::NetHung(body) => body.job.as_ref(),
            Self::SoakStep(body) => body.job.as_ref(),
            Self::LeftOver(body) => body.job.as_ref(),
            Self::Plan(body) => body.job.as_ref(),
            Self::Ration(body) => body.job.as_ref(),
            Self::Turnout(body) => body.job.as_ref(),
            Self::Job(body) => Some(&body.job),
            Self::Yard(_)
            | Self::Person(_)
            | Self::Animal(_)
            | Self::Group(_)
            | Self::Lot(_)
            | Self::LotCount(_)
            | Self::Paddock(_)
            | Self::Food(_)
            | Self::Net(_)
            | Self::NetTimed(_)
            | Self::Tub(_)
            | Self::Visits(_)
            | Self::Feeding(_)
            | Self::VetWord(_)
            | Self::Photo(_)
            | Self::Appetite(_)
            | Self::Vitals(_)
            | Self::Weather(_)
            | Self::DayRelaid(_)
            | Self::YardVisit(_)
            | Self::Sward(_)
            | Self::Grazing(_)
            | Self::SeasonNote(_)
            | Self::Unread => None,
        }
    }

    /// The body of a record, brought up to the latest version of its kind.
    ///
    /// Errors name the record, the field under `body`, the value and what is allowed.
    pub fn read(record: &Record) -> Result<Self, LogError> {
        let Some(latest) = record.kind.latest() else {
            return Ok(Self::Unread);
        };
        let climbs = LADDER
            .iter()
            .any(|rung| rung.kind == record.kind && rung.from == record.v);
        let (version, body) = if climbs {
            let (version, body) = climb(LADDER, &record.kind, record.v, record.body.clone());
            (version, Cow::Owned(body))
        } else {
            (record.v, Cow::Borrowed(&record.body))
        };
        if version > latest {
            return Ok(Self::Unread);
        }
        let root = Path::Record(record.id.0.as_str());
        Self::read_latest(&record.kind, &body, &root.key("body"))
    }

    /// This body laid over that of a record: what this release does not know of the record's body stays.
    pub(crate) fn over(&self, record: &Record) -> Result<Value, LogError> {
        let root = Path::Record(record.id.0.as_str());
        let understood = Self::read(record)?;
        let (Some(new), Some(known)) = (self.to_value(), understood.to_value()) else {
            let latest = record.kind.latest().unwrap_or_default();
            return Err(root.key("v").refuse(
                &record.v.to_string(),
                Allowed::Range {
                    min: latest.min(1),
                    max: latest,
                },
            ));
        };
        if self.kind().as_ref() != Some(&record.kind) {
            return Err(LogError::OtherKind {
                place: root.key("kind").place(),
                kind: record.kind.word().to_owned(),
            });
        }
        let (_, old) = climb(LADDER, &record.kind, record.v, record.body.clone());
        Ok(laid_over(old, &known, new))
    }
}

/// Adds to `new` what stands in `old` and was not understood: keys that are not in `known`, also inside objects and
/// inside those elements of lists that the new list still holds.
fn laid_over(old: Value, known: &Value, new: Value) -> Value {
    match (old, known, new) {
        (Value::Object(old), Value::Object(known), Value::Object(new)) => {
            Value::Object(objects(old, known, new))
        }
        (Value::Array(old), Value::Array(known), Value::Array(new)) if old.len() == known.len() => {
            let mut old: Vec<(Value, &Value)> = old.into_iter().zip(known).collect();
            Value::Array(
                new.into_iter()
                    .map(
                        |item| match old.iter().position(|(_, known)| **known == item) {
                            Some(found) => old.swap_remove(found).0,
                            None => item,
                        },
                    )
                    .collect(),
            )
        }
        (_, _, new) => new,
    }
}

fn objects(
    old: Map<String, Value>,
    known: &Map<String, Value>,
    mut new: Map<String, Value>,
) -> Map<String, Value> {
    for (key, value) in old {
        match (known.get(&key), new.remove(&key)) {
            (None, None) => {
                new.insert(key, value);
            }
            (None, Some(fresh)) => {
                new.insert(key, fresh);
            }
            (Some(known), Some(fresh)) => {
                new.insert(key, laid_over(value, known, fresh));
            }
            // Understood, and no longer there.
            (Some(_), None) => {}
        }
    }
    new
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn what_is_not_understood_survives_an_edit() {
        let old = json!({
            "name": "Moss", "later": 1, "born": "2012",
            "health": {"teeth": "good", "later": 2},
            "members": [{"animal": "a", "later": 3}, {"animal": "b", "later": 4}],
        });
        let known = json!({
            "name": "Moss", "born": "2012",
            "health": {"teeth": "good"},
            "members": [{"animal": "a"}, {"animal": "b"}],
        });
        let new = json!({
            "name": "Mossy",
            "health": {"teeth": "poor"},
            "members": [{"animal": "b"}, {"animal": "c"}],
        });
        assert_eq!(
            laid_over(old, &known, new),
            json!({
                "name": "Mossy", "later": 1,
                "health": {"teeth": "poor", "later": 2},
                "members": [{"animal": "b", "later": 4}, {"animal": "c"}],
            })
        );
    }
}
