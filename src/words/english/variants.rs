//! What is said on the handouts beside the usual one: one leaf, the try-out page, the designer's copy.

use super::{capital, counted, listed};
use crate::words::Line;

/// "Lantern Row, November 2026, try-out page": the file's title.
#[must_use]
pub fn leaf_title(title: &str) -> String {
    format!("{title}, one leaf")
}

/// As [`leaf_title`].
#[must_use]
pub fn try_out_title(title: &str) -> String {
    format!("{title}, try-out page")
}

/// As [`leaf_title`].
#[must_use]
pub fn copy_title(title: &str) -> String {
    format!("{title}, designer's copy")
}

/// Title of a leaf's back.
pub const IN_SHORT: &str = "Cut and make";

/// Beside it: the numbers of a leaf.
#[must_use]
pub fn in_short_lead(inches: bool) -> Line {
    let units = if inches { "inches" } else { "millimetres" };
    Line::plain(format!(
        "Cut in the order of the flags, at the measure behind each. Measures are in {units}, from the left edge or the near edge of the sheet as it lies."
    ))
}

/// Over the steps of a leaf or of a try-out page.
pub const WHERE_THINGS_GO: &str = "Where each layer goes, and the borders to show";

/// Before a paper's pieces to tick.
#[must_use]
pub fn then_you_have(items: Vec<Line>) -> Line {
    Line::plain("You have ").then(listed(items)).text(".")
}

/// Title of the try-out page.
pub const TRY_OUT: &str = "Try it out small";

/// Beside it.
#[must_use]
pub fn try_out_lead() -> Line {
    Line::plain(
        "All pieces of one card at half size. Print them on plain paper, build the small card, and only then cut the good paper.",
    )
}

/// How to go about it.
#[must_use]
pub fn try_out_how(folds: bool) -> Vec<Line> {
    let mut lines = vec![Line::plain("Cut along the wide lines.")];
    if folds {
        lines.push(Line::plain("Fold where the dashes and dots run."));
    }
    lines.push(Line::plain(
        "The numbers on the pieces are the sizes of the true card; each measures half of that here.",
    ));
    lines
}

/// Before scissors are taken up.
#[must_use]
pub fn try_out_caution() -> Line {
    Line::plain("Scissors and blades cut fingers too: cut away from your body, and keep them from small children.")
}

/// Over the finished card of the try-out page.
#[must_use]
pub fn as_it_will_be(version: &str) -> Line {
    if version.is_empty() {
        Line::plain("The finished card, at half size too")
    } else {
        Line::plain(format!("The finished card in {version}, at half size too"))
    }
}

/// Over a piece of the try-out page: "2 lanterns (4) from ember".
#[must_use]
pub fn try_piece(count: u32, name: &str, ring: u32, paper: &str) -> Line {
    let line = Line::plain(format!("{} ", capital(&counted(count, name)))).ring(ring);
    if paper.is_empty() { line } else { line.text(format!(" from {paper}")) }
}

/// What a piece of the try-out page shows, for readers who cannot see it.
#[must_use]
pub fn try_piece_told(name: &str, size: &str, folds: usize) -> String {
    let folds = match folds {
        0 => String::new(),
        1 => ", with 1 fold".to_owned(),
        many => format!(", with {many} folds"),
    };
    format!("The {name} at half size, to cut out; the true one is {size}{folds}.")
}

/// Over the papers by ring, where nothing is hatched: "(3) dusk, (4) ember".
#[must_use]
pub fn papers_by_ring(papers: &[(Vec<u32>, String)]) -> Line {
    let each = papers.iter().map(|(rings, paper)| {
        let rings = rings
            .iter()
            .enumerate()
            .fold(Line::new(), |line, (at, ring)| if at > 0 { line.text(" ").ring(*ring) } else { line.ring(*ring) });
        rings.text(format!(" {paper}"))
    });
    listed(each.collect())
}

/// Title of the designer's pages.
pub const FOR_THE_DESIGNER: &str = "For the designer alone";

/// Beside it.
#[must_use]
pub fn designers_lead() -> Line {
    Line::plain(
        "What was found, what you allow, and what the cutting plan rests on. Readers get the same pages without these.",
    )
}

/// Title over the findings.
pub const FOUND: &str = "What was found";
/// Title over what is allowed.
pub const ALLOWED: &str = "What you allow";
/// Title over the design read back.
pub const READ_BACK: &str = "The design as it is printed";
/// Title over the aims.
pub const PROOF: &str = "What the plan reaches";

/// Where there is nothing.
#[must_use]
pub fn nothing_found() -> Line {
    Line::plain("Nothing that is not allowed.")
}

/// Under the title over the aims.
#[must_use]
pub fn proof_note() -> Line {
    Line::plain(
        "Aims in their order: a later one never costs an earlier one. Every cut was replayed on a blank sheet, and gave the promised pieces.",
    )
}

/// Heads of the table of aims.
#[must_use]
pub fn proof_heads() -> [String; 4] {
    ["Aim", "Reached", "No plan does better than", "Proof"].map(str::to_owned)
}

/// Names of the aims in their order.
pub const AIMS: [&str; 6] =
    ["Cards", "Sheets", "Different cutting diagrams", "Cuts on all sheets", "Changes of measure", "Largest leftover"];

/// Whether an aim is proven.
#[must_use]
pub const fn proven(proven: bool) -> &'static str {
    if proven { "proven best" } else { "best found" }
}

/// An area: "48.1 sq in", "310 cm²", from square micrometres.
#[must_use]
pub fn area(square_micrometres: u64, inches: bool) -> String {
    if inches {
        // A square inch has 645.16 million square micrometres.
        let tenths = square_micrometres / 64_516_000;
        format!("{}.{} sq in", tenths / 10, tenths % 10)
    } else {
        format!("{} sq cm", square_micrometres / 100_000_000)
    }
}
