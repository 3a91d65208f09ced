//! Printed pages under a ruler: poppler's pictures at 600 pixels an inch, every line looked for where it must be.

use super::{A4, LETTER, both, written};
use crate::handout::ink::Grey;
use crate::support::tool;
use trimwright::geometry::Point;
use trimwright::guides::model::{GuideSheet, Line, Role, ScaleBar};

/// Pixels an inch, nanometres a pixel.
const FINE: f64 = 600.0;
const PIXEL: f64 = 25_400_000.0 / FINE;

/// Nothing else lies so near to a line that is measured, nm.
const CLEAR: f64 = 1_300_000.0;

/// A page's picture.
pub(super) fn picture(path: &str, page: u32, folder: &std::path::Path) -> Grey {
    let prefix = folder.join(format!("page-{page}"));
    let number = page.to_string();
    let arguments = ["-r", "600", "-gray", "-singlefile", "-f", &number, "-l", &number, path];
    let _ = tool("pdftoppm", &[&arguments[..], &[&prefix.to_string_lossy()]].concat());
    Grey::read(&std::fs::read(prefix.with_extension("pgm")).expect("a picture"))
}

/// Which way a page is walked.
#[derive(Clone, Copy, PartialEq)]
enum Walk {
    /// To the right at one height.
    Right,
    /// Upward at one place.
    Up,
}

impl Walk {
    /// How far along and where aside a point is, nm.
    fn parts(self, point: Point) -> (f64, f64) {
        match self {
            Self::Right => (point.x as f64, point.y as f64),
            Self::Up => (point.y as f64, point.x as f64),
        }
    }
}

/// Where an edge crosses a walk, how far it is from its nearer end, and how much longer than square to the edge the
/// walk through it is; none where it does not cross.
fn crossing(walk: Walk, aside: f64, (from, to): (Point, Point)) -> Option<(f64, f64, f64)> {
    let ((a0, s0), (a1, s1)) = (walk.parts(from), walk.parts(to));
    if (s0 < aside) == (s1 < aside) {
        return None;
    }
    let share = (aside - s0) / (s1 - s0);
    let along = a0 + share * (a1 - a0);
    let end = (aside - s0).abs().min((aside - s1).abs());
    let slant = (a1 - a0).hypot(s1 - s0) / (s1 - s0).abs();
    Some((along, if (a1 - a0).abs() > (s1 - s0).abs() { 0.0 } else { end }, slant))
}

fn edges(line: &Line) -> impl Iterator<Item = (Point, Point)> {
    let last = if line.closed { line.points.len() } else { line.points.len().saturating_sub(1) };
    (0..last).map(|n| (line.points[n], line.points[(n + 1) % line.points.len()]))
}

/// How far a point of a walk is from an edge at the least, nm.
fn distance((x, y): (f64, f64), (from, to): (Point, Point)) -> f64 {
    let (fx, fy, tx, ty) = (from.x as f64, from.y as f64, to.x as f64, to.y as f64);
    let (dx, dy) = (tx - fx, ty - fy);
    let share = (((x - fx) * dx + (y - fy) * dy) / (dx * dx + dy * dy).max(1.0)).clamp(0.0, 1.0);
    (x - fx - share * dx).hypot(y - fy - share * dy)
}

/// The middle of the ink round a place of a walk, nm; none where there is none, or it does not end.
fn ink(picture: &Grey, walk: Walk, aside: f64, along: f64) -> Option<f64> {
    let tall = picture.height as f64;
    let dark = |step: i64| {
        let (x, y) = match walk {
            Walk::Right => (step as f64, tall - aside / PIXEL),
            Walk::Up => (aside / PIXEL, tall - 1.0 - step as f64),
        };
        picture.row(y as usize).get(x as usize).is_some_and(|value| *value < 128)
    };
    let middle = (along / PIXEL).floor() as i64;
    let reach = (0.8 * CLEAR / PIXEL) as i64;
    let inked: Vec<i64> = (middle - reach..=middle + reach).filter(|step| dark(*step)).collect();
    let (first, last) = (*inked.first()?, *inked.last()?);
    let is_whole = usize::try_from(last - first + 1).ok()? == inked.len();
    (is_whole && first > middle - reach && last < middle + reach)
        .then(|| f64::midpoint(first as f64, last as f64 + 1.0) * PIXEL)
}

/// What is not where a sheet says, to a pixel, and how much was looked at: cut lines one by one, and from each to the
/// next, which are the arms and the openings.
pub(super) fn lines(picture: &Grey, sheet: &GuideSheet) -> (Vec<String>, usize) {
    let (mut faults, mut looked) = (Vec::new(), 0);
    let all: Vec<(Point, Point)> =
        sheet.guides.iter().flat_map(|guide| &guide.lines).flat_map(|line| edges(line).collect::<Vec<_>>()).collect();
    let labels: Vec<(Point, f64)> = sheet
        .guides
        .iter()
        .flat_map(|guide| &guide.labels)
        .map(|label| (label.at, 0.35 * label.size as f64 * label.text.chars().count() as f64 + label.size as f64))
        .collect();
    for guide in &sheet.guides {
        let points = || guide.lines.iter().flat_map(|line| &line.points);
        for walk in [Walk::Right, Walk::Up] {
            let asides = || points().map(|point| walk.parts(*point).1);
            let (low, high) = (asides().fold(f64::MAX, f64::min), asides().fold(f64::MIN, f64::max));
            for part in 0..13 {
                let aside = low + (high - low) * (f64::from(part) + 0.5) / 13.0;
                let cuts = guide.lines.iter().filter(|line| line.role == Role::Cut);
                let mut crossings: Vec<(f64, f64, f64)> = Vec::new();
                for edge in cuts.flat_map(|line| edges(line).collect::<Vec<_>>()) {
                    let Some((along, end, slant)) = crossing(walk, aside, edge) else { continue };
                    let at = if walk == Walk::Right { (along, aside) } else { (aside, along) };
                    let is_clear = all.iter().filter(|other| **other != edge).all(|other| distance(at, *other) > CLEAR)
                        && labels
                            .iter()
                            .all(|(middle, reach)| (middle.x as f64 - at.0).hypot(middle.y as f64 - at.1) > *reach);
                    if end < CLEAR || !is_clear {
                        continue;
                    }
                    match ink(picture, walk, aside, along) {
                        Some(found) => crossings.push((along, found, slant)),
                        None => faults.push(format!("{}: no line at {at:?}", guide.word)),
                    }
                }
                crossings.sort_by(|one, other| one.0.total_cmp(&other.0));
                looked += crossings.len();
                for (along, found, _) in &crossings {
                    if (found - along).abs() > PIXEL {
                        faults.push(format!("{}: {found} instead of {along}", guide.word));
                    }
                }
                for pair in crossings.windows(2) {
                    let (said, found) = (pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
                    // A pixel square to the edges is more than one along a walk that meets them slantwise.
                    if (said - found).abs() > PIXEL * pair[0].2.max(pair[1].2) {
                        faults.push(format!("{}: {found} wide instead of {said}", guide.word));
                    }
                }
            }
        }
    }
    (faults, looked)
}

/// A bar from the middle of its first mark to the middle of its last, nm.
pub(super) fn bar(picture: &Grey, bar: &ScaleBar) -> Option<f64> {
    // End marks reach 2.2 mm over the bar, those between them half as far.
    let aside = (bar.at.y + 1_700_000) as f64;
    let mark = |x: i64| ink(picture, Walk::Right, aside, x as f64);
    Some(mark(bar.at.x + bar.length)? - mark(bar.at.x)?)
}

/// Everything that is measured of a file.
pub(super) fn faults(bytes: &[u8], sheets: &[GuideSheet]) -> (Vec<String>, usize) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = written(bytes, folder.path());
    let (mut faults, mut looked) = (Vec::new(), 0);
    for sheet in sheets {
        let picture = picture(&path, sheet.number, folder.path());
        for said in &sheet.bars {
            match bar(&picture, said) {
                Some(found) if (found - said.length as f64).abs() <= PIXEL => {}
                found => faults.push(format!("the bar of {} is {found:?}", said.label)),
            }
        }
        let (of_page, here) = lines(&picture, sheet);
        faults.extend(of_page);
        looked += here;
    }
    (faults, looked)
}

#[test]
fn every_line_is_true_to_a_pixel_in_both_pdfs() {
    let files: Vec<(&[u8], &[GuideSheet])> =
        both().iter().flat_map(|made| [(&*made.print, &*made.sheets), (&*made.layered, &*made.sheets)]).collect();
    std::thread::scope(|scope| {
        let all: Vec<_> = files.iter().map(|(bytes, sheets)| scope.spawn(|| faults(bytes, sheets))).collect();
        for found in all {
            let (faults, looked) = found.join().expect("it was measured");
            assert!(faults.is_empty() && looked > 150, "{looked} places: {faults:#?}");
        }
    });
}

#[test]
fn a_line_off_its_place_would_be_seen() {
    let mut sheets = LETTER.sheets.clone();
    sheets.truncate(1);
    // Two pixels are 0.085 mm: one opening is moved, one bar is longer.
    sheets[0].guides[0].lines[1].points.iter_mut().for_each(|point| point.x += 85_000);
    sheets[0].bars[1].length += 85_000;
    let (faults, _) = faults(&LETTER.print, &sheets);
    assert!(faults.iter().any(|fault| fault.contains("frame-panel")), "{faults:#?}");
    assert!(faults.iter().any(|fault| fault.contains("5 cm")) && !faults.iter().any(|fault| fault.contains("bow")));
    assert_eq!(A4.sheets[0].bars[0].length, 50_800_000);
}
