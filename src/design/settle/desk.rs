//! What is at hand while a design is settled, and how a value is taken from a node.
//!
//! Every fault is noted and the reading goes on: a `None` here always has its finding.

use crate::design::model::Untold;
use crate::design::nodes::{Map, Node};
use crate::design::restate::Restated;
use crate::diagnostic::{Certainty, Edit, Finding};
use crate::length::{Length, Size, Unit, Units};
use crate::source::{Source, Span, Spanned};
use crate::words::Language;

use super::heard::Heard;
use super::languages::Called;
use super::names::{is_sure, listed, tidy};

/// The findings so far and what every part needs to know.
pub(super) struct Desk<'a> {
    pub(super) source: &'a Source,
    /// The system that the design is settled for.
    pub(super) units: Units,
    /// The ruler's step, once the workshop is known.
    pub(super) ruler: Length,
    /// The systems that the design asks for, at least one.
    pub(super) asked: Vec<Units>,
    pub(super) findings: Vec<Finding>,
    /// The languages that the design asks for, at least one.
    pub(super) languages: Vec<Language>,
    /// The language that texts are taken in.
    pub(super) language: Language,
    /// Texts that are not said in every language asked for.
    pub(super) untold: Vec<Untold>,
    /// What readers call things, by the places of their keys.
    pub(super) called: Vec<(Span, Vec<(Language, Called)>)>,
    /// What this edition has by rule so far.
    pub(super) restated: Vec<Restated>,
    /// The card as stated and as this edition has it, where a rule changed it.
    pub(super) card: Option<(Size, Size)>,
    /// Texts that a comma cut off: what else is wrong with them is no fault of theirs.
    cut_off: Vec<Span>,
    /// The fixed words met so far.
    pub(super) heard: Heard,
    /// The units that the lengths of the design are written in.
    pub(super) written_in: Vec<Unit>,
    /// In a half of a pair: the system that the other half leaves for it, where that one has a length.
    pub(super) left_over: Option<Option<Units>>,
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
    /// Whether it is an item of the list at this key.
    pub(super) item: bool,
}

impl Field<'_> {
    /// What it is, in words.
    pub(super) fn what(&self) -> String {
        if self.item { format!("an item of `{}`", self.name) } else { format!("`{}`", self.name) }
    }
}

/// The known keys of a map.
#[derive(Clone)]
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

impl<'a> Desk<'a> {
    pub(super) fn new(source: &'a Source, units: Units, asked: Vec<Units>) -> Self {
        let ruler = Length::either(units, Length::inch(1, 16), Length::mm(1));
        Self {
            source,
            units,
            ruler,
            asked,
            findings: Vec::new(),
            languages: vec![Language::ENGLISH],
            language: Language::ENGLISH,
            untold: Vec::new(),
            called: Vec::new(),
            restated: Vec::new(),
            card: None,
            cut_off: Vec::new(),
            heard: Heard::default(),
            written_in: Vec::new(),
            left_over: None,
        }
    }

    /// Whether two systems are asked for.
    pub(super) fn both(&self) -> bool {
        self.asked.len() > 1
    }

    /// Notes a finding.
    pub(super) fn note(&mut self, finding: Finding) {
        let place = finding.primary.span;
        if self.cut_off.iter().any(|text| text.start <= place.start && place.end <= text.end) {
            return;
        }
        // Sentences for newcomers go without the marks of code.
        let plain = finding.plain.as_ref().map(|plain| plain.replace('`', "\""));
        self.findings.push(Finding { plain, ..finding });
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
        let place = known.first().copied().unwrap_or_default();
        self.heard.offer(place, known.iter().copied());
        let mut found: Vec<Field<'a>> = Vec::new();
        for (entry, (key, value)) in map.entries.iter().enumerate() {
            let name = tidy(&key.value);
            match known.iter().copied().find(|known| *known == name) {
                Some(name) => match found.iter().find(|field| field.name == name) {
                    Some(first) => {
                        let first = first.key;
                        self.repeated(name, key.span, first);
                    }
                    None => {
                        self.heard.take(place, name);
                        found.push(Field { name, key: key.span, node: value, item: false });
                    }
                },
                None if name.is_empty() => self.nameless(key.span),
                None if self.is_cut_off(map, entry) => self.comma(map, entry),
                None => self.unknown_key(&what, &name, key.span, known, map),
            }
        }
        Some(Fields { what, span, found })
    }

    /// A map of the author's own names; repeated names are noted and dropped.
    pub(super) fn named(&mut self, field: Field<'a>) -> Option<Vec<(Spanned<String>, &'a Node)>> {
        let map = self.map(field.node, &field.what(), field.key)?;
        if map.entries.is_empty() {
            self.empty(&field.what(), field.key, map.span);
            return None;
        }
        let mut found: Vec<(Spanned<String>, &'a Node)> = Vec::new();
        for (key, value) in &map.entries {
            let name = tidy(&key.value);
            if name.is_empty() {
                self.nameless(key.span);
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

    /// Whether an entry between `{` and `}` is only what a comma cut off the text before it.
    fn is_cut_off(&self, map: &Map, place: usize) -> bool {
        let (key, value) = &map.entries[place];
        let behind = self.source.text().get(key.span.end..).unwrap_or("").trim_start();
        let before = place.checked_sub(1).map(|before| &map.entries[before].1);
        value.is_empty() && behind.starts_with([',', '}']) && matches!(before, Some(Node::Scalar(_)))
    }

    /// Notes the first of what commas cut off a text.
    fn comma(&mut self, map: &Map, place: usize) {
        let parts = (place..map.entries.len()).take_while(|place| self.is_cut_off(map, *place));
        let parts: Vec<&str> = parts.map(|place| map.entries[place].0.value.as_str()).collect();
        let Node::Scalar(text) = &map.entries[place - 1].1 else { return };
        if text.empty && place > 1 && self.is_cut_off(map, place - 1) {
            return;
        }
        self.cut_off.push(text.span);
        let whole: String = format!("{}, {}", text.text, parts.join(", ")).chars().take(80).collect();
        let last = &map.entries[place + parts.len() - 1].0;
        let typed = Span::new(text.span.start, last.span.end);
        let edits = Edit::quotes(self.source.slice(typed), typed);
        self.note(
            Finding::error(
                "yaml-surprise",
                map.entries[place].0.span,
                "a comma ends a text between `{` and `}`",
                "taken for a key of its own",
            )
            .help(format!("put 1 pair of quotes round the whole text: `\"{whole}\"`"))
            .plainly("Between { and } a comma starts a new value, so a text that holds one needs quotes.")
            .edits(edits, Certainty::Certain),
        );
    }

    fn nameless(&mut self, span: Span) {
        self.note(
            Finding::error("wrong-kind", span, "a key is not a text", "no word in front of the colon")
                .help("write 1 word or name in front of the colon")
                .plainly("A word is missing in front of a colon."),
        );
    }

    fn unknown_key(&mut self, what: &str, name: &str, span: Span, known: &[&'static str], map: &Map) {
        let near = self.nearest(name, known);
        // A key that stands there already is not meant again.
        let free = near.filter(|near| map.entries.iter().all(|(key, _)| tidy(&key.value) != *near));
        let edit = free.and_then(|near| self.in_place_of(name, span, near));
        let sure = near.is_some_and(|near| is_sure(name, near, known, false));
        let (label, help) = match near {
            Some(near) => {
                (format!("not a key of {what}"), format!("write `{near}`, the nearest of {} keys", known.len()))
            }
            None => (format!("not a key of {what}"), format!("use 1 of {}", listed(known))),
        };
        self.note(
            Finding::error("unknown-key", span, format!("`{name}` is not known here"), label)
                .help(help)
                .plainly(format!("Nothing called \"{name}\" can be said about {what}."))
                .edits(edit, Certainty::when(sure)),
        );
    }

    pub(super) fn repeated(&mut self, name: &str, span: Span, first: Span) {
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
                        .map(|node| Field { name: field.name, key: self.first_line(node.span()), node, item: true })
                        .collect(),
                );
            }
            node if node.is_empty() => self.empty(&field.what(), field.key, node.span()),
            Node::Scalar(scalar) => {
                self.wrong_kind(&field.what(), scalar.span, "a text", "a list, each item behind 1 `-`")
            }
            Node::Map(map) => {
                self.wrong_kind(&field.what(), self.first_line(map.span), "a map", "a list, each item behind 1 `-`")
            }
        }
        None
    }

    /// The first line of a long value, so that a label does not run over lines.
    pub(super) fn first_line(&self, span: Span) -> Span {
        let line = self.source.slice(span).lines().next().unwrap_or("");
        Span::new(span.start, span.start + line.trim_end().len())
    }

    pub(super) fn wrong_kind(&mut self, what: &str, span: Span, found: &str, wanted: &str) {
        self.note(
            Finding::error("wrong-kind", span, format!("{what} is written as {found}"), format!("{found} stands here"))
                .help(format!("write it as {wanted}"))
                .plainly(format!("{} is written in the wrong form.", capital(what))),
        );
    }
}

/// With a capital letter.
pub(super) fn capital(text: &str) -> String {
    let mut signs = text.chars();
    signs.next().map_or_else(String::new, |first| first.to_uppercase().chain(signs).collect())
}
