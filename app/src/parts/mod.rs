//! The parts every screen is made of: cord, knot and tag, and what stands beside them.
//!
//! A part draws and reports; it holds no record, writes no storage and has no words of its own: every word, those for
//! screen readers too, comes in as a prop. What is shown comes down as a signal, what the person did goes up by
//! callback. Looks stand in `public/styles.css` under the class names used here; no part sets a `style` attribute,
//! which the content security policy would refuse.

#![allow(
    unreachable_pub,
    reason = "the component macro leaves a public function in each file beside the one that is re-exported"
)]
#![allow(
    clippy::needless_pass_by_value,
    reason = "props are handed over by value"
)]

mod action;
mod asked;
mod balance_cord;
mod banner;
mod beats;
mod caution;
mod choice;
mod cord;
mod cut;
mod day_cord;
mod field;
mod frame;
mod icon;
mod ids;
mod key;
mod net_scale;
mod pad;
mod page;
mod pick;
mod picture;
mod places;
mod press;
mod question;
mod quiet;
mod rows;
mod select;
mod sentence;
pub mod shell;
mod slip;
mod slot;
mod sourced;
mod state;
mod stop;
mod strip_picture;
mod table;
mod tag;
mod tape;
mod tub_cord;
mod undo;
mod weight_chart;
mod year_band;

pub use action::{Action, ActionRow, Back};
pub use asked::{AskedBack, AskedKey};
pub use balance_cord::{BalanceCord, BalanceLine, BalanceRows};
pub use banner::{Banner, Notice};
pub use beats::{BeatCords, BeatRow, Beats};
pub use caution::Caution;
pub use choice::{Choice, Offer, Several};
pub use cord::{Cord, Hang, Hung, HungTag};
pub use cut::{CutDrawing, SiteCord, SiteCords};
pub use day_cord::{DayCord, DayLabel};
pub use field::{Field, Keyboard};
pub use frame::{Frame, FrameBanner, FrameKind, FrameWidth};
pub use icon::{Drawing, Icon};
pub use key::{ActKey, WideKey};
pub use net_scale::NetScale;
pub use pad::{Key, Pad, PadCell, PadSwitch};
pub use page::Page;
pub use pick::{Pick, PickAs};
pub use picture::Picture;
pub use places::{PlaceBar, PlaceTab};
pub use press::Press;
pub use question::{Answer, AnswerWords, Question};
pub use quiet::{Quiet, QuietRow};
pub use rows::{Row, Rows};
pub use select::Select;
pub use sentence::{Rank, Sentence};
pub use slip::{ChangeSlip, SlipRow};
pub use slot::{Entry, Figure, LargeSlot, ReadingSlot};
pub use sourced::Sourced;
pub use state::{State, StateShape, Stated};
pub use stop::StopBlock;
pub use strip_picture::StripPicture;
pub use table::{Column, Table};
pub use tag::{Tag, Tick};
pub use tape::TapeDrawing;
pub use tub_cord::{TubCord, TubTag};
pub use undo::Undo;
pub use weight_chart::WeightChart;
pub use year_band::{YearBand, YearStretch};
