//! Sizes by relation under random designs: nothing panics, and sums are sums.

use super::relations::{cuts, sides, size_of};
use super::{design, found};
use proptest::prelude::*;
use trimwright::design::model::{Design, Extent, Of};
use trimwright::design::nodes::read;
use trimwright::design::resize::{named, resize};
use trimwright::design::settle::settle;
use trimwright::length::{Length, Units};
use trimwright::source::Source;

/// A side at random: mostly sound relations between a few names, sometimes a slip.
fn any_side() -> impl Strategy<Value = String> {
    let name = || prop::sample::select(vec!["card", "a", "b", "c", "d", "e", "nobody", ""]);
    let length = || prop::sample::select(vec!["1/8 in", "1 in", "3 mm", "0 in", "1/4", "90000 mm", "1/8 in | 3 mm"]);
    let change = prop::option::of((prop::sample::select(vec!["less", "plus"]), length()))
        .prop_map(|change| change.map_or_else(String::new, |(word, length)| format!(" {word} {length}")));
    let measure = prop_oneof![
        length().prop_map(str::to_owned),
        (
            prop::sample::select(vec![
                "as wide as",
                "as high as",
                "half of",
                "a third of",
                "a quarter of",
                "half of the height of"
            ]),
            name()
        )
            .prop_map(|(start, name)| format!("{start} {name}")),
        (name(), prop::collection::vec(name(), 0..4), length())
            .prop_map(|(of, after, gap)| format!("rest of {of} after {} with gap {gap}", after.join(", "))),
        (name(), 0..9_u32, length())
            .prop_map(|(of, count, gap)| format!("share of {of}, {count} evenly with gap {gap}")),
        "[a-e |,0-9]{0,12}(less|after|of|with gap)?[a-e |,0-9]{0,8}",
    ];
    (measure, change).prop_map(|(measure, change)| format!("{measure}{change}"))
}

fn any_size() -> impl Strategy<Value = String> {
    let name = prop::sample::select(vec!["card", "a", "b", "c", "d", "e"]);
    prop_oneof![
        (any_side(), any_side()).prop_map(|(width, height)| sides(&format!("'{width}'"), &format!("'{height}'"))),
        Just("8 x 9 in".to_owned()),
        name.clone().prop_map(|name| format!("{name} less 1/8 in all round")),
        name.prop_map(|name| format!("{name} less left 1/8 in, bottom 1/2 in")),
        any_side().prop_map(|side| format!("'{side}'")),
    ]
}

/// A chain of sides, each from the one before, that is sound whatever the numbers, in steps of 1 mm.
#[derive(Debug, Clone, Copy)]
enum Link {
    Less(i64),
    Plus(i64),
    Edge(i64),
    Round(i64),
}

fn link() -> impl Strategy<Value = Link> {
    prop_oneof![
        (0..5_i64).prop_map(Link::Less),
        (0..5_i64).prop_map(Link::Plus),
        (0..5_i64).prop_map(Link::Edge),
        (0..3_i64).prop_map(Link::Round),
    ]
}

/// The design of a chain that starts from `start` mm, with every length of it `grown` mm longer.
fn chained(start: i64, links: &[Link], grown: i64) -> Design {
    let mut pieces: Vec<(String, String)> = vec![("p0".into(), format!("{0} x {0} mm", start + grown))];
    for (n, link) in links.iter().enumerate() {
        let size = match link {
            Link::Less(by) => sides(&format!("as wide as p{n} less {} mm", by + grown), &format!("as wide as p{n}")),
            Link::Plus(by) => sides(&format!("as wide as p{n} plus {} mm", by + grown), &format!("as wide as p{n}")),
            Link::Edge(by) => format!("p{n} less left {} mm", by + grown),
            Link::Round(by) => format!("p{n} less {} mm all round", by + grown),
        };
        pieces.push((format!("p{}", n + 1), size));
    }
    let pieces: Vec<(&str, &str)> = pieces.iter().map(|(name, size)| (name.as_str(), size.as_str())).collect();
    design(&cuts("metric", &pieces), Units::Metric)
}

/// A side that leans on sides of pieces before it, all on the nanometre, and what it comes to by plain
/// whole numbers.
#[derive(Debug, Clone, Copy)]
enum Sum {
    Own(i64),
    Same(usize, bool),
    Part(usize, bool, i64),
    Rest(usize, usize, usize, i64),
    Share(usize, i64, i64),
}

fn sum() -> impl Strategy<Value = (Sum, i64)> {
    let piece = 0..6_usize;
    let sum = prop_oneof![
        (50..300_i64).prop_map(Sum::Own),
        (piece.clone(), any::<bool>()).prop_map(|(of, wide)| Sum::Same(of, wide)),
        (piece.clone(), any::<bool>(), 2..5_i64).prop_map(|(of, wide, parts)| Sum::Part(of, wide, parts)),
        (piece.clone(), piece.clone(), piece.clone(), 0..9_i64)
            .prop_map(|(of, first, second, gap)| Sum::Rest(of, first, second, gap)),
        (piece, 1..7_i64, 0..9_i64).prop_map(|(of, count, gap)| Sum::Share(of, count, gap)),
    ];
    (sum, prop_oneof![Just(0), -9..9_i64])
}

/// As it is written, and what it comes to: `sizes` are those of the pieces before, in nanometres.
fn worked((sum, change): (Sum, i64), wide: bool, sizes: &[[i64; 2]]) -> (String, i64) {
    let nm = |mm: i64| mm * 1_000_000;
    let at = |of: usize| of % sizes.len();
    let side = |of: usize, wide: bool| sizes[at(of)][usize::from(!wide)];
    let word = |wide: bool| if wide { "width" } else { "height" };
    let (text, length) = match sum {
        Sum::Own(mm) => (format!("{mm} mm"), nm(mm)),
        Sum::Same(of, other) => (format!("as {} as p{}", if other { "wide" } else { "high" }, at(of)), side(of, other)),
        Sum::Part(of, other, parts) => {
            let part = ["half", "a third", "a quarter"][usize::try_from(parts).unwrap() - 2];
            (format!("{part} of the {} of p{}", word(other), at(of)), side(of, other).div_euclid(parts))
        }
        Sum::Rest(of, first, second, gap) => (
            format!("rest of p{} after p{} and p{} with gap {gap} mm", at(of), at(first), at(second)),
            side(of, wide) - side(first, wide) - side(second, wide) - 2 * nm(gap),
        ),
        Sum::Share(of, count, gap) => (
            format!("share of p{}, {count} evenly with gap {gap} mm", at(of)),
            (side(of, wide) - (count - 1) * nm(gap)).div_euclid(count),
        ),
    };
    match change {
        0 => (text, length),
        less if less < 0 => (format!("{text} less {} mm", -less), length + nm(less)),
        plus => (format!("{text} plus {plus} mm"), length + nm(plus)),
    }
}

proptest! {
    #![proptest_config(crate::support::cases(300))]

    /// No relations panic or hang, every place is a place, and what settles keeps to its relations.
    #[test]
    fn random_relations_never_panic(all in prop::collection::vec(any_size(), 5)) {
        let names = ["a", "b", "c", "d", "e"];
        let pieces: Vec<(&str, &str)> = names.into_iter().zip(all.iter().map(String::as_str)).collect();
        let source = Source::new("random.yaml", cuts("inch", &pieces));
        let root = read(&source).expect("yaml");
        let settled = settle(&root, &source, "random", Units::Inch);
        prop_assert!(settled.design.is_some() || !settled.findings.is_empty());
        for finding in &settled.findings {
            for label in std::iter::once(&finding.primary).chain(&finding.others) {
                prop_assert!(source.text().get(label.span.start..label.span.end).is_some(), "{finding:?}");
            }
            prop_assert!(finding.help.as_ref().is_some_and(|help| help.contains(|sign: char| sign.is_numeric())), "{finding:?}");
        }
        if let Some(design) = settled.design {
            for piece in &design.pieces {
                prop_assert!(piece.size.width.nm() > 0 && piece.size.height.nm() > 0);
                for extent in Extent::BOTH {
                    let side = piece.stated.result(extent, |of, extent| match of {
                        Of::Card => None,
                        Of::Piece(other) => Some(extent.of(design.piece(other).size)),
                    });
                    prop_assert_eq!(side.unwrap_or(extent.of(piece.size)), extent.of(piece.size));
                }
            }
        }
    }

    /// Sound relations against plain whole numbers, whichever way round the pieces are written; a piece of
    /// which nothing would be left is refused, and it alone.
    #[test]
    fn sound_relations_are_plain_sums(
        all in prop::collection::vec((sum(), sum()), 1..9),
        turned in any::<bool>(),
    ) {
        let mut sizes = vec![[400_000_000, 300_000_000]];
        let mut pieces = vec![("p0".to_owned(), "400 x 300 mm".to_owned())];
        for (width, height) in all {
            let ((wide, width), (high, height)) = (worked(width, true, &sizes), worked(height, false, &sizes));
            pieces.push((format!("p{}", pieces.len()), sides(&wide, &high)));
            sizes.push([width, height]);
            if width <= 0 || height <= 0 {
                break;
            }
        }
        let refused = sizes.last().unwrap().iter().filter(|side| **side <= 0).count();
        let mut written: Vec<(&str, &str)> = pieces.iter().map(|(name, size)| (name.as_str(), size.as_str())).collect();
        if turned {
            written.reverse();
        }
        let text = cuts("metric", &written);
        if refused > 0 {
            let (findings, _) = found(&Source::new("sums.yaml", text), Units::Metric);
            prop_assert_eq!(findings.len(), refused);
            prop_assert!(findings.iter().all(|finding| finding.code == "size-not-positive"), "{findings:#?}");
        } else {
            let design = design(&text, Units::Metric);
            for ((name, _), [width, height]) in pieces.iter().zip(&sizes) {
                let size = size_of(&design, name);
                prop_assert_eq!((size.width.nm(), size.height.nm()), (*width, *height), "{}", name);
            }
        }
    }

    /// Shares and their gaps, and the rest and what it comes after, are the whole again.
    #[test]
    fn rest_and_share_add_up(whole in 200..900_i64, count in 1..12_i64, gap in 0..9_i64, first in 1..40_i64, second in 1..40_i64) {
        let text = cuts("metric", &[
            ("whole", &format!("{whole} x {whole} mm")),
            ("first", &format!("{first} x 5 mm")),
            ("second", &format!("{second} x 5 mm")),
            ("slat", &sides(&format!("share of whole, {count} evenly with gap {gap} mm"), "1 mm")),
            ("half", &sides("half of whole", "a third of whole")),
            ("last", &sides(&format!("rest of whole after first, second, first with gap {gap} mm"), "1 mm")),
        ]);
        let design = design(&text, Units::Metric);
        let width = |name: &str| size_of(&design, name).width.nm();
        let nm = |mm: i64| mm * 1_000_000;
        prop_assert_eq!(width("last") + 2 * nm(first) + nm(second) + 3 * nm(gap), nm(whole));
        // Shares are never more than the whole, and less by fewer nanometres than there are of them.
        let left = nm(whole) - count * width("slat") - (count - 1) * nm(gap);
        prop_assert!((0..count).contains(&left), "{left}");
        let divides = (nm(whole) - (count - 1) * nm(gap)) % count == 0;
        prop_assert_eq!(left == 0, divides);
        prop_assert!((0..2).contains(&(nm(whole) - 2 * width("half"))));
        prop_assert!((0..3).contains(&(nm(whole) - 3 * size_of(&design, "half").height.nm())));
    }

    /// With every length of a chain one step of the ruler longer, each piece changes by one step for each
    /// `plus` and the start, less one for each `less` and edge, less two for each border all round.
    #[test]
    fn a_chain_grows_as_it_is_stated(start in 300..400_i64, links in prop::collection::vec(link(), 1..12), grown in 0..4_i64) {
        let (before, after) = (chained(start, &links, 0), chained(start, &links, grown));
        let mut steps = grown;
        for (n, link) in links.iter().enumerate() {
            steps += match link {
                Link::Less(_) | Link::Edge(_) => -grown,
                Link::Plus(_) => grown,
                Link::Round(_) => -2 * grown,
            };
            let width = |design: &Design| design.pieces[n + 1].size.width;
            prop_assert_eq!(width(&after) - width(&before), Length::mm(steps));
        }
        // The start alone longer moves the whole chain by just as much, resized or written so.
        let by = Length::mm(grown);
        let moved = resize(&before, named(&before, "p0").unwrap(), by, by).unwrap();
        for (old, new) in before.pieces.iter().zip(&moved.pieces) {
            prop_assert_eq!(new.size.width - old.size.width, by);
        }
    }
}
