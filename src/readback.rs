//! What `check` says of a sound design: its cards, layers, borders and sheets, read back to the
//! designer from the very values that are printed.
//!
//! Takes a project, gives lines of text. Must never measure anything anew.

mod papers;
mod sizes;

use crate::design::model::{
    Along, Arrangement, Design, Fold, Glue, LayerId, Onto, PieceId, PieceKind, Side, VersionId,
};
use crate::geometry::Edge;
use crate::length::Length;
use crate::project::Project;
use crate::words::english::{check, counted, cutting, listed_words};

/// The design as one edition prints it, a fact a line: the cards, each version, each layer with
/// every border and gap, the sheets of each paper with what they give and what is said of their
/// cutting, and the cuts.
#[must_use]
pub fn read_back(project: &Project) -> Vec<String> {
    let design = &project.design;
    let units = project.units();
    let size = design.card.as_ref().map(|card| card.size.in_units(units));
    let fold = design.card.as_ref().map_or("", |card| match card.fold {
        Fold::Side => "folded at the side",
        Fold::Top => "folded at the top",
        Fold::None => "flat",
        Fold::Gate => "opens in the middle of the front",
        Fold::Accordion { .. } => "folds to and fro",
    });
    let mut lines = vec![check::title(&design.title.value, units.word(), design.cards.value, size, fold)];
    if let Some(card) = &design.card {
        let base = design.piece(card.base).size.in_units(units);
        lines.push(format!("Each base is cut {base} from {}.", design.paper(card.from).name));
    }
    lines.extend(design.version_ids().filter_map(|id| version(design, id)));
    if design.has_front {
        lines.extend(sizes::related(project));
    }
    lines.extend(design.layer_ids().map(|id| layer(project, id)));
    if !design.has_front {
        let written = |id: &PieceId| !matches!(design.piece(*id).kind, PieceKind::Kept { .. });
        lines.extend(design.piece_ids().filter(written).map(|id| piece(project, id)));
    }
    for id in design.paper_ids() {
        lines.push(papers::sheets(project, id));
        lines.extend(papers::said_of(project, id).into_iter().map(|line| format!("  {line}")));
    }
    let plan = &project.plan;
    let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    lines.push(cutting::totals(plan.cuts(), count(plan.sheets_used()), count(plan.diagrams())));
    lines
}

fn version(design: &Design, id: VersionId) -> Option<String> {
    let version = design.version(id);
    if version.name.is_empty() {
        return None;
    }
    let papers: Vec<String> = version
        .papers
        .iter()
        .map(|(piece, paper)| {
            let side = if design.side_of(*piece, id) == Side::Back { "the back of " } else { "" };
            format!("{} from {side}{}", design.piece(*piece).name, design.paper(*paper).name)
        })
        .collect();
    let cards = counted(version.cards, "card");
    Some(if papers.is_empty() {
        format!("Version {}, {cards}.", version.name)
    } else {
        format!("Version {}, {cards}: {}.", version.name, listed_words(&papers))
    })
}

fn layer(project: &Project, id: LayerId) -> String {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let size = piece.size.in_units(project.units());
    let (columns, rows) = layer.arrangement.columns_rows();
    let what = match layer.arrangement {
        Arrangement::Single => format!("{size}"),
        Arrangement::Row { count, .. } => format!("{count} of {size} in a row"),
        Arrangement::Column { count, .. } => format!("{count} of {size} in a column"),
        Arrangement::Grid { .. } => format!("{columns} x {rows} of {size} in a grid"),
        Arrangement::Steps { count, .. } => format!("{count} of {size} in steps"),
        Arrangement::Triangle { .. } => format!("{} of {size} in a triangle", layer.arrangement.count()),
        Arrangement::Fan { count, .. } => format!("{count} of {size} in a fan"),
        Arrangement::Pinwheel { .. } => format!("4 of {size} round a middle"),
    };
    let turned = match layer.quarter_turns % 4 {
        0 => "",
        1 => ", turned a quarter to the left",
        2 => ", turned half round",
        _ => ", turned a quarter to the right",
    };
    let onto = match layer.onto {
        Onto::Card => "the card".to_owned(),
        Onto::Layer(below) => name(design, below),
    };
    let mut facts = vec![format!("{what}{turned}, on {onto}{}", beside(project, id))];
    facts.push(borders(project, id));
    facts.extend(gaps(project, id));
    facts.extend(trimmed(project, id));
    facts.extend(layer.glue.as_ref().map(|glue| {
        match glue.value {
            Glue::Tape => "tape",
            Glue::Liquid => "liquid glue",
            Glue::Foam => "foam",
            Glue::Dot => "glue dots",
        }
        .to_owned()
    }));
    facts.retain(|fact| !fact.is_empty());
    let label = if layer.name == piece.name { layer.name.clone() } else { format!("{} ({})", layer.name, piece.name) };
    let indent = "  ".repeat(depth(design, id));
    format!("{indent}{label}: {}.", facts.join("; "))
}

fn name(design: &Design, id: LayerId) -> String {
    format!("the {}", design.layer(id).name)
}

/// How many units a layer is put together in before it reaches the card.
fn depth(design: &Design, id: LayerId) -> usize {
    std::iter::successors(design.layer(id).unit, |unit| design.layer(*unit).unit).take(design.layers.len()).count()
}

/// The neighbours that place a layer, with their gaps.
fn beside(project: &Project, id: LayerId) -> String {
    let design = &project.design;
    let layer = design.layer(id);
    let mut told = String::new();
    for (along, after, before) in [(layer.across, "right of", "left of"), (layer.up, "above", "below")] {
        let (other, gap, way) = match along {
            Along::After(other, gap) => (other, gap, after),
            Along::Before(other, gap) => (other, gap, before),
            _ => continue,
        };
        let gap = Length::of(gap.nm(), project.units());
        let gap = if gap.is_zero() { "edge to edge".to_owned() } else { gap.to_string() };
        told.push_str(&format!(", {gap} {way} {}", name(design, other)));
    }
    told
}

/// What shows at each edge, as laid; what hangs over stands with the trimming.
fn borders(project: &Project, id: LayerId) -> String {
    let placed = project.layout.placed(id);
    let shown: Vec<(Edge, Length)> = Edge::ALL
        .into_iter()
        .map(|edge| (edge, Length::of(placed.shows(edge), project.units())))
        .filter(|(_, shows)| shows.nm() >= 0)
        .collect();
    if shown.is_empty() { String::new() } else { check::borders(&shown) }
}

fn gaps(project: &Project, id: LayerId) -> Option<String> {
    let layer = project.design.layer(id);
    let (across, down) = layer.arrangement.gaps(project.units());
    let (across, down) = (Length::of(across.nm(), project.units()), Length::of(down.nm(), project.units()));
    match layer.arrangement {
        Arrangement::Single
        | Arrangement::Steps { .. }
        | Arrangement::Triangle { .. }
        | Arrangement::Fan { .. }
        | Arrangement::Pinwheel { .. } => None,
        Arrangement::Row { .. } => Some(format!("{across} between them")),
        Arrangement::Column { .. } => Some(format!("{down} between them")),
        Arrangement::Grid { .. } => Some(format!("{across} between columns, {down} between rows")),
    }
}

fn trimmed(project: &Project, id: LayerId) -> Option<String> {
    let design = &project.design;
    let flush = design.layer(id).trim_flush.as_ref()?.value;
    let target = project.layout.rect(design.layer(id).face, flush);
    let block = project.layout.placed(id).block;
    let over: Vec<(Edge, Length)> = Edge::ALL
        .into_iter()
        .map(|edge| (edge, Length::of(-target.border(block, edge), project.units())))
        .filter(|(_, over)| over.nm() > 0)
        .collect();
    let what = match flush {
        Onto::Card => "the card".to_owned(),
        Onto::Layer(layer) => name(design, layer),
    };
    Some(format!("{}, trimmed flush with {what}", check::overhang(&over)))
}

/// A piece of a file without layers.
fn piece(project: &Project, id: PieceId) -> String {
    let design = &project.design;
    let piece = design.piece(id);
    let from = sizes::come_from(project, id).map_or_else(|| ",".to_owned(), |from| format!(", {from};"));
    format!("{}: {}{from} {} a card.", piece.name, piece.size.in_units(project.units()), design.per_card(id))
}
