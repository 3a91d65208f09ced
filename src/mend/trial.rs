//! A design run again with some numbers changed.
//!
//! Reading, placing and the rules are run for every trial, with the plans that are at hand already; a plan is
//! made anew only where that is asked for. What is spent is counted, never timed.

use crate::cutting::demand::demand;
use crate::cutting::plan::{Aim, Aims, CutPlan};
use crate::design::model::Design;
use crate::diagnostic::{Edit, Finding, Severity, applied, moved};
use crate::length::Units;
use crate::pipeline::{self, Outcome};
use crate::project::Project;
use crate::rules;
use crate::source::Source;

/// The most runs of a file of usual length, and the most bytes that all runs together read.
const MOST_RUNS: usize = 400;
const MOST_BYTES: usize = 4 << 20;
/// The most plans that are made anew.
const MOST_PLANS: usize = 40;

/// What may still be spent.
pub(super) struct Purse {
    runs: usize,
    plans: usize,
}

impl Purse {
    pub(super) fn new(source: &Source) -> Self {
        Self { runs: MOST_RUNS.min(MOST_BYTES / source.text().len().max(1)), plans: MOST_PLANS }
    }

    /// One run less; none where all are spent.
    pub(super) fn run(&mut self) -> Option<()> {
        self.runs = self.runs.checked_sub(1)?;
        Some(())
    }

    fn plan(&mut self, plans: usize) -> Option<()> {
        self.plans = self.plans.checked_sub(plans)?;
        Some(())
    }
}

/// The design as it stands, and what is found in it.
pub(super) struct Base<'a> {
    pub(super) source: &'a Source,
    pub(super) stem: &'a str,
    pub(super) outcome: &'a Outcome,
    /// The edition that is wanted beside those that the design asks for.
    also: Option<Units>,
    /// For each finding, whether it comes from the plan.
    from_plan: Vec<bool>,
}

/// A design as it would be.
pub(super) struct Trial {
    pub(super) outcome: Outcome,
    /// The editions whose plan is that of the design as it stands, though other pieces or sheets are wanted.
    stale: Vec<Units>,
}

impl Trial {
    /// Whether a plan would have to be made anew.
    pub(super) const fn is_stale(&self) -> bool {
        !self.stale.is_empty()
    }
}

impl<'a> Base<'a> {
    pub(super) fn new(source: &'a Source, stem: &'a str, outcome: &'a Outcome) -> Self {
        let whole = |project: &Project| {
            let plan = CutPlan { sheets: Vec::new(), missing: Vec::new(), most: None, ..project.plan.clone() };
            let project = Project { plan, others: Vec::new(), ..project.clone() };
            rules::check(&project)
        };
        let without: Vec<Finding> = outcome.editions.iter().flat_map(whole).collect();
        let with: Vec<Finding> = outcome.editions.iter().flat_map(rules::check).collect();
        let same = |a: &Finding, b: &Finding| a.code == b.code && a.message == b.message && a.primary == b.primary;
        let from_plan = |finding: &Finding| {
            with.iter().any(|other| same(other, finding)) && !without.iter().any(|other| same(other, finding))
        };
        let from_plan = outcome.findings.iter().map(from_plan).collect();
        let also = outcome.editions.last().map(Project::units);
        Self { source, stem, outcome, also, from_plan }
    }

    pub(super) fn is_from_plan(&self, finding: usize) -> bool {
        self.from_plan[finding]
    }

    /// The design with edits, up to the rules; none where nothing is left to spend, or where it cannot be
    /// settled in every edition.
    pub(super) fn run(&self, edits: &[Edit], purse: &mut Purse) -> Option<Trial> {
        purse.run()?;
        let source = self.source.with_text(applied(self.source.text(), edits).0);
        let settled = pipeline::settle(&source, self.stem, self.also);
        if settled.designs.len() != settled.found.len() {
            return None;
        }
        let mut stale = Vec::new();
        let outcome = pipeline::run_settled(settled, |design| {
            let at_hand = self.outcome.editions.iter().find(|project| project.units() == design.units);
            if at_hand.is_none_or(|at_hand| demand(&at_hand.design) != demand(design)) {
                stale.push(design.units);
            }
            at_hand
                .map_or_else(|| (empty(design), Vec::new()), |at_hand| (at_hand.plan.clone(), at_hand.others.clone()))
        });
        Some(Trial { outcome, stale })
    }

    /// A trial with every plan made anew that is not the one at hand; none where too many have been made.
    pub(super) fn planned(&self, trial: Trial, edits: &[Edit], purse: &mut Purse) -> Option<Trial> {
        if trial.stale.is_empty() {
            return Some(trial);
        }
        let others: usize = trial.outcome.editions.iter().flat_map(|e| &e.design.papers).map(|p| p.also.len()).sum();
        purse.plan(trial.stale.len() + others)?;
        let source = self.source.with_text(applied(self.source.text(), edits).0);
        let outcome = pipeline::run_also(&source, self.stem, self.also);
        Some(Trial { outcome, stale: Vec::new() })
    }

    /// Whether a finding is gone in a trial, and no error or warning has come.
    pub(super) fn mends(&self, finding: usize, edits: &[Edit], trial: &Trial) -> bool {
        let finding = &self.outcome.findings[finding];
        let loud = |finding: &&Finding| finding.severity != Severity::Note;
        let stood: Vec<Key<'_>> = self.outcome.findings.iter().filter(loud).map(|f| Key::moved(f, edits)).collect();
        let gone = Key::moved(finding, edits);
        let mut now = trial.outcome.findings.iter().filter(loud).map(Key::of);
        // One edition is mended at a time, and the half of a pair that stays behind is told then.
        let behind = |key: &Key<'_>| key.code == "twins-far-apart";
        let came = |key: &Key<'_>| !behind(key) && !stood.iter().any(|stood| stood.is_same(key));
        now.all(|key| !key.is_same(&gone) && !came(&key))
    }
}

/// What makes a finding the same one in a text that has moved.
pub(super) struct Key<'a> {
    code: &'a str,
    message: &'a str,
    edition: Option<Units>,
    start: usize,
}

impl<'a> Key<'a> {
    pub(super) fn of(finding: &'a Finding) -> Self {
        Self::moved(finding, &[])
    }

    pub(super) fn moved(finding: &'a Finding, edits: &[Edit]) -> Self {
        let start = finding.primary.span.start;
        // What stands in another file does not move.
        let start = if finding.file.is_some() { start } else { moved(start, edits) };
        Self { code: finding.code, message: &finding.message, edition: finding.edition, start }
    }

    /// An edition counts only where both are about one.
    pub(super) fn is_same(&self, other: &Self) -> bool {
        let edition = self.edition.is_none() || other.edition.is_none() || self.edition == other.edition;
        self.code == other.code && self.message == other.message && self.start == other.start && edition
    }
}

/// No sheet and no cut, for an edition that could not be settled before: its plan is made in the end.
fn empty(design: &Design) -> CutPlan {
    let none = Aim { found: 0, bound: 0, proven: false };
    let aims = Aims { cards: none, sheets: none, diagrams: none, cuts: none, changes: none, leftover: none };
    CutPlan { units: design.units, cards: 0, most: None, aims, sheets: Vec::new(), missing: Vec::new() }
}
