//! A picture as data: roles and exact lengths on paper.
//!
//! Scene coordinates: origin at the top left of the picture, x to the right, y *downward*,
//! nanometres on the printed page (already divided by the scale). Only `style` knows pens.

use serde::Serialize;

/// A point on the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
pub struct At {
    /// To the right, nm.
    pub x: i64,
    /// Downward, nm.
    pub y: i64,
}

impl At {
    /// A point.
    #[must_use]
    pub const fn new(x: i64, y: i64) -> Self {
        Self { x, y }
    }

    /// Moved by `x` to the right and `y` downward.
    #[must_use]
    pub const fn moved(self, x: i64, y: i64) -> Self {
        Self::new(self.x + x, self.y + y)
    }
}

/// One picture.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Scene {
    /// A name that is unique in the edition: `front-dusk`, `cutting-1`, `step-3`.
    pub name: String,
    /// Width on the page, nm.
    pub width: i64,
    /// Height on the page, nm.
    pub height: i64,
    /// The scale's larger number in tenths (20 is 1:2, 25 is 1:2.5); none: not to scale.
    pub scale: Option<u32>,
    /// What the figure shows, numbers included, for readers who cannot see it.
    pub alt: String,
    /// What is drawn, back to front.
    pub items: Vec<Item>,
}

impl Scene {
    /// Whether anything in it stands for this.
    #[must_use]
    pub fn has(&self, wanted: Role) -> bool {
        fn stands(item: &Item, wanted: Role) -> bool {
            match item {
                Item::Path { role, .. }
                | Item::Shape { role, .. }
                | Item::Strokes { role, .. }
                | Item::Circles { role, .. }
                | Item::Box { role, .. } => *role == wanted,
                Item::Text { .. } => false,
                Item::Lens { items, .. } => items.iter().any(|item| stands(item, wanted)),
            }
        }
        self.items.iter().any(|item| stands(item, wanted))
    }

    /// The same without hatches, for printers that spare ink: what a hatch tells is then said in words.
    #[must_use]
    pub fn without_hatches(self) -> Self {
        fn bare(items: Vec<Item>) -> Vec<Item> {
            items
                .into_iter()
                .filter(|item| item.role().is_none_or(|role| !role.is_hatch()))
                .map(|item| match item {
                    Item::Lens { centre, radius, items } => Item::Lens { centre, radius, items: bare(items) },
                    other => other,
                })
                .collect()
        }
        Self { items: bare(self.items), ..self }
    }
}

/// One thing drawn.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Item {
    /// An open or closed run of straight lines.
    Path {
        /// What it stands for.
        role: Role,
        /// Corners.
        points: Vec<At>,
        /// Whether the last corner joins the first; a closed path may be filled by its role.
        closed: bool,
    },
    /// An area of any outline: closed rings, each point inside that an odd number of them enclose, so
    /// that a ring within another is a hole.
    Shape {
        /// What it stands for.
        role: Role,
        /// The rings.
        rings: Vec<Vec<At>>,
    },
    /// Many short runs of one role (a hatch), each open.
    Strokes {
        /// What they stand for.
        role: Role,
        /// The runs.
        runs: Vec<Vec<At>>,
    },
    /// Many equal circles of one role.
    Circles {
        /// What they stand for.
        role: Role,
        /// Radius, nm.
        radius: i64,
        /// Centres.
        centres: Vec<At>,
    },
    /// A rectangle with rounded corners.
    Box {
        /// What it stands for.
        role: Role,
        /// Upper left corner.
        at: At,
        /// Width, nm.
        width: i64,
        /// Height, nm.
        height: i64,
        /// Corner radius, nm.
        radius: i64,
    },
    /// Words or a number. A fraction in it is written `3 3/4` and set as a true fraction.
    Text {
        /// Which letters.
        role: Lettering,
        /// Where: on the baseline, at the anchor.
        at: At,
        /// Which end of the text stands at `at`.
        anchor: Anchor,
        /// Turned a quarter anticlockwise about `at`, to be read from the right.
        turned: bool,
        /// The text.
        text: String,
    },
    /// A round detail: its items are clipped to the circle. It draws nothing of its own: the white
    /// below it and the ring round it are items beside it.
    Lens {
        /// Middle.
        centre: At,
        /// Radius, nm.
        radius: i64,
        /// What is seen through it.
        items: Vec<Item>,
    },
}

/// What a line or area stands for. `style` gives each its pen and fill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Role {
    /// A cut on a diagram.
    Cut,
    /// The edge of a piece that this picture is about.
    Piece,
    /// A sheet's own edge.
    Sheet,
    /// The finished card's layers.
    Layer,
    /// A layer that was there already.
    Ghost,
    /// A hidden edge.
    Hidden,
    /// Score and fold; where a picture tells two kinds of fold apart, the one that points toward the
    /// reader.
    Fold,
    /// A fold that points away from the reader.
    Valley,
    /// Where something glued is trimmed level.
    Trim,
    /// Dimension and extension lines.
    Dimension,
    /// A filled arrow head.
    Arrow,
    /// A leader from a ring to its piece.
    Leader,
    /// The filled dot at a leader's end.
    LeaderDot,
    /// A ring round a piece's number.
    Ring,
    /// A flag with a cut number.
    Flag,
    /// A bracket over a run of equal cuts.
    Bracket,
    /// The crossed edge strip.
    EdgeStrip,
    /// Hatching lines.
    Hatch,
    /// Hatching signs drawn with strokes: chevrons, pins.
    HatchSign,
    /// Hatching dots, filled.
    HatchDot,
    /// Heads of hatching pins, filled.
    HatchHead,
    /// Hatching rings, open.
    HatchRing,
    /// A white plate under a label.
    Plate,
    /// White inside of something that covers what is below, no outline.
    Cover,
    /// The shaft of the arrow that says which way is up.
    Up,
    /// The filled head of it.
    UpHead,
    /// The circle round a detail and its tie.
    LensRing,
    /// An outline to colour or write in.
    Outline,
    /// A bar to check a print with; the mark of a ruler that is meant.
    Bar,
    /// The edge and the marks of a bit of ruler.
    Ruler,
}

impl Item {
    /// What it stands for; none for words and details.
    #[must_use]
    pub const fn role(&self) -> Option<Role> {
        match self {
            Self::Path { role, .. }
            | Self::Shape { role, .. }
            | Self::Strokes { role, .. }
            | Self::Circles { role, .. }
            | Self::Box { role, .. } => Some(*role),
            Self::Text { .. } | Self::Lens { .. } => None,
        }
    }
}

impl Role {
    /// Whether it is a part of a hatch.
    #[must_use]
    pub const fn is_hatch(self) -> bool {
        matches!(self, Self::Hatch | Self::HatchSign | Self::HatchDot | Self::HatchHead | Self::HatchRing)
    }

    /// Every role, in the order declared.
    pub const ALL: [Self; 30] = [
        Self::Cut,
        Self::Piece,
        Self::Sheet,
        Self::Layer,
        Self::Ghost,
        Self::Hidden,
        Self::Fold,
        Self::Valley,
        Self::Trim,
        Self::Dimension,
        Self::Arrow,
        Self::Leader,
        Self::LeaderDot,
        Self::Ring,
        Self::Flag,
        Self::Bracket,
        Self::EdgeStrip,
        Self::Hatch,
        Self::HatchSign,
        Self::HatchDot,
        Self::HatchHead,
        Self::HatchRing,
        Self::Plate,
        Self::Cover,
        Self::Up,
        Self::UpHead,
        Self::LensRing,
        Self::Outline,
        Self::Bar,
        Self::Ruler,
    ];
}

/// Which letters a text is set in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lettering {
    /// Sizes and dimensions: 11 pt.
    Figure,
    /// Ring numbers: 10 pt bold.
    Ring,
    /// Cut numbers in flags: 9.5 pt bold, white.
    Flag,
    /// Bare piece numbers: 11 pt bold.
    Bare,
    /// Leftover numerals: 11 pt bold, slate.
    Numeral,
    /// Leftover sizes: 11 pt, slate.
    Leftover,
    /// Scale and small words: 9.5 pt, slate.
    Small,
    /// The word at a fold or score: 10 pt bold, teal.
    Word,
    /// The word at the arrow that says which way is up: 10 pt bold, ink.
    UpWord,
    /// The word at a line to trim: 10 pt bold, rust.
    TrimWord,
}

impl Lettering {
    /// Every lettering, in the order declared.
    pub const ALL: [Self; 10] = [
        Self::Figure,
        Self::Ring,
        Self::Flag,
        Self::Bare,
        Self::Numeral,
        Self::Leftover,
        Self::Small,
        Self::Word,
        Self::UpWord,
        Self::TrimWord,
    ];
}

/// Which end of a text stands at its point.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Anchor {
    /// Its start.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}
