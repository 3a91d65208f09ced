//! Shapes made from a trimmed rectangle.

pub mod impossible_shape;
pub mod impossible_window;
pub mod larger_than_its_window;
pub mod no_such_window;
