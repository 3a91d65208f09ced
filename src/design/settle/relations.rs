//! Sizes by relation: to the card, to another piece, side by side.
//!
//! Takes what stands at `size:`, gives it with every name found and every length chosen; pieces are
//! numbered as written. [`follow`] works out what it comes to.

mod follow;
mod nothing;
mod side;

use super::desk::{Desk, Field};
use super::names::{Names, tidy};
use super::papers::edge_named;
use super::text::Text;
use crate::design::model::{Extent, Measure, Of, PieceId, Relation, Stated};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::{Length, Size};
use crate::source::Span;

/// The edges that a size may lose something at.
const EDGES: [&str; 4] = ["left", "right", "top", "bottom"];

/// A size as written, before relations are followed.
pub(super) enum Wanted {
    Outright(Size),
    /// Pieces are numbered as written.
    Related(Stated),
}

/// What a size may lean on.
#[derive(Clone, Copy)]
pub(super) struct Around<'n> {
    pub(super) pieces: &'n Names,
    /// Whether there is a card.
    pub(super) has_card: bool,
    /// Whether the piece has the outline of a drawing, which gives its height.
    pub(super) outlined: Outlined,
}

/// Whether a piece has the outline of a drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Outlined {
    /// It has none.
    No,
    /// One that could not be read.
    Unknown,
    /// One that is so high, in steps of the drawing.
    By(i64),
}

impl Around<'_> {
    fn knows(&self, text: Text<'_>) -> bool {
        let name = tidy(text.value);
        name == "card" || self.pieces.position(&name).is_some()
    }

    /// Whether a text ends in the name of a piece.
    fn ends(&self, text: Text<'_>) -> bool {
        let whole = format!(" {}", tidy(text.value));
        self.pieces
            .list
            .iter()
            .any(|name| whole.strip_suffix(name.value.as_str()).is_some_and(|rest| rest.ends_with(' ')))
    }
}

impl<'a> Desk<'a> {
    /// A size outright, by relation, or side by side, with its place.
    pub(super) fn wanted(&mut self, field: Field<'a>, piece: &str, around: Around<'_>) -> Option<(Wanted, Span)> {
        if let Node::Map(map) = field.node {
            let span = self.first_line(map.span);
            return Some((Wanted::Related(self.size_by_side(field, piece, around)?), span));
        }
        let text = self.text(field)?;
        if around.outlined != Outlined::No {
            self.height_is_drawn(text.span);
            return None;
        }
        Some((self.wanted_in(text, around)?, text.span))
    }

    /// Notes a height that the drawing gives already.
    pub(super) fn height_is_drawn(&mut self, span: Span) {
        self.note(
            Finding::error("bad-size", span, "the height of an outline comes from its drawing", "a height of its own")
                .help("say the 1 width alone, such as `size: {width: 2 in}`")
                .plainly("A drawing has a shape of its own: only its width can be chosen."),
        );
    }

    fn size_by_side(&mut self, field: Field<'a>, piece: &str, around: Around<'_>) -> Option<Stated> {
        let what = format!("the size of `{piece}`");
        let fields = self.fields(field.node, what, field.key, &["width", "height"])?;
        let width = self.required(&fields, "width", "as wide as card");
        let width = width.and_then(|field| self.side_in(field, around));
        let height = match (around.outlined, fields.get("height")) {
            (Outlined::No, _) => self.required(&fields, "height", "1 in").and_then(|field| self.side_in(field, around)),
            (_, Some(field)) => {
                self.height_is_drawn(field.key);
                None
            }
            (Outlined::Unknown, None) => None,
            (Outlined::By(height), None) => around.pieces.position(piece).map(|own| {
                let measure = Measure::Drawn { of: Of::Piece(PieceId(own)), height, ruler: self.ruler };
                Relation { measure, change: None, span: self.first_line(field.node.span()) }
            }),
        };
        Some(Stated::BySide { width: width?, height: height? })
    }

    fn side_in(&mut self, field: Field<'a>, around: Around<'_>) -> Option<Relation> {
        let text = self.text(field)?;
        self.side_of(text, if field.name == "width" { Extent::Width } else { Extent::Height }, around)
    }

    /// `4 x 5 in`, `A6`, `card less 1/8 in all round`, `mat less left 1/8 in | 3 mm, top 1/4 in | 6 mm`.
    fn wanted_in(&mut self, text: Text<'_>, around: Around<'_>) -> Option<Wanted> {
        self.said_once(text, around)?;
        self.heard.offer("size", ["all round"].into_iter().chain(EDGES));
        let Some((of, rest)) = text.at_known("less", |before| around.knows(before)) else {
            if let Some(name) = text.before_all_round() {
                self.no_relation(text, &format!("{} less 1/8 in all round", tidy(name.value)));
                return None;
            }
            if side::starts(text) || around.knows(text) {
                self.only_one_side(text, around);
                return None;
            }
            return self.size_in(text, Role::Outright).map(Wanted::Outright);
        };
        if side::starts(of) {
            self.only_one_side(text, around);
            return None;
        }
        if let Some(border) = rest.before_all_round() {
            self.heard.take("size", "all round");
            let of = self.leaned_on(of, around);
            let border = self.length_in(border, Role::Border);
            return Some(Wanted::Related(Stated::AllRound { of: of?, border: border? }));
        }
        if self.is_by_edge(rest) {
            let of = self.leaned_on(of, around);
            let edges = self.edges_less(rest);
            return Some(Wanted::Related(Stated::ByEdge { of: of?, edges: edges? }));
        }
        let edge = |item: &Text<'_>| item.last_word().is_some_and(|(_, word)| edge_named(word.value).is_some());
        let form = match rest.items().iter().find(|item| edge(item)).and_then(|item| item.last_word()) {
            Some((length, word)) => format!("{} less {} {}", tidy(of.value), word.value, tidy(length.value)),
            None if rest.value.is_empty() => format!("{} less 1/8 in all round", tidy(of.value)),
            None => format!("{} all round", tidy(text.value)),
        };
        self.no_relation(text, &form);
        None
    }

    /// Notes a pair of whole relations: only the length in it is said twice.
    fn said_once(&mut self, text: Text<'_>, around: Around<'_>) -> Option<()> {
        let halves = text.split('|');
        let again = halves.iter().skip(1).find(|half| {
            side::starts(**half) || half.at_known("less", |_| false).is_some_and(|(of, _)| around.knows(of))
        });
        let Some(again) = again else { return Some(()) };
        self.note(
            Finding::error("bad-size", again.span, "a relation is said twice", "the relation again")
                .help("pair only the 1 length in it, such as `card less 1/8 in | 3 mm all round`")
                .plainly("A size by relation is the same in both systems; only the length in it is said in each."),
        );
        None
    }

    /// What a size leans on.
    fn leaned_on(&mut self, name: Text<'_>, around: Around<'_>) -> Option<Of> {
        if name.value.is_empty() {
            self.note(
                Finding::error("bad-size", name.span, "a relation names nothing", "the name of a piece is missing")
                    .help("name 1 piece, or `card`, such as `as wide as card`")
                    .plainly("The size leans on something that is not named."),
            );
            return None;
        }
        if tidy(name.value) != "card" {
            let piece = self.declared(name, around.pieces, &["card"])?;
            return Some(Of::Piece(PieceId(piece)));
        }
        if !around.has_card {
            self.note(
                Finding::error(
                    "missing-key",
                    name.span,
                    "there is no `card` to be smaller than",
                    "this design has no card",
                )
                .help("add `card:` with its size, or write the size outright, such as `4 x 5 1/4 in`")
                .plainly("The size leans on the card, and no card is described."),
            );
            return None;
        }
        Some(Of::Card)
    }

    /// Whether each item starts with a word, and one of these is an edge or was meant for one.
    fn is_by_edge(&self, text: Text<'_>) -> bool {
        let words: Vec<String> =
            text.items().iter().map(|item| tidy(item.first_word().0.value).to_lowercase()).collect();
        words.iter().all(|word| !word.starts_with(char::is_numeric))
            && words.iter().any(|word| self.nearest(word, &EDGES).is_some())
    }

    /// `left 1/8 in | 3 mm, top 1/4 in | 6 mm`.
    fn edges_less(&mut self, text: Text<'_>) -> Option<Vec<(Edge, Length)>> {
        let mut edges: Vec<(Edge, Length)> = Vec::new();
        let mut whole = true;
        for item in text.items() {
            let (word, length) = item.first_word();
            let Some(edge) = edge_named(word.value) else {
                self.bad_word("less", word, &EDGES);
                whole = false;
                continue;
            };
            if edges.iter().any(|(known, _)| *known == edge) {
                self.note(
                    Finding::error(
                        "placed-twice",
                        word.span,
                        format!("the {} edge is said twice", edge.word()),
                        "again",
                    )
                    .help("keep 1 of the 2")
                    .plainly("What an edge loses is said once."),
                );
                whole = false;
                continue;
            }
            if length.value.is_empty() {
                self.half_written(word, word.value, &format!("{} 1/8 in", edge.word()));
                whole = false;
                continue;
            }
            match self.length_in(length, Role::Border) {
                Some(length) => {
                    self.heard.take("size", edge.word());
                    edges.push((edge, length));
                }
                None => whole = false,
            }
        }
        whole.then_some(edges)
    }

    /// Notes a word that a length should follow.
    fn half_written(&mut self, at: Text<'_>, word: &str, such_as: &str) {
        self.note(
            Finding::error("bad-length", at.span, format!("no length stands behind `{word}`"), "the length is missing")
                .help(format!("say 1 length with its unit, such as `{such_as}`"))
                .plainly(format!("A length is missing behind \"{word}\".")),
        );
    }

    fn no_relation(&mut self, text: Text<'_>, form: &str) {
        self.note(
            Finding::error("bad-size", text.span, format!("`{}` is not a size", text.value), "no border `all round`")
                .help(format!("say it as `{form}`, or outright as `4 x 5 1/4 in`"))
                .plainly("A size by relation says what it is smaller than, by how much, and \"all round\"."),
        );
    }

    /// Notes a relation of one side where a size of two sides belongs.
    fn only_one_side(&mut self, text: Text<'_>, around: Around<'_>) {
        let (label, help) = if around.knows(text) {
            let name = tidy(text.value);
            ("no size, but the name of one", format!("{{width: as wide as {name}, height: as high as {name}}}"))
        } else {
            ("says 1 side and not the other", format!("{{width: {}, height: 1 in}}", quoted(&tidy(text.value))))
        };
        self.note(
            Finding::error("bad-size", text.span, format!("`{}` is not a size", text.value), label)
                .help(format!("say the 2 sides, such as `{help}`"))
                .plainly("A size has a width and a height, and this says only one side."),
        );
    }
}

/// As it may stand between `{` and `}`.
fn quoted(text: &str) -> String {
    if text.contains(',') { format!("\"{text}\"") } else { text.to_owned() }
}
