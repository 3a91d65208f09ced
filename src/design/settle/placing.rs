//! How a layer is placed: each direction once, copies in a row, column or grid, and what shows.

use super::desk::{Desk, Field, Fields};
use super::front::{Draft, Drafts};
use super::papers::edge_named;
use super::pieces::MOST_COPIES;
use super::text::Text;
use crate::design::model::{Along, Arrangement, Shows};
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
}

const ACROSS: Direction = Direction {
    words: "from left to right",
    centre: "across",
    edges: ["left", "right"],
    neighbours: ["right of", "left of"],
};
const UP: Direction = Direction {
    words: "from bottom to top",
    centre: "up and down",
    edges: ["bottom", "top"],
    neighbours: ["above", "below"],
};
const CENTRES: [(&str, [bool; 2]); 3] =
    [("across", [true, false]), ("up and down", [false, true]), ("both ways", [true, true])];

impl<'a> Desk<'a> {
    /// Where a layer lies from left to right.
    pub(super) fn across(&mut self, drafts: &Drafts<'a>, number: usize) -> Option<Along> {
        // A misspelt `centre` is noted here and only here.
        let centre = drafts.list[number].fields.get("centre");
        let centred = centre.map(|field| self.word(field, &CENTRES).map(|word| word.value[0]));
        self.along(&ACROSS, centred, drafts, number)
    }

    /// Where a layer lies from bottom to top.
    pub(super) fn up(&mut self, drafts: &Drafts<'a>, number: usize) -> Option<Along> {
        let centre = drafts.list[number].fields.get("centre");
        let noted = self.findings.len();
        let centred = centre.map(|field| self.word(field, &CENTRES).map(|word| word.value[1]));
        self.findings.truncate(noted);
        self.along(&UP, centred, drafts, number)
    }

    /// `centred` is none without `centre`, and holds none where that word is unknown.
    fn along(
        &mut self,
        direction: &Direction,
        centred: Option<Option<bool>>,
        drafts: &Drafts<'a>,
        number: usize,
    ) -> Option<Along> {
        let draft = &drafts.list[number];
        let fields = &draft.fields;
        let mut ways: Vec<Field<'a>> = Vec::new();
        if centred == Some(Some(true)) {
            ways.extend(fields.get("centre"));
        }
        ways.extend(direction.edges.iter().chain(&direction.neighbours).filter_map(|key| fields.get(key)));
        let name = &drafts.names.list[number].value;
        match ways.as_slice() {
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
        let layer = self.earlier(way, drafts, number, false);
        let gap = self.gap(&drafts.list[number], direction);
        let (layer, gap) = (layer?, gap?);
        Some(if way.name == direction.neighbours[0] { Along::After(layer, gap) } else { Along::Before(layer, gap) })
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

    /// Copies: a row, a column or a grid.
    pub(super) fn arrangement(&mut self, fields: &Fields<'a>) -> Option<Arrangement> {
        let ways: Vec<Field<'a>> = ["row", "column", "grid"].iter().filter_map(|key| fields.get(key)).collect();
        match ways.as_slice() {
            [] => Some(Arrangement::Single),
            [way] if way.name == "grid" => self.grid(*way),
            [way] => self.line(*way),
            [first, second, ..] => {
                self.note(
                    Finding::error(
                        "placed-twice",
                        second.key,
                        "the copies are laid out twice",
                        format!("`{}` again", second.name),
                    )
                    .also(first.key, format!("`{}` already", first.name))
                    .help(format!("keep 1 of `{}` and `{}`, or say `grid`", first.name, second.name))
                    .plainly("Two lines say how the copies lie, and only one can count."),
                );
                None
            }
        }
    }

    fn line(&mut self, way: Field<'a>) -> Option<Arrangement> {
        let fields = self.fields(way.node, format!("a {}", way.name), way.key, &["count", "gap"])?;
        let count = self.required(&fields, "count", "3").and_then(|field| self.count(field, MOST_COPIES));
        let gap = self.required(&fields, "gap", "1/4 in").and_then(|field| self.length(field, Role::Gap));
        let (count, gap) = (count?.value, gap?);
        Some(if way.name == "row" { Arrangement::Row { count, gap } } else { Arrangement::Column { count, gap } })
    }

    fn grid(&mut self, way: Field<'a>) -> Option<Arrangement> {
        let known = ["columns", "rows", "gap", "gap across", "gap down"];
        let fields = self.fields(way.node, "a grid", way.key, &known)?;
        let columns = self.required(&fields, "columns", "3").and_then(|field| self.count(field, MOST_COPIES));
        let rows = self.required(&fields, "rows", "2").and_then(|field| self.count(field, MOST_COPIES));
        let gaps = match (fields.get("gap"), fields.get("gap across"), fields.get("gap down")) {
            (Some(gap), None, None) => self.length(gap, Role::Gap).map(|gap| (gap, gap)),
            (Some(gap), Some(other), _) | (Some(gap), None, Some(other)) => {
                self.note(
                    Finding::error(
                        "placed-twice",
                        other.key,
                        "a gap of the grid is said twice",
                        format!("`{}` again", other.name),
                    )
                    .also(gap.key, "`gap` already")
                    .help("keep `gap` alone, or the 2 of `gap across` and `gap down`")
                    .plainly("One gap counts for both directions, so the other is too much."),
                );
                None
            }
            (None, None, None) => {
                let _ = self.required(&fields, "gap", "1/4 in");
                None
            }
            (None, _, _) => {
                let across =
                    self.required(&fields, "gap across", "1/4 in").and_then(|field| self.length(field, Role::Gap));
                let down = self.required(&fields, "gap down", "1/4 in").and_then(|field| self.length(field, Role::Gap));
                across.zip(down)
            }
        };
        let (columns, rows, (across, down)) = (columns?, rows?, gaps?);
        if columns.value.saturating_mul(rows.value) > MOST_COPIES {
            self.note(
                Finding::error(
                    "bad-count",
                    rows.span,
                    "the grid holds more than a card can",
                    format!("{} x {}", columns.value, rows.value),
                )
                .also(columns.span, "columns")
                .help(format!("keep it to {MOST_COPIES} copies"))
                .plainly("The grid has far too many copies."),
            );
            return None;
        }
        Some(Arrangement::Grid { columns: columns.value, rows: rows.value, across, down })
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
