//! The points, edges and parts of a piece by name.

use super::KEPT;
use crate::geometry::{Corner, Edge};

/// The middle of a thing.
pub const MIDDLE: &str = "middle";

/// `top left corner`.
#[must_use]
pub fn corner(corner: Corner) -> String {
    format!("{} corner", corner.word())
}

/// The highest point of a turned shape.
#[must_use]
pub fn highest() -> String {
    "highest point".to_owned()
}

/// The point of a turned shape that is furthest to the left.
#[must_use]
pub fn leftmost() -> String {
    "leftmost point".to_owned()
}

/// `the left edge`.
#[must_use]
pub fn edge(edge: Edge) -> String {
    format!("the {} edge", edge.word())
}

/// `the panel`.
#[must_use]
pub fn the(name: &str) -> String {
    format!("the {name}")
}

/// `left edge`.
#[must_use]
pub const fn edge_name(edge: Edge) -> &'static str {
    match edge {
        Edge::Left => "left edge",
        Edge::Top => "top edge",
        Edge::Right => "right edge",
        Edge::Bottom => "bottom edge",
    }
}

/// `its middle`, as a point that something is turned about.
#[must_use]
pub fn its_middle() -> String {
    format!("its {MIDDLE}")
}

/// `its top left corner`.
#[must_use]
pub fn its_corner(corner: Corner) -> String {
    format!("its {} corner", corner.word())
}

/// `the middle of its top edge`.
#[must_use]
pub fn middle_of_its(edge: Edge) -> String {
    format!("the middle of its {} edge", edge.word())
}

/// `the point 1 from its left edge and 1/2 from its bottom edge`.
#[must_use]
pub fn its_point(left: &str, bottom: &str) -> String {
    format!("the point {left}{KEPT}from its left edge and {bottom}{KEPT}from its bottom edge")
}
