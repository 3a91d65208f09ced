//! Where a layer goes, as it is said under a step's picture.

use super::counts::{self, Between, joined};
use super::making::Named;
use super::{Line, Words};

/// What a step lays down.
#[derive(Debug, Clone, PartialEq, Eq)]
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

/// On which side of another thing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// To the left of it.
    LeftOf,
    /// To the right of it.
    RightOf,
    /// Above it.
    Above,
    /// Below it.
    Below,
}

/// Which way a next copy lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Move {
    /// Further to the left.
    Left,
    /// Further to the right.
    Right,
    /// Lower.
    Down,
    /// Higher.
    Up,
}

/// Where a layer goes, in one direction.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Spot {
    /// In the middle, left to right or bottom to top.
    Middle,
    /// So far from an edge: the edge's key and the measure.
    From(&'static str, Measured),
    /// Reaching past an edge by a measure.
    Past(&'static str, Measured),
    /// Right at an edge, to the ruler's step.
    At(&'static str),
    /// Next to another layer: which way, its name, the gap, if any.
    Beside(Way, String, Option<String>),
    /// Level with another layer: the part that is level, the layer's name.
    Level(String, String),
    /// Its part so far from that part of another layer, or of what it lies on: the part, the measure, the
    /// way, the name.
    Off(String, String, Way, String),
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
pub fn glue(say: &Words, laid: &Laid<'_>, onto: &Named<'_>, at: &Where, fixed: Fixed, gaps: &[String]) -> Line {
    let several = laid.count > 1;
    let id = match at {
        Where::Bordered(_) => "glue-bordered",
        Where::Middle(..) => "glue-middle",
        Where::Spots { .. } => "glue-spots",
        Where::First { .. } => "glue-first",
        Where::Over(_) => "glue-over",
        Where::Turned { .. } => "glue-turned",
        Where::Fan { .. } => "glue-fan",
    };
    let fixed = match fixed {
        Fixed::Unsaid | Fixed::Liquid => "liquid",
        Fixed::Tape => "tape",
        Fixed::Foam => "foam",
        Fixed::Dots => "dots",
    };
    let tell = say.tell(id).part("what", &what(say, laid)).kind("fixed", fixed).part("onto", &onto.told(say));
    let spots =
        |across: &Spot, up: &Spot, several: bool| (spot(say, across, "across", several), spot(say, up, "up", several));
    let tell = match at {
        Where::Bordered(border) => tell.measure("border", border),
        Where::Middle(sides, ends) => tell.measure("sides", sides).measure("ends", ends),
        Where::Spots { across, up } => {
            let (across, up) = spots(across, up, several);
            tell.part("across", &across).part("up", &up)
        }
        Where::First { across, up } => {
            let (across, up) = spots(across, up, false);
            tell.part("across", &across).part("up", &up)
        }
        Where::Over(name) => tell.name("name", name).whether("several", several),
        Where::Turned { by, about, across, up } => {
            let (across, up) = spots(across, up, false);
            tell.name("by", by).name("about", about).part("across", &across).part("up", &up)
        }
        Where::Fan { about, across, up } => {
            let (across, up) = spots(across, up, false);
            tell.name("about", about).part("across", &across).part("up", &up)
        }
    };
    tell.line().sentence(between(say, gaps))
}

/// "the panel (3)", "3 lanterns (4) (the row)".
fn what(say: &Words, laid: &Laid<'_>) -> Line {
    let Laid { count, piece, called } = laid;
    if *count == 1 {
        return say.tell("laid-one").part("piece", &piece.told(say)).line();
    }
    let pieces = match piece.ring {
        Some(ring) => say.tell("laid-several").count("count", *count).name("name", &piece.name).ring("ring", ring),
        None => say.tell("laid-several-bare").count("count", *count).name("name", &piece.name),
    };
    match called {
        Some(called) => say.tell("laid-called").part("pieces", &pieces.line()).name("called", called).line(),
        None => pieces.line(),
    }
}

/// "Leave 1/4 between them."
fn between(say: &Words, gaps: &[String]) -> Line {
    match gaps {
        [] => Line::new(),
        [gap] => say.tell("leave-between").measure("gap", gap).line(),
        [across, down, ..] => say.tell("leave-between-both").measure("across", across).measure("down", down).line(),
    }
}

fn measured(say: &Words, measured: &Measured) -> Line {
    if measured.about {
        return say.tell("about").measure("measure", &measured.number).line();
    }
    Line::new().measure(say.measured(&measured.number))
}

const fn way_key(way: Way) -> &'static str {
    match way {
        Way::LeftOf => "left-of",
        Way::RightOf => "right-of",
        Way::Above => "above",
        Way::Below => "below",
    }
}

/// A spot in one direction, `up` or `across`.
fn spot(say: &Words, place: &Spot, direction: &'static str, several: bool) -> Line {
    match place {
        Spot::Middle => say.tell("spot-middle").kind("direction", direction).line(),
        Spot::From(edge, by) => say.tell("spot-from").part("by", &measured(say, by)).kind("edge", edge).line(),
        Spot::Past(edge, by) => say.tell("spot-past").part("by", &measured(say, by)).kind("edge", edge).line(),
        Spot::At(edge) => say.tell("spot-at").kind("edge", edge).line(),
        Spot::Beside(way, name, None) => say.tell("spot-beside").kind("way", way_key(*way)).name("name", name).line(),
        Spot::Beside(way, name, Some(gap)) => {
            say.tell("spot-beside-gap").measure("gap", gap).kind("way", way_key(*way)).name("name", name).line()
        }
        Spot::Level(part, name) => {
            say.tell("spot-level").whether("several", several).name("part", part).name("name", name).line()
        }
        Spot::Off(part, by, way, name) => say
            .tell("spot-off")
            .whether("several", several)
            .name("part", part)
            .measure("by", by)
            .kind("way", way_key(*way))
            .name("name", name)
            .line(),
        Spot::Midway(one, other, from) => say
            .tell("spot-midway")
            .name("one", one)
            .name("other", other)
            .part("from", &spot(say, from, direction, several))
            .line(),
    }
}

/// "Turn each 12.5 degrees to the left about its middle."
#[must_use]
pub fn turn_each(say: &Words, by: &str, about: &str) -> Line {
    say.tell("turn-each").name("by", by).name("about", about).line()
}

/// "Its top left corner comes about 1/2 from the left and 3/4 from the top, its top right corner …"
#[must_use]
pub fn corners(say: &Words, first: bool, corners: &[(String, Spot, Spot)]) -> Line {
    if corners.is_empty() {
        return Line::new();
    }
    let told = corners.iter().enumerate().map(|(n, (corner, across, up))| {
        say.tell(if n == 0 { "corner-comes" } else { "corner-next" })
            .whether("first", first)
            .name("corner", corner)
            .part("across", &spot(say, across, "across", false))
            .part("up", &spot(say, up, "up", false))
            .line()
    });
    say.tell("corners").part("corners", &joined(say, told.collect(), Between::Comma)).line()
}

/// "Each next one lies 1/4 further to the right and 1/8 higher."
#[must_use]
pub fn steps(say: &Words, moves: &[(String, Move)]) -> Line {
    let told = moves.iter().map(|(by, way)| {
        let way = match way {
            Move::Left => "further-left",
            Move::Right => "further-right",
            Move::Down => "lower",
            Move::Up => "higher",
        };
        say.tell("step-move").measure("by", by).kind("way", way).line()
    });
    say.tell("steps").part("moves", &counts::listed(say, told.collect())).line()
}

/// "They make a triangle: rows of 1, 2 and 3 from the top."
#[must_use]
pub fn triangle(say: &Words, rows: &[u32]) -> Line {
    let numbers: Vec<String> = rows.iter().map(u32::to_string).collect();
    say.tell("triangle").count("count", rows.len()).name("rows", &counts::listed_words(say, &numbers)).line()
}

/// "The first is turned 24 degrees to the left, each next one 12 degrees further to the right."
#[must_use]
pub fn fan(say: &Words, first: Option<&str>, step: &str) -> Line {
    match first {
        None => say.tell("fan-upright").name("step", step).line(),
        Some(first) => say.tell("fan-turned").name("first", first).name("step", step).line(),
    }
}

/// "One after another, their top left corners come about 1/2, 1 1/8 and 2 from the left, and about 3, 2 7/8 and
/// 3 from the bottom." Each list with the key of its edge.
#[must_use]
pub fn corners_of_each(
    say: &Words,
    corner: &str,
    across: (&'static str, &[String]),
    up: (&'static str, &[String]),
) -> Line {
    let list = |measures: &[String]| {
        counts::listed(say, measures.iter().map(|by| Line::new().measure(say.measured(by))).collect())
    };
    say.tell("corners-of-each")
        .name("corner", corner)
        .part("across", &list(across.1))
        .kind("across-edge", across.0)
        .part("up", &list(up.1))
        .kind("up-edge", up.0)
        .line()
}

/// "They go clockwise round a square middle: one upright along the left, the next along the top, each edge
/// to edge with the one before. Together they make a square of 3 1/2."
#[must_use]
pub fn pinwheel(say: &Words, clockwise: bool, side: &str) -> Line {
    let way = if clockwise { "clockwise" } else { "anticlockwise" };
    say.tell("pinwheel").kind("way", way).measure("side", side).line()
}

/// "Half of them lie there, the other half mirrored: as far from the right as these from the left." A shape with
/// a left and a right hand is turned over for it. `from` and `to` are keys of edges.
#[must_use]
pub fn mirrored(say: &Words, count: u32, from: &'static str, to: &'static str, turned_over: bool) -> Line {
    let tell = say.tell("mirrored").count("count", count).kind("from", from).kind("to", to);
    tell.whether("over", turned_over).line()
}

/// "Its ends reach past the mat by 1/4. They are trimmed later."
#[must_use]
pub fn reaches_past(say: &Words, onto: &str, by: Option<&str>, several: bool) -> Line {
    match by {
        None => say.tell("reaches-past").whether("several", several).name("onto", onto).line(),
        Some(by) => say.tell("reaches-past-by").whether("several", several).name("onto", onto).measure("by", by).line(),
    }
}

/// `12.5 degrees to the left`; never more than half a turn.
#[must_use]
pub fn turn(say: &Words, hundredths: u32) -> String {
    let (hundredths, side) = if hundredths > 18_000 { (36_000 - hundredths, "right") } else { (hundredths, "left") };
    say.tell("turn").name("degrees", &degrees(say, hundredths)).kind("side", side).string()
}

/// `12.5 degrees`, `1 degree`.
#[must_use]
pub fn degrees(say: &Words, hundredths: u32) -> String {
    let (whole, part) = (hundredths / 100, hundredths % 100);
    let number = match part {
        0 => whole.to_string(),
        part if part % 10 == 0 => format!("{whole}.{}", part / 10),
        part => format!("{whole}.{part:02}"),
    };
    say.tell("degrees").hundredths("count", hundredths).size("number", &number).string()
}
