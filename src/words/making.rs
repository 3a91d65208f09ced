//! What is said under a step's picture.

use std::borrow::Cow;

use super::counts::{self, Between, joined};
use super::{Line, Words};

/// A piece as a step names it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named<'a> {
    /// Its name.
    pub name: Cow<'a, str>,
    /// Its ring, or none for the card itself.
    pub ring: Option<u32>,
}

impl Named<'_> {
    /// "panel (3)", on one line.
    pub(super) fn told(&self, say: &Words) -> Line {
        match self.ring {
            Some(ring) => say.tell("named").name("name", &self.name).ring("ring", ring).line(),
            None => Line::plain(self.name.as_ref()),
        }
    }
}

fixed_lines! {
    /// The caution before a cut.
    fingers = "caution-fingers";
}

/// "Turn it face down. Trim the ends of the rail (5) level with the mat (2)."
#[must_use]
pub fn trim(say: &Words, piece: &Named<'_>, to: &Named<'_>, loose: bool) -> Line {
    say.tell("trim").whether("loose", loose).part("piece", &piece.told(say)).part("onto", &to.told(say)).line()
}

/// "With its placing frame: lay the frame level on the mat (2), ... Without the frame, go by the measures."
#[must_use]
pub fn by_frame(say: &Words, onto: &Named<'_>, several: bool) -> Line {
    say.tell("by-frame").part("onto", &onto.told(say)).whether("several", several).line()
}

/// "Stamp each label (6): thank you. Let the ink dry."
#[must_use]
pub fn stamp(say: &Words, piece: &Named<'_>, what: &str) -> Line {
    say.tell("stamp").part("piece", &piece.told(say)).name("words", what.trim_end_matches('.')).line()
}

/// "Score each base (1) 4 1/4 from the left edge. Fold it with the ridge of the score inside. The fold is the
/// left edge." `from` and `fold` are keys of edges.
#[must_use]
pub fn score(say: &Words, piece: &Named<'_>, from: &'static str, measure: &str, fold: &'static str) -> Line {
    let tell = say.tell("score").part("piece", &piece.told(say)).kind("from", from);
    tell.measure("measure", measure).kind("fold", fold).line()
}

/// "Score each base (1) 2 1/8 from the left edge and 2 1/8 from the right edge. Fold both flaps ..."
#[must_use]
pub fn score_gate(say: &Words, piece: &Named<'_>, left: &str, right: &str) -> Line {
    say.tell("score-gate").part("piece", &piece.told(say)).measure("left", left).measure("right", right).line()
}

/// "Score each base (1), its outside up, 2, 4 and 6 from the left edge. Fold it to and fro ..."; each score
/// with whether its fold points toward the reader.
#[must_use]
pub fn score_accordion(say: &Words, piece: &Named<'_>, scores: &[(String, bool)]) -> Line {
    let measures = scores.iter().map(|(measure, _)| Line::new().measure(say.measured(measure))).collect();
    let folds = scores.iter().map(|(_, mountain)| {
        say.tell("fold-points").kind("fold", if *mountain { "mountain" } else { "valley" }).line()
    });
    say.tell("score-accordion")
        .part("piece", &piece.told(say))
        .part("measures", &counts::listed(say, measures))
        .part("folds", &joined(say, folds.collect(), Between::Then))
        .line()
}

/// "Before its paper is cut, print for each label (6): thank you. …, and let the ink dry."
#[must_use]
pub fn print(say: &Words, piece: &Named<'_>, what: &str) -> Line {
    say.tell("print").part("piece", &piece.told(say)).name("words", what.trim_end_matches('.')).line()
}

/// "From the roll, cut 2 lengths of 12 for each card." before ribbon or twine is laid.
#[must_use]
pub fn from_roll(say: &Words, count: u32, length: &str) -> Line {
    say.tell("from-roll").count("count", count).measure("length", length).line()
}

/// "Lay out 8 piles, one for each card. In each: 1 base (1), 3 lanterns (4)."
#[must_use]
pub fn sort(say: &Words, piles: u32, each: &[(u32, String, u32)]) -> Line {
    say.tell("sort").count("piles", piles).part("pieces", &counts::counted_rings(say, each)).line()
}

/// Which papers a version's pile holds: "Dusk: 4 cards, panels from Dusk and lanterns from Ember."
#[must_use]
pub fn pile(say: &Words, version: &str, cards: u32, papers: &[(String, String)]) -> Line {
    let told =
        papers.iter().map(|(piece, paper)| say.tell("pile-paper").name("name", piece).name("paper", paper).line());
    let papers = counts::listed(say, told.collect());
    say.tell("pile").name("version", version).count("count", cards).part("papers", &papers).line()
}

/// "The sheets of Pad differ. Number ..." while they are cut.
#[must_use]
pub fn number_the_sheets(say: &Words, pad: &str, sheets: u32) -> Line {
    say.tell("number-the-sheets").name("pad", pad).count("count", sheets).line()
}

/// "The pieces of Pad bear the numbers of their sheets on the back. Deal them ..."
#[must_use]
pub fn deal_by_number(say: &Words, pad: &str) -> Line {
    say.tell("deal-by-number").name("pad", pad).line()
}

/// "the middle from sheet 1 and the corners from sheets 6 and 7".
fn from_sheets(say: &Words, pieces: &[(String, Vec<u32>)]) -> Line {
    let told = pieces.iter().map(|(name, sheets)| {
        let numbers: Vec<String> = sheets.iter().map(u32::to_string).collect();
        let id = if numbers.len() == 1 { "from-sheet" } else { "from-sheets" };
        say.tell(id).name("name", name).name("sheets", &counts::listed_words(say, &numbers)).line()
    });
    counts::listed(say, told.collect())
}

/// "Pile 1: the middle from sheet 1, ... Each next pile takes every piece from the sheet after ..."
#[must_use]
pub fn dealt_onward(say: &Words, first: &[(String, Vec<u32>)], sheets: u32) -> Line {
    say.tell("dealt-onward").part("pieces", &from_sheets(say, first)).count("count", sheets).line()
}

/// "Pile 3: the middle from sheet 3, ..."
#[must_use]
pub fn dealt(say: &Words, pile: usize, pieces: &[(String, Vec<u32>)]) -> Line {
    say.tell("dealt").count("pile", pile).part("pieces", &from_sheets(say, pieces)).line()
}

/// "8 times"
#[must_use]
pub fn times(say: &Words, count: u32) -> String {
    say.tell("times").count("count", count).string()
}

/// "You now have 8 mats (2), all put together."
#[must_use]
pub fn now_put_together(say: &Words, count: u32, name: &str, ring: u32) -> Line {
    say.tell("now-put-together").count("count", count).name("name", name).ring("ring", ring).line()
}

/// "You now have 8 panels (3) and 24 lanterns (4)."
#[must_use]
pub fn now_have(say: &Words, pieces: &[(u32, String, u32)]) -> Line {
    say.tell("now-have").part("pieces", &counts::counted_rings(say, pieces)).line()
}
