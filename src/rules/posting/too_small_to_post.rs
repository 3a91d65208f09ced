//! The card in its envelope is smaller than anything that the post takes.

use crate::diagnostic::{Finding, Severity};
use crate::paper::envelope::{chosen, sides};
use crate::paper::post_limits::smallest_letter;
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "too-small-to-post",
    severity: Severity::Warning,
    group: "posting",
    summary: "the card in its envelope is smaller than the post takes",
    page: include_str!("too_small_to_post.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let (design, units) = (&project.design, project.units());
    let (Some(card), Some(made)) = (&design.card, &project.made) else { return Vec::new() };
    let Some(envelope) = chosen(design, made.thickness()) else { return Vec::new() };
    let (long, short) = sides(envelope.size);
    let least = smallest_letter(units);
    if long >= least.long.nm() && short >= least.short.nm() {
        return Vec::new();
    }
    let size = envelope.size.in_units(units);
    let smallest = format!("{} x {}", least.long.number(units), least.short);
    let (span, fact) = match (envelope.stated, envelope.named) {
        (Some(span), _) => (span, format!("{size}, where the least is {smallest}")),
        (None, Some(named)) => {
            (card.span, format!("the {} is {size}, where the least is {smallest}", named.full_name()))
        }
        (None, None) => (card.span, format!("{size}, where the least is {smallest}")),
    };
    vec![
        Finding::warning(RULE.code, span, "the envelope is smaller than the post takes", fact)
            .help(format!("say `envelope: {{size: …}}` with 1 of {smallest} or larger, or hand the card over"))
            .plainly(format!("a letter smaller than {smallest} may come back")),
    ]
}
