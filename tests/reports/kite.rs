//! A card to lay things on, and what one rule finds in it.

use crate::support::run;
use trimwright::diagnostic::{Finding, Severity};

/// A card of 4 1/4 x 5 1/2 in or 105 x 148 mm with a mat, other pieces and lists of layers.
pub(super) fn card(units: &str, fold: &str, pieces: &str, lists: &str) -> String {
    format!(
        "title: Kite\nmonth: 2026-04\ncards: 1\nunits: {units}\n\
         card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: {fold}, from: white}}\n\
         papers:\n  white: {{sheets: 2 of 12 x 12 in}}\n  slate: {{sheets: 2 of letter}}\n\
         pieces:\n  mat: {{size: 4 x 5 1/4 in | 99 x 142 mm, from: slate}}\n{pieces}{lists}"
    )
}

pub(super) fn of(text: &str, code: &str) -> Vec<Finding> {
    let findings = run(text).findings;
    // A fault of the reading would hide what is looked for.
    let stray: Vec<&Finding> =
        findings.iter().filter(|other| other.severity == Severity::Error && other.code != code).collect();
    assert!(stray.is_empty(), "{stray:#?}\n{text}");
    findings.into_iter().filter(|finding| finding.code == code).collect()
}

/// The label and the help of every finding of one code.
pub(super) fn told(text: &str, code: &str) -> Vec<(String, String)> {
    let all = of(text, code).into_iter();
    all.map(|finding| (finding.primary.text, finding.help.unwrap_or_default())).collect()
}

pub(super) fn labels(text: &str, code: &str) -> Vec<String> {
    told(text, code).into_iter().map(|(label, _)| label).collect()
}
