//! Mends of the ration of an animal.
