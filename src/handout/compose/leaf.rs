//! The back of one leaf: every diagram with its measures, and where each layer goes.

use super::cutting;
use crate::assembly::tell;
use crate::design::model::Work;
use crate::design::variants::Wanted;
use crate::handout::data::{LeafCut, LeafPage, LeafPanel, Said, said};
use crate::project::Project;
use crate::words::{pages as words, variants};

pub(super) fn page(project: &Project, wanted: Wanted) -> LeafPage {
    let say = project.words();
    LeafPage {
        title: variants::in_short(say),
        lead: said(&variants::in_short_lead(say, project.units())),
        caution: said(&words::cutting_caution(say)),
        // One way to cut each sheet is enough.
        panels: cutting::panels_in_one_way(project, wanted).into_iter().map(short).collect(),
        lines_title: variants::where_things_go(say),
        lines: lines(project),
    }
}

/// A panel without its sentences.
fn short(panel: crate::handout::data::CutPanel) -> LeafPanel {
    LeafPanel {
        swatches: panel.swatches,
        name: panel.name,
        note: panel.note,
        scene: panel.scene,
        cuts: panel.rows.into_iter().map(|row| LeafCut { cuts: row.cuts, measure: row.measure }).collect(),
    }
}

/// One line a step that lays, trims or folds something.
pub(super) fn lines(project: &Project) -> Vec<Said> {
    let steps = project.steps.steps.iter();
    let steps = steps.filter(|step| matches!(step.work, Work::Stamping | Work::Folding | Work::Units | Work::Layering));
    steps
        .map(|step| said(&tell::step(&project.design, &project.layout, step).line))
        .filter(|line| !line.is_empty())
        .collect()
}
