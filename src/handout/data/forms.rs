//! The pages of the forms beside the usual handout: one leaf, the try-out page, the designer's copy.

use serde::Serialize;

use super::{Figure, Said};
use crate::drawing::scene::Scene;

/// The back of one leaf.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct LeafPage {
    /// Title.
    pub title: String,
    /// How numbers are meant.
    pub lead: Said,
    /// What can hurt.
    pub caution: Said,
    /// One a diagram.
    pub panels: Vec<LeafPanel>,
    /// Over the lines.
    pub lines_title: String,
    /// Where each layer goes and which borders show, one line a step of gluing or trimming.
    pub lines: Vec<Said>,
}

/// A diagram with the measures of its cuts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct LeafPanel {
    /// Hatches of the papers cut so.
    pub swatches: Vec<Scene>,
    /// Their names.
    pub name: String,
    /// Sheets, size, pattern.
    pub note: Said,
    /// The diagram.
    pub scene: Option<Scene>,
    /// The cut numbers and their measure, in order.
    pub cuts: Vec<LeafCut>,
}

/// A measure on a leaf.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LeafCut {
    /// The cut numbers.
    pub cuts: String,
    /// The measure.
    pub measure: String,
}

/// The pieces of one card at half size.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct TryOutPages {
    /// Title.
    pub title: String,
    /// What they are for.
    pub lead: Said,
    /// How to go about it, one a line.
    pub lines: Vec<Said>,
    /// What can hurt.
    pub caution: Said,
    /// The bars that show whether the print is true.
    pub bars: Scene,
    /// The finished card, to build after.
    pub finished: Option<Figure>,
    /// The pieces, in rows.
    pub rows: Vec<Vec<Figure>>,
    /// Where each goes, one line a step.
    pub steps: Vec<Said>,
    /// Over them.
    pub steps_title: String,
}

/// What only the designer sees.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct ProofPages {
    /// Title.
    pub title: String,
    /// What these pages are.
    pub lead: Said,
    /// Texts under titles.
    pub parts: Vec<ProofPart>,
    /// The table of aims.
    pub aims: ProofTable,
}

/// Lines under a title.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ProofPart {
    /// Title.
    pub title: String,
    /// One paragraph a line.
    pub lines: Vec<Said>,
}

/// What the plan reaches.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ProofTable {
    /// Title.
    pub title: String,
    /// Under it.
    pub note: Said,
    /// Column heads.
    pub heads: [String; 4],
    /// One row an aim.
    pub rows: Vec<[String; 4]>,
}
