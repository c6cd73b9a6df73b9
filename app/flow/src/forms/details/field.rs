//! The fields of an animal's details.

/// A field.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Field {
    /// Its name.
    Name,
    /// What it is.
    Kind,
    /// Its body type.
    BodyType,
    /// Its sex.
    Sex,
    /// The day, month or year of birth.
    Born,
    /// Its height.
    Height,
    /// Grown, growing, in foal, in milk.
    State,
    /// The day she was covered, of one in foal.
    Covered,
    /// The day she foaled, of one in milk.
    Foaled,
    /// What it will weigh when it is grown, of one that grows.
    Grown,
    /// Its work.
    Work,
    /// What is wanted of its weight.
    Goal,
    /// Laminitis.
    Laminitis,
    /// The day the last episode ended.
    LaminitisEnded,
    /// Insulin test.
    Insulin,
    /// The day of the test.
    InsulinOn,
    /// Who tested.
    InsulinBy,
    /// Which test.
    InsulinTest,
    /// PPID.
    Ppid,
    /// Teeth.
    Teeth,
    /// A native or cob type.
    NativeOrCob,
}

impl Field {
    /// All of them, in the order of the screen.
    pub const ALL: [Self; 21] = [
        Self::Name,
        Self::Kind,
        Self::BodyType,
        Self::NativeOrCob,
        Self::Sex,
        Self::Born,
        Self::Height,
        Self::State,
        Self::Covered,
        Self::Foaled,
        Self::Grown,
        Self::Work,
        Self::Goal,
        Self::Laminitis,
        Self::LaminitisEnded,
        Self::Insulin,
        Self::InsulinOn,
        Self::InsulinBy,
        Self::InsulinTest,
        Self::Ppid,
        Self::Teeth,
    ];

    /// Its name in a draft.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Kind => "kind",
            Self::BodyType => "body_type",
            Self::Sex => "sex",
            Self::Born => "born",
            Self::Height => "height",
            Self::State => "state",
            Self::Covered => "covered",
            Self::Foaled => "foaled",
            Self::Grown => "grown",
            Self::Work => "work",
            Self::Goal => "goal",
            Self::Laminitis => "laminitis",
            Self::LaminitisEnded => "laminitis_ended",
            Self::Insulin => "insulin",
            Self::InsulinOn => "insulin_on",
            Self::InsulinBy => "insulin_by",
            Self::InsulinTest => "insulin_test",
            Self::Ppid => "ppid",
            Self::Teeth => "teeth",
            Self::NativeOrCob => "native_or_cob",
        }
    }
}
