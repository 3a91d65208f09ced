//! Which envelope takes a card.

use crate::support::run;
use trimwright::design::envelopes::{NAMED_ENVELOPES, envelope_of, named_envelope};
use trimwright::diagnostic::Severity;
use trimwright::length::{Length, Size, Units, parse_size};
use trimwright::paper::envelope::{nearest_card, smallest, takes};

fn size(text: &str) -> Size {
    parse_size(text).unwrap()
}

fn smallest_name(card: &str, thickness: i64, units: Units) -> Option<&'static str> {
    smallest(size(card), thickness, units).map(|named| named.name)
}

/// The largest enclosures of thoughtco.com/envelope-design-styles-4122796 and dimensionsguide.com go into their
/// envelopes with 1/4 in to spare, and into none that is smaller; A2 takes the usual 4 1/4 x 5 1/2 in too
/// (common practice, no source).
#[test]
fn published_enclosures_go_into_their_envelopes() {
    let quarter = Length::inch(1, 4);
    for (name, enclosure) in [
        ("A2", "5 1/2 x 4 1/8 in"),
        ("A6", "6 1/4 x 4 1/2 in"),
        ("A7", "7 x 5 in"),
        ("A8", "7 7/8 x 5 1/4 in"),
        ("A10", "9 1/4 x 5 3/4 in"),
        ("slimline", "8 5/8 x 3 5/8 in"),
    ] {
        let named = named_envelope(&format!("{name} envelope")).unwrap();
        assert!(takes(named.size, size(enclosure), quarter), "{name}");
        assert_eq!(smallest_name(enclosure, 0, Units::Inch), Some(name), "{name}");
    }
    assert_eq!(smallest_name("4 1/4 x 5 1/2 in", 0, Units::Inch), Some("A2"));
}

/// A card folded from the sheet twice as large goes into the C envelope of its number, and A4 in thirds into DL
/// (ISO 216 and ISO 269; ebroadcast.com.au, amb.cat). The sizes are those of iso-216.cluesnet.com.
#[test]
fn iso_cards_go_into_their_envelopes() {
    assert_eq!(smallest_name("105 x 148 mm", 0, Units::Metric), Some("C6"));
    assert_eq!(smallest_name("148 x 210 mm", 0, Units::Metric), Some("C5"));
    assert_eq!(smallest_name("99 x 210 mm", 0, Units::Metric), Some("DL"));
    for (name, wide, high) in
        [("C4", 324, 229), ("C5", 229, 162), ("C6", 162, 114), ("C7/6", 162, 81), ("DL", 220, 110), ("B6", 176, 125)]
    {
        assert_eq!(named_envelope(name).unwrap().size, Size::new(Length::mm(wide), Length::mm(high)), "{name}");
    }
}

#[test]
fn a_thick_card_needs_a_larger_one_and_lies_either_way() {
    // 4 1/4 + 1/4 in is more than 4 3/8 in; A6 is 4 3/4 in high.
    let thin = Length::inch(1, 8).nm();
    assert_eq!(smallest_name("4 1/4 x 5 1/2 in", thin, Units::Inch), Some("A2"));
    assert_eq!(smallest_name("4 1/4 x 5 1/2 in", thin + 1, Units::Inch), Some("A6"));
    assert_eq!(smallest_name("5 1/2 x 4 1/4 in", thin + 1, Units::Inch), Some("A6"));
    assert_eq!(smallest_name("105 x 148 mm", 3_000_001, Units::Metric), Some("C6"));
    // Nothing is smaller than 3 x 3 in by less than 1 1/2 in but A1, which is 2 1/8 in longer.
    assert_eq!(smallest_name("3 x 3 in", 0, Units::Inch), None);
    // A1 is 5 1/8 in long: 1 1/2 in less is 3 5/8 in, and 3 in stay.
    let (nearest, named) = nearest_card(size("3 x 3 in"), 0, Units::Inch).unwrap();
    assert_eq!((nearest, named.name), (size("3 x 3 5/8 in"), "A1"));
    assert!(takes(named.size, nearest, Length::inch(1, 8)));
}

#[test]
fn names_are_found_and_none_is_that_of_a_sheet() {
    assert_eq!(named_envelope("c6").unwrap().name, "C6");
    assert_eq!(named_envelope("C6 Envelope").unwrap().name, "C6");
    assert_eq!(named_envelope("A6"), None, "a sheet");
    assert_eq!(named_envelope("a6 envelope").unwrap().size, size("6 1/2 x 4 3/4 in"));
    assert_eq!(envelope_of(size("4 3/8 x 5 3/4 in")).unwrap().name, "A2");
    for named in NAMED_ENVELOPES {
        assert!(named.size.width >= named.size.height, "{}", named.name);
        assert!(!named.alone || trimwright::design::sizes::named(named.name).is_none(), "{}", named.name);
        assert_eq!(named_envelope(&named.full_name()), Some(named));
    }
}

/// Label and severity of what one rule finds in a card in an envelope.
fn found(units: &str, card: &str, envelope: &str, pearl: &str, code: &str) -> Vec<(Severity, String, String)> {
    let text = format!(
        "title: Kite\nmonth: 2026-04\ncards: 1\nunits: {units}\n\
         card: {{size: {card}, fold: side, from: white}}\n\
         papers:\n  white: {{sheets: 2 of 12 x 24 in, weight: 110 lb cover}}\n\
         pieces:\n  mat: {{size: 2 x 2 in, from: white}}\n\
         decorations:\n  pearl: {{size: 1/4 x 1/4 in, form: round, thick: {pearl}}}\n\
         front:\n  - {{place: mat, centre: both ways, glue: tape}}\n  - {{place: pearl, left: 1/4 in, top: 1/4 in, glue: dot}}\n\
         {envelope}\n"
    );
    let outcome = run(&text);
    let own = outcome.findings.into_iter().filter(|finding| finding.code == code);
    own.map(|f| (f.severity, f.primary.text, f.help.unwrap_or_default())).collect()
}

#[test]
fn a_stated_envelope_is_checked() {
    let small = |card: &str, envelope: &str, pearl: &str| {
        found("inch", card, &format!("envelope: {{size: {envelope}}}"), pearl, "envelope-too-small")
    };
    let card = "4 1/4 x 5 1/2 in";
    assert_eq!(small(card, "A2 envelope", "1/64 in"), []);
    assert_eq!(small(card, "4 3/8 x 5 5/8 in", "1/64 in"), []);
    assert_eq!(
        small(card, "4 5/16 x 5 3/4 in", "1/64 in"),
        [(
            Severity::Error,
            "1/16 in larger than the card, where 1/8 in is the least".to_owned(),
            "take an envelope of 5 5/8 x 4 3/8 in or larger, such as `A2 envelope`".to_owned()
        )]
    );
    assert_eq!(small(card, "5 1/4 x 4 1/4 in", "1/64 in")[0].1, "1/4 in smaller than the card");
    // 2 x 0.013 in and a pearl of 1/8 in are 0.151 in, past 1/8 in: 1/4 in is wanted.
    assert_eq!(
        small(card, "A2 envelope", "1/8 in"),
        [(
            Severity::Warning,
            "1/8 in larger than the card, where 1/4 in is the least, since the card is about 0.15 in thick".to_owned(),
            "take an envelope of 5 3/4 x 4 1/2 in or larger, such as `A6 envelope`".to_owned()
        )]
    );
}

#[test]
fn small_and_square_envelopes_are_told() {
    let of = |card: &str, envelope: &str, code: &str| found("inch", card, envelope, "1/64 in", code);
    // DMM 101.1.1, archive of 24 January 2021: 5 x 3 1/2 in is the least that is posted.
    assert_eq!(of("3 x 4 in", "envelope: {size: 5 x 3 1/2 in}", "too-small-to-post"), []);
    assert_eq!(of("3 x 4 in", "envelope: {size: 4 15/16 x 3 1/2 in}", "too-small-to-post").len(), 1);
    assert_eq!(of("3 x 4 in", "envelope: {size: 5 x 3 7/16 in}", "too-small-to-post").len(), 1);
    // DMM 101.1.2a: from 1.3 to 2.5 times as long as high, both inclusive (about.usps.com pub25_ch1_004).
    let ratio = |size: &str| of("3 x 4 in", &format!("envelope: {{size: {size}}}"), "not-a-machine-letter");
    assert_eq!(ratio("6 1/2 x 5 in"), []);
    assert_eq!(ratio("6 7/16 x 5 in")[0].1, "6 7/16 x 5 in: 1.28 times as long as high");
    assert_eq!(ratio("10 x 4 in"), []);
    assert_eq!(ratio("10 1/16 x 4 in")[0].1, "10 1/16 x 4 in: 2.52 times as long as high");
    // 4 3/4 in square goes into a square envelope of 5 in.
    assert_eq!(
        of("4 3/4 x 4 3/4 in", "", "not-a-machine-letter")[0].1,
        "the square 5 envelope is 5 x 5 in: 1.00 times as long as high"
    );
    assert_eq!(of("3 x 3 in", "", "no-named-envelope")[0].0, Severity::Note);
    assert_eq!(of("4 1/4 x 5 1/2 in", "", "no-named-envelope"), []);
}
