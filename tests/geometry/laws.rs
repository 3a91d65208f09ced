//! Laws that hold for every scene: moved together, all results move; mirrored, they are mirrored.

use proptest::prelude::*;
use trimwright::geometry::{
    Angle, Comparison, Mirror, Point, Polygon, Rect, Region, distance, relation, span, visible,
};

/// Polygons round a middle, simple by how they are made; marks coarse enough that edges often meet.
fn polygon() -> impl Strategy<Value = Polygon> {
    let star = (3_usize..9)
        .prop_flat_map(|corners| (prop::collection::vec(1_i64..8, corners), 0_i64..6, 0_i64..6))
        .prop_filter_map("a simple ring", |(far, x, y)| {
            let way = |at: usize| {
                let turn = Angle::left(36_000 * at as i64 / far.len() as i64 + 700);
                let tip = Point::new(far[at] * 3_175_000, 0).turned(turn, Point::new(0, 0));
                // On marks of 1/16 in.
                let mark = |at: i64| (at + 793_750).div_euclid(1_587_500) * 1_587_500;
                Point::new(mark(tip.x), mark(tip.y)).moved(x * 1_587_500, y * 1_587_500)
            };
            Polygon::new((0..far.len()).map(way).collect()).ok()
        });
    let upright = (0_i64..9, 0_i64..9, 1_i64..9, 1_i64..9)
        .prop_map(|(x, y, width, height)| Polygon::from(Rect::at(x, y, width, height)).scaled());
    prop_oneof![star, upright]
}

trait Scaled {
    fn scaled(&self) -> Self;
}
impl Scaled for Polygon {
    fn scaled(&self) -> Self {
        let ring = self.outer().iter().map(|at| Point::new(at.x * 3_175_000, at.y * 3_175_000)).collect();
        Self::new(ring).unwrap()
    }
}

fn edge_length(polygons: &[&Polygon]) -> i128 {
    polygons
        .iter()
        .flat_map(|polygon| polygon.outer().iter().zip(polygon.outer().iter().cycle().skip(1)))
        .map(|(a, b)| i128::from(a.distance(*b)))
        .sum()
}

proptest! {
    #![proptest_config(crate::support::cases(192))]

    #[test]
    fn moving_moves_every_result(
        one in polygon(), other in polygon(), x in -400_000_000_i64..400_000_000, y in -400_000_000_i64..400_000_000,
        angle in 0_i64..36_000, width in 0_i64..30_000_000,
    ) {
        let (a, b) = (Region::from(&one), Region::from(&other));
        let (c, d) = (a.moved(x, y), b.moved(x, y));
        prop_assert_eq!(c.area2(), a.area2());
        prop_assert_eq!(c.intersection(&d), a.intersection(&b).moved(x, y));
        prop_assert_eq!(c.union(&d), a.union(&b).moved(x, y));
        prop_assert_eq!(c.difference(&d), a.difference(&b).moved(x, y));
        for by in [Comparison::Exact, Comparison::Turned] {
            prop_assert_eq!(relation(&c, &d, by), relation(&a, &b, by));
        }
        prop_assert_eq!(distance(&c, &d), distance(&a, &b));
        let seen: Vec<Region> = visible(&[a, b]).iter().map(|layer| layer.moved(x, y)).collect();
        prop_assert_eq!(visible(&[c, d]), seen);
        let (pivot, angle) = (Point::new(7, 11), Angle::left(angle));
        prop_assert_eq!(
            one.moved(x, y).turned(angle, pivot.moved(x, y)),
            one.turned(angle, pivot).moved(x, y)
        );
        prop_assert_eq!(span(&one.moved(x, y), pivot.moved(x, y), angle, width), span(&one, pivot, angle, width));
    }

    #[test]
    fn mirroring_mirrors(one in polygon(), other in polygon(), angle in 0_i64..36_000, up in any::<bool>()) {
        let mirror = if up { Mirror::TopToBottom } else { Mirror::LeftToRight };
        let frame = Rect::at(-11, 4, 60_000_001, 50_000_000);
        let (a, b) = (Region::from(&one), Region::from(&other));
        let (c, d) = (a.mirrored(mirror, frame), b.mirrored(mirror, frame));
        prop_assert_eq!(c.mirrored(mirror, frame), a.clone());
        prop_assert_eq!(relation(&c, &d, Comparison::Exact), relation(&a, &b, Comparison::Exact));
        prop_assert_eq!(distance(&c, &d), distance(&a, &b));
        // A crossing may round to the other side, by a nanometre along the edges.
        let off = (c.intersection(&d).area2() - a.intersection(&b).area2()).abs();
        prop_assert!(off <= 2 * edge_length(&[&one, &other]), "{}", off);
        // Turned the other way about the mirrored pivot, every corner is mirrored to the nanometre.
        let (pivot, turn) = (Point::new(5, 9), Angle::left(angle));
        prop_assert_eq!(
            one.mirrored(mirror, frame).turned(turn.back(), pivot.mirrored(mirror, frame)),
            one.turned(turn, pivot).mirrored(mirror, frame)
        );
    }

    #[test]
    fn parts_make_the_whole(one in polygon(), other in polygon()) {
        let (a, b) = (Region::from(&one), Region::from(&other));
        let slack = 2 * edge_length(&[&one, &other]);
        let near = |p: i128, q: i128| (p - q).abs() <= slack;
        let shared = a.intersection(&b).area2();
        prop_assert!(near(a.area2() + b.area2(), a.union(&b).area2() + shared));
        prop_assert!(near(a.area2(), a.difference(&b).area2() + shared));
        prop_assert_eq!(relation(&b, &a, Comparison::Exact), relation(&a, &b, Comparison::Exact).from_the_other());
        prop_assert_eq!(distance(&a, &b), distance(&b, &a));
    }

    /// Quarter turns by hundredths are the exact ones, and a quarter more is a quarter turn more.
    #[test]
    fn a_quarter_more_is_a_quarter_more(x in -300_000_000_i64..300_000_000, y in -300_000_000_i64..300_000_000, angle in 0_i64..36_000) {
        let pivot = Point::new(123, -456);
        let point = Point::new(x, y);
        let turn = Angle::left(angle);
        prop_assert_eq!(
            point.turned(turn.then(Angle::quarters(1)), pivot),
            point.turned(turn, pivot).quarter_turned(1, pivot)
        );
        // Lengths keep: the rounding moves a corner by at most 0.71 nm.
        let off = point.turned(turn, pivot).distance(pivot) - point.distance(pivot);
        prop_assert!(off.abs() <= 1, "{}", off);
    }
}
