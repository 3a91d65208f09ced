//! Pictures as data.

pub mod dimension;
pub mod figures;
pub mod scene;
pub mod style;
pub mod svg;
pub mod text;
