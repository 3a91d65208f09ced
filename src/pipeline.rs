//! The order of stages; no logic of its own.
//!
//! Takes a source text, gives every stage's value for each edition that the design asks for, with
//! the findings of all of them. Must never know a disk, a terminal or a page.

use crate::assembly::sequence::sequence;
use crate::cutting::plan::CutPlan;
use crate::cutting::search;
use crate::cutting::search::sheet::Limits;
use crate::cutting::verify::{Fault, verify};
use crate::design::model::Design;
use crate::design::{nodes, settle};
use crate::diagnostic::{Finding, Severity};
use crate::files::{Files, cause};
use crate::layout::place::place;
use crate::length::Units;
use crate::project::{Other, Project};
use crate::rules;
use crate::shape::LARGEST_DRAWING;
use crate::source::Source;
use std::path::Path;

/// What a design comes to.
#[derive(Debug, Clone, Default)]
pub struct Outcome {
    /// One project an edition, in the order the design asks for them. An edition whose design could
    /// not be settled is missing; then there is an error among the findings.
    pub editions: Vec<Project>,
    /// Everything found, in the order of the text; a finding that both editions share stands once.
    pub findings: Vec<Finding>,
}

impl Outcome {
    /// Whether there is an error.
    #[must_use]
    pub fn has_errors(&self) -> bool {
        self.findings.iter().any(|finding| finding.severity == Severity::Error)
    }
}

/// A design read and settled, before anything is placed or planned.
#[derive(Debug, Clone, Default)]
pub struct Settled {
    /// One design an edition, in the order asked for, where it could be settled.
    pub designs: Vec<Design>,
    /// What is wrong with each edition so far.
    pub found: Vec<(Units, Vec<Finding>)>,
}

impl Settled {
    /// The findings of all editions, and more about what one of them was changed to.
    #[must_use]
    pub fn findings_with(&self, more: Vec<Finding>) -> Vec<Finding> {
        let mut findings = merge(self.found.clone());
        findings.extend(more);
        findings.sort_by_key(|finding| (finding.primary.span.start, finding.primary.span.end));
        findings
    }
}

/// The source with the drawings that it names, read from beside the design at `path`; what cannot be read
/// is said when it is settled.
#[must_use]
pub fn with_drawings(source: Source, files: &dyn Files, path: &Path) -> Source {
    let named = nodes::read(&source).map(|root| settle::drawings_named(&root)).unwrap_or_default();
    named.into_iter().fold(source, |source, drawing| {
        let bytes = files.read_beside(path, Path::new(&drawing), LARGEST_DRAWING).map_err(|error| cause(&error));
        source.with_beside(drawing, bytes)
    })
}

/// Reads and settles a design for each edition. `stem` is the file's name without its ending.
#[must_use]
pub fn settle(source: &Source, stem: &str) -> Settled {
    let root = match nodes::read(source) {
        Ok(root) => root,
        Err(finding) => return Settled { designs: Vec::new(), found: vec![(Units::Inch, vec![finding])] },
    };
    let mut editions = settle::units_asked(&root);
    if editions.is_empty() {
        // A file for `cuts` need not say: its first length does.
        editions.push(settle::first_units(&root).unwrap_or(Units::Inch));
    }
    let mut all = Settled::default();
    for units in editions {
        let settled = settle::settle(&root, source, stem, units);
        all.designs.extend(settled.design);
        all.found.push((units, settled.findings));
    }
    all
}

/// Runs a design through every stage. `stem` is the file's name without its ending.
#[must_use]
pub fn run(source: &Source, stem: &str) -> Outcome {
    let Settled { designs, mut found } = settle(source, stem);
    let mut editions = Vec::new();
    for design in designs {
        let units = design.units;
        let plan = search::plan(&design);
        let (project, findings) = finish(design, plan);
        if let Some((_, found)) = found.iter_mut().find(|(edition, _)| *edition == units) {
            found.extend(findings);
        }
        editions.push(project);
    }
    Outcome { editions, findings: merge(found) }
}

/// The stages after a plan, and what the rules find.
#[must_use]
pub fn finish(design: Design, plan: CutPlan) -> (Project, Vec<Finding>) {
    let layout = place(&design);
    let steps = sequence(&design, &plan);
    let others = others(&design);
    let project = Project { design, layout, plan, steps, others };
    let findings = rules::check(&project);
    (project, findings)
}

/// The design from each of the other sheets that somebody may hold.
fn others(design: &Design) -> Vec<Other> {
    let (limits, mut known) = (Limits::default(), search::Known::default());
    let mut all = Vec::new();
    for paper in design.paper_ids() {
        for (also, other) in design.paper(paper).also.iter().enumerate() {
            let design = design.with_sheets(paper, other.sheets.clone());
            let plan = search::plan_knowing(&design, &limits, &mut known);
            all.push(Other { paper, also, design, plan });
        }
    }
    all
}

/// The findings of all editions in the order of the text: what every edition finds alike stands
/// once, the rest says which edition it is about.
pub(crate) fn merge(found: Vec<(Units, Vec<Finding>)>) -> Vec<Finding> {
    let several = found.len() > 1;
    let mut merged: Vec<Finding> = Vec::new();
    for (index, (units, findings)) in found.iter().enumerate() {
        for finding in findings {
            if found[..index].iter().any(|(_, earlier)| earlier.contains(finding)) || merged.contains(finding) {
                continue;
            }
            let shared = found.iter().all(|(_, others)| others.contains(finding));
            let edition = (several && !shared).then_some(*units);
            merged.push(Finding { edition: finding.edition.or(edition), ..finding.clone() });
        }
    }
    merged.sort_by_key(|finding| (finding.primary.span.start, finding.primary.span.end));
    merged
}

/// Replays every plan with the referee, which shares no code with the search.
///
/// # Errors
/// The faults, with the edition they stand in: a plan that fails here is never published.
pub fn referee(editions: &[Project]) -> Result<(), Vec<(Units, Fault)>> {
    let plans = |project: &'_ Project| -> Vec<Fault> {
        let others = project.others.iter().flat_map(|other| verify(&other.design, &other.plan));
        verify(&project.design, &project.plan).into_iter().chain(others).collect()
    };
    let faults: Vec<(Units, Fault)> =
        editions.iter().flat_map(|project| plans(project).into_iter().map(|fault| (project.units(), fault))).collect();
    if faults.is_empty() { Ok(()) } else { Err(faults) }
}
