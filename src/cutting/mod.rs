//! Cutting edge to edge: what is wanted, the search, the order of a hand, the referee.

pub mod alternatives;
pub mod demand;
pub mod halves;
pub mod json;
pub mod lay;
pub mod more;
pub mod order;
pub mod plan;
pub mod search;
pub mod sizes;
pub mod slack;
pub mod verify;
