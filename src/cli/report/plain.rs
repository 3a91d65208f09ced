//! The report for people who are new to it: where, what, what to do, in two sentences.

use super::{sentence, tame, told};
use crate::diagnostic::{Finding, Severity};
use crate::length::Units;
use crate::source::Source;

/// A line a finding: `Line 14: The mat is 1/4 in wider than the card. Make it 4 1/8 in or less.`
/// Warnings and notes say so, since nothing needs to be done about them.
#[must_use]
pub fn plain(source: &Source, findings: &[Finding]) -> String {
    findings.iter().map(|finding| one(source, finding) + "\n").collect()
}

fn one(source: &Source, finding: &Finding) -> String {
    let line = source.position(finding.primary.span.start).line;
    let fault = match (&finding.plain, finding.edition) {
        (Some(plain), None) => plain.clone(),
        (Some(plain), Some(Units::Inch)) => format!("in the inch edition {plain}"),
        (Some(plain), Some(Units::Metric)) => format!("in the metric edition {plain}"),
        (None, _) if finding.primary.text.is_empty() => told(finding),
        (None, _) => format!("{} ({})", told(finding), finding.primary.text),
    };
    let weight = match (&finding.allowed, finding.severity) {
        (Some(_), _) => " (allowed)",
        (None, Severity::Error) => "",
        (None, Severity::Warning) => " (a warning)",
        (None, Severity::Note) => " (a note)",
    };
    let mut said = format!("Line {line}{weight}: {}", sentence(&tame(&fault)));
    if let Some(reason) = &finding.allowed {
        said.push_str(&format!(" The design says why: {}", sentence(&tame(reason))));
    } else if let Some(help) = &finding.help {
        said.push(' ');
        said.push_str(&sentence(&tame(help)));
    }
    said
}
