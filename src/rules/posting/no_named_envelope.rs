//! No envelope that has a name takes the card.

use crate::diagnostic::{Finding, Severity};
use crate::paper::envelope::{nearest_card, smallest};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "no-named-envelope",
    severity: Severity::Note,
    group: "posting",
    summary: "no envelope that is sold by a name takes the card",
    page: include_str!("no_named_envelope.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let (design, units) = (&project.design, project.units());
    let (Some(card), None, Some(made)) = (&design.card, &design.envelope, &project.made) else {
        return Vec::new();
    };
    let thick = made.thickness();
    if smallest(card.size, thick, units).is_some() {
        return Vec::new();
    }
    let Some((nearest, named)) = nearest_card(card.size, thick, units) else { return Vec::new() };
    vec![
        Finding::note(
            RULE.code,
            card.span,
            "no envelope that has a name takes the card",
            format!("{}, and the nearest card that one takes is {nearest}", card.size.in_units(units)),
        )
        .help(format!(
            "make the card {nearest} for the {}, or say `envelope: {{size: …}}` with the 1 that you mean",
            named.full_name()
        ))
        .plainly("readers will not find an envelope of a usual size for this card"),
    ]
}
