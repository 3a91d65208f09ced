//! A ring of strips round a middle: one entry that stands for a layer of each strip.

use super::desk::{Desk, Fields};
use super::front::Drafts;
use super::names::{Names, tidy};
use crate::design::model::{Along, Layer, LayerId, Onto, Part};
use crate::design::nodes::Node;
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::Length;
use crate::source::Spanned;

/// The most strips of one ring.
const MOST_STRIPS: usize = 100;

/// A ring as read: its strips' pieces, and where each lies.
pub(super) struct Ring {
    /// Piece, as numbered in the file, and its name where it is written.
    pub(super) strips: Vec<(usize, Spanned<String>)>,
    pub(super) places: Vec<Strip>,
}

/// Where one strip lies.
pub(super) struct Strip {
    /// The middle, then the strips before this one.
    pub(super) before: Vec<LayerId>,
    pub(super) across: Along,
    pub(super) up: Along,
}

/// Whether an item of a list of layers is a ring.
pub(super) fn is_ring(node: &Node) -> bool {
    matches!(node, Node::Map(map) if map.entries.iter().any(|(key, _)| tidy(&key.value) == "ring round"))
}

/// Whether a layer's name is this one, or this one with a number behind it.
pub(super) fn is_numbered(name: &str, stem: &str) -> bool {
    let rest = name.strip_prefix(stem).map(str::trim);
    rest.is_some_and(|rest| rest.bytes().all(|sign| sign.is_ascii_digit()))
}

impl<'a> Desk<'a> {
    /// The strips of a ring; the first of them becomes the next layer.
    pub(super) fn ring(&mut self, fields: &Fields<'a>, drafts: &Drafts<'a>, pieces: &Names) -> Option<Ring> {
        let number = drafts.list.len();
        let middle = fields.get("ring round").and_then(|field| self.earlier(field, drafts, number, false));
        let listed = self.required(fields, "strips", "[first strip, second strip, third strip, fourth strip]");
        let items = listed.and_then(|field| Some((field, self.items(field)?)));
        let edges = [("left", Edge::Left), ("top", Edge::Top), ("right", Edge::Right), ("bottom", Edge::Bottom)];
        let starting = self.required(fields, "starting", "left").and_then(|field| self.word(field, &edges));
        let ways = [("clockwise", true), ("anticlockwise", false)];
        let going = self.required(fields, "going", "clockwise").and_then(|field| self.word(field, &ways));
        let (field, items) = items?;
        if !(2..=MOST_STRIPS).contains(&items.len()) {
            self.note(
                Finding::error(
                    "bad-count",
                    field.key,
                    "a ring of strips needs from 2 to 100 of them",
                    format!("{} here", items.len()),
                )
                .help("name at least 2 strips, in the order that they are laid")
                .plainly("A ring goes round a middle with several strips."),
            );
            return None;
        }
        let strips: Vec<Option<(usize, Spanned<String>)>> = items
            .into_iter()
            .map(|item| {
                let text = self.text(item)?;
                let piece = self.declared(text, pieces, &[])?;
                Some((piece, Spanned::new(pieces.list[piece].value.clone(), text.span)))
            })
            .collect();
        let strips: Vec<(usize, Spanned<String>)> = strips.into_iter().collect::<Option<_>>()?;
        let (middle, starting, going) = (middle?, starting?.value, going?.value);
        let nothing = Length::zero(self.units);
        let places = (0..strips.len()).map(|strip| place(strip, number, middle, starting, going, nothing)).collect();
        Some(Ring { strips, places })
    }

    /// What the middle of a ring lies on.
    pub(super) fn ground_of_ring(&mut self, strip: &Strip, before: &[Option<Layer>]) -> Option<Onto> {
        let middle = strip.before.first()?;
        before.get(middle.0)?.as_ref().map(|middle| middle.onto)
    }
}

/// Where a strip lies: outside everything before it at its own edge, and level with the outer side of the
/// strip before it; the first begins level with the middle, at the end away from the next strip.
fn place(strip: usize, first: usize, middle: LayerId, starting: Edge, clockwise: bool, nothing: Length) -> Strip {
    let edge = |strip: usize| {
        let round = Edge::ALL;
        let start = round.iter().position(|edge| *edge == starting).unwrap_or(0);
        let steps = if clockwise { strip } else { 3 * strip };
        round[(start + steps) % 4]
    };
    let layer = |strip: usize| LayerId(first + strip);
    // The strip four before this one lies outermost at the same edge; in the first round the middle does.
    let inner = if strip >= 4 { layer(strip - 4) } else { middle };
    let own = edge(strip);
    let outside = match own {
        Edge::Left | Edge::Bottom => Along::Before(inner, nothing),
        Edge::Right | Edge::Top => Along::After(inner, nothing),
    };
    let part = |edge: Edge| if matches!(edge, Edge::Left | Edge::Bottom) { Part::Low } else { Part::High };
    let level = if strip == 0 {
        Along::With(middle, part(edge(1).opposite()))
    } else {
        Along::With(layer(strip - 1), part(edge(strip - 1)))
    };
    let (across, up) = if own.is_side() { (outside, level) } else { (level, outside) };
    let before = std::iter::once(middle).chain((0..strip).map(layer)).collect();
    Strip { before, across, up }
}
