//! The two sides of double-sided paper, and which of them shows.

use super::desk::{Desk, Field, Fields};
use super::versions::{Declared, VersionDraft};
use crate::design::model::{Back, From, Paper, Pattern, Side, TurnedOver};
use crate::diagnostic::Finding;
use crate::source::{Span, Spanned};

const PATTERNS: [(&str, Pattern); 3] =
    [("any", Pattern::Any), ("two-way", Pattern::TwoWay), ("one-way", Pattern::OneWay)];
const SIDES: [(&str, Side); 2] = [("front", Side::Front), ("back", Side::Back)];
const WAYS_OVER: [(&str, TurnedOver); 2] =
    [("left to right", TurnedOver::LeftToRight), ("top to bottom", TurnedOver::TopToBottom)];

/// How the patterns of a paper may lie.
pub(super) struct Patterns {
    /// That of the front, the only one of most paper, where it is said.
    pub(super) front: Option<Spanned<Pattern>>,
    /// The back of double-sided paper.
    pub(super) back: Option<Back>,
}

impl<'a> Desk<'a> {
    /// `pattern`, or `sides` and `turned over`. None where a side could not be read.
    pub(super) fn patterns(&mut self, paper: &Fields<'a>) -> Option<Patterns> {
        let pattern = paper.get("pattern");
        let Some(sides) = paper.get("sides") else {
            if let Some(field) = paper.get("turned over") {
                self.out_of_place(field, "only double-sided paper is turned over", None, "say `sides` as well");
            }
            let front = pattern.and_then(|field| self.word(field, &PATTERNS));
            return Some(Patterns { front, back: None });
        };
        if let Some(field) = pattern {
            let also = Some((sides.key, "each side has its own"));
            self.out_of_place(field, "`sides` says the pattern of both sides", also, "keep `sides` alone");
        }
        let over = self.required(paper, "turned over", "left to right");
        let over = over.and_then(|field| self.word(field, &WAYS_OVER));
        let fields = self.fields(sides.node, "`sides`", sides.key, &["front", "back"])?;
        let mut side = |name| self.required(&fields, name, "one-way").and_then(|field| self.word(field, &PATTERNS));
        let (front, back) = (side("front"), side("back"));
        let back = Back { pattern: back?.value, turned_over: over?.value, span: sides.key };
        Some(Patterns { front: Some(front?), back: Some(back) })
    }

    /// Notes a key that may not stand here.
    fn out_of_place(&mut self, field: Field<'a>, why: &str, also: Option<(Span, &str)>, or: &str) {
        let mut finding = Finding::error("unknown-key", field.key, format!("`{}` may not stand here", field.name), why)
            .help(format!("delete this 1 line, or {or}"))
            .plainly(format!("\"{}\" has no meaning for this paper: {why}.", field.name));
        if let Some((span, label)) = also {
            finding = finding.also(span, label);
        }
        self.note(finding);
    }

    /// `side: back`.
    pub(super) fn side(&mut self, field: Option<Field<'a>>) -> Option<Spanned<Side>> {
        field.and_then(|field| self.word(field, &SIDES))
    }

    /// Notes every `side: back` of which no paper has a back.
    pub(super) fn sides_without_a_back(
        &mut self,
        declared: &Declared<'_>,
        versions: &[VersionDraft],
        papers: &[Paper],
    ) {
        let back = |side: Option<Spanned<Side>>| side.filter(|side| side.value == Side::Back).map(|side| side.span);
        let one_sided = |named: &[usize]| named.iter().all(|paper| papers[*paper].back.is_none());
        for (piece, (name, draft)) in declared.pieces.list.iter().zip(declared.drafts).enumerate() {
            let Some(span) = back(draft.side()) else { continue };
            let named: Vec<usize> = match draft.from() {
                Some((From::Paper(paper), _)) => vec![paper.0],
                Some((From::Varies, _)) => versions
                    .iter()
                    .flat_map(|(version, _)| &version.papers)
                    .filter(|(varies, _)| varies.0 == piece + declared.first)
                    .map(|(_, paper)| paper.0)
                    .collect(),
                Some((From::Window(..) | From::Bought, _)) | None => continue,
            };
            if one_sided(&named) {
                self.one_side_only(span, &format!("the {}", name.value), &named, papers);
            }
        }
        for (version, side) in versions {
            let Some(span) = back(*side) else { continue };
            let named: Vec<usize> = version.papers.iter().map(|(_, paper)| paper.0).collect();
            if one_sided(&named) {
                self.one_side_only(span, &format!("the version {}", version.name), &named, papers);
            }
        }
    }

    fn one_side_only(&mut self, span: Span, who: &str, named: &[usize], papers: &[Paper]) {
        let mut named = named.to_vec();
        named.sort_unstable();
        named.dedup();
        let (fact, help) = match named.as_slice() {
            [] => ("no piece of it varies".to_owned(), "take `side` out, or let 1 piece vary".to_owned()),
            [paper, more @ ..] => {
                let name = &papers[*paper].name;
                let rest = if more.is_empty() { String::new() } else { format!(" and {} more", more.len()) };
                let verb = if more.is_empty() { "has" } else { "have" };
                (
                    format!("{name}{rest} {verb} 1 side only"),
                    format!("take `side` out, or say `sides: {{front: one-way, back: any}}` for {name}"),
                )
            }
        };
        let mut finding = Finding::error(
            "back-of-one-sided-paper",
            span,
            format!("{who} shows a back that is not there"),
            fact.clone(),
        )
        .help(help)
        .plainly(format!("{} is to show the back of its paper, but {fact}.", super::desk::capital(who)));
        for paper in named.iter().take(4) {
            finding = finding.also(papers[*paper].span, "no `sides` here");
        }
        self.note(finding);
    }
}
