//! The photographs of an animal: by pose, then and now, and how much room they take.
//!
//! A photograph shows a change of shape and decides nothing: no plan and no limit hangs on one, so none is ever due.

#[cfg(test)]
mod tests;

use super::horses::kind_of_limit;
use crate::rows::Range;
use crate::shelf::Shelf;
use std::collections::BTreeMap;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::log::bodies::{PhotoV1, Pose};
use tussock_core::log::{Body, Kind, PictureSum, Record};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most photographs that are asked for, over all animals.
const OF_ALL: u32 = 2000;
/// The most records about one animal: its photographs among them when there are more than that of others.
const OF_ONE: u32 = 1000;

/// What the screens of photographs ask the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    vec![
        Range::One(animal.as_str().to_owned()),
        kind_of_limit(&Kind::Photo, OF_ALL),
        Range::Subject {
            subject: animal.as_str().to_owned(),
            from: 0,
            limit: OF_ONE,
        },
    ]
}

/// A photograph.
#[derive(Clone, Debug, PartialEq)]
pub struct Photo {
    /// Its record.
    pub id: RecordId,
    /// When it was taken.
    pub at: Instant,
    /// The local day of it.
    pub day: LocalDate,
    /// What the record says.
    pub body: PhotoV1,
}

impl Photo {
    /// From a record; `None` when it is none, or cannot be read.
    pub fn of(record: &Record, zone: &impl Zone) -> Option<Self> {
        if record.kind != Kind::Photo {
            return None;
        }
        match Body::read(record) {
            Ok(Body::Photo(body)) => Some(Self {
                id: record.id.clone(),
                at: record.at,
                day: zone.to_local(record.at).date,
                body,
            }),
            _ => None,
        }
    }
}

/// Photographs among records, the newest first.
pub(crate) fn newest_first<'a>(
    records: impl Iterator<Item = &'a Record>,
    zone: &impl Zone,
) -> Vec<Photo> {
    let mut found: Vec<Photo> = records
        .filter(|record| !record.gone)
        .filter_map(|record| Photo::of(record, zone))
        .collect();
    found.sort_by(|a, b| (b.at, &b.id.0).cmp(&(a.at, &a.id.0)));
    found
}

/// The one that stands for an animal in a list: the newest from the side, else the newest.
pub(crate) fn of_list(newest_first: &[Photo]) -> Option<&Photo> {
    newest_first
        .iter()
        .find(|photo| photo.body.pose == Pose::Side)
        .or_else(|| newest_first.first())
}

/// The photographs of one pose.
#[derive(Clone, Debug, PartialEq)]
pub struct OfPose {
    /// From where.
    pub pose: Pose,
    /// The newest first.
    pub photos: Vec<Photo>,
}

impl OfPose {
    /// The newest.
    pub fn now(&self) -> Option<&Photo> {
        self.photos.first()
    }

    /// The one beside it: so many steps later than the first; `None` while there is one alone.
    pub fn then(&self, later: usize) -> Option<&Photo> {
        let before = self.photos.get(1..)?;
        let last = before.len().checked_sub(1)?;
        before.get(last.saturating_sub(later))
    }

    /// How many steps later than the first the one beside the newest can be.
    pub fn steps(&self) -> usize {
        self.photos.len().saturating_sub(2)
    }
}

/// The photographs of one animal.
#[derive(Clone, Debug, PartialEq)]
pub struct Photos {
    /// The animal.
    pub animal: Animal,
    /// The local day.
    pub today: LocalDate,
    /// A pose each, in the order in which a person walks.
    pub poses: Vec<OfPose>,
    /// How much room those of all animals take.
    pub room: Room,
}

impl Photos {
    /// The photographs of a pose.
    pub fn of(&self, pose: Pose) -> Option<&OfPose> {
        self.poses.iter().find(|of| of.pose == pose)
    }

    /// A photograph.
    pub fn find(&self, id: &RecordId) -> Option<&Photo> {
        self.poses
            .iter()
            .flat_map(|of| &of.photos)
            .find(|photo| photo.id == *id)
    }

    /// The pose to take next: the one that was longest not taken.
    pub fn next(&self) -> Pose {
        self.poses
            .iter()
            .min_by_key(|of| of.now().map(|photo| photo.day))
            .map_or(Pose::Side, |of| of.pose)
    }

    /// Days since the newest of all.
    pub fn days(&self) -> Option<i64> {
        self.poses
            .iter()
            .filter_map(|of| of.now())
            .map(|photo| self.days_since(photo))
            .min()
    }

    /// Days since one was taken.
    pub fn days_since(&self, photo: &Photo) -> i64 {
        (self.today - photo.day).num_days()
    }
}

/// How much room photographs take.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Room {
    /// How many, each picture once.
    pub photographs: usize,
    /// How many of them were taken back. They stay on the disk.
    pub taken_back: usize,
    /// Their bytes.
    pub bytes: i64,
    /// There are more than were counted.
    pub more: bool,
}

impl Room {
    /// Of all photographs on a shelf, deleted ones too.
    pub fn of(shelf: &Shelf) -> Self {
        let mut held: BTreeMap<PictureSum, (i64, bool)> = BTreeMap::new();
        let mut records = 0_usize;
        for record in shelf.versions().filter(|one| one.kind == Kind::Photo) {
            records += 1;
            if let Ok(Body::Photo(photo)) = Body::read(record) {
                let one = held.entry(photo.sha256).or_insert((0, true));
                one.0 = photo.bytes.get();
                one.1 &= record.gone;
            }
        }
        Self {
            photographs: held.len(),
            taken_back: held.values().filter(|(_, gone)| *gone).count(),
            bytes: held.values().map(|(bytes, _)| *bytes).sum(),
            more: usize::try_from(OF_ALL).is_ok_and(|most| most <= records),
        }
    }
}

/// What the browser says of the room it gives this app, in bytes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Space {
    /// What everything of this app takes.
    pub used: f64,
    /// What it may take at most.
    pub given: f64,
}

/// From this part on the room is nearly full.
const NEARLY: f64 = 0.8;

impl Space {
    /// What is left.
    pub fn left(self) -> f64 {
        (self.given - self.used).max(0.0)
    }

    /// Whether it is nearly full.
    pub fn is_nearly_full(self) -> bool {
        self.given * NEARLY <= self.used
    }
}

/// Why a photograph was not kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Trouble {
    /// The file is no picture that this browser can draw.
    NotAPicture,
    /// It cannot be made small enough.
    TooLarge,
    /// The disk is full.
    Full,
    /// The disk did not take it.
    NotSaved,
    /// There is no camera for a page here.
    NoCamera,
    /// The camera was refused.
    CameraRefused,
    /// Another app has the camera, or it does not start.
    CameraFailed,
}

/// The photographs of an animal; `None` when it is not there.
pub fn photos(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<Photos> {
    let of_animal = shelf
        .records()
        .filter(|record| record.subject.id() == animal.as_str());
    let mut all = newest_first(of_animal, zone);
    let mut poses = Vec::with_capacity(Pose::ALL.len());
    for pose in Pose::ALL {
        let (of_pose, others) = all.into_iter().partition(|photo| photo.body.pose == pose);
        all = others;
        poses.push(OfPose {
            pose,
            photos: of_pose,
        });
    }
    Some(Photos {
        animal: shelf.animal(animal)?,
        today: zone.to_local(now).date,
        poses,
        room: Room::of(shelf),
    })
}
