//! A month's edition: what it holds, and how it comes to lie in its folder.

pub mod bundle;
pub mod publish;
