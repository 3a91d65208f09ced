//! Bombs, slips of the hand and noise: nothing panics, everything ends.

use super::{design, found, sound};
use proptest::prelude::*;
use trimwright::design::nodes::MOST_BYTES;
use trimwright::length::{Length, Units};
use trimwright::source::Source;

/// What bursts takes longer than this on any machine; what is bounded takes seconds on the slowest.
const LONG: std::time::Duration = std::time::Duration::from_secs(120);

/// Texts made to burst a reader end quickly, with one plain finding.
#[test]
fn bombs_are_refused() {
    let mut aliases = String::from("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for step in 1..10 {
        let row = vec![format!("*a{}", step - 1); 10].join(", ");
        aliases.push_str(&format!("a{step}: &a{step} [{row}]\n"));
    }
    let deep_blocks: String = (0..3000).map(|step| format!("{}a:\n", " ".repeat(step))).take(400).collect();
    for (text, code) in [
        (aliases, "too-much"),
        ("[".repeat(200_000), "too-much"),
        ("{a: ".repeat(100_000), "too-much"),
        ("- ".repeat(200_000), "too-much"),
        (deep_blocks, "too-much"),
        ("- a\n".repeat(100_000), "too-much"),
        ("x".repeat(MOST_BYTES + 1), "too-much"),
        ("a: 1\n---\n".repeat(1000), "too-much"),
        ("a\0b: 1\n".to_owned(), "not-yaml"),
        ("title: \u{1b}[31m\n".to_owned(), "not-yaml"),
        (String::new(), "not-a-design"),
        ("# nothing but a comment\n".to_owned(), "not-a-design"),
        ("a text\n".to_owned(), "not-a-design"),
        ("- a\n- b\n".to_owned(), "not-a-design"),
        ("a: &x [*x]\n".to_owned(), "too-much"),
    ] {
        let start: String = text.chars().take(40).collect();
        let begun = std::time::Instant::now();
        let (findings, settled) = found(&Source::new("bomb.yaml", text), Units::Inch);
        assert!(begun.elapsed() < LONG, "{start}");
        assert_eq!(findings.iter().map(|finding| finding.code).collect::<Vec<_>>(), [code], "{start}: {findings:#?}");
        assert!(!settled);
    }
}

#[test]
fn many_names_and_long_chains_end() {
    let mut text = String::from("cards: 1\npapers:\n  kraft: {sheets: 1 of letter}\npieces:\n");
    for piece in 0..2000 {
        let size =
            if piece == 1999 { "90 x 90 in".to_owned() } else { format!("p{} less 1/64 in all round", piece + 1) };
        text.push_str(&format!("  p{piece}: {{size: {size}, from: kraft, per card: 1}}\n"));
    }
    let settled = design(&text, Units::Inch);
    assert_eq!(settled.pieces[0].size.width, Length::inch(90 * 64 - 2 * 1999, 64));
    let round = text.replace("90 x 90 in", "p0 less 1/64 in all round");
    let (findings, _) = found(&Source::new("round.yaml", round), Units::Inch);
    assert_eq!(findings.iter().map(|finding| finding.code).collect::<Vec<_>>(), ["circular-size"]);
}

/// Thousands of misspelt long names: each is a fault, and looking for the nearest stays bounded.
#[test]
fn many_near_names_end() {
    let long = "p".repeat(34);
    let mut text = String::from("cards: 1\npapers:\n");
    for paper in 0..1300 {
        text.push_str(&format!("  {long}{paper:05}: {{sheets: 1 of letter}}\n"));
    }
    text.push_str("pieces:\n");
    for piece in 0..1300 {
        text.push_str(&format!("  q{piece}: {{size: 1 x 1 in, from: {long}{piece:05}x, per card: 1}}\n"));
    }
    let begun = std::time::Instant::now();
    let (findings, settled) = found(&Source::new("names.yaml", text), Units::Inch);
    assert!(begun.elapsed() < LONG, "{:?}", begun.elapsed());
    assert!(!settled);
    assert_eq!(findings.len(), 501);
    assert_eq!((findings[0].code, findings[500].code), ("unknown-paper", "too-much"));
}

/// Lists that no sheet holds are refused whole, and very many names of leftovers end.
#[test]
fn absurd_lists_about_paper_end() {
    let tags =
        |said: &str| sound::TAGS.replace("    sheets: 1 of letter\n", &format!("    sheets: 1 of letter\n{said}"));
    let items = |key: &str, item: &str, count: usize| tags(&format!("    {key}:\n{}", item.repeat(count)));
    let along = |count: usize| {
        let names: Vec<String> = (0..count).map(|n| format!("      p{n}: top\n")).collect();
        let pieces: Vec<String> =
            (0..count).map(|n| format!("  p{n}: {{size: 1 x 1 in, from: kraft, per card: 1}}\n")).collect();
        let text = tags(&format!("    along the edge:\n{}", names.concat()));
        text.replace("pieces:\n", &format!("pieces:\n{}", pieces.concat()))
    };
    for (text, most, count) in [
        (items("cut first", "      - 1/8 in from the top, 1000 times\n", 101), "100", 101),
        (items("also from", "      - 1 of letter\n", 21), "20", 21),
        (along(9), "8", 9),
    ] {
        let (findings, settled) = found(&Source::new("absurd.yaml", text), Units::Inch);
        let [finding] = findings.as_slice() else { panic!("{findings:#?}") };
        assert_eq!((finding.code, settled), ("bad-count", true));
        assert!(finding.message.contains(&count.to_string()), "{finding:#?}");
        assert_eq!(finding.help.as_deref(), Some(format!("keep at most {most}").as_str()));
    }
    assert_eq!(design(&along(8), Units::Inch).papers[0].fixed.edges.len(), 8);
    let row = "      - 1/8 in from the top, 1000 times\n";
    assert_eq!(design(&items("cut first", row, 100), Units::Inch).papers[0].fixed.rows.len(), 100);

    let kept: Vec<String> = (0..3000).map(|n| format!("      leftover {n}: 10000 of 1 x 1 in\n")).collect();
    let begun = std::time::Instant::now();
    let settled = design(&tags(&format!("    keep:\n{}", kept.concat())), Units::Inch);
    assert!(begun.elapsed() < LONG, "{:?}", begun.elapsed());
    assert_eq!((settled.papers.len(), settled.pieces.len()), (3001, 3002));
}

/// One change to a text, as a slip of the hand or a bad copy makes it.
#[derive(Debug, Clone)]
enum Slip {
    DropByte(usize),
    PutSign(usize, char),
    DropLine(usize),
    DoubleLine(usize),
    SwapLines(usize, usize),
    Cut(usize),
    Indent(usize, usize),
}

fn slip() -> impl Strategy<Value = Slip> {
    let signs =
        prop::sample::select(":-#|>&*!%@`\"'{}[],?~\t\n\r \u{a0}\u{feff}½×“”/019xéİ葦".chars().collect::<Vec<_>>());
    prop_oneof![
        any::<usize>().prop_map(Slip::DropByte),
        (any::<usize>(), signs).prop_map(|(at, sign)| Slip::PutSign(at, sign)),
        any::<usize>().prop_map(Slip::DropLine),
        any::<usize>().prop_map(Slip::DoubleLine),
        (any::<usize>(), any::<usize>()).prop_map(|(a, b)| Slip::SwapLines(a, b)),
        any::<usize>().prop_map(Slip::Cut),
        (any::<usize>(), 0..9_usize).prop_map(|(at, spaces)| Slip::Indent(at, spaces)),
    ]
}

fn slipped(text: &str, slip: &Slip) -> String {
    let mut signs: Vec<char> = text.chars().collect();
    let mut rows: Vec<String> = text.lines().map(str::to_owned).collect();
    if signs.is_empty() || rows.is_empty() {
        return text.to_owned();
    }
    let (most, count) = (signs.len(), rows.len());
    match *slip {
        Slip::DropByte(at) => {
            signs.remove(at % most);
        }
        Slip::PutSign(at, sign) => signs[at % most] = sign,
        Slip::Cut(at) => signs.truncate(at % most),
        Slip::DropLine(at) => {
            rows.remove(at % count);
            return rows.join("\n");
        }
        Slip::DoubleLine(at) => {
            let row = rows[at % count].clone();
            rows.insert(at % count, row);
            return rows.join("\n");
        }
        Slip::SwapLines(a, b) => {
            rows.swap(a % count, b % count);
            return rows.join("\n");
        }
        Slip::Indent(at, spaces) => {
            let row = rows[at % count].trim_start().to_owned();
            rows[at % count] = format!("{}{row}", " ".repeat(spaces));
            return rows.join("\n");
        }
    }
    signs.into_iter().collect()
}

proptest! {
    #![proptest_config(crate::support::cases(400))]

    #[test]
    fn no_slip_panics_or_loses_its_place(
        base in prop::sample::select(vec![
            sound::LANTERN_ROW, sound::REED_BED, sound::TAGS, sound::TIDE_LINE, sound::GARDEN_GATE,
        ]),
        slips in prop::collection::vec(slip(), 1..6),
    ) {
        let text = slips.iter().fold(base.to_owned(), |text, slip| slipped(&text, slip));
        let source = Source::new("slip.yaml", text);
        for units in [Units::Inch, Units::Metric] {
            let (findings, settled) = found(&source, units);
            prop_assert!(settled || !findings.is_empty());
            for finding in findings {
                for label in std::iter::once(&finding.primary).chain(&finding.others) {
                    prop_assert!(label.span.start <= label.span.end && label.span.end <= source.text().len());
                    prop_assert!(source.text().is_char_boundary(label.span.start), "{finding:?}");
                    prop_assert!(source.text().is_char_boundary(label.span.end), "{finding:?}");
                }
            }
        }
    }

    #[test]
    fn no_text_at_all_panics(text in any::<String>()) {
        let _ = found(&Source::new("any.yaml", text), Units::Inch);
    }

    #[test]
    fn no_yaml_like_text_panics(text in "[a-c:#|>&*!\"'{}\\[\\], \n\t?-]{0,80}") {
        let _ = found(&Source::new("any.yaml", text), Units::Inch);
    }
}
