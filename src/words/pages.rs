//! What the handout says besides its cuts and steps: titles, leads, facts, lists, cautions.

use super::counts::{self, Between, joined, joined_words};
use super::{Line, Words};
use crate::length::Units;

fixed_words! {
    /// The language of this catalogue, as a tag.
    lang = "lang";
    /// Before the page number.
    page = "page";
    /// Before the number of pages.
    of = "page-of";
    /// Over the terms of use.
    terms = "terms";
    /// Over a web address without terms.
    on_the_web = "on-the-web";
    /// What a logo shows where nobody is named.
    logo = "logo";
    /// The mark of a draft.
    draft = "draft";
    /// Title of a draft's last page.
    findings = "findings";
    /// Title of the cut list.
    cut_list = "cut-list";
    /// The pattern of a paper that has a way up.
    one_way = "one-way";
    /// The pattern of a paper that may be turned half round.
    two_way = "two-way";
    /// Title of the pages with the other sides of card and envelope.
    other_sides = "other-sides";
    /// Title of a picture.
    envelope_front = "envelope-front-title";
    /// Title of a picture.
    envelope_back = "envelope-back-title";
    /// Title of the box for what is not as usual.
    not_as_usual = "not-as-usual";
    /// Title of the box in a draft whose paper does not suffice.
    paper_missing = "paper-missing";
    /// Title of the cutting pages.
    cutting = "cutting";
    /// Title of the pages where the card is put together.
    putting_together = "putting-together";
    /// Over the steps of what is put together before anything is glued to the card.
    first_put_together = "first-put-together";
    /// Over the steps of the front.
    on_the_front = "on-the-front";
    /// Over the steps of the inside.
    on_the_inside = "on-the-inside";
    /// Over the steps of the back.
    on_the_back = "on-the-back";
    /// Over the steps of the envelope.
    on_the_envelope = "on-the-envelope";
    /// Over the steps of decorations.
    decorating = "decorating";
    /// Under the last step.
    not_to_scale = "not-to-scale";
    /// Title of the page of supplies.
    supplies = "supplies";
    /// Head of a list to tick.
    paper = "paper-head";
    /// Head of a list to tick.
    glue = "glue-head";
    /// Head of a list to tick.
    also = "also-head";
    /// Head of a list to tick.
    tools = "tools-head";
    /// Title of the table of leftovers.
    leftovers = "leftovers-title";
    /// Title of what leftovers are good for.
    ideas = "ideas";
    /// Title of how a spoiled piece is replaced.
    spoiled = "spoiled";
    /// Title of what is said of the inside and the envelope.
    inside_title = "inside-title";
    /// Title of the bars that check the print.
    check_print_title = "check-print-title";
    /// Title of the cautions.
    take_care = "take-care";
    /// Title of the swatch page.
    swatch = "swatch";
    /// Over the places for scraps.
    my_papers = "my-papers";
}

fixed_lines! {
    /// Beside the title of the other sides.
    other_sides_lead = "other-sides-lead";
    /// Before the first cut.
    cutting_caution = "cutting-caution";
    /// Once: where the measured part lies.
    measured_part = "measured-part";
    /// What another way is for.
    why_another_way = "why-another-way";
    /// Under the count of cards to make.
    tick_each = "tick-each";
    /// For windows.
    knife = "knife-tool";
    /// For rounded corners.
    corner_punch = "corner-punch";
    /// For what is cut with dies.
    dies = "dies";
    /// For what is punched.
    punches = "punches";
    /// For scoring.
    scoring_tool = "scoring-tool";
    /// For arrows and piles.
    pencil = "pencil";
    /// For trimming level.
    scissors = "scissors";
    /// Said of a card that is stiff, thick or uneven.
    ask_the_post = "ask-the-post";
    /// What to do with the bars.
    check_print = "check-print";
    /// What to do with the swatch page.
    swatch_lead = "swatch-lead";
}

/// "November 2026".
#[must_use]
pub fn month(say: &Words, year: u16, month: u8) -> String {
    say.tell("month").count("month", month).count("year", year).string()
}

/// The key of units.
pub(super) const fn key(units: Units) -> &'static str {
    match units {
        Units::Inch => "inch",
        Units::Metric => "metric",
    }
}

/// "inches" or "millimetres".
#[must_use]
pub fn units(say: &Words, units: Units) -> String {
    say.tell("units").kind("units", key(units)).string()
}

/// Above a photo: "The finished card", "**Dusk,** the finished card".
#[must_use]
pub fn photo_caption(say: &Words, version: Option<&str>) -> Line {
    match version {
        Some(version) => say.tell("photo-caption-version").name("version", version).line(),
        None => say.tell("photo-caption").line(),
    }
}

/// What a photo shows: "Photo of the finished card: Lantern Row, dusk."
#[must_use]
pub fn photo_alt(say: &Words, title: &str, version: Option<&str>) -> String {
    let tell = say.tell("photo-alt").name("title", title).whether("versions", version.is_some());
    tell.name("version", version.unwrap_or_default()).string()
}

/// Beside the title of a draft's last page.
#[must_use]
pub fn findings_lead(say: &Words, none: bool) -> Line {
    say.tell("findings-lead").whether("none", none).line()
}

/// "Lantern Row, November 2026": the file's title.
#[must_use]
pub fn file_title(say: &Words, title: &str, month: Option<&str>) -> String {
    let told = |month| say.tell("file-title").name("title", title).name("month", month).string();
    month.map_or_else(|| title.to_owned(), told)
}

/// Behind the title at the foot of a page: " · November 2026 · inches".
#[must_use]
pub fn footer_rest(say: &Words, month: Option<&str>, units: Units) -> String {
    let units = self::units(say, units);
    let rest = match month {
        None => say.tell("footer-rest").name("units-word", &units),
        Some(month) => say.tell("footer-rest-dated").name("month", month).name("units-word", &units),
    };
    format!(" · {}", rest.string())
}

/// Above the title: "Sketch for November 2026".
#[must_use]
pub fn sketch_for(say: &Words, month: &str) -> String {
    if month.is_empty() { say.tell("sketch").string() } else { say.tell("sketch-for").name("month", month).string() }
}

/// "8 cards".
#[must_use]
pub fn cards(say: &Words, count: u32) -> Line {
    Line::plain(super::cards(say, count))
}

/// "4 dusk, 4 ember", or "all alike".
#[must_use]
pub fn versions(say: &Words, versions: &[(u32, String)]) -> Line {
    match versions {
        [] | [_] => say.tell("all-alike").line(),
        several => super::listed(say, several.iter().map(|(count, name)| version(say, *count, name)).collect()),
    }
}

/// "4 dusk".
pub(super) fn version(say: &Words, count: u32, name: &str) -> Line {
    say.tell("version-count").count("count", count).name("name", name).line()
}

/// How a card folds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Folds {
    /// Once, at this edge, by its key.
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
pub fn folds(say: &Words, folds: Folds, flat: &str) -> Line {
    match folds {
        Folds::At(edge) => say.tell("folds-at").kind("edge", edge).measure("flat", flat).line(),
        Folds::Gate => say.tell("folds-gate").measure("flat", flat).line(),
        Folds::Accordion(panels) => say.tell("folds-accordion").count("panels", panels).measure("flat", flat).line(),
        Folds::Flat => say.tell("folds-flat").line(),
    }
}

/// "8 sheets of 4 papers".
#[must_use]
pub fn sheets_of_papers(say: &Words, sheets: u32, papers: u32) -> Line {
    say.tell("sheets-of-papers").count("count", sheets).count("papers", papers).line()
}

/// "56 pieces to cut, 7 for each card".
#[must_use]
pub fn pieces_in_all(say: &Words, pieces: u32, each: u32) -> Line {
    say.tell("pieces-in-all").count("count", pieces).count("each", each).line()
}

/// Beside the title of the cut list.
#[must_use]
pub fn cut_list_note(say: &Words, cards: u32, units: Units) -> Line {
    say.tell("cut-list-note").count("count", cards).kind("units", key(units)).line()
}

/// "1 sheet, 12 x 12 in" under a paper's name: how many and which size, for each kind of sheet.
#[must_use]
pub fn sheets_note(say: &Words, sheets: &[(u32, String)]) -> Line {
    let note =
        |(count, size): &(u32, String)| say.tell("sheets-note").count("count", *count).measure("size", size).line();
    joined(say, sheets.iter().map(note).collect(), Between::Comma)
}

/// "one-way, 120 gsm" under it.
#[must_use]
pub fn kind_note(say: &Words, pattern: Option<&str>, weight: Option<&str>) -> Line {
    joined(say, [pattern, weight].into_iter().flatten().map(Line::plain).collect(), Between::Comma)
}

/// The name of a piece where `count` of it are listed.
#[must_use]
pub fn piece_name(say: &Words, count: u32, name: &str) -> String {
    say.tell("piece-name").count("count", count).name("name", name).string()
}

/// "folded to 4 1/4 x 5 1/2".
#[must_use]
pub fn folded_to(say: &Words, size: &str) -> Line {
    say.tell("folded-to").measure("size", size).line()
}

/// "cut out with the die later, 3 x 1": of a rectangle that a die or punch is laid on; with so many windows.
#[must_use]
pub fn cut_out(say: &Words, die: bool, size: &str, windows: usize) -> Line {
    let tell = say.tell("cut-out").kind("tool", if die { "die" } else { "punch" });
    tell.measure("size", size).count("windows", windows).line()
}

/// A rectangle that keeps its edges, with so many windows: "a window is cut later".
#[must_use]
pub fn with_windows(say: &Words, windows: usize) -> Line {
    say.tell("with-windows").count("windows", windows).line()
}

/// A rectangle that a hand cuts to a shape: "cut to shape later, with a window".
#[must_use]
pub fn cut_to_shape(say: &Words, windows: usize) -> Line {
    say.tell("cut-to-shape").count("windows", windows).line()
}

/// "cut corner to corner later: each gives 2", or one of this and one of another, or one and scrap.
#[must_use]
pub fn cut_corner_to_corner(say: &Words, own: &(String, u32), other: Option<&(String, u32)>) -> Line {
    match other {
        None => say.tell("corner-to-corner-one").line(),
        Some(other) if other == own => say.tell("corner-to-corner-two").line(),
        Some(other) => say
            .tell("corner-to-corner-both")
            .name("own", &own.0)
            .ring("own-ring", own.1)
            .name("other", &other.0)
            .ring("other-ring", other.1)
            .line(),
    }
}

/// "trimmed later to 4 x 1/4".
#[must_use]
pub fn trimmed_to(say: &Words, size: &str) -> Line {
    say.tell("trimmed-to").measure("size", size).line()
}

/// Over the picture of a version: "Dusk, 4 cards: Dusk panel, Ember lanterns".
/// `papers` holds how many of the piece a card has, the piece and its paper.
#[must_use]
pub fn version_caption(say: &Words, name: &str, cards: u32, papers: &[(u32, String, String)]) -> Line {
    if name.is_empty() {
        return say.tell("version-caption-alike").count("count", cards).line();
    }
    if papers.is_empty() {
        return say.tell("version-caption").count("count", cards).name("name", name).line();
    }
    let told = |(count, piece, paper): &(u32, String, String)| {
        say.tell("piece-of-paper").count("count", *count).name("name", piece).name("paper", paper).line()
    };
    let papers = joined(say, papers.iter().map(told).collect(), Between::Comma);
    say.tell("version-caption-papers").count("count", cards).name("name", name).part("papers", &papers).line()
}

/// Over the picture of a side of the card or envelope, and of which version where they differ.
#[must_use]
pub fn side_caption(say: &Words, title: &str, version: &str) -> Line {
    if version.is_empty() {
        return say.tell("side-caption").name("title", title).line();
    }
    say.tell("side-caption-version").name("title", title).name("version", version).line()
}

/// Words that are printed on the paper before it is cut: "Print before you cut: “hello” stands on each label (6)."
#[must_use]
pub fn printed_first(say: &Words, piece: &str, ring: u32, what: &str) -> Line {
    say.tell("printed-first").name("piece", piece).ring("ring", ring).name("words", what).line()
}

/// A piece that no sheet gives: "The pane (5) is what a window leaves. Keep what comes out of the frame (2)."
#[must_use]
pub fn left_by_a_window(say: &Words, piece: &str, ring: u32, frame: &str, frame_ring: u32) -> Line {
    let tell = say.tell("left-by-a-window").name("piece", piece).ring("ring", ring);
    tell.name("frame", frame).ring("frame-ring", frame_ring).line()
}

/// A piece is cut too long on purpose.
#[must_use]
pub fn cut_too_long(say: &Words, piece: &str, ring: u32, to: &str) -> Line {
    say.tell("cut-too-long").name("piece", piece).ring("ring", ring).name("onto", to).line()
}

/// A paper with a way up, or with two.
#[must_use]
pub fn keep_up(say: &Words, paper: &str, two_ways: bool) -> Line {
    let pattern = if two_ways { "two-way" } else { "one-way" };
    say.tell("keep-up").name("paper", paper).kind("pattern", pattern).line()
}

/// Of a double-sided paper: which side is up while it is cut, and what then becomes of the pieces that
/// show the back. Nothing is drawn on it that could show.
#[must_use]
pub fn both_sides(say: &Words, paper: &str, turned_over: &str, direction: bool) -> Line {
    say.tell("both-sides").name("paper", paper).name("over", turned_over).whether("direction", direction).line()
}

/// A paper whose sheets differ from one another.
#[must_use]
pub fn different_sheets(say: &Words, paper: &str) -> Line {
    say.tell("different-sheets").name("paper", paper).line()
}

/// "1 leftover of Tide, 4 x 5 1/2 in": what a paper is that another one keeps.
#[must_use]
pub fn leftovers_note(say: &Words, count: u32, source: &str, size: &str) -> Line {
    say.tell("leftovers-note").count("count", count).name("source", source).measure("size", size).line()
}

/// Sheets of one paper that are cut in different ways.
#[must_use]
pub fn not_cut_alike(say: &Words, paper: &str, sheets: u32) -> Line {
    say.tell("not-cut-alike").name("paper", paper).count("count", sheets).line()
}

/// What flags and rings mean.
#[must_use]
pub fn cutting_lead(say: &Words, units: Units) -> Line {
    say.tell("cutting-lead").cut("cut", "1").ring("ring", 1).kind("units", key(units)).line()
}

/// Heads of the words beside a diagram.
#[must_use]
pub fn cut_heads(say: &Words) -> [String; 3] {
    [say.tell("cut-head-cuts").string(), say.tell("cut-head-measure").string(), say.tell("cut-head-act").string()]
}

/// A name with a capital at its start, where it stands alone.
#[must_use]
pub fn capital(say: &Words, name: &str) -> String {
    say.tell("capital").name("name", name).string()
}

/// Papers by name: "Dusk, Ember and Slate".
#[must_use]
pub fn paper_names(say: &Words, papers: &[String]) -> String {
    counts::listed_words(say, &papers.iter().map(|paper| capital(say, paper)).collect::<Vec<_>>())
}

/// Title of a panel: its papers, and which sheets where a paper is cut in several ways.
#[must_use]
pub fn panel_name(say: &Words, papers: &[String], sheets: Option<&str>) -> String {
    let names = paper_names(say, papers);
    match sheets {
        None => say.tell("panel-name").name("papers", &names).string(),
        Some(sheets) => say.tell("panel-name-sheets").name("papers", &names).name("sheets", sheets).string(),
    }
}

/// Beside the name of several papers that are cut alike: "1 sheet of each, 12 x 12 in, cut alike".
#[must_use]
pub fn cut_alike(say: &Words, each: Option<u32>, all: u32, size: &str) -> Line {
    let id = if each.is_some() { "cut-alike-each" } else { "cut-alike-all" };
    say.tell(id).count("count", each.unwrap_or(all)).measure("size", size).line()
}

/// Title where a panel goes on.
#[must_use]
pub fn continued(say: &Words, name: &str) -> String {
    say.tell("continued").name("name", name).string()
}

/// Title of a panel with another way to cut the same sheets.
#[must_use]
pub fn another_way(say: &Words, panel: &str) -> String {
    say.tell("another-way-panel").name("panel", panel).string()
}

/// Title of a panel of other sheets: "Dusk, from 4 of 6 x 6 in".
#[must_use]
pub fn from_other_sheets(say: &Words, panel: &str, sheets: &str) -> String {
    say.tell("from-other-sheets").name("panel", panel).name("sheets", sheets).string()
}

/// Before the boxes to tick under a diagram's words.
#[must_use]
pub fn have(say: &Words, sheets: u32, kept: bool) -> Line {
    say.tell("have").count("count", sheets).kind("what", sheets_key(kept)).line()
}

/// The key of what is cut: sheets, or leftovers that were kept.
pub(super) const fn sheets_key(kept: bool) -> &'static str {
    if kept { "leftovers" } else { "sheets" }
}

/// "4 panels (3)"; of which some are more than the cards need: "4 panels (3), 1 to spare".
#[must_use]
pub fn pieces(say: &Words, count: u32, name: &str, ring: u32, spare: u32) -> Line {
    let pieces = say.tell("pieces").count("count", count).name("name", name).ring("ring", ring).line();
    if spare == 0 { pieces } else { say.tell("of-them-spare").part("pieces", &pieces).count("spare", spare).line() }
}

/// "Left over: i 12 x 1 1/2 · ii 3/4 x 5, 2 of them": number, size, how many.
#[must_use]
pub fn left(say: &Words, parts: &[(u32, String, u32)]) -> Line {
    let told = |(number, size, count): &(u32, String, u32)| {
        let id = if *count > 1 { "left-part-several" } else { "left-part" };
        say.tell(id).leftover("leftover", *number).measure("size", size).count("count", *count).line()
    };
    let parts = joined(say, parts.iter().map(told).collect(), Between::Dot);
    say.tell("left").part("parts", &parts).line()
}

/// Behind what [`left`] says, the same leftovers from another paper cut alike: "… · from Ember: iv, v".
#[must_use]
pub fn left_also(say: &Words, left: &Line, paper: &str, numbers: &[u32]) -> Line {
    let numbers = numbers.iter().map(|number| say.tell("leftover-number").leftover("leftover", *number).line());
    let numbers = joined(say, numbers.collect(), Between::Comma);
    say.tell("left-also").part("left", left).name("paper", paper).part("leftovers", &numbers).line()
}

/// How pictures are drawn, how to work in batches.
#[must_use]
pub fn putting_lead(say: &Words, cards: u32) -> Line {
    say.tell("putting-lead").count("count", cards).line()
}

/// "Make 8".
#[must_use]
pub fn make(say: &Words, cards: u32) -> String {
    say.tell("make-cards").count("count", cards).string()
}

/// "4 cards, Dusk", or just the cards where there are no versions.
#[must_use]
pub fn tick_row(say: &Words, cards: u32, name: &str) -> Line {
    if name.is_empty() {
        return say.tell("tick-row").count("count", cards).line();
    }
    say.tell("tick-row-version").count("count", cards).name("name", name).line()
}

/// What the numbers of the supplies are.
#[must_use]
pub fn supplies_lead(say: &Words, cards: u32) -> Line {
    say.tell("supplies-lead").count("count", cards).line()
}

/// A paper to buy: its name, then what [`sheets_note`] and [`kind_note`] say.
#[must_use]
pub fn paper_to_buy(say: &Words, name: &str, sheets: Line, kind: Line) -> Line {
    let about = [sheets, kind].into_iter().filter(|note| !note.to_plain().is_empty()).collect();
    say.tell("paper-to-buy").name("name", name).part("about", &joined(say, about, Between::Comma)).line()
}

/// How much tape: about so much.
#[must_use]
pub fn tape(say: &Words, length: &str) -> Line {
    say.tell("tape").measure("length", length).line()
}

/// Liquid glue.
#[must_use]
pub fn liquid_glue(say: &Words, pieces: u32) -> Line {
    say.tell("liquid-glue").count("count", pieces).line()
}

/// How many foam squares.
#[must_use]
pub fn foam(say: &Words, squares: u32) -> Line {
    say.tell("foam").count("count", squares).line()
}

/// How many glue dots.
#[must_use]
pub fn glue_dots(say: &Words, dots: u32) -> Line {
    say.tell("glue-dots").count("count", dots).line()
}

/// "18 pearls, 4 x 4 mm".
#[must_use]
pub fn decoration(say: &Words, count: u32, name: &str, size: &str) -> Line {
    say.tell("decoration").count("count", count).name("name", name).measure("size", size).line()
}

/// "Ribbon, 6 mm wide: 6 lengths of 300 mm, 1.8 m in all".
#[must_use]
pub fn roll(say: &Words, name: &str, wide: &str, count: u32, each: &str, all: &str) -> Line {
    let tell = say.tell("roll").name("name", name).measure("wide", wide).count("count", count);
    tell.measure("each", each).measure("all", all).line()
}

/// The trimmer: what it must take and show.
#[must_use]
pub fn trimmer(say: &Words, longest: &str, step: &str) -> Line {
    say.tell("trimmer").measure("longest", longest).measure("step", step).line()
}

/// Heads of the table of leftovers.
#[must_use]
pub fn leftover_heads(say: &Words, units: Units) -> [String; 4] {
    [
        say.tell("leftover-head-number").string(),
        say.tell("leftover-head-from").string(),
        say.tell("leftover-head-size").kind("units", key(units)).string(),
        say.tell("leftover-head-use").string(),
    ]
}

/// "Slate", or "Slate, 4" where there are several.
#[must_use]
pub fn leftover_from(say: &Words, paper: &str, count: u32) -> String {
    say.tell("leftover-from").name("paper", paper).count("count", count).string()
}

/// Leftovers that several papers cut alike give: "3 papers".
#[must_use]
pub fn leftover_from_alike(say: &Words, papers: u32) -> String {
    say.tell("leftover-from-alike").count("count", papers).string()
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
pub fn good_for(say: &Words, what: GoodFor) -> Line {
    let key = match what {
        GoodFor::Front => "front",
        GoodFor::Tag => "tag",
        GoodFor::Bookmark => "bookmark",
        GoodFor::Strip => "strip",
        GoodFor::Small => "small",
    };
    say.tell("good-for").kind("use", key).line()
}

/// "iv gives 1 more Ember panel (3)."
#[must_use]
pub fn gives_more(say: &Words, number: u32, count: u32, paper: &str, name: &str, ring: u32) -> Line {
    let tell = say.tell("gives-more").leftover("leftover", number).count("count", count);
    tell.name("paper", paper).name("name", name).ring("ring", ring).line()
}

/// Pieces that no leftover can replace.
#[must_use]
pub fn no_spare(say: &Words, names: &[String]) -> Line {
    say.tell("no-spare").name("pieces", &joined_words(say, names, Between::Or)).line()
}

/// Common practice of the trade, no source: a strip of 1/2 to 1 in along the foot, or a lighter
/// panel where the base is dark; an envelope 1/8 in larger in all, 1/4 in for thick cards.
#[must_use]
pub fn inside(say: &Words, strip: &str, card: &str, room: &str) -> [Line; 2] {
    [
        say.tell("inside-strip").measure("strip", strip).line(),
        say.tell("inside-envelope").measure("room", room).measure("card", card).line(),
    ]
}

/// What can hurt. `small`: whether foam, decorations or other small parts are glued on; `dies`: whether
/// dies or punches are used.
#[must_use]
pub fn cautions(say: &Words, small: bool, dies: bool) -> Vec<Line> {
    let mut lines = vec![say.tell("caution-blades").line()];
    if dies {
        lines.push(say.tell("caution-dies").line());
    }
    lines.push(say.tell("caution-makers").line());
    if small {
        lines.push(say.tell("caution-small").line());
    }
    lines
}

/// "For Dusk".
#[must_use]
pub fn for_paper(say: &Words, name: &str) -> Line {
    say.tell("for-paper").name("name", name).line()
}

/// Over an outlined card: its version.
#[must_use]
pub fn outline_caption(say: &Words, name: &str) -> Line {
    if name.is_empty() {
        return say.tell("outline-caption-alike").line();
    }
    say.tell("outline-caption").name("name", name).line()
}

/// "Dusk: " and an idea for its leftovers.
#[must_use]
pub fn from_paper(say: &Words, name: &str, idea: &Line) -> Line {
    say.tell("from-paper").name("name", name).part("idea", idea).line()
}
