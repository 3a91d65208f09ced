//! Every class of certain edit: what was typed, and what is written.

use super::{SOUND, broken, loud};
use trimwright::diagnostic::Certainty;
use trimwright::mend::{Mended, certain};
use trimwright::pipeline;
use trimwright::source::Source;

/// A stretch of the sound design, what was typed in its place, and what is written then.
const CLASSES: &[(&str, &str, &str)] = &[
    // A word of the language with one slip, or two in a long one.
    ("    centre: both ways\n    glue", "    center: both ways\n    glue", "    centre: both ways\n    glue"),
    ("pieces:\n", "peices:\n", "pieces:\n"),
    ("glue: foam", "glue: faom", "glue: foam"),
    ("pattern: one-way", "patern: one-way", "pattern: one-way"),
    ("fold: side", "fold: 'sied'", "fold: 'side'"),
    // A longer name of the author's own.
    ("place: feather", "place: feathr", "place: feather"),
    ("1 x 2 in, from: thistle", "1 x 2 in, from: thisle", "1 x 2 in, from: thistle"),
    // A bare number where every length stands in one unit.
    ("top: 1/2 in", "top: 1/2", "top: 1/2 in"),
    ("size: 1 x 2 in", "size: 1 x 2", "size: 1 x 2 in"),
    ("top: 1/2 in", "top: '1/2'", "top: '1/2 in'"),
    // A misspelt unit, and a comma for a point.
    ("top: 1/2 in", "top: 1/2 inchs", "top: 1/2 in"),
    ("top: 1/2 in", "top: 1/2 ins", "top: 1/2 in"),
    ("top: 1/2 in", "top: 0,5 in", "top: 0.5 in"),
    // Other forms of a month.
    ("month: 2026-05", "month: 2026-5", "month: 2026-05"),
    ("month: 2026-05", "month: May 2026", "month: 2026-05"),
    ("month: 2026-05", "month: 5/2026", "month: 2026-05"),
    // Texts that YAML takes for something else.
    ("title: Wren", "title: Wren: May", "title: \"Wren: May\""),
    ("title: Wren", "title: Wren #10", "title: \"Wren #10\""),
    ("title: Wren", "title: yes", "title: \"yes\""),
    ("title: Wren", "title: @wren", "title: \"@wren\""),
    ("title: Wren", "title: \u{201c}Wren: May\u{201d}", "title: \"Wren: May\""),
    ("title: Wren", "title: &wrens fly", "title: \"&wrens fly\""),
    (
        "{size: card less 1/8 in all round,",
        "{size: card less left 1/8 in, right 1/8 in, top 1/8 in, bottom 1/8 in,",
        "{size: \"card less left 1/8 in, right 1/8 in, top 1/8 in, bottom 1/8 in\",",
    ),
    // A space that is missing.
    ("cards: 4", "cards:4", "cards: 4"),
    // Tabs in front of a line.
    ("  fold: side\n", "\tfold: side\n", "  fold: side\n"),
];

fn mended(source: &Source) -> Mended {
    certain(source, "wren")
}

#[test]
fn each_class_is_written_and_nothing_else() {
    let mut wrong = Vec::new();
    for (sound, typed, written) in CLASSES {
        let source = broken(sound, typed);
        let first = pipeline::settle(&source, "wren", None).findings();
        if loud(&first).is_empty() {
            wrong.push(format!("{typed:?} is no fault"));
            continue;
        }
        let mended = mended(&source);
        if mended.source.text() != SOUND.replace(sound, written) {
            let changes = &mended.changes;
            wrong.push(format!("{typed:?} became {changes:?}\n{first:#?}"));
            continue;
        }
        // The design is sound then, and nothing is left to write.
        let after = pipeline::run(&mended.source, "wren").findings;
        if !loud(&after).is_empty() || !self::mended(&mended.source).changes.is_empty() {
            wrong.push(format!("{typed:?} is left with {after:#?}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

#[test]
fn every_class_at_once() {
    let mut text = SOUND.to_owned();
    for (sound, typed) in [
        ("pieces:\n", "peices:\n"),
        ("glue: foam", "glue: faom"),
        ("top: 1/2 in", "top: 1/2"),
        ("month: 2026-05", "month: May 2026"),
        ("title: Wren", "title: yes"),
        ("cards: 4", "cards:4"),
        ("place: feather", "place: feathr"),
    ] {
        text = text.replacen(sound, typed, 1);
    }
    let mended = mended(&Source::new("wren.yaml", text));
    assert_eq!(mended.source.text(), SOUND.replace("title: Wren", "title: \"yes\""));
    assert_eq!(mended.changes.len(), 7);
    assert_eq!((mended.changes[0].line, mended.changes[0].after.as_str()), (2, "title: \"yes\""));
}

#[test]
fn a_tab_of_four_spaces_is_told_by_its_neighbours() {
    let source = broken("    glue: tape\n    first:", "\tglue: tape\n    first:");
    assert_eq!(mended(&source).source.text(), SOUND);
    // All in tabs reads alike with any width.
    let tabs: String = SOUND
        .lines()
        .map(|line| {
            let spaces = line.len() - line.trim_start().len();
            format!("{}{}\n", "\t".repeat(spaces / 2), line.trim_start())
        })
        .collect();
    let mended = mended(&Source::new("wren.yaml", tabs));
    assert_eq!(mended.source.text(), SOUND);
}

#[test]
fn a_pair_leaves_one_system() {
    let both = SOUND.replace("units: inch", "units: inch and metric");
    let twins = [
        ("4 1/4 x 5 1/2 in", "4 1/4 x 5 1/2 in | 105 x 148 mm"),
        ("card less 1/8 in", "card less 1/8 in | 3 mm"),
        ("mat less 1/8 in", "mat less 1/8 in | 3 mm"),
        ("1 x 2 in", "1 x 2 in | 25 x 50 mm"),
        ("top: 1/2 in", "top: 1/2 in | 12 mm"),
        ("gap: 1/2 in", "gap: 1/2 in | 13 mm"),
    ];
    let sound = twins.iter().fold(both, |text, (one, two)| text.replace(one, two));
    assert!(!pipeline::run(&Source::new("wren.yaml", sound.clone()), "wren").has_errors());
    for (from, to) in [("top: 1/2 in | 12 mm", "top: 1/2 | 12 mm"), ("top: 1/2 in | 12 mm", "top: 1/2 in | 12")] {
        let source = Source::new("wren.yaml", sound.replace(from, to));
        assert_eq!(mended(&source).source.text(), sound, "{to}");
    }
    // Alone, a bare number may be of either.
    let source = Source::new("wren.yaml", sound.replace("top: 1/2 in | 12 mm", "top: 1/2"));
    assert!(mended(&source).changes.is_empty());
}

/// What may have been meant otherwise is shown at most, and never written.
#[test]
fn what_is_not_certain_is_not_written() {
    for (sound, typed) in [
        // Three letters, another number, another first letter, three digits behind a comma.
        ("place: mat", "place: mta"),
        ("place: feather", "place: feather 2"),
        ("1 x 2 in, from: thistle", "1 x 2 in, from: bristle"),
        ("top: 1/2 in", "top: 1,000 in"),
        // No unit of its own, and none that is near enough.
        ("top: 1/2 in", "top: 1/2 nm"),
        ("top: 1/2 in", "top: half an inch"),
        // A remark may follow.
        ("title: Wren", "title: Wren #draft"),
        ("month: 2026-05", "month: 2026-05-01"),
        // Two systems are in use.
        ("top: 1/2 in\n        row: {count: 2, gap: 1/2 in}", "top: 1/2\n        row: {count: 2, gap: 12 mm}"),
    ] {
        let source = broken(sound, typed);
        let found = pipeline::settle(&source, "wren", None).findings();
        assert!(!loud(&found).is_empty(), "{typed:?}");
        assert!(found.iter().all(|finding| finding.certainty == Certainty::Likely), "{typed:?} {found:#?}");
        assert!(mended(&source).changes.is_empty(), "{typed:?}");
    }
}

/// An edit is made only where nothing new is wrong in its place.
#[test]
fn an_edit_that_does_not_hold_is_left_out() {
    // In quotes the number would be no length at all.
    let source = broken("top: 1/2 in", "top: 1/2 in #10");
    assert!(mended(&source).changes.is_empty());
    // Both halves bare: the same unit twice is no pair.
    let source = broken("top: 1/2 in", "top: 1/2 | 12");
    assert!(mended(&source).changes.is_empty());
    // The key stands there already.
    let source = broken("        top: 1/2 in\n", "        top: 1/2 in\n        centr: up and down\n");
    assert!(mended(&source).changes.is_empty());
}

#[test]
fn line_ends_marks_and_remarks_stay() {
    let typed = SOUND.replace("glue: foam", "glue: faom   # soft").replace("top: 1/2 in", "top: 1/2\t# from the edge");
    for (start, end) in [("", "\r\n"), ("\u{feff}", "\n"), ("\u{feff}", "\r\n")] {
        let with = |text: &str| format!("{start}{}", text.replace('\n', end));
        let mended = mended(&Source::new("wren.yaml", with(&typed)));
        let wanted = typed.replace("faom", "foam").replace("top: 1/2\t", "top: 1/2 in\t");
        assert_eq!(mended.source.text(), with(&wanted));
        assert_eq!(mended.changes.len(), 2);
    }
}

#[test]
fn hostile_texts_come_to_an_end() {
    let many: String = (0..3000).map(|n| format!("titel{n}: x\nmonth: 2026-5\ncentr: [yes, #1]\n")).collect();
    let tabs = "\ta:\n".repeat(5000);
    let colons = "a: b: c\n".repeat(2000);
    for text in [many, tabs, colons, "\u{feff}".to_owned(), "a:b".to_owned(), "- a:b\n-c:d".to_owned()] {
        let source = Source::new("wren.yaml", text);
        let mended = mended(&source);
        assert_eq!(mended.source.text().lines().count(), source.text().lines().count());
        let _ = super::checked(&source);
    }
}
