//! Constants of `limits`.

use crate::sources::list_constants;

list_constants![];
