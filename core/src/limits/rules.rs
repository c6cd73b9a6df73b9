//! The version of the rules.

/// The version of the rules of this room. A plan that was issued keeps it with its inputs; it rises whenever a rule or a
/// number changes what an animal may have, so that an old plan can say what would now differ.
pub const RULES_VERSION: u32 = 1;
