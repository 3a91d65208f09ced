//! The nearest mends: what would put a finding right, found by running the design again.
//!
//! Takes a text and what was found in it, gives the findings with edits that were tried, and texts with the
//! certain edits made. A number is changed to the nearest that works; a misspelt word is only seen to be read
//! without its fault. Must never know a disk or a terminal. Bounded in runs and plans, so that it ends for any
//! text, and says the same on any machine.

mod certain;
mod numbers;
mod search;
mod tell;
mod trial;

pub use certain::{Change, Mended, certain};

use crate::design::nodes;
use crate::diagnostic::{Certainty, Edit, Finding, Severity};
use crate::pipeline::Outcome;
use crate::source::Source;
use numbers::Numbers;
use search::{Found, search};
use trial::{Base, Purse};

/// The most findings for which a number is looked for.
const MOST_FINDINGS: usize = 40;

/// What was found, with mends that have been tried: edits of the reading that do not hold are taken away, and
/// an error or a warning about a number gets the nearest number with which the design runs without it and
/// without any new one. A design without errors and warnings is given back as it is.
#[must_use]
pub fn suggest(source: &Source, stem: &str, outcome: Outcome) -> Outcome {
    let quiet = |finding: &Finding| finding.severity == Severity::Note || finding.allowed.is_some();
    if outcome.findings.iter().all(quiet) {
        return outcome;
    }
    let mut purse = Purse::new(source);
    let mut findings = certain::kept(source, stem, &outcome.findings, &mut purse);
    let found = numbers_that_work(source, stem, &outcome, &mut purse);
    for (finding, found) in found {
        let old = &findings[finding];
        let help = tell::help(old.help.as_deref(), &found);
        findings[finding] = Finding { help, ..old.clone() }.edits(found.edits, Certainty::Likely);
    }
    Outcome { findings, ..outcome }
}

/// For each finding about a number, the number that works, where one was found.
fn numbers_that_work(source: &Source, stem: &str, outcome: &Outcome, purse: &mut Purse) -> Vec<(usize, Found)> {
    let Ok(root) = nodes::read(source) else { return Vec::new() };
    let wanted: Vec<usize> = (0..outcome.findings.len())
        .filter(|at| is_about_a_number(&outcome.findings[*at]))
        .take(MOST_FINDINGS)
        .collect();
    if wanted.is_empty() {
        return Vec::new();
    }
    let numbers = Numbers::of(&root, source);
    let base = Base::new(source, stem, outcome);
    let mut all: Vec<(usize, Found)> = Vec::new();
    for finding in &wanted {
        if all.iter().any(|(done, _)| done == finding) {
            continue;
        }
        let Some((found, trial)) = search(&base, &numbers, *finding, purse) else { continue };
        // One number is never mended in two ways: what mends a later fault too stands for both, or for none.
        let unlike = |other: &Found| {
            let touches = |edit: &Edit| found.edits.iter().any(|own| own != edit && own.span == edit.span);
            other.edits.iter().any(touches)
        };
        let others: Vec<usize> = (0..all.len()).filter(|at| unlike(&all[*at].1)).collect();
        if !others.iter().all(|at| base.mends(all[*at].0, &found.edits, &trial)) {
            continue;
        }
        for at in others {
            all[at].1 = found.shared();
        }
        // What goes with it needs no mend of its own.
        let with_it = wanted.iter().filter(|other| *other > finding && base.mends(**other, &found.edits, &trial));
        let with_it: Vec<(usize, Found)> = with_it.map(|other| (*other, found.shared())).collect();
        all.push((*finding, found));
        for (other, shared) in with_it {
            if all.iter().all(|(done, _)| *done != other) {
                all.push((other, shared));
            }
        }
    }
    all
}

/// Whether a finding measures something that another number could mend.
fn is_about_a_number(finding: &Finding) -> bool {
    let measured = finding.primary.text.contains(|sign: char| sign.is_ascii_digit());
    let open = finding.severity != Severity::Note && finding.allowed.is_none() && finding.edits.is_empty();
    open && finding.file.is_none() && measured
}
