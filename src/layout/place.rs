//! Design to layout.
