//! How edits are shown: as lines that go out and come in, in words, and as JSON.

use super::{broken, checked};
use trimwright::cli::report;
use trimwright::diagnostic::Edit;
use trimwright::diagnostic::applied;
use trimwright::source::Span;

#[test]
fn the_report_shows_both_lines() {
    let source = broken("glue: foam", "glue: faom");
    let text = report::text(&source, &checked(&source).findings, false);
    assert_eq!(
        text[text.find("error").expect("an error")..],
        *"\
error[bad-word]: `glue` cannot be `faom`
  --> wren.yaml:31:15
31 |         glue: faom
   |               ^^^^ one of `tape`, `liquid`, `foam` or `dot` is wanted
   = help: write `foam`, the nearest of 4 words
31 -         glue: faom
31 +         glue: foam
"
    );
}

#[test]
fn what_is_put_in_is_marked() {
    let source = broken("top: 1/2 in", "top: 1/2");
    let text = report::text(&source, &checked(&source).findings, false);
    assert!(text.contains("29 |         top: 1/2 in\n   |                  ++\n"), "{text}");
}

#[test]
fn plain_sentences_name_what_to_write_once() {
    let source = broken("glue: foam", "glue: faom");
    let text = report::plain(&source, &checked(&source).findings);
    assert!(text.ends_with("Write `foam`, the nearest of 4 words.\n"), "{text}");
    let source = broken("title: Wren", "title: \u{201c}Wren: May\u{201d}");
    let text = report::plain(&source, &checked(&source).findings);
    assert_eq!(text.matches("Wren: May").count(), 1, "{text}");
    // Where the help says it in other words, what to write is said too.
    let source = broken("count: 2, gap: 1/2 in", "count: 3, gap: 1/2 in");
    let text = report::plain(&source, &checked(&source).findings);
    assert!(text.contains("Make the gap 3/8 in or less."), "{text}");
}

#[test]
fn json_holds_bytes_and_places() {
    let source = broken("top: 1/2 in", "top: 1/2  # \u{e9}");
    let findings = checked(&source).findings;
    let json = report::json(&[(source.clone(), findings)]);
    let edits = json["findings"][0]["edits"].as_array().expect("edits");
    assert_eq!(edits.len(), 1);
    assert_eq!((&edits[0]["line"], &edits[0]["column"], &edits[0]["certain"]), (&29.into(), &17.into(), &true.into()));
    let number = |key: &str| usize::try_from(edits[0][key].as_u64().expect("a number")).expect("small");
    let edit = Edit::new(Span::new(number("from"), number("to")), edits[0]["with"].as_str().expect("a text"));
    assert!(applied(source.text(), &[edit]).0.contains("top: 1/2 in  # \u{e9}\n"));
}
