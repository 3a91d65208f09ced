//! The mark of a turn: the pivot's dot, the two directions, a thin arc between them and the degrees.

use super::area::Area;
use super::canvas::{extent, text_area};
use super::dimension::Drawn;
use super::outline::turned;
use super::scene::{Anchor, At, Item, Lettering, Role};
use super::text;
use crate::geometry::Angle;

const UM: i64 = 1000;
/// The two directions pass the arc by so much.
const PAST: i64 = 1400 * UM;
/// Radius of the pivot's dot.
const DOT: i64 = 450 * UM;
/// The degrees keep so far off the arc.
const CLEAR: i64 = 900 * UM;
/// Arrow's length and half its width, as a dimension line has them.
const ARROW: (i64, i64) = (2400 * UM, 450 * UM);
/// The arc is drawn in steps of at most 3 degrees.
const STEP: u32 = 300;

/// Where the degrees stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Degrees {
    /// Beyond the arc, in its middle.
    Beyond,
    /// Beside the direction before the turn, away from the arc.
    Before,
    /// Beside the direction after the turn, away from the arc.
    After,
}

impl Degrees {
    /// All three, the best first.
    pub const ALL: [Self; 3] = [Self::Beyond, Self::After, Self::Before];
}

/// A turn, as a figure tells it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AngleMark {
    /// The point that stays, on the page.
    pub pivot: At,
    /// The direction before the turn, to the left of rightward.
    pub from: Angle,
    /// The turn to the left; more than half a turn is drawn as one to the right.
    pub turn: Angle,
    /// Radius of the arc, nm on the page.
    pub radius: i64,
    /// How far from the pivot the two directions begin: at nothing, or near an arc that stands outside.
    pub start: i64,
    /// The degrees.
    pub text: String,
    /// Where they stand.
    pub degrees: Degrees,
}

impl AngleMark {
    fn at(&self, angle: Angle, radius: i64) -> At {
        turned(self.pivot.moved(radius, 0), angle, self.pivot)
    }

    /// Draws it.
    #[must_use]
    pub fn draw(&self) -> Drawn {
        let hundredths = self.turn.hundredths();
        let to_left = hundredths <= 18_000;
        let width = if to_left { hundredths } else { 36_000 - hundredths };
        let along = |share: u32| {
            let step = i64::from(share);
            self.from.then(if to_left { Angle::left(step) } else { Angle::right(step) })
        };
        let steps = width.div_ceil(STEP).max(1);
        let line = |role, points| Item::Path { role, points, closed: false };
        let ray = |angle| line(Role::Dimension, vec![self.at(angle, self.start), self.at(angle, self.radius + PAST)]);
        let mut items = vec![ray(self.from), ray(along(width))];
        let arc = (0..=steps).map(|n| self.at(along(width * n / steps), self.radius)).collect();
        items.push(line(Role::Dimension, arc));
        items.extend(self.arrow(&along, width));
        items.push(Item::Circles { role: Role::LeaderDot, radius: DOT, centres: vec![self.pivot] });
        let half_height = text::cap_height(Lettering::Figure) / 2;
        let at = self.degrees_at(&along, width, to_left).moved(0, half_height);
        items.push(Item::Text {
            role: Lettering::Figure,
            at,
            anchor: Anchor::Middle,
            turned: false,
            text: self.text.clone(),
        });
        let figure = text_area(Lettering::Figure, at, Anchor::Middle, false, &self.text);
        let area = extent(&items).unwrap_or(figure);
        Drawn { items, area, figure }
    }

    /// The middle of the degrees, their box clear of arc and directions however these lie.
    fn degrees_at(&self, along: &dyn Fn(u32) -> Angle, width: u32, to_left: bool) -> At {
        let half = (text::width(Lettering::Figure, &self.text) / 2, text::cap_height(Lettering::Figure) / 2);
        // How far the box reaches in a direction.
        let reach = |angle: Angle| {
            let unit = turned(At::new(1_000_000, 0), angle, At::new(0, 0));
            (half.0 * unit.x.abs() + half.1 * unit.y.abs()) / 1_000_000
        };
        let (direction, away) = match (self.degrees, to_left) {
            (Degrees::Beyond, _) => {
                let middle = along(width / 2);
                return self.at(middle, self.radius + PAST + CLEAR + reach(middle));
            }
            (Degrees::Before, true) | (Degrees::After, false) => (self.degrees, 3),
            (Degrees::Before, false) | (Degrees::After, true) => (self.degrees, 1),
        };
        let ray = along(if direction == Degrees::Before { 0 } else { width });
        let away = ray.then(Angle::quarters(away));
        let beside = self.at(ray, (self.radius - reach(ray)).max(reach(ray)));
        turned(beside.moved(CLEAR + reach(away), 0), away, beside)
    }

    /// The head at the arc's far end; none where the arc is too short for it.
    fn arrow(&self, along: &dyn Fn(u32) -> Angle, width: u32) -> Option<Item> {
        // An arc of so many hundredths is as long as the head: 18 000 / pi of them make a radius.
        let head = u32::try_from(ARROW.0 * 5_730 / self.radius.max(1)).ok()?;
        if width < 2 * head {
            return None;
        }
        let back = along(width - head);
        let points = vec![
            self.at(along(width), self.radius),
            self.at(back, self.radius - ARROW.1),
            self.at(back, self.radius + ARROW.1),
        ];
        Some(Item::Path { role: Role::Arrow, points, closed: true })
    }

    /// The room of the degrees and of the pivot's dot, for what must keep clear of them.
    #[must_use]
    pub fn plates(drawn: &Drawn) -> Vec<Area> {
        vec![drawn.figure.grown(800 * UM)]
    }
}
