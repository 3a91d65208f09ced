//! Words inside figures, and what a figure says to a reader who cannot see it.

use super::counts::{Between, joined_words, listed_words};
use super::places::{self, corner_key};
use super::{Line, Words};
use crate::geometry::{Corner, Edge};

fixed_words! {
    /// At the folded edge.
    fold = "figure-fold";
    /// At the line to score.
    score = "figure-score";
    /// At a line where something glued is trimmed.
    trim = "figure-trim";
    /// At the arrow beside one-way paper.
    up = "figure-up";
    /// In a piece that shows the back of the paper.
    back = "figure-back";
    /// In a unit that lies face down.
    face_down = "figure-face-down";
    /// The bar of centimetres.
    centimetres = "figure-centimetres";
    /// The bar of inches.
    inches = "figure-inches";
    /// A legend's line of cut.
    cut = "figure-cut";
    /// A legend's line of score and fold.
    score_and_fold = "figure-score-and-fold";
    /// A legend's line of a score that folds toward the one who looks at it.
    score_and_fold_mountain = "figure-score-mountain";
    /// A legend's line of a score that folds away.
    score_and_fold_valley = "figure-score-valley";
    /// A piece's form, after its size.
    right_triangle = "form-right-triangle";
    /// A piece's form, after its size.
    diamond = "form-diamond";
    /// A piece's form, after its size.
    circle = "form-circle";
    /// A piece's form, after its size.
    oval = "form-oval";
    /// A piece's form, after its size.
    drawn = "form-drawn";
    /// A turn's pivot that is no corner and no middle.
    a_point = "told-point";
    /// An outline that is followed by hand.
    follow_told = "told-follow";
    /// The card itself, as something is glued on it.
    card_front = "told-the-card";
    /// The opened inside, as something is glued in it.
    the_inside = "told-the-inside";
    /// The back, as something is glued on it.
    the_back = "told-the-back";
    /// The envelope's front, as something is glued on it.
    the_envelope = "told-the-envelope";
    /// The envelope's flap, as something is glued on it.
    the_flap = "told-the-flap";
    /// Both print bars.
    print_bars = "told-print-bars";
}

/// `1:2` or `1:2.5`, from the larger number in tenths.
#[must_use]
pub fn bare_scale(say: &Words, tenths: u32) -> String {
    let (whole, part) = (tenths / 10, tenths % 10);
    if part == 0 { format!("1:{whole}") } else { format!("1:{}", say.measured(&format!("{whole}.{part}"))) }
}

/// `Scale 1:2`.
#[must_use]
pub fn scale(say: &Words, tenths: u32) -> String {
    say.tell("figure-scale").name("scale", &bare_scale(say, tenths)).string()
}

/// Under a lens: `border 1/8`, `borders 1/8`, `borders 1/8, 1/4`.
#[must_use]
pub fn borders(say: &Words, numbers: &[String]) -> String {
    say.tell("figure-borders").count("count", numbers.len()).size("numbers", &border_list(say, numbers)).string()
}

/// Borders all round, outermost first.
#[must_use]
pub fn borders_told(say: &Words, numbers: &[String]) -> String {
    say.tell("told-borders").count("count", numbers.len()).size("numbers", &border_list(say, numbers)).string()
}

fn border_list(say: &Words, numbers: &[String]) -> String {
    let mut each = numbers.to_vec();
    each.dedup();
    joined_words(say, &each, Between::Comma)
}

/// Under a cutting diagram: what the crossed strip is.
#[must_use]
pub fn edge_strip(say: &Words, number: &str) -> String {
    say.tell("figure-edge-strip").size("number", number).string()
}

/// A size as figures show it: `3 3/4 × 5`, from `3 3/4 x 5`.
#[must_use]
pub fn size(say: &Words, numbers: &str) -> String {
    say.measured(numbers).replace(" x ", " × ")
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
    /// Its paper; nothing for what is bought ready made.
    pub paper: String,
}

/// `panel (3)`, `3 of lantern (4)`: a piece with how many, and its ring number.
#[must_use]
pub fn counted(say: &Words, count: u32, name: &str, ring: u32) -> String {
    say.tell("told-piece").count("count", count).name("name", name).count("ring", ring).string()
}

/// A face: what it is with its size, the key of the edge where it folds, its layers from the lowest.
#[must_use]
pub fn face(
    say: &Words,
    what: &str,
    fold: Option<&'static str>,
    version: &str,
    layers: &[Told],
    measures: &[String],
) -> String {
    let line = say
        .tell("told-face")
        .name("what", what)
        .kind("fold", fold.unwrap_or("none"))
        .whether("versions", !version.is_empty())
        .name("version", version)
        .line();
    let layers: Vec<String> = layers
        .iter()
        .map(|told| {
            let id = if told.paper.is_empty() { "told-layer" } else { "told-layer-from" };
            let tell = say.tell(id).count("count", told.count).name("name", &told.name).count("ring", told.ring);
            tell.size("size", &told.size).name("paper", &told.paper).string()
        })
        .collect();
    let line = line.sentence(list_told(say, "told-layers", "layers", &layers));
    line.sentence(list_told(say, "told-measures", "measures", measures)).to_text()
}

/// A sentence with a list in it; nothing where there is nothing to list.
fn list_told(say: &Words, id: &str, key: &str, parts: &[String]) -> Line {
    if parts.is_empty() {
        return Line::new();
    }
    say.tell(id).name(key, &joined_words(say, parts, Between::Semicolon)).line()
}

/// `rail 3/4 from the top edge`, `beds 5 from long bed`.
#[must_use]
pub fn from_there(say: &Words, number: &str, name: &str, there: &str) -> String {
    say.tell("told-from-there").name("name", name).size("number", number).name("there", there).string()
}

/// `12.5°`, from hundredths of a degree.
#[must_use]
pub fn degrees(say: &Words, hundredths: u32) -> String {
    let (whole, rest) = (hundredths / 100, hundredths % 100);
    let text = format!("{whole}.{rest:02}");
    format!("{}°", say.measured(text.trim_end_matches('0').trim_end_matches('.')))
}

/// `strip turned 12.5° to the left about its middle`.
#[must_use]
pub fn turned(say: &Words, degrees: &str, left: bool, name: &str, about: &str) -> String {
    let tell = say.tell("told-turned").name("name", name).name("degrees", degrees);
    tell.kind("side", if left { "left" } else { "right" }).name("about", about).string()
}

/// `leaf fanned out by 12° about the middle of its bottom edge`.
#[must_use]
pub fn fanned(say: &Words, degrees: &str, name: &str, about: &str) -> String {
    say.tell("told-fanned").name("name", name).name("degrees", degrees).name("about", about).string()
}

/// `1/4 right`: how far, and the key of the way: `left`, `right`, `up`, `down`.
#[must_use]
pub fn moved(say: &Words, by: &str, way: &'static str) -> String {
    say.tell("told-move").size("by", by).kind("way", way).string()
}

/// `flag each 1/4 right and 1/8 up from the one before`.
#[must_use]
pub fn stepped(say: &Words, name: &str, each: &[String]) -> String {
    say.tell("told-stepped").name("name", name).name("moves", &listed_words(say, each)).string()
}

/// `word moved 1/16 left and 1/16 up`.
#[must_use]
pub fn shifted(say: &Words, name: &str, each: &[String]) -> String {
    say.tell("told-shifted").name("name", name).name("moves", &listed_words(say, each)).string()
}

/// `leaf laid again, mirrored left to right`.
#[must_use]
pub fn mirrored(say: &Words, name: &str, left_to_right: bool) -> String {
    let way = if left_to_right { "left-to-right" } else { "top-to-bottom" };
    say.tell("told-mirrored").name("name", name).kind("way", way).string()
}

/// A piece's form, after its size.
#[must_use]
pub fn many_corners(say: &Words, corners: usize) -> String {
    say.tell("form-corners").count("count", corners).string()
}

/// A piece's form, after its size.
#[must_use]
pub fn rounded(say: &Words, corners: usize) -> String {
    say.tell("form-rounded").count("count", corners).string()
}

/// An end of a strip, after its size.
#[must_use]
pub fn ended(say: &Words, fishtail: bool, edge: Edge) -> String {
    let end = if fishtail { "fishtail" } else { "point" };
    say.tell("form-ended").kind("end", end).kind("edge", edge.word()).string()
}

/// Its windows, after its size; nothing where it has none.
#[must_use]
pub fn windows(say: &Words, count: usize) -> String {
    say.tell("form-windows").count("count", count).string()
}

/// A turn's pivot.
#[must_use]
pub fn its_middle(say: &Words) -> String {
    places::its_middle(say)
}

/// A turn's pivot: `its top left corner`.
#[must_use]
pub fn its_corner(say: &Words, corner: Corner) -> String {
    places::its_corner(say, corner)
}

/// A turn's pivot: `the middle of its top edge`.
#[must_use]
pub fn middle_of_edge(say: &Words, edge: Edge) -> String {
    places::middle_of_its(say, edge)
}

/// What a view of the card or envelope shows, with its size.
#[must_use]
pub fn inside(say: &Words, size: &str) -> String {
    say.tell("view-inside").size("size", size).string()
}

/// The back of the folded card.
#[must_use]
pub fn back_of_card(say: &Words, size: &str) -> String {
    say.tell("view-back").size("size", size).string()
}

/// The side of the envelope that is written on.
#[must_use]
pub fn envelope_front(say: &Words, size: &str) -> String {
    say.tell("view-envelope-front").size("size", size).string()
}

/// The back of the envelope.
#[must_use]
pub fn envelope_flap(say: &Words, size: &str) -> String {
    say.tell("view-envelope-flap").size("size", size).string()
}

/// The finished front of a card with a size.
#[must_use]
pub fn front_of_card(say: &Words, size: &str) -> String {
    say.tell("view-front").size("size", size).string()
}

/// `the top edge`.
#[must_use]
pub fn the_edge(say: &Words, edge: Edge) -> String {
    places::edge(say, edge)
}

/// `gap 1/4 at lantern`.
#[must_use]
pub fn gap(say: &Words, number: &str, name: &str) -> String {
    say.tell("told-gap").size("number", number).name("name", name).string()
}

/// One flag's cuts as an alternative text tells them.
#[must_use]
pub fn cuts_told(say: &Words, first: u32, count: u32, edge: Edge, measure: &str) -> String {
    say.tell("told-cuts")
        .count("count", count)
        .count("first", first)
        .count("last", first.saturating_add(count).saturating_sub(1))
        .size("measure", measure)
        .kind("edge", edge.word())
        .string()
}

/// `4 of panel (3), 3 3/4 x 5 as they lie`; from the back of the paper where `back`.
#[must_use]
pub fn pieces_told(say: &Words, count: u32, name: &str, ring: u32, size: &str, back: bool) -> String {
    let tell = say.tell("told-pieces").whether("back", back).count("count", count);
    tell.name("name", name).count("ring", ring).size("size", size).string()
}

/// A cutting diagram.
#[must_use]
pub fn sheet(
    say: &Words,
    paper: &str,
    size: &str,
    cuts: &[String],
    pieces: &[String],
    leftovers: &[(u32, String)],
) -> String {
    let line = say.tell("told-sheet").name("paper", paper).size("size", size).line();
    let line = line.sentence(list_told(say, "told-sheet-cuts", "cuts", cuts));
    let line = if pieces.is_empty() {
        line
    } else {
        line.sentence(say.tell("told-sheet-pieces").name("pieces", &listed_words(say, pieces)).line())
    };
    if leftovers.is_empty() {
        return line.to_text();
    }
    let leftovers: Vec<String> = leftovers
        .iter()
        .map(|(number, size)| say.tell("leftover").leftover("leftover", *number).size("size", size).string())
        .collect();
    let leftovers = joined_words(say, &leftovers, Between::Comma);
    line.sentence(say.tell("told-sheet-left").name("leftovers", &leftovers).line()).to_text()
}

/// A piece laid onto others.
#[must_use]
pub fn glue_step(say: &Words, piece: &str, onto: &str, measures: &[String]) -> String {
    if measures.is_empty() {
        return say.tell("told-glue-step").name("piece", piece).name("onto", onto).string();
    }
    let measures = joined_words(say, measures, Between::Semicolon);
    say.tell("told-glue-step-measures").name("piece", piece).name("onto", onto).name("measures", &measures).string()
}

/// A placing frame in use.
#[must_use]
pub fn placing_frame(say: &Words, layer: &str, ground: &str, size: &str, openings: usize) -> String {
    let tell = say.tell("told-placing-frame").name("layer", layer).name("ground", ground);
    tell.size("size", size).count("count", openings).string()
}

/// Something glued is trimmed level.
#[must_use]
pub fn trim_step(say: &Words, piece: &str, onto: &str, face_down: bool) -> String {
    say.tell("told-trim-step").whether("face-down", face_down).name("piece", piece).name("onto", onto).string()
}

/// A piece made from its trimmed rectangle.
#[must_use]
pub fn finish_step(say: &Words, piece: &str, blank: &str, told: &[String]) -> String {
    let told = joined_words(say, told, Between::Semicolon);
    say.tell("told-finish-step").name("piece", piece).size("blank", blank).name("finish", &told).string()
}

/// A place on a rectangle.
#[must_use]
pub fn from_left_and_top(say: &Words, left: &str, top: &str) -> String {
    say.tell("told-place").size("left", left).size("top", top).string()
}

/// Under a piece whose corners are punched round.
#[must_use]
pub fn radius(say: &Words, number: &str) -> String {
    say.tell("figure-radius").size("number", number).string()
}

/// A straight finishing cut.
#[must_use]
pub fn cut_told(say: &Words, from: &str, to: &str) -> String {
    say.tell("told-cut").name("from", from).name("to", to).string()
}

/// A corner rounded by a punch.
#[must_use]
pub fn round_told(say: &Words, corner: Corner, radius: &str) -> String {
    say.tell("told-round").kind("corner", corner_key(corner)).size("radius", radius).string()
}

/// An outline cut all at once.
#[must_use]
pub fn stamped_out_told(say: &Words, die: bool, margin: &str) -> String {
    say.tell("told-stamp-out").kind("tool", if die { "die" } else { "punch" }).size("margin", margin).string()
}

/// A window with its size and place.
#[must_use]
pub fn window_told(say: &Words, size: &str, left: &str, bottom: &str) -> String {
    say.tell("told-window").size("size", size).size("left", left).size("bottom", bottom).string()
}

const fn fold_key(mountain: bool) -> &'static str {
    if mountain { "mountain" } else { "valley" }
}

/// At a score: how it is folded, as the outside lies up.
#[must_use]
pub fn fold_kind(say: &Words, mountain: bool) -> String {
    say.tell("figure-fold-kind").kind("fold", fold_key(mountain)).string()
}

/// `mountain fold 2 1/8 from the left edge`.
#[must_use]
pub fn score_told(say: &Words, mountain: bool, number: &str, edge: Edge) -> String {
    say.tell("told-score").kind("fold", fold_key(mountain)).size("number", number).kind("edge", edge.word()).string()
}

/// Under a cutting diagram, before what the pieces are that have no room for a label.
#[must_use]
pub fn all_others(say: &Words, kinds: usize) -> String {
    say.tell("all-others").count("count", kinds).string()
}

/// Under the small picture of a part that comes loose: `12 × 1 3/4`, `2 of 7 1/2 × 5`.
#[must_use]
pub fn loose_part(say: &Words, count: usize, size: &str) -> String {
    say.tell("loose-part").count("count", count).size("size", size).string()
}

/// A part that comes loose and is cut further.
#[must_use]
pub fn loose_told(say: &Words, part: &str, cuts: &str, edge: Edge, measure: &str) -> String {
    say.tell("told-loose")
        .whether("several", cuts.contains([',', '–']))
        .name("part", part)
        .name("cuts", cuts)
        .size("measure", measure)
        .kind("edge", edge.word())
        .string()
}

/// A base with several scores.
#[must_use]
pub fn scores_step(say: &Words, base: &str, size: &str, scores: &[String]) -> String {
    let scores = joined_words(say, scores, Between::Semicolon);
    say.tell("told-scores-step").name("piece", base).size("size", size).name("scores", &scores).string()
}

/// `rail 1/4 past the right edge`.
#[must_use]
pub fn past_edge(say: &Words, number: &str, name: &str, edge: Edge) -> String {
    say.tell("told-past-edge").name("name", name).size("number", number).kind("edge", edge.word()).string()
}

/// The finished front, in outlines.
#[must_use]
pub fn blank_front(say: &Words, card: &str) -> String {
    say.tell("told-blank-front").size("size", card).string()
}

/// A piece is stamped.
#[must_use]
pub fn stamp_step(say: &Words, piece: &str) -> String {
    say.tell("told-stamp-step").name("piece", piece).string()
}

/// A base with its score.
#[must_use]
pub fn score_step(say: &Words, base: &str, size: &str, measure: &str, edge: Edge) -> String {
    let tell = say.tell("told-score-step").name("piece", base).size("size", size);
    tell.size("measure", measure).kind("edge", edge.word()).string()
}

/// A swatch.
#[must_use]
pub fn swatch(say: &Words, paper: &str) -> String {
    say.tell("told-swatch").name("paper", paper).string()
}

/// An outline of the card to colour.
#[must_use]
pub fn blank_card(say: &Words, card: &str) -> String {
    say.tell("told-blank-card").size("size", card).string()
}

/// An outline of a sheet to paste a scrap on.
#[must_use]
pub fn blank_sheet(say: &Words, paper: &str, size: &str) -> String {
    say.tell("told-blank-sheet").name("paper", paper).size("size", size).string()
}

/// The legend of lines.
#[must_use]
pub fn legend(say: &Words, both_ways: bool) -> String {
    say.tell("told-legend").kind("folds", if both_ways { "both" } else { "one" }).string()
}

/// Bits of ruler: each number with its neighbours among the even marks.
#[must_use]
pub fn rulers(say: &Words, each: &[(String, String, String)]) -> String {
    let each: Vec<String> = each
        .iter()
        .map(|(number, below, above)| {
            say.tell("told-mark").size("number", number).size("below", below).size("above", above).string()
        })
        .collect();
    say.tell("told-rulers").name("marks", &joined_words(say, &each, Between::Semicolon)).string()
}
