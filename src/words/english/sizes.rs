//! What is said of a table of sizes.

use super::{capital, counted, listed_words};
use crate::words::{Line, Words, counted_word};

/// Which sides of the piece change.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sides {
    /// Both.
    Both,
    /// The width.
    Width,
    /// The height.
    Height,
}

/// "Lantern Row: cards as the panel grows and shrinks by 1/16 in, width and height together."
#[must_use]
pub fn title(design: &str, piece: &str, step: &str, sides: Sides) -> String {
    let sides = match sides {
        Sides::Both => "width and height together",
        Sides::Width => "in width alone",
        Sides::Height => "in height alone",
    };
    format!("{design}: cards as the {piece} grows and shrinks by {step}, {sides}.")
}

/// "The panel and the window follow as their sizes say."
#[must_use]
pub fn follow(pieces: &[String]) -> String {
    let names: Vec<String> = pieces.iter().map(|piece| format!("the {piece}")).collect();
    match pieces {
        [] => String::new(),
        [_] => format!("{} follows as its size says.", capital(&listed_words(&names))),
        _ => format!("{} follow as their sizes say.", capital(&listed_words(&names))),
    }
}

/// What a row says.
#[must_use]
pub fn rows(units: &str) -> String {
    format!(
        "Each row is the most cards that all sheets at hand give, and what these take. Sizes are width x height in {units}."
    )
}

/// Heads of the columns.
pub const HEADS: [&str; 7] = ["Step", "Size", "Cards", "Sheets", "Cuts", "Largest leftover", "Leftovers still give"];

/// `today`, `+3`, `-2`.
#[must_use]
pub fn steps(steps: i32) -> String {
    if steps == 0 { "today".to_owned() } else { format!("{steps:+}") }
}

/// A number of cards; with its bound where no proof was found: `8`, `8 (to 9)`.
#[must_use]
pub fn cards(found: u64, bound: u64) -> String {
    if found == bound { found.to_string() } else { format!("{found} (to {bound})") }
}

/// `4 1/2 x 10 1/4 dusk`.
#[must_use]
pub fn leftover(size: &str, paper: &str) -> String {
    format!("{size} {paper}")
}

/// Pieces, any one of them: `3 lanterns or 1 panel`.
#[must_use]
pub fn more(pieces: &[(u32, String)]) -> String {
    let told: Vec<String> = pieces.iter().map(|(count, name)| counted(*count, name)).collect();
    match told.as_slice() {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} or {last}", first.join(", ")),
    }
}

/// Beside a row: `2 cards fewer`.
#[must_use]
pub fn fewer(cards: u64) -> String {
    format!("{} fewer", counted(u32::try_from(cards).unwrap_or(u32::MAX), "card"))
}

/// Beside the last row that costs nothing.
pub const UP_TO_HERE: &str = "for nothing up to here";

/// Beside the first row that is too large: `the panel is too large for slate`.
#[must_use]
pub fn too_large(piece: &str, paper: &str) -> String {
    format!("the {piece} is too large for {paper}")
}

/// "It may grow by 1/8 in for nothing."
#[must_use]
pub fn grows(by: Option<&str>, at_least: bool) -> Line {
    match by {
        None => Line::plain("It may not grow at all."),
        Some(by) => {
            let least = if at_least { "at least " } else { "" };
            Line::plain(format!("It may grow by {least}")).measure(by).text(" for nothing.")
        }
    }
}

/// "At 4 1/4 x 5 1/2 in two cards are lost."
#[must_use]
pub fn lost(size: &str, cards: u32) -> Line {
    let verb = if cards == 1 { "card is lost." } else { "cards are lost." };
    Line::plain("At ").measure(size).text(format!(" {} {verb}", counted_word(Words::english(), cards)))
}

/// "At 3 1/2 x 5 in two more cards come out."
#[must_use]
pub fn gained(size: &str, cards: u32) -> Line {
    let verb = if cards == 1 { "more card comes out." } else { "more cards come out." };
    Line::plain("At ").measure(size).text(format!(" {} {verb}", counted_word(Words::english(), cards)))
}

/// "No smaller size in the table gives more."
pub const NO_GAIN: &str = "No smaller size in the table gives more.";

/// "From 8 1/2 x 5 in on the base is too large for every sheet of White."
#[must_use]
pub fn goes_no_more(size: &str, pieces: &[(String, String)]) -> Line {
    let told: Vec<String> = pieces
        .iter()
        .map(|(piece, paper)| format!("the {piece} is too large for every sheet of {}", capital(paper)))
        .collect();
    Line::plain("From ").measure(size).text(format!(" on {}.", listed_words(&told)))
}

/// "Today White runs out first."
#[must_use]
pub fn run_out_today(papers: &[String]) -> String {
    let names = listed_words(&papers.iter().map(|paper| capital(paper)).collect::<Vec<_>>());
    match papers {
        [] => String::new(),
        [_] => format!("Today {names} runs out first: only more of it gives more cards at this size."),
        _ => format!("Today {names} run out together: only more of each gives more cards at this size."),
    }
}

/// Why a number is no proof.
pub const NOT_PROVEN: &str =
    "A number with another in brackets is the most that was found; no plan has more than the other.";
