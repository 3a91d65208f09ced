//! What is said beside a cutting diagram.

use super::counts::{self, Between, joined};
use super::pages::sheets_key;
use super::{Line, Words};
use crate::geometry::Edge;

fixed_words! {
    /// How a sheet is turned over, like the page of a book.
    left_to_right = "left-to-right";
    /// How a sheet is turned over, like the sheet of a wall calendar.
    top_to_bottom = "top-to-bottom";
    /// Beside a paper that another way cuts as the first does.
    as_before = "as-before";
}

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

const fn form(strip: bool) -> &'static str {
    if strip { "strip" } else { "part" }
}

/// Parts by their size: "the 12 x 5 strip", "both 12 x 5 strips", "two of the three 12 x 5 strips".
fn alike(say: &Words, of: Alike<'_>) -> Line {
    let Alike { count, there, size, strip, .. } = of;
    let take = match (count, there) {
        (1, 0 | 1) => "only",
        (1, 2) => "either",
        (1, _) => "any",
        (count, there) if count < there => "some",
        (2, _) => "both",
        _ => "all",
    };
    say.tell("parts-alike")
        .kind("take", take)
        .kind("form", form(strip))
        .count("count", count)
        .count("there", there)
        .name("count-word", &counts::counted_word(say, count))
        .name("there-word", &counts::counted_word(say, there))
        .measure("size", size)
        .line()
}

/// Each lot with how often it is cut: "the 12 x 5 part once, two of the 9 x 5 parts 3 times each".
fn each_lot(say: &Words, lots: &[Alike<'_>]) -> Line {
    let told = lots.iter().map(|lot| {
        // A lot of which another is cut otherwise: the reader may take any of them.
        let parts = if lot.count < lot.there {
            say.tell("parts-some")
                .count("count", lot.count)
                .name("count-word", &counts::counted_word(say, lot.count))
                .measure("size", lot.size)
                .kind("form", form(lot.strip))
                .line()
        } else {
            alike(say, *lot)
        };
        say.tell("lot-cut").part("parts", &parts).count("count", lot.count).count("times", lot.times).line()
    });
    joined(say, told.collect(), Between::Comma)
}

fn given(say: &Words, part: &Given) -> Option<Line> {
    match part {
        Given::Pieces { count, name, ring, back } => {
            let id = if *back { "counted-ring-back" } else { "counted-ring" };
            Some(say.tell(id).count("count", *count).name("name", name).ring("ring", *ring).line())
        }
        Given::Parts { count, size, strip } => {
            Some(say.tell("given-parts").count("count", *count).kind("form", form(*strip)).measure("size", size).line())
        }
        Given::EdgeStrip => Some(say.tell("the-edge-strip").line()),
        Given::Leftover { .. } => None,
    }
}

/// All that a row gives but its leftovers, as a list; nothing where there are only these.
fn all_given(say: &Words, gives: &[Given]) -> Line {
    counts::listed(say, gives.iter().filter_map(|part| given(say, part)).collect())
}

/// A sentence for each leftover.
fn rest_of(say: &Words, gives: &[Given]) -> Line {
    gives.iter().fold(Line::new(), |line, part| match part {
        Given::Leftover { number: 0, count } => line.sentence(say.tell("rest-scrap").count("count", *count).line()),
        Given::Leftover { number, count } => {
            line.sentence(say.tell("rest-left").leftover("leftover", *number).count("count", *count).line())
        }
        _ => line,
    })
}

/// A row as the table beside the diagram says it; the measure stands in its own column:
/// "From the left of both 12 x 5 strips cut 6 panels (3). i is left over." Where the parts are not
/// cut alike: "From the left cut the 9 x 5 part once, the 12 x 5 part 2 times: 3 panels (3)."
#[must_use]
pub fn row(say: &Words, from: Edge, what: Taken<'_>, gives: &[Given]) -> Line {
    let given = all_given(say, gives);
    let (parts, times) = match what {
        Taken::Sheet { kept, times } => (say.tell("the-whole").kind("what", sheets_key(kept)).line(), times),
        Taken::Parts(of) => (alike(say, of), of.times),
        Taken::Mixed(lots) => {
            let id = if given.is_empty() { "row-mixed" } else { "row-mixed-gives" };
            let tell = say.tell(id).kind("edge", from.word()).part("lots", &each_lot(say, lots));
            return tell.part("pieces", &given).line().sentence(rest_of(say, gives));
        }
    };
    let id = if given.is_empty() { "row-cut" } else { "row-gives" };
    let tell = say.tell(id).kind("edge", from.word()).part("parts", &parts);
    tell.count("times", times).part("pieces", &given).line().sentence(rest_of(say, gives))
}

/// A row that stands without the picture and without a table:
/// "Put the left edge of each of the two 12 x 5 strips on 3 3/4 in and cut. Do it 3 times with each, 6 times in
/// all. It gives 6 panels (3)." Where the parts are not cut alike:
/// "Put the left edge on 3 3/4 in and cut the 9 x 5 part once, the 12 x 5 part 2 times."
#[must_use]
pub fn whole_row(say: &Words, from: Edge, what: Taken<'_>, measure: &str, gives: &[Given]) -> Line {
    let put = |parts: &Line, times: u32| {
        let tell = say.tell("row-put").kind("edge", from.word()).part("parts", parts);
        tell.measure("measure", measure).count("times", times).line()
    };
    let line = match what {
        Taken::Sheet { times, kept } => put(&say.tell("the-whole").kind("what", sheets_key(kept)).line(), times),
        Taken::Parts(of) if of.count == 1 => put(&alike(say, of), of.times),
        Taken::Parts(of) => say
            .tell("row-put-each")
            .kind("edge", from.word())
            .whether("some", of.count < of.there)
            .name("count-word", &counts::counted_word(say, of.count))
            .name("there-word", &counts::counted_word(say, of.there))
            .measure("size", of.size)
            .kind("form", form(of.strip))
            .measure("measure", measure)
            .count("times", of.times)
            .count("all", of.times.saturating_mul(of.count))
            .line(),
        Taken::Mixed(lots) => say
            .tell("row-put-mixed")
            .kind("edge", from.word())
            .measure("measure", measure)
            .part("lots", &each_lot(say, lots))
            .line(),
    };
    let given = all_given(say, gives);
    let gives_line = if given.is_empty() { given } else { say.tell("it-gives").part("pieces", &given).line() };
    line.sentence(gives_line).sentence(rest_of(say, gives))
}

/// What a sheet is, beside its name: "1 sheet, 12 x 12 in, one-way"; or a leftover that another paper
/// keeps: "1 leftover of Tide, 4 x 5 1/2 in, one-way". Several are cut alike, unless they are pieces as they are.
#[must_use]
pub fn sheet_note(
    say: &Words,
    count: u32,
    size: &str,
    pattern: Pattern,
    kept_from: Option<&str>,
    is_cut: bool,
) -> Line {
    let pattern = match pattern {
        Pattern::OneWay => "one-way",
        Pattern::TwoWay => "two-way",
        Pattern::Any => "any",
    };
    let id = if kept_from.is_some() { "sheet-note-kept" } else { "sheet-note" };
    say.tell(id)
        .count("count", count)
        .name("source", kept_from.unwrap_or_default())
        .measure("size", size)
        .kind("pattern", pattern)
        .whether("alike", count > 1 && is_cut)
        .line()
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
pub fn sheet_numbers(say: &Words, numbers: &[u32]) -> String {
    match numbers {
        [one] => say.tell("sheet-number").count("number", *one).string(),
        [first, .., last] if *last - *first + 1 == u32::try_from(numbers.len()).unwrap_or(0) && numbers.len() > 2 => {
            say.tell("sheets-range").count("first", *first).count("last", *last).string()
        }
        _ => {
            let words: Vec<String> = numbers.iter().map(u32::to_string).collect();
            say.tell("sheets-listed").name("numbers", &counts::listed_words(say, &words)).string()
        }
    }
}

/// What stands after a sheet's rows, totals of all sheets cut so:
/// "From both sheets you have 8 mats (2) and 8 rails (5)."
#[must_use]
pub fn you_have(say: &Words, sheets: u32, kept: bool, pieces: &[(u32, String, u32)]) -> Line {
    say.tell("you-have")
        .count("count", sheets)
        .kind("what", sheets_key(kept))
        .part("pieces", &counts::counted_rings(say, pieces))
        .line()
}

/// After what a sheet gives, or all of them: "1 lantern (4) to spare."
#[must_use]
pub fn to_spare(say: &Words, pieces: &[(u32, String, u32)]) -> Line {
    say.tell("to-spare").part("pieces", &counts::counted_rings(say, pieces)).line()
}

/// The smallest sheet that will do, printed measures kept:
/// "Works on sheets down to 11 5/8 x 11 3/4 in." An edge strip beside the stated size is not in it.
#[must_use]
pub fn works_down_to(say: &Words, size: &str, strip_beside: bool) -> Line {
    say.tell("works-down-to").measure("size", size).whether("strip", strip_beside).line()
}

/// Where no smaller sheet will do.
#[must_use]
pub fn full_size(say: &Words, sheets: u32) -> Line {
    say.tell("full-size").count("count", sheets).line()
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
pub fn another_way(say: &Words, number: u32, of: u32) -> String {
    let id = if of == 1 { "another-way" } else { "another-way-of" };
    say.tell(id).count("number", number).count("count", of).string()
}

/// How another way differs from the first: "Measured from the bottom instead of the top, the first cut the
/// other way." `lying` is the number of pieces on their side, where it is another.
#[must_use]
pub fn differs(say: &Words, across: Edges, up: Edges, other_parts: Option<(bool, Option<u32>)>) -> String {
    let edges = |edges: Edges, first: Edge, other: Edge| {
        let id = match edges {
            Edges::Same => return None,
            Edges::Opposite => "from-instead",
            Edges::InTurn => "from-in-turn",
        };
        Some(say.tell(id).kind("first", first.word()).kind("other", other.word()).line())
    };
    let measured: Vec<Line> =
        edges(up, Edge::Top, Edge::Bottom).into_iter().chain(edges(across, Edge::Left, Edge::Right)).collect();
    let mut clauses = Vec::new();
    if !measured.is_empty() {
        clauses.push(say.tell("measured-from").part("edges", &counts::listed(say, measured)).line());
    }
    if let Some((first_cut, lying)) = other_parts {
        if first_cut {
            clauses.push(say.tell("first-cut-other-way").line());
        }
        match lying {
            Some(count) => clauses.push(say.tell("pieces-lying").count("count", count).line()),
            None if !first_cut => clauses.push(say.tell("other-parts").line()),
            None => {}
        }
    }
    say.tell("differs").part("clauses", &joined(say, clauses, Between::Comma)).string()
}

/// Where there is no other way, or fewer than were asked for.
#[must_use]
pub fn no_more_ways(say: &Words, found: u32) -> String {
    say.tell("no-more-ways").count("count", found).string()
}

/// The pencil arrow that saves one-way paper.
#[must_use]
pub fn pencil_arrow(say: &Words, paper: &str) -> Line {
    say.tell("pencil-arrow").name("paper", paper).line()
}

/// A leftover: "i 12 x 1 1/2".
#[must_use]
pub fn leftover(say: &Words, number: u32, size: &str, count: u32) -> Line {
    let id = if count > 1 { "leftover-several" } else { "leftover" };
    say.tell(id).leftover("leftover", number).measure("size", size).count("count", count).line()
}

/// The totals of a design's cutting:
/// "62 cuts on 8 sheets, 3 cutting diagrams."
#[must_use]
pub fn totals(say: &Words, cuts: u64, sheets: u32, diagrams: u32) -> String {
    say.tell("totals")
        .name("cuts", &count_of(say, Aimed::Cuts, cuts))
        .name("sheets", &count_of(say, Aimed::Sheets, sheets.into()))
        .name("diagrams", &count_of(say, Aimed::Diagrams, diagrams.into()))
        .string()
}

/// The first line of a plan: "Lantern Row: cutting for 8 cards. Sizes are width x height in inches."
#[must_use]
pub fn plan_title(say: &Words, title: &str, cards: u32, sign: &str) -> String {
    let units = if sign == "in" { "inch" } else { "metric" };
    say.tell("plan-title").name("title", title).count("count", cards).kind("units", units).string()
}

/// "Left over: i 12 x 1 1/2, ii 3/4 x 5."
#[must_use]
pub fn left_over(say: &Words, parts: Vec<Line>) -> Line {
    say.tell("left-over").part("parts", &joined(say, parts, Between::Comma)).line()
}

/// "No place was found for 3 lanterns from Dusk."
#[must_use]
pub fn missing(say: &Words, count: u32, piece: &str, paper: &str) -> String {
    say.tell("missing").count("count", count).name("name", piece).name("paper", paper).string()
}

/// How far the largest leftover is known to be the largest: "Largest leftover 4 1/2 x 10 1/4 in: the
/// best found; no plan can leave more than 80 sq in in one part." `size` and `bound` with their units.
#[must_use]
pub fn largest_leftover(say: &Words, size: Option<&str>, bound: &str, proven: bool) -> String {
    let leftover = match size {
        Some(size) => say.tell("largest-leftover-size").size("size", size).string(),
        None => say.tell("largest-leftover-none").string(),
    };
    let id = if proven { "largest-proven" } else { "largest-found" };
    say.tell(id).name("leftover", &leftover).size("bound", bound).string()
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

const fn aim_key(what: Aimed) -> &'static str {
    match what {
        Aimed::Cards => "cards",
        Aimed::Sheets => "sheets",
        Aimed::Diagrams => "diagrams",
        Aimed::Cuts => "cuts",
        Aimed::Changes => "changes",
    }
}

/// "62 cuts".
fn count_of(say: &Words, what: Aimed, count: u64) -> String {
    say.tell("count-of").kind("aim", aim_key(what)).count("count", count).string()
}

/// "8 sheets: proven fewest." or "62 cuts: the best found; no plan can have fewer than 54."
#[must_use]
pub fn aim(say: &Words, what: Aimed, found: u64, bound: u64, proven: bool) -> String {
    let id = if proven { "aim-proven" } else { "aim-found" };
    let tell = say.tell(id).kind("aim", aim_key(what)).count("count", found);
    tell.name("bound", &bound.to_string()).string()
}
