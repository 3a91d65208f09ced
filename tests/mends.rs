//! Mends: edits that are certain, numbers that work, and how `check --mend` writes them.

mod applied;
mod certain;
mod nearest;
mod shown;
mod written;

use trimwright::diagnostic::{Finding, Severity};
use trimwright::mend::suggest;
use trimwright::pipeline::{self, Outcome};
use trimwright::source::Source;

/// A sound design in which every line can be broken.
const SOUND: &str = "\
# A wren on a branch.
title: Wren
month: 2026-05
cards: 4
units: inch
card:
  size: 4 1/4 x 5 1/2 in        # folded
  fold: side
  from: white
papers:
  white: {sheets: 2 of letter}
  slate: {sheets: 1 of letter}
  thistle: {sheets: 1 of 12 x 12 in, pattern: one-way}
pieces:
  mat: {size: card less 1/8 in all round, from: slate}
  panel: {size: mat less 1/8 in all round, from: thistle}
  feather: {size: 1 x 2 in, from: thistle}
front:
  - place: mat
    centre: both ways
    glue: tape
    first:
      - place: panel
        centre: both ways
        glue: tape
      - place: feather
        onto: panel
        centre: across
        top: 1/2 in
        row: {count: 2, gap: 1/2 in}
        glue: foam
";

/// The sound design with one stretch exchanged, which stands there once.
fn broken(from: &str, to: &str) -> Source {
    assert_eq!(SOUND.matches(from).count(), 1, "`{from}` stands there once");
    Source::new("wren.yaml", SOUND.replace(from, to))
}

/// What `check` finds in a text.
fn checked(source: &Source) -> Outcome {
    suggest(source, "wren", pipeline::run(source, "wren"))
}

/// Errors and warnings.
fn loud(findings: &[Finding]) -> Vec<&Finding> {
    findings.iter().filter(|finding| finding.severity != Severity::Note).collect()
}

#[test]
fn the_sound_design_is_left_alone() {
    let source = Source::new("wren.yaml", SOUND);
    let plain = pipeline::run(&source, "wren");
    assert_eq!(loud(&plain.findings), Vec::<&Finding>::new());
    assert_eq!(checked(&source).findings, plain.findings);
    assert!(trimwright::mend::certain(&source, "wren").changes.is_empty());
}
