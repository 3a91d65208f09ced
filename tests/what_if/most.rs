//! The most cards, against arithmetic and a brute force over all trees of cuts.

use crate::support::{run, trimwright};
use std::collections::{BTreeMap, BTreeSet};
use trimwright::cutting::search::Known;
use trimwright::cutting::search::most::{Most, plan_most, share};
use trimwright::cutting::search::sheet::Limits;
use trimwright::cutting::verify::verify;
use trimwright::design::model::Design;

fn design(text: &str) -> Design {
    let outcome = run(text);
    outcome.editions.into_iter().next().unwrap_or_else(|| panic!("{:#?}", outcome.findings)).design
}

/// The most cards of a design, their plan replayed.
fn most_of(text: &str) -> Most {
    let (planned, plan, most) = plan_most(&design(text), &Limits::default(), &mut Known::default());
    assert_eq!(verify(&planned, &plan), [], "{text}");
    assert_eq!((plan.cards, plan.most), (most.found, Some(most.found)));
    assert_eq!(planned.cards.value, most.share.iter().sum::<u32>());
    most
}

/// The method of largest remainders on three states of 6, 6 and 2 (the Alabama paradox as it is
/// commonly shown, from memory): ten seats are 4, 4 and 2, eleven are 5, 5 and 1.
#[test]
fn cards_are_shared_by_the_largest_remainder() {
    assert_eq!(share(&[6, 6, 2], 10), [4, 4, 2]);
    assert_eq!(share(&[6, 6, 2], 11), [5, 5, 1]);
    assert_eq!(share(&[4, 4], 9), [5, 4], "the earlier version where two are equal");
    assert_eq!(share(&[1, 1, 1], 2), [1, 1, 0]);
    assert_eq!(share(&[5], 0), [0]);
    for cards in 0..200 {
        assert_eq!(share(&[3, 8, 1], cards).iter().sum::<u32>(), cards);
    }
}

/// By hand: 8 1/2 x 11 in holds two by two of 4 x 5 in; five would need 100 of 93 1/2 sq in.
#[test]
fn more_or_fewer_than_are_asked_for() {
    for asked in [1, 3, 8, 40] {
        let text = format!(
            "cards: {asked}\npapers:\n  white: {{sheets: 2 of letter}}\npieces:\n  panel: {{size: 4 x 5 in, from: white, per card: 1}}\n"
        );
        let most = most_of(&text);
        assert_eq!((most.found, most.bound), (8, 8), "asked for {asked}");
    }
}

/// The paper of the third version gives one panel. Ten cards need two of it, eleven need one: eleven
/// come out, though ten do not.
#[test]
fn a_share_that_falls_as_the_cards_grow_leaves_no_gap() {
    let text = "cards: 14\npapers:\n  oak: {sheets: 9 of 6 x 6 in}\n  elm: {sheets: 9 of 6 x 6 in}\n  ash: {sheets: 1 of 6 x 6 in}\n\
                pieces:\n  panel: {size: 4 x 5 in, from: varies, per card: 1}\n\
                versions:\n  - {name: oak, cards: 6, papers: {panel: oak}}\n  - {name: elm, cards: 6, papers: {panel: elm}}\n\
                \x20 - {name: ash, cards: 2, papers: {panel: ash}}\n";
    let most = most_of(text);
    assert_eq!((most.found, most.bound), (11, 11));
    assert_eq!(most.share, [5, 5, 1]);
}

#[test]
fn not_one_card() {
    let most = most_of(
        "cards: 2\npapers:\n  white: {sheets: 2 of letter}\npieces:\n  panel: {size: 9 x 12 in, from: white, per card: 1}\n",
    );
    assert_eq!((most.found, most.bound), (0, 0));
}

/// Counts far past anything that can be searched still end soon.
#[test]
fn very_many() {
    let most = most_of(
        "cards: 9\npapers:\n  white: {sheets: 5000 of letter}\npieces:\n  panel: {size: 8 1/2 x 5 1/2 in, from: white, per card: 1}\n",
    );
    assert_eq!((most.found, most.bound), (10_000, 10_000));
}

/// What can be cut from a sheet of whole inches by edge-to-edge cuts at whole inches: every vector
/// of counts that no other one contains. Shares nothing with the search.
fn vectors(
    (width, height): (u32, u32),
    kinds: &[(u32, u32, bool)],
    known: &mut BTreeMap<(u32, u32), BTreeSet<Vec<u32>>>,
) -> BTreeSet<Vec<u32>> {
    if let Some(found) = known.get(&(width, height)) {
        return found.clone();
    }
    let mut all = BTreeSet::from([vec![0; kinds.len()]]);
    for (kind, &(w, h, turned)) in kinds.iter().enumerate() {
        if (w, h) == (width, height) || (turned && (h, w) == (width, height)) {
            let mut one = vec![0; kinds.len()];
            one[kind] = 1;
            all.insert(one);
        }
    }
    let halves = (1..=width / 2).map(|at| ((at, height), (width - at, height)));
    let halves = halves.chain((1..=height / 2).map(|at| ((width, at), (width, height - at))));
    for (one, other) in halves.collect::<Vec<_>>() {
        let (ones, others) = (vectors(one, kinds, known), vectors(other, kinds, known));
        for one in &ones {
            all.extend(others.iter().map(|other| sum(one, other)));
        }
    }
    let all = largest(&all);
    known.insert((width, height), all.clone());
    all
}

fn sum(one: &[u32], other: &[u32]) -> Vec<u32> {
    one.iter().zip(other).map(|(a, b)| a + b).collect()
}

fn within(small: &[u32], large: &[u32]) -> bool {
    small.iter().zip(large).all(|(a, b)| a <= b)
}

fn largest(all: &BTreeSet<Vec<u32>>) -> BTreeSet<Vec<u32>> {
    all.iter().filter(|one| !all.iter().any(|other| other != *one && within(one, other))).cloned().collect()
}

/// 40 seeded cases of two kinds of piece on one to three sheets, sides of whole inches, so that the
/// rules of the hand never bind (every part can be held at 1 in).
#[test]
fn the_most_is_that_of_a_brute_force() {
    let mut seed = 20_261_125_u64;
    let mut next = |most: u32| {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        u32::try_from(seed >> 33).unwrap() % most
    };
    for _ in 0..40 {
        let sheet = (5 + next(5), 5 + next(5));
        let sheets = 1 + next(3);
        let pattern = ["any", "one-way"][next(2) as usize];
        let kinds: Vec<(u32, u32, bool)> = (0..2).map(|_| (1 + next(4), 1 + next(4), pattern == "any")).collect();
        let per: Vec<u32> = (0..2).map(|_| 1 + next(3)).collect();
        let text = format!(
            "cards: 3\npapers:\n  white: {{sheets: {sheets} of {} x {} in, pattern: {pattern}}}\npieces:\n  \
             panel: {{size: {} x {} in, from: white, per card: {}}}\n  tag: {{size: {} x {} in, from: white, per card: {}}}\n",
            sheet.0, sheet.1, kinds[0].0, kinds[0].1, per[0], kinds[1].0, kinds[1].1, per[1]
        );
        let one = vectors(sheet, &kinds, &mut BTreeMap::new());
        let mut all = one.clone();
        for _ in 1..sheets {
            let sums = all.iter().flat_map(|a| one.iter().map(move |b| sum(a, b))).collect();
            all = largest(&sums);
        }
        let wanted = all.iter().map(|have| (have[0] / per[0]).min(have[1] / per[1])).max().unwrap();
        let most = most_of(&text);
        assert_eq!((most.found, most.bound), (wanted, wanted), "{text}");
    }
}

#[test]
fn the_command_answers_in_words_and_in_json() {
    let home = tempfile::tempdir().expect("a folder");
    let design = "title: Kites\ncards: 30\npapers:\n  sky: {sheets: 1 of 12 x 12 in}\n  fog: {sheets: 2 of 12 x 12 in}\n\
                  pieces:\n  kite: {size: 4 x 4 in, from: varies, per card: 1}\n\
                  versions:\n  - {name: day, cards: 20, papers: {kite: sky}}\n  - {name: night, cards: 10, papers: {kite: fog}}\n";
    std::fs::write(home.path().join("kites.yaml"), design).expect("written");
    // By hand: nine kites a sheet; two in three are day: 9 day and 4 night are 13, 14 want 9 and 5,
    // and 15 want 10 day.
    let said = trimwright(home.path(), &["cuts", "kites.yaml", "--most"]);
    let (out, err) = (String::from_utf8_lossy(&said.stdout), String::from_utf8_lossy(&said.stderr));
    assert_eq!(said.status.code(), Some(0), "more cards are asked for than come out, and it answers: {err}");
    assert!(
        out.starts_with(
            "The sheets at hand give 14 cards at most: 9 day and 5 night. The design asks for 30.\nSky runs out: "
        ),
        "{out}"
    );
    assert!(out.contains("cutting for 14 cards") && out.contains("14 cards: proven most."), "{out}");

    let json = trimwright(home.path(), &["cuts", "kites.yaml", "--most", "--format", "json"]);
    let value: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
    assert_eq!((&value["most"], &value["cards"]), (&14.into(), &14.into()));
    assert_eq!(value["aims"]["cards"], serde_json::json!({"found": 14, "bound": 14, "proven": true}));
    assert_eq!(value["runs_out"], serde_json::json!(["sky"]));
    assert_eq!(value["versions"][1], serde_json::json!({"name": "night", "cards": 5}));
}
