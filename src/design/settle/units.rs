//! The systems of units that a design asks for, or is written in.

use super::desk::{Desk, Field};
use super::names::tidy;
use super::papers::edge_named;
use super::text::Text;
use crate::design::nodes::Node;
use crate::design::sizes::named;
use crate::length::{Unit, Units, lengths_in, parse_length, parse_size};
use crate::source::Span;

const UNITS: [(&str, &[Units]); 4] = [
    ("inch", &[Units::Inch]),
    ("metric", &[Units::Metric]),
    ("inch and metric", &[Units::Inch, Units::Metric]),
    ("metric and inch", &[Units::Metric, Units::Inch]),
];

/// The systems that a `units:` value asks for.
fn units_of(node: &Node) -> Option<Vec<Units>> {
    let Node::Scalar(scalar) = node else { return None };
    let typed = tidy(&scalar.text).to_lowercase();
    UNITS.iter().find(|(words, _)| *words == typed).map(|(_, asked)| asked.to_vec())
}

/// The systems that a design asks for, first the one it is designed in; empty where the file does
/// not say, or says it wrong.
#[must_use]
pub fn units_asked(root: &Node) -> Vec<Units> {
    root.get("units").and_then(units_of).unwrap_or_default()
}

/// The system of the first length under `papers` or `pieces`: what a file for `cuts` is planned in
/// that does not say its units.
#[must_use]
pub fn first_units(root: &Node) -> Option<Units> {
    ["papers", "pieces"].iter().find_map(|key| root.get(key).and_then(units_within))
}

/// Keys whose texts hold no length of the design: the author's own words, and what is made of it.
pub const WITHOUT_LENGTHS: [&str; 12] = [
    "title",
    "month",
    "designer",
    "imprint",
    "photo",
    "about",
    "notes",
    "leftovers",
    "supplies",
    "tools",
    "handouts",
    "language",
];

/// More of them: within other keys, and the weight of paper.
const WORDS: [&str; 5] = ["weight", "stamp", "printed", "die-cut words", "name"];

/// The units that the lengths of a design are written in, each once.
pub(super) fn units_written(root: &Node) -> Vec<Unit> {
    fn walk(node: &Node, found: &mut Vec<Unit>) {
        match node {
            Node::Scalar(scalar) => {
                for unit in lengths_in(&scalar.text).into_iter().map(|length| length.length.unit()) {
                    if !found.contains(&unit) {
                        found.push(unit);
                    }
                }
            }
            Node::List(list) => list.items.iter().for_each(|item| walk(item, found)),
            Node::Map(map) => {
                let holds = |key: &str| !WORDS.contains(&key) && !WITHOUT_LENGTHS.contains(&key);
                let values = map.entries.iter().filter(|(key, _)| holds(&tidy(&key.value)));
                values.for_each(|(_, value)| walk(value, found));
            }
        }
    }
    let mut found = Vec::new();
    walk(root, &mut found);
    found.sort_unstable();
    found
}

fn units_within(node: &Node) -> Option<Units> {
    match node {
        Node::Scalar(scalar) => units_of_text(&scalar.text),
        Node::List(list) => list.items.iter().find_map(units_within),
        Node::Map(map) => {
            let wanted = map
                .entries
                .iter()
                .filter(|(key, _)| !matches!(key.value.as_str(), "weight" | "thickness" | "from" | "stamp"));
            wanted.into_iter().find_map(|(_, value)| units_within(value))
        }
    }
}

/// The system of the first unit or named size in a text.
fn units_of_text(text: &str) -> Option<Units> {
    let whole = Text::new(text, Span::default(), false);
    let half = whole.split('|')[0];
    let first = half.items()[0];
    let size = first.at_word("of").map_or(first, |(_, size)| size);
    if let Some(size) = named(&tidy(size.value)) {
        return Some(size.size.width.unit().system());
    }
    if let Ok(size) = parse_size(size.value) {
        return Some(size.width.unit().system());
    }
    // `1/2 in at the bottom`, `3 3/4 in from the top`, `card less 1/8 in all round`, `mat less left 1/8 in`,
    // `rest of mat after strip with gap 1/8 in`.
    let behind = ["gap", "less", "plus"].iter().filter_map(|word| half.at_word(word)).map(|(_, rest)| rest.items()[0]);
    let before = ["at", "from"].iter().filter_map(|word| first.at_last(word)).map(|(length, _)| length);
    let lengths = std::iter::once(first).chain(behind).chain(before);
    lengths.into_iter().find_map(|length| {
        let length = length.before_all_round().unwrap_or(length);
        let (word, rest) = length.first_word();
        let length = if edge_named(word.value).is_some() { rest } else { length };
        let length = ["less", "plus"].iter().find_map(|word| length.at_word(word)).map_or(length, |(length, _)| length);
        parse_length(length.value).ok().map(|length| length.unit().system())
    })
}

impl<'a> Desk<'a> {
    /// Notes a `units:` that is none of the four.
    pub(super) fn units(&mut self, field: Field<'a>) {
        let _ = self.word(field, &UNITS);
    }
}
