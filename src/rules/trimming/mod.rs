//! Rules about layers that are cut too long on purpose and trimmed once they are glued.

mod ends;
pub mod little_to_trim;
pub mod short_of_its_edge;
mod slanted;
pub mod trimmed_away;
pub mod trimmed_too_late;
