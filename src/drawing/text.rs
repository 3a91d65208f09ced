//! How a figure's text is set, and exactly how wide it is.
//!
//! A fraction `3/4` is set as a true fraction, `3 3/4` with a thin space before it, `×` with a
//! little room on either side. Kerning is off in figures, so widths are sums of advances and every
//! writer agrees on them.

use super::scene::Lettering;
use super::style;
use crate::fonts::metrics::{advance, face};
use serde::Serialize;

/// Nanometres in a tenth of a typographic point (1 pt = 1/72 in), times 9 to stay whole.
const NM_PER_TENTH_POINT_X9: i64 = 317_500;
/// Advance of a numerator or denominator digit, thousandths of an em: the text face's own `numr`
/// and `dnom` digits.
pub const FRACTION_DIGIT: i64 = 380;
/// Size of a whole digit that is as wide as a fraction's, thousandths of the text's size.
pub const FRACTION_SIZE: i64 = 633;
/// How far a numerator is raised, thousandths of an em.
pub const NUMERATOR_RISE: i64 = 259;
/// Size of the thin space before a fraction, thousandths of the text's size.
pub const THIN_SIZE: i64 = 300;
/// Room on either side of a `×`, thousandths of an em.
pub const TIMES_ROOM: i64 = 180;
/// The thin space.
pub const THIN: char = '\u{2009}';
/// The fraction's slash.
pub const SLASH: char = '\u{2044}';

/// A stretch of text that is set in one way.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "run", rename_all = "kebab-case")]
pub enum Run {
    /// As it stands.
    Plain {
        /// The characters.
        text: String,
    },
    /// The thin space between a whole number and its fraction.
    Thin,
    /// A true fraction.
    Fraction {
        /// Above the slash.
        numerator: String,
        /// Below the slash.
        denominator: String,
    },
    /// `×` with its room; the spaces round it are part of it.
    Times,
}

/// Splits a figure text into runs.
#[must_use]
pub fn runs(text: &str) -> Vec<Run> {
    let mut found: Vec<Run> = Vec::new();
    let mut plain = String::new();
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        if let Some(after) = rest.strip_prefix(" × ") {
            flush(&mut plain, &mut found);
            found.push(Run::Times);
            rest = after;
        } else if let Some((numerator, denominator, after)) = leading_fraction(rest, plain.chars().last()) {
            let joined = plain.ends_with(' ') && plain.trim_end().ends_with(|c: char| c.is_ascii_digit());
            if joined {
                plain.truncate(plain.trim_end().len());
            }
            flush(&mut plain, &mut found);
            if joined {
                found.push(Run::Thin);
            }
            found.push(Run::Fraction { numerator: numerator.to_owned(), denominator: denominator.to_owned() });
            rest = after;
        } else {
            plain.push(first);
            rest = &rest[first.len_utf8()..];
        }
    }
    flush(&mut plain, &mut found);
    found
}

fn flush(plain: &mut String, found: &mut Vec<Run>) {
    if !plain.is_empty() {
        found.push(Run::Plain { text: std::mem::take(plain) });
    }
}

/// `3/4` at the start of `text`, not part of a longer number or a date.
fn leading_fraction(text: &str, before: Option<char>) -> Option<(&str, &str, &str)> {
    if before.is_some_and(|c| c.is_alphanumeric() || matches!(c, '/' | '.' | ',')) {
        return None;
    }
    let digits = |text: &str| text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let slash = digits(text);
    let tail = text[slash..].strip_prefix('/')?;
    let end = digits(tail);
    if slash == 0 || end == 0 || tail[end..].starts_with(|c: char| c.is_alphanumeric() || c == '/') {
        return None;
    }
    Some((&text[..slash], &tail[..end], &tail[end..]))
}

/// Thousandths of an em at a size in tenths of a point, as nanometres, rounded half up.
#[must_use]
pub const fn em(thousandths: i64, tenths_of_point: i64) -> i64 {
    let nm_x9000 = thousandths * tenths_of_point * NM_PER_TENTH_POINT_X9;
    (nm_x9000 * 2 + 9000).div_euclid(18_000)
}

fn thousandths(lettering: Lettering, run: &Run) -> i64 {
    let letters = style::letters(lettering);
    let plain = |text: &str| advance(letters.family, letters.weight, text);
    match run {
        Run::Plain { text } => plain(text),
        Run::Thin => plain("\u{2009}") * THIN_SIZE / 1000,
        Run::Fraction { numerator, denominator } => {
            let digits = i64::try_from(numerator.len() + denominator.len()).unwrap_or(0);
            digits * FRACTION_DIGIT + plain("\u{2044}")
        }
        Run::Times => plain("×") + 2 * TIMES_ROOM,
    }
}

/// Each run with its start, nm from the start of the text.
#[must_use]
pub fn placed(lettering: Lettering, text: &str) -> Vec<(i64, Run)> {
    let size = style::letters(lettering).tenths_of_point;
    let mut start = 0;
    runs(text)
        .into_iter()
        .map(|run| {
            let at = em(start, size);
            start += thousandths(lettering, &run);
            (at, run)
        })
        .collect()
}

/// Width of a text, nm.
#[must_use]
pub fn width(lettering: Lettering, text: &str) -> i64 {
    let total = runs(text).iter().map(|run| thousandths(lettering, run)).sum();
    em(total, style::letters(lettering).tenths_of_point)
}

/// Height of its capitals and digits, nm: what a label is centred by.
#[must_use]
pub fn cap_height(lettering: Lettering) -> i64 {
    let letters = style::letters(lettering);
    let cap = face(letters.family, letters.weight)
        .map_or(700, |face| i64::from(face.capital_height().unwrap_or(700)) * 1000 / i64::from(face.units_per_em()));
    em(cap, letters.tenths_of_point)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fonts;

    fn fraction(numerator: &str, denominator: &str) -> Run {
        Run::Fraction { numerator: numerator.into(), denominator: denominator.into() }
    }

    #[test]
    fn a_size_splits_into_wholes_fractions_and_times() {
        let plain = |text: &str| Run::Plain { text: text.into() };
        assert_eq!(
            runs("4 1/4 × 5 1/2 in"),
            [
                plain("4"),
                Run::Thin,
                fraction("1", "4"),
                Run::Times,
                plain("5"),
                Run::Thin,
                fraction("1", "2"),
                plain(" in")
            ]
        );
        assert_eq!(runs("borders 1/8"), [plain("borders "), fraction("1", "8")]);
        assert_eq!(runs("1/2/3"), [plain("1/2/3")]);
        assert_eq!(runs("and/or 1.5/2"), [plain("and/or 1.5/2")]);
    }

    #[test]
    fn fraction_digits_are_as_wide_as_the_faces_own() {
        // Reference: the advances that the bundled text face itself gives its `numr` and `dnom`
        // digits, read with ttf-parser.
        let face = face(fonts::TEXT, 400).unwrap();
        for name in ["one.numr", "eight.dnom"] {
            let glyph = face.glyph_index_by_name(name).unwrap();
            assert_eq!(i64::from(face.glyph_hor_advance(glyph).unwrap()), FRACTION_DIGIT);
        }
        // 0.6 + 0.3 * 0.2 + 2 * 0.38 + 0.173 em at 11 pt.
        assert_eq!(width(Lettering::Figure, "3 3/4"), em(600 + 60 + 760 + 173, 110));
        // 11 pt = 11/72 in.
        assert_eq!(em(1000, 110), (11 * 25_400_000 + 36) / 72);
    }
}
