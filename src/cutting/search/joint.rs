//! Papers that could share diagrams, taken together: the fewest different diagrams over all of
//! them, then the fewest cuts.
//!
//! How often each diagram is cut from each paper is a table of small numbers; all such tables are
//! gone through. Given one, the pieces of each kind are dealt out to the diagrams kind by kind, such
//! that every paper gets what it wants and no more to spare than it has sheets but one; what a sheet
//! can give at all, and in how few parts, is known from the tables of the bounded programme. A
//! diagram that serves several papers turns a piece only where all of them let it.

use super::Limits;
use super::counts::{Counts, Lanes};
use super::cover::{Alike, Covered, Lot};
use super::points::Cuts;
use super::problem::{Hand, Kind, Problem};
use super::sheet::{CutSheet, Fit, cut_sheet};
use super::table::{Budget, Ground, Question, Table};
use crate::cutting::demand::PaperDemand;
use crate::design::model::{PieceId, Side};
use crate::geometry::Rect;
use std::collections::HashMap;

/// Papers that could share diagrams with one another and with no other paper.
#[derive(Debug, Clone)]
pub(super) struct Set {
    /// Which papers.
    pub(super) papers: Vec<usize>,
    /// No fewer diagrams can do for all of them, given the number of sheets of each.
    pub(super) least_diagrams: u64,
    /// No fewer parts can do over all their sheets, given so many diagrams as are used.
    pub(super) least_parts: u64,
}

/// The most papers of one set that are searched together.
const MOST_PAPERS: usize = 4;

/// Steps for each of the limit's nodes.
const STEPS_A_NODE: u64 = 40;

/// Takes papers together that could share diagrams, and covers them better where that is found.
/// `search` says whether to look for better at all.
pub(super) fn sets(
    demands: &[PaperDemand],
    lots: &[Lot],
    covered: &mut [Covered],
    search: Option<&Limits>,
) -> Vec<Set> {
    let mut open: Vec<usize> =
        (0..demands.len()).filter(|&p| !demands[p].wanted.is_empty() && !covered[p].sheets.is_empty()).collect();
    let mut all = Vec::new();
    while let Some(first) = open.pop() {
        let mut papers = vec![first];
        let mut place = 0;
        while place < papers.len() {
            let here = papers[place];
            let (near, far) = open.iter().partition(|&&other| !apart(&demands[here], &demands[other]));
            papers.extend::<Vec<usize>>(near);
            open = far;
            place += 1;
        }
        papers.sort_unstable();
        all.push(set(demands, lots, covered, &papers, search));
    }
    all
}

fn set(
    demands: &[PaperDemand],
    lots: &[Lot],
    covered: &mut [Covered],
    papers: &[usize],
    search: Option<&Limits>,
) -> Set {
    let alone: u64 = papers.iter().map(|&paper| covered[paper].least_parts).sum();
    if let [paper] = papers {
        let least_diagrams = u64::from(covered[*paper].least_diagrams);
        return Set { papers: vec![*paper], least_diagrams, least_parts: alone };
    }
    let sheets = |paper: usize| covered[paper].sheets.iter().map(|alike| alike.times).sum::<u32>();
    // What one diagram for all sheets of a paper gives.
    let mut even: Vec<Vec<_>> = papers
        .iter()
        .map(|&paper| {
            let wanted = demands[paper].wanted.iter();
            wanted.map(|w| (w.piece, w.side, w.count().div_ceil(sheets(paper).max(1)))).collect()
        })
        .collect();
    even.sort_unstable();
    even.dedup();
    let different = even.len() as u64;
    let single = papers.iter().all(|&paper| sheets(paper) == 1);
    let one = papers.iter().all(|&paper| covered[paper].sheets.len() == 1 && covered[paper].least_diagrams == 1);
    // Kinds stand in the order of the design, so equal cuts are equal diagrams.
    let same = different == 1
        && papers.iter().all(|&paper| covered[paper].sheets[0].cuts == covered[papers[0]].sheets[0].cuts);
    if one && (same || (single && different == papers.len() as u64)) {
        return Set { papers: papers.to_vec(), least_diagrams: different, least_parts: alone };
    }
    let least = papers.iter().map(|&paper| u64::from(covered[paper].least_diagrams)).max().unwrap_or(1);
    let least = least.max(if different > 1 { 2 } else { 1 });
    let pieces: u64 =
        papers.iter().flat_map(|&paper| &demands[paper].wanted).map(|wanted| u64::from(wanted.count())).sum();
    let unknown = Set { papers: papers.to_vec(), least_diagrams: least, least_parts: pieces };
    let Some(limits) = search else { return unknown };
    Joint::new(demands, lots, covered, papers, limits)
        .and_then(|mut joint| joint.improve(covered, unknown.clone()))
        .unwrap_or(unknown)
}

/// Whether no diagram can serve both papers: no sheet in common, or no piece.
pub(super) fn apart(one: &PaperDemand, other: &PaperDemand) -> bool {
    let sheets = one
        .sheets
        .iter()
        .any(|a| other.sheets.iter().any(|b| (a.whole, a.usable, &a.sections) == (b.whole, b.usable, &b.sections)));
    let pieces = one.wanted.iter().any(|a| other.wanted.iter().any(|b| (a.piece, a.side) == (b.piece, b.side)));
    !(sheets && pieces)
}

/// One paper of a set.
struct Paper {
    /// Its place among all papers.
    place: usize,
    sheets: u32,
    alike: bool,
    /// For each kind of the set: its own number of the kind, how many are wanted, and whether it may
    /// lie on its side.
    kinds: Vec<Option<(usize, u32, bool)>>,
    /// For each size of sheet of the set, its own number of the stack and how many there are.
    stacks: Vec<Option<(usize, u32)>>,
}

/// What sheets of one size and one way of turning can give.
struct Known {
    fits: Vec<Counts>,
    parts: Vec<(Counts, u32)>,
    /// What was asked already; never walked over.
    asked: HashMap<Counts, Option<u32>>,
}

struct Joint<'l> {
    limits: &'l Limits<'l>,
    papers: Vec<Paper>,
    kinds: Vec<(PieceId, Side)>,
    sizes: Vec<(i64, i64)>,
    hand: Option<Hand>,
    lanes: Lanes,
    /// The kinds, each with the most that a sheet may give; how they may turn is said sheet by sheet.
    free: Vec<Kind>,
    known: Vec<(usize, Vec<bool>, Known)>,
    complete: bool,
    steps: u64,
    budget: Budget<'l>,
    /// The least area of pieces that any sheet gives, in square nanometres: however full the other
    /// sheets of its paper are, it must give the rest.
    least_area: i128,
}

/// A diagram that is asked for: the size of sheet, how many of each paper, and what it gives.
#[derive(Debug, Clone)]
struct Column {
    size: usize,
    times: Vec<u32>,
    /// Which of [`Joint::known`] it is.
    known: usize,
}

/// The best so far: parts, and what each column gives.
type Best = Option<(u64, Vec<Column>, Vec<Counts>)>;

impl<'l> Joint<'l> {
    fn new(
        demands: &[PaperDemand],
        lots: &[Lot],
        covered: &[Covered],
        papers: &[usize],
        limits: &'l Limits<'l>,
    ) -> Option<Self> {
        let unsectioned = |paper: &usize| lots[*paper].stacks.iter().all(|stack| stack.sections.len() <= 1);
        if papers.len() > MOST_PAPERS || !papers.iter().all(unsectioned) {
            return None;
        }
        let mut kinds: Vec<(PieceId, Side)> = Vec::new();
        let mut free: Vec<Kind> = Vec::new();
        let mut shapes: Vec<(Rect, Rect)> = Vec::new();
        for &paper in papers {
            let sheets: u32 = covered[paper].sheets.iter().map(|alike| alike.times).sum();
            for (wanted, kind) in demands[paper].wanted.iter().zip(&lots[paper].kinds) {
                let most = kind.wanted + sheets - 1;
                let name = (wanted.piece, wanted.side);
                match kinds.iter().position(|known| *known == name) {
                    Some(known) => free[known].wanted = free[known].wanted.max(most),
                    None => {
                        kinds.push(name);
                        free.push(Kind { wanted: most, ..*kind });
                    }
                }
            }
            for (sheets, stack) in demands[paper].sheets.iter().zip(&lots[paper].stacks) {
                let shape = (sheets.whole, sheets.usable);
                if stack.count > 0 && !shapes.contains(&shape) {
                    shapes.push(shape);
                }
            }
        }
        let sizes = shapes.iter().map(|(_, usable)| (usable.width(), usable.height())).collect();
        let of_set = papers
            .iter()
            .map(|&paper| {
                let own = &demands[paper];
                let kinds = kinds.iter().map(|name| {
                    let place = own.wanted.iter().position(|wanted| (wanted.piece, wanted.side) == *name)?;
                    Some((place, own.wanted[place].count(), own.wanted[place].quarter))
                });
                let stacks = shapes.iter().map(|shape| {
                    let place = own.sheets.iter().position(|sheets| (sheets.whole, sheets.usable) == *shape)?;
                    let count = lots[paper].stacks[place].count;
                    (count > 0).then_some((place, count))
                });
                Paper {
                    place: paper,
                    sheets: covered[paper].sheets.iter().map(|alike| alike.times).sum(),
                    alike: own.alike,
                    kinds: kinds.collect(),
                    stacks: stacks.collect(),
                }
            })
            .collect();
        let largest = shapes.iter().map(|(_, usable)| usable.area()).max().unwrap_or(0);
        let least_area = papers.iter().map(|&paper| {
            let sheets: u32 = covered[paper].sheets.iter().map(|alike| alike.times).sum();
            let wanted: i128 = lots[paper].kinds.iter().map(|kind| kind.area() * i128::from(kind.wanted)).sum();
            wanted - i128::from(sheets - 1) * largest
        });
        let least_area = least_area.min().unwrap_or(0);
        let lanes = Lanes::new(&free.iter().map(|kind| kind.wanted).collect::<Vec<_>>()).filter(Lanes::whole)?;
        Some(Self {
            limits,
            papers: of_set,
            kinds,
            sizes,
            hand: lots[papers[0]].hand,
            lanes,
            free,
            known: Vec::new(),
            complete: true,
            steps: limits.nodes.saturating_mul(STEPS_A_NODE),
            budget: limits.cuts,
            least_area: least_area.max(0),
        })
    }

    fn improve(&mut self, covered: &mut [Covered], mut least: Set) -> Option<Set> {
        let now = self.worth(covered);
        let pieces = least.least_parts;
        for diagrams in least.least_diagrams..=now.0 {
            let best = self.search(u32::try_from(diagrams).ok()?);
            let sure = self.complete && self.steps > 0;
            let Some((parts, columns, gives)) = best else {
                if sure && least.least_diagrams == diagrams {
                    least.least_diagrams = diagrams + 1;
                }
                continue;
            };
            let found = self.realise(&columns, &gives);
            if let Some(found) = found {
                let mut better = covered.to_vec();
                for (paper, sheets) in self.papers.iter().zip(found) {
                    better[paper.place].sheets = sheets;
                }
                if self.worth(&better) < now {
                    covered.clone_from_slice(&better);
                }
            }
            let reached = self.worth(covered).0;
            least.least_parts = if sure && reached == diagrams { parts.max(pieces) } else { pieces };
            break;
        }
        least.least_diagrams = least.least_diagrams.min(self.worth(covered).0);
        Some(least)
    }

    /// Diagrams and parts over all papers of the set.
    fn worth(&self, covered: &[Covered]) -> (u64, u64) {
        let mut drawn: Vec<(usize, Vec<CutSheet>)> = Vec::new();
        let mut parts = 0;
        for paper in &self.papers {
            parts += covered[paper.place].parts();
            let names = self.names(paper);
            for alike in &covered[paper.place].sheets {
                let size = paper.stacks.iter().position(|own| own.is_some_and(|(stack, _)| stack == alike.stack));
                let cuts = alike.cuts.iter().map(|cut| renamed(cut, &names)).collect();
                let one = (size.unwrap_or(usize::MAX), cuts);
                if !drawn.contains(&one) {
                    drawn.push(one);
                }
            }
        }
        (drawn.len() as u64, parts)
    }

    /// For each kind of a paper its number in the set.
    fn names(&self, paper: &Paper) -> Vec<usize> {
        let own = paper.kinds.iter().flatten().map(|(own, ..)| own + 1).max().unwrap_or(0);
        let mut names = vec![0; own];
        for (kind, own) in paper.kinds.iter().enumerate() {
            if let Some((own, ..)) = own {
                names[*own] = kind;
            }
        }
        names
    }

    /// The fewest parts with so many diagrams, some of which may turn out the same.
    fn search(&mut self, diagrams: u32) -> Best {
        let mut best: Best = None;
        let mut columns: Vec<(usize, Vec<u32>)> = Vec::new();
        let rest: Vec<u32> = self.papers.iter().map(|paper| paper.sheets).collect();
        self.columns(diagrams, &rest, &mut columns, &mut best);
        best
    }

    /// Goes through all tables of how many sheets of each paper each diagram is for; columns are in
    /// falling order, since their order is of no account.
    fn columns(&mut self, left: u32, rest: &[u32], columns: &mut Vec<(usize, Vec<u32>)>, best: &mut Best) {
        if left == 0 {
            if rest.iter().all(|&sheets| sheets == 0) {
                self.deal(columns, best);
            }
            return;
        }
        let mut times = rest.to_vec();
        // Every column up to the rest, counted down like a number.
        loop {
            if self.steps == 0 {
                return;
            }
            self.steps -= 1;
            let alike = self.papers.iter().zip(&times).zip(rest);
            let alike = alike.filter(|((paper, _), _)| paper.alike).all(|((_, &n), &rest)| n == 0 || n == rest);
            if times.iter().any(|&n| n > 0) && alike && (left > 1 || times == rest) {
                for size in 0..self.sizes.len() {
                    let column = (size, times.clone());
                    if columns.last().is_some_and(|before| (&before.1, before.0) < (&column.1, column.0)) {
                        continue;
                    }
                    let fine = self.papers.iter().enumerate().all(|(n, paper)| {
                        let used: u32 = columns.iter().filter(|c| c.0 == size).map(|c| c.1[n]).sum();
                        times[n] == 0 || paper.stacks[size].is_some_and(|(_, count)| used + times[n] <= count)
                    });
                    if fine {
                        columns.push(column);
                        let after: Vec<u32> = rest.iter().zip(&times).map(|(all, own)| all - own).collect();
                        self.columns(left - 1, &after, columns, best);
                        columns.pop();
                    }
                }
            }
            let Some(place) = (0..times.len()).rev().find(|&place| times[place] > 0) else { return };
            times[place] -= 1;
            times[place + 1..].copy_from_slice(&rest[place + 1..]);
        }
    }

    /// Deals the pieces out to these diagrams.
    fn deal(&mut self, columns: &[(usize, Vec<u32>)], best: &mut Best) {
        let mut asked: Vec<Column> = Vec::new();
        for (size, times) in columns {
            let Some(known) = self.known(*size, times) else {
                self.complete = false;
                return;
            };
            asked.push(Column { size: *size, times: times.clone(), known });
        }
        let mut ways: Vec<Vec<Vec<u32>>> = Vec::new();
        for kind in 0..self.kinds.len() {
            let mut own = Vec::new();
            self.shares(kind, &asked, &mut Vec::new(), &mut own);
            if own.is_empty() {
                return;
            }
            ways.push(own);
        }
        let gives = vec![0; asked.len()];
        self.follow(0, &ways, &asked, gives, best);
    }

    /// The ways to give one kind in so many diagrams.
    fn shares(&mut self, kind: usize, columns: &[Column], before: &mut Vec<u32>, all: &mut Vec<Vec<u32>>) {
        let here = before.len();
        let cut = |paper: usize, before: &[u32]| -> u32 {
            before.iter().zip(columns).map(|(n, column)| n * column.times[paper]).sum()
        };
        if here == columns.len() {
            let fine = self.papers.iter().enumerate().all(|(n, paper)| {
                let wanted = paper.kinds[kind].map_or(0, |(_, wanted, _)| wanted);
                cut(n, before) >= wanted
            });
            if fine {
                all.push(before.clone());
            }
            return;
        }
        for count in 0..=self.free[kind].wanted {
            if self.steps == 0 {
                return;
            }
            self.steps -= 1;
            before.push(count);
            let within = self.papers.iter().enumerate().all(|(n, paper)| {
                let most = paper.kinds[kind].map_or(0, |(_, wanted, _)| wanted + paper.sheets - 1);
                cut(n, before) <= most
            });
            if within {
                self.shares(kind, columns, before, all);
            }
            before.pop();
            if !within {
                return;
            }
        }
    }

    fn follow(&mut self, kind: usize, ways: &[Vec<Vec<u32>>], columns: &[Column], gives: Vec<Counts>, best: &mut Best) {
        let times = |column: &Column| u64::from(column.times.iter().sum::<u32>());
        if kind == ways.len() {
            let mut parts = 0;
            for (column, &gives) in columns.iter().zip(&gives) {
                let Some(own) = self.parts(column.known, gives) else { return };
                parts += times(column) * u64::from(own);
            }
            if best.as_ref().is_none_or(|(least, ..)| parts < *least) {
                *best = Some((parts, columns.to_vec(), gives));
            }
            return;
        }
        for way in &ways[kind] {
            if self.steps == 0 {
                return;
            }
            self.steps -= 1;
            let mut more = gives.clone();
            let mut pieces = 0;
            for ((all, &count), column) in more.iter_mut().zip(way).zip(columns) {
                *all += self.lanes.one(kind) * u128::from(count);
                pieces += times(column) * u64::from(self.lanes.total(*all));
            }
            if best.as_ref().is_some_and(|(least, ..)| pieces >= *least) {
                continue;
            }
            if columns.iter().zip(&more).all(|(column, &gives)| self.parts(column.known, gives).is_some()) {
                self.follow(kind + 1, ways, columns, more, best);
            }
        }
    }

    /// The fewest parts in which a sheet gives so much: where that is past the leftovers searched, one
    /// more than those; none where it does not give so much at all.
    fn parts(&mut self, known: usize, gives: Counts) -> Option<u32> {
        let most = self.limits.leftovers;
        let lanes = &self.lanes;
        let known = &mut self.known[known].2;
        *known.asked.entry(gives).or_insert_with(|| {
            let counted =
                known.parts.iter().filter(|(counts, _)| lanes.covers(*counts, gives)).map(|(_, parts)| *parts);
            counted.min().or_else(|| {
                known.fits.iter().any(|&counts| lanes.covers(counts, gives)).then(|| lanes.total(gives) + most + 1)
            })
        })
    }

    /// The problem of a sheet for these papers.
    fn problem(&self, size: usize, quarters: &[bool]) -> Problem {
        let kinds = self.free.iter().zip(quarters).map(|(kind, &quarter)| Kind { quarter, ..*kind }).collect();
        let (width, height) = self.sizes[size];
        Problem { width, height, kinds, hand: self.hand }
    }

    /// What sheets of a size can give that serve these papers.
    fn known(&mut self, size: usize, times: &[u32]) -> Option<usize> {
        let quarters: Vec<bool> = (0..self.kinds.len())
            .map(|kind| {
                let using = self.papers.iter().zip(times).filter(|(_, times)| **times > 0);
                using.filter_map(|(paper, _)| paper.kinds[kind]).all(|(_, _, quarter)| quarter)
            })
            .collect();
        if let Some(place) = self.known.iter().position(|(s, q, _)| (*s, q) == (size, &quarters)) {
            return Some(place);
        }
        let (problem, unit) = self.problem(size, &quarters).in_largest_unit();
        let area = i64::try_from(self.least_area / (i128::from(unit) * i128::from(unit))).ok()?;
        let cuts = if problem.hand_binds() { Cuts::AllAndHeld } else { Cuts::All };
        let ground = Ground::new(&problem, &self.lanes, cuts, self.limits.ways)?;
        let mut given = |leftovers: Option<u32>| {
            let question = Question { leftovers, area, beam: None, root: true };
            let table = Table::fill(&ground, question, &mut self.budget);
            let (x, y) = ground.sheet();
            table.complete().then(|| table.front(x, y).iter().map(|e| (e.counts, e.parts)).collect::<Vec<_>>())
        };
        let fits = given(None)?.into_iter().map(|(counts, _)| counts).collect();
        let parts = given(Some(self.limits.leftovers))?;
        self.known.push((size, quarters, Known { fits, parts, asked: HashMap::new() }));
        Some(self.known.len() - 1)
    }

    /// Cuts the sheets of every paper.
    fn realise(&self, columns: &[Column], gives: &[Counts]) -> Option<Vec<Vec<Alike>>> {
        let mut all: Vec<Vec<Alike>> = vec![Vec::new(); self.papers.len()];
        let mut drawn: Vec<(usize, Counts, &[bool], CutSheet)> = Vec::new();
        for (column, &gives) in columns.iter().zip(gives) {
            let quarters = self.known[column.known].1.as_slice();
            let same = drawn
                .iter()
                .find(|(size, counts, turns, _)| (*size, *counts, *turns) == (column.size, gives, quarters));
            let cut = match same {
                Some((.., cut)) => cut.clone(),
                None => {
                    let problem = self.problem(column.size, quarters).wanting(&self.lanes.unpack(gives));
                    let Fit::Yes(cut) = cut_sheet(&problem, self.limits) else { return None };
                    drawn.push((column.size, gives, quarters, cut.clone()));
                    cut
                }
            };
            for ((paper, &times), sheets) in self.papers.iter().zip(&column.times).zip(&mut all) {
                if times == 0 {
                    continue;
                }
                let (stack, _) = paper.stacks[column.size]?;
                let own: Vec<usize> = paper.kinds.iter().map(|kind| kind.map_or(0, |(own, ..)| own)).collect();
                let mut counts = vec![0; paper.kinds.iter().flatten().count()];
                for (kind, own) in paper.kinds.iter().enumerate() {
                    if let Some((own, ..)) = own {
                        counts[*own] = self.lanes.count(gives, kind);
                    }
                }
                match sheets.iter_mut().find(|alike: &&mut Alike| alike.stack == stack && alike.counts == counts) {
                    Some(alike) => alike.times += times,
                    None => sheets.push(Alike { stack, times, cuts: vec![renamed(&cut, &own)], counts }),
                }
            }
        }
        Some(all)
    }
}

/// The same cuts with the kinds named otherwise.
fn renamed(cut: &CutSheet, names: &[usize]) -> CutSheet {
    CutSheet { ways: cut.ways.iter().map(|way| way.with_kinds(names)).collect(), ..cut.clone() }
}
