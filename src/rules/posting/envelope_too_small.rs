//! The card does not go into the envelope that the design states.

use crate::diagnostic::{Finding, Severity};
use crate::paper::envelope::{clearance, flat_clearance, sides, smallest, takes};
use crate::paper::tell::thickness;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;

/// The rule.
pub static RULE: Rule = Rule {
    code: "envelope-too-small",
    severity: Severity::Error,
    group: "posting",
    summary: "the card does not go into its envelope",
    page: include_str!("envelope_too_small.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let (design, units) = (&project.design, project.units());
    let (Some(card), Some(envelope), Some(made)) = (&design.card, &design.envelope, &project.made) else {
        return Vec::new();
    };
    let thick = made.thickness();
    let wanted = clearance(units, thick);
    if takes(envelope.size, card.size, wanted) {
        return Vec::new();
    }
    let ((long, short), (card_long, card_short)) = (sides(envelope.size), sides(card.size));
    let room = (long - card_long).min(short - card_short);
    let fact = if room < 0 {
        format!("{} smaller than the card", length(project, -room))
    } else {
        format!("{} larger than the card, where {wanted} is the least", length(project, room))
    };
    let about = thickness(thick, units);
    let severity =
        if takes(envelope.size, card.size, flat_clearance(units)) { Severity::Warning } else { Severity::Error };
    let (message, why) = match severity {
        Severity::Error => ("the card does not go into its envelope", String::new()),
        _ => ("the thick card is tight in its envelope", format!(", since the card is about {about} thick")),
    };
    let least = |side: i64| length(project, side.saturating_add(wanted.nm()));
    let mut help = format!("take an envelope of {} x {} or larger", least(card_long).number(units), least(card_short));
    if let Some(named) = smallest(card.size, thick, units) {
        help = format!("{help}, such as `{}`", named.full_name());
    }
    vec![
        Finding::new(severity, RULE.code, envelope.span, message, format!("{fact}{why}"))
            .also(card.span, format!("the card is {}", card.size.in_units(units)))
            .help(help)
            .plainly(match severity {
                Severity::Error => "the envelope is too small for the card",
                _ => "the envelope is tight for a card so thick",
            }),
    ]
}
