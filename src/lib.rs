//! Trimwright checks, cuts, draws and publishes printable greeting-card sketches.
//!
//! One flow, one value between stages:
//! text, nodes, [`design::model::Design`], [`layout::model::Layout`], [`cutting::plan::CutPlan`],
//! [`assembly::model::Steps`], scenes, handout. Floors, ground first; a file uses only what stands
//! above it in this list.

pub mod colour;
pub mod files;
pub mod fonts;
pub mod length;
pub mod picture;
pub mod side_by_side;
pub mod source;

pub mod diagnostic;
pub mod geometry;
pub mod shape;
pub mod weight;
pub mod words;

pub mod assembly;
pub mod cutting;
pub mod design;
pub mod guides;
pub mod layout;
pub mod paper;

pub mod project;
pub mod rules;

pub mod drawing;
pub mod readback;

pub mod pipeline;

pub mod handout;
pub mod mend;
pub mod preview;
pub mod truesize;

pub mod edition;

pub mod cli;
