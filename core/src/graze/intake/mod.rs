//! What an animal eats at grass.
