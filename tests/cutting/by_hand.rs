//! Cuts and changes of measure of the demos as a careful person needs them, counted from the sheet
//! and the pieces alone. Equal slices come off one after another, the last of them is what remains
//! where nothing is left over; a measure is set once for all loose parts that it cuts.

use crate::support::{demo, run};

/// One sheet of a paper: cuts, and how often the measure is set.
type Counted = (&'static str, u64, u64);

fn needs_no_more(name: &str, edition: usize, counted: &[Counted]) {
    let text = std::fs::read_to_string(demo(name)).expect("the demo");
    let outcome = run(&text);
    let project = &outcome.editions[edition];
    let mut papers = Vec::new();
    for sheet in &project.plan.sheets {
        let paper = project.design.paper(sheet.paper).name.as_str();
        let (_, cuts, changes) = counted.iter().find(|(other, ..)| *other == paper).expect("a paper counted by hand");
        let found = u64::from(sheet.cut_count());
        assert!(found <= *cuts, "{name}, {paper}: {found} cuts, {cuts} counted by hand");
        let found = sheet.changes();
        assert!(found <= *changes, "{name}, {paper}: {found} changes of measure, {changes} counted by hand");
        papers.push(paper);
    }
    papers.dedup();
    assert_eq!(papers.len(), counted.len(), "{name}: every paper was counted");
}

#[test]
fn lantern_row_in_inches_needs_no_more_than_counted_by_hand() {
    needs_no_more(
        "lantern-row",
        0,
        &[
            // 12 x 12 1/2 in, four panels 3 3/4 x 5 in, twelve lanterns 1 x 1 3/4 in. The strip, 1/2 in: 1.
            // A row of 1 3/4 in is twelve lanterns long: 1. Under it 7 1/2 in for two panels side by
            // side: 1; 5 in, twice; both parts at 3 3/4 in, once each. The row at 1 in, eleven times,
            // the twelfth remains. 1 + 1 + 1 + 2 + 2 + 11; set 1/2, 1 3/4, 7 1/2, 5, 3 3/4, 1.
            ("dusk", 18, 6),
            // The same without the strip.
            ("ember", 17, 5),
            // 8 1/2 x 11 in, four mats 4 x 5 1/4 in, four rails 4 1/2 x 1/4 in. The rails come off while
            // there is something to hold: 1/4 in off the long side, twice; each at 4 1/2 in, twice. What
            // remains is two mats wide: 5 1/4 in, twice; both parts at 4 in, once each. 2 + 4 + 2 + 2;
            // set 1/4, 4 1/2, 5 1/4, 4.
            ("slate", 10, 4),
            // Halved.
            ("white", 1, 1),
        ],
    );
}

#[test]
fn lantern_row_in_millimetres_needs_no_more_than_counted_by_hand() {
    needs_no_more(
        "lantern-row",
        1,
        &[
            // 304 x 317 mm, four panels 93 x 136 mm, twelve lanterns 25 x 44 mm, all upright. The strip,
            // 13 mm: 1. A row of lanterns would leave 260 mm, too low for two panels, so 186 mm for two
            // panels side by side: 1; 136 mm, twice; both parts at 93 mm, once each. The rest to two
            // lanterns' width, 50 mm: 1; 44 mm, six times; the six parts at 25 mm, once each.
            // 1 + 1 + 2 + 2 + 1 + 6 + 6; set 13, 186, 136, 93, 50, 44, 25.
            ("dusk", 19, 7),
            // 304 x 304 mm, and the panels may lie. Two of them high, 186 mm: 1; 136 mm, twice; both
            // parts at 93 mm, once each. Of the rest 44 mm: 1; 25 mm, twelve times, which leaves 4 mm.
            // 1 + 2 + 2 + 1 + 12; set 186, 136, 93, 44, 25.
            ("ember", 18, 5),
            // 210 x 297 mm, four mats 99 x 142 mm, four rails 115 x 6 mm: as in inches, since 6 mm twice
            // leaves just two mats' width. Set 6, 115, 142, 99.
            ("slate", 10, 4),
            // Two of 148 mm, and 1 mm is left.
            ("white", 2, 1),
        ],
    );
}

#[test]
fn kitchen_garden_needs_no_more_than_counted_by_hand() {
    // 304 x 304 mm, four covers 97 x 140 mm, sixteen beds 38 x 30 mm, four long beds 81 x 30 mm, all
    // upright. 195 mm is a long bed and three beds wide: 1. The other part to 97 mm: 1. 140 mm, twice
    // off the narrow part, once off the wide one: 3; the wide slice at 97 mm, twice. What remains of
    // the wide part at 30 mm, five times; four of these rows at 38 mm, three times each, the long bed
    // remains, and the fifth four times. 1 + 1 + 3 + 2 + 5 + 12 + 4; set 195, 97, 140, 97, 30, 38.
    let patterned = |paper| (paper, 28, 6);
    needs_no_more(
        "kitchen-garden",
        0,
        &[
            patterned("radish"),
            patterned("fennel"),
            patterned("borage"),
            // 210 x 297 mm, four grounds 89 x 132 mm, four labels 81 x 19 mm. 178 mm for two grounds side by
            // side: 1; 132 mm, twice; both parts at 89 mm, once each. The long rest and the low one to
            // 19 mm, once each; the low one at 81 mm, once, the long one three times.
            // 1 + 2 + 2 + 2 + 4; set 178, 132, 89, 19, 81.
            ("cream", 11, 5),
            // 210 x 297 mm, two bases 105 x 296 mm: 296 mm, then 105 mm.
            ("moss", 2, 2),
        ],
    );
}
