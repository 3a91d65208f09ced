//! A note is about work that the card does not have.

use crate::assembly::sequence::step_of_note;
use crate::design::model::{NoteOn, Work};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "note-without-its-work",
    severity: Severity::Warning,
    group: "text",
    summary: "a note is about work that the card does not have",
    page: include_str!("note_without_its_work.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let mut findings = Vec::new();
    for (index, note) in project.design.notes.iter().enumerate() {
        // A note on decorating is a step itself, and posting comes when all steps are done.
        let NoteOn::Work(work) = note.on else { continue };
        if matches!(work, Work::Decorating | Work::Posting) || step_of_note(&project.steps, index).is_some() {
            continue;
        }
        let word = word(work);
        findings.push(
            Finding::warning(
                RULE.code,
                note.text.span,
                format!("a note is on {word}, and nothing of that is done"),
                format!("0 steps of {word} in this design"),
            )
            .plainly(format!("a note is about {word}, and this card needs none, so the note stands away from any step"))
            .help("put the note `on` 1 layer or another kind of work, or delete it"),
        );
    }
    findings
}

/// The word of the design file.
const fn word(work: Work) -> &'static str {
    match work {
        Work::Cutting => "cutting",
        Work::Stamping => "stamping",
        Work::Folding => "folding",
        Work::Sorting => "sorting",
        Work::Units => "putting together",
        Work::Layering => "layering",
        Work::Decorating => "decorating",
        Work::Posting => "posting",
        // Notes cannot be tied to these: they are part of cutting and of making a piece.
        Work::Printing => "printing",
        Work::Finishing => "finishing",
    }
}
