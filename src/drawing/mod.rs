//! Pictures as data.
//!
//! Takes a project, gives [`scene::Scene`]s and their SVG. Must never know a page, a typesetter or
//! a terminal.

pub mod angle;
pub mod area;
pub mod canvas;
pub mod dimension;
pub mod figures;
pub mod hatch;
pub mod outline;
pub mod placing;
pub mod scale;
pub mod scene;
pub mod style;
pub mod svg;
pub mod text;
