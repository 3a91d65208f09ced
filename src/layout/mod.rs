//! Where every layer lies on the card.

pub mod model;
pub mod place;
mod repeat;
