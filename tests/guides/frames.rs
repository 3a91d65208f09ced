//! What is laid in its frame lands where the layout says, and the frame lies level at all edges of what it lies
//! on: by exact geometry, on the face, against the layout's own outlines.

use trimwright::design::model::{Design, LayerId, Onto};
use trimwright::geometry::{Comparison, Polygon, Region, Relation, distance, relation};
use trimwright::guides::frame::{Frame, frame, grounds, least};
use trimwright::layout::model::{Layout, Turn};
use trimwright::layout::place::frame_within;

use super::{card, laid, of_demos};
use crate::sound;
use crate::support::dice::Dice;

fn turned(region: &Region, turns: &[Turn]) -> Region {
    turns.iter().fold(region.clone(), |region, turn| region.turned(turn.angle, turn.about))
}

/// Everything that some layers cover as they are glued down, what they enclose too.
fn covered(layout: &Layout, layers: &[LayerId]) -> Region {
    let copies = layers.iter().flat_map(|layer| &layout.placed(*layer).laid);
    let all = Region::covered_by(&copies.map(|laid| laid.outline.filled()).collect::<Vec<_>>());
    Region::covered_by(&all.parts().iter().map(Polygon::filled).collect::<Vec<_>>())
}

/// A frame as it lies on its face.
fn lands(design: &Design, layout: &Layout, frame: &Frame, name: &str) {
    let (turns, ground) = match frame.on {
        Onto::Card => (Vec::new(), Region::from(layout.face(frame.face))),
        Onto::Layer(on) => {
            let lies = Region::covered_by(&[layout.placed(on).laid[0].outline.filled()]);
            (frame_within(design, layout, on), lies)
        }
    };
    let laid = frame.layers.iter().flat_map(|layer| &layout.placed(*layer).laid);
    let straight = turns.is_empty() && laid.clone().all(|laid| laid.angle.whole_quarters().is_some());
    let by = if straight { Comparison::Exact } else { Comparison::Turned };
    let layers: Vec<&str> = frame.layers.iter().map(|layer| design.layer(*layer).name.as_str()).collect();
    let outer = turned(&Region::from(&frame.outline), &turns);
    assert_eq!(relation(&outer, &ground, by), Relation::Same, "{name}: {layers:?}: level at all edges");
    let openings = turned(&frame.openings, &turns);
    let wanted = covered(layout, &frame.layers);
    assert_eq!(relation(&openings, &wanted, by), Relation::Same, "{name}: {layers:?}: where it goes");
    // The frame and its openings are the whole, and no paper is thinner than can be cut.
    let (body, cut) = (frame.body.area2(), frame.openings.area2());
    let whole = frame.outline.area2();
    let off = if straight { 0 } else { i128::from(whole.isqrt() as i64) * 16 };
    assert!((body + cut - whole).abs() <= off, "{name}: {layers:?}: {body} + {cut} is not {whole}");
    assert_eq!(frame.body.parts().len(), 1, "{name}: {layers:?}: in one piece");
    let least = least(design.units).nm();
    let away = distance(&frame.openings, &Region::from(&frame.outline)).unwrap();
    assert!(away >= least, "{name}: {layers:?}: an arm of {away}");
    for (index, one) in frame.openings.parts().iter().enumerate() {
        for other in &frame.openings.parts()[..index] {
            let away = distance(&Region::from(one), &Region::from(other)).unwrap();
            assert!(away >= least, "{name}: {layers:?}: a bar of {away}");
        }
    }
}

/// Every frame that a design could have; how many.
fn all_land(design: &Design, layout: &Layout, name: &str) -> usize {
    let mut count = 0;
    for layer in design.layer_ids() {
        for on in grounds(design, layer) {
            if let Ok(frame) = frame(design, layout, &[layer], on) {
                lands(design, layout, &frame, name);
                count += 1;
            }
        }
    }
    count
}

#[test]
fn every_frame_of_the_demos_lands() {
    let count: usize = of_demos().iter().map(|(name, design, layout)| all_land(design, layout, name)).sum();
    assert!(count > 40, "{count} frames");
}

/// A placement at random: a mat turned or not, on it a piece, a row or a grid of it, turned or not.
fn placement(seed: u64) -> String {
    let mut dice = Dice::new(seed);
    let tenths = |dice: &mut Dice, from: usize, to: usize| {
        let at = from * 10 + dice.of((to - from) * 10 + 1);
        format!("{}.{} mm", at / 10, at % 10)
    };
    let tilt = |dice: &mut Dice| {
        let side = dice.one(&["left", "right"]);
        format!("{}.{:02} degrees {side}", 1 + dice.of(88), dice.of(100))
    };
    let (width, height) = (100 + dice.of(60), 100 + dice.of(60));
    let (wide, high) = (8 + dice.of(30), 8 + dice.of(30));
    let shape = match dice.of(4) {
        0 => ", shape: diamond".to_owned(),
        1 => ", shape: {fishtail: right, deep: 4 mm}".to_owned(),
        2 => ", shape: triangle, right angle at bottom left".to_owned(),
        _ => String::new(),
    };
    // A text with a comma needs quotes between { and }.
    let shape =
        shape.replace("shape: triangle, right angle at bottom left", "shape: \"triangle, right angle at bottom left\"");
    let pieces = format!("  tag: {{size: {wide} x {high} mm, from: slate{shape}}}\n");
    let mut layer = format!(
        "  - place: tag\n    onto: mat\n    left: {}\n    bottom: {}\n    glue: tape\n",
        tenths(&mut dice, 5, 30),
        tenths(&mut dice, 5, 30)
    );
    match dice.of(4) {
        0 => layer.push_str(&format!("    row: {{count: {}, gap: {}}}\n", 2 + dice.of(2), tenths(&mut dice, 5, 9))),
        1 => layer.push_str(&format!("    grid: {{columns: 2, rows: 2, gap: {}}}\n", tenths(&mut dice, 5, 9))),
        _ => {}
    }
    if dice.chance(2) {
        layer.push_str(&format!("    turned: {}\n", tilt(&mut dice)));
    } else if dice.chance(3) {
        layer.push_str("    turned: quarter left\n");
    }
    let text = card("250 x 250 mm", "side", &format!("{width} x {height} mm"), &pieces, &layer, "");
    if dice.chance(3) {
        let tilted = format!("{{place: mat, centre: both ways, turned: {}, glue: tape}}", tilt(&mut dice));
        return text.replace("{place: mat, centre: both ways, glue: tape}", &tilted);
    }
    text
}

fn random_placements(seeds: impl Iterator<Item = u64>) {
    let (mut designs, mut framed) = (0, 0);
    for seed in seeds {
        let text = placement(seed);
        for (design, layout) in laid(&text) {
            let name = format!("placement {seed}\n{text}");
            designs += 1;
            framed += usize::from(all_land(&design, &layout, &name) > 0);
        }
    }
    // Thin arms keep the rest from having one.
    assert!(framed * 2 > designs, "{framed} of {designs} have a frame");
}

/// A tenth of them in every run.
#[test]
fn random_placements_land() {
    random_placements((0..500).filter(|seed| seed % 10 == 0));
}

#[test]
#[ignore = "minutes: run by name"]
fn random_placements_land_all() {
    random_placements(0..500);
}

fn sound_designs(seeds: impl Iterator<Item = u64>) {
    let mut count = 0;
    for seed in seeds {
        for (design, layout) in laid(&sound::design(seed)) {
            count += all_land(&design, &layout, &format!("sound design {seed}"));
        }
    }
    assert!(count > 100, "{count} frames");
}

#[test]
fn frames_of_sound_designs_land() {
    sound_designs((0..500).filter(|seed| seed % 10 == 0));
}

#[test]
#[ignore = "minutes: run by name"]
fn frames_of_sound_designs_land_all() {
    sound_designs(0..500);
}

/// A frame by hand: card 100 x 140, mat 80 x 120 in its middle, a tag of 30 x 20 at 10 from the left and 15 from the
/// bottom of the mat.
#[test]
fn a_frame_reckoned_by_hand() {
    let layer = "  - {place: tag, onto: mat, left: 10 mm, bottom: 15 mm, glue: tape}\n";
    let text = card("100 x 140 mm", "side", "80 x 120 mm", "  tag: {size: 30 x 20 mm, from: slate}\n", layer, "");
    let (design, layout) = laid(&text).remove(0);
    let mm = |left: i64, bottom: i64, width: i64, height: i64| {
        trimwright::geometry::Rect::at(left * 1_000_000, bottom * 1_000_000, width * 1_000_000, height * 1_000_000)
    };
    let on_mat = frame(&design, &layout, &[LayerId(1)], Onto::Layer(LayerId(0))).unwrap();
    assert_eq!(on_mat.outline.bounds(), mm(10, 10, 80, 120));
    assert_eq!(on_mat.openings.bounds(), Some(mm(20, 25, 30, 20)));
    assert_eq!(on_mat.body.area2(), 2 * 1_000_000_000_000 * (80 * 120 - 30 * 20));
    let on_card = frame(&design, &layout, &[LayerId(1)], Onto::Card).unwrap();
    assert_eq!((on_card.outline.bounds(), on_card.openings), (mm(0, 0, 100, 140), on_mat.openings));
}
