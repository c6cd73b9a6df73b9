//! Quantities as types: what may be added may be added, and nothing else.
//!
//! - Mass of feed **as fed** ([`AsFed`]) and mass of **dry matter** ([`DryMatter`]) meet only through a
//!   [`DryFraction`]; the body of an animal is [`BodyMass`].
//! - A content says what it is a share of: [`ShareOfDm`] or [`ShareOfAsFed`].
//! - [`Energy`] is read in Mcal or MJ by name; there is no bare number of energy.
//! - Constructors and getters are named by unit. There is no `From<f64>` and no `Deref`; `Debug` shows the unit.
//! - Every value a person or a file gives passes [`Bounds::check`], which refuses what is not finite.
//! - [`parse`] reads what people type, [`printed`] what a pasted text says, [`show`] is the only place that rounds.
//!
//! What this room does not do: it knows no clock and no zone table. [`Instant`] is a number, [`Zone`] an argument.

mod bounds;
mod feed;
mod land;
mod money;
pub mod parse;
pub mod printed;
pub mod published;
mod quantity;
pub mod show;
mod time;

pub use bounds::{Bounds, OutOfRange};
pub use feed::{AsFed, DryFraction, DryMatter, EnergyDensity, ShareOfAsFed, ShareOfDm};
pub use land::{Area, SwardDensity, SwardGrowth, SwardMass};
pub use money::{Cost, Currency, Money, MoneyError, PricePerKg};
pub use quantity::{BodyMass, Energy, Iu, Length, NutrientMass, PartOfBody, Speed, Temperature};
pub use time::{Instant, LocalDate, LocalStamp, LocalTime, Resolved, Span, Zone};
