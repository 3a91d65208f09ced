//! What shows at an edge is not what `shows:` says.

use crate::design::model::{Along, Layer, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Edge, Rect, TOLERANCE};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::outlines::{back_in_frame, bounds, in_frame, is_turned, near_ruler};
use crate::rules::tell::{ground_span, length, the_ground, the_layer};
use crate::words::english::check::borders;

/// The rule.
pub static RULE: Rule = Rule {
    code: "border-unlike-claim",
    severity: Severity::Error,
    group: "layers",
    summary: "what shows at an edge is not what `shows:` says",
    page: include_str!("border_unlike_claim.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    project.design.layer_ids().filter_map(|id| compare(project, id)).collect()
}

fn compare(project: &Project, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let layer = design.layer(id);
    let claim = layer.shows.as_ref()?;
    let real: Vec<(Edge, Length, Length)> = claim
        .edges
        .iter()
        .map(|(edge, claimed)| {
            let claimed = length(project, claimed.nm());
            (*edge, claimed, told(project, id, claimed, shown(project, id, *edge)))
        })
        .collect();
    // Past the edge is said by its own rule.
    if real.iter().all(|(_, claimed, shows)| claimed == shows) || real.iter().any(|(_, _, shows)| shows.nm() < 0) {
        return None;
    }
    let unlike: Vec<(Edge, Length, Length)> =
        real.iter().copied().filter(|(_, claimed, shows)| claimed != shows).collect();
    let fact = borders(&unlike.iter().map(|(edge, _, shows)| (*edge, *shows)).collect::<Vec<_>>());
    let fact = if is_turned(layer) { format!("about {fact} where it comes nearest") } else { fact };
    let said = borders(&unlike.iter().map(|(edge, claimed, _)| (*edge, *claimed)).collect::<Vec<_>>());
    let the_ground = the_ground(design, layer.onto);
    let mend = match resized(project, layer, &real) {
        Some(size) => format!("make the {} {size}, or say `shows: {}`", design.piece(layer.piece).name, honest(&real)),
        None => format!("say `shows: {}`, or lay it so that {said}", honest(&real)),
    };
    let the_layer = the_layer(design, id);
    let mut finding = Finding::error(
        RULE.code,
        claim.span,
        format!("the border of {the_ground} round {the_layer} is not what `shows` says"),
        fact.clone(),
    )
    .plainly(format!("round {the_layer}, `shows` says that {said}, but {fact}"))
    .help(mend);
    let piece = design.piece(layer.piece);
    finding = finding.also(piece.size_span, format!("the {} is {}", piece.name, piece.size.in_units(project.units())));
    if let Some(span) = ground_span(design, layer.onto).filter(|span| *span != piece.size_span) {
        let size = project.layout.placed(id).onto.size(length(project, 0).unit());
        finding = finding.also(span, format!("{the_ground} is {size}"));
    }
    Some(finding)
}

/// What shows once the layer is trimmed; of a turned one the least, where it comes nearest to the edge.
fn shown(project: &Project, id: LayerId, edge: Edge) -> i64 {
    let placed = project.layout.placed(id);
    let layer = project.design.layer(id);
    let turned = is_turned(layer) || !placed.frame.is_empty();
    let round = match (turned, layer.trim_flush.is_some()) {
        (false, _) => placed.trimmed.iter().flatten().copied().reduce(Rect::hull),
        (true, false) if !is_turned(layer) => None,
        (true, false) => bounds(&in_frame(project, id)),
        (true, true) => back_in_frame(placed, &placed.shown()).bounds(),
    };
    placed.onto.border(round.unwrap_or(placed.block), edge)
}

/// What shows as it is compared with a claim: a turned layer comes to a ruler's mark only by chance, so that a
/// claim nearer than half a step holds.
fn told(project: &Project, id: LayerId, claimed: Length, shows: i64) -> Length {
    let layer = project.design.layer(id);
    let within = if is_turned(layer) {
        project.design.workshop.ruler.nm() / 2
    } else if layer.trim_flush.is_some() && !project.layout.placed(id).frame.is_empty() {
        TOLERANCE
    } else {
        0
    };
    match within {
        within if (claimed.nm() - shows).abs() <= within => claimed,
        0 => length(project, shows),
        _ if shows < -TOLERANCE => length(project, shows),
        _ => near_ruler(project, shows),
    }
}

/// The claim that would be true.
fn honest(real: &[(Edge, Length, Length)]) -> String {
    let first = real[0].2;
    if real.len() == 4 && real.iter().all(|(_, _, shows)| *shows == first) {
        return format!("{first} all round");
    }
    real.iter().map(|(edge, _, shows)| format!("{shows} {}", edge.word())).collect::<Vec<_>>().join(", ")
}

/// The size that makes the claim true, where a size alone can: one piece in the middle, all four
/// edges claimed, opposite ones alike.
fn resized(project: &Project, layer: &Layer, real: &[(Edge, Length, Length)]) -> Option<Size> {
    let claimed = |edge: Edge| real.iter().find(|(at, _, _)| *at == edge).map(|(_, claimed, _)| *claimed);
    let (left, right) = (claimed(Edge::Left)?, claimed(Edge::Right)?);
    let (top, bottom) = (claimed(Edge::Top)?, claimed(Edge::Bottom)?);
    let centred = layer.across == Along::Centre && layer.up == Along::Centre && layer.count() == 1 && !is_turned(layer);
    let ground = project.layout.rect(layer.face, layer.onto).size(left.unit());
    let size = Size::new(ground.width - left - right, ground.height - top - bottom);
    (centred && left == right && top == bottom && size.width.nm() > 0 && size.height.nm() > 0)
        .then(|| size.turned(layer.quarter_turns))
}
