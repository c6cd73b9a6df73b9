//! Constants of `round`.

use crate::sources::list_constants;

list_constants![];
