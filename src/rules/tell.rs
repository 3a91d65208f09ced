//! What the rules share: the names of things and of directions, and lengths as the edition prints
//! them.

use crate::design::model::{
    Along, Arrangement, Design, Layer, LayerId, Onto, PaperId, Part, Pattern, PieceId, Side, VersionId,
};
use crate::geometry::{Edge, Rect};
use crate::length::Length;
use crate::project::Project;
use crate::source::Span;

/// A length of the edition, in its main unit.
pub(crate) fn length(project: &Project, nm: i64) -> Length {
    Length::of(nm, project.units())
}

/// `the mat`, `the lantern row`.
pub(crate) fn the_layer(design: &Design, id: LayerId) -> String {
    let layer = design.layer(id);
    match layer.arrangement {
        Arrangement::Single => format!("the {}", layer.name),
        Arrangement::Row { .. } => format!("the {} row", layer.name),
        Arrangement::Column { .. } => format!("the {} column", layer.name),
        Arrangement::Grid { .. } => format!("the {} grid", layer.name),
        Arrangement::Steps { .. } => format!("the {} steps", layer.name),
        Arrangement::Triangle { .. } => format!("the {} triangle", layer.name),
        Arrangement::Fan { .. } => format!("the {} fan", layer.name),
        Arrangement::Pinwheel { .. } => format!("the {} ring", layer.name),
    }
}

/// `the card`, `the mat`.
pub(crate) fn the_ground(design: &Design, onto: Onto) -> String {
    match onto {
        Onto::Card => "the card".to_owned(),
        Onto::Layer(id) => the_layer(design, id),
    }
}

/// The paper of a piece in a version, with the pattern of the side that shows.
pub(crate) fn shown(design: &Design, piece: PieceId, version: VersionId) -> Option<(PaperId, Pattern)> {
    let id = design.paper_of(piece, version)?;
    let paper = design.paper(id);
    let back = paper.back.filter(|_| design.side_of(piece, version) == Side::Back);
    Some((id, back.map_or(paper.pattern, |back| back.pattern)))
}

/// Where the size of what a layer lies on is written.
pub(crate) fn ground_span(design: &Design, onto: Onto) -> Option<Span> {
    match onto {
        Onto::Card => design.card.as_ref().map(|card| card.span),
        Onto::Layer(id) => Some(design.piece(design.layer(id).piece).size_span),
    }
}

/// One of the two directions of a card.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Axis {
    /// Left to right.
    Across,
    /// Bottom to top.
    Up,
}

impl Axis {
    pub(crate) const BOTH: [Self; 2] = [Self::Across, Self::Up];

    /// The edge that `FromLow` is measured from.
    pub(crate) const fn low(self) -> Edge {
        match self {
            Self::Across => Edge::Left,
            Self::Up => Edge::Bottom,
        }
    }

    /// The edge that `FromHigh` is measured from.
    pub(crate) const fn high(self) -> Edge {
        self.low().opposite()
    }

    /// How far a rectangle reaches along it.
    pub(crate) const fn extent(self, rect: Rect) -> i64 {
        match self {
            Self::Across => rect.width(),
            Self::Up => rect.height(),
        }
    }

    /// How a layer is placed along it.
    pub(crate) const fn along(self, layer: &Layer) -> Along {
        match self {
            Self::Across => layer.across,
            Self::Up => layer.up,
        }
    }

    /// Copies side by side along it, and the gap between them.
    pub(crate) fn copies(self, project: &Project, layer: &Layer) -> (u32, Length) {
        let (columns, rows) = layer.arrangement.columns_rows();
        let (across, down) = layer.arrangement.gaps(project.units());
        match self {
            Self::Across => (columns, across),
            Self::Up => (rows, down),
        }
    }

    /// `wide` or `high`.
    pub(crate) const fn measure(self) -> &'static str {
        match self {
            Self::Across => "wide",
            Self::Up => "high",
        }
    }

    /// `wider` or `higher`.
    pub(crate) const fn more(self) -> &'static str {
        match self {
            Self::Across => "wider",
            Self::Up => "higher",
        }
    }

    /// `narrower` or `lower`.
    pub(crate) const fn less(self) -> &'static str {
        match self {
            Self::Across => "narrower",
            Self::Up => "lower",
        }
    }

    /// The word after `centre:`.
    pub(crate) const fn centre(self) -> &'static str {
        match self {
            Self::Across => "across",
            Self::Up => "up and down",
        }
    }
}

/// The key that places a layer along an axis, as it is written in a design.
pub(crate) fn key(axis: Axis, along: Along) -> &'static str {
    match (axis, along) {
        (_, Along::Centre) => "centre",
        (_, Along::FromLow(_)) => axis.low().word(),
        (_, Along::FromHigh(_)) => axis.high().word(),
        (Axis::Across, Along::After(..)) => "right of",
        (Axis::Across, Along::Before(..)) => "left of",
        (Axis::Up, Along::After(..)) => "above",
        (Axis::Up, Along::Before(..)) => "below",
        (Axis::Across, Along::With(_, Part::Low)) => "left with",
        (Axis::Across, Along::With(_, Part::Middle)) => "centred across",
        (Axis::Across, Along::With(_, Part::High)) => "right with",
        (Axis::Up, Along::With(_, Part::Low)) => "bottom with",
        (Axis::Up, Along::With(_, Part::Middle)) => "centred up",
        (Axis::Up, Along::With(_, Part::High)) => "top with",
        (Axis::Across, Along::Midway(..)) => "midway across",
        (Axis::Up, Along::Midway(..)) => "midway up",
    }
}
