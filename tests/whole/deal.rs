//! A pad dealt round the cards: from no sheet more than it gives, on no card more of one sheet than must be.

use crate::support::{demo, editions_at, sound};
use proptest::prelude::*;
use std::collections::BTreeMap;
use trimwright::assembly::deal::{Deal, deal, deals};
use trimwright::assembly::tell;
use trimwright::design::model::{PaperId, PieceId};

/// The most pieces of one sheet on a card, and whether some sheet is asked for more than its share.
fn measured(sheets: u32, dealt: &Deal) -> (usize, bool) {
    let mut most = 0;
    let mut given: BTreeMap<(PieceId, u32), usize> = BTreeMap::new();
    let mut all: BTreeMap<PieceId, usize> = BTreeMap::new();
    for card in &dealt.cards {
        for (piece, sheet) in card {
            assert!((1..=sheets).contains(sheet));
            most = most.max(card.iter().filter(|(_, other)| other == sheet).count());
            *given.entry((*piece, *sheet)).or_default() += 1;
            *all.entry(*piece).or_default() += 1;
        }
    }
    // All sheets are cut alike, so each gives its share of every piece, rounded up.
    let over = given.iter().any(|((piece, _), count)| *count > all[piece].div_ceil(sheets as usize));
    (most, over)
}

/// The least of that maximum over every way to deal at all, by trying all of them.
fn least(sheets: u32, wanted: &[Vec<PieceId>]) -> usize {
    let slots: Vec<(usize, PieceId)> =
        wanted.iter().enumerate().flat_map(|(card, own)| own.iter().map(move |piece| (card, *piece))).collect();
    let ways = (sheets as usize).pow(u32::try_from(slots.len()).unwrap());
    let mut best = usize::MAX;
    for way in 0..ways {
        let mut rest = way;
        let mut cards: Vec<Vec<(PieceId, u32)>> = vec![Vec::new(); wanted.len()];
        for (card, piece) in &slots {
            cards[*card].push((*piece, u32::try_from(rest % sheets as usize).unwrap() + 1));
            rest /= sheets as usize;
        }
        let (most, over) = measured(sheets, &Deal { paper: PaperId(0), sheets, cards, onward: false });
        if !over {
            best = best.min(most);
        }
    }
    best
}

fn any_wanted(most_cards: usize, most_pieces: usize) -> impl Strategy<Value = Vec<Vec<PieceId>>> {
    let card = prop::collection::vec(0_usize..3, 0..=most_pieces).prop_map(|mut own| {
        own.sort_unstable();
        own.into_iter().map(PieceId).collect::<Vec<_>>()
    });
    (prop::collection::vec(card.clone(), 1..=most_cards), card, any::<bool>()).prop_map(|(cards, one, alike)| {
        // Mostly all cards are alike.
        if alike { vec![one; cards.len()] } else { cards }
    })
}

proptest! {
    #![proptest_config(crate::support::cases(300))]

    #[test]
    fn no_card_has_more_of_a_sheet_than_it_must(sheets in 2_u32..12, wanted in any_wanted(12, 9)) {
        let dealt = deal(PaperId(0), sheets, &wanted);
        for (card, own) in dealt.cards.iter().zip(&wanted) {
            prop_assert_eq!(&card.iter().map(|(piece, _)| *piece).collect::<Vec<_>>(), own);
            for sheet in 1..=sheets {
                let of_it = card.iter().filter(|(_, from)| *from == sheet).count();
                prop_assert!(of_it <= own.len().div_ceil(sheets as usize));
            }
        }
        prop_assert!(!measured(sheets, &dealt).1, "a sheet is asked for more than it gives");
        if dealt.onward {
            for pair in dealt.cards.windows(2) {
                for ((_, before), (_, after)) in pair[0].iter().zip(&pair[1]) {
                    prop_assert_eq!(before % sheets + 1, *after);
                }
            }
        }
    }

    #[test]
    fn it_is_as_good_as_trying_all_ways(sheets in 2_u32..4, wanted in any_wanted(3, 3)) {
        let (most, over) = measured(sheets, &deal(PaperId(0), sheets, &wanted));
        prop_assert!(!over);
        if wanted.iter().any(|own| !own.is_empty()) {
            prop_assert_eq!(most, least(sheets, &wanted));
        }
    }
}

/// Eight cards, eight sheets, seven pieces a card: pile 1 takes sheets 1 to 7, pile 8 sheets 8 and 1 to 6.
#[test]
fn eight_gardens_are_dealt_one_sheet_further_on() {
    for project in editions_at(&demo("eight-gardens")) {
        let dealt = deals(&project.design, &project.plan);
        let [pad] = dealt.as_slice() else { panic!("one pad: {dealt:?}") };
        assert!(pad.onward && pad.sheets == 8);
        let sheets = |card: usize| pad.cards[card].iter().map(|(_, sheet)| *sheet).collect::<Vec<_>>();
        assert_eq!(sheets(0), [1, 2, 3, 4, 5, 6, 7]);
        assert_eq!(sheets(7), [8, 1, 2, 3, 4, 5, 6]);
        let told: Vec<String> = tell::piles(&project.design, &project.plan)
            .iter()
            .map(|line| line.to_plain().replace('\u{a0}', " "))
            .collect();
        let papers: Vec<_> = project.design.paper_ids().collect();
        let before = tell::before_a_pad(&project.design, &project.plan, &papers);
        assert!(before[0].to_plain().contains("1 to 8"), "numbered while they are cut: {before:?}");
        assert!(
            told.iter().any(|line| line.contains("from sheet 1") && line.contains("after sheet 8 comes sheet 1")),
            "{told:#?}"
        );
    }
}

/// Two versions that take other pieces from the pad: every pile is told by itself.
#[test]
fn unlike_cards_are_told_pile_by_pile() {
    let text = "title: Patch
month: 2027-03
cards: 8
units: inch
card: {size: 4 1/4 x 5 1/2 in, fold: side, from: white}
papers:
  white: {sheets: 5 of letter}
  pad: {sheets: 4 of 6 x 6 in, sheets are: different}
pieces:
  panel: {size: 2 1/2 x 2 1/2 in, from: varies}
  tag: {size: 1 x 2 in, from: pad}
versions:
  - {name: light, cards: 4, papers: {panel: white}}
  - {name: dark, cards: 4, papers: {panel: pad}}
front:
  - {place: panel, left: 1/2 in, top: 1/2 in, glue: tape}
  - {place: tag, left: 1 in, bottom: 1/4 in, glue: tape, row: {count: 2, gap: 1/4 in}}
";
    let project = sound(text);
    let dealt = deals(&project.design, &project.plan);
    assert_eq!(dealt.len(), 1);
    assert!(!dealt[0].onward);
    assert_eq!(dealt[0].cards.iter().map(Vec::len).collect::<Vec<_>>(), [2, 2, 2, 2, 3, 3, 3, 3]);
    let told: Vec<String> =
        tell::piles(&project.design, &project.plan).iter().map(|line| line.to_plain().replace('\u{a0}', " ")).collect();
    assert!(told.iter().any(|line| line.starts_with("Pile 8")), "{told:#?}");
}
