//! From lengths as they are to lengths on the page.

use super::area::Area;
use super::scene::At;
use crate::geometry::{Point, Rect};

/// How large a figure is printed in the end: one for large print is drawn on a smaller page, which is
/// then printed larger as a whole, letters and lines and all. What is true to scale allows for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Print {
    tenths: i64,
}

impl Print {
    /// As drawn.
    pub const NORMAL: Self = Self { tenths: 10 };
    /// 1.7 times: figures of 9.5 pt come to 16, of 11 pt to 18.7.
    pub const LARGE: Self = Self { tenths: 17 };

    /// How much larger it is printed, in tenths.
    #[must_use]
    pub const fn tenths(self) -> i64 {
        self.tenths
    }

    /// A length that is `printed` on the page, as it is drawn; rounded half up.
    #[must_use]
    pub const fn drawn(self, printed: i64) -> i64 {
        (printed * 20 + self.tenths).div_euclid(2 * self.tenths)
    }
}

/// A reduction: `page = real * page_part / real_part`, rounded half up once.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Scale {
    page_part: i64,
    real_part: i64,
}

/// The scales a figure may be drawn at, larger number in tenths, largest picture first. 1:1, 1:2,
/// 1:5 and 1:10 are recommended by ISO 5455; 1:2.5, 1:3 and 1:4 lie between them.
pub const STATED: [u32; 7] = [10, 20, 25, 30, 40, 50, 100];

impl Scale {
    /// `1:n` as printed, with `n` in tenths.
    #[must_use]
    pub const fn stated(tenths: u32, print: Print) -> Self {
        Self { page_part: 100, real_part: tenths as i64 * print.tenths }
    }

    /// The largest reduction at which `width` x `height` (as they are) fit into a room on the page;
    /// not a stated scale. Never enlarges past 1:1.
    #[must_use]
    pub fn to_fit(width: i64, height: i64, room_width: i64, room_height: i64) -> Self {
        let across = i128::from(room_width) * i128::from(height);
        let up = i128::from(room_height) * i128::from(width);
        let (page_part, real_part) = if across < up { (room_width, width) } else { (room_height, height) };
        if page_part >= real_part { Self { page_part: 1, real_part: 1 } } else { Self { page_part, real_part } }
    }

    /// A length on the page.
    #[must_use]
    pub fn length(self, real: i64) -> i64 {
        let doubled = i128::from(real) * i128::from(self.page_part) * 2 + i128::from(self.real_part);
        i64::try_from(doubled.div_euclid(i128::from(self.real_part) * 2)).unwrap_or(i64::MAX)
    }

    /// The largest stated scale (tenths) of `from` on at which `width` x `height` fit into a room;
    /// the smallest one where none fits.
    #[must_use]
    pub fn choose(choices: &[u32], (width, height): (i64, i64), room: (i64, i64), print: Print) -> u32 {
        let fits = |tenths: &&u32| {
            let scale = Self::stated(**tenths, print);
            scale.length(width) <= room.0 && scale.length(height) <= room.1
        };
        choices.iter().find(fits).or(choices.last()).copied().unwrap_or(50)
    }
}

/// A plane with y upward (a card, a sheet) laid onto the page with y downward.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Frame {
    /// The reduction.
    pub scale: Scale,
    /// Where the plane's upper left corner lies on the page.
    pub at: At,
    /// Left edge of the plane's part that is drawn, as it is.
    pub left: i64,
    /// Upper edge of it, as it is.
    pub top: i64,
}

impl Frame {
    /// Lays `rect` (as it is) with its upper left corner at `at`.
    #[must_use]
    pub const fn new(scale: Scale, rect: Rect, at: At) -> Self {
        Self { scale, at, left: rect.left, top: rect.top }
    }

    /// A horizontal place on the page.
    #[must_use]
    pub fn x(self, real: i64) -> i64 {
        self.at.x + self.scale.length(real - self.left)
    }

    /// A vertical place on the page.
    #[must_use]
    pub fn y(self, real: i64) -> i64 {
        self.at.y + self.scale.length(self.top - real)
    }

    /// A point on the page.
    #[must_use]
    pub fn point(self, real: Point) -> At {
        At::new(self.x(real.x), self.y(real.y))
    }

    /// The rectangle of the plane that lies under `area`, for a frame that draws 1:1.
    #[must_use]
    pub fn at_full_size(self, area: Area) -> Rect {
        let (x, y) = (|x: i64| self.left + x - self.at.x, |y: i64| self.top - (y - self.at.y));
        Rect { left: x(area.left), right: x(area.right), top: y(area.top), bottom: y(area.bottom) }
    }

    /// A rectangle on the page.
    #[must_use]
    pub fn area(self, real: Rect) -> Area {
        Area { left: self.x(real.left), top: self.y(real.top), right: self.x(real.right), bottom: self.y(real.bottom) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fitted_scale_fits_and_never_enlarges() {
        let scale = Scale::to_fit(200, 100, 50, 50);
        assert_eq!((scale.length(200), scale.length(100)), (50, 25));
        assert_eq!(Scale::to_fit(10, 10, 50, 50).length(10), 10);
    }

    #[test]
    fn stated_scales_round_half_up() {
        assert_eq!(Scale::stated(25, Print::NORMAL).length(100), 40);
        assert_eq!(Scale::stated(20, Print::NORMAL).length(3), 2);
        assert_eq!(Scale::choose(&STATED, (300, 100), (110, 100), Print::NORMAL), 30);
    }

    #[test]
    fn large_print_is_drawn_smaller_and_printed_true() {
        // 1:2 of 34 mm is 17 mm on the page, drawn as 10 mm and printed 1.7 times as large.
        assert_eq!(Scale::stated(20, Print::LARGE).length(34), 10);
        assert_eq!(Print::LARGE.drawn(50_000_000), 29_411_765);
        assert!((Print::LARGE.drawn(50_000_000) * 17 - 500_000_000).abs() <= 9, "1 nm at most off 5 cm");
        assert_eq!(Print::NORMAL.drawn(7), 7);
    }
}
