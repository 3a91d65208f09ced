//! `explain`: every rule in a list, or the page of one.

use crate::rules::allowing::{spelt, unknown_rule::nearest};
use crate::rules::{REGISTRY, Rule};
use std::fmt::Write as _;

/// What `explain` prints: the list of all rules, or one rule's page.
///
/// # Errors
/// An unknown rule, as a sentence that names the nearest one.
pub fn explain(rule: Option<&str>) -> Result<String, String> {
    let Some(code) = rule else { return Ok(list()) };
    // A code is often copied out of a report with its brackets, or typed with blanks.
    let wanted = spelt(code);
    match REGISTRY.iter().find(|rule| rule.code == wanted) {
        Some(rule) => Ok(page(rule)),
        None => Err(unknown(code, &wanted)),
    }
}

fn unknown(typed: &str, wanted: &str) -> String {
    let typed = annotate_snippets::normalize_untrusted_str(typed);
    match nearest(wanted) {
        Some(code) => format!("there is no rule `{typed}`; did you mean `{code}`?"),
        None => format!("there is no rule `{typed}`; `explain` without a name lists all {}", REGISTRY.len()),
    }
}

fn list() -> String {
    let width = REGISTRY.iter().map(|rule| rule.code.len()).max().unwrap_or(0);
    let mut out = String::new();
    let mut group = "";
    for rule in REGISTRY {
        if rule.group != group {
            group = rule.group;
            let blank = if out.is_empty() { "" } else { "\n" };
            let _ = writeln!(out, "{blank}{group}");
        }
        let _ = writeln!(out, "  {:width$}  {:7}  {}", rule.code, rule.severity.word(), rule.summary);
    }
    out.push_str("\n`explain RULE` says why a rule is there and how to mend what it finds.\n");
    out
}

/// A page as a terminal shows it: headings underlined, fenced designs and reports set in.
fn page(rule: &Rule) -> String {
    let mut out = String::new();
    let mut fenced = false;
    for line in rule.page.lines() {
        if let Some(kind) = line.strip_prefix("```") {
            fenced = !fenced;
            let kind = kind.trim();
            let caption = match kind {
                "yaml fails" => "Wrong:".to_owned(),
                "yaml sound" => "Right:".to_owned(),
                "text" => "The report:".to_owned(),
                _ => match kind.split_once(' ') {
                    Some(("svg", name)) => format!("The drawing {name}:"),
                    Some(("beside", name)) => format!("Beside it {name}:"),
                    Some(("picture", name)) => format!("The picture {name}, in pixels:"),
                    _ => continue,
                },
            };
            let blank = if out.ends_with("\n\n") { "" } else { "\n" };
            let _ = write!(out, "{blank}{caption}\n\n");
        } else if fenced {
            let _ = writeln!(out, "{}", format!("    {line}").trim_end());
        } else if let Some(heading) = line.strip_prefix("# ") {
            let heading = format!("{heading} ({}, {})", rule.severity.word(), rule.group);
            let _ = writeln!(out, "{heading}\n{}", "=".repeat(heading.chars().count()));
        } else if let Some(heading) = line.strip_prefix("## ") {
            let _ = writeln!(out, "{heading}\n{}", "-".repeat(heading.chars().count()));
        } else {
            let _ = writeln!(out, "{line}");
        }
    }
    out
}

/// The table of all rules as the README has it, between two marks; a test keeps it true.
#[must_use]
pub fn table() -> String {
    let mut out = String::from("| rule | | what is wrong |\n|---|---|---|\n");
    let mut group = "";
    for rule in REGISTRY {
        if rule.group != group {
            group = rule.group;
            let _ = writeln!(out, "| **{group}** | | |");
        }
        let _ = writeln!(out, "| `{}` | {} | {} |", rule.code, rule.severity.word(), rule.summary);
    }
    out
}
