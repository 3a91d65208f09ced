//! Shapes made from a rectangle that the trimmer cuts first.
//!
//! Takes a form, a size and how it is made, all in nanometres; gives the rectangle to trim, the outline,
//! what a window leaves over, and the finishing cuts of a hand as data. Must never know a paper, a
//! placement on a card, a sentence or a pen.
//!
//! Every shape stands in the frame of its finished size: origin at the lower left of the rectangle round
//! the finished outline, x to the right, y upward. The trimmed rectangle of a stamped shape begins a margin
//! before it.

mod drawn;
mod fault;
mod finish;
mod hands;
mod orient;
mod outline;
mod round;

pub use drawn::{DRAWN_WIDTH, Drawn, DrawnFault, LARGEST_DRAWING, drawn};
pub use fault::ShapeFault;
pub use finish::{Finish, Spot};
pub use hands::Image;
pub use round::{CHORD_ERROR, LARGEST_ROUND};

use crate::geometry::{Comparison, Corner, Edge, Point, Polygon, Rect, Region, Relation, distance, relation};

/// The form of a shape within the rectangle round it.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Form {
    /// The rectangle itself.
    Rectangle,
    /// A right triangle, half of the rectangle cut along a diagonal.
    Triangle {
        /// Where its right angle lies. The corners across from each other belong to the one diagonal and
        /// are one triangle turned half round; the other two are its mirror image.
        right_angle: Corner,
    },
    /// The middles of the four edges joined.
    Diamond,
    /// Any simple polygon that touches all four edges of the rectangle.
    Polygon {
        /// Its corners in either direction, from the lower left of the rectangle.
        corners: Vec<Point>,
    },
    /// An outline from a drawing, as wide as the rectangle; it stands on the bottom edge and may end below
    /// the top one.
    Drawn {
        /// What the drawing is called.
        name: String,
        /// Its corners, counter-clockwise, from the lower left of the rectangle.
        corners: Vec<Point>,
    },
    /// A strip with one end, or both, cut to a notch or a point.
    Ended {
        /// The edge that is the end.
        edge: Edge,
        /// What is cut there.
        end: End,
        /// What is cut at the edge across from it.
        opposite: Option<End>,
    },
    /// A rectangle with corners rounded by a corner punch.
    Rounded {
        /// The radius.
        radius: i64,
        /// Which corners, each once.
        corners: Vec<Corner>,
    },
    /// A circle: width and height are equal.
    Circle,
    /// An ellipse that fills the rectangle.
    Oval,
}

/// How an end of a strip is cut.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum End {
    /// A notch, cut from both corners to a point in the middle.
    Fishtail {
        /// How deep the notch is, from the end.
        depth: i64,
    },
    /// A point in the middle of the end.
    Pointed {
        /// How long the point is, from its tip.
        depth: i64,
    },
}

/// How an outline is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Making {
    /// Trimmer, scissors or knife, and a corner punch for rounded corners.
    ByHand,
    /// A cutting die, larger paper under it.
    Die {
        /// Paper left on every side of the outline.
        margin: i64,
    },
    /// A hand punch, larger paper pushed into it.
    Punch {
        /// Paper left on every side of the outline.
        margin: i64,
    },
}

impl Making {
    /// The paper left on every side of the outline.
    #[must_use]
    pub const fn margin(self) -> i64 {
        match self {
            Self::ByHand => 0,
            Self::Die { margin } | Self::Punch { margin } => margin,
        }
    }
}

/// A window: a shape cut out of the middle of another.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Window {
    /// Its form.
    pub form: Form,
    /// Its width.
    pub width: i64,
    /// Its height.
    pub height: i64,
    /// From the left edge of the shape's frame to its own.
    pub left: i64,
    /// From the bottom edge of the shape's frame to its own.
    pub bottom: i64,
    /// How it is cut out; a margin is of no use here and is left unread.
    pub making: Making,
}

/// A shape to be made.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Shape {
    /// Its form.
    pub form: Form,
    /// Finished width.
    pub width: i64,
    /// Finished height.
    pub height: i64,
    /// How its outline is made.
    pub making: Making,
    /// What is cut out of it.
    pub windows: Vec<Window>,
}

/// What a window leaves over, whole, in the frame of the window.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Waste {
    /// The window, counted from 0.
    pub window: usize,
    /// The outline of the piece that comes out.
    pub outline: Polygon,
}

/// A shape with everything that follows from it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Made {
    /// The rectangle that the trimmer cuts, in the frame of the finished size.
    pub blank: Rect,
    /// The finished outline with its windows.
    pub outline: Polygon,
    /// What the windows leave over.
    pub waste: Vec<Waste>,
    /// The finishing cuts, in the order of a hand: windows first while the paper is whole and easy to hold,
    /// then the outline.
    pub finish: Vec<Finish>,
}

impl Made {
    /// Twice the finished area in square nanometres, windows taken off.
    #[must_use]
    pub fn area2(&self) -> i128 {
        self.outline.area2()
    }
}

impl Shape {
    /// A shape without windows, made by hand.
    #[must_use]
    pub const fn by_hand(form: Form, width: i64, height: i64) -> Self {
        Self { form, width, height, making: Making::ByHand, windows: Vec::new() }
    }

    /// The rectangle round the finished outline.
    #[must_use]
    pub const fn frame(&self) -> Rect {
        Rect::at(0, 0, self.width, self.height)
    }

    /// Works out the rectangle to trim, the outline, the waste and the finishing cuts.
    ///
    /// # Errors
    /// The first thing that keeps the shape from being made, with the measured fact.
    pub fn make(&self) -> Result<Made, ShapeFault> {
        let margin = self.making.margin();
        if margin < 0 {
            return Err(ShapeFault::NegativeMargin { margin });
        }
        let full = outline::of(&self.form, self.width, self.height, self.making)?;
        let mut holes: Vec<Polygon> = Vec::with_capacity(self.windows.len());
        let mut waste = Vec::with_capacity(self.windows.len());
        for (window, cut) in self.windows.iter().enumerate() {
            let whole = outline::of(&cut.form, cut.width, cut.height, cut.making)
                .map_err(|fault| ShapeFault::Window { window, fault: Box::new(fault) })?;
            let placed = outline::placed(&whole, cut).ok_or(ShapeFault::TooLarge {
                side: if cut.left.unsigned_abs() > cut.bottom.unsigned_abs() { cut.left } else { cut.bottom },
            })?;
            keeps_clear(window, &placed, &full, &holes)?;
            waste.push(Waste { window, outline: whole });
            holes.push(placed);
        }
        let finish = finish::steps(self, &full, &holes);
        let rings = holes.iter().map(|hole| hole.outer().to_vec()).collect();
        Ok(Made {
            blank: self.frame().grown(margin),
            outline: Polygon::trusted(full.outer().to_vec(), rings),
            waste,
            finish,
        })
    }
}

/// Whether a window lies within the outline and apart from its edge and from the windows before it.
fn keeps_clear(window: usize, placed: &Polygon, full: &Polygon, before: &[Polygon]) -> Result<(), ShapeFault> {
    let (hole, whole) = (Region::from(placed), Region::from(full));
    if relation(&hole, &whole, Comparison::Exact) != Relation::Inside || distance(&hole, &whole) == Some(0) {
        let frame = full.bounds();
        let past = Edge::ALL.map(|edge| -frame.border(placed.bounds(), edge)).into_iter().max().unwrap_or(0);
        return Err(ShapeFault::WindowReachesOut { window, past: past.max(0) });
    }
    for (first, other) in before.iter().enumerate() {
        if relation(&hole, &Region::from(other), Comparison::Exact) != Relation::Apart {
            return Err(ShapeFault::WindowsMeet { first, second: window });
        }
    }
    Ok(())
}
