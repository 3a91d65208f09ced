//! What the sheets at hand give, and what other sheets would.

use super::{capital, counted, listed_words};
use crate::words::Line;

/// Sheets of a paper: `1 of 12 x 12 in and 2 of letter`.
#[must_use]
pub fn sheets(kinds: &[(u32, String)]) -> String {
    listed_words(&kinds.iter().map(|(count, size)| format!("{count} of {size}")).collect::<Vec<_>>())
}

/// "Dusk: 3 of 6 x 6 in instead of 1 of 12 x 12 in."
#[must_use]
pub fn instead(paper: &str, new: &str, old: &str) -> String {
    format!("{}: {new} instead of {old}.", capital(paper))
}

/// "Each is taken to have the edge strip of 1/2 in at the bottom too."
#[must_use]
pub fn keeps_its_strip(width: &str, edge: &str) -> String {
    format!(
        "Each is taken to have the edge strip of {width} at the {edge}; say `without edge strip` behind the sheets if not."
    )
}

/// "The sheets at hand give 10 cards at most: 5 dusk and 5 ember. The design asks for 8."
/// `versions` names every version with its cards, or is empty where there are none.
#[must_use]
pub fn most(found: u32, bound: u32, versions: &[(u32, String)], asked: u32) -> String {
    let cards = counted(found, "card");
    let sure = if found == bound {
        format!("{cards} at most")
    } else if bound == u32::MAX {
        format!("at least {cards}; no more are counted")
    } else {
        format!("{cards} so far as was found, and no plan more than {bound}")
    };
    let shares: Vec<String> = versions.iter().map(|(count, name)| format!("{count} {name}")).collect();
    let shares = if shares.is_empty() || found == 0 { String::new() } else { format!(": {}", listed_words(&shares)) };
    format!("The sheets at hand give {sure}{shares}. The design asks for {asked}.")
}

/// "Slate and White run out: they do not give one more."
#[must_use]
pub fn runs_out(papers: &[String], proven: bool) -> String {
    let names = listed_words(&papers.iter().map(|paper| capital(paper)).collect::<Vec<_>>());
    let found = if proven { "" } else { ", so far as was found" };
    match papers {
        [] => String::new(),
        [_] => format!("{names} runs out: it does not give one more{found}."),
        _ => format!("{names} run out: they do not give one more{found}."),
    }
}

/// What sizes are said in.
#[must_use]
pub const fn units_word(inches: bool) -> &'static str {
    if inches { "inches" } else { "millimetres" }
}

/// Heading of a plan from other sheets: "Dusk, if you have 4 of 6 x 6 in instead".
#[must_use]
pub fn cut_from(paper: &str, sheets: &str) -> String {
    format!("{}, if you have {sheets} instead", capital(paper))
}

/// "These sheets give 7 cards, not 8."
#[must_use]
pub fn other_gives(most: u32, asked: u32) -> String {
    format!("These sheets give {}, not {asked}.", counted(most, "card"))
}

/// Title of the pages of other sheets.
pub const OTHER_SHEETS: &str = "Cut from other sheets";

/// What these pages are for.
#[must_use]
pub fn other_sheets_lead() -> Line {
    Line::plain(
        "Only for papers that you hold in other sheets. Each panel is cut instead of that paper's panel before; all other papers stay as they are.",
    )
}
