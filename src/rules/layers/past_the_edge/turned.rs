//! A turned layer past a straight edge: by its true outline, edge by edge.

use super::{RULE, ground_name, shaped};
use crate::design::model::{LayerId, Onto};
use crate::diagnostic::Finding;
use crate::geometry::{Angle, Polygon, Rect, TOLERANCE};
use crate::layout::place::by_hand;
use crate::project::Project;
use crate::rules::outlines::{about, bounds, in_frame, inward, past_edges, up_to_ruler};
use crate::rules::tell::{Axis, ground_span, length, the_ground, the_layer};
use crate::words::Words;
use crate::words::english::listed_words;
use crate::words::laying::degrees;

/// The report of a layer that reaches past `ground`, the rectangle of what it lies on or of its face.
pub(super) fn tell(project: &Project, id: LayerId, onto: Onto, ground: Rect) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let (the_layer, the_ground) = (the_layer(design, id), the_ground(design, onto));
    let on_its_own = onto == layer.onto;
    let round = if on_its_own { bounds(&in_frame(project, id)) } else { None };
    let round = round.unwrap_or_else(|| project.layout.placed(id).bounds());
    let past = past_edges(ground, round);
    let facts: Vec<String> =
        past.iter().map(|(edge, past)| format!("{} past the {} edge", about(project, *past), edge.word())).collect();
    let facts = format!("reaches {} of {the_ground}", listed_words(&facts));
    let mut ways: Vec<String> = Vec::new();
    if Axis::BOTH.iter().all(|axis| axis.extent(round) <= axis.extent(ground)) {
        let moves: Vec<String> = past
            .iter()
            .map(|(edge, past)| format!("{} further {}", up_to_ruler(project, *past), inward(*edge)))
            .collect();
        ways.push(format!("lay it {}", listed_words(&moves)));
    } else {
        let fits = |outline: &Polygon| ground.grown(TOLERANCE).contains(outline.bounds());
        let size = if on_its_own { shaped::smaller(project, id, fits) } else { None };
        let larger = Axis::BOTH.iter().map(|axis| axis.extent(round) - axis.extent(ground)).max().unwrap_or(0);
        ways.push(match size {
            Some(size) => format!("make it {size} or smaller"),
            None => format!("make it {} smaller", up_to_ruler(project, larger)),
        });
    }
    if on_its_own && let Some(most) = most_degrees(project, id, ground) {
        ways.push(format!("turn it no more than {}", degrees(Words::english(), most)));
    }
    if layer.count() == 1 {
        ways.push(format!("say `trim flush: {}`", ground_name(project, onto)));
    }
    let mut finding = Finding::error(
        RULE.code,
        layer.tilt.map_or(layer.span, |tilt| tilt.span),
        format!("{the_layer} reaches past {the_ground}"),
        facts.clone(),
    )
    .plainly(format!("{the_layer} {facts}"))
    .help(ways.join(", or "));
    if let Some(span) = ground_span(design, onto) {
        let size = ground.size(length(project, 0).unit());
        finding = finding.also(span, format!("{the_ground} is {size}"));
    }
    finding
}

/// The most whole degrees that a single layer can be turned to the same side about the same point, in
/// hundredths, without reaching past a rectangle; none where it does so however little it is turned.
fn most_degrees(project: &Project, id: LayerId, ground: Rect) -> Option<u32> {
    let layer = project.design.layer(id);
    let tilt = layer.tilt.filter(|_| layer.count() == 1)?;
    let copies = by_hand(&project.design, &project.layout, id);
    let copy = copies.first()?;
    let turn = copy.turns.last()?;
    let hundredths = tilt.angle.hundredths();
    let (by, to_left) = if hundredths > 18_000 { (36_000 - hundredths, false) } else { (hundredths, true) };
    let fits = |by: u32| {
        let angle = if to_left { Angle::left(i64::from(by)) } else { Angle::right(i64::from(by)) };
        let outline: Polygon = copy.straight.turned(angle, turn.about);
        ground.grown(TOLERANCE).contains(outline.bounds())
    };
    // Turned less and less from where it lies: the first that fits, with all that is less still fitting.
    let whole: Vec<u32> = (1..=by / 100).map(|degree| degree * 100).filter(|degree| *degree < by).collect();
    let most = whole.iter().take_while(|degree| fits(**degree)).last().copied();
    most.filter(|_| fits(0))
}
