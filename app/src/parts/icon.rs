//! The drawings of the house, 24 px, in lines of 2 px.

use leptos::prelude::*;

/// A drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Drawing {
    /// Round: two tags on a cord.
    Round,
    /// Horses: a headcollar.
    Horses,
    /// Shed: a net on its hook.
    Shed,
    /// Paddock: a post with two tapes.
    Paddock,
    /// Desk: a sheet with a clip.
    Desk,
    /// The mark: a tag with three blades of grass.
    Mark,
    /// The way back.
    Back,
    /// Erase the last character.
    Erase,
}

impl Drawing {
    const fn paths(self) -> &'static str {
        match self {
            Self::Round => {
                "M4 2V22M4 7H8M4 17H8M10.5 3.5H21V10.5H10.5L8 8V6ZM10.5 13.5H21V20.5H10.5L8 18V16Z"
            }
            Self::Horses => {
                "M8 2H16M8 2 5 14M16 2 19 14M5 14C7 11.5 17 11.5 19 14C19 19 17 20 12 20S5 19 5 14ZM7 7C8 10 16 10 17 \
                 7M12 20V23"
            }
            Self::Shed => {
                "M12 6V4A2 2 0 1 1 14 2M12 6C6 8 4 12 4 15A8 7 0 0 0 20 15C20 12 18 8 12 6ZM6 11 16 21M18 11 8 21M12 6 \
                 4.5 17M12 6 19.5 17"
            }
            Self::Paddock => "M12 2V22M9 2H15M2 8C6 9.5 18 9.5 22 8M2 15C6 16.5 18 16.5 22 15",
            Self::Desk => "M5 5H9M15 5H19V22H5V5M9 3H15V7H9ZM8.5 12H15.5M8.5 16.5H15.5",
            Self::Mark => {
                "M8 2H22V22H8L2 16V8ZM5.5 12H7M14.5 18.5V6M12 18.5C12 14 11 11.5 9.5 10M17 18.5C17 14 18 \
                 11.5 19.5 10"
            }
            Self::Back => "M15 4 7 12 15 20",
            Self::Erase => "M8 4H22V20H8L1.5 12ZM11.5 8.5 18.5 15.5M18.5 8.5 11.5 15.5",
        }
    }
}

/// A drawing, for the eye only: the word stands beside it or in the name of its control.
#[component]
pub fn Icon(
    /// Which.
    of: Drawing,
) -> impl IntoView {
    view! {
        <svg viewBox="0 0 24 24" width="24" height="24" stroke="currentColor" stroke-width="2" aria-hidden="true">
            <path d=of.paths() />
        </svg>
    }
}
