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
