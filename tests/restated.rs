//! The other unit system's edition, by rule: sums worked by hand, demos without their twins, laws.

use crate::support::{demo, run, trimwright};
use proptest::prelude::*;
use trimwright::design::restate::{Restate, Role, Towards, twin};
use trimwright::diagnostic::{Finding, Severity};
use trimwright::length::{Length, NM_PER_MM, Size, Units, parse_length, parse_size};
use trimwright::pipeline::{self, Outcome};
use trimwright::readback::read_back;

const INCH: Towards = Towards::usual(Units::Inch);
const METRIC: Towards = Towards::usual(Units::Metric);

fn length(text: &str) -> Length {
    parse_length(text).unwrap()
}

fn size(text: &str) -> Size {
    parse_size(text).unwrap()
}

/// 1 in is 25.4 mm, so 1/8 in is 3.175 mm, 1/16 in 1.5875, 1/4 in 6.35, 3/4 in 19.05, 4 1/4 in 107.95,
/// 5 1/2 in 139.7, 12 1/2 in 317.5; 3 mm is 1.89 and 105 mm 66.14 sixteenths of an inch. What may not
/// grow is rounded down and what may not shrink up, never past the limit, and a tie goes to the even
/// one: ASME A112.18.1-2018/CSA B125.1-18 Annex A.2. 1/32 in is 0.79 mm and 1/16 in 1.59 mm: 1 and 1.5.
#[test]
fn lengths_worked_by_hand() {
    for (stated, role, towards, wanted) in [
        ("1/8 in", Role::Border, METRIC, "3 mm"),
        ("1/16 in", Role::Border, METRIC, "2 mm"),
        ("1/64 in", Role::Border, METRIC, "1 mm"),
        ("1/4 in", Role::Gap, METRIC, "6 mm"),
        ("3/4 in", Role::Border, METRIC, "19 mm"),
        ("2 1/2 in", Role::Border, METRIC, "64 mm"),
        ("7 1/2 in", Role::Border, METRIC, "190 mm"),
        ("3 mm", Role::Border, INCH, "1/8 in"),
        ("4 mm", Role::Border, INCH, "3/16 in"),
        ("0.2 mm", Role::Gap, INCH, "1/16 in"),
        ("4 1/4 in", Role::Outright, METRIC, "107 mm"),
        ("5 1/2 in", Role::Outright, METRIC, "139 mm"),
        ("105 mm", Role::Outright, INCH, "4 1/8 in"),
        ("4 1/4 in", Role::Opening, METRIC, "108 mm"),
        ("5 in", Role::Opening, METRIC, "127 mm"),
        ("1/2 in", Role::Strip, METRIC, "13 mm"),
        ("13 mm", Role::Strip, INCH, "9/16 in"),
        ("1/32 in", Role::Error, METRIC, "1 mm"),
        ("1/16 in", Role::Error, METRIC, "1.5 mm"),
        ("1 mm", Role::Error, INCH, "1/32 in"),
        ("1.5 mm", Role::Error, INCH, "1/16 in"),
        ("12 in", Role::Reach, METRIC, "305 mm"),
        ("305 mm", Role::Reach, INCH, "12 in"),
    ] {
        assert_eq!(twin(length(stated), role, towards), length(wanted), "{stated} as {role:?}");
    }
    for (units, towards) in [(Units::Inch, METRIC), (Units::Metric, INCH)] {
        assert!(twin(Length::zero(units), Role::Gap, towards).is_zero());
    }
}

/// NIST SP 811 B.7.2 rounds 36 ft x 0.3048 = 10.9728 m to 11.0 m, and NIST LC 1137 36 in to 91 cm and
/// 40.1 in to 101.9 cm: so does the nearest step of a ruler of 10 cm, 1 cm and 1 mm.
#[test]
fn published_conversions() {
    let rulers = [("432 in", 100, "11000 mm"), ("36 in", 10, "910 mm"), ("40.1 in", 1, "1019 mm")];
    for (stated, step, wanted) in rulers {
        let towards = Towards { step: Length::mm(step), ..METRIC };
        assert_eq!(twin(length(stated), Role::Border, towards), length(wanted), "{stated}");
    }
}

/// A4 and A6: ISO 216; C6: ISO 269; the rest is common practice, no source.
#[test]
fn sizes_of_the_trade() {
    for (inch, metric, role) in [
        ("8 1/2 x 11 in", "210 x 297 mm", Role::Sheet),
        ("11 x 8 1/2 in", "297 x 210 mm", Role::Sheet),
        ("12 x 12 in", "304 x 304 mm", Role::Sheet),
        ("6 x 6 in", "152 x 152 mm", Role::Sheet),
        ("4 1/4 x 5 1/2 in", "105 x 148 mm", Role::Card),
        ("5 1/2 x 4 1/4 in", "148 x 105 mm", Role::Card),
        ("5 3/4 x 4 3/8 in", "162 x 114 mm", Role::Envelope),
    ] {
        assert_eq!(size(inch).restated(role, METRIC).0, size(metric), "{inch}");
        assert_eq!(size(metric).restated(role, INCH).0, size(inch), "{metric}");
    }
    assert_eq!(size("305 x 305 mm").restated(Role::Sheet, INCH).0, size("12 x 12 in"));
    // No trade size: 9 in is 228.6 mm; 5 x 7 in is 127 x 177.8 mm; 5 1/4 x 7 1/4 in is 133.35 x 184.15 mm.
    assert_eq!(size("9 x 12 in").restated(Role::Sheet, METRIC), (size("228 x 304 mm"), 800_000));
    assert_eq!(size("5 x 7 in").restated(Role::Card, METRIC).0, size("127 x 177 mm"));
    assert_eq!(size("5 1/4 x 7 1/4 in").restated(Role::Envelope, METRIC).0, size("134 x 185 mm"));
}

#[test]
fn a_side_as_long_as_the_card_follows_it() {
    let towards = Towards { card: Some((size("4 1/4 x 5 1/2 in"), size("105 x 148 mm"))), ..METRIC };
    assert_eq!(size("4 1/4 x 1/2 in").restated(Role::Outright, towards), (size("105 x 12 mm"), 950_000));
    assert_eq!(size("1 x 5 1/2 in").restated(Role::Outright, towards).0, size("25 x 148 mm"));
    assert_eq!(size("5 1/2 x 4 1/4 in").restated(Role::Outright, towards).0, size("139 x 107 mm"));
}

/// A demo's text with only the inch half of every pair.
fn in_inches_only(text: &str) -> String {
    let line = |line: &str| {
        let mut parts = line.split(" | ");
        let first = parts.next().unwrap_or_default().to_owned();
        parts.fold(first, |line, metric| {
            let end = ["mm", "A4"].iter().filter_map(|word| metric.find(word).map(|at| at + 2)).min();
            line + &metric[end.expect("a metric half")..]
        })
    };
    text.lines().map(|one| line(one) + "\n").collect()
}

fn worst(outcome: &Outcome) -> Vec<&Finding> {
    outcome.findings.iter().filter(|finding| finding.severity != Severity::Note).collect()
}

fn told<'f>(outcome: &'f Outcome, code: &str) -> Vec<&'f Finding> {
    outcome.findings.iter().filter(|finding| finding.code == code).collect()
}

/// Eight cards from as many sheets as the paired demo, whose own pairs are the same but for two: it says
/// 20 mm where 3/4 in is 19 mm, and 115 mm where 4 1/2 in, rounded down, is 114.
#[test]
fn a_demo_without_its_twins_is_made_in_millimetres() {
    let text = std::fs::read_to_string(demo("lantern-row")).unwrap();
    let stripped = in_inches_only(&text);
    assert!(!stripped.contains(" mm") && !stripped.contains("A4"), "{stripped}");
    let outcome = run(&stripped);
    assert_eq!(worst(&outcome), Vec::<&Finding>::new());
    assert_eq!(pipeline::referee(&outcome.editions), Ok(()));
    let [inch, metric] = outcome.editions.as_slice() else { panic!("two editions") };
    let paired = run(&text);
    assert_eq!(inch.design.pieces, {
        let mut pieces = paired.editions[0].design.pieces.clone();
        for (piece, own) in pieces.iter_mut().zip(&inch.design.pieces) {
            (piece.span, piece.size_span, piece.shape_span) = (own.span, own.size_span, own.shape_span);
            piece.from_span = own.from_span;
        }
        pieces
    });
    let sizes = |project: &trimwright::project::Project| -> Vec<String> {
        project.design.pieces.iter().map(|piece| format!("{} {}", piece.name, piece.size)).collect()
    };
    let wanted = ["base 210 x 148 mm", "mat 99 x 142 mm", "panel 93 x 136 mm", "lantern 25 x 44 mm"];
    assert_eq!(sizes(metric)[..4], wanted);
    assert_eq!((&*sizes(metric)[4], &*sizes(&paired.editions[1])[4]), ("rail 114 x 6 mm", "rail 115 x 6 mm"));
    assert_eq!(metric.design.workshop, paired.editions[1].design.workshop);
    assert_eq!(metric.plan.sheets_used(), paired.editions[1].plan.sheets_used());
    assert_eq!(metric.plan.missing, vec![]);
    let note = told(&outcome, "restated");
    assert_eq!(note.len(), 1);
    assert_eq!((note[0].severity, note[0].edition), (Severity::Note, Some(Units::Metric)));
    assert!(note[0].primary.text.contains("the card is 105 x 148 mm for 4 1/4 x 5 1/2 in"), "{note:#?}");
    let lines = read_back(metric);
    assert!(lines[1].starts_with("Restated by rule: 1/16 in | 1 mm; 1/32 in | 1 mm; "), "{}", lines[1]);
    assert!(!read_back(inch)[1].contains("Restated"));
}

/// A6 becomes 4 1/4 x 5 1/2 in, A4 letter, 304 mm 12 in; 4 mm borders 3/16 in, so that the cover is
/// 3 7/8 x 5 1/8 in and the ground 3 1/2 x 4 3/4 in.
#[test]
fn a_metric_demo_is_made_in_inches() {
    let text = std::fs::read_to_string(demo("kitchen-garden")).unwrap();
    let outcome = run(&text.replace("units: metric\n", "units: metric and inch\n"));
    let errors: Vec<_> = worst(&outcome).into_iter().filter(|found| found.severity == Severity::Error).collect();
    assert_eq!(errors, Vec::<&Finding>::new());
    assert_eq!(pipeline::referee(&outcome.editions), Ok(()));
    let inch = &outcome.editions[1];
    let design = &inch.design;
    let sizes: Vec<Size> = design.pieces[..3].iter().map(|piece| piece.size).collect();
    assert_eq!(sizes, ["4 1/4 x 11 in", "3 7/8 x 5 1/8 in", "3 1/2 x 4 3/4 in"].map(size));
    let sheets: Vec<Size> = design.papers.iter().map(|paper| paper.sheets[0].size).collect();
    assert_eq!(sheets[0], size("12 x 12 in"));
    assert_eq!(sheets[4], size("8 1/2 x 11 in"));
    assert_eq!(design.workshop.ruler, Length::inch(1, 16));
    assert_eq!(inch.plan.missing, vec![]);
}

const STRIP: &str = "title: Kite\nmonth: 2026-04\ncards: 2\nunits: inch\n\
    card: {size: 5 x 7 in, fold: side, from: white}\n\
    papers:\n  white: {sheets: 4 of letter}\n\
    pieces:\n  mat: {size: card less 1/8 in all round, from: white}\n  \
    bar: {size: 4 3/4 x 1 in, from: white}\n\
    front:\n  - {place: mat, centre: both ways, glue: tape}\n  \
    - {place: bar, onto: mat, centre: across, top: 1 in, shows: 0 in all round, glue: tape}\n";

/// 4 3/4 in is 120.65 mm, rounded down 120; the mat is 127 less twice 3 mm, 121 mm: a claim that holds in
/// inches fails in millimetres. The finding says of which edition and which pair is to be stated.
#[test]
fn a_fault_of_the_restated_edition_offers_the_pair() {
    let text =
        STRIP.replace("shows: 0 in all round", "shows: {left: 0 in}").replace("units: inch", "units: inch and metric");
    let outcome = run(&text);
    let wrong: Vec<&Finding> = outcome
        .findings
        .iter()
        .filter(|found| found.code != "restated" && found.edition == Some(Units::Metric))
        .collect();
    assert!(!wrong.is_empty(), "{:#?}", outcome.findings);
    for finding in wrong {
        let help = finding.help.as_deref().unwrap_or_default();
        assert!(help.contains("state the pair yourself, in place of `"), "{finding:#?}");
    }
    assert!(
        outcome
            .findings
            .iter()
            .filter(|found| found.edition == Some(Units::Inch))
            .all(|found| { !found.help.as_deref().unwrap_or_default().contains("state the pair") })
    );
}

/// What is short in the other edition only is said of it, with the pair: four cards of 4 1/4 x 5 in come
/// from one letter sheet, but 107 x 127 mm twice side by side is 214 mm, and A4 is 210 mm wide.
#[test]
fn counts_of_sheets_stay() {
    let text = "title: Kite\nmonth: 2026-04\ncards: 4\nunits: inch and metric\n\
        card: {size: 4 1/4 x 5 in, fold: none, from: white}\npapers:\n  white: {sheets: 1 of letter}\n\
        pieces:\n  mat: {size: 1 x 1 in, from: white, per card: 1}\n";
    let text = text.replace(", per card: 1", "") + "front:\n  - {place: mat, centre: both ways, glue: tape}\n";
    let outcome = run(&text);
    for project in &outcome.editions {
        assert_eq!(project.design.papers[0].sheets[0].count, 1);
    }
    let short = told(&outcome, "too-few-sheets");
    assert_eq!(short.len(), 1, "{:#?}", outcome.findings);
    assert_eq!(short[0].edition, Some(Units::Metric));
    assert!(short[0].help.as_deref().unwrap().ends_with("in place of `1 of letter | 1 of A4`"), "{short:#?}");
}

#[test]
fn both_editions_may_be_restated_in_part() {
    let text = STRIP.replace("units: inch", "units: inch and metric").replace("less 1/8 in", "less 3 mm");
    let outcome = run(&text);
    let notes = told(&outcome, "restated");
    assert_eq!(notes.iter().map(|note| note.edition).collect::<Vec<_>>(), [Some(Units::Inch), Some(Units::Metric)]);
    assert!(notes[0].message.starts_with("1 length is restated from millimetres"), "{notes:#?}");
}

#[test]
fn a_flag_asks_for_the_other_edition() {
    let folder = tempfile::tempdir().unwrap();
    let text = STRIP.replace(", shows: 0 in all round", "");
    std::fs::write(folder.path().join("kite.yaml"), &text).unwrap();
    let said = |arguments: &[&str]| {
        let output = trimwright(folder.path(), arguments);
        let all = String::from_utf8_lossy(&output.stdout).into_owned() + &String::from_utf8_lossy(&output.stderr);
        (output.status.code(), all)
    };
    let (code, cuts) = said(&["cuts", "kite.yaml", "--units", "metric"]);
    assert!(code == Some(0) && cuts.contains("mm") && cuts.contains("[restated]"), "{cuts}");
    let (code, cuts) = said(&["cuts", "kite.yaml", "--units", "metric", "--most"]);
    assert!(code == Some(0) && cuts.contains("mm"), "{cuts}");
    let (code, table) = said(&["sizes", "kite.yaml", "bar", "--units", "metric", "--steps", "1"]);
    assert!(code == Some(0) && table.contains("120 x 25"), "{table}");
    let (code, read) = said(&["check", "kite.yaml", "--units", "metric"]);
    assert!(code == Some(0) && read.contains("Restated by rule: ") && read.contains("metric edition"), "{read}");
    let (code, read) = said(&["check", "kite.yaml"]);
    assert!(code == Some(0) && !read.contains("metric edition"), "{read}");
    let (code, written) = said(&["publish", "kite.yaml", "--units", "metric"]);
    assert!(code == Some(0) && written.contains("handout-a4-metric.pdf"), "{written}");
    assert!(written.contains("handout-letter-inch.pdf"), "{written}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn restated_lengths_keep_their_laws(
        sixteenths in 1_i64..400,
        tenths in 1_i64..6_000,
        in_inches in any::<bool>(),
    ) {
        let stated = if in_inches { Length::inch(sixteenths, 16) } else { Length::new(tenths * NM_PER_MM / 10, length("1 mm").unit()) };
        let (there, back) = if in_inches { (METRIC, INCH) } else { (INCH, METRIC) };
        let step = there.step;
        let border = twin(stated, Role::Border, there);
        prop_assert!(border.is_on(step) && border.nm() > 0);
        prop_assert!(((border - stated).abs() * 2) <= step || border == step);
        let outright = twin(stated, Role::Outright, there);
        prop_assert!(outright.is_on(step) && outright.nm() > 0);
        prop_assert!(outright <= stated || outright == step);
        prop_assert!(stated - outright < step);
        let strip = twin(stated, Role::Strip, there);
        prop_assert!(strip.is_on(step) && strip >= stated && strip - stated < step);
        // There and back: a size does not grow, and a border of 16ths is itself again.
        if stated >= step {
            prop_assert!(twin(outright, Role::Outright, back) <= stated.max(back.step));
        }
        if in_inches {
            prop_assert_eq!(twin(border, Role::Border, back), stated);
        }
    }

    #[test]
    fn restated_sheets_do_not_grow_but_by_trade(width in 20_i64..400, height in 20_i64..400) {
        let stated = Size::new(Length::mm(width), Length::mm(height));
        let there = stated.restated(Role::Sheet, INCH).0;
        let again = there.restated(Role::Sheet, METRIC).0;
        prop_assert!(again.width <= stated.width && again.height <= stated.height, "{stated} {there} {again}");
    }
}
