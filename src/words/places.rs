//! The points, edges and parts of a piece by name.

use super::Words;
use crate::geometry::{Corner, Edge};

fixed_words! {
    /// The middle of a thing.
    middle = "middle";
    /// The highest point of a turned shape.
    highest = "highest";
    /// The point of a turned shape that is furthest to the left.
    leftmost = "leftmost";
    /// `its middle`, as a point that something is turned about.
    its_middle = "its-middle";
    /// The piece that a card is folded from.
    base = "base";
    /// Several of them.
    bases = "bases";
    /// The card, where a design has only its name.
    card = "card";
}

/// The key of a corner.
pub(super) const fn corner_key(corner: Corner) -> &'static str {
    match corner {
        Corner::UpperLeft => "top-left",
        Corner::UpperRight => "top-right",
        Corner::LowerLeft => "bottom-left",
        Corner::LowerRight => "bottom-right",
    }
}

/// `top left`.
#[must_use]
pub fn corner_name(say: &Words, corner: Corner) -> String {
    say.tell("corner-name").kind("corner", corner_key(corner)).string()
}

/// `top left corner`.
#[must_use]
pub fn corner(say: &Words, corner: Corner) -> String {
    say.tell("corner").kind("corner", corner_key(corner)).string()
}

/// `the left edge`.
#[must_use]
pub fn edge(say: &Words, edge: Edge) -> String {
    say.tell("edge").kind("edge", edge.word()).string()
}

/// `the panel`.
#[must_use]
pub fn the(say: &Words, name: &str) -> String {
    say.tell("the").name("name", name).string()
}

/// `left edge`.
#[must_use]
pub fn edge_name(say: &Words, edge: Edge) -> String {
    say.tell("edge-name").kind("edge", edge.word()).string()
}

/// `its top left corner`.
#[must_use]
pub fn its_corner(say: &Words, corner: Corner) -> String {
    say.tell("its-corner").kind("corner", corner_key(corner)).string()
}

/// `the middle of its top edge`.
#[must_use]
pub fn middle_of_its(say: &Words, edge: Edge) -> String {
    say.tell("middle-of-its-edge").kind("edge", edge.word()).string()
}

/// `the point 1 from its left edge and 1/2 from its bottom edge`.
#[must_use]
pub fn its_point(say: &Words, left: &str, bottom: &str) -> String {
    say.tell("its-point").size("left", left).size("bottom", bottom).string()
}

/// A side of the card or its envelope, or a panel of its inside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The folded front.
    Front,
    /// The back of the folded card.
    Back,
    /// The side of the envelope that is addressed.
    EnvelopeFront,
    /// The envelope's flap.
    EnvelopeFlap,
    /// The opened inside, nothing said of its panels.
    Inside,
    /// The left panel of the inside.
    Left,
    /// The panel between two flaps.
    Middle,
    /// The right panel of the inside.
    Right,
    /// The upper panel of the inside of a card that folds at the top.
    Upper,
    /// The lower panel of it.
    Lower,
    /// A panel of an inside that folds to and fro, counted from 1 at the left.
    Panel(u32),
}

/// `left panel of the inside`.
#[must_use]
pub fn side(say: &Words, side: Side) -> String {
    let key = match side {
        Side::Front => "front",
        Side::Back => "back",
        Side::EnvelopeFront => "envelope-front",
        Side::EnvelopeFlap => "envelope-flap",
        Side::Inside => "inside",
        Side::Left => "inside-left",
        Side::Middle => "inside-middle",
        Side::Right => "inside-right",
        Side::Upper => "inside-upper",
        Side::Lower => "inside-lower",
        Side::Panel(panel) => return say.tell("inside-panel").count("panel", panel).string(),
    };
    say.tell("side").kind("side", key).string()
}
