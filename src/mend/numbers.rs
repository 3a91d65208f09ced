//! The numbers of a design's text that a mend may change, each with what it belongs to.
//!
//! Takes the node tree, gives lengths and counts with their places. Sheets and the workshop are as they are:
//! their lengths are facts of the desk, and only how many sheets are taken can be changed. How many cards are made
//! is what the design is for.

use crate::design::nodes::{Map, Node, Scalar};
use crate::design::settle::WITHOUT_LENGTHS;
use crate::length::{Length, Units, lengths_in};
use crate::source::{Source, Span};

/// What a number says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Value {
    /// A length.
    Length(Length),
    /// How many sheets: more can be bought.
    Sheets(u32),
    /// How many of anything else.
    Count(u32),
}

/// A number in the text.
#[derive(Debug, Clone)]
pub(super) struct Number {
    /// Where it stands, without its unit.
    pub(super) span: Span,
    pub(super) value: Value,
    /// The half of its pair, or the whole text of its value.
    pub(super) half: Span,
    /// The whole text of its value.
    pub(super) whole: Span,
    /// The key that it stands at.
    pub(super) key: String,
    /// The key of the map that holds the key: the name of a piece, `card`.
    pub(super) owner: String,
    /// The maps that it stands in, innermost last, up to the nearest list.
    maps: Vec<usize>,
}

impl Number {
    /// The system that it is in; none for a count.
    pub(super) const fn system(&self) -> Option<Units> {
        match self.value {
            Value::Length(length) => Some(length.unit().system()),
            Value::Sheets(_) | Value::Count(_) => None,
        }
    }
}

/// A map of the text.
struct Place {
    span: Span,
    /// Where the key is written whose value it is.
    key: Option<Span>,
    /// The piece that it places, if it is a layer.
    places: Option<String>,
    /// The key of its own, for a piece.
    name: String,
}

/// All numbers of a text.
pub(super) struct Numbers {
    pub(super) all: Vec<Number>,
    maps: Vec<Place>,
}

/// Keys whose lengths are no choice of the design.
const FACTS: [&str; 4] = ["sheets", "also from", "thickness", "workshop"];
/// More keys without a number that may change, beside those without lengths.
const WORDS: [&str; 2] = ["weight", "cards"];

impl Numbers {
    /// The numbers under a root.
    pub(super) fn of(root: &Node, source: &Source) -> Self {
        let mut numbers = Self { all: Vec::new(), maps: Vec::new() };
        let mut walk = Walk { source, numbers: &mut numbers, maps: Vec::new() };
        walk.node(root, ("", None), "", false);
        numbers
    }

    /// The numbers that a place is about: those in it; else those of the smallest map round it, and of the
    /// piece that is placed there.
    pub(super) fn at(&self, span: Span) -> Vec<usize> {
        let inside: Vec<usize> = self.which(|number| span.holds(number.span));
        if !inside.is_empty() {
            return inside;
        }
        let named = self.maps.iter().position(|map| map.key == Some(span));
        let round = self.maps.iter().enumerate().filter(|(_, map)| map.span.holds(span));
        let smallest = named.or_else(|| round.min_by_key(|(_, map)| map.span.end - map.span.start).map(|(at, _)| at));
        let Some(map) = smallest else { return Vec::new() };
        // The outermost map holds everything: only its own counts belong to it.
        let mut found = self.which(|number| match map {
            0 => number.maps.as_slice() == [0],
            _ => number.maps.contains(&map),
        });
        if let Some(piece) = &self.maps[map].places {
            let piece = self.maps.iter().position(|map| map.name == *piece);
            found.extend(piece.map(|piece| self.which(|number| number.maps.contains(&piece))).unwrap_or_default());
        }
        found
    }

    fn which(&self, wanted: impl Fn(&Number) -> bool) -> Vec<usize> {
        (0..self.all.len()).filter(|at| wanted(&self.all[*at])).collect()
    }

    /// The other side of a size: the width of a height, the height of a width.
    pub(super) fn across(&self, at: usize, source: &Source) -> Option<usize> {
        let between = |a: &Number, b: &Number| {
            let text = source.slice(Span::new(a.span.end, b.span.start)).trim();
            a.half == b.half
                && matches!(
                    text.trim_start_matches(['"', '\'']).trim(),
                    "x" | "X" | "\u{d7}" | "in x" | "mm x" | "cm x"
                )
        };
        let next = self.all.get(at + 1).filter(|next| between(&self.all[at], next)).map(|_| at + 1);
        next.or_else(|| at.checked_sub(1).filter(|before| between(&self.all[*before], &self.all[at])))
    }
}

struct Walk<'a> {
    source: &'a Source,
    numbers: &'a mut Numbers,
    maps: Vec<usize>,
}

impl Walk<'_> {
    fn node(&mut self, node: &Node, key: (&str, Option<Span>), owner: &str, facts: bool) {
        match node {
            Node::Scalar(scalar) => self.scalar(scalar, key.0, owner, facts),
            Node::Map(map) => self.map(map, key, owner, facts),
            Node::List(list) => {
                let outer = std::mem::take(&mut self.maps);
                for item in &list.items {
                    if matches!(item, Node::Scalar(_)) {
                        self.maps.clone_from(&outer);
                    }
                    self.node(item, key, owner, facts);
                    self.maps.clear();
                }
                self.maps = outer;
            }
        }
    }

    fn map(&mut self, map: &Map, (name, key): (&str, Option<Span>), owner: &str, facts: bool) {
        // The sides of a size belong to its piece.
        let owned_by = if name == "size" { owner } else { name };
        let places = map.entries.iter().find(|(key, _)| key.value == "place").and_then(|(_, value)| match value {
            Node::Scalar(scalar) => Some(scalar.text.clone()),
            _ => None,
        });
        self.maps.push(self.numbers.maps.len());
        self.numbers.maps.push(Place { span: map.span, key, places, name: name.to_owned() });
        let may_change = |key: &str| !WORDS.contains(&key) && !WITHOUT_LENGTHS.contains(&key);
        for (key, value) in map.entries.iter().filter(|(key, _)| may_change(&key.value)) {
            let facts = facts || FACTS.contains(&key.value.as_str());
            self.node(value, (&key.value, Some(key.span)), owned_by, facts);
        }
        self.maps.pop();
    }

    fn scalar(&mut self, scalar: &Scalar, key: &str, owner: &str, facts: bool) {
        let written = self.source.slice(scalar.span);
        let start = if written == scalar.text {
            scalar.span.start
        } else if written.len() == scalar.text.len() + 2 && written.get(1..written.len() - 1) == Some(&scalar.text) {
            scalar.span.start + 1
        } else {
            return;
        };
        let text = scalar.text.as_str();
        let half = |at: usize| {
            let from = text[..at].rfind('|').map_or(0, |found| found + 1);
            let to = text[at..].find('|').map_or(text.len(), |found| at + found);
            let part = &text[from..to];
            let from = from + part.len() - part.trim_start().len();
            Span::new(start + from, start + from + part.trim().len())
        };
        let mut push = |from: usize, to: usize, value: Value| {
            self.numbers.all.push(Number {
                span: Span::new(start + from, start + to),
                value,
                half: half(from),
                whole: Span::new(start, start + text.len()),
                key: key.to_owned(),
                owner: owner.to_owned(),
                maps: self.maps.clone(),
            });
        };
        let mut from = 0;
        for part in text.split_inclusive(['|', ',']) {
            let at = from + part.len() - part.trim_start().len();
            let digits = part.trim_start().bytes().take_while(u8::is_ascii_digit).count();
            let behind = text[at + digits..].trim_start();
            if let Ok(count) = text[at..at + digits].parse::<u32>() {
                if behind.starts_with("of ") {
                    push(at, at + digits, Value::Sheets(count));
                } else if behind.is_empty() && at == 0 || behind.starts_with("time") || behind.starts_with("evenly") {
                    push(at, at + digits, Value::Count(count));
                }
            }
            from += part.len();
        }
        if !facts {
            for found in lengths_in(text) {
                push(found.number.start, found.number.end, Value::Length(found.length));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::nodes::read;

    const TEXT: &str = "cards: 4\nworkshop: {ruler: 1/16 in}\npapers:\n  white: {sheets: 2 of 8 x 10 in}\npieces:\n  mat:\n    \
                        size: 4 x 5 in | \"no\n  tag: {size: '1 x 2 in', from: white}\nfront:\n  - place: mat\n    top: 1 in | 25 mm\n    \
                        row: {count: 3, gap: 1/4 in}\n    first:\n      - {place: tag, left: 1/8 in}\n";

    fn told(at: &str) -> Vec<String> {
        let source = Source::new("a.yaml", TEXT);
        let numbers = Numbers::of(&read(&source).unwrap(), &source);
        let start = TEXT.find(at).unwrap();
        let found = numbers.at(Span::new(start, start + at.len())).into_iter().map(|at| &numbers.all[at]);
        found.map(|number| format!("{} {}", number.key, source.slice(number.span))).collect()
    }

    #[test]
    fn a_place_has_its_numbers() {
        assert_eq!(told("1 x 2 in"), ["size 1", "size 2"]);
        assert_eq!(told("tag"), ["size 1", "size 2"], "a name stands for what it names");
        assert_eq!(told("2 of 8 x 10 in"), ["sheets 2"], "sheets are as they are");
        assert_eq!(told("place: tag"), ["left 1/8", "size 1", "size 2"]);
        assert_eq!(told("place: mat"), ["top 1", "top 25", "count 3", "gap 1/4", "size 4", "size 5"]);
        assert_eq!(told("cards"), Vec::<String>::new(), "what the design is for stands fast");
    }
}
