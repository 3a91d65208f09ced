//! Findings as text, as plain sentences and as JSON.

use serde_json::Value;
use trimwright::cli::report;
use trimwright::diagnostic::Finding;
use trimwright::length::Units;
use trimwright::source::{Source, Span};

/// The `n`th place (0-based) of a text in a source.
fn at(source: &Source, wanted: &str, n: usize) -> Span {
    let (start, _) = source.text().match_indices(wanted).nth(n).expect("the text is there");
    Span::new(start, start + wanted.len())
}

fn kite(line_end: &str) -> Source {
    let lines = [
        "title: Kite",
        "month: 2026-04",
        "cards: 2",
        "units: inch",
        "",
        "card:",
        "  size: 4 1/4 x 5 1/2 in",
        "  fold: side",
        "  from: white",
        "",
        "pieces:",
        "  # the plain layer behind",
        "  mat:",
        "    size: 4 1/2 x 5 in",
        "    from: slate",
        "",
    ];
    Source::new("designs/kite.yaml", lines.join(line_end))
}

fn too_wide(source: &Source) -> Finding {
    Finding::error(
        "past-the-edge",
        at(source, "4 1/2", 0),
        "the mat reaches past the card",
        "1/4 in wider than the card",
    )
    .also(at(source, "4 1/4", 0), "the card is this wide")
    .help("make it 4 1/8 in or narrower, or say `trim flush: card`")
    .plainly("the mat is 1/4 in wider than the card")
}

const KITE: &str = "\
error[past-the-edge]: the mat reaches past the card
  --> designs/kite.yaml:14:11
 7 |   size: 4 1/4 x 5 1/2 in
   |         ----- the card is this wide
14 |     size: 4 1/2 x 5 in
   |           ^^^^^ 1/4 in wider than the card
   = help: make it 4 1/8 in or narrower, or say `trim flush: card`
";

#[test]
fn a_report_shows_its_places_and_nothing_else() {
    let source = kite("\n");
    assert_eq!(report::text(&source, &[too_wide(&source)], false), KITE);
}

#[test]
fn carriage_returns_change_nothing() {
    let source = kite("\r\n");
    assert_eq!(report::text(&source, &[too_wide(&source)], false), KITE);
    let json = parsed(&source, vec![too_wide(&source)]);
    assert_eq!(json["findings"][0]["line"], 14);
    assert_eq!(json["findings"][0]["column"], 11);
}

#[test]
fn a_line_between_two_places_keeps_its_text() {
    let source = kite("\r\n");
    let finding =
        Finding::error("bad-word", at(&source, "mat:", 0), "a fault", "here").also(at(&source, "slate", 0), "there");
    assert_eq!(
        report::text(&source, &[finding], false),
        "\
error[bad-word]: a fault
  --> designs/kite.yaml:13:3
13 |   mat:
   |   ^^^^ here
14 |     size: 4 1/2 x 5 in
15 |     from: slate
   |           ----- there
"
    );
}

#[test]
fn colour_adds_signs_and_no_words() {
    let source = kite("\n");
    let coloured = report::text(&source, &[too_wide(&source)], true);
    assert!(coloured.contains("\u{1b}["), "{coloured:?}");
    assert_eq!(anstream::adapter::strip_str(&coloured).to_string(), KITE);
}

#[test]
fn findings_are_parted_by_an_empty_line() {
    let source = kite("\n");
    let second = Finding::warning("no-glue", at(&source, "mat", 0), "nothing says how the mat is fixed", "");
    let both = report::text(&source, &[too_wide(&source), second], false);
    let expected = format!(
        "{KITE}\nwarning[no-glue]: nothing says how the mat is fixed\n  --> designs/kite.yaml:13:3\n13 |   mat:\n   |   ^^^\n"
    );
    assert_eq!(both, expected);
    assert_eq!(report::text(&source, &[], false), "");
}

#[test]
fn an_edition_is_named_where_only_one_is_concerned() {
    let source = kite("\n");
    let finding = Finding { edition: Some(Units::Metric), ..too_wide(&source) };
    let text = report::text(&source, std::slice::from_ref(&finding), false);
    assert!(text.starts_with("error[past-the-edge]: in the metric edition the mat reaches past the card\n"), "{text}");
    let plain = report::plain(&source, std::slice::from_ref(&finding));
    assert!(plain.starts_with("Line 14: In the metric edition the mat is 1/4 in wider than the card."), "{plain}");
    let json = parsed(&source, vec![finding]);
    assert_eq!(json["findings"][0]["message"], "in the metric edition the mat reaches past the card");
}

#[test]
fn plain_says_it_in_two_sentences() {
    let source = kite("\n");
    let note = Finding::note("nothing-to-hold", at(&source, "5 in", 0), "the mat is hard to cut", "");
    assert_eq!(
        report::plain(&source, &[too_wide(&source), note]),
        "Line 14: The mat is 1/4 in wider than the card. Make it 4 1/8 in or narrower, or say `trim flush: card`.\n\
         Line 14 (a note): The mat is hard to cut.\n"
    );
}

/// A design with words of several scripts, a wide letter, a joined accent and a tab-free bend.
fn lichter() -> Source {
    Source::new(
        "entwürfe/lichter.yaml",
        "title: \"Lichter – 灯籠\"\ncards: 4\npieces:\n  größe ½: {size: 4¼ × 5½ in, from: weiß}\n  cafe\u{301}: {size: 1 x 2 in, from: weis}\n",
    )
}

fn unknown(source: &Source) -> Finding {
    Finding::error("unknown-paper", at(source, "weis", 0), "there is no paper `weis`", "no paper has this name")
        .also(at(source, "weiß", 0), "`weiß` is one")
        .help("say `weiß`")
}

#[test]
fn columns_count_characters_of_any_script() {
    let source = lichter();
    let size = Finding::error("bad-size", at(&source, "4¼ × 5½ in", 0), "a size", "here")
        .also(at(&source, "灯籠", 0), "and here");
    let findings = vec![unknown(&source), size];
    assert_eq!(
        report::text(&source, &findings[..1], false),
        "\
error[unknown-paper]: there is no paper `weis`
 --> entwürfe/lichter.yaml:5:33
4 |   größe ½: {size: 4¼ × 5½ in, from: weiß}
  |                                     ---- `weiß` is one
5 |   cafe\u{301}: {size: 1 x 2 in, from: weis}
  |                                ^^^^ no paper has this name
  = help: say `weiß`
"
    );
    let json = parsed(&source, findings.clone());
    for (n, finding) in findings.iter().enumerate() {
        let told = &json["findings"][n];
        assert_eq!(stands_at(&source, told), source.slice(finding.primary.span));
        assert_eq!(told["file"], "entwürfe/lichter.yaml");
        let labels = told["labels"].as_array().unwrap();
        assert_eq!(labels.len(), 1 + finding.others.len());
        assert_eq!(stands_at(&source, &labels[0]), source.slice(finding.primary.span));
        for (label, other) in labels[1..].iter().zip(&finding.others) {
            assert_eq!(stands_at(&source, label), source.slice(other.span));
            assert_eq!(label["message"], other.text.as_str());
        }
    }
    assert_eq!(json["findings"][1]["line"], 4);
    assert_eq!(json["findings"][1]["column"], 19);
    assert_eq!(json["findings"][1]["end_column"], 29);
}

/// What stands at a place of the JSON, by a count of lines and characters that shares nothing with
/// the program: walk the text letter by letter.
pub(super) fn stands_at(source: &Source, place: &Value) -> String {
    let number = |key: &str| place[key].as_u64().unwrap();
    let (mut line, mut column) = (1, 1);
    let mut found = String::new();
    for letter in source.text().chars() {
        let here = (line, column);
        if here >= (number("line"), number("column")) && here < (number("end_line"), number("end_column")) {
            found.push(letter);
        }
        if letter == '\n' {
            line += 1;
            column = 1;
        } else {
            column += 1;
        }
    }
    found
}

/// The JSON of one file, through text and back, so that it is what another program reads.
fn parsed(source: &Source, findings: Vec<Finding>) -> Value {
    let text = serde_json::to_string_pretty(&report::json(&[(source.clone(), findings)])).unwrap();
    serde_json::from_str(&text).unwrap()
}

#[test]
fn json_keeps_its_shape() {
    let kite = kite("\n");
    let finding = too_wide(&kite);
    let other = lichter();
    let files = vec![(kite.clone(), vec![finding]), (other.clone(), vec![unknown(&other)])];
    let json = report::json(&files);
    assert_eq!(json["version"], 0);
    let findings = json["findings"].as_array().unwrap();
    assert_eq!(findings.len(), 2);
    assert_eq!(findings[1]["file"], "entwürfe/lichter.yaml");
    let keys: Vec<&str> = findings[0].as_object().unwrap().keys().map(String::as_str).collect();
    let mut wanted = [
        "code",
        "severity",
        "message",
        "file",
        "line",
        "column",
        "end_line",
        "end_column",
        "labels",
        "help",
        "edits",
        "allowed",
    ];
    wanted.sort_unstable();
    let mut sorted = keys.clone();
    sorted.sort_unstable();
    assert_eq!(sorted, wanted);
    assert_eq!(
        findings[0],
        serde_json::json!({
            "code": "past-the-edge",
            "severity": "error",
            "message": "the mat reaches past the card",
            "file": "designs/kite.yaml",
            "line": 14, "column": 11, "end_line": 14, "end_column": 16,
            "labels": [
                {"message": "1/4 in wider than the card", "line": 14, "column": 11, "end_line": 14, "end_column": 16},
                {"message": "the card is this wide", "line": 7, "column": 9, "end_line": 7, "end_column": 14},
            ],
            "help": "make it 4 1/8 in or narrower, or say `trim flush: card`",
            "edits": [],
            "allowed": null,
        })
    );
    assert_eq!(report::json(&[]), serde_json::json!({"version": 0, "findings": []}));
}

#[test]
fn a_place_over_several_lines_and_one_at_the_end() {
    let source = Source::new("a.yaml", "pieces:\n  mat:\n    from: x\n");
    let block = Finding::error("missing-key", at(&source, "mat:\n    from: x", 0), "`size` is missing", "no size");
    let end = source.text().len();
    let last = Finding::error("missing-key", Span::new(end, end), "`front` is missing", "the file ends here");
    let beyond =
        Finding::error("missing-key", Span::new(end + 40, end + 90), "`front` is missing", "the file ends here");
    let text = report::text(&source, &[block.clone(), last.clone(), beyond], false);
    assert_eq!(
        text,
        "\
error[missing-key]: `size` is missing
 --> a.yaml:2:3
2 |   mat:
  |   ^^^^ no size

error[missing-key]: `front` is missing
 --> a.yaml:4:1
4 |
  | ^ the file ends here

error[missing-key]: `front` is missing
 --> a.yaml:4:1
4 |
  | ^ the file ends here
"
    );
    let json = parsed(&source, vec![block, last]);
    assert_eq!(stands_at(&source, &json["findings"][0]), "mat:\n    from: x");
    assert_eq!(json["findings"][1]["line"], 4);
    assert_eq!(json["findings"][1]["column"], 1);
}

#[test]
fn text_from_a_design_cannot_steer_a_terminal() {
    let source = Source::new("a\u{1b}[2J.yaml", "title: \"\u{1b}[31mred\u{202e}\"\n");
    let finding = Finding::error("bad-word", Span::new(7, 20), "`\u{1b}[31mred\u{7}` is no word", "\u{202e}what\nnow")
        .help("say `\u{1b}]0;x\u{7}`\r\nnow");
    for text in [
        report::text(&source, std::slice::from_ref(&finding), false),
        report::plain(&source, std::slice::from_ref(&finding)),
    ] {
        assert!(!text.contains(['\u{1b}', '\u{7}', '\u{202e}', '\r']), "{text:?}");
    }
    // In JSON the signs are kept, escaped by the writer.
    let json = serde_json::to_string(&report::json(&[(source, vec![finding])])).unwrap();
    assert!(!json.contains('\u{1b}'), "{json:?}");
}

#[test]
fn thousands_of_findings_are_counted_and_not_all_shown() {
    let text = "a: b\n".repeat(20_000);
    let source = Source::new("a.yaml", text);
    let findings: Vec<Finding> = (0..20_000)
        .map(|n| {
            Finding::error("repeated-key", Span::new(n * 5, n * 5 + 1), "again", "here").also(Span::new(0, 1), "first")
        })
        .collect();
    let shown = report::text(&source, &findings, false);
    assert!(shown.ends_with("\nand 19500 more, not shown\n"), "the rest is counted");
    assert_eq!(shown.matches("error[repeated-key]").count(), 500);
}

#[test]
fn a_very_long_line_stays_readable() {
    let text = format!("about: {}\ntitle: x\n", "long ".repeat(200_000));
    let source = Source::new("a.yaml", text);
    let findings: Vec<Finding> =
        (0..50).map(|n| Finding::error("bad-word", at(&source, "long", n * 1000), "no word", "here")).collect();
    let shown = report::text(&source, &findings, false);
    assert!(shown.lines().all(|line| line.chars().count() < 400), "lines are cut");
    assert!(shown.contains("  --> a.yaml:1:35008\n") || shown.contains(" --> a.yaml:1:35008\n"), "columns are not");
    assert_eq!(shown.matches("^^^^ here").count(), 50);
}
