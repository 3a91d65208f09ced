//! A sign that the bundled typefaces cannot print.

use super::places::printed;
use crate::diagnostic::{Finding, Severity};
use crate::fonts::FACES;
use crate::fonts::metrics::draws;
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "missing-glyph",
    severity: Severity::Error,
    group: "text",
    summary: "a sign that the typefaces cannot print",
    page: include_str!("missing_glyph.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let mut findings = Vec::new();
    for text in printed(project) {
        let mut missing: Vec<char> = Vec::new();
        for sign in text.text.chars().filter(|sign| !is_printable(*sign)) {
            if !missing.contains(&sign) {
                missing.push(sign);
            }
        }
        let Some(first) = missing.first() else { continue };
        let signs: Vec<String> = missing.iter().take(8).map(|sign| named(*sign)).collect();
        let count = missing.len();
        let these = if count == 1 { "1 sign".to_owned() } else { format!("{count} signs") };
        findings.push(
            text.told(
                Finding::error(
                    RULE.code,
                    text.span,
                    format!("{} holds {these} that cannot be printed", text.place.what),
                    signs.join(", "),
                )
                .plainly(format!("the typefaces have no {}, so {} would lose it", named(*first), text.place.what))
                .help(format!(
                    "write {} without the {these}; letters of the Latin alphabet can be printed",
                    text.place.what
                )),
            ),
        );
    }
    findings
}

/// Whether every bundled face has it: a text may stand in more than one of them. Blanks need no picture.
fn is_printable(sign: char) -> bool {
    sign.is_whitespace() || FACES.iter().all(|(family, weight, _)| draws(family, *weight, sign))
}

/// `灯 (U+706F)`.
fn named(sign: char) -> String {
    format!("{sign} (U+{:04X})", u32::from(sign))
}
