//! What a settled design comes to, reckoned plainly from its layers as they lie: no rule is asked.

use super::numbers::{Unit, numbers};
use std::collections::BTreeSet;
use trimwright::cutting::plan::CutPlan;
use trimwright::design::model::{Design, LayerId, Onto};
use trimwright::geometry::{Region, TOLERANCE};
use trimwright::layout::model::Layout;

/// What of a design may not change unseen, each fault and each count as a line of text.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(crate) struct Facts {
    /// Claims that do not hold.
    pub(crate) claims: BTreeSet<String>,
    /// Layers past what they lie on, over each other, or over their own copies.
    pub(crate) fits: BTreeSet<String>,
    /// Layers over others that they are not put on.
    pub(crate) overlaps: BTreeSet<String>,
    /// Layers that end before the edge at which they are to be trimmed.
    pub(crate) short: BTreeSet<String>,
    /// Cards, pieces and sheets.
    pub(crate) counts: BTreeSet<String>,
}

/// The facts of a design that is laid.
pub(crate) fn facts(design: &Design, layout: &Layout) -> Facts {
    let mut facts = Facts::default();
    let regions: Vec<Region> = design.layer_ids().map(|id| covered(layout, id)).collect();
    for id in design.layer_ids() {
        let (layer, placed) = (design.layer(id), layout.placed(id));
        let name = &called(design, id);
        for (edge, claimed) in layer.shows.iter().flat_map(|shows| &shows.edges) {
            if placed.shows(*edge) != claimed.nm() {
                facts.claims.insert(format!("{name} {}", edge.word()));
            }
        }
        let ground = |onto: Onto| match onto {
            Onto::Card => Region::from(layout.face(layer.face)),
            Onto::Layer(other) => regions[other.0].clone(),
        };
        match layer.trim_flush.as_ref() {
            None if regions[id.0].difference(&ground(layer.onto)).holds_disc(2 * TOLERANCE) => {
                facts.fits.insert(format!("{name} past its ground"));
            }
            None => {}
            // What reached past the target's outline at a corner, and does no more.
            Some(target) => {
                let target = ground(target.value);
                let bounds = target.bounds();
                for (copy, laid) in placed.laid.iter().enumerate() {
                    for (corner, point) in laid.outline.outer().iter().enumerate() {
                        let within = bounds.is_some_and(|b| {
                            b.left <= point.x && point.x <= b.right && b.bottom <= point.y && point.y <= b.top
                        });
                        if within {
                            facts.short.insert(format!("{name} {copy} {corner}"));
                        }
                    }
                }
            }
        }
        let outlines: Vec<Region> = placed.laid.iter().map(|laid| Region::from(&laid.outline)).collect();
        for (n, one) in outlines.iter().enumerate() {
            if outlines[..n].iter().any(|other| one.intersection(other).holds_disc(2 * TOLERANCE)) {
                facts.fits.insert(format!("{name} over its own copies"));
            }
        }
        for other in design.layer_ids().take(id.0) {
            let alike = design.layer(other).face == layer.face;
            if alike && !stands_on(design, id, other) && !stands_on(design, other, id) {
                let both = regions[id.0].intersection(&regions[other.0]);
                if both.holds_disc(2 * TOLERANCE) {
                    facts.overlaps.insert(format!("{name} over {}", called(design, other)));
                }
            }
        }
    }
    facts.counts.insert(format!("{} cards", design.cards.value));
    for version in &design.versions {
        facts.counts.insert(format!("{} of {}", version.cards, version.name));
    }
    for piece in design.piece_ids() {
        facts.counts.insert(format!("{} {} a card", design.per_card(piece), design.piece(piece).name));
    }
    facts
}

/// The sheets that a plan takes and the pieces that it lacks.
pub(crate) fn sheets(design: &Design, plan: &CutPlan) -> BTreeSet<String> {
    let used = |paper| plan.sheets.iter().filter(|sheet| sheet.paper == paper).map(|sheet| sheet.numbers.len()).sum();
    let used = design.paper_ids().map(|paper| (used(paper), paper));
    let used = used.map(|(used, paper): (usize, _)| format!("{used} sheets of {}", design.paper(paper).name));
    used.chain(std::iter::once(format!("{} missing", plan.missing.len()))).collect()
}

/// A layer by its piece, its side and its place among those of the same piece, which no name given with `as`
/// changes.
fn called(design: &Design, id: LayerId) -> String {
    let alike = |other: LayerId| {
        let (own, other) = (design.layer(id), design.layer(other));
        (own.piece, own.face) == (other.piece, other.face)
    };
    let before = design.layer_ids().take(id.0).filter(|other| alike(*other)).count();
    let layer = design.layer(id);
    format!("{} {} of {:?}", design.piece(layer.piece).name, before + 1, layer.face)
}

fn covered(layout: &Layout, id: LayerId) -> Region {
    let outlines: Vec<_> = layout.placed(id).laid.iter().map(|laid| laid.outline.clone()).collect();
    Region::covered_by(&outlines)
}

/// Whether a layer lies on another, or on what lies on it.
fn stands_on(design: &Design, mut id: LayerId, other: LayerId) -> bool {
    while let Onto::Layer(ground) = design.layer(id).onto {
        if ground == other {
            return true;
        }
        id = ground;
    }
    false
}

/// Whether the cards of the versions, as they stand in the text, come to another sum than the cards in all.
pub(crate) fn sum_is_off(text: &str) -> bool {
    let cards = |line: &str| {
        line.trim().trim_start_matches("- ").strip_prefix("cards:").and_then(|n| n.trim().parse::<u64>().ok())
    };
    let all = text.lines().filter(|line| !line.starts_with(' ')).find_map(cards);
    let versions: Vec<u64> = text.lines().filter(|line| line.starts_with(' ')).filter_map(cards).collect();
    !versions.is_empty() && all.is_some_and(|all| all != versions.iter().sum::<u64>())
}

/// Whether two lengths that stand for each other are farther apart than any pair that somebody rounds to marks
/// of two rulers: by an eighth and 4 mm, or one of them three quarters longer than the other.
pub(crate) fn twins_are_far(line: &str) -> bool {
    let Some((one, other)) = line.split_once('|') else { return false };
    let lengths = |side: &str| -> Vec<f64> {
        let all = numbers(side).into_iter().filter(|number| matches!(number.unit, Unit::Inch | Unit::Millimetre));
        all.map(|number| number.millimetres()).collect()
    };
    let (one, other) = (lengths(one), lengths(other.split([',', '|']).next().unwrap_or("")));
    // Only the nearest lengths belong together where a line holds several.
    let pairs = one.iter().rev().zip(other.iter().rev());
    pairs.into_iter().any(|(a, b)| {
        let (short, long) = (a.min(*b), a.max(*b));
        let apart = long - short;
        apart > (long / 8.0).max(4.0) || (apart > 1.0 && long > 1.75 * short)
    })
}

/// A settled design as text, without the places where it is written.
pub(crate) fn without_places(design: &Design) -> String {
    let text = format!("{design:?}");
    let mut kept = String::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some(at) = rest.find("Span { start: ") {
        kept.push_str(&rest[..at]);
        rest = rest[at..].split_once('}').map_or("", |(_, rest)| rest);
    }
    kept + rest
}
