//! Source text with byte spans.
//!
//! Takes the text of a design file, gives places in it. Must never know YAML or a design.

use crate::picture::{Picture, PictureFault};
use std::collections::BTreeMap;
use std::ops::Range;
use std::path::Path;
use std::sync::{Arc, OnceLock};

/// A stretch of bytes in a source text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Span {
    /// First byte.
    pub start: usize,
    /// One past the last byte.
    pub end: usize,
}

impl Span {
    /// The bytes from `start` up to, not including, `end`.
    #[must_use]
    pub const fn new(start: usize, end: usize) -> Self {
        Self { start, end }
    }

    /// As a range, for slicing.
    #[must_use]
    pub const fn range(self) -> Range<usize> {
        self.start..self.end
    }

    /// Whether there is nothing between its ends.
    #[must_use]
    pub const fn is_empty(self) -> bool {
        self.start >= self.end
    }

    /// Whether another span lies in it, ends included.
    #[must_use]
    pub const fn holds(self, other: Self) -> bool {
        self.start <= other.start && other.end <= self.end
    }

    /// The smallest span that holds both.
    #[must_use]
    pub fn to(self, other: Self) -> Self {
        Self::new(self.start.min(other.start), self.end.max(other.end))
    }
}

/// A value with the place it was written at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Spanned<T> {
    /// The value.
    pub value: T,
    /// Where it stands.
    pub span: Span,
}

impl<T> Spanned<T> {
    /// A value and its place.
    pub const fn new(value: T, span: Span) -> Self {
        Self { value, span }
    }
}

/// A 1-based line and column; columns count characters, not bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Position {
    /// 1-based line.
    pub line: usize,
    /// 1-based column in characters.
    pub column: usize,
}

/// A named source text.
#[derive(Debug, Clone)]
pub struct Source {
    name: String,
    text: String,
    lines: Vec<usize>,
    beside: BTreeMap<String, Arc<Beside>>,
}

/// A file beside a text, and the picture in it once somebody has asked for it: decoding is slow, and a
/// text is read many times.
#[derive(Debug)]
struct Beside {
    bytes: Result<Vec<u8>, String>,
    picture: OnceLock<Result<Arc<Picture>, PictureFault>>,
}

impl Source {
    /// A source called `name` (the path as the user gave it).
    pub fn new(name: impl Into<String>, text: impl Into<String>) -> Self {
        let text = text.into();
        let lines = std::iter::once(0).chain(text.match_indices('\n').map(|(at, _)| at + 1)).collect();
        Self { name: name.into(), text, lines, beside: BTreeMap::new() }
    }

    /// Another text in the place of this one, with the same name and the same files beside it.
    #[must_use]
    pub fn with_text(&self, text: impl Into<String>) -> Self {
        Self { beside: self.beside.clone(), ..Self::new(self.name.clone(), text) }
    }

    /// The same with a file that the text names: its bytes, or why they could not be read.
    #[must_use]
    pub fn with_beside(mut self, name: impl Into<String>, bytes: Result<Vec<u8>, String>) -> Self {
        self.beside.insert(name.into(), Arc::new(Beside { bytes, picture: OnceLock::new() }));
        self
    }

    /// A file that the text names; none where nobody has looked for it.
    #[must_use]
    pub fn beside(&self, name: &str) -> Option<&Result<Vec<u8>, String>> {
        self.beside.get(name).map(|beside| &beside.bytes)
    }

    /// The picture in a file that the text names and that could be read.
    #[must_use]
    pub fn picture(&self, name: &str) -> Option<Result<Arc<Picture>, PictureFault>> {
        let beside = self.beside.get(name)?;
        let bytes = beside.bytes.as_ref().ok()?;
        Some(beside.picture.get_or_init(|| Picture::read(bytes).map(Arc::new)).clone())
    }

    /// A text beside this one as a source of its own; nothing in it where it is no text.
    #[must_use]
    pub fn file(&self, name: &str) -> Self {
        let bytes = self.beside(name).and_then(|bytes| bytes.as_ref().ok());
        let text = bytes.and_then(|bytes| std::str::from_utf8(bytes).ok()).unwrap_or_default();
        let path = Path::new(&self.name).parent().map_or_else(|| Path::new(name).to_owned(), |home| home.join(name));
        Self::new(path.to_string_lossy(), text)
    }

    /// Every file that the text names and that could be read.
    pub fn all_beside(&self) -> impl Iterator<Item = (&str, &[u8])> {
        self.beside.iter().filter_map(|(name, beside)| Some((name.as_str(), beside.bytes.as_ref().ok()?.as_slice())))
    }

    /// The name, as given.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The whole text.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// What stands at a span; empty where the span lies outside the text.
    #[must_use]
    pub fn slice(&self, span: Span) -> &str {
        self.text.get(span.range()).unwrap_or("")
    }

    /// Line and column of a byte offset; an offset past the end is the end.
    #[must_use]
    pub fn position(&self, offset: usize) -> Position {
        let mut offset = offset.min(self.text.len());
        while !self.text.is_char_boundary(offset) {
            offset -= 1;
        }
        let line = self.lines.partition_point(|start| *start <= offset);
        let start = self.lines[line - 1];
        Position { line, column: self.text[start..offset].chars().count() + 1 }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_count_characters() {
        let source = Source::new("a.yaml", "é: 1\nß: ½ in\n");
        assert_eq!(source.position(0), Position { line: 1, column: 1 });
        let at = source.text().find("in").unwrap();
        assert_eq!(source.position(at), Position { line: 2, column: 6 });
        assert_eq!(source.position(999).line, 3);
    }
}
