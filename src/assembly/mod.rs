//! Steps as data, and the sentences made from them.

pub mod finishing;
pub mod laying;
pub mod model;
pub mod sequence;
pub mod tell;
pub mod totals;
