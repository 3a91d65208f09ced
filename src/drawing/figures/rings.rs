//! Rings in one column beside a figure, each with a leader to a place where its piece shows.

use crate::drawing::area::Area;
use crate::drawing::canvas::{Canvas, ring_radius};
use crate::drawing::outline::Outline;
use crate::drawing::scene::At;

const UM: i64 = 1000;
/// A leader's dot lies so far inside its piece.
const INSIDE: i64 = 900 * UM;
/// The least distance between two rings of a column: as wished, and closer where it must be.
const PITCHES: [i64; 3] = [7000 * UM, 6000 * UM, 5500 * UM];
const STEP: i64 = 500 * UM;

/// Something to be named by a ring: where it lies and what lies over it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Named {
    /// Its ring number.
    pub(super) ring: u32,
    /// Where each copy lies, and what covers it.
    pub(super) copies: Vec<(Outline, Vec<Outline>)>,
}

impl Named {
    /// The rightmost stretch that shows at height `y`, as its two ends.
    fn shows_at(&self, y: i64) -> Option<(i64, i64)> {
        let near = 600 * UM;
        let mut best: Option<(i64, i64)> = None;
        for (own, above) in &self.copies {
            let mut stretches = match own.plain() {
                Some(area) if area.top + near < y && y < area.bottom - near => vec![(area.left, area.right)],
                Some(_) => continue,
                None => own.inner_stretches(y, near),
            };
            for (left, right) in above.iter().flat_map(|hole| covered_at(hole, y, near)) {
                stretches = stretches
                    .into_iter()
                    .flat_map(|(low, high)| [(low, high.min(left)), (low.max(right), high)])
                    .filter(|(low, high)| high - low > 800 * UM)
                    .collect();
            }
            for stretch in stretches {
                if best.is_none_or(|(_, right)| stretch.1 > right) {
                    best = Some(stretch);
                }
            }
        }
        best
    }

    /// A place for the ring inside the piece itself, clear of what lies over it and of `plates`.
    pub(super) fn spot_inside(&self, plates: &[Area]) -> Option<At> {
        let across = 2 * ring_radius(self.ring) + 1600 * UM;
        self.copies.iter().find_map(|(own, above)| {
            let area = own.area();
            if area.width() < across || area.height() < across {
                return None;
            }
            let inner = area.grown(-across / 2);
            let places = (0..=8).flat_map(|down| (0..=8).map(move |over| (down, over)));
            let clear = places.filter_map(|(down, over)| {
                let at = At::new(inner.left + inner.width() * over / 8, inner.top + inner.height() * down / 8);
                let room = Area::round(at, across, across);
                let covered = above.iter().any(|hole| hole.overlaps(room));
                (own.contains(room) && !covered && !plates.iter().any(|plate| plate.overlaps(room))).then_some(at)
            });
            let middle = area.middle();
            clear.min_by_key(|at| (at.x - middle.x).abs() + (at.y - middle.y).abs())
        })
    }

    /// The dot of a leader that comes from the right at height `y`, and how cramped it is.
    fn dot(&self, y: i64) -> Option<(At, i64)> {
        let (left, right) = self.shows_at(y)?;
        let width = right - left;
        let inside = if width >= 2 * INSIDE { INSIDE } else { width / 2 };
        // A piece shows best where more than a border of it is seen, and nearest to the ring.
        let cramped = if width >= 4000 * UM { 0 } else { 4 };
        Some((At::new(right - inside, y), cramped))
    }
}

/// What something covers at height `y` or `near` it.
fn covered_at(hole: &Outline, y: i64, near: i64) -> Vec<(i64, i64)> {
    match hole.plain() {
        Some(area) if area.top - near <= y && y <= area.bottom + near => vec![(area.left, area.right)],
        Some(_) => Vec::new(),
        None => [y - near, y, y + near].into_iter().flat_map(|y| hole.stretches(y)).collect(),
    }
}

/// One choice for one ring.
#[derive(Debug, Clone, Copy)]
struct Choice {
    dot: At,
    cost: i64,
}

fn choice(named: &Named, ring_y: i64) -> Option<Choice> {
    if let Some((dot, cramped)) = named.dot(ring_y) {
        return Some(Choice { dot, cost: cramped });
    }
    // No level leader: the nearest place that is at least 5 degrees away from level.
    let hull = named.copies.iter().map(|(own, _)| own.area()).reduce(Area::hull)?;
    let mut best: Option<Choice> = None;
    let mut y = hull.top;
    while y <= hull.bottom {
        let away = (y - ring_y).abs();
        if (1500 * UM..=18_000 * UM).contains(&away)
            && let Some((dot, cramped)) = named.dot(y)
        {
            let cost = cramped + 6 + away / UM / 1000;
            if best.is_none_or(|b| cost < b.cost) {
                best = Some(Choice { dot, cost });
            }
        }
        y += STEP / 4;
    }
    best
}

/// A ring of the column: its height, its leader's dot, and who it names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Column {
    ring_y: i64,
    dot: At,
    /// Index into what was to be named.
    pub(super) who: usize,
}

/// Draws a column at `x`.
pub(super) fn put_column(canvas: &mut Canvas, named: &[Named], column: &[Column], x: i64) {
    for Column { ring_y, dot, who } in column {
        let ring = named[*who].ring;
        canvas.ring_with_leader(At::new(x + ring_radius(ring), *ring_y), ring, *dot);
    }
}

/// One ring for each of `named` in a column, heights within `from` and off what is `blocked`; leaders
/// do not cross. Closer together where that places more of them; what finds no place is left out.
pub(super) fn assign(named: &[Named], from: (i64, i64), blocked: &[(i64, i64)]) -> Vec<Column> {
    let tries = PITCHES.map(|pitch| assign_at(named, from, blocked, pitch));
    let most = tries.iter().map(Vec::len).max().unwrap_or(0);
    tries.into_iter().find(|column| column.len() == most).unwrap_or_default()
}

/// A shortest path over (who is placed, height of the last ring), from the top down.
fn assign_at(named: &[Named], from: (i64, i64), blocked: &[(i64, i64)], pitch: i64) -> Vec<Column> {
    // The states double with each ring; a card with more kinds of piece than this names the rest in
    // the pieces themselves or the table.
    let count = named.len().min(10);
    let slots: Vec<i64> = std::iter::successors(Some(from.0), |y| Some(y + STEP))
        .take_while(|y| *y <= from.1)
        .filter(|y| !blocked.iter().any(|(low, high)| low < y && y < high))
        .collect();
    let choices: Vec<Vec<Option<Choice>>> =
        named.iter().take(count).map(|named| slots.iter().map(|y| choice(named, *y)).collect()).collect();
    // best[set][slot]: least cost with exactly `set` placed, the last one at `slot`; with the path.
    type State = Option<(i64, usize, usize, usize)>;
    let sets = 1_usize << count;
    let mut best: Vec<Vec<State>> = vec![vec![None; slots.len()]; sets];
    for first in 0..count {
        for (slot, chosen) in choices[first].iter().enumerate() {
            if let Some(chosen) = chosen {
                let total = chosen.cost * 4 + i64::try_from(slot).unwrap_or(0);
                best[1 << first][slot] = Some((total, first, 0, slot));
            }
        }
    }
    let mut end: (u32, i64, usize, usize) = (0, i64::MAX, 0, 0);
    for set in 1..sets {
        for slot in 0..slots.len() {
            let Some((cost, last, ..)) = best[set][slot] else { continue };
            let placed = set.count_ones();
            if placed > end.0 || (placed == end.0 && cost < end.1) {
                end = (placed, cost, set, slot);
            }
            let Some(last_dot) = choices[last][slot].map(|choice| choice.dot) else { continue };
            for next in (0..count).filter(|next| set & (1 << next) == 0) {
                for later in slot + 1..slots.len() {
                    let drop = slots[later] - slots[slot] - pitch;
                    let Some(chosen) = choices[next][later] else { continue };
                    if drop < 0 || chosen.dot.y <= last_dot.y {
                        continue;
                    }
                    let order = i64::from(named[next].ring < named[last].ring);
                    let total = cost + chosen.cost * 4 + drop / STEP + order;
                    let entry = &mut best[set | (1 << next)][later];
                    if entry.is_none_or(|(old, ..)| total < old) {
                        *entry = Some((total, next, set, slot));
                    }
                }
            }
        }
    }
    let (mut set, mut slot) = (end.2, end.3);
    let mut found = Vec::new();
    while set != 0 {
        let Some((_, who, before, before_slot)) = best[set][slot] else { break };
        if let Some(chosen) = choices[who][slot] {
            found.push(Column { ring_y: slots[slot], dot: chosen.dot, who });
        }
        (set, slot) = (before, before_slot);
    }
    found.reverse();
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: i64 = 1_000_000;

    #[test]
    fn each_dot_lies_in_its_own_piece_and_leaders_do_not_cross() {
        let card = Area::at(0, 0, 54 * MM, 70 * MM);
        let mat = card.grown(-1_600_000);
        let panel = mat.grown(-1_600_000);
        let rail = Area::at(1_600_000, 19 * MM, 50_800_000, 3_200_000);
        let named = [
            Named { ring: 1, copies: vec![(card.into(), vec![mat.into()])] },
            Named { ring: 2, copies: vec![(mat.into(), vec![panel.into(), rail.into()])] },
            Named { ring: 3, copies: vec![(panel.into(), vec![rail.into()])] },
            Named { ring: 4, copies: vec![(rail.into(), vec![])] },
        ];
        let found = assign(&named, (0, 60 * MM), &[(30 * MM, 40 * MM)]);
        assert_eq!(found.len(), 4);
        for pair in found.windows(2) {
            assert!(pair[1].ring_y - pair[0].ring_y >= PITCHES[2] && pair[1].dot.y > pair[0].dot.y);
        }
        for Column { ring_y, dot, who } in found {
            let is_seen =
                |(own, above): &(Outline, Vec<Outline>)| own.holds(dot) && !above.iter().any(|hole| hole.holds(dot));
            assert!(named[who].copies.iter().any(is_seen), "ring {}", named[who].ring);
            assert!(!(30 * MM < ring_y && ring_y < 40 * MM), "off what is blocked");
        }
    }
}
