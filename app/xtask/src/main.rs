//! The build tool behind `cargo xtask`.

fn main() {}
