//! A shape turned, turned over, and two of them from one rectangle.

use super::{Form, Making, Shape, Window};
use crate::geometry::{Mirror, Point, Rect};

impl Form {
    /// The form mirrored within a rectangle of this size, as it shows when the paper is turned over.
    #[must_use]
    pub fn mirrored(&self, mirror: Mirror, width: i64, height: i64) -> Self {
        let frame = Rect::at(0, 0, width, height);
        match self {
            Self::Rectangle | Self::Diamond | Self::Circle | Self::Oval => self.clone(),
            Self::Triangle { right_angle } => Self::Triangle { right_angle: right_angle.mirrored(mirror) },
            Self::Polygon { corners } => {
                Self::Polygon { corners: corners.iter().map(|corner| corner.mirrored(mirror, frame)).collect() }
            }
            Self::Drawn { name, corners } => Self::Drawn {
                name: name.clone(),
                corners: corners.iter().map(|corner| corner.mirrored(mirror, frame)).collect(),
            },
            Self::Ended { edge, end, opposite } => {
                Self::Ended { edge: edge.mirrored(mirror), end: *end, opposite: *opposite }
            }
            Self::Rounded { radius, corners } => Self::Rounded {
                radius: *radius,
                corners: corners.iter().map(|corner| corner.mirrored(mirror)).collect(),
            },
        }
    }

    /// The form turned to the left by quarter turns; width and height, given before the turn, change
    /// places with an odd number.
    #[must_use]
    pub fn quarter_turned(&self, turns: u8, width: i64, height: i64) -> Self {
        let frame = Rect::at(0, 0, width, height);
        match self {
            Self::Rectangle | Self::Diamond | Self::Circle | Self::Oval => self.clone(),
            Self::Triangle { right_angle } => Self::Triangle { right_angle: right_angle.quarter_turned(turns) },
            Self::Polygon { corners } => {
                Self::Polygon { corners: corners.iter().map(|corner| corner.quarter_turned_in(turns, frame)).collect() }
            }
            Self::Drawn { name, corners } => Self::Drawn {
                name: name.clone(),
                corners: corners.iter().map(|corner| corner.quarter_turned_in(turns, frame)).collect(),
            },
            Self::Ended { edge, end, opposite } => {
                Self::Ended { edge: edge.quarter_turned(turns), end: *end, opposite: *opposite }
            }
            Self::Rounded { radius, corners } => Self::Rounded {
                radius: *radius,
                corners: corners.iter().map(|corner| corner.quarter_turned(turns)).collect(),
            },
        }
    }

    /// What the other half of the rectangle is, as it lies there: for a triangle the one with its right
    /// angle in the corner across. Nothing useful for every other form.
    #[must_use]
    pub fn other_half(&self) -> Option<Self> {
        match self {
            Self::Triangle { right_angle } => Some(Self::Triangle { right_angle: right_angle.opposite() }),
            _ => None,
        }
    }
}

impl Shape {
    /// How many of this very shape come from one trimmed rectangle: two for a triangle cut by hand without
    /// windows where its paper allows a piece to lie turned half round (`half_turn`), else one.
    ///
    /// On paper that does not allow it the other half still serves where that triangle is wanted too
    /// ([`Self::shares_rectangle_with`]).
    #[must_use]
    pub fn per_rectangle(&self, half_turn: bool) -> u32 {
        if half_turn && self.shares_rectangle_with(&self.half_turned(), false) { 2 } else { 1 }
    }

    /// Whether one cut along the diagonal of one rectangle gives both this triangle and `other`, each
    /// upright or, where `half_turn` allows it, turned half round.
    #[must_use]
    pub fn shares_rectangle_with(&self, other: &Self, half_turn: bool) -> bool {
        let halves = |shape: &Self| shape.making == Making::ByHand && shape.windows.is_empty();
        let fits = |shape: &Self| self.form.other_half().as_ref() == Some(&shape.form);
        halves(self)
            && halves(other)
            && (self.width, self.height) == (other.width, other.height)
            && (fits(other) || half_turn && fits(&other.half_turned()))
    }

    /// The shape turned over, as it shows from its other side.
    #[must_use]
    pub fn mirrored(&self, mirror: Mirror) -> Self {
        let frame = self.frame();
        self.changed(self.form.mirrored(mirror, self.width, self.height), self.width, self.height, |window| {
            let place = window.frame().mirrored(mirror, frame);
            (window.form.mirrored(mirror, window.width, window.height), place)
        })
    }

    /// The shape turned to the left by quarter turns.
    #[must_use]
    pub fn quarter_turned(&self, turns: u8) -> Self {
        let frame = self.frame();
        let lying = frame.quarter_turned_in_place(turns);
        let form = self.form.quarter_turned(turns, self.width, self.height);
        self.changed(form, lying.width(), lying.height(), |window| {
            let place = window.frame();
            let corner = |x: i64, y: i64| Point::new(x, y).quarter_turned_in(turns, frame);
            let place = Rect::between(corner(place.left, place.bottom), corner(place.right, place.top));
            (window.form.quarter_turned(turns, window.width, window.height), place)
        })
    }

    /// The shape turned half round.
    #[must_use]
    pub fn half_turned(&self) -> Self {
        self.quarter_turned(2)
    }

    fn changed(&self, form: Form, width: i64, height: i64, place: impl Fn(&Window) -> (Form, Rect)) -> Self {
        let windows = self.windows.iter().map(|window| {
            let (form, at) = place(window);
            Window { form, width: at.width(), height: at.height(), left: at.left, bottom: at.bottom, ..*window }
        });
        Self { form, width, height, making: self.making, windows: windows.collect() }
    }
}

impl Window {
    /// Where it lies on its shape.
    #[must_use]
    pub const fn frame(&self) -> Rect {
        Rect::at(self.left, self.bottom, self.width, self.height)
    }
}
