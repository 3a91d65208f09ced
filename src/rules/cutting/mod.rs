//! Rules about what the sheets give.

pub mod edge_piece_of_another_paper;
pub mod fixed_cut_without_room;
pub mod larger_than_its_sheet;
pub mod strip_that_uses_the_sheet_up;
pub mod too_few_other_sheets;
pub mod too_few_sheets;
