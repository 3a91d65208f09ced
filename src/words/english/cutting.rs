//! What is said beside a cutting diagram.

use super::{capital, counted, counted_ring, counted_word, listed, plural};
use crate::geometry::Edge;
use crate::words::Line;

/// How a sheet is turned over, like the page of a book.
pub const LEFT_TO_RIGHT: &str = "left to right";
/// How a sheet is turned over, like the sheet of a wall calendar.
pub const TOP_TO_BOTTOM: &str = "top to bottom";

/// What a row cuts from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Taken<'a> {
    /// The whole sheet, or the whole of a leftover that was kept.
    Sheet {
        /// How often.
        times: u32,
        /// Whether it is a kept leftover.
        kept: bool,
    },
    /// Loose parts of one size that are cut alike.
    Parts(Alike<'a>),
    /// Loose parts that differ in size or in how often they are cut.
    Mixed(&'a [Alike<'a>]),
}

/// Loose parts of one size, each cut equally often.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Alike<'a> {
    /// How many of them the row cuts.
    pub count: u32,
    /// How many of that size there are to cut when the row begins.
    pub there: u32,
    /// `12 x 5`.
    pub size: &'a str,
    /// Longer than twice their width.
    pub strip: bool,
    /// How often each is cut.
    pub times: u32,
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
        /// Whether they show the back of the paper.
        back: bool,
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

const fn whole(kept: bool) -> &'static str {
    if kept { "the leftover" } else { "the sheet" }
}

fn often(times: u32) -> String {
    if times == 1 { "once".to_owned() } else { format!("{times} times") }
}

/// Parts by their size: "the 12 x 5 strip", "both 12 x 5 strips", "two of the three 12 x 5 strips".
fn alike(of: Alike<'_>) -> Line {
    let Alike { count, there, size, strip, .. } = of;
    let (one, many) = (noun(strip).to_owned(), plural(noun(strip)));
    let (words, name) = match (count, there) {
        (1, 0 | 1) => ("the ".to_owned(), one),
        (1, 2) => ("either ".to_owned(), one),
        (1, _) => (format!("any of the {} ", counted_word(there)), many),
        (count, there) if count < there => (format!("{} of the {} ", counted_word(count), counted_word(there)), many),
        (2, _) => ("both ".to_owned(), many),
        (count, _) => (format!("all {} ", counted_word(count)), many),
    };
    Line::plain(words).measure(size).text(format!(" {name}"))
}

/// Each lot with how often it is cut: "the 12 x 5 part once, two of the 9 x 5 parts 3 times each".
fn each_lot(lots: &[Alike<'_>]) -> Line {
    let mut line = Line::new();
    for (n, lot) in lots.iter().enumerate() {
        if n > 0 {
            line = line.text(", ");
        }
        // A lot of which another is cut otherwise: the reader may take any of them.
        let named = if lot.count < lot.there {
            let words = format!("{} ", counted_word(lot.count));
            let noun = noun(lot.strip);
            let noun = if lot.count == 1 { noun.to_owned() } else { plural(noun) };
            Line::plain(words).measure(lot.size).text(format!(" {noun}"))
        } else {
            alike(*lot)
        };
        let each = if lot.count == 1 { "" } else { " each" };
        line = line.then(named).text(format!(" {}{each}", often(lot.times)));
    }
    line
}

fn given(part: &Given) -> Option<Line> {
    match part {
        Given::Pieces { count, name, ring, back } => {
            let line = counted_ring(*count, name, *ring);
            Some(if *back { line.text(" showing the back") } else { line })
        }
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
/// "From the left of both 12 x 5 strips cut 6 panels (3). i is left over." Where the parts are not
/// cut alike: "From the left cut the 9 x 5 part once, the 12 x 5 part 2 times: 3 panels (3)."
#[must_use]
pub fn row(from: Edge, what: Taken<'_>, gives: &[Given]) -> Line {
    let given: Vec<Line> = gives.iter().filter_map(given).collect();
    let parts = match what {
        Taken::Sheet { kept, .. } => Line::plain(whole(kept)),
        Taken::Parts(of) => alike(of),
        Taken::Mixed(lots) => {
            let line = Line::plain(format!("From the {} cut ", from.word())).then(each_lot(lots));
            let line = if given.is_empty() { line } else { line.text(": ").then(listed(given)) };
            return line.text(".").then(rest_of(gives));
        }
    };
    let start = Line::plain(format!("From the {} of ", from.word())).then(parts);
    let line = if given.is_empty() {
        let times = match what {
            Taken::Sheet { times, .. } | Taken::Parts(Alike { times, .. }) => times,
            Taken::Mixed(_) => 1,
        };
        start.text(format!(" cut {}", often(times)))
    } else {
        start.text(" cut ").then(listed(given))
    };
    line.text(".").then(rest_of(gives))
}

/// A row that stands without the picture and without a table:
/// "Put the left edge of both 12 x 5 strips on 3 3/4 in and cut. Do it 3 times with each, 6 times in
/// all. It gives 6 panels (3)." Where the parts are not cut alike:
/// "Put the left edge on 3 3/4 in and cut the 9 x 5 part once, the 12 x 5 part 2 times."
#[must_use]
pub fn whole_row(from: Edge, what: Taken<'_>, measure: &str, gives: &[Given]) -> Line {
    let put = |of: Line| {
        Line::plain(format!("Put the {} edge of ", from.word()))
            .then(of)
            .text(" on ")
            .measure(measure)
            .text(" and cut.")
    };
    let line = match what {
        Taken::Sheet { times, kept } => put(Line::plain(whole(kept))).text(again(times)),
        Taken::Parts(of) if of.count == 1 => put(alike(of)).text(again(of.times)),
        Taken::Parts(of) => {
            let parts = plural(noun(of.strip));
            let each = if of.count < of.there {
                Line::plain(format!("each of {} of the {} ", counted_word(of.count), counted_word(of.there)))
            } else {
                Line::plain(format!("each of the {} ", counted_word(of.count)))
            };
            let line = put(each.measure(of.size).text(format!(" {parts}")));
            if of.times == 1 {
                line
            } else {
                line.text(format!(" Do it {} times with each, {} times in all.", of.times, of.times * of.count))
            }
        }
        Taken::Mixed(lots) => Line::plain(format!("Put the {} edge on ", from.word()))
            .measure(measure)
            .text(" and cut ")
            .then(each_lot(lots))
            .text("."),
    };
    let given: Vec<Line> = gives.iter().filter_map(given).collect();
    let line = if given.is_empty() { line } else { line.text(" It gives ").then(listed(given)).text(".") };
    line.then(rest_of(gives))
}

fn again(times: u32) -> String {
    if times == 1 { String::new() } else { format!(" Do it {times} times.") }
}

/// What a sheet is, beside its name: "1 sheet, 12 x 12 in, one-way"; or a leftover that another paper
/// keeps: "1 leftover of Tide, 4 x 5 1/2 in, one-way". Several are cut alike, unless they are pieces as they are.
#[must_use]
pub fn sheet_note(count: u32, size: &str, pattern: Pattern, kept_from: Option<&str>, is_cut: bool) -> Line {
    let what = match kept_from {
        Some(source) => format!("{} of {}, ", counted(count, "leftover"), capital(source)),
        None => format!("{}, ", counted(count, "sheet")),
    };
    let line = Line::plain(what).measure(size);
    let line = match pattern {
        Pattern::OneWay => line.text(", one-way"),
        Pattern::TwoWay => line.text(", two-way"),
        Pattern::Any => line,
    };
    if count > 1 && is_cut { line.text(", cut alike") } else { line }
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
pub fn you_have(sheets: u32, kept: bool, pieces: &[(u32, String, u32)]) -> Line {
    let noun = if kept { "leftovers" } else { "sheets" };
    let parts = pieces.iter().map(|(count, name, ring)| counted_ring(*count, name, *ring));
    Line::plain(match sheets {
        0 | 1 => "You have ".to_owned(),
        2 => format!("From both {noun} you have "),
        _ => format!("From all {sheets} {noun} you have "),
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

/// From which edges another way measures in one direction.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Edges {
    /// From the edges of the first way.
    Same,
    /// From those opposite.
    Opposite,
    /// From both in turn.
    InTurn,
}

/// The title over another way to cut: "Another way to cut, 1 of 3".
#[must_use]
pub fn another_way(number: u32, of: u32) -> String {
    if of == 1 { "Another way to cut".to_owned() } else { format!("Another way to cut, {number} of {of}") }
}

/// How another way differs from the first: "Measured from the bottom instead of the top, with the
/// first cut the other way." `lying` is the number of pieces on their side, where it is another.
#[must_use]
pub fn differs(across: Edges, up: Edges, other_parts: Option<(bool, Option<u32>)>) -> String {
    let edges = |edges: Edges, first: &str, other: &str| match edges {
        Edges::Same => None,
        Edges::Opposite => Some(format!("from the {other} instead of the {first}")),
        Edges::InTurn => Some(format!("from the {first} and the {other} in turn")),
    };
    let measured: Vec<String> = edges(up, "top", "bottom").into_iter().chain(edges(across, "left", "right")).collect();
    let mut clauses = Vec::new();
    if !measured.is_empty() {
        clauses.push(format!("measured {}", measured.join(" and ")));
    }
    if let Some((first_cut, lying)) = other_parts {
        if first_cut {
            clauses.push("the first cut the other way".to_owned());
        }
        match lying {
            Some(0) => clauses.push("no piece on its side".to_owned()),
            Some(1) => clauses.push("1 piece on its side".to_owned()),
            Some(count) => clauses.push(format!("{count} pieces on their side")),
            None if !first_cut => clauses.push("other parts".to_owned()),
            None => {}
        }
    }
    format!("{}.", capital(&clauses.join(", ")))
}

/// Beside a paper that another way cuts as the first does.
pub const AS_BEFORE: &str = "cut as before.";

/// Where there is no other way, or fewer than were asked for.
#[must_use]
pub fn no_more_ways(found: u32) -> String {
    match found {
        0 => "No other way of equal worth was found.".to_owned(),
        1 => "No more than 1 other way of equal worth was found.".to_owned(),
        _ => format!("No more than {found} other ways of equal worth were found."),
    }
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

/// How far the largest leftover is known to be the largest: "Largest leftover 4 1/2 x 10 1/4 in: the
/// best found; no plan can leave more than 80 sq in in one part." `size` and `bound` with their units.
#[must_use]
pub fn largest_leftover(size: Option<&str>, bound: &str, proven: bool) -> String {
    let what = size.map_or_else(|| "No usable leftover".to_owned(), |size| format!("Largest leftover {size}"));
    if proven {
        format!("{what}: proven largest.")
    } else {
        format!("{what}: the best found; no plan can leave more than {bound} in one part.")
    }
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
