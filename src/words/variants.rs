//! What is said on the handouts beside the usual one: one leaf, the try-out page, the designer's copy.

use super::pages::key;
use super::{Line, Words, counts};
use crate::length::Units;

fixed_words! {
    /// Title of a leaf's back.
    in_short = "in-short";
    /// Over the steps of a leaf or of a try-out page.
    where_things_go = "where-things-go";
    /// Title of the try-out page.
    try_out = "try-out";
    /// Title of the designer's pages.
    for_the_designer = "for-the-designer";
    /// Title over the findings.
    found = "found-title";
    /// Title over what is allowed.
    allowed = "allowed-title";
    /// Title over the design read back.
    read_back = "read-back-title";
    /// Title over the aims.
    proof = "proof-title";
}

fixed_lines! {
    /// Beside the title of the try-out page.
    try_out_lead = "try-out-lead";
    /// Before scissors are taken up.
    try_out_caution = "try-out-caution";
    /// Beside the title of the designer's pages.
    designers_lead = "designers-lead";
    /// Where there is nothing to show.
    nothing_found = "nothing-found";
    /// Under the title over the aims.
    proof_note = "proof-note";
}

/// "Lantern Row, November 2026, one leaf": the file's title.
#[must_use]
pub fn leaf_title(say: &Words, title: &str) -> String {
    say.tell("leaf-title").name("title", title).string()
}

/// As [`leaf_title`].
#[must_use]
pub fn try_out_title(say: &Words, title: &str) -> String {
    say.tell("try-out-title").name("title", title).string()
}

/// As [`leaf_title`].
#[must_use]
pub fn copy_title(say: &Words, title: &str) -> String {
    say.tell("copy-title").name("title", title).string()
}

/// Beside the title of a leaf's back: the numbers of a leaf.
#[must_use]
pub fn in_short_lead(say: &Words, units: Units) -> Line {
    say.tell("in-short-lead").kind("units", key(units)).line()
}

/// Before a paper's pieces to tick.
#[must_use]
pub fn then_you_have(say: &Words, items: Vec<Line>) -> Line {
    say.tell("then-you-have").part("pieces", &counts::listed(say, items)).line()
}

/// How to go about a try-out page.
#[must_use]
pub fn try_out_how(say: &Words, folds: bool) -> Vec<Line> {
    let mut lines = vec![say.tell("try-out-cut").line()];
    if folds {
        lines.push(say.tell("try-out-fold").line());
    }
    lines.push(say.tell("try-out-sizes").line());
    lines
}

/// Over the finished card of the try-out page.
#[must_use]
pub fn as_it_will_be(say: &Words, version: &str) -> Line {
    if version.is_empty() {
        return say.tell("as-it-will-be").line();
    }
    say.tell("as-it-will-be-version").name("version", version).line()
}

/// Over a piece of the try-out page: "2 lanterns (4) from ember".
#[must_use]
pub fn try_piece(say: &Words, count: u32, name: &str, ring: u32, paper: &str) -> Line {
    let id = if paper.is_empty() { "try-piece" } else { "try-piece-from" };
    say.tell(id).count("count", count).name("name", name).ring("ring", ring).name("paper", paper).line()
}

/// What a piece of the try-out page shows, for readers who cannot see it.
#[must_use]
pub fn try_piece_told(say: &Words, name: &str, size: &str, folds: usize) -> String {
    say.tell("try-piece-told").name("name", name).size("size", size).count("folds", folds).string()
}

/// Over the papers by ring, where nothing is hatched: "(3) dusk, (4) ember".
#[must_use]
pub fn papers_by_ring(say: &Words, papers: &[(Vec<u32>, String)]) -> Line {
    let each = papers.iter().map(|(rings, paper)| {
        let rings = rings
            .iter()
            .enumerate()
            .fold(Line::new(), |line, (at, ring)| if at > 0 { line.text(" ").ring(*ring) } else { line.ring(*ring) });
        say.tell("rings-paper").part("rings", &rings).name("paper", paper).line()
    });
    counts::listed(say, each.collect())
}

/// Heads of the table of aims.
#[must_use]
pub fn proof_heads(say: &Words) -> [String; 4] {
    ["proof-head-aim", "proof-head-reached", "proof-head-bound", "proof-head-proof"].map(|id| say.tell(id).string())
}

/// Names of the aims in their order.
#[must_use]
pub fn aims(say: &Words) -> [String; 6] {
    ["aim-cards", "aim-sheets", "aim-diagrams", "aim-cuts", "aim-changes", "aim-leftover"]
        .map(|id| say.tell(id).string())
}

/// Whether an aim is proven.
#[must_use]
pub fn proven(say: &Words, proven: bool) -> String {
    say.tell("proven").whether("proven", proven).string()
}

/// An area: "48.1 sq in", "310 sq cm", from square micrometres.
#[must_use]
pub fn area(say: &Words, square_micrometres: u64, units: Units) -> String {
    let area = match units {
        Units::Inch => {
            // A square inch has 645.16 million square micrometres.
            let tenths = square_micrometres / 64_516_000;
            format!("{}.{}", tenths / 10, tenths % 10)
        }
        Units::Metric => (square_micrometres / 100_000_000).to_string(),
    };
    say.tell("area").kind("units", key(units)).size("area", &area).string()
}
