//! Putting together: one cell a step.

use crate::assembly::model::{Action, Step};
use crate::assembly::tell;
use crate::design::model::{Design, Face, Work};
use crate::design::variants::Wanted;
use crate::handout::data::{MakingPages, StepCell, StepPart, TickRow, Ticks, all_said, said};
use crate::handout::pictures;
use crate::length::{Length, Units, parse_length};
use crate::project::Project;
use crate::words::pages as words;
use crate::words::{Inline, Line};

/// The pages of putting together; none where nothing but cutting is done.
pub(super) fn pages(project: &Project, wanted: Wanted) -> Option<MakingPages> {
    let say = project.words();
    let design = &project.design;
    let (mut preparing, mut parts): (Vec<StepCell>, Vec<StepPart>) = (Vec::new(), Vec::new());
    let one_side = design.layers.iter().all(|layer| layer.face == Face::Front);
    for (index, step) in project.steps.steps.iter().enumerate().filter(|(_, step)| step.work != Work::Cutting) {
        let cell = cell(project, index, step, wanted);
        if prepares(step.work) {
            preparing.push(cell);
            continue;
        }
        let title = if one_side { None } else { title(design, step) };
        match parts.last_mut() {
            Some(part) if part.title == title => part.steps.push(cell),
            _ => parts.push(StepPart { title, steps: vec![cell] }),
        }
    }
    if preparing.is_empty() && parts.is_empty() {
        return None;
    }
    let drawn = parts.iter().flat_map(|part| &part.steps).any(|step| step.scene.is_some());
    let all = preparing.iter().chain(parts.iter().flat_map(|part| &part.steps));
    let legend = pictures::legend(say, all.filter_map(|step| step.scene.as_ref()));
    Some(MakingPages {
        title: words::putting_together(say),
        lead: said(&words::putting_lead(say, design.cards.value)),
        legend,
        preparing,
        parts,
        ticks: (design.cards.value > 1).then(|| Ticks {
            title: words::make(say, design.cards.value),
            line: said(&words::tick_each(say)),
            rows: design
                .versions
                .iter()
                .map(|version| TickRow {
                    label: said(&words::tick_row(say, version.cards, &version.name)),
                    count: version.cards,
                })
                .collect(),
        }),
        foot: drawn.then(|| words::not_to_scale(say)),
    })
}

/// Whether a kind of work comes before anything is glued.
const fn prepares(work: Work) -> bool {
    matches!(work, Work::Printing | Work::Finishing | Work::Stamping | Work::Folding | Work::Sorting)
}

/// What the steps beside each other on the page have in common.
fn title(design: &Design, step: &Step) -> Option<String> {
    let say = design.words();
    let layer = match &step.action {
        Action::Glue { layer, .. } | Action::Trim { layer, .. } => Some(*layer),
        _ => None,
    };
    Some(match (step.work, layer.map(|layer| design.layer(layer).face)) {
        (Work::Units, _) => words::first_put_together(say),
        (Work::Decorating, _) => words::decorating(say),
        (_, Some(Face::Front)) => words::on_the_front(say),
        (_, Some(Face::Inside(_))) => words::on_the_inside(say),
        (_, Some(Face::Back)) => words::on_the_back(say),
        (_, Some(Face::EnvelopeFront | Face::EnvelopeFlap)) => words::on_the_envelope(say),
        (_, None) => return None,
    })
}

fn cell(project: &Project, index: usize, step: &Step, wanted: Wanted) -> StepCell {
    let told = tell::step(&project.design, &project.layout, step);
    let more = if step.action == Action::Sort { tell::piles(&project.design, &project.plan) } else { Vec::new() };
    StepCell {
        number: told.number.map(|number| number.to_string()).unwrap_or_default(),
        scene: pictures::step(project, index, wanted),
        notes: all_said(&told.notes),
        caution: told.caution.as_ref().map(said),
        line: said(&told.line.clone().sentence(told.by_frame)),
        ruler: pictures::ruler_of_step(project, index, &measures(project.units(), &told.line), wanted),
        frame: match &step.action {
            Action::Glue { layer, .. } => pictures::placing_frame(project, *layer, wanted),
            _ => None,
        },
        more: all_said(&more),
        times: said(&Line::plain(told.times)),
        checkpoint: told.checkpoint.as_ref().map(said),
    }
}

/// The lengths that a line measures, a size as its two sides.
fn measures(units: Units, line: &Line) -> Vec<Length> {
    let sides = line.0.iter().flat_map(|part| match part {
        Inline::Measure(text) => text.trim_end_matches(units.sign()).split(" x ").collect(),
        _ => Vec::new(),
    });
    sides.filter_map(|number| parse_length(&format!("{} {}", number.trim(), units.sign())).ok()).collect()
}
