//! Laws of the rules about how layers lie, over the random designs that placing is held to: a mirror image
//! and a half turn have as many faults of every kind, what layers are to each other does not depend on where
//! they lie, and nothing panics.

use crate::placing::laws::{Whole, any_whole};
use proptest::prelude::*;
use std::collections::BTreeMap;
use std::sync::OnceLock;
use trimwright::assembly::model::Steps;
use trimwright::cutting::plan::CutPlan;
use trimwright::cutting::search;
use trimwright::design::model::Design;
use trimwright::design::nodes::read;
use trimwright::design::settle::settle;
use trimwright::diagnostic::Finding;
use trimwright::geometry::Mirror;
use trimwright::layout::place::place;
use trimwright::length::Units;
use trimwright::paper::made::made;
use trimwright::project::Project;
use trimwright::rules::REGISTRY;
use trimwright::source::Source;

/// The design's text with pieces that are shaped, punched and windowed, all of which are their own mirror
/// images.
fn shaped(whole: &Whole) -> String {
    let text = whole.text();
    let changes = [
        (
            "{size: 80 x 100 mm, from: plain}",
            "{size: 80 x 100 mm, from: plain, window: {size: 30 x 20 mm, centre: both ways}}",
        ),
        ("{size: 30 x 20 mm, from: plain}", "{size: 30 x 20 mm, from: plain, shape: diamond}"),
        ("{size: 14 x 14 mm, from: plain}", "{size: 14 x 14 mm, from: plain, shape: circle, by: punch, margin: 4 mm}"),
    ];
    changes.into_iter().fold(text, |text, (from, to)| {
        assert!(text.contains(from), "{text}");
        text.replacen(from, to, 1)
    })
}

fn settled(text: &str) -> Option<Design> {
    let source = Source::new("design.yaml", text);
    settle(&read(&source).expect("a sound text"), &source, "design", Units::Metric).design
}

/// A design placed and not planned: these rules do not look at a plan.
fn placed(design: Design) -> Project {
    static PLAN: OnceLock<CutPlan> = OnceLock::new();
    let plan = PLAN.get_or_init(|| search::plan(&design)).clone();
    let layout = place(&design);
    Project {
        made: made(&design, &layout),
        design,
        layout,
        plan,
        steps: Steps::default(),
        others: Vec::new(),
        told: Vec::new(),
        made_in: None,
    }
}

/// What the rules about layers and about trimming find.
fn judged(project: &Project) -> Vec<Finding> {
    let rules = REGISTRY.iter().filter(|rule| matches!(rule.group, "layers" | "trimming"));
    rules.filter_map(|rule| rule.check).flat_map(|check| check(project)).collect()
}

/// How many faults of each kind a design has.
fn by_code(text: &str) -> BTreeMap<&'static str, usize> {
    let mut counts = BTreeMap::new();
    for finding in judged(&placed(settled(text).expect("a design"))) {
        *counts.entry(finding.code).or_insert(0) += 1;
    }
    counts
}

/// The rules that ask how layers lie to each other, wherever that is.
const AMONG_LAYERS: [&str; 5] =
    ["covers-another", "hidden-layer", "hidden-middle", "window-covered", "apart-where-they-meet"];

proptest! {
    #![proptest_config(crate::support::cases(96))]

    #[test]
    fn a_mirror_image_has_the_same_faults(whole in any_whole()) {
        let faults = by_code(&shaped(&whole));
        for mirror in [Mirror::LeftToRight, Mirror::TopToBottom] {
            let image = shaped(&whole.clone().mirrored(mirror));
            prop_assert_eq!(&faults, &by_code(&image), "{}\n{}", shaped(&whole), image);
        }
    }

    #[test]
    fn a_design_turned_half_round_has_the_same_faults(whole in any_whole()) {
        let turned = whole.clone().mirrored(Mirror::LeftToRight).mirrored(Mirror::TopToBottom);
        prop_assert_eq!(by_code(&shaped(&whole)), by_code(&shaped(&turned)), "{}", shaped(&whole));
    }

    #[test]
    fn what_layers_are_to_each_other_moves_with_them(whole in any_whole(), right in 0..50_i64, up in 0..50_i64) {
        let whole = whole.held_at_one_edge();
        // What is measured between them stays the same too.
        let among = |text: &str| {
            let source = Source::new("design.yaml", text);
            let found = judged(&placed(settled(text).expect("a design"))).into_iter();
            let found = found.filter(|finding| AMONG_LAYERS.contains(&finding.code));
            found.map(|it| (it.code, source.position(it.primary.span.start).line, it.primary.text)).collect::<Vec<_>>()
        };
        prop_assert_eq!(among(&shaped(&whole)), among(&shaped(&whole.clone().moved([right, up]))), "{}", shaped(&whole));
    }

    #[test]
    fn no_rule_panics_whatever_is_trimmed(
        whole in any_whole(),
        trims in prop::collection::vec(prop::option::of(0..6_usize), 6),
        claims in prop::collection::vec(any::<bool>(), 6),
    ) {
        let mut text = shaped(&whole);
        for (number, (trim, claim)) in trims.iter().zip(claims).enumerate() {
            let name = format!("    as: layer {number}\n");
            let target = match trim {
                Some(other) if *other < number => format!("    trim flush: layer {other}\n"),
                Some(_) => "    trim flush: card\n".to_owned(),
                None => String::new(),
            };
            let claim = if claim { "    shows: 4 mm left, 3 mm top\n" } else { "" };
            text = text.replacen(&name, &format!("{name}{target}{claim}"), 1);
        }
        if let Some(design) = settled(&text) {
            for finding in judged(&placed(design)) {
                prop_assert!(!finding.message.is_empty() && finding.help.is_some(), "{:#?}\n{}", finding, text);
                let said = format!("{} {:?}", finding.primary.text, finding.help);
                prop_assert!(!said.contains(" -") && !said.contains("  "), "{}\n{}", said, text);
            }
        }
    }
}
