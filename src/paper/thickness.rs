//! How thick paper of a weight is: a guide, since makers differ by a tenth and more.
//!
//! Between two rows of a table thickness grows with grammage; past its ends it is in proportion to the
//! row at that end.

use crate::weight::{Grade, Grammage};

/// Pounds of the grade, and thickness in 1/10 000 in.
type Row = (i64, i64);

/// Guide values, stodioo.com and fcidigital.com.
const BOND: [Row; 2] = [(20, 40), (24, 46)];
/// Government Paper Specification Standards, volume 11 (1 February 1999), JCP A55 and A91.
const TEXT: [Row; 6] = [(40, 30), (50, 39), (60, 47), (70, 55), (80, 63), (100, 79)];
/// Guide values, a chart of common weights at info.5y1.org.
const COVER: [Row; 4] = [(65, 80), (80, 95), (100, 110), (120, 150)];
/// Government Paper Specification Standards, volume 11, JCP K10.
const INDEX: [Row; 4] = [(90, 75), (110, 91), (140, 114), (170, 138)];
/// Government Paper Specification Standards, volume 11, JCP P20.
const TAG: [Row; 4] = [(105, 80), (150, 110), (165, 140), (250, 180)];

/// 1/10 000 in.
const NM: i128 = 2540;

/// The rows of a grade by grammage. Paper of which only grammage is said is text up to 100 lb and cover
/// from 65 lb; bristol, of which no table was found, is taken for cover.
fn rows(grade: Option<Grade>) -> Vec<(Grammage, i64)> {
    let of = |grade: Grade, rows: &[Row]| -> Vec<(Grammage, i64)> {
        rows.iter().map(|(pounds, thick)| (Grammage::pounds(pounds * 1000, grade), *thick)).collect()
    };
    match grade {
        Some(Grade::Bond) => of(Grade::Bond, &BOND),
        Some(Grade::Text) => of(Grade::Text, &TEXT),
        Some(Grade::Cover | Grade::Bristol) => of(Grade::Cover, &COVER),
        Some(Grade::Index) => of(Grade::Index, &INDEX),
        Some(Grade::Tag) => of(Grade::Tag, &TAG),
        None => [of(Grade::Text, &TEXT), of(Grade::Cover, &COVER)].concat(),
    }
}

/// About how thick paper of a weight is, in nanometres, rounded half up.
#[must_use]
pub fn guide(grammage: Grammage, grade: Option<Grade>) -> i64 {
    let rows = rows(grade);
    let mg = i128::from(grammage.mg());
    let at = |n: usize| (i128::from(rows[n].0.mg()), i128::from(rows[n].1) * NM);
    let above = rows.iter().position(|(known, _)| *known >= grammage);
    let thick = match above {
        // Lighter or heavier than all: in proportion to the nearest row.
        Some(0) => share(at(0).1 * mg, at(0).0),
        None => share(at(rows.len() - 1).1 * mg, at(rows.len() - 1).0),
        Some(n) => {
            let ((low, thin), (high, thick)) = (at(n - 1), at(n));
            thin + share((thick - thin) * (mg - low), high - low)
        }
    };
    i64::try_from(thick).unwrap_or(i64::MAX)
}

/// Divided, rounded half up.
fn share(above: i128, below: i128) -> i128 {
    (above * 2 + below).div_euclid(below * 2)
}
