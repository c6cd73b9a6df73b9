//! Constants of `assess`.

use crate::sources::list_constants;

list_constants![];
