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

/// The opened inside, nothing said of its panels.
pub const INSIDE: &str = "opened inside";
/// The folded front.
pub const FRONT: &str = "front of the card";
/// The back of the folded card.
pub const BACK: &str = "back of the card";
/// The side of the envelope that is addressed.
pub const ENVELOPE_FRONT: &str = "front of the envelope";
/// The envelope's flap.
pub const ENVELOPE_FLAP: &str = "flap of the envelope";

/// Panels of an inside that folds once or twice, from left to right.
pub const SIDE_PANELS: [&str; 2] = ["left panel of the inside", "right panel of the inside"];
/// The same where the card folds at the top, from top to bottom.
pub const TOP_PANELS: [&str; 2] = ["upper panel of the inside", "lower panel of the inside"];
/// The same of a card with two flaps.
pub const GATE_PANELS: [&str; 3] =
    ["left panel of the inside", "middle panel of the inside", "right panel of the inside"];

/// A panel of an inside that folds to and fro, counted from 0 at the left.
#[must_use]
pub fn panel(number: u32) -> &'static str {
    const PANELS: [&str; 20] = [
        "first panel of the inside",
        "second panel of the inside",
        "third panel of the inside",
        "fourth panel of the inside",
        "fifth panel of the inside",
        "sixth panel of the inside",
        "seventh panel of the inside",
        "eighth panel of the inside",
        "ninth panel of the inside",
        "tenth panel of the inside",
        "eleventh panel of the inside",
        "twelfth panel of the inside",
        "thirteenth panel of the inside",
        "fourteenth panel of the inside",
        "fifteenth panel of the inside",
        "sixteenth panel of the inside",
        "seventeenth panel of the inside",
        "eighteenth panel of the inside",
        "nineteenth panel of the inside",
        "twentieth panel of the inside",
    ];
    usize::try_from(number).ok().and_then(|number| PANELS.get(number)).copied().unwrap_or(INSIDE)
}
