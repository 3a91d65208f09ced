//! `check --mend` on files.

use super::SOUND;
use crate::support::trimwright;
use std::path::Path;

fn written(folder: &Path, name: &str, text: &str) {
    std::fs::write(folder.join(name), text).expect("a file");
}

fn text_of(folder: &Path, name: &str) -> String {
    std::fs::read_to_string(folder.join(name)).expect("the file")
}

#[test]
fn several_files_are_mended_shown_and_checked() {
    let home = tempfile::tempdir().expect("a folder");
    let folder = home.path();
    written(folder, "wren.yaml", &SOUND.replace("glue: foam", "glue: faom  # soft").replace('\n', "\r\n"));
    written(folder, "sound.yaml", SOUND);
    written(folder, "left.yaml", &SOUND.replace("top: 1/2 in", "top: 1/2").replace("place: mat", "place: mta"));
    let output = trimwright(folder, &["check", "--mend", "wren.yaml", "sound.yaml", "left.yaml"]);
    let said = String::from_utf8_lossy(&output.stdout);
    assert_eq!(output.status.code(), Some(1), "one error is left: {said}");
    assert!(
        said.contains("mended: wren.yaml:31\n  -         glue: faom  # soft\n  +         glue: foam  # soft\n"),
        "{said}"
    );
    assert!(said.contains("mended: left.yaml:29\n"), "{said}");
    assert!(said.contains("error[unknown-piece]"), "{said}");
    assert_eq!(text_of(folder, "wren.yaml"), SOUND.replace("glue: foam", "glue: foam  # soft").replace('\n', "\r\n"));
    assert_eq!(text_of(folder, "sound.yaml"), SOUND);
    assert_eq!(text_of(folder, "left.yaml"), SOUND.replace("place: mat", "place: mta"));
    assert_eq!(std::fs::read_dir(folder).expect("the folder").count(), 3, "nothing is left beside them");
    // Once more changes nothing.
    let output = trimwright(folder, &["check", "--mend", "wren.yaml"]);
    assert_eq!(output.status.code(), Some(0));
    assert!(!String::from_utf8_lossy(&output.stdout).contains("mended"));
}

#[test]
fn without_the_word_nothing_is_written() {
    let home = tempfile::tempdir().expect("a folder");
    let typed = SOUND.replace("glue: foam", "glue: faom");
    written(home.path(), "wren.yaml", &typed);
    let output = trimwright(home.path(), &["check", "wren.yaml"]);
    assert_eq!(output.status.code(), Some(1));
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(said.contains("wren.yaml: `check --mend` writes the edits of 1 finding, which are certain\n"), "{said}");
    assert_eq!(text_of(home.path(), "wren.yaml"), typed);
}

#[test]
fn json_lists_what_was_mended() {
    let home = tempfile::tempdir().expect("a folder");
    written(home.path(), "wren.yaml", &SOUND.replace("glue: foam", "glue: faom"));
    let output = trimwright(home.path(), &["check", "--mend", "--format", "json", "wren.yaml"]);
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(
        json["mended"],
        serde_json::json!([{"file": "wren.yaml", "line": 31, "before": "        glue: faom", "after": "        glue: foam"}])
    );
    assert_eq!(output.status.code(), Some(0));
}

#[test]
fn a_file_that_is_read_only_is_said_and_stays() {
    let home = tempfile::tempdir().expect("a folder");
    let typed = SOUND.replace("glue: foam", "glue: faom");
    written(home.path(), "wren.yaml", &typed);
    written(home.path(), "other.yaml", &typed);
    let path = home.path().join("wren.yaml");
    let mut rights = path.metadata().expect("the file").permissions();
    rights.set_readonly(true);
    std::fs::set_permissions(&path, rights).expect("rights");
    let output = trimwright(home.path(), &["check", "--mend", "wren.yaml", "other.yaml"]);
    assert_eq!(output.status.code(), Some(2));
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(said.contains("cannot write `wren.yaml`: it is read-only"), "{said}");
    assert_eq!(text_of(home.path(), "wren.yaml"), typed);
    assert_eq!(text_of(home.path(), "other.yaml"), SOUND, "the others are mended all the same");
}

#[test]
fn plain_sentences_say_what_was_mended() {
    let home = tempfile::tempdir().expect("a folder");
    written(home.path(), "wren.yaml", &SOUND.replace("glue: foam", "glue: faom"));
    let output = trimwright(home.path(), &["check", "--mend", "--plain", "wren.yaml"]);
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(said.starts_with("Line 31 is mended: `glue: faom` is now `glue: foam`.\n"), "{said}");
}
