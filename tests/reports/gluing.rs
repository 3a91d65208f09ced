//! What the rules find in the order of gluing and in foam; every number is worked out by hand beside it.

use super::kite::{card, labels, of, told};
use crate::support::run;
use trimwright::assembly::model::Action;
use trimwright::diagnostic::Severity;

/// Where the steps of an inch design stand: `glue rail`, `trim rail`.
fn order(text: &str) -> Vec<String> {
    let outcome = run(text);
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    let project = &outcome.editions[0];
    let name = |layer| project.design.layer(layer).name.clone();
    project
        .steps
        .steps
        .iter()
        .filter_map(|step| match step.action {
            Action::Glue { layer, .. } => Some(format!("glue {}", name(layer))),
            Action::Trim { layer, .. } => Some(format!("trim {}", name(layer))),
            Action::Stamp { .. } => Some("stamp".to_owned()),
            _ => None,
        })
        .collect()
}

/// A rail, 4 1/2 in long, on a panel that is put together first on the mat, trimmed level with `to`.
fn nested(to: &str) -> String {
    card(
        "inch",
        "side",
        "  panel: {size: 3 3/4 x 5 in, from: white}\n  rail: {size: 4 1/2 x 1/2 in, from: slate, stamp: hello}\n",
        &format!(
            "front:\n  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n\
             \x20     - place: panel\n        centre: both ways\n        glue: tape\n        first:\n\
             \x20         - place: rail\n            centre: both ways\n            trim flush: {to}\n            glue: tape\n"
        ),
    )
}

#[test]
fn a_layer_is_trimmed_when_it_and_what_shows_the_way_are_joined_and_words_are_stamped_first() {
    assert_eq!(order(&nested("panel")), ["stamp", "glue rail", "trim rail", "glue panel", "glue mat"]);
    assert_eq!(order(&nested("mat")), ["stamp", "glue rail", "glue panel", "trim rail", "glue mat"]);
    // The card is there only when the whole unit lies on it.
    assert_eq!(order(&nested("card")), ["stamp", "glue rail", "glue panel", "glue mat", "trim rail"]);
}

#[test]
fn a_trimmed_step_of_a_nested_layer_has_its_picture_and_its_words() {
    for to in ["panel", "mat", "card"] {
        let outcome = run(&nested(to));
        let project = &outcome.editions[0];
        let at = project.steps.steps.iter().position(|step| matches!(step.action, Action::Trim { .. })).unwrap();
        let scene = trimwright::drawing::figures::step::step(project, at, trimwright::drawing::scale::Print::NORMAL)
            .expect("a picture");
        assert!(
            scene.alt.contains(&format!("trimmed level with {}", if to == "card" { "the card" } else { to })),
            "{to}: {}",
            scene.alt
        );
        let step = &project.steps.steps[at];
        let line = trimwright::assembly::tell::step(&project.design, &project.layout, step).line.to_plain();
        let is_loose = to != "card";
        assert_eq!(line.contains("Turn it face down"), is_loose, "{line}");
    }
}

#[test]
fn foam_that_is_not_yet_under_a_loose_unit_harms_no_trimming() {
    let foam = |unit: &str, rail: &str, to: &str| {
        nested(to)
            .replacen("centre: both ways\n    glue: tape", &format!("centre: both ways\n    glue: {unit}"), 1)
            .replace("            glue: tape", &format!("            glue: {rail}"))
    };
    // The mat is glued with foam when all is trimmed already; only level with the card it comes too early.
    assert_eq!(labels(&foam("foam", "tape", "mat"), "glue-before-trim"), [""; 0]);
    assert_eq!(labels(&foam("foam", "tape", "card"), "glue-before-trim"), ["foam under the mat by then"]);
    assert_eq!(labels(&foam("tape", "foam", "panel"), "glue-before-trim"), ["foam under the rail by then"]);
}

#[test]
fn what_lies_over_an_end_is_cut_with_it() {
    // The rail reaches 1/4 in past the mat at each end; a tag 1/16 in from its end lies over 3/16 in of that.
    let tag = |left: &str, more: &str| {
        card(
            "inch",
            "side",
            "  rail: {size: 4 1/2 x 1/2 in, from: slate}\n  tag: {size: 1 x 1/4 in, from: white}\n",
            &format!(
                "front:\n  - place: mat\n    centre: both ways\n    glue: tape\n    first:\n\
                 \x20     - {{place: rail, centre: both ways, trim flush: mat, glue: tape}}\n\
                 \x20     - {{place: tag, onto: rail, left: {left}, centre: up and down, glue: tape{more}}}\n"
            ),
        )
    };
    let found = |text: &str| -> Vec<(String, String)> {
        let findings = run(text).findings.into_iter().filter(|finding| finding.code == "glue-before-trim");
        findings.map(|finding| (finding.primary.text, finding.help.unwrap_or_default())).collect()
    };
    assert_eq!(
        found(&tag("1/16 in", "")),
        [(
            "3/16 x 1/4 in of it lies past the edge of the mat".to_owned(),
            "lay the tag 3/16 in further in, or say `trim flush: mat` for it too".to_owned()
        )]
    );
    assert_eq!(found(&tag("1/4 in", "")), []);
    // Trimmed itself, it is meant.
    assert_eq!(found(&tag("1/16 in", ", trim flush: mat")), []);
}

/// A stack of `foams` panels on foam, and a pearl of some thickness on it, in one edition.
fn stack(units: &str, foams: usize, pearl: &str) -> String {
    let panels: String = (0..foams)
        .map(|n| {
            format!(
                "  - {{place: panel, as: panel {n}, centre: both ways, glue: foam, onto: {}}}\n",
                match n {
                    0 => "mat".to_owned(),
                    n => format!("panel {}", n - 1),
                }
            )
        })
        .collect();
    let mut text = card(
        units,
        "side",
        "  panel: {size: 2 x 2 in | 50 x 50 mm, from: white}\n",
        &format!(
            "decorations:\n  pearl: {{size: 1/4 x 1/4 in | 6 x 6 mm, form: round, thick: {pearl}}}\n\
             front:\n  - {{place: mat, centre: both ways, glue: tape}}\n{panels}"
        ),
    );
    text.push_str("  - {place: pearl, centre: both ways, glue: dot}\n");
    // Every paper 0.01 in thick, two panels of it the base.
    text.replace("2 of 12 x 12 in}", "2 of 12 x 12 in, thickness: 0.01 in}")
        .replace("letter}", "letter, thickness: 0.01 in}")
}

#[test]
fn a_card_is_as_thick_as_a_letter_may_be_and_no_thicker() {
    // Published limits. USPS: letters at most 1/4 in thick, DMM 101.1.1, archive of 24 January 2021
    // (pe.usps.com/Archive/NHTML/DMMArchive20210124/101.htm). Royal Mail letter: at most 5 mm
    // (ask.ofcom.org.uk/help/post/largeletter). Canada Post standard lettermail: at most 5 mm
    // (canadapost lettermail/size-requirements.page). Thin foam of 1/16 in or 1.5 mm is common practice, no source.
    let code = "foam-too-thick-to-post";
    let warned = |text: &str| of(text, code).iter().any(|finding| finding.severity == Severity::Warning);
    // Base, mat and panel are 0.04 in of paper, the foam 1/16 in, both sides of an envelope of 90 g/m2 0.0095 in:
    // 0.112 in, and a pearl of 1/8 in makes it 0.237 in, one of 9/64 in 0.2526 in.
    assert!(!warned(&stack("inch", 1, "1/8 in")));
    assert_eq!(
        labels(&stack("inch", 1, "9/64 in"), code),
        ["a little over 1/4 in in its envelope, 13/64 in of it foam and decorations, with thin foam"]
    );
    assert_eq!(
        told(&stack("inch", 1, "1/4 in"), code),
        [(
            "about 0.36 in in its envelope, 5/16 in of it foam and decorations, with thin foam".to_owned(),
            "make it 1/4 in or less: say `glue: tape` for 1 layer there, or ask your post office, whose rules decide"
                .to_owned()
        )]
    );
    // 4 x 0.254 + 1.5 + 0.242 = 2.758; 2.2 makes it 4.958, 2.3 makes it 5.058.
    assert!(!warned(&stack("metric", 1, "2.2 mm")));
    assert!(warned(&stack("metric", 1, "2.3 mm")));
    // Four foams of 1/16 in are 1/4 in before anything lies on them.
    assert!(warned(&stack("inch", 4, "1/64 in")));
}

#[test]
fn foam_over_foam_is_a_note_with_thin_and_thick_foam() {
    // 2 x 1/16 and 1/16 for the pearl; 2 x 1/8 and 1/16.
    assert_eq!(
        labels(&stack("inch", 2, "1/16 in"), "foam-too-thick-to-post"),
        ["3/16 in high with foam of 1/16 in, 5/16 in with foam of 1/8 in"]
    );
    assert!(of(&stack("inch", 2, "1/16 in"), "foam-too-thick-to-post").iter().all(|f| f.severity == Severity::Note));
}

/// Two tags on foam, one on the front and one inside, at places of their own.
fn through(fold: &str, front: &str, inside: &str) -> Vec<String> {
    let text = card(
        "inch",
        fold,
        "  tag: {size: 1 x 1 in, from: slate}\n",
        &format!(
            "front:\n  - {{place: mat, centre: both ways, glue: tape}}\n\
             \x20 - {{place: tag, as: outer, {front}, glue: foam}}\n\
             inside:\n  - {{place: tag, as: inner, {inside}, glue: foam}}\n"
        ),
    );
    labels(&text, "foam-too-thick-to-post")
}

#[test]
fn foam_inside_lies_under_the_front_when_the_card_is_closed() {
    let over = ["1/8 in high with foam of 1/16 in, 1/4 in with foam of 1/8 in"];
    // A book: the left panel is the back of the front, so its right edge lies at the front's left edge.
    assert_eq!(through("side", "left: 1/2 in, top: 1 in", "panel: left, right: 1/2 in, top: 1 in"), over);
    assert_eq!(through("side", "left: 1/2 in, top: 1 in", "panel: left, left: 1/2 in, top: 1 in"), [""; 0]);
    // The right panel lies behind the front as it is.
    assert_eq!(through("side", "left: 1/2 in, top: 1 in", "panel: right, left: 1/2 in, top: 1 in"), over);
    // The whole inside, 8 1/2 in wide: 4 1/4 + 1/2 from the left is the right panel's left.
    assert_eq!(through("side", "left: 1/2 in, top: 1 in", "left: 4 3/4 in, top: 1 in"), over);
    // A tent: the upper panel is the back of the front, upside down.
    assert_eq!(through("top", "left: 1/2 in, top: 1 in", "panel: upper, left: 1/2 in, bottom: 1 in"), over);
    assert_eq!(through("top", "left: 1/2 in, top: 1 in", "panel: upper, left: 1/2 in, top: 1 in"), [""; 0]);
    assert_eq!(through("top", "left: 1/2 in, top: 1 in", "panel: lower, left: 1/2 in, top: 1 in"), over);
    // Two flaps, each 2 1/8 in: the right one folds back over the right half, its outer edge in the middle.
    assert_eq!(through("gate", "right: 1/2 in, top: 1 in", "panel: right, left: 1/2 in, top: 1 in"), over);
    assert_eq!(through("gate", "right: 1/2 in, top: 1 in", "panel: left, right: 1/2 in, top: 1 in"), [""; 0]);
    assert_eq!(through("gate", "right: 1/2 in, top: 1 in", "panel: middle, right: 1/2 in, top: 1 in"), over);
}
