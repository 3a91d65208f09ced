//! Pieces: paper, pattern, and a size outright or by relation to the card or another piece.

use super::desk::{Desk, Field};
use super::head::CardDraft;
use super::names::{Names, tidy};
use super::text::Text;
use crate::design::model::{From, PaperId, Piece, PieceId, PieceKind, Side, Stated};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::length::{Length, Size};
use crate::shape::{Form, Shape};
use crate::source::{Span, Spanned};

/// The most copies of a piece on a card.
pub(super) const MOST_COPIES: u32 = 1_000;

/// Where a size comes from, before relations are followed. Pieces are numbered as written.
enum Wanted {
    Outright(Size),
    CardLess(Length),
    PieceLess(usize, Length),
}

/// A piece as written.
pub(super) struct PieceDraft {
    wanted: Option<(Wanted, Span)>,
    from: Option<(From, Span)>,
    upright: Option<bool>,
    per_card: Option<u32>,
    stamp: Option<Spanned<String>>,
    side: Option<Spanned<Side>>,
}

impl PieceDraft {
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
        let mut draft = PieceDraft { wanted: None, from: None, upright: None, per_card: None, stamp: None, side: None };
        let known = ["size", "from", "pattern", "side", "per card", "stamp"];
        let Some(fields) = self.fields(node, format!("the piece `{}`", name.value), name.span, &known) else {
            return draft;
        };
        let size = self.required(&fields, "size", "2 x 3 in");
        draft.wanted = size.and_then(|field| {
            let text = self.text(field)?;
            self.wanted(text, pieces, has_card).map(|wanted| (wanted, text.span))
        });
        let from = self.required(&fields, "from", papers.list.first().map_or("white", |name| &name.value));
        draft.from = from.and_then(|field| {
            let text = self.text(field)?;
            if tidy(text.value) == "varies" {
                return Some((From::Varies, text.span));
            }
            self.declared(text, papers, &["varies"]).map(|paper| (From::Paper(PaperId(paper)), text.span))
        });
        let patterns = [("upright", true), ("any", false)];
        draft.upright = fields.get("pattern").and_then(|field| self.word(field, &patterns)).map(|word| word.value);
        draft.stamp = fields.get("stamp").and_then(|field| self.words(field));
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

    /// `4 x 5 in`, `A6`, `card less 1/8 in all round`, `mat less 1/8 in | 3 mm all round`.
    fn wanted(&mut self, text: Text<'_>, pieces: &Names, has_card: bool) -> Option<Wanted> {
        let Some((of, rest)) = text.at_last("less") else {
            if let Some(name) = text.before_all_round() {
                self.no_relation(text, &format!("{} less 1/8 in all round", tidy(name.value)));
                return None;
            }
            return self.size_in(text, Role::Outright).map(Wanted::Outright);
        };
        let Some(border) = rest.before_all_round() else {
            self.no_relation(text, &format!("{} all round", tidy(text.value)));
            return None;
        };
        if tidy(of.value) == "card" {
            if !has_card {
                self.note(
                    Finding::error(
                        "missing-key",
                        of.span,
                        "there is no `card` to be smaller than",
                        "this design has no card",
                    )
                    .help("add `card:` with its size, or write the size outright, such as `4 x 5 1/4 in`")
                    .plainly("The size leans on the card, and no card is described."),
                );
            }
            let border = self.length_in(border, Role::Border);
            return border.filter(|_| has_card).map(Wanted::CardLess);
        }
        let piece = self.declared(of, pieces, &["card"]);
        let border = self.length_in(border, Role::Border);
        Some(Wanted::PieceLess(piece?, border?))
    }

    fn no_relation(&mut self, text: Text<'_>, form: &str) {
        self.note(
            Finding::error("bad-size", text.span, format!("`{}` is not a size", text.value), "no border `all round`")
                .help(format!("say it as `{form}`, or outright as `4 x 5 1/4 in`"))
                .plainly("A size by relation says what it is smaller than, by how much, and \"all round\"."),
        );
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
        let sizes = self.follow(&drafts, names, front);
        let first = usize::from(card.is_some());
        let mut pieces = Vec::new();
        if let Some(card) = card {
            pieces.push(base(card)?);
        }
        for ((draft, name), size) in drafts.into_iter().zip(&names.list).zip(sizes) {
            let (wanted, size_span) = draft.wanted?;
            let (from, from_span) = draft.from?;
            let size = size?;
            pieces.push(Piece {
                name: name.value.clone(),
                span: name.span,
                kind: PieceKind::Plain,
                size,
                shape: Shape::by_hand(Form::Rectangle, size.width.nm(), size.height.nm()),
                shape_span: size_span,
                size_span,
                stated: match wanted {
                    Wanted::Outright(_) => Stated::Outright,
                    Wanted::CardLess(border) => Stated::CardLess(border),
                    Wanted::PieceLess(of, border) => Stated::PieceLess(PieceId(of + first), border),
                },
                from,
                from_span,
                upright: draft.upright,
                per_card: draft.per_card,
                stamp: draft.stamp,
                side: draft.side.map_or(Side::Front, |side| side.value),
            });
        }
        Some(pieces)
    }

    /// The size of every piece that has one. A circle is noted once, and so is the first size of a
    /// chain that comes to nothing.
    fn follow(&mut self, drafts: &[PieceDraft], names: &Names, front: Option<Size>) -> Vec<Option<Size>> {
        let mut sizes: Vec<Option<Size>> = vec![None; drafts.len()];
        let mut done = vec![false; drafts.len()];
        for start in 0..drafts.len() {
            // Down the chain to a piece that is done or needs no other, then back up again.
            let mut chain = Vec::new();
            let mut on_chain = vec![false; drafts.len()];
            let mut at = start;
            while !done[at] {
                if on_chain[at] {
                    let from = chain.iter().position(|piece| *piece == at).unwrap_or(0);
                    self.circle(&chain[from..], drafts, names);
                    break;
                }
                on_chain[at] = true;
                chain.push(at);
                match drafts[at].wanted {
                    Some((Wanted::PieceLess(of, _), _)) => at = of,
                    _ => break,
                }
            }
            for piece in chain.into_iter().rev() {
                done[piece] = true;
                let Some((wanted, span)) = &drafts[piece].wanted else { continue };
                sizes[piece] = match wanted {
                    Wanted::Outright(size) => Some(*size),
                    Wanted::CardLess(border) => front.and_then(|card| self.less(card, "card", *border, *span)),
                    Wanted::PieceLess(of, border) => {
                        sizes[*of].and_then(|size| self.less(size, &names.list[*of].value, *border, *span))
                    }
                };
            }
        }
        sizes
    }

    fn less(&mut self, size: Size, of: &str, border: Length, span: Span) -> Option<Size> {
        let rest = size.less_all_round(border);
        if rest.width.nm() > 0 && rest.height.nm() > 0 {
            return Some(rest);
        }
        let narrow = size.width.min(size.height);
        let mut finding = Finding::error(
            "size-not-positive",
            span,
            "nothing is left of this piece",
            format!("{border} on both sides of {narrow} leaves nothing"),
        )
        .help(format!("take a border under {}, half of the {narrow} of the {of}", narrow.half()))
        .plainly(format!("The border is so wide that nothing of the {of} is left."));
        finding.edition = self.both().then_some(self.units);
        self.note(finding);
        None
    }

    fn circle(&mut self, round: &[usize], drafts: &[PieceDraft], names: &Names) {
        let name = |piece: usize| names.list[piece].value.as_str();
        let mut way: Vec<String> = round.iter().take(8).map(|piece| format!("`{}`", name(*piece))).collect();
        if round.len() > way.len() {
            way.push("...".to_owned());
        }
        way.push(format!("`{}`", name(round[0])));
        let place = |piece: usize| drafts[piece].wanted.as_ref().map_or_else(Span::default, |(_, span)| *span);
        let label =
            if round.len() == 1 { "its own size".to_owned() } else { format!("sized from `{}`", name(round[1])) };
        let (message, plain) = if round.len() == 1 {
            (
                format!("the size of {} leans on itself", way[0]),
                format!("The size of {} is said by its own size, so it is never known.", way[0]),
            )
        } else {
            (
                format!("sizes lean on each other in a circle: {}", way.join(" to ")),
                format!("The sizes go round in a circle, {}, so none is ever known.", way.join(" to ")),
            )
        };
        let mut finding = Finding::error("circular-size", place(round[0]), message, label)
            .help("write 1 of these sizes outright, such as `4 x 5 1/4 in`")
            .plainly(plain);
        for (piece, next) in round.iter().skip(1).zip(round.iter().skip(2).chain(round.first())).take(8) {
            finding = finding.also(place(*piece), format!("sized from `{}`", name(*next)));
        }
        self.note(finding);
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
        stamp: None,
        side: Side::Front,
    })
}
