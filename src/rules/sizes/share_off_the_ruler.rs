//! A share or a half is no whole step of the ruler.

use super::size_off_the_ruler::{called, follows, known, near};
use crate::design::model::{Change, Extent, Measure, Of, Relation, Stated};
use crate::diagnostic::{Finding, Severity};
use crate::length::Length;
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;

/// The rule.
pub static RULE: Rule = Rule {
    code: "share-off-the-ruler",
    severity: Severity::Warning,
    group: "sizes",
    summary: "a share or a half is no whole step of the ruler",
    page: include_str!("share_off_the_ruler.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let ruler = length(project, project.design.workshop.ruler.nm());
    let mut findings = Vec::new();
    for piece in &project.design.pieces {
        for side in Extent::BOTH {
            let relation = piece.stated.side(side).filter(|_| !side.of(piece.size).is_on(ruler));
            if let Some(relation) = relation {
                findings.extend(off(project, &piece.name, &piece.stated, relation, side, ruler));
            }
        }
    }
    findings
}

/// What is divided, into how many, with what gap: a half is one of two with none.
#[derive(Clone, Copy)]
struct Divided {
    of: Of,
    /// The side of it.
    side: Extent,
    whole: i64,
    count: i64,
    gap: i64,
}

fn off(
    project: &Project,
    name: &str,
    stated: &Stated,
    relation: &Relation,
    own: Extent,
    ruler: Length,
) -> Option<Finding> {
    let (of, side, count, gap) = match &relation.measure {
        Measure::Share { of, count, gap } => (*of, own, *count, gap.nm()),
        Measure::Part { of, side, parts } => (*of, *side, *parts, 0),
        Measure::Own(_) | Measure::Same(..) | Measure::Rest { .. } | Measure::Drawn { .. } => return None,
    };
    let measure = relation.measure.result(own, |of, side| known(project, of, side))?;
    // A gap off the ruler may well divide; only what is divided must be on it.
    if measure.is_on(ruler) || follows(project, stated, own, ruler) {
        return None;
    }
    let divided = Divided { of, side, whole: known(project, of, side)?.nm(), count: i64::from(count), gap };
    let whole = called(project, of);
    let part = match &relation.measure {
        Measure::Share { .. } => "a share of",
        _ if count == 2 => "half of",
        _ if count == 3 => "a third of",
        _ => "a quarter of",
    };
    let what =
        if side == own { format!("{part} the {whole}") } else { format!("{part} the {} of the {whole}", side.word()) };
    let fact = format!("{} {}", length(project, measure.nm()), own.measure());
    Some(
        Finding::warning(
            RULE.code,
            relation.span,
            format!("{what} is no whole step of the ruler"),
            format!("{fact}, and the ruler's step is {ruler}"),
        )
        .plainly(format!("the {name} is {fact} as {what}, which no mark of a ruler in steps of {ruler} gives"))
        .help(mend(project, &divided, relation, own, ruler)),
    )
}

/// The nearest gap that divides onto the ruler; where none does, the nearest whole that does.
fn mend(project: &Project, divided: &Divided, relation: &Relation, own: Extent, ruler: Length) -> String {
    let whole = called(project, divided.of);
    let Some(gap) = nearest_gap(divided, ruler.nm()).filter(|_| divided.side == own) else {
        let better = nearest_whole(divided, ruler);
        return format!("make the {whole} {} {}", length(project, better), divided.side.measure());
    };
    let share = (divided.whole - gap * (divided.count - 1)) / divided.count;
    let (each, change) = match relation.change {
        None => (share, String::new()),
        Some(Change::Less(by)) => (share - by.nm(), format!(" less {by}")),
        Some(Change::Plus(by)) => (share + by.nm(), format!(" plus {by}")),
    };
    let (gap, each) = (length(project, gap), length(project, each));
    if !matches!(relation.measure, Measure::Share { .. }) {
        let count = divided.count;
        return format!("say `share of {whole}, {count} evenly with gap {gap}{change}`, and each is {each}");
    }
    if gap.is_zero() {
        format!("leave the gap out, and each is {each}")
    } else {
        format!("say `with gap {gap}`, and each is {each}")
    }
}

/// The gap on the ruler nearest to the one that is said with which every share is a whole number of
/// steps, at least one; the smaller of two that are as near. Who says a gap is given one, wherever there
/// is any.
fn nearest_gap(divided: &Divided, ruler: i64) -> Option<i64> {
    let Divided { whole, count, gap, .. } = *divided;
    // In steps: `whole - (count - 1) gap` is a multiple of `count` just where `whole + gap` is.
    let steps = whole / ruler;
    let least = (-steps).rem_euclid(count);
    let most = (steps - count).div_euclid((count - 1).max(1));
    let last = (most - least).div_euclid(count);
    if last < 0 {
        return None;
    }
    let first = i64::from(least == 0 && gap > 0 && last > 0);
    let below = (gap.div_euclid(ruler) - least).div_euclid(count);
    let gaps = [below, below + 1].map(|round| (least + round.clamp(first, last) * count) * ruler);
    gaps.into_iter().min_by_key(|found| ((found - gap).abs(), *found))
}

/// The whole on the ruler nearest to the one there is that divides.
fn nearest_whole(divided: &Divided, ruler: Length) -> i64 {
    let gap = if divided.gap == 0 { 0 } else { near(Length::new(divided.gap, ruler.unit()), ruler).nm() };
    let gaps = gap * (divided.count - 1);
    let step = Length::new(ruler.nm() * divided.count, ruler.unit());
    near(Length::new((divided.whole - gaps).max(0), ruler.unit()), step).nm() + gaps
}

#[cfg(test)]
mod tests {
    use super::*;

    const STEP: i64 = 1_000_000;

    fn divided(whole: i64, count: i64, gap: i64) -> Divided {
        Divided { of: Of::Card, side: Extent::Width, whole: whole * STEP, count, gap: gap * STEP }
    }

    /// Against every gap there is, for every whole up to 40 steps.
    #[test]
    fn no_nearer_gap_divides() {
        for (whole, count, gap) in
            (1..40).flat_map(|whole| (2..7).flat_map(move |count| (0..9).map(move |gap| (whole, count, gap))))
        {
            let divides = |gap: &i64| {
                let rest = whole - gap * (count - 1);
                rest >= count && rest % count == 0
            };
            let least = i64::from(gap > 0);
            let best = (least..=whole).filter(divides).min_by_key(|found| ((found - gap).abs(), *found));
            let best = best.or_else(|| divides(&0).then_some(0));
            let found = nearest_gap(&divided(whole, count, gap), STEP);
            assert_eq!(found, best.map(|gap| gap * STEP), "{whole} by {count} with {gap}");
        }
    }

    #[test]
    fn the_nearest_whole_divides() {
        let ruler = Length::mm(1);
        // Half of 2 mm is 1 mm; three shares with gaps of 1 mm take 5 mm at least.
        assert_eq!(nearest_whole(&divided(1, 2, 0), ruler), 2 * STEP);
        assert_eq!(nearest_whole(&divided(2, 3, 1), ruler), 5 * STEP);
        assert_eq!(nearest_whole(&divided(63, 2, 0), ruler), 62 * STEP);
        assert_eq!(nearest_whole(&divided(7, 3, 1), ruler), 8 * STEP);
    }
}
