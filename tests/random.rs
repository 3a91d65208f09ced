//! Whole designs at random, with every kind of key: nothing panics from the text to the plan, its steps and its
//! pictures, whatever is written; what comes out sound is cut as the referee wants it.

mod writer;

use proptest::prelude::*;
use std::collections::BTreeSet;
use trimwright::diagnostic::{Finding, Severity};
use trimwright::drawing::figures::step::step as picture;
use trimwright::drawing::scale::Print;
use trimwright::pipeline::{self, Outcome};
use trimwright::source::Source;
use writer::written;

/// Every stage, and whatever is told and drawn of it.
fn all_stages(text: &str) -> Outcome {
    let source = Source::new("design.yaml", text);
    let outcome = pipeline::run(&source, "design");
    for finding in &outcome.findings {
        let spans = std::iter::once(&finding.primary).chain(&finding.others).map(|label| label.span);
        for span in spans {
            assert!(span.start <= span.end && span.end <= text.len(), "{finding:#?}\n{text}");
        }
        assert!(finding.help.is_some(), "{finding:#?}");
    }
    if !outcome.has_errors() {
        assert_eq!(pipeline::referee(&outcome.editions), Ok(()), "{text}");
    }
    for project in &outcome.editions {
        assert_eq!(project.layout.layers.len(), project.design.layers.len());
        let _ = trimwright::readback::read_back(project);
        for (index, step) in project.steps.steps.iter().enumerate() {
            let _ = trimwright::assembly::tell::step(&project.design, &project.layout, step);
            let _ = picture(project, index, Print::NORMAL);
        }
    }
    outcome
}

proptest! {
    #![proptest_config(ProptestConfig { max_shrink_iters: 400, ..crate::support::cases(64) })]

    #[test]
    fn nothing_panics_from_the_text_to_the_plan(tape in prop::collection::vec(any::<u16>(), 500)) {
        let _ = all_stages(&written(tape));
    }
}

/// Numbers that look thrown: a linear congruence, as good as any for a fixed set of designs (Knuth's MMIX
/// constants, from memory).
fn tape(seed: u64) -> Vec<u16> {
    let mut state = seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1;
    let next = || {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 48) as u16
    };
    std::iter::repeat_with(next).take(500).collect()
}

#[test]
fn the_designs_at_random_reach_every_stage_and_every_kind_of_key() {
    let (mut settled, mut texts) = (0, String::new());
    let mut codes: BTreeSet<&str> = BTreeSet::new();
    for seed in 0..60 {
        let text = written(tape(seed));
        let outcome = all_stages(&text);
        settled += usize::from(!outcome.editions.is_empty());
        codes.extend(outcome.findings.iter().map(|finding: &Finding| finding.code));
        let read = outcome.findings.iter().filter(|finding| finding.severity == Severity::Error);
        assert!(read.clone().all(|finding| finding.code != "not-yaml"), "{text}");
        texts.push_str(&text);
    }
    assert!(settled >= 20, "{settled} of 60 come to a layout and a plan; {codes:?}");
    let keys = [
        "window:",
        "from: window of",
        "by: die",
        "by: punch",
        "shape: triangle",
        "corners:",
        "rounded:",
        "and: {",
        "stamp:",
        "printed:",
        "die-cut words:",
        "cells:",
        "sides:",
        "side: back",
        "inside:",
        "back:",
        "envelope:",
        "on the flap:",
        "panel:",
        "first:",
        "mirrored:",
        "fan:",
        "pinwheel:",
        "steps:",
        "trim flush:",
        "glue: foam",
        "glue: dot",
        "place: bead",
        "place: band",
        "fold: gate",
        "accordion:",
        "keep:",
        "cut first:",
        "along the edge:",
        "edge strip:",
        "sheets are:",
        "also from:",
        "versions:",
        "ways to cut:",
        "gap: even",
        "midway",
        "centred",
    ];
    for key in keys {
        assert!(texts.contains(key), "no design says `{key}`");
    }
    // The rules that look at what is made and glued have something to say of some of them.
    for code in ["foam-too-thick-to-post", "small-die-margin", "narrow-frame", "too-few-windows", "past-the-edge"] {
        assert!(codes.contains(code), "{code}: {codes:?}");
    }
}
