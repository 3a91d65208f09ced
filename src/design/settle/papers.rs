//! Papers: sheets, pattern, edge strip and weight.

use super::desk::{Desk, Field};
use super::names::{Names, tidy};
use super::text::Text;
use crate::design::model::{EdgeStrip, Fixed, Paper, Pattern, Sheets};
use crate::design::nodes::Node;
use crate::design::restate::{Role, Stated};
use crate::design::sizes::{named, sheet_twin};
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::Units;
use crate::source::{Span, Spanned};

/// The most sheets of one kind.
const MOST_SHEETS: u32 = 10_000;
const EDGES: [&str; 4] = ["bottom", "top", "left", "right"];
const STRIP_FORM: &str = "say it as `1/2 in at the bottom, beside`";

/// A paper: its name, and the rest where it could be read.
pub(super) struct PaperDraft {
    pub(super) paper: Option<Paper>,
}

impl<'a> Desk<'a> {
    /// The names of the papers, for what refers to them.
    pub(super) fn paper_names(&mut self, field: Option<Field<'a>>) -> (Names, Vec<&'a Node>) {
        let entries = field.and_then(|field| self.named(field)).unwrap_or_default();
        let (list, nodes): (Vec<Spanned<String>>, Vec<&'a Node>) = entries.into_iter().unzip();
        for name in &list {
            if name.value == "varies" {
                self.reserved(name, "a piece whose paper differs says `from: varies`");
            }
        }
        (Names { noun: "paper", unknown: "unknown-paper", list }, nodes)
    }

    /// Notes a name that means something else already.
    pub(super) fn reserved(&mut self, name: &Spanned<String>, why: &str) {
        self.note(
            Finding::error("name-used-twice", name.span, format!("`{}` means something else already", name.value), why)
                .help(format!("take another name, such as `{} 2`", name.value))
                .plainly(format!("\"{}\" is a word of the design language and cannot be a name.", name.value)),
        );
    }

    /// One paper.
    pub(super) fn paper(&mut self, name: &Spanned<String>, node: &'a Node) -> PaperDraft {
        let known = ["sheets", "pattern", "edge strip", "weight"];
        let what = format!("the paper `{}`", name.value);
        let Some(fields) = self.fields(node, what, name.span, &known) else { return PaperDraft { paper: None } };
        let sheets = self.required(&fields, "sheets", "2 of letter").and_then(|field| self.sheets(field));
        let patterns = [("any", Pattern::Any), ("two-way", Pattern::TwoWay), ("one-way", Pattern::OneWay)];
        let pattern = fields.get("pattern").and_then(|field| self.word(field, &patterns));
        let strip = fields.get("edge strip").map(|field| self.edge_strip(field));
        let weight = fields.get("weight").and_then(|field| self.text(field)).map(Text::owned);
        let strip_known = !matches!(strip, Some(None));
        let paper = sheets.filter(|_| strip_known).map(|sheets| Paper {
            name: name.value.clone(),
            span: name.span,
            sheets,
            pattern: pattern.map_or(Pattern::Any, |pattern| pattern.value),
            pattern_span: pattern.map(|pattern| pattern.span),
            edge_strip: strip.flatten(),
            weight,
            back: None,
            different: None,
            kept_from: None,
            fixed: Fixed::default(),
            also: Vec::new(),
            ways: 1,
        });
        PaperDraft { paper }
    }

    /// `2 of letter | 2 of A4`, `1 of 12 x 12 in and 2 of 6 x 6 in`, or a list of such.
    fn sheets(&mut self, field: Field<'a>) -> Option<Vec<Sheets>> {
        let values = match field.node {
            Node::List(_) => self.items(field)?,
            _ => vec![field],
        };
        if values.is_empty() {
            self.note(
                Finding::error("missing-key", field.key, "`sheets` is empty", "no sheets at all")
                    .help("write at least 1 item, such as `- 2 of letter`")
                    .plainly("A paper needs at least one sheet."),
            );
            return None;
        }
        let mut all = Some(Vec::new());
        for value in values {
            let text = self.text(value);
            let sheets = text.and_then(|text| self.sheets_value(text));
            all = all.zip(sheets).map(|(mut all, sheets)| {
                all.extend(sheets);
                all
            });
        }
        all
    }

    /// One value of `sheets`: a run of kinds, or two such runs in two systems.
    pub(super) fn sheets_value(&mut self, text: Text<'_>) -> Option<Vec<Sheets>> {
        let halves = text.split('|');
        let read: Vec<Option<Vec<Sheets>>> = halves.iter().map(|half| self.run(*half)).collect();
        let mut read: Vec<Vec<Sheets>> = read.into_iter().collect::<Option<_>>()?;
        match read.len() {
            1 => self.one_run(text, read.remove(0)),
            2 => {
                let (right, left) = (read.pop()?, read.pop()?);
                let systems =
                    |run: &[Sheets]| -> Vec<Units> { run.iter().map(|s| s.size.width.unit().system()).collect() };
                let (a, b) = (systems(&left), systems(&right));
                let pure = a.iter().all(|units| *units == a[0]) && b.iter().all(|units| *units == b[0]) && a[0] != b[0];
                if !pure {
                    self.note(
                        Finding::error(
                            "bad-size",
                            text.span,
                            "a pair of sheets mixes its units",
                            "each half wants 1 system",
                        )
                        .help("write 1 half in inches and 1 in millimetres, such as `2 of letter | 2 of A4`")
                        .plainly("A pair says the sheets once in inches and once in millimetres."),
                    );
                    return None;
                }
                let stated = match a[0] {
                    Units::Inch => Stated { inch: Some(left), metric: Some(right) },
                    Units::Metric => Stated { inch: Some(right), metric: Some(left) },
                };
                stated.of(self.units).cloned()
            }
            many => {
                self.note(
                    Finding::error(
                        "bad-size",
                        text.span,
                        format!("the sheets are stated {many} times"),
                        "too many `|`",
                    )
                    .help("keep at most 2 halves, such as `2 of letter | 2 of A4`")
                    .plainly("Sheets are said once, or once in each of two systems."),
                );
                None
            }
        }
    }

    /// A run stated once: each kind takes its built-in twin where both systems are asked for.
    fn one_run(&mut self, text: Text<'_>, run: Vec<Sheets>) -> Option<Vec<Sheets>> {
        if !self.both() {
            return Some(run);
        }
        for units in self.asked.clone() {
            let lacks = run
                .iter()
                .any(|kind| kind.size.width.unit().system() != units && sheet_twin(kind.size, units).is_none());
            if lacks {
                let twin: Vec<String> = run
                    .iter()
                    .map(|kind| match sheet_twin(kind.size, units) {
                        Some((size, name)) => {
                            format!("{} of {}", kind.count, name.map_or(size.to_string(), str::to_owned))
                        }
                        None => {
                            let size = crate::design::restate::suggested_size(kind.size, Role::Sheet, units);
                            format!("{} of {size}", kind.count)
                        }
                    })
                    .collect();
                let pair = format!("{} | {}", text.value, twin.join(" and "));
                self.missing_twin(text.span, text.value, units, &pair);
            }
        }
        let units = self.units;
        let restated = run.into_iter().map(|kind| {
            if kind.size.width.unit().system() == units {
                return kind;
            }
            match sheet_twin(kind.size, units) {
                Some((size, name)) => Sheets { size, named: name.map(str::to_owned), ..kind },
                None => kind,
            }
        });
        Some(restated.collect())
    }

    /// Kinds of sheet in one system.
    fn run(&mut self, text: Text<'_>) -> Option<Vec<Sheets>> {
        let read: Vec<Option<Sheets>> = text.items().into_iter().map(|part| self.kind(part)).collect();
        read.into_iter().collect()
    }

    /// `2 of letter`.
    fn kind(&mut self, text: Text<'_>) -> Option<Sheets> {
        let Some((count, wanted)) = text.at_word("of") else {
            let code = if text.value.bytes().all(|sign| sign.is_ascii_digit()) { "bad-size" } else { "bad-count" };
            self.note(
                Finding::error(
                    code,
                    text.span,
                    format!("`{}` does not say how many of which sheet", text.value),
                    "not `2 of letter`",
                )
                .help("say a number, `of` and a size, such as `2 of letter`")
                .plainly(format!("\"{}\" does not say how many sheets of what size.", text.value)),
            );
            return None;
        };
        let count = self.count_in("sheets", count, MOST_SHEETS);
        let size = self.one_size(wanted);
        let name = named(&tidy(wanted.value)).map(|size| size.name.to_owned());
        Some(Sheets { count: count?, size: size?, named: name, span: text.span })
    }

    /// `1/2 in | 13 mm at the bottom, beside`.
    fn edge_strip(&mut self, field: Field<'a>) -> Option<EdgeStrip> {
        let text = self.text(field)?;
        let malformed = |span: Span, message: &str, label: &str| {
            Finding::error("bad-word", span, message, label)
                .help(STRIP_FORM)
                .plainly("An edge strip says how wide it is, along which edge, and whether it lies beside the stated size or within it.")
        };
        let Some((width, place)) = text.at_last("at") else {
            self.note(malformed(text.span, "the edge strip names no edge", "no `at the bottom` or the like"));
            return None;
        };
        let place = place.without_first("the");
        let Some((edge, beside)) = place.at_last_comma().or_else(|| place.last_word()) else {
            self.note(malformed(place.span, "the edge strip is neither beside nor within", "no `beside` or `within`"));
            return None;
        };
        let beside = match tidy(beside.value).to_lowercase().as_str() {
            "beside" => Some(true),
            "within" => Some(false),
            _ => {
                self.bad_word("edge strip", beside, &["beside", "within"]);
                None
            }
        };
        let along = edge_named(edge.value);
        if along.is_none() {
            self.bad_word("edge strip", edge, &EDGES);
        }
        let width_text = width;
        let width = self.length_in(width, Role::Strip)?;
        if width.nm() <= 0 {
            self.note(
                Finding::error(
                    "size-not-positive",
                    width_text.span,
                    "the edge strip is nothing at all",
                    format!("{width}"),
                )
                .help("make it more than 0, or leave out `edge strip`")
                .plainly("An edge strip needs a width above nothing."),
            );
            return None;
        }
        Some(EdgeStrip { width, edge: along?, beside: beside?, span: text.span })
    }
}

/// The edge of a word.
pub(super) fn edge_named(word: &str) -> Option<Edge> {
    let word = tidy(word).to_lowercase();
    Edge::ALL.into_iter().find(|edge| edge.word() == word)
}
