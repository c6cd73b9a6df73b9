//! Constants of `plan`.

use crate::sources::list_constants;

list_constants![];
