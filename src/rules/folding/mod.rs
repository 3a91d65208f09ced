//! Rules about the base as a sheet that is folded.

pub mod base_too_light;
pub mod fold_across_the_grain;
