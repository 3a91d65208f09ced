//! How a layer is placed: each direction once, copies in a row, column or grid, and what shows.

use super::desk::{Desk, Field};
use super::front::{Draft, Drafts};
use super::papers::edge_named;
use super::text::Text;
use crate::design::model::{Along, Bound, Part, Shows};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::Length;
use crate::source::Span;

/// One direction: its words and the keys that place it.
struct Direction {
    words: &'static str,
    centre: &'static str,
    /// Distances from the low and the high edge.
    edges: [&'static str; 2],
    /// Neighbours: after (right of, above) and before (left of, below).
    neighbours: [&'static str; 2],
    /// Level with a layer: low edges, middles, high edges.
    level: [&'static str; 3],
    /// Midway between two bounds.
    midway: &'static str,
}

impl Direction {
    /// The keys that place a layer, `centre` excepted.
    fn keys(&self) -> impl Iterator<Item = &'static str> + use<> {
        let one = [self.edges[0], self.edges[1], self.neighbours[0], self.neighbours[1]];
        one.into_iter().chain(self.level).chain([self.midway])
    }
}

const ACROSS: Direction = Direction {
    words: "from left to right",
    centre: "across",
    edges: ["left", "right"],
    neighbours: ["right of", "left of"],
    level: ["left with", "centred across", "right with"],
    midway: "midway across",
};
const UP: Direction = Direction {
    words: "from bottom to top",
    centre: "up and down",
    edges: ["bottom", "top"],
    neighbours: ["above", "below"],
    level: ["bottom with", "centred up", "top with"],
    midway: "midway up",
};
/// The keys that place a layer from left to right, and from bottom to top.
pub(super) const ACROSS_KEYS: [&str; 9] =
    ["left", "right", "right of", "left of", "left with", "centred across", "right with", "midway across", "centre"];
pub(super) const UP_KEYS: [&str; 9] =
    ["bottom", "top", "above", "below", "bottom with", "centred up", "top with", "midway up", "centre"];
const CENTRES: [(&str, [bool; 2]); 3] =
    [("across", [true, false]), ("up and down", [false, true]), ("both ways", [true, true])];

impl<'a> Desk<'a> {
    /// Where a layer lies from left to right.
    pub(super) fn across(&mut self, drafts: &Drafts<'a>, number: usize, even: bool) -> Option<Along> {
        // A misspelt `centre` is noted here and only here.
        let centre = drafts.list[number].fields.get("centre");
        let centred = centre.map(|field| self.word(field, &CENTRES).map(|word| word.value[0]));
        self.along(&ACROSS, centred, drafts, number, even)
    }

    /// Where a layer lies from bottom to top.
    pub(super) fn up(&mut self, drafts: &Drafts<'a>, number: usize, even: bool) -> Option<Along> {
        let centre = drafts.list[number].fields.get("centre");
        let noted = self.findings.len();
        let centred = centre.map(|field| self.word(field, &CENTRES).map(|word| word.value[1]));
        self.findings.truncate(noted);
        self.along(&UP, centred, drafts, number, even)
    }

    /// `centred` is none without `centre`, and holds none where that word is unknown. Copies with even gaps
    /// lie in the middle by themselves.
    fn along(
        &mut self,
        direction: &Direction,
        centred: Option<Option<bool>>,
        drafts: &Drafts<'a>,
        number: usize,
        even: bool,
    ) -> Option<Along> {
        let draft = &drafts.list[number];
        let fields = &draft.fields;
        let mut ways: Vec<Field<'a>> = Vec::new();
        if centred == Some(Some(true)) {
            ways.extend(fields.get("centre"));
        }
        ways.extend(direction.keys().filter_map(|key| fields.get(key)));
        let name = &drafts.names.list[number].value;
        match ways.as_slice() {
            [] if even => Some(Along::Centre),
            [way, ..] if even => {
                self.placed_though_even(direction, *way, name);
                None
            }
            [] => {
                if centred != Some(None) {
                    self.not_placed(direction, draft.span, name);
                }
                None
            }
            [way] => self.one_way(direction, *way, drafts, number),
            [first, second, ..] => {
                self.note(
                    Finding::error(
                        "placed-twice",
                        second.key,
                        format!("`{name}` is placed twice {}", direction.words),
                        format!("`{}` again", second.name),
                    )
                    .also(first.key, format!("`{}` already", first.name))
                    .help(format!("keep 1 of `{}` and `{}`", first.name, second.name))
                    .plainly(format!(
                        "Two lines say where `{name}` is laid, {}, and only one can count.",
                        direction.words
                    )),
                );
                None
            }
        }
    }

    fn not_placed(&mut self, direction: &Direction, span: Span, name: &str) {
        self.note(
            Finding::error(
                "not-placed",
                span,
                format!("`{name}` has no place {}", direction.words),
                format!("nothing says where it lies {}", direction.words),
            )
            .help(format!("add 1 line, such as `centre: {}` or `{}: 1/4 in`", direction.centre, direction.edges[0]))
            .plainly(format!("Nothing says where `{name}` is laid, {}.", direction.words)),
        );
    }

    fn one_way(&mut self, direction: &Direction, way: Field<'a>, drafts: &Drafts<'a>, number: usize) -> Option<Along> {
        if way.name == "centre" {
            return Some(Along::Centre);
        }
        if direction.edges.contains(&way.name) {
            let distance = self.length(way, Role::Border)?;
            return Some(if way.name == direction.edges[0] {
                Along::FromLow(distance)
            } else {
                Along::FromHigh(distance)
            });
        }
        if way.name == direction.midway {
            return self.midway(direction, way, drafts, number);
        }
        let layer = self.earlier(way, drafts, number, false);
        let parts = [Part::Low, Part::Middle, Part::High];
        if let Some((_, part)) = direction.level.iter().zip(parts).find(|(key, _)| **key == way.name) {
            return layer.map(|layer| Along::With(layer, part));
        }
        let gap = self.gap(&drafts.list[number], direction);
        let (layer, gap) = (layer?, gap?);
        Some(if way.name == direction.neighbours[0] { Along::After(layer, gap) } else { Along::Before(layer, gap) })
    }

    /// `upper rail and lower rail`, `left edge and lantern`.
    fn midway(&mut self, direction: &Direction, way: Field<'a>, drafts: &Drafts<'a>, number: usize) -> Option<Along> {
        let text = self.text(way)?;
        let items = text.items();
        let [one, other] = items.as_slice() else {
            self.note(
                Finding::error(
                    "bad-word",
                    text.span,
                    format!("`{}` needs two things to lie between", way.name),
                    format!("{} here", items.len()),
                )
                .help(format!(
                    "name 2 layers or edges, such as `{} edge and {} edge`",
                    direction.edges[0], direction.edges[1]
                ))
                .plainly("What lies midway lies between two things."),
            );
            return None;
        };
        let mut bound = |text: Text<'_>| {
            let edge = text.without_first("the").before_words(&["edge"]);
            match edge.and_then(|edge| direction.edges.iter().position(|word| edge.value.eq_ignore_ascii_case(word))) {
                Some(0) => Some(Bound::Low),
                Some(_) => Some(Bound::High),
                None => self.earlier_in(text, drafts, number, false).map(Bound::Layer),
            }
        };
        let (one, other) = (bound(*one), bound(*other));
        Some(Along::Midway(one?, other?))
    }

    fn placed_though_even(&mut self, direction: &Direction, way: Field<'a>, name: &str) {
        self.note(
            Finding::error(
                "placed-twice",
                way.key,
                format!("`{name}` is placed twice {}", direction.words),
                "its gaps are even, so it has its place",
            )
            .help("delete this 1 line, or write the gap as a length")
            .plainly(format!("Even gaps already say where {name} lies, {}.", direction.words)),
        );
    }

    /// `1/16 in left and 1/16 in up`, to the right and up in nanometres.
    pub(super) fn shifted(&mut self, field: Field<'a>) -> Option<(i64, i64)> {
        const WAYS: [&str; 4] = ["left", "right", "up", "down"];
        let text = self.text(field)?;
        let mut shift: [Option<i64>; 2] = [None; 2];
        let mut whole = true;
        for part in text.items() {
            let word = part.last_word().map_or(part, |(_, word)| word);
            let Some((length, way)) = part
                .last_word()
                .and_then(|(length, word)| Some((length, WAYS.iter().position(|way| *way == word.value)?)))
            else {
                self.bad_word("shifted", word, &WAYS);
                whole = false;
                continue;
            };
            let Some(length) = self.length_in(length, Role::Gap) else {
                whole = false;
                continue;
            };
            let sign = if way % 3 == 0 { -1 } else { 1 };
            if shift[way / 2].replace(sign * length.nm()).is_some() {
                self.note(
                    Finding::error("placed-twice", part.span, "the same direction is shifted twice", "again")
                        .help("keep 1 of the 2")
                        .plainly("A shift to one side is said once."),
                );
                whole = false;
            }
        }
        whole.then_some((shift[0].unwrap_or(0), shift[1].unwrap_or(0)))
    }

    /// The gap to a neighbour; nothing where it is not said.
    fn gap(&mut self, draft: &Draft<'a>, direction: &Direction) -> Option<Length> {
        let Some(field) = draft.fields.get("gap") else { return Some(Length::zero(self.units)) };
        let noted = self.findings.len();
        let gap = self.length(field, Role::Gap);
        // With a neighbour in both directions the same gap is read twice, and noted once.
        let twice = ACROSS.neighbours.iter().any(|key| draft.fields.get(key).is_some());
        if direction.centre == UP.centre && twice {
            self.findings.truncate(noted);
        }
        gap
    }

    /// Notes a gap without a neighbour.
    pub(super) fn lonely_gap(&mut self, draft: &Draft<'a>) {
        let neighbours = ACROSS.neighbours.iter().chain(&UP.neighbours);
        let Some(gap) = draft.fields.get("gap") else { return };
        if neighbours.clone().any(|key| draft.fields.get(key).is_some()) {
            return;
        }
        self.note(
            Finding::error("unknown-key", gap.key, "`gap` stands without a neighbour", "no layer to keep a gap to")
                .help(
                    "add 1 of `below`, `above`, `left of` or `right of`, or put it into `row: {count: 3, gap: 1/4 in}`",
                )
                .plainly("A gap lies between two things, and only one is named."),
        );
    }

    /// `1/8 in | 3 mm all round`, `1/8 in left, 1/4 in top`, or a map of edges.
    pub(super) fn shows(&mut self, field: Field<'a>) -> Option<Shows> {
        let span = field.node.span();
        if let Node::Map(_) = field.node {
            let fields =
                self.fields(field.node, "`shows`", field.key, &["all round", "left", "right", "top", "bottom"])?;
            let mut edges = Vec::new();
            let mut whole = true;
            let all_round = fields.get("all round");
            for (edge, key) in Edge::ALL.into_iter().filter_map(|edge| Some((edge, fields.get(edge.word())?))) {
                match self.length(key, Role::Border) {
                    Some(length) => edges.push((edge, length)),
                    None => whole = false,
                }
            }
            if let Some(round) = all_round {
                let length = self.length(round, Role::Border)?;
                if !edges.is_empty() {
                    self.note(
                        Finding::error(
                            "placed-twice",
                            round.key,
                            "an edge is claimed twice",
                            "`all round` names every edge",
                        )
                        .help("keep `all round` alone, or name each of the 4 edges")
                        .plainly("\"all round\" says it for every edge, so the other lines are too much."),
                    );
                    return None;
                }
                return Some(Shows { edges: Edge::ALL.map(|edge| (edge, length)).to_vec(), all_round: true, span });
            }
            if edges.is_empty() && whole {
                self.note(
                    Finding::error("missing-key", field.key, "`shows` names no edge", "nothing is claimed")
                        .help("name at least 1 edge, such as `{left: 1/8 in}`")
                        .plainly("The line about what shows says nothing."),
                );
                return None;
            }
            return whole.then_some(Shows { edges, all_round: false, span });
        }
        let text = self.text(field)?;
        if let Some(length) = text.before_all_round() {
            let length = self.length_in(length, Role::Border)?;
            return Some(Shows { edges: Edge::ALL.map(|edge| (edge, length)).to_vec(), all_round: true, span });
        }
        let edges = self.shown_edges(text)?;
        Some(Shows { edges, all_round: false, span })
    }

    fn shown_edges(&mut self, text: Text<'_>) -> Option<Vec<(Edge, Length)>> {
        let mut edges: Vec<(Edge, Length)> = Vec::new();
        let mut whole = true;
        for part in text.items() {
            let Some((length, word)) = part.last_word() else {
                self.bad_word("shows", part, &["all round", "left", "right", "top", "bottom"]);
                whole = false;
                continue;
            };
            let Some(edge) = edge_named(word.value) else {
                self.bad_word("shows", word, &["all round", "left", "right", "top", "bottom"]);
                whole = false;
                continue;
            };
            if edges.iter().any(|(known, _)| *known == edge) {
                self.note(
                    Finding::error(
                        "placed-twice",
                        word.span,
                        format!("the {} edge is claimed twice", edge.word()),
                        "again",
                    )
                    .help("keep 1 of the 2")
                    .plainly("What shows at an edge is said once."),
                );
                whole = false;
                continue;
            }
            match self.length_in(length, Role::Border) {
                Some(length) => edges.push((edge, length)),
                None => whole = false,
            }
        }
        whole.then_some(edges)
    }
}
