//! The form of the envelope makes it no ordinary letter.

use crate::diagnostic::{Finding, Severity};
use crate::paper::envelope::{chosen, sides};
use crate::paper::post::{Posted, is_slenderer, is_squarer};
use crate::paper::post_limits::{Ratio, usual_ratio};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "not-a-machine-letter",
    severity: Severity::Note,
    group: "posting",
    summary: "the envelope is too square or too slender for an ordinary letter",
    page: include_str!("not_a_machine_letter.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let (design, units) = (&project.design, project.units());
    let (Some(card), Some(made)) = (&design.card, &project.made) else { return Vec::new() };
    let Some(envelope) = chosen(design, made.thickness()) else { return Vec::new() };
    let (long, short) = sides(envelope.size);
    let posted = Posted { long, short, thick: 0, weight: 0, is_uneven: false };
    let (least, most, country) = usual_ratio(units);
    let (what, bound, times, up) = if is_squarer(posted, least) {
        ("square", "at least", decimal(least), 0)
    } else if let Some(most) = most.filter(|most| is_slenderer(posted, *most)) {
        ("slender", "at most", decimal(most), 1)
    } else {
        return Vec::new();
    };
    let size = envelope.size.in_units(units);
    let (span, whose) = match (envelope.stated, envelope.named) {
        (None, Some(named)) => (card.span, format!("the {} is {size}", named.full_name())),
        (stated, _) => (stated.unwrap_or(card.span), size.to_string()),
    };
    vec![
        Finding::note(
            RULE.code,
            span,
            format!("the envelope is too {what} for an ordinary letter"),
            format!("{whose}: {} times as long as high", hundredths(long, short, up)),
        )
        .help(format!(
            "make it {bound} {times} times as long as high, as an ordinary letter in {} is, \
             or tell readers that it costs more",
            the(country)
        ))
        .plainly(format!("an envelope so {what} may cost more to post")),
    ]
}

fn the(country: &str) -> String {
    if country.starts_with("United") { format!("the {country}") } else { country.to_owned() }
}

/// A ratio as a decimal of one place.
fn decimal((above, below): Ratio) -> String {
    let tenths = above * 10 / below;
    format!("{}.{}", tenths / 10, tenths % 10)
}

/// One side over the other to two places, rounded down or `up`, so that what is past a limit reads so.
fn hundredths(long: i64, short: i64, up: i128) -> String {
    let short = i128::from(short.max(1));
    let hundredths = (i128::from(long) * 100 + (short - 1) * up) / short;
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}
