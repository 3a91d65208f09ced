//! A guide larger than the page, in parts that are joined edge to edge.
//!
//! Parts lie between straight lines across the guide. Where a line crosses the paper of the guide, marks stand on
//! both sides that meet when the parts lie right, with one number for both.

use super::draft::{Draft, Known, cut_along, lettered, open};
use super::model::{Label, Line, Role};
use crate::geometry::{Place, Point, Polygon, Rect, Region};
use crate::words::{Words, guides};

/// How long a joining mark is.
const MARK: i64 = 5_000_000;
/// A joint so long has two marks.
const LONG: i64 = 20_000_000;
/// The numbers of joints, 9 pt: no letter of a page is smaller.
const NUMBER: i64 = 3_175_000;
/// A line keeps so far from corners and letters where it can.
const CLEAR: i64 = 12_000_000;
/// Places for a line are tried so far apart.
const STEP: i64 = 500_000;

/// The parts of a guide whose paper is `body`, none larger than one of the `limits` (width, height), in order from
/// the lower left; the guide itself where it needs no parting. Open lines go to the part that they begin in.
pub(super) fn split(say: &Words, draft: &Draft, body: &Region, limits: &[(i64, i64)]) -> Vec<Draft> {
    let Some(bounds) = body.bounds() else { return Vec::new() };
    let counts = |(width, height): &(i64, i64)| {
        let times = |whole: i64, most: i64| (whole + most - 1) / most.max(1);
        (times(bounds.width(), *width), times(bounds.height(), *height))
    };
    let best = limits.iter().min_by_key(|limit| counts(limit).0 * counts(limit).1);
    let Some((limit, (columns, rows))) = best.map(|limit| (limit, counts(limit))) else { return Vec::new() };
    if columns * rows == 1 {
        return vec![draft.clone()];
    }
    let (across, up) = obstacles(draft, body);
    let xs = lines_between((bounds.left, bounds.right), columns, limit.0, &across);
    let ys = lines_between((bounds.bottom, bounds.top), rows, limit.1, &up);
    let parts = cells(bounds, &xs, &ys).into_iter().flat_map(|cell| {
        let own = body.intersection(&Region::from(cell));
        own.parts().to_vec()
    });
    let parts: Vec<Polygon> = parts.collect();
    let mut drafts: Vec<Draft> = (1..)
        .zip(&parts)
        .map(|(number, part)| {
            let title = guides::part(say, &draft.title, number, parts.len());
            let mut known = draft.known.clone();
            known.push(Known::Part);
            Draft {
                word: format!("{}-part-{number}", draft.word),
                alt: draft.alt.replacen(&draft.title, &title, 1),
                title,
                notes: draft.notes.clone(),
                known,
                lines: cut_along(part),
                labels: Vec::new(),
            }
        })
        .collect();
    let owner = |at: Point| {
        let within = |part: &Polygon| part.place_of(at) != Place::Outside;
        parts.iter().position(within).or_else(|| parts.iter().position(|part| holds(part.bounds(), at))).unwrap_or(0)
    };
    for line in draft.lines.iter().filter(|line| !line.closed) {
        if let Some(first) = line.points.first() {
            drafts[owner(*first)].lines.push(line.clone());
        }
    }
    for label in &draft.labels {
        drafts[owner(label.at)].labels.push(label.clone());
    }
    let mut number = 0;
    for (is_upright, at) in xs.iter().map(|x| (true, *x)).chain(ys.iter().map(|y| (false, *y))) {
        let crossed = if is_upright { &ys } else { &xs };
        for (low, high) in joints(body, is_upright, at, crossed) {
            number += 1;
            for side in [-1, 1] {
                mark(&mut drafts, owner, (is_upright, at, side), (low, high), number);
            }
        }
    }
    drafts
}

/// Draws the marks of one joint on one side of it.
fn mark(
    drafts: &mut [Draft],
    owner: impl Fn(Point) -> usize,
    (is_upright, at, side): (bool, i64, i64),
    (low, high): (i64, i64),
    number: u32,
) {
    let point =
        |along: i64, off: i64| if is_upright { Point::new(at + off, along) } else { Point::new(along, at + off) };
    let middle = (low + high) / 2;
    let places = if high - low >= LONG { vec![(low + middle) / 2, (middle + high) / 2] } else { vec![middle] };
    let part = owner(point(middle, side * 10_000));
    for place in places {
        drafts[part].lines.push(open(Role::Draw, vec![point(place, 0), point(place, side * MARK)]));
        let beside = point(place, side * MARK / 2);
        let at = if is_upright { beside.moved(0, 600_000) } else { beside.moved(NUMBER / 2, -NUMBER / 3) };
        drafts[part].labels.push(Label { text: number.to_string(), at, size: NUMBER, turned: false, bold: false });
    }
}

fn holds(rect: Rect, at: Point) -> bool {
    rect.contains(Rect::between(at, at))
}

/// Stretches along x and along y that no line should come near.
type Obstacles = (Vec<(i64, i64)>, Vec<(i64, i64)>);

fn obstacles(draft: &Draft, body: &Region) -> Obstacles {
    let corners = body.parts().iter().flat_map(Polygon::rings).flatten().map(|point| Rect::between(*point, *point));
    let of_line = |line: &Line| line.points.iter().map(|point| Rect::between(*point, *point)).reduce(Rect::hull);
    let lines = draft.lines.iter().filter(|line| !line.closed).filter_map(of_line);
    let letters = draft.labels.iter().map(lettered);
    let all: Vec<Rect> = corners.chain(lines).chain(letters).collect();
    (all.iter().map(|rect| (rect.left, rect.right)).collect(), all.iter().map(|rect| (rect.bottom, rect.top)).collect())
}

/// Places for the lines between parts of a stretch, none longer than `most`: as far as [`CLEAR`] from obstacles,
/// then as evenly as that allows.
fn lines_between((from, to): (i64, i64), parts: i64, most: i64, obstacles: &[(i64, i64)]) -> Vec<i64> {
    let mut lines: Vec<i64> = Vec::new();
    for number in 1..parts {
        let before = lines.last().copied().unwrap_or(from);
        // What is left must hold in the parts that follow.
        let (least, farthest) = ((to - (parts - number) * most).max(before + 1), (before + most).min(to - 1));
        let even = before + (to - before) / (parts - number + 1);
        let clear = |at: i64| {
            let away = obstacles.iter().map(|(low, high)| (low - at).max(at - high).max(0));
            away.min().unwrap_or(CLEAR).min(CLEAR)
        };
        let tried = (0..=(farthest - least) / STEP).map(|step| least + step * STEP);
        let tried = tried.chain([farthest, even.clamp(least, farthest)]);
        let best = tried.max_by_key(|at| (clear(*at), std::cmp::Reverse((at - even).abs())));
        lines.push(best.unwrap_or(even));
    }
    lines
}

/// The rectangles between lines, row by row from the lower left.
fn cells(bounds: Rect, xs: &[i64], ys: &[i64]) -> Vec<Rect> {
    let between = |from: i64, lines: &[i64], to: i64| -> Vec<(i64, i64)> {
        let ends: Vec<i64> = std::iter::once(from).chain(lines.iter().copied()).chain([to]).collect();
        ends.windows(2).map(|pair| (pair[0], pair[1])).collect()
    };
    let columns = between(bounds.left, xs, bounds.right);
    let rows = between(bounds.bottom, ys, bounds.top);
    let cell = |(bottom, top): (i64, i64), (left, right): (i64, i64)| Rect { left, bottom, right, top };
    rows.iter().flat_map(|row| columns.iter().map(move |column| cell(*row, *column))).collect()
}

/// Where a line runs over the paper of a guide, parted at the lines that cross it.
fn joints(body: &Region, is_upright: bool, at: i64, crossed: &[i64]) -> Vec<(i64, i64)> {
    let mut places: Vec<i64> = Vec::new();
    for ring in body.parts().iter().flat_map(Polygon::rings) {
        for (here, next) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            let of = |point: &Point| if is_upright { (point.x, point.y) } else { (point.y, point.x) };
            let ((from, low), (to, high)) = (of(here), of(next));
            if (from <= at) != (to <= at) {
                let share = i128::from(high - low) * i128::from(at - from) / i128::from(to - from);
                places.push(low + i64::try_from(share).unwrap_or(0));
            }
        }
    }
    places.sort_unstable();
    let mut joints = Vec::new();
    for pair in places.chunks_exact(2) {
        let mut low = pair[0];
        for line in crossed.iter().copied().filter(|line| pair[0] < *line && *line < pair[1]) {
            joints.push((low, line));
            low = line;
        }
        joints.push((low, pair[1]));
    }
    joints
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    const MM: i64 = 1_000_000;

    fn draft(body: &Region) -> Draft {
        Draft {
            word: "frame".to_owned(),
            title: "Frame".to_owned(),
            notes: Vec::new(),
            alt: "Frame.".to_owned(),
            known: vec![Known::Frame],
            lines: body.parts().iter().flat_map(cut_along).collect(),
            labels: Vec::new(),
        }
    }

    fn parted(body: &Region, limits: &[(i64, i64)]) -> Vec<Draft> {
        split(Words::of(Language::ENGLISH), &draft(body), body, limits)
    }

    fn area_of(part: &Draft) -> Polygon {
        let outer = part.lines.iter().find(|line| line.closed).map(|line| line.points.clone());
        Polygon::new(outer.unwrap_or_default()).unwrap()
    }

    #[test]
    fn parts_cover_the_whole_and_their_marks_meet() {
        let whole = Rect::at(0, 0, 240 * MM, 250 * MM);
        let hole = Region::from(Rect::at(60 * MM, 100 * MM, 90 * MM, 80 * MM));
        let body = Region::from(whole).difference(&hole);
        let parts = parted(&body, &[(184 * MM, 190 * MM), (190 * MM, 184 * MM)]);
        assert_eq!(parts.len(), 4);
        let polygons: Vec<Polygon> = parts.iter().map(area_of).collect();
        assert_eq!(Region::covered_by(&polygons), body);
        assert_eq!(polygons.iter().map(Polygon::area2).sum::<i128>(), body.area2(), "none lies on another");
        for part in &parts {
            let size = part.drawn();
            assert!(size.width() <= 190 * MM && size.height() <= 190 * MM, "{size:?}");
        }
        // Every mark begins at the joint, where its other half begins too.
        let mut begins: Vec<Point> = parts
            .iter()
            .flat_map(|part| &part.lines)
            .filter(|line| line.role == Role::Draw)
            .map(|line| line.points[0])
            .collect();
        assert!(!begins.is_empty());
        begins.sort_unstable();
        for pair in begins.chunks(2) {
            assert_eq!(pair[0], pair[1]);
        }
    }

    #[test]
    fn what_fits_is_left_whole() {
        let body = Region::from(Rect::at(0, 0, 100 * MM, 100 * MM));
        assert_eq!(parted(&body, &[(100 * MM, 100 * MM)]).len(), 1);
    }
}
