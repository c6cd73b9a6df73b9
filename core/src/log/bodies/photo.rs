//! A photograph of an animal. The picture itself lies beside the records, under its sum.

use super::base::whole_number;
use crate::log::picture::{LONGEST_SIDE, MOST_BYTES, Picture, PictureSum};
use crate::log::stored::{choice, twin};
use crate::log::{Allowed, LogError};

choice! {
    /// From where it is taken: the same each time, so that two of them can be laid side by side.
    Pose {
        /// The whole animal from its left side.
        Side = "side",
        /// From straight behind.
        Behind = "behind",
        /// The neck and its crest, from the left.
        Crest = "crest",
    }
}

impl Pose {
    /// All of them, in the order in which a person walks.
    pub const ALL: [Self; 3] = [Self::Side, Self::Behind, Self::Crest];
}

choice! {
    /// How the time is known at which it was taken.
    Dated {
        /// It was taken when it was kept.
        Taken = "taken",
        /// The file that was chosen says so.
        File = "file",
        /// Somebody said so.
        Said = "said",
    }
}

whole_number! {
    /// A side of a picture, in pixels.
    Pixels = (1, LONGEST_SIDE)
}
whole_number! {
    /// The size of a picture, in bytes.
    PictureBytes = (1, MOST_BYTES)
}
twin! {
    /// A photograph of the animal that the record is about; the record's time is when it was taken.
    PhotoV1 {
        /// From where.
        pose: Pose,
        /// The sum of the picture, by which it is found.
        sha256: PictureSum,
        /// How wide.
        width_px: Pixels,
        /// How high.
        height_px: Pixels,
        /// How large.
        bytes: PictureBytes,
        /// How its time is known.
        dated: Dated,
    }
}

impl PhotoV1 {
    /// The twin of a picture.
    ///
    /// Error: a size that is none.
    pub fn of(pose: Pose, picture: &Picture, dated: Dated) -> Result<Self, LogError> {
        let (width, height) = picture.size();
        let bytes = i64::try_from(picture.bytes().len()).unwrap_or(i64::MAX);
        Ok(Self {
            pose,
            sha256: picture.sum().clone(),
            width_px: Pixels::new(width)?,
            height_px: Pixels::new(height)?,
            bytes: PictureBytes::new(bytes)?,
            dated,
        })
    }

    /// Whether these are the bytes that the record names.
    ///
    /// Error: they are others, or a part of them is missing.
    pub fn check(&self, bytes: &[u8]) -> Result<(), LogError> {
        let found = PictureSum::of(bytes);
        if found == self.sha256 {
            Ok(())
        } else {
            let path = crate::log::error::Path::Root.key("sha256");
            Err(path.refuse(found.as_str(), Allowed::Form(crate::log::Form::Sha256)))
        }
    }
}
