//! What a design says of double-sided paper, pads, kept leftovers, fixed cuts and other sheets.

use super::{design, sound};
use trimwright::design::model::{
    AlongEdge, Back, Design, FixedRow, From, Paper, PaperId, Pattern, Piece, PieceId, PieceKind, Sheets, Side, Stated,
    TurnedOver,
};
use trimwright::diagnostic::Severity;
use trimwright::geometry::Edge;
use trimwright::length::{Length, Size, Units};
use trimwright::source::Source;

fn paper<'d>(design: &'d Design, name: &str) -> &'d Paper {
    design.papers.iter().find(|paper| paper.name == name).unwrap()
}

fn piece<'d>(design: &'d Design, name: &str) -> &'d Piece {
    design.pieces.iter().find(|piece| piece.name == name).unwrap()
}

/// Sheets as `4 of 6 x 6 in`.
fn told(sheets: &[Sheets]) -> Vec<String> {
    sheets.iter().map(|kind| format!("{} of {}", kind.count, kind.size)).collect()
}

#[test]
fn everything_said_of_paper_settles_in_inches() {
    let design = design(sound::TIDE_LINE, Units::Inch);
    let names: Vec<&str> = design.papers.iter().map(|paper| paper.name.as_str()).collect();
    assert_eq!(names, ["foam", "shore", "white", "tag paper", "strip paper", "slip paper"]);
    let names: Vec<&str> = design.pieces.iter().map(|piece| piece.name.as_str()).collect();
    assert_eq!(names, ["base", "panel", "wave", "shell", "tag paper", "strip paper", "slip paper"]);

    let foam = paper(&design, "foam");
    let back = foam.back.unwrap();
    assert_eq!((foam.pattern, back.pattern), (Pattern::OneWay, Pattern::TwoWay));
    assert_eq!(back.turned_over, TurnedOver::TopToBottom);
    assert!(foam.different.is_some() && foam.fixed.is_empty() && foam.also.is_empty());
    assert_eq!((foam.kept_from, foam.ways), (None, 1));

    let shore = paper(&design, "shore");
    assert_eq!((shore.pattern, shore.back, shore.different, shore.ways), (Pattern::TwoWay, None, None, 2));
    let also: Vec<Vec<String>> = shore.also.iter().map(|also| told(&also.sheets)).collect();
    assert_eq!(also, [vec!["6 of 6 x 6 in"], vec!["1 of 12 x 12 in", "2 of 8 1/2 x 11 in"]]);
    let rows: Vec<(Length, Edge, u32)> =
        shore.fixed.rows.iter().map(|FixedRow { measure, from, times, .. }| (*measure, *from, *times)).collect();
    assert_eq!(rows, [(Length::inch(15, 4), Edge::Top, 2), (Length::inch(1, 1), Edge::Left, 1)]);
    let [AlongEdge { piece: panel, edge, .. }] = shore.fixed.edges.as_slice() else { panic!() };
    assert_eq!((design.piece(*panel).name.as_str(), *edge), ("panel", Edge::Bottom));

    let white = paper(&design, "white");
    assert_eq!((white.different, told(&white.also[0].sheets)), (None, vec!["3 of 8 1/2 x 14 in".to_owned()]));
}

#[test]
fn a_kept_leftover_is_a_piece_and_a_paper() {
    let design = design(sound::TIDE_LINE, Units::Inch);
    let (foam, tag) = (paper(&design, "foam"), paper(&design, "tag paper"));
    assert_eq!((tag.kept_from, told(&tag.sheets)), (Some(PaperId(0)), vec!["1 of 2 1/4 x 5 1/2 in".to_owned()]));
    assert_eq!((tag.pattern, tag.back, tag.different), (foam.pattern, foam.back, foam.different));
    assert!(tag.edge_strip.is_none() && tag.fixed.is_empty() && tag.also.is_empty() && tag.ways == 1);

    let kept = piece(&design, "tag paper");
    assert_eq!(kept.kind, PieceKind::Kept { paper: PaperId(3), count: 1 });
    assert_eq!((kept.from, &kept.stated), (From::Paper(PaperId(0)), &Stated::Outright));
    assert_eq!(kept.size, Size::new(Length::inch(9, 4), Length::inch(11, 2)));
    assert_eq!((kept.per_card, design.per_card(PieceId(4)), kept.side), (None, 0, Side::Front));
    assert_eq!(piece(&design, "strip paper").kind, PieceKind::Kept { paper: PaperId(4), count: 2 });
    assert_eq!(piece(&design, "slip paper").kind, PieceKind::Kept { paper: PaperId(5), count: 3 });

    // Pieces are cut from it by its name.
    assert_eq!(piece(&design, "shell").from, From::Paper(PaperId(3)));
}

#[test]
fn everything_said_of_paper_settles_in_millimetres() {
    let design = design(sound::TIDE_LINE, Units::Metric);
    let sizes: Vec<String> = design.pieces[4..].iter().map(|piece| piece.size.to_string()).collect();
    assert_eq!(sizes, ["57 x 140 mm", "25 x 280 mm", "50 x 75 mm"]);
    // The first count stands for both halves; a second one of its own counts in its edition.
    let counts: Vec<u32> = design.papers[3..].iter().map(|paper| paper.sheets[0].count).collect();
    assert_eq!(counts, [1, 2, 2]);
    let shore = paper(&design, "shore");
    // 12 in is planned as 304 mm, letter becomes A4 (ISO 216: 210 x 297 mm), as for `sheets`.
    let also: Vec<Vec<String>> = shore.also.iter().map(|also| told(&also.sheets)).collect();
    assert_eq!(also, [vec!["6 of 150 x 150 mm"], vec!["1 of 304 x 304 mm", "2 of 210 x 297 mm"]]);
    let rows: Vec<(Length, u32)> = shore.fixed.rows.iter().map(|row| (row.measure, row.times)).collect();
    assert_eq!(rows, [(Length::mm(95), 2), (Length::mm(25), 1)]);
}

#[test]
fn a_version_says_its_side_before_its_pieces_do() {
    let design = design(sound::TIDE_LINE, Units::Inch);
    let id = |name: &str| PieceId(design.pieces.iter().position(|piece| piece.name == name).unwrap());
    let sides = |piece| design.version_ids().map(|version| design.side_of(piece, version)).collect::<Vec<_>>();
    assert_eq!(sides(id("wave")), [Side::Front, Side::Back]);
    // The shell comes from one paper always: no version speaks for it, and its paper has a back.
    assert_eq!(sides(id("shell")), [Side::Back, Side::Back]);
    assert_eq!(sides(id("panel")), [Side::Front, Side::Front]);
}

/// One paper of a file for `cuts`, with what is said of it.
fn kraft(said: &str, units: Units) -> Paper {
    design(&sound::TAGS.replace("letter\n", &format!("12 x 12 in\n{said}")), units).papers.remove(0)
}

#[test]
fn each_word_may_be_written_in_its_ways() {
    let rows = |said: &str, units| -> Vec<(String, Edge, u32)> {
        let rows = kraft(&format!("    cut first:\n{said}"), units).fixed.rows;
        rows.iter().map(|row| (row.measure.to_string(), row.from, row.times)).collect()
    };
    let top = |measure: &str, times| vec![(measure.to_owned(), Edge::Top, times)];
    assert_eq!(rows("      - 3 3/4 in from the top, 3 times\n", Units::Inch), top("3 3/4 in", 3));
    assert_eq!(rows("      - 3 3/4 in from the top, 1 time\n", Units::Inch), top("3 3/4 in", 1));
    assert_eq!(rows("      - 3 3/4\" from the top\n", Units::Inch), top("3 3/4 in", 1));
    assert_eq!(rows("      - 3¾ in FROM top 3 Times\n", Units::Inch), top("3 3/4 in", 3));
    assert_eq!(rows("      - 3 3/4 in | 95 mm from the top, 3 times\n", Units::Metric), top("95 mm", 3));
    assert_eq!(rows("      - 95 mm | 3 3/4 in from the top, 3 times\n", Units::Inch), top("3 3/4 in", 3));
    let two = vec![("3 in".to_owned(), Edge::Left, 2), ("2 in".to_owned(), Edge::Bottom, 1)];
    assert_eq!(rows("      - \"3 in from the left, 2 times\"\n      - 2 in from the bottom\n", Units::Inch), two);

    let over = |word: &str| {
        kraft(&format!("    sides: {{front: any, back: one-way}}\n    turned over: {word}\n"), Units::Inch).back
    };
    assert!(matches!(over("left to right"), Some(Back { turned_over: TurnedOver::LeftToRight, .. })));
    assert!(matches!(over("top to bottom"), Some(Back { pattern: Pattern::OneWay, .. })));

    let also = |said: &str| kraft(said, Units::Inch).also.iter().map(|also| told(&also.sheets)).collect::<Vec<_>>();
    assert_eq!(also("    also from: 4 of 6 x 6 in\n"), [["4 of 6 x 6 in"]]);
    assert_eq!(also("    also from: [4 of 6 x 6 in, 2 of 8 x 8 in]\n"), [["4 of 6 x 6 in"], ["2 of 8 x 8 in"]]);
    let several = "    also from:\n      - [4 of 6 x 6 in, 1 of letter]\n      - 1 of 210 x 297 mm | 1 of letter\n";
    assert_eq!(also(several), [vec!["4 of 6 x 6 in", "1 of 8 1/2 x 11 in"], vec!["1 of 8 1/2 x 11 in"]]);

    for edge in Edge::ALL {
        let paper = kraft(&format!("    along the edge:\n      tag: {}\n", edge.word()), Units::Inch);
        assert_eq!((paper.fixed.edges[0].piece, paper.fixed.edges[0].edge), (PieceId(0), edge));
    }
    assert_eq!(kraft("    ways to cut: 1\n", Units::Inch).ways, 1);
    let kept = "    keep: {card paper: 2 of A6, plain paper: half letter}\n    along the edge: {card paper: left}\n";
    let design = design(&sound::TAGS.replace("letter\n", &format!("12 x 12 in\n{kept}")), Units::Inch);
    let named: Vec<Option<&str>> = design.papers[1..].iter().map(|paper| paper.sheets[0].named.as_deref()).collect();
    assert_eq!(named, [Some("A6"), Some("half letter")]);
    // A kept leftover is a piece of its paper, so it may come from the row along an edge.
    assert_eq!(design.papers[0].fixed.edges[0].piece, PieceId(2));
}

/// The README's example of what is said of paper, with the rest of a design round it.
#[test]
fn the_example_in_the_readme_is_sound() {
    let readme = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/README.md")).unwrap();
    let section = readme.split_once("**More about paper**").unwrap().1;
    let example = section.split_once("```yaml\n").unwrap().1.split_once("```").unwrap().0;
    let text = example.replace(
        "pieces:\n",
        "  white: {sheets: 2 of letter}\npieces:\n  lantern: {size: 1 x 1 3/4 in | 25 x 42 mm, from: varies}\n",
    );
    let head = "title: Night\nmonth: 2027-06\ncards: 4\nunits: inch and metric\n\
                card: {size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}\n";
    let near = "left: 1/4 in | 6 mm, top: 1/4 in | 6 mm";
    let front = format!(
        "front:\n  - {{place: panel, {near}, glue: tape}}\n  - {{place: lantern, onto: panel, {near}, glue: foam}}\n  \
         - {{place: tag, left: 1/4 in | 6 mm, bottom: 0 in, glue: tape}}\n"
    );
    let source = Source::new("design.yaml", format!("{head}{text}{front}"));
    let findings = trimwright::pipeline::run(&source, "design").findings;
    let loud: Vec<_> = findings.iter().filter(|finding| finding.severity != Severity::Note).collect();
    assert!(loud.is_empty(), "{loud:#?}");
}
