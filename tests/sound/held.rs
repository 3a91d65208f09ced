//! Designs that are sound by construction go through every stage without an error or a warning.

use crate::sound::design;
use crate::support::quick;
use std::collections::BTreeSet;
use trimwright::diagnostic::Severity;
use trimwright::pipeline::{self, Outcome};
use trimwright::source::Source;

/// How many there are.
const ALL: u64 = 500;

/// What the whole program comes to.
fn whole(source: &Source) -> Outcome {
    pipeline::run(source, "design")
}

/// The same with plans that are quickly found: searching is most of the time.
fn quickly(source: &Source) -> Outcome {
    let settled = pipeline::settle(source, "design", None);
    let (mut editions, mut findings) = (Vec::new(), settled.findings());
    for design in &settled.designs {
        let (project, found) = pipeline::finish(design.clone(), quick(design));
        editions.push(project);
        findings.extend(found);
    }
    Outcome { editions, findings }
}

/// What is wrongly said of the designs of these seeds, each with its seed and text.
fn said(seeds: impl Iterator<Item = u64>, check: fn(&Source) -> Outcome) -> Vec<String> {
    let mut all = Vec::new();
    for seed in seeds {
        let text = design(seed);
        let source = Source::new("design.yaml", text.as_str());
        let outcome = check(&source);
        assert!(!outcome.editions.is_empty(), "seed {seed}\n{text}");
        let loud = outcome.findings.iter().filter(|finding| finding.severity != Severity::Note);
        let loud: Vec<String> = loud
            .map(|finding| {
                let line = source.position(finding.primary.span.start).line;
                format!("{}@{line}: {} ({})", finding.code, finding.message, finding.primary.text)
            })
            .collect();
        if !loud.is_empty() {
            all.push(format!("seed {seed}: {loud:#?}\n{text}"));
        }
        if let Err(faults) = pipeline::referee(&outcome.editions) {
            all.push(format!("seed {seed}: {faults:?}\n{text}"));
        }
    }
    all
}

/// A tenth of them in every run.
#[test]
fn sound_designs_have_no_error_and_no_warning() {
    let said = said((0..ALL).filter(|seed| seed % 10 == 0), quickly);
    assert!(said.is_empty(), "{} of {}:\n{}", said.len(), ALL / 10, said.join("\n"));
}

/// All of them, by the whole program.
#[test]
#[ignore = "minutes: run by name"]
fn sound_designs_all() {
    let said = said(0..ALL, whole);
    assert!(said.is_empty(), "{} of {ALL}:\n{}", said.len(), said.join("\n"));
}

/// They hold what a designer of such cards uses.
#[test]
fn sound_designs_hold_every_usual_thing() {
    let texts: Vec<String> = (0..ALL).map(design).collect();
    let different: BTreeSet<&String> = texts.iter().collect();
    assert!(different.len() > 480, "{} different designs", different.len());
    for word in [
        "units: inch\n",
        "units: metric\n",
        "units: inch and metric\n",
        "fold: side",
        "fold: top",
        "fold: none",
        "fold: gate",
        "fold: {accordion: 3}",
        "versions:",
        "from: varies",
        "trim flush:",
        "row:",
        "grid:",
        "steps:",
        "ring round:",
        "window:",
        "from: window of",
        "shape: triangle",
        "shape: diamond",
        "shape: circle",
        "glue: foam",
        "stamp:",
        "printed:",
        "inside:",
        "back:",
        "envelope:",
        "pattern: one-way",
        "pattern: two-way",
        "edge strip:",
        "shows:",
        "below:",
        "all round",
        "as wide as",
        "decorations:",
    ] {
        let holding = texts.iter().filter(|text| text.contains(word)).count();
        assert!(holding >= 10, "{holding} of {ALL} say `{word}`");
    }
}
