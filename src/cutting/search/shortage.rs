//! Where the sheets do not suffice: the most whole cards, then whatever else of the pieces wanted
//! still finds a place.

use super::assemble::{Cards, assemble};
use super::cover::{self, Cover, Covered, Lot};
use super::sheet::Limits;
use super::{cover_all, lot_of};
use crate::cutting::demand::{PaperDemand, demand_for, hand};
use crate::cutting::plan::{CutPlan, Missing};
use crate::design::model::Design;

/// Shares of the cards over versions that are tried for one number of cards.
const MOST_SHARES: usize = 60;

/// Plans what can be cut.
pub(super) fn plan(design: &Design, demands: &[PaperDemand], whole: &[Cover], limits: &Limits) -> CutPlan {
    let rules = hand(design.units);
    let asked: Vec<u32> = design.versions.iter().map(|version| version.cards).collect();
    let all: u32 = asked.iter().fold(0, |sum, n| sum.saturating_add(*n));
    let mut bound = all;
    let mut sure = whole.contains(&Cover::No);
    let mut best = (vec![0; asked.len()], Vec::new());
    // Halving is no use: which share of the versions fits is not ordered.
    for cards in (0..all.min(400)).rev() {
        if sure {
            bound = cards;
        }
        let (shares, every) = shares_of(&asked, cards);
        let mut refused = every;
        let found = shares.into_iter().find_map(|share| {
            let covers = cover_all(&demand_for(design, &share), rules, limits);
            refused &= covers.contains(&Cover::No) || covers.iter().all(|cover| matches!(cover, Cover::Yes(_)));
            let covered: Option<Vec<Covered>> = covers.into_iter().map(covered).collect();
            covered.map(|covered| (share, covered))
        });
        if let Some(found) = found {
            best = found;
            break;
        }
        sure &= refused;
    }
    let (share, _) = &best;
    let most = share.iter().sum();
    let (given, covered) = fill_up(design, demands, whole, share, limits);
    let mut missing = Vec::new();
    let mut cut = demands.to_vec();
    for (paper, given) in cut.iter_mut().zip(&given) {
        for (wanted, &count) in paper.wanted.iter_mut().zip(given) {
            let short = wanted.count() - count;
            if short > 0 {
                missing.push(Missing { paper: paper.paper, piece: wanted.piece, count: short });
            }
            // The last versions go short.
            let mut short = short;
            for (_, count) in wanted.versions.iter_mut().rev() {
                let off = short.min(*count);
                *count -= off;
                short -= off;
            }
        }
    }
    assemble(design, &cut, &covered, Cards::Short { most, bound: bound.max(most), missing })
}

fn covered(cover: Cover) -> Option<Covered> {
    match cover {
        Cover::Yes(covered) => Some(covered),
        Cover::No | Cover::Unknown => None,
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

/// Adds pieces that are still wanted to a paper that gives so many whole cards, the largest first,
/// as long as they fit.
fn fill_up(
    design: &Design,
    demands: &[PaperDemand],
    whole: &[Cover],
    share: &[u32],
    limits: &Limits,
) -> (Vec<Vec<u32>>, Vec<Covered>) {
    let rules = hand(design.units);
    let least = demand_for(design, share);
    let (mut given, mut cut) = (Vec::new(), Vec::new());
    for (index, demand) in demands.iter().enumerate() {
        let lot = lot_of(demand, rules);
        let wanted: Vec<u32> = demand.wanted.iter().map(super::demand::Wanted::count).collect();
        if let Cover::Yes(covered) = &whole[index] {
            given.push(wanted);
            cut.push(covered.clone());
            continue;
        }
        let mut counts: Vec<u32> = demand
            .wanted
            .iter()
            .map(|wanted| {
                let same = least[index].wanted.iter().find(|other| other.piece == wanted.piece);
                same.map_or(0, super::demand::Wanted::count)
            })
            .collect();
        let mut best = covered(cover::cover(&wanting(&lot, &counts), limits))
            .unwrap_or(Covered { sheets: Vec::new(), least_sheets: 0 });
        let mut order: Vec<usize> = (0..counts.len()).collect();
        order.sort_by_key(|&kind| std::cmp::Reverse(lot.kinds[kind].area()));
        for kind in order {
            while counts[kind] < wanted[kind] {
                counts[kind] += 1;
                match covered(cover::cover(&wanting(&lot, &counts), limits)) {
                    Some(more) => best = more,
                    None => {
                        counts[kind] -= 1;
                        break;
                    }
                }
            }
        }
        given.push(counts);
        cut.push(best);
    }
    (given, cut)
}

fn wanting(lot: &Lot, counts: &[u32]) -> Lot {
    let kinds = lot.kinds.iter().zip(counts).map(|(kind, &wanted)| super::problem::Kind { wanted, ..*kind }).collect();
    Lot { kinds, ..lot.clone() }
}
