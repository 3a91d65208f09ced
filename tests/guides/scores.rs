//! Where the base is scored.

use trimwright::guides::scores::scores;

use super::{card, laid};

fn at(size: &str, fold: &str, paper: &str) -> (Vec<i64>, i64) {
    let layer = "  - {place: tag, onto: mat, left: 10 mm, bottom: 10 mm, glue: tape}\n";
    let text = card(size, fold, "40 x 40 mm", "  tag: {size: 10 x 10 mm, from: slate}\n", layer, "");
    let text =
        text.replace("white: {sheets: 9 of 600 x 600 mm}", &format!("white: {{sheets: 9 of 600 x 600 mm, {paper}}}"));
    let scores = scores(&laid(&text)[0].0).unwrap();
    (scores.at.iter().map(|at| at / 100_000).collect(), scores.allowance / 100_000)
}

/// Tenths of a millimetre, reckoned by hand.
#[test]
fn flaps_of_thick_paper_are_scored_nearer_to_their_edges() {
    assert_eq!(at("104 x 148 mm", "side", "thickness: 0.35 mm"), (vec![1040], 0), "in the middle");
    assert_eq!(at("104 x 148 mm", "top", "thickness: 0.35 mm"), (vec![1480], 0), "in the middle");
    // 0.35 mm comes to half a millimetre: 52 - 0.5 from either edge of 208.
    assert_eq!(at("104 x 148 mm", "gate", "thickness: 0.35 mm"), (vec![515, 1565], 5));
    assert_eq!(at("104 x 148 mm", "gate", "thickness: 0.5 mm"), (vec![515, 1565], 5));
    assert_eq!(at("104 x 148 mm", "gate", "thickness: 0.51 mm"), (vec![510, 1570], 10));
    assert_eq!(at("104 x 148 mm", "gate", "thickness: 0.2 mm"), (vec![520, 1560], 0), "thin paper");
    assert_eq!(at("100 x 100 mm", "{accordion: 4}", "thickness: 0.35 mm"), (vec![1000, 2000, 3000], 0));
}

#[test]
fn a_flat_card_is_not_scored() {
    let layer = "  - {place: tag, onto: mat, left: 10 mm, bottom: 10 mm, glue: tape}\n";
    let text = card("104 x 148 mm", "none", "80 x 80 mm", "  tag: {size: 20 x 20 mm, from: slate}\n", layer, "");
    assert_eq!(scores(&laid(&text)[0].0), None);
}
