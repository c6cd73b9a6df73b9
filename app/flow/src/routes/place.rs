//! The place that an address belongs to.

use super::{Place, Route};

impl Route {
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
            Self::Paddock
            | Self::PaddockOf(_)
            | Self::GrassPlace
            | Self::Grazing(_)
            | Self::GrassWeek
            | Self::Season
            | Self::GrassModel
            | Self::Plants
            | Self::NewField
            | Self::Field(_)
            | Self::FieldForm(_)
            | Self::Readings(_)
            | Self::Strip(_) => Some(Place::Paddock),
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
