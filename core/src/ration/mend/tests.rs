//! Rations as a consultant would sign them.
