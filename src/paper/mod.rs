//! The card as a thing of paper: how thick and how heavy it is, which way its fibres run, which envelope
//! takes it and how it is posted.
//!
//! Takes a settled design with its layout and plan, gives facts as data. Paper differs from maker to maker:
//! thicknesses here are a guide, unless the design states them.

mod closed;
pub mod envelope;
pub mod foam;
pub mod grain;
pub mod made;
pub mod mass;
pub mod pile;
pub mod post;
pub mod post_limits;
pub mod stock;
pub mod tell;
pub mod thickness;
