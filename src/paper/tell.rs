//! Lengths that are no ruler's: thicknesses, and limits of the post beside what is measured against them.

use crate::length::{Length, NM_PER_INCH, NM_PER_MM, Units};

/// A thickness, as fine as a guide can be: `0.013 in`, `0.33 mm`, `0.36 in`, `9.1 mm`.
#[must_use]
pub fn thickness(nm: i64, units: Units) -> String {
    Length::of(rounded(nm, units), units).to_string()
}

fn rounded(nm: i64, units: Units) -> i64 {
    let (per, large) = match units {
        Units::Inch => (NM_PER_INCH, NM_PER_INCH / 10),
        Units::Metric => (NM_PER_MM, NM_PER_MM),
    };
    let fine = match units {
        Units::Inch => 1000,
        Units::Metric => 100,
    };
    let step = if nm < large { per / fine } else { per * 10 / fine };
    nm.saturating_add(step / 2).div_euclid(step).saturating_mul(step)
}

/// A thickness past a limit, which reads as past it: `about 0.28 in`, `a little over 1/4 in`.
#[must_use]
pub fn thickness_past(nm: i64, limit: Length, units: Units) -> String {
    if rounded(nm, units) > limit.nm() {
        format!("about {}", thickness(nm, units))
    } else {
        format!("a little over {limit}")
    }
}

/// A measure beside a limit: exact where a ruler of the system has it, else to the hundredth of an inch or
/// the tenth of a millimetre.
#[must_use]
pub fn measure(nm: i64, units: Units) -> String {
    let (mark, step) = match units {
        Units::Inch => (NM_PER_INCH / 64, NM_PER_INCH / 100),
        Units::Metric => (NM_PER_MM / 10, NM_PER_MM / 10),
    };
    if nm % mark == 0 {
        return Length::of(nm, units).to_string();
    }
    Length::of(nm.saturating_add(step / 2).div_euclid(step).saturating_mul(step), units).to_string()
}
