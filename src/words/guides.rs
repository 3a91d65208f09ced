//! What is said on the pages of true-size guides.

use super::counts::{self, listed_words};
use super::{Line, Words};
use crate::geometry::Edge;

fixed_words! {
    /// How a placing frame lies.
    frames = "guides-frames";
    /// How half a frame lies.
    halves = "guides-halves";
    /// How parts are joined.
    parts = "guides-parts";
    /// How a template is used.
    templates = "guides-templates";
    /// How what is mirrored lies.
    mirrored_ones = "guides-mirrored";
    /// How score positions are used.
    score_strips = "guides-scores";
    /// What a greeting area is.
    greetings = "guides-greetings";
    /// On a frame, at its upper edge.
    top = "guide-top";
    /// On a template, on the side that is seen.
    print_up = "guide-print-up";
}

/// `Lantern Row: true-size guides`.
#[must_use]
pub fn heading(say: &Words, title: &str) -> String {
    say.tell("guides-heading").name("title", title).string()
}

/// `Placing frame: upper beds and long bed on cover`; half of one where the frame has two arms.
#[must_use]
pub fn frame(say: &Words, half: bool, layers: &[String], ground: &str) -> String {
    let id = if half { "guide-half" } else { "guide-frame" };
    say.tell(id).name("layers", &listed_words(say, layers)).name("ground", ground).string()
}

/// `Template: bow`.
#[must_use]
pub fn template(say: &Words, piece: &str) -> String {
    say.tell("guide-template").name("piece", piece).string()
}

/// `Score positions: base`.
#[must_use]
pub fn scores(say: &Words, piece: &str) -> String {
    say.tell("guide-scores").name("piece", piece).string()
}

/// `Greeting area: label`.
#[must_use]
pub fn greeting(say: &Words, piece: &str) -> String {
    say.tell("guide-greeting").name("piece", piece).string()
}

/// `Template: frame, mirrored`.
#[must_use]
pub fn mirrored(say: &Words, title: &str) -> String {
    say.tell("guide-mirrored").name("title", title).string()
}

/// `Placing frame: panel on mat, part 1 of 2`.
#[must_use]
pub fn part(say: &Words, title: &str, part: usize, parts: usize) -> String {
    say.tell("guide-part").name("title", title).count("part", part).count("parts", parts).string()
}

/// `left edge`, at the end of a strip.
#[must_use]
pub fn edge_at(say: &Words, edge: Edge) -> String {
    say.tell("guide-edge-at").kind("edge", edge.word()).string()
}

/// `4 x 5 1/4 in`, under a title.
#[must_use]
pub fn size(say: &Words, size: &str) -> String {
    say.tell("guide-size").size("size", size).string()
}

/// `for the top left corner`, under the title of half a frame.
#[must_use]
pub fn corner(say: &Words, corner: &str) -> String {
    say.tell("guide-corner").name("corner", corner).string()
}

/// `with 0.3 mm for the thickness of the paper`.
#[must_use]
pub fn allowance(say: &Words, by: &str) -> String {
    say.tell("guide-allowance").size("by", by).string()
}

/// An opening for those who cannot see it.
#[must_use]
pub fn opening(say: &Words, size: &str, left: &str, bottom: &str) -> String {
    say.tell("guide-alt-opening").size("size", size).size("left", left).size("bottom", bottom).string()
}

/// A frame for those who cannot see it.
#[must_use]
pub fn frame_alt(say: &Words, title: &str, size: &str, openings: &[String]) -> String {
    let count = openings.len();
    let lines: Vec<Line> = openings.iter().map(Line::plain).collect();
    let openings = counts::joined(say, lines, counts::Between::Semicolon).to_text();
    say.tell("guide-alt-frame")
        .name("title", title)
        .size("size", size)
        .count("count", count)
        .name("openings", &openings)
        .string()
}

/// A template or another simple guide for those who cannot see it.
#[must_use]
pub fn alt(say: &Words, title: &str, size: &str) -> String {
    say.tell("guide-alt").name("title", title).size("size", size).string()
}

/// Score positions for those who cannot see them.
#[must_use]
pub fn scores_alt(say: &Words, title: &str, size: &str, measures: &[String], edge: Edge) -> String {
    let measures: Vec<String> = measures.iter().map(|measure| say.measured(measure)).collect();
    let tell = say.tell("guide-alt-scores").name("title", title).size("size", size);
    tell.name("measures", &listed_words(say, &measures)).kind("edge", edge.word()).string()
}

/// A greeting area for those who cannot see it.
#[must_use]
pub fn greeting_alt(say: &Words, title: &str, size: &str, area: &str) -> String {
    say.tell("guide-alt-greeting").name("title", title).size("size", size).size("area", area).string()
}
