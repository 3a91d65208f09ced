//! Rules about pieces that carry words.

pub mod greeting_covered;
pub mod greeting_off_the_card;
pub mod greeting_over_the_fold;
mod room;
