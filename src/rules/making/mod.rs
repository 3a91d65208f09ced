//! Rules about what is made from trimmed rectangles, and what is taken from a roll.

pub mod hands_missing;
pub mod narrow_frame;
pub mod ribbon_too_short;
pub mod small_die_margin;
pub mod too_few_windows;
