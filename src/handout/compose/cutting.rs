//! The cutting pages: papers cut alike share one diagram.

use super::small;
use crate::assembly::model::Action;
use crate::assembly::{finishing, tell};
use crate::cutting::alternatives;
use crate::design::variants::Wanted;
use crate::handout::data::{CutLine, CutPanel, CuttingPages, Said, all_said, said};
use crate::handout::pictures;
use crate::project::Project;
use crate::words::Line;
use crate::words::{cutting as cut_words, pages as words};

/// The swatch before a panel's name, tenths of a millimetre.
const SWATCH: (i64, i64) = (110, 56);

pub(super) fn pages(project: &Project, wanted: Wanted) -> CuttingPages {
    let say = project.words();
    let design = &project.design;
    CuttingPages {
        title: words::cutting(say),
        lead: said(&words::cutting_lead(say, design.units)),
        caution: said(&words::cutting_caution(say)),
        notes: before_cutting(project).into_iter().chain([said(&words::measured_part(say))]).collect(),
        panels: panels(project, wanted),
        closing: if project.plan.missing.is_empty() {
            said(&tell::all_cut(design, &project.plan))
        } else {
            Said::new()
        },
    }
}

/// What is printed while the paper is whole.
fn before_cutting(project: &Project) -> Vec<Said> {
    let steps = project.steps.steps.iter().filter(|step| matches!(step.action, Action::Print { .. }));
    steps.map(|step| said(&tell::step(&project.design, &project.layout, step).line)).collect()
}

/// Sheets by diagram, in the plan's order.
fn groups(project: &Project) -> Vec<Vec<usize>> {
    let mut groups: Vec<(usize, Vec<usize>)> = Vec::new();
    for (index, sheet) in project.plan.sheets.iter().enumerate() {
        match groups.iter_mut().find(|(diagram, _)| *diagram == sheet.diagram) {
            Some((_, group)) => group.push(index),
            None => groups.push((sheet.diagram, vec![index])),
        }
    }
    groups.into_iter().map(|(_, group)| group).collect()
}

/// One panel a diagram.
pub(super) fn panels_in_one_way(project: &Project, wanted: Wanted) -> Vec<CutPanel> {
    groups(project).iter().map(|group| panel(project, group, wanted)).collect()
}

/// One panel a diagram, and another way behind it where a paper asks for one.
pub(super) fn panels(project: &Project, wanted: Wanted) -> Vec<CutPanel> {
    let both =
        |group: &Vec<usize>| std::iter::once(panel(project, group, wanted)).chain(another_way(project, group, wanted));
    groups(project).iter().flat_map(both).collect()
}

/// The other way to cut these sheets, where one of their papers asks for it and there is one.
fn another_way(project: &Project, group: &[usize], wanted: Wanted) -> Option<CutPanel> {
    let say = project.words();
    let (design, plan) = (&project.design, &project.plan);
    if group.iter().all(|index| design.paper(plan.sheets[*index].paper).ways < 2) {
        return None;
    }
    let other = alternatives::for_sheet(design, plan, group[0])?;
    let project = Project { plan: other.plan, ..project.clone() };
    let first = panel(&project, group, wanted);
    let name = words::another_way(say, &first.name);
    Some(CutPanel {
        again: words::continued(say, &name),
        name,
        before: vec![said(&words::why_another_way(say))],
        ..first
    })
}

fn panel(project: &Project, group: &[usize], wanted: Wanted) -> CutPanel {
    let say = project.words();
    let (design, plan) = (&project.design, &project.plan);
    let first = &plan.sheets[group[0]];
    let mut papers: Vec<_> = Vec::new();
    for index in group {
        let paper = plan.sheets[*index].paper;
        if !papers.contains(&paper) {
            papers.push(paper);
        }
    }
    let names: Vec<String> = papers.iter().map(|paper| design.paper(*paper).name.clone()).collect();
    // Sheet numbers are said only where the paper has another diagram too.
    let numbers = (papers.len() == 1
        && plan.sheets.iter().any(|s| s.paper == first.paper && s.diagram != first.diagram))
    .then(|| cut_words::sheet_numbers(say, &first.numbers));
    let name = words::panel_name(say, &names, numbers.as_deref());
    let sheets: u32 = group.iter().map(|index| small(plan.sheets[*index].numbers.len())).sum();
    CutPanel {
        swatches: papers.iter().map(|paper| pictures::swatch(project, *paper, SWATCH)).collect(),
        again: words::continued(say, &name),
        name,
        note: said(&note(project, group, sheets)),
        scene: pictures::cutting(project, group[0], wanted),
        loose: Vec::new(),
        ruler: pictures::ruler_of_sheet(project, group[0]),
        before: all_said(&[before(project, group), tell::before_a_pad(design, plan, &papers)].concat()),
        heads: words::cut_heads(say),
        rows: first
            .cuts
            .iter()
            .map(|row| {
                let told = tell::row(design, plan, first, row);
                CutLine { cuts: told.cuts, measure: told.measure, line: said(&told.line) }
            })
            .collect(),
        have: said(&words::have(say, sheets, first.kept)),
        items: items(project, group, sheets),
        left: left(project, group),
        slack: said(&tell::slack(design, first, sheets)),
    }
}

/// How many sheets, which size, which way the pattern runs.
fn note(project: &Project, group: &[usize], sheets: u32) -> Line {
    let say = project.words();
    let (design, plan) = (&project.design, &project.plan);
    let first = &plan.sheets[group[0]];
    if group.len() == 1 {
        return tell::sheet_note(design, first);
    }
    let each = small(first.numbers.len());
    let even = group.iter().all(|index| small(plan.sheets[*index].numbers.len()) == each);
    let size = design.paper(first.paper).sheets[first.kind].size;
    let size = format!("{} {}", size.numbers(design.units), design.units.sign());
    words::cut_alike(say, even.then_some(each), sheets, &size)
}

/// The designer's notes on cutting these sheets.
fn before(project: &Project, group: &[usize]) -> Vec<Line> {
    project
        .steps
        .steps
        .iter()
        .filter(|step| matches!(step.action, Action::Cut { sheet } if group.contains(&sheet)))
        .flat_map(|step| tell::step(&project.design, &project.layout, step).notes)
        .collect()
}

fn items(project: &Project, group: &[usize], sheets: u32) -> Vec<Said> {
    let say = project.words();
    let design = &project.design;
    let spares = project.plan.spares_after(design, group);
    project.plan.sheets[group[0]]
        .pieces()
        .into_iter()
        .map(|(piece, count)| {
            let name = finishing::cut_name(design, piece);
            let spare = spares.iter().find(|(other, _)| *other == piece).map_or(0, |(_, count)| *count);
            said(&words::pieces(say, count * sheets, &name, design.ring(piece), spare))
        })
        .collect()
}

fn left(project: &Project, group: &[usize]) -> Option<Said> {
    let say = project.words();
    let (design, plan) = (&project.design, &project.plan);
    let of = |index: usize| plan.leftovers().into_iter().filter(move |left| left.sheet == index && left.number > 0);
    let parts: Vec<(u32, String, u32)> = of(group[0])
        .map(|left| {
            let count = small(left.parts.len() * plan.sheets[group[0]].numbers.len());
            (left.number, left.size.numbers(design.units), count)
        })
        .collect();
    if parts.is_empty() {
        return None;
    }
    let mut line = words::left(say, &parts);
    for index in &group[1..] {
        let numbers: Vec<u32> = of(*index).map(|left| left.number).collect();
        line = words::left_also(say, &line, &design.paper(plan.sheets[*index].paper).name, &numbers);
    }
    Some(said(&line))
}
