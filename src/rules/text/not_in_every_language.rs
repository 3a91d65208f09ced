//! A text or name is not said in every language that the handout is made in.

use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-in-every-language",
    severity: Severity::Warning,
    group: "text",
    summary: "a text is not said in every language of the handout",
    page: include_str!("not_in_every_language.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let first = design.words().language().tag();
    let findings = design.untold.iter().map(|untold| {
        let tags: Vec<&str> = untold.languages.iter().map(|language| language.tag()).collect();
        let missing = tags.join("` and `");
        let places: Vec<String> = tags.iter().map(|tag| format!("{tag}: …")).collect();
        let finding = Finding::warning(
            RULE.code,
            untold.span,
            format!("this is not said in `{missing}`"),
            format!("{} of the {} languages of the handout missing", tags.len(), design.languages.len()),
        )
        .plainly(format!("the handout in {} would show this text in another language", tags.join(" and ")))
        .help(format!(
            "say it as `{{{first}: …, {0}}}`, or a name behind its key as `name: {{{0}}}`",
            places.join(", ")
        ));
        match &untold.file {
            Some(file) => finding.in_file(file),
            None => finding,
        }
    });
    findings.collect()
}
