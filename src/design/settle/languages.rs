//! The languages of the handout, and the reader's texts and names in each.
//!
//! A text may be a map of languages; a name that the design refers to by its key has its reader's names beside it.

use super::desk::{Desk, Field};
use super::names::tidy;
use super::ring::is_numbered;
use crate::design::model::{Design, PieceKind, Untold};
use crate::design::nodes::Node;
use crate::source::{Span, Spanned};
use crate::words::{Language, Plurals, Words, places};

/// What a thing is called by readers.
#[derive(Debug, Clone)]
pub(super) struct Called {
    /// One of them.
    one: Spanned<String>,
    /// Several.
    many: Option<Spanned<String>>,
}

/// The languages that a `language:` value names, in its order, each once.
#[must_use]
pub fn languages_asked(root: &Node) -> Vec<Language> {
    let Some(Node::Scalar(scalar)) = root.get("language") else { return vec![Language::ENGLISH] };
    let mut asked = Vec::new();
    for word in scalar.text.split([',', ' ']) {
        let language = Language::of_tag(word);
        asked.extend(language.filter(|language| !asked.contains(language)));
    }
    if asked.is_empty() { vec![Language::ENGLISH] } else { asked }
}

/// The tags of all languages.
fn tags() -> Vec<&'static str> {
    Language::all().map(Language::tag).collect()
}

/// Whether a value is a map of languages: a colon in a text makes a map too.
pub(super) fn is_in_languages(node: &Node) -> bool {
    let is_tag = |word: &str| Language::of_tag(&tidy(word)).is_some();
    matches!(node, Node::Map(map) if map.entries.iter().any(|(key, _)| is_tag(&key.value)))
}

impl<'a> Desk<'a> {
    /// Notes what is wrong with `language:`.
    pub(super) fn language(&mut self, field: Field<'a>) {
        let Some(text) = self.text(field) else { return };
        let tags = tags();
        let known: Vec<(&'static str, ())> = tags.iter().map(|tag| (*tag, ())).collect();
        let mut seen: Vec<(String, Span)> = Vec::new();
        for item in text.items() {
            if item.value.is_empty() {
                self.bad_word("language", text, &tags);
            } else if let Some((_, first)) = seen.iter().find(|(word, _)| *word == tidy(item.value).to_lowercase()) {
                let first = *first;
                self.repeated(item.value, item.span, first);
            } else if self.word_in("language", item, &known).is_some() {
                seen.push((tidy(item.value).to_lowercase(), item.span));
            }
        }
    }

    /// The language that a text without one is in.
    pub(super) fn first_language(&self) -> Language {
        self.languages.first().copied().unwrap_or_default()
    }

    /// Keeps in mind that a text at a place is not said in some language that is asked for.
    fn said_in(&mut self, span: Span, said: &[Language]) {
        let missing: Vec<Language> =
            self.languages.iter().copied().filter(|language| !said.contains(language)).collect();
        if !missing.is_empty() {
            self.untold.push(Untold { span, languages: missing, file: None });
        }
    }

    /// A text for the reader: one text, in the first language, or one for each.
    pub(super) fn told(&mut self, field: Field<'a>) -> Option<Spanned<String>> {
        if !is_in_languages(field.node) {
            let text = self.words(field)?;
            self.said_in(text.span, &[self.first_language()]);
            return Some(text);
        }
        let texts = self.each_language(field, "the text", |desk, field| desk.words(field))?;
        let said: Vec<Language> = texts.iter().map(|(language, _)| *language).collect();
        self.said_in(field.key, &said);
        self.in_language(texts, self.language)
    }

    /// The same of words that stand on the card itself, which may be the same in every language.
    pub(super) fn told_or_shared(&mut self, field: Field<'a>) -> Option<Spanned<String>> {
        if is_in_languages(field.node) { self.told(field) } else { self.words(field) }
    }

    /// What is said in a language; where it is not, in the first, else in whichever there is.
    fn in_language<T>(&self, texts: Vec<(Language, T)>, wanted: Language) -> Option<T> {
        let rank = |language: Language| match language {
            language if language == wanted => 0,
            language if language == self.first_language() => 1,
            _ => 2,
        };
        texts.into_iter().min_by_key(|(language, _)| rank(*language)).map(|(_, text)| text)
    }

    /// A map of languages, each value read; none where any is faulty.
    fn each_language<T>(
        &mut self,
        field: Field<'a>,
        what: &str,
        mut read: impl FnMut(&mut Self, Field<'a>) -> Option<T>,
    ) -> Option<Vec<(Language, T)>> {
        let tags = tags();
        let fields = self.fields(field.node, what, field.key, &tags)?;
        let found: Vec<(Language, Option<T>)> = tags
            .iter()
            .filter_map(|tag| Some((Language::of_tag(tag)?, fields.get(tag)?)))
            .map(|(language, field)| (language, read(self, field)))
            .collect();
        found.into_iter().map(|(language, text)| Some((language, text?))).collect()
    }

    /// What readers call a thing, in each language that is said.
    fn names(&mut self, field: Field<'a>) -> Option<Vec<(Language, Called)>> {
        if is_in_languages(field.node) {
            return self.each_language(field, "the name", Self::called);
        }
        let called = self.called(field)?;
        Some(vec![(self.first_language(), called)])
    }

    /// `leaf`, or `{one: leaf, many: leaves}`.
    fn called(&mut self, field: Field<'a>) -> Option<Called> {
        let is_pair = |key: &str| matches!(tidy(key).as_str(), "one" | "many");
        if !matches!(field.node, Node::Map(map) if map.entries.iter().any(|(key, _)| is_pair(&key.value))) {
            return self.words(field).map(|one| Called { one, many: None });
        }
        let fields = self.fields(field.node, "the name", field.key, &["one", "many"])?;
        let one = self.required(&fields, "one", "leaf").and_then(|field| self.words(field));
        let many = self.required(&fields, "many", "leaves").and_then(|field| self.words(field));
        Some(Called { one: one?, many: Some(many?) })
    }

    /// A name that others in the design refer to, said where it is given: its first language's is the key.
    pub(super) fn own_name(&mut self, field: Field<'a>) -> Option<Spanned<String>> {
        let names = self.names(field)?;
        let said: Vec<Language> = names.iter().map(|(language, _)| *language).collect();
        let key = self.in_language(names.clone(), self.first_language())?.one;
        self.said_in(key.span, &said);
        self.called.push((key.span, names));
        Some(key)
    }

    /// Reader's names of a thing whose key stands before a colon; the key is its name in the first language.
    pub(super) fn readers_names(&mut self, key: Span, field: Option<Field<'a>>) {
        let mut said = vec![self.first_language()];
        let Some(field) = field else { return self.said_in(key, &said) };
        let Some(names) = self.names(field) else { return };
        said.extend(names.iter().map(|(language, _)| *language));
        self.said_in(field.key, &said);
        self.called.push((key, names));
    }

    /// Puts the reader's names of one language in the place of the keys. `layers` are the places where the names
    /// of layers are written.
    pub(super) fn name_for_readers(&self, design: &mut Design, layers: &[Span], language: Language) {
        let mut plurals = Plurals::default();
        let mut name_of = |key: Span| -> Option<Spanned<String>> {
            let (_, names) = self.called.iter().find(|(span, _)| *span == key)?;
            let (_, called) = names.iter().find(|(named, _)| *named == language)?;
            if let Some(many) = &called.many {
                plurals.insert(tidy(&called.one.value), tidy(&many.value));
            }
            Some(Spanned::new(tidy(&called.one.value), called.one.span))
        };
        for (layer, place) in design.layers.iter_mut().zip(layers) {
            let piece = &design.pieces[layer.piece.0];
            if let Some(name) = name_of(*place) {
                (layer.name, layer.span) = (name.value, name.span);
                continue;
            }
            // A layer without a name of its own, and the second strip of a ring from one piece.
            let rest = layer.name.strip_prefix(&piece.name).filter(|_| is_numbered(&layer.name, &piece.name));
            if let Some((rest, name)) = rest.and_then(|rest| Some((rest, name_of(piece.span)?))) {
                (layer.name, layer.span) = (format!("{}{rest}", name.value), name.span);
            }
        }
        for piece in &mut design.pieces {
            if piece.kind == PieceKind::Base {
                piece.name = places::base(Words::of(language));
            } else if let Some(name) = name_of(piece.span) {
                (piece.name, piece.span) = (name.value, name.span);
            }
        }
        for paper in &mut design.papers {
            if let Some(name) = name_of(paper.span) {
                (paper.name, paper.span) = (name.value, name.span);
            }
        }
        for version in &mut design.versions {
            if let Some(name) = name_of(version.span) {
                (version.name, version.span) = (name.value, name.span);
            }
        }
        if design.card.is_some() {
            plurals.insert(places::base(Words::of(language)), places::bases(Words::of(language)));
        }
        design.words = Words::with_plurals(language, plurals);
    }
}
