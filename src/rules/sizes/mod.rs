//! Rules about the sizes of pieces and sheets.

pub mod nothing_to_hold;
pub mod odd_sixteenth;
pub mod restated;
pub mod share_off_the_ruler;
pub mod size_off_the_ruler;
