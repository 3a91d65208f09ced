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
    fn the(self) -> Line {
        let line = Line::plain(format!("the {}", self.name));
        match self.ring {
            Some(ring) => line.text(KEPT).ring(ring),
            None => line,
        }
    }
}

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

/// Where a layer goes, in one direction.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Spot {
    /// In the middle, left to right or bottom to top.
    Middle,
    /// So far from an edge: the edge's name and the measure.
    From(&'static str, String),
    /// Reaching past an edge by a measure.
    Past(&'static str, String),
    /// Next to another layer: `below`, `above`, `left of`, `right of`; its name; the gap, if any.
    Beside(&'static str, String, Option<String>),
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
}

/// "Fix the panel (3) to the middle of the mat (2) with tape. A border of 1/8 shows all round."
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
    let mut line = Line::plain(verb).then(what);
    match at {
        Where::Bordered(border) => {
            line = line.text(format!("{with} to the middle of ")).then(onto.the()).text(format!(". A border of{KEPT}"));
            line = line.measure(border.clone()).text(" shows all round.");
        }
        Where::Middle(sides, ends) => {
            line = line.text(format!("{with} to the middle of ")).then(onto.the()).text(". ");
            line = line.measure(sides.clone()).text(" shows at each side, ");
            line = line.measure(ends.clone()).text(" at top and bottom.");
        }
        Where::Spots { across, up } => {
            line = line.text(format!("{with} onto ")).then(onto.the()).text(", ");
            line = line.then(spot(up, "in the middle of its height")).text(", ");
            line = line.then(spot(across, "in the middle from side to side")).text(".");
        }
    }
    match gaps {
        [] => {}
        [gap] => line = line.text(format!(" Leave{KEPT}")).measure(gap.clone()).text(" between them."),
        [across, down, ..] => {
            line = line.text(format!(" Leave{KEPT}")).measure(across.clone()).text(" between them side by side and ");
            line = line.measure(down.clone()).text(" one above another.");
        }
    }
    line
}

fn spot(spot: &Spot, middle: &str) -> Line {
    match spot {
        Spot::Middle => Line::plain(middle),
        Spot::From(edge, measure) => Line::new().measure(measure.clone()).text(format!("{KEPT}from the {edge}")),
        Spot::Past(edge, measure) => Line::new().measure(measure.clone()).text(format!("{KEPT}past the {edge}")),
        Spot::Beside(word, name, None) => Line::plain(format!("edge to edge {word} the {name}")),
        Spot::Beside(word, name, Some(gap)) => {
            Line::new().measure(gap.clone()).text(format!("{KEPT}{word} the {name}"))
        }
    }
}

/// "Its ends reach past the mat by 1/4: they are trimmed later."
#[must_use]
pub fn reaches_past(onto: &str, by: &str, several: bool) -> Line {
    let start = if several { "The ends reach" } else { "Its ends reach" };
    Line::plain(format!(" {start} past the {onto} by{KEPT}")).measure(by).text(". They are trimmed later.")
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
    let line = Line::plain(format!("Stamp each {}", piece.name));
    let line = match piece.ring {
        Some(ring) => line.text(KEPT).ring(ring),
        None => line,
    };
    line.text(": ").strong(what.trim_end_matches('.')).text(". Let the ink dry.")
}

/// "Score each base (1) at 4 1/4, fold it with the ridge inside. The fold is the left edge."
#[must_use]
pub fn score(piece: Named<'_>, from: &str, measure: &str, fold: &str) -> Line {
    let line = Line::plain(format!("Score each {}", piece.name));
    let line = match piece.ring {
        Some(ring) => line.text(KEPT).ring(ring),
        None => line,
    };
    line.text(" ").measure(measure).text(format!(
        " from the {from} edge. Fold it with the ridge of the score inside. The fold is the {fold} edge."
    ))
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
