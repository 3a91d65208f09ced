//! Sound designs settle to the expected values, in each edition.

use super::{design, found, sound};
use trimwright::design::model::{
    Along, Arrangement, Design, Face, Fold, From, Glue, How, LayerId, NoteOn, Onto, PaperId, Part, PieceKind, Score,
    Work,
};
use trimwright::design::nodes::read;
use trimwright::design::settle::{first_units, units_asked};
use trimwright::geometry::Edge;
use trimwright::length::{Length, Size, Units};
use trimwright::source::Source;

/// A piece by name, with its number.
fn size(design: &Design, name: &str) -> String {
    design.pieces.iter().find(|piece| piece.name == name).unwrap().size.to_string()
}

#[test]
fn lantern_row_in_inches() {
    let design = design(sound::LANTERN_ROW, Units::Inch);
    assert_eq!(design.asked, [Units::Inch, Units::Metric]);
    assert_eq!((design.title.value.as_str(), design.cards.value), ("Lantern Row", 8));
    assert_eq!(design.month.unwrap().value.to_string(), "2026-11");
    let card = design.card.as_ref().unwrap();
    assert_eq!((card.size.to_string().as_str(), card.fold), ("4 1/4 x 5 1/2 in", Fold::Side));
    let names: Vec<&str> = design.pieces.iter().map(|piece| piece.name.as_str()).collect();
    assert_eq!(names, ["base", "mat", "panel", "lantern", "rail"]);
    // Common practice, no source: 1/8 in shows on every edge of a 4 1/4 x 5 1/2 in card, so the
    // layers are 4 x 5 1/4 and 3 3/4 x 5 in, and the base is 8 1/2 x 5 1/2 in flat.
    for (name, wanted) in [
        ("base", "8 1/2 x 5 1/2 in"),
        ("mat", "4 x 5 1/4 in"),
        ("panel", "3 3/4 x 5 in"),
        ("lantern", "1 x 1 3/4 in"),
        ("rail", "4 1/2 x 1/4 in"),
    ] {
        assert_eq!(size(&design, name), wanted, "{name}");
    }
    let lantern = design.piece_ids().nth(3).unwrap();
    assert_eq!((design.per_card(lantern), design.piece(lantern).upright), (3, Some(true)));
    let papers: Vec<Option<PaperId>> = design.version_ids().map(|version| design.paper_of(lantern, version)).collect();
    assert_eq!(papers, [Some(PaperId(1)), Some(PaperId(0))]);
    let strip = design.papers[0].edge_strip.unwrap();
    assert_eq!((strip.width, strip.edge, strip.beside), (Length::inch(1, 2), Edge::Bottom, true));
    assert_eq!(design.papers[3].weight.as_ref().unwrap().value.written, "110 lb cover");

    let [mat, panel, rail, lantern] = design.layers.as_slice() else { panic!() };
    assert_eq!((mat.onto, mat.unit, mat.across, mat.up), (Onto::Card, None, Along::Centre, Along::Centre));
    assert_eq!((panel.onto, panel.unit), (Onto::Layer(LayerId(0)), Some(LayerId(0))));
    assert!(panel.shows.as_ref().unwrap().all_round);
    assert_eq!(rail.up, Along::FromHigh(Length::inch(3, 4)));
    assert_eq!(rail.trim_flush.unwrap().value, Onto::Layer(LayerId(0)));
    assert_eq!((lantern.onto, lantern.unit), (Onto::Layer(LayerId(1)), Some(LayerId(0))));
    assert_eq!(lantern.up, Along::Before(LayerId(2), Length::zero(Units::Inch)));
    assert_eq!(lantern.arrangement, Arrangement::Row { count: 3, gap: Length::inch(1, 4) });
    assert_eq!(design.notes[0].on, NoteOn::Layer(LayerId(2)));
    assert_eq!(design.notes[1].on, NoteOn::Work(Work::Cutting));
    assert_eq!(design.leftovers[0].paper, Some(PaperId(1)));
    assert_eq!(design.supplies[0].value, "#10 envelopes");
}

#[test]
fn lantern_row_in_millimetres() {
    let design = design(sound::LANTERN_ROW, Units::Metric);
    // Common practice, no source: 3 mm shows on every edge of an A6 card, 99 x 142 then 93 x 136 mm.
    for (name, wanted) in [
        ("base", "210 x 148 mm"),
        ("mat", "99 x 142 mm"),
        ("panel", "93 x 136 mm"),
        ("lantern", "25 x 44 mm"),
        ("rail", "115 x 6 mm"),
    ] {
        assert_eq!(size(&design, name), wanted, "{name}");
    }
    // 12 in paper is planned as 304 mm; letter becomes A4 (ISO 216: 210 x 297 mm), stated or not.
    let sheets: Vec<String> =
        design.papers.iter().flat_map(|paper| &paper.sheets).map(|kind| kind.size.to_string()).collect();
    assert_eq!(sheets, ["304 x 304 mm", "304 x 304 mm", "210 x 297 mm", "210 x 297 mm"]);
    assert_eq!(design.papers[3].sheets[0].named.as_deref(), Some("A4"));
    assert_eq!(design.papers[0].edge_strip.unwrap().width, Length::mm(13));
    assert_eq!(design.workshop.placing_error.to_string(), "1.5 mm");
    assert_eq!(design.layers[3].arrangement, Arrangement::Row { count: 3, gap: Length::mm(6) });
}

#[test]
fn reed_bed_in_millimetres() {
    let design = design(sound::REED_BED, Units::Metric);
    assert_eq!(design.asked, [Units::Metric]);
    // A6 is 105 x 148 mm (ISO 216); a top fold doubles its height.
    assert_eq!(size(&design, "base"), "105 x 296 mm");
    assert_eq!(size(&design, "field"), "97 x 140 mm");
    let [_, reeds, fallen, tiles] = design.layers.as_slice() else { panic!() };
    assert_eq!((reeds.across, reeds.up), (Along::FromLow(Length::mm(10)), Along::FromLow(Length::mm(0))));
    assert_eq!(fallen.across, Along::After(LayerId(1), Length::mm(2)));
    assert_eq!((fallen.quarter_turns, fallen.glue.unwrap().value), (3, Glue::Liquid));
    let grid = Arrangement::Grid { columns: 2, rows: 3, across: Length::mm(2), down: Length::mm(3) };
    assert_eq!((tiles.arrangement, tiles.across), (grid, Along::FromHigh(Length::mm(8))));
    let shown: Vec<Edge> = tiles.shows.as_ref().unwrap().edges.iter().map(|(edge, _)| *edge).collect();
    assert_eq!(shown, [Edge::Right, Edge::Top]);
    let reed = design.piece_ids().nth(2).unwrap();
    assert_eq!(design.per_card(reed), 5);
    let marsh: Vec<(u32, Size)> = design.papers[1].sheets.iter().map(|kind| (kind.count, kind.size)).collect();
    let square = |mm| Size::new(Length::mm(mm), Length::mm(mm));
    assert_eq!(marsh, [(1, square(304)), (2, square(150))]);
    assert_eq!(design.versions.len(), 1);
    assert_eq!(design.versions[0].cards, 6);
}

#[test]
fn garden_gate_in_both_units() {
    for units in [Units::Inch, Units::Metric] {
        let design = design(sound::GARDEN_GATE, units);
        let either = |inch, mm: i64| Length::either(units, inch, Length::mm(mm));
        let card = design.card.as_ref().unwrap();
        // Two flaps of half the width meet in the middle: flat it is twice as wide, scored at a quarter and at
        // three quarters.
        assert_eq!(card.fold, Fold::Gate);
        assert_eq!(size(&design, "base"), if units == Units::Inch { "10 x 5 in" } else { "260 x 130 mm" });
        let (quarter, rest) = (card.size.width.nm() / 2, card.size.width.nm() * 3 / 2);
        let scores = [quarter, rest].map(|at| Score { at, mountain: true });
        assert_eq!(card.fold.scores(card.size), scores);

        let faces: Vec<(&str, Face)> = design.layers.iter().map(|layer| (layer.name.as_str(), layer.face)).collect();
        let middle = Face::Inside(Some(1));
        assert_eq!(
            faces,
            [
                ("left leaf", Face::Front),
                ("latch", Face::Front),
                ("right leaf", Face::Front),
                ("pearl", Face::Front),
                ("field", middle),
                ("shade", middle),
                ("word", middle),
                ("strip", Face::Inside(Some(0))),
                ("cord", Face::Inside(None)),
                ("note", Face::Back),
                ("corner strip", Face::EnvelopeFront),
                ("liner", Face::EnvelopeFlap),
            ]
        );
        // Counted over all sides.
        let counts: Vec<(&str, u32)> =
            design.piece_ids().map(|id| (design.piece(id).name.as_str(), design.per_card(id))).collect();
        let wanted = [
            ("base", 1),
            ("leaf", 2),
            ("latch", 1),
            ("field", 1),
            ("word", 1),
            ("shade", 1),
            ("note", 1),
            ("strip", 2),
            ("liner", 1),
            ("pearl", 1),
            ("cord", 1),
        ];
        assert_eq!(counts, wanted);

        let greeting = |name: &str| {
            let piece = design.pieces.iter().find(|piece| piece.name == name).unwrap();
            piece.greeting.as_ref().map(|greeting| (greeting.how, greeting.words.value.as_str()))
        };
        assert_eq!(greeting("latch"), Some((How::Stamped, "come in")));
        assert_eq!(greeting("word"), Some((How::DieCut, "thank you")));
        assert_eq!(greeting("note"), Some((How::Printed, "made by hand")));
        assert_eq!(greeting("shade"), None);

        // The word shifted over its shade: a sixteenth, or one and a half millimetres, up and to the left.
        let word = &design.layers[6];
        let by = if units == Units::Inch { Length::inch(1, 16).nm() } else { 1_500_000 };
        assert_eq!(word.shifted, (-by, by));
        assert_eq!(
            (word.across, word.up),
            (Along::With(LayerId(5), Part::Middle), Along::With(LayerId(5), Part::Middle))
        );

        let bought = |name: &str| design.pieces.iter().find(|piece| piece.name == name).unwrap();
        let pearl = PieceKind::Decoration { roll: None, thick: Some(either(Length::inch(1, 16), 2)) };
        let cord = PieceKind::Decoration { roll: Some(either(Length::inch(18, 1), 450)), thick: None };
        assert_eq!((bought("pearl").kind, bought("pearl").from), (pearl, From::Bought));
        assert_eq!((bought("cord").kind, bought("cord").from), (cord, From::Bought));
        assert_eq!(design.layers[3].glue.unwrap().value, Glue::Dot);

        let envelope = design.envelope.as_ref().unwrap();
        assert_eq!(envelope.flap, Some(either(Length::inch(2, 1), 50)));
        let wanted = if units == Units::Inch { "5 1/2 x 5 1/4 in" } else { "140 x 135 mm" };
        assert_eq!(envelope.size.to_string(), wanted);
        assert_eq!(design.notes[1].on, NoteOn::Work(Work::Posting));
    }
}

/// Every word for a panel names the one that it says, as the opened card lies before the reader.
#[test]
fn panels_by_their_words() {
    for (fold, words) in [
        ("side", vec!["left", "right"]),
        ("top", vec!["upper", "lower"]),
        ("gate", vec!["left", "middle", "right"]),
        ("{accordion: 3}", vec!["1", "2", "3"]),
        ("{accordion: 20}", vec!["1", "20"]),
    ] {
        for word in &words {
            let text = sound::GARDEN_GATE
                .replace("fold: gate", &format!("fold: {fold}"))
                .replace("    panel: left\n", "")
                .replace("panel: middle", &format!("panel: {word}"));
            let design = design(&text, Units::Inch);
            let number = word.parse::<u32>().map_or_else(
                |_| u32::try_from(words.iter().position(|other| other == word).unwrap()).unwrap(),
                |number| number - 1,
            );
            assert_eq!(design.layers[4].face, Face::Inside(Some(number)), "{fold} {word}");
            let card = design.card.as_ref().unwrap();
            let panels = card.fold.panels(card.size);
            // Side by side or one above another they fill the flat base.
            let flat = card.fold.flat(card.size);
            let covered: i128 = panels.iter().map(|panel| panel.area()).sum();
            assert_eq!(covered, i128::from(flat.width.nm()) * i128::from(flat.height.nm()), "{fold}");
            let panel = panels[number as usize];
            match *word {
                "left" => assert_eq!(panel.left, 0),
                "right" => assert_eq!(panel.right, flat.width.nm()),
                "lower" => assert_eq!(panel.bottom, 0),
                "upper" => assert_eq!(panel.top, flat.height.nm()),
                _ => {}
            }
        }
    }
}

/// A flap is as deep as the envelope is high, and no deeper; measures of decorations are more than nothing.
#[test]
fn measures_that_cannot_be() {
    for (old, new, code) in [
        ("flap: 2 in | 50 mm", "flap: 5 5/16 in | 136 mm", "size-not-positive"),
        ("flap: 2 in | 50 mm", "flap: 0 in | 0 mm", "size-not-positive"),
        ("thick: 1/16 in | 2 mm", "thick: 0 in | 0 mm", "size-not-positive"),
        ("length: 18 in | 45 cm", "length: 0 in | 0 cm", "size-not-positive"),
        ("size: 3/16 x 3/16 in | 4 x 4 mm", "size: 0 x 3/16 in | 4 x 4 mm", "size-not-positive"),
    ] {
        assert_eq!(sound::GARDEN_GATE.matches(old).count(), 1, "{old}");
        let source = Source::new("broken.yaml", sound::GARDEN_GATE.replace(old, new));
        let line = source.text()[..source.text().find(new).unwrap()].matches('\n').count() + 1;
        for units in [Units::Inch, Units::Metric] {
            let (findings, _) = found(&source, units);
            let codes: Vec<(usize, &str)> = findings
                .iter()
                .map(|finding| (source.position(finding.primary.span.start).line, finding.code))
                .collect();
            assert_eq!(codes, [(line, code)], "{new}");
        }
    }
    let deepest = sound::GARDEN_GATE.replace("flap: 2 in | 50 mm", "flap: 5 1/4 in | 135 mm");
    let _ = design(&deepest, Units::Inch);
}

/// Common practice, no source: folded to and fro, a card's ridges and valleys take turns, and the fold
/// beside the front is a ridge.
#[test]
fn scores_of_an_accordion() {
    for panels in 3..=20 {
        let text = sound::REED_BED.replace("fold: top", &format!("fold: {{accordion: {panels}}}"));
        let design = design(&text, Units::Metric);
        let card = design.card.as_ref().unwrap();
        // A6 is 105 mm wide (ISO 216).
        let scores = card.fold.scores(card.size);
        assert_eq!(scores.len(), panels - 1);
        for (number, score) in scores.iter().enumerate() {
            assert_eq!(score.at, 105_000_000 * (i64::try_from(number).unwrap() + 1));
        }
        assert!(scores.last().unwrap().mountain);
        assert!(scores.windows(2).all(|pair| pair[0].mountain != pair[1].mountain));
    }
}

#[test]
fn a_file_for_cuts_takes_its_units_from_its_first_length() {
    let source = Source::new("tags.yaml", sound::TAGS);
    let root = read(&source).unwrap();
    assert_eq!(units_asked(&root), []);
    assert_eq!(first_units(&root), Some(Units::Inch));
    let design = design(sound::TAGS, Units::Inch);
    assert_eq!((design.title.value.as_str(), design.month, design.has_front), ("sound", None, false));
    assert_eq!(design.per_card(design.piece_ids().nth(1).unwrap()), 2);
    let metric = sound::TAGS.replace("letter", "21 × 29.7 cm");
    assert_eq!(first_units(&read(&Source::new("tags.yaml", metric)).unwrap()), Some(Units::Metric));
}

/// What a person's editor does is forgiven where it is safe.
#[test]
fn an_editor_is_forgiven() {
    let plain = design(sound::LANTERN_ROW, Units::Inch);
    let odd = format!("\u{feff}{}", sound::LANTERN_ROW)
        .replace('\n', "\r\n")
        .replace("title: Lantern Row", "title: “Lantern Row”")
        .replace("4 1/4 x 5 1/2 in", "4\u{a0}¼ × 5½\u{2009}in")
        .replace("  fold: side", "\u{a0}\u{a0}fold:\u{a0}side")
        .replace("edge strip", "edge\u{a0}strip")
        .replace("place: rail", "place: 'rail'");
    let odd = design(&odd, Units::Inch);
    assert_eq!(odd.title.value, plain.title.value);
    assert_eq!(odd.card.as_ref().unwrap().size, plain.card.as_ref().unwrap().size);
    assert_eq!(odd.papers[0].edge_strip.map(|strip| strip.width), Some(Length::inch(1, 2)));
    let sizes = |design: &Design| design.pieces.iter().map(|piece| piece.size).collect::<Vec<_>>();
    assert_eq!(sizes(&odd), sizes(&plain));
}

#[test]
fn places_are_right_behind_a_mark_and_odd_signs() {
    let text = format!("\u{feff}{}", sound::REED_BED)
        .replace("Reed Bed", "Schilf — “½ Ufer” 葦")
        .replace('\n', "\r\n")
        .replace("glue: foam", "glue:\u{a0}foma");
    let source = Source::new("odd.yaml", text);
    let (findings, _) = found(&source, Units::Metric);
    let [finding] = findings.as_slice() else { panic!("{findings:#?}") };
    assert_eq!(source.slice(finding.primary.span), "foma");
    assert_eq!(source.position(finding.primary.span.start).column, 11);
}
