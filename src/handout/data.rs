//! What the templates read: every word and picture of a handout, page by page.
//!
//! Plain values that serialise to the virtual data file; what is drawn in their pictures goes into another one
//! beside it. All words are in it already; the templates hold none.

mod forms;
mod look;
mod work;

use serde::Serialize;
use serde_json::Value;

use crate::drawing::scene::Scene;
use crate::words::{Inline, Line, roman};

pub(super) use forms::{LeafCut, LeafPage, LeafPanel, ProofPages, ProofPart, ProofTable, TryOutPages};
pub(super) use look::{AccentColours, ImprintData, PhotoFigure, StoredPicture, WebLink};
pub(super) use work::{CutLine, CutPanel, CuttingPages, MakingPages, StepCell, StepPart, TickRow, Ticks};

/// A run of a sentence: `text`, `strong`, `measure`, `ring`, `leftover` or `cut`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Run {
    /// Which of them.
    pub kind: &'static str,
    /// Its text; a ring's or leftover's number as it is printed.
    pub text: String,
}

/// One sentence or paragraph, as runs.
pub(super) type Said = Vec<Run>;

/// A line of the catalogue as runs.
#[must_use]
pub(super) fn said(line: &Line) -> Said {
    let mut runs: Said = Vec::new();
    for part in &line.0 {
        let (kind, text) = match part {
            Inline::Text(text) => ("text", text.clone()),
            Inline::Strong(text) => ("strong", text.clone()),
            Inline::Measure(text) => ("measure", text.clone()),
            Inline::Ring(ring) => ("ring", ring.to_string()),
            Inline::Leftover(number) => ("leftover", roman(*number)),
            Inline::Cut(cut) => ("cut", cut.clone()),
        };
        // Plain words that follow each other are one run, so that the page sees whole words.
        match runs.last_mut() {
            Some(last) if last.kind == kind && kind == "text" => last.text.push_str(&text),
            _ => runs.push(Run { kind, text }),
        }
    }
    runs
}

/// Several lines as runs.
#[must_use]
pub(super) fn all_said(lines: &[Line]) -> Vec<Said> {
    lines.iter().map(said).collect()
}

/// Everything on the pages of one handout: which of them there are depends on what it is for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct HandoutData {
    /// `letter` or `a4`.
    pub paper: &'static str,
    /// How much larger all is printed than it is set, in tenths.
    pub zoom: i64,
    /// Whether hatches and other filled areas are printed.
    pub fills: bool,
    /// Language tag.
    pub lang: String,
    /// Title of the file.
    pub file_title: String,
    /// Who gives it away; none where the design does not say.
    pub author: Vec<String>,
    /// Pens and letters of the scenes.
    pub style: Value,
    /// The two colours beside ink and slate.
    pub accents: AccentColours,
    /// The designer's own look; none where the design names no imprint.
    pub imprint: Option<ImprintData>,
    /// The foot of every page.
    pub footer: Footer,
    /// The draft's mark and findings.
    pub draft: Option<Draft>,
    /// The front page.
    pub front: Option<FrontPage>,
    /// The other sides of the card and its envelope; none where nothing lies on them.
    pub sides: Option<SidePages>,
    /// All diagrams, and what shows when the card is made, on the back of one leaf.
    pub leaf: Option<LeafPage>,
    /// The cutting pages.
    pub cutting: Option<CuttingPages>,
    /// The same from other sheets that somebody may hold.
    pub others: Option<CuttingPages>,
    /// Putting together; none where nothing is put together.
    pub together: Option<MakingPages>,
    /// Supplies and finishing.
    pub supplies: Option<SupplyPages>,
    /// The swatch page.
    pub swatch: Option<SwatchPage>,
    /// The pieces of one card at half size.
    pub try_out: Option<TryOutPages>,
    /// What only the designer sees.
    pub proof: Option<ProofPages>,
}

/// The foot of every page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Footer {
    /// Left: who gives it away.
    pub left: String,
    /// Middle: the title.
    pub title: String,
    /// Behind the title: month and units.
    pub rest: String,
    /// The word before the page number.
    pub page: String,
    /// The word before the number of pages.
    pub of: String,
}

/// What makes a draft one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Draft {
    /// The word on every page.
    pub mark: String,
    /// Title of the last page.
    pub heading: String,
    /// Beside it.
    pub lead: Said,
    /// The findings, as plain text.
    pub lines: Vec<String>,
}

/// A framed call-out.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CallOut {
    /// Its title.
    pub title: String,
    /// Whether it warns.
    pub caution: bool,
    /// Its sentences, one a line.
    pub lines: Vec<Said>,
}

/// A value and what it is about.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Fact {
    /// Large.
    pub value: Said,
    /// Small, under it.
    pub note: Said,
}

/// A picture with its caption; its scale stands in the picture.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Figure {
    /// Above it.
    pub caption: Said,
    /// The picture.
    pub scene: Scene,
}

/// The front page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct FrontPage {
    /// Above the title.
    pub over: String,
    /// The title.
    pub title: String,
    /// Under it.
    pub about: Vec<Said>,
    /// Facts at a glance.
    pub facts: Vec<Fact>,
    /// The cut list.
    pub cut_list: CutList,
    /// The finished card, one figure a version: the same in several scales, the largest first.
    pub figures: Vec<Vec<Figure>>,
    /// The finished card as the camera saw it.
    pub photos: Vec<PhotoFigure>,
    /// What is unusual this month.
    pub boxes: Vec<CallOut>,
}

/// The other sides of the card and its envelope, finished.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SidePages {
    /// Title.
    pub title: String,
    /// What is shown.
    pub lead: Said,
    /// One figure a side.
    pub figures: Vec<Figure>,
}

/// The cut list, grouped by paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CutList {
    /// Its title.
    pub title: String,
    /// What its numbers are.
    pub note: Said,
    /// How many papers stand side by side: 3 or 4.
    pub across: usize,
    /// One entry a paper, in the order written.
    pub papers: Vec<PaperList>,
}

/// What is cut from one paper.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PaperList {
    /// Its hatch.
    pub swatch: Scene,
    /// Its name.
    pub name: String,
    /// Sheets and their size.
    pub note: Said,
    /// Pattern and weight.
    pub kind: Said,
    /// Pieces, large to small.
    pub rows: Vec<PieceRow>,
}

/// One piece of a cut list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PieceRow {
    /// How many in all.
    pub count: String,
    /// What they are.
    pub name: String,
    /// Their ring number.
    pub ring: String,
    /// Width x height, unturned, as cut.
    pub size: Said,
    /// What becomes of the size later.
    pub note: Option<Said>,
}

/// Supplies and finishing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SupplyPages {
    /// Title.
    pub title: String,
    /// What the numbers are.
    pub lead: Said,
    /// Lists to tick.
    pub lists: Vec<TickList>,
    /// The leftovers.
    pub leftovers: Option<LeftoverTable>,
    /// Inside, envelope, post, ideas.
    pub told: Vec<Told>,
    /// The bars that show whether the print is true.
    pub print: PrintCheck,
    /// What can hurt.
    pub cautions: Vec<CallOut>,
}

/// A list to tick.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct TickList {
    /// Title.
    pub title: String,
    /// Its lines.
    pub items: Vec<TickItem>,
}

/// A line to tick.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct TickItem {
    /// A paper's hatch.
    pub swatch: Option<Scene>,
    /// What to have.
    pub line: Said,
}

/// What is left over and what it is good for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LeftoverTable {
    /// Title.
    pub title: String,
    /// Column heads.
    pub heads: [String; 4],
    /// One row a leftover.
    pub rows: Vec<LeftoverRow>,
}

/// One leftover.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct LeftoverRow {
    /// Its numeral.
    pub number: String,
    /// Its paper, and how many there are.
    pub from: String,
    /// Its size.
    pub size: Said,
    /// What it is good for.
    pub idea: Said,
}

/// Sentences under a title.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Told {
    /// Title.
    pub title: String,
    /// A picture above them.
    pub scene: Option<Scene>,
    /// The sentences.
    pub lines: Vec<Said>,
}

/// The bars that show whether the print is true.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PrintCheck {
    /// Title.
    pub title: String,
    /// What to do.
    pub line: Said,
    /// A 5 cm and a 2 in bar.
    pub bars: Scene,
}

/// The swatch page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub struct SwatchPage {
    /// Title.
    pub title: String,
    /// What to do with it.
    pub lead: Said,
    /// Outlined cards.
    pub cards: Vec<Figure>,
    /// Over the places for scraps.
    pub papers_title: String,
    /// How many of them stand side by side: 3 or 4.
    pub across: usize,
    /// One place a paper.
    pub papers: Vec<Scrap>,
}

/// A place for a scrap.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Scrap {
    /// Whose place it is.
    pub label: Said,
}
