//! Texts of the design as they come on paper: what the faces lack, what is too long for its place, and what
//! stands nowhere.

mod places;

pub mod idea_without_leftover;
pub mod missing_glyph;
pub mod not_in_every_language;
pub mod note_without_its_work;
pub mod text_too_long;
