//! Checks `tussock-core` from outside; see `tests/tests/`.
