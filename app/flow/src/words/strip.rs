//! Strips behind a fence and tracks around a field.

use crate::forms::strip::{Field, Wrong};
use crate::views::fields::{Against, NoStrip, Out, StripSeen, StripTold};
use crate::words::Said;
use tussock_core::graze::strip::{Fences, StripAgainst, StripLimit, Track, TrackFinding};
use tussock_core::limits::Ends;

/// What strips and tracks say.
pub trait StripWords {
    /// What stands against a strip.
    fn strip_against(&self, against: &StripAgainst) -> Said;
    /// The order where something stops it.
    fn strip_stopped(&self, against: &Against) -> &'static str;
    /// What the reckoning cannot do, or asks of the person.
    fn strip_limit(&self, limit: StripLimit) -> Said;
    /// What is to be known of a track.
    fn track_finding(&self, finding: &TrackFinding) -> Said;
    /// Why there is no strip.
    fn no_strip(&self, why: &NoStrip) -> String;
    /// A strip is no leave to graze while grass is closed.
    fn strip_while_open(&self) -> Said;
    /// The sentence of the screen.
    fn strip_sentence(&self, seen: &StripSeen) -> String;
    /// How many paces: "about 12 paces".
    fn paces(&self, paces: Ends<f64>) -> String;
    /// A field.
    fn strip_field(&self, field: Field) -> &'static str;
    /// How to fill it.
    fn strip_field_hint(&self, field: Field) -> &'static str;
    /// What is wrong.
    fn strip_wrong(&self, wrong: &Wrong) -> String;
    /// How many days, as a question.
    fn strip_days_asked(&self) -> &'static str;
    /// An answer.
    fn strip_days(&self, days: u32) -> String;
    /// A back fence, as a question.
    fn back_fence_asked(&self) -> &'static str;
    /// An answer.
    fn back_fence(&self, stands: bool) -> &'static str;
    /// For whom, as a question.
    fn strip_whom_asked(&self) -> &'static str;
    /// One that goes out and has no grass in its plan, by its name.
    fn left_out(&self, out: &Out) -> String;
    /// What the plan of one that goes out says, under its name.
    fn asks_of_strip(&self, out: &Out) -> String;
    /// The picture as one sentence.
    fn strip_picture(&self, fences: &Fences) -> String;
    /// The lead fence in the picture: "lead fence 40 paces, 30 m".
    fn lead_fence(&self, fences: &Fences) -> String;
    /// The move in the picture: "12 paces on".
    fn fence_onward(&self, fences: &Fences) -> String;
    /// The back fence in the picture; `None` where none stands.
    fn back_fence_at(&self, fences: &Fences) -> Option<String>;
    /// The table of the picture: heads, then rows.
    fn strip_table(&self, told: &StripTold) -> Vec<Vec<String>>;
    /// Its caption.
    fn strip_table_caption(&self) -> &'static str;
    /// Its heads.
    fn strip_table_heads(&self) -> [&'static str; 2];
    /// What the animals find in it, with both ends.
    fn strip_finds(&self, told: &StripTold) -> String;
    /// What else is to be minded of this strip.
    fn strip_minds(&self, told: &StripTold) -> Vec<Said>;
    /// Nobody knows whether it is the flush.
    fn flush_not_known(&self) -> &'static str;
    /// The head over the limits.
    fn limits_head(&self) -> &'static str;
    /// The action.
    fn save_strip(&self) -> &'static str;
    /// The head over the track.
    fn track_head(&self) -> &'static str;
    /// What a track is.
    fn track_is(&self) -> &'static str;
    /// The track in rows: what and how much.
    fn track_rows(&self, track: &Track) -> Vec<[String; 2]>;
    /// Says how somebody goes out.
    fn say_who_goes_out(&self) -> &'static str;
}
