//! The report for a terminal: each finding with its lines of the file.

use super::{tame, told};
use crate::diagnostic::{Finding, Severity};
use crate::source::{Source, Span};
use annotate_snippets::{Annotation, AnnotationKind, Level, Renderer, Snippet};
use std::ops::Range;

/// Every finding in the order given, a blank line between two, ending with a line break.
/// Nothing at all where there are none.
#[must_use]
pub fn text(source: &Source, findings: &[Finding], colour: bool) -> String {
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    let shown: Vec<String> = findings.iter().map(|finding| one(source, finding, &renderer)).collect();
    shown.join("\n")
}

fn one(source: &Source, finding: &Finding, renderer: &Renderer) -> String {
    let level = match finding.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Note => Level::NOTE,
    };
    let window = window(source, finding);
    let mark = |kind: AnnotationKind, span: Span, label: &str| -> Annotation<'_> {
        let marked = kind.span(within(source, span, &window));
        if label.is_empty() { marked } else { marked.label(tame(label)) }
    };
    let snippet = Snippet::source(&source.text()[window.clone()])
        .line_start(source.position(window.start).line)
        .path(tame(source.name()))
        .annotation(mark(AnnotationKind::Primary, finding.primary.span, &finding.primary.text))
        .annotations(finding.others.iter().map(|other| mark(AnnotationKind::Context, other.span, &other.text)));
    let mut group = level.primary_title(tame(&told(finding))).id(finding.code).element(snippet);
    if let Some(help) = &finding.help {
        group = group.element(Level::HELP.message(tame(help)));
    }
    tighten(&renderer.render(&[group]))
}

/// The whole lines from the first to the last place of a finding: a report shows no others, and
/// a large file is not walked again for each.
fn window(source: &Source, finding: &Finding) -> Range<usize> {
    let text = source.text();
    let all = finding.others.iter().fold(finding.primary.span, |all, other| all.to(other.span));
    let end = all.end.max(all.start).min(text.len());
    let start = floor(text, all.start.min(end));
    let start = text[..start].rfind('\n').map_or(0, |at| at + 1);
    let end = text.as_bytes()[end..].iter().position(|byte| *byte == b'\n').map_or(text.len(), |at| end + at);
    start..end
}

/// A span as the bytes of the window, on whole characters.
fn within(source: &Source, span: Span, window: &Range<usize>) -> Range<usize> {
    let text = &source.text()[window.clone()];
    let start = floor(text, span.start.saturating_sub(window.start));
    let end = floor(text, span.end.saturating_sub(window.start)).max(start);
    start..end
}

fn floor(text: &str, at: usize) -> usize {
    let mut at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

/// Without the lines that hold nothing but the gutter: the numbers say what was left out.
fn tighten(report: &str) -> String {
    let mut out = String::with_capacity(report.len() + 1);
    for line in report.lines() {
        let bare = anstream::adapter::strip_str(line).to_string();
        if !matches!(bare.trim(), "|" | "...") {
            out.push_str(line);
            out.push('\n');
        }
    }
    out
}
