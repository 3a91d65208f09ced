//! Rules about the sizes of pieces and sheets.

pub mod nothing_to_hold;
pub mod size_off_the_ruler;
