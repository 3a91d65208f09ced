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
use crate::design::restate::Restated;
use crate::design::{nodes, settle};
use crate::diagnostic::{Finding, Severity};
use crate::files::{Files, LARGEST_DESIGN, cause};
use crate::layout::place::place;
use crate::length::Units;
use crate::paper::made::made;
use crate::picture::LARGEST_PICTURE;
use crate::project::{Other, Project, Totals};
use crate::rules::sizes::restated::with_pair;
use crate::rules::{self, allowing};
use crate::shape::LARGEST_DRAWING;
use crate::source::Source;
use crate::words::Language;
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
    /// The same as readers of each language are told them, where these are not the designs themselves.
    pub told: Vec<Design>,
    /// What is wrong with each edition so far.
    pub found: Vec<Edition>,
}

/// What is wrong with an edition, and what it has by rule.
#[derive(Debug, Clone)]
pub struct Edition {
    /// Its system.
    pub units: Units,
    /// What is wrong.
    pub findings: Vec<Finding>,
    /// What it has by rule.
    pub restated: Vec<Restated>,
}

impl Settled {
    /// The findings of all editions.
    #[must_use]
    pub fn findings(&self) -> Vec<Finding> {
        self.allowed(merge(&self.designs, self.found.clone()))
    }

    /// The findings of all editions, and more about what the one in `units` was changed to.
    #[must_use]
    pub fn findings_with(&self, units: Units, more: Vec<Finding>) -> Vec<Finding> {
        let mut findings = merge(&self.designs, self.found.clone());
        let edition = self.found.iter().find(|edition| edition.units == units);
        let design = self.designs.iter().find(|design| design.units == units);
        let restated = edition.map_or(&[][..], |edition| &edition.restated);
        findings.extend(more.into_iter().map(|finding| with_pair(finding, design, restated)));
        self.allowed(findings)
    }

    /// Findings with those marked that the design allows, in the order of the text.
    fn allowed(&self, mut findings: Vec<Finding>) -> Vec<Finding> {
        if let Some(design) = self.designs.first() {
            findings = allowing::mark(&design.allow, findings);
        }
        sort(&mut findings);
        findings
    }
}

/// The source with the files that it names, read from beside the design at `path`: drawings, photos, the imprint
/// and its logo; what cannot be read is said when it is settled.
#[must_use]
pub fn with_drawings(source: Source, files: &dyn Files, path: &Path) -> Source {
    let Ok(root) = nodes::read(&source) else { return source };
    let read = |source: Source, name: String, limit: u64| {
        let bytes = files.read_beside(path, Path::new(&name), limit).map_err(|error| cause(&error));
        source.with_beside(name, bytes)
    };
    let mut source =
        settle::drawings_named(&root).into_iter().fold(source, |source, name| read(source, name, LARGEST_DRAWING));
    for photo in settle::photos_named(&root) {
        source = read(source, photo, LARGEST_PICTURE);
    }
    if let Some(imprint) = settle::imprint_named(&root) {
        source = read(source, imprint.clone(), LARGEST_DESIGN);
        let logo = nodes::read(&source.file(&imprint)).ok().and_then(|root| settle::logo_named(&root, &imprint));
        source = logo.into_iter().fold(source, |source, logo| read(source, logo, LARGEST_PICTURE));
    }
    source
}

/// Reads and settles a design for each edition that it asks for, and for one in the units of `also`.
/// `stem` is the file's name without its ending.
#[must_use]
pub fn settle(source: &Source, stem: &str, also: Option<Units>) -> Settled {
    settle_told(source, stem, also, None)
}

/// The same, told in `language` too where the design does not ask for it.
#[must_use]
pub fn settle_told(source: &Source, stem: &str, also: Option<Units>, language: Option<Language>) -> Settled {
    let root = match nodes::read(source) {
        Ok(root) => root,
        Err(finding) => {
            let unread = Edition { units: Units::Inch, findings: vec![finding], restated: Vec::new() };
            return Settled { found: vec![unread], ..Settled::default() };
        }
    };
    let mut editions = settle::units_asked(&root);
    if editions.is_empty() {
        // A file for `cuts` need not say: its first length does.
        editions.push(settle::first_units(&root).unwrap_or(Units::Inch));
    }
    editions.extend(also.filter(|units| !editions.contains(units)));
    let mut all = Settled::default();
    for units in editions {
        let settled = settle::settle_in(&root, source, stem, units, language, None);
        if let Some(design) = settled.design {
            let languages = design.told_otherwise().to_vec();
            let told = |told| settle::settle_in(&root, source, stem, units, language, Some(told)).design;
            all.told.extend(languages.into_iter().filter_map(told));
            all.designs.push(design);
        }
        all.found.push(Edition { units, findings: settled.findings, restated: settled.restated });
    }
    all
}

/// Runs a design through every stage. `stem` is the file's name without its ending.
#[must_use]
pub fn run(source: &Source, stem: &str) -> Outcome {
    run_also(source, stem, None)
}

/// The same, with an edition in the units of `also` where the design asks for none.
#[must_use]
pub fn run_also(source: &Source, stem: &str, also: Option<Units>) -> Outcome {
    run_told(source, stem, also, None)
}

/// The same, told in `language` too where the design does not ask for it.
#[must_use]
pub fn run_told(source: &Source, stem: &str, also: Option<Units>, language: Option<Language>) -> Outcome {
    run_settled(settle_told(source, stem, also, language), |design| (search::plan(design), others(design)))
}

/// The same with the first plan found within the sheets, for many designs at once: everything is found but what
/// depends on the plan that is printed ([`rules::OF_THE_BEST_PLAN`]), and the projects are not to be printed.
#[must_use]
pub fn run_quickly(source: &Source, stem: &str, also: Option<Units>) -> Outcome {
    let settled = settle(source, stem, also);
    let mut outcome =
        run_settled(settled, |design| (search::plan_enough(design), others_by(design, search::plan_enough)));
    outcome.findings.retain(|finding| !rules::OF_THE_BEST_PLAN.contains(&finding.code));
    outcome
}

/// The stages after reading; `plan` gives the plan of a design, and what comes of other sheets.
pub(crate) fn run_settled(settled: Settled, mut plan: impl FnMut(&Design) -> (CutPlan, Vec<Other>)) -> Outcome {
    let Settled { designs, told, mut found } = settled;
    let made_in = found.first().map(|edition| edition.units);
    let mut editions: Vec<Project> = Vec::new();
    for design in &designs {
        let units = design.units;
        let (plan, others) = plan(design);
        let first = editions.first().filter(|first| made_in == Some(first.units()));
        let first = first.map(|first| Totals::of(&first.plan));
        let told = told.iter().filter(|told| told.units == units).cloned().collect();
        let (project, findings) = finish_beside(design.clone(), told, plan, others, first);
        if let Some(edition) = found.iter_mut().find(|edition| edition.units == units) {
            edition.findings.extend(findings);
        }
        editions.push(project);
    }
    let mut findings = merge(&designs, found);
    if let Some(project) = editions.first() {
        findings = allowing::judge(&project.design.allow, findings);
        sort(&mut findings);
    }
    Outcome { editions, findings }
}

/// Into the order of the text.
fn sort(findings: &mut [Finding]) {
    // What stands in another file comes behind.
    findings.sort_by(|a, b| {
        let key = |finding: &Finding| (finding.primary.span.start, finding.primary.span.end);
        a.file.cmp(&b.file).then_with(|| key(a).cmp(&key(b)))
    });
}

/// The stages after a plan, and what the rules find.
#[must_use]
pub fn finish(design: Design, plan: CutPlan) -> (Project, Vec<Finding>) {
    let others = others(&design);
    finish_beside(design, Vec::new(), plan, others, None)
}

/// The same beside the edition that the design is made in.
fn finish_beside(
    design: Design,
    told: Vec<Design>,
    plan: CutPlan,
    others: Vec<Other>,
    made_in: Option<Totals>,
) -> (Project, Vec<Finding>) {
    let layout = place(&design);
    let steps = sequence(&design, &plan);
    let made = made(&design, &layout);
    let project = Project { design, layout, made, plan, steps, others, told, made_in };
    let findings = rules::check(&project);
    (project, findings)
}

/// The design from each of the other sheets that somebody may hold.
fn others(design: &Design) -> Vec<Other> {
    let (limits, mut known) = (Limits::default(), search::Known::default());
    others_by(design, |design| search::plan_knowing(design, &limits, &mut known))
}

fn others_by(design: &Design, mut plan: impl FnMut(&Design) -> CutPlan) -> Vec<Other> {
    let mut all = Vec::new();
    for paper in design.paper_ids() {
        for (also, other) in design.paper(paper).also.iter().enumerate() {
            let design = design.with_sheets(paper, other.sheets.clone());
            let plan = plan(&design);
            all.push(Other { paper, also, design, plan });
        }
    }
    all
}

/// The findings of all editions in the order of the text: what every edition finds alike stands
/// once, the rest says which edition it is about, and which pair to state where that has it by rule.
fn merge(designs: &[Design], found: Vec<Edition>) -> Vec<Finding> {
    let several = found.len() > 1;
    let mut merged: Vec<Finding> = Vec::new();
    for (index, Edition { units, findings, restated }) in found.iter().enumerate() {
        let design = designs.iter().find(|design| design.units == *units);
        for finding in findings {
            let known = found[..index].iter().any(|earlier| earlier.findings.contains(finding));
            let shared = found.iter().all(|other| other.findings.contains(finding));
            let edition = (several && !shared).then_some(*units);
            let mut told = Finding { edition: finding.edition.or(edition), ..finding.clone() };
            if !shared {
                told = with_pair(told, design, restated);
            }
            if !known && !merged.contains(&told) {
                merged.push(told);
            }
        }
    }
    sort(&mut merged);
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
