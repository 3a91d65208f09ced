//! Against a general-purpose reference: usvg reads the SVG and says where things are, resvg draws
//! the letters.

use super::fixture::{FIRST, lantern_row};
use super::{figures, texts};
use std::collections::BTreeMap;
use trimwright::drawing::area::Area;
use trimwright::drawing::canvas::text_area;
use trimwright::drawing::figures::Room;
use trimwright::drawing::figures::front::front;
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::scale::Print;
use trimwright::drawing::scene::{At, Item, Lettering, Role, Scene};
use trimwright::drawing::svg::svg;
use trimwright::geometry::Rect;
use trimwright::preview;
use usvg::{Group, Node};

/// Boxes of all paths, in millimetres on the page.
fn boxes(scene: &Scene) -> Vec<[f64; 4]> {
    fn walk(group: &Group, per_mm: f64, found: &mut Vec<[f64; 4]>) {
        for node in group.children() {
            match node {
                Node::Group(group) => walk(group, per_mm, found),
                Node::Path(path) => {
                    let area = path.abs_bounding_box();
                    found.push([area.left(), area.top(), area.right(), area.bottom()].map(|v| f64::from(v) / per_mm));
                }
                _ => {}
            }
        }
    }
    let tree = preview::tree(&svg(scene)).unwrap();
    let mut found = Vec::new();
    #[allow(clippy::cast_precision_loss)]
    let width = scene.width as f64 / 1e6;
    let per_mm = f64::from(tree.size().width()) / width;
    // CSS pixels: 96 to the inch.
    assert!((per_mm - 96.0 / 25.4).abs() < 1e-4, "{per_mm}");
    walk(tree.root(), per_mm, &mut found);
    found
}

/// Whether a rectangle of the layout stands among the boxes at `1:tenths/10`, placed from `origin`.
fn stands(boxes: &[[f64; 4]], origin: [f64; 2], top: i64, rect: Rect, tenths: u32) -> bool {
    #[allow(clippy::cast_precision_loss)]
    let page = |nm: i64| nm as f64 / 1e6 * 10.0 / f64::from(tenths);
    let wanted = [
        origin[0] + page(rect.left),
        origin[1] + page(top - rect.top),
        origin[0] + page(rect.right),
        origin[1] + page(top - rect.bottom),
    ];
    // usvg keeps 32-bit floats; a hundredth of a millimetre is far under any line's width.
    boxes.iter().any(|found| found.iter().zip(wanted).all(|(one, other)| (one - other).abs() < 0.01))
}

/// The upper left corner of the largest box.
fn origin(boxes: &[[f64; 4]], width: f64, height: f64) -> [f64; 2] {
    let found = boxes.iter().find(|b| (b[2] - b[0] - width).abs() < 0.01 && (b[3] - b[1] - height).abs() < 0.01);
    let found = found.expect("the outline");
    [found[0], found[1]]
}

#[test]
fn the_front_draws_the_layout_to_its_scale() {
    let project = lantern_row();
    let scene = front(&project, FIRST, Room::tenths_of_mm(1056, 960)).unwrap();
    assert_eq!(scene.scale, Some(20));
    let boxes = boxes(&scene);
    // 4 1/4 x 5 1/2 in at 1:2.
    let origin = origin(&boxes, 107.95 / 2.0, 139.7 / 2.0);
    let card = project.layout.card.unwrap();
    for placed in &project.layout.layers {
        for rect in placed.trimmed.iter().flatten() {
            assert!(stands(&boxes, origin, card.height.nm(), *rect, 20), "{rect:?}");
        }
    }
    let wrong = Rect::at(1_000_000, 1_000_000, 50_000_000, 60_000_000);
    assert!(!stands(&boxes, origin, card.height.nm(), wrong, 20), "the check can fail");
}

#[test]
fn a_diagram_draws_every_cut_where_the_plan_has_it() {
    let project = lantern_row();
    for (index, plan) in project.plan.sheets.iter().enumerate() {
        let scene = sheet(&project, index, Print::NORMAL).unwrap();
        let tenths = scene.scale.unwrap();
        let boxes = boxes(&scene);
        #[allow(clippy::cast_precision_loss)]
        let page = |nm: i64| nm as f64 / 1e6 * 10.0 / f64::from(tenths);
        let origin = origin(&boxes, page(plan.width.nm()), page(plan.height.nm()));
        for row in &plan.cuts {
            for part in &row.gives {
                let part = plan.part(*part);
                let parent = plan.part(part.parent.unwrap()).rect;
                let edge = part.rect.edge(row.from.opposite());
                if edge == parent.edge(row.from.opposite()) {
                    continue;
                }
                // A cut has no breadth: its box is a line across the part it divides.
                let line = if row.from.is_side() {
                    Rect { left: edge, right: edge, ..parent }
                } else {
                    Rect { bottom: edge, top: edge, ..parent }
                };
                assert!(stands(&boxes, origin, plan.height.nm(), line, tenths), "{} {line:?}", scene.name);
            }
        }
    }
}

/// The box of what a scene's items change on the page, nm; none where there is no ink.
fn ink(ground: &[Item], items: &[Item], width: i64, height: i64) -> Option<Area> {
    let scene =
        |items: Vec<Item>| Scene { name: "ink".to_owned(), width, height, scale: None, alt: "Ink.".to_owned(), items };
    let per_pixel = 50_000;
    let pixels = u32::try_from(width / per_pixel).unwrap();
    let draw = |items: Vec<Item>| {
        let tree = preview::tree(&svg(&scene(items))).unwrap();
        preview::render(&tree, pixels).unwrap()
    };
    let (without, with) = (draw(ground.to_vec()), draw([ground, items].concat()));
    let mut found: Option<Area> = None;
    for (n, (one, other)) in without.pixels().iter().zip(with.pixels()).enumerate() {
        if one != other {
            let at = i64::try_from(n).unwrap();
            let (x, y) = (at % i64::from(pixels), at / i64::from(pixels));
            let pixel = Area::at(x * per_pixel, y * per_pixel, per_pixel, per_pixel);
            found = Some(found.map_or(pixel, |area| area.hull(pixel)));
        }
    }
    found
}

#[test]
fn every_text_has_ink_as_wide_as_it_was_measured() {
    let mut seen: BTreeMap<(Lettering, String), Item> = BTreeMap::new();
    for scene in figures(&lantern_row()) {
        for (role, _, anchor, turned, text) in texts(&scene) {
            let item = Item::Text { role, at: At::new(0, 0), anchor, turned, text: text.clone() };
            seen.entry((role, text)).or_insert(item);
        }
    }
    assert!(seen.len() > 40, "{}", seen.len());
    for ((role, text), item) in seen {
        let Item::Text { anchor, turned, .. } = item else { continue };
        let area = text_area(role, At::new(0, 0), anchor, turned, &text).grown(3_000_000);
        let at = At::new(-area.left, -area.top);
        let item = Item::Text { role, at, anchor, turned, text: text.clone() };
        // White letters are only seen on a flag.
        let plate =
            Item::Box { role: Role::Flag, at: At::new(0, 0), width: area.width(), height: area.height(), radius: 0 };
        let ground = if role == Lettering::Flag { vec![plate] } else { Vec::new() };
        let ink = ink(&ground, &[item], area.width(), area.height());
        let ink = ink.unwrap_or_else(|| panic!("`{text}` has no ink")).moved(area.left, area.top);
        let measured = text_area(role, At::new(0, 0), anchor, turned, &text);
        let (start, end) = if turned {
            (measured.bottom - ink.bottom, ink.top - measured.top)
        } else {
            (ink.left - measured.left, measured.right - ink.right)
        };
        // A letter's side bearings are under a fifth of its size.
        for bearing in [start, end] {
            assert!((-250_000..=800_000).contains(&bearing), "`{text}`: {start} {end}");
        }
    }
}
