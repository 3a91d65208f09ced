//! What the handout says besides its cuts and steps: titles, leads, facts, lists, cautions.

use super::{capital, counted, listed_words, plural};
use crate::length::Units;
use crate::words::Line;

/// The language of this catalogue, as a tag.
pub const LANG: &str = "en";

/// Months, January first.
const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// "November 2026".
#[must_use]
pub fn month(year: u16, month: u8) -> String {
    let name = MONTHS.get(usize::from(month).wrapping_sub(1)).copied().unwrap_or("");
    format!("{name} {year}").trim().to_owned()
}

/// "inches" or "millimetres".
#[must_use]
pub const fn units(units: Units) -> &'static str {
    match units {
        Units::Inch => "inches",
        Units::Metric => "millimetres",
    }
}

// The designer's own look.

/// Over the terms of use.
pub const TERMS: &str = "Terms of use";
/// Over a web address without terms.
pub const ON_THE_WEB: &str = "On the web";
/// What a logo shows where nobody is named.
pub const LOGO: &str = "Logo";

/// Above a photo: "The finished card", "**Dusk,** the finished card".
#[must_use]
pub fn photo_caption(version: Option<&str>) -> Line {
    match version {
        Some(version) => Line::new().strong(format!("{},", capital(version))).text(" the finished card"),
        None => Line::plain("The finished card"),
    }
}

/// What a photo shows: "Photo of the finished card: Lantern Row, dusk."
#[must_use]
pub fn photo_alt(title: &str, version: Option<&str>) -> String {
    let version = version.map_or_else(String::new, |version| format!(", {version}"));
    format!("Photo of the finished card: {title}{version}.")
}

// Every page.

/// Before the page number.
pub const PAGE: &str = "Page";
/// Before the number of pages.
pub const OF: &str = "of";
/// The mark of a draft.
pub const DRAFT: &str = "DRAFT";
/// Title of a draft's last page.
pub const FINDINGS: &str = "Not ready yet";

/// Beside the title of a draft's last page.
#[must_use]
pub fn findings_lead(none: bool) -> Line {
    Line::plain(if none {
        "Nothing was found that must be mended."
    } else {
        "This is what was found. Mend it before you give this handout away."
    })
}

/// "Lantern Row, November 2026": the file's title.
#[must_use]
pub fn file_title(title: &str, month: Option<&str>) -> String {
    month.map_or_else(|| title.to_owned(), |month| format!("{title}, {month}"))
}

/// Behind the title at the foot of a page: " · November 2026 · inches".
#[must_use]
pub fn footer_rest(month: Option<&str>, units: Units) -> String {
    let month = month.map(|month| format!(" · {month}")).unwrap_or_default();
    format!("{month} · {}", self::units(units))
}

// The front page.

/// Above the title.
#[must_use]
pub fn sketch_for(month: &str) -> String {
    if month.is_empty() { "Sketch".to_owned() } else { format!("Sketch for {month}") }
}

/// "8 cards".
#[must_use]
pub fn cards(count: u32) -> Line {
    Line::plain(counted(count, "card"))
}

/// "4 dusk, 4 ember", or "all alike".
#[must_use]
pub fn versions(versions: &[(u32, String)]) -> Line {
    match versions {
        [] | [_] => Line::plain("all alike"),
        several => Line::plain(listed_words(
            &several.iter().map(|(count, name)| format!("{count} {name}")).collect::<Vec<_>>(),
        )),
    }
}

/// How a card folds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Folds {
    /// Once, at this edge.
    At(&'static str),
    /// Two flaps that meet in the middle.
    Gate,
    /// To and fro, so many panels.
    Accordion(u32),
    /// Not at all.
    Flat,
}

/// How the card folds, under its size; `flat` is the unfolded base.
#[must_use]
pub fn folds(folds: Folds, flat: &str) -> Line {
    match folds {
        Folds::At(edge) => Line::plain(format!("folded at the {edge}, from ")).measure(flat),
        Folds::Gate => Line::plain("opens in the middle, from ").measure(flat),
        Folds::Accordion(panels) => Line::plain(format!("folded to and fro, {panels} panels, from ")).measure(flat),
        Folds::Flat => Line::plain("flat, without a fold"),
    }
}

/// "8 sheets of 4 papers".
#[must_use]
pub fn sheets_of_papers(sheets: u32, papers: u32) -> Line {
    Line::plain(format!("{} of {}", counted(sheets, "sheet"), counted(papers, "paper")))
}

/// "56 pieces, 7 for each card".
#[must_use]
pub fn pieces_in_all(pieces: u32, each: u32) -> Line {
    Line::plain(format!("{} to cut, {each} for each card", counted(pieces, "piece")))
}

/// Title of the cut list.
pub const CUT_LIST: &str = "Cut list";

/// Beside it.
#[must_use]
pub fn cut_list_note(cards: u32, units: Units) -> Line {
    let all = if cards == 1 { "for 1 card".to_owned() } else { format!("totals for all {cards} cards") };
    Line::plain(format!("{all}, width × height in {}", self::units(units)))
}

/// "1 sheet, 12 x 12 in" under a paper's name: how many and which size, for each kind of sheet.
#[must_use]
pub fn sheets_note(sheets: &[(u32, String)]) -> Line {
    let mut line = Line::new();
    for (n, (count, size)) in sheets.iter().enumerate() {
        if n > 0 {
            line = line.text(", ");
        }
        line = line.text(format!("{}, ", counted(*count, "sheet"))).measure(size.clone());
    }
    line
}

/// "one-way, 120 gsm" under it.
#[must_use]
pub fn kind_note(pattern: Option<&str>, weight: Option<&str>) -> Line {
    Line::plain([pattern, weight].into_iter().flatten().collect::<Vec<_>>().join(", "))
}

/// The pattern of a paper that has a way up.
pub const ONE_WAY: &str = "one-way";
/// The pattern of a paper that may be turned half round.
pub const TWO_WAY: &str = "two-way";

/// The name of a piece where `count` of it are listed.
#[must_use]
pub fn piece_name(count: u32, name: &str) -> String {
    if count == 1 { name.to_owned() } else { plural(name) }
}

/// "folded to 4 1/4 x 5 1/2".
#[must_use]
pub fn folded_to(size: &str) -> Line {
    Line::plain("folded to ").measure(size)
}

/// What follows where a piece has windows.
fn windows(count: usize) -> &'static str {
    match count {
        0 => "",
        1 => ", with a window",
        _ => ", with windows",
    }
}

/// "cut out with the die later, 3 x 1": of a rectangle that a die or punch is laid on.
#[must_use]
pub fn cut_out(die: bool, size: &str, count: usize) -> Line {
    let how = if die { "cut out with the die later, " } else { "punched out later, " };
    Line::plain(how).measure(size).text(windows(count))
}

/// A rectangle that keeps its edges.
#[must_use]
pub fn with_windows(count: usize) -> Line {
    Line::plain(if count == 1 { "a window is cut later" } else { "windows are cut later" })
}

/// A rectangle that a hand cuts to a shape.
#[must_use]
pub fn cut_to_shape(count: usize) -> Line {
    Line::plain(format!("cut to shape later{}", windows(count)))
}

/// "cut corner to corner later, each gives 2", or one of this and one of another, or one and scrap.
#[must_use]
pub fn cut_corner_to_corner(own: &(String, u32), other: Option<&(String, u32)>) -> Line {
    let line = Line::plain("cut corner to corner later: each gives ");
    match other {
        None => line.text("1"),
        Some(other) if other == own => line.text("2"),
        Some(other) => {
            let line = line.text(format!("1 {} ", own.0)).ring(own.1);
            line.text(format!(" and 1 {} ", other.0)).ring(other.1)
        }
    }
}

/// "trimmed to 4 x 1/4".
#[must_use]
pub fn trimmed_to(size: &str) -> Line {
    Line::plain("trimmed later to ").measure(size)
}

/// Over the picture of a version: "Dusk, 4 cards: Dusk panel, Ember lanterns".
/// `papers` holds how many of the piece a card has, the piece and its paper.
#[must_use]
pub fn version_caption(name: &str, cards: u32, papers: &[(u32, String, String)]) -> Line {
    if name.is_empty() {
        return Line::new().strong(counted(cards, "card")).text(if cards == 1 { "" } else { ", all alike" });
    }
    let parts: Vec<String> = papers
        .iter()
        .map(|(count, piece, paper)| format!("{} {}", capital(paper), piece_name(*count, piece)))
        .collect();
    let tail = if parts.is_empty() { String::new() } else { format!(": {}", parts.join(", ")) };
    Line::new().strong(format!("{}, {}", capital(name), counted(cards, "card"))).text(tail)
}

/// Title of the pages with the other sides of card and envelope.
pub const OTHER_SIDES: &str = "The other sides";

/// Beside it.
#[must_use]
pub fn other_sides_lead() -> Line {
    Line::plain("Each side as it lies before you when the card is done.")
}

/// Over the picture of a side of the card or envelope, and of which version where they differ.
#[must_use]
pub fn side_caption(title: &str, version: &str) -> Line {
    let line = Line::new().strong(title);
    if version.is_empty() { line } else { line.text(format!(", {}", capital(version))) }
}

/// Title of a picture.
pub const ENVELOPE_FRONT: &str = "The front of the envelope";
/// Title of a picture.
pub const ENVELOPE_BACK: &str = "The back of the envelope";

/// Words that are printed on the paper before it is cut.
#[must_use]
pub fn printed_first(piece: &str, ring: u32, what: &str) -> Line {
    let start = "Print before you cut: ";
    Line::new().strong(start).text(format!("\u{201c}{what}\u{201d} stands on each {piece} ")).ring(ring).text(".")
}

/// A piece that no sheet gives.
#[must_use]
pub fn left_by_a_window(piece: &str, ring: u32, frame: &str, frame_ring: u32) -> Line {
    let line = Line::new().strong(format!("The {piece} ")).ring(ring).strong(" is what a window leaves.");
    line.text(format!(" Keep what comes out of the {frame} ")).ring(frame_ring).text(".")
}

/// Title of the box for what is not as usual.
pub const NOT_AS_USUAL: &str = "Not as usual";

/// A piece is cut too long on purpose.
#[must_use]
pub fn cut_too_long(piece: &str, ring: u32, to: &str) -> Line {
    Line::new()
        .strong(format!("The {piece} "))
        .ring(ring)
        .strong(" is cut too long on purpose.")
        .text(format!(" Trim it level with the {to} when it is glued."))
}

/// A paper with a way up.
#[must_use]
pub fn keep_up(paper: &str, two_ways: bool) -> Line {
    let line = Line::new();
    if two_ways {
        line.strong(format!("{} has two ways up.", capital(paper)))
            .text(" Turn it half round as you like, never a quarter.")
    } else {
        line.strong(format!("{} has one way up.", capital(paper)))
            .text(" Draw a pencil arrow on the back of each part before you cut it off.")
    }
}

/// Of a double-sided paper: which side is up while it is cut, and what then becomes of the pieces that
/// show the back. Nothing is drawn on it that could show.
#[must_use]
pub fn both_sides(paper: &str, turned_over: &str, direction: bool) -> Line {
    let line = Line::new().strong(format!("{} shows both its sides.", capital(paper)));
    let line = line.text(format!(
        " Cut it with the front up. Turn the pieces marked \u{201c}back\u{201d} over from {turned_over}."
    ));
    line.text(if direction { " It has one way up: lay every part down the way it came off." } else { "" })
}

/// A paper whose sheets differ from one another.
#[must_use]
pub fn different_sheets(paper: &str) -> Line {
    Line::new()
        .strong(format!("The sheets of {} differ.", capital(paper)))
        .text(" All of them are cut alike; the step where the piles are laid out says how to deal them.")
}

/// "1 leftover of Tide, 4 x 5 1/2 in": what a paper is that another one keeps.
#[must_use]
pub fn leftovers_note(count: u32, source: &str, size: &str) -> Line {
    Line::plain(format!("{} of {}, ", counted(count, "leftover"), capital(source))).measure(size)
}

/// Sheets of one paper that are cut in different ways.
#[must_use]
pub fn not_cut_alike(paper: &str, sheets: u32) -> Line {
    let all = if sheets == 2 { "The 2 sheets".to_owned() } else { format!("The {sheets} sheets") };
    Line::new().strong(format!("{all} of {} are not all cut alike.", capital(paper))).text(" Follow the sheet numbers.")
}

/// Title of the box in a draft whose paper does not suffice.
pub const PAPER_MISSING: &str = "Not enough paper";

// Cutting.

/// Title.
pub const CUTTING: &str = "Cutting";

/// What flags and rings mean.
#[must_use]
pub fn cutting_lead(units: Units) -> Line {
    Line::plain("A number in a flag ")
        .cut("1")
        .text(" is a cut, made in that order. A number in a ring ")
        .ring(1)
        .text(format!(" is a piece. All sizes in {}.", self::units(units)))
}

/// Before the first cut.
#[must_use]
pub fn cutting_caution() -> Line {
    Line::plain("Keep your fingers off the line of cut. Close the blade whenever you stop.")
}

/// Once: where the measured part lies.
#[must_use]
pub fn measured_part() -> Line {
    Line::plain(
        "Lay the edge that is named on the measure. What lies between that edge and the blade is the part you cut off.",
    )
}

/// Heads of the words beside a diagram.
pub const CUT_HEADS: [&str; 3] = ["Cuts", "Cut at", "Do this"];

/// Title of a panel: its papers, and which sheets where a paper is cut in several ways.
#[must_use]
pub fn panel_name(papers: &[String], sheets: Option<&str>) -> String {
    let names = listed_words(&papers.iter().map(|paper| capital(paper)).collect::<Vec<_>>());
    sheets.map_or_else(|| names.clone(), |sheets| format!("{names}, {sheets}"))
}

/// Beside the name of several papers that are cut alike: "1 sheet of each, 12 x 12 in".
#[must_use]
pub fn cut_alike(each: Option<u32>, all: u32, size: &str) -> Line {
    let sheets = match each {
        Some(each) => format!("{} of each, ", counted(each, "sheet")),
        None => format!("{}, ", counted(all, "sheet")),
    };
    Line::plain(sheets).measure(size).text(", cut alike")
}

/// Title where a panel goes on.
#[must_use]
pub fn continued(name: &str) -> String {
    format!("{name}, continued")
}

/// Title of a panel with another way to cut the same sheets.
#[must_use]
pub fn another_way(panel: &str) -> String {
    format!("Another way to cut {panel}")
}

/// Title of a panel of other sheets: "Dusk, from 4 of 6 x 6 in".
#[must_use]
pub fn from_other_sheets(panel: &str, sheets: &str) -> String {
    format!("{panel}, from {sheets}")
}

/// What another way is for.
#[must_use]
pub fn why_another_way() -> Line {
    Line::plain("For paper whose pattern differs at its edges: other pieces come from there.")
}

/// Before the boxes to tick under a diagram's words.
#[must_use]
pub fn have(sheets: u32, kept: bool) -> Line {
    let noun = if kept { "leftovers" } else { "sheets" };
    Line::plain(match sheets {
        1 => "You have".to_owned(),
        2 => format!("From both {noun}"),
        _ => format!("From all {sheets} {noun}"),
    })
}

/// "4 panels (3)".
#[must_use]
pub fn pieces(count: u32, name: &str, ring: u32) -> Line {
    Line::plain(format!("{} ", counted(count, name))).ring(ring)
}

/// Behind the number of a piece of which there are more than the cards need: ", 1 to spare".
#[must_use]
pub fn of_them_spare(count: u32) -> String {
    format!(", {count} to spare")
}

/// "Left over: i 12 x 1 1/2 · ii 3/4 x 5, 2 of them": number, size, how many.
#[must_use]
pub fn left(parts: &[(u32, String, u32)]) -> Line {
    let mut line = Line::plain("Left over: ");
    for (n, (number, size, count)) in parts.iter().enumerate() {
        if n > 0 {
            line = line.text(" · ");
        }
        line = line.leftover(*number).text(" ").measure(size.clone());
        if *count > 1 {
            line = line.text(format!(", {count} of them"));
        }
    }
    line
}

/// The same leftovers from another paper cut alike: "from Ember: iv, v".
#[must_use]
pub fn left_also(paper: &str, numbers: &[u32]) -> Line {
    let mut line = Line::plain(format!(" · from {}: ", capital(paper)));
    for (n, number) in numbers.iter().enumerate() {
        if n > 0 {
            line = line.text(", ");
        }
        line = line.leftover(*number);
    }
    line
}

// Putting together.

/// Title.
pub const PUTTING_TOGETHER: &str = "Putting it together";

/// Over the steps of what is put together before anything is glued to the card.
pub const FIRST_PUT_TOGETHER: &str = "Put together first";
/// Over the steps of the front.
pub const ON_THE_FRONT: &str = "The front";
/// Over the steps of the inside.
pub const ON_THE_INSIDE: &str = "The inside";
/// Over the steps of the back.
pub const ON_THE_BACK: &str = "The back";
/// Over the steps of the envelope.
pub const ON_THE_ENVELOPE: &str = "The envelope";
/// Over the steps of decorations.
pub const DECORATING: &str = "Decorating";

/// How pictures are drawn, how to work in batches.
#[must_use]
pub fn putting_lead(cards: u32) -> Line {
    let all = if cards == 1 { String::new() } else { format!(" Do each step for all {cards} cards, then the next.") };
    Line::plain(format!("The new piece is drawn strong, what is there already is pale.{all}"))
}

/// "Make 8".
#[must_use]
pub fn make(cards: u32) -> String {
    format!("Make {cards}")
}

/// Under it.
#[must_use]
pub fn tick_each() -> Line {
    Line::plain("Tick each card when it is done.")
}

/// "4 cards dusk", or just the cards where there are no versions.
#[must_use]
pub fn tick_row(cards: u32, name: &str) -> Line {
    let line = Line::plain(counted(cards, "card"));
    if name.is_empty() { line } else { line.text(", ").strong(capital(name)) }
}

/// Under the last step.
pub const NOT_TO_SCALE: &str = "Step pictures are not to scale. Round details are 1:1.";

// Supplies and finishing.

/// Title.
pub const SUPPLIES: &str = "Supplies and finishing";

/// What the numbers are.
#[must_use]
pub fn supplies_lead(cards: u32) -> Line {
    Line::plain(match cards {
        1 => "For one card, in shopping order. Tick each line when you have it.".to_owned(),
        _ => format!("Totals for all {cards} cards, in shopping order. Tick each line when you have it."),
    })
}

/// Heads of the lists to tick.
pub const PAPER: &str = "Paper";
/// Heads of the lists to tick.
pub const GLUE: &str = "Glue";
/// Heads of the lists to tick.
pub const ALSO: &str = "Also";
/// Heads of the lists to tick.
pub const TOOLS: &str = "Tools";

/// A paper to buy: its name, then what [`sheets_note`] and [`kind_note`] say.
#[must_use]
pub fn paper_to_buy(name: &str, sheets: Line, kind: Line) -> Line {
    let line = Line::new().strong(capital(name)).text(", ").then(sheets);
    if kind.to_plain().is_empty() { line } else { line.text(", ").then(kind) }
}

/// How much tape: about so much.
#[must_use]
pub fn tape(length: &str) -> Line {
    Line::plain("Double-sided tape, about ").measure(length)
}

/// Liquid glue.
#[must_use]
pub fn liquid_glue(pieces: u32) -> Line {
    Line::plain(format!("Paper glue that dries clear, for {}", counted(pieces, "piece")))
}

/// How many foam squares.
#[must_use]
pub fn foam(squares: u32) -> Line {
    Line::plain(format!("Foam squares, about {squares}"))
}

/// How many glue dots.
#[must_use]
pub fn glue_dots(dots: u32) -> Line {
    Line::plain(format!("Glue dots, about {dots}"))
}

/// "18 pearls, 4 x 4 mm".
#[must_use]
pub fn decoration(count: u32, name: &str, size: &str) -> Line {
    Line::plain(format!("{}, ", counted(count, name))).measure(size)
}

/// "Ribbon, 6 mm wide: 6 lengths of 300 mm, 1.8 m in all".
#[must_use]
pub fn roll(name: &str, wide: &str, count: u32, each: &str, all: &str) -> Line {
    let line = Line::plain(format!("{}, ", capital(name))).measure(wide).text(" wide: ");
    let line = line.text(format!("{} of ", counted(count, "length"))).measure(each).text(", ");
    line.measure(all).text(" in all")
}

/// For windows.
#[must_use]
pub fn knife() -> Line {
    Line::plain("Craft knife, metal ruler and cutting mat")
}

/// For rounded corners.
#[must_use]
pub fn corner_punch() -> Line {
    Line::plain("Corner punch")
}

/// For what is cut with dies.
#[must_use]
pub fn dies() -> Line {
    Line::plain("Cutting dies and the machine for them")
}

/// For what is punched.
#[must_use]
pub fn punches() -> Line {
    Line::plain("Hand punches")
}

/// The trimmer: what it must take and show.
#[must_use]
pub fn trimmer(longest: &str, step: &str) -> Line {
    Line::plain("Trimmer that measures up to ").measure(longest).text(", marked every ").measure(step)
}

/// For scoring.
#[must_use]
pub fn scoring_tool() -> Line {
    Line::plain("Scoring tool and ruler")
}

/// For arrows and piles.
#[must_use]
pub fn pencil() -> Line {
    Line::plain("Pencil and soft eraser")
}

/// For trimming level.
#[must_use]
pub fn scissors() -> Line {
    Line::plain("Sharp scissors")
}

/// Title.
pub const LEFTOVERS: &str = "Leftovers";

/// Heads of the table of leftovers.
#[must_use]
pub const fn leftover_heads(units: Units) -> [&'static str; 4] {
    match units {
        Units::Inch => ["No.", "From", "Inches", "Good for"],
        Units::Metric => ["No.", "From", "Millimetres", "Good for"],
    }
}

/// "Slate", or "Slate, 4" where there are several.
#[must_use]
pub fn leftover_from(paper: &str, count: u32) -> String {
    if count == 1 { capital(paper) } else { format!("{}, {count}", capital(paper)) }
}

/// Leftovers that several papers cut alike give: "3 papers".
#[must_use]
pub fn leftover_from_alike(papers: u32) -> String {
    format!("{papers} papers")
}

/// What a leftover is good for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GoodFor {
    /// Another front.
    Front,
    /// A tag.
    Tag,
    /// A bookmark.
    Bookmark,
    /// A strip inside or on the envelope.
    Strip,
    /// Small shapes.
    Small,
}

/// In words.
#[must_use]
pub fn good_for(what: GoodFor) -> Line {
    Line::plain(match what {
        GoodFor::Front => "another front",
        GoodFor::Tag => "a gift tag",
        GoodFor::Bookmark => "a bookmark",
        GoodFor::Strip => "a strip inside",
        GoodFor::Small => "small shapes",
    })
}

/// Title.
pub const IDEAS: &str = "Ideas for what is left";
/// Title.
pub const SPOILED: &str = "Spoiled a piece?";

/// "iv gives 1 more Ember panel (3)."
#[must_use]
pub fn gives_more(number: u32, count: u32, paper: &str, name: &str, ring: u32) -> Line {
    let what = format!("{} {}", capital(paper), piece_name(count, name));
    Line::new().leftover(number).text(format!(" gives {count} more {what} ")).ring(ring).text(". ")
}

/// Pieces that no leftover can replace.
#[must_use]
pub fn no_spare(names: &[String]) -> Line {
    let list = match names {
        [first @ .., last] if !first.is_empty() => format!("{} or {last}", first.join(", ")),
        all => all.join(""),
    };
    Line::plain(format!("No leftover gives another {list}."))
}

/// Title.
pub const INSIDE: &str = "Inside and envelope";

/// Common practice of the trade, no source: a strip of 1/2 to 1 in along the foot, or a lighter
/// panel where the base is dark; an envelope 1/8 in larger in all, 1/4 in for thick cards.
#[must_use]
pub fn inside(strip: &str, card: &str, room: &str) -> [Line; 2] {
    [
        Line::plain("Glue a strip of a leftover, up to ").measure(strip).text(" wide, along the foot of the inside."),
        Line::plain("Look for an envelope at least ")
            .measure(room)
            .text(" larger than the card (")
            .measure(card)
            .text(") each way, and measure one finished card before you buy."),
    ]
}

/// Said of a card that is stiff, thick or uneven.
#[must_use]
pub fn ask_the_post() -> Line {
    Line::plain("A stiff, thick or uneven card may cost more to post. The rules of your post office decide.")
}

/// Title.
pub const CHECK_PRINT: &str = "Check your print";

/// What to do with the bars.
#[must_use]
pub fn check_print() -> Line {
    Line::plain("Lay a ruler on the bars. If one is wrong, print again at 100 %, “actual size”.")
}

/// Title.
pub const TAKE_CARE: &str = "Take care";

/// What can hurt. `small`: whether foam, decorations or other small parts are glued on; `dies`: whether
/// dies or punches are used.
#[must_use]
pub fn cautions(small: bool, dies: bool) -> Vec<Line> {
    let mut lines = vec![Line::plain(
        "Trimmers, knives and scissors cut fingers too. Keep yours off the line of cut, hold narrow strips with a \
         scrap of card, close and lock the blade when you stop, and keep it out of the reach of children.",
    )];
    if dies {
        lines.push(Line::plain(
            "Dies have sharp rims, and machines and punches pinch. Keep fingers, hair and sleeves out of them.",
        ));
    }
    lines.push(Line::plain(
        "Where the maker of a tool or glue says otherwise, follow the maker; so too with hot tools and glue guns.",
    ));
    if small {
        lines.push(Line::plain(
            "Foam and other small things glued on can come off. Do not give such a card to a child under three.",
        ));
    }
    lines
}

// The swatch page.

/// Title.
pub const SWATCH: &str = "Swatch page";

/// What to do with it.
#[must_use]
pub fn swatch_lead() -> Line {
    Line::plain("Colour the outlines or glue on scraps of your own papers. Write down what you choose.")
}

/// Over the places for scraps.
pub const MY_PAPERS: &str = "My papers";

/// "For Dusk".
#[must_use]
pub fn for_paper(name: &str) -> Line {
    Line::plain(format!("For {}", capital(name)))
}

/// Over an outlined card.
#[must_use]
pub fn outline_caption(name: &str) -> Line {
    Line::new().strong(if name.is_empty() { "The card".to_owned() } else { capital(name) })
}

/// "Dusk: " before an idea for its leftovers.
#[must_use]
pub fn from_paper(name: &str) -> Line {
    Line::new().strong(format!("{}: ", capital(name)))
}
