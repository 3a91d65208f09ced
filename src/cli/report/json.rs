//! The report for other programs, version 0.
//!
//! `{version, findings: [{code, severity, message, file, line, column, end_line, end_column,
//! labels, help, allowed}]}`; `allowed` is the reason that the design gives, or null. Lines and columns are 1-based, columns count characters, the end is the first
//! character after the place. `labels` holds the other places in the same form, each
//! `{message, line, column, end_line, end_column}`, the finding's own fact first.

use super::told;
use crate::diagnostic::{Finding, Label};
use crate::source::Source;
use serde_json::{Value, json};

/// The findings of several files in one value, files and findings in the order given.
#[must_use]
pub fn json(files: &[(Source, Vec<Finding>)]) -> Value {
    let findings: Vec<Value> =
        files.iter().flat_map(|(source, findings)| findings.iter().map(|finding| one(source, finding))).collect();
    json!({ "version": 0, "findings": findings })
}

fn one(source: &Source, finding: &Finding) -> Value {
    let start = source.position(finding.primary.span.start);
    let end = source.position(finding.primary.span.end);
    let labels: Vec<Value> =
        std::iter::once(&finding.primary).chain(&finding.others).map(|label| place(source, label)).collect();
    json!({
        "code": finding.code,
        "severity": finding.severity.word(),
        "message": told(finding),
        "file": source.name(),
        "line": start.line,
        "column": start.column,
        "end_line": end.line,
        "end_column": end.column,
        "labels": labels,
        "help": finding.help,
        "allowed": finding.allowed,
    })
}

fn place(source: &Source, label: &Label) -> Value {
    let start = source.position(label.span.start);
    let end = source.position(label.span.end);
    json!({
        "message": label.text,
        "line": start.line,
        "column": start.column,
        "end_line": end.line,
        "end_column": end.column,
    })
}
