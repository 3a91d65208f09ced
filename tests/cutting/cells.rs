//! Sheets of printed cells: every one is cut where it is printed, and triangles by pairs: their rectangles
//! are as many as are needed.

use crate::support::{demo, editions_at, run};
use proptest::prelude::*;
use trimwright::cutting::plan::{CutPlan, Use};
use trimwright::cutting::verify::verify;
use trimwright::design::model::{Design, PieceId};
use trimwright::project::Project;

/// Cells of so many millimetres on a sheet, and how many cards want one.
#[derive(Debug, Clone)]
struct Printed {
    sheet: (i64, i64),
    cell: (i64, i64),
    columns: i64,
    rows: i64,
    left: i64,
    top: i64,
    cards: i64,
}

impl Printed {
    fn text(&self) -> String {
        let Self { sheet, cell, columns, rows, left, top, cards } = self;
        format!(
            "cards: {cards}\npapers:\n  pictures:\n    sheets: 3 of {} x {} mm\n    pattern: one-way\n    cells: {{called: \
             picture, size: {} x {} mm, columns: {columns}, rows: {rows}, left: {left} mm, top: {top} mm}}\npieces:\n  \
             scene: {{size: {} x {} mm, from: picture, per card: 1}}\n",
            sheet.0, sheet.1, cell.0, cell.1, cell.0, cell.1
        )
    }

    /// Whether a rectangle, in millimetres from the lower left of the sheet, is one of the cells.
    fn is_cell(&self, left: i64, top: i64) -> bool {
        let (across, down) = (left - self.left, self.sheet.1 - self.top - top);
        across >= 0
            && down >= 0
            && across % self.cell.0 == 0
            && down % self.cell.1 == 0
            && across / self.cell.0 < self.columns
            && down / self.cell.1 < self.rows
    }
}

/// The lower left corners, in nanometres, of all cells that a plan frees, on every sheet cut so.
fn cells(project: &Project) -> Vec<(i64, i64, usize)> {
    let named = |piece: PieceId| project.design.piece(piece).name == "picture";
    let of_sheet = project.plan.sheets.iter().filter(|sheet| !sheet.kept).flat_map(|sheet| {
        let pieces = sheet.parts.iter().filter(|part| matches!(part.r#use, Use::Piece { piece, .. } if named(piece)));
        pieces.map(|part| (part.rect.left, part.rect.top, sheet.numbers.len()))
    });
    of_sheet.collect()
}

fn printed() -> impl Strategy<Value = Printed> {
    (25_i64..60, 25_i64..60, 1_i64..5, 1_i64..5, 0_i64..2, 0_i64..2, (0_i64..2, 0_i64..2), 1_i64..9).prop_map(
        |(width, height, columns, rows, left, top, (right, bottom), cards)| {
            let margin = |edge: i64, by: i64| edge * by;
            let (left, top) = (margin(left, 27), margin(top, 31));
            let sheet = (left + columns * width + margin(right, 26), top + rows * height + margin(bottom, 29));
            Printed { sheet, cell: (width, height), columns, rows, left, top, cards }
        },
    )
}

proptest! {
    #![proptest_config(crate::support::cases(64))]

    #[test]
    fn every_cell_is_cut_where_it_is_printed(printed in printed()) {
        let outcome = run(&printed.text());
        let Some(project) = outcome.editions.first() else {
            return Err(TestCaseError::fail(format!("{:#?}", outcome.findings)));
        };
        prop_assert_eq!(verify(&project.design, &project.plan), []);
        let loud: Vec<_> = outcome.findings.iter().filter(|found| found.code == "fixed-cut-without-room").collect();
        prop_assert!(loud.is_empty(), "{:#?}", loud);
        let found = cells(project);
        const MM: i64 = 1_000_000;
        for (left, top, _) in &found {
            prop_assert!(left % MM == 0 && top % MM == 0);
            prop_assert!(printed.is_cell(left / MM, top / MM), "{left} {top} in {printed:?}");
        }
        let cut: usize = found.iter().map(|(.., sheets)| sheets).sum();
        let wanted = printed.cards.min(3 * printed.columns * printed.rows);
        prop_assert!(cut >= usize::try_from(wanted).unwrap(), "{cut} of {wanted}");
        if printed.cards <= 3 * printed.columns * printed.rows {
            let sheets = (printed.cards + printed.columns * printed.rows - 1) / (printed.columns * printed.rows);
            prop_assert_eq!(project.plan.sheets_used(), usize::try_from(sheets).unwrap());
            prop_assert!(project.plan.missing.is_empty());
        }
    }
}

/// Twelve cells of 3 x 4 in fill a sheet of 12 x 12 in to its edges: the last row is what remains.
#[test]
fn cells_may_fill_their_sheet() {
    let text = "cards: 12\npapers:\n  pictures:\n    sheets: 1 of 12 x 12 in\n    cells: {called: picture, size: 3 x 4 in, \
                columns: 4, rows: 3}\npieces:\n  scene: {size: 3 x 4 in, from: picture, per card: 1}\n";
    let outcome = run(text);
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    let plan = &outcome.editions[0].plan;
    // Two rows across, and three cuts in each of three rows.
    assert_eq!((plan.cards, plan.cuts()), (12, 11));
}

fn altered(project: &Project, change: impl Fn(&Design, &mut CutPlan)) -> bool {
    let mut plan = project.plan.clone();
    change(&project.design, &mut plan);
    !verify(&project.design, &plan).is_empty()
}

#[test]
fn the_referee_sees_a_cell_that_is_not_printed_there() {
    let text = Printed { sheet: (200, 200), cell: (40, 30), columns: 3, rows: 2, left: 27, top: 31, cards: 4 }.text();
    let project = run(&text).editions.remove(0);
    assert!(!altered(&project, |_, _| {}));
    // The cells are said to be printed a millimetre further on: then the plan cuts through all of them.
    let mut moved = project.design.clone();
    let cells = moved.papers[0].cells.as_mut().expect("cells");
    cells.left += trimwright::length::Length::mm(1);
    assert!(verify(&moved, &project.plan).iter().any(|fault| fault.message.contains("where it is printed")));
    let mut fewer = project.design.clone();
    fewer.papers[0].cells.as_mut().expect("cells").rows = 1;
    assert!(!verify(&fewer, &project.plan).is_empty());
}

#[test]
fn the_referee_counts_the_rectangles_of_triangles_itself() {
    for project in editions_at(&demo("kite-weather")) {
        assert!(!altered(&project, |_, _| {}));
        let is_triangle = |design: &Design, piece: PieceId| design.piece(piece).name.ends_with("sail");
        let mut tried = 0;
        for sheet in 0..project.plan.sheets.len() {
            for part in 0..project.plan.sheets[sheet].parts.len() {
                let Use::Piece { piece, .. } = project.plan.sheets[sheet].parts[part].r#use else { continue };
                if !is_triangle(&project.design, piece) {
                    continue;
                }
                tried += 1;
                let lost = |_: &Design, plan: &mut CutPlan| plan.sheets[sheet].parts[part].r#use = Use::Leftover;
                assert!(altered(&project, lost), "a rectangle is missing");
                let turned = |_: &Design, plan: &mut CutPlan| {
                    if let Use::Piece { quarter_turns, .. } = &mut plan.sheets[sheet].parts[part].r#use {
                        *quarter_turns = 2;
                    }
                };
                assert!(altered(&project, turned), "one-way paper upside down");
            }
        }
        assert!(tried > 3, "{tried}");
    }
}
