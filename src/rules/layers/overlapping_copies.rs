//! The copies of a row, column or grid lie over each other.

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::{Axis, length, the_layer};

/// The rule.
pub static RULE: Rule = Rule {
    code: "overlapping-copies",
    severity: Severity::Warning,
    group: "layers",
    summary: "the copies of a row, column or grid lie over each other",
    page: include_str!("overlapping_copies.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for id in design.layer_ids() {
        let layer = design.layer(id);
        for axis in Axis::BOTH {
            let (copies, gap) = axis.copies(project, layer);
            if copies < 2 || gap.nm() >= 0 {
                continue;
            }
            let over = length(project, -gap.nm());
            let the_layer = the_layer(design, id);
            findings.push(
                Finding::warning(
                    RULE.code,
                    layer.span,
                    format!("the copies in {the_layer} lie over each other"),
                    format!("each covers {over} of its neighbour"),
                )
                .plainly(format!("each piece in {the_layer} covers {over} of its neighbour"))
                .help(format!("make the gap {} or more", length(project, 0))),
            );
        }
    }
    findings
}
