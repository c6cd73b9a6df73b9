//! Laws: properties that hold for every input, tried on many.

mod log;
