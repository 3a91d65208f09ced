//! The report for other programs, version 0.
//!
//! `{version, findings: [{code, severity, message, file, line, column, end_line, end_column,
//! labels, help, edits, allowed}]}`; `allowed` is the reason that the design gives, or null. Lines and columns are 1-based, columns count characters, the end is the first
//! character after the place. `labels` holds the other places in the same form, each
//! `{message, line, column, end_line, end_column}`, the finding's own fact first. `edits` mend the finding
//! when all of them are made, each `{line, column, end_line, end_column, from, to, with, certain}`: bytes
//! `from` up to `to` of the file go out, `with` comes in. With `--mend` there is also `mended:
//! [{file, line, before, after}]`.

use super::{text_of, told};
use crate::diagnostic::{Certainty, Edit, Finding, Label};
use crate::mend::Change;
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
    let source = &*text_of(source, finding);
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
        "edits": finding.edits.iter().map(|edit| change(source, edit, finding.certainty)).collect::<Vec<_>>(),
        "allowed": finding.allowed,
    })
}

fn change(source: &Source, edit: &Edit, certainty: Certainty) -> Value {
    let (start, end) = (source.position(edit.span.start), source.position(edit.span.end));
    json!({
        "line": start.line,
        "column": start.column,
        "end_line": end.line,
        "end_column": end.column,
        "from": edit.span.start,
        "to": edit.span.end,
        "with": edit.with,
        "certain": certainty == Certainty::Certain,
    })
}

/// The lines that were mended, file by file.
#[must_use]
pub fn mended(files: &[(String, Vec<Change>)]) -> Value {
    let one = |(name, change): (&String, &Change)| json!({ "file": name, "line": change.line, "before": change.before, "after": change.after });
    files.iter().flat_map(|(name, changes)| changes.iter().map(move |change| one((name, change)))).collect()
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
