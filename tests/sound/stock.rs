//! The sheets of a sound design: enough of them by a plain count in which each piece has sheets of its own.

use super::write::{Both, Sheet, Size};
use std::fmt::Write;

/// Sheets: letter and A4, and a square of 12 in or 304 mm.
const SHEETS: [(&str, &str, Size); 2] = [
    ("letter", "A4", [Both(136, 210), Both(176, 297)]),
    ("12 x 12 in", "304 x 304 mm", [Both(192, 304), Both(192, 304)]),
];

/// The smallest envelope that goes anywhere: 140 x 90 mm (Canada Post, size requirements of lettermail), 5 x 3 1/2 in
/// (from memory), with room to spare.
const LEAST_ENVELOPE: Size = [Both(90, 140), Both(60, 90)];

/// What a slice narrower than this asks to be left on its other side.
const NARROW: Both = Both(8, 12);
const HELD: Both = Both(16, 25);

impl Sheet {
    /// A paper with its sheets.
    pub(super) fn paper(&mut self, paper: usize, text: &mut String) {
        let wanted = self.wanted_of(paper);
        let holds = |sheet: &Size| wanted.iter().all(|(size, _)| size.iter().zip(sheet).all(|(a, b)| a.within(*b)));
        let first = usize::from(!holds(&SHEETS[0].2) || self.dice.chance(2));
        let (inch, metric, sheet) = SHEETS[first];
        let count = |system: fn(Both) -> i64| -> i64 {
            wanted
                .iter()
                .map(|(size, count)| (count + per_sheet(*size, sheet, system) - 1) / per_sheet(*size, sheet, system))
                .sum()
        };
        let (inches, metres) = (count(|both| both.0).max(1), count(|both| both.1).max(1));
        let _ = writeln!(text, "  {}:", Self::paper_name(paper));
        let sheets = self.either(&format!("{inches} of {inch}"), &format!("{metres} of {metric}"));
        let _ = writeln!(text, "    sheets: {sheets}");
        if paper == 0 {
            text.push_str("    weight: 110 lb cover\n");
        } else {
            let pattern =
                self.dice.one(&["", "    pattern: any\n", "    pattern: two-way\n", "    pattern: one-way\n"]);
            text.push_str(pattern);
            if self.dice.chance(5) {
                let strip = self.length(Both(8, 13));
                let _ = writeln!(text, "    edge strip: {strip} at the bottom, beside");
            }
        }
    }

    /// The envelope, now and then, with a liner on its flap.
    pub(super) fn envelope(&mut self, [width, height]: Size, text: &mut String) {
        if self.liner.is_none() {
            return;
        }
        let lies = height.within(width);
        let (long, short) = if lies { (width, height) } else { (height, width) };
        let own = [(long + Both(4, 8), LEAST_ENVELOPE[0]), (short + Both(4, 8), LEAST_ENVELOPE[1])];
        let size = self.size(own.map(|(side, least)| Both(side.0.max(least.0), side.1.max(least.1))));
        let flap = self.length(super::bands::FLAP);
        let _ = write!(text, "envelope:\n  size: {size}\n  flap: {flap}\n  on the flap:\n");
        text.push_str("    - {place: liner, centre: both ways, glue: tape}\n");
    }
}

/// How many of a piece one sheet gives for certain, in rows of slices.
fn per_sheet([width, height]: Size, [wide, high]: Size, system: fn(Both) -> i64) -> i64 {
    let along = |side: Both, whole: Both| {
        let room = if side.within(NARROW) { whole - HELD } else { whole };
        (system(room) / system(side)).max(1)
    };
    along(width, wide) * along(height, high)
}
