//! A paddock in English.

use super::English;
use super::fields::capital;
use super::numbers::{between, up_to};
use crate::forms::field::{Field, Wrong};
use crate::views::fields::{Danger, FieldRow, Looked, OnField, Out};
use crate::words::{FieldWords, LogWords, SwardWords, UnitWords};
use tussock_core::graze::sward::SwardKind;
use tussock_core::units::parse::LengthUnit;
use tussock_core::units::{Area, Length, LocalDate};

impl FieldWords for English {
    fn land(&self, area: Area) -> String {
        format!(
            "{} m², {} ha, {} acres",
            up_to(area.to_sq_m(), 0),
            up_to(area.to_hectares(), 2),
            up_to(area.to_acres(), 2)
        )
    }
    fn on_ground(&self, length: Length) -> String {
        match self.shown.length {
            LengthUnit::Cm => format!("{} m", up_to(length.to_m(), 1)),
            // A foot is twelve inches.
            LengthUnit::Inch => format!("{} ft", up_to(length.to_inches() / 12.0, 0)),
        }
    }
    fn days_ago(&self, day: LocalDate, today: LocalDate) -> String {
        match (today - day).num_days() {
            ..=0 => "today".to_owned(),
            1 => "yesterday".to_owned(),
            days => format!("{days} days ago"),
        }
    }
    fn field_row(&self, row: &FieldRow, today: LocalDate) -> String {
        let seen = match &row.looked {
            Some(looked) => format!(
                "{}, {}",
                self.seen_by(&looked.by),
                self.days_ago(looked.on, today)
            ),
            None => "Nobody has looked".to_owned(),
        };
        match row.resting {
            Some(since) => format!("{seen}; {}", self.rests_since(since).to_lowercase()),
            None => seen,
        }
    }
    fn new_field(&self) -> &'static str {
        "A paddock by its name"
    }
    fn no_such_field(&self) -> &'static str {
        "This paddock is not here"
    }
    fn paddock_field(&self, field: Field) -> &'static str {
        match field {
            Field::Name => "Name",
            Field::Area => "Area",
            Field::Rest => "Rests since",
            Field::Note => "Remarks",
        }
    }
    fn paddock_field_hint(&self, field: Field) -> &'static str {
        match field {
            Field::Name => "As it is called, for example Top field.",
            Field::Area => {
                "In m2, ha or acres, for example 0.8 ha. May be left out; then days of grass are not known."
            }
            Field::Rest => "Like 2026-05-31. Empty while it is grazed.",
            Field::Note => "What somebody else must know of it. May be left out.",
        }
    }
    fn paddock_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoName => "Give it a name".to_owned(),
            Wrong::Area(error) => self.parse_error(error),
            Wrong::NoDay => "Type the day like 2026-05-31".to_owned(),
            Wrong::DayToCome => "That day has not come yet".to_owned(),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn sward_kind_asked(&self) -> &'static str {
        "What grows there"
    }
    fn sward_kind_hint(&self) -> &'static str {
        "Where nobody says, mixed pasture with ryegrass is taken."
    }
    fn sward_kind(&self, kind: SwardKind) -> &'static str {
        match kind {
            SwardKind::MixedWithRyegrass => "Mixed, with ryegrass",
            SwardKind::Ryegrass => "Mostly ryegrass",
            SwardKind::Meadow => "Old meadow",
            SwardKind::Fescue => "Mostly fescue",
            SwardKind::WarmSeason => "Warm-season grasses",
            SwardKind::CloverRich => "Much clover",
        }
    }
    fn shade_asked(&self) -> &'static str {
        "Sun in the morning"
    }
    fn shade(&self, shade: bool) -> &'static str {
        if shade {
            "In shade most of the morning"
        } else {
            "Open to the sun"
        }
    }
    fn plants_asked(&self) -> &'static str {
        "Seen there"
    }
    fn plants_hint(&self) -> &'static str {
        "Grasses you know by sight, and what harms. Those of your regions come first."
    }
    fn save_field(&self) -> &'static str {
        "Save the paddock"
    }
    fn remove_field(&self) -> &'static str {
        "Take this paddock away"
    }
    fn field_sentence(&self, on: &OnField) -> String {
        match &on.look.judged {
            Some(looked) if on.looked_today() => {
                format!("{}, seen today", self.seen_by(&looked.by))
            }
            Some(_) | None => "Nobody has looked today".to_owned(),
        }
    }
    fn last_looked(&self, looked: &Looked, today: LocalDate) -> String {
        format!(
            "Last: {}, {}",
            super::fields::small(&self.seen_by(&looked.by)),
            self.days_ago(looked.on, today)
        )
    }
    fn bare_is_no_forage(&self) -> &'static str {
        "A bare paddock is not forage: an animal out there has nothing in front of it unless hay hangs"
    }
    fn height_is_no_leave(&self) -> &'static str {
        "Height says how much grows, not how much sugar is in it. When grass is open and for whom stands under grass today."
    }
    fn boot_asked(&self) -> &'static str {
        "Leaf against your boot, today"
    }
    fn seeding_asked(&self) -> &'static str {
        "Seed heads, today"
    }
    fn seeding(&self, seeding: bool) -> &'static str {
        if seeding { "In seed" } else { "No seed heads" }
    }
    fn standing_head(&self) -> &'static str {
        "Grass standing"
    }
    fn kind_stands_in(&self) -> &'static str {
        "Nobody said what grows there: mixed pasture with ryegrass stands in"
    }
    fn area_not_said(&self) -> &'static str {
        "Nobody said how large it is: days of grass are not known"
    }
    fn days_of_grass(&self, on: &OnField) -> String {
        let who = if on.out.is_empty() {
            return "Days of grass are not known: nobody goes out here by a decision".to_owned();
        } else {
            self.who_grazes(&on.out)
        };
        let Some(days) = on.days else {
            return format!("Days of grass for {who} are not known");
        };
        let figure = |days: f64| up_to(days.floor(), 0);
        format!(
            "{} days of grass for {who}, growth not counted",
            between(&figure(days.least), &figure(days.most), "to")
        )
    }
    fn regrowth_head(&self) -> &'static str {
        "Growing back"
    }
    fn rests_since(&self, since: LocalDate) -> String {
        format!("Rests since {}", self.day(since))
    }
    fn dangers_head(&self) -> &'static str {
        "What harms here"
    }
    fn no_dangers(&self, regions_ticked: bool) -> &'static str {
        if regions_ticked {
            "Nothing that harms was seen here yet. Walk the fences, and under the trees."
        } else {
            "Nothing that harms was seen here yet, and no region is ticked."
        }
    }
    fn danger_from(&self, danger: &Danger) -> &'static str {
        if danger.seen {
            "Seen here"
        } else {
            "Nobody saw it here; such grass is known for it"
        }
    }
    fn who_grazes(&self, out: &[Out]) -> String {
        let names: Vec<&str> = out.iter().map(|out| out.name.as_str()).collect();
        self.list(&names)
    }
    fn to_readings(&self) -> &'static str {
        "Read thirty heights"
    }
    fn to_strip(&self) -> &'static str {
        "A strip or a track"
    }
    fn to_field_form(&self) -> &'static str {
        "Change what it is"
    }
    fn to_plants(&self) -> &'static str {
        "Grasses and what harms"
    }
    fn to_grass_today(&self) -> &'static str {
        "Grass today"
    }
}

/// A name with a capital at its head.
pub(super) fn headed(text: &str) -> String {
    capital(text)
}
