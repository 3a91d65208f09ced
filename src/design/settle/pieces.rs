//! Pieces: paper, pattern, and a size outright or by relation to the card or another piece.

use super::desk::{Desk, Field, Fields};
use super::head::CardDraft;
use super::names::{Names, tidy};
use super::relations::{Around, Outlined, Wanted};
use super::shape::ShapeDraft;
use crate::design::model::{From, Greeting, How, PaperId, Piece, PieceId, PieceKind, Side, Stated};
use crate::design::nodes::Node;
use crate::diagnostic::Finding;
use crate::shape::{Form, Shape};
use crate::source::{Span, Spanned};

/// The most copies of a piece on a card.
pub(super) const MOST_COPIES: u32 = 1_000;

/// A piece as written.
pub(super) struct PieceDraft {
    pub(super) wanted: Option<(Wanted, Span)>,
    pub(super) from: Option<(From, Span)>,
    upright: Option<bool>,
    per_card: Option<u32>,
    greeting: Option<Greeting>,
    side: Option<Spanned<Side>>,
    pub(super) shape: Option<ShapeDraft>,
    pub(super) kind: PieceKind,
}

impl PieceDraft {
    /// Nothing read yet.
    pub(super) const fn empty() -> Self {
        Self {
            wanted: None,
            from: None,
            upright: None,
            per_card: None,
            greeting: None,
            side: None,
            shape: None,
            kind: PieceKind::Plain,
        }
    }

    /// Which side of its paper it shows, where it says so.
    pub(super) const fn side(&self) -> Option<Spanned<Side>> {
        self.side
    }

    /// The paper, and where it is written.
    pub(super) const fn from(&self) -> Option<(From, Span)> {
        self.from
    }
}

impl<'a> Desk<'a> {
    /// The names of the pieces, for what refers to them. The folded card itself is called `base`,
    /// where there is a card.
    pub(super) fn piece_names(&mut self, field: Option<Field<'a>>, has_card: bool) -> (Names, Vec<&'a Node>) {
        let entries = field.and_then(|field| self.named(field)).unwrap_or_default();
        let (list, nodes): (Vec<Spanned<String>>, Vec<&'a Node>) = entries.into_iter().unzip();
        for name in &list {
            match name.value.as_str() {
                "card" => self.reserved(name, "`card` is the card front"),
                "base" if has_card => self.reserved(name, "`base` is the folded card itself"),
                _ => {}
            }
        }
        (Names { noun: "piece", unknown: "unknown-piece", list }, nodes)
    }

    /// One piece. `counted` says whether copies are counted from the layers.
    pub(super) fn piece(
        &mut self,
        name: &Spanned<String>,
        node: &'a Node,
        pieces: &Names,
        papers: &Names,
        counted: bool,
        has_card: bool,
    ) -> PieceDraft {
        let mut draft = PieceDraft::empty();
        let known = [
            "size",
            "name",
            "from",
            "pattern",
            "side",
            "per card",
            "stamp",
            "printed",
            "die-cut words",
            "shape",
            "by",
            "margin",
            "window",
        ];
        let Some(fields) = self.fields(node, format!("the piece `{}`", name.value), name.span, &known) else {
            return draft;
        };
        self.readers_names(name.span, fields.get("name"));
        draft.shape = self.shape(&fields);
        let outlined = outlined(&fields, draft.shape.as_ref());
        let such_as = if outlined == Outlined::No { "2 x 3 in" } else { "{width: 2 in}" };
        let size = self.required(&fields, "size", such_as);
        let around = Around { pieces, has_card, outlined };
        draft.wanted = size.and_then(|field| self.wanted(field, &name.value, around));
        let from = self.required(&fields, "from", papers.list.first().map_or("white", |name| &name.value));
        draft.from = from.and_then(|field| {
            let text = self.text(field)?;
            if tidy(text.value) == "varies" {
                return Some((From::Varies, text.span));
            }
            if let Some(from) = self.left_by_a_window(text, pieces, papers) {
                return from.map(|from| (from, text.span));
            }
            self.declared(text, papers, &["varies"]).map(|paper| (From::Paper(PaperId(paper)), text.span))
        });
        let patterns = [("upright", true), ("any", false)];
        draft.upright = fields.get("pattern").and_then(|field| self.word(field, &patterns)).map(|word| word.value);
        draft.greeting = self.greeting(&fields);
        draft.side = self.side(fields.get("side"));
        match (fields.get("per card"), counted) {
            (Some(field), true) => self.note(
                Finding::error(
                    "unknown-key",
                    field.key,
                    "`per card` is counted from the layers",
                    "`front` says it already",
                )
                .help("delete this 1 line")
                .plainly("The program counts the copies of a piece from the layers; nothing more need be said."),
            ),
            (Some(field), false) => draft.per_card = self.count(field, MOST_COPIES).map(|count| count.value),
            (None, true) => {}
            (None, false) => {
                let _ = self.required(&fields, "per card", "1");
            }
        }
        draft
    }

    /// What is stamped, printed or cut into words on a piece: one of them.
    fn greeting(&mut self, fields: &Fields<'a>) -> Option<Greeting> {
        const WAYS: [(&str, How); 3] =
            [("stamp", How::Stamped), ("printed", How::Printed), ("die-cut words", How::DieCut)];
        let said: Vec<(Field<'a>, How)> = WAYS.iter().filter_map(|(key, how)| Some((fields.get(key)?, *how))).collect();
        if let [(first, _), (second, _), ..] = said.as_slice() {
            self.note(
                Finding::error(
                    "placed-twice",
                    second.key,
                    "the words on a piece are made twice",
                    format!("`{}` again", second.name),
                )
                .also(first.key, format!("`{}` already", first.name))
                .help(format!("keep 1 of `{}` and `{}`", first.name, second.name))
                .plainly("Words are stamped, printed or cut out, one way on one piece."),
            );
            return None;
        }
        let (field, how) = *said.first()?;
        // A die, or a stamp, says the same to readers of every language.
        let words = if how == How::Printed { self.told(field)? } else { self.told_or_shared(field)? };
        let by_die = fields.get("by").is_some_and(|by| matches!(by.node, Node::Scalar(by) if tidy(&by.text) == "die"));
        if how == How::DieCut && !by_die {
            self.note(
                Finding::error("missing-key", field.key, "die-cut words need a die", "no `by: die` here")
                    .help("add 2 lines, `by: die` and its `margin`")
                    .plainly("Words that are cut out need a die, and the piece does not say so."),
            );
        }
        Some(Greeting { how, words })
    }

    /// Follows every relation and gives the pieces, the card base first. None if any piece is
    /// unknown in size or paper.
    pub(super) fn settle_pieces(
        &mut self,
        drafts: Vec<PieceDraft>,
        names: &Names,
        card: Option<&CardDraft>,
    ) -> Option<Vec<Piece>> {
        let front = card.and_then(|card| card.size).map(|(size, _)| size);
        let wanted: Vec<_> =
            drafts.iter().map(|draft| draft.wanted.as_ref().map(|(wanted, span)| (wanted, *span))).collect();
        let sizes = self.follow(&wanted, names, front);
        let first = usize::from(card.is_some());
        let mut pieces = Vec::new();
        let mut shaped = true;
        if let Some(card) = card {
            pieces.push(base(card)?);
        }
        for ((draft, name), size) in drafts.into_iter().zip(&names.list).zip(sizes) {
            let (wanted, size_span) = draft.wanted?;
            let (from, from_span) = draft.from?;
            let size = size?;
            let shape = self.settle_shape(draft.shape, &name.value, size, size_span);
            shaped &= shape.is_some();
            let Some(shape) = shape else { continue };
            let from = match from {
                From::Window(frame, window) => From::Window(PieceId(frame.0 + first), window),
                other => other,
            };
            pieces.push(Piece {
                name: name.value.clone(),
                span: name.span,
                kind: draft.kind,
                size,
                shape_span: shape.span,
                shape: shape.value,
                size_span,
                stated: match wanted {
                    Wanted::Outright(_) => Stated::Outright,
                    Wanted::Related(stated) => stated.moved(first),
                },
                from,
                from_span,
                upright: draft.upright,
                per_card: draft.per_card,
                greeting: draft.greeting,
                side: draft.side.map_or(Side::Front, |side| side.value),
            });
        }
        (shaped && self.fit_their_windows(&pieces)).then_some(pieces)
    }
}

/// Whether a piece has the outline of a drawing.
fn outlined(fields: &Fields<'_>, shape: Option<&ShapeDraft>) -> Outlined {
    let is_meant = fields.get("shape").is_some_and(|field| match field.node {
        Node::Map(map) => map.entries.iter().any(|(key, _)| tidy(&key.value) == "outline"),
        _ => false,
    });
    match shape.and_then(ShapeDraft::drawn_height) {
        Some(height) => Outlined::By(height),
        None if is_meant => Outlined::Unknown,
        None => Outlined::No,
    }
}

/// The card base: twice the front along the fold.
fn base(card: &CardDraft) -> Option<Piece> {
    let (front, size_span) = card.size?;
    let from = card.from?;
    let size = card.fold?.flat(front);
    Some(Piece {
        name: "base".to_owned(),
        span: card.span,
        kind: PieceKind::Base,
        size,
        shape: Shape::by_hand(Form::Rectangle, size.width.nm(), size.height.nm()),
        shape_span: size_span,
        size_span,
        stated: Stated::Outright,
        from: From::Paper(from.value),
        from_span: from.span,
        upright: None,
        per_card: None,
        greeting: None,
        side: Side::Front,
    })
}
