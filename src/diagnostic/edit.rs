//! Changes of the text that mend a finding.

use crate::source::Span;
use std::ops::Range;

/// What takes the place of a stretch of text; an empty stretch is a place to put something in.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Edit {
    /// What goes out.
    pub span: Span,
    /// What comes in.
    pub with: String,
}

impl Edit {
    /// Something in the place of a stretch.
    pub fn new(span: Span, with: impl Into<String>) -> Self {
        Self { span, with: with.into() }
    }

    /// Something put in at a byte.
    pub fn put_in(at: usize, with: impl Into<String>) -> Self {
        Self::new(Span::new(at, at), with)
    }

    /// A pair of quotes round `text`, which stands at `span` byte for byte; none where it holds both
    /// kinds of quotes, or more than one line.
    #[must_use]
    pub fn quotes(text: &str, span: Span) -> Vec<Self> {
        let quote = if !text.contains(['"', '\\']) {
            "\""
        } else if !text.contains('\'') {
            "'"
        } else {
            return Vec::new();
        };
        if text.contains(['\n', '\r']) {
            return Vec::new();
        }
        vec![Self::put_in(span.start, quote), Self::put_in(span.end, quote)]
    }
}

/// How sure it is that an edit is what was meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub enum Certainty {
    /// It mends the fault, and the designer may have meant something else: shown, never written.
    #[default]
    Likely,
    /// Nothing else can have been meant: written where that is asked for.
    Certain,
}

impl Certainty {
    /// Certain where that holds.
    #[must_use]
    pub const fn when(certain: bool) -> Self {
        if certain { Self::Certain } else { Self::Likely }
    }
}

/// The text with edits, in whatever order they are given, and where each one's text then stands. An edit
/// that reaches into one before it, or out of the text, is left out.
#[must_use]
pub fn applied(text: &str, edits: &[Edit]) -> (String, Vec<Range<usize>>) {
    let mut edits: Vec<&Edit> = edits.iter().collect();
    edits.sort_by_key(|edit| edit.span);
    let (mut out, mut places, mut done) = (String::with_capacity(text.len()), Vec::new(), 0);
    for edit in edits {
        let (start, end) = (edit.span.start, edit.span.end);
        if start < done || start > end || !text.is_char_boundary(start) || !text.is_char_boundary(end) {
            continue;
        }
        out.push_str(&text[done..start]);
        places.push(out.len()..out.len() + edit.with.len());
        out.push_str(&edit.with);
        done = end;
    }
    out.push_str(&text[done..]);
    (out, places)
}

/// Where a byte of the text stands once the edits are made; of a byte that goes out, where what comes in starts.
#[must_use]
pub fn moved(at: usize, edits: &[Edit]) -> usize {
    let mut to = at;
    for edit in edits {
        if edit.span.end <= at && (edit.span.start < at || edit.span.is_empty()) {
            to = to + edit.with.len() - (edit.span.end - edit.span.start);
        } else if edit.span.start < at {
            to -= at - edit.span.start;
        }
    }
    to
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn edits_are_made_in_the_order_of_the_text() {
        let edits = [Edit::new(Span::new(6, 9), "é"), Edit::put_in(2, "\""), Edit::new(Span::new(7, 8), "x")];
        assert_eq!(applied("ab cd efg h", &edits), ("ab\" cd é h".to_owned(), vec![2..3, 7..9]));
        assert_eq!(applied("ß", &[Edit::new(Span::new(1, 2), "x"), Edit::put_in(9, "y")]).0, "ß");
    }

    #[test]
    fn places_move_with_what_stands_before_them() {
        let edits = [Edit::put_in(2, "xx"), Edit::new(Span::new(4, 6), "")];
        assert_eq!([0, 1, 3, 6, 8].map(|at| moved(at, &edits)), [0, 1, 5, 6, 8]);
    }

    #[test]
    fn quotes_suit_the_text() {
        let span = Span::new(3, 6);
        let told = |text: &str| Edit::quotes(text, span).into_iter().map(|edit| edit.with).collect::<String>();
        assert_eq!([told("a b"), told("a\"b"), told("\"'x"), told("a\nb")], ["\"\"", "''", "", ""]);
    }
}
