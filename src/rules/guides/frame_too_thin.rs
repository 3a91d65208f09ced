//! A placing frame has an arm or a bar too thin to cut.

use super::{instead, unfit, what};
use crate::design::model::{Along, Framed, LayerId};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::guides::frame::{Unfit, least};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{Axis, key, length};

/// The rule.
pub static RULE: Rule = Rule {
    code: "frame-too-thin",
    severity: Severity::Error,
    group: "guides",
    summary: "a placing frame has an arm, or a bar between two openings, too thin to cut",
    page: include_str!("frame_too_thin.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let told = unfit(project).into_iter().filter_map(|(asked, unfit)| match unfit {
        Unfit::Arm { layer, wide, edge } => Some(arm(project, asked, layer, wide, edge)),
        Unfit::Bar { layer, other, wide } => Some(bar(project, asked, (layer, other), wide)),
        _ => None,
    });
    told.collect()
}

fn thin(project: &Project, asked: &Framed, fact: String) -> Finding {
    let least = length(project, least(project.units()).nm());
    let what = what(&project.design, asked);
    Finding::error(RULE.code, asked.span, format!("the frame for {what} is too thin to cut"), fact.clone())
        .plainly(format!("the frame for {what} has {fact}, where {least} is the least that can be cut out"))
}

/// A length longer by what is missing, on the ruler.
fn wider(project: &Project, own: i64, missing: i64) -> String {
    let step = project.design.workshop.ruler.nm().max(1);
    length(project, own + (missing + step - 1) / step * step).to_string()
}

fn arm(project: &Project, asked: &Framed, layer: LayerId, wide: i64, edge: Option<Edge>) -> Finding {
    let design = &project.design;
    let own = design.layer(layer);
    let least = least(project.units()).nm();
    let at = edge.map_or_else(|| "beside it".to_owned(), |edge| format!("at the {} of the {}", edge.word(), own.name));
    let fact = if wide == 0 { format!("no arm {at}") } else { format!("an arm of {} {at}", length(project, wide)) };
    let mut finding = thin(project, asked, fact);
    let mut ways: Vec<String> = Vec::new();
    if let Some(edge) = edge {
        let axis = if edge.is_side() { Axis::Across } else { Axis::Up };
        let along = axis.along(own);
        let stated = match along {
            Along::FromLow(by) if edge == axis.low() => Some(by),
            Along::FromHigh(by) if edge == axis.high() => Some(by),
            _ => None,
        };
        if let Some(by) = stated {
            ways.push(format!("write `{}: {}` or more", key(axis, along), wider(project, by.nm(), least - wide)));
        }
        let span = if edge.is_side() { own.spans.across } else { own.spans.up };
        finding = finding
            .also(span, format!("this lays it {} from the edge of what the frame lies on", length(project, wide)));
    }
    ways.extend(instead(project, asked).map(|on| format!("say `{on}`")));
    if ways.is_empty() {
        ways.push(format!("leave {} or more there, or do without this frame", length(project, least)));
    }
    finding.help(ways.join(", or "))
}

fn bar(project: &Project, asked: &Framed, (layer, other): (LayerId, LayerId), wide: i64) -> Finding {
    let design = &project.design;
    let own = design.layer(layer);
    let least = least(project.units()).nm();
    let between = if layer == other {
        format!("between two openings of the {}", own.name)
    } else {
        format!("between the {} and the {}", own.name, design.layer(other).name)
    };
    let fact =
        if wide == 0 { format!("no bar {between}") } else { format!("a bar of {} {between}", length(project, wide)) };
    let finding = thin(project, asked, fact).also(own.spans.arrangement, "this lays the openings so near");
    let (across, down) = own.arrangement.gaps(project.units());
    let gap = [across, down].into_iter().find(|gap| layer == other && gap.nm() == wide && wide > 0);
    let help = match gap {
        Some(gap) => format!("write `gap: {}` or more", wider(project, gap.nm(), least - wide)),
        None => format!("leave {} or more between them, or do without this frame", length(project, least)),
    };
    finding.help(help)
}
