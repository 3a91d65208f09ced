//! How a text, a word and a count are taken from a value, and what YAML makes of slips.
//!
//! Takes a [`Field`], gives a value with its place; a `None` always has its finding.

use super::desk::{Desk, Field, capital};
use super::names::{is_sure, listed, tidy};
use super::text::Text;
use crate::design::nodes::{Node, Scalar};
use crate::diagnostic::{Certainty, Edit, Finding};
use crate::source::{Span, Spanned};

/// Where the fixed words of values are heard: one that several keys know is one word.
const WORD: &str = "a word";

impl<'a> Desk<'a> {
    /// A value that is empty, or that YAML took for a comment.
    pub(super) fn empty(&mut self, what: &str, key: Span, value: Span) {
        if let Some(comment) = self.comment_at(value, |_| true) {
            self.hash(comment, comment);
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

    /// Notes a comment that was meant as text; `whole` is all that was typed.
    fn hash(&mut self, comment: Span, whole: Span) {
        let typed: String = self.source.slice(whole).chars().take(60).collect();
        let word = self.source.slice(comment).split_whitespace().next().unwrap_or("#").to_owned();
        // `#10` is a number that belongs to the text; `#draft` may be a remark, and so may what follows.
        let number = word[1..].starts_with(|sign: char| sign.is_ascii_digit());
        let alone = !self.source.slice(comment)[1..].contains(" #");
        let edits = Edit::quotes(self.source.slice(whole), whole);
        self.note(
            Finding::error(
                "yaml-surprise",
                comment,
                format!("`{word}` is taken for a comment"),
                "not part of the value",
            )
            .help(format!("put 1 pair of quotes round the whole text: `\"{typed}\"`"))
            .plainly(format!("Everything from {word} on is left out, because # starts a comment."))
            .edits(edits, Certainty::when(number && alone)),
        );
    }

    fn scalar(&mut self, field: Field<'a>, lost: impl Fn(char) -> bool) -> Option<&'a Scalar> {
        let what = field.what();
        match field.node {
            node if node.is_empty() => self.empty(&what, field.key, node.span()),
            Node::Scalar(scalar) => {
                if scalar.plain
                    && let Some(comment) = self.comment_at(scalar.span, lost)
                {
                    self.hash(comment, scalar.span.to(comment));
                    return None;
                }
                return Some(scalar);
            }
            Node::List(list) => self.wrong_kind(&what, self.first_line(list.span), "a list", "1 text"),
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
                        )
                        .edits(Edit::quotes(line, map.span), Certainty::Certain),
                    );
                } else {
                    self.wrong_kind(&what, self.first_line(map.span), "a map", "1 text");
                }
            }
        }
        None
    }

    /// A text in a fixed form: a length, a word, a name.
    pub(super) fn text(&mut self, field: Field<'a>) -> Option<Text<'a>> {
        self.text_with(field, |next| next.is_ascii_digit())
    }

    /// A text; `lost` says which sign behind a `#` makes a comment of what was meant as text.
    fn text_with(&mut self, field: Field<'a>, lost: impl Fn(char) -> bool) -> Option<Text<'a>> {
        let scalar = self.scalar(field, lost)?;
        let written = self.source.slice(scalar.span);
        let quoted = |sign| written.strip_prefix(sign).and_then(|rest| rest.strip_suffix(sign)) == Some(&scalar.text);
        let trimmed = if quoted('"') || quoted('\'') {
            Text::new(&scalar.text, Span::new(scalar.span.start + 1, scalar.span.end - 1), true)
        } else {
            Text::new(&scalar.text, scalar.span, written == scalar.text)
        };
        if trimmed.value.is_empty() {
            self.empty(&field.what(), field.key, scalar.span);
            return None;
        }
        Some(trimmed)
    }

    /// A text in the author's own words. A bare yes or no is none: other YAML readers take it for
    /// true or false, and a reader of the file cannot tell.
    pub(super) fn words(&mut self, field: Field<'a>) -> Option<Spanned<String>> {
        let text = self.text_with(field, |_| true)?;
        self.sign_in_front(text)?;
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
                .plainly(format!("A bare {} needs quotes to be a text.", text.value))
                .edits(Edit::quotes(self.source.slice(text.span), text.span), Certainty::Certain),
            );
            return None;
        }
        Some(text.owned())
    }

    /// Notes a first word that YAML took for a label (`&friends`) or a tag (`!`) and left out.
    fn sign_in_front(&mut self, text: Text<'_>) -> Option<()> {
        let source = self.source.text();
        let before = &source[..text.span.start];
        let before = before.strip_suffix(['"', '\'']).unwrap_or(before);
        let line = &before[before.rfind('\n').map_or(0, |found| found + 1)..];
        let Some(word) = line.split_whitespace().next_back().filter(|word| word.starts_with(['&', '!'])) else {
            return Some(());
        };
        let used = word.strip_prefix('&').is_some_and(|name| source.contains(&format!("*{name}")));
        if used {
            return Some(());
        }
        let start = before.len() - (line.len() - line.rfind(word).unwrap_or(0));
        let whole = Span::new(start, text.span.end);
        let edits = Edit::quotes(self.source.slice(whole), whole);
        self.note(
            Finding::error(
                "yaml-surprise",
                Span::new(start, start + word.len()),
                format!("`{word}` at the start of a text means something else to YAML"),
                "left out of the text",
            )
            .help(format!("put 1 pair of quotes round it all: `\"{word} {}\"`", text.value))
            .plainly(format!("A text that starts with {word} needs quotes."))
            .edits(edits, Certainty::when(word.starts_with('&'))),
        );
        None
    }

    /// One word of a list.
    pub(super) fn word<T: Copy>(&mut self, field: Field<'a>, words: &[(&'static str, T)]) -> Option<Spanned<T>> {
        let text = self.text(field)?;
        self.word_in(field.name, text, words)
    }

    /// One word of a list, as a part of the text at a key.
    pub(super) fn word_in<T: Copy>(
        &mut self,
        key: &str,
        text: Text<'_>,
        words: &[(&'static str, T)],
    ) -> Option<Spanned<T>> {
        let tidied = tidy(text.value).to_lowercase();
        self.heard.offer(WORD, words.iter().map(|(word, _)| *word));
        if let Some((word, value)) = words.iter().find(|(word, _)| *word == tidied) {
            self.heard.take(WORD, word);
            return Some(Spanned::new(*value, text.span));
        }
        let known: Vec<&'static str> = words.iter().map(|(word, _)| *word).collect();
        self.bad_word(key, text, &known);
        None
    }

    /// Notes a word that is not in its list.
    pub(super) fn bad_word(&mut self, name: &str, text: Text<'_>, known: &[&'static str]) {
        let near = self.nearest(&tidy(text.value).to_lowercase(), known);
        let edit = near.and_then(|near| self.in_place_of(text.value, text.span, near));
        let sure = near.is_some_and(|near| is_sure(&tidy(text.value), near, known, false));
        let help = match near {
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
            .plainly(format!("\"{}\" is not one of the words for {name}.", text.value))
            .edits(edit, Certainty::when(sure)),
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
