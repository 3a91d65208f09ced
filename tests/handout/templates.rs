//! Pages set by a folder of the designer's own templates.

use crate::support::trimwright;
use std::path::{Path, PathBuf};

fn said(output: &std::process::Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// The built-in templates, written out by the program.
fn written(home: &Path) -> PathBuf {
    let output = trimwright(home, &["templates", "mine"]);
    assert!(output.status.success(), "{}", said(&output));
    home.join("mine")
}

fn publish(home: &Path, more: &[&str]) -> std::process::Output {
    if !home.join("kites.yaml").exists() {
        let new = trimwright(home, &["new", "kites", "--month", "2027-01"]);
        assert!(new.status.success(), "{}", said(&new));
    }
    trimwright(home, &[&["publish", "kites.yaml", "--to", "out"], more].concat())
}

fn pdfs(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).expect("the editions") {
        for file in std::fs::read_dir(entry.expect("an edition").path()).expect("an edition") {
            let path = file.expect("a file").path();
            if path.extension().is_some_and(|ending| ending == "pdf") {
                let name = path.file_name().expect("a name").to_string_lossy().into_owned();
                found.push((name, std::fs::read(path).expect("a handout")));
            }
        }
    }
    found.sort();
    found
}

#[test]
fn an_unchanged_copy_sets_the_same_bytes_and_a_changed_one_others() {
    let home = tempfile::tempdir().expect("a folder");
    let folder = written(home.path());
    assert!(publish(home.path(), &[]).status.success());
    let built_in = pdfs(&home.path().join("out"));
    assert!(!built_in.is_empty());
    let output = publish(home.path(), &["--templates", "mine"]);
    assert!(output.status.success(), "{}", said(&output));
    assert!(pdfs(&home.path().join("out")) == built_in);
    let look = std::fs::read_to_string(folder.join("look.typ")).expect("a template");
    std::fs::write(folder.join("look.typ"), look.replace("#1E2A32", "#111111")).expect("written");
    assert!(publish(home.path(), &["--templates", "mine"]).status.success());
    assert!(pdfs(&home.path().join("out")) != built_in);
}

#[test]
fn a_folder_that_will_not_do_is_refused_before_anything_is_published() {
    let home = tempfile::tempdir().expect("a folder");
    let folder = written(home.path());
    let refused = |wanted: &str| {
        let output = publish(home.path(), &["--templates", "mine"]);
        assert_eq!(output.status.code(), Some(2));
        assert!(said(&output).contains(wanted), "`{wanted}` in {}", said(&output));
        assert!(!home.path().join("out").exists(), "nothing is published");
    };
    let front = std::fs::read_to_string(folder.join("front.typ")).expect("a template");
    // What the typesetter says comes with the file and the line: a fourth line is put in that cannot be.
    let broken: Vec<&str> = front.lines().take(3).chain(["#let broken = nothing-of-this-name"]).collect();
    std::fs::write(folder.join("front.typ"), broken.join("\n")).expect("written");
    refused("unknown variable: nothing-of-this-name");
    refused("(front.typ:4)");
    // A file that only the disk has is out of reach, and so is a package.
    for reach in ["#read(\"/etc/passwd\")", "#read(\"../kite.yaml\")", "#import \"@preview/any:1.0.0\": *"] {
        std::fs::write(folder.join("front.typ"), format!("{reach}\n{front}")).expect("written");
        refused("(front.typ:1)");
    }
    std::fs::remove_file(folder.join("front.typ")).expect("removed");
    refused("it lacks `front.typ`");
    std::fs::write(folder.join("front.typ"), &front).expect("written");
    std::fs::create_dir(folder.join("parts")).expect("a folder");
    refused("it holds `parts`, which no page reads");
    std::fs::remove_dir(folder.join("parts")).expect("removed");
    std::fs::write(folder.join("pack.typ"), vec![b' '; 2 << 20]).expect("written");
    refused("`pack.typ`: it is larger than");
    let output = publish(home.path(), &["--templates", "nowhere"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(said(&output).contains("there is no such folder"), "{}", said(&output));
}

#[test]
fn templates_are_never_written_over_anything() {
    let home = tempfile::tempdir().expect("a folder");
    let folder = written(home.path());
    std::fs::write(folder.join("look.typ"), "mine").expect("written");
    for target in ["mine", "mine/look.typ"] {
        let output = trimwright(home.path(), &["templates", target]);
        assert_eq!(output.status.code(), Some(2), "{target}");
        assert!(said(&output).contains("cannot write the templates"), "{}", said(&output));
    }
    assert_eq!(std::fs::read_to_string(folder.join("look.typ")).expect("a template"), "mine");
}
