//! Relations followed: every side of every piece, each after the sides that it leans on.
//!
//! A side is known by itself, so a piece may be as high as another that is as wide as the first. A side
//! without a result keeps those that lean on it unknown, and only the first of them is noted.

use super::super::desk::Desk;
use super::super::names::Names;
use super::Wanted;
use crate::design::model::{Extent, Of, PieceId, Stated};
use crate::diagnostic::Finding;
use crate::length::{LARGEST_NM, Length, Size};
use crate::source::Span;
use std::collections::BTreeSet;

/// One side of a piece.
type Side = (usize, Extent);

/// The sizes that are wanted, and what is known of them so far.
pub(super) struct Sides<'w> {
    wanted: &'w [Option<(&'w Wanted, Span)>],
    pub(super) names: &'w Names,
    front: Option<Size>,
    known: Vec<Option<Length>>,
}

const fn place((piece, extent): Side) -> usize {
    2 * piece + extent as usize
}

impl<'w> Sides<'w> {
    /// The relation of a piece.
    pub(super) fn stated(&self, piece: usize) -> Option<(&'w Stated, Span)> {
        match self.wanted[piece] {
            Some((Wanted::Related(stated), span)) => Some((stated, span)),
            _ => None,
        }
    }

    /// A side, where it is known.
    pub(super) fn known(&self, of: Of, extent: Extent) -> Option<Length> {
        match of {
            Of::Card => self.front.map(|front| extent.of(front)),
            Of::Piece(PieceId(piece)) => self.known[place((piece, extent))],
        }
    }

    /// How a thing is called.
    pub(super) fn name(&self, of: Of) -> &'w str {
        match of {
            Of::Card => "card",
            Of::Piece(PieceId(piece)) => &self.names.list[piece].value,
        }
    }

    /// The sides of pieces that a side leans on.
    fn leans_on(&self, (piece, extent): Side) -> Vec<Side> {
        let all = self.stated(piece).map_or_else(Vec::new, |(stated, _)| stated.leans_on(extent));
        let pieces = all.into_iter().filter_map(|(of, extent)| match of {
            Of::Card => None,
            Of::Piece(piece) => Some((piece.0, extent)),
        });
        pieces.collect()
    }

    /// Where the relation of a side is written.
    fn span(&self, (piece, extent): Side) -> Span {
        self.stated(piece)
            .map_or_else(Span::default, |(stated, span)| stated.side(extent).map_or(span, |side| side.span))
    }
}

impl Desk<'_> {
    /// The size of every piece that has one. A circle is noted once, and so is the first size of a
    /// chain that comes to nothing.
    pub(in crate::design::settle) fn follow(
        &mut self,
        wanted: &[Option<(&Wanted, Span)>],
        names: &Names,
        front: Option<Size>,
    ) -> Vec<Option<Size>> {
        let mut sides = Sides { wanted, names, front, known: vec![None; 2 * wanted.len()] };
        let mut begun = vec![false; 2 * wanted.len()];
        let mut on_way = vec![false; 2 * wanted.len()];
        let mut circles: BTreeSet<Vec<usize>> = BTreeSet::new();
        let mut failed: Vec<Side> = Vec::new();
        for start in (0..wanted.len()).flat_map(|piece| Extent::BOTH.map(|extent| (piece, extent))) {
            if begun[place(start)] {
                continue;
            }
            // Down to sides that need no other, then back up again.
            let mut way: Vec<(Side, Vec<Side>)> = Vec::new();
            let mut next = Some(start);
            loop {
                if let Some(side) = next.take() {
                    begun[place(side)] = true;
                    on_way[place(side)] = true;
                    way.push((side, sides.leans_on(side)));
                }
                let Some((side, waiting)) = way.last_mut() else { break };
                match waiting.pop() {
                    Some(other) if on_way[place(other)] => {
                        let from = way.iter().position(|(side, _)| *side == other).unwrap_or(0);
                        let round: Vec<Side> = way[from..].iter().map(|(side, _)| *side).collect();
                        self.circle(&round, &sides, &mut circles);
                    }
                    Some(other) if !begun[place(other)] => next = Some(other),
                    Some(_) => {}
                    None => {
                        let side = *side;
                        on_way[place(side)] = false;
                        way.pop();
                        sides.known[place(side)] = self.side_known(side, &sides, &mut failed);
                    }
                }
            }
        }
        self.nothing_left(&failed, &sides);
        let size = |piece: usize| {
            let [width, height] = Extent::BOTH.map(|extent| sides.known[place((piece, extent))]);
            Some(Size::new(width?, height?))
        };
        (0..wanted.len()).map(size).collect()
    }

    /// What a side comes to, of which all that it leans on has been tried.
    fn side_known(&mut self, side: Side, sides: &Sides<'_>, failed: &mut Vec<Side>) -> Option<Length> {
        let (piece, extent) = side;
        let stated = match sides.wanted[piece]? {
            (Wanted::Outright(size), _) => return Some(extent.of(*size)),
            (Wanted::Related(stated), _) => stated,
        };
        let length = stated.result(extent, |of, extent| sides.known(of, extent))?;
        if length.nm() <= 0 {
            failed.push(side);
            return None;
        }
        if length.nm() > LARGEST_NM {
            self.note(
                Finding::error(
                    "bad-length",
                    sides.span(side),
                    format!("the {} of `{}` is longer than any sheet", extent.word(), sides.names.list[piece].value),
                    format!("comes to {length}"),
                )
                .help("keep it to at most 100 m")
                .plainly("The sizes add up to far more than any paper."),
            );
            return None;
        }
        Some(length)
    }

    /// Notes a circle, once for the pieces that lean on each other with both sides.
    fn circle(&mut self, round: &[Side], sides: &Sides<'_>, noted: &mut BTreeSet<Vec<usize>>) {
        let by_side = round.iter().any(|(piece, _)| matches!(sides.stated(*piece), Some((Stated::BySide { .. }, _))));
        let mut pieces: Vec<usize> = round.iter().map(|(piece, _)| *piece).collect();
        pieces.sort_unstable();
        if !by_side && !noted.insert(pieces) {
            return;
        }
        let name = |(piece, extent): Side| {
            let name = sides.names.list[piece].value.as_str();
            if by_side { format!("the {} of `{name}`", extent.word()) } else { format!("`{name}`") }
        };
        let mut way: Vec<String> = round.iter().take(8).map(|side| name(*side)).collect();
        if round.len() > way.len() {
            way.push("...".to_owned());
        }
        way.push(name(round[0]));
        let what = if by_side { "sides go round" } else { "sizes lean on each other" };
        let (label, message, plain) = if round.len() == 1 {
            let what = if by_side { way[0].clone() } else { format!("the size of {}", way[0]) };
            let own = if by_side { round[0].1.word() } else { "size" };
            (
                format!("its own {own}"),
                format!("{what} leans on itself"),
                format!("{} is said by itself, so it is never known.", super::super::desk::capital(&what)),
            )
        } else {
            (
                format!("sized from {}", name(round[1])),
                format!("{what} in a circle: {}", way.join(" to ")),
                format!("The sizes go round in a circle, {}, so none is ever known.", way.join(" to ")),
            )
        };
        let help = if by_side {
            "write 1 of these sides as a length, such as `4 in`"
        } else {
            "write 1 of these sizes outright, such as `4 x 5 1/4 in`"
        };
        let mut finding =
            Finding::error("circular-size", sides.span(round[0]), message, label).help(help).plainly(plain);
        for (side, next) in round.iter().skip(1).zip(round.iter().skip(2).chain(round.first())).take(8) {
            finding = finding.also(sides.span(*side), format!("sized from {}", name(*next)));
        }
        self.note(finding);
    }
}
