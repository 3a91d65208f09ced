//! How rings, measures and other marked runs travel through a message, and out of it again.
//!
//! Takes [`Line`]s and data of a design, gives text in which a run stands between two private-use
//! characters; takes such text apart. Such characters in the data are escaped, so that a name stays a name.

use super::{Inline, Line};

/// Opens words that carry weight.
const STRONG: char = '\u{10f700}';
/// Closes them.
const PLAIN: char = '\u{10f701}';
/// Opens a measure.
const MEASURE: char = '\u{10f702}';
/// Opens a ring.
const RING: char = '\u{10f703}';
/// Opens a leftover's number.
const LEFTOVER: char = '\u{10f704}';
/// Opens a cut.
const CUT: char = '\u{10f705}';
/// Closes what one of these four opens.
const END: char = '\u{10f706}';
/// Before a character of the data that would be read as one of these, or as the end of a written line.
const ESCAPE: char = '\u{10f707}';
/// Opens the plural of the name before it, which is not printed.
const MANY: char = '\u{10f708}';
/// Closes it.
const MANY_END: char = '\u{10f709}';
/// How far from such a character its escaped form stands.
const ASIDE: u32 = 0x20;

/// What the signs of a catalogue's file stand for: `~` is a space that no line breaks at, `<strong>` and
/// `</strong>` stand round words that carry weight.
pub(super) fn read_signs(file: &str) -> String {
    file.lines()
        .map(|line| {
            if line.starts_with('#') {
                return format!("{line}\n");
            }
            let line = line.replace('~', super::KEPT);
            let line = line.replace("<strong>", &STRONG.to_string()).replace("</strong>", &PLAIN.to_string());
            format!("{line}\n")
        })
        .collect()
}

/// Data as it goes into a message.
pub(super) fn escaped(data: &str) -> String {
    let mut text = String::with_capacity(data.len());
    for letter in data.chars() {
        match letter {
            '\n' => text.extend([ESCAPE, 'n']),
            STRONG..=MANY_END => {
                text.push(ESCAPE);
                text.extend(char::from_u32(u32::from(letter) + ASIDE));
            }
            letter => text.push(letter),
        }
    }
    text
}

/// A name whose plural is known.
pub(super) fn named(one: &str, many: &str) -> String {
    format!("{}{MANY}{}{MANY_END}", escaped(one), escaped(many))
}

/// The plural of such a name.
pub(super) fn many(name: &str) -> Option<&str> {
    let (_, many) = name.split_once(MANY)?;
    many.strip_suffix(MANY_END)
}

/// A measure as it goes into a message.
pub(super) fn measure(text: &str) -> String {
    format!("{MEASURE}{}{END}", escaped(text))
}

/// A ring as it goes into a message.
pub(super) fn ring(ring: u32) -> String {
    format!("{RING}{ring}{END}")
}

/// A leftover's number as it goes into a message.
pub(super) fn leftover(number: u32) -> String {
    format!("{LEFTOVER}{number}{END}")
}

/// A cut's number as it goes into a message.
pub(super) fn cut(cut: &str) -> String {
    format!("{CUT}{}{END}", escaped(cut))
}

/// A line as it goes into a message.
pub(super) fn line(line: &Line) -> String {
    line.0
        .iter()
        .map(|part| match part {
            Inline::Text(text) => escaped(text),
            Inline::Strong(text) => format!("{STRONG}{}{PLAIN}", escaped(text)),
            Inline::Measure(text) => measure(text),
            Inline::Ring(number) => ring(*number),
            Inline::Leftover(number) => leftover(*number),
            Inline::Cut(text) => cut(text),
        })
        .collect()
}

/// The line that a formatted message holds. A line end of the file is a space.
pub(super) fn apart(text: &str) -> Line {
    let mut line = Line::new();
    let mut run = String::new();
    let mut strong = false;
    let mut marked = None;
    let mut letters = text.chars();
    let close = |line: &mut Line, run: &mut String, strong: bool| {
        if !run.is_empty() {
            let text = std::mem::take(run);
            line.0.push(if strong { Inline::Strong(text) } else { Inline::Text(text) });
        }
    };
    while let Some(letter) = letters.next() {
        match letter {
            STRONG | PLAIN => {
                close(&mut line, &mut run, strong);
                strong = letter == STRONG;
            }
            MEASURE | RING | LEFTOVER | CUT => {
                close(&mut line, &mut run, strong);
                marked = Some(letter);
            }
            END => {
                let text = std::mem::take(&mut run);
                line.0.push(match marked.take() {
                    Some(RING) => Inline::Ring(text.parse().unwrap_or_default()),
                    Some(LEFTOVER) => Inline::Leftover(text.parse().unwrap_or_default()),
                    Some(CUT) => Inline::Cut(text),
                    _ => Inline::Measure(text),
                });
            }
            ESCAPE => run.extend(letters.next().and_then(|letter| match letter {
                'n' => Some('\n'),
                letter => char::from_u32(u32::from(letter) - ASIDE),
            })),
            MANY => while letters.next().is_some_and(|letter| letter != MANY_END) {},
            '\n' => run.push(' '),
            letter => run.push(letter),
        }
    }
    close(&mut line, &mut run, strong);
    line
}
