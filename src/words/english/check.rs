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

/// What becomes of a paper: `slate: 2 of 2 sheets of 8 1/2 x 11 in give 8 mats, 8 rails.`
#[must_use]
pub fn sheets(
    paper: &str,
    used: u32,
    stated: &[(u32, Size)],
    pieces: &[(u32, String)],
    spare: &[(u32, String)],
) -> String {
    let all = stated.iter().fold(0_u32, |all, (count, _)| all.saturating_add(*count));
    let kinds: Vec<String> = match stated {
        [(_, size)] => vec![size.to_string()],
        kinds => kinds.iter().map(|(count, size)| format!("{count} of {size}")).collect(),
    };
    let named = |pieces: &[(u32, String)]| {
        listed_words(&pieces.iter().map(|(count, name)| counted(*count, name)).collect::<Vec<_>>())
    };
    if used == 0 {
        return format!("{paper}: none of {} ({}) is cut.", counted(all, "sheet"), listed_words(&kinds));
    }
    let verb = if used == 1 { "gives" } else { "give" };
    let over = if spare.is_empty() { String::new() } else { format!(", {} of them spare", named(spare)) };
    let left = match all.saturating_sub(used) {
        0 => "no sheet to spare".to_owned(),
        left => format!("{} to spare", counted(left, "sheet")),
    };
    format!(
        "{paper}: {used} of {} ({}) {verb} {}{over}; {left}.",
        counted(all, "sheet"),
        listed_words(&kinds),
        named(pieces)
    )
}
