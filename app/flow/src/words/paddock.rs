//! Grass: when it is open, who is out.

use super::Said;
use crate::forms::turnout::Wrong;
use crate::views::paddock::picture::{DayCord, Label};
use crate::views::paddock::{Goes, Out, Outing, Stands, WeekDay, WhyBy};
use tussock_core::graze::window::Window;
use tussock_core::log::bodies::Chip;
use tussock_core::units::{LocalDate, Span, Zone};

/// What the paddock says.
pub trait PaddockWords {
    /// The place.
    fn paddock(&self) -> &'static str;
    /// The sentence: when grass is open, or what is to be done.
    fn grass_sentence(&self, goes: &Goes, zone: &dyn Zone) -> String;
    /// How it stands, as the word of a tag.
    fn grass_stands(&self, stands: &Stands) -> &'static str;
    /// The line of a tag: when it is open for one of the others.
    fn grass_line(&self, goes: &Goes, zone: &dyn Zone) -> String;
    /// The order of the stop block.
    fn no_grass_today(&self) -> &'static str;
    /// The line under the sentence while it is out: since when, until when and why then.
    fn out_since(&self, out: &Out, zone: &dyn Zone) -> String;
    /// Why it is brought in when it is.
    fn why_by(&self, why: WhyBy) -> &'static str;
    /// What its plan carries; `None` where the plan sets no time.
    fn by_plan(&self, goes: &Goes) -> Option<Said>;
    /// Whose risk sets it.
    fn set_by(&self, name: &str) -> String;
    /// What stands under grass that is open.
    fn no_small_risk(&self) -> &'static str;
    /// The clock is not that of the yard.
    fn clock_of_yard(&self) -> Said;
    /// The head of the chips.
    fn last_night_and_sky(&self) -> &'static str;
    /// What was said of the night and the sky, in one line; `None` while nobody said the night.
    fn weather_line(&self, chips: &[Chip]) -> Option<String>;
    /// Says the weather anew.
    fn change_weather(&self) -> &'static str;
    /// Turning out.
    fn turn_out(&self, name: &str) -> String;
    /// Bringing in.
    fn bring_in(&self, name: &str) -> String;
    /// It went out already.
    fn out_already(&self) -> &'static str;
    /// Saying how it goes out.
    fn say_how_out(&self, name: &str) -> String;
    /// Which paddock.
    fn which_paddock(&self) -> &'static str;
    /// With a muzzle or without.
    fn muzzle_asked(&self) -> &'static str;
    /// Muzzled or not.
    fn muzzled(&self, on: bool) -> &'static str;
    /// The picture of the day, for screen readers.
    fn day_picture(&self, window: &Window, zone: &dyn Zone) -> String;
    /// A label on it.
    fn day_label(&self, label: &Label) -> String;
    /// What its thin line is.
    fn day_sugar(&self) -> &'static str;
    /// The table.
    fn day_table(&self) -> &'static str;
    /// Its columns: what, when.
    fn day_columns(&self) -> [&'static str; 2];
    /// Its rows.
    fn day_rows(&self, window: &Window, cord: &DayCord, zone: &dyn Zone) -> Vec<Vec<String>>;
    /// The words that open the table.
    fn day_numbers(&self) -> &'static str;
    /// The others that go out.
    fn others_out(&self) -> &'static str;
    /// The last turnouts.
    fn last_turnouts(&self) -> &'static str;
    /// There was none yet.
    fn no_turnout_yet(&self) -> &'static str;
    /// The first line of a turnout.
    fn outing(&self, outing: &Outing, today: LocalDate, zone: &dyn Zone) -> String;
    /// What stands at its right.
    fn outing_time(&self, time: Option<Span>) -> String;
    /// Its second line.
    fn outing_second(&self, outing: &Outing) -> String;
    /// It was not out: takes the turnout away.
    fn was_not_out(&self) -> &'static str;
    /// Correcting a time.
    fn correct_out_times(&self) -> &'static str;
    /// The field of going out.
    fn out_at(&self) -> &'static str;
    /// The field of coming in.
    fn in_at(&self) -> &'static str;
    /// What is wrong with a time, a day or a remark.
    fn turnout_wrong(&self, wrong: &Wrong) -> String;
    /// The paddocks.
    fn the_paddocks(&self) -> &'static str;
    /// There is none.
    fn no_paddock_yet(&self) -> &'static str;
    /// Adds one.
    fn add_a_paddock(&self) -> &'static str;
    /// The link to the week.
    fn grass_week(&self) -> &'static str;
    /// The link to the season.
    fn grass_season(&self) -> &'static str;
    /// The link to the plants.
    fn grass_plants(&self) -> &'static str;
    /// The link to how it goes out.
    fn how_it_goes_out(&self) -> &'static str;
    /// The link to the model.
    fn grass_rests_on(&self) -> &'static str;
    /// The link to the place.
    fn where_yard_lies(&self) -> &'static str;
    /// Nobody said where the yard lies.
    fn say_where_yard_lies(&self) -> &'static str;
    /// The sentence of the week.
    fn week_sentence(&self, name: &str) -> String;
    /// The word of a day of it.
    fn week_word(&self, day: &WeekDay) -> &'static str;
    /// Its first line.
    fn week_day(&self, day: &WeekDay, zone: &dyn Zone) -> String;
    /// Its second line.
    fn week_second(&self, day: &WeekDay) -> String;
    /// What the week rests on.
    fn week_why(&self) -> Said;
}
