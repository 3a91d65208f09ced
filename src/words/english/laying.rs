//! Where a layer goes, as it is said under a step's picture.

use super::making::Named;
use super::{KEPT, counted, counted_ring};
use crate::words::Line;

/// What a step lays down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Laid<'a> {
    /// How many.
    pub count: u32,
    /// Which: one layer by its own name, several by their piece's.
    pub piece: Named<'a>,
    /// The name that several go by together, where the designer gave one.
    pub called: Option<&'a str>,
}

/// How a layer is fixed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fixed {
    /// Not said.
    Unsaid,
    /// Double-sided tape.
    Tape,
    /// Liquid glue.
    Liquid,
    /// Foam.
    Foam,
    /// Glue dots.
    Dots,
}

/// A measure as it is printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Measured {
    /// The number.
    pub number: String,
    /// Whether it was brought to the ruler's step.
    pub about: bool,
}

/// Where a layer goes, in one direction.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Spot {
    /// In the middle, left to right or bottom to top.
    Middle,
    /// So far from an edge: the edge's name and the measure.
    From(&'static str, Measured),
    /// Reaching past an edge by a measure.
    Past(&'static str, Measured),
    /// Right at an edge, to the ruler's step.
    At(&'static str),
    /// Next to another layer: `below`, `above`, `left of`, `right of`; its name; the gap, if any.
    Beside(&'static str, String, Option<String>),
    /// Level with another layer: the part that is level, the layer's name.
    Level(&'static str, String),
    /// Its part so far from that part of another layer, or of what it lies on: the part, the measure, the
    /// way, the name.
    Off(&'static str, String, &'static str, String),
    /// Midway between two things, as they are named; then the same from an edge.
    Midway(String, String, Box<Self>),
}

/// Where a layer goes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Where {
    /// In the middle with one border all round.
    Bordered(String),
    /// In the middle both ways: borders at the sides, at top and bottom.
    Middle(String, String),
    /// By spots.
    Spots {
        /// Left to right.
        across: Spot,
        /// Bottom to top.
        up: Spot,
    },
    /// The first of several copies by spots.
    First {
        /// Left to right.
        across: Spot,
        /// Bottom to top.
        up: Spot,
    },
    /// Its middle on the middle of another layer.
    Over(String),
    /// Turned about a point: how far, about which point, and where that lies.
    Turned {
        /// `12.5 degrees to the left`.
        by: String,
        /// `its middle`.
        about: String,
        /// Left to right.
        across: Spot,
        /// Bottom to top.
        up: Spot,
    },
    /// A fan about a point, and where that lies.
    Fan {
        /// `the middle of its bottom edge`.
        about: String,
        /// Left to right.
        across: Spot,
        /// Bottom to top.
        up: Spot,
    },
}

/// "Tape the panel (3) to the middle of the mat (2). A border of 1/8 shows all round."
#[must_use]
pub fn glue(laid: Laid<'_>, onto: Named<'_>, at: &Where, fixed: Fixed, gaps: &[String]) -> Line {
    let Laid { count, piece, called } = laid;
    let what = if count == 1 {
        piece.the()
    } else {
        let line = match piece.ring {
            Some(ring) => counted_ring(count, piece.name, ring),
            None => Line::plain(counted(count, piece.name)),
        };
        match called {
            Some(called) => line.text(format!(" (the {called})")),
            None => line,
        }
    };
    let verb = match fixed {
        Fixed::Unsaid | Fixed::Liquid => "Glue ",
        Fixed::Tape => "Tape ",
        Fixed::Foam | Fixed::Dots => "Lay ",
    };
    let with = match fixed {
        Fixed::Foam => " on foam",
        Fixed::Dots => " on glue dots",
        _ => "",
    };
    let start = Line::plain(verb).then(what);
    let onto = |line: Line, word: &str| line.text(format!("{with} {word} ")).then(onto.the());
    let line = match at {
        Where::Bordered(border) => {
            let line = onto(start, "to the middle of").text(format!(". A border of{KEPT}"));
            line.measure(border.clone()).text(" shows all round.")
        }
        Where::Middle(sides, ends) => {
            let line = onto(start, "to the middle of").text(". ").measure(sides.clone());
            line.text(" shows at each side, ").measure(ends.clone()).text(" at top and bottom.")
        }
        Where::Spots { across, up } => {
            onto(start, "onto").text(", ").then(spots(across, up, count > 1, ", ")).text(".")
        }
        Where::First { across, up } => {
            onto(start, "onto").text(", the first ").then(spots(across, up, false, ", ")).text(".")
        }
        Where::Over(name) => {
            let its = whose(count > 1);
            onto(start, "onto").text(format!(", {its} middle on the middle of the {name}."))
        }
        Where::Turned { by, about, across, up } => {
            let line = onto(start, "onto").text(format!(", turned {by} about {about}, which lies "));
            line.then(spots(across, up, false, " and ")).text(".")
        }
        Where::Fan { about, across, up } => {
            let line = onto(start, "onto").text(format!(" in a fan. Of each, {about} lies on one point, "));
            line.then(spots(across, up, false, " and ")).text(".")
        }
    };
    line.then(between(gaps))
}

/// "Leave 1/4 between them."
fn between(gaps: &[String]) -> Line {
    match gaps {
        [] => Line::new(),
        [gap] => Line::plain(format!(" Leave{KEPT}")).measure(gap.clone()).text(" between them."),
        [across, down, ..] => {
            let line = Line::plain(format!(" Leave{KEPT}")).measure(across.clone());
            line.text(" between them side by side and ").measure(down.clone()).text(" one above another.")
        }
    }
}

const fn whose(several: bool) -> &'static str {
    if several { "their" } else { "its" }
}

fn spots(across: &Spot, up: &Spot, several: bool, between: &str) -> Line {
    let up = spot(up, "in the middle of its height", whose(several));
    up.text(between).then(spot(across, "in the middle from side to side", whose(several)))
}

fn measure(measured: &Measured) -> Line {
    let line = if measured.about { Line::plain(format!("about{KEPT}")) } else { Line::new() };
    line.measure(measured.number.clone())
}

fn spot(place: &Spot, middle: &str, its: &str) -> Line {
    match place {
        Spot::Middle => Line::plain(middle),
        Spot::From(edge, by) => measure(by).text(format!("{KEPT}from the {edge}")),
        Spot::Past(edge, by) => measure(by).text(format!("{KEPT}past the {edge}")),
        Spot::At(edge) => Line::plain(format!("at the {edge}")),
        Spot::Beside(word, name, None) => Line::plain(format!("edge to edge {word} the {name}")),
        Spot::Beside(word, name, Some(gap)) => {
            Line::new().measure(gap.clone()).text(format!("{KEPT}{word} the {name}"))
        }
        Spot::Level(part, name) => Line::plain(format!("{its} {part} level with the {part} of the {name}")),
        Spot::Off(part, by, way, name) => Line::plain(format!("{its} {part}{KEPT}"))
            .measure(by.clone())
            .text(format!("{KEPT}{way} the {part} of the {name}")),
        Spot::Midway(one, other, from) => {
            Line::plain(format!("midway between {one} and {other}, ")).then(spot(from, middle, its))
        }
    }
}

/// "Turn each 12.5 degrees to the left about its middle."
#[must_use]
pub fn turn_each(by: &str, about: &str) -> Line {
    Line::plain(format!(" Turn each {by} about {about}."))
}

/// "Its top left corner comes about 1/2 from the left and 3/4 from the top, its top right corner …"
#[must_use]
pub fn corners(first: bool, corners: &[(String, Spot, Spot)]) -> Line {
    let mut line = Line::new();
    for (n, (corner, across, up)) in corners.iter().enumerate() {
        line = match (n, first) {
            (0, false) => line.text(format!(" Its {corner} comes ")),
            (0, true) => line.text(format!(" Of the first, the {corner} comes ")),
            (_, false) => line.text(format!(", its {corner} ")),
            (_, true) => line.text(format!(", the {corner} ")),
        };
        line = line.then(spots(across, up, false, " and "));
    }
    if line.is_empty() { line } else { line.text(".") }
}

/// "Each next one lies 1/4 further to the right and 1/8 higher."
#[must_use]
pub fn steps(moves: &[(String, &'static str)]) -> Line {
    let mut line = Line::plain(" Each next one lies ");
    for (n, (by, way)) in moves.iter().enumerate() {
        line = if n == 0 { line } else { line.text(" and ") };
        line = line.measure(by.clone()).text(format!("{KEPT}{way}"));
    }
    line.text(".")
}

/// "They make a triangle: rows of 1, 2 and 3 from the top."
#[must_use]
pub fn triangle(rows: &[u32]) -> Line {
    let rows: Vec<String> = rows.iter().map(u32::to_string).collect();
    let word = if rows.len() == 1 { "a row" } else { "rows" };
    Line::plain(format!(" They make a triangle: {word} of {} from the top.", super::listed_words(&rows)))
}

/// "The first is turned 24 degrees to the left, each next one 12 degrees further to the right."
#[must_use]
pub fn fan(first: Option<&str>, step: &str) -> Line {
    let first = first.map_or("stands upright".to_owned(), |first| format!("is turned {first}"));
    Line::plain(format!(" The first {first}, each next one {step} further to the right."))
}

/// "Their top left corners come about 1/2, 1 1/8 and 2 from the left and 3, 2 7/8 and 3 from the bottom."
#[must_use]
pub fn corners_of_each(corner: &str, across: (&str, &[String]), up: (&str, &[String])) -> Line {
    let list = |measures: &[String]| super::listed(measures.iter().map(|by| Line::new().measure(by.clone())).collect());
    let line = Line::plain(format!(" One after another, their {corner}s come about{KEPT}")).then(list(across.1));
    let line = line.text(format!(" from the {}, and about{KEPT}", across.0)).then(list(up.1));
    line.text(format!(" from the {}.", up.0))
}

/// "They go clockwise round a square middle: one upright along the left, the next along the top, each edge
/// to edge with the one before. Together they make a square of 3 1/2."
#[must_use]
pub fn pinwheel(clockwise: bool, side: &str) -> Line {
    let (way, next) = if clockwise { ("clockwise", "top") } else { ("anticlockwise", "bottom") };
    Line::plain(format!(
        " They go {way} round a square middle: the first upright along the left, the next along the {next}, \
         each edge to edge with the one before. Together they make a square of{KEPT}"
    ))
    .measure(side)
    .text(".")
}

/// "Half of them lie there, the other half mirrored: as far from the right as these from the left." A shape with
/// a left and a right hand is turned over for it.
#[must_use]
pub fn mirrored(count: u32, from: &str, to: &str, turned_over: bool) -> Line {
    let (one, other) = if count == 2 { ("One lies", "the other") } else { ("Half of them lie", "the other half") };
    let these = if count == 2 { "this one" } else { "these" };
    let how = if turned_over { "turned over and mirrored" } else { "mirrored" };
    Line::plain(format!(" {one} there, {other} {how}: as far from the {to} as {these} from the {from}."))
}

/// "Its ends reach past the mat by 1/4: they are trimmed later."
#[must_use]
pub fn reaches_past(onto: &str, by: Option<&str>, several: bool) -> Line {
    let start = if several { "The ends reach" } else { "Its ends reach" };
    let line = Line::plain(format!(" {start} past the {onto}"));
    let line = match by {
        Some(by) => line.text(format!(" by{KEPT}")).measure(by),
        None => line,
    };
    line.text(". They are trimmed later.")
}

/// `12.5 degrees to the left`; never more than half a turn.
#[must_use]
pub fn turn(hundredths: u32) -> String {
    let (hundredths, side) = if hundredths > 18_000 { (36_000 - hundredths, "right") } else { (hundredths, "left") };
    format!("{} to the {side}", degrees(hundredths))
}

/// `12.5 degrees`, `1 degree`.
#[must_use]
pub fn degrees(hundredths: u32) -> String {
    let (whole, part) = (hundredths / 100, hundredths % 100);
    match part {
        0 if whole == 1 => "1 degree".to_owned(),
        0 => format!("{whole} degrees"),
        part if part % 10 == 0 => format!("{whole}.{} degrees", part / 10),
        part => format!("{whole}.{part:02} degrees"),
    }
}
