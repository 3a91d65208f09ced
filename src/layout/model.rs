//! The layout: exact rectangles on the card front.
//!
//! Card coordinates: origin at the front's lower left corner, x to the right, y upward, nanometres.

use crate::design::model::{LayerId, Onto};
use crate::geometry::{Edge, Rect};
use crate::length::Size;

/// Where every layer lies. The same for every version: versions differ in paper only.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Layout {
    /// The folded front; nothing in a file for `cuts`.
    pub card: Option<Size>,
    /// One entry a layer, in the design's order, so that `layers[id.0]` is layer `id`.
    pub layers: Vec<Placed>,
}

/// One layer, laid.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Placed {
    /// The layer.
    pub layer: LayerId,
    /// What it lies on, as a rectangle on the card.
    pub onto: Rect,
    /// Each copy as it is glued down, before any trimming; left to right, then top to bottom.
    pub copies: Vec<Rect>,
    /// Each copy as it shows when all trimming is done; `None` where trimming leaves nothing.
    pub trimmed: Vec<Option<Rect>>,
    /// The smallest rectangle round all copies as glued down.
    pub block: Rect,
}

impl Placed {
    /// How much of what it lies on shows at an edge, nanometres; negative where it reaches past.
    #[must_use]
    pub const fn shows(&self, edge: Edge) -> i64 {
        self.onto.border(self.block, edge)
    }
}

impl Layout {
    /// A placed layer.
    #[must_use]
    pub fn placed(&self, layer: LayerId) -> &Placed {
        &self.layers[layer.0]
    }

    /// The rectangle of what a layer lies on or is trimmed to.
    #[must_use]
    pub fn rect(&self, onto: Onto) -> Rect {
        match (onto, self.card) {
            (Onto::Layer(layer), _) => self.layers[layer.0].block,
            (Onto::Card, Some(card)) => Rect::of(card),
            (Onto::Card, None) => Rect::at(0, 0, 0, 0),
        }
    }
}
