//! The cuts of a sheet as lines on the page, and which of them share a flag.

use crate::cutting::plan::{CutRow, PartId, SheetPlan};
use crate::drawing::area::Area;
use crate::drawing::canvas::text_area;
use crate::drawing::scale::Frame;
use crate::drawing::scene::{Anchor, At, Lettering};
use crate::drawing::text;
use crate::geometry::{Edge, Point};

const UM: i64 = 1000;
/// A flag's body across its text.
pub(super) const THICK: i64 = 4400 * UM;
/// The tip that touches the cut.
pub(super) const TIP: i64 = 1500 * UM;
/// Two flags are never closer than this.
pub(super) const APART: i64 = 600 * UM;
/// A flag's body is never narrower.
const NARROWEST: i64 = 4870 * UM;

/// One cut as it lies on the page; the first end is the upper or left one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Line {
    /// Its number.
    pub(super) number: u32,
    /// Upper or left end.
    pub(super) from: At,
    /// Lower or right end.
    pub(super) to: At,
}

/// Cuts that share one flag.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Flagged {
    /// What the flag says.
    pub(super) text: String,
    /// The cuts that it is about.
    pub(super) numbers: Vec<u32>,
    /// Whether its cuts run up and down.
    pub(super) upright: bool,
    /// The straight lines it stands for, in the order cut; more than one is a run.
    pub(super) lines: Vec<(At, At)>,
}

impl Flagged {
    /// Width of the flag's body.
    pub(super) fn width(&self) -> i64 {
        // One and two digits share the body that just fits beside a 12 in sheet.
        let padding = if self.text.len() <= 2 { 850 * UM } else { 1500 * UM };
        (text::width(Lettering::Flag, &self.text) + padding).max(NARROWEST)
    }
}

/// The cuts of one row, part by part in the order cut.
fn lines(sheet: &SheetPlan, frame: Frame, row: &CutRow) -> Vec<(PartId, Vec<Line>)> {
    let mut number = row.n;
    let mut found = Vec::new();
    for part in &row.parts {
        let slices: Vec<PartId> =
            row.gives.iter().copied().filter(|id| sheet.part(*id).parent == Some(*part)).collect();
        let cuts = slices.len().saturating_sub(1);
        let whole = sheet.part(*part).rect;
        let mut own = Vec::new();
        for slice in &slices[..cuts] {
            let slice = sheet.part(*slice).rect;
            let at = slice.edge(row.from.opposite());
            let (from, to) = if row.from.is_side() {
                (Point { x: at, y: whole.top }, Point { x: at, y: whole.bottom })
            } else {
                (Point { x: whole.left, y: at }, Point { x: whole.right, y: at })
            };
            own.push(Line { number, from: frame.point(from), to: frame.point(to) });
            number += 1;
        }
        found.push((*part, own));
    }
    found
}

/// Every cut of the sheet, and the flags.
pub(super) fn read(sheet: &SheetPlan, frame: Frame) -> (Vec<Line>, Vec<Flagged>) {
    let (mut all, mut flags) = (Vec::new(), Vec::new());
    for row in &sheet.cuts {
        let of_parts = lines(sheet, frame, row);
        all.extend(of_parts.iter().flat_map(|(_, own)| own.iter().copied()));
        flags.extend(share(row, frame.scale.length(row.measure.nm()), of_parts));
    }
    (all, flags)
}

/// Numbers of cuts, and the lines they lie on.
type Group = (Vec<u32>, Vec<(At, At)>);

fn share(row: &CutRow, pitch: i64, of_parts: Vec<(PartId, Vec<Line>)>) -> Vec<Flagged> {
    let upright = row.from.is_side();
    let last = row.n + row.cuts.saturating_sub(1);
    let widest = text_area(Lettering::Flag, At::new(0, 0), Anchor::Start, false, &last.to_string()).width() + 850 * UM;
    let each = if upright { widest.max(NARROWEST) } else { THICK };
    let is_run = pitch < each + APART;
    // Groups of cuts: (numbers, lines).
    let mut groups: Vec<Group> = Vec::new();
    for (_, own) in of_parts {
        let own_groups: Vec<Vec<Line>> =
            if is_run { vec![own] } else { own.into_iter().map(|line| vec![line]).collect() };
        for group in own_groups.into_iter().filter(|group| !group.is_empty()) {
            let numbers = group.iter().map(|line| line.number);
            let lines: Vec<(At, At)> = group.iter().map(|line| (line.from, line.to)).collect();
            // The same straight lines carried on through the next part share the flag.
            let same = groups.iter_mut().find(|(_, other)| {
                other.len() == lines.len() && other.iter().zip(&lines).all(|(one, next)| carries_on(*one, *next))
            });
            match same {
                Some((other_numbers, other)) => {
                    other_numbers.extend(numbers);
                    for (one, next) in other.iter_mut().zip(&lines) {
                        *one = joined(*one, *next);
                    }
                }
                None => groups.push((numbers.collect(), lines)),
            }
        }
    }
    // Lines that many strips share would need long lists: neighbours with the same ends become one
    // run, whose numbers follow one another.
    let mut merged: Vec<Group> = Vec::new();
    for (numbers, lines) in groups {
        let near = merged.last_mut().filter(|(before, other)| {
            numbers.len() > 2 && before.len() > 2 && has_same_ends(other[other.len() - 1], lines[0])
        });
        match near {
            Some((before, other)) => {
                before.extend(numbers);
                other.extend(lines);
            }
            None => merged.push((numbers, lines)),
        }
    }
    merged
        .into_iter()
        .map(|(mut numbers, lines)| {
            numbers.sort_unstable();
            Flagged { text: told(&numbers), numbers, upright, lines }
        })
        .collect()
}

/// Whether two parallel lines begin and end level with each other.
fn has_same_ends(one: (At, At), other: (At, At)) -> bool {
    let is_upright = one.0.x == one.1.x;
    if is_upright { one.0.y == other.0.y && one.1.y == other.1.y } else { one.0.x == other.0.x && one.1.x == other.1.x }
}

/// `3`, `3, 5`, `9–19`, `3–5, 9`: three or more that follow one another as a range.
pub(super) fn told(numbers: &[u32]) -> String {
    let mut ranges: Vec<(u32, u32)> = Vec::new();
    for number in numbers {
        match ranges.last_mut() {
            Some((_, last)) if *last + 1 == *number => *last = *number,
            _ => ranges.push((*number, *number)),
        }
    }
    let each: Vec<String> = ranges
        .into_iter()
        .map(|(first, last)| match last - first {
            0 => first.to_string(),
            1 => format!("{first}, {last}"),
            _ => format!("{first}–{last}"),
        })
        .collect();
    each.join(", ")
}

fn carries_on(one: (At, At), next: (At, At)) -> bool {
    let straight = (one.0.x == one.1.x && one.0.x == next.0.x && one.0.x == next.1.x)
        || (one.0.y == one.1.y && one.0.y == next.0.y && one.0.y == next.1.y);
    straight && (one.1 == next.0 || next.1 == one.0)
}

fn joined(one: (At, At), next: (At, At)) -> (At, At) {
    if one.1 == next.0 { (one.0, next.1) } else { (next.0, one.1) }
}

/// Which edges of the sheet an end of a line lies on.
pub(super) fn edge_at(sheet: Area, at: At, upright: bool) -> Option<Edge> {
    if upright {
        if at.y == sheet.top {
            Some(Edge::Top)
        } else if at.y == sheet.bottom {
            Some(Edge::Bottom)
        } else {
            None
        }
    } else if at.x == sheet.left {
        Some(Edge::Left)
    } else if at.x == sheet.right {
        Some(Edge::Right)
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn flags_tell_numbers_as_a_reader_does() {
        assert_eq!(told(&[3]), "3");
        assert_eq!(told(&[8, 9]), "8, 9");
        assert_eq!(told(&[9, 10, 11]), "9–11");
        assert_eq!(told(&[3, 5, 7]), "3, 5, 7");
        assert_eq!(told(&[3, 4, 5, 9]), "3–5, 9");
    }
}
