//! What is at hand while a design is settled, and how a value is taken from a node.
//!
//! Every fault is noted and the reading goes on: a `None` here always has its finding.

use crate::design::nodes::{Map, Node, Scalar};
use crate::diagnostic::Finding;
use crate::length::Units;
use crate::source::{Source, Span, Spanned};

use super::names::{listed, nearest, tidy};

/// The findings so far and what every part needs to know.
pub(super) struct Desk<'a> {
    pub(super) source: &'a Source,
    /// The system that the design is settled for.
    pub(super) units: Units,
    /// The systems that the design asks for, at least one.
    pub(super) asked: Vec<Units>,
    pub(super) findings: Vec<Finding>,
}

/// A value and the key or list item that it stands at.
#[derive(Clone, Copy)]
pub(super) struct Field<'a> {
    /// The key.
    pub(super) name: &'a str,
    /// Where the key is written.
    pub(super) key: Span,
    /// The value.
    pub(super) node: &'a Node,
}

/// The known keys of a map.
pub(super) struct Fields<'a> {
    /// What the map describes, in words: `the card`.
    what: String,
    /// Where to point when a key is missing.
    span: Span,
    found: Vec<Field<'a>>,
}

impl<'a> Fields<'a> {
    /// The value of a key.
    pub(super) fn get(&self, name: &str) -> Option<Field<'a>> {
        self.found.iter().copied().find(|field| field.name == name)
    }

    /// Where the map's own key or first key is written.
    pub(super) const fn span(&self) -> Span {
        self.span
    }
}

/// A text, or a part of one, with its place.
#[derive(Clone, Copy)]
pub(super) struct Text<'a> {
    pub(super) value: &'a str,
    pub(super) span: Span,
    /// Whether the text stands in the source byte for byte, so that parts have places too.
    exact: bool,
}

impl<'a> Text<'a> {
    /// The part from one byte to another, without spaces round it.
    pub(super) fn part(self, from: usize, to: usize) -> Self {
        let value = &self.value[from..to];
        let from = from + value.len() - value.trim_start().len();
        let value = value.trim();
        let span = if self.exact {
            Span::new(self.span.start + from, self.span.start + from + value.len())
        } else {
            self.span
        };
        Self { value, span, exact: self.exact }
    }

    /// The parts between a separator.
    pub(super) fn split(self, separator: &str) -> Vec<Self> {
        let mut parts = Vec::new();
        let mut from = 0;
        for (at, found) in self.value.match_indices(separator) {
            parts.push(self.part(from, at));
            from = at + found.len();
        }
        parts.push(self.part(from, self.value.len()));
        parts
    }

    /// Everything before the last of `separator`, and everything behind it.
    pub(super) fn split_last(self, separator: &str) -> Option<(Self, Self)> {
        let at = self.value.rfind(separator)?;
        Some((self.part(0, at), self.part(at + separator.len(), self.value.len())))
    }

    /// As a value with its place.
    pub(super) fn owned(self) -> Spanned<String> {
        Spanned::new(self.value.to_owned(), self.span)
    }
}

impl<'a> Desk<'a> {
    pub(super) const fn new(source: &'a Source, units: Units, asked: Vec<Units>) -> Self {
        Self { source, units, asked, findings: Vec::new() }
    }

    /// Whether two systems are asked for.
    pub(super) fn both(&self) -> bool {
        self.asked.len() > 1
    }

    /// Notes a finding.
    pub(super) fn note(&mut self, finding: Finding) {
        self.findings.push(finding);
    }

    /// The known keys of a map; unknown and repeated keys are noted. `span` is where a missing key
    /// is pointed at.
    pub(super) fn fields(
        &mut self,
        node: &'a Node,
        what: impl Into<String>,
        span: Span,
        known: &[&'static str],
    ) -> Option<Fields<'a>> {
        let what = what.into();
        let map = self.map(node, &what, span)?;
        let mut found: Vec<Field<'a>> = Vec::new();
        for (key, value) in &map.entries {
            let name = tidy(&key.value);
            match known.iter().copied().find(|known| *known == name) {
                Some(name) => match found.iter().find(|field| field.name == name) {
                    Some(first) => {
                        let first = first.key;
                        self.repeated(name, key.span, first);
                    }
                    None => found.push(Field { name, key: key.span, node: value }),
                },
                None => self.unknown_key(&what, &name, key.span, known),
            }
        }
        Some(Fields { what, span, found })
    }

    /// A map of the author's own names; repeated names are noted and dropped.
    pub(super) fn named(&mut self, field: Field<'a>) -> Option<Vec<(Spanned<String>, &'a Node)>> {
        let map = self.map(field.node, &format!("`{}`", field.name), field.key)?;
        if map.entries.is_empty() {
            self.empty(&format!("`{}`", field.name), field.key, map.span);
            return None;
        }
        let mut found: Vec<(Spanned<String>, &'a Node)> = Vec::new();
        for (key, value) in &map.entries {
            let name = tidy(&key.value);
            if name.is_empty() {
                self.note(
                    Finding::error("wrong-kind", key.span, "a name is a text", "this is no text")
                        .help("write 1 name in front of the colon")
                        .plainly("A name is missing in front of a colon."),
                );
            } else if let Some(first) = found.iter().find(|(known, _)| known.value == name).map(|(known, _)| known.span)
            {
                self.repeated(&name, key.span, first);
            } else {
                found.push((Spanned::new(name, key.span), value));
            }
        }
        Some(found)
    }

    /// A value that must be there.
    pub(super) fn required(&mut self, fields: &Fields<'a>, name: &'static str, such_as: &str) -> Option<Field<'a>> {
        let field = fields.get(name);
        if field.is_none() {
            self.note(
                Finding::error(
                    "missing-key",
                    fields.span,
                    format!("{} has no `{name}`", fields.what),
                    format!("`{name}` is missing here"),
                )
                .help(format!("add 1 line, such as `{name}: {such_as}`"))
                .plainly(format!("{} needs a line `{name}`.", capital(&fields.what))),
            );
        }
        field
    }

    fn unknown_key(&mut self, what: &str, name: &str, span: Span, known: &[&'static str]) {
        let (label, help) = match nearest(name, known) {
            Some(near) => {
                (format!("not a key of {what}"), format!("write `{near}`, the nearest of {} keys", known.len()))
            }
            None => (format!("not a key of {what}"), format!("use 1 of {}", listed(known))),
        };
        self.note(
            Finding::error("unknown-key", span, format!("`{name}` is not known here"), label)
                .help(help)
                .plainly(format!("Nothing called \"{name}\" can be said about {what}.")),
        );
    }

    fn repeated(&mut self, name: &str, span: Span, first: Span) {
        self.note(
            Finding::error("repeated-key", span, format!("`{name}` stands here twice"), "the second")
                .also(first, "the first")
                .help("keep 1 of the 2")
                .plainly(format!("\"{name}\" is said twice, and only one can count.")),
        );
    }

    fn map(&mut self, node: &'a Node, what: &str, span: Span) -> Option<&'a Map> {
        match node {
            Node::Map(map) => return Some(map),
            node if node.is_empty() => self.empty(what, span, node.span()),
            Node::Scalar(scalar) => self.wrong_kind(what, scalar.span, "a text", "lines of `key: value`, 2 spaces in"),
            Node::List(list) => {
                self.wrong_kind(what, list.span, "a list", "lines of `key: value`, without the 1 `-` in front")
            }
        }
        None
    }

    /// The items of a list; a text or map alone is refused.
    pub(super) fn items(&mut self, field: Field<'a>) -> Option<Vec<Field<'a>>> {
        match field.node {
            Node::List(list) => {
                return Some(
                    list.items
                        .iter()
                        .map(|node| Field { name: field.name, key: start_of(node.span()), node })
                        .collect(),
                );
            }
            node if node.is_empty() => self.empty(&format!("`{}`", field.name), field.key, node.span()),
            Node::Scalar(scalar) => {
                self.wrong_kind(&format!("`{}`", field.name), scalar.span, "a text", "a list, each item behind 1 `-`")
            }
            Node::Map(map) => self.wrong_kind(
                &format!("`{}`", field.name),
                start_of(map.span),
                "a map",
                "a list, each item behind 1 `-`",
            ),
        }
        None
    }

    fn wrong_kind(&mut self, what: &str, span: Span, found: &str, wanted: &str) {
        self.note(
            Finding::error("wrong-kind", span, format!("{what} is written as {found}"), format!("{found} stands here"))
                .help(format!("write it as {wanted}"))
                .plainly(format!("{} is written in the wrong form.", capital(what))),
        );
    }

    /// A value that is empty, or that YAML took for a comment.
    fn empty(&mut self, what: &str, key: Span, value: Span) {
        if let Some(comment) = self.comment_at(value, |_| true) {
            self.hash(comment);
            return;
        }
        self.note(
            Finding::error("missing-key", key, format!("{what} is empty"), "nothing stands behind this")
                .help("write 1 value behind it, or delete the line")
                .plainly(format!("{} says nothing.", capital(what))),
        );
    }

    /// The comment on the line of a place, from there on, if it starts like a word (`#10`).
    fn comment_at(&self, place: Span, wanted: impl Fn(char) -> bool) -> Option<Span> {
        let text = self.source.text();
        let at = place.end.min(text.len());
        let start = if place.start == place.end { text[..at].rfind('\n').map_or(0, |found| found + 1) } else { at };
        let end = text[start..].find(['\n', '\r']).map_or(text.len(), |found| start + found);
        let line = &text[start..end];
        let hash = line.find(" #").map(|found| found + 1)?;
        if place.start != place.end && !line[..hash].trim().is_empty() {
            return None;
        }
        let next = line[hash + 1..].chars().next()?;
        (!next.is_whitespace() && next != '#' && wanted(next))
            .then(|| Span::new(start + hash, start + line.trim_end().len()))
    }

    fn hash(&mut self, comment: Span) {
        let typed: String = self.source.slice(comment).chars().take(40).collect();
        let word = typed.split_whitespace().next().unwrap_or("#").to_owned();
        self.note(
            Finding::error(
                "yaml-surprise",
                comment,
                format!("`{word}` is taken for a comment"),
                "not part of the value",
            )
            .help(format!("put 1 pair of quotes round the whole text: `\"{typed}\"`"))
            .plainly(format!("Everything from {word} on is left out, because # starts a comment.")),
        );
    }

    fn scalar(&mut self, field: Field<'a>) -> Option<&'a Scalar> {
        let what = format!("`{}`", field.name);
        match field.node {
            node if node.is_empty() => self.empty(&what, field.key, node.span()),
            Node::Scalar(scalar) => {
                if scalar.plain
                    && let Some(comment) = self.comment_at(scalar.span, |next| next.is_ascii_digit())
                {
                    self.hash(comment);
                    return None;
                }
                return Some(scalar);
            }
            Node::List(list) => self.wrong_kind(&what, start_of(list.span), "a list", "1 text"),
            Node::Map(map) => {
                let line = self.source.slice(map.span);
                if map.entries.len() == 1 && !line.contains('\n') && !line.starts_with('{') && line.contains(": ") {
                    let short: String = line.chars().take(60).collect();
                    self.note(
                        Finding::error(
                            "yaml-surprise",
                            map.span,
                            "a colon stands in the text",
                            "taken for a key and its value",
                        )
                        .help(format!("put 1 pair of quotes round it: `\"{short}\"`"))
                        .plainly(
                            "A colon with a space behind it starts a new value, so a text that holds one needs quotes.",
                        ),
                    );
                } else {
                    self.wrong_kind(&what, start_of(map.span), "a map", "1 text");
                }
            }
        }
        None
    }

    /// A text in a fixed form: a length, a word, a name.
    pub(super) fn text(&mut self, field: Field<'a>) -> Option<Text<'a>> {
        let scalar = self.scalar(field)?;
        let whole =
            Text { value: &scalar.text, span: scalar.span, exact: self.source.slice(scalar.span) == scalar.text };
        let trimmed = whole.part(0, scalar.text.len());
        if trimmed.value.is_empty() {
            self.empty(&format!("`{}`", field.name), field.key, scalar.span);
            return None;
        }
        Some(trimmed)
    }

    /// A text in the author's own words. A bare yes or no is none: other YAML readers take it for
    /// true or false, and a reader of the file cannot tell.
    pub(super) fn words(&mut self, field: Field<'a>) -> Option<Spanned<String>> {
        let text = self.text(field)?;
        let plain = matches!(field.node, Node::Scalar(scalar) if scalar.plain);
        let truth = ["yes", "no", "true", "false", "on", "off"];
        if plain && truth.iter().any(|word| text.value.eq_ignore_ascii_case(word)) {
            self.note(
                Finding::error(
                    "yaml-surprise",
                    text.span,
                    format!("`{}` is not taken for a text", text.value),
                    "yes and no mean true and false in YAML",
                )
                .help(format!("put 1 pair of quotes round it: `\"{}\"`", text.value))
                .plainly(format!("A bare {} needs quotes to be a text.", text.value)),
            );
            return None;
        }
        Some(text.owned())
    }

    /// One word of a list.
    pub(super) fn word<T: Copy>(&mut self, field: Field<'a>, words: &[(&'static str, T)]) -> Option<Spanned<T>> {
        let text = self.text(field)?;
        let tidied = tidy(text.value).to_lowercase();
        if let Some((_, value)) = words.iter().find(|(word, _)| *word == tidied) {
            return Some(Spanned::new(*value, text.span));
        }
        let known: Vec<&'static str> = words.iter().map(|(word, _)| *word).collect();
        self.bad_word(field.name, text, &known);
        None
    }

    /// Notes a word that is not in its list.
    pub(super) fn bad_word(&mut self, name: &str, text: Text<'_>, known: &[&'static str]) {
        let help = match nearest(&tidy(text.value).to_lowercase(), known) {
            Some(near) => format!("write `{near}`, the nearest of {} words", known.len()),
            None => format!("say 1 of {}", listed(known)),
        };
        self.note(
            Finding::error(
                "bad-word",
                text.span,
                format!("`{name}` cannot be `{}`", text.value),
                format!("one of {} is wanted", listed(known)),
            )
            .help(help)
            .plainly(format!("\"{}\" is not one of the words for {name}.", text.value)),
        );
    }

    /// A whole number from 1 to `most`.
    pub(super) fn count(&mut self, field: Field<'a>, most: u32) -> Option<Spanned<u32>> {
        let text = self.text(field)?;
        self.count_in(field.name, text, most).map(|count| Spanned::new(count, text.span))
    }

    /// A whole number from 1 to `most`, from a text.
    pub(super) fn count_in(&mut self, name: &str, text: Text<'_>, most: u32) -> Option<u32> {
        let digits = !text.value.is_empty() && text.value.bytes().all(|sign| sign.is_ascii_digit());
        let number = if digits { Some(text.value.parse::<u32>().unwrap_or(u32::MAX)) } else { None };
        let label = match number {
            Some(number) if (1..=most).contains(&number) => return Some(number),
            Some(0) => "nothing at all".to_owned(),
            Some(_) => format!("more than {most}"),
            None => "not a whole number".to_owned(),
        };
        self.note(
            Finding::error("bad-count", text.span, format!("`{name}` cannot be `{}`", text.value), label)
                .help(format!("write a whole number from 1 to {most}"))
                .plainly(format!("{} must be a whole number from 1 to {most}.", capital(name))),
        );
        None
    }
}

/// The first byte of a long value, so that a label does not run over lines.
const fn start_of(span: Span) -> Span {
    Span::new(span.start, if span.end > span.start { span.start + 1 } else { span.start })
}

/// With a capital letter.
pub(super) fn capital(text: &str) -> String {
    let mut signs = text.chars();
    signs.next().map_or_else(String::new, |first| first.to_uppercase().chain(signs).collect())
}
