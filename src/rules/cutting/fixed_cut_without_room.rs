//! A row or band that the designer fixes goes past its sheet, or leaves a hand nothing to hold.

use super::larger_than_its_sheet::{fits, usable};
use crate::cutting::demand::hand;
use crate::cutting::search::problem::Hand;
use crate::design::model::{AlongEdge, FixedRow, Paper, PaperId, Sheets};
use crate::diagnostic::{Finding, Severity};
use crate::geometry::Edge;
use crate::length::{Length, Size};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;
use crate::source::Span;

/// The rule.
pub static RULE: Rule = Rule {
    code: "fixed-cut-without-room",
    severity: Severity::Error,
    group: "cutting",
    summary: "a fixed row or band goes past its sheet, or leaves nothing to hold",
    page: include_str!("fixed_cut_without_room.md"),
    check: Some(check),
};

/// What stands in the way of a fixed cut.
struct Fault {
    /// The row or band.
    span: Span,
    message: String,
    fact: String,
    help: String,
}

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for id in design.paper_ids() {
        let paper = design.paper(id);
        if let Some((kind, fault)) = first_fault(project, id, &paper.sheets) {
            let room = usable(paper, kind).in_units(project.units());
            findings.push(
                Finding::error(RULE.code, fault.span, fault.message.clone(), fault.fact.clone())
                    .also(kind.span, format!("{room} to cut from"))
                    .plainly(format!("{}: {}", fault.message, fault.fact))
                    .help(fault.help),
            );
            // What does not fit the paper itself is not looked for in others.
            continue;
        }
        for also in &paper.also {
            let Some((kind, fault)) = first_fault(project, id, &also.sheets) else { continue };
            findings.push(
                Finding::warning(RULE.code, kind.span, format!("{} on these other sheets", fault.message), fault.fact)
                    .also(fault.span, "fixed here")
                    .plainly(format!("{} on the other sheets that are listed", fault.message))
                    .help(format!("take these sheets out of `also from`, or {}", fault.help)),
            );
        }
    }
    findings
}

/// The first kind of sheet that does not hold what is fixed, and why.
fn first_fault<'s>(project: &Project, id: PaperId, sheets: &'s [Sheets]) -> Option<(&'s Sheets, Fault)> {
    sheets
        .iter()
        .find_map(|kind| walk(project, id, usable(project.design.paper(id), kind)).err().map(|fault| (kind, fault)))
}

/// Whether every sheet of a paper holds what is fixed of it; where one does not, that is said here.
pub(super) fn holds_what_is_fixed(project: &Project, id: PaperId) -> bool {
    all_hold(project, id, &project.design.paper(id).sheets)
}

/// The same of other sheets of the paper.
pub(super) fn all_hold(project: &Project, id: PaperId, sheets: &[Sheets]) -> bool {
    first_fault(project, id, sheets).is_none()
}

/// What is left of a sheet, in nanometres.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Room {
    width: i64,
    height: i64,
}

impl Room {
    /// Along an edge's measure, and across it.
    const fn from(self, edge: Edge) -> (i64, i64) {
        if edge.is_side() { (self.width, self.height) } else { (self.height, self.width) }
    }

    const fn less(self, edge: Edge, measure: i64) -> Self {
        if edge.is_side() {
            Self { width: self.width - measure, ..self }
        } else {
            Self { height: self.height - measure, ..self }
        }
    }
}

/// Cuts what is fixed from a sheet, bands before rows. A piece along an edge lies as it is drawn.
fn walk(project: &Project, id: PaperId, sheet: Size) -> Result<(), Fault> {
    let paper = project.design.paper(id);
    let hand = hand(project.units());
    let mut room = Room { width: sheet.width.nm(), height: sheet.height.nm() };
    for band in &paper.fixed.edges {
        // A piece that no sheet holds, or that is cut from another paper, is another mistake.
        let cut_here = |version| project.design.paper_of(band.piece, version) == Some(id);
        if !project.design.version_ids().any(cut_here) || !fits(&project.design, band.piece, id) {
            return Ok(());
        }
        let size = project.design.piece(band.piece).size;
        let ((measure, across), (along_room, across_room)) = (extents(size, band.edge), room.from(band.edge));
        // The band may be all that is left.
        let cut = measure == along_room || along_room - measure >= least_rest(measure, hand);
        if across > across_room || !cut {
            return Err(band_fault(project, paper, band, room));
        }
        room = room.less(band.edge, measure);
    }
    for row in &paper.fixed.rows {
        let (measure, times) = (row.measure.nm(), i64::from(row.times));
        let total = room.from(row.from).0;
        if measure < hand.least || most_times(total, measure, hand) < times {
            return Err(row_fault(project, paper, row, total));
        }
        room = room.less(row.from, measure * times);
    }
    Ok(())
}

/// How often a measure comes off a length, with something left each time and enough to hold.
fn most_times(total: i64, measure: i64, hand: Hand) -> i64 {
    ((total - least_rest(measure, hand)).div_euclid(measure)).max(0)
}

/// The least that a cut of this measure must leave beside it, as [`Hand::allows`] has it.
const fn least_rest(measure: i64, hand: Hand) -> i64 {
    if measure < hand.narrow {
        hand.hold
    } else if measure < hand.hold {
        hand.narrow
    } else {
        1
    }
}

/// The largest measure on the ruler under another that comes off a length so many times.
fn largest_under(under: i64, total: i64, times: i64, ruler: i64, hand: Hand) -> Option<i64> {
    let on_ruler = |rest: i64, most: i64| ((total - rest).max(0) / times).min(most) / ruler * ruler;
    let long = on_ruler(1, under - 1);
    let middle = on_ruler(hand.narrow, (under - 1).min(hand.hold - 1));
    let short = on_ruler(hand.hold, (under - 1).min(hand.narrow - 1));
    [(long, hand.hold), (middle, hand.narrow), (short, hand.least)]
        .into_iter()
        .find(|(measure, least)| measure >= least && *measure > 0)
        .map(|(measure, _)| measure)
}

/// How far a piece reaches from an edge and along it.
const fn extents(size: Size, edge: Edge) -> (i64, i64) {
    let (width, height) = (size.width.nm(), size.height.nm());
    if edge.is_side() { (width, height) } else { (height, width) }
}

fn band_fault(project: &Project, paper: &Paper, band: &AlongEdge, room: Room) -> Fault {
    let piece = project.design.piece(band.piece);
    let (said, ruler) = (|nm| length(project, nm), project.design.workshop.ruler.nm());
    let hand = hand(project.units());
    let (along_word, across_word) = if band.edge.is_side() { ("wide", "high") } else { ("high", "wide") };
    let ((measure, across), (along_room, across_room)) = (extents(piece.size, band.edge), room.from(band.edge));
    let (fact, most) = if across > across_room {
        (format!("{} {across_word}, where {} is left", said(across), said(across_room)), None)
    } else if measure > along_room {
        // A band may also be all that is left.
        let whole = (along_room >= hand.least && along_room % ruler == 0).then_some(along_room);
        let most = largest_under(measure, along_room, 1, ruler, hand).or(whole);
        (format!("{} {along_word}, where {} is left", said(measure), said(along_room)), most)
    } else {
        let rest = said(along_room - measure);
        let hold = said(hand.hold);
        let most = largest_under(measure, along_room, 1, ruler, hand);
        (format!("{} {along_word} leaves {rest} beside it, and neither is {hold} to hold", said(measure)), most)
    };
    let help = match most.filter(|most| *most < measure) {
        Some(most) => {
            format!("make it {} {along_word}, or take it out of `along the edge`", said(most))
        }
        None => format!("take it out of `along the edge`, or take larger sheets of {}", paper.name),
    };
    Fault {
        span: band.span,
        message: format!("the {} has no room along the {} of {}", piece.name, band.edge.word(), paper.name),
        fact,
        help,
    }
}

fn row_fault(project: &Project, paper: &Paper, row: &FixedRow, room: i64) -> Fault {
    let (said, ruler) = (|nm: i64| -> Length { length(project, nm) }, project.design.workshop.ruler.nm());
    let hand = hand(project.units());
    let (measure, times) = (row.measure.nm(), i64::from(row.times));
    let fault = |fact, help| Fault {
        span: row.span,
        message: format!("a fixed row of {} has no room", paper.name),
        fact,
        help,
    };
    if measure < hand.least {
        let least = -(-hand.least).div_euclid(ruler) * ruler;
        let fact = format!("{} is under the {} that a trimmer cuts", said(measure), said(hand.least));
        return fault(fact, format!("make it {} or more, or leave the row out", said(least)));
    }
    let most = most_times(room, measure, hand);
    let all = measure * times;
    let times_of = |times: i64| if times == 1 { "1 time".to_owned() } else { format!("{times} times") };
    let fact = if all > room && times == 1 {
        format!("{} from the {}, where {} is left", said(measure), row.from.word(), said(room))
    } else if all > room {
        format!("{times} times {} is {}, where {} is left", said(measure), said(all), said(room))
    } else if all == room {
        format!(
            "{} {} uses all {} up, so the last cut has nothing to cut off",
            times_of(times),
            said(measure),
            said(room)
        )
    } else {
        let (cut, left) = (most + 1, room - most * measure);
        let rest = said(left - measure);
        format!("cut {cut} parts {} into {} and {rest}, neither {} to hold", said(left), said(measure), said(hand.hold))
    };
    let smaller = largest_under(measure, room, times, ruler, hand);
    let help = match (most, smaller) {
        (0, Some(smaller)) => format!("make it {}, or leave the row out", said(smaller)),
        (0, None) => format!("leave the row out, or take sheets {} larger", said((all - room).max(0) + hand.hold)),
        (most, Some(smaller)) => format!("say `{}`, or make it {}", times_of(most), said(smaller)),
        (most, None) => format!("say `{}`", times_of(most)),
    };
    fault(fact, help)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// In 1/16 in: 1/8 at least, under 1/2 is narrow, 1 in to hold (common practice, no source).
    const HAND: Hand = Hand { least: 2, narrow: 8, hold: 16 };

    #[test]
    fn as_many_as_one_cut_after_another_gives() {
        for total in 0..120 {
            for measure in HAND.least..40 {
                let (mut left, mut times) = (total, 0);
                while left > measure && HAND.allows(measure, left - measure) {
                    left -= measure;
                    times += 1;
                }
                assert_eq!(most_times(total, measure, HAND), times, "{measure} from {total}");
            }
        }
        // 5 1/2 in gives 18 slices of 1/4 in: 1 in is left when the last is off.
        assert_eq!(most_times(88, 4, HAND), 18);
    }

    #[test]
    fn the_largest_measure_is_found() {
        for ruler in [1, 3] {
            for total in 0..90 {
                for times in 1..6 {
                    for under in [total + 1, total / 2, 12] {
                        let wanted = (HAND.least..under)
                            .filter(|measure| measure % ruler == 0 && most_times(total, *measure, HAND) >= times)
                            .max();
                        let found = largest_under(under, total, times, ruler, HAND);
                        assert_eq!(found, wanted, "under {under}, {times} times from {total}");
                    }
                }
            }
        }
    }
}
