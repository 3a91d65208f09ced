//! What `check` tells a designer: borders, sheets and what is cut from them.

use super::{counted, listed_words};
use crate::geometry::Edge;
use crate::length::{Length, Size};

/// Borders by measure, each edge named once: `1/4 in shows at the left and right, 1/8 in at the
/// top`; `1/8 in shows all round`.
#[must_use]
pub fn borders(borders: &[(Edge, Length)]) -> String {
    grouped(borders, " shows", |edges| format!("at the {}", listed_words(edges)))
}

/// What hangs over and is trimmed: `1/4 in over at the left and right`.
#[must_use]
pub fn overhang(ends: &[(Edge, Length)]) -> String {
    grouped(ends, " over", |edges| format!("at the {}", listed_words(edges)))
}

/// What ends before an edge: `1/8 in short at the left and right`.
#[must_use]
pub fn short(ends: &[(Edge, Length)]) -> String {
    grouped(ends, " short", |edges| format!("at the {}", listed_words(edges)))
}

fn grouped(measures: &[(Edge, Length)], verb: &str, place: impl Fn(&[String]) -> String) -> String {
    let mut groups: Vec<(Length, Vec<String>)> = Vec::new();
    for (edge, length) in measures {
        match groups.iter_mut().find(|(known, _)| known == length) {
            Some((_, edges)) => edges.push(edge.word().to_owned()),
            None => groups.push((*length, vec![edge.word().to_owned()])),
        }
    }
    let told: Vec<String> = groups
        .iter()
        .enumerate()
        .map(|(n, (length, edges))| {
            let verb = if n == 0 { verb } else { "" };
            let place = if edges.len() == 4 { "all round".to_owned() } else { place(edges) };
            format!("{length}{verb} {place}")
        })
        .collect();
    told.join(", ")
}

/// The first line: `Lantern Row, inch edition: 8 cards of 4 1/4 x 5 1/2 in, folded at the side`.
#[must_use]
pub fn title(title: &str, edition: &str, cards: u32, size: Option<Size>, fold: &str) -> String {
    let cards = counted(cards, "card");
    match size {
        Some(size) => format!("{title}, {edition} edition: {cards} of {size}, {fold}."),
        None => format!("{title}, {edition} edition: pieces for {cards}."),
    }
}

/// What an edition has by rule: `Restated by rule: 1/8 in | 3 mm; 4 x 1 in | 101 x 25 mm.`
#[must_use]
pub fn restated(pairs: &[String]) -> String {
    format!("Restated by rule: {}.", pairs.join("; "))
}

/// What becomes of a paper: `slate: 2 of 2 sheets (8 1/2 x 11 in) give 8 mats and 8 rails; no sheet
/// to spare.`
#[must_use]
pub fn sheets(
    paper: &str,
    used: u32,
    stated: &[(u32, Size)],
    pieces: &[(u32, String)],
    spare: &[(u32, String)],
) -> String {
    let all = stated.iter().fold(0_u32, |all, (count, _)| all.saturating_add(*count));
    let sheets = counted(all, "sheet");
    if used == 0 {
        return format!("{paper}: none of {sheets} ({}) is cut.", sizes(stated));
    }
    let left = match all.saturating_sub(used) {
        0 => "no sheet to spare".to_owned(),
        left => format!("{} to spare", counted(left, "sheet")),
    };
    format!("{paper}: {used} of {sheets} ({}) {}; {left}.", sizes(stated), gives(used, pieces, spare))
}

/// What becomes of leftovers that are kept: `tag paper: 1 of 2 leftovers of foam (2 x 5 in) gives
/// 4 shells.`
#[must_use]
pub fn leftovers(
    paper: &str,
    source: &str,
    used: u32,
    stated: &[(u32, Size)],
    pieces: &[(u32, String)],
    spare: &[(u32, String)],
) -> String {
    let all = stated.iter().fold(0_u32, |all, (count, _)| all.saturating_add(*count));
    let leftovers = counted(all, "leftover");
    if used == 0 {
        return format!("{paper}: {leftovers} of {source} ({}), kept for later.", sizes(stated));
    }
    format!("{paper}: {used} of {leftovers} of {source} ({}) {}.", sizes(stated), gives(used, pieces, spare))
}

fn sizes(stated: &[(u32, Size)]) -> String {
    let kinds: Vec<String> = match stated {
        [(_, size)] => vec![size.to_string()],
        kinds => kinds.iter().map(|(count, size)| format!("{count} of {size}")).collect(),
    };
    listed_words(&kinds)
}

fn gives(used: u32, pieces: &[(u32, String)], spare: &[(u32, String)]) -> String {
    let named = |pieces: &[(u32, String)]| {
        listed_words(&pieces.iter().map(|(count, name)| counted(*count, name)).collect::<Vec<_>>())
    };
    let verb = if used == 1 { "gives" } else { "give" };
    let over = if spare.is_empty() { String::new() } else { format!(", {} of them spare", named(spare)) };
    format!("{verb} {}{over}", named(pieces))
}

/// The two sides of a sheet: `The front is one-way, the back any way up; the sheet is turned over
/// from left to right.`
#[must_use]
pub fn both_sides(front: &str, back: &str, over: &str) -> String {
    format!("The front is {front}, the back {back}; the sheet is turned over from {over}.")
}

/// The pieces that show the back: `The back shows on: wave of flood and shell.`
#[must_use]
pub fn backs(pieces: &[String]) -> String {
    format!("The back shows on: {}.", listed_words(pieces))
}

/// A pad of different sheets.
#[must_use]
pub const fn cut_alike() -> &'static str {
    "The sheets differ from one another, so all that are used are cut alike."
}

/// Leftovers kept whole: `Kept whole: 2 strip papers of 1 x 11 in.`
#[must_use]
pub fn kept(leftovers: &[String]) -> String {
    format!("Kept whole: {}.", listed_words(leftovers))
}

/// A piece along an edge: `The first row along the top gives every panel.`
#[must_use]
pub fn band(piece: &str, edge: Edge) -> String {
    format!("The first row along the {} gives every {piece}.", edge.word())
}

/// Rows that come first: `Cut first: 3 3/4 in from the top, 2 times, then 1 in from the left.`
#[must_use]
pub fn cut_first(rows: &[(Length, Edge, u32)]) -> String {
    let rows: Vec<String> = rows
        .iter()
        .map(|(measure, edge, times)| {
            let times = if *times == 1 { String::new() } else { format!(", {times} times") };
            format!("{measure} from the {}{times}", edge.word())
        })
        .collect();
    format!("Cut first: {}.", rows.join(", then "))
}

/// Other sheets: `Also planned from 6 of 6 x 6 in, or from 1 of 12 x 12 in and 2 of 8 1/2 x 11 in.`
#[must_use]
pub fn also_from(others: &[Vec<(u32, Size)>]) -> String {
    let others: Vec<String> = others
        .iter()
        .map(|kinds| listed_words(&kinds.iter().map(|(count, size)| format!("{count} of {size}")).collect::<Vec<_>>()))
        .collect();
    format!("Also planned from {}.", others.join(", or from "))
}

/// Ways to cut that are printed: `2 ways to cut it are printed.`
#[must_use]
pub fn ways(ways: u32) -> String {
    format!("{ways} ways to cut it are printed.")
}
