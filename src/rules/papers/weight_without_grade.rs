//! A weight in pounds does not say of which grade.

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "weight-without-grade",
    severity: Severity::Warning,
    group: "papers",
    summary: "a weight in pounds does not say of which grade",
    page: include_str!("weight_without_grade.md"),
    check: Some(check),
};

/// The grades that pounds are counted by; each has a basis size of its own.
const GRADES: [&str; 9] = ["bond", "writing", "text", "book", "offset", "cover", "index", "tag", "bristol"];

fn check(project: &Project) -> Vec<Finding> {
    let mut findings = Vec::new();
    for paper in project.design.papers.iter().filter(|paper| paper.kept_from.is_none()) {
        let Some(weight) = &paper.weight else { continue };
        let said = weight.value.to_lowercase();
        let words: Vec<&str> = said.split(|c: char| !c.is_alphabetic() && c != '#').filter(|w| !w.is_empty()).collect();
        let pounds = words.iter().any(|word| matches!(*word, "lb" | "lbs" | "pound" | "pounds" | "#"));
        if !pounds || words.iter().any(|word| GRADES.contains(word) || *word == "gsm") {
            continue;
        }
        findings.push(
            Finding::warning(
                RULE.code,
                weight.span,
                format!("the weight of {} does not say of which grade", paper.name),
                "pounds alone may be cover, index or text",
            )
            .plainly(format!("the weight of {} is in pounds, and pounds of cover are not pounds of text", paper.name))
            .help(format!("say `{} cover` or `{0} text`, as the packet does", weight.value.trim())),
        );
    }
    findings
}
