//! Almost nothing of a layer shows.

use crate::design::model::{Along, LayerId, Onto, PieceKind};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::{Polygon, Region, TOLERANCE};
use crate::length::{Length, Unit};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::hand;
use crate::rules::outlines::{above, seen, shown, windows};
use crate::rules::tell::{length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "hidden-layer",
    severity: Severity::Warning,
    group: "layers",
    summary: "almost nothing of a layer shows",
    page: include_str!("hidden_layer.md"),
    check: Some(check),
};

/// Less than so many hundredths of a layer's area is almost nothing, however wide it is.
const LEAST_SHARE: i128 = 3;

fn check(project: &Project) -> Vec<Finding> {
    let shown = shown(project);
    let seen = seen(project, &shown);
    project.design.layer_ids().filter_map(|id| hidden(project, &shown, &seen[id.0], id)).collect()
}

fn hidden(project: &Project, shown: &[Region], seen: &Region, id: LayerId) -> Option<Finding> {
    let design = &project.design;
    let piece = design.piece(design.layer(id).piece);
    let own = &shown[id.0];
    // Wholly hidden is said by its own rule; what is bought wastes no paper.
    let bought = matches!(piece.kind, PieceKind::Decoration { .. });
    if bought || own.area2() - seen.area2() < i128::from(TOLERANCE) || !seen.holds_disc(TOLERANCE) {
        return None;
    }
    // What stands behind a window is there for what is seen through it.
    let behind = |window: Polygon| !Region::from(window).intersection(own).is_empty();
    if above(project, id).any(|above| windows(project.layout.placed(above)).any(behind)) {
        return None;
    }
    let fact = thin(project, own, seen, id).or_else(|| {
        let hundredths = (100 * seen.area2() + own.area2() - 1) / own.area2().max(1);
        (100 * seen.area2() < LEAST_SHARE * own.area2()).then(|| format!("{hundredths} in 100 of it shows"))
    })?;
    Some(tell(project, shown, id, &fact))
}

/// How little shows, where it is too narrow anywhere to be seen as meant: narrower than the usual border, or,
/// where it shows all round, than a layer may be laid aside. A claim about what shows says that it is meant, and so
/// does a shift from the place level with it: that is a shadow.
fn thin(project: &Project, own: &Region, seen: &Region, id: LayerId) -> Option<String> {
    let design = &project.design;
    let level = |along: Along| matches!(along, Along::With(other, _) if other == id);
    let meant = above(project, id).any(|above| {
        let layer = design.layer(above);
        let claimed = layer.onto == Onto::Layer(id) && layer.shows.is_some();
        claimed || layer.shifted != (0, 0) && level(layer.across) && level(layer.up)
    });
    let all_round = seen.parts().iter().any(|part| !part.holes().is_empty());
    let border = hand::border(project.units()).nm();
    let least = if all_round { border.min(design.workshop.placing_error.nm()) } else { border };
    let wide_enough = |region: &Region| region.holds_disc((least - TOLERANCE).max(1));
    if meant || wide_enough(seen) || !wide_enough(own) {
        return None;
    }
    let fine = Length::either(project.units(), Length::inch(1, 32), Length::new(500_000, Unit::Millimetre)).nm();
    let mut widths = (1..).map(|step| step * fine).take_while(|width| *width < least);
    let widest = widths.find(|width| !seen.holds_disc(width + TOLERANCE)).unwrap_or(least);
    Some(format!("no more than {} of it shows anywhere", length(project, widest)))
}

fn tell(project: &Project, shown: &[Region], id: LayerId, fact: &str) -> Finding {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let the_layer = the_layer(design, id);
    let size = piece.blank().in_units(project.units());
    let cut = match layer.count() {
        1 => format!("a piece of {size} is"),
        count => format!("{count} pieces of {size} are"),
    };
    let border = hand::border(project.units());
    let mut finding = Finding::warning(RULE.code, layer.span, format!("almost nothing of {the_layer} shows"), fact)
        .plainly(format!("{cut} cut for {the_layer} on every card, and {fact}"))
        .help(format!("lay it so that {border} or more of it shows, or leave it out: {cut} cut for it on every card"));
    for above in above(project, id).filter(|above| !shown[above.0].intersection(&shown[id.0]).is_empty()).take(3) {
        finding = finding.also(design.layer(above).span, "lies over it");
    }
    finding
}
