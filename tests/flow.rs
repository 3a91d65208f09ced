//! The main job, end to end, through the program itself.

use crate::support::{demo, demos, tool, trimwright};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Command;

fn files_in(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut files = BTreeMap::new();
    let mut open = vec![folder.to_owned()];
    while let Some(next) = open.pop() {
        for entry in std::fs::read_dir(&next).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                open.push(path);
            } else {
                let bytes = std::fs::read(&path).expect("a file");
                files.insert(path.strip_prefix(folder).expect("inside").to_owned(), bytes);
            }
        }
    }
    files
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

#[test]
fn a_demo_publishes_the_same_bytes_from_another_place_and_time_zone() {
    let home = tempfile::tempdir().expect("a folder");
    // All of them are published twice and compared by `.ci/run`.
    let path = demo("lantern-row").to_string_lossy().into_owned();
    let publish = |folder: &Path, to: &str, zone: &str| {
        std::fs::create_dir_all(folder).expect("a folder");
        let output = Command::new(env!("CARGO_BIN_EXE_trimwright"))
            .current_dir(folder)
            .env("TZ", zone)
            .env("LC_ALL", "C")
            .arg("publish")
            .args([&path, "--to", to])
            .output()
            .expect("it starts");
        assert_eq!(output.status.code(), Some(0), "{}", text(&output.stderr));
        text(&output.stdout)
    };
    let said = publish(home.path(), "one", "UTC");
    let elsewhere = home.path().join("elsewhere/deep");
    publish(&elsewhere, "two", "Pacific/Auckland");
    let (first, second) = (files_in(&home.path().join("one")), files_in(&elsewhere.join("two")));
    assert_eq!(first.keys().collect::<Vec<_>>(), second.keys().collect::<Vec<_>>());
    for (path, bytes) in &first {
        assert!(second[path] == *bytes, "{} differs", path.display());
        assert!(said.contains(&*path.to_string_lossy()), "{} is told", path.display());
    }
    let pdfs: Vec<&PathBuf> = first.keys().filter(|path| path.extension().is_some_and(|e| e == "pdf")).collect();
    let letter = pdfs.iter().filter(|path| path.to_string_lossy().ends_with("handout-letter-inch.pdf")).count();
    let a4 = pdfs.iter().filter(|path| path.to_string_lossy().ends_with("handout-a4-metric.pdf")).count();
    assert_eq!((letter, a4), (1, 1), "{pdfs:?}");

    for path in pdfs {
        let full = home.path().join("one").join(path);
        let full = full.to_string_lossy();
        tool("qpdf", &["--check", &full]);
        let info = tool("pdfinfo", &[&full]);
        // ANSI/ASME Y14.1 letter and ISO 216 A4, in points of 1/72 in.
        let size = if full.contains("letter") { "612 x 792 pts" } else { "595.276 x 841.89 pts" };
        assert!(info.contains(size), "{info}");
        let fonts = tool("pdffonts", &[&full]);
        let rows: Vec<&str> = fonts.lines().skip(2).collect();
        assert!(!rows.is_empty());
        for row in rows {
            // name, type, encoding, emb, sub, uni, object ID: emb is the fifth word from the end.
            let words: Vec<&str> = row.split_whitespace().collect();
            assert_eq!(words[words.len() - 5], "yes", "embedded: {row}");
        }
    }
}

#[test]
fn demos_check_without_an_error_or_a_warning() {
    for path in demos() {
        let output = trimwright(Path::new("."), &["check", "--format", "json", &path.to_string_lossy()]);
        assert_eq!(output.status.code(), Some(0), "{}", text(&output.stdout));
        let value: serde_json::Value = serde_json::from_slice(&output.stdout).expect("JSON");
        for finding in value["findings"].as_array().expect("findings") {
            let quiet = finding["severity"] == "note" || finding["allowed"].is_string();
            assert!(quiet, "{}: {finding}", path.display());
        }
        let output = trimwright(Path::new("."), &["check", &path.to_string_lossy()]);
        assert!(text(&output.stdout).lines().count() > 10, "the design is read back");
    }
}

#[test]
fn a_new_design_checks_clean_and_publishes() {
    let home = tempfile::tempdir().expect("a folder");
    let new = trimwright(home.path(), &["new", "kite-day", "--month", "2027-01"]);
    assert_eq!(new.status.code(), Some(0), "{}", text(&new.stderr));
    assert_eq!(text(&new.stdout).trim(), "kite-day.yaml");
    let check = trimwright(home.path(), &["check", "kite-day.yaml"]);
    assert_eq!(check.status.code(), Some(0), "{}", text(&check.stdout));
    assert!(!text(&check.stdout).contains("error") && !text(&check.stdout).contains("warning"));
    let publish = trimwright(home.path(), &["publish", "kite-day.yaml"]);
    assert_eq!(publish.status.code(), Some(0), "{}", text(&publish.stderr));
    assert!(home.path().join("output/2027-01-kite-day/handout-a4-metric.pdf").exists());

    let again = trimwright(home.path(), &["new", "kite-day"]);
    assert_eq!(again.status.code(), Some(2), "nothing is written over");
    assert!(text(&again.stderr).contains("exists already"));

    let like = trimwright(home.path(), &["new", "wren", "--like", "kite-day.yaml"]);
    assert_eq!(like.status.code(), Some(0), "{}", text(&like.stderr));
    let wren = std::fs::read_to_string(home.path().join("wren.yaml")).expect("the file");
    assert!(wren.contains("\ntitle: Wren\n") && wren.contains("\nmonth: 2027-02\n"), "{wren}");
    assert!(wren.contains("# lowest layer first"), "comments are kept");
}

#[test]
fn a_design_with_errors_is_not_published_but_can_be_drafted() {
    let home = tempfile::tempdir().expect("a folder");
    let sound = std::fs::read_to_string(demo("lantern-row")).expect("the demo");
    let file = home.path().join("lantern-row.yaml");
    std::fs::write(&file, &sound).expect("written");
    assert_eq!(trimwright(home.path(), &["publish", "lantern-row.yaml"]).status.code(), Some(0));
    let folder = home.path().join("output/2026-11-lantern-row");
    let before = files_in(&folder);

    std::fs::write(&file, sound.replace("shows: 1/8 in | 3 mm all round", "shows: 1/4 in | 6 mm all round"))
        .expect("written");
    let refused = trimwright(home.path(), &["publish", "lantern-row.yaml"]);
    assert_eq!(refused.status.code(), Some(1));
    assert!(text(&refused.stderr).contains("border-unlike-claim"), "{}", text(&refused.stderr));
    assert_eq!(files_in(&folder), before, "the edition published before stays whole");

    let draft = trimwright(home.path(), &["publish", "--draft", "lantern-row.yaml"]);
    assert_eq!(draft.status.code(), Some(1), "a draft with errors still says so");
    assert_eq!(files_in(&folder), before, "a draft never replaces an edition");
    let pdf = home.path().join("output/2026-11-lantern-row-draft/draft-letter-inch.pdf");
    let words = tool("pdftotext", &["-layout", &pdf.to_string_lossy(), "-"]);
    let pages: Vec<&str> = words.split('\u{c}').filter(|page| !page.trim().is_empty()).collect();
    assert!(pages.len() > 2);
    for page in &pages {
        assert!(page.contains("DRAFT"), "every page is marked:\n{page}");
    }
    assert!(pages.last().expect("a page").contains("Line "), "the findings stand on the last page");
}

#[test]
fn what_could_not_run_is_told_from_what_is_wrong() {
    let home = tempfile::tempdir().expect("a folder");
    let missing = trimwright(home.path(), &["check", "nowhere.yaml"]);
    assert_eq!(missing.status.code(), Some(2));
    assert!(text(&missing.stderr).contains("nowhere.yaml"), "{}", text(&missing.stderr));
    std::fs::write(home.path().join("broken.yaml"), "cards: [\n").expect("written");
    assert_eq!(trimwright(home.path(), &["check", "broken.yaml"]).status.code(), Some(1));
    std::fs::write(home.path().join("bytes.yaml"), [b't', b':', 0xff, 0xfe, b'\n']).expect("written");
    let bytes = trimwright(home.path(), &["check", "bytes.yaml"]);
    assert_eq!(bytes.status.code(), Some(2));
    assert!(text(&bytes.stderr).contains("line 1"), "{}", text(&bytes.stderr));
    std::fs::write(home.path().join("large.yaml"), "x".repeat(2 << 20)).expect("written");
    assert_eq!(trimwright(home.path(), &["check", "large.yaml"]).status.code(), Some(2));
    assert_eq!(trimwright(home.path(), &["chekc"]).status.code(), Some(2));
    assert_eq!(trimwright(home.path(), &["explain", "no-such-rule"]).status.code(), Some(2));
    assert_eq!(trimwright(home.path(), &["--help"]).status.code(), Some(0));
    // A folder that cannot be made: a file stands in its way.
    std::fs::write(home.path().join("output"), "in the way").expect("written");
    let blocked = trimwright(home.path(), &["publish", &demo("kitchen-garden").to_string_lossy()]);
    assert_eq!(blocked.status.code(), Some(2), "{}", text(&blocked.stderr));
    assert!(text(&blocked.stderr).contains("cannot write"), "{}", text(&blocked.stderr));
}

#[test]
fn bombs_and_bad_bytes_end_soon_with_a_clear_error() {
    let home = tempfile::tempdir().expect("a folder");
    let mut bomb = String::from("a: &a [x, x, x, x, x, x, x, x, x, x]\n");
    for (this, last) in ('b'..='k').zip('a'..='j') {
        bomb.push_str(&format!(
            "{this}: &{this} [*{last}, *{last}, *{last}, *{last}, *{last}, *{last}, *{last}, *{last}, *{last}]\n"
        ));
    }
    let cases = [
        ("bomb", bomb),
        ("deep", "[".repeat(50_000)),
        ("nul", "title: a\0b\n".to_owned()),
        ("wide", format!("cards: {}\n", "9".repeat(100_000))),
        ("keys", (0..20_000).map(|n| format!("k{n}: 1\n")).collect()),
        ("empty", String::new()),
        ("huge", "cards: 1\npapers:\n  a:\n    sheets: 10000 of 90000 x 90000 mm\npieces:\n  p:\n    size: 3 x 3 mm\n    from: a\n    per card: 1000\n".to_owned()),
    ];
    for (name, content) in cases {
        let file = format!("{name}.yaml");
        std::fs::write(home.path().join(&file), content).expect("written");
        for command in ["check", "cuts", "publish"] {
            let output = trimwright(home.path(), &[command, &file]);
            let code = output.status.code();
            assert!(matches!(code, Some(0..=2)), "{command} {name}: {code:?} {}", text(&output.stderr));
            if name != "huge" {
                assert_ne!(code, Some(0), "{command} {name}");
            }
            assert!(!text(&output.stderr).contains("panicked"), "{command} {name}");
        }
    }
}

#[test]
fn a_file_with_only_cards_papers_and_pieces_is_enough_for_cuts() {
    // Common practice, no source: a letter sheet halved gives two bases of 4 1/4 x 5 1/2 in.
    let home = tempfile::tempdir().expect("a folder");
    let design = "cards: 8\npapers:\n  white:\n    sheets: 4 of letter\npieces:\n  base:\n    size: 8 1/2 x 5 1/2 in\n    from: white\n    per card: 1\n";
    std::fs::write(home.path().join("bases.yaml"), design).expect("written");
    let cuts = trimwright(home.path(), &["cuts", "bases.yaml"]);
    assert_eq!(cuts.status.code(), Some(0), "{}", text(&cuts.stderr));
    assert!(text(&cuts.stdout).contains("5 1/2 in"), "{}", text(&cuts.stdout));
    let json = trimwright(home.path(), &["cuts", "--format", "json", "bases.yaml"]);
    let value: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
    assert_eq!(value["totals"]["sheets"], 4);
    assert_eq!(value["aims"]["sheets"]["proven"], true);
    assert_eq!(trimwright(home.path(), &["publish", "bases.yaml"]).status.code(), Some(2));
    // In the other system A4 stands for letter, and 215 mm is wider than its 210 mm: 1 base a sheet, turned.
    let metric = trimwright(home.path(), &["cuts", "--units", "metric", "bases.yaml"]);
    assert_eq!(metric.status.code(), Some(1));
    assert!(text(&metric.stderr).contains("too-few-sheets"), "{}", text(&metric.stderr));
}

#[test]
fn a_reader_who_has_seen_enough_is_no_error() {
    let script = format!("'{}' explain 2>&1 | head -n 1; exit ${{PIPESTATUS[0]}}", env!("CARGO_BIN_EXE_trimwright"));
    let output = Command::new("bash").args(["-c", &script]).output().expect("bash");
    assert_eq!(output.status.code(), Some(0), "{}", text(&output.stdout));
}
