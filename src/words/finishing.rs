//! What is said of making a piece from its trimmed rectangle.

use super::counts::{self, Between, joined};
use super::making::Named;
use super::places::{corner_key, corner_name};
use super::{Line, Words};
use crate::geometry::{Corner, Edge};

fixed_lines! {
    /// "Copy the outline onto it in pencil, …, and cut along it with scissors or a craft knife."
    follow = "follow";
    /// The caution before a knife is used.
    knife = "caution-knife";
    /// The caution before a die or punch is used.
    machine = "caution-machine";
}

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
pub fn make(say: &Words, piece: &Named<'_>, blank: &str) -> Line {
    say.tell("make-from").part("piece", &piece.told(say)).measure("blank", blank).line()
}

/// "For each pane (5), trim what came out of the frame (2) to 2 x 1."
#[must_use]
pub fn from_window(say: &Words, piece: &Named<'_>, frame: &Named<'_>, blank: &str) -> Line {
    let tell = say.tell("trim-from-window").part("piece", &piece.told(say)).part("frame", &frame.told(say));
    tell.measure("blank", blank).line()
}

/// Which side lies up while it is cut, and which way.
#[must_use]
pub fn lies(say: &Words, two_sided: bool, upright: bool) -> Line {
    let how = match (two_sided, upright) {
        (false, false) => return Line::new(),
        (true, false) => "side",
        (false, true) => "upright",
        (true, true) => "both",
    };
    say.tell("lies").kind("how", how).line()
}

/// "With scissors, cut from the bottom left corner to the middle of the top edge, then from ... to ..."
#[must_use]
pub fn cuts(say: &Words, cuts: &[(Place, Place)], runs_through: bool) -> Line {
    let mut told = Vec::new();
    let mut before: Option<&Place> = None;
    for (from, to) in cuts {
        let begin = if before == Some(from) { say.tell("cut-there").line() } else { place(say, from) };
        let again = before == Some(to) && matches!(to, Place::Within(..));
        let end = if again { say.tell("cut-same-point").line() } else { place(say, to) };
        told.push(say.tell("cut-from-to").part("from", &begin).part("to", &end).line());
        before = Some(to);
    }
    let tool = if runs_through { "trimmer" } else { "scissors" };
    say.tell("cut-with").kind("tool", tool).part("cuts", &joined(say, told, Between::Then)).line()
}

fn place(say: &Words, place: &Place) -> Line {
    match place {
        Place::Corner(corner) => say.tell("place-corner").kind("corner", corner_key(*corner)).line(),
        Place::Middle(edge) => say.tell("place-middle-of-edge").kind("edge", edge.word()).line(),
        Place::On(edge, by, end) => {
            say.tell("place-on").kind("edge", edge.word()).measure("by", by).kind("end", end.word()).line()
        }
        Place::Within(None, None) => say.tell("place-middle").line(),
        Place::Within(None, Some((by, edge))) => {
            say.tell("place-halfway-across").measure("by", by).kind("edge", edge.word()).line()
        }
        Place::Within(Some((by, edge)), None) => {
            say.tell("place-halfway-up").measure("by", by).kind("edge", edge.word()).line()
        }
        Place::Within(Some((across, side)), Some((up, end))) => say
            .tell("place-within")
            .measure("across", across)
            .kind("across-edge", side.word())
            .measure("up", up)
            .kind("up-edge", end.word())
            .line(),
    }
}

/// "Round the top left and top right corners with a corner punch, radius 1/4."
#[must_use]
pub fn round(say: &Words, corners: &[Corner], radius: &str) -> Line {
    if corners.len() == 4 {
        return say.tell("round-all").measure("radius", radius).line();
    }
    let names: Vec<String> = corners.iter().map(|corner| corner_name(say, *corner)).collect();
    let tell = say.tell("round").count("count", corners.len()).name("corners", &counts::listed_words(say, &names));
    tell.measure("radius", radius).line()
}

const fn tool(die: bool) -> &'static str {
    if die { "die" } else { "punch" }
}

/// "Lay the die in the middle of it, so that 1/4 of paper shows all round, and cut as its maker says."
#[must_use]
pub fn stamp_out(say: &Words, die: bool, margin: &str) -> Line {
    say.tell("stamp-out").kind("tool", tool(die)).measure("margin", margin).line()
}

/// A window with an outline of its own, cut by hand.
#[must_use]
pub fn window_followed(say: &Words, at: &WindowAt) -> Line {
    let tell = say.tell("window-followed").measure("size", &at.size);
    tell.part("across", &from_the_left(say, at)).part("up", &above_the_bottom(say, at)).line()
}

/// "The die cuts the words: hush."
#[must_use]
pub fn words_of_die(say: &Words, words: &str) -> Line {
    say.tell("words-of-die").name("words", words.trim_end_matches('.')).line()
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

/// "Turn it face down and draw the window on its back: 2 x 1, 1 from its left edge, which is now at the right, and
/// 1 1/2 from the bottom edge. Cut from corner to corner ..."
#[must_use]
pub fn window_by_hand(say: &Words, at: &WindowAt, corners: &[Place]) -> Line {
    if corners.is_empty() {
        let across = match &at.left {
            Some(left) => say.tell("window-left-behind").measure("by", left).line(),
            None => say.tell("window-middle-across").line(),
        };
        let tell = say.tell("window-by-hand").measure("size", &at.size);
        return tell.part("across", &across).part("up", &above_the_bottom(say, at)).line();
    }
    let corners = counts::listed(say, corners.iter().map(|corner| place(say, corner)).collect());
    say.tell("window-by-hand-corners").part("corners", &corners).line()
}

/// "Cut the window with its die as the maker says: 2 x 1, its rim 1 from the left edge and ..."
#[must_use]
pub fn window_stamped(say: &Words, die: bool, at: &WindowAt) -> Line {
    let tell = say.tell("window-stamped").kind("tool", tool(die)).measure("size", &at.size);
    tell.part("across", &from_the_left(say, at)).part("up", &above_the_bottom(say, at)).line()
}

/// A window as the front is looked at.
fn from_the_left(say: &Words, at: &WindowAt) -> Line {
    match &at.left {
        Some(left) => say.tell("window-left").measure("by", left).line(),
        None => say.tell("window-middle-across").line(),
    }
}

fn above_the_bottom(say: &Words, at: &WindowAt) -> Line {
    match &at.bottom {
        Some(bottom) => say.tell("window-bottom").measure("by", bottom).line(),
        None => say.tell("window-middle-up").line(),
    }
}

/// "Keep what comes out: it is the pane (5)."
#[must_use]
pub fn keep(say: &Words, piece: &Named<'_>) -> Line {
    say.tell("keep").part("piece", &piece.told(say)).line()
}

/// "Cut 8 rectangles (3) from corner to corner, from the top left to the bottom right corner: each gives 1
/// sail (3) and 1 flag (4)."
#[must_use]
pub fn part(say: &Words, count: u32, ends: [Corner; 2], gives: &[(u32, String, u32)]) -> Line {
    say.tell("cut-halves")
        .count("count", count)
        .ring("ring", gives.first().map_or(0, |(_, _, ring)| *ring))
        .name("from", &corner_name(say, ends[0]))
        .name("to", &corner_name(say, ends[1]))
        .part("pieces", &counts::counted_rings(say, gives))
        .whether("same", gives.len() == 1)
        .line()
}

/// What rectangles that are cut from corner to corner are called until then: "rectangle for sails and flags".
#[must_use]
pub fn rectangle_for(say: &Words, piece: &str, other: Option<&str>) -> String {
    match other {
        None => say.tell("rectangle-for").name("piece", piece).string(),
        Some(other) => say.tell("rectangle-for-both").name("piece", piece).name("other", other).string(),
    }
}
