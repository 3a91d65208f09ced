//! The YAML as a spanned node tree.
//!
//! Takes a [`Source`], gives a [`Node`]: texts, lists and maps as written, each with its place.
//! Must never know a key of the design language.

mod clean;
mod raw;
mod surprise;

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
    matches!(sign, '\0'..='\u{8}' | '\u{b}' | '\u{c}' | '\u{e}'..='\u{1f}' | '\u{7f}')
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

    fn show(node: &Node, source: &Source, out: &mut Vec<String>) {
        match node {
            Node::Scalar(s) => out.push(format!("{:?} {:?} <{}>", s.text, s.plain, source.slice(s.span))),
            Node::List(l) => {
                out.push(format!("list <{}>", source.slice(l.span)));
                l.items.iter().for_each(|i| show(i, source, out));
            }
            Node::Map(m) => {
                for (k, v) in &m.entries {
                    out.push(format!("key {:?} <{}>", k.value, source.slice(k.span)));
                    show(v, source, out);
                }
            }
        }
    }

    #[test]
    fn explore() {
        for text in [
            "a: 2026-11\nb: 1.50\nc: yes\nd: 08\ne: true # x\nf: \"q\\tü\"\ng: 'it''s'\nh: |\n  block\n  two\ni: >-\n  folded\n  text\n\nj: plain\n  two\nk:\nl: ~\nm: #10\nn: [a, b]\no: {x: 1, y: 2}\np: !!str 5\nq: &z zed\nr: *z\ns: 4 1/4\" x 5\nt: 1e999\nu: 0x10\n",
            "\u{feff}é: ü\r\nb:\u{a0}4¼ in\r\nc: |\r\n  x\r\n  y\r\nd: “hey”\r\n",
            "a: &x {b: 1}\nc: *x\n<<: 1\n? [a]\n: b\n",
            "- a\n-\n- - b\n",
        ] {
            let source = Source::new("x", text);
            match read(&source) {
                Ok(node) => {
                    let mut out = vec![];
                    show(&node, &source, &mut out);
                    println!("{}\n", out.join("\n"));
                }
                Err(e) => println!("{e:?}"),
            }
        }
        for text in [
            "title: Bows: October\n",
            "a:\n\tb: c\n",
            "a: b\n\tc: d\n",
            "a: \"x\" y\n",
            "a: *b\n",
            "a: [b\n",
            "a: 'b\n",
            "a: b\n  c: d\n",
            "a\nb: c\n",
            "a: @x\n",
            "--- \na: 1\n---\nb: 2\n",
            "",
            "# c\n",
            "a: “x: y”\n",
            "a:\n  b: 1\n c: 2\n",
            "- Cut first: then\n",
            "a: - b\n",
            "x: \"\\q\"",
            "%x",
            "a: !foo b",
            "a: !!int x",
            "a: !!binary zz",
            "a: &x [*x]\n",
        ] {
            println!("{text:?}: {:#?}", read(&Source::new("x", text)));
        }
        println!("{:?}", read(&Source::new("x", "[".repeat(5000))).map_err(|e| e.message));
        println!("{:?}", read(&Source::new("x", "- ".repeat(5000))).map_err(|e| e.message));
        println!("{:?}", read(&Source::new("x", "a: &a [x,x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b]\nd: &d [*c,*c,*c,*c,*c,*c]\ne: [*d,*d,*d,*d,*d,*d,*d,*d,*d]")).map_err(|e|e.message));
    }
}
