//! Rules about gluing: its order, and how high what is glued stands.

pub mod foam_too_thick_to_post;
pub mod glue_before_trim;
