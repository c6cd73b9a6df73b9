//! The photographs, in English.

use super::English;
use super::numbers::up_to;
use crate::views::photo::{Photo, Room, Space, Trouble};
use crate::words::{BesideWords, PhotoWords, UnitWords};
use tussock_core::log::bodies::{Dated, Pose};
use tussock_core::units::LocalDate;

/// Bytes in a kilobyte, a megabyte and a gigabyte.
const KB: f64 = 1e3;
const MB: f64 = 1e6;
const GB: f64 = 1e9;

/// A size as people write it.
fn size(bytes: f64) -> String {
    if bytes < MB {
        format!("{} kB", up_to(bytes / KB, 0))
    } else if bytes < GB {
        format!("{} MB", up_to(bytes / MB, 1))
    } else {
        format!("{} GB", up_to(bytes / GB, 1))
    }
}

impl PhotoWords for English {
    fn pose(&self, pose: Pose) -> &'static str {
        match pose {
            Pose::Side => "From the side",
            Pose::Behind => "From behind",
            Pose::Crest => "The crest",
        }
    }

    fn poses(&self) -> &'static str {
        "From where"
    }

    fn posed(&self, name: &str, pose: Pose) -> String {
        match pose {
            Pose::Side => format!("{name} from the side"),
            Pose::Behind => format!("{name} from behind"),
            Pose::Crest => format!("The crest of {name}"),
        }
    }

    fn picture(&self, name: &str, photo: &Photo) -> String {
        let posed = self.posed(name, photo.body.pose);
        format!("{posed}, {}", self.date(photo.day))
    }

    fn photographed(&self, name: &str, days: Option<i64>) -> String {
        match days {
            None => format!("{name} was never photographed"),
            Some(days) => format!("{name} was last photographed {}", self.ago(days)),
        }
    }

    fn so_many(&self, name: &str, pose: Pose, count: usize) -> String {
        let posed = self.posed(name, pose);
        if count == 0 {
            return format!("{posed}: no photograph yet");
        }
        format!(
            "{posed}: {}",
            self.count(count, "photograph", "photographs")
        )
    }

    fn no_photo(&self) -> &'static str {
        "none yet"
    }

    fn take(&self, pose: Pose) -> &'static str {
        match pose {
            Pose::Side => "Photograph the side",
            Pose::Behind => "Photograph from behind",
            Pose::Crest => "Photograph the crest",
        }
    }

    fn choose_picture(&self) -> &'static str {
        "Choose a picture"
    }

    fn take_over_last(&self) -> &'static str {
        "Take it over the last one"
    }

    fn how_to_stand(&self, pose: Pose) -> &'static str {
        match pose {
            Pose::Side => {
                "From its left, the whole animal in the picture, on level ground, square on all four feet. Hold the phone across, at the height of its elbow."
            }
            Pose::Behind => {
                "Straight behind its tail and well out of reach of a kick, with somebody at its head. Hold the phone upright."
            }
            Pose::Crest => {
                "From its left, the neck from the poll to the withers, the head level and not turned. Hold the phone across."
            }
        }
    }

    fn worth_of_photo(&self) -> &'static str {
        "From the same place, as far away and as high each time, so that two can be laid side by side. A picture shows a change of shape and proves nothing: hand, tape and scale decide."
    }

    fn making_small(&self) -> &'static str {
        "The picture is made small"
    }

    fn photo_trouble(&self, trouble: Trouble) -> &'static str {
        match trouble {
            Trouble::NotAPicture => {
                "This file is not a picture that this browser can show. Nothing was saved."
            }
            Trouble::TooLarge => "This picture cannot be made small enough. Nothing was saved.",
            Trouble::Full => {
                "There is no room left on this device: the photograph was not saved. All that was saved before is still there. Make room on the device, then take it again."
            }
            Trouble::NotSaved => "The photograph was not saved. Take it again.",
            Trouble::NoCamera => {
                "This browser gives no camera to a page. Take it with the key below, without the last one over it."
            }
            Trouble::CameraRefused => {
                "The camera was not allowed. Take it with the key below, or allow the camera for this page in the browser's settings."
            }
            Trouble::CameraFailed => {
                "The camera does not start; another app may have it. Take it with the key below."
            }
        }
    }

    fn then_and_now(&self) -> &'static str {
        "Then and now"
    }

    fn then(&self, photo: &Photo) -> String {
        format!("Then, {}", self.date(photo.day))
    }

    fn now(&self, photo: &Photo) -> String {
        format!("Now, {}", self.date(photo.day))
    }

    fn earlier(&self) -> &'static str {
        "Earlier"
    }

    fn later(&self) -> &'static str {
        "Later"
    }

    fn all_photos(&self) -> &'static str {
        "All of them"
    }

    fn day_of(&self, photo: &Photo) -> String {
        let day = self.date(photo.day);
        match photo.body.dated {
            Dated::Taken | Dated::Said => day,
            Dated::File => format!("{day}, as its file says"),
        }
    }

    fn size_of(&self, photo: &Photo) -> String {
        let (width, height) = (photo.body.width_px.get(), photo.body.height_px.get());
        format!(
            "{width} by {height} pixels, {}",
            size(photo.body.bytes.get() as f64)
        )
    }

    fn picture_not_here(&self) -> &'static str {
        "The picture is not on this device"
    }

    fn photo_not_here(&self) -> &'static str {
        "This photograph is not here"
    }

    fn take_photo_back(&self) -> &'static str {
        "Take it back"
    }

    fn taken_on(&self) -> &'static str {
        "Taken on"
    }

    fn taken_on_hint(&self) -> &'static str {
        "The day, as 5.5.2026 or 2026-05-05."
    }

    fn taken_on_wrong(&self) -> &'static str {
        "Type a day that has been, as 5.5.2026."
    }

    fn save_day(&self) -> &'static str {
        "Save the day"
    }

    fn room_heading(&self) -> &'static str {
        "Room on this device"
    }

    fn room(&self, room: Room) -> String {
        if room.photographs == 0 {
            return "No photograph takes any room yet".to_owned();
        }
        let least = if room.more { "At least " } else { "" };
        let many = self.count(room.photographs, "photograph", "photographs");
        let takes = if room.photographs == 1 {
            "takes"
        } else {
            "take"
        };
        let back = match room.taken_back {
            0 => String::new(),
            back => format!(", {back} taken back and still kept"),
        };
        format!("{least}{many} {takes} {}{back}", size(room.bytes as f64))
    }

    fn space(&self, space: Option<Space>) -> String {
        match space {
            None => "This browser does not say how much room is left".to_owned(),
            Some(space) => format!(
                "Room for about {} more, by what the browser says",
                size(space.left())
            ),
        }
    }

    fn nearly_full(&self) -> &'static str {
        "The room for this app is nearly full: make room on the device before you take more"
    }

    fn live_view(&self) -> &'static str {
        "What the camera sees"
    }

    fn lay_over(&self, photo: &Photo, today: LocalDate) -> String {
        let days = (today - photo.day).num_days();
        format!("Bring it under the one of {}", self.ago(days))
    }

    fn ghost(&self, name: &str, photo: &Photo) -> String {
        format!("{}, pale over the view", self.picture(name, photo))
    }

    fn show_ghost(&self, shown: bool) -> &'static str {
        if shown {
            "Hide the last one"
        } else {
            "Show the last one"
        }
    }

    fn take_now(&self) -> &'static str {
        "Take it now"
    }
}
