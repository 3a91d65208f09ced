//! The card does not go into the envelope that the design states.

use crate::diagnostic::{Certainty, Edit, Finding, Severity};
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
    let fact = match room {
        ..0 => format!("{} smaller than the card", length(project, -room)),
        0 => format!("no larger than the card, where {wanted} more is the least"),
        _ => format!("{} larger than the card, where {wanted} is the least", length(project, room)),
    };
    let about = thickness(thick, units);
    let severity =
        if takes(envelope.size, card.size, flat_clearance(units)) { Severity::Warning } else { Severity::Error };
    let message = match severity {
        Severity::Error => "the card does not go into its envelope".to_owned(),
        _ => format!("the card, about {about} thick, is tight in its envelope"),
    };
    let least = |side: i64| length(project, side.saturating_add(wanted.nm()));
    let mut help = format!("take an envelope of {} x {} or larger", least(card_long).number(units), least(card_short));
    let named = smallest(card.size, thick, units).map(|named| named.full_name());
    if let Some(named) = &named {
        help = format!("{help}, such as `{named}`");
    }
    // Where it has a pair, either edition wants its own.
    let edit = named.filter(|_| design.asked.len() == 1).map(|named| Edit::new(envelope.span, named));
    vec![
        Finding::new(severity, RULE.code, envelope.span, message, fact)
            .also(card.span, format!("the card is {}", card.size.in_units(units)))
            .help(help)
            .edits(edit, Certainty::Likely)
            .plainly(match severity {
                Severity::Error => "the envelope is too small for the card",
                _ => "the envelope is tight for a card so thick",
            }),
    ]
}
