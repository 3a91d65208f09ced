//! Folds along and across the fibres. Letter cardstock is usually grain long: a base of 8 1/2 x 5 1/2 in folds along
//! them, one of 4 1/4 x 11 in across (common practice, no source; "fold parallel to the grain":
//! expertsinfinishing.com/folding4.html).

use crate::support::run;
use trimwright::diagnostic::Severity;

fn found(fold: &str, sheets: &str, said: &str) -> Vec<(Severity, String)> {
    let text = format!(
        "title: Kite\nmonth: 2026-04\ncards: 2\nunits: inch\n\
         card: {{size: 4 1/4 x 5 1/2 in, fold: {fold}, from: white}}\n\
         papers:\n  white: {{sheets: {sheets}{said}}}\n  slate: {{sheets: 1 of letter}}\n\
         pieces:\n  mat: {{size: 4 x 5 1/4 in, from: slate}}\n\
         front:\n  - {{place: mat, centre: both ways, glue: tape}}\n"
    );
    let outcome = run(&text);
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    let own = outcome.findings.into_iter().filter(|finding| finding.code == "fold-across-the-grain");
    own.map(|finding| (finding.severity, finding.primary.text)).collect()
}

#[test]
fn a_side_fold_runs_with_the_long_grain_of_letter_and_a_top_fold_across_it() {
    let cover = ", weight: 110 lb cover";
    let stated = |grain: &str| format!("{cover}, grain: {grain}");
    assert_eq!(found("side", "1 of letter", &stated("long")), []);
    let across = (Severity::Warning, "2 bases fold across the fibres".to_owned());
    assert_eq!(found("top", "1 of letter", &stated("long")), std::slice::from_ref(&across));
    assert_eq!(found("side", "1 of letter", &stated("short")), [across]);
    assert_eq!(found("top", "1 of letter", &stated("short")), []);
    // Not stated: what is usual of letter, of what is known to be cardstock, is a note.
    let usual = "2 bases fold across the fibres, if the sheets are grain long as letter usually is".to_owned();
    assert_eq!(found("top", "1 of letter", cover), [(Severity::Note, usual)]);
    assert_eq!(found("top", "1 of letter", ""), []);
    // Light paper folds well either way; nothing is known of a square sheet or of one of another size.
    assert_eq!(found("top", "1 of letter", ", weight: 24 lb bond, grain: long"), []);
    assert_eq!(found("top", "2 of 12 x 12 in", &stated("long")), []);
    assert_eq!(found("top", "2 of 9 x 12 in", cover), []);
    assert_eq!(found("none", "1 of letter", &stated("short")), []);
}
