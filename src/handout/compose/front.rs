//! The front page: an experienced maker needs only this one.

use super::{imprint, month_of, pattern_words, small};
use crate::cutting::halves::of_piece;
use crate::design::model::{
    Design, Fold, From, How, Onto, PaperId, Pattern, PieceId, PieceKind, Side, TurnedOver, VersionId,
};
use crate::design::variants::{self as asked, Wanted};
use crate::drawing::figures::view::{View, views};
use crate::geometry::{Edge, Rect};
use crate::handout::data::{CallOut, CutList, Fact, Figure, FrontPage, PaperList, PieceRow, SidePages, all_said, said};
use crate::handout::pictures;
use crate::length::{Length, Size};
use crate::project::Project;
use crate::shape::{Form, Making};
use crate::words::pages::{self as words, Folds};
use crate::words::{Line, Words};
use crate::words::{cutting as cut_words, variants};
use std::collections::{BTreeMap, BTreeSet};

/// A ribbon's swatch, tenths of a millimetre: the width of a quarter and of a third of the page.
const QUARTER: (i64, i64) = (430, 60);
const THIRD: (i64, i64) = (586, 60);
/// Half of it in large print, as it is drawn.
const HALF_LARGE: (i64, i64) = (521, 60);

/// Versions that one leaf shows.
const LEAF_VERSIONS: usize = 2;

pub(super) fn page(project: &Project, wanted: Wanted) -> FrontPage {
    let say = project.words();
    let design = &project.design;
    FrontPage {
        over: words::sketch_for(say, &month_of(design).unwrap_or_default()),
        title: design.title.value.clone(),
        about: design.about.iter().map(|about| said(&Line::plain(about.value.clone()))).collect(),
        facts: facts(project),
        cut_list: cut_list(project, wanted),
        figures: figures(project, wanted),
        photos: imprint::photos(&project.design, wanted),
        boxes: boxes(project),
    }
}

fn facts(project: &Project) -> Vec<Fact> {
    let say = project.words();
    let design = &project.design;
    let versions: Vec<(u32, String)> =
        design.versions.iter().map(|version| (version.cards, version.name.clone())).collect();
    let mut facts = vec![Fact {
        value: said(&words::cards(say, design.cards.value)),
        note: said(&words::versions(say, &versions)),
    }];
    if let Some(card) = &design.card {
        let folds = match card.fold {
            Fold::Side => Folds::At(Edge::Left.word()),
            Fold::Top => Folds::At(Edge::Top.word()),
            Fold::None => Folds::Flat,
            Fold::Gate => Folds::Gate,
            Fold::Accordion { panels } => Folds::Accordion(panels),
        };
        let flat = design.piece(card.base).size.numbers(design.units);
        let size = format!("{} {}", card.size.numbers(design.units), design.units.sign());
        facts.push(Fact {
            value: said(&Line::new().measure(say.measured(&size))),
            note: said(&words::folds(say, folds, &flat)),
        });
    }
    let cut = |piece: &PieceId| matches!(design.piece(*piece).from, From::Paper(_) | From::Varies);
    let each: u32 = design.piece_ids().filter(cut).map(|piece| design.per_card(piece)).sum();
    let bought = project.plan.sheets.iter().filter(|sheet| !sheet.kept);
    let papers: BTreeSet<PaperId> = bought.map(|sheet| sheet.paper).collect();
    facts.push(Fact {
        value: said(&words::sheets_of_papers(say, small(project.plan.sheets_used()), small(papers.len()))),
        note: said(&words::pieces_in_all(say, each.saturating_mul(design.cards.value), each)),
    });
    facts
}

/// How many papers stand side by side: four, or three where that leaves fewer gaps.
pub(super) fn across(design: &Design) -> usize {
    if matches!(design.papers.len(), 4 | 7 | 8) || design.papers.len() > 9 { 4 } else { 3 }
}

fn cut_list(project: &Project, wanted: Wanted) -> CutList {
    let say = project.words();
    let design = &project.design;
    let across = if wanted.large { 2 } else { across(design) };
    let ribbon = match across {
        2 => HALF_LARGE,
        4 => QUARTER,
        _ => THIRD,
    };
    CutList {
        across,
        title: words::cut_list(say),
        note: said(&words::cut_list_note(say, design.cards.value, design.units)),
        papers: design
            .paper_ids()
            .map(|paper| PaperList {
                swatch: pictures::swatch(project, paper, ribbon),
                name: words::capital(say, &design.paper(paper).name),
                note: said(&sheets_note(project, paper)),
                kind: said(&kind_note(project, paper)),
                rows: piece_rows(project, paper),
            })
            .collect(),
    }
}

/// "2 sheets, 8 1/2 x 11 in": the sheets that the plan uses, kind by kind.
pub(super) fn sheets_note(project: &Project, id: PaperId) -> Line {
    let say = project.words();
    let (design, paper) = (&project.design, project.design.paper(id));
    let mut kinds: BTreeMap<usize, u32> = BTreeMap::new();
    for sheet in project.plan.sheets.iter().filter(|sheet| sheet.paper == id) {
        *kinds.entry(sheet.kind).or_insert(0) += small(sheet.numbers.len());
    }
    let sheets: Vec<(u32, String)> = kinds
        .into_iter()
        .map(|(kind, count)| {
            let size = paper.sheets[kind].size;
            (count, format!("{} {}", size.numbers(design.units), design.units.sign()))
        })
        .collect();
    match (paper.kept_from, sheets.as_slice()) {
        (Some(source), [(count, size)]) => words::leftovers_note(say, *count, &design.paper(source).name, size),
        _ => words::sheets_note(say, &sheets),
    }
}

/// Pattern and weight of a paper.
pub(super) fn kind_note(project: &Project, id: PaperId) -> Line {
    let say = project.words();
    let paper = project.design.paper(id);
    let weight = paper.weight.as_ref().map(|weight| weight.value.written.as_str());
    words::kind_note(say, pattern_words(say, paper.pattern).as_deref(), weight)
}

/// Pieces that the plan cuts from a paper, all sheets together, large to small.
fn piece_rows(project: &Project, paper: PaperId) -> Vec<PieceRow> {
    let say = project.words();
    let design = &project.design;
    let mut counts: BTreeMap<PieceId, u32> = BTreeMap::new();
    for sheet in project.plan.sheets.iter().filter(|sheet| sheet.paper == paper) {
        for (piece, count) in sheet.pieces() {
            *counts.entry(piece).or_insert(0) += count * small(sheet.numbers.len());
        }
    }
    let mut pieces: Vec<(PieceId, u32)> = counts.into_iter().collect();
    pieces.sort_by_key(|(piece, _)| std::cmp::Reverse((Rect::of(design.piece(*piece).blank()).area(), *piece)));
    pieces
        .into_iter()
        .map(|(piece, count)| PieceRow {
            count: count.to_string(),
            name: words::piece_name(say, count, &design.piece(piece).name),
            ring: design.ring(piece).to_string(),
            size: said(&Line::new().measure(say.measured(&design.piece(piece).blank().numbers(design.units)))),
            note: becomes(project, piece, paper).map(|line| said(&line)),
        })
        .collect()
}

/// What becomes of a piece's size: the base is folded, shapes are made from it, what is too long is trimmed.
fn becomes(project: &Project, piece: PieceId, paper: PaperId) -> Option<Line> {
    let say = project.words();
    let design = &project.design;
    if !design.piece(piece).is_plain() {
        return Some(shaped(design, piece, paper));
    }
    if let Some(card) = &design.card
        && design.piece(piece).kind == PieceKind::Base
    {
        return (card.fold != Fold::None).then(|| words::folded_to(say, &card.size.numbers(design.units)));
    }
    let sizes: Vec<Size> = project
        .layout
        .layers
        .iter()
        .filter(|placed| design.layer(placed.layer).piece == piece)
        .flat_map(|placed| {
            let turns = design.layer(placed.layer).quarter_turns;
            let unit = Length::zero(design.units).unit();
            placed.trimmed.iter().flatten().map(move |rect| rect.size(unit).turned(turns))
        })
        .collect();
    let first = *sizes.first()?;
    (first != design.piece(piece).size && sizes.iter().all(|size| *size == first))
        .then(|| words::trimmed_to(say, &first.numbers(design.units)))
}

/// What is made from a trimmed rectangle.
fn shaped(design: &Design, id: PieceId, paper: PaperId) -> Line {
    let say = design.words();
    let piece = design.piece(id);
    let windows = piece.shape.windows.len();
    let size = piece.size.numbers(design.units);
    let ringed = |piece: PieceId| (design.piece(piece).name.clone(), design.ring(piece));
    match (&piece.shape.form, piece.shape.making) {
        (_, Making::Die { .. }) => words::cut_out(say, true, &size, windows),
        (_, Making::Punch { .. }) => words::cut_out(say, false, &size, windows),
        (Form::Rectangle, Making::ByHand) => words::with_windows(say, windows),
        (Form::Triangle { .. }, Making::ByHand) => {
            let shared = of_piece(design, id, paper);
            let other = shared.map(|shared| shared.other.map_or(ringed(id), |(other, _)| ringed(other)));
            words::cut_corner_to_corner(say, &ringed(id), other.as_ref())
        }
        (_, Making::ByHand) => words::cut_to_shape(say, windows),
    }
}

/// The other sides of the card and its envelope that something lies on; a version's own where it differs.
pub(super) fn sides(project: &Project, wanted: Wanted) -> Option<SidePages> {
    let say = project.words();
    let design = &project.design;
    let mut figures = Vec::new();
    for view in views(project).into_iter().filter(|view| *view != View::Front) {
        let varies = design.layers.iter().any(|layer| {
            View::of(layer.face) == view && matches!(design.piece(layer.piece).from, From::Varies | From::Window(..))
        });
        let title = match view {
            View::Front => words::on_the_front(say),
            View::Inside => words::on_the_inside(say),
            View::Back => words::on_the_back(say),
            View::EnvelopeFront => words::envelope_front(say),
            View::EnvelopeFlap => words::envelope_back(say),
        };
        for id in design.version_ids().take(if varies { usize::MAX } else { 1 }) {
            let version = if varies { design.version(id).name.as_str() } else { "" };
            let scene = pictures::side(project, id, view, !varies, wanted);
            figures
                .extend(scene.map(|scene| Figure { caption: said(&words::side_caption(say, &title, version)), scene }));
        }
    }
    let lead = said(&words::other_sides_lead(say));
    (!figures.is_empty()).then_some(SidePages { title: words::other_sides(say), lead, figures })
}

/// The finished fronts in each scale at which they differ, the largest first.
fn figures(project: &Project, wanted: Wanted) -> Vec<Vec<Figure>> {
    let mut sets: Vec<Vec<Figure>> = Vec::new();
    for height in pictures::front_heights(project, wanted).iter().copied() {
        let set = figures_within(project, wanted, height);
        let scales = |set: &[Figure]| set.iter().map(|figure| figure.scene.scale).collect::<Vec<_>>();
        if sets.last().is_none_or(|last| scales(last) != scales(&set)) {
            sets.push(set);
        }
    }
    sets
}

fn figures_within(project: &Project, wanted: Wanted, height: i64) -> Vec<Figure> {
    let say = project.words();
    let design = &project.design;
    let shown = if wanted.form == asked::Form::Leaf { LEAF_VERSIONS } else { usize::MAX };
    design
        .version_ids()
        .take(shown)
        .filter_map(|id| {
            let version = design.version(id);
            let papers: Vec<(u32, String, String)> = version
                .papers
                .iter()
                .map(|(piece, paper)| {
                    (design.per_card(*piece), design.piece(*piece).name.clone(), design.paper(*paper).name.clone())
                })
                .collect();
            let scene = pictures::front(project, id, wanted, height)?;
            let mut caption = words::version_caption(say, &version.name, version.cards, &papers);
            if !wanted.fills {
                // No hatch tells the papers apart: their names do, by the rings of the drawing.
                caption = caption.text(" ").then(variants::papers_by_ring(say, &by_paper(design, id)));
            }
            Some(Figure { caption: said(&caption), scene })
        })
        .collect()
}

/// The rings of the pieces cut from each paper for a version, papers in the order written.
fn by_paper(design: &Design, version: VersionId) -> Vec<(Vec<u32>, String)> {
    let own = |paper: PaperId| {
        let pieces = design
            .piece_ids()
            .filter(move |piece| design.per_card(*piece) > 0 && design.paper_of(*piece, version) == Some(paper));
        pieces.map(|piece| design.ring(piece)).collect::<Vec<u32>>()
    };
    let papers = design.paper_ids().map(|paper| (own(paper), design.paper(paper).name.clone()));
    papers.filter(|(rings, _)| !rings.is_empty()).collect()
}

fn turned_over(say: &Words, how: TurnedOver) -> String {
    match how {
        TurnedOver::LeftToRight => cut_words::left_to_right(say),
        TurnedOver::TopToBottom => cut_words::top_to_bottom(say),
    }
}

fn boxes(project: &Project) -> Vec<CallOut> {
    let say = project.words();
    let design = &project.design;
    let mut boxes = Vec::new();
    if !project.plan.missing.is_empty() {
        let lines = project.plan.missing.iter().map(|missing| {
            let (piece, paper) = (design.piece(missing.piece), design.paper(missing.paper));
            said(&Line::plain(cut_words::missing(say, missing.count, &piece.name, &paper.name)))
        });
        boxes.push(CallOut { title: words::paper_missing(say), caution: true, lines: lines.collect() });
    }
    let mut lines = Vec::new();
    for id in design.paper_ids() {
        let paper = design.paper(id);
        let sheets: Vec<_> = project.plan.sheets.iter().filter(|sheet| sheet.paper == id).collect();
        let shows_back = |piece: PieceId| {
            let of =
                |version| design.paper_of(piece, version) == Some(id) && design.side_of(piece, version) == Side::Back;
            design.version_ids().any(of)
        };
        match paper.back.filter(|_| !sheets.is_empty() && design.piece_ids().any(shows_back)) {
            Some(back) => lines.push(words::both_sides(
                say,
                &paper.name,
                &turned_over(say, back.turned_over),
                paper.pattern == Pattern::OneWay || back.pattern == Pattern::OneWay,
            )),
            None if paper.pattern != Pattern::Any && !sheets.is_empty() => {
                lines.push(words::keep_up(say, &paper.name, paper.pattern == Pattern::TwoWay));
            }
            None => {}
        }
        if paper.different.is_some() && sheets.iter().map(|sheet| sheet.numbers.len()).sum::<usize>() > 1 {
            lines.push(words::different_sheets(say, &paper.name));
        }
        if sheets.len() > 1 {
            let count = sheets.iter().map(|sheet| small(sheet.numbers.len())).sum();
            lines.push(words::not_cut_alike(say, &paper.name, count));
        }
    }
    for id in design.piece_ids().filter(|piece| design.per_card(*piece) > 0) {
        let piece = design.piece(id);
        if let Some(greeting) = piece.greeting.as_ref().filter(|greeting| greeting.how == How::Printed) {
            lines.push(words::printed_first(say, &piece.name, design.ring(id), &greeting.words.value));
        }
        if let From::Window(frame, _) = piece.from {
            let frame_name = &design.piece(frame).name;
            lines.push(words::left_by_a_window(say, &piece.name, design.ring(id), frame_name, design.ring(frame)));
        }
    }
    for layer in &design.layers {
        if let Some(to) = layer.trim_flush {
            let onto = match to.value {
                Onto::Layer(layer) => design.layer(layer).name.clone(),
                Onto::Card => {
                    design.card.as_ref().map_or_else(String::new, |card| design.piece(card.base).name.clone())
                }
            };
            lines.push(words::cut_too_long(say, &layer.name, design.ring(layer.piece), &onto));
        }
    }
    if !lines.is_empty() {
        boxes.push(CallOut { title: words::not_as_usual(say), caution: false, lines: all_said(&lines) });
    }
    boxes
}
