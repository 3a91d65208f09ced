//! How one sheet is cut, as the search found it: a tree of cuts in two, then the same with equal
//! slices of one row brought together.

use super::points::Axis;
use super::problem::Hand;
use std::rc::Rc;

/// A part cut in two, and in two again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Tree {
    /// A piece of this kind, on its side or not.
    Piece(usize, bool),
    /// Left over.
    Waste,
    /// Cut in two at `at` from the left or the top.
    Cut { axis: Axis, at: i64, first: Rc<Tree>, rest: Rc<Tree> },
}

/// A part of a sheet with its size, cut into any number of parts side by side.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Node {
    /// Width of the part.
    pub width: i64,
    /// Height of the part.
    pub height: i64,
    /// What becomes of it.
    pub body: Body,
}

/// What becomes of a part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Body {
    /// A piece of a kind.
    Piece {
        /// Which kind.
        kind: usize,
        /// Whether it lies on its side.
        lying: bool,
    },
    /// Left over.
    Waste,
    /// Cut into these parts, which may come off in any order that the rules of the hand allow; at
    /// most one of them is left over.
    Split {
        /// The direction in which the parts follow one another.
        axis: Axis,
        /// Two parts or more.
        parts: Vec<Node>,
    },
}

impl Node {
    /// Its length in a direction.
    #[must_use]
    pub const fn along(&self, axis: Axis) -> i64 {
        match axis {
            Axis::Across => self.width,
            Axis::Up => self.height,
        }
    }

    /// Whether it is left over.
    #[must_use]
    pub const fn is_waste(&self) -> bool {
        matches!(self.body, Body::Waste)
    }

    /// Every part that is not cut further.
    pub fn leaves(&self) -> Vec<&Self> {
        match &self.body {
            Body::Split { parts, .. } => parts.iter().flat_map(Self::leaves).collect(),
            _ => vec![self],
        }
    }

    /// How often it is cut, and cut again in the other direction, down to its deepest part.
    #[must_use]
    pub fn levels(&self) -> u32 {
        match &self.body {
            Body::Split { parts, .. } => 1 + parts.iter().map(Self::levels).max().unwrap_or(0),
            Body::Piece { .. } | Body::Waste => 0,
        }
    }

    /// Pieces of each kind.
    #[must_use]
    pub fn counts(&self, kinds: usize) -> Vec<u32> {
        let mut counts = vec![0; kinds];
        for leaf in self.leaves() {
            if let Body::Piece { kind, .. } = leaf.body {
                counts[kind] += 1;
            }
        }
        counts
    }

    /// Cuts that it takes.
    #[must_use]
    pub fn cuts(&self) -> u64 {
        (self.leaves().len() - 1) as u64
    }

    /// The same with every length so many times as long.
    #[must_use]
    pub fn times(&self, unit: i64) -> Self {
        let body = match &self.body {
            Body::Split { axis, parts } => {
                Body::Split { axis: *axis, parts: parts.iter().map(|part| part.times(unit)).collect() }
            }
            other => other.clone(),
        };
        Self { width: self.width * unit, height: self.height * unit, body }
    }

    /// The same with the kinds renamed.
    #[must_use]
    pub fn with_kinds(&self, names: &[usize]) -> Self {
        let body = match &self.body {
            Body::Split { axis, parts } => {
                Body::Split { axis: *axis, parts: parts.iter().map(|part| part.with_kinds(names)).collect() }
            }
            Body::Piece { kind, lying } => Body::Piece { kind: names[*kind], lying: *lying },
            Body::Waste => Body::Waste,
        };
        Self { width: self.width, height: self.height, body }
    }
}

impl Tree {
    /// Brings parts that follow one another in one direction together, where a hand can then still
    /// cut them off one by one.
    pub(crate) fn gather(&self, width: i64, height: i64, hand: Option<Hand>) -> Node {
        let body = match self {
            Self::Piece(kind, lying) => Body::Piece { kind: *kind, lying: *lying },
            Self::Waste => Body::Waste,
            Self::Cut { axis, at, first, rest } => {
                let (one, other) = match axis {
                    Axis::Across => (first.gather(*at, height, hand), rest.gather(width - at, height, hand)),
                    Axis::Up => (first.gather(width, *at, hand), rest.gather(width, height - at, hand)),
                };
                if one.is_waste() && other.is_waste() {
                    return Node { width, height, body: Body::Waste };
                }
                let mut parts = Vec::new();
                for part in [&one, &other] {
                    match &part.body {
                        Body::Split { axis: same, parts: inner } if same == axis => parts.extend(inner.iter().cloned()),
                        _ => parts.push(part.clone()),
                    }
                }
                let parts = with_one_waste(parts, *axis);
                let lengths: Vec<i64> = parts.iter().map(|part| part.along(*axis)).collect();
                let parts = if can_be_cut_one_by_one(&lengths, parts.last().is_some_and(Node::is_waste), hand) {
                    parts
                } else {
                    vec![one, other]
                };
                Body::Split { axis: *axis, parts }
            }
        };
        Node { width, height, body }
    }
}

/// The parts with all waste in one, at the end.
fn with_one_waste(parts: Vec<Node>, axis: Axis) -> Vec<Node> {
    let (waste, mut kept): (Vec<Node>, Vec<Node>) = parts.into_iter().partition(Node::is_waste);
    let length: i64 = waste.iter().map(|part| part.along(axis)).sum();
    if let Some(one) = waste.into_iter().next() {
        let (width, height) = match axis {
            Axis::Across => (length, one.height),
            Axis::Up => (one.width, length),
        };
        kept.push(Node { width, height, body: Body::Waste });
    }
    kept
}

/// Whether parts of these lengths can be cut off one by one, waste (the last of them) last. The
/// shortest first is the order that leaves most to hold by; if that breaks a rule, every order does.
pub(crate) fn can_be_cut_one_by_one(lengths: &[i64], waste: bool, hand: Option<Hand>) -> bool {
    let Some(hand) = hand else { return true };
    let mut order = lengths.to_vec();
    let kept = order.len() - usize::from(waste);
    order[..kept].sort_unstable();
    let mut left: i64 = order.iter().sum();
    order[..order.len() - 1].iter().all(|length| {
        left -= length;
        hand.allows(*length, left)
    })
}
