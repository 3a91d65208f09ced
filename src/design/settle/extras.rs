//! What stands beside the card: notes, ideas for leftovers, supplies and tools.

use super::desk::{Desk, Field};
use super::front::Drafts;
use super::languages::is_in_languages;
use super::names::{Names, tidy};
use crate::design::model::{Allowance, Idea, LayerId, Note, NoteOn, PaperId, Work};
use crate::design::nodes::Node;
use crate::design::variants::Wanted;
use crate::diagnostic::{Certainty, Finding};
use crate::source::Spanned;

const WORKS: [(&str, Work); 8] = [
    ("cutting", Work::Cutting),
    ("stamping", Work::Stamping),
    ("folding", Work::Folding),
    ("sorting", Work::Sorting),
    ("putting together", Work::Units),
    ("layering", Work::Layering),
    ("decorating", Work::Decorating),
    ("posting", Work::Posting),
];

impl<'a> Desk<'a> {
    /// Notes to the reader, each on a layer or a kind of work.
    pub(super) fn notes(&mut self, field: Option<Field<'a>>, layers: &Drafts<'a>) -> Vec<Note> {
        let items = field.and_then(|field| self.items(field)).unwrap_or_default();
        items.into_iter().filter_map(|item| self.reader_note(item, layers)).collect()
    }

    fn reader_note(&mut self, item: Field<'a>, layers: &Drafts<'a>) -> Option<Note> {
        let fields = self.fields(item.node, "a note", item.key, &["on", "say"])?;
        let on = self.required(&fields, "on", "layering").and_then(|field| {
            let text = self.text(field)?;
            let name = tidy(text.value);
            if let Some((_, work)) = WORKS.iter().find(|(word, _)| *word == name.to_lowercase()) {
                return Some(NoteOn::Work(*work));
            }
            let also = WORKS.map(|(word, _)| word);
            self.declared(text, &layers.names, &also).map(|layer| NoteOn::Layer(LayerId(layer)))
        });
        let text = self.required(&fields, "say", "\"Fold first.\"").and_then(|field| self.told(field));
        Some(Note { on: on?, text: text? })
    }

    /// Ideas for what is left.
    pub(super) fn leftovers(&mut self, field: Option<Field<'a>>, papers: &Names) -> Vec<Idea> {
        let items = field.and_then(|field| self.items(field)).unwrap_or_default();
        items.into_iter().filter_map(|item| self.idea(item, papers)).collect()
    }

    fn idea(&mut self, item: Field<'a>, papers: &Names) -> Option<Idea> {
        // A map with a key of ours is an idea for one paper; any other is a text with a colon in it.
        let keyed = matches!(item.node, Node::Map(map) if map.entries.len() > 1
            || map.entries.iter().any(|(key, _)| matches!(tidy(&key.value).as_str(), "from" | "idea")));
        if !keyed || is_in_languages(item.node) {
            return self.told(item).map(|text| Idea { paper: None, text });
        }
        let fields = self.fields(item.node, "an idea", item.key, &["from", "idea"])?;
        let from = fields.get("from").map(|field| {
            let text = self.text(field)?;
            self.declared(text, papers, &[]).map(PaperId)
        });
        let text = self.required(&fields, "idea", "\"A tag.\"").and_then(|field| self.told(field));
        let paper = match from {
            Some(paper) => Some(paper?),
            None => None,
        };
        Some(Idea { paper, text: text? })
    }

    /// Rules by name, each with the reason why it may be broken.
    pub(super) fn allowances(&mut self, field: Option<Field<'a>>) -> Vec<Allowance> {
        let named = field.and_then(|field| self.named(field)).unwrap_or_default();
        let allowance = |(rule, node): (Spanned<String>, &'a Node)| {
            let field = Field { name: "allow", key: rule.span, node, item: false };
            self.words(field).map(|because| Allowance { rule, because })
        };
        named.into_iter().filter_map(allowance).collect()
    }

    /// A list of texts for the reader.
    pub(super) fn texts(&mut self, field: Option<Field<'a>>) -> Vec<Spanned<String>> {
        let items = field.and_then(|field| self.items(field)).unwrap_or_default();
        items.into_iter().filter_map(|item| self.told(item)).collect()
    }

    /// The handouts that are made beside the usual one.
    pub(super) fn handouts(&mut self, field: Option<Field<'a>>) -> Vec<Wanted> {
        let items = field.and_then(|field| self.items(field)).unwrap_or_default();
        items.into_iter().filter_map(|item| self.handout(item)).collect()
    }

    fn handout(&mut self, item: Field<'a>) -> Option<Wanted> {
        let text = self.text(item)?;
        let unknown = match Wanted::read(text.value) {
            Ok(wanted) => return Some(wanted),
            Err(unknown) => unknown,
        };
        let sayings = Wanted::sayings();
        let known: Vec<&str> = sayings.iter().map(String::as_str).collect();
        let near = self.nearest(&tidy(text.value).to_lowercase(), &known);
        let edit = near.and_then(|near| self.in_place_of(text.value, text.span, near));
        let help = match near {
            Some(near) => format!("write 1 item such as `{near}`"),
            None => "write 1 of `handout`, `one leaf`, `designer's copy` and `try-out page`, and behind it what is \
                     unlike the usual: `in large print`, `without fills`, `on letter` or `on A4`"
                .to_owned(),
        };
        self.note(
            Finding::error("bad-word", text.span, format!("`{}` is no handout", text.value), unknown.label())
                .help(help)
                .plainly(format!("\"{}\" does not name a handout that can be made.", text.value))
                .edits(edit, Certainty::Likely),
        );
        None
    }
}
