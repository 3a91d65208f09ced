//! A layer is laid, and nothing says how it is fixed.

use crate::design::model::From;
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::the_layer;

/// The rule.
pub static RULE: Rule = Rule {
    code: "no-glue",
    severity: Severity::Warning,
    group: "layers",
    summary: "nothing says how a layer is fixed",
    page: include_str!("no_glue.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    design
        .layer_ids()
        .filter(|id| design.layer(*id).glue.is_none())
        .map(|id| {
            let the_layer = the_layer(design, id);
            // Foam is for paper; a pearl is held by a dot, a ribbon by any of the three.
            let bought = design.piece(design.layer(id).piece).from == From::Bought;
            let ways = if bought { ["dot", "liquid", "tape"] } else { ["tape", "liquid", "foam"] };
            Finding::warning(
                RULE.code,
                design.layer(id).span,
                format!("nothing says how {the_layer} is fixed"),
                "no glue",
            )
            .plainly(format!("nothing says how {the_layer} is fixed"))
            .help(format!("say `glue: {}`, `glue: {}` or `glue: {}`", ways[0], ways[1], ways[2]))
        })
        .collect()
}
