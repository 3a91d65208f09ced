//! Rules about how layers lie.

pub mod across_the_opening;
pub mod apart_where_they_meet;
pub mod border_off_the_ruler;
pub mod border_unlike_claim;
pub mod covers_another;
pub mod finer_than_the_hand;
pub mod hidden_layer;
pub mod hidden_middle;
pub mod laid_sideways;
pub mod near_the_edge;
pub mod no_glue;
pub mod over_the_fold;
pub mod past_the_edge;
pub mod unlike_borders;
pub mod window_covered;
