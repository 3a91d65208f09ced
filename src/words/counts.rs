//! Counts, names and lists, as every sentence has them.

use super::{Line, Words};

/// `1 panel`, `3 panels`.
#[must_use]
pub fn counted(say: &Words, count: u32, name: &str) -> String {
    say.tell("counted").count("count", count).name("name", name).string()
}

/// A count, a name and a ring that stay on one line: `3 panels (3)`.
#[must_use]
pub fn counted_ring(say: &Words, count: u32, name: &str, ring: u32) -> Line {
    say.tell("counted-ring").count("count", count).name("name", name).ring("ring", ring).line()
}

/// Several such: `8 mats (2) and 8 rails (5)`.
#[must_use]
pub fn counted_rings(say: &Words, pieces: &[(u32, String, u32)]) -> Line {
    listed(say, pieces.iter().map(|(count, name, ring)| counted_ring(say, *count, name, *ring)).collect())
}

/// A small count in letters, so that it does not run into a measure that follows: `two`, `14`.
#[must_use]
pub fn counted_word(say: &Words, count: u32) -> String {
    say.tell("count-word").count("count", count).string()
}

/// `8 cards`.
#[must_use]
pub fn cards(say: &Words, count: u32) -> String {
    say.tell("cards").count("count", count).string()
}

/// `8 sheets`.
#[must_use]
pub fn sheets(say: &Words, count: u32) -> String {
    say.tell("sheets").count("count", count).string()
}

/// `2 leftovers`.
#[must_use]
pub fn leftovers(say: &Words, count: u32) -> String {
    say.tell("leftovers").count("count", count).string()
}

/// A name as several of it are called: `panels`.
#[must_use]
pub fn plural(say: &Words, name: &str) -> String {
    say.tell("plural").name("name", name).string()
}

/// Between the parts of a list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Between {
    /// `a, b and c`.
    And,
    /// `a, b or c`.
    Or,
    /// `a, b, c`.
    Comma,
    /// `a; b; c`.
    Semicolon,
    /// `a · b · c`.
    Dot,
    /// `a, then b, then c`.
    Then,
}

/// Parts as a list.
pub(super) fn joined(say: &Words, parts: Vec<Line>, between: Between) -> Line {
    let last = parts.len().saturating_sub(1);
    let join = |id: &str, before: &Line, next: &Line| say.tell(id).part("before", before).part("next", next).line();
    let mut line = Line::new();
    for (n, part) in parts.into_iter().enumerate() {
        line = match between {
            _ if n == 0 => part,
            Between::And if n == last => join("list-and", &line, &part),
            Between::Or if n == last => join("list-or", &line, &part),
            Between::Semicolon => join("list-semicolon", &line, &part),
            Between::Dot => join("list-dot", &line, &part),
            Between::Then => join("list-then", &line, &part),
            Between::And | Between::Or | Between::Comma => join("list-comma", &line, &part),
        };
    }
    line
}

/// The same of plain words.
pub(super) fn joined_words(say: &Words, parts: &[String], between: Between) -> String {
    joined(say, parts.iter().map(Line::plain).collect(), between).to_text()
}

/// `a, b and c`.
#[must_use]
pub fn listed(say: &Words, parts: Vec<Line>) -> Line {
    joined(say, parts, Between::And)
}

/// Joins strings as `a, b and c`.
#[must_use]
pub fn listed_words(say: &Words, parts: &[String]) -> String {
    joined_words(say, parts, Between::And)
}
