//! Areas, overlays, relations, distances and turns against shapely (`scenes.py` beside this file says how
//! the scenes are made and how to make thousands more).

use serde_json::Value;
use std::collections::BTreeMap;
use trimwright::geometry::{Angle, Comparison, Point, Polygon, Region, Relation, distance, relation, visible};

fn scenes() -> Value {
    let text = match std::env::var_os("TRIMWRIGHT_SCENES") {
        Some(path) => std::fs::read_to_string(path).unwrap(),
        None => include_str!("scenes.json").to_owned(),
    };
    serde_json::from_str(&text).unwrap()
}

fn list(value: &Value) -> &[Value] {
    value.as_array().unwrap()
}

fn ring(value: &Value) -> Vec<Point> {
    list(value).iter().map(|at| Point::new(at[0].as_i64().unwrap(), at[1].as_i64().unwrap())).collect()
}

fn polygon(value: &Value) -> Polygon {
    let mut rings = list(value).iter().map(ring);
    let outer = rings.next().unwrap();
    Polygon::with_holes(outer, rings.collect()).unwrap()
}

fn length(polygon: &Polygon) -> f64 {
    polygon
        .rings()
        .flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)).map(|(a, b)| a.distance(*b) as f64))
        .sum()
}

fn area(region: &Region) -> f64 {
    region.area2() as f64 / 2.0
}

fn word(found: Relation) -> &'static str {
    match found {
        Relation::Apart => "apart",
        Relation::Touching => "touching",
        Relation::Overlapping => "overlapping",
        Relation::Inside => "inside",
        Relation::Around => "around",
        Relation::Same => "same",
    }
}

/// What the judge's own floats may err: areas here stay below 2^57 square nanometres.
const FLOAT: f64 = 128.0;

#[test]
#[expect(clippy::print_stdout)]
fn areas_relations_and_turns_agree_with_shapely() {
    let data = scenes();
    let mut worst = [0.0_f64; 4];
    let mut lies = BTreeMap::new();
    let mut turned_lies = BTreeMap::new();
    for (number, scene) in list(&data["scenes"]).iter().enumerate() {
        let name = format!("scene {number} ({})", scene["kind"]);
        let shapes: Vec<Polygon> = list(&scene["shapes"]).iter().map(polygon).collect();
        for (shape, stated) in shapes.iter().zip(list(&scene["areas"])) {
            let off = (shape.area2() as f64 / 2.0 - stated.as_f64().unwrap()).abs();
            worst[0] = worst[0].max(off);
            assert!(off <= FLOAT, "{name}: area off by {off}");
        }

        // A crossing rounded to a nanometre moves the edges that meet there by at most as much.
        let bound = FLOAT + shapes.iter().map(length).sum::<f64>();
        let upright = scene["kind"] == "rectangles" || scene["kind"] == "marks";
        let bound = if upright { FLOAT } else { bound };
        let regions: Vec<Region> = shapes.iter().map(Region::from).collect();
        let (one, other) = (&regions[0], &regions[1]);
        let pair = &scene["pair"];
        for (what, ours) in [
            ("intersection", one.intersection(other)),
            ("union", one.union(other)),
            ("difference", one.difference(other)),
        ] {
            let off = (area(&ours) - pair[what].as_f64().unwrap()).abs();
            worst[1] = worst[1].max(off / bound);
            assert!(off <= bound, "{name}: {what} off by {off}");
        }
        for (layer, (ours, stated)) in visible(&regions).iter().zip(list(&scene["visible"])).enumerate() {
            let off = (area(ours) - stated.as_f64().unwrap()).abs();
            worst[1] = worst[1].max(off / bound);
            assert!(off <= bound, "{name}: layer {layer} shows {off} too much or too little");
        }

        let found = word(relation(one, other, Comparison::Exact));
        *lies.entry(found).or_insert(0) += 1;
        assert_eq!(found, pair["lie"], "{name}");
        let found = word(relation(one, other, Comparison::Turned));
        *turned_lies.entry(found).or_insert(0) += 1;
        assert_eq!(found, pair["turned"], "{name}, by the tolerance");
        let off = (distance(one, other).unwrap() as f64 - pair["distance"].as_f64().unwrap()).abs();
        worst[2] = worst[2].max(off);
        assert!(off <= 0.501, "{name}: distance off by {off}");

        let turned = &scene["turned"];
        let angle = Angle::left(turned["angle"].as_i64().unwrap());
        let pivot = ring(&Value::Array(vec![turned["pivot"].clone()]))[0];
        let outer = ring(&scene["shapes"][0][0]);
        for (corner, stated) in outer.iter().zip(list(&turned["corners"])) {
            let ours = corner.turned(angle, pivot);
            let off = (ours.x as f64 - stated[0].as_f64().unwrap())
                .abs()
                .max((ours.y as f64 - stated[1].as_f64().unwrap()).abs());
            worst[3] = worst[3].max(off);
            assert!(off <= 0.502, "{name}: a turned corner off by {off}");
        }
    }
    println!(
        "worst: area {} nm², overlay {:.4} of its bound, distance {:.3} nm, turned corner {:.3} nm; {lies:?}, by the tolerance {turned_lies:?}",
        worst[0], worst[1], worst[2], worst[3]
    );
    assert!(lies.len() == 6 && turned_lies.len() == 6, "every relation occurs: {lies:?} {turned_lies:?}");
}
