//! Talk on the standard error stream.

use super::report;
use crate::diagnostic::{Finding, Severity};
use crate::source::Source;
use std::io::Write;

/// A line of talk. A closed stream is not an error: there is nobody left to tell.
pub(super) fn talk(line: &str) {
    let mut stream = anstream::AutoStream::auto(std::io::stderr()).lock();
    let _ = writeln!(stream, "{line}");
}

/// Findings as a report on the standard error stream.
pub(super) fn report(source: &Source, findings: &[Finding]) {
    if !findings.is_empty() {
        talk(report::text(source, findings, true).trim_end());
    }
}

/// "2 errors, 1 warning", or nothing where there is nothing to count.
pub(super) fn tally(findings: &[Finding]) -> Option<String> {
    let count = |severity| findings.iter().filter(|finding| finding.severity == severity).count();
    let parts: Vec<String> = [Severity::Error, Severity::Warning, Severity::Note]
        .into_iter()
        .filter_map(|severity| match count(severity) {
            0 => None,
            1 => Some(format!("1 {}", severity.word())),
            many => Some(format!("{many} {}s", severity.word())),
        })
        .collect();
    (!parts.is_empty()).then(|| parts.join(", "))
}
