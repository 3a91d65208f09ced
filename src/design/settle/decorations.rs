//! Decorations: bought ready made or cut from a roll, and laid like pieces.

use super::desk::{Desk, Field};
use super::names::Names;
use super::pieces::PieceDraft;
use super::relations::Wanted;
use super::shape::ShapeDraft;
use crate::design::model::{From, PieceKind};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::length::Length;
use crate::source::Spanned;

impl<'a> Desk<'a> {
    /// The names of decorations, which they share with pieces, and what stands behind them.
    pub(super) fn decoration_names(
        &mut self,
        field: Option<Field<'a>>,
        pieces: &mut Names,
    ) -> Vec<(Spanned<String>, &'a Node)> {
        let entries = field.and_then(|field| self.named(field)).unwrap_or_default();
        let mut kept = Vec::new();
        for (name, node) in entries {
            if let Some(first) = pieces.position(&name.value) {
                let first = pieces.list[first].span;
                self.used_twice("piece or decoration", &name, first);
            } else if matches!(name.value.as_str(), "card" | "base") {
                self.reserved(&name, "it is the card's own");
            } else {
                pieces.list.push(name.clone());
                kept.push((name, node));
            }
        }
        kept
    }

    /// `{size: 4 x 4 mm, form: round, thick: 2 mm, length: 12 in}`.
    pub(super) fn decoration(&mut self, name: &Spanned<String>, node: &'a Node) -> PieceDraft {
        let mut draft = PieceDraft::empty();
        let known = ["size", "name", "form", "thick", "length"];
        let Some(fields) = self.fields(node, format!("the decoration `{}`", name.value), name.span, &known) else {
            return draft;
        };
        self.readers_names(name.span, fields.get("name"));
        draft.wanted = self.required(&fields, "size", "4 x 4 mm").and_then(|field| {
            let text = self.text(field)?;
            self.size_in(text, Role::Outright).map(|size| (Wanted::Outright(size), text.span))
        });
        let forms = [("rectangle", false), ("round", true)];
        let round = fields.get("form").map_or(Some(false), |field| self.word(field, &forms).map(|form| form.value));
        let mut measure = |key: &'static str, role| match fields.get(key) {
            None => Some(None),
            Some(field) => self.more_than_nothing(field, role).map(Some),
        };
        let (thick, roll) = (measure("thick", Role::Gap), measure("length", Role::Opening));
        let size = match draft.wanted {
            Some((Wanted::Outright(size), _)) => Some(size),
            _ => None,
        };
        if let (Some(round), Some(thick), Some(roll), Some(size)) = (round, thick, roll, size) {
            draft.from = Some((From::Bought, name.span));
            draft.kind = PieceKind::Decoration { roll, thick };
            draft.shape = Some(ShapeDraft::of_decoration(round, size));
        }
        draft
    }

    pub(super) fn more_than_nothing(&mut self, field: Field<'a>, role: Role) -> Option<Length> {
        let length = self.length(field, role)?;
        if length.nm() > 0 {
            return Some(length);
        }
        self.note(
            Finding::error(
                "size-not-positive",
                field.node.span(),
                format!("`{}` is nothing at all", field.name),
                format!("{length}"),
            )
            .help("make it more than 0, or delete the line")
            .plainly("A measure of a decoration is more than nothing."),
        );
        None
    }
}
