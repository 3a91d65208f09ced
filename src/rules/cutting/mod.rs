//! Rules about what the sheets give.

pub mod close_measures;
pub mod edge_piece_of_another_paper;
pub mod errors_add_up;
pub mod fixed_cut_without_room;
pub mod larger_than_its_sheet;
pub mod longer_than_the_trimmer;
mod rows;
pub mod shaving;
pub mod too_few_other_sheets;
pub mod too_few_sheets;
