//! What is said of shapes, windows, sides, words on pieces, decorations and glue, against sentences and
//! sums written by hand.

use crate::support::sound;
use trimwright::assembly::finishing::cut_name;
use trimwright::assembly::model::Action;
use trimwright::assembly::tell;
use trimwright::assembly::totals::{dots, foam_squares, tape, totals};
use trimwright::design::model::{Design, Face, PieceId, Work};
use trimwright::length::{Length, Size, Units};
use trimwright::project::Project;
use trimwright::readback::read_back;

fn piece(design: &Design, name: &str) -> PieceId {
    design.piece_ids().find(|id| design.piece(*id).name == name).expect(name)
}

/// A card with one piece of this shape on it.
fn shaped(lines: &str) -> Project {
    sound(&format!(
        "title: Any\nmonth: 2027-01\ncards: 2\nunits: inch\ncard: {{size: 4 x 5 in, fold: side, from: white}}\n\
         papers: {{white: {{sheets: 6 of letter}}, fog: {{sheets: 4 of 12 x 12 in}}}}\npieces:\n  tag:\n{lines}\
         \x20   from: fog\nfront: [{{place: tag, centre: both ways, glue: tape}}]\n"
    ))
}

/// The finishing sentences and their cautions.
fn finishing(project: &Project) -> Vec<(String, String)> {
    let steps = project.steps.of(Work::Finishing);
    steps
        .map(|step| {
            let told = tell::step(&project.design, &project.layout, step);
            (told.line.to_plain(), told.caution.expect("a caution").to_plain())
        })
        .collect()
}

#[test]
fn each_shape_is_told_cut_by_cut() {
    let cases = [
        (
            "    size: 2 x 1 in\n    shape: diamond\n",
            "Make each tag (2) from its rectangle of 2 x 1. With trimmer or scissors, cut from the middle of the left \
             edge to the middle of the bottom edge, then from there to the middle of the right edge, then from there to \
             the middle of the top edge, then from there to the middle of the left edge.",
        ),
        (
            "    size: 1 x 3 in\n    shape: {fishtail: bottom, deep: 3/8 in}\n",
            "Make each tag (2) from its rectangle of 1 x 3. With scissors, cut from the bottom left corner to the \
             point halfway across, 3/8 from the bottom edge, then from the bottom right corner to the same point.",
        ),
        (
            "    size: 3 x 1 in\n    shape: {rounded: 1/4 in}\n",
            "Make each tag (2) from its rectangle of 3 x 1. Round all four corners with a corner punch, radius 1/4.",
        ),
        (
            "    size: 3 x 1 in\n    shape: {rounded: 1/4 in, corners: [top left]}\n",
            "Make each tag (2) from its rectangle of 3 x 1. Round the top left corner with a corner punch, radius 1/4.",
        ),
        (
            "    size: 2 x 2 in\n    shape: circle\n    by: die\n    margin: 1/4 in\n",
            "Make each tag (2) from its rectangle of 2 1/2 x 2 1/2. Lay the die in the middle of it, so that about \
             1/4 of paper shows all round, and cut it in the machine as its maker says.",
        ),
        (
            "    size: 2 x 2 in\n    shape: circle\n    by: punch\n    margin: 1/4 in\n",
            "Make each tag (2) from its rectangle of 2 1/2 x 2 1/2. Push it into the punch, so that about 1/4 of \
             paper shows all round, and punch it as the maker says.",
        ),
        (
            "    size: 2 x 1 in\n    by: die\n    margin: 1/8 in\n    die-cut words: hush\n",
            "Make each tag (2) from its rectangle of 2 1/4 x 1 1/4. Lay the die in the middle of it, so that about \
             1/8 of paper shows all round, and cut it in the machine as its maker says. The die cuts the words: hush.",
        ),
    ];
    for (lines, sentence) in cases {
        let project = shaped(lines);
        let told = finishing(&project);
        assert_eq!(told.iter().map(|(line, _)| line.as_str()).collect::<Vec<_>>(), [sentence]);
        assert!(told[0].1.contains("fingers"), "{told:?}");
        assert_eq!(project.steps.of(Work::Finishing).next().expect("a step").times, 2);
    }
    // A plain rectangle is done when it is trimmed.
    assert!(finishing(&shaped("    size: 2 x 1 in\n")).is_empty());
}

/// Four cards with two triangles each: 8 of either hand of the same rectangle come from 8 rectangles; 8
/// alone, on paper without a way up, from 4.
#[test]
fn triangles_share_their_rectangles() {
    let text = |pattern: &str, second: &str| {
        format!(
            "title: Any\nmonth: 2027-01\ncards: 4\nunits: inch\ncard: {{size: 4 x 5 in, fold: side, from: white}}\n\
             papers: {{white: {{sheets: 6 of letter}}, fog: {{sheets: 2 of 12 x 12 in, pattern: {pattern}}}}}\npieces:\n\
             \x20 sail: {{size: 1 1/2 x 2 in, shape: \"triangle, right angle at bottom left\", from: fog}}\n{second}"
        )
    };
    let front = "front:\n  - {place: sail, top: 1/2 in, centre: across, row: {count: 2, gap: 1/4 in}, glue: liquid}\n";
    let alone = sound(&text("any", front));
    let told = finishing(&alone);
    assert_eq!(
        told[0].0,
        "Cut 4 rectangles (2) from corner to corner, from the top left to the bottom right corner: each gives 2 \
         sails (2), the second one when you turn it half round."
    );
    let flag = "\x20 flag: {size: 1 1/2 x 2 in, shape: \"triangle, right angle at top right\", from: fog}\n"
        .replace("\\x20", " ");
    let both = format!(
        "{flag}{front}  - {{place: flag, bottom: 1/2 in, centre: across, row: {{count: 2, gap: 1/4 in}}, glue: liquid}}\n"
    );
    let both = sound(&text("one-way", &both));
    let told = finishing(&both);
    assert_eq!(told.len(), 1);
    assert_eq!(
        told[0].0,
        "Cut 8 rectangles (2) from corner to corner, from the top left to the bottom right corner: each gives 1 \
         sail (2) and 1 flag (3). Lay it with its pattern upright."
    );
    let design = &both.design;
    assert_eq!(cut_name(design, piece(design, "sail")), "rectangle for sails and flags");
    let all = tell::all_cut(design, &both.plan).to_plain();
    assert!(all.contains("8 rectangles for sails and flags (2)"), "{all}");
    assert!(!all.contains("8 sails"), "{all}");
    let read = read_back(&both);
    assert!(read.iter().any(|line| line.contains("gives 8 rectangles for sails and flags")), "{read:#?}");
}

/// A window in the middle from side to side, 1 in from the bottom; what comes out is the pane.
const WHOLE: &str = "\
title: Any
month: 2027-01
cards: 3
units: inch
card: {size: 4 x 5 in, fold: side, from: white}
papers:
  white: {sheets: 6 of letter}
  fog: {sheets: 4 of 12 x 12 in}
pieces:
  frame: {size: 3 1/2 x 4 1/2 in, from: fog, window: {size: 2 x 1 in, centre: across, bottom: 1 in}}
  pane: {size: 2 x 1 in, from: window of frame}
  strip: {size: 3 x 1/2 in, from: fog}
  tag: {size: 2 x 1 in, from: fog, printed: with love}
  label: {size: 2 x 3/4 in, from: fog, stamp: thank you}
decorations:
  pearl: {size: 1/4 x 1/4 in, form: round}
  cord: {size: 3 x 1/8 in, length: 12 in}
envelope: {size: 5 1/4 x 4 1/4 in, flap: 2 in, front: [{place: label, left: 1/4 in, bottom: 1/4 in, glue: tape}]}
back:
  - {place: pane, centre: both ways, glue: liquid}
inside:
  - {place: tag, panel: right, centre: both ways, glue: tape}
front:
  - {place: frame, centre: both ways, glue: foam}
  - {place: strip, onto: frame, centre: across, top: 1/2 in, glue: tape}
  - {place: cord, onto: frame, centre: across, top: 1/4 in, glue: dot}
  - {place: pearl, onto: frame, left: 1/4 in, bottom: 1/4 in, row: {count: 4, gap: 1/4 in}, glue: dot}
notes:
  - {on: decorating, say: Draw a star.}
";

#[test]
fn a_window_is_cut_from_the_back_and_its_waste_is_kept() {
    let project = sound(WHOLE);
    let told = finishing(&project);
    assert_eq!(told.len(), 1, "the pane is as large as its window: {told:?}");
    assert_eq!(
        told[0].0,
        "Make each frame (2) from its rectangle of 3 1/2 x 4 1/2. Turn it face down and draw the window on its back: \
         2 x 1, in the middle from side to side, and 1 from the bottom edge. Cut from corner to corner with a craft \
         knife along a metal ruler, on a cutting mat. Keep what comes out: it is the pane (3)."
    );
    assert!(told[0].1.starts_with("Cut away from your hand"));
    let smaller = sound(&WHOLE.replace("pane: {size: 2 x 1 in", "pane: {size: 1 1/2 x 3/4 in"));
    let told = finishing(&smaller);
    assert_eq!(
        told[1].0.split(" Lay").next(),
        Some("For each pane (3), trim what came out of the frame (2) to 1 1/2 x 3/4.")
    );
}

#[test]
fn the_whole_card_is_made_side_by_side_in_one_order() {
    let project = sound(WHOLE);
    let (design, layout) = (&project.design, &project.layout);
    let order: Vec<(Work, Option<Face>)> = project
        .steps
        .steps
        .iter()
        .filter(|step| step.work != Work::Cutting)
        .map(|step| match step.action {
            Action::Glue { layer, .. } => (step.work, Some(design.layer(layer).face)),
            _ => (step.work, None),
        })
        .collect();
    assert_eq!(
        order,
        [
            (Work::Printing, None),
            (Work::Finishing, None),
            (Work::Stamping, None),
            (Work::Folding, None),
            (Work::Sorting, None),
            (Work::Layering, Some(Face::Front)),
            (Work::Layering, Some(Face::Front)),
            (Work::Decorating, Some(Face::Front)),
            (Work::Decorating, Some(Face::Front)),
            (Work::Layering, Some(Face::Inside(Some(1)))),
            (Work::Layering, Some(Face::Back)),
            (Work::Decorating, None),
            (Work::Layering, Some(Face::EnvelopeFront)),
        ]
    );
    assert!(project.steps.steps[0].action == Action::Print { piece: piece(design, "tag") }, "before the first cut");
    let said: Vec<String> =
        project.steps.steps.iter().map(|step| tell::step(design, layout, step).line.to_plain()).collect();
    let has = |part: &str| assert!(said.iter().any(|line| line.contains(part)), "{part}: {said:#?}");
    has("Before its paper is cut, print for each tag (5): with love.");
    has("to the middle of the right panel of the inside.");
    has("onto the front of the envelope, 1/4 from the bottom, 1/4 from the left.");
    has("to the middle of the back of the card.");
    has("From the roll, cut one length of 12 for each card. Lay the cord (8) on glue dots onto the frame (2)");
}

#[test]
fn scores_of_gate_and_accordion_are_told_one_after_another() {
    let base = |fold: &str, sheet: &str| {
        let project = sound(&format!(
            "title: Any\nmonth: 2027-01\ncards: 1\nunits: inch\ncard: {{size: 4 x 5 in, fold: {fold}, from: white}}\n\
             papers: {{white: {{sheets: {sheet}}}}}\npieces: {{tag: {{size: 1 x 1 in, from: white}}}}\n\
             front: [{{place: tag, left: 1/4 in, top: 1/4 in, glue: tape}}]\n"
        ));
        let step = project.steps.of(Work::Folding).next().expect("a fold");
        (tell::step(&project.design, &project.layout, step).line.to_plain(), read_back(&project).join("\n"))
    };
    // A front of 4 in: each flap is half of it.
    let (gate, read) = base("gate", "2 of letter");
    assert!(
        gate.starts_with("Score each base (1) 2 from the left edge and 2 from the right edge. Fold both flaps"),
        "{gate}"
    );
    assert!(
        read.contains("Scored, its outside up, from the left edge at 2 in (mountain) and 6 in (mountain)."),
        "{read}"
    );
    // Three panels of 4 in; the fold beside the front at the right is a mountain, the other a valley.
    let (accordion, read) = base("{accordion: 3}", "1 of 12 x 12 in and 1 of letter");
    assert!(accordion.starts_with("Score each base (1), its outside up, 4 and 8 from the left edge."), "{accordion}");
    assert!(accordion.contains("point away from you (a valley), then toward you (a mountain)."), "{accordion}");
    assert!(read.contains("at 4 in (valley) and 8 in (mountain)."), "{read}");
}

/// Each formula is common practice, no source; the sums are worked by hand.
#[test]
fn glue_is_added_up() {
    let inch = |width: (i64, i64), height: (i64, i64)| {
        Size::new(Length::inch(width.0, width.1), Length::inch(height.0, height.1))
    };
    let mm = |width: i64, height: i64| Size::new(Length::mm(width), Length::mm(height));
    // 4 x 5 1/4 less 1/8 at every edge is 3 3/4 x 5: 17 1/2 round.
    assert_eq!(tape(inch((4, 1), (21, 4)), Units::Inch), Length::inch(35, 2).nm());
    // A rail of 1/4 takes one strip along its middle.
    assert_eq!(tape(inch((9, 2), (1, 4)), Units::Inch), Length::inch(9, 2).nm());
    // 88 x 128 less 3 mm at every edge is 82 x 122.
    assert_eq!(tape(mm(88, 128), Units::Metric), Length::mm(408).nm());
    // Corners, then at 2 in from them: one on each side of 4 in, two on each side of 5 in.
    assert_eq!(foam_squares(inch((4, 1), (5, 1)), Units::Inch), 4 + 2 + 4);
    assert_eq!(foam_squares(inch((2, 1), (1, 1)), Units::Inch), 4);
    assert_eq!(foam_squares(mm(51, 30), Units::Metric), 6);
    // A narrow strip takes one row; a small square takes one.
    assert_eq!(foam_squares(inch((5, 1), (1, 2)), Units::Inch), 2 + 2);
    assert_eq!(foam_squares(mm(10, 10), Units::Metric), 1);
    assert_eq!(dots(mm(4, 4), Units::Metric), 1);
    assert_eq!(dots(mm(60, 16), Units::Metric), 3);

    let project = sound(WHOLE);
    let design = &project.design;
    let all = totals(design);
    // Strip 3 x 1/2: 2 3/4 + 1/4, twice: 6. Tag 2 x 1: 1 3/4 + 3/4, twice: 5. Label 2 x 3/4: 1 3/4 + 1/2, twice:
    // 4 1/2. Together 15 1/2, three cards: 46 1/2.
    assert_eq!(all.tape, Length::inch(93, 2).nm());
    assert_eq!(all.liquid, 3);
    // Frame 3 1/2 x 4 1/2: corners 4, one between on either short side, two on either long side: 10; 3 cards.
    assert_eq!(all.foam, 30);
    // Cord 3 in: 1 + 3; pearls one each: 4. Three cards: 24.
    assert_eq!(all.dots, 24);
    assert_eq!(all.counted, [(piece(design, "pearl"), 12)]);
    assert_eq!(all.rolls.len(), 1);
    assert_eq!((all.rolls[0].count, all.rolls[0].all), (3, Length::inch(36, 1).nm()));
    let read = read_back(&project);
    let has = |line: &str| assert!(read.iter().any(|read| read.trim() == line), "{line}: {read:#?}");
    has("Glue in all: 46 1/2 in of tape, liquid glue for 3 pieces, 30 foam squares and 24 glue dots.");
    has("12 pearls of 1/4 x 1/4 in in all.");
    has("Cord: 3 lengths of 12 in, 36 in in all.");
    has("frame: window of 2 x 1 in, 3/4 in from the left, 1 in from the bottom, by hand.");
    has("pane: what the window of the frame leaves over.");
    has("tag: printed before cutting: with love.");
    assert!(read.iter().any(|line| line.starts_with("tag: 2 x 1 in, on the right panel of the inside;")), "{read:#?}");
}
