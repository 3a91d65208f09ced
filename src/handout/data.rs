//! What the templates read: every word and picture of a handout, page by page.
//!
//! Plain values that serialise to the one virtual data file. All words are in it already; the
//! templates hold none.

use serde::Serialize;
use serde_json::Value;

use crate::drawing::scene::Scene;
use crate::words::{Inline, Line, roman};

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

/// The two colours beside ink and slate, as `#0E5F70`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AccentColours {
    /// Notes, dimensions, headings.
    pub notes: String,
    /// Cuts and cautions.
    pub cuts: String,
}

/// What an imprint puts on the pages.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ImprintData {
    /// The logo.
    pub logo: Option<StoredPicture>,
    /// Title over the terms, or over the address alone.
    pub title: String,
    /// Terms of use.
    pub terms: Option<Said>,
    /// Web address.
    pub web: Option<WebLink>,
}

/// A web address.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct WebLink {
    /// As it is printed.
    pub shown: String,
    /// Where it leads.
    pub target: String,
}

/// A picture beside the data, as large as its place allows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StoredPicture {
    /// Where it lies.
    pub path: String,
    /// For those who cannot see it.
    pub alt: String,
    /// Width on paper, nm.
    pub width: i64,
    /// Height on paper, nm.
    pub height: i64,
}

/// A photo with its caption.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct PhotoFigure {
    /// Above it.
    pub caption: Said,
    /// The photo.
    pub photo: StoredPicture,
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
