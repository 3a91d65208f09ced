//! The layout: exact outlines on the faces of the card and its envelope.
//!
//! Every face has coordinates of its own: origin at its lower left corner as it is looked at, x to the
//! right, y upward, nanometres. A layer is placed straight in the *frame* of what it lies on, whose
//! rectangles stand here in [`Placed::onto`], [`Placed::copies`] and [`Placed::block`]; turns by any angle
//! come after, so where nothing is turned the frame is the face itself. What is truly seen is
//! [`Placed::laid`].

use crate::design::model::{Face, LayerId, Onto};
use crate::geometry::{Angle, Edge, Point, Polygon, Rect, Region};
use crate::length::Size;

/// Where every layer lies. The same for every version: versions differ in paper only.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Layout {
    /// The folded front; nothing in a file for `cuts`.
    pub card: Option<Size>,
    /// Every face that the design has, the front first.
    pub faces: Vec<(Face, Rect)>,
    /// One entry a layer, in the design's order, so that `layers[id.0]` is layer `id`.
    pub layers: Vec<Placed>,
}

/// One layer, laid.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Placed {
    /// The layer.
    pub layer: LayerId,
    /// The face it lies on.
    pub face: Face,
    /// What it lies on, in the frame.
    pub onto: Rect,
    /// The rectangle of each copy as it is glued down, in the frame, before any trimming and before a
    /// turn by another angle than quarters; left to right, then top to bottom, mirrored ones last.
    pub copies: Vec<Rect>,
    /// The upright rectangle round each copy on the face as it shows when all is turned and trimmed;
    /// `None` where trimming leaves nothing.
    pub trimmed: Vec<Option<Rect>>,
    /// The smallest rectangle round all copies, in the frame.
    pub block: Rect,
    /// Each copy as it lies on the face, in the order of `copies`.
    pub laid: Vec<Laid>,
    /// How the frame is turned on the face: each turn about a point of the frame around it, the inner one
    /// first. Empty where the frame is the face.
    pub frame: Vec<Turn>,
}

/// A turn about a point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn {
    /// To the left.
    pub angle: Angle,
    /// The point that stays.
    pub about: Point,
}

/// One copy on its face.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Laid {
    /// Its outline with its windows as it is glued down, before any trimming.
    pub outline: Polygon,
    /// What is left when it is trimmed flush.
    pub shown: Region,
    /// How far it is turned in all, pattern and all.
    pub angle: Angle,
    /// Whether it is the mirror image of the piece.
    pub mirrored: bool,
}

impl Placed {
    /// How much of what it lies on shows at an edge, nanometres, in the frame; negative where it reaches
    /// past.
    #[must_use]
    pub const fn shows(&self, edge: Edge) -> i64 {
        self.onto.border(self.block, edge)
    }

    /// Whether every copy lies straight on the face, quarter turns included, so that rectangles of the
    /// frame are rectangles on the face.
    #[must_use]
    pub fn is_straight(&self) -> bool {
        self.frame.is_empty() && self.laid.iter().all(|laid| laid.angle.whole_quarters().is_some())
    }

    /// Everything that shows of it on the face.
    #[must_use]
    pub fn shown(&self) -> Region {
        match self.laid.as_slice() {
            [laid] => laid.shown.clone(),
            laid => {
                let parts: Vec<Polygon> = laid.iter().flat_map(|laid| laid.shown.parts().iter().cloned()).collect();
                Region::covered_by(&parts)
            }
        }
    }

    /// The upright rectangle round all copies on the face, before any trimming.
    #[must_use]
    pub fn bounds(&self) -> Rect {
        self.laid.iter().map(|laid| laid.outline.bounds()).reduce(Rect::hull).unwrap_or(self.block)
    }
}

impl Layout {
    /// A placed layer.
    #[must_use]
    pub fn placed(&self, layer: LayerId) -> &Placed {
        &self.layers[layer.0]
    }

    /// A face; nothing where the design has no such face.
    #[must_use]
    pub fn face(&self, face: Face) -> Rect {
        let found = self.faces.iter().find(|(own, _)| *own == face);
        found.map_or(Rect::at(0, 0, 0, 0), |(_, rect)| *rect)
    }

    /// The rectangle of what a layer of this face lies on or is trimmed to: the face, or all copies of a
    /// layer in its own frame.
    #[must_use]
    pub fn rect(&self, face: Face, onto: Onto) -> Rect {
        match onto {
            Onto::Layer(layer) => self.layers[layer.0].block,
            Onto::Card => self.face(face),
        }
    }
}
