//! Designs that are sound by construction go through every stage without an error or a warning.

use crate::sound::design;
use crate::support::{demo, demos, source_at};
use std::collections::BTreeSet;
use trimwright::diagnostic::Severity;
use trimwright::pipeline::{self, Outcome};
use trimwright::rules::OF_THE_BEST_PLAN;
use trimwright::source::Source;

/// How many there are.
const ALL: u64 = 500;

/// What the whole program comes to.
fn whole(source: &Source) -> Outcome {
    pipeline::run(source, "design")
}

/// The same by the first plan within the sheets: searching is most of the time.
fn quickly(source: &Source) -> Outcome {
    pipeline::run_quickly(source, "design", None)
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

/// One of them to look at: `SEED=7 cargo test a_sound_design -- --ignored --nocapture`.
#[test]
#[ignore = "prints a design, to look at"]
#[expect(clippy::print_stdout, reason = "the design is for people")]
fn a_sound_design() {
    let seed = std::env::var("SEED").ok().and_then(|seed| seed.parse().ok()).unwrap_or(0);
    println!("{}", design(seed));
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

/// Of a demo the quick check says what the whole one says, but for what the printed cuts alone decide, and its
/// plans are whole.
#[test]
fn a_quick_check_says_the_same() {
    for path in demos() {
        let source = source_at(&path, "demo");
        let (whole, quick) = (pipeline::run(&source, "demo"), pipeline::run_quickly(&source, "demo", None));
        let stays = |outcome: &Outcome| -> Vec<_> {
            let findings = outcome.findings.iter().filter(|finding| !OF_THE_BEST_PLAN.contains(&finding.code));
            findings.cloned().collect()
        };
        assert_eq!(stays(&whole), quick.findings, "{}", path.display());
        pipeline::referee(&quick.editions).expect("whole plans");
        for (whole, quick) in whole.editions.iter().zip(&quick.editions) {
            assert!(quick.plan.missing.is_empty() && quick.plan.sheets_used() >= whole.plan.sheets_used());
        }
    }
}

#[test]
fn a_quick_check_finds_too_few_sheets() {
    let sound = source_at(&demo("lantern-row"), "lantern-row");
    let source = sound.with_text(sound.text().replace("2 of letter | 2 of A4", "1 of letter | 1 of A4"));
    let short = |outcome: Outcome| -> Vec<_> {
        outcome.findings.into_iter().filter(|finding| finding.code == "too-few-sheets").collect()
    };
    let quick = short(quickly(&source));
    assert_eq!(quick.len(), 2, "one an edition");
    assert_eq!(quick, short(whole(&source)));
}
