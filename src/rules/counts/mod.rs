//! Rules about how many, and for what.

pub mod never_used;
pub mod sheets_left_over;
pub mod versions_alike;
