//! What a design asks for, and what it is told of it.

use trimwright::design::model::{Frames, Onto};
use trimwright::design::variants::Page;
use trimwright::guides::asked::frames;
use trimwright::guides::sheets;

use super::{card, laid};
use crate::support::{found, sound};

const TAG: &str = "  tag: {size: 30 x 20 mm, from: slate}\n";
const LAYER: &str = "  - {place: tag, onto: mat, left: 10 mm, bottom: 15 mm, glue: tape}\n";

fn asks(layers: &str, asked: &str) -> String {
    card("100 x 140 mm", "side", "80 x 120 mm", TAG, layers, asked)
}

#[test]
fn a_frame_lies_where_it_is_said() {
    let on = |asked: &str| {
        let (design, layout) = laid(&asks(LAYER, asked)).remove(0);
        frames(&design, &layout).iter().map(|frame| frame.on).collect::<Vec<_>>()
    };
    let mat = Onto::Layer(trimwright::design::model::LayerId(0));
    assert_eq!(on("frames: [tag on mat]\n"), [mat]);
    assert_eq!(on("frames: [tag on card]\n"), [Onto::Card]);
    assert_eq!(on("frames: [tag]\n"), [mat], "the nearest");
    assert_eq!(on("frames: [mat, tag on card]\n"), [Onto::Card, Onto::Card]);
    assert_eq!(on(""), []);
}

/// Names may hold the words that part a text.
#[test]
fn names_hold_the_words_between() {
    let layers = "  - {place: tag, as: salt and pepper, onto: mat, left: 6 mm, bottom: 15 mm, glue: tape}\n  - {place: tag, as: tag on top, onto: mat, left: 6 mm, bottom: 60 mm, glue: tape}\n";
    let asked = "frames:\n  - salt and pepper and tag on top on mat\n";
    let (design, layout) = laid(&asks(layers, asked)).remove(0);
    let frames = frames(&design, &layout);
    assert_eq!(frames.len(), 1);
    assert_eq!(frames[0].layers.len(), 2);
    assert_eq!(frames[0].openings.parts().len(), 2);
    let Frames::These(these) = &design.frames else { panic!("{:?}", design.frames) };
    assert_eq!(these[0].on, Some(Onto::Layer(trimwright::design::model::LayerId(0))));
}

#[test]
fn what_cannot_be_framed_is_told() {
    let codes = |layers: &str, asked: &str| -> Vec<String> {
        let found = found(&asks(layers, asked));
        let code = |said: String| said.split('@').next().unwrap_or_default().to_owned();
        let guides = [
            "unknown-layer",
            "framed-twice",
            "not-below",
            "frame-too-thin",
            "frame-without-an-edge",
            "wrong-kind",
            "bad-word",
        ];
        found.into_iter().map(code).filter(|code| guides.contains(&code.as_str())).collect()
    };
    assert_eq!(codes(LAYER, "frames: [tg on mat]\n"), ["unknown-layer"]);
    assert_eq!(codes(LAYER, "frames: [tag on matt]\n"), ["unknown-layer"]);
    assert_eq!(codes(LAYER, "frames: [tag, tag]\n"), ["framed-twice"]);
    assert_eq!(codes(LAYER, "frames: [tag and tag]\n"), ["framed-twice"]);
    assert_eq!(codes(LAYER, "frames: [mat on tag]\n"), ["not-below"]);
    assert_eq!(codes(LAYER, "frames: {tag: mat}\n"), ["wrong-kind"]);
    assert_eq!(codes(LAYER, "frames: all\n"), ["bad-word"]);
    assert_eq!(codes(&LAYER.replace("left: 10", "left: 4"), "frames: [tag on mat]\n"), ["frame-too-thin"]);
    let none: [&str; 0] = [];
    assert_eq!(codes(&LAYER.replace("left: 10", "left: 5"), "frames: [tag on mat]\n"), none, "5 mm can be cut");
    assert_eq!(codes(&LAYER.replace("left: 10", "left: 4"), "frames: [tag]\n"), none, "then on the card");
    let copies = LAYER.replace("left: 10 mm, bottom: 15 mm", "left: 5 mm, bottom: 15 mm, row: {count: 2, gap: 4 mm}");
    assert_eq!(codes(&copies, "frames: [tag]\n"), ["frame-too-thin"], "a bar of 4 mm");
}

/// A step says how to lay by the frame, and the measures stay.
#[test]
fn a_step_speaks_of_its_frame() {
    let say = |asked: &str| {
        let project = sound(&asks(LAYER, asked));
        let told = project.steps.steps.iter().map(|step| {
            let told = trimwright::assembly::tell::step(&project.design, &project.layout, step);
            told.line.sentence(told.by_frame).to_plain()
        });
        told.collect::<Vec<_>>().join("\n")
    };
    let (with, without) = (say("frames: [tag on mat]\n"), say(""));
    assert!(with.contains("placing frame: lay the frame level on the mat (2)"), "{with}");
    assert!(!without.contains("frame"), "{without}");
    for line in without.lines() {
        assert!(with.contains(line), "the measures of {line}");
    }
}

#[test]
fn a_design_that_asks_for_nothing_has_no_pages() {
    let (design, layout) = laid(&asks(LAYER, "")).remove(0);
    assert!(sheets(&design, &layout, Page::A4).is_empty());
    let (design, layout) = laid(&asks(LAYER, "frames: [tag]\n")).remove(0);
    let words: Vec<String> = sheets(&design, &layout, Page::A4)
        .iter()
        .flat_map(|sheet| &sheet.guides)
        .map(|guide| guide.word.clone())
        .collect();
    assert_eq!(words, ["frame-tag", "scores-base"]);
}

/// The README's example, with the rest of a design round it.
#[test]
fn the_example_in_the_readme_is_read() {
    let readme = std::fs::read_to_string(crate::support::root().join("README.md")).expect("the README");
    let section = readme.split_once("**Placing frames**").expect("a section").1;
    let example = section.split_once("```yaml\n").expect("a block").1.split_once("```").expect("its end").0;
    let layer = |name: &str, left: u32| {
        format!("  - {{place: tag, as: {name}, onto: mat, left: {left} mm, bottom: 15 mm, glue: tape}}\n")
    };
    let mut layers = format!("{}{}", layer("lantern", 8), layer("label", 8));
    layers.push_str("  - {place: sky, onto: mat, left: 5 mm, top: 5 mm, glue: tape}\n");
    for (name, left) in [("upper tail", 5), ("middle tail", 40), ("lower tail", 75)] {
        layers.push_str(&layer(name, left).replace("onto: mat", "onto: sky").replace("bottom: 15", "bottom: 5"));
    }
    let pieces = format!("{TAG}  sky: {{size: 110 x 60 mm, from: slate}}\n");
    let text = card("140 x 140 mm", "side", "120 x 130 mm", &pieces, &layers, example);
    let (design, layout) = laid(&text).remove(0);
    assert_eq!(frames(&design, &layout).iter().map(|frame| frame.layers.len()).collect::<Vec<_>>(), [1, 1, 3]);
}
