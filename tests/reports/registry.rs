//! The registry is the only list of rules: nothing is missing from it and nothing in it is idle.

use crate::support::sources;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use trimwright::cli::explain::explain;
use trimwright::rules::REGISTRY;

fn src() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

fn codes() -> BTreeSet<&'static str> {
    REGISTRY.iter().map(|rule| rule.code).collect()
}

#[test]
fn every_rule_file_is_in_the_registry_with_its_page() {
    let files = sources(&src().join("rules"));
    let mut seen = BTreeSet::new();
    for file in files {
        let text = std::fs::read_to_string(&file).unwrap();
        if !text.contains("pub static RULE: Rule") {
            continue;
        }
        let name = file.file_stem().unwrap().to_str().unwrap();
        let group = file.parent().unwrap().file_name().unwrap().to_str().unwrap();
        let rule = REGISTRY
            .iter()
            .find(|rule| rule.code == name.replace('_', "-"))
            .unwrap_or_else(|| panic!("{} is not in the registry", file.display()));
        assert_eq!(rule.group, group, "{}", rule.code);
        assert_eq!(rule.page, std::fs::read_to_string(file.with_extension("md")).unwrap(), "{}", rule.code);
        assert_eq!(rule.check.is_none(), matches!(group, "reading" | "allowing"), "{}", rule.code);
        seen.insert(rule.code);
    }
    assert_eq!(seen, codes(), "a rule of the registry has no file of its own");
    assert_eq!(seen.len(), REGISTRY.len(), "a code stands twice in the registry");
}

#[test]
fn every_page_is_in_a_group_that_stands_together() {
    let mut groups: Vec<&str> = REGISTRY.iter().map(|rule| rule.group).collect();
    groups.dedup();
    let once: BTreeSet<&str> = groups.iter().copied().collect();
    assert_eq!(groups.len(), once.len(), "{groups:?}");
}

/// Every text literal of a source, comments left out.
fn literals(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for line in text.lines().filter(|line| !line.trim_start().starts_with("//")) {
        found.extend(line.split('"').skip(1).step_by(2).map(str::to_owned));
    }
    found
}

/// The first argument of each constructor of a finding (the second of `Finding::new`).
fn raised(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for (call, skip) in [("Finding::error(", 0), ("Finding::warning(", 0), ("Finding::note(", 0), ("Finding::new(", 1)]
    {
        for (at, _) in text.match_indices(call) {
            let argument = text[at + call.len()..].split(',').nth(skip).unwrap_or("").trim();
            found.push(argument.to_owned());
        }
    }
    found
}

#[test]
fn every_code_of_a_finding_has_a_rule() {
    let files = sources(&src());
    let codes = codes();
    let mut calls = 0;
    let mut idle: BTreeSet<&str> =
        REGISTRY.iter().filter(|rule| rule.group == "reading").map(|rule| rule.code).collect();
    for file in files {
        let text = std::fs::read_to_string(&file).unwrap();
        let inside = file.strip_prefix(src()).unwrap();
        for argument in raised(&text) {
            calls += 1;
            if let Some(code) = argument.strip_prefix('"').and_then(|rest| rest.strip_suffix('"')) {
                assert!(codes.contains(code), "{}: no rule `{code}`", inside.display());
            } else if inside.starts_with("rules") {
                assert_eq!(argument, "RULE.code", "{}", inside.display());
            }
        }
        // Where a code goes through a variable, it still stands somewhere as a literal.
        for literal in literals(&text) {
            if !inside.starts_with("rules") {
                idle.remove(literal.as_str());
            }
        }
    }
    assert!(calls > 40, "the calls were found");
    assert!(idle.is_empty(), "rules that nothing raises: {idle:?}");
}

#[test]
fn an_unlisted_code_would_be_seen() {
    let text = "Finding::error(\"no-such\", span, x)\nFinding::new(\n  severity,\n  \"bad-word\",\n span)";
    assert_eq!(raised(text), ["\"no-such\"", "\"bad-word\""]);
    assert_eq!(literals("let a = \"one\"; // \"two\"\n// \"three\"")[0], "one");
}

#[test]
fn explain_lists_every_rule_once() {
    let list = explain(None).unwrap();
    for rule in REGISTRY {
        let lines = list.lines().filter(|line| line.trim_start().starts_with(&format!("{} ", rule.code)));
        let told: Vec<&str> = lines.collect();
        assert_eq!(told.len(), 1, "{}", rule.code);
        assert!(told[0].contains(rule.severity.word()) && told[0].ends_with(rule.summary), "{}", told[0]);
    }
}

#[test]
fn explain_prints_a_page_for_every_rule() {
    for rule in REGISTRY {
        let page = explain(Some(rule.code)).unwrap();
        assert!(page.starts_with(rule.code), "{page}");
        assert!(!page.contains("```") && !page.contains("\n#"), "{page}");
        for caption in ["Wrong", "The report", "Right"] {
            assert!(page.contains(&format!("\n\n{caption}:\n\n    ")), "{page}");
        }
        assert!(page.lines().all(|line| line.chars().count() <= 120 || line.contains("= help: ")), "{}", rule.code);
    }
}

#[test]
fn explain_finds_what_was_meant() {
    assert_eq!(explain(Some("[past-the-edge]")), explain(Some("Past The Edge")));
    let near = explain(Some("past-the-egde")).unwrap_err();
    assert_eq!(near, "there is no rule `past-the-egde`; did you mean `past-the-edge`?");
    let far = explain(Some("zzz")).unwrap_err();
    assert!(far.starts_with("there is no rule `zzz`; "), "{far}");
}
