//! Constants of `forage`.

use crate::sources::list_constants;

list_constants![];
