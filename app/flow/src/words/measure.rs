//! The labels of weighing and measuring.

use super::Said;
use tussock_core::animal::Kind;
use tussock_core::assess::{
    Change, Doubt, DoubtAnswer, Earlier, Jump, LengthKind, Measure, NeckLine, TapeTool,
};

/// What weighing and measuring an animal says.
pub trait MeasureWords {
    /// The label of a reading: "Heart girth", "Heart girth, second time".
    fn take(&self, measure: Option<Measure>, place: usize) -> String;
    /// How a measure is taken, under its field.
    fn how_to_take(&self, measure: Measure, kind: LengthKind) -> String;
    /// Takes a measure once more.
    fn once_more(&self, measure: Option<Measure>) -> &'static str;
    /// Opens the measures behind the girths.
    fn more_measures(&self) -> &'static str;
    /// Which body length was taken.
    fn which_length(&self) -> &'static str;
    /// With what it was measured.
    fn which_tool(&self) -> &'static str;
    /// A tape, or string and ruler.
    fn tool(&self, tool: TapeTool) -> &'static str;
    /// What it stood on.
    fn stood_on(&self) -> &'static str;
    /// A scale for animals, as a key.
    fn animal_scale(&self) -> &'static str;
    /// A weighbridge for vehicles, as a key.
    fn vehicle_weighbridge(&self) -> &'static str;
    /// A field: the vehicle with the animal.
    fn with_animal(&self) -> &'static str;
    /// A field: the vehicle without it.
    fn without_animal(&self) -> &'static str;
    /// How a vehicle is weighed, under its field.
    fn with_animal_hint(&self) -> &'static str;
    /// The vehicle is no heavier with the animal.
    fn no_difference(&self) -> &'static str;
    /// Opens the pictures.
    fn where_the_tape_goes(&self) -> &'static str;
    /// Opens the measures over time.
    fn measures_so_far(&self) -> &'static str;
    /// A weight with its band while it is typed: "About 245 kg, give or take 25 kg".
    fn about(&self, kg: &str, either_way: &str) -> String;
    /// What a question asks.
    fn doubt(&self, doubt: &Doubt) -> Said;
    /// The key of an answer.
    fn doubt_answer(&self, doubt: &Doubt, answer: DoubtAnswer) -> &'static str;
    /// The questions must be answered before it is saved.
    fn answer_first(&self) -> &'static str;
    /// What two or more readings confirm.
    fn fell(&self, jump: &Jump, kind: Kind) -> Said;
    /// The list of what changed.
    fn since_last_time(&self) -> &'static str;
    /// A change as a figure: "down 1.5 cm".
    fn changed(&self, change: &Change) -> String;
    /// Whether a change is more than noise, and since when.
    fn change_means(&self, change: &Change) -> String;
    /// The neck beside the height.
    fn neck_to_height(&self, ratio: f64, line: NeckLine) -> Said;
    /// The sentence of the measures over time: of the belly, when it is known.
    fn measures_of(&self, name: &str, belly: Option<&Change>) -> String;
    /// The heads of the table of measures, the day first.
    fn measure_heads(&self) -> Vec<&'static str>;
    /// A cell of it: a measure with the number of its readings.
    fn measured(&self, earlier: &Earlier) -> String;
    /// A cell of it: nothing was taken.
    fn not_taken(&self) -> &'static str;
    /// Neck divided by height, as a figure.
    fn ratio(&self, ratio: f64) -> String;
    /// What the measures are good for.
    fn measures_why(&self) -> Said;
}
