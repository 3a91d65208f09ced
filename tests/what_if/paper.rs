//! `cuts --paper`: other sheets without touching the file.

use crate::support::{demo, trimwright};
use std::path::Path;

/// Exit code, what is printed, what is said beside it.
fn cuts(arguments: &[&str]) -> (Option<i32>, String, String) {
    let file = demo("lantern-row");
    let mut all = vec!["cuts", file.to_str().expect("a path")];
    all.extend(arguments);
    let output = trimwright(Path::new("."), &all);
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (output.status.code(), text(&output.stdout), text(&output.stderr))
}

/// By hand: a 6 x 6 in sheet with a strip beside it holds one panel of 3 3/4 x 5 in, so four panels
/// take four sheets; twelve lanterns of 1 x 1 3/4 in go beside them, three a sheet.
#[test]
fn other_sheets_are_planned() {
    let before = std::fs::read(demo("lantern-row")).expect("the demo");
    let (code, out, err) = cuts(&["--paper", "dusk=4 of 6 x 6 in"]);
    assert_eq!(code, Some(0), "{err}");
    assert!(out.starts_with("Dusk: 4 of 6 x 6 in instead of 1 of 12 x 12 in.\n"), "{out}");
    assert!(out.contains("edge strip of 1/2 in at the bottom"), "{out}");
    assert!(out.contains("\nDusk: 4 sheets, 6 x 6 in"), "{out}");
    assert!(out.contains("Put the bottom edge of the sheet on 1/2 in"), "the strip stays: {out}");
    assert_eq!(std::fs::read(demo("lantern-row")).expect("the demo"), before, "the file is left alone");

    let (code, out, _) = cuts(&["--paper", "dusk = 4 of 6 x 6 in, without edge strip"]);
    assert_eq!(code, Some(0));
    assert!(!out.contains("strip of") && !out.contains("the edge strip"), "{out}");
}

#[test]
fn it_combines_with_the_other_flags() {
    let (code, out, err) = cuts(&[
        "--units",
        "metric",
        "--most",
        "--format",
        "json",
        "--paper",
        "white=9 of A4",
        "--paper",
        "slate=3 of A4 | 3 of letter",
    ]);
    assert_eq!(code, Some(0), "{err}");
    let value: serde_json::Value = serde_json::from_str(&out).expect("JSON");
    assert_eq!(value["units"], "metric");
    let plain: serde_json::Value =
        serde_json::from_str(&cuts(&["--units", "metric", "--format", "json"]).1).expect("JSON");
    assert!(value["most"].as_u64() >= plain["cards"].as_u64() && value["aims"]["cards"]["proven"] == true, "{out}");
}

#[test]
fn faults_are_shown_in_what_was_said() {
    for (said, code, line, help) in [
        ("dsuk=3 of 6 x 6 in", "unknown-paper", "1:1", "write `dusk`, the nearest of 4 names"),
        ("dusk", "bad-size", "1:1", "write it as `dusk=3 of 6 x 6 in`"),
        ("dusk=", "bad-size", "1:6", "write it as `dusk=3 of 6 x 6 in`"),
        ("dusk=3 of 6 x 6", "missing-unit", "1:11", "say `6 x 6 in`"),
        ("dusk=3 of lettr", "bad-size", "1:11", "write `letter`, the nearest"),
        ("dusk=6 x 6 in", "bad-count", "1:6", "such as `2 of letter`"),
        ("dusk=0 of letter", "bad-count", "1:6", "a whole number from 1"),
        ("dusk=1 of 0 x 6 in", "size-not-positive", "1:11", "more than 0"),
    ] {
        let (ended, out, err) = cuts(&["--paper", said]);
        assert_eq!((ended, out.as_str()), (Some(2), ""), "{said}: {err}");
        assert!(err.contains(&format!("error[{code}]")), "{said}: {err}");
        assert!(err.contains(&format!("--> --paper:{line}")), "{said}: {err}");
        assert!(err.contains(help), "{said}: {err}");
    }
    let (ended, _, err) = cuts(&["--paper", "dusk=1 of letter", "--paper", "dusk=2 of letter"]);
    assert_eq!(ended, Some(2));
    assert!(err.contains("said twice"), "{err}");
}

/// What the rules find about the sheets said stands in what was said; the rest in the file.
#[test]
fn findings_stand_in_the_text_they_are_about() {
    let (ended, out, err) = cuts(&["--paper", "slate=1 of letter", "--paper", "dusk=3 of 6 x 6 in"]);
    assert_eq!(ended, Some(1), "{err}");
    assert!(out.contains("No place was found for 1 panel from Dusk."), "{out}");
    assert!(err.contains("1 | dusk=3 of 6 x 6 in\n  |      ^^^^^^^^^^^^^ 3 sheets give all but 1 panel"), "{err}");
    assert!(err.contains("1 | slate=1 of letter\n  |       ^^^^^^^^^^^ 1 sheet gives all but"), "{err}");
    assert!(err.contains("lantern-row.yaml:26:13"), "{err}");
    assert!(!err.contains("in the inch edition"), "only one edition is planned: {err}");
}
