//! Every fault on its line, with a way to mend it.

use super::{broken, found, sound};
use trimwright::diagnostic::Finding;
use trimwright::length::Units;
use trimwright::source::Source;

fn lines(source: &Source, findings: &[Finding]) -> Vec<(usize, &'static str)> {
    findings.iter().map(|finding| (source.position(finding.primary.span.start).line, finding.code)).collect()
}

/// Findings of one line may come in either order.
fn sorted(mut faults: Vec<(usize, &'static str)>) -> Vec<(usize, &'static str)> {
    faults.sort_unstable();
    faults
}

#[test]
fn broken_designs_give_their_faults_on_their_lines() {
    assert!(broken::BROKEN.len() >= 40);
    let mut wrong = Vec::new();
    for broken in broken::BROKEN {
        let mut text = broken.from.to_owned();
        for (old, new) in broken.swaps {
            assert_eq!(text.matches(old).count(), 1, "{old:?} stands once");
            text = text.replace(old, new);
        }
        let wanted = broken.faults.iter().map(|(stretch, code)| {
            assert_eq!(text.matches(stretch).count(), 1, "{stretch:?} stands once in {:?}", broken.swaps);
            (text[..text.find(stretch).unwrap()].matches('\n').count() + 1, *code)
        });
        let wanted = sorted(wanted.collect());
        let source = Source::new("broken.yaml", text);
        let (inch, metric) = (found(&source, Units::Inch).0, found(&source, Units::Metric).0);
        if sorted(lines(&source, &inch)) != wanted {
            wrong.push(format!("{:?}\nwanted {wanted:?}\nfound {inch:#?}", broken.swaps));
        }
        // What is wrong with the text is wrong in every edition, word for word where each is asked for.
        if source.text().contains("\nunits: inch and metric\n") {
            assert_eq!(inch, metric, "{:?}", broken.swaps);
        } else {
            assert_eq!(sorted(lines(&source, &metric)), wanted, "{:?}", broken.swaps);
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

#[test]
fn every_finding_says_how_to_mend_it() {
    for broken in broken::BROKEN {
        let mut text = broken.from.to_owned();
        for (old, new) in broken.swaps {
            text = text.replace(old, new);
        }
        let source = Source::new("broken.yaml", text);
        for finding in found(&source, Units::Inch).0 {
            let lower = |text: &str| !text.ends_with('.') && !text.starts_with(char::is_uppercase);
            assert!(lower(&finding.message), "{finding:#?}");
            assert!(lower(&finding.primary.text) && !finding.primary.text.is_empty(), "{finding:#?}");
            let help = finding.help.as_deref().unwrap_or_default();
            assert!(lower(help) && (help.contains(char::is_numeric) || help.contains('`')), "{finding:#?}");
            let plain = finding.plain.as_deref().unwrap_or_default();
            assert!(plain.ends_with('.') && plain.starts_with(|sign: char| !sign.is_lowercase()), "{finding:#?}");
            assert!(!source.slice(finding.primary.span).is_empty(), "{finding:#?}");
        }
    }
}

#[test]
fn some_faults_leave_a_design_to_draw() {
    for (old, new) in [
        ("designer:", "desinger:"),
        ("pattern: one-way", "pattern: oneway"),
        ("glue: liquid\n      - place: lantern", "glue: honey\n      - place: lantern"),
        ("title: Lantern Row\n", ""),
        ("cards: 4\n    papers: {panel: dusk", "cards: 3\n    papers: {panel: dusk"),
    ] {
        assert!(sound::LANTERN_ROW.contains(old), "{old}");
        let source = Source::new("broken.yaml", sound::LANTERN_ROW.replace(old, new));
        for units in [Units::Inch, Units::Metric] {
            let (findings, settled) = found(&source, units);
            assert!(!findings.is_empty() && settled, "{new} in {units:?}");
        }
    }
}
