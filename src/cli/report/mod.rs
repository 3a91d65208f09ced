//! How findings are shown: as a picture of the file, in plain sentences, as JSON.
//!
//! Takes findings and the source they stand in, gives text or JSON. Must never know a rule: what a
//! finding says was decided where it was raised.

mod changes;
mod json;
mod lines;
mod plain;
mod text;

pub use changes::changes;
pub use json::{json, mended};
pub use plain::plain;
pub use text::text;

use crate::diagnostic::Finding;
use crate::length::Units;
use crate::source::Source;
use std::borrow::Cow;

/// How many findings a terminal shows unless all are asked for: nobody mends more at once.
pub const SHOWN: usize = 3;

/// What is shown of the findings, and how many more there are: the worst ones first, in the order of the text
/// among equals, without those that the design allows. With `all` every one, allowed or not, in the order of the
/// text.
#[must_use]
pub fn worst(findings: &[Finding], all: bool) -> (Vec<Finding>, usize) {
    if all {
        return (findings.to_vec(), 0);
    }
    let mut open: Vec<Finding> = findings.iter().filter(|finding| finding.allowed.is_none()).cloned().collect();
    open.sort_by_key(|finding| finding.severity);
    let more = open.len().saturating_sub(SHOWN);
    open.truncate(SHOWN);
    (open, more)
}

/// The line under a report that does not show everything; nothing where it does.
#[must_use]
pub fn not_shown(more: usize, file: &str) -> String {
    match more {
        0 => String::new(),
        1 => format!("and 1 more: `trimwright check --all {}`\n", tame(file)),
        more => format!("and {more} more: `trimwright check --all {}`\n", tame(file)),
    }
}

/// The text that the places of a finding stand in.
fn text_of<'s>(source: &'s Source, finding: &Finding) -> Cow<'s, Source> {
    finding.file.as_ref().map_or(Cow::Borrowed(source), |file| Cow::Owned(source.file(file)))
}

/// A message with the edition it is about, where only one of two is concerned.
fn told(finding: &Finding) -> String {
    match finding.edition {
        Some(Units::Inch) => format!("in the inch edition {}", finding.message),
        Some(Units::Metric) => format!("in the metric edition {}", finding.message),
        None => finding.message.clone(),
    }
}

/// One line, without characters that could steer a terminal: findings quote what was typed.
fn tame(text: &str) -> String {
    let text: String = text.chars().map(|c| if matches!(c, '\n' | '\r' | '\t') { ' ' } else { c }).collect();
    annotate_snippets::normalize_untrusted_str(&text)
}

/// Sentences start with a capital and end with a full stop, whatever they were put together from.
fn sentence(text: &str) -> String {
    let text = text.trim();
    let mut chars = text.chars();
    let Some(first) = chars.next() else { return String::new() };
    // A word in backticks was typed by somebody and keeps its letters.
    let mut out: String = first.to_uppercase().chain(chars).collect();
    if !out.ends_with(['.', '!', '?']) {
        out.push('.');
    }
    out
}
