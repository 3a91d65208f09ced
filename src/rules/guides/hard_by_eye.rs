//! A layer is hard to lay by eye, and a placing frame would help.

use super::{ground, the};
use crate::design::model::Frames;
use crate::diagnostic::{Finding, Severity};
use crate::guides::asked::{Hard, helpful};
use crate::project::Project;
use crate::rules::Rule;
use crate::rules::tell::length;

/// The rule.
pub static RULE: Rule = Rule {
    code: "hard-by-eye",
    severity: Severity::Note,
    group: "guides",
    summary: "a layer is hard to lay by eye, and a placing frame would help",
    page: include_str!("hard_by_eye.md"),
    check: Some(check),
};

/// Cutting a frame pays from so many cards on. Common practice, no source.
const FEWEST: u32 = 4;
/// How many others are pointed at.
const MOST: usize = 3;

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    if design.frames != Frames::No || design.cards.value < FEWEST {
        return Vec::new();
    }
    let helpful = helpful(design, &project.layout);
    let Some((first, rest)) = helpful.split_first() else { return Vec::new() };
    let layer = first.0.layers[0];
    let own = design.layer(layer);
    let fact = |hard: Hard| match hard {
        Hard::Turned => "it is turned".to_owned(),
        Hard::Gaps => "its gaps must be equal".to_owned(),
        Hard::Border(wide) => format!("{} or more lie free all round it", length(project, wide)),
    };
    let mut finding =
        Finding::note(RULE.code, own.span, format!("{} is hard to lay by eye", the(design, layer)), fact(first.1))
            .plainly(format!("{} is hard to lay by eye: {}", the(design, layer), fact(first.1)));
    for (frame, hard) in rest.iter().take(MOST) {
        let other = design.layer(frame.layers[0]);
        finding = finding.also(other.span, format!("so is the {}: {}", other.name, fact(*hard)));
    }
    vec![finding.help(format!(
        "say `frames: all that help` for {}, or `frames: [{} on {}]` for this 1",
        if helpful.len() == 1 { "1 placing frame".to_owned() } else { format!("{} placing frames", helpful.len()) },
        own.name,
        ground(design, first.0.on)
    ))]
}
