//! Constants of `soak`.

use crate::sources::list_constants;

list_constants![];
