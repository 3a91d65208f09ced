//! Every rule's page is executed: its designs fail with the report it shows, or are sound.
//!
//! `UPDATE_PAGES=1 cargo test pages` writes the reports anew, to be read before they are kept.

use super::shown::stands_at;
use crate::support::png;
use std::path::Path;
use trimwright::cli::report;
use trimwright::diagnostic::{Finding, Severity};
use trimwright::mend;
use trimwright::pipeline;
use trimwright::rules::{REGISTRY, Rule};
use trimwright::source::Source;

/// A fenced block of a page: what follows the backticks, the text, and where the text stands.
pub(crate) struct Block<'a> {
    pub(crate) kind: &'a str,
    pub(crate) text: &'a str,
    start: usize,
}

pub(crate) fn blocks(page: &str) -> Vec<Block<'_>> {
    let mut blocks = Vec::new();
    let mut open: Option<(&str, usize)> = None;
    let mut at = 0;
    for line in page.split_inclusive('\n') {
        if let Some(kind) = line.strip_prefix("```") {
            open = match open {
                None => Some((kind.trim(), at + line.len())),
                Some((kind, start)) => {
                    blocks.push(Block { kind, text: &page[start..at], start });
                    None
                }
            };
        }
        at += line.len();
    }
    assert!(open.is_none(), "a fence is left open");
    blocks
}

/// A design of a page; drawings of the page, `svg leaf.svg`, other texts, `beside house.yaml`, and pictures of a
/// size, `picture card.png`, lie beside it.
pub(crate) fn source(rule: &Rule, text: &str) -> Source {
    let files = blocks(rule.page).into_iter().filter_map(|block| {
        let (kind, name) = block.kind.split_once(' ')?;
        match kind {
            "svg" | "beside" => Some((name, block.text.as_bytes().to_vec())),
            "picture" => {
                let (width, height) = block.text.trim().split_once(" x ").expect("a size in pixels");
                Some((name, png(width.parse().expect("a width"), height.parse().expect("a height"))))
            }
            _ => None,
        }
    });
    files.fold(Source::new("design.yaml", text), |source, (name, bytes)| source.with_beside(name, Ok(bytes)))
}

/// The text that a finding is about.
fn text_of(source: &Source, finding: &Finding) -> Source {
    finding.file.as_ref().map_or_else(|| source.clone(), |file| source.file(file))
}

/// The page with the reports that the program gives now.
fn renewed(rule: &Rule) -> String {
    let blocks = blocks(rule.page);
    let mut page = String::new();
    let mut done = 0;
    for pair in blocks.windows(2) {
        if pair[0].kind == "yaml fails" && pair[1].kind == "text" {
            let source = source(rule, pair[0].text);
            let outcome = mend::suggest(&source, "design", pipeline::run(&source, "design"));
            let report = report::text(&source, &outcome.findings, false);
            page.push_str(&rule.page[done..pair[1].start]);
            page.push_str(&report);
            done = pair[1].start + pair[1].text.len();
        }
    }
    page.push_str(&rule.page[done..]);
    page
}

#[test]
fn the_reports_in_the_pages_are_those_given() {
    let mut wrong = Vec::new();
    for rule in REGISTRY {
        let page = renewed(rule);
        if page != rule.page {
            if std::env::var_os("UPDATE_PAGES").is_some() {
                let file = format!("src/rules/{}/{}.md", rule.group, rule.code.replace('-', "_"));
                std::fs::write(Path::new(env!("CARGO_MANIFEST_DIR")).join(file), &page).unwrap();
            }
            wrong.push(format!("{}:\n{page}", rule.code));
        }
    }
    assert!(wrong.is_empty(), "pages whose reports differ:\n{}", wrong.join("\n\n"));
}

#[test]
fn a_failing_design_gives_its_own_code() {
    for rule in REGISTRY {
        let blocks = blocks(rule.page);
        let mut fails = 0;
        for (n, block) in blocks.iter().enumerate().filter(|(_, block)| block.kind == "yaml fails") {
            fails += 1;
            assert_eq!(blocks.get(n + 1).map(|next| next.kind), Some("text"), "{}: no report", rule.code);
            let source = source(rule, block.text);
            let findings = pipeline::run(&source, "design").findings;
            assert!(findings.iter().any(|finding| finding.code == rule.code), "{}:\n{}", rule.code, block.text);
            for finding in &findings {
                assert!(REGISTRY.iter().any(|rule| rule.code == finding.code), "no rule {}", finding.code);
                assert!(finding.primary.span.end <= text_of(&source, finding).text().len(), "{}", rule.code);
            }
            let own = findings.iter().filter(|finding| finding.code == rule.code);
            assert!(own.clone().all(|finding| finding.severity >= rule.severity), "{}", rule.code);
        }
        assert!(fails > 0, "{}: no design that fails", rule.code);
    }
}

#[test]
fn the_worst_severity_is_shown_by_a_design() {
    for rule in REGISTRY {
        let worst = blocks(rule.page)
            .iter()
            .filter(|block| block.kind == "yaml fails")
            .flat_map(|block| pipeline::run(&source(rule, block.text), "design").findings)
            .filter(|finding| finding.code == rule.code)
            .map(|finding| finding.severity)
            .min();
        assert_eq!(worst, Some(rule.severity), "{}", rule.code);
    }
}

#[test]
fn a_sound_design_is_silent() {
    for rule in REGISTRY {
        let mut sound = 0;
        for block in blocks(rule.page).iter().filter(|block| block.kind == "yaml sound") {
            sound += 1;
            let findings = pipeline::run(&source(rule, block.text), "design").findings;
            assert!(findings.iter().all(|finding| finding.code != rule.code), "{}:\n{findings:#?}", rule.code);
            assert!(
                findings.iter().all(|finding| finding.severity == Severity::Note || finding.allowed.is_some()),
                "{}: the sound design has other faults:\n{findings:#?}",
                rule.code
            );
        }
        assert!(sound > 0, "{}: no design that is sound", rule.code);
    }
}

/// What a finding says, by the manners that all of them keep.
#[test]
fn findings_keep_their_manners() {
    for rule in REGISTRY {
        for block in blocks(rule.page).iter().filter(|block| block.kind == "yaml fails") {
            for finding in pipeline::run(&source(rule, block.text), "design").findings {
                let said = [Some(&finding.message), Some(&finding.primary.text), finding.help.as_ref()];
                for text in said.into_iter().flatten() {
                    assert!(!text.ends_with(['.', '!']), "{}: {text}", finding.code);
                    assert!(!text.starts_with(char::is_uppercase), "{}: {text}", finding.code);
                }
                assert!(finding.help.is_some(), "{}: no help", finding.code);
            }
        }
    }
}

#[test]
fn places_in_json_agree_with_a_count_by_hand() {
    let mut places = 0;
    for rule in REGISTRY {
        for block in blocks(rule.page).iter().filter(|block| block.kind == "yaml fails") {
            let source = source(rule, block.text);
            let findings = pipeline::run(&source, "design").findings;
            let text = report::json(&[(source.clone(), findings.clone())]).to_string();
            let json: serde_json::Value = serde_json::from_str(&text).unwrap();
            for (n, finding) in findings.iter().enumerate() {
                let told = &json["findings"][n];
                let source = &text_of(&source, finding);
                assert_eq!(stands_at(source, told), source.slice(finding.primary.span), "{}", rule.code);
                for (at, label) in std::iter::once(&finding.primary).chain(&finding.others).enumerate() {
                    assert_eq!(stands_at(source, &told["labels"][at]), source.slice(label.span), "{}", rule.code);
                    places += 1;
                }
            }
        }
    }
    assert!(places > 60, "{places}");
}
