//! The report for a terminal: each finding with its lines of the file.

use super::lines::{Mark, lines, lines_of};
use super::{tame, text_of, told};
use crate::diagnostic::{Edit, Finding, Severity};
use crate::source::Source;
use annotate_snippets::{Annotation, AnnotationKind, Level, Origin, Patch, Renderer, Snippet};

/// The most findings that are shown: nobody mends more at once, and a hostile file has thousands.
const MOST: usize = 500;
/// The most edits of a finding that are shown.
const MOST_EDITS: usize = 4;

/// Every finding in the order given, an empty line between two, ending with a line break.
/// Nothing at all where there are none. Past 500 only their number is said.
#[must_use]
pub fn text(source: &Source, findings: &[Finding], colour: bool) -> String {
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    let mut shown: Vec<String> = findings.iter().take(MOST).map(|finding| one(source, finding, &renderer)).collect();
    if findings.len() > MOST {
        shown.push(format!("and {} more, not shown\n", findings.len() - MOST));
    }
    shown.join("\n")
}

fn one(source: &Source, finding: &Finding, renderer: &Renderer) -> String {
    let source = &*text_of(source, finding);
    let level = match finding.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Note => Level::NOTE,
    };
    let place = source.position(finding.primary.span.start);
    let origin = Origin::path(tame(source.name())).line(place.line).char_column(place.column);
    let shown = lines(source, finding);
    let snippet =
        Snippet::source(shown.text.as_str()).line_start(shown.first).annotations(shown.marks.iter().map(mark));
    let mut group = level.primary_title(tame(&told(finding))).id(finding.code).element(origin).element(snippet);
    if let Some(help) = &finding.help {
        group = group.element(Level::HELP.message(tame(help)));
    }
    if let Some(patches) = patches(source, finding) {
        group = group.element(patches);
    }
    if let Some(reason) = &finding.allowed {
        group = group.element(Level::NOTE.message(format!("allowed: {}", tame(reason))));
    }
    tighten(&renderer.render(&[group]))
}

/// The edits as the lines that go out and come in; none where they are many, or stand in a line that is too
/// long to be shown whole.
fn patches(source: &Source, finding: &Finding) -> Option<Snippet<'static, Patch<'static>>> {
    let mut edits: Vec<&Edit> = finding.edits.iter().collect();
    edits.sort_by_key(|edit| edit.span);
    if edits.is_empty() || edits.len() > MOST_EDITS {
        return None;
    }
    let shown = lines_of(source, edits.iter().map(|edit| (edit.span, "")));
    let whole = shown.marks.len() == edits.len()
        && shown
            .marks
            .iter()
            .zip(&edits)
            .all(|(mark, edit)| shown.text.get(mark.at.clone()) == Some(source.slice(edit.span)));
    let patches: Vec<Patch<'static>> =
        shown.marks.iter().zip(&edits).map(|(mark, edit)| Patch::new(mark.at.clone(), tame(&edit.with))).collect();
    whole.then(|| Snippet::source(shown.text).line_start(shown.first).patches(patches))
}

fn mark<'a>(mark: &Mark<'_>) -> Annotation<'a> {
    let kind = if mark.primary { AnnotationKind::Primary } else { AnnotationKind::Context };
    let marked = kind.span(mark.at.clone());
    if mark.label.is_empty() { marked } else { marked.label(tame(mark.label)) }
}

/// Without the lines that hold nothing but the gutter, and without blanks at the end of a line: the
/// numbers say what was left out.
fn tighten(report: &str) -> String {
    let mut out = String::with_capacity(report.len() + 1);
    for line in report.lines() {
        let bare = anstream::adapter::strip_str(line).to_string();
        if !matches!(bare.trim(), "|" | "..." | ":::") {
            out.push_str(line.trim_end());
            out.push('\n');
        }
    }
    out
}
