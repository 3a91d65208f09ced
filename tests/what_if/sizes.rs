//! The table of sizes, against a worked example and against designs planned one by one.

use crate::support::{run, trimwright};
use trimwright::cutting::search::Known;
use trimwright::cutting::search::most::plan_most;
use trimwright::cutting::search::sheet::Limits;
use trimwright::cutting::sizes::{Row, SizeTable, Ways, sizes};
use trimwright::design::model::{Design, PieceId};
use trimwright::design::resize::{Resized, named, resize};
use trimwright::length::{Length, Size};

const KITES: &str = "title: Kites\ncards: 12\npapers:\n  sky: {sheets: 1 of 12 x 12 in, pattern: one-way}\n  fog: {sheets: 1 of 12 x 12 in, pattern: one-way}\n\
    pieces:\n  kite: {size: 2 7/8 x 3 3/4 in, from: sky, per card: 1}\n  window: {size: kite less 1/4 in all round, from: fog, per card: 1}\n";

fn design(text: &str) -> Design {
    let outcome = run(text);
    outcome.editions.into_iter().next().unwrap_or_else(|| panic!("{:#?}", outcome.findings)).design
}

fn demo(name: &str) -> Design {
    design(&std::fs::read_to_string(crate::support::demo(name)).expect("the demo"))
}

fn table(design: &Design, name: &str, ways: Ways, steps: i32) -> SizeTable {
    let what = named(design, name).expect("a piece");
    sizes(design, what, ways, steps, &Limits::default()).expect("a table")
}

fn found(table: &SizeTable, steps: i32) -> u64 {
    let row = table.rows.iter().find(|row| row.steps == steps).expect("a row");
    assert!(row.cards.proven, "{row:?}");
    row.cards.found
}

/// Worked by hand. Upright pieces of one size lie in columns and rows: 12 in / 2 7/8 in is 4 columns
/// (up to 3 in), 12 in / 3 3/4 in is 3 rows (up to 4 in): 12 kites. A window is 1/2 in less each
/// way, 2 3/8 x 3 1/4 in: 5 columns (11 7/8 in) of 3 rows, 15, or 12 from one step more on.
/// Both ways: nothing is lost for 2 steps, to 3 x 3 7/8 in; at 3 1/16 x 3 15/16 in there are
/// 3 columns of 3 rows, 9. Smaller: 5 columns of 2 2/5 in at most are 2 3/8 in, 8 steps less, with
/// 3 rows of 3 1/4 in: 15 kites, and windows of 1 7/8 x 2 3/4 in, 6 columns of 4 rows.
/// The width alone loses at +3 too (3 1/16 in), the height at +5 (4 1/16 in, 2 rows of 4 are 8).
#[test]
fn a_worked_example() {
    let design = design(KITES);
    let both = table(&design, "kite", Ways::Both, 16);
    assert_eq!(both.rows.len(), 33);
    assert_eq!(both.follow, [PieceId(1)]);
    for (steps, cards) in [(-9, 15), (-8, 15), (-7, 12), (-1, 12), (0, 12), (1, 12), (2, 12), (3, 9), (4, 9), (5, 6)] {
        assert_eq!(found(&both, steps), cards, "{steps} steps");
    }
    let inch = |n, of| Length::inch(n, of);
    assert_eq!(both.free().map(|row| row.steps), Some(2));
    let lost = both.loses().expect("a loss");
    assert_eq!((lost.row.steps, lost.cards), (3, -3));
    assert_eq!(lost.row.size, Size::new(inch(49, 16), inch(63, 16)));
    let gained = both.gains().expect("a gain");
    assert_eq!((gained.row.steps, gained.cards), (-8, 3));
    assert_eq!(both.lost_at(lost.row), 3);
    assert_eq!(both.too_large(), None);

    let width = table(&design, "kite", Ways::Width, 6);
    assert_eq!(width.loses().map(|change| (change.row.steps, change.row.size.height)), Some((3, inch(15, 4))));
    let height = table(&design, "kite", Ways::Height, 6);
    assert_eq!((height.free().map(|row| row.steps), found(&height, 5)), (Some(4), 8));

    // Twelve kites and twelve windows: 11 cuts and those along the rows; every sheet is used.
    let today = both.today().expect("today");
    assert_eq!((today.sheets, today.too_large.len()), (2, 0));
    // What is left of the sky is 12 x 3/4 in and slices of 1/2 in; of the fog a column of windows at
    // least, 2 1/2 x 12 in, which gives three more.
    assert!(today.more.iter().any(|more| more.piece == PieceId(1) && more.count >= 3), "{:?}", today.more);
    assert!(today.more.iter().all(|more| more.piece != PieceId(0)), "{:?}", today.more);
}

/// By hand: 3 15/16 in goes into 4 in, one step more just so, two steps no more.
#[test]
fn what_goes_no_more() {
    let design = design(
        "cards: 1\npapers:\n  sky: {sheets: 2 of 4 x 4 in}\npieces:\n  kite: {size: 3 15/16 x 3 in, from: sky, per card: 1}\n",
    );
    let table = table(&design, "kite", Ways::Both, 3);
    assert_eq!(table.too_large().map(|row| row.steps), Some(2));
    assert_eq!((found(&table, 1), found(&table, 2)), (2, 0));
}

/// What rows share must not change them: each row against its design planned alone.
#[test]
fn rows_are_what_their_designs_give_alone() {
    let lanterns = demo("lantern-row");
    for (name, ways) in [("panel", Ways::Both), ("card", Ways::Width), ("lantern", Ways::Height)] {
        let what = named(&lanterns, name).expect("a piece");
        let table = table(&lanterns, name, ways, 4);
        let step = lanterns.workshop.ruler;
        for Row { steps, cards, .. } in &table.rows {
            let (by, none) = (step * i64::from(*steps), Length::new(0, step.unit()));
            let (width, height) = match ways {
                Ways::Both => (by, by),
                Ways::Width => (by, none),
                Ways::Height => (none, by),
            };
            let alone = resize(&lanterns, what, width, height).expect("a design");
            let (_, plan, _) = plan_most(&alone, &Limits::default(), &mut Known::default());
            assert_eq!(plan.aims.cards.found, cards.found, "{name} {steps:+}");
            assert!(cards.proven && plan.aims.cards.proven, "{name} {steps:+}");
        }
    }
}

#[test]
fn what_leans_on_a_piece_follows_with_its_border() {
    let design = demo("lantern-row");
    let size = |design: &Design, name: &str| {
        let piece = design.pieces.iter().find(|piece| piece.name == name).expect("a piece");
        piece.size.to_string()
    };
    let eighth = Length::inch(1, 8);
    // The card 4 1/4 x 5 1/2 in; the mat is 1/8 in less all round, the panel 1/8 in less than the mat.
    let card = resize(&design, Resized::Card, eighth, eighth).expect("a design");
    assert_eq!(size(&card, "base"), "8 3/4 x 5 5/8 in", "folded at the side");
    assert_eq!((size(&card, "mat"), size(&card, "panel")), ("4 1/8 x 5 3/8 in".into(), "3 7/8 x 5 1/8 in".into()));
    assert_eq!(size(&card, "lantern"), size(&design, "lantern"));
    let mat = resize(&design, named(&design, "mat").expect("the mat"), eighth, Length::inch(0, 1)).expect("a design");
    assert_eq!((size(&mat, "mat"), size(&mat, "panel")), ("4 1/8 x 5 1/4 in".into(), "3 7/8 x 5 in".into()));
    assert_eq!(size(&mat, "base"), size(&design, "base"));
    // The panel is 3 3/4 in wide: the card may lose less than that.
    assert!(resize(&design, Resized::Card, Length::inch(-15, 4), eighth).is_none(), "nothing is left of the panel");
    assert!(named(&design, "lamp").is_none());
}

#[test]
fn the_command_as_a_designer_types_it() {
    let home = tempfile::tempdir().expect("a folder");
    std::fs::write(home.path().join("kites.yaml"), KITES).expect("written");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    let said = trimwright(home.path(), &["sizes", "kites.yaml", "kite"]);
    let out = text(&said.stdout);
    assert_eq!(said.status.code(), Some(0), "{}", text(&said.stderr));
    assert!(
        out.starts_with("Kites: cards as the kite grows and shrinks by 1/16 in, width and height together.\n"),
        "{out}"
    );
    assert!(out.contains("The window follows as its size says."), "{out}");
    assert!(out.contains("It may grow by 1/8 in for nothing. At 3 1/16 x 3 15/16 in three cards are lost."), "{out}");
    assert!(out.contains("At 2 3/8 x 3 1/4 in three more cards come out."), "{out}");
    let line =
        |start: &str| out.lines().find(|line| line.trim_start().starts_with(start)).unwrap_or_else(|| panic!("{out}"));
    assert!(line("+2").ends_with("for nothing up to here") && line("+3").ends_with("3 cards fewer"), "{out}");
    assert!(line("today").contains("2 7/8 x 3 3/4"), "{out}");

    let json = trimwright(home.path(), &["sizes", "kites.yaml", "kite", "--steps", "3", "--width", "--format", "json"]);
    let value: serde_json::Value = serde_json::from_slice(&json.stdout).expect("JSON");
    assert_eq!((&value["piece"], &value["step_nm"]), (&"kite".into(), &1_587_500.into()));
    assert_eq!(
        (&value["free_to"], &value["loses_at"], &value["gains_at"]),
        (&2.into(), &3.into(), &serde_json::Value::Null)
    );
    let rows = value["rows"].as_array().expect("rows");
    assert_eq!(rows.len(), 7);
    assert_eq!(rows[6]["cards"], serde_json::json!({"found": 9, "bound": 9, "proven": true}));
    assert_eq!((&rows[6]["width_nm"], &rows[6]["height_nm"]), (&77_787_500.into(), &95_250_000.into()));

    let wrong = trimwright(home.path(), &["sizes", "kites.yaml", "kit"]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(text(&wrong.stderr).contains("write `kite`, the nearest of 2 names"), "{}", text(&wrong.stderr));
    let none = trimwright(home.path(), &["sizes", "kites.yaml", "card"]);
    assert_eq!(none.status.code(), Some(2), "there is no card: {}", text(&none.stdout));
    for arguments in [["--steps", "0"], ["--steps", "500"], ["--width", "--height"]] {
        let mut all = vec!["sizes", "kites.yaml", "kite"];
        all.extend(arguments);
        assert_eq!(trimwright(home.path(), &all).status.code(), Some(2), "{arguments:?}");
    }
}
