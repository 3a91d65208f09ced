//! A scene in the making: things put down, and the room that is taken.

use super::area::Area;
use super::scene::{Anchor, At, Item, Lettering, Role, Scene};
use super::style;
use super::text;

const UM: i64 = 1000;
/// Radius of a leader's dot.
const DOT: i64 = 350 * UM;

/// Room for letters that reach past their box.
const OVERHANG: i64 = 300 * UM;

/// Descenders under the baseline, thousandths of an em.
const DESCENT: i64 = 200;

/// Items put down so far and the areas that no label may enter any more.
#[derive(Debug, Clone, Default)]
pub struct Canvas {
    /// Back to front.
    pub items: Vec<Item>,
    /// Labels, flags and whatever else must stay free.
    pub taken: Vec<Area>,
    /// Along leaders and ties: no label stands there, but another leader may cross.
    pub ways: Vec<Area>,
}

/// Radius of the ring round a piece's number, nm.
#[must_use]
pub const fn ring_radius(number: u32) -> i64 {
    match number {
        0..=9 => 2400 * UM,
        10..=99 => 3000 * UM,
        _ => 3900 * UM,
    }
}

/// The room a text takes with its anchor's point at `at`: from the capitals' height to the
/// baseline.
#[must_use]
pub fn text_area(role: Lettering, at: At, anchor: Anchor, turned: bool, words: &str) -> Area {
    let (width, height) = (text::width(role, words), text::cap_height(role));
    let before = match anchor {
        Anchor::Start => 0,
        Anchor::Middle => width / 2,
        Anchor::End => width,
    };
    if turned {
        Area { left: at.x - height, top: at.y + before - width, right: at.x, bottom: at.y + before }
    } else {
        Area { left: at.x - before, top: at.y - height, right: at.x - before + width, bottom: at.y }
    }
}

/// The baseline point of a text whose middle is to lie at `middle`.
#[must_use]
pub fn centred(role: Lettering, middle: At) -> At {
    middle.moved(0, text::cap_height(role) / 2)
}

impl Canvas {
    /// Nothing yet.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// A rectangle.
    pub fn area(&mut self, role: Role, area: Area) {
        self.items.push(Item::Box {
            role,
            at: At::new(area.left, area.top),
            width: area.width(),
            height: area.height(),
            radius: 0,
        });
    }

    /// A straight line.
    pub fn line(&mut self, role: Role, from: At, to: At) {
        self.items.push(Item::Path { role, points: vec![from, to], closed: false });
    }

    /// A text, its room taken.
    pub fn text(&mut self, role: Lettering, at: At, anchor: Anchor, words: &str) -> Area {
        self.put_text(role, at, anchor, false, words)
    }

    /// A text that is read from the right, its room taken.
    pub fn turned_text(&mut self, role: Lettering, at: At, anchor: Anchor, words: &str) -> Area {
        self.put_text(role, at, anchor, true, words)
    }

    fn put_text(&mut self, role: Lettering, at: At, anchor: Anchor, turned: bool, words: &str) -> Area {
        self.items.push(Item::Text { role, at, anchor, turned, text: words.to_owned() });
        let area = text_area(role, at, anchor, turned, words);
        self.taken.push(area);
        area
    }

    /// A text centred on a point.
    pub fn centred_text(&mut self, role: Lettering, middle: At, words: &str) -> Area {
        self.text(role, centred(role, middle), Anchor::Middle, words)
    }

    /// A ring with a piece's number, its room taken.
    pub fn ring(&mut self, middle: At, number: u32) -> Area {
        let radius = ring_radius(number);
        self.items.push(Item::Circles { role: Role::Ring, radius, centres: vec![middle] });
        self.items.push(Item::Text {
            role: Lettering::Ring,
            at: centred(Lettering::Ring, middle),
            anchor: Anchor::Middle,
            turned: false,
            text: number.to_string(),
        });
        let area = Area::round(middle, 2 * radius, 2 * radius);
        self.taken.push(area);
        area
    }

    /// A leader from `from` through a dot at each of `dots` in turn.
    pub fn leader(&mut self, from: At, dots: &[At]) {
        for (start, end) in std::iter::once(&from).chain(dots).zip(dots) {
            self.line(Role::Leader, *start, *end);
        }
        if !dots.is_empty() {
            self.items.push(Item::Circles { role: Role::LeaderDot, radius: DOT, centres: dots.to_vec() });
        }
    }

    /// A ring with a leader to a dot.
    pub fn ring_with_leader(&mut self, middle: At, number: u32, dot: At) {
        let from = towards(middle, dot, ring_radius(number));
        self.leader(from, &[dot]);
        self.ring(middle, number);
    }

    /// Keeps a straight line free of labels.
    pub fn take_line(&mut self, from: At, to: At) {
        let long = (to.x - from.x).abs().max((to.y - from.y).abs());
        let steps = (long / (800 * UM)).max(1);
        for step in 0..=steps {
            let at = At::new(from.x + (to.x - from.x) * step / steps, from.y + (to.y - from.y) * step / steps);
            self.ways.push(Area::round(at, 800 * UM, 800 * UM));
        }
    }

    /// Whether an area is clear of everything taken, by `clear` all round.
    #[must_use]
    pub fn is_free(&self, area: Area, clear: i64) -> bool {
        let grown = area.grown(clear);
        !self.taken.iter().chain(&self.ways).any(|taken| taken.overlaps(grown))
    }

    /// The smallest area round all ink.
    #[must_use]
    pub fn extent(&self) -> Option<Area> {
        extent(&self.items)
    }

    /// The scene, with `frame`'s upper left corner as its origin. `frame` grows to the ink where
    /// that reaches past it.
    #[must_use]
    pub fn finish(self, name: String, scale: Option<u32>, alt: String, frame: Area) -> Scene {
        let frame = self.items.iter().filter_map(ink).fold(frame, Area::hull);
        let items = moved(self.items, -frame.left, -frame.top);
        Scene { name, width: frame.width(), height: frame.height(), scale, alt, items }
    }
}

/// The point `distance` from `from` on the way to `to`.
#[must_use]
pub fn towards(from: At, to: At, distance: i64) -> At {
    let (dx, dy) = (i128::from(to.x - from.x), i128::from(to.y - from.y));
    let length = (dx * dx + dy * dy).isqrt().max(1);
    let part = |d: i128| i64::try_from(d * i128::from(distance) / length).unwrap_or(0);
    from.moved(part(dx), part(dy))
}

fn points_area(points: &[At], grow: i64) -> Option<Area> {
    let hull = points.iter().map(|at| Area::between(*at, *at)).reduce(Area::hull)?;
    Some(hull.grown(grow))
}

/// The smallest area round the ink of items, lines' widths included.
#[must_use]
pub fn extent(items: &[Item]) -> Option<Area> {
    items.iter().filter_map(item_extent).reduce(Area::hull)
}

/// As [`extent`] for one item, with the descenders and side bearings of letters.
fn ink(item: &Item) -> Option<Area> {
    let area = item_extent(item)?;
    let Item::Text { role, turned, .. } = item else { return Some(area.grown(OVERHANG)) };
    let descent = text::em(DESCENT, style::letters(*role).tenths_of_point);
    let area = area.grown(OVERHANG);
    Some(if *turned {
        Area { right: area.right + descent, ..area }
    } else {
        Area { bottom: area.bottom + descent, ..area }
    })
}

fn item_extent(item: &Item) -> Option<Area> {
    let half = |role: Role| style::pen(role).width_nm / 2;
    match item {
        Item::Path { role, points, .. } => points_area(points, half(*role)),
        Item::Strokes { role, runs } | Item::Shape { role, rings: runs } => points_area(&runs.concat(), half(*role)),
        Item::Circles { role, radius, centres } => points_area(centres, radius + half(*role)),
        Item::Box { role, at, width, height, .. } => Some(Area::at(at.x, at.y, *width, *height).grown(half(*role))),
        Item::Text { role, at, anchor, turned, text } => Some(text_area(*role, *at, *anchor, *turned, text)),
        Item::Lens { centre, radius, .. } => Some(Area::round(*centre, 2 * radius, 2 * radius)),
    }
}

/// Items moved by `x` to the right and `y` downward.
#[must_use]
pub fn moved(items: Vec<Item>, x: i64, y: i64) -> Vec<Item> {
    let each = |points: Vec<At>| points.into_iter().map(|at| at.moved(x, y)).collect::<Vec<At>>();
    items
        .into_iter()
        .map(|item| match item {
            Item::Path { role, points, closed } => Item::Path { role, points: each(points), closed },
            Item::Strokes { role, runs } => Item::Strokes { role, runs: runs.into_iter().map(each).collect() },
            Item::Shape { role, rings } => Item::Shape { role, rings: rings.into_iter().map(each).collect() },
            Item::Circles { role, radius, centres } => Item::Circles { role, radius, centres: each(centres) },
            Item::Box { role, at, width, height, radius } => {
                Item::Box { role, at: at.moved(x, y), width, height, radius }
            }
            Item::Text { role, at, anchor, turned, text } => {
                Item::Text { role, at: at.moved(x, y), anchor, turned, text }
            }
            Item::Lens { centre, radius, items } => {
                Item::Lens { centre: centre.moved(x, y), radius, items: moved(items, x, y) }
            }
        })
        .collect()
}

/// A round detail: white ground, the items clipped to it, its ring, and the tie to the small ring
/// on the figure.
pub fn put_lens(canvas: &mut Canvas, spot: At, spot_radius: i64, centre: At, radius: i64, seen: Vec<Item>) {
    let circle = |role, radius, at| Item::Circles { role, radius, centres: vec![at] };
    canvas.items.push(circle(Role::LensRing, spot_radius, spot));
    canvas.line(Role::LensRing, towards(spot, centre, spot_radius), towards(centre, spot, radius));
    canvas.items.push(circle(Role::Cover, radius, centre));
    canvas.items.push(Item::Lens { centre, radius, items: seen });
    canvas.items.push(circle(Role::LensRing, radius, centre));
    canvas.taken.push(Area::round(centre, 2 * radius, 2 * radius));
}

/// The arrow that says which way is up, 9 mm long, with its word under it; `top` is its tip.
pub fn put_up(canvas: &mut Canvas, tip: At, word: &str) -> Area {
    let (long, head, half) = (9000 * UM, 2600 * UM, 1100 * UM);
    let foot = tip.moved(0, long);
    canvas.line(Role::Up, tip.moved(0, head - 200 * UM), foot);
    canvas.items.push(Item::Path {
        role: Role::UpHead,
        points: vec![tip, tip.moved(half, head), tip.moved(-half, head)],
        closed: true,
    });
    let baseline = foot.moved(0, 1300 * UM + text::cap_height(Lettering::UpWord));
    let words = canvas.text(Lettering::UpWord, baseline, Anchor::Middle, word);
    let arrow = Area { left: tip.x - half, top: tip.y, right: tip.x + half, bottom: foot.y };
    canvas.taken.push(arrow);
    arrow.hull(words)
}
