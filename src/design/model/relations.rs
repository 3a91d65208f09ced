//! Sizes by relation: what a side leans on, and what it comes to.
//!
//! Takes the sides of other sizes, gives a side, exact to the nanometre. Must never know a text, nor in
//! which order sizes become known: reading and resizing each bring their own.

use super::PieceId;
use crate::geometry::{Edge, TOLERANCE};
use crate::length::{LARGEST_NM, Length, Size};
use crate::shape::DRAWN_WIDTH;
use crate::source::Span;

/// What a size leans on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Of {
    /// The card front.
    Card,
    /// A piece.
    Piece(PieceId),
}

/// One of the two sides of a size.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Extent {
    /// From left to right.
    Width,
    /// From bottom to top.
    Height,
}

impl Extent {
    /// Width, then height.
    pub const BOTH: [Self; 2] = [Self::Width, Self::Height];

    /// This side of a size.
    #[must_use]
    pub const fn of(self, size: Size) -> Length {
        match self {
            Self::Width => size.width,
            Self::Height => size.height,
        }
    }

    /// Its key in a design.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Width => "width",
            Self::Height => "height",
        }
    }

    /// `wide` or `high`.
    #[must_use]
    pub const fn measure(self) -> &'static str {
        match self {
            Self::Width => "wide",
            Self::Height => "high",
        }
    }

    /// The side that an edge takes from.
    #[must_use]
    pub const fn at(edge: Edge) -> Self {
        match edge {
            Edge::Left | Edge::Right => Self::Width,
            Edge::Bottom | Edge::Top => Self::Height,
        }
    }
}

/// Where a size comes from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Stated {
    /// Written outright, or the base's own.
    Outright,
    /// Another size less a border at every edge.
    AllRound {
        /// The other.
        of: Of,
        /// The border.
        border: Length,
    },
    /// Another size less so much at each edge named.
    ByEdge {
        /// The other.
        of: Of,
        /// The edges, each once, in the order written.
        edges: Vec<(Edge, Length)>,
    },
    /// Each side by itself.
    BySide {
        /// The width.
        width: Relation,
        /// The height.
        height: Relation,
    },
}

/// Where one side of a size comes from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Relation {
    /// What it is before the change.
    pub measure: Measure,
    /// What is taken off or put on.
    pub change: Option<Change>,
    /// Where it is written.
    pub span: Span,
}

/// What a side is before it is changed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Measure {
    /// A length of its own.
    Own(Length),
    /// As wide or as high as another.
    Same(Of, Extent),
    /// As high as the outline of a drawing is at this width, rounded up to the ruler.
    Drawn {
        /// The piece itself.
        of: Of,
        /// The height of the drawing, in steps of which [`DRAWN_WIDTH`] are its width.
        height: i64,
        /// The ruler's step.
        ruler: Length,
    },
    /// A whole part of another's side, rounded down to the nanometre.
    Part {
        /// The other.
        of: Of,
        /// Its side.
        side: Extent,
        /// Of how many it is one: 2, 3 or 4.
        parts: u32,
    },
    /// What is left of another's same side after pieces, with a gap behind each of them.
    Rest {
        /// The other.
        of: Of,
        /// The pieces, as often as they are named.
        after: Vec<PieceId>,
        /// The gap.
        gap: Length,
    },
    /// One of several equal pieces that fill another's same side, with a gap between each two; rounded
    /// down to the nanometre, so that all of them are never more than the whole.
    Share {
        /// The other.
        of: Of,
        /// How many.
        count: u32,
        /// The gap.
        gap: Length,
    },
}

/// What is taken off a measure or put on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// Taken off.
    Less(Length),
    /// Put on.
    Plus(Length),
}

impl Change {
    /// The length, without its direction.
    #[must_use]
    pub const fn length(self) -> Length {
        match self {
            Self::Less(length) | Self::Plus(length) => length,
        }
    }

    /// `less` or `plus`.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Less(_) => "less",
            Self::Plus(_) => "plus",
        }
    }

    /// A measure with it.
    fn apply(self, measure: Length) -> Length {
        match self {
            Self::Less(length) => measure - length,
            Self::Plus(length) => measure + length,
        }
    }
}

impl Measure {
    /// Every side that it leans on, for a side `own`.
    #[must_use]
    pub fn leans_on(&self, own: Extent) -> Vec<(Of, Extent)> {
        match self {
            Self::Own(_) => Vec::new(),
            Self::Same(of, side) | Self::Part { of, side, .. } => vec![(*of, *side)],
            Self::Share { of, .. } => vec![(*of, own)],
            Self::Drawn { of, .. } => vec![(*of, Extent::Width)],
            Self::Rest { of, after, .. } => {
                std::iter::once((*of, own)).chain(after.iter().map(|piece| (Of::Piece(*piece), own))).collect()
            }
        }
    }

    /// What it comes to for a side `own`; none where it leans on something unknown. It may be nothing
    /// or less.
    #[must_use]
    pub fn result(&self, own: Extent, known: impl Fn(Of, Extent) -> Option<Length>) -> Option<Length> {
        match self {
            Self::Own(length) => Some(*length),
            Self::Same(of, side) => known(*of, *side),
            Self::Part { of, side, parts } => known(*of, *side).map(|whole| divided(whole, *parts)),
            Self::Drawn { of, height, ruler } => {
                known(*of, Extent::Width).map(|width| drawn_height(width, *height, *ruler))
            }
            Self::Rest { of, after, gap } => after
                .iter()
                .try_fold(known(*of, own)?, |rest, piece| Some(rest - known(Of::Piece(*piece), own)? - *gap)),
            Self::Share { of, count, gap } => {
                let gaps = *gap * i64::from(count.saturating_sub(1));
                known(*of, own).map(|whole| divided(whole - gaps, *count))
            }
        }
    }
}

/// The height of the rectangle round a drawing of this width, on the ruler. A mark that it passes by less
/// than what nobody can see still holds it.
pub(crate) fn drawn_height(width: Length, height: i64, ruler: Length) -> Length {
    let exact = i128::from(width.nm()) * i128::from(height) / i128::from(DRAWN_WIDTH);
    let exact = i64::try_from(exact).unwrap_or(LARGEST_NM) - TOLERANCE;
    let step = ruler.nm().max(1);
    let steps = exact.max(1).saturating_add(step - 1) / step;
    Length::new(step.saturating_mul(steps), width.unit())
}

/// A whole part, rounded down to the nanometre.
fn divided(whole: Length, parts: u32) -> Length {
    Length::new(whole.nm().div_euclid(i64::from(parts.max(1))), whole.unit())
}

impl Relation {
    /// What it comes to for a side `own`; none where it leans on something unknown.
    #[must_use]
    pub fn result(&self, own: Extent, known: impl Fn(Of, Extent) -> Option<Length>) -> Option<Length> {
        let measure = self.measure.result(own, known)?;
        Some(self.change.map_or(measure, |change| change.apply(measure)))
    }
}

impl Stated {
    /// The relation of one side, where each side has its own.
    #[must_use]
    pub const fn side(&self, own: Extent) -> Option<&Relation> {
        match (self, own) {
            (Self::BySide { width, .. }, Extent::Width) => Some(width),
            (Self::BySide { height, .. }, Extent::Height) => Some(height),
            _ => None,
        }
    }

    /// Every side that a side leans on; nothing where it is written outright.
    #[must_use]
    pub fn leans_on(&self, own: Extent) -> Vec<(Of, Extent)> {
        match self {
            Self::Outright => Vec::new(),
            Self::AllRound { of, .. } | Self::ByEdge { of, .. } => vec![(*of, own)],
            Self::BySide { .. } => self.side(own).map_or_else(Vec::new, |side| side.measure.leans_on(own)),
        }
    }

    /// What a side comes to. None where the size is written outright, or leans on something unknown. It
    /// may be nothing or less.
    #[must_use]
    pub fn result(&self, own: Extent, known: impl Fn(Of, Extent) -> Option<Length>) -> Option<Length> {
        match self {
            Self::Outright => None,
            Self::AllRound { of, border } => known(*of, own).map(|whole| whole - *border * 2),
            Self::ByEdge { of, edges } => {
                known(*of, own).map(|whole| edges_of(edges, own).fold(whole, |rest, (_, length)| rest - length))
            }
            Self::BySide { .. } => self.side(own)?.result(own, known),
        }
    }

    /// The same with every piece so many places further on.
    #[must_use]
    pub fn moved(self, by: usize) -> Self {
        let to = |of: Of| match of {
            Of::Card => Of::Card,
            Of::Piece(piece) => Of::Piece(PieceId(piece.0 + by)),
        };
        let side = |relation: Relation| Relation {
            measure: match relation.measure {
                Measure::Own(length) => Measure::Own(length),
                Measure::Same(of, side) => Measure::Same(to(of), side),
                Measure::Part { of, side, parts } => Measure::Part { of: to(of), side, parts },
                Measure::Drawn { of, height, ruler } => Measure::Drawn { of: to(of), height, ruler },
                Measure::Rest { of, after, gap } => {
                    let after = after.into_iter().map(|piece| PieceId(piece.0 + by)).collect();
                    Measure::Rest { of: to(of), after, gap }
                }
                Measure::Share { of, count, gap } => Measure::Share { of: to(of), count, gap },
            },
            ..relation
        };
        match self {
            Self::Outright => Self::Outright,
            Self::AllRound { of, border } => Self::AllRound { of: to(of), border },
            Self::ByEdge { of, edges } => Self::ByEdge { of: to(of), edges },
            Self::BySide { width, height } => Self::BySide { width: side(width), height: side(height) },
        }
    }
}

/// The edges that take from a side.
pub(crate) fn edges_of(edges: &[(Edge, Length)], own: Extent) -> impl Iterator<Item = (Edge, Length)> + '_ {
    edges.iter().copied().filter(move |(edge, _)| Extent::at(*edge) == own)
}
