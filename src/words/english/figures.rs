//! Words inside figures, and what a figure says to a reader who cannot see it.

use crate::words::roman;

/// At the folded edge.
#[must_use]
pub const fn fold() -> &'static str {
    "fold"
}

/// At the line to score.
#[must_use]
pub const fn score() -> &'static str {
    "score"
}

/// At a line where something glued is trimmed.
#[must_use]
pub const fn trim() -> &'static str {
    "trim"
}

/// At the arrow beside one-way paper.
#[must_use]
pub const fn up() -> &'static str {
    "up"
}

/// In a piece that shows the back of the paper.
#[must_use]
pub const fn back() -> &'static str {
    "back"
}

/// `1:2` or `1:2.5`, from the larger number in tenths.
#[must_use]
pub fn bare_scale(tenths: u32) -> String {
    if tenths.is_multiple_of(10) { format!("1:{}", tenths / 10) } else { format!("1:{}.{}", tenths / 10, tenths % 10) }
}

/// `Scale 1:2`.
#[must_use]
pub fn scale(tenths: u32) -> String {
    format!("Scale {}", bare_scale(tenths))
}

/// Under a lens: `border 1/8`, `borders 1/8`, `borders 1/8, 1/4`.
#[must_use]
pub fn borders(numbers: &[String]) -> String {
    let mut each: Vec<&str> = numbers.iter().map(String::as_str).collect();
    each.dedup();
    let word = if numbers.len() == 1 { "border" } else { "borders" };
    format!("{word} {}", each.join(", "))
}

/// Under a cutting diagram: what the crossed strip is.
#[must_use]
pub fn edge_strip(number: &str) -> String {
    format!("{number} edge strip: throw away")
}

/// A size as figures show it: `3 3/4 × 5`, from `3 3/4 x 5`.
#[must_use]
pub fn size(numbers: &str) -> String {
    numbers.replace(" x ", " × ")
}

/// A layer as an alternative text tells it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// Its ring number.
    pub ring: u32,
    /// Its name.
    pub name: String,
    /// How many copies.
    pub count: u32,
    /// Its size as it shows, `3 3/4 x 5`.
    pub size: String,
    /// Its paper.
    pub paper: String,
}

/// `panel (3)`, `3 of lantern (4)`: a piece with how many, and its ring number.
#[must_use]
pub fn counted(count: u32, name: &str, ring: u32) -> String {
    if count == 1 { format!("{name} ({ring})") } else { format!("{count} of {name} ({ring})") }
}

fn list(parts: &[String]) -> String {
    match parts {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

/// A face: what it is with its size, where it folds, its layers from the lowest.
#[must_use]
pub fn face(what: &str, fold: Option<&str>, version: &str, layers: &[Told], measures: &[String]) -> String {
    let fold = fold.map_or_else(String::new, |edge| format!(", folded at the {edge}"));
    let version = if version.is_empty() { String::new() } else { format!(", version {version}") };
    let layers: Vec<String> = layers
        .iter()
        .map(|told| format!("{}, {}{}", counted(told.count, &told.name, told.ring), told.size, from(&told.paper)))
        .collect();
    let layers =
        if layers.is_empty() { String::new() } else { format!(" Layers from the lowest: {}.", layers.join("; ")) };
    let measures = if measures.is_empty() { String::new() } else { format!(" Measures: {}.", measures.join("; ")) };
    format!("{what}{fold}{version}.{layers}{measures}")
}

/// `, from dusk`; nothing for what is bought ready made.
fn from(paper: &str) -> String {
    if paper.is_empty() { String::new() } else { format!(", from {paper}") }
}

/// `rail 3/4 from the top edge`, `beds 5 from long bed`.
#[must_use]
pub fn from_there(number: &str, name: &str, there: &str) -> String {
    format!("{name} {number} from {there}")
}

/// `12.5°`, from hundredths of a degree.
#[must_use]
pub fn degrees(hundredths: u32) -> String {
    let (whole, rest) = (hundredths / 100, hundredths % 100);
    let text = format!("{whole}.{rest:02}");
    format!("{}°", text.trim_end_matches('0').trim_end_matches('.'))
}

/// `strip turned 12.5° to the left about its middle`.
#[must_use]
pub fn turned(degrees: &str, left: bool, name: &str, about: &str) -> String {
    format!("{name} turned {degrees} to the {} about {about}", if left { "left" } else { "right" })
}

/// `leaf fanned out by 12° about the middle of its bottom edge`.
#[must_use]
pub fn fanned(degrees: &str, name: &str, about: &str) -> String {
    format!("{name} fanned out by {degrees} about {about}")
}

/// `flag each 1/4 right and 1/8 up from the one before`.
#[must_use]
pub fn stepped(name: &str, each: &[String]) -> String {
    format!("{name} each {} from the one before", each.join(" and "))
}

/// `word moved 1/16 left and 1/16 up`.
#[must_use]
pub fn shifted(name: &str, each: &[String]) -> String {
    format!("{name} moved {}", each.join(" and "))
}

/// `leaf laid again, mirrored left to right`.
#[must_use]
pub fn mirrored(name: &str, left_to_right: bool) -> String {
    format!("{name} laid again, mirrored {}", if left_to_right { "left to right" } else { "top to bottom" })
}

/// A piece's form, after its size.
#[must_use]
pub const fn right_triangle() -> &'static str {
    ", a right triangle"
}

/// A piece's form, after its size.
#[must_use]
pub const fn diamond() -> &'static str {
    ", a diamond"
}

/// A piece's form, after its size.
#[must_use]
pub const fn circle() -> &'static str {
    ", a circle"
}

/// A piece's form, after its size.
#[must_use]
pub const fn oval() -> &'static str {
    ", an oval"
}

/// A piece's form, after its size.
#[must_use]
pub const fn drawn() -> &'static str {
    ", with an outline of its own"
}

/// A piece's form, after its size.
#[must_use]
pub fn many_corners(corners: usize) -> String {
    format!(", an outline of {corners} corners")
}

/// A piece's form, after its size.
#[must_use]
pub fn rounded(corners: usize) -> String {
    if corners == 1 { ", 1 corner rounded".to_owned() } else { format!(", {corners} corners rounded") }
}

/// An end of a strip, after its size.
#[must_use]
pub fn ended(fishtail: bool, edge: &str) -> String {
    format!(", {} at the {edge}", if fishtail { "a fishtail" } else { "a point" })
}

/// Its windows, after its size; nothing where it has none.
#[must_use]
pub fn windows(count: usize) -> String {
    match count {
        0 => String::new(),
        1 => ", with a window".to_owned(),
        _ => format!(", with {count} windows"),
    }
}

/// A turn's pivot.
#[must_use]
pub const fn its_middle() -> &'static str {
    "its middle"
}

/// A turn's pivot: `its upper left corner`.
#[must_use]
pub fn its_corner(corner: &str) -> String {
    format!("its {corner} corner")
}

/// A turn's pivot: `the middle of its top edge`.
#[must_use]
pub fn middle_of_edge(edge: &str) -> String {
    format!("the middle of its {edge} edge")
}

/// A turn's pivot that is no corner and no middle.
#[must_use]
pub const fn a_point() -> &'static str {
    "the point with the dot"
}

/// What a view of the card or envelope shows, with its size.
#[must_use]
pub fn inside(size: &str) -> String {
    format!("The inside, opened flat, {size}")
}

/// The back of the folded card.
#[must_use]
pub fn back_of_card(size: &str) -> String {
    format!("The back of the folded card, {size}")
}

/// The side of the envelope that is written on.
#[must_use]
pub fn envelope_front(size: &str) -> String {
    format!("The front of the envelope, {size}")
}

/// The back of the envelope.
#[must_use]
pub fn envelope_flap(size: &str) -> String {
    format!("The back of the envelope with its flap closed, {size}")
}

/// The finished front of a card with a size.
#[must_use]
pub fn front_of_card(size: &str) -> String {
    format!("The finished card, {size}")
}

/// `the top edge`.
#[must_use]
pub fn the_edge(edge: &str) -> String {
    format!("the {edge} edge")
}

/// `gap 1/4 at lantern`.
#[must_use]
pub fn gap(number: &str, name: &str) -> String {
    format!("gap {number} at {name}")
}

/// Borders all round, outermost first.
#[must_use]
pub fn borders_told(numbers: &[String]) -> String {
    format!("{} all round", borders(numbers))
}

/// One flag's cuts as an alternative text tells them.
#[must_use]
pub fn cuts_told(first: u32, count: u32, edge: &str, measure: &str) -> String {
    if count == 1 {
        format!("cut {first} at {measure} from the {edge} edge")
    } else {
        format!("cuts {first} to {} at {measure} from the {edge} edge", first + count - 1)
    }
}

/// `4 of panel (3), 3 3/4 x 5 as they lie`; from the back of the paper where `back`.
#[must_use]
pub fn pieces_told(count: u32, name: &str, ring: u32, size: &str, back: bool) -> String {
    let back = if back { " from the back" } else { "" };
    format!("{}{back}, {size}", counted(count, name, ring))
}

/// A cutting diagram.
#[must_use]
pub fn sheet(paper: &str, size: &str, cuts: &[String], pieces: &[String], leftovers: &[(u32, String)]) -> String {
    let leftovers: Vec<String> = leftovers.iter().map(|(number, size)| format!("{} {size}", roman(*number))).collect();
    let mut text = format!("Cutting diagram of {paper}, {size}.");
    if !cuts.is_empty() {
        text.push_str(&format!(" {}.", capital(&cuts.join("; "))));
    }
    if !pieces.is_empty() {
        text.push_str(&format!(" It gives {}.", list(pieces)));
    }
    if !leftovers.is_empty() {
        text.push_str(&format!(" Left over: {}.", leftovers.join(", ")));
    }
    text
}

fn capital(text: &str) -> String {
    let mut characters = text.chars();
    characters.next().map_or_else(String::new, |first| first.to_uppercase().chain(characters).collect())
}

/// A piece laid onto others.
#[must_use]
pub fn glue_step(piece: &str, onto: &str, measures: &[String]) -> String {
    let measures = if measures.is_empty() { String::new() } else { format!(": {}", measures.join("; ")) };
    format!("{piece} on {onto}{measures}.")
}

/// Something glued is trimmed level.
#[must_use]
pub fn trim_step(piece: &str, onto: &str, face_down: bool) -> String {
    let lying = if face_down { ", all of it face down" } else { "" };
    format!("{piece} trimmed level with {onto}{lying}.")
}

/// A piece made from its trimmed rectangle.
#[must_use]
pub fn finish_step(piece: &str, blank: &str, told: &[String]) -> String {
    format!("{piece} from a rectangle of {blank}: {}.", told.join("; "))
}

/// A place on a rectangle.
#[must_use]
pub fn from_left_and_top(left: &str, top: &str) -> String {
    format!("{left} from the left and {top} from the top")
}

/// Under a piece whose corners are punched round.
#[must_use]
pub fn radius(number: &str) -> String {
    format!("radius {number}")
}

/// A straight finishing cut.
#[must_use]
pub fn cut_told(from: &str, to: &str) -> String {
    format!("a cut from {from} to {to}")
}

/// A corner that is rounded.
#[must_use]
pub const fn follow_told() -> &'static str {
    "cut along the outline"
}

/// A corner rounded by a punch.
#[must_use]
pub fn round_told(corner: &str, radius: &str) -> String {
    format!("the {corner} corner rounded by {radius}")
}

/// An outline cut all at once.
#[must_use]
pub fn stamped_out_told(die: bool, margin: &str) -> String {
    format!("cut out with a {}, {margin} of paper round it", if die { "die" } else { "punch" })
}

/// A window with its size and place.
#[must_use]
pub fn window_told(size: &str, left: &str, bottom: &str) -> String {
    format!("a window, {size}, {left} from the left and {bottom} from the bottom")
}

/// In a unit that lies face down.
#[must_use]
pub const fn face_down() -> &'static str {
    "face down"
}

/// At a score: how it is folded, as the outside lies up.
#[must_use]
pub const fn fold_kind(mountain: bool) -> &'static str {
    if mountain { "mountain" } else { "valley" }
}

/// `mountain fold 2 1/8 from the left edge`.
#[must_use]
pub fn score_told(kind: &str, number: &str, edge: &str) -> String {
    format!("{kind} fold {number} from the {edge} edge")
}

/// A base with several scores.
#[must_use]
pub fn scores_step(base: &str, size: &str, scores: &[String]) -> String {
    format!("{base}, {size}, flat with its outside up: {}.", scores.join("; "))
}

/// The opened inside, as something is glued in it.
#[must_use]
pub const fn the_inside() -> &'static str {
    "the inside of the card"
}

/// The back, as something is glued on it.
#[must_use]
pub const fn the_back() -> &'static str {
    "the back of the card"
}

/// The envelope's front, as something is glued on it.
#[must_use]
pub const fn the_envelope() -> &'static str {
    "the front of the envelope"
}

/// The envelope's flap, as something is glued on it.
#[must_use]
pub const fn the_flap() -> &'static str {
    "the flap of the envelope"
}

/// `rail 1/4 past the right edge`.
#[must_use]
pub fn past_edge(number: &str, name: &str, edge: &str) -> String {
    format!("{name} {number} past the {edge} edge")
}

/// The finished front, in outlines.
#[must_use]
pub fn blank_front(card: &str) -> String {
    format!("The finished front, {card}, in outlines.")
}

/// A piece is stamped.
#[must_use]
pub fn stamp_step(piece: &str) -> String {
    format!("{piece} with the place to stamp dashed.")
}

/// A base with its score.
#[must_use]
pub fn score_step(base: &str, size: &str, measure: &str, edge: &str) -> String {
    format!("{base}, {size}, with the score {measure} from the {edge} edge.")
}

/// The card itself, as something is glued on it.
#[must_use]
pub const fn card_front() -> &'static str {
    "the card front"
}

/// A swatch.
#[must_use]
pub fn swatch(paper: &str) -> String {
    format!("The sign of {paper}.")
}

/// An outline of the card to colour.
#[must_use]
pub fn blank_card(card: &str) -> String {
    format!("Outlines of the card, {card}, to colour.")
}

/// An outline of a sheet to paste a scrap on.
#[must_use]
pub fn blank_sheet(paper: &str, size: &str) -> String {
    format!("Outline of a sheet for {paper}, {size}.")
}

/// The bar of centimetres.
#[must_use]
pub const fn centimetres() -> &'static str {
    "5 cm"
}

/// The bar of inches.
#[must_use]
pub const fn inches() -> &'static str {
    "2 in"
}

/// Both print bars.
#[must_use]
pub const fn print_bars() -> &'static str {
    "Two bars to check the print with a ruler: 5 cm and 2 in long."
}

/// Bits of ruler: each number with its neighbours among the even marks.
#[must_use]
pub fn rulers(each: &[(String, String, String)]) -> String {
    let each: Vec<String> =
        each.iter().map(|(number, below, above)| format!("{number} is the mark between {below} and {above}")).collect();
    format!("A bit of ruler at true size: {}.", each.join("; "))
}

/// Under a cutting diagram, before what the pieces are that have no room for a label.
#[must_use]
pub const fn all_others(kinds: usize) -> &'static str {
    if kinds == 1 { "all others:" } else { "all others, by size:" }
}

/// Under the small picture of a part that comes loose: `12 × 1 3/4`, `2 of 7 1/2 × 5`.
#[must_use]
pub fn loose_part(count: usize, size: &str) -> String {
    if count == 1 { size.to_owned() } else { format!("{count} of {size}") }
}

/// A part that comes loose and is cut further.
#[must_use]
pub fn loose_told(part: &str, cuts: &str, edge: &str, measure: &str) -> String {
    let (word, of) = if cuts.contains([',', '–']) { ("cuts", "each ") } else { ("cut", "") };
    format!("A loose part, {part}: {word} {cuts}, {of}{measure} from the {edge} edge.")
}

/// A legend's line of cut.
#[must_use]
pub const fn cut() -> &'static str {
    "cut"
}

/// A legend's line of score and fold.
#[must_use]
pub const fn score_and_fold() -> &'static str {
    "score and fold"
}

/// A legend's line of a score that folds toward the one who looks at it.
#[must_use]
pub const fn score_and_fold_mountain() -> &'static str {
    "score and fold: mountain"
}

/// A legend's line of a score that folds away.
#[must_use]
pub const fn score_and_fold_valley() -> &'static str {
    "score and fold: valley"
}

/// The legend of lines.
#[must_use]
pub const fn legend(both_ways: bool) -> &'static str {
    if both_ways {
        "A continuous line is a cut. A line of dashes and dots is a score and mountain fold, a line of dashes a score and valley fold."
    } else {
        "A continuous line is a cut. A line of dashes and dots is a score and fold."
    }
}
