//! No suggestion that is given is wrong: every one in the rules' pages does what it says.

use crate::reports::pages::{blocks, source};
use trimwright::diagnostic::{Severity, applied, moved};
use trimwright::mend::suggest;
use trimwright::pipeline;
use trimwright::rules::REGISTRY;

#[test]
fn every_suggested_edit_mends_its_finding() {
    let (mut tried, mut wrong) = (0, Vec::new());
    for rule in REGISTRY {
        for block in blocks(rule.page).iter().filter(|block| block.kind == "yaml fails") {
            let source = source(rule, block.text);
            let before = pipeline::run(&source, "design");
            let whole = !before.editions.is_empty();
            let outcome = suggest(&source, "design", before.clone());
            for finding in outcome.findings.iter().filter(|finding| !finding.edits.is_empty()) {
                tried += 1;
                let help = finding.help.as_deref().unwrap_or_default();
                assert!(!help.is_empty() && !help.ends_with('.') && !help.starts_with(char::is_uppercase), "{help}");
                let mended = source.with_text(applied(source.text(), &finding.edits).0);
                let after = pipeline::run(&mended, "design").findings;
                let start = moved(finding.primary.span.start, &finding.edits);
                let same = |other: &&trimwright::diagnostic::Finding| {
                    other.code == finding.code && other.message == finding.message && other.primary.span.start == start
                };
                if after.iter().any(|other| same(&other)) {
                    wrong.push(format!("{}: {finding:#?}\nis there still", rule.code));
                }
                // A number brings nothing new; where a text could not be read, more may come to light.
                let loud = |findings: &[trimwright::diagnostic::Finding]| {
                    findings.iter().filter(|finding| finding.severity != Severity::Note).count()
                };
                if whole && loud(&after) >= loud(&before.findings) {
                    wrong.push(format!("{}: {finding:#?}\nbrings {after:#?}", rule.code));
                }
            }
        }
    }
    assert!(tried >= 30, "{tried} edits were tried");
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}
