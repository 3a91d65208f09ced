//! The report for people who are new to it: where, what, what to do, in two sentences.

use super::{sentence, tame, text_of, told};
use crate::diagnostic::{Edit, Finding, Severity, applied};
use crate::length::Units;
use crate::source::{Source, Span};

/// A line a finding: `Line 14: The mat is 1/4 in wider than the card. Make it 4 1/8 in or less.`
/// Warnings and notes say so, since nothing needs to be done about them.
#[must_use]
pub fn plain(source: &Source, findings: &[Finding]) -> String {
    findings.iter().map(|finding| one(source, finding) + "\n").collect()
}

fn one(source: &Source, finding: &Finding) -> String {
    let source = &*text_of(source, finding);
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
    let file = finding.file.as_ref().map_or_else(String::new, |file| format!(" of {}", tame(file)));
    let mut said = format!("Line {line}{file}{weight}: {}", sentence(&tame(&fault)));
    if let Some(reason) = &finding.allowed {
        said.push_str(&format!(" The design says why: {}", sentence(&tame(reason))));
    } else if let Some(help) = &finding.help {
        said.push(' ');
        said.push_str(&sentence(&tame(help)));
    }
    if let Some(instead) = instead(source, finding) {
        said.push(' ');
        said.push_str(&tame(&instead));
    }
    said
}

/// The edit in words, where the help does not name it already.
fn instead(source: &Source, finding: &Finding) -> Option<String> {
    let [first, ..] = finding.edits.as_slice() else { return None };
    let last = finding.edits.iter().map(|edit| edit.span.end).max()?;
    let start = finding.edits.iter().map(|edit| edit.span.start).min()?;
    let line = source.position(start).line;
    if source.position(last).line != line {
        return None;
    }
    // The value or the key that the edit stands in, as far as the next blank on both sides.
    let text = source.text();
    let from = text[..start].rfind(['\n', ' ', '{', '[']).map_or(0, |at| at + 1);
    let to = text[last..].find(['\n', '\r', ' ', ',', '}', ']']).map_or(text.len(), |at| last + at);
    let (from, to) =
        if first.span.is_empty() || finding.edits.len() > 1 { (start.min(from), to.max(last)) } else { (start, last) };
    let shift = |span: Span| Span::new(span.start - from, span.end - from);
    let edits: Vec<Edit> = finding.edits.iter().map(|edit| Edit::new(shift(edit.span), edit.with.clone())).collect();
    let with = applied(&text[from..to], &edits).0;
    let said = finding.help.as_deref().is_some_and(|help| help.contains(with.trim_end_matches(':')));
    let place = if line == source.position(finding.primary.span.start).line {
        String::new()
    } else {
        format!(" in line {line}")
    };
    (!said && with.chars().count() <= 80).then(|| format!("Write `{with}` instead{place}."))
}
