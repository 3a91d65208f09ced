//! The house: imports only downward, every dependency with a reason, nothing outside the agreed list.

use crate::support::{root, sources};
use std::collections::BTreeSet;
use std::path::Path;

/// Ground floor first; a file may use only what stands before its own place.
const PLACES: [&str; 28] = [
    "length",
    "colour",
    "picture",
    "source",
    "files",
    "fonts",
    "side_by_side",
    "geometry",
    "shape",
    "diagnostic",
    "words",
    "weight",
    "design",
    "layout",
    "cutting",
    "paper",
    "guides",
    "assembly",
    "project",
    "rules",
    "drawing",
    "readback",
    "pipeline",
    "mend",
    "handout",
    "truesize",
    "preview",
    "edition",
];

fn place_of(path: &Path) -> String {
    let inside = path.strip_prefix(root().join("src")).unwrap();
    let first = inside.components().next().unwrap().as_os_str().to_string_lossy().into_owned();
    first.trim_end_matches(".rs").to_owned()
}

/// The places that a source text imports from, comments left out.
fn imports(text: &str) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for line in text.lines().map(str::trim).filter(|line| !line.starts_with("//")) {
        for (at, _) in line.match_indices("crate::") {
            let rest = &line[at + "crate::".len()..];
            let end = rest.find(|c: char| !(c.is_alphanumeric() || c == '_')).unwrap_or(rest.len());
            if end == 0 {
                // `use crate::{a, b}`: every name after a brace or comma.
                for name in rest.split(['{', ',', '}', ' ', ';']).filter(|name| !name.is_empty()) {
                    found.insert(name.split("::").next().unwrap_or(name).to_owned());
                }
            } else {
                found.insert(rest[..end].to_owned());
            }
        }
    }
    found
}

fn climbs(place: &str, import: &str) -> bool {
    if place == "cli" || place == "lib" || place == "main" || place == import {
        return false;
    }
    let at = |name: &str| PLACES.iter().position(|known| *known == name);
    match (at(place), at(import)) {
        (Some(here), Some(there)) => there > here,
        _ => true,
    }
}

#[test]
fn no_import_climbs() {
    let found = sources(&root().join("src"));
    assert!(found.len() > 30, "the sources were found");
    let mut wrong = Vec::new();
    for path in found {
        let place = place_of(&path);
        for import in imports(&std::fs::read_to_string(&path).unwrap()) {
            if climbs(&place, &import) {
                wrong.push(format!("{}: crate::{import}", path.display()));
            }
        }
    }
    assert!(wrong.is_empty(), "imports that climb:\n{}", wrong.join("\n"));
}

#[test]
fn a_climbing_import_would_be_seen() {
    assert!(climbs("length", "design"));
    assert!(climbs("cutting", "drawing"));
    assert!(climbs("design", "nowhere"));
    assert!(!climbs("drawing", "cutting"));
    let text = "use crate::{handout, words::Line};\n// use crate::cli;\nlet x = crate::preview::png();";
    let names: Vec<String> = imports(text).into_iter().collect();
    assert_eq!(names, ["handout", "preview", "words"]);
}

#[test]
fn every_dependency_has_a_reason() {
    let manifest = std::fs::read_to_string(root().join("Cargo.toml")).unwrap();
    let reasons = std::fs::read_to_string(root().join("DEVELOPERS.md")).unwrap();
    let mut section = "";
    let mut count = 0;
    for line in manifest.lines() {
        if line.starts_with('[') {
            section = line;
        } else if section.ends_with("dependencies]")
            && let Some((name, _)) = line.split_once('=')
        {
            let name = name.trim();
            count += 1;
            assert!(reasons.contains(&format!("`{name}`: ")), "DEVELOPERS.md gives no reason for `{name}`");
        }
    }
    assert!(count > 10, "the manifest was read");
}

#[test]
fn the_top_level_is_as_agreed() {
    const AGREED: [&str; 14] = [
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "LICENSE",
        "src",
        "templates",
        "designs",
        "tests",
        "output",
        ".gitignore",
        ".ci",
        "rustfmt.toml",
        "target",
    ];
    for entry in std::fs::read_dir(root()).unwrap() {
        let name = entry.unwrap().file_name().to_string_lossy().into_owned();
        assert!(AGREED.contains(&name.as_str()) || name == ".git", "`{name}` is not on the list");
    }
}

#[test]
fn small_doors() {
    for (file, most) in [("src/lib.rs", 50), ("src/main.rs", 40)] {
        let lines = std::fs::read_to_string(root().join(file)).unwrap().lines().count();
        assert!(lines <= most, "{file} has {lines} lines");
    }
}
