//! Constants of `day`.

use crate::sources::list_constants;

list_constants![];
