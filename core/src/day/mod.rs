//! The day: visits, nets and tubs, laid out with the smallest gap without forage.

pub mod published;
