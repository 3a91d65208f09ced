//! Steps as data, and the sentences made from them.

pub mod deal;
pub mod finishing;
pub mod laying;
pub mod model;
pub mod sequence;
pub mod tell;
pub mod totals;
