//! Dimension lines after ISO 129-1: extension lines, filled arrows, the figure above its line and
//! centred, vertical ones read from the right, arrows outside where the gap is narrow.

use super::area::Area;
use super::canvas::{extent, text_area};
use super::scene::{Anchor, At, Item, Lettering, Role};
use super::text;

const UM: i64 = 1000;
/// An extension line starts so far off the outline.
const OFF: i64 = 1000 * UM;
/// An extension line passes its dimension line by so much.
const PAST: i64 = 1400 * UM;
/// Figure above its line.
pub(super) const ABOVE: i64 = 900 * UM;
/// Arrow's length and half its width.
const ARROW: (i64, i64) = (2400 * UM, 450 * UM);
/// Under this length on the page the arrows stand outside.
const NARROW: i64 = 8000 * UM;
/// Line outside the arrows' tips, each side.
const OUTSIDE: i64 = 5000 * UM;
/// Clear of the line's end.
const CLEAR: i64 = 1000 * UM;
/// The first dimension line lies so far off the outline; ISO texts say about 10 mm, the page is too
/// narrow for that.
pub(super) const FIRST: i64 = 6500 * UM;
/// Each further one lies so much further off.
pub(super) const NEXT: i64 = 7000 * UM;

/// Which way a dimension line runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Runs {
    /// From left to right.
    Level,
    /// From top to bottom.
    Upright,
}

/// Where a narrow one has its figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Beside {
    /// Left of the gap; only of one that runs from top to bottom.
    Left,
    /// Right of the gap; only of one that runs from top to bottom.
    Right,
    /// Beyond the arrow at its left or upper end.
    Low,
    /// Beyond the arrow at its right or lower end.
    High,
}

/// One dimension: what it measures and where its line lies.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dimension {
    /// Which way it runs.
    pub runs: Runs,
    /// The two ends along the line, the smaller first.
    pub ends: (i64, i64),
    /// Where the outlines lie that the two extension lines start off, across the line.
    pub outlines: (i64, i64),
    /// Where the line lies.
    pub line: i64,
    /// The figure.
    pub text: String,
    /// Where its figure stands, if it is narrow.
    pub beside: Beside,
}

/// A dimension as drawn.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Drawn {
    /// Its lines, arrows and figure.
    pub items: Vec<Item>,
    /// All of it.
    pub area: Area,
    /// The figure alone.
    pub figure: Area,
}

impl Dimension {
    /// A level dimension line at `line`, under or over outlines at `outlines`.
    #[must_use]
    pub fn level(ends: (i64, i64), outlines: (i64, i64), line: i64, text: impl Into<String>) -> Self {
        Self { runs: Runs::Level, ends, outlines, line, text: text.into(), beside: Beside::High }
    }

    /// An upright dimension line at `line`, beside outlines at `outlines`.
    #[must_use]
    pub fn upright(ends: (i64, i64), outlines: (i64, i64), line: i64, text: impl Into<String>) -> Self {
        let beside = if line < outlines.0 { Beside::Left } else { Beside::Right };
        Self { runs: Runs::Upright, ends, outlines, line, text: text.into(), beside }
    }

    /// Whether its arrows stand outside.
    #[must_use]
    pub fn is_narrow(&self) -> bool {
        let length = self.ends.1 - self.ends.0;
        length < NARROW || length < text::width(Lettering::Figure, &self.text)
    }

    /// A point `along` the line and `across` it, on the page.
    const fn point(&self, along: i64, across: i64) -> At {
        match self.runs {
            Runs::Level => At::new(along, across),
            Runs::Upright => At::new(across, along),
        }
    }

    fn arrow(&self, tip: i64, body: i64) -> Item {
        let base = tip + if body > tip { ARROW.0 } else { -ARROW.0 };
        Item::Path {
            role: Role::Arrow,
            points: vec![
                self.point(tip, self.line),
                self.point(base, self.line - ARROW.1),
                self.point(base, self.line + ARROW.1),
            ],
            closed: true,
        }
    }

    /// The dimension line, past its arrows where these stand outside.
    pub(super) fn line_drawn(&self) -> (At, At) {
        let (low, high) = self.ends;
        let past = if self.is_narrow() { OUTSIDE } else { 0 };
        (self.point(low - past, self.line), self.point(high + past, self.line))
    }

    /// The extension lines; a line that ends on the outline itself needs none.
    pub(super) fn extensions(&self) -> Vec<(At, At)> {
        let each = [(self.ends.0, self.outlines.0), (self.ends.1, self.outlines.1)];
        let far = each.into_iter().filter(|(_, outline)| (self.line - outline).abs() > OFF);
        far.map(|(end, outline)| {
            let away = if self.line > outline { 1 } else { -1 };
            (self.point(end, outline + away * OFF), self.point(end, self.line + away * PAST))
        })
        .collect()
    }

    /// Where the figure stands.
    fn figure(&self) -> (At, Anchor, bool) {
        let (low, high) = self.ends;
        let middle = (low + high) / 2;
        let half_cap = text::cap_height(Lettering::Figure) / 2;
        if !self.is_narrow() {
            return match self.runs {
                Runs::Level => (At::new(middle, self.line - ABOVE), Anchor::Middle, false),
                Runs::Upright => (At::new(self.line - ABOVE, middle), Anchor::Middle, true),
            };
        }
        let (before, after) = (low - OUTSIDE - CLEAR, high + OUTSIDE + CLEAR);
        match (self.runs, self.beside) {
            (Runs::Level, Beside::Left | Beside::Low) => (At::new(before, self.line + half_cap), Anchor::End, false),
            (Runs::Level, _) => (At::new(after, self.line + half_cap), Anchor::Start, false),
            (Runs::Upright, Beside::Left) => (At::new(self.line - PAST - CLEAR, middle + half_cap), Anchor::End, false),
            (Runs::Upright, Beside::Right) => {
                (At::new(self.line + PAST + CLEAR, middle + half_cap), Anchor::Start, false)
            }
            (Runs::Upright, Beside::Low) => (At::new(self.line, before), Anchor::Middle, false),
            (Runs::Upright, Beside::High) => (At::new(self.line, after + 2 * half_cap), Anchor::Middle, false),
        }
    }

    /// Draws it.
    #[must_use]
    pub fn draw(&self) -> Drawn {
        let (low, high) = self.ends;
        let lines = self.extensions().into_iter().chain([self.line_drawn()]);
        let mut items: Vec<Item> = lines
            .map(|(from, to)| Item::Path { role: Role::Dimension, points: vec![from, to], closed: false })
            .collect();
        if self.is_narrow() {
            items.push(self.arrow(low, low - 1));
            items.push(self.arrow(high, high + 1));
        } else {
            items.push(self.arrow(low, high));
            items.push(self.arrow(high, low));
        }
        let (at, anchor, turned) = self.figure();
        items.push(Item::Text { role: Lettering::Figure, at, anchor, turned, text: self.text.clone() });
        let figure = text_area(Lettering::Figure, at, anchor, turned, &self.text);
        let area = extent(&items).unwrap_or(figure);
        Drawn { items, area, figure }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: i64 = 1_000_000;

    #[test]
    fn the_figure_stands_above_its_line() {
        let level = Dimension::level((0, 30 * MM), (0, 0), 7 * MM, "4 1/4").draw();
        assert_eq!(level.figure.bottom, 7 * MM - ABOVE);
        let narrow = Dimension::level((0, 3 * MM), (0, 0), 7 * MM, "1/4").draw();
        assert!(narrow.figure.left >= 3 * MM + OUTSIDE, "after the right arrow");
        let upright = Dimension::upright((0, 30 * MM), (0, 0), -7 * MM, "5 1/2").draw();
        assert!(upright.figure.right <= -7 * MM && upright.figure.height() > upright.figure.width());
    }
}
