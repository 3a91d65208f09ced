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
const ABOVE: i64 = 900 * UM;
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
pub const FIRST: i64 = 6500 * UM;
/// Each further one lies so much further off.
pub const NEXT: i64 = 7000 * UM;

/// Which way a dimension line runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Runs {
    /// From left to right.
    Level,
    /// From top to bottom.
    Upright,
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
    /// On which side of the gap a narrow upright one has its figure.
    pub figure_left: bool,
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
        Self { runs: Runs::Level, ends, outlines, line, text: text.into(), figure_left: false }
    }

    /// An upright dimension line at `line`, beside outlines at `outlines`.
    #[must_use]
    pub fn upright(ends: (i64, i64), outlines: (i64, i64), line: i64, text: impl Into<String>) -> Self {
        let figure_left = line < outlines.0;
        Self { runs: Runs::Upright, ends, outlines, line, text: text.into(), figure_left }
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

    fn stroke(&self, from: (i64, i64), to: (i64, i64)) -> Item {
        Item::Path {
            role: Role::Dimension,
            points: vec![self.point(from.0, from.1), self.point(to.0, to.1)],
            closed: false,
        }
    }

    fn extension(&self, end: i64, outline: i64) -> Option<Item> {
        // A line that ends on the outline itself needs none.
        let away = if self.line > outline { 1 } else { -1 };
        ((self.line - outline).abs() > OFF)
            .then(|| self.stroke((end, outline + away * OFF), (end, self.line + away * PAST)))
    }

    /// Where the figure stands.
    fn figure(&self) -> (At, Anchor, bool) {
        let (low, high) = self.ends;
        let middle = (low + high) / 2;
        let half_cap = text::cap_height(Lettering::Figure) / 2;
        match (self.runs, self.is_narrow()) {
            (Runs::Level, false) => (At::new(middle, self.line - ABOVE), Anchor::Middle, false),
            (Runs::Level, true) => (At::new(high + OUTSIDE + CLEAR, self.line + half_cap), Anchor::Start, false),
            (Runs::Upright, false) => (At::new(self.line - ABOVE, middle), Anchor::Middle, true),
            (Runs::Upright, true) if self.figure_left => {
                (At::new(self.line - PAST - CLEAR, middle + half_cap), Anchor::End, false)
            }
            (Runs::Upright, true) => (At::new(self.line + PAST + CLEAR, middle + half_cap), Anchor::Start, false),
        }
    }

    /// Draws it.
    #[must_use]
    pub fn draw(&self) -> Drawn {
        let (low, high) = self.ends;
        let mut items: Vec<Item> = [self.extension(low, self.outlines.0), self.extension(high, self.outlines.1)]
            .into_iter()
            .flatten()
            .collect();
        if self.is_narrow() {
            items.push(self.stroke((low - OUTSIDE, self.line), (high + OUTSIDE, self.line)));
            items.push(self.arrow(low, low - 1));
            items.push(self.arrow(high, high + 1));
        } else {
            items.push(self.stroke((low, self.line), (high, self.line)));
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

/// What a dimension takes of its line: the stretch with arrows outside, and the two ends.
type Held = ((i64, i64), (i64, i64));

/// Gives dimensions that stand on one side of a figure their lines: the shortest nearest the
/// outline at `outline`, further ones `away` from it (1 or -1); two share a line where they do not
/// meet. One whose extension line would cross a nearer dimension is left out.
#[must_use]
pub fn stack(mut dimensions: Vec<Dimension>, outline: i64, away: i64) -> Vec<Drawn> {
    dimensions.sort_by_key(|dimension| (dimension.ends.1 - dimension.ends.0, dimension.ends));
    let mut lines: Vec<Vec<Held>> = Vec::new();
    // How far out the figures of each line reach.
    let mut reaches: Vec<i64> = Vec::new();
    let mut drawn = Vec::new();
    for mut dimension in dimensions {
        let reach = if dimension.is_narrow() { OUTSIDE } else { 0 };
        let ends = dimension.ends;
        // The figure of a narrow level one stands after its right arrow.
        let after = if dimension.runs == Runs::Level && dimension.is_narrow() {
            CLEAR + text::width(Lettering::Figure, &dimension.text) + 400 * UM
        } else {
            0
        };
        let (low, high) = (ends.0 - reach, ends.1 + reach + after);
        let is_free = |line: &Vec<Held>| line.iter().all(|((l, h), _)| high <= *l || *h <= low);
        // An extension line may run along another's, but not across a dimension line.
        let crosses = |line: &Vec<Held>| {
            line.iter().any(|((l, h), own)| {
                [ends.0, ends.1].iter().any(|end| l < end && end < h && *end != own.0 && *end != own.1)
            })
        };
        let level = lines.iter().position(is_free).unwrap_or(lines.len());
        if lines.iter().take(level).any(crosses) {
            continue;
        }
        if level == lines.len() {
            lines.push(Vec::new());
        }
        lines[level].push(((low, high), ends));
        // A figure beside a narrow gap may reach past the next line's usual place.
        let beyond = reaches.iter().take(level).max().map_or(0, |reach| reach + ABOVE + ARROW.1);
        let usual = FIRST + NEXT * i64::try_from(level).unwrap_or(0);
        dimension.line = outline + away * usual.max(beyond);
        dimension.figure_left = away < 0;
        let new = dimension.draw();
        let reach = match (dimension.runs, away < 0) {
            (Runs::Upright, true) => outline - new.area.left,
            (Runs::Upright, false) => new.area.right - outline,
            (Runs::Level, true) => outline - new.area.top,
            (Runs::Level, false) => new.area.bottom - outline,
        };
        if reaches.len() <= level {
            reaches.push(reach);
        }
        reaches[level] = reaches[level].max(reach);
        drawn.push(new);
    }
    drawn
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: i64 = 1_000_000;

    #[test]
    fn the_shortest_lies_nearest_and_nothing_crosses() {
        let upright = |ends| Dimension::upright(ends, (0, 0), 0, "5 1/2");
        let drawn = stack(vec![upright((0, 70 * MM)), upright((0, 20 * MM))], 0, -1);
        assert_eq!(drawn.len(), 2);
        assert!(drawn[0].area.left > drawn[1].area.left, "shorter first, nearer");
        let crossing = stack(vec![upright((0, 20 * MM)), upright((10 * MM, 60 * MM))], 0, -1);
        assert_eq!(crossing.len(), 1, "an extension line would cross");
    }

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
