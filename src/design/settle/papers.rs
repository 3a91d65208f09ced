//! Papers: sheets, pattern, edge strip, weight, and all that is said of their cutting.

use super::desk::{Desk, Field};
use super::fixed::{AlongDraft, EDGES};
use super::kept::{KeptDraft, kept_papers, kept_pieces};
use super::names::{Names, tidy};
use crate::design::model::{EdgeStrip, Fixed, Grain, Paper, Pattern, Piece, Sheets};
use crate::design::nodes::Node;
use crate::design::restate::Role;
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::Size;
use crate::source::{Span, Spanned};

const STRIP_FORM: &str = "say it as `1/2 in at the bottom, beside`";
const KEYS: [&str; 16] = [
    "sheets",
    "name",
    "also from",
    "pattern",
    "sides",
    "turned over",
    "sheets are",
    "edge strip",
    "weight",
    "thickness",
    "grain",
    "keep",
    "cut first",
    "along the edge",
    "ways to cut",
    "cells",
];

/// `grain`: along which side the fibres run.
const GRAINS: [(&str, Grain); 2] = [("long", Grain::Long), ("short", Grain::Short)];
/// `sheets are`: whether they differ from one another.
const ALIKE: [(&str, bool); 2] = [("different", true), ("equal", false)];
/// The most ways to cut that are printed.
const MOST_WAYS: u32 = 2;

/// A paper as written: what could be read of it, and what names other things.
#[derive(Default)]
struct PaperDraft {
    paper: Option<Paper>,
    /// Leftovers that it keeps.
    kept: Vec<KeptDraft>,
    /// Pieces along its edges.
    along: Vec<AlongDraft>,
}

impl<'a> Desk<'a> {
    /// The names of the papers, for what refers to them.
    pub(super) fn paper_names(&mut self, field: Option<Field<'a>>) -> (Names, Vec<&'a Node>) {
        let entries = field.and_then(|field| self.named(field)).unwrap_or_default();
        let (list, nodes): (Vec<Spanned<String>>, Vec<&'a Node>) = entries.into_iter().unzip();
        for name in &list {
            if name.value == "varies" {
                self.reserved(name, "a piece whose paper differs says `from: varies`");
            }
        }
        (Names { noun: "paper", unknown: "unknown-paper", list }, nodes)
    }

    /// Notes a name that means something else already.
    pub(super) fn reserved(&mut self, name: &Spanned<String>, why: &str) {
        self.note(
            Finding::error("name-used-twice", name.span, format!("`{}` means something else already", name.value), why)
                .help(format!("take another name, such as `{} 2`", name.value))
                .plainly(format!("\"{}\" is a word of the design language and cannot be a name.", name.value)),
        );
    }

    /// Every paper, the kept leftovers behind the written ones and their names behind the written
    /// names, and the pieces that the kept leftovers are. None where any paper is unknown. `card`
    /// is where the card is written, if there is one.
    pub(super) fn papers(
        &mut self,
        names: &mut Names,
        nodes: Vec<&'a Node>,
        pieces: &Names,
        card: Option<Span>,
    ) -> (Option<Vec<Paper>>, Vec<Piece>) {
        let written = names.list.clone();
        let drafts = written.iter().zip(nodes).enumerate();
        let mut drafts: Vec<PaperDraft> = drafts.map(|(number, (name, node))| self.paper(number, name, node)).collect();
        let kept = drafts.iter_mut().flat_map(|draft| std::mem::take(&mut draft.kept)).collect();
        let kept = self.name_kept(kept, names, pieces, card.is_some());

        // The pieces in the order of `Design::pieces`.
        let base = card.map(|span| Spanned::new("base".to_owned(), span));
        let list =
            base.into_iter().chain(pieces.list.iter().cloned()).chain(names.list[written.len()..].iter().cloned());
        let all = Names { noun: pieces.noun, unknown: pieces.unknown, list: list.collect() };
        let mut papers = Vec::new();
        for PaperDraft { paper, along, .. } in drafts {
            let edges = self.settle_along(along, &all);
            papers.push(paper.map(|paper| Paper { fixed: Fixed { edges, ..paper.fixed }, ..paper }));
        }
        let whole = papers.into_iter().collect::<Option<Vec<Paper>>>().zip(kept_pieces(&kept, &written));
        let whole = whole.and_then(|(mut papers, pieces)| {
            papers.extend(kept_papers(&kept, &papers)?);
            Some((papers, pieces))
        });
        whole.map_or((None, Vec::new()), |(papers, pieces)| (Some(papers), pieces))
    }

    /// One paper, `number` in the order written.
    fn paper(&mut self, number: usize, name: &Spanned<String>, node: &'a Node) -> PaperDraft {
        let what = format!("the paper `{}`", name.value);
        let Some(fields) = self.fields(node, what, name.span, &KEYS) else { return PaperDraft::default() };
        self.readers_names(name.span, fields.get("name"));
        let sheets = self.required(&fields, "sheets", "2 of letter").and_then(|field| self.sheets(field));
        let also = fields.get("also from").map(|field| self.also_from(field)).unwrap_or_default();
        let patterns = self.patterns(&fields);
        let different = fields.get("sheets are").and_then(|field| self.word(field, &ALIKE));
        let different = different.filter(|word| word.value).map(|word| word.span);
        let strip = fields.get("edge strip").map(|field| self.edge_strip(field));
        let weight = fields.get("weight").and_then(|field| self.weight(field));
        let thickness = fields.get("thickness").and_then(|field| self.thickness(field));
        let grain = fields.get("grain").and_then(|field| self.word(field, &GRAINS));
        let mut kept = fields.get("keep").map(|field| self.keep(field, number)).unwrap_or_default();
        let mut rows = fields.get("cut first").map(|field| self.cut_first(field)).unwrap_or_default();
        let usable = |kind: &Sheets| match strip.flatten().filter(|strip| !strip.beside) {
            Some(strip) if strip.edge.is_side() => Size::new(kind.size.width - strip.width, kind.size.height),
            Some(strip) => Size::new(kind.size.width, kind.size.height - strip.width),
            None => kind.size,
        };
        let cells = fields.get("cells").map(|field| {
            let cells = self.cells(field, number, sheets.as_deref().unwrap_or_default(), usable)?;
            if let Some(row) = rows.first() {
                self.fixed_twice(field.key, row.span);
            }
            Some(cells)
        });
        let cells_known = !matches!(cells, Some(None));
        let cells = cells.flatten().map(|draft| {
            rows.extend(draft.rows);
            kept.push(draft.kept);
            draft.cells
        });
        let along = fields.get("along the edge").map(|field| self.along_the_edge(field)).unwrap_or_default();
        let ways = fields.get("ways to cut").and_then(|field| self.count(field, MOST_WAYS));
        let strip_known = !matches!(strip, Some(None)) && cells_known;
        let paper = sheets.zip(patterns).filter(|_| strip_known).map(|(sheets, patterns)| Paper {
            name: name.value.clone(),
            span: name.span,
            sheets,
            pattern: patterns.front.map_or(Pattern::Any, |pattern| pattern.value),
            pattern_span: patterns.front.map(|pattern| pattern.span),
            edge_strip: strip.flatten(),
            weight,
            thickness,
            grain,
            back: patterns.back,
            different,
            kept_from: None,
            fixed: Fixed { rows, edges: Vec::new() },
            also,
            ways: ways.map_or(1, |ways| ways.value),
            cells,
        });
        PaperDraft { paper, kept, along }
    }

    /// Notes rows that are fixed on a sheet whose cells fix its cuts already.
    fn fixed_twice(&mut self, cells: Span, row: Span) {
        self.note(
            Finding::error(
                "placed-twice",
                cells,
                "the first cuts of the sheet are fixed twice",
                "cells are cut apart first",
            )
            .also(row, "`cut first` already")
            .help("keep 1 of `cells` and `cut first`")
            .plainly("A sheet with printed cells is cut along them first, so nothing else can come first."),
        );
    }

    /// `1/2 in | 13 mm at the bottom, beside`.
    fn edge_strip(&mut self, field: Field<'a>) -> Option<EdgeStrip> {
        let text = self.text(field)?;
        let malformed = |span: Span, message: &str, label: &str| {
            Finding::error("bad-word", span, message, label)
                .help(STRIP_FORM)
                .plainly("An edge strip says how wide it is, along which edge, and whether it lies beside the stated size or within it.")
        };
        let Some((width, place)) = text.at_last("at") else {
            self.note(malformed(text.span, "the edge strip names no edge", "no `at the bottom` or the like"));
            return None;
        };
        let place = place.without_first("the");
        let Some((edge, beside)) = place.at_last_comma().or_else(|| place.last_word()) else {
            self.note(malformed(place.span, "the edge strip is neither beside nor within", "no `beside` or `within`"));
            return None;
        };
        let beside = match tidy(beside.value).to_lowercase().as_str() {
            "beside" => Some(true),
            "within" => Some(false),
            _ => {
                self.bad_word("edge strip", beside, &["beside", "within"]);
                None
            }
        };
        let along = edge_named(edge.value);
        if along.is_none() {
            self.bad_word("edge strip", edge, &EDGES);
        }
        let width_text = width;
        let width = self.length_in(width, Role::Strip)?;
        if width.nm() <= 0 {
            self.note(
                Finding::error(
                    "size-not-positive",
                    width_text.span,
                    "the edge strip is nothing at all",
                    format!("{width}"),
                )
                .help("make it more than 0, or leave out `edge strip`")
                .plainly("An edge strip needs a width above nothing."),
            );
            return None;
        }
        Some(EdgeStrip { width, edge: along?, beside: beside?, span: text.span })
    }
}

/// The edge of a word.
pub(super) fn edge_named(word: &str) -> Option<Edge> {
    let word = tidy(word).to_lowercase();
    Edge::ALL.into_iter().find(|edge| edge.word() == word)
}
