//! What is said of making a piece from its trimmed rectangle.

use super::making::{self, Named};
use super::{KEPT, counted_ring, listed};
use crate::geometry::{Corner, Edge};
use crate::words::Line;

/// A place on a rectangle as a ruler finds it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// A corner.
    Corner(Corner),
    /// The middle of an edge.
    Middle(Edge),
    /// On an edge, so far from the edge at its end.
    On(Edge, String, Edge),
    /// Within: from an edge at the side, or in the middle; from the top or bottom, or in the middle.
    Within(Option<(String, Edge)>, Option<(String, Edge)>),
}

/// "Make each pennant (3) from its rectangle of 2 x 1."
#[must_use]
pub fn make(piece: Named<'_>, blank: &str) -> Line {
    making::each("Make", piece).text(format!(" from its rectangle of{KEPT}")).measure(blank).text(".")
}

/// "Trim what came out of the frame (2) to 2 x 1 for each pane (5)."
#[must_use]
pub fn from_window(piece: Named<'_>, frame: Named<'_>, blank: &str) -> Line {
    let line = making::each("For", piece).text(", trim what came out of ").then(frame.the()).text(" to ");
    line.measure(blank).text(".")
}

/// Which side lies up while it is cut, and which way.
#[must_use]
pub fn lies(two_sided: bool, upright: bool) -> Line {
    Line::plain(match (two_sided, upright) {
        (false, false) => "",
        (true, false) => " Lay it with the side up that will show.",
        (false, true) => " Lay it with its pattern upright.",
        (true, true) => " Lay it with the side up that will show, its pattern upright.",
    })
}

/// "Cut from the bottom left corner to the middle of the top edge, then from ... to ..."
#[must_use]
pub fn cuts(cuts: &[(Place, Place)], runs_through: bool) -> Line {
    let tool = if runs_through { "With trimmer or scissors" } else { "With scissors" };
    let mut line = Line::plain(format!(" {tool}, cut "));
    let mut before: Option<&Place> = None;
    for (n, (from, to)) in cuts.iter().enumerate() {
        line = line.text(if n == 0 { "from " } else { ", then from " });
        line = if before == Some(from) { line.text("there") } else { line.then(place(from)) };
        line = line.text(" to ");
        let again = before == Some(to) && matches!(to, Place::Within(..));
        line = if again { line.text("the same point") } else { line.then(place(to)) };
        before = Some(to);
    }
    line.text(".")
}

fn place(place: &Place) -> Line {
    let from = |line: Line, (by, edge): &(String, Edge)| {
        line.measure(by.clone()).text(format!("{KEPT}from the {} edge", edge.word()))
    };
    match place {
        Place::Corner(corner) => Line::plain(format!("the {} corner", corner.word())),
        Place::Middle(edge) => Line::plain(format!("the middle of the {} edge", edge.word())),
        Place::On(edge, by, end) => Line::plain(format!("the point on the {} edge ", edge.word()))
            .measure(by.clone())
            .text(format!("{KEPT}from the {}", end.word())),
        Place::Within(None, None) => Line::plain("the middle"),
        Place::Within(None, Some(up)) => from(Line::plain("the point halfway across, "), up),
        Place::Within(Some(across), None) => from(Line::plain("the point halfway up, "), across),
        Place::Within(Some(across), Some(up)) => from(from(Line::plain("the point "), across).text(" and "), up),
    }
}

/// "Round the top left and top right corners with a corner punch, radius 1/4."
#[must_use]
pub fn round(corners: &[Corner], radius: &str) -> Line {
    let what = if corners.len() == 4 {
        "all four corners".to_owned()
    } else {
        let names: Vec<String> = corners.iter().map(|corner| corner.word().to_owned()).collect();
        let noun = if corners.len() == 1 { "corner" } else { "corners" };
        format!("the {} {noun}", super::listed_words(&names))
    };
    Line::plain(format!(" Round {what} with a corner punch, radius{KEPT}")).measure(radius).text(".")
}

/// "Lay the die in the middle of it, so that 1/4 of paper shows all round, and cut as its maker says."
#[must_use]
pub fn stamp_out(die: bool, margin: &str) -> Line {
    if die {
        Line::plain(" Lay the die in the middle of it, so that about ")
            .measure(margin)
            .text(" of paper shows all round, and cut it in the machine as its maker says.")
    } else {
        Line::plain(" Push it into the punch, so that about ")
            .measure(margin)
            .text(" of paper shows all round, and punch it as the maker says.")
    }
}

/// "Cut along the outline, with scissors or a craft knife: ..."
#[must_use]
pub fn follow() -> Line {
    Line::plain(
        " Copy the outline onto it in pencil, as wide as the rectangle and standing on its bottom edge, and cut along \
         it with scissors or a craft knife.",
    )
}

/// A window with an outline of its own, cut by hand.
#[must_use]
pub fn window_followed(at: &WindowAt) -> Line {
    let line = Line::plain(" Copy the window's outline onto it in pencil: ").measure(at.size.clone()).text(", ");
    window_lies(line, at).text(". Cut along it with a craft knife on a cutting mat.")
}

/// "The die cuts the words: hush."
#[must_use]
pub fn words_of_die(words: &str) -> Line {
    Line::plain(" The die cuts the words: ").strong(words.trim_end_matches('.')).text(".")
}

/// Where a window stands: from each side, from top and bottom, or from an edge.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WindowAt {
    /// Its size.
    pub size: String,
    /// From the left edge as it is looked at; none where it stands in the middle.
    pub left: Option<String>,
    /// From the bottom edge; none where it stands in the middle.
    pub bottom: Option<String>,
}

/// "Turn it face down and draw the window on its back: 2 x 1, 1 from its left edge (now at the right) and
/// 1 1/2 from the bottom edge. Cut it out ..."
#[must_use]
pub fn window_by_hand(at: &WindowAt, corners: &[Place]) -> Line {
    let mut line = Line::plain(" Turn it face down and draw the window on its back: ");
    if corners.is_empty() {
        line = line.measure(at.size.clone()).text(", ");
        line = match &at.left {
            Some(left) => {
                line.measure(left.clone()).text(format!("{KEPT}from its left edge, which is now at the right"))
            }
            None => line.text("in the middle from side to side"),
        };
        line = above_the_bottom(line.text(", and "), at);
    } else {
        line = line.text("join ").then(listed(corners.iter().map(place).collect()));
        line = line.text(" (the left edge is now at the right)");
    }
    line.text(". Cut from corner to corner with a craft knife along a metal ruler, on a cutting mat.")
}

/// "Lay the window's die on it, 1 from the left and ... and cut ..."
#[must_use]
pub fn window_stamped(die: bool, at: &WindowAt) -> Line {
    let verb = if die { "Cut the window with its die" } else { "Punch the window" };
    let line = Line::plain(format!(" {verb} as the maker says: ")).measure(at.size.clone()).text(", its rim ");
    window_lies(line, at).text(".")
}

/// "1 from the left edge and in the middle of its height": a window as the front is looked at.
fn window_lies(line: Line, at: &WindowAt) -> Line {
    let line = match &at.left {
        Some(left) => line.measure(left.clone()).text(format!("{KEPT}from the left edge")),
        None => line.text("in the middle from side to side"),
    };
    above_the_bottom(line.text(" and "), at)
}

fn above_the_bottom(line: Line, at: &WindowAt) -> Line {
    match &at.bottom {
        Some(bottom) => line.measure(bottom.clone()).text(format!("{KEPT}from the bottom edge")),
        None => line.text("in the middle of its height"),
    }
}

/// "Keep what comes out: it is the pane (5)."
#[must_use]
pub fn keep(piece: Named<'_>) -> Line {
    Line::plain(" Keep what comes out: it is ").then(piece.the()).text(".")
}

/// "Cut 8 rectangles (3) from corner to corner, from the top left to the bottom right corner: each gives 1
/// sail (3) and 1 flag (4)."
#[must_use]
pub fn part(count: u32, ends: [Corner; 2], gives: &[(u32, String, u32)]) -> Line {
    let parts = gives.iter().map(|(count, name, ring)| counted_ring(*count, name, *ring));
    let what = super::counted(count, "rectangle");
    let ring = gives.first().map_or(0, |(_, _, ring)| *ring);
    Line::plain(format!("Cut {what}{KEPT}"))
        .ring(ring)
        .text(format!(
            " from corner to corner, from the {} to the {} corner: each gives ",
            ends[0].word(),
            ends[1].word()
        ))
        .then(listed(parts.collect()))
        .text(if gives.len() == 1 { ", the second one when you turn it half round." } else { "." })
}

/// What rectangles that are cut from corner to corner are called until then: "rectangle for sail and flag".
#[must_use]
pub fn rectangle_for(piece: &str, other: Option<&str>) -> String {
    match other {
        Some(other) => format!("rectangle for {} and {}", super::plural(piece), super::plural(other)),
        None => format!("rectangle for {}", super::plural(piece)),
    }
}

/// The caution before a knife is used.
#[must_use]
pub fn knife() -> Line {
    Line::new().strong("Cut away from your hand, in several light strokes, and put the cap on the knife after it.")
}

/// The caution before a die or punch is used.
#[must_use]
pub fn machine() -> Line {
    Line::new().strong("Keep your fingers out of machine and punch, and do as the maker says.")
}
