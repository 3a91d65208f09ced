//! The settled design: nothing optional that a later stage would have to guess, nothing relative.
//!
//! A design is settled for one system of units; the other edition is settled from the twins that
//! the designer states, and by rule where none is stated. Must never know where a layer lies or how paper is cut.

mod frames;
mod imprint;
mod languages;
mod papers;
mod relations;
mod sides;

use crate::design::restate::Restated;
use crate::design::variants::Wanted;
use crate::geometry::{Angle, Corner, Edge, Mirror, Rect};
use crate::length::{Length, Size, Units};
use crate::shape::{Form, Shape};
use crate::source::{Span, Spanned};
use crate::words::{Language, Words};
pub use frames::{Framed, Frames};
pub use imprint::{Accents, Imprint, Photo, Web};
pub use languages::Untold;
pub use papers::{
    AlongEdge, Also, Back, Cells, EdgeStrip, Fixed, FixedRow, Grain, Paper, Pattern, Sheets, Side, TurnedOver,
};
pub use relations::{Change, Extent, Measure, Of, Relation, Stated};
pub(crate) use relations::{drawn_height, edges_of};

/// An index into [`Design::papers`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct PaperId(pub usize);
/// An index into [`Design::pieces`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct PieceId(pub usize);
/// An index into [`Design::versions`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct VersionId(pub usize);
/// An index into [`Design::layers`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct LayerId(pub usize);

/// One month's design in one system of units.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Design {
    /// The system that this value is settled in.
    pub units: Units,
    /// The systems that the design asks for, the first of them the one it is designed in.
    pub asked: Vec<Units>,
    /// Where the design says so, if it does.
    pub asked_span: Option<Span>,
    /// The languages that the handout is made in, at least one.
    pub languages: Vec<Language>,
    /// The words that go with its texts and names.
    pub words: Words,
    /// Whether anything has a reader's name beside its own.
    pub has_readers_names: bool,
    /// Texts and names that are not said in every language.
    pub untold: Vec<Untold>,
    /// What this edition has by rule, since it is stated for the other one only.
    pub restated: Vec<Restated>,
    /// Title; the file's stem where a file for `cuts` has none.
    pub title: Spanned<String>,
    /// Month of the handout; none only in a file for `cuts`.
    pub month: Option<Spanned<Month>>,
    /// Who gives it away.
    pub designer: Option<Spanned<String>>,
    /// The designer's own look, from a file that designs share.
    pub imprint: Option<Imprint>,
    /// A photo of the finished card.
    pub photo: Option<Photo>,
    /// One or two sentences under the title.
    pub about: Option<Spanned<String>>,
    /// How many cards in all.
    pub cards: Spanned<u32>,
    /// What the reader's trimmer and hand can do.
    pub workshop: Workshop,
    /// The card; none only in a file for `cuts`.
    pub card: Option<Card>,
    /// Papers in the order written.
    pub papers: Vec<Paper>,
    /// Pieces; the card base, where there is a card, comes first.
    pub pieces: Vec<Piece>,
    /// Versions; one unnamed version of all cards where the design states none.
    pub versions: Vec<Version>,
    /// Layers of all faces in the order they are handled, face after face: a layer's `first` list
    /// stands before the layer that it is put together on is glued down, so it follows that layer here.
    pub layers: Vec<Layer>,
    /// The envelope that goes with each card, where the design says something about it.
    pub envelope: Option<Envelope>,
    /// Notes to the reader.
    pub notes: Vec<Note>,
    /// Ideas for leftovers.
    pub leftovers: Vec<Idea>,
    /// Rules whose warnings and notes the designer allows, each with a reason.
    pub allow: Vec<Allowance>,
    /// Extra supplies for the shopping list.
    pub supplies: Vec<Spanned<String>>,
    /// Extra tools.
    pub tools: Vec<Spanned<String>>,
    /// The handouts that it asks for beside the usual one.
    pub handouts: Vec<Wanted>,
    /// The placing frames that it asks for.
    pub frames: Frames,
    /// Whether the design has a `front` (counts come from it) or is a file for `cuts`.
    pub has_front: bool,
}

impl Design {
    /// A paper.
    #[must_use]
    pub fn paper(&self, id: PaperId) -> &Paper {
        &self.papers[id.0]
    }
    /// A piece.
    #[must_use]
    pub fn piece(&self, id: PieceId) -> &Piece {
        &self.pieces[id.0]
    }
    /// A version.
    #[must_use]
    pub fn version(&self, id: VersionId) -> &Version {
        &self.versions[id.0]
    }
    /// A layer.
    #[must_use]
    pub fn layer(&self, id: LayerId) -> &Layer {
        &self.layers[id.0]
    }
    /// All layer ids, in order.
    pub fn layer_ids(&self) -> impl Iterator<Item = LayerId> + use<> {
        (0..self.layers.len()).map(LayerId)
    }
    /// All piece ids, in order.
    pub fn piece_ids(&self) -> impl Iterator<Item = PieceId> + use<> {
        (0..self.pieces.len()).map(PieceId)
    }
    /// All paper ids, in order.
    pub fn paper_ids(&self) -> impl Iterator<Item = PaperId> + use<> {
        (0..self.papers.len()).map(PaperId)
    }
    /// All version ids, in order.
    pub fn version_ids(&self) -> impl Iterator<Item = VersionId> + use<> {
        (0..self.versions.len()).map(VersionId)
    }
    /// The ring number of a piece: 1 for the first.
    #[must_use]
    pub fn ring(&self, piece: PieceId) -> u32 {
        u32::try_from(piece.0).unwrap_or(u32::MAX - 1) + 1
    }
    /// How many of a piece one card needs: counted from `front`, or stated as `per card`.
    #[must_use]
    pub fn per_card(&self, piece: PieceId) -> u32 {
        if self.pieces[piece.0].kind == PieceKind::Base {
            return 1;
        }
        if self.has_front {
            self.layers.iter().filter(|l| l.piece == piece).map(Layer::count).sum()
        } else {
            self.pieces[piece.0].per_card.unwrap_or(0)
        }
    }
    /// The paper of a piece in a version.
    #[must_use]
    pub fn paper_of(&self, piece: PieceId, version: VersionId) -> Option<PaperId> {
        match self.pieces[piece.0].from {
            From::Paper(paper) => Some(paper),
            From::Varies => self.versions[version.0].papers.iter().find(|(p, _)| *p == piece).map(|(_, paper)| *paper),
            From::Window(frame, _) => self.paper_of(frame, version),
            From::Bought => None,
        }
    }
    /// Which side of its paper a piece shows in a version; the front of paper that has one side.
    #[must_use]
    pub fn side_of(&self, piece: PieceId, version: VersionId) -> Side {
        let two_sided = self.paper_of(piece, version).is_some_and(|paper| self.papers[paper.0].back.is_some());
        let stated = match self.pieces[piece.0].from {
            From::Paper(_) | From::Window(..) | From::Bought => self.pieces[piece.0].side,
            From::Varies => self.versions[version.0].side.unwrap_or(self.pieces[piece.0].side),
        };
        if two_sided { stated } else { Side::Front }
    }
    /// Whether a piece cut from a paper, for a version or for all, shows the paper's back.
    #[must_use]
    pub fn shows_back(&self, paper: PaperId, piece: PieceId, version: Option<VersionId>) -> bool {
        let side = version.map_or(self.pieces[piece.0].side, |version| self.side_of(piece, version));
        self.papers[paper.0].back.is_some() && side == Side::Back
    }
    /// The same design with other sheets of one paper.
    #[must_use]
    pub fn with_sheets(&self, paper: PaperId, sheets: Vec<Sheets>) -> Self {
        let mut design = self.clone();
        design.papers[paper.0].sheets = sheets;
        design
    }
    /// Whether this edition has anything by rule that is no stock of the trade.
    #[must_use]
    pub fn is_restated(&self) -> bool {
        self.restated.iter().any(|restated| !restated.is_stock)
    }
}

/// A month of a year.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Month {
    /// Year, 1900 to 9999.
    pub year: u16,
    /// 1 to 12.
    pub month: u8,
}

impl std::fmt::Display for Month {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:04}-{:02}", self.year, self.month)
    }
}

/// What the reader's ruler, trimmer and hand can do; every figure has a default that is common
/// practice of the trade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Workshop {
    /// The ruler's step: 1/16 in or 1 mm.
    pub ruler: Length,
    /// How far off a cut may be: 1/32 in or 1 mm.
    pub cutting_error: Length,
    /// How far off a layer may be laid: 1/16 in or 1.5 mm.
    pub placing_error: Length,
    /// How long a cut the trimmer makes: 12 in or 305 mm.
    pub trimmer: Length,
    /// Where the design says so, if it does.
    pub trimmer_span: Option<Span>,
}

/// The card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    /// Size of the folded front.
    pub size: Size,
    /// Where the size is written.
    pub span: Span,
    /// Where it folds.
    pub fold: Fold,
    /// The paper of the base.
    pub from: PaperId,
    /// How the base is scored, folded or otherwise prepared is told from `fold`.
    pub base: PieceId,
}

/// Where the base folds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Fold {
    /// Along the left edge: the base is twice as wide.
    Side,
    /// Along the top edge: the base is twice as high.
    Top,
    /// A flat card.
    None,
    /// Two flaps, each half as wide as the card, that meet in the middle of the front.
    Gate,
    /// Panels side by side, folded to and fro; the first is the front.
    Accordion {
        /// How many panels, at least 3.
        panels: u32,
    },
}

/// A score line of the flat base, from top to bottom or, where the card folds at the top, from left
/// to right.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Score {
    /// From the left edge of the flat base as its outside lies up, or from its top edge where the card
    /// folds at the top; nanometres.
    pub at: i64,
    /// Whether the fold there points toward somebody who looks at the outside.
    pub mountain: bool,
}

impl Fold {
    /// The size of the flat base whose folded front has this size.
    #[must_use]
    pub fn flat(self, front: Size) -> Size {
        match self {
            Self::Side => Size::new(front.width * 2, front.height),
            Self::Top => Size::new(front.width, front.height * 2),
            Self::None => front,
            Self::Gate => Size::new(front.width * 2, front.height),
            Self::Accordion { panels } => Size::new(front.width * i64::from(panels), front.height),
        }
    }

    /// The score lines of the flat base whose folded front has this size.
    #[must_use]
    pub fn scores(self, front: Size) -> Vec<Score> {
        let (width, height) = (front.width.nm(), front.height.nm());
        match self {
            Self::Side => vec![Score { at: width, mountain: true }],
            Self::Top => vec![Score { at: height, mountain: true }],
            Self::None => Vec::new(),
            Self::Gate => {
                let flap = width / 2;
                vec![Score { at: flap, mountain: true }, Score { at: flap + width, mountain: true }]
            }
            // As the outside lies up, the front is the panel furthest to the right.
            Self::Accordion { panels } => {
                let folds = i64::from(panels.saturating_sub(1));
                (1..=folds).map(|fold| Score { at: fold * width, mountain: (folds - fold) % 2 == 0 }).collect()
            }
        }
    }

    /// The panels of the inside as it lies open, from left to right, or from top to bottom where the card
    /// folds at the top; a flat card's back is its only one.
    #[must_use]
    pub fn panels(self, front: Size) -> Vec<Rect> {
        let flat = self.flat(front);
        let (width, height) = (flat.width.nm(), flat.height.nm());
        let mut ends: Vec<i64> = self.scores(front).iter().map(|score| score.at).collect();
        let is_top = self == Self::Top;
        ends.push(if is_top { height } else { width });
        // Seen from inside, left and right change places.
        if !is_top {
            let starts = std::iter::once(0).chain(ends.iter().copied());
            let widths: Vec<i64> = ends.iter().zip(starts).map(|(end, start)| end - start).collect();
            let mut left = 0;
            let panels = widths.iter().rev().map(|own| {
                left += own;
                Rect::at(left - own, 0, *own, height)
            });
            return panels.collect();
        }
        let starts = std::iter::once(0).chain(ends.iter().copied());
        ends.iter().zip(starts).map(|(end, start)| Rect::at(0, height - end, width, end - start)).collect()
    }
}

/// A side of the card or envelope that layers lie on. Each has coordinates of its own, with the origin
/// at its lower left corner as it is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Face {
    /// The folded front.
    Front,
    /// A panel of the opened inside, counted from 0 ([`Fold::panels`]); the whole inside where none is
    /// named.
    Inside(Option<u32>),
    /// The back of the folded card.
    Back,
    /// The side of the envelope that the address is written on.
    EnvelopeFront,
    /// The envelope's closed flap.
    EnvelopeFlap,
}

/// The envelope of a card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Envelope {
    /// Width x height as the address is written.
    pub size: Size,
    /// Where the size is written.
    pub span: Span,
    /// How far the closed flap reaches down the back, where it is said.
    pub flap: Option<Length>,
}

/// Which piece this is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PieceKind {
    /// The card base, from `card:`.
    Base,
    /// A piece from `pieces:`.
    Plain,
    /// A leftover that a paper keeps: its size is kept whole, so many times in all.
    Kept {
        /// The paper that it is when pieces are cut from it.
        paper: PaperId,
        /// How many, over all cards.
        count: u32,
    },
    /// A decoration, bought ready made or cut from a roll: it is laid like any piece, and no paper is
    /// cut for it.
    Decoration {
        /// How much of a roll one takes, for ribbon and twine.
        roll: Option<Length>,
        /// How far it stands off what it lies on, where it is said.
        thick: Option<Length>,
    },
}

/// What paper a piece is cut from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum From {
    /// One paper in every version.
    Paper(PaperId),
    /// Each version says which.
    Varies,
    /// What a window of another piece leaves over: the piece, and which of its windows, from 0.
    Window(PieceId, usize),
    /// No paper: a decoration.
    Bought,
}

/// A piece to cut.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Piece {
    /// Its name, as written; `base` for the card base.
    pub name: String,
    /// Where the name is written.
    pub span: Span,
    /// Base or not.
    pub kind: PieceKind,
    /// Width x height, unturned, as finished: the rectangle round its shape. The trimmer cuts
    /// [`Piece::blank`].
    pub size: Size,
    /// The shape that is made from the trimmed rectangle: its width and height are those of `size`.
    pub shape: Shape,
    /// Where the shape is written; where the size is, if it is a rectangle.
    pub shape_span: Span,
    /// Where the size is written.
    pub size_span: Span,
    /// Where the size comes from.
    pub stated: Stated,
    /// Its paper.
    pub from: From,
    /// Where `from` is written.
    pub from_span: Span,
    /// `upright` or `any` where the design says so; decides only where the paper does not.
    pub upright: Option<bool>,
    /// How many a card needs; only in a file without layers.
    pub per_card: Option<u32>,
    /// The words on it, if any.
    pub greeting: Option<Greeting>,
    /// Which side of double-sided paper it shows.
    pub side: Side,
}

/// Words on a piece, or cut from it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Greeting {
    /// How they come there.
    pub how: How,
    /// What they say, in the designer's words.
    pub words: Spanned<String>,
}

/// How words come on a piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum How {
    /// Stamped before the piece is glued.
    Stamped,
    /// Printed before the paper is cut.
    Printed,
    /// The piece is the words, cut out with a die.
    DieCut,
}

impl Piece {
    /// What is stamped on it before it is glued.
    #[must_use]
    pub fn stamp(&self) -> Option<&Spanned<String>> {
        self.greeting.as_ref().filter(|greeting| greeting.how == How::Stamped).map(|greeting| &greeting.words)
    }

    /// The rectangle that the trimmer cuts: the size, with the margin that a die or punch needs.
    #[must_use]
    pub fn blank(&self) -> Size {
        let margin = self.shape.making.margin() * 2;
        let grown = |side: Length| Length::new(side.nm() + margin, side.unit());
        Size::new(grown(self.size.width), grown(self.size.height))
    }
    /// Whether it is a plain rectangle without a window, nothing to be made after the trimmer.
    #[must_use]
    pub fn is_plain(&self) -> bool {
        self.shape.form == Form::Rectangle && self.shape.windows.is_empty() && self.shape.making.margin() == 0
    }
}

/// One version of the card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Version {
    /// Its name; empty where the design states no versions.
    pub name: String,
    /// Where the name is written.
    pub span: Span,
    /// How many cards.
    pub cards: u32,
    /// The papers of the pieces that vary.
    pub papers: Vec<(PieceId, PaperId)>,
    /// Which side of double-sided paper its varying pieces show, where it says so; else the piece
    /// says.
    pub side: Option<Side>,
    /// A photo of this version.
    pub photo: Option<Photo>,
}

/// What a layer lies on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Onto {
    /// The card front.
    Card,
    /// Another layer.
    Layer(LayerId),
}

/// How one direction of a layer is placed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Along {
    /// In the middle of what it lies on.
    Centre,
    /// So far from the left or bottom edge.
    FromLow(Length),
    /// So far from the right or top edge.
    FromHigh(Length),
    /// Right of or above another layer, with a gap.
    After(LayerId, Length),
    /// Left of or below another layer, with a gap.
    Before(LayerId, Length),
    /// Level with another layer: left or bottom edges, middles, or right or top edges.
    With(LayerId, Part),
    /// In the middle of what is between two bounds.
    Midway(Bound, Bound),
}

/// Which part of a layer another one is level with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Part {
    /// The left or bottom edge.
    Low,
    /// The middle.
    Middle,
    /// The right or top edge.
    High,
}

/// One of two bounds that a layer lies midway between.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Bound {
    /// The left or bottom edge of what it lies on.
    Low,
    /// The right or top edge of what it lies on.
    High,
    /// The edge of a layer that faces the other bound.
    Layer(LayerId),
}

/// Several copies of a piece laid as one layer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Arrangement {
    /// One.
    Single,
    /// Side by side.
    Row {
        /// How many.
        count: u32,
        /// Between neighbours.
        gap: Length,
    },
    /// One above another.
    Column {
        /// How many.
        count: u32,
        /// Between neighbours.
        gap: Length,
    },
    /// Rows of columns.
    Grid {
        /// How many side by side.
        columns: u32,
        /// How many one above another.
        rows: u32,
        /// Between neighbours side by side.
        across: Length,
        /// Between neighbours one above another.
        down: Length,
    },
    /// Each copy moved on from the one before.
    Steps {
        /// How many.
        count: u32,
        /// How far to the right; to the left where negative.
        right: Length,
        /// How far up; down where negative.
        up: Length,
    },
    /// Rows of one, two, three and so on, centred over each other.
    Triangle {
        /// How many rows.
        rows: u32,
        /// Between neighbours side by side.
        across: Length,
        /// Between rows.
        down: Length,
        /// Whether the single copy is at the top.
        points_up: bool,
    },
    /// Copies turned about one point, each further than the one before; the whole fan stands upright
    /// where its count is odd.
    Fan {
        /// How many.
        count: u32,
        /// From one copy to the next.
        step: Angle,
        /// The point, on the unturned piece.
        about: Pivot,
    },
    /// Four copies round a middle, each edge to edge with the one before: the first along the left of the
    /// square that they make, from its bottom up, the next turned a quarter, and so on.
    Pinwheel {
        /// Whether one goes round clockwise.
        clockwise: bool,
    },
}

/// A point on a piece that it is turned about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Pivot {
    /// Its middle.
    Middle,
    /// A corner.
    Corner(Corner),
    /// The middle of an edge.
    Edge(Edge),
    /// A point so far from its left and bottom edges, on the piece or not.
    Point(Length, Length),
}

/// A turn by any angle, after the layer was placed straight; what lies on it turns along.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Tilt {
    /// To the left.
    pub angle: Angle,
    /// About which point: of each copy's rectangle as it lies before the turn.
    pub about: Pivot,
    /// Where it is written.
    pub span: Span,
}

impl Arrangement {
    /// How many pieces.
    #[must_use]
    pub const fn count(self) -> u32 {
        match self {
            Self::Single => 1,
            Self::Row { count, .. }
            | Self::Column { count, .. }
            | Self::Steps { count, .. }
            | Self::Fan { count, .. } => count,
            Self::Grid { columns, rows, .. } => columns.saturating_mul(rows),
            Self::Triangle { rows, .. } => rows.saturating_mul(rows.saturating_add(1)) / 2,
            Self::Pinwheel { .. } => 4,
        }
    }
    /// Columns and rows; for copies that lie in neither, one of each.
    #[must_use]
    pub const fn columns_rows(self) -> (u32, u32) {
        match self {
            Self::Single | Self::Steps { .. } | Self::Triangle { .. } | Self::Fan { .. } | Self::Pinwheel { .. } => {
                (1, 1)
            }
            Self::Row { count, .. } => (count, 1),
            Self::Column { count, .. } => (1, count),
            Self::Grid { columns, rows, .. } => (columns, rows),
        }
    }
    /// Gaps across and down (nothing where there is no neighbour).
    #[must_use]
    pub fn gaps(self, units: Units) -> (Length, Length) {
        let none = Length::zero(units);
        match self {
            Self::Single | Self::Steps { .. } | Self::Triangle { .. } | Self::Fan { .. } | Self::Pinwheel { .. } => {
                (none, none)
            }
            Self::Row { gap, .. } => (gap, none),
            Self::Column { gap, .. } => (none, gap),
            Self::Grid { across, down, .. } => (across, down),
        }
    }
}

/// A claim about what shows of the layer below, checked and never used to place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shows {
    /// Edge by edge; `all round` names all four.
    pub edges: Vec<(Edge, Length)>,
    /// Whether it was written `all round`.
    pub all_round: bool,
    /// Where it is written.
    pub span: Span,
}

/// How a layer is fixed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Glue {
    /// Double-sided tape.
    Tape,
    /// Liquid glue.
    Liquid,
    /// Foam squares or foam tape: the layer stands off.
    Foam,
    /// Glue dots.
    Dot,
}

/// One layer: one piece, or several copies of it laid together.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Layer {
    /// Its name: `as:` or the piece's.
    pub name: String,
    /// The piece.
    pub piece: PieceId,
    /// The side that it lies on, as does everything it is put together with.
    pub face: Face,
    /// What it lies on.
    pub onto: Onto,
    /// The layer in whose `first` list it stands.
    pub unit: Option<LayerId>,
    /// Left to right.
    pub across: Along,
    /// Bottom to top.
    pub up: Along,
    /// Moved at last so far to the right and up, in nanometres.
    pub shifted: (i64, i64),
    /// Copies.
    pub arrangement: Arrangement,
    /// Whether its copies are laid a second time, mirrored about the middle of what it lies on.
    pub mirrored: Option<Mirror>,
    /// Quarter turns anticlockwise, 0 to 3; layer and pattern together.
    pub quarter_turns: u8,
    /// A turn by any other angle.
    pub tilt: Option<Tilt>,
    /// The layers before it in a ring of strips round a middle, the middle first; none where it is part
    /// of no ring.
    pub ring: Vec<LayerId>,
    /// The claim.
    pub shows: Option<Shows>,
    /// Trimmed level with the card or a layer after gluing.
    pub trim_flush: Option<Spanned<Onto>>,
    /// How it is fixed.
    pub glue: Option<Spanned<Glue>>,
    /// Where `place: piece` is written.
    pub span: Span,
    /// Where its other words are written.
    pub spans: LayerSpans,
}

impl Layer {
    /// How many pieces, mirrored ones included.
    #[must_use]
    pub const fn count(&self) -> u32 {
        let once = self.arrangement.count();
        if self.mirrored.is_some() { once.saturating_mul(2) } else { once }
    }
}

/// Where the words of a layer are written; the layer's own span where it does not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct LayerSpans {
    /// What places it from left to right.
    pub across: Span,
    /// What places it from bottom to top.
    pub up: Span,
    /// Its row, column, grid and the like.
    pub arrangement: Span,
    /// `onto`.
    pub onto: Span,
}

/// A kind of work, in batch order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Work {
    /// Printing words on paper that is still whole.
    Printing,
    /// Cutting paper.
    Cutting,
    /// Making shapes and windows from trimmed rectangles.
    Finishing,
    /// Stamping.
    Stamping,
    /// Scoring and folding the bases.
    Folding,
    /// Sorting into a pile for each card.
    Sorting,
    /// Putting small units together.
    Units,
    /// Layering onto the card.
    Layering,
    /// Decorating.
    Decorating,
    /// Envelopes and posting.
    Posting,
}

/// What a note is tied to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum NoteOn {
    /// A layer.
    Layer(LayerId),
    /// A kind of work.
    Work(Work),
}

/// A note that stands before the step it concerns.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Note {
    /// Its place.
    pub on: NoteOn,
    /// The designer's words.
    pub text: Spanned<String>,
}

/// An idea for what is left.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Idea {
    /// The paper it is about, if one.
    pub paper: Option<PaperId>,
    /// The designer's words.
    pub text: Spanned<String>,
}

/// A rule that the designer allows to be broken, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Allowance {
    /// The rule's name as typed; whether there is such a rule is not known here.
    pub rule: Spanned<String>,
    /// The reason, in the designer's own words.
    pub because: Spanned<String>,
}
