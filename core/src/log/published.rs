//! Constants of `log`.

use crate::sources::list_constants;

list_constants![];
