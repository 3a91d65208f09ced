//! Lengths in a longer text, such as `mat less left 1/4 in, top 1 in` or `2 of 4 x 5 in`.

use super::parse::vulgar;
use super::{Length, parse_length};
use std::ops::Range;

/// A length in a longer text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// Where its number stands, the unit left out.
    pub number: Range<usize>,
    /// The length.
    pub length: Length,
}

/// Every length of a text, in order; both of `4 x 5 in`. What has no unit, or cannot be read, is passed over.
#[must_use]
pub fn lengths_in(text: &str) -> Vec<Found> {
    let mut found = Vec::new();
    // Numbers that wait for the unit behind the next one.
    let mut waiting: Vec<Range<usize>> = Vec::new();
    let mut at = 0;
    while let Some(number) = next_number(text, at) {
        let behind = &text[number.end..];
        let unit = unit_of(behind);
        at = number.end;
        match unit {
            Some(unit) => {
                for number in waiting.drain(..).chain([number]) {
                    if let Ok(length) = parse_length(&format!("{} {unit}", &text[number.clone()])) {
                        found.push(Found { number, length });
                    }
                }
            }
            None => {
                waiting.clear();
                let rest = behind.trim_start();
                let between = rest.strip_prefix(['x', 'X', '\u{d7}']).map(str::trim_start);
                if between.is_some_and(|next| next.starts_with(starts_number)) {
                    waiting.push(number);
                }
            }
        }
    }
    found
}

fn starts_number(sign: char) -> bool {
    sign.is_ascii_digit() || vulgar(sign).is_some()
}

/// A sign inside a number: digits, a point, a fraction, a space before the fraction.
fn in_number(sign: char) -> bool {
    starts_number(sign)
        || matches!(sign, '.' | '/' | '-' | '\u{2044}' | '\u{2215}' | '\u{2010}'..='\u{2012}')
        || (sign.is_whitespace() && sign != '\n')
}

/// The next number from a byte on that is no part of a word.
fn next_number(text: &str, from: usize) -> Option<Range<usize>> {
    let mut before = text[..from].chars().next_back();
    for (offset, sign) in text[from..].char_indices() {
        let free =
            !before.is_some_and(|sign| sign.is_alphanumeric() || matches!(sign, '-' | '/' | '.' | ',' | '\u{2212}'));
        // In `4x5 in` the second number follows a sign that stands between.
        let crossed = before.is_some_and(|sign| matches!(sign, 'x' | 'X'))
            && text[..from + offset].trim_end_matches(['x', 'X']).ends_with(|sign: char| starts_number(sign));
        if starts_number(sign) && (free || crossed) {
            let start = from + offset;
            let end = text[start..].find(|sign| !in_number(sign)).map_or(text.len(), |end| start + end);
            let end = start + text[start..end].trim_end_matches(|sign| !starts_number(sign)).len();
            return Some(start..end);
        }
        before = Some(sign);
    }
    None
}

/// The unit that a text starts with.
fn unit_of(behind: &str) -> Option<&str> {
    let rest = behind.trim_start();
    let end = rest.find(|sign: char| !sign.is_alphabetic()).unwrap_or(rest.len());
    let word = &rest[..end];
    let marks = ["''", "\"", "\u{201d}", "\u{2033}"];
    if word.is_empty() {
        return marks.into_iter().find(|mark| rest.starts_with(mark)).map(|mark| &rest[..mark.len()]);
    }
    parse_length(&format!("1 {word}")).is_ok().then_some(word)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(text: &str) -> Vec<(&str, String)> {
        lengths_in(text).into_iter().map(|found| (&text[found.number], found.length.to_string())).collect()
    }

    #[test]
    fn lengths_stand_where_their_numbers_do() {
        let pair = |number, length: &str| (number, length.to_owned());
        assert_eq!(
            told("mat less left 1/4 in | 6 mm, top 1 in"),
            [pair("1/4", "1/4 in"), pair("6", "6 mm"), pair("1", "1 in")]
        );
        assert_eq!(told("2 of 4-1/4 \u{d7} 5¼\""), [pair("4-1/4", "4 1/4 in"), pair("5¼", "5 1/4 in")]);
        assert_eq!(told("4x5 in"), [pair("4", "4 in"), pair("5", "5 in")]);
        assert_eq!(told("1 in from the left, 2 times"), [pair("1", "1 in")]);
        assert_eq!(told("share of mat 2, 3 evenly with gap 10.5 cm"), [pair("10.5", "10.5 cm")]);
        assert_eq!(told("2 of A4, 80 lb cover, 18 degrees, 4 x 5, 2026-11, -1/8 in, 4 inside"), []);
    }
}
