//! A paddock: its name and area, what grows there, what was seen there, and a new one.

use crate::acts::{Act, New};
use crate::forms::vet::read_day;
use crate::views::fields::{kept, plants_of};
use tussock_core::animal::PaddockId;
use tussock_core::graze::plants::PlantId;
use tussock_core::graze::sward::SwardKind;
use tussock_core::graze::sward::published::AREA;
use tussock_core::log::bodies::PaddockV2;
use tussock_core::log::bodies::base::SquareMetres;
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{ParseError, area};
use tussock_core::units::{Area, LocalDate};

/// The kinds of sward with the words that stand in a draft.
pub const KINDS: [(SwardKind, &str); 6] = [
    (SwardKind::MixedWithRyegrass, "mixed"),
    (SwardKind::Ryegrass, "ryegrass"),
    (SwardKind::Meadow, "meadow"),
    (SwardKind::Fescue, "fescue"),
    (SwardKind::WarmSeason, "warm"),
    (SwardKind::CloverRich, "clover"),
];
/// Whether it lies in shade, with the words that stand in a draft.
pub const SHADES: [(bool, &str); 2] = [(false, "open"), (true, "shade")];

/// A field of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// Its name.
    Name,
    /// Its area.
    Area,
    /// Since when it rests.
    Rest,
    /// Remarks.
    Note,
}

impl Field {
    /// All, in the order of the form.
    pub const ALL: [Self; 4] = [Self::Name, Self::Area, Self::Rest, Self::Note];

    /// Its name in a draft.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Area => "area",
            Self::Rest => "rest",
            Self::Note => "note",
        }
    }
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// It has no name.
    NoName,
    /// The area cannot be read, or is none that is believed.
    Area(ParseError),
    /// That is no day.
    NoDay,
    /// That day has not come.
    DayToCome,
    /// It cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it stands under; `None` for one of the whole form.
    pub const fn field(&self) -> Option<Field> {
        match self {
            Self::NoName => Some(Field::Name),
            Self::Area(_) => Some(Field::Area),
            Self::NoDay | Self::DayToCome => Some(Field::Rest),
            Self::Log(_) => None,
        }
    }
}

/// What is typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Typed {
    /// Its name.
    pub name: String,
    /// Its area; may be left out.
    pub area: String,
    /// What grows there; `None` where nobody says.
    pub kind: Option<SwardKind>,
    /// Whether it lies in shade in the morning; `None` where nobody says.
    pub shade: Option<bool>,
    /// Since when it rests; empty while it is grazed.
    pub rest: String,
    /// The plants that were seen there.
    pub plants: Vec<PlantId>,
    /// Remarks.
    pub note: String,
}

impl Typed {
    /// What is stored, as the form shows it.
    pub fn of(body: &PaddockV2) -> Self {
        Self {
            name: body.name.as_str().to_owned(),
            area: body
                .area_m2
                .map_or_else(String::new, |area| format!("{} m2", area.get())),
            kind: body.kind,
            shade: body.shade,
            rest: body
                .rest_from
                .map_or_else(String::new, |day| day.to_string()),
            plants: plants_of(body),
            note: body.note.clone().unwrap_or_default(),
        }
    }

    /// The text of a field.
    pub fn text(&self, field: Field) -> &str {
        match field {
            Field::Name => &self.name,
            Field::Area => &self.area,
            Field::Rest => &self.rest,
            Field::Note => &self.note,
        }
    }

    /// The area that is understood; `None` where none is typed.
    ///
    /// # Errors
    /// What is no area, or none that is believed.
    pub fn area(&self) -> Result<Option<Area>, ParseError> {
        if self.area.trim().is_empty() {
            return Ok(None);
        }
        let read = area(&self.area)?;
        AREA.check(read.to_sq_m())?;
        Ok(Some(read))
    }

    fn rest(&self, today: LocalDate) -> Result<Option<LocalDate>, Wrong> {
        if self.rest.trim().is_empty() {
            return Ok(None);
        }
        match read_day(&self.rest) {
            None => Err(Wrong::NoDay),
            Some(day) if today < day => Err(Wrong::DayToCome),
            Some(day) => Ok(Some(day)),
        }
    }

    /// The body of the record, laid over what it said before: its strip and plants of a later release stay.
    ///
    /// # Errors
    /// Every field that is wrong.
    pub fn body(
        &self,
        before: Option<&PaddockV2>,
        today: LocalDate,
    ) -> Result<PaddockV2, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let name = self.name.trim();
        let name = if name.is_empty() {
            wrong.push(Wrong::NoName);
            None
        } else {
            noted(Name::new(name).map_err(Wrong::Log), &mut wrong)
        };
        let area_m2 = self.area().map_err(Wrong::Area).and_then(stored);
        let area_m2 = noted(area_m2, &mut wrong).flatten();
        let rest_from = noted(self.rest(today), &mut wrong).flatten();
        let mut plants = Vec::new();
        for plant in &self.plants {
            plants.extend(noted(
                Name::new(plant.key()).map_err(Wrong::Log),
                &mut wrong,
            ));
        }
        plants.extend(before.map(kept).unwrap_or_default());
        let note = self.note.trim();
        match name {
            Some(name) if wrong.is_empty() => Ok(PaddockV2 {
                area_m2,
                shade: self.shade,
                kind: self.kind,
                plants,
                strip: before.and_then(|before| before.strip.clone()),
                rest_from,
                note: (!note.is_empty()).then(|| note.to_owned()),
                ..PaddockV2::named(name)
            }),
            _ => Err(wrong),
        }
    }

    /// The act that writes it: a new paddock, or a new version of `before`.
    ///
    /// # Errors
    /// Every field that is wrong.
    pub fn act(
        &self,
        id: &PaddockId,
        before: Option<&PaddockV2>,
        today: LocalDate,
    ) -> Result<Act, Vec<Wrong>> {
        let body = Body::Paddock(self.body(before, today)?);
        let record = RecordId(id.0.clone());
        Ok(if before.is_some() {
            Act::Change {
                id: record,
                body,
                at: None,
            }
        } else {
            Act::Add(New {
                id: record,
                subject: Subject::paddock(id),
                at: None,
                known: Known::Seen,
                body,
            })
        })
    }
}

/// The area as it is stored, to the square metre.
fn stored(area: Option<Area>) -> Result<Option<SquareMetres>, Wrong> {
    let Some(area) = area else { return Ok(None) };
    #[allow(
        clippy::cast_possible_truncation,
        reason = "believed areas are far below 2^53"
    )]
    let whole = area.to_sq_m().round() as i64;
    SquareMetres::new(whole).map(Some).map_err(Wrong::Log)
}

fn noted<T>(read: Result<T, Wrong>, wrong: &mut Vec<Wrong>) -> Option<T> {
    read.map_err(|error| wrong.push(error)).ok()
}

/// Plants as they stand in a draft.
pub fn plants_text(plants: &[PlantId]) -> String {
    let keys: Vec<&str> = plants.iter().map(|plant| plant.key()).collect();
    keys.join(" ")
}

/// The plants of a draft.
pub fn plants_in(text: &str) -> Vec<PlantId> {
    text.split_whitespace()
        .filter_map(PlantId::from_key)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn today() -> LocalDate {
        "2026-05-05".parse().unwrap()
    }

    fn typed() -> Typed {
        Typed {
            name: " Top field ".into(),
            area: "0,8 ha".into(),
            kind: Some(SwardKind::Meadow),
            shade: Some(false),
            rest: "2026-05-01".into(),
            plants: vec![PlantId::Ragwort, PlantId::Sycamore],
            note: String::new(),
        }
    }

    #[test]
    fn what_is_typed_is_stored_and_comes_back() {
        let body = typed().body(None, today()).unwrap();
        assert_eq!(body.name.as_str(), "Top field");
        assert_eq!(body.area_m2.unwrap().get(), 8000);
        let back = Typed::of(&body);
        assert_eq!(back.area, "8000 m2");
        assert_eq!(back.body(None, today()).unwrap(), body);
        assert_eq!(plants_in(&plants_text(&back.plants)), back.plants);
    }

    #[test]
    fn what_a_later_release_saw_stays() {
        let mut before = typed().body(None, today()).unwrap();
        before.plants.push(Name::new("moon_grass").unwrap());
        let none = Typed {
            plants: Vec::new(),
            ..Typed::of(&before)
        };
        let after = none.body(Some(&before), today()).unwrap();
        assert_eq!(after.plants, [Name::new("moon_grass").unwrap()]);
    }

    #[test]
    fn what_is_wrong_stands_under_its_field() {
        let bad = Typed {
            name: " ".into(),
            area: "big".into(),
            rest: "2027-01-01".into(),
            ..typed()
        };
        let wrong = bad.body(None, today()).unwrap_err();
        let fields: Vec<_> = wrong.iter().map(Wrong::field).collect();
        assert_eq!(
            fields,
            [Some(Field::Name), Some(Field::Area), Some(Field::Rest)]
        );
        let no_day = Typed {
            rest: "soon".into(),
            ..typed()
        };
        assert_eq!(no_day.body(None, today()).unwrap_err(), [Wrong::NoDay]);
        let small = Typed {
            area: "0.2 m2".into(),
            ..typed()
        };
        assert!(matches!(
            small.body(None, today()).unwrap_err()[..],
            [Wrong::Area(ParseError::OutOfRange(_))]
        ));
    }
}
