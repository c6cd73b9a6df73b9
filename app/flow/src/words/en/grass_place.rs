//! The place of the yard in English.

use super::English;
use super::numbers::up_to;
use crate::forms::grass_place::{Field, Looking, NoFix, Noon, Unread, Wrong};
use crate::words::{GrassPlaceWords, LogWords, UnitWords};
use tussock_core::graze::plants::Region;
use tussock_core::units::show::fixed;

impl GrassPlaceWords for English {
    fn where_the_yard_lies(&self) -> &'static str {
        "Where the yard lies"
    }
    fn place_is_for(&self) -> &'static str {
        "For sunrise and the seasons of grass. It is kept to a hundredth of a degree, about a kilometre, so that it does not \
         say where somebody lives. Both may be left empty."
    }
    fn use_this_phones_place(&self) -> &'static str {
        "Use this phone's place"
    }
    fn looking(&self, looking: Looking) -> Option<&'static str> {
        match looking {
            Looking::NotAsked => None,
            Looking::Now => Some("Looking. Outdoors this takes up to a minute."),
            Looking::Found => {
                Some("Found. The figures below are rounded; nothing is kept until it is saved.")
            }
            Looking::Failed(NoFix::NotHere) => {
                Some("This browser does not know where it is. Type it below, as a map shows it.")
            }
            Looking::Failed(NoFix::Refused) => Some(
                "The phone did not allow it. Type it below, as a map shows it, or allow it in the phone's settings.",
            ),
            Looking::Failed(NoFix::NotFound) => {
                Some("It was not found. Try again outdoors, or type it below, as a map shows it.")
            }
        }
    }
    fn degree_field(&self, field: Field) -> &'static str {
        match field {
            Field::Latitude => "Latitude",
            Field::Longitude => "Longitude",
        }
    }
    fn degree_hint(&self, field: Field) -> &'static str {
        match field {
            Field::Latitude => {
                "North or south of the equator: 51.2, 33.9 S, -33.9 or 51\u{b0} 12' 30\" N."
            }
            Field::Longitude => "East or west of Greenwich: 3.4 W, -3.4, 18.4 E or 3\u{b0} 24' W.",
        }
    }
    fn degree_echo(&self, field: Field, degrees: f64) -> String {
        let shown = fixed(degrees.abs(), 2);
        let on_the_line = shown.chars().all(|c| c == '0' || c == '.');
        let side = match (field, degrees < 0.0) {
            (Field::Latitude, _) if on_the_line => return "On the equator".to_owned(),
            (Field::Longitude, _) if on_the_line => return "On the line of Greenwich".to_owned(),
            (Field::Latitude, false) => "north of the equator: its spring is in March to May",
            (Field::Latitude, true) => {
                "south of the equator: its spring is in September to November"
            }
            (Field::Longitude, false) => "east of Greenwich",
            (Field::Longitude, true) => "west of Greenwich",
        };
        format!("{shown} degrees {side}")
    }
    fn place_wrong(&self, wrong: &Wrong) -> String {
        let unread = match wrong {
            Wrong::Log(error) => return self.log_error(error),
            Wrong::Degrees(unread) => unread,
        };
        let name = self.degree_field(unread.field());
        match unread {
            Unread::Empty(_) => {
                format!("Type the {} too, or leave both empty", name.to_lowercase())
            }
            Unread::NotDegrees(field, typed) => {
                let like = match field {
                    Field::Latitude => "51.2 N",
                    Field::Longitude => "3.4 W",
                };
                format!(
                    "\"{typed}\" is not a {}: type degrees, like {like}",
                    name.to_lowercase()
                )
            }
            Unread::WrongSide(Field::Latitude, side) => {
                format!("A latitude is north or south: {side} belongs to the longitude")
            }
            Unread::WrongSide(Field::Longitude, side) => {
                format!("A longitude is east or west: {side} belongs to the latitude")
            }
            Unread::Sixty(_, value) => format!(
                "{} minutes or seconds are too many: they go up to 59",
                up_to(*value, 2)
            ),
            Unread::OutOfRange(_, error) => format!(
                "{name} of {} is not on the earth: type {} to {} degrees",
                up_to(error.value, 2),
                up_to(error.bounds.min, 0),
                up_to(error.bounds.max, 0)
            ),
        }
    }
    fn noon_there(&self, noon: Noon) -> String {
        let at = self.time(noon.at);
        if noon.fits {
            format!("By this clock the sun stands highest there at {at} today")
        } else {
            format!(
                "By this clock the sun would stand highest there at {at}: look at east and west, and at the clock"
            )
        }
    }
    fn clock_asked(&self) -> &'static str {
        "The clock of this place"
    }
    fn clock_is(&self, zone: &str) -> String {
        format!(
            "Its clock is this phone's: {zone}. Where the yard's clock is another, save this there."
        )
    }
    fn clock_choice(&self, zone: &str, of_the_phone: bool) -> String {
        if of_the_phone {
            format!("{zone}, this phone's now")
        } else {
            format!("{zone}, as written down")
        }
    }
    fn regions_asked(&self) -> &'static str {
        "Whose plants and hazards"
    }
    fn regions_hint(&self) -> &'static str {
        "Tick every region that fits. What is dangerous at grass is shown for these."
    }
    fn region_of_hazards(&self, region: Region) -> &'static str {
        match region {
            Region::BritishIsles => "Britain and Ireland",
            Region::Europe => "The rest of Europe",
            Region::NorthAmerica => "North America",
            Region::Australia => "Australia",
            Region::NewZealand => "New Zealand",
            Region::SouthernAfrica => "Southern Africa",
            Region::Tropics => "The tropics",
        }
    }
    fn save_place(&self) -> &'static str {
        "Save the place"
    }
    fn skip_place(&self) -> &'static str {
        "Skip: the window is told by the clock"
    }
}
