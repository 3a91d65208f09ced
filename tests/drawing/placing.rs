//! Dimension lines after ISO 129-1, held by a reckoning of their own over all demos and many random designs:
//! none crosses another or an extension line that it does not share, each figure stands free, the shortest
//! lies nearest the outline, and what the words measure is in the picture.

use super::texts;
use crate::support::{demos, source_at};
use std::collections::BTreeMap;
use trimwright::assembly::model::{Action, Step};
use trimwright::assembly::tell;
use trimwright::cutting::plan::Use;
use trimwright::design::model::VersionId;
use trimwright::drawing::area::Area;
use trimwright::drawing::canvas::text_area;
use trimwright::drawing::figures::Room;
use trimwright::drawing::figures::front::face;
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::figures::step::step;
use trimwright::drawing::figures::view::{View, views};
use trimwright::drawing::scale::Print;
use trimwright::drawing::scene::{At, Item, Lettering, Role, Scene};
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;
use trimwright::words::Inline;

/// Shared lines and rounding are no crossing.
const SLACK: i64 = 100_000;

type Line = (At, At);

/// A dimension as somebody reads it off the page.
struct Read {
    line: Line,
    extensions: Vec<Line>,
    tips: [At; 2],
    text: String,
    figure: Area,
}

impl Read {
    fn is_level(&self) -> bool {
        self.line.0.y == self.line.1.y
    }

    /// Where it lies across, and its two ends along.
    fn place(&self) -> (i64, i64, i64) {
        let [one, other] = self.tips;
        if self.is_level() {
            (one.y, one.x.min(other.x), one.x.max(other.x))
        } else {
            (one.x, one.y.min(other.y), one.y.max(other.y))
        }
    }

    fn length(&self) -> i64 {
        let (_, low, high) = self.place();
        high - low
    }
}

/// Every dimension of a scene: up to two extension lines, the line, two arrows, the figure.
fn read(scene: &Scene) -> Vec<Read> {
    let mut found = Vec::new();
    let (mut lines, mut tips): (Vec<Line>, Vec<At>) = (Vec::new(), Vec::new());
    for item in &scene.items {
        match item {
            Item::Path { role: Role::Dimension, points, .. } if points.len() == 2 => lines.push((points[0], points[1])),
            Item::Path { role: Role::Arrow, points, .. } => tips.push(points[0]),
            Item::Text { role: Lettering::Figure, at, anchor, turned, text } if tips.len() == 2 => {
                let line = lines.pop().expect("a line between its arrows");
                let figure = text_area(Lettering::Figure, *at, *anchor, *turned, text);
                let (extensions, tips) = (std::mem::take(&mut lines), [tips.remove(0), tips.remove(0)]);
                found.push(Read { line, extensions, tips, text: text.clone(), figure });
            }
            _ => {
                lines.clear();
                tips.clear();
            }
        }
    }
    found
}

/// Whether two upright or level lines cross, or lie on each other.
fn cross(one: Line, other: Line) -> bool {
    let hull = |line: Line| Area::between(line.0, line.1);
    let (one, other) = (hull(one), hull(other));
    let within = |low: i64, at: i64, high: i64| low + SLACK < at && at < high - SLACK;
    let is_level = |area: Area| area.top == area.bottom;
    match (is_level(one), is_level(other)) {
        (true, true) => {
            (one.top - other.top).abs() < SLACK && one.left.max(other.left) + SLACK < one.right.min(other.right)
        }
        (false, false) => {
            (one.left - other.left).abs() < SLACK && one.top.max(other.top) + SLACK < one.bottom.min(other.bottom)
        }
        (true, false) => within(one.left, other.left, one.right) && within(other.top, one.top, other.bottom),
        (false, true) => within(other.left, one.left, other.right) && within(one.top, other.top, one.bottom),
    }
}

/// What is wrong in a scene, each fault with its kind first.
fn faults(scene: &Scene) -> Vec<String> {
    let mut said = Vec::new();
    let mut fault = |kind: &str, what: String| said.push(format!("{kind}: {} {what}", scene.name));
    let read = read(scene);
    for (n, one) in read.iter().enumerate() {
        for (m, other) in read.iter().enumerate().filter(|(m, _)| *m != n) {
            if n < m && cross(one.line, other.line) {
                fault("two dimension lines cross", format!("`{}` and `{}`", one.text, other.text));
            }
            let is_shared = |line: &Line| {
                let at = |at: At| if one.is_level() { at.x } else { at.y };
                one.is_level() != other.is_level() || one.tips.iter().any(|tip| (at(*tip) - at(line.0)).abs() < SLACK)
            };
            if other
                .extensions
                .iter()
                .any(|line| one.is_level() == other.is_level() && !is_shared(line) && cross(one.line, *line))
            {
                fault("an extension line crosses a dimension line", format!("`{}` through `{}`", other.text, one.text));
            }
            if other.extensions.iter().any(|line| one.is_level() != other.is_level() && cross(one.line, *line)) {
                fault("a line lies on a line", format!("`{}` and `{}`", other.text, one.text));
            }
            let lines = other.extensions.iter().chain([&other.line]);
            if lines.clone().any(|line| one.figure.grown(-SLACK).is_crossed(line.0, line.1)) {
                fault("a line runs through a figure", format!("`{}` through `{}`", other.text, one.text));
            }
            let along = |one: &Read, other: &Read| {
                let ((_, low, high), (_, l, h)) = (one.place(), other.place());
                low + SLACK < h && l + SLACK < high
            };
            // Both off the same outline: the shorter one is nearer.
            if let (Some(start), Some(other_start)) = (one.extensions.first(), other.extensions.first()) {
                let across = |at: At| if one.is_level() { at.y } else { at.x };
                let (from, other_from) = (across(start.0), across(other_start.0));
                let (own, others) = (one.place().0 - from, other.place().0 - other_from);
                if one.is_level() == other.is_level()
                    && from == other_from
                    && own.signum() == others.signum()
                    && along(one, other)
                    && one.length() + SLACK < other.length()
                    && own.abs() > others.abs() + SLACK
                {
                    fault("a longer one lies nearer", format!("`{}` inside `{}`", other.text, one.text));
                }
            }
        }
    }
    let page = Area::at(0, 0, scene.width, scene.height);
    let labels: Vec<(Area, String, Lettering)> = texts(scene)
        .into_iter()
        .map(|(role, at, anchor, turned, text)| (text_area(role, at, anchor, turned, &text), text, role))
        .collect();
    for (n, (area, text, _)) in labels.iter().enumerate() {
        if !page.contains(*area) {
            fault("a label leaves its picture", format!("`{text}`"));
        }
        for (other, other_text, _) in &labels[n + 1..] {
            if area.grown(-SLACK).overlaps(*other) {
                fault("two labels overlap", format!("`{text}` and `{other_text}`"));
            }
        }
    }
    for item in &scene.items {
        match item {
            Item::Circles { role: role @ (Role::Ring | Role::LensRing), radius, centres } => {
                for centre in centres {
                    let ring = Area::round(*centre, 2 * radius, 2 * radius);
                    for one in &read {
                        if one.figure.grown(-SLACK).overlaps(ring) {
                            fault("a figure lies on a ring", format!("`{}` on {role:?}", one.text));
                        }
                        let lines = one.extensions.iter().chain([&one.line]);
                        let inside = Area::round(*centre, 7 * radius / 5, 7 * radius / 5);
                        if *role == Role::Ring && lines.clone().any(|line| inside.is_crossed(line.0, line.1)) {
                            fault("a line runs through a ring", format!("`{}`", one.text));
                        }
                    }
                }
            }
            Item::Path { role: Role::Leader | Role::Fold | Role::Valley | Role::Trim, points, .. } => {
                for (area, text, role) in labels.iter().filter(|(.., role)| *role != Lettering::Ring) {
                    if points.windows(2).any(|pair| area.grown(-SLACK).is_crossed(pair[0], pair[1])) {
                        fault("a leader or fold runs through a label", format!("`{text}` {role:?}"));
                    }
                }
            }
            _ => {}
        }
    }
    // The words for those who cannot see it name no number that is not drawn.
    for number in told(scene) {
        if !labels.iter().any(|(_, text, _)| numbers(text).contains(&number)) {
            fault("a measure is told but not drawn", format!("{number}: {}", scene.alt));
        }
    }
    said
}

/// The numbers of a text: `3 3/4`, `12.5`.
fn numbers(text: &str) -> Vec<String> {
    let mut found: Vec<String> = Vec::new();
    let parts: Vec<&str> = text.split(|c: char| !(c.is_ascii_digit() || c == '/' || c == '.')).collect();
    let plain = |part: &str| part.trim_end_matches('.').to_owned();
    let mut whole: Option<String> = None;
    for part in parts.into_iter().map(plain) {
        if part.contains('/') {
            found.push(whole.take().map_or(part.clone(), |whole| format!("{whole} {part}")));
        } else {
            found.extend(whole.take());
            whole = (!part.is_empty()).then_some(part);
        }
    }
    found.extend(whole);
    found
}

/// The measures that a figure's words name: behind "Measures:" on a face, behind the colon of a step.
fn told(scene: &Scene) -> Vec<String> {
    let measures = if scene.name.starts_with("step") {
        scene.alt.split_once(": ").map(|(_, measures)| measures)
    } else {
        scene.alt.split_once(" Measures: ").map(|(_, measures)| measures)
    };
    numbers(measures.unwrap_or_default())
}

/// Pieces of a diagram without a name, and leaders to one piece through another.
fn diagram(project: &Project, index: usize) -> Vec<String> {
    let Some(scene) = sheet(project, index, Print::NORMAL) else { return Vec::new() };
    let plan = &project.plan.sheets[index];
    let outline = scene.items.iter().find_map(|item| match item {
        Item::Box { role: Role::Sheet, at, .. } => Some(*at),
        _ => None,
    });
    let (outline, tenths) = (outline.expect("a sheet"), i64::from(scene.scale.expect("a scale")));
    let page = |nm: i64| nm * 10 / tenths;
    let pieces: Vec<(Area, String)> = plan
        .parts
        .iter()
        .filter_map(|part| match part.r#use {
            Use::Piece { piece, .. } => {
                let area = Area {
                    left: outline.x + page(part.rect.left),
                    right: outline.x + page(part.rect.right),
                    top: outline.y + page(plan.height.nm() - part.rect.top),
                    bottom: outline.y + page(plan.height.nm() - part.rect.bottom),
                };
                Some((area, project.design.ring(piece).to_string()))
            }
            _ => None,
        })
        .collect();
    let mut said = Vec::new();
    let labels: Vec<(Area, String)> = texts(&scene)
        .into_iter()
        .filter(|(role, ..)| matches!(role, Lettering::Ring | Lettering::Bare))
        .map(|(role, at, anchor, turned, text)| (text_area(role, at, anchor, turned, &text), text))
        .collect();
    let dots: Vec<At> = scene
        .items
        .iter()
        .flat_map(|item| match item {
            Item::Circles { role: Role::LeaderDot, centres, .. } => centres.clone(),
            _ => Vec::new(),
        })
        .collect();
    let others = texts(&scene).iter().any(|(.., text)| text.starts_with("all others"));
    for (area, ring) in &pieces {
        let inside = labels.iter().any(|(label, text)| text == ring && area.contains(*label));
        let is_told =
            inside || dots.iter().any(|dot| area.holds(*dot)) || others && labels.iter().any(|(_, text)| text == ring);
        if !is_told {
            said.push(format!("a piece has no name: {} {ring}", scene.name));
        }
    }
    for item in &scene.items {
        let Item::Path { role: Role::Leader, points, .. } = item else { continue };
        let through = pieces.iter().any(|(area, _)| {
            let end = points.iter().any(|at| area.holds(*at));
            !end && area.grown(-SLACK).is_crossed(points[0], points[1])
        });
        if through {
            said.push(format!("a leader passes through another piece: {}", scene.name));
        }
    }
    said
}

/// The faces as the pages take them, the diagrams and the steps.
fn scenes(project: &Project) -> Vec<Scene> {
    let mut scenes = Vec::new();
    for version in project.design.version_ids() {
        for view in views(project) {
            let (width, height) = match (view, version.0, project.design.versions.len()) {
                (View::Front, 0, _) => (1056, 960),
                (View::Front, _, 2) => (743, 960),
                (View::Front, ..) => (380, 960),
                (View::Inside, ..) => (1056, 600),
                _ => (800, 600),
            };
            scenes.extend(face(project, VersionId(version.0), view, Room::tenths_of_mm(width, height)));
        }
    }
    scenes.extend((0..project.plan.sheets.len()).filter_map(|n| sheet(project, n, Print::NORMAL)));
    scenes.extend((0..project.steps.steps.len()).filter_map(|n| step(project, n, Print::NORMAL)));
    scenes
}

/// Steps that have no picture, and numbers of a step's words that are not in its picture.
fn steps(project: &Project) -> Vec<String> {
    let mut said = Vec::new();
    for (n, own) in project.steps.steps.iter().enumerate() {
        let Step { action, .. } = own;
        if matches!(action, Action::Cut { .. } | Action::Print { .. } | Action::Sort) {
            continue;
        }
        let Some(scene) = step(project, n, Print::NORMAL) else {
            said.push(format!("a step has no picture: {action:?}"));
            continue;
        };
        if matches!(action, Action::Decorate { .. }) {
            continue;
        }
        let line = tell::step(&project.design, &project.layout, own).line;
        let drawn: Vec<String> = texts(&scene).iter().flat_map(|(.., text)| numbers(text)).collect();
        for part in &line.0 {
            let Inline::Measure(measure) = part else { continue };
            for number in numbers(measure) {
                if !drawn.contains(&number) {
                    said.push(format!("a step's number is not drawn: {number} of {}", line.to_plain()));
                }
            }
        }
    }
    said
}

fn all_faults(project: &Project) -> Vec<String> {
    let mut said: Vec<String> = scenes(project).iter().flat_map(faults).collect();
    said.extend((0..project.plan.sheets.len()).flat_map(|n| diagram(project, n)));
    said.extend(steps(project));
    said
}

fn of_seed(seed: u64) -> Vec<String> {
    let text = crate::sound::design(seed);
    let outcome = pipeline::run_quickly(&Source::new("design.yaml", text.as_str()), "design", None);
    outcome.editions.iter().flat_map(all_faults).map(|fault| format!("{fault} [seed {seed}]")).collect()
}

/// What is still found on crowded pictures, with the most of each in the demos and in a tenth of 200 designs: a
/// fault of another kind is a fault, and so is one more of these.
const STILL: [(&str, usize, usize); 6] = [
    ("a leader passes through another piece", 31, 50),
    ("a measure is told but not drawn", 12, 10),
    ("a step's number is not drawn", 15, 1),
    ("a line runs through a figure", 1, 0),
    ("an extension line crosses a dimension line", 1, 0),
    ("two labels overlap", 1, 0),
];

/// What is more than is still found.
fn more_than(said: &[String], most: impl Fn(&(&str, usize, usize)) -> usize) -> Vec<String> {
    let mut more: Vec<String> =
        said.iter().filter(|fault| !STILL.iter().any(|(kind, ..)| fault.starts_with(kind))).cloned().collect();
    for known in &STILL {
        let count = said.iter().filter(|fault| fault.starts_with(known.0)).count();
        if count > most(known) {
            more.push(format!("{count} times: {}", known.0));
        }
    }
    more
}

#[test]
fn every_dimension_has_its_place_in_the_demos() {
    let mut said = Vec::new();
    for path in demos() {
        for project in pipeline::run_quickly(&source_at(&path, "demo"), "demo", None).editions {
            said.extend(all_faults(&project));
        }
    }
    let more = more_than(&said, |known| known.1);
    assert!(more.is_empty(), "{more:#?} of {said:#?}");
}

/// A tenth of 200 in every run.
#[test]
fn every_dimension_has_its_place_in_random_designs() {
    let said: Vec<String> = (0..200).step_by(10).flat_map(of_seed).collect();
    let more = more_than(&said, |known| known.2);
    assert!(more.is_empty(), "{more:#?} of {said:#?}");
}

/// The table of them all: how many designs have each kind of fault.
#[test]
#[ignore = "minutes: run by name"]
#[expect(clippy::print_stdout, reason = "the table is for people")]
fn every_dimension_of_two_thousand_designs() {
    let most: u64 = std::env::var("SEEDS").ok().and_then(|count| count.parse().ok()).unwrap_or(2000);
    let mut kinds: BTreeMap<String, (u64, String)> = BTreeMap::new();
    let mut failing = 0;
    for seed in 0..most {
        let said = of_seed(seed);
        failing += u64::from(!said.is_empty());
        let mut own: Vec<&String> = Vec::new();
        for fault in &said {
            let kind = fault.split(':').next().expect("a kind");
            if std::env::var_os("EACH").is_none() && own.iter().any(|other| other.starts_with(kind)) {
                continue;
            }
            own.push(fault);
            let entry = kinds.entry(kind.to_owned()).or_insert((0, fault.clone()));
            entry.0 += 1;
            if std::env::var_os("EACH").is_some() {
                println!("{fault}");
            }
        }
    }
    for (kind, (count, example)) in &kinds {
        println!("{count:5}  {kind}\n       {example}");
    }
    println!("{failing} of {most} designs have a fault");
    assert!(failing == 0, "{failing} of {most}");
}
