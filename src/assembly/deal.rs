//! Pieces of a pad, dealt round the cards: which sheet each card's pieces come from.
//!
//! Takes a design and its plan, gives for every paper whose sheets differ the sheet of every piece on
//! every card: as few pieces of one sheet on a card as can be, and from no sheet more pieces of a kind than
//! it gives. Must never know a word of any language.

use crate::cutting::plan::CutPlan;
use crate::design::model::{Design, PaperId, PieceId};

/// How the pieces of one pad are dealt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Deal {
    /// The pad.
    pub paper: PaperId,
    /// How many of its sheets are cut.
    pub sheets: u32,
    /// Card after card, version after version: its pieces from this pad, each with the number of its sheet,
    /// from 1.
    pub cards: Vec<Vec<(PieceId, u32)>>,
    /// Whether every card takes the pieces of the one before, each one sheet further on.
    pub onward: bool,
}

/// A deal for every pad of which two sheets or more are cut.
#[must_use]
pub fn deals(design: &Design, plan: &CutPlan) -> Vec<Deal> {
    if !design.has_front || !plan.missing.is_empty() {
        return Vec::new();
    }
    let pads = design.paper_ids().filter(|paper| design.paper(*paper).different.is_some());
    pads.filter_map(|paper| {
        let used: usize = plan.sheets.iter().filter(|sheet| sheet.paper == paper).map(|cut| cut.numbers.len()).sum();
        let cards = wanted(design, paper);
        let sheets = u32::try_from(used).ok().filter(|sheets| *sheets > 1 && cards.len() > 1)?;
        cards.iter().any(|card| !card.is_empty()).then(|| deal(paper, sheets, &cards))
    })
    .collect()
}

/// The pieces that each card takes from a paper, in the order of the design.
fn wanted(design: &Design, paper: PaperId) -> Vec<Vec<PieceId>> {
    let mut cards = Vec::new();
    for version in design.version_ids() {
        let from = design.piece_ids().filter(|piece| design.paper_of(*piece, version) == Some(paper));
        let own: Vec<PieceId> =
            from.flat_map(|piece| std::iter::repeat_n(piece, design.per_card(piece) as usize)).collect();
        cards.extend(std::iter::repeat_n(own, design.version(version).cards as usize));
    }
    cards
}

/// Deals the wanted pieces of every card from so many sheets that are cut alike.
#[must_use]
pub fn deal(paper: PaperId, sheets: u32, wanted: &[Vec<PieceId>]) -> Deal {
    let with = |sheet: &dyn Fn(usize, usize) -> u32| -> Vec<Vec<(PieceId, u32)>> {
        let card = |(card, own): (usize, &Vec<PieceId>)| {
            own.iter().enumerate().map(|(slot, piece)| (*piece, sheet(card, slot) + 1)).collect()
        };
        wanted.iter().enumerate().map(card).collect()
    };
    // Easy to say and to do, and mostly as good as any other: one sheet further on from piece to piece and
    // from card to card.
    let turn = |number: usize| u32::try_from(number % sheets as usize).unwrap_or(0);
    let round = with(&|card, slot| turn(card + slot));
    let alike = wanted.windows(2).all(|pair| pair[0] == pair[1]);
    if alike && is_fair(sheets, wanted, &round) {
        return Deal { paper, sheets, cards: round, onward: true };
    }
    let coloured = coloured(sheets, wanted);
    let cards = with(&|card, slot| coloured[card][slot]);
    Deal { paper, sheets, cards, onward: false }
}

/// The most pieces of one kind that a sheet is asked for: all sheets are cut alike, so each gives at least
/// that many.
fn most_of(sheets: u32, wanted: &[Vec<PieceId>], piece: PieceId) -> usize {
    let all = wanted.iter().flatten().filter(|own| **own == piece).count();
    all.div_ceil(sheets as usize)
}

/// Whether no card has more pieces of one sheet than it must, and no sheet gives more than it has.
fn is_fair(sheets: u32, wanted: &[Vec<PieceId>], cards: &[Vec<(PieceId, u32)>]) -> bool {
    let numbers = 1..=sheets;
    let within = numbers.clone().all(|sheet| {
        cards.iter().all(|card| {
            let own = card.iter().filter(|(_, from)| *from == sheet).count();
            own <= card.len().div_ceil(sheets as usize)
        })
    });
    let mut pieces: Vec<PieceId> = wanted.iter().flatten().copied().collect();
    pieces.sort_unstable();
    pieces.dedup();
    within
        && pieces.iter().all(|piece| {
            let most = most_of(sheets, wanted, *piece);
            numbers.clone().all(|sheet| cards.iter().flatten().filter(|own| **own == (*piece, sheet)).count() <= most)
        })
}

/// The sheet, from 0, of every piece on every card, by colouring the edges of the graph between cards and
/// kinds of piece: parted so that none has more edges than there are sheets, it takes no more colours than
/// sheets (König's theorem), and no two edges at one end have the same.
fn coloured(sheets: u32, wanted: &[Vec<PieceId>]) -> Vec<Vec<u32>> {
    let sheets = sheets as usize;
    // Ends: a card, or a kind, so many edges at a time.
    let mut kinds: Vec<(PieceId, usize)> = Vec::new();
    let mut edges: Vec<[usize; 2]> = Vec::new();
    let (mut card_ends, mut kind_ends) = (0, 0);
    let mut ends_of_kind: Vec<Vec<usize>> = Vec::new();
    for own in wanted {
        for (slot, piece) in own.iter().enumerate() {
            let kind = kinds.iter().position(|(known, _)| known == piece).unwrap_or_else(|| {
                kinds.push((*piece, 0));
                ends_of_kind.push(Vec::new());
                kinds.len() - 1
            });
            let used = &mut kinds[kind].1;
            if used.is_multiple_of(sheets) {
                ends_of_kind[kind].push(kind_ends);
                kind_ends += 1;
            }
            let end = ends_of_kind[kind][*used / sheets];
            *used += 1;
            edges.push([card_ends + slot / sheets, end]);
        }
        card_ends += own.len().div_ceil(sheets);
    }
    // At each end, the edge of every colour.
    let mut at: [Vec<Vec<Option<usize>>>; 2] =
        [vec![vec![None; sheets]; card_ends], vec![vec![None; sheets]; kind_ends]];
    let mut colour = vec![0_usize; edges.len()];
    for edge in 0..edges.len() {
        let [card, kind] = edges[edge];
        let free = |side: usize, end: usize, at: &[Vec<Vec<Option<usize>>>; 2]| {
            at[side][end].iter().position(Option::is_none).unwrap_or(0)
        };
        let (of_card, of_kind) = (free(0, card, &at), free(1, kind, &at));
        if at[1][kind][of_card].is_some() {
            // Along the path from the kind that has the two colours in turn they change places; in a graph
            // of two sides it never comes back to this card.
            let mut path = Vec::new();
            let (mut side, mut end, mut next) = (1, kind, of_card);
            while let Some(on) = at[side][end][next] {
                path.push(on);
                side = 1 - side;
                end = edges[on][side];
                next = if next == of_card { of_kind } else { of_card };
            }
            for on in &path {
                for (side, end) in edges[*on].iter().enumerate() {
                    at[side][*end][colour[*on]] = None;
                }
            }
            for on in &path {
                colour[*on] = if colour[*on] == of_card { of_kind } else { of_card };
                for (side, end) in edges[*on].iter().enumerate() {
                    at[side][*end][colour[*on]] = Some(*on);
                }
            }
        }
        colour[edge] = of_card;
        at[0][card][of_card] = Some(edge);
        at[1][kind][of_card] = Some(edge);
    }
    let mut colours = colour.into_iter().map(|colour| u32::try_from(colour).unwrap_or(0));
    wanted.iter().map(|own| colours.by_ref().take(own.len()).collect()).collect()
}
