//! The referee's own count of the rectangles that triangles are cut from: two from each where that is
//! allowed.

use std::collections::BTreeMap;

use super::Shares;
use crate::design::model::{Design, PaperId, Pattern, PieceId, PieceKind, Side};
use crate::geometry::Corner;
use crate::shape::{Form, Making};

/// A triangle that a cut from corner to corner frees, and where its right angle is.
pub(super) fn right_angle(design: &Design, piece: PieceId) -> Option<Corner> {
    let piece = &design.pieces[piece.0];
    let plain = piece.kind == PieceKind::Plain && piece.shape.making == Making::ByHand;
    match piece.shape.form {
        Form::Triangle { right_angle } if plain && piece.shape.windows.is_empty() => Some(right_angle),
        _ => None,
    }
}

/// Who is cut from whose rectangles: the triangle that counts them, and the other one.
pub(super) type Pairs = BTreeMap<(PaperId, PieceId), Option<PieceId>>;

/// Turns what is wanted of triangles into rectangles, `side` being what a piece of a version shows.
pub(super) fn in_rectangles(
    design: &Design,
    wanted: &mut BTreeMap<(PaperId, PieceId), Shares>,
    side: impl Fn(PaperId, PieceId, &Shares) -> Option<Side>,
) -> Pairs {
    let mut pairs = Pairs::new();
    let mut done: Vec<(PaperId, PieceId)> = Vec::new();
    let keys: Vec<(PaperId, PieceId)> = wanted.keys().copied().collect();
    let sum = |shares: &Shares| shares.iter().map(|(_, count)| count).sum::<u64>();
    for &(paper, piece) in &keys {
        let along = |piece: PieceId| design.papers[paper.0].fixed.edges.iter().any(|along| along.piece == piece);
        let Some(corner) = right_angle(design, piece).filter(|_| !along(piece) && !done.contains(&(paper, piece)))
        else {
            continue;
        };
        let Some(own_side) = side(paper, piece, &wanted[&(paper, piece)]) else { continue };
        let size = |piece: PieceId| (design.pieces[piece.0].size.width.nm(), design.pieces[piece.0].size.height.nm());
        let partner = keys.iter().copied().filter(|(other, later)| *other == paper && later.0 > piece.0).find(|key| {
            let across =
                right_angle(design, key.1).is_some_and(|other| diagonal(other) == diagonal(corner) && other != corner);
            across
                && size(key.1) == size(piece)
                && !along(key.1)
                && !done.contains(key)
                && side(paper, key.1, &wanted[key]) == Some(own_side)
        });
        let pattern = match (own_side, design.papers[paper.0].back) {
            (Side::Back, Some(back)) => back.pattern,
            _ => design.papers[paper.0].pattern,
        };
        let upside_down = |piece: PieceId| match pattern {
            Pattern::Any => design.pieces[piece.0].upright != Some(true),
            Pattern::TwoWay => true,
            Pattern::OneWay => false,
        };
        let own = sum(&wanted[&(paper, piece)]);
        let others = partner.map_or(0, |key| sum(&wanted[&key]));
        if partner.is_none() && !upside_down(piece) {
            continue;
        }
        // So many that each triangle finds a half: one that may not be turned only the half it is.
        let mut rectangles = 0;
        let suffices = |rectangles: u64| {
            let (mut same, mut across) = (rectangles, rectangles);
            let mut place = |count: u64, first_same: bool, turns: bool| {
                let (first, second) = if first_same { (&mut same, &mut across) } else { (&mut across, &mut same) };
                let here = count.min(*first);
                *first -= here;
                let rest = count - here;
                let there = if turns { rest.min(*second) } else { 0 };
                *second -= there;
                rest == there
            };
            let (own_turns, other_turns) = (upside_down(piece), partner.is_some_and(|key| upside_down(key.1)));
            // Those that cannot be turned choose first.
            let mut order = [(own, true, own_turns), (others, false, other_turns)];
            order.sort_by_key(|(_, _, turns)| *turns);
            order.into_iter().all(|(count, first_same, turns)| place(count, first_same, turns))
        };
        while !suffices(rectangles) {
            rectangles += 1;
        }
        done.push((paper, piece));
        pairs.insert((paper, piece), partner.map(|key| key.1));
        wanted.insert((paper, piece), vec![(None, rectangles)]);
        if let Some(key) = partner {
            done.push(key);
            wanted.remove(&key);
        }
    }
    pairs
}

/// Which of the two diagonals the cut of a triangle runs along.
const fn diagonal(right_angle: Corner) -> bool {
    matches!(right_angle, Corner::LowerLeft | Corner::UpperRight)
}
