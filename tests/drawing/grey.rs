//! Papers told apart in grey: every hatch is rendered, and any two differ in tone or in structure.

use resvg::tiny_skia::Pixmap;
use trimwright::design::model::{Paper, Pattern};
use trimwright::drawing::area::Area;
use trimwright::drawing::hatch::{Hatch, hatch_of};
use trimwright::drawing::scene::{Item, Role, Scene};
use trimwright::preview;

const ALL: [Hatch; 8] = [
    Hatch::None,
    Hatch::Chevrons,
    Hatch::Pins,
    Hatch::Dots,
    Hatch::Diagonals,
    Hatch::Grid,
    Hatch::Broken,
    Hatch::Rings,
];

/// A piece of 19 x 25 mm, one of 5 x 9 mm, and a swatch, in tenths of a millimetre.
const SIZES: [(i64, i64); 3] = [(190, 250), (50, 90), (80, 40)];
/// Pixels a millimetre: about 300 dpi, as a home printer at least draws.
const DENSE: i64 = 12;

/// What is left of a hatch in grey, its outline aside.
struct Seen {
    /// Mean darkness, thousandths.
    tone: i64,
    /// Of all edges of ink, how many run level, upright, rising and falling to the right, thousandths.
    runs: [i64; 4],
    /// Separate spots of ink in a square centimetre.
    spots: i64,
}

fn seen(hatch: Hatch, (width, height): (i64, i64)) -> Seen {
    let (width, height) = (width * 100_000, height * 100_000);
    let mut items = vec![Item::Box { role: Role::Cover, at: super::At::new(0, 0), width, height, radius: 0 }];
    items.extend(hatch.fill(Area::at(0, 0, width, height), 0, &[]));
    let scene = Scene { name: "hatch".to_owned(), width, height, scale: None, alt: "A hatch.".to_owned(), items };
    let pixels = u32::try_from(width * DENSE / 1_000_000).unwrap();
    let map = Pixmap::decode_png(&preview::png(&scene, pixels).unwrap()).unwrap();
    let (wide, high) = (map.width() as usize, map.height() as usize);
    // Luma of ITU-R BT.601, as grey printing and copying weigh colours: 0.299 R + 0.587 G + 0.114 B.
    let dark: Vec<i64> = map
        .pixels()
        .iter()
        .map(|p| 255_000 - (299 * i64::from(p.red()) + 587 * i64::from(p.green()) + 114 * i64::from(p.blue())))
        .collect();
    let at = |x: usize, y: usize| dark[y * wide + x];
    let tone = dark.iter().sum::<i64>() / 255 / i64::try_from(dark.len()).unwrap();
    let mut runs = [0_i64; 4];
    for y in 1..high - 1 {
        for x in 1..wide - 1 {
            let (across, down) = (at(x + 1, y) - at(x - 1, y), at(x, y + 1) - at(x, y - 1));
            let (a, d) = (across.abs(), down.abs());
            // Ink runs across its steepest change.
            let which = if a > 2 * d {
                1
            } else if d > 2 * a {
                0
            } else if (across < 0) == (down < 0) {
                2
            } else {
                3
            };
            runs[which] += a + d;
        }
    }
    let all = runs.iter().sum::<i64>().max(1);
    let square = i64::try_from(wide * high).unwrap();
    let spots = spots(&dark, wide, high) * 100 * DENSE * DENSE / square;
    Seen { tone, runs: runs.map(|run| run * 1000 / all), spots }
}

/// Connected spots of ink.
fn spots(dark: &[i64], wide: usize, high: usize) -> i64 {
    let mut is_ink: Vec<bool> = dark.iter().map(|dark| *dark > 60_000).collect();
    let mut count = 0;
    for start in 0..is_ink.len() {
        if !is_ink[start] {
            continue;
        }
        count += 1;
        let mut open = vec![start];
        is_ink[start] = false;
        while let Some(at) = open.pop() {
            let (x, y) = (at % wide, at / wide);
            for (dx, dy) in [(0, 1), (1, 0), (1, 1), (1, 2), (2, 1), (0, 2), (2, 0), (0, 0), (2, 2)] {
                let (x, y) = (x + dx, y + dy);
                if (1..=wide).contains(&x) && (1..=high).contains(&y) {
                    let next = (y - 1) * wide + x - 1;
                    if is_ink[next] {
                        is_ink[next] = false;
                        open.push(next);
                    }
                }
            }
        }
    }
    count
}

/// How two hatches differ, if a reader sees it: one is plain white, one is half as dark again, its ink runs
/// otherwise, or it falls into another number of spots.
fn difference(one: &Seen, other: &Seen) -> Option<String> {
    let (low, high) = (one.tone.min(other.tone), one.tone.max(other.tone));
    if low == 0 && high >= 15 {
        return Some("one is white".to_owned());
    }
    if high >= low * 3 / 2 && high >= low + 15 {
        return Some(format!("tone {} and {}", one.tone, other.tone));
    }
    let apart: i64 = one.runs.iter().zip(other.runs).map(|(one, other)| (one - other).abs()).sum();
    if apart >= 300 {
        return Some(format!("direction {:?} and {:?}", one.runs, other.runs));
    }
    let (few, many) = (one.spots.min(other.spots), one.spots.max(other.spots));
    (many >= few * 3 / 2 + 2).then(|| format!("{} and {} spots", one.spots, other.spots))
}

#[test]
fn any_two_hatches_are_told_apart_in_grey() {
    for size in SIZES {
        let seen: Vec<Seen> = ALL.iter().map(|hatch| seen(*hatch, size)).collect();
        for n in 0..ALL.len() {
            for m in 0..n {
                assert!(difference(&seen[n], &seen[m]).is_some(), "{:?} and {:?} at {size:?}", ALL[m], ALL[n]);
            }
        }
    }
}

/// A hatch is no other hatch, and not itself.
#[test]
fn a_hatch_does_not_differ_from_itself() {
    for size in SIZES {
        for hatch in ALL {
            assert_eq!(difference(&seen(hatch, size), &seen(hatch, size)), None, "{hatch:?}");
        }
    }
}

#[test]
fn eight_papers_of_a_design_have_eight_hatches() {
    let mut design = super::fixture::lantern_row().design;
    let plain = design.papers[1].clone();
    for n in design.papers.len()..8 {
        design.papers.push(Paper { name: format!("paper {n}"), pattern: Pattern::Any, ..plain.clone() });
    }
    let mut given: Vec<Hatch> = design.paper_ids().map(|paper| hatch_of(&design, paper)).collect();
    given.sort_unstable();
    given.dedup();
    assert_eq!(given.len(), 8);
}
