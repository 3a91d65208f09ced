//! What is done where a sheet is past exact search: the largest piece that still fits goes into
//! the corner, a row or a column of it is cut off, and the rest is filled in the same way.

use super::points::Axis;
use super::problem::{Hand, Problem};
use super::tree::Tree;
use std::rc::Rc;

/// Fills a sheet with what is wanted as far as it goes.
#[must_use]
pub(crate) fn fill(problem: &Problem) -> super::tree::Node {
    fill_by(problem, Axis::Up)
}

/// The same in rows, which are cut off up the sheet, or in columns, across it.
#[must_use]
pub(crate) fn fill_by(problem: &Problem, first: Axis) -> super::tree::Node {
    let mut left: Vec<u32> = problem.kinds.iter().map(|kind| kind.wanted).collect();
    let mut steps = 20_000_u32;
    let tree = part(problem, first, (problem.width, problem.height), &mut left, &mut steps);
    tree.gather(problem.width, problem.height, problem.hand)
}

fn allows(hand: Option<Hand>, one: i64, other: i64) -> bool {
    other == 0 || hand.is_none_or(|hand| hand.allows(one, other))
}

fn part(problem: &Problem, first: Axis, (width, height): (i64, i64), left: &mut [u32], steps: &mut u32) -> Tree {
    let mut best: Option<(i128, usize, i64, i64, bool)> = None;
    for (index, kind) in problem.kinds.iter().enumerate().filter(|(index, _)| left[*index] > 0) {
        for (w, h, lying) in kind.ways() {
            let fits = w <= width && h <= height;
            // The row or column is cut off, then the piece off it.
            if fits
                && allows(problem.hand, h, height - h)
                && allows(problem.hand, w, width - w)
                && best.is_none_or(|(area, ..)| kind.area() > area)
            {
                best = Some((kind.area(), index, w, h, lying));
            }
        }
    }
    let Some((_, kind, w, h, lying)) = best.filter(|_| *steps > 0) else { return Tree::Waste };
    *steps -= 1;
    left[kind] -= 1;
    let cut = |axis, at, whole, first: Rc<Tree>, rest: &mut dyn FnMut() -> Tree| {
        if at == whole { first } else { Rc::new(Tree::Cut { axis, at, first, rest: Rc::new(rest()) }) }
    };
    let piece = Rc::new(Tree::Piece(kind, lying));
    let whole = if first == Axis::Up {
        let row = cut(Axis::Across, w, width, piece, &mut || part(problem, first, (width - w, h), left, steps));
        cut(Axis::Up, h, height, row, &mut || part(problem, first, (width, height - h), left, steps))
    } else {
        let column = cut(Axis::Up, h, height, piece, &mut || part(problem, first, (w, height - h), left, steps));
        cut(Axis::Across, w, width, column, &mut || part(problem, first, (width - w, height), left, steps))
    };
    whole.as_ref().clone()
}
