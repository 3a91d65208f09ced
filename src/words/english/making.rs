//! What is said under a step's picture.

use super::{KEPT, capital, counted, counted_ring, listed, plural};
use crate::words::Line;

/// A piece as a step names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Named<'a> {
    /// Its name.
    pub name: &'a str,
    /// Its ring, or none for the card itself.
    pub ring: Option<u32>,
}

impl Named<'_> {
    pub(super) fn the(self) -> Line {
        let line = Line::plain(format!("the {}", self.name));
        match self.ring {
            Some(ring) => line.text(KEPT).ring(ring),
            None => line,
        }
    }
}

/// "Turn the unit over. Trim the rail (5) level with the mat (2)."
#[must_use]
pub fn trim(piece: Named<'_>, to: Named<'_>, loose: bool) -> Line {
    let turn = if loose { "Turn it face down. " } else { "" };
    Line::plain(format!("{turn}Trim the ends of ")).then(piece.the()).text(" level with ").then(to.the()).text(".")
}

/// The caution before a cut.
#[must_use]
pub fn fingers() -> Line {
    Line::new().strong("Keep your fingers off the line of cut.")
}

/// "Stamp each label (6): thank you. Let the ink dry."
#[must_use]
pub fn stamp(piece: Named<'_>, what: &str) -> Line {
    let line = each("Stamp", piece);
    line.text(": ").strong(what.trim_end_matches('.')).text(". Let the ink dry.")
}

/// "Score each base (1) at 4 1/4, fold it with the ridge inside. The fold is the left edge."
#[must_use]
pub fn score(piece: Named<'_>, from: &str, measure: &str, fold: &str) -> Line {
    let line = each("Score", piece);
    line.text(" ").measure(measure).text(format!(
        " from the {from} edge. Fold it with the ridge of the score inside. The fold is the {fold} edge."
    ))
}

/// "Score each base (1) 2 1/8 from the left edge and 2 1/8 from the right edge. Fold both flaps ..."
#[must_use]
pub fn score_gate(piece: Named<'_>, left: &str, right: &str) -> Line {
    let line = each("Score", piece).text(" ").measure(left).text(" from the left edge and ").measure(right);
    line.text(
        " from the right edge. Fold both flaps in with the ridges of the scores inside: they meet in the middle of \
         the front.",
    )
}

/// "Score each base (1), its outside up, 2, 4 and 6 from the left edge. Fold it to and fro ..."; each score
/// with whether its fold points toward the reader.
#[must_use]
pub fn score_accordion(piece: Named<'_>, scores: &[(String, bool)]) -> Line {
    let measures = scores.iter().map(|(measure, _)| Line::new().measure(measure.clone())).collect();
    let folds: Vec<String> = scores
        .iter()
        .map(|(_, mountain)| if *mountain { "toward you (a mountain)" } else { "away from you (a valley)" }.to_owned())
        .collect();
    each("Score", piece).text(", its outside up, ").then(listed(measures)).text(format!(
        " from the left edge. Fold it to and fro. From the left, the folds point {}. The panel furthest to the right \
         is the front.",
        folds.join(", then ")
    ))
}

pub(super) fn each(verb: &str, piece: Named<'_>) -> Line {
    let line = Line::plain(format!("{verb} each {}", piece.name));
    match piece.ring {
        Some(ring) => line.text(KEPT).ring(ring),
        None => line,
    }
}

/// "Before the paper is cut, print for each label (6): thank you. Let the ink dry."
#[must_use]
pub fn print(piece: Named<'_>, what: &str) -> Line {
    let line = each("Before its paper is cut, print for", piece);
    line.text(": ")
        .strong(what.trim_end_matches('.'))
        .text(". Place it on the sheet where that piece is cut, try it on plain paper first, and let the ink dry.")
}

/// "Cut 2 lengths of 12 from the roll for each card. " before ribbon or twine is laid.
#[must_use]
pub fn from_roll(count: u32, length: &str) -> Line {
    let what = if count == 1 { "one length of ".to_owned() } else { format!("{count} lengths of ") };
    Line::plain(format!("From the roll, cut {what}")).measure(length).text(" for each card. ")
}

/// "Lay out 8 piles, one for each card. In each: 1 base (1), 3 lanterns (4)."
#[must_use]
pub fn sort(piles: u32, each: &[(u32, String, u32)]) -> Line {
    let parts = each.iter().map(|(count, name, ring)| counted_ring(*count, name, *ring));
    Line::plain(format!("Lay out {piles} piles, one for each card. In each: ")).then(listed(parts.collect())).text(".")
}

/// Which papers a version's pile holds: "For 4 cards dusk: panel from Dusk, lantern from Ember."
#[must_use]
pub fn pile(version: &str, cards: u32, papers: &[(String, String)]) -> Line {
    let list: Vec<String> =
        papers.iter().map(|(piece, paper)| format!("{} from {}", plural(piece), capital(paper))).collect();
    Line::new().strong(format!("{}: ", capital(version))).text(format!(
        "{}, {}.",
        counted(cards, "card"),
        super::listed_words(&list)
    ))
}

/// "The sheets of Pad differ. Number ..." while they are cut.
#[must_use]
pub fn number_the_sheets(pad: &str, sheets: u32) -> Line {
    Line::new().strong(format!("The sheets of {} differ. ", capital(pad))).text(format!(
        "Number them 1 to {sheets}, and write a sheet's number in pencil on the back of each piece as you cut it."
    ))
}

/// "The pieces of Pad are numbered by their sheets: ..." before they are dealt.
#[must_use]
pub fn deal_by_number(pad: &str) -> Line {
    Line::new()
        .strong(format!("The pieces of {} ", capital(pad)))
        .text("bear the numbers of their sheets on the back. Deal them round the piles by these.")
}

/// "from sheet 1", "from sheets 6 and 7".
fn from_sheets(pieces: &[(String, Vec<u32>)]) -> String {
    let told: Vec<String> = pieces
        .iter()
        .map(|(name, sheets)| {
            let numbers: Vec<String> = sheets.iter().map(u32::to_string).collect();
            match numbers.as_slice() {
                [one] => format!("the {name} from sheet{KEPT}{one}"),
                all => format!("the {} from sheets{KEPT}{}", plural(name), super::listed_words(all)),
            }
        })
        .collect();
    super::listed_words(&told)
}

/// "Pile 1 takes the middle from sheet 1, ... Each next pile takes every piece from the sheet after ..."
#[must_use]
pub fn dealt_onward(first: &[(String, Vec<u32>)], sheets: u32) -> Line {
    Line::new().strong("Pile 1: ").text(format!(
        "{}. Each next pile takes every piece from one sheet further on; after sheet{KEPT}{sheets} comes sheet{KEPT}1.",
        from_sheets(first)
    ))
}

/// "Pile 3: the middle from sheet 3, ..."
#[must_use]
pub fn dealt(pile: usize, pieces: &[(String, Vec<u32>)]) -> Line {
    Line::new().strong(format!("Pile {pile}: ")).text(format!("{}.", from_sheets(pieces)))
}

/// "8 times"
#[must_use]
pub fn times(count: u32) -> String {
    if count == 1 { "Once".to_owned() } else { format!("{count} times") }
}

/// "You now have 8 mats with everything on them."
#[must_use]
pub fn now_put_together(count: u32, name: &str, ring: u32) -> Line {
    Line::plain(format!("You now have {} ", counted(count, name))).ring(ring).text(if count == 1 {
        " put together."
    } else {
        ", all put together."
    })
}

/// "You now have 8 panels (3) and 24 lanterns (4)."
#[must_use]
pub fn now_have(pieces: &[(u32, String, u32)]) -> Line {
    let parts = pieces.iter().map(|(count, name, ring)| counted_ring(*count, name, *ring));
    Line::plain("You now have ").then(listed(parts.collect())).text(".")
}
