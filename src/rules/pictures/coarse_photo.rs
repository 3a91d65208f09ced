//! A photo has too few pixels for its place on the page.

use crate::diagnostic::{Finding, Severity};
use crate::length::{NM_PER_INCH, NM_PER_MM};
use crate::project::Project;
use crate::rules::Rule;

/// The rule.
pub static RULE: Rule = Rule {
    code: "coarse-photo",
    severity: Severity::Warning,
    group: "pictures",
    summary: "a photo has too few pixels for its place on the page",
    page: include_str!("coarse_photo.md"),
    check: Some(check),
};

/// Pixels to the inch under which single ones are seen at reading distance: common practice, no source.
const LEAST: i64 = 150;

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings = Vec::new();
    for (photo, _) in design.photos() {
        let (width, height) = design.printed(photo);
        let pixels = i64::from(photo.picture.width);
        let to_the_inch = pixels * NM_PER_INCH / width.max(1);
        if to_the_inch >= LEAST {
            continue;
        }
        let needed = |side: i64| (side * LEAST + NM_PER_INCH - 1) / NM_PER_INCH;
        let mm = |side: i64| (side + NM_PER_MM / 2) / NM_PER_MM;
        findings.push(
            Finding::warning(
                RULE.code,
                photo.file.span,
                format!("the photo `{}` is too coarse for print", photo.file.value),
                format!(
                    "{} x {} pixels on {} x {} mm: {to_the_inch} to the inch",
                    photo.picture.width,
                    photo.picture.height,
                    mm(width),
                    mm(height)
                ),
            )
            .plainly(format!("the photo {} has so few pixels that they are seen on paper", photo.file.value))
            .help(format!(
                "take a photo of {} x {} pixels or more, {LEAST} to the inch",
                needed(width),
                needed(height)
            )),
        );
    }
    findings
}
