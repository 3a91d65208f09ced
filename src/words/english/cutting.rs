//! What is said beside a cutting diagram.

use super::{capital, counted, counted_ring, counted_word, listed, plural};
use crate::geometry::Edge;
use crate::words::Line;

/// What a row cuts from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Taken<'a> {
    /// The whole sheet.
    Sheet,
    /// One loose part of this size.
    Part {
        /// `12 x 5`.
        size: &'a str,
        /// Longer than twice its width.
        strip: bool,
    },
    /// Several loose parts of one size.
    Parts {
        /// How many.
        count: u32,
        /// `12 x 5`.
        size: &'a str,
        /// Longer than twice their width.
        strip: bool,
    },
    /// Several loose parts of different sizes.
    Mixed {
        /// How many.
        count: u32,
    },
}

/// What a row gives.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Given {
    /// Pieces.
    Pieces {
        /// How many.
        count: u32,
        /// The piece's name.
        name: String,
        /// Its ring.
        ring: u32,
    },
    /// Parts that are cut further.
    Parts {
        /// How many.
        count: u32,
        /// `12 x 5`.
        size: String,
        /// Longer than twice their width.
        strip: bool,
    },
    /// The printed edge strip.
    EdgeStrip,
    /// Leftovers of one size.
    Leftover {
        /// How many.
        count: u32,
        /// Their number, 0 for scrap.
        number: u32,
    },
}

fn noun(strip: bool) -> &'static str {
    if strip { "strip" } else { "part" }
}

fn taken(from: Taken<'_>) -> Line {
    match from {
        Taken::Sheet => Line::plain("the sheet"),
        Taken::Part { size, strip } => Line::plain("the ").measure(size).text(format!(" {}", noun(strip))),
        Taken::Parts { count: 2, size, strip } => {
            Line::plain("both ").measure(size).text(format!(" {}", plural(noun(strip))))
        }
        Taken::Parts { count, size, strip } => {
            Line::plain(format!("all {} ", counted_word(count))).measure(size).text(format!(" {}", plural(noun(strip))))
        }
        Taken::Mixed { count: 2 } => Line::plain("both parts"),
        Taken::Mixed { count } => Line::plain(format!("all {} parts", counted_word(count))),
    }
}

fn given(part: &Given) -> Option<Line> {
    match part {
        Given::Pieces { count, name, ring } => Some(counted_ring(*count, name, *ring)),
        Given::Parts { count, size, strip } => {
            Some(Line::plain(format!("{}, ", counted(*count, noun(*strip)))).measure(size.clone()))
        }
        Given::EdgeStrip => Some(Line::plain("the edge strip")),
        Given::Leftover { .. } => None,
    }
}

fn rest_of(gives: &[Given]) -> Line {
    let mut line = Line::new();
    for part in gives {
        match part {
            Given::Leftover { number: 0, count } => {
                line = line.text(if *count == 1 { " The rest is scrap." } else { " The rests are scrap." });
            }
            Given::Leftover { number, count: 1 } => line = line.text(" ").leftover(*number).text(" is left over."),
            Given::Leftover { number, count } => {
                line = line.text(" ").leftover(*number).text(format!(" is left over, {count} times."));
            }
            _ => {}
        }
    }
    line
}

/// A row as the table beside the diagram says it; the measure stands in its own column:
/// "From the left of both 12 x 5 strips cut 6 panels (3). i is left over."
#[must_use]
pub fn row(from: Edge, what: Taken<'_>, gives: &[Given]) -> Line {
    let given: Vec<Line> = gives.iter().filter_map(given).collect();
    let start = Line::plain(format!("From the {} of ", from.word())).then(taken(what)).text(" cut ");
    let line = if given.is_empty() {
        Line::plain(format!("From the {} of ", from.word())).then(taken(what)).text(" cut once")
    } else {
        start.then(listed(given))
    };
    line.text(".").then(rest_of(gives))
}

/// A row that stands without the picture and without a table:
/// "Put the left edge of both 12 x 5 strips on 3 3/4 in and cut. Do it 3 times in all. It gives 6 panels (3)."
#[must_use]
pub fn whole_row(from: Edge, what: Taken<'_>, measure: &str, cuts: u32, gives: &[Given]) -> Line {
    let mut line = Line::plain(format!("Put the {} edge of ", from.word()))
        .then(match what {
            Taken::Parts { count: 2, size, strip } => {
                Line::plain("each of the two ").measure(size).text(format!(" {}", plural(noun(strip))))
            }
            Taken::Parts { count, size, strip } => Line::plain(format!("each of the {} ", counted_word(count)))
                .measure(size)
                .text(format!(" {}", plural(noun(strip)))),
            Taken::Mixed { count } => Line::plain(format!("each of the {} parts", counted_word(count))),
            other => taken(other),
        })
        .text(" on ")
        .measure(measure)
        .text(" and cut.");
    if cuts > 1 {
        line = line.text(format!(
            " Do it {cuts} times{}.",
            if matches!(what, Taken::Sheet | Taken::Part { .. }) { "" } else { " in all" }
        ));
    }
    let given: Vec<Line> = gives.iter().filter_map(given).collect();
    if !given.is_empty() {
        line = line.text(" It gives ").then(listed(given)).text(".");
    }
    line.then(rest_of(gives))
}

/// What a sheet is, beside its name: "1 sheet, 12 x 12 in, one-way".
#[must_use]
pub fn sheet_note(count: u32, size: &str, pattern: Pattern) -> Line {
    let mut line = Line::plain(format!("{}, ", counted(count, "sheet"))).measure(size);
    line = match pattern {
        Pattern::OneWay => line.text(", one-way"),
        Pattern::TwoWay => line.text(", two-way"),
        Pattern::Any => line,
    };
    if count > 1 {
        line = line.text(", cut alike");
    }
    line
}

/// A pattern's direction, as the words need it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pattern {
    /// Any way up.
    Any,
    /// Half a turn is free.
    TwoWay,
    /// Upright only.
    OneWay,
}

/// Which sheets a diagram is for, where a paper has several diagrams: "sheets 1 to 3".
#[must_use]
pub fn sheet_numbers(numbers: &[u32]) -> String {
    match numbers {
        [one] => format!("sheet {one}"),
        [first, .., last] if *last - *first + 1 == u32::try_from(numbers.len()).unwrap_or(0) && numbers.len() > 2 => {
            format!("sheets {first} to {last}")
        }
        _ => {
            let words: Vec<String> = numbers.iter().map(u32::to_string).collect();
            format!("sheets {}", super::listed_words(&words))
        }
    }
}

/// What stands after a sheet's rows, totals of all sheets cut so:
/// "From both sheets you have 8 mats (2) and 8 rails (5)."
#[must_use]
pub fn you_have(sheets: u32, pieces: &[(u32, String, u32)]) -> Line {
    let parts = pieces.iter().map(|(count, name, ring)| counted_ring(*count, name, *ring));
    Line::plain(match sheets {
        0 | 1 => "You have ".to_owned(),
        2 => "From both sheets you have ".to_owned(),
        _ => format!("From all {sheets} sheets you have "),
    })
    .then(listed(parts.collect()))
    .text(".")
}

/// After what a sheet gives, or all of them: "1 lantern (4) to spare."
#[must_use]
pub fn to_spare(pieces: &[(u32, String, u32)]) -> Line {
    let parts = pieces.iter().map(|(count, name, ring)| counted_ring(*count, name, *ring));
    listed(parts.collect()).text(" to spare.")
}

/// The smallest sheet that will do, printed measures kept:
/// "Works on sheets down to 11 5/8 x 11 3/4 in." An edge strip beside the stated size is not in it.
#[must_use]
pub fn works_down_to(size: &str, strip_beside: bool) -> Line {
    let line = Line::plain("Works on sheets down to ").measure(size);
    line.text(if strip_beside { ", the edge strip not counted." } else { "." })
}

/// Where no smaller sheet will do.
#[must_use]
pub fn full_size(sheets: u32) -> Line {
    Line::plain(if sheets == 1 { "The sheet must be full size." } else { "The sheets must be full size." })
}

/// The pencil arrow that saves one-way paper.
#[must_use]
pub fn pencil_arrow(paper: &str) -> Line {
    Line::plain(format!(
        "Before you cut {}, draw a pencil arrow on the back of each part that points up.",
        capital(paper)
    ))
}

/// A leftover: "i 12 x 1 1/2".
#[must_use]
pub fn leftover(number: u32, size: &str, count: u32) -> Line {
    let line = Line::new().leftover(number).text(" ").measure(size);
    if count > 1 { line.text(format!(" ({count} of them)")) } else { line }
}

/// The totals of a design's cutting:
/// "62 cuts on 8 sheets, 3 cutting diagrams."
#[must_use]
pub fn totals(cuts: u64, sheets: u32, diagrams: u32) -> String {
    format!(
        "{} on {}, {}.",
        counted(u32::try_from(cuts).unwrap_or(u32::MAX), "cut"),
        counted(sheets, "sheet"),
        counted(diagrams, "cutting diagram")
    )
}

/// The first line of a plan: "Lantern Row: cutting for 8 cards, all sizes in in".
#[must_use]
pub fn plan_title(title: &str, cards: u32, sign: &str) -> String {
    let units = if sign == "in" { "inches" } else { "millimetres" };
    format!("{title}: cutting for {}. Sizes are width x height in {units}.", counted(cards, "card"))
}

/// "Left over: i 12 x 1 1/2, ii 3/4 x 5."
#[must_use]
pub fn left_over(parts: Vec<Line>) -> Line {
    let mut line = Line::plain("Left over: ");
    for (n, part) in parts.into_iter().enumerate() {
        if n > 0 {
            line = line.text(", ");
        }
        line = line.then(part);
    }
    line.text(".")
}

/// "No place was found for 3 lanterns from Dusk."
#[must_use]
pub fn missing(count: u32, piece: &str, paper: &str) -> String {
    format!("No place was found for {} from {}.", counted(count, piece), capital(paper))
}

/// What a plan aims at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Aimed {
    /// The number of cards.
    Cards,
    /// Sheets used.
    Sheets,
    /// Different cutting diagrams.
    Diagrams,
    /// Cuts on all sheets.
    Cuts,
    /// Changes of measure.
    Changes,
}

/// "8 sheets: proven fewest." or "62 cuts: the best found; no plan has fewer than 54."
#[must_use]
pub fn aim(what: Aimed, found: u64, bound: u64, proven: bool) -> String {
    let found_count = u32::try_from(found).unwrap_or(u32::MAX);
    let (name, best, limit) = match what {
        Aimed::Cards => (counted(found_count, "card"), "most", "more"),
        Aimed::Sheets => (counted(found_count, "sheet"), "fewest", "fewer"),
        Aimed::Diagrams => (counted(found_count, "cutting diagram"), "fewest", "fewer"),
        Aimed::Cuts => (counted(found_count, "cut"), "fewest", "fewer"),
        Aimed::Changes => (counted(found_count, "change") + " of measure", "fewest", "fewer"),
    };
    if proven {
        format!("{name}: proven {best}.")
    } else {
        format!("{name}: the best found; no plan can have {limit} than {bound}.")
    }
}
