//! The steps of the whole job, in batch order: print, cut, finish shapes, stamp, score and fold, sort, put
//! small units together, layer, decorate.

use crate::design::model::{LayerId, PieceId, VersionId, Work};

/// Everything to do, in order.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Steps {
    /// In batch order; numbered from 1 in this order, cutting excepted (cuts have their own).
    pub steps: Vec<Step>,
}

/// One action, done for all cards before the next one is begun.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// Its number on the page; cutting steps have none.
    pub number: Option<u32>,
    /// The kind of work.
    pub work: Work,
    /// What is done.
    pub action: Action,
    /// How often, over all cards.
    pub times: u32,
    /// Notes that stand before it: indices into the design's notes.
    pub notes: Vec<usize>,
    /// What the reader has when it is done, where that is worth counting.
    pub checkpoint: Vec<(PieceId, u32)>,
}

/// What a step does.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Action {
    /// Cut a sheet, or several alike: an index into the plan's sheets.
    Cut {
        /// The plan's sheet.
        sheet: usize,
    },
    /// Print words on the paper of a piece before it is cut.
    Print {
        /// The piece.
        piece: PieceId,
    },
    /// Make a piece from its trimmed rectangle, or from what a window left over.
    Finish {
        /// The piece; of two triangles that share rectangles the one that is written first.
        piece: PieceId,
        /// Whether triangles that share their rectangles are parted.
        shared: bool,
    },
    /// Stamp a piece before it is glued.
    Stamp {
        /// The piece.
        piece: PieceId,
    },
    /// Score and fold the bases.
    ScoreAndFold {
        /// The base.
        piece: PieceId,
    },
    /// Lay out a pile for each card.
    Sort,
    /// Glue a layer onto what it lies on.
    Glue {
        /// The layer.
        layer: LayerId,
        /// Whether the layer under it is still loose (a small unit) and not yet on the card.
        loose: bool,
    },
    /// Turn a unit over and trim a layer level with what it is trimmed to.
    Trim {
        /// The layer.
        layer: LayerId,
        /// Whether this happens before the unit is glued to the card.
        loose: bool,
    },
    /// Decorate as a note of the designer says: an index into the design's notes.
    Decorate {
        /// The note.
        note: usize,
    },
}

impl Steps {
    /// The steps of one kind of work.
    pub fn of(&self, work: Work) -> impl Iterator<Item = &Step> {
        self.steps.iter().filter(move |step| step.work == work)
    }
}

/// The layers that are already there when a step begins, and the one it adds: for its picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// Layers there already, lowest first.
    pub there: Vec<LayerId>,
    /// The new layer, if the step adds or trims one.
    pub new: Option<LayerId>,
    /// Whether the card base is in the picture.
    pub base: bool,
    /// The version drawn.
    pub version: VersionId,
}
