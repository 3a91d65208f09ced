//! Weights: grades to grammage, and what is refused.

use crate::support::run;
use trimwright::weight::{Grade, Grammage, WeightFault, parse_weight};

fn grams(pounds: i64, grade: Grade) -> f64 {
    Grammage::pounds(pounds * 1000, grade).mg() as f64 / 1000.0
}

/// Government Paper Specification Standards, volume 11 (1 February 1999): leaves JCP G60, G65, G70 (bond), A55
/// (book), A91 (text), L20 (vellum cover), K10 (index), P20 (tag); gpo.gov/customers/text/vol11/057.htm,
/// 059.htm, 006.htm, 016.htm, 068.htm, 101.htm and webarchive.library.unt.edu paperspecs/vol11/058.htm, 074.txt.
/// The printed grams are rounded to 5, so 1.5 % is allowed.
#[test]
fn the_government_table_agrees() {
    let rows = [
        (Grade::Bond, &[(16, 60.0), (20, 75.0), (24, 90.0)][..]),
        (Grade::Text, &[(40, 60.0), (50, 75.0), (60, 90.0), (70, 105.0), (80, 120.0), (100, 150.0)]),
        (Grade::Cover, &[(50, 135.0), (65, 175.0), (80, 215.0)]),
        (Grade::Index, &[(90, 165.0), (110, 200.0), (140, 255.0), (170, 305.0)]),
        (Grade::Tag, &[(105, 170.0), (150, 245.0), (165, 270.0), (250, 405.0)]),
    ];
    for (grade, rows) in rows {
        for (pounds, printed) in rows {
            let off = (grams(*pounds, grade) - printed).abs() / printed;
            assert!(off <= 0.015, "{pounds} lb {}: {off}", grade.word());
        }
    }
}

/// The factors that printwiki.org/Grammage prints, to the last place printed; tag is printed 1.627, cut off
/// from 1.6275.
#[test]
fn the_published_factors_agree() {
    for (grade, factor) in [(Grade::Bond, 3.760), (Grade::Text, 1.480), (Grade::Cover, 2.704), (Grade::Tag, 1.627)] {
        assert!((grams(1000, grade) / 1000.0 - factor).abs() < 0.001, "{}", grade.word());
    }
    // Its worked examples: 20 lb bond is 75.2 g/m2; 103.6 g/m2 book is 69.93 lb, sold as 70.
    assert_eq!(Grammage::pounds(20_000, Grade::Bond).tenths(), "75.2");
    assert_eq!(Grammage::pounds(69_930, Grade::Text).whole(), 104);
    assert!((grams(70, Grade::Text) - 103.6).abs() < 0.05);
    // apiprintproductions.com: 80 lb text is 118.4 g/m2, 80 lb cover 216.64 by a factor of 2.708.
    assert_eq!(Grammage::pounds(80_000, Grade::Text).tenths(), "118.4");
    assert!((grams(80, Grade::Cover) / 216.64 - 1.0).abs() < 0.002);
}

/// By hand from 453.592 37 g to the pound, 500 sheets and 25.4 mm to the inch: 110 lb of 500 sheets of 20 x 26 in
/// are 49 895.1607 g over 167.741 6 m2.
#[test]
fn usual_weights_come_out_exactly() {
    assert_eq!(Grammage::pounds(110_000, Grade::Cover).mg(), 297_453);
    let usual = [
        (65, Grade::Cover, "175.8"),
        (80, Grade::Cover, "216.3"),
        (100, Grade::Cover, "270.4"),
        (110, Grade::Cover, "297.5"),
        (120, Grade::Cover, "324.5"),
        (130, Grade::Cover, "351.5"),
        (90, Grade::Index, "162.7"),
        (110, Grade::Index, "198.9"),
        (67, Grade::Bristol, "146.9"),
        (100, Grade::Tag, "162.7"),
        (24, Grade::Bond, "90.2"),
        (100, Grade::Text, "148.0"),
    ];
    for (pounds, grade, told) in usual {
        assert_eq!(Grammage::pounds(pounds * 1000, grade).tenths(), told, "{pounds} lb {}", grade.word());
    }
}

#[test]
fn weights_are_read_as_packets_have_them() {
    for (text, mg, grade) in [
        ("80 lb cover", 216_329, Some(Grade::Cover)),
        ("80lb Cover", 216_329, Some(Grade::Cover)),
        ("80-lb. cover stock", 216_329, Some(Grade::Cover)),
        ("80 pounds  cover cardstock", 216_329, Some(Grade::Cover)),
        ("80 lbs book", 118_412, Some(Grade::Text)),
        ("67 lb vellum bristol", 146_918, Some(Grade::Bristol)),
        ("216 gsm", 216_000, None),
        ("216.5gsm", 216_500, None),
        ("216 g/m2", 216_000, None),
        ("216 g/m\u{b2} cover", 216_000, Some(Grade::Cover)),
    ] {
        let weight = parse_weight(text).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
        assert_eq!((weight.grammage.mg(), weight.grade, weight.written.as_str()), (mg, grade, text), "{text}");
    }
    assert_eq!(parse_weight("110 lb"), Err(WeightFault::NoGrade(110_000)));
    assert_eq!(parse_weight("110 lb cardstock"), Err(WeightFault::NoGrade(110_000)));
    assert_eq!(parse_weight("80 lb covre"), Err(WeightFault::UnknownGrade("covre".to_owned())));
    for text in
        ["", "heavy", "80", "lb", "80 in", "80 lbx", "1.2.3 gsm", "80. gsm", "9999999999 gsm", "-80 gsm", "x80 gsm"]
    {
        assert_eq!(parse_weight(text), Err(WeightFault::Unreadable), "{text}");
    }
}

/// A card whose mat is of paper that is said to be `said`.
fn with(said: &str) -> Vec<(String, String, String)> {
    let text = format!(
        "title: Kite\nmonth: 2026-04\ncards: 1\nunits: inch\n\
         card: {{size: 4 1/4 x 5 1/2 in, fold: side, from: white}}\n\
         papers:\n  white: {{sheets: 1 of letter}}\n  slate: {{sheets: 1 of letter, {said}}}\n\
         pieces:\n  mat: {{size: 4 x 5 1/4 in, from: slate}}\n\
         front:\n  - {{place: mat, centre: both ways, glue: tape}}\n"
    );
    let found = run(&text).findings.into_iter();
    found.map(|f| (f.code.to_owned(), f.primary.text, f.help.unwrap_or_default())).collect()
}

#[test]
fn what_is_no_paper_is_refused() {
    let one = |code: &str, label: &str, help: &str| vec![(code.to_owned(), label.to_owned(), help.to_owned())];
    assert_eq!(
        with("weight: 110 lb"),
        one(
            "weight-without-grade",
            "297.5 g/m2 as cover, 198.9 as index: 98.6 apart",
            "say `110 lb cover` or `110 lb index`, as the packet does"
        )
    );
    assert_eq!(
        with("weight: 80 lb"),
        one(
            "weight-without-grade",
            "216.3 g/m2 as cover, 118.4 as text: 97.9 apart",
            "say `80 lb cover` or `80 lb text`, as the packet does"
        )
    );
    assert_eq!(with("weight: 80 lb covre")[0].2, "write `cover`, the nearest of 6 grades");
    assert_eq!(with("weight: thick")[0].0, "bad-weight");
    assert_eq!(with("weight: 30 gsm"), []);
    assert_eq!(with("weight: 29.9 gsm")[0].1, "29.9 g/m2, where 30 g/m2 is the least");
    assert_eq!(with("weight: 1000 gsm"), []);
    assert_eq!(with("weight: 1001 gsm")[0].1, "1001 g/m2, where 1000 g/m2 is the most");
    // A thickness is measured with a calliper: one unit does for both editions.
    assert_eq!(with("thickness: 0.3 mm"), []);
    assert_eq!(with("thickness: 0.012 in | 0.3 mm"), []);
    assert_eq!(with("thickness: 4 mm")[0].1, "4 mm, where 3 mm is the most");
    assert_eq!(with("thickness: 0 in")[0].0, "unlikely-paper");
    assert_eq!(with("grain: left")[0].0, "bad-word");
}
