//! What the posts make of envelopes, against their published limits; each limit has its document in
//! `paper/post_limits.rs`.

use crate::support::sound;
use trimwright::design::envelopes::named_envelope;
use trimwright::length::Size;
use trimwright::paper::envelope::sides;
use trimwright::paper::post::{Posted, Reason, Verdict, judge, verdicts};
use trimwright::paper::post_limits::SERVICES;
use trimwright::readback::read_back;

fn verdict(posted: Posted, country: &str) -> Verdict {
    verdicts(posted).into_iter().find(|verdict| verdict.service.country == country).unwrap()
}

/// A flat card of 1 mm and 15 g in an envelope.
fn flat(size: Size) -> Posted {
    let (long, short) = sides(size);
    Posted { long, short, thick: 1_000_000, weight: 15_000, is_uneven: false }
}

/// Worked by hand from the sizes and the limits of the documents: DMM 101 (archive of 24 January 2021), 1.1 and
/// 1.2a; the regulator's page on large letters (United Kingdom); zeit-heute.de of 12 February 2025 and helpster.de
/// (Germany); size requirements for letters (Canada).
#[test]
fn the_whole_table_of_worked_verdicts() {
    // Envelope; a letter in the United States, by machine; a letter in the United Kingdom; a standard letter in
    // Germany and in Canada.
    let table = [
        ("A1 envelope", true, true, true, false, false),
        ("A2 envelope", true, true, true, false, true),
        ("A6 envelope", true, true, true, false, true),
        ("A7 envelope", true, true, true, false, true),
        ("A9 envelope", true, true, true, false, true),
        ("A10 envelope", true, true, false, false, true),
        ("C6", true, true, true, true, true),
        ("DL", true, true, true, true, true),
        ("C5", false, false, true, false, false),
        ("square 6 envelope", true, false, true, false, true),
    ];
    for (name, letter, machine, kingdom, germany, canada) in table {
        let posted = flat(named_envelope(name).unwrap().size);
        let first = |country: &str| {
            let verdict = verdict(posted, country);
            verdict.class == verdict.service.classes.first().copied()
        };
        let states = verdict(posted, "United States");
        assert_eq!(states.class.is_some(), letter, "{name}, United States");
        assert_eq!(states.class.is_some() && states.by_hand.is_empty(), machine, "{name}, by machine");
        assert_eq!(first("United Kingdom"), kingdom, "{name}, United Kingdom");
        assert_eq!(first("Germany"), germany, "{name}, Germany");
        assert_eq!(first("Canada"), canada, "{name}, Canada");
    }
}

#[test]
fn the_reason_is_the_one_of_the_table() {
    let of = |name: &str, country: &str| verdict(flat(named_envelope(name).unwrap().size), country);
    let mm = |mm: i64| mm * 1_000_000;
    // 5 1/8 in is 130.175 mm, under 140 mm.
    assert_eq!(of("A1 envelope", "Germany").why, [Reason::TooShort(130_175_000, mm(140))]);
    assert_eq!(of("A1 envelope", "Germany").class.unwrap().name, "compact letter");
    assert_eq!(of("A1 envelope", "Canada").why, [Reason::TooShort(130_175_000, mm(140))]);
    assert!(of("A1 envelope", "Canada").refused, "Canada posts nothing smaller");
    assert_eq!(of("A2 envelope", "Germany").why, [Reason::TooSquare((14, 10))]);
    assert_eq!(of("A2 envelope", "Germany").class.unwrap().name, "large letter");
    assert_eq!(of("A7 envelope", "Germany").why[0], Reason::TooHigh(133_350_000, mm(125)));
    assert_eq!(of("A10 envelope", "United Kingdom").why, [Reason::TooLong(241_300_000, mm(240))]);
    // 6 1/8 in is 155.575 mm.
    assert_eq!(of("C5", "United States").why, [Reason::TooHigh(mm(162), 155_575_000)]);
    assert!(!of("C5", "United States").refused);
    assert_eq!(of("square 6 envelope", "United States").by_hand, [Reason::TooSquare((13, 10))]);
    assert_eq!(of("C5", "Canada").why, [Reason::TooHigh(mm(162), mm(156))]);
}

#[test]
fn limits_themselves_are_allowed_and_a_hair_more_is_not() {
    let a2 = flat(named_envelope("A2 envelope").unwrap().size);
    let states = |posted| verdict(posted, "United States");
    // 1/4 in thick; 3.5 oz of 28.349 523 125 g are 99.223 g.
    assert!(states(Posted { thick: 6_350_000, ..a2 }).why.is_empty());
    assert_eq!(states(Posted { thick: 6_350_001, ..a2 }).why, [Reason::TooThick(6_350_001, 6_350_000)]);
    assert!(states(Posted { weight: 99_223, ..a2 }).why.is_empty());
    assert_eq!(states(Posted { weight: 99_224, ..a2 }).why, [Reason::TooHeavy(99_224, 99_223)]);
    // 0.007 in is posted, 0.009 in where it is over 4 1/4 in high, as this one is.
    assert_eq!(states(Posted { thick: 177_800, ..a2 }).by_hand, [Reason::TooThin(177_800, 228_600)]);
    assert!(states(Posted { thick: 177_799, ..a2 }).refused);
    assert_eq!(states(Posted { is_uneven: true, ..a2 }).by_hand, [Reason::Uneven]);
    // 5 mm is a letter in the other countries.
    let c6 = flat(named_envelope("C6").unwrap().size);
    for service in SERVICES.into_iter().skip(1) {
        assert!(judge(service, Posted { thick: 5_000_000, ..c6 }).why.is_empty(), "{}", service.country);
        let over = judge(service, Posted { thick: 5_000_001, ..c6 });
        assert_eq!(over.why, [Reason::TooThick(5_000_001, 5_000_000)], "{}", service.country);
        assert_eq!(over.class, Some(service.classes[1]), "{}", service.country);
    }
    // Germany: 20 g standard, 50 g compact; Canada: 50 g.
    assert_eq!(verdict(Posted { weight: 20_001, ..c6 }, "Germany").class.unwrap().name, "compact letter");
    assert_eq!(verdict(Posted { weight: 50_001, ..c6 }, "Germany").class.unwrap().name, "large letter");
    assert_eq!(verdict(Posted { weight: 50_001, ..c6 }, "Canada").class.unwrap().name, "oversize letter");
    assert!(verdict(Posted { is_uneven: true, ..c6 }, "Australia").may_be_rigid);
    assert!(verdict(Posted { weight: 1_000_000, ..c6 }, "Germany").class.is_none());
}

#[test]
fn check_reads_envelope_thickness_weight_and_every_service_back() {
    let text = "title: Kite\nmonth: 2026-04\ncards: 2\nunits: metric\n\
         card: {size: 105 x 148 mm, fold: side, from: white}\n\
         papers:\n  white: {sheets: 1 of A4, weight: 300 gsm, thickness: 0.35 mm, grain: long}\n\
         \x20 slate: {sheets: 1 of A4, weight: 216 gsm, thickness: 0.25 mm}\n\
         pieces:\n  mat: {size: 99 x 142 mm, from: slate}\n  tag: {size: 40 x 40 mm, from: slate}\n\
         front:\n  - {place: mat, centre: both ways, glue: tape}\n  - {place: tag, centre: both ways, glue: foam}\n";
    let lines = read_back(&sound(text));
    // The base is 210 x 148 mm, its fold 148 mm along the sheet's longer side.
    assert!(
        lines.contains(
            &"The base is 300 g/m2 and about 0.35 mm thick: score it; its fold runs with the grain.".to_owned()
        ),
        "{lines:#?}"
    );
    // 2 x 0.35 + 2 x 0.25 + 1.5 mm are 2.7 mm; an envelope of 90 g/m2 adds 2 x 0.121 mm.
    // Base 0.03108 m2 x 300 = 9.324 g; mat 0.014058 x 216 = 3.037; tag 0.0016 x 216 = 0.346; envelope
    // 2 x 0.114 x 0.162 x 1.15 x 90 = 3.823: 16.530 g, 17 g rounded up.
    let at = lines.iter().position(|line| line.starts_with("Envelope: ")).expect("an envelope");
    let told = [
        "Envelope: C6 envelope, 162 x 114 mm, the smallest with a name that takes the card.",
        "In its envelope it is about 2.9 mm thick, with foam of 1.5 mm, and weighs about 17 g, glue, foam and \
         decorations not counted.",
        "  United States: letter, but not by machine: uneven with foam or decorations (DMM 101, archive of 24 January \
         2021).",
        "  Canada: standard letter (size requirements of its post, undated).",
        "  United Kingdom: letter (the regulator's page on large letters, undated).",
        "  Germany: standard letter (a newspaper's table of 12 February 2025).",
        "  Australia: small letter, if it bends; foam and decorations may make it a parcel (its post's page on domestic \
         letters, after 15 April 2024).",
        "  Ask your post office; rules and limits change.",
    ];
    assert_eq!(lines[at..at + told.len()], told);
}
