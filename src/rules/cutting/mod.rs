//! Rules about what the sheets give.

pub mod larger_than_its_sheet;
pub mod strip_that_uses_the_sheet_up;
pub mod too_few_sheets;
