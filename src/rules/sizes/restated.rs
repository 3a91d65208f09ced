//! Lengths that are stated for one edition only, and restated by rule for the other.

use crate::design::model::{Design, Extent, Of, Onto};
use crate::design::restate::{Restated, Role};
use crate::diagnostic::{Finding, Severity};
use crate::length::Units;
use crate::project::{Project, Totals};
use crate::rules::Rule;
use crate::rules::outlines::about;
use crate::source::Span;
use crate::words::english::{counted, listed_words};

/// The rule.
pub static RULE: Rule = Rule {
    code: "restated",
    severity: Severity::Note,
    group: "sizes",
    summary: "an edition has lengths by rule that are stated for the other one only",
    page: include_str!("restated.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let Some(first) = design.restated.iter().find(|restated| !restated.is_stock).filter(|_| design.is_restated())
    else {
        return Vec::new();
    };
    let (other, own) = (system(project.units().other()), system(project.units()));
    let count = u32::try_from(design.restated.len()).unwrap_or(u32::MAX);
    let lengths = counted(count, "length");
    let verb = if count == 1 { "is" } else { "are" };
    let facts = facts(project);
    // A file for `cuts` need not say its units.
    let span = design.asked_span.unwrap_or(first.span);
    let finding = Finding::note(
        RULE.code,
        span,
        format!("{lengths} {verb} restated from {other}"),
        if facts.is_empty() { format!("no difference in {own}") } else { facts.join("; ") },
    )
    .plainly(format!("{lengths} {verb} said in {other} only, and rounded to {own} by rule"))
    .help(format!("state the pair where 1 of them is not what you mean, such as `{}`", first.pair));
    vec![Finding { edition: Some(project.units()), ..finding }]
}

/// What it comes to: the largest change, another card, and what the plan takes more or less.
fn facts(project: &Project) -> Vec<String> {
    let restated = &project.design.restated;
    let is_another = |restated: &&Restated| matches!(restated.role, Role::Card | Role::Envelope | Role::Sheet);
    let largest = restated.iter().filter(|restated| !is_another(restated)).map(|restated| restated.off).max();
    let mut facts = Vec::new();
    if let Some(off) = largest.filter(|off| *off > 0) {
        facts.push(format!("up to {} off", about(project, off)));
    }
    if let Some(card) = restated.iter().find(|restated| restated.role == Role::Card) {
        let size = project.design.card.as_ref().map(|card| card.size.in_units(project.units()));
        let stated = card.pair.split('|').next().unwrap_or_default().trim();
        facts.extend(size.map(|size| format!("the card is {size} for {stated}")));
    }
    if let Some(before) = project.made_in {
        let now = Totals::of(&project.plan);
        let told =
            [(now.cards, before.cards, "card"), (now.sheets, before.sheets, "sheet"), (now.cuts, before.cuts, "cut")];
        let told: Vec<String> =
            told.into_iter().filter_map(|(now, before, noun)| compared(now, before, noun)).collect();
        if !told.is_empty() {
            facts.push(format!("{} than in {}", listed_words(&told), system(before.units)));
        }
    }
    facts
}

/// A finding about what an edition has by rule offers the pair to state.
#[must_use]
pub fn with_pair(finding: Finding, design: Option<&Design>, restated: &[Restated]) -> Finding {
    let Some(cause) = cause(&finding, design, restated) else { return finding };
    let pair = format!("state the pair yourself, in place of `{}`", cause.pair);
    let help = finding.help.as_ref().map_or_else(|| pair.clone(), |help| format!("{help}, or {pair}"));
    finding.help(help)
}

/// Which length that an edition has by rule is behind one of its findings: one that stands where the finding
/// points; else one that sizes or places the layers and pieces it points at; else one of what these lean on.
fn cause<'r>(finding: &Finding, design: Option<&Design>, restated: &'r [Restated]) -> Option<&'r Restated> {
    if finding.code == RULE.code || restated.is_empty() {
        return None;
    }
    let mut places: Vec<Span> =
        std::iter::once(&finding.primary).chain(&finding.others).map(|label| label.span).collect();
    // Stock of the trade is behind a fault only where the finding is about it.
    let may_be = |one: &Restated, place: Span| {
        overlap(place, one.span) && (!one.is_stock || overlap(finding.primary.span, one.span))
    };
    let behind =
        |places: &[Span]| places.iter().find_map(|place| restated.iter().find(|restated| may_be(restated, *place)));
    // Each round adds what the places so far lean on; a size leans on no more sizes than there are.
    for _ in 0..=design.map_or(0, |design| design.pieces.len().min(MOST_ROUNDS)) {
        if let Some(cause) = behind(&places) {
            return Some(cause);
        }
        let more = design.map_or_else(Vec::new, |design| leant_on(design, &places));
        places.extend(more);
        places.dedup();
    }
    behind(&places)
}

/// Sizes that lean on sizes are followed so far for a help.
const MOST_ROUNDS: usize = 6;

const fn overlap(one: Span, other: Span) -> bool {
    one.start < other.end && other.start < one.end
}

/// Where the sizes and places are written of what stands at some places, and of what these lean on.
fn leant_on(design: &Design, places: &[Span]) -> Vec<Span> {
    let at = |span: Span| places.iter().any(|place| overlap(*place, span));
    let size = |of: Of| match of {
        Of::Card => design.card.as_ref().map(|card| card.span),
        Of::Piece(piece) => Some(design.piece(piece).size_span),
    };
    let mut found = Vec::new();
    for layer in &design.layers {
        let spans = [layer.spans.across, layer.spans.up, layer.spans.arrangement];
        if at(layer.span) || spans.into_iter().any(at) {
            found.push(design.piece(layer.piece).size_span);
            found.extend(spans);
            found.extend(match layer.onto {
                Onto::Card => size(Of::Card),
                Onto::Layer(below) => size(Of::Piece(design.layer(below).piece)),
            });
        }
    }
    for piece in design.pieces.iter().filter(|piece| at(piece.size_span) || at(piece.span)) {
        found.push(piece.size_span);
        let leans = Extent::BOTH.into_iter().flat_map(|side| piece.stated.leans_on(side));
        found.extend(leans.filter_map(|(of, _)| size(of)));
    }
    found
}

/// `2 cuts more`, `1 sheet fewer`.
fn compared(now: u64, before: u64, noun: &str) -> Option<String> {
    let count = |many: u64| counted(u32::try_from(many).unwrap_or(u32::MAX), noun);
    match now.cmp(&before) {
        std::cmp::Ordering::Equal => None,
        std::cmp::Ordering::Greater => Some(format!("{} more", count(now - before))),
        std::cmp::Ordering::Less => Some(format!("{} fewer", count(before - now))),
    }
}

/// How a system is called in a sentence.
const fn system(units: Units) -> &'static str {
    match units {
        Units::Inch => "inches",
        Units::Metric => "millimetres",
    }
}
