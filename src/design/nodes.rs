//! The YAML as a spanned node tree.
//!
//! Takes a [`Source`], gives a [`Node`]: texts, lists and maps as written, each with its place.
//! Must never know a key of the design language.

mod clean;
mod raw;
mod surprise;
mod tabs;

use crate::diagnostic::Finding;
use crate::source::{Source, Span, Spanned};
use clean::Clean;
use raw::Raw;

/// The longest text that is read at all: 1 MiB.
pub const MOST_BYTES: usize = 1 << 20;

/// A text, a list or a map.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Node {
    /// A text.
    Scalar(Scalar),
    /// Keys and values in the order written, repeated keys included.
    Map(Map),
    /// Items in the order written.
    List(List),
}

/// A text and how it was written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Scalar {
    /// The text; of a plain one its spelling, so that `2026-11`, `1.50` and `08` stay as they are.
    pub text: String,
    /// Where it stands, quotes included; of an alias the place of the alias.
    pub span: Span,
    /// Written without quotes and not as a block.
    pub plain: bool,
    /// Nothing was written, or a plain `~` or `null`.
    pub empty: bool,
}

/// A map.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Map {
    /// Keys and values.
    pub entries: Vec<(Spanned<String>, Node)>,
    /// From the first key to the last value.
    pub span: Span,
}

/// A list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct List {
    /// Items.
    pub items: Vec<Node>,
    /// From the first item to the last.
    pub span: Span,
}

impl Node {
    /// Where it stands.
    #[must_use]
    pub const fn span(&self) -> Span {
        match self {
            Self::Scalar(scalar) => scalar.span,
            Self::Map(map) => map.span,
            Self::List(list) => list.span,
        }
    }

    /// Whether nothing was written.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        matches!(self, Self::Scalar(scalar) if scalar.empty)
    }

    /// The first value of a key, where this is a map that has it.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Self> {
        let Self::Map(map) = self else { return None };
        map.entries.iter().find(|(name, _)| name.value == key).map(|(_, value)| value)
    }
}

/// Reads a design's YAML.
///
/// # Errors
/// One finding where the text is no YAML at all, or holds more than a design can: the rest of the
/// file cannot be judged then.
#[expect(clippy::result_large_err, reason = "made once a file, and every caller wants the finding itself")]
pub fn read(source: &Source) -> Result<Node, Finding> {
    let original = source.text();
    if original.len() > MOST_BYTES {
        return Err(Finding::error(
            "too-much",
            Span::new(0, 0),
            "the file is too long",
            format!("{} bytes, and at most {MOST_BYTES} are read", original.len()),
        )
        .help(format!("keep a design under {MOST_BYTES} bytes"))
        .plainly("The file is far longer than any design."));
    }
    if let Some((at, sign)) = original.char_indices().find(|(_, sign)| is_unwritable(*sign)) {
        return Err(Finding::error(
            "not-yaml",
            Span::new(at, at + sign.len_utf8()),
            "the file holds a sign that is no text",
            format!("character number {} of Unicode", u32::from(sign)),
        )
        .help("delete this 1 sign, or save the file as plain text in UTF-8")
        .plainly("The file holds a sign that no editor shows; it may not be a text file."));
    }
    let clean = Clean::new(original);
    let root = raw::parse(clean.text()).map_err(|error| surprise::explain(&error, &clean))?;
    Ok(build(root, &clean, 0))
}

/// A control character other than a tab or a line break.
const fn is_unwritable(sign: char) -> bool {
    matches!(sign, '\0'..='\u{8}' | '\u{b}' | '\u{c}' | '\u{e}'..='\u{1f}' | '\u{7f}'..='\u{9f}')
}

/// A node from what the library delivered; `from` is where it stands at the earliest, for a value
/// whose place the library does not know.
fn build(raw: serde_yaml::Spanned<Raw>, clean: &Clean, from: usize) -> Node {
    let text = clean.text();
    let within = |place: Option<(usize, usize)>| {
        place.filter(|(start, end)| start <= end && text.get(*start..*end).is_some()).unwrap_or((from, from))
    };
    let used = within(raw::bytes(&raw.referenced));
    let defined = within(raw::bytes(&raw.defined));
    let spelling = trimmed(text, defined);
    let place = if used == defined { spelling } else { trimmed(text, used) };
    let span = Span::new(clean.original(place.0), clean.original(place.1));
    let slice = &text[spelling.0..spelling.1];
    match raw.value {
        Raw::Empty => Node::Scalar(Scalar { text: String::new(), span, plain: true, empty: true }),
        Raw::Typed => Node::Scalar(Scalar { text: slice.to_owned(), span, plain: true, empty: false }),
        Raw::Text(value) => {
            let plain = !slice.starts_with(['"', '\'']) && !is_block(&text[..spelling.0]);
            let text = if plain { without_curly_quotes(value) } else { value };
            Node::Scalar(Scalar { text, span, plain, empty: false })
        }
        Raw::List(items) => {
            let items: Vec<Node> = items.into_iter().map(|item| build(item, clean, place.0)).collect();
            let span = items.iter().map(Node::span).reduce(Span::to).unwrap_or(span);
            Node::List(List { items, span })
        }
        Raw::Map(entries) => {
            let entries: Vec<(Spanned<String>, Node)> = entries
                .into_iter()
                .map(|(key, value)| {
                    let key = build(key, clean, place.0);
                    let span = key.span();
                    let name = match key {
                        Node::Scalar(scalar) => scalar.text,
                        Node::Map(_) | Node::List(_) => String::new(),
                    };
                    (Spanned::new(name, span), build(value, clean, place.0))
                })
                .collect();
            let span = entries.iter().map(|(key, value)| key.span.to(value.span())).reduce(Span::to).unwrap_or(span);
            Node::Map(Map { entries, span })
        }
    }
}

/// Whether the text in front of a scalar ends in the sign that opens a block (`|`, `>-`, `|2`).
fn is_block(before: &str) -> bool {
    let before = before.trim_end_matches(' ');
    let Some(line) = before.strip_suffix('\n') else { return false };
    let line = line.trim_end_matches(['\n', '\r', ' ']);
    let line = line.rsplit('\n').next().unwrap_or(line);
    let line = line.split(" #").next().unwrap_or(line).trim_end();
    line.trim_end_matches(|sign: char| sign == '-' || sign == '+' || sign.is_ascii_digit()).ends_with(['|', '>'])
}

/// A place without the line breaks and spaces that a block ends in.
fn trimmed(text: &str, (start, end): (usize, usize)) -> (usize, usize) {
    (start, start + text[start..end].trim_end().len())
}

/// A text in one pair of curly quotes, as word processors write them, without the pair.
fn without_curly_quotes(text: String) -> String {
    const PAIRS: [(char, char); 3] = [('\u{201c}', '\u{201d}'), ('\u{201e}', '\u{201c}'), ('\u{2018}', '\u{2019}')];
    for (open, close) in PAIRS {
        if let Some(inner) = text.strip_prefix(open).and_then(|rest| rest.strip_suffix(close))
            && !inner.contains([open, close])
        {
            return inner.to_owned();
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every text of a tree, with what stands at its place.
    fn texts(text: &str) -> Vec<(String, String, bool)> {
        fn walk(node: &Node, source: &Source, out: &mut Vec<(String, String, bool)>) {
            match node {
                Node::Scalar(scalar) => {
                    out.push((scalar.text.clone(), source.slice(scalar.span).to_owned(), scalar.plain));
                }
                Node::List(list) => list.items.iter().for_each(|item| walk(item, source, out)),
                Node::Map(map) => map.entries.iter().for_each(|(key, value)| {
                    assert_eq!(source.slice(key.span).trim_matches('"'), key.value);
                    walk(value, source, out);
                }),
            }
        }
        let source = Source::new("a.yaml", text);
        let mut out = Vec::new();
        walk(&read(&source).unwrap(), &source, &mut out);
        out
    }

    fn fault(text: &str) -> (&'static str, String) {
        let source = Source::new("a.yaml", text);
        let finding = read(&source).unwrap_err();
        (finding.code, source.slice(finding.primary.span).to_owned())
    }

    #[test]
    fn plain_texts_keep_their_spelling() {
        for spelling in [
            "2026-11",
            "1.50",
            "yes",
            "No",
            "08",
            "0x10",
            "1e999",
            "1_000",
            "true",
            ".5",
            "4 1/4\" x 5 1/2\"",
            "5-1/2\"",
            "+1",
        ] {
            let wanted = (spelling.to_owned(), spelling.to_owned(), true);
            assert_eq!(texts(&format!("é: {spelling} # why\n")), vec![wanted], "{spelling}");
        }
    }

    #[test]
    fn quoted_and_folded_texts_are_resolved() {
        let rows = texts(
            "a: \"q\\t½\"\nb: 'it''s'\nc: |\n  block\n  two\nd: >-\n  folded\n  text\n\ne: plain\n  two\nf: [x, 'y']\n",
        );
        let wanted = [
            ("q\t½", "\"q\\t½\"", false),
            ("it's", "'it''s'", false),
            ("block\ntwo\n", "block\n  two", false),
            ("folded text", "folded\n  text", false),
            ("plain two", "plain\n  two", true),
            ("x", "x", true),
            ("y", "'y'", false),
        ];
        assert_eq!(rows, wanted.map(|(text, slice, plain)| (text.to_owned(), slice.to_owned(), plain)));
    }

    #[test]
    fn curly_quotes_round_a_text_are_dropped() {
        for (typed, wanted) in [
            ("“Bows”", "Bows"),
            ("‘Bows’", "Bows"),
            ("“Bows” and “knots”", "“Bows” and “knots”"),
            ("\"“Bows”\"", "“Bows”"),
            ("4 1/4”", "4 1/4”"),
        ] {
            assert_eq!(texts(&format!("a: {typed}\n"))[0].0, wanted);
        }
    }

    #[test]
    fn an_alias_stands_where_it_is_written() {
        let rows = texts("a: &x 2026-11\nb: *x\n");
        assert_eq!(rows[1], ("2026-11".to_owned(), "*x".to_owned(), true));
    }

    #[test]
    fn nothing_is_empty_and_nothing_else_is() {
        let source = Source::new("a.yaml", "a:\nb: ~\nc: null\nd: ''\ne: # why\n");
        let Node::Map(map) = read(&source).unwrap() else { panic!() };
        let empty: Vec<bool> = map.entries.iter().map(|(_, value)| value.is_empty()).collect();
        assert_eq!(empty, [true, true, true, false, true]);
    }

    #[test]
    fn repeated_keys_are_delivered() {
        let source = Source::new("a.yaml", "a: 1\na: 2\n<<: 3\n");
        let Node::Map(map) = read(&source).unwrap() else { panic!() };
        assert_eq!(map.entries.iter().map(|(key, _)| key.value.as_str()).collect::<Vec<_>>(), ["a", "a", "<<"]);
    }

    #[test]
    fn slips_are_named_at_their_place() {
        for (text, code, at) in [
            ("title: Bows: October\n", "yaml-surprise", "Bows: October"),
            ("say:\n  - Fold: then: glue\n", "yaml-surprise", "then: glue"),
            ("a:\n\tb: c\n", "yaml-surprise", "\t"),
            ("a: b\n\tc: d\n", "yaml-surprise", "\t"),
            ("a: b\nc:8\ndd:8\ne: f\n", "not-yaml", "c"),
            ("a: b\ncards:8\ne: f\n", "yaml-surprise", "cards:"),
            ("a: \"x\" y\n", "yaml-surprise", "\"x\" y"),
            ("a: *b\n", "yaml-surprise", "*b"),
            ("a: @x # why\n", "yaml-surprise", "@x"),
            ("a: !inch 4\n", "yaml-surprise", "!inch 4"),
            ("a: “x: y”\n", "yaml-surprise", "“x: y”"),
            ("a: 'b\nc: d\n", "not-yaml", "'"),
            ("a: b\n  c: d\n", "not-yaml", ":"),
            ("a: [b\n", "not-yaml", "["),
            ("a: - b\n", "not-yaml", "-"),
            ("a\u{1}: b\n", "not-yaml", "\u{1}"),
        ] {
            assert_eq!(fault(text), (code, at.to_owned()), "{text:?}");
        }
    }
}
