//! Ids: lower-case UUIDv7 text made by the app when a form opens; opaque here, one type a kind.

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident),* $(,)?) => {$(
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(pub String);

        impl $name {
            /// The id as text.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }
    )*};
}

ids!(
    /// An animal.
    AnimalId,
    /// A group of animals fed together.
    GroupId,
    /// A forage lot.
    LotId,
    /// A food other than forage.
    FoodId,
    /// A net.
    NetId,
    /// A soak tub.
    TubId,
    /// A paddock.
    PaddockId,
    /// A yard.
    YardId,
    /// A person who does or decides something.
    PersonId,
);
