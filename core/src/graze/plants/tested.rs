//! What two tests of grass or hay say: ergovaline and nitrate.

use super::Whom;
use super::published::{
    ERGOVALINE, ERGOVALINE_MARES, ERGOVALINE_PPB, MARES_OFF, NITRATE, NITRATE_SAFE, NITRATE_UNSAFE,
};
use crate::graze::GrazeError;
use crate::units::ShareOfDm;

/// What a test of ergovaline says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Endophyte {
    /// Under the level that horses bear; for broodmares: none found.
    Under,
    /// Between the two levels that are given.
    Doubtful,
    /// Over it; for broodmares: any at all.
    Over,
}

/// What a test of ergovaline says of an animal: horses 300 to 500 ppb, broodmares none.
///
/// # Errors
/// A number outside 0 to 10 000 ppb.
pub fn ergovaline(ppb: f64, whom: Whom) -> Result<Endophyte, GrazeError> {
    let ppb = ERGOVALINE_PPB.check(ppb)?;
    let [doubtful, over] = match whom {
        Whom::All => *ERGOVALINE,
        Whom::Broodmares => [*ERGOVALINE_MARES; 2],
    };
    Ok(if ppb > over {
        Endophyte::Over
    } else if ppb < doubtful || doubtful >= over {
        Endophyte::Under
    } else {
        Endophyte::Doubtful
    })
}

/// How many days before foaling mares come off fescue with endophyte: from, to.
pub const fn mares_off_days() -> [u16; 2] {
    MARES_OFF.value
}

/// What a test of nitrate says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Nitrate {
    /// At or under what was called safe.
    Safe,
    /// Between: not proven, and not for mares late in foal.
    Doubtful,
    /// Over: not to be fed.
    Unsafe,
}

/// What a test of nitrate says: safe to 0.5 %, unsafe over 2 % of dry matter.
///
/// # Errors
/// A share outside 0 to 10 %.
pub fn nitrate(share: ShareOfDm) -> Result<Nitrate, GrazeError> {
    NITRATE.check(share.to_percent())?;
    Ok(if share <= *NITRATE_SAFE {
        Nitrate::Safe
    } else if share <= *NITRATE_UNSAFE {
        Nitrate::Doubtful
    } else {
        Nitrate::Unsafe
    })
}
