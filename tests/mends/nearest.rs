//! One number of a demo is broken: the mend that is told leads back to a design without a fault.

use super::{broken, checked, loud};
use crate::support::{demo, source_at};
use trimwright::diagnostic::{Certainty, Finding, applied};
use trimwright::mend::suggest;
use trimwright::pipeline;
use trimwright::source::Source;

/// A demo, a stretch that stands there once, what was typed in its place, and the code that is found.
const BREAKS: &[(&str, &str, &str, &str)] = &[
    ("lantern-row", "size: card less 1/8 in", "size: card less 5/32 in", "border-unlike-claim"),
    ("lantern-row", "gap: 1/4 in | 6 mm", "gap: 1 in | 6 mm", "past-the-edge"),
    ("lantern-row", "size: 4 1/2 x 1/4 in", "size: 3 x 1/4 in", "short-of-its-edge"),
    ("lantern-row", "| 115 x 6 mm", "| 101 x 6 mm", "little-to-trim"),
    ("lantern-row", "| 25 x 44 mm", "| 25 x 130 mm", "past-the-edge"),
    ("lantern-row", "2 of letter | 2 of A4", "1 of letter | 2 of A4", "too-few-sheets"),
    ("lantern-row", "count: 3", "count: 5", "past-the-edge"),
    ("kitchen-garden", "size: 81 x 30 mm", "size: 100 x 30 mm", "past-the-edge"),
    ("kitchen-garden", "bottom: 4 mm", "bottom: 119 mm", "past-the-edge"),
    ("garden-trellis", "left: 1/4 in\n    bottom: 3/8 in", "left: 3 in\n    bottom: 3/8 in", "past-the-edge"),
    ("garden-trellis", "size: 3/8 x 5 1/2 in", "size: 3/8 x 4 in", "short-of-its-edge"),
    ("lantern-row", "gap: 1/4 in | 6 mm", "gap: 1/4 in | 25 mm", "past-the-edge"),
];

/// Makes what is told for the first fault, and again until none is left or none has a mend.
fn followed(mut source: Source, stem: &str) -> (Source, Vec<Finding>) {
    for _ in 0..4 {
        let found = suggest(&source, stem, pipeline::run(&source, stem)).findings;
        let Some(first) = loud(&found).into_iter().find(|finding| !finding.edits.is_empty()).cloned() else {
            return (source, found);
        };
        source = source.with_text(applied(source.text(), &first.edits).0);
    }
    let found = pipeline::run(&source, stem).findings;
    (source, found)
}

#[test]
fn a_broken_number_is_led_back() {
    let mut wrong = Vec::new();
    for (name, from, to, code) in BREAKS {
        let sound = source_at(&demo(name), name);
        assert_eq!(sound.text().matches(from).count(), 1, "`{from}` stands once in {name}");
        let source = sound.with_text(sound.text().replace(from, to));
        let outcome = suggest(&source, name, pipeline::run(&source, name));
        let first = outcome.findings.iter().find(|finding| finding.code == *code);
        let Some(first) = first else {
            wrong.push(format!("{name}: `{to}` gives no {code}: {:#?}", loud(&outcome.findings)));
            continue;
        };
        if first.edits.is_empty() || first.certainty != Certainty::Likely {
            wrong.push(format!("{name}: `{to}` has no mend: {first:#?}"));
            continue;
        }
        // Nothing is left but what the demo has of its own.
        let own = pipeline::run(&sound, name).findings;
        let (_, mut left) = followed(source, name);
        left.retain(|finding| own.iter().all(|own| own.code != finding.code));
        if !loud(&left).is_empty() {
            wrong.push(format!("{name}: `{to}` is left with {:#?}", loud(&left)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

/// The help of the one finding of a code, and the text with its edits.
fn told(source: &Source, code: &str) -> (String, String) {
    let findings = checked(source).findings;
    let of: Vec<&Finding> = findings.iter().filter(|finding| finding.code == code).collect();
    assert_eq!(of.len(), 1, "{findings:#?}");
    (of[0].help.clone().unwrap_or_default(), applied(source.text(), &of[0].edits).0)
}

#[test]
fn what_the_rule_advises_is_kept_where_it_works() {
    // Three feathers of 1 in on a panel of 3 3/4 in leave 3/4 in for two gaps of 3/8 in.
    let source = broken("count: 2, gap: 1/2 in", "count: 3, gap: 1/2 in");
    let (help, text) = told(&source, "past-the-edge");
    assert!(help.starts_with("make the gap 3/8 in or less"), "{help}");
    assert!(text.contains("count: 3, gap: 3/8 in"), "{text}");
}

#[test]
fn the_nearest_that_works_says_what_else_changes() {
    // 4 1/4 in less twice 5/64 in is no whole 1/16 in: less 1/16 in it is, and the panel leans on the mat.
    let source = broken("card less 1/8 in all round", "card less 5/64 in all round");
    let (help, text) = told(&source, "size-off-the-ruler");
    assert!(text.contains("card less 1/16 in all round"), "{text}");
    // 4 1/4 x 5 1/2 in less twice 1/16 in and twice 1/8 in.
    assert!(help.ends_with("; the panel becomes 3 7/8 x 5 1/8 in"), "{help}");
}

#[test]
fn one_number_is_never_mended_in_two_ways() {
    let source = broken("size: 1 x 2 in", "size: 5 x 7 in");
    let mut given: Vec<(usize, String)> = Vec::new();
    for edit in checked(&source).findings.iter().flat_map(|finding| &finding.edits) {
        for (start, with) in &given {
            assert!(*start != edit.span.start || *with == edit.with, "{edit:?} and {with}");
        }
        given.push((edit.span.start, edit.with.clone()));
    }
}

#[test]
fn only_the_edition_concerned_is_edited() {
    let sound = source_at(&demo("lantern-row"), "lantern-row");
    let source = sound.with_text(sound.text().replace("gap: 1/4 in | 6 mm", "gap: 1/4 in | 25 mm"));
    let outcome = suggest(&source, "lantern-row", pipeline::run(&source, "lantern-row"));
    let past = outcome.findings.iter().filter(|finding| finding.code == "past-the-edge");
    let edits: Vec<_> = past.flat_map(|finding| &finding.edits).collect();
    assert!(!edits.is_empty());
    for edit in edits {
        // 93 mm less three lanterns of 25 mm leaves 18 mm for two gaps.
        assert_eq!((source.slice(edit.span), edit.with.as_str()), ("25", "9"));
    }
}

#[test]
fn nothing_is_told_where_nothing_works() {
    // No number makes one-way paper look right on its side.
    let source = broken("        glue: foam", "        turned: quarter left\n        glue: foam");
    let found = checked(&source).findings;
    let sideways = found.iter().find(|finding| finding.code == "laid-sideways").expect("it lies sideways");
    assert_eq!(sideways.edits, []);
    let plain = pipeline::run(&source, "wren").findings;
    assert_eq!(plain.iter().find(|finding| finding.code == "laid-sideways").map(|f| &f.help), Some(&sideways.help));
}
