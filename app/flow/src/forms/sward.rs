//! What somebody sees of a paddock in one tap: the leaf against the boot, and seed heads.

use crate::acts::{Act, New};
use crate::views::fields::Look;
use tussock_core::animal::{Answer, PaddockId};
use tussock_core::graze::sward::Leaf;
use tussock_core::log::bodies::SwardV1;
use tussock_core::log::{Body, Known, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;

/// What was tapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tapped {
    /// The leaf against the boot.
    Leaf(Leaf),
    /// Whether seed heads stand.
    Seeding(bool),
}

/// The act of a tap: it changes what was tapped on the same day, or writes what is seen now. What was not tapped is not
/// carried over from another day, for nobody looked.
pub fn tap(paddock: &PaddockId, look: &Look, tapped: Tapped, day: LocalDate, id: &str) -> Act {
    let today = look.chips.as_ref().filter(|(_, on, _)| *on == day);
    let mut body = today.map_or(
        SwardV1 {
            leaf: None,
            seeding: Answer::NotKnown,
            heights_mm: Vec::new(),
            plate: None,
            note: None,
        },
        |(_, _, body)| body.clone(),
    );
    match tapped {
        Tapped::Leaf(leaf) => body.leaf = Some(leaf),
        Tapped::Seeding(true) => body.seeding = Answer::Yes,
        Tapped::Seeding(false) => body.seeding = Answer::No,
    }
    let body = Body::Sward(body);
    match today {
        Some((record, _, _)) => Act::Change {
            id: record.clone(),
            body,
            at: None,
        },
        None => Act::Add(New {
            id: RecordId(id.to_owned()),
            subject: Subject::paddock(paddock),
            at: None,
            known: Known::Seen,
            body,
        }),
    }
}
