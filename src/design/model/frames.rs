//! The placing frames that a design asks for.

use super::{LayerId, Onto};
use crate::source::Span;

/// Which true-size guides a design asks for. Templates and score positions come with any.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum Frames {
    /// None: `frames` is not written.
    #[default]
    No,
    /// A frame wherever a place is hard to find by eye.
    ThatHelp(Span),
    /// These.
    These(Vec<Framed>),
}

/// One frame asked for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Framed {
    /// The layers that it lays, at least one, none twice.
    pub layers: Vec<LayerId>,
    /// What it lies on; where nothing is said, the nearest thing below that a frame can lie on.
    pub on: Option<Onto>,
    /// Where it is written.
    pub span: Span,
}
