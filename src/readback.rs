//! What `check` says of a sound design: its cards, layers, borders and sheets, read back to the
//! designer from the very values that are printed.
//!
//! Takes a project, gives lines of text. Must never measure anything anew.

mod layers;
mod made;
mod papers;
mod post;
mod sizes;

use crate::design::model::{Card, Design, Fold, PieceId, PieceKind, Side, VersionId};
use crate::length::Length;
use crate::project::Project;
use crate::words::english::{check, counted, listed_words};
use crate::words::{Words, cutting};

/// The design as one edition prints it, a fact a line: the cards, each version, each layer with
/// every border and gap, envelope and post, the sheets of each paper with what they give and what is said of their
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
    lines.extend(restated(design));
    if let Some(scores) = design.card.as_ref().and_then(|card| scores(design, card)) {
        lines.push(scores);
    }
    if let Some(card) = &design.card {
        let base = design.piece(card.base).size.in_units(units);
        lines.push(format!("Each base is cut {base} from {}.", design.paper(card.from).name));
        lines.extend(post::base(project, card));
    }
    lines.extend(design.version_ids().filter_map(|id| version(design, id)));
    if design.has_front {
        lines.extend(sizes::related(project));
    }
    lines.extend(made::made(project));
    lines.extend(design.layer_ids().map(|id| layers::layer(project, id)));
    if design.has_front {
        lines.extend(made::in_all(project));
    }
    if let (Some(card), Some(made)) = (&design.card, &project.made) {
        lines.extend(post::posted(project, card, made));
    }
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
    lines.push(cutting::totals(Words::english(), plan.cuts(), count(plan.sheets_used()), count(plan.diagrams())));
    lines
}

/// What this edition has by rule, in the order of the file, each once.
fn restated(design: &Design) -> Option<String> {
    let mut pairs: Vec<String> = Vec::new();
    for restated in design.restated.iter().filter(|_| design.is_restated()) {
        if !pairs.contains(&restated.pair) {
            pairs.push(restated.pair.clone());
        }
    }
    (!pairs.is_empty()).then(|| check::restated(&pairs))
}

/// The score lines of a base that has several.
fn scores(design: &Design, card: &Card) -> Option<String> {
    let scores = card.fold.scores(card.size);
    let told: Vec<String> = scores
        .iter()
        .map(|score| {
            let fold = if score.mountain { "mountain" } else { "valley" };
            format!("{} ({fold})", Length::of(score.at, design.units))
        })
        .collect();
    (told.len() > 1).then(|| format!("Scored, its outside up, from the left edge at {}.", listed_words(&told)))
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

/// A piece of a file without layers.
fn piece(project: &Project, id: PieceId) -> String {
    let design = &project.design;
    let piece = design.piece(id);
    let from = sizes::come_from(project, id).map_or_else(|| ",".to_owned(), |from| format!(", {from};"));
    format!("{}: {}{from} {} a card.", piece.name, piece.size.in_units(project.units()), design.per_card(id))
}
