//! Numbers in a line of a design: found, changed by a little or by much, and written back.

use crate::support::dice::Dice;
use std::ops::Range;

/// What a number counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Unit {
    Inch,
    Millimetre,
    Degree,
    /// Things: sheets, cards, columns.
    None,
}

/// A number as it stands in a line: `1 3/4`, `3/8`, `12`, `12.5`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Number {
    pub(crate) at: Range<usize>,
    pub(crate) unit: Unit,
    /// Numerator and denominator.
    value: (i64, i64),
}

impl Number {
    /// In millimetres, for comparing.
    pub(crate) fn millimetres(&self) -> f64 {
        let value = self.value.0 as f64 / self.value.1 as f64;
        if self.unit == Unit::Inch { value * 25.4 } else { value }
    }
}

/// Every number of a line that is not part of a word.
pub(crate) fn numbers(line: &str) -> Vec<Number> {
    let bytes = line.as_bytes();
    let digits = |from: usize| from + bytes[from..].iter().take_while(|byte| byte.is_ascii_digit()).count();
    let mut found = Vec::new();
    let mut at = 0;
    while at < bytes.len() {
        let inside = at > 0 && (bytes[at - 1].is_ascii_alphanumeric() || bytes[at - 1] == b'-');
        if !bytes[at].is_ascii_digit() || inside {
            at += 1;
            continue;
        }
        let whole = digits(at);
        let mut end = whole;
        let first: i64 = line[at..whole].parse().unwrap_or(0);
        let mut value = (first, 1);
        let fraction = |from: usize| -> Option<(i64, i64, usize)> {
            let slash = digits(from);
            (slash > from && bytes.get(slash) == Some(&b'/')).then_some(())?;
            let stop = digits(slash + 1);
            let (over, under) = (line[from..slash].parse().ok()?, line[slash + 1..stop].parse().ok()?);
            (under > 0).then_some((over, under, stop))
        };
        if let Some((over, under, stop)) = fraction(at) {
            (value, end) = ((over, under), stop);
        } else if let Some((over, under, stop)) =
            bytes.get(whole).filter(|b| **b == b' ').and_then(|_| fraction(whole + 1))
        {
            (value, end) = ((first * under + over, under), stop);
        } else if bytes.get(whole) == Some(&b'.') && digits(whole + 1) > whole + 1 {
            end = digits(whole + 1);
            let tenths = 10_i64.pow(u32::try_from(end - whole - 1).unwrap_or(1).min(9));
            let under: i64 = line[whole + 1..end].parse().unwrap_or(0);
            value = (first * tenths + under, tenths);
        }
        found.push(Number { at: at..end, unit: unit_after(&line[end..]), value });
        at = end;
    }
    found
}

/// The unit that stands behind a number, as far as it is its own.
fn unit_after(rest: &str) -> Unit {
    if [" of ", " evenly", " times", ":"].iter().any(|word| rest.starts_with(word)) {
        return Unit::None;
    }
    let own = rest.split(['|', ',', '}', ']', '#']).next().unwrap_or("");
    let word = own.split_whitespace().find(|word| matches!(*word, "in" | "mm" | "degrees"));
    match word {
        Some("in") => Unit::Inch,
        Some("mm") => Unit::Millimetre,
        Some(_) => Unit::Degree,
        None => Unit::None,
    }
}

/// How a number is broken.
pub(crate) const WAYS: [&str; 6] =
    ["one step up", "one step down", "doubled", "halved", "digits swapped", "other unit"];

/// The line with one number broken; none where that way does not suit it.
pub(crate) fn broken(line: &str, number: &Number, way: &str, dice: &mut Dice) -> Option<String> {
    let old = &line[number.at.clone()];
    let (over, under) = number.value;
    // A step is a sixteenth of an inch, a millimetre, a degree or one thing.
    let (step_over, step_under) = if number.unit == Unit::Inch { (1, 16) } else { (1, 1) };
    let stepped = |sign: i64| (over * step_under + sign * step_over * under, under * step_under);
    let (over, under) = match way {
        "one step up" => stepped(1),
        "one step down" => stepped(-1),
        "doubled" => (over * 2, under),
        "halved" if number.unit == Unit::None && over % 2 != 0 => return None,
        "halved" => (over, under * 2),
        "digits swapped" => {
            let bytes = old.as_bytes();
            let pairs: Vec<usize> = (1..bytes.len())
                .filter(|&n| bytes[n - 1].is_ascii_digit() && bytes[n].is_ascii_digit() && bytes[n - 1] != bytes[n])
                .collect();
            let &place = pairs.get(dice.of(pairs.len()))?;
            let mut swapped = old.to_owned().into_bytes();
            swapped.swap(place - 1, place);
            return Some(put(line, &number.at, &String::from_utf8(swapped).ok()?));
        }
        _ => {
            let (own, other) = match number.unit {
                Unit::Inch => ("in", "mm"),
                Unit::Millimetre => ("mm", "in"),
                Unit::Degree | Unit::None => return None,
            };
            let at = number.at.end + line[number.at.end..].find(&format!(" {own}"))? + 1;
            return Some(put(line, &(at..at + own.len()), other));
        }
    };
    (over >= 0).then(|| put(line, &number.at, &written((over, under), number.unit)))
}

fn written((over, under): (i64, i64), unit: Unit) -> String {
    let shared = (1..=under).rev().find(|n| over % n == 0 && under % n == 0).unwrap_or(1);
    let (over, under) = (over / shared, under / shared);
    match (over / under, over % under) {
        (whole, 0) => whole.to_string(),
        (_, _) if unit != Unit::Inch => (over as f64 / under as f64).to_string(),
        (0, rest) => format!("{rest}/{under}"),
        (whole, rest) => format!("{whole} {rest}/{under}"),
    }
}

/// The line with other words in a place.
pub(crate) fn put(line: &str, at: &Range<usize>, words: &str) -> String {
    format!("{}{words}{}", &line[..at.start], &line[at.end..])
}

#[test]
fn mutants_numbers_are_read_and_written() {
    let line = "    size: 4 1/4 x 5 1/2 in | 105 x 148.5 mm, 3 times A4";
    let found: Vec<(&str, Unit)> = numbers(line).iter().map(|n| (&line[n.at.clone()], n.unit)).collect();
    let (inch, mm) = (Unit::Inch, Unit::Millimetre);
    assert_eq!(found, [("4 1/4", inch), ("5 1/2", inch), ("105", mm), ("148.5", mm), ("3", Unit::None)]);
    let first = &numbers(line)[0];
    for (way, now) in
        [("one step up", "4 5/16"), ("one step down", "4 3/16"), ("doubled", "8 1/2"), ("halved", "2 1/8")]
    {
        let line = broken(line, first, way, &mut Dice::new(1)).unwrap();
        assert!(line.starts_with(&format!("    size: {now} x 5 1/2 in |")), "{line}");
    }
    assert!((first.millimetres() - 107.95).abs() < 1e-9);
}
