//! Where the sheets do not suffice: the most whole cards, then whatever else of the pieces wanted
//! still finds a place.

use super::assemble::{Cards, assemble};
use super::cover::{self, Cover, Covered, Lot};
use super::joint;
use super::lot_of;
use super::problem::Kind;
use super::sheet::Limits;
use super::table::Budget;
use crate::cutting::demand::{PaperDemand, Wanted, demand_for, hand};
use crate::cutting::plan::{CutPlan, Missing};
use crate::design::model::{Design, From, PieceId, PieceKind};
use crate::shape::Form;

/// Shares of the cards over versions that are tried for one number of cards.
const MOST_SHARES: usize = 60;
/// Numbers of cards that are tried.
const MOST_NUMBERS: usize = 400;

/// Plans what can be cut.
pub(super) fn plan(design: &Design, demands: &[PaperDemand], whole: &[Cover], limits: &Limits) -> CutPlan {
    let asked: Vec<u32> = design.versions.iter().map(|version| version.cards).collect();
    let mut papers: Vec<Paper> =
        demands.iter().zip(whole).map(|(demand, cover)| Paper::new(demand, cover.clone(), design, limits)).collect();
    let (share, bound) = most_cards(design, &asked, &mut papers);
    let most = share.iter().fold(0_u32, |sum, n| sum.saturating_add(*n));
    let least = demand_for(design, &share);

    let (mut missing, mut cut, mut covered) = (Vec::new(), demands.to_vec(), Vec::new());
    for (index, paper) in papers.iter_mut().enumerate() {
        let floor = needed_of(design, &paper.demand.wanted, &least[index]);
        let given = paper.fill_up(&floor);
        covered.push(paper.cover(&given, limits));
        for (kind, wanted) in cut[index].wanted.iter_mut().enumerate() {
            let short = wanted.count() - given[kind];
            if short > 0 {
                missing.push(Missing { paper: paper.demand.paper, piece: wanted.piece, count: short });
            }
            let floor = same(&least[index], wanted);
            go_short(wanted, floor, short);
        }
    }
    let lots: Vec<Lot> = papers.iter().map(|paper| paper.lot.clone()).collect();
    let sets = joint::sets(&cut, &lots, &mut covered, None);
    assemble(design, (&cut, &covered, &sets), &Cards::Short { most, bound, missing })
}

/// Takes so many off the versions, the last first, but none that the whole cards need.
fn go_short(wanted: &mut Wanted, floor: Option<&Wanted>, mut short: u32) {
    for (version, count) in wanted.versions.iter_mut().rev() {
        let kept = floor.and_then(|floor| floor.versions.iter().find(|(other, _)| other == version));
        let off = short.min(*count - kept.map_or(0, |(_, kept)| *kept));
        *count -= off;
        short -= off;
    }
}

/// The most whole cards found, as a share for each version, and what no plan can pass.
fn most_cards(design: &Design, asked: &[u32], papers: &mut [Paper]) -> (Vec<u32>, u32) {
    let all: u32 = asked.iter().fold(0, |sum, n| sum.saturating_add(*n));
    let mut bound = papers.iter().map(|paper| paper.most_by_area(design)).min().unwrap_or(all).min(all);
    let mut sure = true;
    // Halving is no use: which share of the versions fits is not ordered.
    for cards in (1..=bound).rev().take(MOST_NUMBERS) {
        let (shares, mut refused) = shares_of(asked, cards);
        for share in shares {
            let demands = demand_for(design, &share);
            let mut answer = Answer::Yes;
            for (paper, demand) in papers.iter_mut().zip(&demands) {
                let counts = needed_of(design, &paper.demand.wanted, demand);
                answer = answer.and(paper.gives(&counts));
                if answer == Answer::No {
                    break;
                }
            }
            if answer == Answer::Yes {
                return (share, if sure { cards } else { bound });
            }
            refused &= answer == Answer::No;
        }
        sure &= refused;
        if sure {
            bound = cards - 1;
        }
    }
    (vec![0; asked.len()], bound)
}

/// What the cards need of a demand, in the order of another's pieces: a leftover that is kept for
/// nothing in the design gives way to them.
fn needed_of(design: &Design, order: &[Wanted], demand: &PaperDemand) -> Vec<u32> {
    let mut counts = counts_of(order, demand);
    for (count, wanted) in counts.iter_mut().zip(order) {
        if let PieceKind::Kept { paper, .. } = design.piece(wanted.piece).kind {
            let used = |id: PieceId| design.version_ids().any(|version| design.paper_of(id, version) == Some(paper));
            *count *= u32::from(design.piece_ids().any(used));
        }
    }
    counts
}

/// Counts of a demand in the order of another's pieces.
pub(super) fn counts_of(order: &[Wanted], demand: &PaperDemand) -> Vec<u32> {
    order.iter().map(|wanted| same(demand, wanted).map_or(0, Wanted::count)).collect()
}

/// The same piece, from the same side of the paper, in another demand.
fn same<'d>(demand: &'d PaperDemand, wanted: &Wanted) -> Option<&'d Wanted> {
    demand.wanted.iter().find(|other| (other.piece, other.side) == (wanted.piece, wanted.side))
}

/// Whether sheets give so many.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Answer {
    Yes,
    No,
    Unknown,
}

impl Answer {
    pub(super) const fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::No, _) | (_, Self::No) => Self::No,
            (Self::Unknown, _) | (_, Self::Unknown) => Self::Unknown,
            (Self::Yes, Self::Yes) => Self::Yes,
        }
    }
}

/// What is known of one paper: which counts its sheets give and which they do not.
#[derive(Debug)]
pub(super) struct Paper {
    pub(super) demand: PaperDemand,
    pub(super) lot: Lot,
    whole: Cover,
    pub(super) limits: Limits<'static>,
    pub(super) given: Vec<Vec<u32>>,
    pub(super) refused: Vec<Vec<u32>>,
    unknown: Vec<Vec<u32>>,
}

impl Paper {
    pub(super) fn new(demand: &PaperDemand, whole: Cover, design: &Design, limits: &Limits) -> Self {
        let lot = lot_of(demand, hand(design.units));
        let all: Vec<u32> = demand.wanted.iter().map(Wanted::count).collect();
        let (mut given, mut refused) = (Vec::new(), Vec::new());
        match whole {
            Cover::Yes(_) => given.push(all),
            Cover::No => refused.push(all),
            Cover::Unknown => {}
        }
        // Many counts are tried, and how well each is cut does not matter yet.
        let limits = limits.unmetered();
        let limits = Limits {
            fit: Budget { pairs: limits.fit.pairs / 12, ..limits.fit },
            cuts: Budget { pairs: limits.cuts.pairs / 12, ..limits.cuts },
            ways: limits.ways / 10,
            looks: 0,
            ..limits
        };
        Self { demand: demand.clone(), lot, whole, limits, given, refused, unknown: Vec::new() }
    }

    /// More cards than this need more area than all sheets have.
    fn most_by_area(&self, design: &Design) -> u32 {
        let have: i128 = (0..self.lot.stacks.len())
            .map(|stack| self.lot.area(stack) * i128::from(self.lot.stacks[stack].count))
            .sum();
        // A piece that varies may need nothing of this paper for a card.
        let fixed = self.demand.wanted.iter().zip(&self.lot.kinds);
        let each: i128 = fixed
            .filter(|(wanted, _)| wanted.versions.iter().all(|(version, _)| version.is_none()))
            .filter(|(wanted, _)| matches!(design.piece(wanted.piece).from, From::Paper(_)))
            .map(|(wanted, kind)| {
                // Two triangles may share a rectangle.
                let is_half = matches!(design.piece(wanted.piece).shape.form, Form::Triangle { .. });
                let whole = kind.area() * i128::from(design.per_card(wanted.piece));
                if is_half { whole / 2 } else { whole }
            })
            .sum();
        if each == 0 { u32::MAX } else { u32::try_from(have / each).unwrap_or(u32::MAX) }
    }

    pub(super) fn gives(&mut self, counts: &[u32]) -> Answer {
        let within = |small: &[u32], large: &[u32]| small.iter().zip(large).all(|(a, b)| a <= b);
        if self.given.iter().any(|given| within(counts, given)) {
            return Answer::Yes;
        }
        if self.refused.iter().any(|refused| within(refused, counts)) {
            return Answer::No;
        }
        if self.unknown.iter().any(|unknown| unknown == counts) {
            return Answer::Unknown;
        }
        match cover::gives_all(&wanting(&self.lot, counts), &self.limits) {
            Cover::Yes(_) => {
                self.given.push(counts.to_vec());
                Answer::Yes
            }
            Cover::No => {
                self.refused.push(counts.to_vec());
                Answer::No
            }
            Cover::Unknown => {
                self.unknown.push(counts.to_vec());
                Answer::Unknown
            }
        }
    }

    /// Adds pieces that are still wanted to so many, the largest first, as long as they fit.
    fn fill_up(&mut self, floor: &[u32]) -> Vec<u32> {
        let wanted: Vec<u32> = self.demand.wanted.iter().map(Wanted::count).collect();
        if matches!(self.whole, Cover::Yes(_)) {
            return wanted;
        }
        let mut counts = floor.to_vec();
        let mut order: Vec<usize> = (0..counts.len()).collect();
        order.sort_by_key(|&kind| std::cmp::Reverse(self.lot.kinds[kind].area()));
        for kind in order {
            // The most that fit, by halving: fewer always fit where more do.
            let (mut fits, mut most) = (counts[kind], wanted[kind]);
            while fits < most {
                let middle = fits + (most - fits).div_ceil(2);
                counts[kind] = middle;
                if self.gives(&counts) == Answer::Yes {
                    fits = middle;
                } else {
                    most = middle - 1;
                }
            }
            counts[kind] = fits;
        }
        counts
    }

    /// Cuts so many, which the sheets are known to give.
    fn cover(&self, counts: &[u32], limits: &Limits) -> Covered {
        if let Cover::Yes(covered) = &self.whole {
            return covered.clone();
        }
        let lot = wanting(&self.lot, counts);
        // The fewest sheets where they are found, else as it was found that they suffice.
        for cover in [cover::cover(&lot, limits), cover::gives_all(&lot, &self.limits)] {
            if let Cover::Yes(covered) = cover {
                return covered;
            }
        }
        Covered::nothing()
    }
}

/// Ways to share so many cards over versions, none getting more than it asks; and whether these
/// are all.
fn shares_of(asked: &[u32], cards: u32) -> (Vec<Vec<u32>>, bool) {
    let mut shares = Vec::new();
    let mut open = vec![(Vec::new(), cards)];
    while let Some((share, left)) = open.pop() {
        let here: usize = share.len();
        if here == asked.len() {
            if left == 0 {
                if shares.len() == MOST_SHARES {
                    return (shares, false);
                }
                shares.push(share);
            }
            continue;
        }
        let rest: u32 = asked[here + 1..].iter().sum();
        for count in left.saturating_sub(rest)..=asked[here].min(left) {
            let mut longer = share.clone();
            longer.push(count);
            open.push((longer, left - count));
        }
    }
    (shares, true)
}

fn wanting(lot: &Lot, counts: &[u32]) -> Lot {
    let kinds = lot.kinds.iter().zip(counts).map(|(kind, &wanted)| Kind { wanted, ..*kind }).collect();
    Lot { kinds, ..lot.clone() }
}
