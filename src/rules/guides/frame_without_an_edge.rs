//! A placing frame cannot lie on what is named.

use super::{ground, instead, unfit, what};
use crate::design::model::{Design, Framed};
use crate::diagnostic::{Finding, Severity};
use crate::guides::frame::Unfit;
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "frame-without-an-edge",
    severity: Severity::Error,
    group: "guides",
    summary: "a placing frame cannot lie on what is named: its edges are not there, or not one",
    page: include_str!("frame_without_an_edge.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let told = unfit(project).into_iter().filter_map(|(asked, unfit)| {
        let fact = fact(&project.design, asked, unfit)?;
        Some(tell(project, asked, fact))
    });
    told.collect()
}

fn fact(design: &Design, asked: &Framed, unfit: Unfit) -> Option<String> {
    let name = |layer| &design.layer(layer).name;
    Some(match unfit {
        Unfit::TooEarly { layer, later } => {
            format!("the {} is glued before the {} is laid", name(layer), name(later))
        }
        Unfit::Several(layer) => format!("the {} lies there {} times", name(layer), design.layer(layer).count()),
        Unfit::Trimmed(layer) => format!("the {} is cut too long and has no edge yet", name(layer)),
        Unfit::NotBelow(layer) => {
            let below = asked.on.map_or_else(|| "same thing".to_owned(), |on| ground(design, on));
            format!("the {} does not lie on the {below}", name(layer))
        }
        Unfit::Arm { .. } | Unfit::Bar { .. } => return None,
    })
}

fn tell(project: &Project, asked: &Framed, fact: String) -> Finding {
    let design = &project.design;
    let what = what(design, asked);
    let help = match instead(project, asked) {
        Some(on) => format!("say `{on}`, the nearest of what fits"),
        None if asked.layers.len() > 1 => "frame each of them by itself, 1 item each".to_owned(),
        None => "take this 1 out: nothing below it leaves arms wide enough".to_owned(),
    };
    let first = design.layer(asked.layers[0]);
    Finding::error(RULE.code, asked.span, format!("the frame for {what} has no edge to lie by"), fact.clone())
        .also(first.span, format!("the {} is placed here", first.name))
        .help(help)
        .plainly(format!("the frame for {what} cannot be laid: {fact}"))
}
