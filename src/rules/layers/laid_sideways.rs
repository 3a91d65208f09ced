//! A piece with a pattern that has an "up" is laid sideways or upside down.

use crate::design::model::{LayerId, PaperId, Pattern};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Angle;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{shown, the_layer};
use crate::words::Words;
use crate::words::laying::turn;

/// The rule.
pub static RULE: Rule = Rule {
    code: "laid-sideways",
    severity: Severity::Error,
    group: "layers",
    summary: "a piece with an upright pattern is laid sideways or upside down",
    page: include_str!("laid_sideways.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| turned(project, id)).collect()
}

fn turned(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let turns = layer.quarter_turns % 4;
    if turns == 0 {
        return slanted(project, id);
    }
    let piece = design.piece(layer.piece);
    let papers: Vec<(PaperId, Pattern)> =
        design.version_ids().filter_map(|version| shown(design, layer.piece, version)).collect();
    let spoilt = papers.iter().copied().find(|(_, pattern)| match pattern {
        Pattern::OneWay => true,
        // Half a turn changes nothing on two-way paper, upright or not.
        Pattern::TwoWay => turns % 2 == 1,
        Pattern::Any => false,
    });
    if spoilt.is_none() && piece.upright != Some(true) {
        return None;
    }
    if turns == 2 && spoilt.is_none() && papers.iter().all(|(_, pattern)| *pattern == Pattern::TwoWay) {
        return None;
    }
    let the_layer = the_layer(design, id);
    let (way, help) = if turns == 2 {
        ("upside down", "take `turned: half` out".to_owned())
    } else {
        let word = if turns == 1 { "quarter left" } else { "quarter right" };
        let size = piece.size.lying().in_units(project.units());
        ("sideways", format!("take `turned: {word}` out, and make a piece of {size} for this place"))
    };
    let fact = match turns {
        1 => "turned a quarter to the left",
        2 => "turned half round",
        _ => "turned a quarter to the right",
    };
    let mut finding =
        Finding::error(RULE.code, layer.span, format!("{the_layer} is laid with its pattern {way}"), fact).help(help);
    Some(match spoilt {
        Some((paper, pattern)) => {
            let paper = design.paper(paper);
            let kind = if pattern == Pattern::OneWay { "one-way" } else { "two-way" };
            finding = finding.plainly(format!("{the_layer} is {fact}, and the pattern of {} is {kind}", paper.name));
            finding.also(paper.pattern_span.unwrap_or(paper.span), format!("{} is {kind}", paper.name))
        }
        None => {
            finding = finding.plainly(format!("{the_layer} is {fact}, and the {} must stay upright", piece.name));
            finding.also(piece.span, format!("the {} must stay upright", piece.name))
        }
    })
}

/// So far from upright a pattern may lean before it is seen as laid wrongly: 30 degrees, common practice, no
/// source.
const MOST_LEANING: u32 = 3_000;

/// How far a pattern leans from an upright one, in hundredths of a degree.
fn leaning(angle: Angle, pattern: Pattern) -> u32 {
    let whole = if pattern == Pattern::TwoWay { 18_000 } else { 36_000 };
    let turned = angle.hundredths() % whole;
    turned.min(whole - turned)
}

/// A pattern that leans on the face: by a turn of the layer or of what it lies on, by its place in a fan or
/// in a pinwheel. Where the piece says `pattern: any`, that is meant.
fn slanted(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    if piece.upright == Some(false) {
        return None;
    }
    let papers = design.version_ids().filter_map(|version| shown(design, layer.piece, version));
    let (paper, pattern) = papers.max_by_key(|(_, pattern)| *pattern)?;
    let pattern = if piece.upright == Some(true) && pattern == Pattern::Any { Pattern::OneWay } else { pattern };
    if pattern == Pattern::Any {
        return None;
    }
    let laid = &project.layout.placed(id).laid;
    let most = laid.iter().map(|laid| laid.angle).max_by_key(|angle| leaning(*angle, pattern))?;
    if leaning(most, pattern) <= MOST_LEANING {
        return None;
    }
    let the_layer = the_layer(design, id);
    let fact = match laid.len() {
        1 => format!("turned {}", turn(Words::english(), most.hundredths())),
        _ => format!("one of them turned {}", turn(Words::english(), most.hundredths())),
    };
    let span = layer.tilt.map_or(layer.span, |tilt| tilt.span);
    let mut finding =
        Finding::warning(RULE.code, span, format!("{the_layer} is laid with its pattern slanting"), fact.clone())
            .help(format!("turn it 30 degrees or less, or say `pattern: any` at the {} if it is meant so", piece.name));
    let paper = design.paper(paper);
    if paper.pattern == Pattern::Any && paper.back.is_none_or(|back| back.pattern == Pattern::Any) {
        finding = finding.plainly(format!("{the_layer} is {fact}, and the {} must stay upright", piece.name));
        return Some(finding.also(piece.span, format!("the {} must stay upright", piece.name)));
    }
    let kind = if pattern == Pattern::OneWay { "one-way" } else { "two-way" };
    finding = finding.plainly(format!("{the_layer} is {fact}, and the pattern of {} is {kind}", paper.name));
    Some(finding.also(paper.pattern_span.unwrap_or(paper.span), format!("{} is {kind}", paper.name)))
}
