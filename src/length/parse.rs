//! How a length is read from what a designer types.
//!
//! Takes a text such as `4 1/4 in`, gives an exact length or says why it is none.

use super::{LARGEST_NM, Length, NM_PER_INCH, NM_PER_MM, Size, Unit};

/// What kind of fault a text has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LengthFault {
    /// A number without its unit.
    MissingUnit,
    /// Anything else.
    BadLength,
}

/// Why a text is no length.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LengthError {
    /// Whether only the unit is missing.
    pub kind: LengthFault,
    /// What is wrong, lower case, no full stop.
    pub fault: String,
    /// How to mend it, an imperative sentence with a number in it.
    pub help: String,
    /// What to write in the place of one part of the text, where that is known.
    pub instead: Option<Instead>,
}

/// One part of a text that is no length, and what to write in its place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Instead {
    /// What was typed.
    pub typed: String,
    /// What to write.
    pub with: &'static str,
    /// Whether nothing else can have been meant.
    pub certain: bool,
}

impl LengthError {
    /// The code of the finding: `missing-unit` or `bad-length`.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self.kind {
            LengthFault::MissingUnit => "missing-unit",
            LengthFault::BadLength => "bad-length",
        }
    }

    fn bad(fault: impl Into<String>, help: impl Into<String>) -> Self {
        Self { kind: LengthFault::BadLength, fault: fault.into(), help: help.into(), instead: None }
    }

    fn no_unit(number: &str) -> Self {
        Self {
            kind: LengthFault::MissingUnit,
            fault: format!("`{number}` has no unit"),
            help: format!("say `{number} in` or `{number} mm`"),
            instead: None,
        }
    }
}

/// An exact number as a fraction: `top / bottom`, both small enough for `i128` arithmetic.
#[derive(Clone, Copy)]
struct Number {
    top: i128,
    bottom: i128,
}

/// Digits past which no length can be meant.
const MOST_DIGITS: usize = 12;

/// Reads one length with its unit: `4 1/4 in`, `4-1/4"`, `4.25in`, `4¼ in`, `108 mm`, `10.8 cm`.
///
/// # Errors
/// A [`LengthError`] that says what is wrong and how to write it: no number, no unit, an unknown
/// unit, a negative length, a fraction of a nanometre, more than [`LARGEST_NM`].
pub fn parse_length(text: &str) -> Result<Length, LengthError> {
    let plain = plain_signs(text);
    match take_length(plain.trim())? {
        (number, Some(unit)) => exact(number, unit, text.trim()),
        (_, None) => Err(LengthError::no_unit(&shown(text.trim()))),
    }
}

/// Reads `width x height` with the unit once at the end, or at each: `4 1/4 x 5 1/2 in`,
/// `4 1/4" × 5 1/2"`.
///
/// # Errors
/// A [`LengthError`] as [`parse_length`] gives it, or for a text that is not two lengths.
pub fn parse_size(text: &str) -> Result<Size, LengthError> {
    let plain = plain_signs(text);
    let halves: Vec<&str> = plain.split(['x', 'X']).map(str::trim).collect();
    let &[width, height] = halves.as_slice() else {
        return Err(LengthError::bad(
            format!("`{}` is not a width and a height", shown(text.trim())),
            "say 2 lengths with an `x` between, such as `4 1/4 x 5 1/2 in`",
        ));
    };
    let (high, unit) = take_length(height)?;
    let Some(unit) = unit else { return Err(LengthError::no_unit(&shown(text.trim()))) };
    let (wide, own) = take_length(width)?;
    Ok(Size::new(exact(wide, own.unwrap_or(unit), width)?, exact(high, unit, height)?))
}

/// One spelling for each sign: plain spaces and hyphens, `x` for `×`, `"` for every inch mark.
fn plain_signs(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '\u{2044}' | '\u{2215}' => plain.push('/'),
            '\u{2010}' | '\u{2011}' | '\u{2012}' | '\u{2013}' | '\u{2212}' => plain.push('-'),
            '\u{d7}' => plain.push('x'),
            '\u{201c}' | '\u{201d}' | '\u{201f}' | '\u{2033}' => plain.push('"'),
            '\u{2019}' | '\u{2032}' => plain.push('\''),
            sign if sign.is_whitespace() => plain.push(' '),
            sign => plain.push(sign),
        }
    }
    plain
}

/// A number and, if one follows, its unit.
fn take_length(text: &str) -> Result<(Number, Option<Unit>), LengthError> {
    let text = text.trim();
    if text.starts_with('-') {
        return Err(LengthError::bad(
            format!("`{}` is negative", shown(text)),
            "say a length of 0 or more, such as `1/8 in`",
        ));
    }
    let end = text
        .char_indices()
        .find(|(_, sign)| !(sign.is_ascii_digit() || matches!(sign, '.' | '/' | '-' | ' ') || vulgar(*sign).is_some()))
        .map_or(text.len(), |(at, _)| at);
    let (number, unit) = (text[..end].trim(), text[end..].trim());
    if number.is_empty() {
        return Err(LengthError::bad(
            format!("`{}` is not a length", shown(text)),
            "say a number and its unit, such as `4 1/4 in` or `108 mm`",
        ));
    }
    let number = take_number(number, text)?;
    if unit.is_empty() {
        return Ok((number, None));
    }
    match unit.to_ascii_lowercase().as_str() {
        "in" | "in." | "inch" | "inches" | "\"" | "''" => Ok((number, Some(Unit::Inch))),
        "mm" | "mm." | "millimetre" | "millimetres" | "millimeter" | "millimeters" => {
            Ok((number, Some(Unit::Millimetre)))
        }
        "cm" | "cm." | "centimetre" | "centimetres" | "centimeter" | "centimeters" => {
            Ok((number, Some(Unit::Centimetre)))
        }
        other if other.starts_with(',') => Err(LengthError {
            instead: point(text, other),
            ..LengthError::bad(
                format!("`{}` has a comma in its number", shown(text)),
                "write a point, such as `10.5 cm`",
            )
        }),
        other => Err(misspelt(unit, other)),
    }
}

/// A point in place of a comma, where one or two digits follow it: three may be thousands.
fn point(text: &str, behind: &str) -> Option<Instead> {
    let digits = behind[1..].bytes().take_while(u8::is_ascii_digit).count();
    let one = text.matches(',').count() == 1;
    (one && digits > 0).then(|| Instead { typed: ",".to_owned(), with: ".", certain: digits < 3 })
}

/// The units that are spelt out, and what is written for them.
const SPELT: [(&str, &str); 8] = [
    ("inch", "in"),
    ("inches", "in"),
    ("millimetre", "mm"),
    ("millimetres", "mm"),
    ("centimetre", "cm"),
    ("centimetres", "cm"),
    ("millimeter", "mm"),
    ("centimeter", "cm"),
];

/// An unknown unit, with the known one that it is a slip of: one letter too many, too few, wrong or
/// exchanged. Units of two letters are too near to each other to guess.
fn misspelt(unit: &str, lower: &str) -> LengthError {
    let near = if lower.len() > 20 {
        None
    } else if matches!(lower, "ins" | "ins." | "inc" | "inch.") {
        Some("in")
    } else {
        SPELT.iter().find(|(word, _)| lower.len() > 3 && strsim::osa_distance(lower, word) == 1).map(|(_, sign)| *sign)
    };
    let help = match near {
        Some(sign) => format!("write `{sign}`, 1 of `in`, `mm` and `cm`"),
        None => "say it in `in`, `mm` or `cm`, such as `4 1/4 in` or `108 mm`".to_owned(),
    };
    LengthError {
        instead: near.map(|with| Instead { typed: unit.to_owned(), with, certain: true }),
        ..LengthError::bad(format!("`{}` is not a unit of length here", shown(unit)), help)
    }
}

/// `4`, `4.25`, `1/4`, `4 1/4`, `4-1/4`, `4¼`, `4 ¼`, `¼`. `whole` is the text it stands in.
fn take_number(number: &str, whole: &str) -> Result<Number, LengthError> {
    let bad = || {
        LengthError::bad(
            format!("`{}` is not a number", shown(number)),
            "say it as `4`, `4 1/4` or `4.25` and its unit, such as `4 1/4 in`",
        )
    };
    // A hyphen between the whole and its fraction is a space; a unicode fraction starts a word.
    let mut spaced = String::new();
    let mut sign_before = ' ';
    for sign in number.chars() {
        match (sign, vulgar(sign)) {
            (_, Some((top, bottom))) => spaced.push_str(&format!(" {top}/{bottom} ")),
            ('-', None) if sign_before.is_ascii_digit() => spaced.push(' '),
            ('-', None) => return Err(bad()),
            (sign, None) => spaced.push(sign),
        }
        sign_before = sign;
    }
    let spaced = spaced.replace(" /", "/").replace("/ ", "/");
    let words: Vec<&str> = spaced.split(' ').filter(|word| !word.is_empty()).collect();
    let (whole_part, fraction) = match words.as_slice() {
        [one] if one.contains('/') => (None, Some(*one)),
        [one] => (Some(*one), None),
        [whole, fraction] if fraction.contains('/') && !whole.contains(['/', '.']) => (Some(*whole), Some(*fraction)),
        _ => return Err(bad()),
    };
    if number.ends_with('-') {
        return Err(bad());
    }
    let base = match whole_part {
        Some(part) => decimal(part, whole)?.ok_or_else(bad)?,
        None => Number { top: 0, bottom: 1 },
    };
    let Some(fraction) = fraction else { return Ok(base) };
    let (top, bottom) = fraction.split_once('/').ok_or_else(bad)?;
    let (top, bottom) = (digits(top, whole)?.ok_or_else(bad)?, digits(bottom, whole)?.ok_or_else(bad)?);
    if bottom == 0 {
        return Err(LengthError::bad(
            format!("`{}` divides by nothing", shown(fraction)),
            "say a fraction such as `1/8` of an inch",
        ));
    }
    if top >= bottom {
        let rest = if top % bottom == 0 { String::new() } else { format!(" {}/{bottom}", top % bottom) };
        let sum = base.top + top / bottom;
        return Err(LengthError::bad(
            format!("the fraction `{}` is not less than 1", shown(fraction)),
            format!("say `{sum}{rest}`, or look for a space missing between the whole and its fraction"),
        ));
    }
    Ok(Number { top: base.top * bottom + top, bottom })
}

/// Digits with at most one point.
fn decimal(text: &str, whole: &str) -> Result<Option<Number>, LengthError> {
    let (before, after) = match text.split_once('.') {
        Some((_, "")) => return Ok(None),
        Some((before, after)) => (if before.is_empty() { "0" } else { before }, after.trim_end_matches('0')),
        None => (text, ""),
    };
    let Some(units) = digits(before, whole)? else { return Ok(None) };
    if after.is_empty() {
        return Ok(Some(Number { top: units, bottom: 1 }));
    }
    let Some(parts) = digits(after, whole)? else { return Ok(None) };
    let bottom = (0..after.len()).fold(1_i128, |bottom, _| bottom * 10);
    Ok(Some(Number { top: units * bottom + parts, bottom }))
}

fn digits(text: &str, whole: &str) -> Result<Option<i128>, LengthError> {
    if text.is_empty() || !text.bytes().all(|sign| sign.is_ascii_digit()) {
        return Ok(None);
    }
    if text.len() > MOST_DIGITS {
        return Err(LengthError::bad(
            format!("`{}` has more than {MOST_DIGITS} digits in a row", shown(whole)),
            "say a length of at most 100 m",
        ));
    }
    Ok(text.parse().ok())
}

fn exact(number: Number, unit: Unit, text: &str) -> Result<Length, LengthError> {
    let per = i128::from(match unit {
        Unit::Inch => NM_PER_INCH,
        Unit::Millimetre => NM_PER_MM,
        Unit::Centimetre => 10 * NM_PER_MM,
    });
    let scaled = number.top * per;
    if scaled > i128::from(LARGEST_NM) * number.bottom {
        return Err(LengthError::bad(
            format!("`{}` is longer than any sheet", shown(text)),
            "say a length of at most 100 m",
        ));
    }
    if scaled % number.bottom != 0 {
        return Err(LengthError::bad(
            format!("`{}` is no whole number of nanometres", shown(text)),
            match unit {
                Unit::Inch => "say it in 64ths or thousandths of an inch, such as `5/16 in` or `0.333 in`",
                Unit::Millimetre | Unit::Centimetre => "say it in hundredths of a millimetre, such as `8.47 mm`",
            },
        ));
    }
    let nm = i64::try_from(scaled / number.bottom).unwrap_or(LARGEST_NM);
    Ok(Length::new(nm, unit))
}

/// The fractions that have a sign of their own.
pub(super) const fn vulgar(sign: char) -> Option<(i64, i64)> {
    Some(match sign {
        '¼' => (1, 4),
        '½' => (1, 2),
        '¾' => (3, 4),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        _ => return None,
    })
}

/// At most forty characters of what was typed.
fn shown(text: &str) -> String {
    let mut short: String = text.chars().take(40).collect();
    if short.len() < text.len() {
        short.push_str("...");
    }
    short
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn nm(text: &str) -> i64 {
        parse_length(text).unwrap_or_else(|error| panic!("{text}: {}", error.fault)).nm()
    }

    /// 1 in = 25.4 mm exactly: international yard and pound agreement, 1 July 1959.
    #[test]
    fn an_inch_is_25_4_mm() {
        assert_eq!(nm("1 in"), nm("25.4 mm"));
        assert_eq!(nm("1 in"), nm("2.54 cm"));
        assert_eq!(nm("1/64 in"), 396_875);
        // Exact products of that definition.
        for (inch, mm) in
            [("1/16 in", "1.5875 mm"), ("4 1/4 in", "107.95 mm"), ("4 7/8 in", "123.825 mm"), ("12 in", "304.8 mm")]
        {
            assert_eq!(nm(inch), nm(mm), "{inch}");
        }
    }

    /// Products printed before rounding in NIST SP 811 B.7.2 (36 ft = 10.9728 m) and NIST LC 1137
    /// (36 in = 91.44 cm, 40.1 in = 101.854 cm).
    #[test]
    fn published_products_are_exact() {
        assert_eq!(nm("432 in"), nm("10972.8 mm"));
        assert_eq!(nm("36 in"), nm("91.44 cm"));
        assert_eq!(nm("40.1 in"), nm("101.854 cm"));
    }

    #[test]
    fn every_spelling_of_four_and_a_quarter() {
        for text in [
            "4 1/4 in",
            "4-1/4\"",
            "4.25in",
            "4¼ in",
            "4 ¼\"",
            "4\u{a0}1/4\u{a0}in",
            "4\u{2009}1/4 in.",
            "4 1\u{2044}4 inches",
            "4 1/4\u{201d}",
            "4 1/4\u{2033}",
            "4.250 inch",
            "4\u{2011}1/4 IN",
            "4 1/4''",
            "  4 2/8 in ",
            "107.95 mm",
            "10.795cm",
        ] {
            assert_eq!(nm(text), 107_950_000, "{text}");
        }
        assert_eq!(nm("¼ in"), nm(".25 in"));
        assert_eq!(nm("0 in"), 0);
    }

    #[test]
    fn a_size_names_the_unit_once_or_twice() {
        let size = Size::new(Length::inch(17, 4), Length::inch(11, 2));
        for text in [
            "4 1/4 x 5 1/2 in",
            "4¼ × 5½ in",
            "4 1/4\" x 5 1/2\"",
            "4.25x5.5in",
            "4-1/4 in \u{d7} 5-1/2 in",
            "4 1/4 X 5 1/2 inches",
        ] {
            assert_eq!(parse_size(text).unwrap(), size, "{text}");
        }
        assert_eq!(parse_size("105 x 148 mm").unwrap(), Size::new(Length::mm(105), Length::mm(148)));
        assert_eq!(parse_size("10.5 cm x 148 mm").unwrap(), Size::new(Length::mm(105), Length::mm(148)));
    }

    #[test]
    fn what_is_no_length() {
        for text in ["4", "4 1/4", "4.25", "¾"] {
            assert_eq!(parse_length(text).unwrap_err().kind, LengthFault::MissingUnit, "{text}");
        }
        for text in ["4 x 5", "4 in x 5", "4 1/4 x 5 1/2"] {
            assert_eq!(parse_size(text).unwrap_err().kind, LengthFault::MissingUnit, "{text}");
        }
        for text in [
            "",
            " ",
            "in",
            "x",
            "1/0 in",
            "1/3 in",
            "⅓ in",
            "-1/8 in",
            "\u{2212}4 in",
            "4 5/4 in",
            "41/4 in",
            "4 1/4 ft",
            "4 1/4 pt",
            "1.2.3 mm",
            "4. in",
            "1 2 3 in",
            "1 2 in",
            "4- in",
            "4--1/4 in",
            "1/2/3 in",
            "4,25 in",
            "99999999999999999999999 in",
            "100001 m",
            "100.001 cm mm",
            "10000000 cm",
            "0.0000001 mm",
            "4.5 1/4 in",
            "1e3 mm",
            "١ in",
            "four in",
        ] {
            assert_eq!(parse_length(text).unwrap_err().kind, LengthFault::BadLength, "{text}");
        }
        for text in ["4 in", "4 x 5 x 6 in", "x in", "4 x in", "4 x -5 in", "4 in by 5 in"] {
            assert_eq!(parse_size(text).unwrap_err().kind, LengthFault::BadLength, "{text}");
        }
        assert_eq!(nm("100000 mm"), LARGEST_NM);
        assert!(parse_length("100000.01 mm").is_err());
    }

    /// Every length that prints exactly: 64ths and ten thousandths of an inch, whole micrometres.
    fn printable() -> impl Strategy<Value = Length> {
        prop_oneof![
            (0..=250_000_i64).prop_map(|parts| Length::new(parts * 396_875, Unit::Inch)),
            (0..=39_000_000_i64).prop_map(|parts| Length::new(parts * 2_540, Unit::Inch)),
            (0..=LARGEST_NM / 1000).prop_map(|parts| Length::new(parts * 1000, Unit::Millimetre)),
            (0..=LARGEST_NM / 1000).prop_map(|parts| Length::new(parts * 1000, Unit::Centimetre)),
        ]
    }

    proptest! {
        #![proptest_config(ProptestConfig {
            failure_persistence: None,
            rng_seed: proptest::test_runner::RngSeed::Fixed(1),
            ..ProptestConfig::default()
        })]

        #[test]
        fn what_is_printed_reads_back(length in printable()) {
            let read = parse_length(&length.to_string()).unwrap();
            prop_assert_eq!(read, length);
            prop_assert_eq!(read.unit(), length.unit());
        }

        #[test]
        fn a_printed_size_reads_back(width in printable(), height in printable()) {
            let size = Size::new(width, height);
            let read = parse_size(&size.to_string()).unwrap();
            prop_assert_eq!(read, size);
            prop_assert_eq!((read.width.unit(), read.height.unit()), (width.unit(), height.unit()));
        }

        #[test]
        fn no_text_panics(text in any::<String>()) {
            let _ = (parse_length(&text), parse_size(&text));
        }

        #[test]
        fn no_likely_text_panics(text in "[0-9 ./¼⅓x×\"in mc,-]{0,40}") {
            if let Ok(length) = parse_length(&text) {
                prop_assert!((0..=LARGEST_NM).contains(&length.nm()));
            }
            let _ = parse_size(&text);
        }
    }
}
