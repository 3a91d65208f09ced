//! What the sheets at hand give, and what other sheets would.

use super::pages::{paper_names, units, version};
use super::{Line, Words, counts};
use crate::geometry::Edge;
use crate::length::Units;

fixed_words! {
    /// Title of the pages of other sheets.
    other_sheets = "other-sheets";
}

fixed_lines! {
    /// What these pages are for.
    other_sheets_lead = "other-sheets-lead";
}

/// Sheets of a paper: `1 of 12 x 12 in and 2 of letter`.
#[must_use]
pub fn sheets(say: &Words, kinds: &[(u32, String)]) -> String {
    let told =
        |(count, size): &(u32, String)| say.tell("sheets-of-size").count("count", *count).size("size", size).string();
    counts::listed_words(say, &kinds.iter().map(told).collect::<Vec<_>>())
}

/// "Dusk: 3 of 6 x 6 in instead of 1 of 12 x 12 in."
#[must_use]
pub fn instead(say: &Words, paper: &str, new: &str, old: &str) -> String {
    say.tell("instead").name("paper", paper).name("new", new).name("old", old).string()
}

/// "Each is taken to have the edge strip of 1/2 in at the bottom; say … if not."
#[must_use]
pub fn keeps_its_strip(say: &Words, width: &str, edge: Edge) -> String {
    say.tell("keeps-its-strip").size("width", width).kind("edge", edge.word()).string()
}

/// "The sheets at hand give 10 cards at most: 5 dusk and 5 ember. The design asks for 8."
/// `versions` names every version with its cards, or is empty where there are none.
#[must_use]
pub fn most(say: &Words, found: u32, bound: u32, versions: &[(u32, String)], asked: u32) -> String {
    let id = if found == bound {
        "most-proven"
    } else if bound == u32::MAX {
        "most-at-least"
    } else {
        "most-so-far"
    };
    let shares: Vec<Line> = versions.iter().map(|(count, name)| version(say, *count, name)).collect();
    say.tell(id)
        .count("count", found)
        .count("bound", bound)
        .whether("shares", !shares.is_empty() && found > 0)
        .part("versions", &counts::listed(say, shares))
        .count("asked", asked)
        .string()
}

/// "Slate and White run out: they do not give one more."
#[must_use]
pub fn runs_out(say: &Words, papers: &[String], proven: bool) -> String {
    if papers.is_empty() {
        return String::new();
    }
    let tell = say.tell("runs-out").count("count", papers.len()).name("papers", &paper_names(say, papers));
    tell.whether("proven", proven).string()
}

/// What sizes are said in.
#[must_use]
pub fn units_word(say: &Words, unit: Units) -> String {
    units(say, unit)
}

/// Heading of a plan from other sheets: "Dusk, if you have 4 of 6 x 6 in instead".
#[must_use]
pub fn cut_from(say: &Words, paper: &str, sheets: &str) -> String {
    say.tell("cut-from").name("paper", paper).name("sheets", sheets).string()
}

/// "These sheets give 7 cards, not 8."
#[must_use]
pub fn other_gives(say: &Words, most: u32, asked: u32) -> String {
    say.tell("other-gives").count("count", most).count("asked", asked).string()
}
