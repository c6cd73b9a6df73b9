//! Constants of `safety`.

use crate::sources::list_constants;

list_constants![];
