//! Steps and cut rows to sentences: the same values that the pictures are drawn from.
//!
//! Takes values of the stages, gives [`Line`]s through the catalogue in `words`. Must never hold a
//! word of any language itself.

use std::borrow::Cow;

use super::deal::{Deal, deals};
use super::model::{Action, Step};
use super::sequence::{by_themselves, shared_rectangles};
use super::{finishing, laying};
use crate::cutting::alternatives::Differs;
use crate::cutting::lay::Measured;
use crate::cutting::plan::{CutPlan, CutRow, PartId, SheetPlan, Use};
use crate::design::model::{
    Design, EdgeStrip, Face, Fold, From, LayerId, NoteOn, Onto, PaperId, Pattern, PieceId, PieceKind, Work,
};
use crate::geometry::Edge;
use crate::guides::asked::frame_of;
use crate::layout::model::Layout;
use crate::length::{Length, Size, Units};
use crate::words::cutting::{self, Alike, Edges, Given, Taken};
use crate::words::making::{self, Named};
use crate::words::places;
use crate::words::{Line, Words};

/// A cut row as it is printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// The cut numbers: `2` or `4-7`.
    pub cuts: String,
    /// The measure, without its unit.
    pub measure: String,
    /// What to do, beside a column with the measure.
    pub line: Line,
    /// What to do, standing alone, with the unit.
    pub whole: Line,
}

/// A step as it is printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ToldStep {
    /// Its number on the page.
    pub number: Option<u32>,
    /// What to do.
    pub line: Line,
    /// How to do it with a placing frame, where there is one.
    pub by_frame: Line,
    /// What can hurt, said before the act.
    pub caution: Option<Line>,
    /// The designer's notes, said before the step.
    pub notes: Vec<Line>,
    /// How often.
    pub times: String,
    /// What the reader has now.
    pub checkpoint: Option<Line>,
}

/// Words for a row of cuts.
#[must_use]
pub fn row(design: &Design, plan: &CutPlan, sheet: &SheetPlan, row: &CutRow) -> Told {
    let say = design.words();
    let units = design.units;
    let measure = row.measure.number(units);
    let lots = lots(sheet, row, units);
    let sizes: Vec<String> = lots.iter().map(|lot| lot.size.numbers(units)).collect();
    let alike: Vec<Alike<'_>> = lots
        .iter()
        .zip(&sizes)
        .map(|(lot, size)| Alike {
            count: lot.count,
            there: lot.there,
            size,
            strip: is_strip(lot.size),
            times: lot.times,
        })
        .collect();
    let taken = match alike.as_slice() {
        _ if row.parts.first() == Some(&PartId(0)) => Taken::Sheet { times: row.cuts, kept: sheet.kept },
        [one] => Taken::Parts(*one),
        several => Taken::Mixed(several),
    };
    let gives = given(design, plan, sheet, &row.gives);
    let whole_measure = format!("{measure} {}", units.sign());
    let last = row.n + row.cuts.max(1) - 1;
    Told {
        cuts: if last == row.n { row.n.to_string() } else { format!("{}-{last}", row.n) },
        line: cutting::row(say, row.from, taken, &gives),
        whole: cutting::whole_row(say, row.from, taken, &whole_measure, &gives),
        measure: say.measured(&measure),
    }
}

/// Parts of a row that are of one size and are cut equally often.
struct PartLot {
    size: Size,
    times: u32,
    count: u32,
    /// How many of that size wait to be cut when the row begins.
    there: u32,
}

fn lots(sheet: &SheetPlan, row: &CutRow, units: Units) -> Vec<PartLot> {
    let mut lots: Vec<PartLot> = Vec::new();
    for &part in &row.parts {
        let size = part_size(sheet, part, units);
        let children = row.gives.iter().filter(|id| sheet.part(**id).parent == Some(part)).count();
        let times = u32::try_from(children.saturating_sub(1)).unwrap_or(u32::MAX);
        match lots.iter_mut().find(|lot| lot.size == size && lot.times == times) {
            Some(lot) => lot.count += 1,
            None => lots.push(PartLot { size, times, count: 1, there: waiting(sheet, row, size, units) }),
        }
    }
    lots
}

/// How many loose parts of a size wait to be cut when a row begins.
fn waiting(sheet: &SheetPlan, row: &CutRow, size: Size, units: Units) -> u32 {
    let mut count = 0_u32;
    for earlier in sheet.cuts.iter().filter(|other| other.n < row.n) {
        let cut_by_now = |id: &PartId| sheet.cuts.iter().any(|other| other.n < row.n && other.parts.contains(id));
        let wait = |id: &&PartId| {
            sheet.part(**id).r#use == Use::Divided && !cut_by_now(id) && part_size(sheet, **id, units) == size
        };
        count += u32::try_from(earlier.gives.iter().filter(wait).count()).unwrap_or(u32::MAX);
    }
    count
}

fn part_size(sheet: &SheetPlan, part: PartId, units: Units) -> Size {
    let rect = sheet.part(part).rect;
    Size::new(Length::of(rect.width(), units), Length::of(rect.height(), units))
}

fn is_strip(size: Size) -> bool {
    let (long, short) = (size.width.max(size.height).nm(), size.width.min(size.height).nm());
    long >= 2 * short
}

/// Groups what a row gives: pieces first, then parts to cut further, then leftovers.
fn given(design: &Design, plan: &CutPlan, sheet: &SheetPlan, gives: &[PartId]) -> Vec<Given> {
    let mut pieces: Vec<((PieceId, bool), u32)> = Vec::new();
    let mut parts: Vec<(Size, u32)> = Vec::new();
    let mut left: Vec<(u32, u32)> = Vec::new();
    let mut strip = false;
    for id in gives {
        let size = part_size(sheet, *id, design.units);
        match sheet.part(*id).r#use {
            Use::Piece { piece, version, .. } => {
                count(&mut pieces, (piece, design.shows_back(sheet.paper, piece, version)));
            }
            Use::Divided => count(&mut parts, size),
            Use::Leftover => count(&mut left, leftover_number(plan, sheet, *id)),
            Use::EdgeStrip => strip = true,
        }
    }
    let mut given = Vec::new();
    if strip {
        given.push(Given::EdgeStrip);
    }
    given.extend(pieces.into_iter().map(|((piece, back), count)| Given::Pieces {
        count,
        name: finishing::cut_name(design, piece),
        ring: design.ring(piece),
        back,
    }));
    // What remains of the sheet after its edge strip needs no name of its own.
    if !strip {
        given.extend(parts.into_iter().map(|(size, count)| Given::Parts {
            count,
            size: size.numbers(design.units),
            strip: is_strip(size),
        }));
    }
    given.extend(left.into_iter().map(|(number, count)| Given::Leftover { count, number }));
    given
}

fn count<T: PartialEq>(counts: &mut Vec<(T, u32)>, what: T) {
    match counts.iter_mut().find(|(known, _)| *known == what) {
        Some((_, count)) => *count += 1,
        None => counts.push((what, 1)),
    }
}

fn leftover_number(plan: &CutPlan, sheet: &SheetPlan, part: PartId) -> u32 {
    let index = plan.sheets.iter().position(|s| std::ptr::eq(s, sheet));
    plan.leftovers()
        .into_iter()
        .find(|left| Some(left.sheet) == index && left.parts.contains(&part))
        .map_or(0, |left| left.number)
}

/// What stands beside a sheet's name: how many, which size, which way its pattern runs.
#[must_use]
pub fn sheet_note(design: &Design, sheet: &SheetPlan) -> Line {
    let say = design.words();
    let paper = design.paper(sheet.paper);
    let size = paper.sheets[sheet.kind].size;
    let text = format!("{} {}", size.numbers(design.units), design.units.sign());
    let count = u32::try_from(sheet.numbers.len()).unwrap_or(u32::MAX);
    let source = paper.kept_from.map(|source| design.paper(source).name.as_str());
    cutting::sheet_note(say, count, &text, pattern_word(paper.pattern), source, !sheet.cuts.is_empty())
}

/// The smallest sheet that a sheet's rows still serve, as the paper's sheets are stated: an edge
/// strip beside is not in it. Rounded up to the ruler's step, never past the sheet's own size. Nothing
/// is said of a kept leftover, which the reader has cut to size.
#[must_use]
pub fn least_size(design: &Design, sheet: &SheetPlan) -> Size {
    let full = design.paper(sheet.paper).sheets[sheet.kind].size;
    let least = |slack: Length, full: Length, side: bool| {
        let strip = strip_beside(design, sheet).filter(|strip| strip.edge.is_side() == side);
        let exact = slack.nm() - strip.map_or(0, |strip| strip.width.nm());
        let up = exact + (-exact).rem_euclid(design.workshop.ruler.nm().max(1));
        Length::of(up.min(full.nm()), design.units)
    };
    Size::new(least(sheet.slack.width, full.width, true), least(sheet.slack.height, full.height, false))
}

fn strip_beside(design: &Design, sheet: &SheetPlan) -> Option<EdgeStrip> {
    design.paper(sheet.paper).edge_strip.filter(|strip| strip.beside && !strip.width.is_zero())
}

/// What is said of the smallest sheet that will do.
#[must_use]
pub fn slack(design: &Design, sheet: &SheetPlan, sheets: u32) -> Line {
    let say = design.words();
    if sheet.kept {
        return Line::new();
    }
    let least = least_size(design, sheet);
    if least == design.paper(sheet.paper).sheets[sheet.kind].size {
        return cutting::full_size(say, sheets);
    }
    let text = format!("{} {}", least.numbers(design.units), design.units.sign());
    cutting::works_down_to(say, &text, strip_beside(design, sheet).is_some())
}

/// How another way to cut a sheet differs from the plan's.
#[must_use]
pub fn differs(say: &Words, differs: &Differs) -> String {
    let edges = |measured: Measured| match measured {
        Measured::AsPlanned => Edges::Same,
        Measured::Opposite => Edges::Opposite,
        Measured::InTurn => Edges::InTurn,
    };
    let parts = differs.parts.map(|parts| (parts.first_cut, parts.lying));
    cutting::differs(say, edges(differs.lay.across), edges(differs.lay.up), parts)
}

/// The catalogue's word for a pattern's direction.
#[must_use]
pub const fn pattern_word(pattern: Pattern) -> cutting::Pattern {
    match pattern {
        Pattern::Any => cutting::Pattern::Any,
        Pattern::TwoWay => cutting::Pattern::TwoWay,
        Pattern::OneWay => cutting::Pattern::OneWay,
    }
}

/// Counts of pieces as the catalogue takes them: how many, name, ring.
#[must_use]
pub fn named_counts(design: &Design, counts: &[(PieceId, u32)]) -> Vec<(u32, String, u32)> {
    counts.iter().map(|(piece, count)| (*count, design.piece(*piece).name.clone(), design.ring(*piece))).collect()
}

/// The same before anything is made of what the trimmer cut: rectangles that triangles share are called so.
#[must_use]
pub fn cut_counts(design: &Design, counts: &[(PieceId, u32)]) -> Vec<(u32, String, u32)> {
    counts.iter().map(|(piece, count)| (*count, finishing::cut_name(design, *piece), design.ring(*piece))).collect()
}

/// How many of a piece the trimmer cuts for all cards, shared rectangles under the piece that stands for them.
fn cut(design: &Design, piece: PieceId) -> u32 {
    if matches!(design.piece(piece).from, From::Window(..) | From::Bought) {
        return 0;
    }
    let shared = shared_rectangles(design, piece);
    let own = shared.iter().filter(|halves| halves.piece == piece).map(|halves| halves.rectangles);
    own.fold(by_themselves(design, piece), u32::saturating_add)
}

/// Words for a step; cutting steps are told row by row with [`row`] instead.
#[must_use]
pub fn step(design: &Design, layout: &Layout, step: &Step) -> ToldStep {
    let say = design.words();
    let mut caution = None;
    let mut with_frame = Line::new();
    let line = match &step.action {
        Action::Cut { .. } => {
            caution = Some(making::fingers(say));
            Line::new()
        }
        Action::Stamp { piece } => {
            let what = design.piece(*piece).stamp().map_or("", |stamp| stamp.value.as_str());
            making::stamp(say, &named(design, *piece), what)
        }
        Action::Print { piece } => {
            let what = design.piece(*piece).greeting.as_ref().map_or("", |words| words.words.value.as_str());
            making::print(say, &named(design, *piece), what)
        }
        Action::Finish { piece, shared } => {
            let (line, care) = finishing::finish(design, *piece, *shared, step.times);
            caution = Some(care);
            line
        }
        Action::ScoreAndFold { piece } => score(design, *piece),
        Action::Sort => making::sort(say, step.times, &named_counts(design, &step.checkpoint)),
        Action::Glue { layer, .. } => {
            with_frame = by_frame(design, layout, *layer);
            from_roll(design, *layer).sentence(laying::glue(design, layout, *layer))
        }
        Action::Trim { layer, loose } => {
            caution = Some(making::fingers(say));
            let own = design.layer(*layer);
            let to = own.trim_flush.map_or(Onto::Card, |to| to.value);
            making::trim(say, &layer_named(design, *layer), &onto_named(design, own.face, to), *loose)
        }
        Action::Decorate { note } => Line::plain(design.notes[*note].text.value.clone()),
    };
    let checkpoint = match (&step.work, step.checkpoint.as_slice()) {
        (Work::Units, [(piece, count)]) => {
            Some(making::now_put_together(say, *count, &design.piece(*piece).name, design.ring(*piece)))
        }
        _ => None,
    };
    ToldStep {
        number: step.number,
        line,
        by_frame: with_frame,
        caution,
        notes: step.notes.iter().map(|note| Line::plain(design.notes[*note].text.value.clone())).collect(),
        times: making::times(say, step.times),
        checkpoint,
    }
}

/// What the reader has when all paper is cut: "You now have 8 panels (3), 24 lanterns (4)." Spare
/// pieces are named behind it.
#[must_use]
pub fn all_cut(design: &Design, plan: &CutPlan) -> Line {
    let say = design.words();
    let counts: Vec<(PieceId, u32)> =
        design.piece_ids().map(|piece| (piece, cut(design, piece))).filter(|(_, count)| *count > 0).collect();
    let line = making::now_have(say, &cut_counts(design, &counts));
    let all: Vec<usize> = (0..plan.sheets.len()).collect();
    let spares = plan.spares_after(design, &all);
    if spares.is_empty() { line } else { line.sentence(cutting::to_spare(say, &cut_counts(design, &spares))) }
}

/// One line a version for the piles, where versions differ; then how the sheets of a pad are dealt.
#[must_use]
pub fn piles(design: &Design, plan: &CutPlan) -> Vec<Line> {
    let say = design.words();
    let versions = design.versions.iter().filter(|version| !version.papers.is_empty()).map(|version| {
        let papers: Vec<(String, String)> = version
            .papers
            .iter()
            .map(|(piece, paper)| (design.piece(*piece).name.clone(), design.paper(*paper).name.clone()))
            .collect();
        making::pile(say, &version.name, version.cards, &papers)
    });
    versions.chain(deals(design, plan).iter().flat_map(|deal| dealt(design, deal))).collect()
}

/// What to do while the sheets of a pad are cut, so that its pieces can be dealt.
#[must_use]
pub fn before_a_pad(design: &Design, plan: &CutPlan, papers: &[PaperId]) -> Vec<Line> {
    let say = design.words();
    let dealt = deals(design, plan).into_iter().filter(|deal| papers.contains(&deal.paper));
    dealt.map(|deal| making::number_the_sheets(say, &design.paper(deal.paper).name, deal.sheets)).collect()
}

/// How the pieces of a pad go round the piles.
fn dealt(design: &Design, deal: &Deal) -> Vec<Line> {
    let say = design.words();
    let pad = &design.paper(deal.paper).name;
    let pile = |card: &[(PieceId, u32)]| {
        let mut pieces: Vec<(String, Vec<u32>)> = Vec::new();
        for (piece, sheet) in card {
            let name = &design.piece(*piece).name;
            match pieces.last_mut().filter(|(known, _)| known == name) {
                Some((_, sheets)) => sheets.push(*sheet),
                None => pieces.push((name.clone(), vec![*sheet])),
            }
        }
        pieces
    };
    let mut lines = vec![making::deal_by_number(say, pad)];
    if deal.onward {
        lines.extend(deal.cards.first().map(|card| making::dealt_onward(say, &pile(card), deal.sheets)));
    } else {
        let own = deal.cards.iter().enumerate().filter(|(_, card)| !card.is_empty());
        lines.extend(own.map(|(number, card)| making::dealt(say, number + 1, &pile(card))));
    }
    lines
}

/// Notes that no step carries: their kind of work has no step in this design.
#[must_use]
pub fn loose_notes(design: &Design, steps: &super::model::Steps) -> Vec<Line> {
    design
        .notes
        .iter()
        .enumerate()
        .filter(|(index, note)| {
            note.on != NoteOn::Work(Work::Decorating) && super::sequence::step_of_note(steps, *index).is_none()
        })
        .map(|(_, note)| Line::plain(note.text.value.clone()))
        .collect()
}

pub(super) fn named(design: &Design, piece: PieceId) -> Named<'_> {
    Named { name: Cow::Borrowed(&design.piece(piece).name), ring: Some(design.ring(piece)) }
}

pub(super) fn layer_named(design: &Design, layer: LayerId) -> Named<'_> {
    let layer = design.layer(layer);
    Named { name: Cow::Borrowed(&layer.name), ring: Some(design.ring(layer.piece)) }
}

/// What a layer lies on; the card is told as the side of it.
pub(super) fn onto_named(design: &Design, face: Face, onto: Onto) -> Named<'_> {
    if let Onto::Layer(layer) = onto {
        return layer_named(design, layer);
    }
    match (&design.card, face) {
        (Some(card), Face::Front) => named(design, card.base),
        (None, Face::Front) => Named { name: places::card(design.words()).into(), ring: None },
        (_, face) => Named { name: side(design.words(), design, face).into(), ring: None },
    }
}

/// A side of the card or its envelope by name.
#[must_use]
pub fn side(say: &Words, design: &Design, face: Face) -> String {
    let fold = design.card.as_ref().map_or(Fold::None, |card| card.fold);
    places::side(say, face.side(fold))
}

/// How a layer is laid by its placing frame, where the design gets one.
fn by_frame(design: &Design, layout: &Layout, layer: LayerId) -> Line {
    frame_of(design, layout, layer).map_or_else(Line::new, |frame| {
        let onto = onto_named(design, frame.face, frame.on);
        making::by_frame(design.words(), &onto, design.layer(layer).count() > 1)
    })
}

/// What is cut from a roll before it is laid.
fn from_roll(design: &Design, layer: LayerId) -> Line {
    let say = design.words();
    let layer = design.layer(layer);
    match design.piece(layer.piece).kind {
        PieceKind::Decoration { roll: Some(length), .. } => {
            making::from_roll(say, layer.count(), &length.number(design.units))
        }
        _ => Line::new(),
    }
}

fn score(design: &Design, piece: PieceId) -> Line {
    let say = design.words();
    let Some(card) = &design.card else { return Line::new() };
    let number = |nm: i64| Length::of(nm, design.units).number(design.units);
    let scores = card.fold.scores(card.size);
    let name = named(design, piece);
    match (card.fold, scores.as_slice()) {
        (Fold::Gate, [left, right]) => {
            let width = card.fold.flat(card.size).width.nm();
            making::score_gate(say, &name, &number(left.at), &number(width - right.at))
        }
        (Fold::Accordion { .. }, scores) => {
            let scores: Vec<(String, bool)> = scores.iter().map(|score| (number(score.at), score.mountain)).collect();
            making::score_accordion(say, &name, &scores)
        }
        (fold, scores) => {
            let edge = if fold == Fold::Top { Edge::Top } else { Edge::Left };
            let at = scores.first().map_or(0, |score| score.at);
            making::score(say, &name, edge.word(), &number(at), edge.word())
        }
    }
}
