//! Half of a mirrored layer needs the other hand of its piece, and nothing gives it.
//!
//! All copies of a piece are cut alike, mirrored ones included. A shape that is its own mirror image, as it
//! lies or turned, serves for both halves where its pattern may be turned so. Any other has a left and a right
//! hand: paper that is the same on both sides gives the other one when it is turned over, and no other paper
//! does.

use crate::design::model::{LayerId, Paper, PaperId, Pattern, VersionId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Mirror;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{shown, the_layer};
use crate::shape::{End, Form, Image};
use crate::words::english::counted;

/// The rule.
pub static RULE: Rule = Rule {
    code: "hands-missing",
    severity: Severity::Error,
    group: "making",
    summary: "half of a mirrored layer needs the other hand of its piece",
    page: include_str!("hands_missing.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mirrored = design.layer_ids().filter_map(|id| Some((id, design.layer(id).mirrored?)));
    mirrored.filter_map(|(id, mirror)| missing(project, id, mirror)).collect()
}

/// Why the copies of a piece cannot lie as their own images.
enum Lack {
    /// The pattern would not stand upright, with the kind of pattern and the paper, or the piece's own wish.
    Turned(Option<(PaperId, Pattern)>),
    /// The paper cannot be turned over: its pattern has a direction, or its other side is another.
    OneSided(PaperId),
    /// Its words would be on the back.
    Words,
    /// It can be turned over if its two sides are alike, which the design does not say.
    ToTurnOver,
}

fn missing(project: &Project, id: LayerId, mirror: Mirror) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let papers: Vec<(PaperId, Pattern)> =
        design.version_ids().filter_map(|version: VersionId| shown(design, layer.piece, version)).collect();
    // Something bought has no paper to be turned over.
    let first = *papers.first()?;
    let image = piece.shape.quarter_turned(layer.quarter_turns).image(mirror);
    let lack = match image {
        Image::Itself => return None,
        Image::HalfTurned | Image::Turned => {
            let spoilt = papers.iter().copied().find(|(_, pattern)| match pattern {
                Pattern::OneWay => true,
                Pattern::TwoWay => image == Image::Turned,
                Pattern::Any => false,
            });
            let two_way = papers.iter().all(|(_, pattern)| *pattern == Pattern::TwoWay);
            let upright = piece.upright == Some(true) && !(image == Image::HalfTurned && two_way);
            match spoilt {
                None if !upright => return None,
                spoilt => Lack::Turned(spoilt),
            }
        }
        Image::OtherHand if piece.greeting.is_some() => Lack::Words,
        Image::OtherHand => {
            let one_sided = |paper: &Paper| paper.pattern != Pattern::Any || paper.back.is_some();
            papers
                .iter()
                .find(|(paper, _)| one_sided(design.paper(*paper)))
                .map_or(Lack::ToTurnOver, |(paper, _)| Lack::OneSided(*paper))
        }
    };
    Some(tell(project, id, mirror, first.0, &lack))
}

fn tell(project: &Project, id: LayerId, mirror: Mirror, paper: PaperId, lack: &Lack) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let (the_layer, half) = (the_layer(design, id), layer.count() / 2);
    let copies = counted(half, "copy");
    let says = if half == 1 { "is" } else { "are" };
    if matches!(lack, Lack::ToTurnOver) {
        let paper = &design.paper(paper).name;
        return Finding::note(
            RULE.code,
            layer.span,
            format!("the mirrored {} is the other hand", piece.name),
            format!("{copies} of it {says} turned over"),
        )
        .also(piece.shape_span, "this shape has a left and a right hand")
        .plainly(format!("{copies} of {the_layer} {says} turned over, which shows the back of {paper}"))
        .help(format!(
            "see that both sides of {paper} look alike, or write 1 more piece: {}",
            other(project, id, mirror)
        ));
    }
    let (message, fact) = match lack {
        Lack::Turned(_) => (
            format!("the mirrored {} would stand with its pattern turned", piece.name),
            format!("{copies} of it {says} the same shape only when turned"),
        ),
        Lack::OneSided(_) | Lack::Words | Lack::ToTurnOver => (
            format!("the mirrored {} is the other hand, and nothing gives it", piece.name),
            format!("{copies} of it {says} mirrored, and all are cut alike"),
        ),
    };
    let why = match lack {
        Lack::Turned(Some((paper, pattern))) => {
            let kind = if *pattern == Pattern::OneWay { "one-way" } else { "two-way" };
            (design.paper(*paper).span, format!("{} is {kind}", design.paper(*paper).name))
        }
        Lack::Turned(None) => (piece.span, format!("the {} must stay upright", piece.name)),
        Lack::OneSided(paper) => {
            let paper = design.paper(*paper);
            (paper.span, format!("turned over, {} shows another side", paper.name))
        }
        Lack::Words | Lack::ToTurnOver => (piece.span, "turned over, its words are behind".to_owned()),
    };
    Finding::error(RULE.code, layer.span, message, fact.clone())
        .also(why.0, why.1.clone())
        .also(piece.shape_span, "this is the shape of all of them")
        .plainly(format!("{the_layer} is laid a second time mirrored, {fact}, and {}", why.1))
        .help(format!("take `mirrored` out and lay 1 more piece there: {}", other(project, id, mirror)))
}

/// The other hand of a piece, as it is written.
fn other(project: &Project, id: LayerId, mirror: Mirror) -> String {
    let layer = project.design.layer(id);
    let piece = project.design.piece(layer.piece);
    // A piece that is laid turned is mirrored before that turn.
    let mirror = match (layer.quarter_turns % 2, mirror) {
        (0, mirror) => mirror,
        (_, Mirror::LeftToRight) => Mirror::TopToBottom,
        (_, Mirror::TopToBottom) => Mirror::LeftToRight,
    };
    let edge = |edge: crate::geometry::Edge| edge.word();
    let form = piece.shape.form.mirrored(mirror, piece.shape.width, piece.shape.height);
    let end = |end: &End| match end {
        End::Fishtail { .. } => "fishtail",
        End::Pointed { .. } => "pointed",
    };
    match &form {
        Form::Triangle { right_angle } if piece.shape.windows.is_empty() => {
            format!("`shape: triangle, right angle at {}`", right_angle.word())
        }
        Form::Ended { edge: at, end: own, opposite: None } if piece.shape.windows.is_empty() => {
            format!("one with its {} at the {}", end(own), edge(*at))
        }
        Form::Ended { edge: at, end: own, opposite: Some(other) } if piece.shape.windows.is_empty() => {
            format!(
                "one with its {} end at the {} and its {} end at the {}",
                end(own),
                edge(*at),
                end(other),
                edge(at.opposite())
            )
        }
        _ => {
            let way = if mirror == Mirror::LeftToRight { "left and right" } else { "top and bottom" };
            format!("the {} with {way} changed for each other", piece.name)
        }
    }
}
