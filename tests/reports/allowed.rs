//! What a design allows, what of the findings is shown first, and the table of rules.

use crate::support::{found, run};
use std::path::Path;
use trimwright::cli::explain::table;
use trimwright::cli::report;
use trimwright::diagnostic::{Finding, Severity};
use trimwright::source::{Source, Span};

fn kite(size: &str, allow: &str) -> String {
    format!(
        "title: Kite
month: 2026-04
cards: 2
units: inch
card: {{size: 4 1/4 x 5 1/2 in, fold: side, from: white}}
papers:
  white: {{sheets: 1 of letter}}
  slate: {{sheets: 1 of letter}}
pieces:
  mat: {{size: {size}, from: slate}}
front:
  - place: mat
    centre: both ways
{allow}"
    )
}

#[test]
fn an_allowed_warning_keeps_its_reason_and_stays_out_of_the_way() {
    let text = kite("4 x 5 1/4 in", "allow:\n  No Glue: The mat is tucked in.\n");
    let outcome = run(&text);
    let [finding] = outcome.findings.as_slice() else { panic!("{:#?}", outcome.findings) };
    assert_eq!((finding.code, finding.allowed.as_deref()), ("no-glue", Some("The mat is tucked in.")));
    let source = Source::new("design.yaml", text);
    assert_eq!(report::worst(&outcome.findings, false), (Vec::new(), 0));
    let (all, more) = report::worst(&outcome.findings, true);
    assert_eq!((all.len(), more), (1, 0));
    assert!(report::text(&source, &all, false).ends_with("   = note: allowed: The mat is tucked in.\n"));
    assert_eq!(
        report::plain(&source, &all),
        "Line 12 (allowed): Nothing says how the mat is fixed. The design says why: The mat is tucked in.\n"
    );
    let json = report::json(&[(source, all)]);
    assert_eq!(json["findings"][0]["allowed"], "The mat is tucked in.");
}

#[test]
fn an_error_stands_whatever_is_allowed() {
    let text = kite("4 1/2 x 5 1/4 in", "    glue: tape\nallow:\n  past-the-edge: It looks bold.\n");
    assert_eq!(found(&text), ["past-the-edge@10", "allowed-error@16"]);
    assert!(run(&text).has_errors());
}

#[test]
fn a_list_that_allows_nothing_is_found() {
    let idle = kite("4 x 5 1/4 in", "    glue: tape\nallow:\n  no-glue: Why not.\n");
    assert_eq!(found(&idle), ["allowed-for-nothing@16"]);
    let unknown = kite("4 x 5 1/4 in", "    glue: tape\nallow:\n  no-gleu: Why not.\n");
    assert_eq!(found(&unknown), ["unknown-rule@16"]);
    let reasonless = kite("4 x 5 1/4 in", "    glue: tape\nallow:\n  no-glue:\n");
    assert_eq!(found(&reasonless), ["missing-key@16"]);
}

#[test]
fn the_three_worst_come_first() {
    let at = |n: usize| Span::new(n, n + 1);
    let findings = vec![
        Finding::note("never-used", at(0), "first", ""),
        Finding::warning("no-glue", at(1), "second", ""),
        Finding::error("bad-word", at(2), "third", ""),
        Finding { allowed: Some("so".into()), ..Finding::warning("no-glue", at(3), "fourth", "") },
        Finding::error("bad-word", at(4), "fifth", ""),
        Finding::warning("no-glue", at(5), "sixth", ""),
    ];
    let (shown, more) = report::worst(&findings, false);
    let said: Vec<&str> = shown.iter().map(|finding| finding.message.as_str()).collect();
    assert_eq!((said, more), (vec!["third", "fifth", "second"], 2));
    assert_eq!(report::not_shown(more, "kite.yaml"), "and 2 more: `trimwright check --all kite.yaml`\n");
    assert_eq!(report::worst(&findings, true).0, findings);
    assert_eq!(shown[0].severity, Severity::Error);
}

/// `UPDATE_README=1 cargo test the_table_of_rules` writes it anew.
#[test]
fn the_table_of_rules_in_the_readme_is_the_registry() {
    const MARKS: [&str; 2] = ["<!-- rules -->\n", "<!-- end of rules -->"];
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md");
    let readme = std::fs::read_to_string(&path).unwrap();
    let (before, rest) = readme.split_once(MARKS[0]).expect("a place for the table");
    let (shown, after) = rest.split_once(MARKS[1]).expect("the end of the table");
    if std::env::var_os("UPDATE_README").is_some() && shown != table() {
        std::fs::write(&path, format!("{before}{}{}{}{after}", MARKS[0], table(), MARKS[1])).unwrap();
    }
    assert_eq!(shown, table());
}
