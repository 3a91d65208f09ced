//! How a length prints: in the unit it was written in, fractions in lowest terms.

use super::{Length, NM_PER_INCH, NM_PER_MM, Size, Unit, Units};
use std::fmt;

const NM_PER_64TH: i64 = NM_PER_INCH / 64;

/// A positive whole number of 64ths as `whole numerator/denominator`, lowest terms.
#[must_use]
pub fn fraction(sixty_fourths: i64) -> String {
    let (whole, rest) = (sixty_fourths / 64, sixty_fourths % 64);
    if rest == 0 {
        return whole.to_string();
    }
    let shift = rest.trailing_zeros();
    let (numerator, denominator) = (rest >> shift, 64 >> shift);
    if whole == 0 { format!("{numerator}/{denominator}") } else { format!("{whole} {numerator}/{denominator}") }
}

/// `nm` in units of `per`, as a decimal number of at most `digits` places, without trailing zeros.
fn decimal(nm: i64, per: i64, digits: u32) -> String {
    let scale = 10_i128.pow(digits);
    let scaled = (i128::from(nm) * scale * 2 + i128::from(per)).div_euclid(i128::from(per) * 2);
    let (whole, rest) = (scaled / scale, scaled % scale);
    if rest == 0 {
        return whole.to_string();
    }
    let text = format!("{whole}.{rest:0width$}", width = digits as usize);
    text.trim_end_matches('0').to_owned()
}

impl Length {
    /// The number alone, in a system of units: `3 3/4`, `94`, `-1/8`.
    ///
    /// Inches that are no whole number of 64ths print as a decimal of at most four places,
    /// millimetres with at most three.
    #[must_use]
    pub fn number(self, units: Units) -> String {
        self.number_in(match units {
            Units::Inch => Unit::Inch,
            Units::Metric => Unit::Millimetre,
        })
    }

    /// The number alone, in the unit that it was written in: `3 3/4`, `94`, `9.4`.
    #[must_use]
    pub fn own_number(self) -> String {
        self.number_in(self.unit())
    }

    fn number_in(self, unit: Unit) -> String {
        let sign = if self.nm() < 0 { "-" } else { "" };
        let nm = self.nm().abs();
        let digits = match unit {
            Unit::Inch if nm % NM_PER_64TH == 0 => fraction(nm / NM_PER_64TH),
            Unit::Inch => decimal(nm, NM_PER_INCH, 4),
            Unit::Millimetre => decimal(nm, NM_PER_MM, 3),
            Unit::Centimetre => decimal(nm, NM_PER_MM * 10, 4),
        };
        format!("{sign}{digits}")
    }
}

impl Unit {
    /// The sign of the unit: `in`, `mm`, `cm`.
    #[must_use]
    pub const fn sign(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
        }
    }
}

impl Units {
    /// The sign of the system's main unit: `in` or `mm`.
    #[must_use]
    pub const fn sign(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Metric => "mm",
        }
    }
}

impl fmt::Display for Length {
    /// `3 3/4 in`, `108 mm`, `10.8 cm`: the number and the unit it was written in.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.number_in(self.unit()), self.unit().sign())
    }
}

impl fmt::Display for Size {
    /// `4 1/4 x 5 1/2 in`: the unit once, where both lengths have the same one.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.width.unit() == self.height.unit() {
            write!(f, "{} x {}", self.width.number_in(self.width.unit()), self.height)
        } else {
            write!(f, "{} x {}", self.width, self.height)
        }
    }
}

impl Size {
    /// The two numbers alone, in a system of units: `4 1/4 x 5 1/2`.
    #[must_use]
    pub fn numbers(self, units: Units) -> String {
        format!("{} x {}", self.width.number(units), self.height.number(units))
    }
}
