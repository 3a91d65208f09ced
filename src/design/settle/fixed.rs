//! What a designer fixes of the cutting: rows that come first, and pieces along an edge.

use super::desk::{Desk, Field};
use super::names::{Names, tidy};
use super::papers::edge_named;
use super::text::Text;
use crate::design::model::{AlongEdge, FixedRow, PieceId};
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::source::{Span, Spanned};

/// The most fixed rows of a sheet, the most cuts of one row, and the most pieces along its edges:
/// far past what a sheet holds.
const MOST_ROWS: usize = 100;
const MOST_TIMES: u32 = 1_000;
const MOST_ALONG: usize = 8;
const ROW_FORM: &str = "say it as `3 3/4 in from the top, 3 times`";
pub(super) const EDGES: [&str; 4] = ["bottom", "top", "left", "right"];

/// A piece along an edge, before its name is looked up.
pub(super) struct AlongDraft {
    name: Spanned<String>,
    edge: Spanned<Edge>,
}

impl<'a> Desk<'a> {
    /// A list of rows that come first.
    pub(super) fn cut_first(&mut self, field: Field<'a>) -> Vec<FixedRow> {
        let items = self.items(field).unwrap_or_default();
        if matches!(field.node, crate::design::nodes::Node::List(_)) && items.is_empty() {
            self.note(
                Finding::error("missing-key", field.key, "`cut first` is empty", "no row at all")
                    .help("write at least 1 item, such as `- 3 3/4 in from the top, 3 times`, or delete the line")
                    .plainly("The list of rows to cut first says nothing."),
            );
        }
        if !self.not_too_many(field, items.len(), MOST_ROWS, "rows") {
            return Vec::new();
        }
        items.into_iter().filter_map(|item| self.fixed_row(item)).collect()
    }

    /// `3 3/4 in | 95 mm from the top, 3 times`.
    fn fixed_row(&mut self, item: Field<'a>) -> Option<FixedRow> {
        let text = self.text(item)?;
        let Some((measure, place)) = text.at_last("from").filter(|(measure, _)| !measure.value.is_empty()) else {
            if times_alone(text) {
                self.split_at_comma(text);
            } else {
                self.no_row(text.span, "the row does not say what is cut from where", "no `3 3/4 in from the top`");
            }
            return None;
        };
        let place = place.without_first("the");
        let parts = place.split(',');
        let (edge, times) = match parts.as_slice() {
            [only] => {
                let (edge, times) = only.first_word();
                (edge, (!times.value.is_empty()).then_some(times))
            }
            [edge, times] if !times.value.is_empty() => (*edge, Some(*times)),
            _ => {
                self.no_row(
                    text.span,
                    "the row is not one measure, one edge and one count",
                    "too many or too few commas",
                );
                return None;
            }
        };
        let from = edge_named(edge.value);
        if edge.value.is_empty() {
            self.no_row(text.span, "the row names no edge", "no `from the top` or the like");
        } else if from.is_none() {
            self.bad_word("cut first", edge, &EDGES);
        }
        let times = match times {
            None => Some(1),
            Some(times) => self.times(times),
        };
        let length = self.length_in(measure, Role::Outright)?;
        if length.nm() <= 0 {
            self.note(
                Finding::error(
                    "size-not-positive",
                    measure.span,
                    "the row is nothing at all",
                    format!("`{}`", measure.value),
                )
                .help("make it more than 0, or leave the row out")
                .plainly("A row needs a measure above nothing."),
            );
            return None;
        }
        Some(FixedRow { measure: length, from: from?, times: times?, span: text.span })
    }

    /// `3 times`, `1 time`.
    fn times(&mut self, text: Text<'_>) -> Option<u32> {
        let counted =
            text.last_word().filter(|(_, word)| matches!(word.value.to_lowercase().as_str(), "times" | "time"));
        let Some((count, _)) = counted else {
            self.note(
                Finding::error(
                    "bad-count",
                    text.span,
                    format!("`{}` does not say how many times", text.value),
                    "not `3 times`",
                )
                .help(ROW_FORM)
                .plainly(format!("\"{}\" does not say how many times a row is cut.", text.value)),
            );
            return None;
        };
        self.count_in("cut first", count, MOST_TIMES)
    }

    fn no_row(&mut self, span: Span, message: &str, label: &str) {
        self.note(
            Finding::error("bad-word", span, message, label)
                .help(ROW_FORM)
                .plainly("A row to cut first says its measure, the edge it is measured from, and how many times."),
        );
    }

    /// Notes `[3 in from the top, 3 times]`: the comma made two items of one row.
    fn split_at_comma(&mut self, text: Text<'_>) {
        self.note(
            Finding::error(
                "yaml-surprise",
                text.span,
                format!("`{}` stands apart from its row", text.value),
                "a comma in brackets starts a new item",
            )
            .help(format!("put 1 pair of quotes round the whole row: `\"3 3/4 in from the top, {}\"`", text.value))
            .plainly("In a list in brackets a comma ends an item, so a row with a comma needs quotes."),
        );
    }

    /// Pieces along an edge: `{panel: top}`.
    pub(super) fn along_the_edge(&mut self, field: Field<'a>) -> Vec<AlongDraft> {
        let entries = self.named(field).unwrap_or_default();
        if !self.not_too_many(field, entries.len(), MOST_ALONG, "pieces") {
            return Vec::new();
        }
        let edges = EDGES.map(|word| (word, edge_named(word).unwrap_or(Edge::Bottom)));
        let drafts = entries.into_iter().filter_map(|(name, node)| {
            let place = Field { name: "along the edge", key: name.span, node, item: false };
            self.word(place, &edges).map(|edge| AlongDraft { name, edge })
        });
        drafts.collect()
    }

    /// Looks up the pieces along an edge; `pieces` are all that there are, in their order.
    pub(super) fn settle_along(&mut self, drafts: Vec<AlongDraft>, pieces: &Names) -> Vec<AlongEdge> {
        let settled = drafts.into_iter().filter_map(|AlongDraft { name, edge }| {
            let Some(piece) = pieces.position(&name.value) else {
                let known = pieces.words();
                let _ = self.unknown_name(&name.value, name.span, pieces, &known);
                return None;
            };
            let span = self.first_line(name.span.to(edge.span));
            Some(AlongEdge { piece: PieceId(piece), edge: edge.value, span })
        });
        settled.collect()
    }
}

/// Whether a text is `3 times` and nothing else.
fn times_alone(text: Text<'_>) -> bool {
    let words = tidy(text.value).to_lowercase();
    words.split_once(' ').is_some_and(|(count, word)| {
        count.bytes().all(|sign| sign.is_ascii_digit()) && matches!(word, "times" | "time")
    })
}
