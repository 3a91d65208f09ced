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
    let (shown, more) = report::worst(findings, false);
    if !shown.is_empty() {
        let text = report::text(source, &shown, true);
        talk(format!("{text}{}", report::not_shown(more, source.name())).trim_end());
    }
}

/// "2 errors, 1 warning, 3 allowed", or nothing where there is nothing to count.
pub(super) fn tally(findings: &[Finding]) -> Option<String> {
    let count =
        |severity| findings.iter().filter(|finding| finding.allowed.is_none() && finding.severity == severity).count();
    let allowed = findings.iter().filter(|finding| finding.allowed.is_some()).count();
    let mut parts: Vec<String> = [Severity::Error, Severity::Warning, Severity::Note]
        .into_iter()
        .filter_map(|severity| match count(severity) {
            0 => None,
            1 => Some(format!("1 {}", severity.word())),
            many => Some(format!("{many} {}s", severity.word())),
        })
        .collect();
    if allowed > 0 {
        parts.push(format!("{allowed} allowed"));
    }
    (!parts.is_empty()).then(|| parts.join(", "))
}
