//! The labels of the photographs.

use crate::views::photo::{Photo, Room, Space, Trouble};
use tussock_core::log::bodies::Pose;
use tussock_core::units::LocalDate;

/// What the screens of photographs say.
pub trait PhotoWords {
    /// A pose: "From the side".
    fn pose(&self, pose: Pose) -> &'static str;
    /// The cord of the poses, for screen readers.
    fn poses(&self) -> &'static str;
    /// An animal in a pose: "Moss from the side".
    fn posed(&self, name: &str, pose: Pose) -> String;
    /// A picture in words: the animal, the pose and the day.
    fn picture(&self, name: &str, photo: &Photo) -> String;
    /// The sentence of all photographs: so many days since the last.
    fn photographed(&self, name: &str, days: Option<i64>) -> String;
    /// The sentence of a pose: so many photographs.
    fn so_many(&self, name: &str, pose: Pose, count: usize) -> String;
    /// A pose without a photograph.
    fn no_photo(&self) -> &'static str;
    /// The action: with the phone's camera.
    fn take(&self, pose: Pose) -> &'static str;
    /// The quiet link: from the pictures that are there.
    fn choose_picture(&self) -> &'static str;
    /// The quiet link: the last one pale over the view.
    fn take_over_last(&self) -> &'static str;
    /// How to stand.
    fn how_to_stand(&self, pose: Pose) -> &'static str;
    /// The same each time, and what a photograph is worth.
    fn worth_of_photo(&self) -> &'static str;
    /// While it is made small.
    fn making_small(&self) -> &'static str;
    /// Why it was not kept.
    fn photo_trouble(&self, trouble: Trouble) -> &'static str;
    /// Two pictures beside each other.
    fn then_and_now(&self) -> &'static str;
    /// The earlier of two: "Then, 3 Mar 2026".
    fn then(&self, photo: &Photo) -> String;
    /// The later of two.
    fn now(&self, photo: &Photo) -> String;
    /// The quiet link to one before.
    fn earlier(&self) -> &'static str;
    /// The quiet link to one after.
    fn later(&self) -> &'static str;
    /// All of a pose.
    fn all_photos(&self) -> &'static str;
    /// The day of a photograph, and when that is what its file says.
    fn day_of(&self, photo: &Photo) -> String;
    /// Its size: "1280 by 960 pixels, 214 kB".
    fn size_of(&self, photo: &Photo) -> String;
    /// The picture is not on the disk.
    fn picture_not_here(&self) -> &'static str;
    /// The record is not there, or was taken back.
    fn photo_not_here(&self) -> &'static str;
    /// The quiet key.
    fn take_photo_back(&self) -> &'static str;
    /// The field.
    fn taken_on(&self) -> &'static str;
    /// What the field understands.
    fn taken_on_hint(&self) -> &'static str;
    /// It cannot be read, or is still to come.
    fn taken_on_wrong(&self) -> &'static str;
    /// The action.
    fn save_day(&self) -> &'static str;
    /// The heading over the room.
    fn room_heading(&self) -> &'static str;
    /// What all photographs take.
    fn room(&self, room: Room) -> String;
    /// What is left, by what the browser says.
    fn space(&self, space: Option<Space>) -> String;
    /// It is nearly full.
    fn nearly_full(&self) -> &'static str;
    /// The live view, for screen readers.
    fn live_view(&self) -> &'static str;
    /// The sentence over the live view.
    fn lay_over(&self, photo: &Photo, today: LocalDate) -> String;
    /// The last one over the live view, in words.
    fn ghost(&self, name: &str, photo: &Photo) -> String;
    /// The quiet key that hides or shows the last one.
    fn show_ghost(&self, shown: bool) -> &'static str;
    /// The action of the live view.
    fn take_now(&self) -> &'static str;
}
