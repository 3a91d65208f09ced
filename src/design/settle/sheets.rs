//! Sheets of a paper, and other sheets that somebody may hold.

use super::desk::{Desk, Field};
use super::measures::are_far_apart;
use super::names::tidy;
use super::text::Text;
use crate::design::model::{Also, Sheets};
use crate::design::nodes::Node;
use crate::design::restate::{Restate, Restated, Role, Stated, Towards};
use crate::design::sizes::{named, sheet_twin};
use crate::diagnostic::Finding;
use crate::length::Units;

/// The most sheets of one kind.
pub(super) const MOST_SHEETS: u32 = 10_000;
/// The most other sheets; each is planned too.
const MOST_ALSO: usize = 20;

impl<'a> Desk<'a> {
    /// `2 of letter | 2 of A4`, `1 of 12 x 12 in and 2 of 6 x 6 in`, or a list of such.
    pub(super) fn sheets(&mut self, field: Field<'a>) -> Option<Vec<Sheets>> {
        let values = match field.node {
            Node::List(_) => self.items(field)?,
            _ => vec![field],
        };
        if values.is_empty() {
            self.note(
                Finding::error("missing-key", field.key, format!("{} is empty", field.what()), "no sheets at all")
                    .help("write at least 1 item, such as `- 2 of letter`")
                    .plainly("A paper needs at least one sheet."),
            );
            return None;
        }
        let mut all = Some(Vec::new());
        for value in values {
            let text = self.text(value);
            let sheets = text.and_then(|text| self.sheets_value(field.name, text));
            all = all.zip(sheets).map(|(mut all, sheets)| {
                all.extend(sheets);
                all
            });
        }
        all
    }

    /// One value of `sheets`: a run of kinds, or two such runs in two systems.
    pub(super) fn sheets_value(&mut self, key: &str, text: Text<'_>) -> Option<Vec<Sheets>> {
        let halves = text.split('|');
        let read: Vec<Option<Vec<Sheets>>> = halves.iter().map(|half| self.run(key, *half)).collect();
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
                if let (Some(inch), Some(metric)) = (&stated.inch, &stated.metric) {
                    self.sheet_twins(text, inch, metric);
                }
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

    /// Notes a pair of sheets that are not nearly as large as each other, lying or upright. Counts may differ.
    fn sheet_twins(&mut self, text: Text<'_>, inch: &[Sheets], metric: &[Sheets]) {
        let sides = |sheets: &Sheets| {
            let (width, height) = (sheets.size.width, sheets.size.height);
            if width.nm() <= height.nm() { [width, height] } else { [height, width] }
        };
        let is_slip = |(inch, metric): &(&Sheets, &Sheets)| {
            sides(inch).into_iter().zip(sides(metric)).any(|(inch, metric)| are_far_apart(inch, metric))
        };
        // Other runs of kinds are another choice of sheets, not the same one twice.
        if inch.len() != metric.len() {
            return;
        }
        let Some((inch, metric)) = inch.iter().zip(metric).find(is_slip) else { return };
        let by_rule = || inch.size.restated(Role::Sheet, Towards::usual(Units::Metric)).0;
        let nearest = sheet_twin(inch.size, Units::Metric).map_or_else(by_rule, |(twin, _)| twin);
        let (inch, metric) = (inch.size, metric.size);
        self.note(
            Finding::warning(
                "twins-far-apart",
                text.span,
                "the two halves of a pair are far apart",
                format!("{inch} is about {nearest}, not {metric}"),
            )
            .help(format!("write sheets of the same size twice, such as `{inch} | {nearest}`"))
            .plainly(format!("{inch} is about {nearest}, so the {metric} beside it may be a slip.")),
        );
    }

    /// A run stated once: where both systems are asked for, each kind of the other one takes its twin.
    /// Counts stay.
    fn one_run(&mut self, text: Text<'_>, run: Vec<Sheets>) -> Option<Vec<Sheets>> {
        let towards = self.towards();
        let here = |kind: &Sheets| kind.size.width.unit().system() == towards.units;
        if !self.both() || run.iter().all(here) {
            return Some(run);
        }
        let twin = |kind: &Sheets| match sheet_twin(kind.size, towards.units) {
            Some((size, name)) => Sheets { size, named: name.map(str::to_owned), ..kind.clone() },
            None => Sheets { size: kind.size.restated(Role::Sheet, towards).0, named: None, ..kind.clone() },
        };
        let twins: Vec<Sheets> = run.iter().map(|kind| if here(kind) { kind.clone() } else { twin(kind) }).collect();
        let written = |sheets: &Sheets| {
            let (count, name) = sheets.count_and_name();
            format!("{count} of {name}")
        };
        let (all, mixed) = (twins.iter().map(written).collect::<Vec<_>>().join(" and "), run.iter().any(here));
        // A half of a pair keeps to one system.
        let pair = if mixed { all } else { format!("{} | {all}", text.value) };
        let off = run
            .iter()
            .filter(|kind| !here(kind))
            .map(|kind| kind.size.restated(Role::Sheet, towards).1)
            .max()
            .unwrap_or(0);
        let known = |kind: &Sheets| here(kind) || sheet_twin(kind.size, towards.units).is_some();
        let is_stock = run.iter().all(known);
        self.restate(Restated { span: text.span, pair, off, role: Role::Sheet, is_stock });
        Some(twins)
    }

    /// Kinds of sheet in one system.
    fn run(&mut self, key: &str, text: Text<'_>) -> Option<Vec<Sheets>> {
        let read: Vec<Option<Sheets>> = text.items().into_iter().map(|part| self.kind(key, part)).collect();
        read.into_iter().collect()
    }

    /// `2 of letter`.
    fn kind(&mut self, key: &str, text: Text<'_>) -> Option<Sheets> {
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
        let count = self.count_in(key, count, MOST_SHEETS);
        let size = self.one_size(wanted);
        let name = named(&tidy(wanted.value)).map(|size| size.name.to_owned());
        Some(Sheets { count: count?, size: size?, named: name, span: text.span })
    }

    /// Other sheets that somebody may hold: a list, each item written like `sheets`, or one text.
    pub(super) fn also_from(&mut self, field: Field<'a>) -> Vec<Also> {
        let items = match field.node {
            Node::List(_) => self.items(field).unwrap_or_default(),
            _ => vec![field],
        };
        if items.is_empty() {
            self.note(
                Finding::error("missing-key", field.key, "`also from` is empty", "no sheets at all")
                    .help("write at least 1 item, such as `- 4 of 6 x 6 in`, or delete the line")
                    .plainly("The list of other sheets says nothing."),
            );
        }
        if !self.not_too_many(field, items.len(), MOST_ALSO, "other sheets") {
            return Vec::new();
        }
        let also = items.into_iter().filter_map(|item| {
            let span = self.first_line(item.node.span());
            self.sheets(item).map(|sheets| Also { sheets, span })
        });
        also.collect()
    }

    /// Whether a list keeps to the most that it may hold; a longer one is noted.
    pub(super) fn not_too_many(&mut self, field: Field<'a>, held: usize, most: usize, noun: &str) -> bool {
        if held > most {
            self.note(
                Finding::error(
                    "bad-count",
                    field.key,
                    format!("`{}` lists {held} {noun}", field.name),
                    format!("more than {most}"),
                )
                .help(format!("keep at most {most}"))
                .plainly(format!("There are more {noun} than can be planned.")),
            );
        }
        held <= most
    }
}
