//! `also from`: other sheets that the file names, each planned too.

use crate::support::{demo, run, tool, trimwright};

#[test]
fn other_sheets_are_planned_and_printed() {
    let home = tempfile::tempdir().expect("a folder");
    let sound = std::fs::read_to_string(demo("lantern-row")).expect("the demo");
    let also = "sheets: 1 of 12 x 12 in\n    also from: [4 of 6 x 6 in | 5 of 152 x 152 mm, 3 of 6 x 6 in | 3 of 152 x 152 mm]";
    let design = sound.replacen("sheets: 1 of 12 x 12 in", also, 1);
    std::fs::write(home.path().join("lanterns.yaml"), &design).expect("written");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let project = run(&design).editions.into_iter().next().expect("an edition");
    assert_eq!(project.others.len(), 2);
    for other in &project.others {
        assert!(other.own_plan().sheets.iter().all(|sheet| sheet.paper == other.paper));
        assert_eq!(other.own_plan().sheets.first().map(|sheet| sheet.diagram), Some(0));
    }
    // By hand: one panel of 3 3/4 x 5 in from each 6 x 6 in sheet, so three sheets give three of four.
    let cuts = trimwright(home.path(), &["cuts", "lanterns.yaml"]);
    let (out, err) = (text(&cuts.stdout), text(&cuts.stderr));
    assert_eq!(cuts.status.code(), Some(0), "a warning is no error: {err}");
    let (_, others) = out.split_once("\nDusk, if you have 4 of 6 x 6 in instead\n").expect("its own heading");
    assert!(others.starts_with("\nDusk: 4 sheets, 6 x 6 in") && !others.contains("Ember: "), "{others}");
    assert!(
        others.ends_with("No place was found for 1 panel from Dusk.\nThese sheets give 7 cards, not 8.\n"),
        "{others}"
    );
    assert!(
        err.contains("warning[too-few-other-sheets]") && err.contains("3 sheets give 7 cards, all but 1 panel"),
        "{err}"
    );
    let json = trimwright(home.path(), &["cuts", "lanterns.yaml", "--format", "json"]);
    let value: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
    assert_eq!((&value["also"][0]["paper"], &value["also"][0]["from"]), (&"dusk".into(), &"4 of 6 x 6 in".into()));
    assert_eq!(value["also"][0]["totals"]["sheets"], 4);
    assert_eq!(value["also"][1]["missing"], serde_json::json!([{"piece": "panel", "count": 1}]));

    let publish = trimwright(home.path(), &["publish", "lanterns.yaml"]);
    assert_eq!(publish.status.code(), Some(0), "{}", text(&publish.stderr));
    let pdf = home.path().join("output/2026-11-lanterns/handout-letter-inch.pdf");
    let words = tool("pdftotext", &[&pdf.to_string_lossy(), "-"]);
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
    for said in [
        "Cut from other sheets",
        "Dusk, from 4 of 6 x 6 in",
        "Dusk, from 3 of 6 x 6 in",
        "These sheets give 7 cards, not 8.",
    ] {
        assert!(words.replace('×', "x").contains(said), "{said}");
    }
}
