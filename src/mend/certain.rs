//! Edits of the reading: which of them hold, and the text with the certain ones made.

use super::trial::{Key, Purse};
use crate::design::nodes;
use crate::diagnostic::{Certainty, Edit, Finding, Severity, applied};
use crate::pipeline;
use crate::source::{Source, Span};

/// The most rounds of mending: each one may uncover more.
const MOST_ROUNDS: usize = 20;

/// A line that was changed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// Its 1-based number.
    pub line: usize,
    /// As it stood.
    pub before: String,
    /// As it stands.
    pub after: String,
}

/// A design's text with every certain edit made.
#[derive(Debug, Clone)]
pub struct Mended {
    /// The text; the one given where nothing was certain.
    pub source: Source,
    /// The lines that were changed, in order.
    pub changes: Vec<Change>,
}

/// The findings, those edits taken away that do not do what they promise.
pub(super) fn kept(source: &Source, stem: &str, findings: &[Finding], purse: &mut Purse) -> Vec<Finding> {
    let reading = findings.iter().any(|finding| !finding.edits.is_empty());
    let before = if reading { read(source, stem).findings } else { Vec::new() };
    findings
        .iter()
        .map(|finding| {
            let holds = finding.edits.is_empty() || holds(source, stem, &before, finding, purse);
            if holds { finding.clone() } else { finding.clone().edits([], Certainty::Likely) }
        })
        .collect()
}

/// Makes every certain edit, again and again until none is left. What stands elsewhere keeps its bytes. An
/// edit is made only where the text is read without the fault then and with no other one in its place, and
/// only while the reading finds no more errors than before; a file that cannot be read at all counts as worse
/// than any other, since its errors are hidden.
#[must_use]
pub fn certain(source: &Source, stem: &str) -> Mended {
    let mut now = source.clone();
    let mut purse = Purse::new(source);
    for _ in 0..MOST_ROUNDS {
        let before = read(&now, stem);
        let sure: Vec<&Finding> = before
            .findings
            .iter()
            .filter(|finding| finding.certainty == Certainty::Certain && !finding.edits.is_empty())
            .filter(|finding| holds(&now, stem, &before.findings, finding, &mut purse))
            .collect();
        let together: Vec<Edit> = each_once(sure.iter().flat_map(|finding| finding.edits.iter().cloned()));
        let alone = sure.iter().map(|finding| finding.edits.clone());
        let better = std::iter::once(together).chain(alone).filter(|edits| !edits.is_empty()).find_map(|edits| {
            let next = now.with_text(applied(now.text(), &edits).0);
            let after = read(&next, stem);
            let better = next.text() != now.text() && after.worth() <= before.worth();
            (better && is_clean(&now, &before.findings, &after.findings, &edits)).then_some(next)
        });
        match better {
            Some(next) => now = next,
            None => break,
        }
    }
    let changes = changes(source.text(), now.text());
    Mended { source: now, changes }
}

/// What the reading says of a text.
struct Read {
    findings: Vec<Finding>,
    unreadable: bool,
}

impl Read {
    /// How bad it is: not readable, then the number of errors.
    fn worth(&self) -> (bool, usize) {
        let errors = self.findings.iter().filter(|finding| finding.severity == Severity::Error).count();
        (self.unreadable, errors)
    }
}

fn read(source: &Source, stem: &str) -> Read {
    let findings = pipeline::settle(source, stem, None).findings();
    Read { findings, unreadable: nodes::read(source).is_err() }
}

/// Whether the text is read without the fault once its edits are made, and without a new one where they are.
fn holds(source: &Source, stem: &str, before: &[Finding], finding: &Finding, purse: &mut Purse) -> bool {
    if purse.run().is_none() {
        return false;
    }
    let (text, places) = applied(source.text(), &finding.edits);
    if places.len() != finding.edits.len() {
        return false;
    }
    let after = read(&source.with_text(text), stem).findings;
    let gone = Key::moved(finding, &finding.edits);
    if after.iter().any(|other| Key::of(other).is_same(&gone)) {
        return false;
    }
    is_clean(source, before, &after, &finding.edits)
}

/// Whether no new error stands where edits were made.
fn is_clean(source: &Source, before: &[Finding], after: &[Finding], edits: &[Edit]) -> bool {
    let places = applied(source.text(), edits).1;
    let places: Vec<Span> = places.iter().map(|place| Span::new(place.start, place.end)).collect();
    // Quotes stand at both ends of what they are put round.
    let places = match places.as_slice() {
        [first, second] => vec![first.to(*second)],
        _ => places,
    };
    let touched = |at: Span| places.iter().any(|place| at.start < place.end && place.start < at.end);
    let stood = |other: &Finding| before.iter().any(|old| Key::moved(old, edits).is_same(&Key::of(other)));
    let here = |other: &&Finding| other.severity == Severity::Error && other.file.is_none();
    !after.iter().filter(here).any(|other| touched(other.primary.span) && !stood(other))
}

/// Edits in order, one that touches another left out.
fn each_once(edits: impl Iterator<Item = Edit>) -> Vec<Edit> {
    let mut edits: Vec<Edit> = edits.collect();
    edits.sort_by_key(|edit| edit.span);
    edits.dedup();
    edits
}

/// The lines that differ. No edit holds a line break, so that lines keep their numbers.
fn changes(before: &str, after: &str) -> Vec<Change> {
    let pairs = before.lines().zip(after.lines()).enumerate();
    let changed = pairs.filter(|(_, (before, after))| before != after);
    changed
        .map(|(n, (before, after))| Change { line: n + 1, before: before.to_owned(), after: after.to_owned() })
        .collect()
}
