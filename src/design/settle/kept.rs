//! Leftovers that are kept whole: each is a piece of its source and a paper of its own.

use super::desk::{Desk, Field};
use super::names::{Names, tidy};
use super::sheets::MOST_SHEETS;
use super::text::Text;
use crate::design::model::{Fixed, From, Paper, PaperId, Piece, PieceKind, Sheets, Side, Stated};
use crate::design::nodes::Node;
use crate::design::restate::{Restate, Role, Towards};
use crate::design::sizes::named;
use crate::diagnostic::Finding;
use crate::length::Size;
use crate::shape::{Form, Shape};
use crate::source::Spanned;

/// A kept leftover as written.
pub(super) struct KeptDraft {
    name: Spanned<String>,
    /// The paper that keeps it.
    source: usize,
    /// How many of what size, where it could be read.
    sheets: Option<Sheets>,
    /// Whether it is printed where it lies.
    printed: bool,
}

/// A size, so many times; only the size has a twin.
#[derive(Clone)]
struct Counted {
    count: u32,
    size: Size,
}

impl KeptDraft {
    /// The printed cells of a paper.
    pub(super) const fn of_cells(name: Spanned<String>, source: usize, sheets: Sheets) -> Self {
        Self { name, source, sheets: Some(sheets), printed: true }
    }
}

impl Restate for Counted {
    fn restated(&self, role: Role, towards: Towards) -> (Self, i64) {
        let (size, off) = self.size.restated(role, towards);
        (Self { size, ..*self }, off)
    }
}

impl<'a> Desk<'a> {
    /// The leftovers that a paper keeps: `{tag paper: 4 x 5 1/2 in, strip paper: 2 of 1 x 6 in}`.
    pub(super) fn keep(&mut self, field: Field<'a>, source: usize) -> Vec<KeptDraft> {
        let entries = self.named(field).unwrap_or_default();
        let drafts = entries.into_iter().map(|(name, node)| {
            let sheets = self.kept_size(&name, node).and_then(|text| self.kept_sheets(text));
            KeptDraft { name, source, sheets, printed: false }
        });
        drafts.collect()
    }

    /// A size, or `{size: 4 x 5 1/2 in, name: {de: Anhängerpapier}}`.
    fn kept_size(&mut self, name: &Spanned<String>, node: &'a Node) -> Option<Text<'a>> {
        if !matches!(node, Node::Map(_)) {
            self.readers_names(name.span, None);
            return self.text(Field { name: "keep", key: name.span, node, item: true });
        }
        let fields = self.fields(node, format!("the leftover `{}`", name.value), name.span, &["size", "name"])?;
        self.readers_names(name.span, fields.get("name"));
        let size = self.required(&fields, "size", "4 x 5 1/2 in")?;
        self.text(size)
    }

    /// `4 x 5 1/2 in`, `2 of 4 x 5 1/2 in | 100 x 140 mm`, `2 of A6 | 2 of quarter letter`.
    fn kept_sheets(&mut self, text: Text<'_>) -> Option<Sheets> {
        // The count of the first half stands for both, unless the second says its own.
        let mut first: Option<Option<u32>> = None;
        let one = |desk: &mut Self, half: Text<'_>| {
            let (count, wanted) = match half.at_word("of") {
                Some((count, wanted)) => (Some(desk.count_in("keep", count, MOST_SHEETS)?), wanted),
                None => (None, half),
            };
            if first == Some(None) && count.is_some() {
                desk.note(
                    Finding::error("bad-count", half.span, "only the second half says how many", "counted here alone")
                        .help("put the count in front, such as `2 of 4 x 5 in | 100 x 125 mm`")
                        .plainly("A kept leftover says how many in front of its size."),
                );
                return None;
            }
            let count = count.or(first.flatten());
            first = Some(count);
            if wanted.value.is_empty() {
                desk.note(
                    Finding::error("bad-size", text.span, "the leftover has no size", "no size here")
                        .help("say it as `4 x 5 1/2 in` or `2 of 4 x 5 1/2 in`")
                        .plainly("A kept leftover needs a size."),
                );
                return None;
            }
            Some(Counted { count: count.unwrap_or(1), size: desk.one_size(wanted)? })
        };
        let stated = self.stated(text, "size", one, |kept| kept.size.width.unit().system())?;
        let show = |kept: &Counted| kept.size.to_string();
        let Counted { count, size } = self.chosen(text, &stated, Role::Outright, show)?;
        let halves = text.split('|');
        let names =
            halves.iter().filter_map(|half| named(&tidy(half.at_word("of").map_or(*half, |(_, size)| size).value)));
        let named = names.into_iter().find(|named| named.size == size).map(|named| named.name.to_owned());
        Some(Sheets { count, size, named, span: text.span })
    }

    /// The names of the kept leftovers behind those of the papers; each is a paper too, and none
    /// may be called like a piece. A name that is taken already is noted and left out.
    pub(super) fn name_kept(
        &mut self,
        kept: Vec<KeptDraft>,
        papers: &mut Names,
        pieces: &Names,
        has_card: bool,
    ) -> Vec<KeptDraft> {
        let mut known = Vec::new();
        for draft in kept {
            let name = &draft.name;
            match name.value.as_str() {
                "varies" => self.reserved(name, "a piece whose paper differs says `from: varies`"),
                "card" => self.reserved(name, "`card` is the card front"),
                "base" if has_card => self.reserved(name, "`base` is the folded card itself"),
                _ => {}
            }
            if let Some(piece) = pieces.position(&name.value) {
                let piece = pieces.list[piece].span;
                self.note(
                    Finding::error(
                        "name-used-twice",
                        name.span,
                        format!("a kept leftover and a piece are called `{}`", name.value),
                        "the leftover",
                    )
                    .also(piece, "the piece")
                    .help(format!("give the leftover another name, such as `{} paper`", name.value))
                    .plainly(format!("A leftover and a piece have the same name, \"{}\".", name.value)),
                );
            }
            if let Some(paper) = papers.position(&name.value) {
                let first = papers.list[paper].span;
                self.used_twice("paper", name, first);
                continue;
            }
            papers.list.push(name.clone());
            known.push(draft);
        }
        known
    }
}

/// The papers that kept leftovers are, behind the written ones; none where any is unknown.
pub(super) fn kept_papers(kept: &[KeptDraft], written: &[Paper]) -> Option<Vec<Paper>> {
    let papers = kept.iter().map(|draft| {
        let source = &written[draft.source];
        Some(Paper {
            name: draft.name.value.clone(),
            span: draft.name.span,
            sheets: vec![draft.sheets.clone()?],
            pattern: source.pattern,
            pattern_span: source.pattern_span,
            edge_strip: None,
            weight: source.weight.clone(),
            thickness: source.thickness,
            // Its longer side need not be that of the sheet.
            grain: None,
            back: source.back,
            different: source.different,
            kept_from: Some(PaperId(draft.source)),
            fixed: Fixed::default(),
            also: Vec::new(),
            ways: 1,
            cells: None,
        })
    });
    papers.collect()
}

/// The pieces that kept leftovers are; `written` are the names of the written papers.
pub(super) fn kept_pieces(kept: &[KeptDraft], written: &[Spanned<String>]) -> Option<Vec<Piece>> {
    let pieces = kept.iter().enumerate().map(|(index, draft)| {
        let sheets = draft.sheets.as_ref()?;
        Some(Piece {
            name: draft.name.value.clone(),
            span: draft.name.span,
            kind: PieceKind::Kept { paper: PaperId(written.len() + index), count: sheets.count },
            size: sheets.size,
            shape: Shape::by_hand(Form::Rectangle, sheets.size.width.nm(), sheets.size.height.nm()),
            shape_span: sheets.span,
            size_span: sheets.span,
            stated: Stated::Outright,
            from: From::Paper(PaperId(draft.source)),
            from_span: written[draft.source].span,
            upright: draft.printed.then_some(true),
            per_card: None,
            greeting: None,
            side: Side::Front,
        })
    });
    pieces.collect()
}
