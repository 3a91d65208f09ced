//! The whole card: random designs with layers on every side of card and envelope go through every stage.

mod deal;

use crate::reading::sound::{GARDEN_GATE, LANTERN_ROW};
use crate::support::{root, run, sound, tool};
use proptest::prelude::*;
use std::collections::BTreeMap;
use trimwright::assembly::model::Action;
use trimwright::assembly::tell;
use trimwright::design::model::{Face, From};
use trimwright::design::variants::Wanted;
use trimwright::diagnostic::Severity;
use trimwright::drawing::figures::{Room, front, step, view};
use trimwright::drawing::scale::Print;
use trimwright::handout::{self, Told};
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::readback::read_back;
use trimwright::source::Source;

/// What can be placed, with its glue.
const PIECES: [(&str, &str); 6] =
    [("mat", "tape"), ("tag", "liquid"), ("word", "foam"), ("sail", "liquid"), ("pearl", "dot"), ("cord", "dot")];
const ACROSS: [&str; 4] = ["centre: across", "left: 1/4 in", "right: 0 in", "left: 6 in"];
const UP: [&str; 4] = ["centre: up and down", "top: 1/8 in", "bottom: 1/2 in", "top: 9 in"];
const MORE: [&str; 8] = [
    "",
    "turned: half",
    "turned: 12.5 degrees left",
    "row: {count: 2, gap: 1/8 in}",
    "triangle: {rows: 2, gap: 1/8 in, pointing: up}",
    "trim flush: card",
    "mirrored: left to right",
    "shifted: 1/16 in left and 1/16 in up",
];

/// Choices for one layer: piece, across, up, one thing more, on the layer before it, panel.
type Choice = (usize, usize, usize, usize, bool, usize);

fn layer(name: &str, choice: &Choice, before: Option<&str>, panel: &str, indent: &str, text: &mut String) {
    let (piece, across, up, more, on_it, _) = *choice;
    let (piece, glue) = PIECES[piece];
    text.push_str(&format!("{indent}- place: {piece}\n{indent}  as: {name}\n"));
    match before.filter(|_| on_it) {
        Some(before) => text.push_str(&format!("{indent}  onto: {before}\n")),
        None => text.push_str(panel),
    }
    let (across, up) = if (across, up) == (0, 0) { ("centre: both ways", "") } else { (ACROSS[across], UP[up]) };
    for line in [across, up, MORE[more], &format!("glue: {glue}")] {
        if !line.is_empty() {
            text.push_str(&format!("{indent}  {line}\n"));
        }
    }
}

fn list(face: &str, choices: &[Choice], panels: &[&str], indent: &str, text: &mut String) {
    for (n, choice) in choices.iter().enumerate() {
        let before = n.checked_sub(1).map(|before| format!("{face} {before}"));
        let panel = match choice.5.checked_rem(panels.len() + 1) {
            Some(panel) if panel < panels.len() => format!("{indent}  panel: {}\n", panels[panel]),
            _ => String::new(),
        };
        layer(&format!("{face} {n}"), choice, before.as_deref(), &panel, indent, text);
    }
}

fn design() -> impl Strategy<Value = String> {
    let choices = |least| {
        prop::collection::vec(
            (0..PIECES.len(), 0..4_usize, 0..4_usize, 0..8_usize, any::<bool>(), 0..9_usize),
            least..4,
        )
    };
    let sides = (choices(1), choices(0), choices(0), choices(0), choices(0));
    (0..5_usize, 1..4_u32, sides).prop_map(|(fold, cards, (front, inside, back, address, flap))| {
        let folds: [(&str, &[&str]); 5] = [
            ("side", &["left", "right"]),
            ("top", &["upper", "lower"]),
            ("gate", &["left", "middle", "right"]),
            ("{accordion: 3}", &["1", "2", "3"]),
            ("none", &[]),
        ];
        let (fold, panels) = folds[fold];
        let mut text = format!(
            "title: Any\nmonth: 2027-01\ncards: {cards}\nunits: inch\n\
             card: {{size: 4 x 5 in, fold: {fold}, from: white}}\n\
             papers:\n  white: {{sheets: 9 of 12 x 12 in}}\n  dot: {{sheets: 40 of 12 x 12 in, pattern: two-way}}\n\
             pieces:\n  mat: {{size: card less 1/8 in all round, from: white}}\n\
             \x20 tag: {{size: 2 x 1 in, from: dot, stamp: hello}}\n\
             \x20 word: {{size: 2 x 3/4 in, from: dot, by: die, margin: 1/4 in, die-cut words: hello}}\n\
             \x20 sail: {{size: 1 x 2 in, from: dot, shape: \"triangle, right angle at bottom left\", printed: ho}}\n\
             decorations:\n  pearl: {{size: 1/4 x 1/4 in, form: round, thick: 1/16 in}}\n\
             \x20 cord: {{size: 1/8 x 4 in, length: 12 in}}\n"
        );
        for (key, choices, panels) in
            [("front", &front, &[] as &[&str]), ("inside", &inside, panels), ("back", &back, &[])]
        {
            if !(choices.is_empty() || key == "inside" && fold == "none") {
                text.push_str(&format!("{key}:\n"));
                list(key, choices, panels, "  ", &mut text);
            }
        }
        text.push_str("envelope:\n  size: 5 3/4 x 4 3/8 in\n  flap: 2 in\n");
        for (key, name, choices) in [("front", "address", &address), ("on the flap", "flap", &flap)] {
            if !choices.is_empty() {
                text.push_str(&format!("  {key}:\n"));
                list(name, choices, &[], "    ", &mut text);
            }
        }
        text
    })
}

/// Everything that is said and drawn of a project, and what must hold of it.
fn hold(project: &Project, text: &str) {
    let design = &project.design;
    // Every layer is glued once, on the side that its list says.
    let mut glued: BTreeMap<usize, u32> = BTreeMap::new();
    for told in &project.steps.steps {
        if let Action::Glue { layer, .. } = told.action {
            *glued.entry(layer.0).or_insert(0) += 1;
        }
        let words = tell::step(design, &project.layout, told);
        if !matches!(told.action, Action::Cut { .. }) {
            assert!(!words.line.is_empty(), "{:?} says nothing\n{text}", told.action);
        }
    }
    assert!(design.layer_ids().all(|id| glued.get(&id.0) == Some(&1)), "{glued:?}\n{text}");
    for layer in &design.layers {
        let side = match layer.face {
            Face::Front => "front ",
            Face::Inside(_) => "inside ",
            Face::Back => "back ",
            Face::EnvelopeFront => "address ",
            Face::EnvelopeFlap => "flap ",
        };
        assert!(layer.name.starts_with(side), "{} lies on {:?}\n{text}", layer.name, layer.face);
    }
    // What is bought is never cut.
    for sheet in &project.plan.sheets {
        assert!(sheet.pieces().iter().all(|(piece, _)| design.piece(*piece).from != From::Bought), "{text}");
    }
    for index in 0..project.steps.steps.len() {
        let _ = step::step(project, index, Print::NORMAL);
    }
    for view in view::views(project) {
        for version in design.version_ids() {
            assert!(front::face(project, version, view, Room::tenths_of_mm(850, 640)).is_some(), "{view:?}\n{text}");
        }
    }
    assert!(!read_back(project).is_empty());
    let pages = handout::compose(project, Wanted::HANDOUT, &Told::default());
    let steps: usize = pages.together.iter().flat_map(|pages| &pages.parts).map(|part| part.steps.len()).sum();
    let prepared = pages.together.as_ref().map_or(0, |pages| pages.preparing.len());
    let all = project.steps.steps.iter().filter(|step| !matches!(step.action, Action::Cut { .. })).count();
    assert_eq!(steps + prepared, all, "each step stands on the pages once\n{text}");
}

proptest! {
    #![proptest_config(crate::support::cases(48))]

    #[test]
    fn random_cards_with_all_their_sides_never_panic(text in design()) {
        let outcome = run(&text);
        let reading: Vec<&str> = outcome
            .findings
            .iter()
            .map(|finding| finding.code)
            .filter(|code| matches!(*code, "on-another-side" | "no-inside" | "unknown-key" | "bad-word"))
            .collect();
        prop_assert!(reading.is_empty(), "{reading:?}\n{text}");
        prop_assert_eq!(outcome.editions.len(), 1, "{:?}\n{}", outcome.findings, text);
        for project in &outcome.editions {
            hold(project, &text);
        }
        prop_assert_eq!(pipeline::referee(&outcome.editions), Ok(()), "{}", text);
    }
}

/// Moving a layer from one side to another moves no other and changes nothing that is cut.
#[test]
fn sides_do_not_touch_each_other() {
    let text = |side: &str| {
        format!(
            "title: Any\nmonth: 2027-01\ncards: 2\nunits: inch\ncard: {{size: 4 x 5 in, fold: side, from: white}}\n\
             papers: {{white: {{sheets: 4 of letter}}}}\npieces:\n  mat: {{size: 3 3/4 x 4 3/4 in, from: white}}\n\
             \x20 tag: {{size: 2 x 1 in, from: white}}\nenvelope: {{size: 5 1/4 x 4 1/4 in, flap: 2 in}}\n\
             front: [{{place: mat, centre: both ways, glue: tape}}]\n\
             {side}:\n  - {{place: tag, left: 1 in, bottom: 1/2 in, glue: tape}}\n"
        )
    };
    let plans: Vec<Project> = ["inside", "back"].into_iter().map(|side| run(&text(side)).editions.remove(0)).collect();
    let [inside, back] = plans.as_slice() else { panic!() };
    assert_eq!(inside.plan.sheets, back.plan.sheets);
    assert_eq!(inside.layout.layers[0].block, back.layout.layers[0].block);
    assert_eq!(inside.layout.layers[1].block, back.layout.layers[1].block);
    let titles = |project: &Project| -> Vec<Option<String>> {
        handout::compose(project, Wanted::HANDOUT, &Told::default())
            .together
            .unwrap()
            .parts
            .iter()
            .map(|part| part.title.clone())
            .collect()
    };
    assert_eq!(titles(inside), ["The front", "The inside"].map(|title| Some(title.to_owned())));
    assert_eq!(titles(back), ["The front", "The back"].map(|title| Some(title.to_owned())));
}

/// The words of the pages, read back by poppler, against the design: every side has its place, and the cut
/// list gives the rectangle under a die.
#[test]
fn pages_of_a_whole_card() {
    let project = sound(GARDEN_GATE);
    let folder = tempfile::tempdir().expect("a folder");
    let pdf = folder.path().join("gate.pdf");
    std::fs::write(&pdf, handout::typeset(&project, Wanted::HANDOUT, &Told::default()).expect("a PDF"))
        .expect("written");
    let words = tool("pdftotext", &["-raw", &pdf.to_string_lossy(), "-"]);
    let tight = |text: &str| text.split_whitespace().collect::<String>();
    let page = tight(&words);
    // 3 x 1 in with 1/4 in round it for the die is 3 1/2 x 1 1/2 in; two of the word a card would be eight.
    for wanted in [
        "opens in the middle, from 10 × 5",
        // Of each card: base, 2 leaves, latch, field, word, shade, note, 2 strips, liner; nothing bought.
        "44 pieces to cut, 11 for each card",
        "4 words 5 3 1/2 × 1 1/2 cut out with the die later, 3 × 1",
        "8 strips 8 1/2 × 4",
        "Print before you cut: “made by hand” stands on each note 7",
        "The other sides",
        "The front of the envelope",
        "The back of the envelope",
    ] {
        assert!(page.contains(&tight(wanted)), "{wanted}\n{words}");
    }
    // Steps stand under their side, in the order of the work.
    let order =
        ["Put together first", "The front", "Decorating", "The inside", "Decorating", "The back", "The envelope"];
    let parts = handout::compose(&project, Wanted::HANDOUT, &Told::default()).together.unwrap().parts;
    assert_eq!(
        parts.iter().map(|part| part.title.clone()).collect::<Vec<_>>(),
        order.map(|title| Some(title.to_owned()))
    );
    let start = page.find(&tight("Putting it together")).expect("the steps");
    for title in order {
        assert!(page[start..].contains(&tight(title)), "{title}");
    }
    for step in project.steps.steps.iter().filter(|step| step.number.is_some()) {
        assert!(page[start..].contains(&step.number.unwrap().to_string()));
    }
}

/// A card of a front alone has no titles over its steps and no page of other sides.
#[test]
fn a_front_alone_needs_no_titles() {
    let project = sound(LANTERN_ROW);
    let pages = handout::compose(&project, Wanted::HANDOUT, &Told::default());
    assert_eq!(pages.sides, None);
    assert_eq!(pages.together.unwrap().parts.iter().map(|part| part.title.clone()).collect::<Vec<_>>(), [None]);
}

/// An example of the README in a design with `more` pieces, and a front where it has none.
fn example(section: &str, pieces: &str, front: &str) -> Vec<String> {
    let readme = std::fs::read_to_string(root().join("README.md")).expect("the README");
    let section = readme.split_once(section).expect("a section").1;
    let example = section.split_once("```yaml\n").expect("a block").1.split_once("```").expect("its end").0;
    let slate =
        if example.contains("slate") || pieces.contains("slate") { "  slate: {sheets: 2 of letter}\n" } else { "" };
    let papers = format!("papers:\n  white: {{sheets: 2 of letter}}\n{slate}");
    let example = match example.strip_prefix("papers:\n") {
        Some(more) => format!("{papers}{more}"),
        None => format!("{papers}{example}"),
    };
    let text = format!(
        "title: Fir\nmonth: 2027-06\ncards: 1\nunits: inch and metric\n\
         card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}}\n{}{front}",
        example.replace("pieces:\n", &format!("pieces:\n{pieces}"))
    );
    let fir = std::fs::read(root().join("designs/fir.svg")).expect("the drawing");
    let source = Source::new("design.yaml", text).with_beside("fir.svg", Ok(fir));
    let findings = pipeline::run(&source, "design").findings;
    let loud = findings.iter().filter(|finding| finding.severity != Severity::Note);
    loud.map(|finding| format!("{}: {} ({})", finding.code, finding.message, finding.primary.text)).collect()
}

#[test]
fn the_examples_in_the_readme_are_sound() {
    let lies = [
        ("front:\n", "sail", "1/2 in | 12 mm", "1/4 in | 6 mm"),
        ("", "bow", "2 1/2 in | 62 mm", "1/4 in | 6 mm"),
        ("", "label", "1/2 in | 12 mm", "2 1/4 in | 56 mm"),
        ("", "ticket", "1/2 in | 12 mm", "3 1/4 in | 80 mm"),
        ("", "flag", "1/2 in | 12 mm", "4 3/8 in | 108 mm"),
        ("", "moon", "2 3/4 in | 66 mm", "3 1/4 in | 80 mm"),
        ("back:\n", "frame", "1/4 in | 6 mm", "1/8 in | 3 mm"),
        ("", "fir", "1/4 in | 6 mm", "4 1/4 in | 108 mm"),
        ("inside:\n", "pane", "1 in | 25 mm", "1 in | 25 mm"),
    ];
    let lies = lies.map(|(face, name, left, top)| {
        let panel = if face.starts_with("inside") { ", panel: right" } else { "" };
        format!("{face}  - {{place: {name}{panel}, left: {left}, top: {top}, glue: tape}}\n")
    });
    let front = lies.concat();
    let told = example("**Shapes**", "", &front);
    assert!(told.is_empty(), "{told:#?}");
    assert_eq!(example("**The rest of the card**", "", ""), Vec::<String>::new());
    let cells = "front:\n  - {place: scene, centre: both ways, glue: tape}\n  - {place: bar, left: 0 in, top: 0 in, glue: tape}\n";
    let bar = "  bar: {size: 1 x 1 in | 25 x 25 mm, from: slate}\n";
    assert_eq!(example("A sheet of printed pictures", bar, cells), Vec::<String>::new());
}
