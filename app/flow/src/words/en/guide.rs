//! The measuring guide and the measures over time, in English.

use super::English;
use crate::views::guide::Picture;
use crate::words::{AssessWords, GuideWords};
use tussock_core::animal::Kind;
use tussock_core::assess::LengthKind;

impl GuideWords for English {
    fn guide_for(&self, name: &str) -> String {
        format!("Where the tape goes on {name}")
    }

    fn guide_first(&self) -> &'static str {
        "It stands square on level ground, its weight on all four feet. Same person, same tape, same time of day. Lay the tape snug, so that it marks no hair, and read it twice."
    }

    fn picture_head(&self, picture: Picture) -> &'static str {
        match picture {
            Picture::Length(kind) => self.length_kind(kind),
            Picture::HeartGirth | Picture::BellyGirth | Picture::Neck | Picture::Height => {
                self.measure(picture.measure())
            }
        }
    }

    fn picture_shows(&self, picture: Picture, kind: Kind) -> String {
        let animal = match kind {
            Kind::Donkey => "A donkey",
            Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => "A horse",
        };
        let shows = match picture {
            Picture::HeartGirth => {
                "from the side: the tape runs from the withers down behind the elbow and around the chest"
            }
            Picture::BellyGirth => {
                "from the side: the tape runs around the belly, over the back and under the navel"
            }
            Picture::Neck => {
                "from the side: the tape runs around the neck, halfway between two marks at poll and withers"
            }
            Picture::Length(LengthKind::Wrap) => {
                "from the side and from above: the tape runs from the point of the shoulder along the flank and bends around to the point of the buttock"
            }
            Picture::Length(LengthKind::Straight) => {
                "from the side and from above: the tape runs beside the body in a straight line, from a stick at the point of the shoulder to a stick behind the buttock"
            }
            Picture::Length(LengthKind::ElbowToTuber) => {
                "from the side: the tape runs in a straight line from the elbow to the point of the buttock"
            }
            Picture::Height => {
                "from the side: a stick stands upright from the ground to the withers, with a level bar on top"
            }
        };
        format!("{animal} {shows}")
    }

    fn picture_how(&self, picture: Picture) -> &'static str {
        match picture {
            Picture::HeartGirth => {
                "Close behind the elbow and over the back of the withers. Read it as the animal breathes out."
            }
            Picture::BellyGirth => {
                "Around the belly at the navel, level all the way. Read it as the animal breathes out."
            }
            Picture::Neck => {
                "Around the neck halfway between poll and withers, square to the neck. The head stays as the animal carries it."
            }
            Picture::Length(LengthKind::Wrap) => {
                "From the point of the shoulder along the side, around the buttock, to its point. The tape lies on the body all the way."
            }
            Picture::Length(LengthKind::Straight) => {
                "From the point of the shoulder straight back, to a stick or a wall held upright behind the buttock. The tape touches nothing between them."
            }
            Picture::Length(LengthKind::ElbowToTuber) => {
                "From the elbow to the point of the buttock. A donkey's length begins at the elbow: from the shoulder, as of a horse, its weight is out by about a quarter."
            }
            Picture::Height => {
                "From level ground straight up to the highest point of the withers, without shoes."
            }
        }
    }

    fn nothing_measured(&self) -> &'static str {
        "Nothing was measured with a tape yet."
    }

    fn belly_since_first(&self) -> &'static str {
        "Belly girth since the first time"
    }

    fn all_measures(&self) -> &'static str {
        "All measures, the newest first"
    }
}
