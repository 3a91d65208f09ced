//! The faults of a crowded figure, looked for by box: a label on a label, a flag on a number or on a
//! cut that is not its own, a cut without its flag, a piece without its label.

use super::fixture::{SHEET, Sheet, lantern_row};
use super::{figures, texts};
use std::sync::mpsc;
use std::thread;
use std::time::Duration;
use trimwright::cutting::plan::Use;
use trimwright::design::model::Pattern;
use trimwright::drawing::area::Area;
use trimwright::drawing::canvas::text_area;
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::scale::Print;
use trimwright::drawing::scene::{At, Item, Lettering, Role, Scene};
use trimwright::geometry::Edge;
use trimwright::project::Project;

/// Shared edges and rounding are no overlap.
const SLACK: i64 = 50_000;

/// Checks every figure of a project, and every cutting diagram against its plan.
pub(crate) fn check(project: &Project) {
    for scene in figures(project) {
        labels_are_clear(&scene);
        ink_stays_inside(&scene);
    }
    for index in 0..project.plan.sheets.len() {
        diagram(project, index);
    }
}

/// A cutting diagram: every cut flagged once, every piece labelled, flags clear of everything.
pub(crate) fn diagram(project: &Project, index: usize) {
    let scene = sheet(project, index, Print::NORMAL).unwrap();
    labels_are_clear(&scene);
    ink_stays_inside(&scene);
    flags_are_clear(&scene);
    let plan = &project.plan.sheets[index];
    let mut flagged = Vec::new();
    for (_, text) in labels(&scene, Lettering::Flag) {
        flagged.extend(numbers(&text));
    }
    flagged.sort_unstable();
    let all: Vec<u32> = (1..=plan.cut_count()).collect();
    assert_eq!(flagged, all, "every cut stands in one flag of {}", scene.name);
    // Every piece has its number inside, or a leader's dot.
    let outline = scene.items.iter().find_map(|item| match item {
        Item::Box { role: Role::Sheet, at, .. } => Some(*at),
        _ => None,
    });
    let (outline, tenths) = (outline.unwrap(), i64::from(scene.scale.unwrap()));
    let dots: Vec<At> = scene
        .items
        .iter()
        .filter_map(|item| match item {
            Item::Circles { role: Role::LeaderDot, centres, .. } => Some(centres.clone()),
            _ => None,
        })
        .flatten()
        .collect();
    let said: Vec<(Area, String)> =
        [Lettering::Ring, Lettering::Bare].into_iter().flat_map(|role| labels(&scene, role)).collect();
    for part in &plan.parts {
        let Use::Piece { piece, .. } = part.r#use else { continue };
        let page = |nm: i64| nm * 10 / tenths;
        let area = Area {
            left: outline.x + page(part.rect.left),
            right: outline.x + page(part.rect.right),
            top: outline.y + page(plan.height.nm() - part.rect.top),
            bottom: outline.y + page(plan.height.nm() - part.rect.bottom),
        };
        let ring = project.design.ring(piece).to_string();
        let others = all_labels(&scene).iter().any(|(_, text)| text.starts_with("all others"));
        let is_named = others && said.iter().any(|(_, text)| *text == ring)
            || said.iter().any(|(label, text)| *text == ring && area.contains(*label))
            || dots.iter().any(|dot| area.holds(*dot));
        assert!(is_named, "{}: {ring} at {:?} has no label", scene.name, part.rect);
    }
}

/// A low sheet of one-way paper, such as a kept leftover: its arrow is longer than the sheet is high, and has
/// its place all the same.
#[test]
fn a_sheet_lower_than_its_arrow_is_drawn() {
    for (width, height, slice, count) in [(32, 4, 8, 3), (8, 2, 4, 1), (2, 1, 1, 1), (96, 8, 8, 11)] {
        let mut low = Sheet::new(1, width, height, 0);
        let cut = low.cut(&[SHEET], Edge::Left, slice, &[count]);
        low.piece(&cut[0], 3, 0);
        let mut project = lantern_row();
        project.design.papers[1].edge_strip = None;
        project.plan.sheets = vec![low.done()];
        assert_eq!(project.design.papers[1].pattern, Pattern::OneWay);
        // A search for room that does not end would hang here.
        let (done, drawn) = mpsc::channel();
        let scene = project.clone();
        thread::spawn(move || done.send(sheet(&scene, 0, Print::NORMAL)));
        let scene = drawn.recv_timeout(Duration::from_secs(60)).expect("drawn").expect("a diagram");
        assert!(scene.has(Role::Up) && scene.has(Role::UpHead), "{width} x {height}");
        diagram(&project, 0);
    }
}

/// The numbers of a flag: `3`, `3, 5`, `9–19`.
fn numbers(text: &str) -> Vec<u32> {
    let number = |text: &str| text.parse::<u32>().unwrap();
    text.split(", ")
        .flat_map(|part| match part.split_once('–') {
            Some((first, last)) => (number(first)..=number(last)).collect(),
            None => vec![number(part)],
        })
        .collect()
}

fn labels(scene: &Scene, wanted: Lettering) -> Vec<(Area, String)> {
    texts(scene)
        .into_iter()
        .filter(|(role, ..)| *role == wanted)
        .map(|(role, at, anchor, turned, text)| (text_area(role, at, anchor, turned, &text), text))
        .collect()
}

fn all_labels(scene: &Scene) -> Vec<(Area, String)> {
    texts(scene)
        .into_iter()
        .map(|(role, at, anchor, turned, text)| (text_area(role, at, anchor, turned, &text), text))
        .collect()
}

pub(crate) fn labels_are_clear(scene: &Scene) {
    let labels = all_labels(scene);
    for (n, (one, text)) in labels.iter().enumerate() {
        for (other, other_text) in &labels[n + 1..] {
            assert!(!one.grown(-SLACK).overlaps(*other), "{}: `{text}` on `{other_text}`", scene.name);
        }
    }
    // A ring holds its own number and nothing else.
    for item in &scene.items {
        let Item::Circles { role: Role::Ring, radius, centres } = item else { continue };
        for centre in centres {
            let ring = Area::round(*centre, 2 * radius, 2 * radius);
            let inside: Vec<&String> =
                labels.iter().filter(|(area, _)| area.overlaps(ring.grown(-SLACK))).map(|(_, text)| text).collect();
            assert_eq!(inside.len(), 1, "{}: {inside:?} in one ring", scene.name);
        }
    }
}

fn ink_stays_inside(scene: &Scene) {
    let page = Area::at(0, 0, scene.width, scene.height);
    for (area, text) in all_labels(scene) {
        assert!(page.contains(area), "{}: `{text}` is clipped", scene.name);
    }
    for (area, _) in flags(scene) {
        assert!(page.contains(area), "{}: a flag is clipped", scene.name);
    }
}

/// Flags with their tips.
fn flags(scene: &Scene) -> Vec<(Area, Vec<At>)> {
    scene
        .items
        .iter()
        .filter_map(|item| match item {
            Item::Path { role: Role::Flag, points, .. } => {
                let area = points.iter().map(|at| Area::between(*at, *at)).reduce(Area::hull)?;
                Some((area, points.clone()))
            }
            _ => None,
        })
        .collect()
}

fn flags_are_clear(scene: &Scene) {
    let flags = flags(scene);
    let labels = all_labels(scene);
    for (n, (flag, _)) in flags.iter().enumerate() {
        for (other, _) in &flags[n + 1..] {
            assert!(!flag.grown(-SLACK).overlaps(*other), "{}: two flags overlap", scene.name);
        }
        let inside: Vec<&String> =
            labels.iter().filter(|(area, _)| area.overlaps(flag.grown(-SLACK))).map(|(_, text)| text).collect();
        assert_eq!(inside.len(), 1, "{}: {inside:?} in one flag", scene.name);
        for item in &scene.items {
            if let Item::Path { role: Role::Cut, points, .. } = item {
                let crossed = flag.grown(-2 * SLACK).is_crossed(points[0], points[1]);
                assert!(!crossed, "{}: a flag covers a cut", scene.name);
            }
        }
    }
    // Cuts do not run through words either.
    for (area, text) in labels {
        for item in &scene.items {
            let lines: Vec<&Vec<At>> = match item {
                Item::Path { role: Role::Cut | Role::Leader, points, .. } => vec![points],
                Item::Strokes { role: Role::Bracket, runs } => runs.iter().collect(),
                _ => Vec::new(),
            };
            for line in lines {
                let crossed = area.grown(-2 * SLACK).is_crossed(line[0], line[1]);
                assert!(!crossed, "{}: a line runs through `{text}`", scene.name);
            }
        }
    }
}
