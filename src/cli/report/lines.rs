//! The lines of a file that a report shows, and the places marked in them.
//!
//! Only lines with a place are taken, very long ones in part, so that a report costs the same
//! however large the file is.

use crate::diagnostic::{Finding, Label};
use crate::source::{Source, Span};
use std::collections::BTreeMap;
use std::ops::Range;

/// How many bytes of a long line are shown on either side of its place.
const AROUND: usize = 120;

/// The lines of one finding.
pub(super) struct Lines<'a> {
    /// The lines from the first to the last place; those between without their text.
    pub(super) text: String,
    /// The 1-based number of the first one.
    pub(super) first: usize,
    /// The places, the primary one first.
    pub(super) marks: Vec<Mark<'a>>,
}

/// A marked place.
pub(super) struct Mark<'a> {
    /// Its bytes in the text of the lines.
    pub(super) at: Range<usize>,
    /// What is said there.
    pub(super) label: &'a str,
    /// Whether the finding is about it.
    pub(super) primary: bool,
}

/// One line as shown: the bytes of the source, cut short where it is long.
struct Shown {
    bytes: Range<usize>,
    /// Where it stands in the text of the lines.
    start: usize,
}

/// The lines of a finding. A place over several lines is marked on its first one; a place that
/// lies outside a line cut short is left to the other forms of the report.
pub(super) fn lines<'a>(source: &Source, finding: &'a Finding) -> Lines<'a> {
    let labels = std::iter::once(&finding.primary).chain(&finding.others);
    lines_of(source, labels.map(|Label { span, text }| (*span, text.as_str())))
}

/// The lines of places, the primary one first, each with what is said there.
pub(super) fn lines_of<'a>(source: &Source, places: impl Iterator<Item = (Span, &'a str)>) -> Lines<'a> {
    let places: Vec<(&str, Range<usize>, usize)> = places
        .map(|(span, label)| {
            let at = on_one_line(source.text(), span.start, span.end);
            let line = source.position(at.start).line;
            (label, at, line)
        })
        .collect();
    let mut shown: BTreeMap<usize, Shown> = BTreeMap::new();
    for (_, at, line) in &places {
        shown.entry(*line).or_insert_with(|| Shown { bytes: around(source.text(), at), start: 0 });
    }
    // A line alone between two others is printed, so it needs its text.
    let numbers: Vec<usize> = shown.keys().copied().collect();
    for pair in numbers.windows(2).filter(|pair| pair[1] - pair[0] == 2) {
        let after = shown[&pair[0]].bytes.end;
        let start = source.text()[after..].find('\n').map_or(source.text().len(), |at| after + at + 1);
        shown.insert(pair[0] + 1, Shown { bytes: around(source.text(), &(start..start)), start: 0 });
    }
    let first = numbers.first().copied().unwrap_or(1);
    let mut text = String::new();
    let mut last = first;
    for (line, shown) in &mut shown {
        text.extend(std::iter::repeat_n('\n', line - last));
        last = *line;
        shown.start = text.len();
        text.push_str(&source.text()[shown.bytes.clone()]);
    }
    let mut marks = Vec::new();
    for (n, (label, at, line)) in places.iter().enumerate() {
        let Some(shown) =
            shown.get(line).filter(|shown| shown.bytes.contains(&at.start) || shown.bytes.end == at.start)
        else {
            continue;
        };
        let inside = |byte: usize| shown.start + byte.min(shown.bytes.end) - shown.bytes.start;
        marks.push(Mark { at: inside(at.start)..inside(at.end), label, primary: n == 0 });
    }
    Lines { text, first, marks }
}

/// A place brought inside the text, on whole characters, and to its first line.
fn on_one_line(text: &str, start: usize, end: usize) -> Range<usize> {
    let start = floor(text, start);
    let end = floor(text, end).max(start);
    match text.as_bytes()[start..end].iter().position(|byte| *byte == b'\n') {
        Some(at) => start..start + text[start..start + at].trim_end().len(),
        None => start..end,
    }
}

/// The line of a place, without its line end; only what stands near the place if it is long.
fn around(text: &str, at: &Range<usize>) -> Range<usize> {
    let bytes = text.as_bytes();
    let start = bytes[..at.start].iter().rposition(|byte| *byte == b'\n').map_or(0, |before| before + 1);
    let end = bytes[at.end..].iter().position(|byte| *byte == b'\n').map_or(text.len(), |after| at.end + after);
    let end = if end > at.end && bytes[end - 1] == b'\r' { end - 1 } else { end };
    if end - start <= 4 * AROUND {
        return start..end;
    }
    let from = floor(text, at.start.saturating_sub(AROUND).max(start));
    let to = floor(text, at.end.min(at.start + AROUND).saturating_add(AROUND).min(end));
    from..to.max(at.start)
}

fn floor(text: &str, at: usize) -> usize {
    let mut at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}
