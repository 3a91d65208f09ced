//! Reading a design: text to a spanned node tree, nodes to a settled [`model::Design`].

pub mod envelopes;
pub mod model;
pub mod nodes;
pub mod resize;
pub mod restate;
pub mod settle;
pub mod sizes;
pub mod variants;
