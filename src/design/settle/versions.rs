//! Versions: how many cards of each, and the papers of the pieces that vary.

use super::desk::{Desk, Field};
use super::names::{Names, tidy};
use super::pieces::PieceDraft;
use crate::design::model::{From, PaperId, PieceId, Side, Version};
use crate::diagnostic::{Certainty, Finding};
use crate::source::{Span, Spanned};

/// The most cards of a design.
pub(super) const MOST_CARDS: u32 = 10_000;

/// What versions refer to.
pub(super) struct Declared<'d> {
    pub(super) pieces: &'d Names,
    pub(super) drafts: &'d [PieceDraft],
    pub(super) papers: &'d Names,
    /// The number of the first piece that is written: 1 where the card base is piece 0.
    pub(super) first: usize,
}

/// A version, and where it says its side.
pub(super) type VersionDraft = (Version, Option<Spanned<Side>>);

impl<'a> Desk<'a> {
    /// The versions, or one unnamed version of all cards.
    pub(super) fn versions(
        &mut self,
        field: Option<Field<'a>>,
        cards: Option<Spanned<u32>>,
        declared: &Declared<'_>,
    ) -> Option<Vec<VersionDraft>> {
        let Some(field) = field else { return self.one_version(cards, declared) };
        let items = self.items(field)?;
        if items.is_empty() {
            self.note(
                Finding::error("missing-key", field.key, "`versions` is empty", "no version at all")
                    .help("write at least 1 item, or delete the line")
                    .plainly("The list of versions says nothing."),
            );
            return None;
        }
        let read: Vec<Option<VersionDraft>> = items.iter().map(|item| self.version(*item, declared)).collect();
        let versions: Vec<VersionDraft> = read.into_iter().collect::<Option<_>>()?;
        for (number, (version, _)) in versions.iter().enumerate() {
            if let Some((first, _)) = versions[..number].iter().find(|(earlier, _)| earlier.name == version.name) {
                self.used_twice("version", &Spanned::new(version.name.clone(), version.span), first.span);
            }
        }
        let cards = cards?;
        let sum: u64 = versions.iter().map(|(version, _)| u64::from(version.cards)).sum();
        if sum != u64::from(cards.value) {
            let counts: Vec<String> = versions.iter().take(12).map(|(version, _)| version.cards.to_string()).collect();
            let more = if versions.len() > counts.len() { " + ..." } else { "" };
            let typed = cards.value.to_string();
            let edit = self.in_place_of(&typed, cards.span, &sum.to_string()).filter(|_| sum <= u64::from(MOST_CARDS));
            self.note(
                Finding::error(
                    "cards-do-not-add-up",
                    field.key,
                    "the versions do not add up to the cards",
                    format!("{}{more} = {sum}", counts.join(" + ")),
                )
                .also(cards.span, format!("{} cards", cards.value))
                .help(format!("make the versions {} in all, or say `cards: {sum}`", cards.value))
                .plainly(format!("The versions come to {sum} cards, but the design says {}.", cards.value))
                .edits(edit, Certainty::Likely),
            );
        }
        Some(versions)
    }

    fn one_version(&mut self, cards: Option<Spanned<u32>>, declared: &Declared<'_>) -> Option<Vec<VersionDraft>> {
        let mut whole = true;
        for (name, draft) in declared.pieces.list.iter().zip(declared.drafts) {
            if let Some((From::Varies, span)) = draft.from() {
                whole = false;
                self.note(
                    Finding::error(
                        "missing-key",
                        span,
                        format!("`{}` varies, but there are no versions", name.value),
                        "no version says its paper",
                    )
                    .help("add `versions:` with at least 1 item, or name 1 paper here")
                    .plainly(format!(
                        "The paper of the {} differs from version to version, and no versions are described.",
                        name.value
                    )),
                );
            }
        }
        let cards = cards.filter(|_| whole)?;
        let version = Version {
            name: String::new(),
            span: cards.span,
            cards: cards.value,
            papers: Vec::new(),
            side: None,
            photo: None,
        };
        Some(vec![(version, None)])
    }

    fn version(&mut self, item: Field<'a>, declared: &Declared<'_>) -> Option<VersionDraft> {
        let fields = self.fields(item.node, "a version", item.key, &["name", "cards", "papers", "side", "photo"])?;
        let side = self.side(fields.get("side"));
        let photo = fields.get("photo").and_then(|field| self.photo(field));
        let name = self.required(&fields, "name", "dusk").and_then(|field| self.own_name(field));
        let cards = self.required(&fields, "cards", "4").and_then(|field| self.count(field, MOST_CARDS));
        let mut stated: Vec<(usize, PaperId)> = Vec::new();
        let mut whole = true;
        let papers = fields.get("papers");
        let entries = match papers {
            Some(field) => self.named(field)?,
            None => Vec::new(),
        };
        // A piece that is misspelt here, or whose paper is, is not missing as well.
        let mut mentioned = Vec::new();
        for (piece_name, node) in &entries {
            let place = Field { name: "papers", key: piece_name.span, node, item: true };
            let Some(piece) = declared.pieces.position(&piece_name.value) else {
                whole = false;
                let known = declared.pieces.words();
                let near = self.unknown_name(&piece_name.value, piece_name.span, declared.pieces, &known);
                mentioned.extend(near.and_then(|near| declared.pieces.position(near)));
                continue;
            };
            mentioned.push(piece);
            if let Some((From::Paper(paper), span)) = declared.drafts[piece].from() {
                let fixed = &declared.papers.list[paper.0].value;
                self.note(
                    Finding::error(
                        "unknown-piece",
                        piece_name.span,
                        format!("the paper of `{}` does not vary", piece_name.value),
                        "named in a version",
                    )
                    .also(span, format!("always cut from {fixed}"))
                    .help(format!("delete this 1 entry, or say `from: varies` for `{}`", piece_name.value))
                    .plainly(format!(
                        "The {} is always cut from {fixed}, so no version can choose its paper.",
                        piece_name.value
                    )),
                );
                continue;
            }
            let paper = self.text(place).and_then(|text| self.declared(text, declared.papers, &[]));
            match paper {
                Some(paper) => stated.push((piece, PaperId(paper))),
                None => whole = false,
            }
        }
        for (piece, draft) in declared.drafts.iter().enumerate() {
            if matches!(draft.from(), Some((From::Varies, _))) && !mentioned.contains(&piece) {
                whole = false;
                self.unsaid_paper(
                    &declared.pieces.list[piece].value,
                    name.as_ref().map_or("", |name| &name.value),
                    papers.map_or(fields.span(), |field| field.key),
                    draft.from().map(|(_, span)| span),
                    declared.papers.list.first().map_or("white", |paper| &paper.value),
                );
            }
        }
        let (name, cards) = (name?, cards?);
        let version = Version {
            name: tidy(&name.value),
            span: name.span,
            cards: cards.value,
            papers: stated.into_iter().map(|(piece, paper)| (PieceId(piece + declared.first), paper)).collect(),
            side: side.map(|side| side.value),
            photo,
        };
        whole.then_some((version, side))
    }

    fn unsaid_paper(&mut self, piece: &str, version: &str, at: Span, varies: Option<Span>, paper: &str) {
        let which = if version.is_empty() { "a version".to_owned() } else { format!("the version `{version}`") };
        let mut finding = Finding::error(
            "missing-key",
            at,
            format!("{which} does not say the paper of `{piece}`"),
            format!("no paper for `{piece}`"),
        )
        .help(format!("add 1 entry, such as `papers: {{{piece}: {paper}}}`"))
        .plainly(format!("Each version must say which paper the {piece} is cut from."));
        if let Some(span) = varies {
            finding = finding.also(span, "varies from version to version");
        }
        self.note(finding);
    }

    /// Notes the second of two equal names.
    pub(super) fn used_twice(&mut self, noun: &str, name: &Spanned<String>, first: Span) {
        let help = if noun == "layer" {
            format!("give 1 of them its own name, such as `as: upper {}`", name.value)
        } else {
            format!("give 1 of them another name, such as `{} 2`", name.value)
        };
        self.note(
            Finding::error(
                "name-used-twice",
                name.span,
                format!("two {noun}s are called `{}`", name.value),
                "the second",
            )
            .also(first, "the first")
            .help(help)
            .plainly(format!("Two {noun}s have the same name, \"{}\".", name.value)),
        );
    }
}
