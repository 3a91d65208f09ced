//! How thick a card is and what it weighs, by hand sums.

use crate::support::{run, sound};
use trimwright::paper::made::Made;
use trimwright::paper::thickness::guide;
use trimwright::weight::{Grade, Grammage};

/// In 1/10 000 in.
fn rounded(nm: i64) -> i64 {
    (nm + 1270).div_euclid(2540)
}

/// Government Paper Specification Standards, volume 11 (1 February 1999), JCP A55 book, A91 text, K10 index, P20
/// tag: the callipers printed there.
#[test]
fn the_government_callipers_come_out() {
    let rows = [
        (Grade::Text, &[(40, 30), (50, 39), (60, 47), (70, 55), (80, 63), (100, 79)][..]),
        (Grade::Index, &[(90, 75), (110, 91), (140, 114), (170, 138)]),
        (Grade::Tag, &[(105, 80), (150, 110), (165, 140), (250, 180)]),
    ];
    for (grade, rows) in rows {
        for (pounds, printed) in rows {
            let nm = guide(Grammage::pounds(pounds * 1000, grade), Some(grade));
            assert_eq!(rounded(nm), *printed, "{pounds} lb {}", grade.word());
        }
    }
}

#[test]
fn between_two_rows_thickness_grows_with_grammage() {
    // 100 and 120 lb cover are 0.011 and 0.015 in; 110 lb is halfway: 0.013 in.
    assert_eq!(guide(Grammage::pounds(110_000, Grade::Cover), Some(Grade::Cover)), BASE);
    // Past the last row in proportion: 240 lb is twice 120 lb.
    assert_eq!(rounded(guide(Grammage::pounds(240_000, Grade::Cover), Some(Grade::Cover))), 300);
    assert_eq!(rounded(guide(Grammage::pounds(20_000, Grade::Text), Some(Grade::Text))), 15);
    let mut last = 0;
    for grams in (30..=1000).step_by(5) {
        let thick = guide(Grammage::grams(grams), None);
        assert!(thick > last, "{grams}");
        last = thick;
    }
}

/// A card of 110 lb cover with a mat of 80 lb cover; `more` are layers, `pieces` their pieces.
fn card(fold: &str, pieces: &str, more: &str) -> String {
    format!(
        "title: Kite\nmonth: 2026-04\ncards: 1\nunits: inch\n\
         card: {{size: 4 1/4 x 5 1/2 in, fold: {fold}, from: white}}\n\
         papers:\n  white: {{sheets: 3 of 24 x 24 in, weight: 110 lb cover}}\n\
         \x20 slate: {{sheets: 3 of letter, weight: 80 lb cover}}\n\
         pieces:\n  mat: {{size: 4 x 5 1/4 in, from: slate}}\n{pieces}\
         front:\n  - {{place: mat, centre: both ways, glue: tape}}\n{more}"
    )
}

fn made(text: &str) -> Made {
    sound(text).made.expect("a card")
}

/// 110 lb cover is 0.013 in, to a nanometre, since grammage is rounded to a milligram; 80 lb cover 0.0095 in.
const BASE: i64 = 330_201;
const MAT: i64 = 241_300;

#[test]
fn every_panel_and_layer_counts_where_they_lie_over_each_other() {
    for (fold, panels) in [("none", 1), ("side", 2), ("top", 2), ("gate", 2), ("{accordion: 3}", 3)] {
        assert_eq!(made(&card(fold, "", "")).thickness(), panels * BASE + MAT, "{fold}");
    }
    let tag = "  tag: {size: 1 x 1 in, from: slate}\n";
    let two = |left: &str, glue: &str| {
        card(
            "side",
            tag,
            &format!(
                "  - {{place: tag, as: one, left: 1/2 in, top: 1 in, glue: tape}}\n\
                 \x20 - {{place: tag, as: two, left: {left}, top: 1 in, glue: {glue}}}\n"
            ),
        )
    };
    // Beside each other, then over each other by half an inch.
    assert_eq!(made(&two("2 in", "tape")).thickness(), 2 * BASE + 2 * MAT);
    assert_eq!(made(&two("1 in", "tape")).thickness(), 2 * BASE + 3 * MAT);
    // Foam of 1/16 in under one of them.
    assert_eq!(made(&two("1 in", "foam")).thickness(), 2 * BASE + 3 * MAT + 1_587_500);
    assert!(made(&two("1 in", "foam")).is_uneven && !made(&two("1 in", "tape")).is_uneven);
    // A window lets nothing stand over nothing: the tag lies in it.
    let framed = card(
        "side",
        "  frame:\n    size: 4 x 5 in\n    from: slate\n    window:\n      \
         - {size: 3 x 3 in, centre: both ways, by: hand}\n  tag: {size: 1 x 1 in, from: slate}\n",
        "  - {place: tag, centre: both ways, glue: tape}\n  - {place: frame, centre: both ways, glue: tape}\n",
    );
    assert_eq!(made(&framed).thickness(), 2 * BASE + 2 * MAT);
}

#[test]
fn a_stated_thickness_is_taken_and_what_nobody_says_is_guessed_high() {
    let stated = card("side", "", "").replace("weight: 80 lb cover", "thickness: 0.3 mm");
    assert_eq!(made(&stated).thickness(), 2 * BASE + 300_000);
    assert!(!made(&stated).is_assumed);
    let bare = card("side", "", "").replace(", weight: 80 lb cover", "");
    assert!(made(&bare).is_assumed);
    // 200 g/m2: more than patterned paper of 120 g/m2, and no thicker than 0.25 mm.
    let mat = made(&bare).thickness() - 2 * BASE;
    assert!((200_000..250_000).contains(&mat), "{mat}");
}

#[test]
fn a_card_weighs_what_its_paper_weighs() {
    // Base 8 1/2 x 5 1/2 in = 0.030 161 23 m2 of 297.453 g; mat 4 x 5 1/4 in = 0.013 548 36 m2 of 216.329 g:
    // 8.971 56 + 2.930 90 = 11.902 46 g.
    let plain = made(&card("side", "", ""));
    assert_eq!((plain.card.grams(), plain.card.milligrams()), (12, 11_903));
    // A window of 3 x 3 in takes 0.005 806 44 m2 of 80 lb cover out of it, 1.256 10 g: 10.646 36 g.
    let text = card("side", "", "").replace(
        "{size: 4 x 5 1/4 in, from: slate}",
        "{size: 4 x 5 1/4 in, from: slate, window: [{size: 3 x 3 in, centre: both ways, by: hand}]}",
    );
    assert_eq!(made(&text).card.milligrams(), 10_647);
    // A rail of 6 x 1 in trimmed flush with the mat leaves 4 x 1 in: 0.002 580 64 m2, 0.558 27 g.
    let rail = card("side", "  rail: {size: 6 x 1 in, from: slate}\n", "").replace(
        "{place: mat, centre: both ways, glue: tape}",
        "{place: mat, centre: both ways, glue: tape, \
         first: [{place: rail, centre: both ways, trim flush: mat, glue: tape}]}",
    );
    assert_eq!(made(&rail).card.milligrams(), 12_461);
    // An A2 envelope: 2 x 4 3/8 x 5 3/4 in = 0.032 459 61 m2, times 1.15 and 90 g: 3.359 57 g; 15.262 03 in all.
    let size = trimwright::design::envelopes::named_envelope("A2 envelope").unwrap().size;
    assert_eq!((plain.posted(size).grams(), plain.posted(size).milligrams()), (16, 15_263));
}

#[test]
fn the_heaviest_and_thickest_version_counts() {
    let text =
        card("side", "  tag: {size: 2 x 2 in, from: varies}\n", "  - {place: tag, centre: both ways, glue: tape}\n")
            .replace("cards: 1", "cards: 2")
            .replace(
                "front:",
                "versions:\n  - {name: light, cards: 1, papers: {tag: slate}}\n  \
             - {name: heavy, cards: 1, papers: {tag: white}}\nfront:",
            );
    let made = made(&text);
    assert_eq!(made.thickness(), 3 * BASE + MAT);
    // 2 x 2 in = 0.002 580 64 m2 of 297.453 g: 0.767 62 g beside 11.902 46 g.
    assert_eq!(made.card.milligrams(), 12_671);
}

#[test]
fn an_accordion_of_many_panels_is_too_thick_by_paper_alone() {
    // 20 panels of 0.013 in are 0.26 in, past 1/4 in.
    let text = card("{accordion: 20}", "", "").replace("3 of 24 x 24 in", "3 of 90 x 24 in");
    let found = run(&text).findings.into_iter().filter(|f| f.code == "foam-too-thick-to-post");
    let labels: Vec<String> = found.map(|f| f.primary.text).collect();
    // 20 x 0.013 + 0.0095 + 2 x 0.0048 = 0.279 in.
    assert_eq!(labels, ["about 0.28 in of paper in its envelope"]);
}
