//! Putting together: one cell a step.

use crate::assembly::model::{Action, Step};
use crate::assembly::tell;
use crate::design::model::Work;
use crate::handout::data::{MakingPages, StepCell, TickRow, Ticks, all_said, said};
use crate::handout::pictures;
use crate::project::Project;
use crate::words::Line;
use crate::words::english::pages as words;

/// The pages of putting together; none where nothing but cutting is done.
pub(super) fn pages(project: &Project) -> Option<MakingPages> {
    let design = &project.design;
    let cells = |preparing: bool| -> Vec<StepCell> {
        project
            .steps
            .steps
            .iter()
            .enumerate()
            .filter(|(_, step)| step.work != Work::Cutting && prepares(step.work) == preparing)
            .map(|(index, step)| cell(project, index, step))
            .collect()
    };
    let (preparing, steps) = (cells(true), cells(false));
    if preparing.is_empty() && steps.is_empty() {
        return None;
    }
    let drawn = steps.iter().any(|step| step.scene.is_some());
    Some(MakingPages {
        title: words::PUTTING_TOGETHER,
        lead: said(&words::putting_lead(design.cards.value)),
        legend: preparing.iter().any(|step| step.scene.is_some()).then(pictures::legend),
        preparing,
        steps,
        ticks: (design.cards.value > 1).then(|| Ticks {
            title: words::make(design.cards.value),
            line: said(&words::tick_each()),
            rows: design
                .versions
                .iter()
                .map(|version| TickRow {
                    label: said(&words::tick_row(version.cards, &version.name)),
                    count: version.cards,
                })
                .collect(),
        }),
        foot: drawn.then(|| words::NOT_TO_SCALE.to_owned()),
    })
}

/// Whether a kind of work comes before anything is glued.
const fn prepares(work: Work) -> bool {
    matches!(work, Work::Stamping | Work::Folding | Work::Sorting)
}

fn cell(project: &Project, index: usize, step: &Step) -> StepCell {
    let told = tell::step(&project.design, &project.layout, step);
    let more = if step.action == Action::Sort { tell::piles(&project.design) } else { Vec::new() };
    StepCell {
        number: told.number.map(|number| number.to_string()).unwrap_or_default(),
        scene: pictures::step(project, index),
        notes: all_said(&told.notes),
        caution: told.caution.as_ref().map(said),
        line: said(&told.line),
        more: all_said(&more),
        times: said(&Line::plain(told.times)),
        checkpoint: told.checkpoint.as_ref().map(said),
    }
}
