//! The most cards that the sheets at hand give, versions in the design's proportion.
//!
//! From above come fences: a worth for each piece and the most worth that all sheets hold, whatever
//! is cut. No number of cards beyond a fence is possible. From there down each number is put to the
//! search until one is given; what was refused on the way is the proof. Because a share of a version
//! may fall as the cards grow, every number up to the fence is refused by itself or by one that it
//! contains, so the proof has no gap.

use super::cover::Lot;
use super::problem::Kind;
use super::sheet::Limits;
use super::shortage::{Answer, Paper, counts_of};
use super::value::{ValueLimits, unlimited_counts};
use super::{Cover, Known, plan_knowing};
use crate::cutting::demand::{PaperDemand, Wanted, demand, demand_for};
use crate::cutting::plan::{Aim, CutPlan};
use crate::design::model::{Design, PaperId};

/// How many cards come out, and why no more.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Most {
    /// Cards of each version, in the order of the design; together the cards found.
    pub share: Vec<u32>,
    /// The most cards found.
    pub found: u32,
    /// No plan gives more; equal to `found` where that is proven.
    pub bound: u32,
}

impl Most {
    /// Whether no plan gives more cards.
    #[must_use]
    pub const fn proven(&self) -> bool {
        self.found == self.bound
    }
}

/// No more cards than this are planned.
const MOST_CARDS: u32 = 100_000;
/// Numbers of cards above the most found that are put to the search by themselves.
const MOST_GAPS: usize = 24;
/// Numbers tried one by one from the fence down before the rest is halved.
const FROM_ABOVE: u32 = 3;
/// Rounds of moving the worths of a fence.
const ROUNDS: u32 = 24;
/// Cells of the table behind a fence; past them area alone is the fence.
const FENCE_CELLS: usize = 30_000;

/// So many cards shared over versions in the proportion asked for: whole parts first, then one more
/// where most of a card was cut off, the earlier version where two are equal.
#[must_use]
pub fn share(asked: &[u32], cards: u32) -> Vec<u32> {
    let mut share = floors(asked, cards);
    let all: u64 = asked.iter().map(|&n| u64::from(n)).sum();
    let mut order: Vec<usize> = (0..asked.len()).collect();
    let rest = |version: &usize| (u64::from(asked[*version]) * u64::from(cards)).checked_rem(all).unwrap_or(0);
    order.sort_by_key(|version| std::cmp::Reverse(rest(version)));
    let given: u32 = share.iter().sum();
    for version in order.into_iter().take((cards - given) as usize) {
        share[version] += 1;
    }
    share
}

/// The whole parts alone: no share of so many or more cards is less, version by version.
fn floors(asked: &[u32], cards: u32) -> Vec<u32> {
    let all: u64 = asked.iter().map(|&n| u64::from(n)).sum();
    let part = |&n: &u32| (u64::from(n) * u64::from(cards)).checked_div(all).unwrap_or(0);
    asked.iter().map(|n| u32::try_from(part(n)).unwrap_or(u32::MAX)).collect()
}

/// The design for the most cards, its plan, and how sure it is. The plan's aim of cards carries
/// what was found and its bound; with not one card the plan is empty.
#[must_use]
pub fn plan_most(design: &Design, limits: &Limits, known: &mut Known) -> (Design, CutPlan, Most) {
    let mut search = Search::new(design, limits, known);
    loop {
        let most = search.most(limits, known);
        let planned = with_cards(design, &most.share);
        let mut plan = plan_knowing(&planned, limits, known);
        if plan.missing.is_empty() || most.found == 0 {
            plan.most = Some(most.found);
            plan.aims.cards =
                Aim { found: most.found.into(), bound: most.bound.max(most.found).into(), proven: most.proven() };
            search.give_back(known);
            known.likely = Some(most.found);
            return (planned, plan, most);
        }
        // Said to be given and then not found within the limits: not known after all.
        search.failed.push(most.found);
    }
}

/// The papers whose sheets do not give so many cards, as far as is found: with one more than the most,
/// those that run out.
#[must_use]
pub fn short_of(design: &Design, cards: u32, limits: &Limits, known: &mut Known) -> Vec<PaperId> {
    let mut search = Search::new(design, limits, known);
    let demands = demand_for(design, &share(&search.asked, cards));
    let mut short = Vec::new();
    for (paper, stock) in &mut search.stocks {
        let counts = counts_of(&stock.paper.demand.wanted, &demands[paper.0]);
        if stock.gives(&counts) != Answer::Yes {
            short.push(*paper);
        }
    }
    search.give_back(known);
    short.sort_unstable();
    short
}

/// The same design for other numbers of cards of each version.
#[must_use]
pub fn with_cards(design: &Design, share: &[u32]) -> Design {
    let mut design = design.clone();
    for (version, &cards) in design.versions.iter_mut().zip(share) {
        version.cards = cards;
    }
    design.cards.value = share.iter().fold(0, |sum, n| sum.saturating_add(*n));
    design
}

/// The sheets of one paper and what is known of them, whichever counts are asked.
#[derive(Debug)]
pub(super) struct Stock {
    paper: Paper,
    fences: Vec<Fence>,
    fenced: bool,
}

/// A worth for one of each kind; all sheets together hold no more than `most`.
#[derive(Debug, Clone)]
struct Fence {
    worth: Vec<i128>,
    most: i128,
}

impl Fence {
    fn of(&self, counts: &[u32]) -> i128 {
        self.worth.iter().zip(counts).map(|(worth, &count)| worth * i128::from(count)).sum()
    }

    fn shuts_out(&self, counts: &[u32]) -> bool {
        self.of(counts) > self.most
    }
}

impl Stock {
    fn new(demand: &PaperDemand, design: &Design, limits: &Limits) -> Self {
        let mut paper = Paper::new(demand, Cover::Unknown, design, limits);
        // Few counts are tried here, and a proof is wanted: only how well each is cut does not matter.
        paper.limits = Limits { looks: 0, ..limits.unmetered() };
        let fences = vec![area_fence(&paper.lot)];
        Self { paper, fences, fenced: false }
    }

    /// Builds the fences that take a table each, once.
    fn build_fences(&mut self) {
        if !self.fenced {
            self.fenced = true;
            let counts: Vec<u32> = self.paper.demand.wanted.iter().map(Wanted::count).collect();
            self.fences.extend(fences(&self.paper.lot, &counts));
        }
    }

    /// How many kinds may lie on their side.
    fn freedom(&self) -> usize {
        self.paper.lot.kinds.iter().filter(|kind| kind.quarter).count()
    }

    /// Notes that the sheets give so many.
    fn note_given(&mut self, counts: Vec<u32>) {
        if !self.paper.given.contains(&counts) {
            self.paper.given.push(counts);
        }
    }

    /// Whether the same sheets are asked for the same kinds of piece.
    fn is_of(&self, lot: &Lot) -> bool {
        unasked(&self.paper.lot) == unasked(lot)
    }

    /// Whether the same sheets are asked for the same kinds of piece, none of them larger.
    fn contains(&self, smaller: &Self) -> bool {
        let grown = |(a, b): (&Kind, &Kind)| a.width >= b.width && a.height >= b.height && a.quarter <= b.quarter;
        self.contains_with(smaller, grown)
    }

    fn contains_with(&self, other: &Self, like: impl Fn((&Kind, &Kind)) -> bool) -> bool {
        let (mine, theirs) = (unasked(&self.paper.lot), unasked(&other.paper.lot));
        mine.kinds.len() == theirs.kinds.len()
            && mine.kinds.iter().zip(&theirs.kinds).all(like)
            && Lot { kinds: theirs.kinds.clone(), ..mine } == theirs
    }

    /// Whether the same sheets are asked for pieces of the same sizes that may be turned as freely.
    fn is_freer(&self, strict: &Self) -> bool {
        let same = |(a, b): (&Kind, &Kind)| (a.width, a.height) == (b.width, b.height) && a.quarter >= b.quarter;
        self.contains_with(strict, same)
    }

    /// Takes over what shuts out and what was refused of smaller pieces: what gives the larger ones
    /// gives the smaller ones with one more trim. The rules of the hand allow the trim where what it
    /// leaves is long enough to hold.
    fn inherit(&mut self, smaller: &Self) {
        for fence in &smaller.fences {
            match self.fences.iter_mut().find(|own| own.worth == fence.worth) {
                Some(own) => own.most = own.most.min(fence.most),
                None => self.fences.push(fence.clone()),
            }
        }
        let (mine, theirs) = (&self.paper.lot, &smaller.paper.lot);
        let hold = mine.hand.map_or(0, |hand| hand.hold.max(hand.least));
        let trims = |(a, b): (&Kind, &Kind)| {
            (a.width, a.height, a.quarter) == (b.width, b.height, b.quarter) || b.width.min(b.height) >= hold
        };
        if mine.kinds.iter().zip(&theirs.kinds).all(trims) {
            let new = smaller.paper.refused.iter().filter(|refused| !self.paper.refused.contains(refused));
            let new: Vec<Vec<u32>> = new.cloned().collect();
            self.paper.refused.extend(new);
        }
    }

    fn gives(&mut self, counts: &[u32]) -> Answer {
        if self.shut(counts) { Answer::No } else { self.paper.gives(counts) }
    }

    fn shut(&self, counts: &[u32]) -> bool {
        self.fences.iter().any(|fence| fence.shuts_out(counts))
    }
}

/// A lot without what is wanted of it.
fn unasked(lot: &Lot) -> Lot {
    Lot { kinds: lot.kinds.iter().map(|kind| Kind { wanted: 0, ..*kind }).collect(), ..lot.clone() }
}

/// The search for one design.
struct Search<'d> {
    design: &'d Design,
    asked: Vec<u32>,
    stocks: Vec<(PaperId, Stock)>,
    /// Numbers that were given and then not found by the whole search.
    failed: Vec<u32>,
}

impl<'d> Search<'d> {
    fn new(design: &'d Design, limits: &Limits, known: &mut Known) -> Self {
        let demands = demand(design);
        let stocks = demands.iter().filter(|demand| !demand.wanted.is_empty()).map(|demand| {
            let lot = super::lot_of(demand, crate::cutting::demand::hand(design.units));
            let found = known.stocks.iter().position(|(paper, stock)| *paper == demand.paper && stock.is_of(&lot));
            let stock = match found {
                Some(place) => {
                    let mut stock = known.stocks.swap_remove(place).1;
                    stock.paper.demand = demand.clone();
                    stock
                }
                None => {
                    let mut stock = Stock::new(demand, design, limits);
                    // The last of smaller pieces has what the ones before it knew.
                    let others = known.stocks.iter().filter(|(paper, _)| *paper == demand.paper);
                    if let Some((_, smaller)) = others.rev().find(|(_, other)| stock.contains(other)) {
                        stock.inherit(smaller);
                    }
                    stock
                }
            };
            (demand.paper, stock)
        });
        let asked = design.versions.iter().map(|version| version.cards).collect();
        let mut stocks: Vec<(PaperId, Stock)> = stocks.collect();
        // What the paper that lets least be turned gives, others with the same sheets give too.
        stocks.sort_by_key(|(paper, stock)| (stock.freedom(), *paper));
        Self { design, asked, stocks, failed: Vec::new() }
    }

    /// Leaves what was learnt for the next design.
    fn give_back(self, known: &mut Known) {
        known.stocks.extend(self.stocks);
    }

    /// The most cards. A plan for the number that is likeliest is looked for first: where it stands
    /// and one more is known to be too many, nothing else need be searched.
    fn most(&mut self, limits: &Limits, known: &mut Known) -> Most {
        let likely = known.likely.unwrap_or(self.design.cards.value).min(self.ceiling()).min(MOST_CARDS);
        let planned = likely > 0 && self.answer_by_plan(likely, limits, known);
        if planned && self.is_known_most(likely) {
            return Most { share: share(&self.asked, likely), found: likely, bound: likely };
        }
        for (_, stock) in &mut self.stocks {
            stock.build_fences();
        }
        let ceiling = self.ceiling();
        let top = ceiling.min(MOST_CARDS);
        let (mut found, mut above) = (if planned { likely } else { 0 }, top + 1);
        let mut step = 0;
        while found + 1 < above {
            step += 1;
            let cards = if step <= FROM_ABOVE { above - 1 } else { found + (above - found) / 2 };
            if self.answer(cards) == Answer::Yes {
                found = cards;
            } else {
                above = cards;
            }
        }
        let mut bound = if ceiling > top { ceiling } else { found };
        let mut tries = MOST_GAPS;
        for cards in found + 1..=top {
            if self.certainly_not_from(cards) {
                break;
            }
            // Past the tries whatever is not refused already stays open.
            match if tries > 0 { self.answer(cards) } else { Answer::Unknown } {
                Answer::Yes => {
                    found = cards;
                    bound = bound.max(cards);
                }
                Answer::No => {}
                Answer::Unknown => {
                    tries = tries.saturating_sub(1);
                    bound = bound.max(cards);
                    if tries == 0 {
                        bound = bound.max(top);
                        break;
                    }
                }
            }
        }
        Most { share: share(&self.asked, found), found, bound }
    }

    /// Whether a whole plan gives so many cards, which is then known of every paper.
    fn answer_by_plan(&mut self, cards: u32, limits: &Limits, known: &mut Known) -> bool {
        if self.failed.contains(&cards) || self.shut_out(cards) {
            return false;
        }
        let planned = with_cards(self.design, &share(&self.asked, cards));
        if !super::is_covered(&planned, limits, known) {
            return false;
        }
        let demands = demand(&planned);
        for (paper, stock) in &mut self.stocks {
            let counts = counts_of(&stock.paper.demand.wanted, &demands[paper.0]);
            stock.note_given(counts);
        }
        true
    }

    /// The most cards that no fence shuts out.
    fn ceiling(&self) -> u32 {
        let out = |cards: u32| {
            let demands = demand_for(self.design, &floors(&self.asked, cards));
            self.stocks.iter().any(|(paper, stock)| stock.shut(&self.counts(stock, &demands[paper.0])))
        };
        let (mut within, mut beyond) = (0_u32, 1_u32);
        while !out(beyond) {
            within = beyond;
            let Some(next) = beyond.checked_mul(2) else { return u32::MAX };
            beyond = next;
        }
        while within + 1 < beyond {
            let middle = within + (beyond - within) / 2;
            if out(middle) {
                beyond = middle;
            } else {
                within = middle;
            }
        }
        // Rest cards of the share may be shut out too.
        let mut cards = within;
        while cards > 0 && within - cards < 64 && self.shut_out(cards) {
            cards -= 1;
        }
        cards
    }

    fn counts(&self, stock: &Stock, demand: &PaperDemand) -> Vec<u32> {
        counts_of(&stock.paper.demand.wanted, demand)
    }

    fn shut_out(&self, cards: u32) -> bool {
        let demands = demand_for(self.design, &share(&self.asked, cards));
        self.stocks.iter().any(|(paper, stock)| stock.shut(&self.counts(stock, &demands[paper.0])))
    }

    /// Whether so many cards come out.
    fn answer(&mut self, cards: u32) -> Answer {
        let demands = demand_for(self.design, &share(&self.asked, cards));
        if self.shut_out(cards) {
            return Answer::No;
        }
        let mut answer = if self.failed.contains(&cards) { Answer::Unknown } else { Answer::Yes };
        for place in 0..self.stocks.len() {
            let (paper, stock) = &mut self.stocks[place];
            let counts = counts_of(&stock.paper.demand.wanted, &demands[paper.0]);
            let given = stock.gives(&counts);
            answer = answer.and(given);
            if answer == Answer::No {
                break;
            }
            let (stricter, freer) = self.stocks.split_at_mut(place + 1);
            if let (Answer::Yes, Some((_, strict))) = (given, stricter.last()) {
                for (_, free) in freer.iter_mut().filter(|(_, free)| free.is_freer(strict)) {
                    free.note_given(counts.clone());
                }
            }
        }
        answer
    }

    /// Whether any number of cards past this one is known not to come out.
    fn is_known_most(&self, cards: u32) -> bool {
        let next = (cards + 1..)
            .take(MOST_GAPS)
            .find(|&more| self.certainly_not_from(more) || !self.refuses(&share(&self.asked, more)));
        next.is_some_and(|next| self.certainly_not_from(next))
    }

    /// Whether so many cards and any number past them ask one paper for more than it was refused.
    fn certainly_not_from(&self, cards: u32) -> bool {
        self.refuses(&floors(&self.asked, cards))
    }

    /// Whether one paper is known not to give these shares.
    fn refuses(&self, share: &[u32]) -> bool {
        let demands = demand_for(self.design, share);
        self.stocks.iter().any(|(paper, stock)| {
            let counts = self.counts(stock, &demands[paper.0]);
            let refused = |refused: &Vec<u32>| refused.iter().zip(&counts).all(|(a, b)| a <= b);
            stock.shut(&counts) || stock.paper.refused.iter().any(refused)
        })
    }
}

/// All sheets together hold no more area than they have.
fn area_fence(lot: &Lot) -> Fence {
    let area = |stack: usize| lot.area(stack) * i128::from(lot.stacks[stack].count);
    Fence { worth: lot.kinds.iter().map(Kind::area).collect(), most: (0..lot.stacks.len()).map(area).sum() }
}

/// More fences round what a lot's sheets give: by each kind alone, and by the worths that shut out most of counts in the proportion of `wanted` (prices of a column generation, moved in whole
/// numbers; the most worth of one sheet is the programme of Gilmore and Gomory, 1966, from memory).
/// The rules of the hand are left out, which only lets more through.
fn fences(lot: &Lot, wanted: &[u32]) -> Vec<Fence> {
    let areas: Vec<i128> = lot.kinds.iter().map(Kind::area).collect();
    let mut fences = Vec::new();
    for kind in 0..lot.kinds.len() {
        let worth: Vec<u64> = (0..lot.kinds.len()).map(|other| u64::from(other == kind)).collect();
        fences.extend(fence(lot, &worth).map(|(fence, _)| fence));
    }
    let largest = areas.iter().copied().max().unwrap_or(1).max(1);
    let scaled = |area: &i128| u64::try_from((area << 20) / largest).unwrap_or(0).max(1);
    let mut worth: Vec<u64> = areas.iter().map(scaled).collect();
    let mut best: Option<Fence> = None;
    let mut stride = 32_i128;
    for _ in 0..ROUNDS {
        let Some((fence, counts)) = fence(lot, &worth) else { break };
        let (all, most) = (fence.of(wanted), fence.most);
        if all == 0 || most == 0 {
            fences.push(fence);
            break;
        }
        // most / all is how often the demand goes into the sheets at best.
        if best.as_ref().is_none_or(|best| most * best.of(wanted) < best.most * all) {
            best = Some(fence);
        } else {
            stride = (stride * 3 / 4).max(1);
        }
        // What the plan has too much of is worth less, what it lacks is worth more.
        for ((worth, &count), &wanted) in worth.iter_mut().zip(&counts).zip(wanted) {
            let fair = most * i128::from(wanted);
            let over = if fair == 0 { 64 } else { (64 * (i128::from(count) * all - fair) / fair).clamp(-64, 64) };
            let moved = i128::from(*worth) * (4096 - over * stride) / 4096;
            *worth = u64::try_from(moved).unwrap_or(0).clamp(1, 1 << 30);
        }
    }
    fences.extend(best);
    fences
}

/// The fence of one set of worths, with the copies of a plan that reaches it on all sheets.
fn fence(lot: &Lot, worth: &[u64]) -> Option<(Fence, Vec<u64>)> {
    let limits = ValueLimits { cells: FENCE_CELLS, ..ValueLimits::default() };
    let mut most = 0_i128;
    let mut counts = vec![0_u64; worth.len()];
    for stack in lot.stacks.iter().filter(|stack| stack.count > 0) {
        for section in &stack.sections {
            let barred = |kind: usize| section.barred.get(kind).copied().unwrap_or(false);
            let worth: Vec<u64> =
                worth.iter().enumerate().map(|(n, &worth)| if barred(n) { 0 } else { worth }).collect();
            let (problem, _) = lot.problem_of(section, &lot.wanted()).without_hand().in_largest_unit();
            let (value, copies) = unlimited_counts(&problem, &worth, &limits)?;
            most += i128::from(value) * i128::from(stack.count);
            for (count, copies) in counts.iter_mut().zip(copies) {
                *count += u64::from(copies) * u64::from(stack.count);
            }
        }
    }
    Some((Fence { worth: worth.iter().map(|&worth| worth.into()).collect(), most }, counts))
}
