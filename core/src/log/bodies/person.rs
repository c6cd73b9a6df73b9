//! A person.

use crate::log::stored::{Name, choice, twin};

choice! {
    /// What a person is here.
    Role {
        /// Keeps or owns animals.
        Keeper = "keeper",
        /// Feeds when the keeper is away.
        Helper = "helper",
        /// Advises on feeding.
        Consultant = "consultant",
        /// A vet.
        Vet = "vet",
        /// A farrier or trimmer.
        Farrier = "farrier",
    }
}
twin! {
    /// A person who does or decides something.
    PersonV1 {
        /// The name.
        name: Name,
        /// What the person is here.
        role: Role,
        /// Initials for a row tick.
        initials: Option<Name>,
        /// A telephone number, for the card.
        telephone: Option<String>,
    }
}
