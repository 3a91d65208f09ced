//! Rules about how layers lie.

pub mod border_off_the_ruler;
pub mod border_unlike_claim;
pub mod covers_another;
pub mod laid_sideways;
pub mod no_glue;
pub mod past_the_edge;
pub mod unlike_borders;
