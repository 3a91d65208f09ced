//! The fewest cuts of one sheet against a brute force over every edge-to-edge pattern, and designs
//! of several versions and papers whose sheets do not suffice.

use super::{Seeded, splits};
use crate::support::run;
use std::collections::BTreeMap;
use trimwright::cutting::search::problem::{Hand, Kind, Problem};
use trimwright::cutting::search::sheet::{Fit, Limits, cut_sheet};
use trimwright::cutting::verify::verify;

/// Parts that a sheet ends in at the least, by trying every whole cut. A sheet cut into `n` parts
/// took `n - 1` cuts.
struct Parts {
    kinds: Vec<(i64, i64, bool)>,
    hand: Option<(i64, i64)>,
    seen: BTreeMap<(i64, i64, Vec<u8>), Option<u32>>,
}

impl Parts {
    fn may(&self, one: i64, other: i64) -> bool {
        self.hand.is_none_or(|(narrow, hold)| one.min(other) >= narrow || one.max(other) >= hold)
    }

    fn fewest(&mut self, width: i64, height: i64, wanted: &[u8]) -> Option<u32> {
        let pieces: u32 = wanted.iter().map(|n| u32::from(*n)).sum();
        if pieces == 0 {
            return Some(1);
        }
        let area: i64 = wanted.iter().zip(&self.kinds).map(|(n, (w, h, _))| i64::from(*n) * w * h).sum();
        if area > width * height {
            return None;
        }
        let one = wanted.iter().position(|n| *n > 0).unwrap_or(0);
        let (w, h, turns) = self.kinds[one];
        if pieces == 1 && ((w, h) == (width, height) || (turns && (h, w) == (width, height))) {
            return Some(1);
        }
        let key = (width, height, wanted.to_vec());
        if let Some(known) = self.seen.get(&key) {
            return *known;
        }
        let across = (1..width).filter(|&at| self.may(at, width - at)).map(|at| ((at, height), (width - at, height)));
        let up = (1..height).filter(|&at| self.may(at, height - at)).map(|at| ((width, at), (width, height - at)));
        let cuts: Vec<_> = across.chain(up).collect();
        let mut best: Option<u32> = None;
        for some in splits(wanted) {
            let others: Vec<u8> = wanted.iter().zip(&some).map(|(all, some)| all - some).collect();
            for (first, rest) in &cuts {
                let first = self.fewest(first.0, first.1, &some);
                let Some(first) = first.filter(|&parts| best.is_none_or(|best| parts < best)) else { continue };
                if let Some(rest) = self.fewest(rest.0, rest.1, &others) {
                    best = Some(best.map_or(first + rest, |best| best.min(first + rest)));
                }
            }
        }
        self.seen.insert(key, best);
        best
    }
}

#[test]
fn an_independent_brute_force_agrees_on_the_fewest_cuts() {
    let mut random = Seeded(97);
    let (mut cut, mut refused, mut held_back) = (0, 0, 0);
    for case in 0..1_000 {
        let (width, height) = (3 + random.under(8) as i64, 3 + random.under(8) as i64);
        let narrow = 1 + random.under(3) as i64;
        let hand = (random.under(3) > 0).then(|| (narrow, narrow + random.under(3) as i64));
        let kinds: Vec<Kind> = (0..1 + random.under(4))
            .map(|_| Kind {
                width: 1 + random.under(width as u64) as i64,
                height: 1 + random.under(height as u64) as i64,
                quarter: random.under(2) == 0,
                wanted: 1 + random.under(3) as u32,
            })
            .collect();
        let wanted: Vec<u8> = kinds.iter().map(|kind| kind.wanted as u8).collect();
        let pieces: u32 = kinds.iter().map(|kind| kind.wanted).sum();
        let sizes = |kinds: &[Kind]| kinds.iter().map(|kind| (kind.width, kind.height, kind.quarter)).collect();
        let mut brute = Parts { kinds: sizes(&kinds), hand, seen: BTreeMap::new() };
        let fewest = brute.fewest(width, height, &wanted);
        let hand = hand.map(|(narrow, hold)| Hand { least: 1, narrow, hold });
        let problem = Problem { width, height, kinds, hand };
        match (cut_sheet(&problem, &Limits::default()), fewest) {
            (Fit::Yes(found), Some(fewest)) => {
                cut += 1;
                for way in &found.ways {
                    assert_eq!(way.leaves().len(), fewest as usize, "case {case}: {problem:?}");
                }
                assert_eq!(pieces + found.least_leftovers, fewest, "case {case}: proven so: {problem:?}");
                let mut free = Parts { kinds: sizes(&problem.kinds), hand: None, seen: BTreeMap::new() };
                held_back += u32::from(free.fewest(width, height, &wanted) != Some(fewest));
            }
            (Fit::No, None) => refused += 1,
            (fit, fewest) => panic!("case {case}: {fit:?} where {fewest:?} is the fewest: {problem:?}"),
        }
    }
    // The rules of the hand must have mattered, or nothing was shown about them.
    assert!(cut > 150 && refused > 300 && held_back > 0, "{cut} cut, {refused} refused, {held_back} held back");
}

/// A design of two papers that swap parts, with more wanted than there is.
fn short_design(random: &mut Seeded) -> String {
    let mut text = String::new();
    let cards: Vec<u64> = (0..3).map(|_| 1 + random.under(4)).collect();
    text.push_str(&format!("cards: {}\npapers:\n", cards.iter().sum::<u64>()));
    for paper in ["dawn", "dusk"] {
        let (width, height) = (90 + 6 * random.under(30), 90 + 6 * random.under(30));
        text.push_str(&format!("  {paper}:\n    sheets: {} of {width} x {height} mm\n", 1 + random.under(2)));
        if random.under(3) == 0 {
            text.push_str("    pattern: one-way\n    edge strip: 13 mm at the top, within\n");
        }
    }
    text.push_str("pieces:\n");
    for (piece, from) in [("panel", "varies"), ("flag", "varies"), ("strip", "dawn"), ("mat", "dusk")] {
        let (width, height) = (6 * (1 + random.under(20)), 6 * (1 + random.under(20)));
        let each = 1 + random.under(3);
        text.push_str(&format!(
            "  {piece}:\n    size: {width} x {height} mm\n    from: {from}\n    per card: {each}\n"
        ));
    }
    text.push_str("versions:\n");
    // Two versions take the same pieces from the same paper, so one of them goes short first.
    let papers = [("one", "dawn", "dusk"), ("two", "dusk", "dawn"), ("three", "dawn", "dusk")];
    for ((name, panel, flag), cards) in papers.into_iter().zip(cards) {
        text.push_str(&format!("  - name: {name}\n    cards: {cards}\n    papers: {{panel: {panel}, flag: {flag}}}\n"));
    }
    text
}

#[test]
fn a_plan_that_goes_short_still_makes_the_cards_it_says() {
    let mut random = Seeded(4);
    let (mut short, mut some) = (0, 0);
    for case in 0..40 {
        let text = short_design(&mut random);
        let outcome = run(&text);
        let project = outcome.editions.first().unwrap_or_else(|| panic!("{text}\n{:?}", outcome.findings));
        // The referee counts the cards that the pieces make, version by version.
        assert_eq!(verify(&project.design, &project.plan), [], "case {case}\n{text}");
        let plan = &project.plan;
        assert_eq!(plan.missing.is_empty(), plan.cards == project.design.cards.value, "case {case}\n{text}");
        if !plan.missing.is_empty() {
            short += 1;
            some += u32::from(plan.cards > 0);
            assert_eq!(plan.most, Some(plan.cards), "case {case}\n{text}");
        }
    }
    assert!(short > 15 && some > 5, "{short} short, {some} of them with some cards");
}

#[test]
fn the_version_that_can_be_made_keeps_its_pieces() {
    // Two panels fit for four cards; of the first version no flags can be cut, so the two cards that
    // can be made are of the second, and the first goes without panels.
    let text = "\
cards: 4
papers:
  dawn:
    sheets: 1 of 100 x 100 mm
  dusk:
    sheets: 1 of 50 x 50 mm
  night:
    sheets: 1 of 100 x 100 mm
pieces:
  flag:
    size: 45 x 45 mm
    from: varies
    per card: 2
  panel:
    size: 100 x 50 mm
    from: varies
    per card: 1
versions:
  - name: one
    cards: 2
    papers: {flag: dusk, panel: dawn}
  - name: two
    cards: 2
    papers: {flag: night, panel: dawn}
";
    let outcome = run(text);
    let project = outcome.editions.first().unwrap_or_else(|| panic!("{:?}", outcome.findings));
    assert_eq!(verify(&project.design, &project.plan), []);
    assert_eq!((project.plan.cards, project.plan.aims.cards.proven), (2, true));
    let missing: Vec<u32> = project.plan.missing.iter().map(|missing| missing.count).collect();
    assert_eq!(missing, [2, 3], "two panels, three flags");
}
