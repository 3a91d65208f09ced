//! What is done where a sheet is past exact search: the largest piece that still fits goes into
//! the corner, a row of it is cut off, and the rest is filled in the same way.

use super::points::Axis;
use super::problem::{Hand, Problem};
use super::tree::Tree;
use std::rc::Rc;

/// Fills a sheet with what is wanted as far as it goes.
#[must_use]
pub(crate) fn fill(problem: &Problem) -> super::tree::Node {
    let mut left: Vec<u32> = problem.kinds.iter().map(|kind| kind.wanted).collect();
    let mut steps = 20_000_u32;
    let tree = part(problem, problem.width, problem.height, &mut left, &mut steps);
    tree.gather(problem.width, problem.height, problem.hand)
}

fn allows(hand: Option<Hand>, one: i64, other: i64) -> bool {
    other == 0 || hand.is_none_or(|hand| hand.allows(one, other))
}

fn part(problem: &Problem, width: i64, height: i64, left: &mut [u32], steps: &mut u32) -> Tree {
    let mut best: Option<(i128, usize, i64, i64, bool)> = None;
    for (index, kind) in problem.kinds.iter().enumerate().filter(|(index, _)| left[*index] > 0) {
        for (w, h, lying) in kind.ways() {
            let fits = w <= width && h <= height;
            // Row first: cut the row's height off, then the piece off the row.
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
    let piece = Rc::new(Tree::Piece(kind, lying));
    let row = if w == width {
        piece
    } else {
        let rest = Rc::new(part(problem, width - w, h, left, steps));
        Rc::new(Tree::Cut { axis: Axis::Across, at: w, first: piece, rest })
    };
    if h == height {
        return row.as_ref().clone();
    }
    let rest = Rc::new(part(problem, width, height - h, left, steps));
    Tree::Cut { axis: Axis::Up, at: h, first: row, rest }
}
