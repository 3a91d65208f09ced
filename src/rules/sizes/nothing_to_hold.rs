//! A piece is so narrow that a hand can hardly cut it.

use crate::design::model::From;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::{Rule, hand};

/// The rule.
pub static RULE: Rule = Rule {
    code: "nothing-to-hold",
    severity: Severity::Error,
    group: "sizes",
    summary: "a piece is so narrow that a hand can hardly cut it",
    page: include_str!("nothing_to_hold.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let (least, easy) = (hand::least(project.units()), hand::easy(project.units()));
    let mut findings = Vec::new();
    for piece in project.design.pieces.iter().filter(|piece| piece.from != From::Bought) {
        let size = piece.blank().in_units(project.units());
        let (side, word) = if size.width <= size.height { (size.width, "wide") } else { (size.height, "high") };
        if side >= easy {
            continue;
        }
        let finding = if side < least {
            Finding::error(
                RULE.code,
                piece.size_span,
                format!("the {} is too narrow to be cut", piece.name),
                format!("{side} {word}"),
            )
            .plainly(format!("the {} is {side} {word}, and a trimmer cannot cut less than {least}", piece.name))
            .help(format!("make it {least} {word} or more, {easy} to be easy"))
        } else {
            Finding::note(
                RULE.code,
                piece.size_span,
                format!("the {} is hard to cut", piece.name),
                format!("{side} {word}"),
            )
            .plainly(format!("the {} is {side} {word}, which asks for a steady hand", piece.name))
            .help(format!("make it {easy} {word} to be easy"))
        };
        findings.push(finding);
    }
    findings
}
