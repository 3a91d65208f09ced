//! The pages of the work itself: cutting, and putting together.

use serde::Serialize;

use super::Said;
use crate::drawing::scene::Scene;

/// The cutting pages.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CuttingPages {
    /// Title.
    pub title: String,
    /// What flags and rings mean.
    pub lead: Said,
    /// Before the first cut.
    pub caution: Said,
    /// Where the measured part lies, and the designer's notes.
    pub notes: Vec<Said>,
    /// One panel a diagram.
    pub panels: Vec<CutPanel>,
    /// What the reader has when all paper is cut.
    pub closing: Said,
}

/// A diagram beside its words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CutPanel {
    /// Hatches of the papers cut so.
    pub swatches: Vec<Scene>,
    /// Their names.
    pub name: String,
    /// The title where a panel is continued.
    pub again: String,
    /// Sheets, size, pattern.
    pub note: Said,
    /// The diagram.
    pub scene: Option<Scene>,
    /// Small pictures of parts that come loose and are cut further.
    pub loose: Vec<Scene>,
    /// Bits of ruler for the odd sixteenths among its measures.
    pub ruler: Option<Scene>,
    /// Said before the rows.
    pub before: Vec<Said>,
    /// Column heads.
    pub heads: [String; 3],
    /// One row a measure.
    pub rows: Vec<CutLine>,
    /// Before the boxes to tick.
    pub have: Said,
    /// What to have.
    pub items: Vec<Said>,
    /// What is left over.
    pub left: Option<Said>,
    /// The smallest sheets that will do.
    pub slack: Said,
}

/// A row of the words beside a diagram.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CutLine {
    /// The cut numbers.
    pub cuts: String,
    /// The measure.
    pub measure: String,
    /// What to do.
    pub line: Said,
}

/// The pages of putting together.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct MakingPages {
    /// Title.
    pub title: String,
    /// How pictures are drawn, how to work in batches.
    pub lead: Said,
    /// What a cut and a fold look like, where something is folded.
    pub legend: Option<Scene>,
    /// Stamping, folding, sorting.
    pub preparing: Vec<StepCell>,
    /// Gluing, trimming, decorating: side by side of the card.
    pub parts: Vec<StepPart>,
    /// Boxes to tick, one a card.
    pub ticks: Option<Ticks>,
    /// Under the last step.
    pub foot: Option<String>,
}

/// Steps of one side of the card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StepPart {
    /// Its title; none where all steps are of one side.
    pub title: Option<String>,
    /// Its steps.
    pub steps: Vec<StepCell>,
}

/// One step.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StepCell {
    /// Its number.
    pub number: String,
    /// Its picture.
    pub scene: Option<Scene>,
    /// Notes, before anything else.
    pub notes: Vec<Said>,
    /// What can hurt, before the act.
    pub caution: Option<Said>,
    /// The act.
    pub line: Said,
    /// Bits of ruler for the odd sixteenths among its measures.
    pub ruler: Option<Scene>,
    /// A placing frame in use, where the step has one.
    pub frame: Option<Scene>,
    /// More about it, one a line.
    pub more: Vec<Said>,
    /// How often.
    pub times: Said,
    /// What the reader has now.
    pub checkpoint: Option<Said>,
}

/// A box to tick for each card.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Ticks {
    /// Title.
    pub title: String,
    /// What to do.
    pub line: Said,
    /// One row a version.
    pub rows: Vec<TickRow>,
}

/// A row of boxes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct TickRow {
    /// What they are for.
    pub label: Said,
    /// How many.
    pub count: u32,
}
