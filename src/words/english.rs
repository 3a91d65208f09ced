//! The English catalogue.
//!
//! Present tense, one action a sentence, the trade's plain words. Measures inside a sentence have
//! no unit (the page states it once) unless a function says otherwise.

pub mod check;
pub mod cutting;
pub mod figures;
pub mod finishing;
pub mod laying;
pub mod making;
pub mod pages;
pub mod places;
pub mod post;
pub mod sizes;
pub mod stock;
pub mod variants;

use super::Line;

/// A count and a name: `1 panel`, `3 panels`.
#[must_use]
pub fn counted(count: u32, name: &str) -> String {
    format!("{count} {}", if count == 1 { name.to_owned() } else { plural(name) })
}

/// A count, a name and a ring that stay on one line: `3 panels (3)`.
#[must_use]
pub fn counted_ring(count: u32, name: &str, ring: u32) -> Line {
    Line::plain(format!("{}{KEPT}", counted(count, name).replacen(' ', KEPT, 1))).ring(ring)
}

/// A small count in letters, so that it does not run into a measure that follows: `two`, `14`.
#[must_use]
pub fn counted_word(count: u32) -> String {
    const WORDS: [&str; 13] =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
    usize::try_from(count)
        .ok()
        .and_then(|count| WORDS.get(count))
        .map_or_else(|| count.to_string(), ToString::to_string)
}

/// A space that no line breaks at.
pub const KEPT: &str = "\u{a0}";

/// The plural of a piece's name, by the regular rules of English.
#[must_use]
pub fn plural(name: &str) -> String {
    const IRREGULAR: [(&str, &str); 6] = [
        ("leaf", "leaves"),
        ("half", "halves"),
        ("shelf", "shelves"),
        ("foot", "feet"),
        ("paper", "papers"),
        ("mouse", "mice"),
    ];
    // "mat for a photo": "mats for a photo".
    if let Some((head, rest)) = name.split_once(" for ") {
        return format!("{} for {rest}", plural(head));
    }
    let lower = name.to_lowercase();
    for (one, many) in IRREGULAR {
        if lower.ends_with(one) {
            return format!("{}{many}", &name[..name.len() - one.len()]);
        }
    }
    let ends = |tail: &[&str]| tail.iter().any(|t| lower.ends_with(t));
    if ends(&["s", "x", "z", "ch", "sh"]) {
        format!("{name}es")
    } else if lower.ends_with('y') && !ends(&["ay", "ey", "iy", "oy", "uy"]) {
        format!("{}ies", &name[..name.len() - 1])
    } else {
        format!("{name}s")
    }
}

/// A name with a capital at its start.
#[must_use]
pub fn capital(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// `a, b and c`.
#[must_use]
pub fn listed(parts: Vec<Line>) -> Line {
    let count = parts.len();
    let mut line = Line::new();
    for (n, part) in parts.into_iter().enumerate() {
        if n > 0 {
            line = line.text(if n + 1 == count { " and " } else { ", " });
        }
        line = line.then(part);
    }
    line
}

/// Joins strings as `a, b and c`.
#[must_use]
pub fn listed_words(parts: &[String]) -> String {
    match parts {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plurals() {
        for (one, many) in [
            ("panel", "panels"),
            ("box", "boxes"),
            ("daisy", "daisies"),
            ("tray", "trays"),
            ("leaf", "leaves"),
            ("arch", "arches"),
        ] {
            assert_eq!(plural(one), many);
        }
        assert_eq!(counted(1, "mat"), "1 mat");
        assert_eq!(capital("ögd"), "Ögd");
    }
}
