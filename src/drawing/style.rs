//! Pens and letters: the only file that knows them.
//!
//! Widths after ISO 128 (wide to narrow 2:1), hatching below its narrow line on purpose so that
//! labels stay readable. Every colour of a line has at least 3:1 and of a text 4.5:1 against white
//! (WCAG 2.2, 1.4.11 and 1.4.3).

use super::scene::{Lettering, Role};
use crate::design::model::Accents;
use crate::fonts;
use crate::guides::model as guides;
use serde::Serialize;
use serde_json::{Map, Value};

/// Text and wide lines.
pub const INK: &str = "#1E2A32";
/// Quiet text.
pub const SLATE: &str = "#56626B";
/// Dimensions, folds, notes.
pub const TEAL: &str = "#0E5F70";
/// Cuts and cautions.
pub const RUST: &str = "#A63C12";
/// Outlines that are there already.
pub const GHOST: &str = "#868F96";
/// Paper.
pub const WHITE: &str = "#FFFFFF";

/// How a role is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Pen {
    /// Colour of the line; none: no line.
    pub stroke: Option<&'static str>,
    /// Width of the line, nm.
    pub width_nm: i64,
    /// Dashes and gaps in turn, nm; none: continuous.
    pub dash: Option<&'static [i64]>,
    /// Colour inside a closed shape; none: nothing.
    pub fill: Option<&'static str>,
}

/// How a text is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Letters {
    /// Family, as named inside the bundled files.
    pub family: &'static str,
    /// 400 or 700.
    pub weight: u16,
    /// Size in tenths of a point.
    pub tenths_of_point: i64,
    /// Colour.
    pub colour: &'static str,
}

const UM: i64 = 1000;
const HIDDEN_DASH: &[i64] = &[1200 * UM, 800 * UM];
const VALLEY_DASH: &[i64] = &[2000 * UM, 1000 * UM];
const FOLD_DASH: &[i64] = &[3000 * UM, 800 * UM, 600 * UM, 800 * UM];

const GUIDE_FOLD_DASH: &[i64] = &[6000 * UM, 2000 * UM];

const fn line(colour: &'static str, um: i64) -> Pen {
    Pen { stroke: Some(colour), width_nm: um * UM, dash: None, fill: None }
}

const fn on_white(colour: &'static str, um: i64) -> Pen {
    Pen { fill: Some(WHITE), ..line(colour, um) }
}

const fn filled(colour: &'static str) -> Pen {
    Pen { stroke: None, width_nm: 0, dash: None, fill: Some(colour) }
}

/// The pen of a role.
#[must_use]
pub const fn pen(role: Role) -> Pen {
    match role {
        Role::Cut | Role::Bar => line(INK, 500),
        Role::Piece => on_white(INK, 500),
        Role::Sheet => on_white(INK, 250),
        Role::Layer => on_white(INK, 400),
        Role::Ghost => on_white(GHOST, 250),
        Role::Hidden => Pen { dash: Some(HIDDEN_DASH), ..line(INK, 250) },
        Role::Fold => Pen { dash: Some(FOLD_DASH), ..line(TEAL, 350) },
        Role::Valley => Pen { dash: Some(VALLEY_DASH), ..line(TEAL, 350) },
        Role::Trim => line(RUST, 700),
        Role::Dimension => line(TEAL, 250),
        Role::Arrow => filled(TEAL),
        Role::Leader | Role::Ruler => line(INK, 250),
        Role::LeaderDot => filled(INK),
        Role::Ring => on_white(INK, 350),
        Role::Flag => Pen { fill: Some(RUST), ..line(WHITE, 400) },
        Role::Bracket => line(RUST, 250),
        Role::EdgeStrip => line(SLATE, 180),
        Role::Hatch | Role::HatchRing => line(SLATE, 180),
        Role::HatchSign => line(TEAL, 200),
        Role::HatchDot => filled(RUST),
        Role::HatchHead => filled(TEAL),
        Role::Plate | Role::Cover => filled(WHITE),
        Role::Up => line(INK, 400),
        Role::UpHead => filled(INK),
        Role::LensRing => line(SLATE, 350),
        Role::Outline => on_white(SLATE, 250),
    }
}

/// The pen of a role where nothing is filled: a flag is outlined.
#[must_use]
pub const fn bare_pen(role: Role) -> Pen {
    match role {
        Role::Flag => on_white(RUST, 350),
        other => pen(other),
    }
}

/// The pen of a line on a true-size sheet. Each differs from the others in its dashes or its width, so that no
/// meaning hangs on a colour; a score looks as it does in the handout.
#[must_use]
pub const fn guide_pen(role: guides::Role) -> Pen {
    match role {
        guides::Role::Cut => line(INK, 400),
        guides::Role::Score => pen(Role::Fold),
        guides::Role::Fold => Pen { dash: Some(GUIDE_FOLD_DASH), ..line(TEAL, 350) },
        guides::Role::Draw => Pen { dash: Some(HIDDEN_DASH), ..line(INK, 350) },
        guides::Role::Note => line(SLATE, 180),
    }
}

/// The letters of a lettering.
#[must_use]
pub const fn letters(lettering: Lettering) -> Letters {
    let (weight, tenths_of_point, colour) = match lettering {
        Lettering::Figure => (400, 110, INK),
        Lettering::Ring => (700, 100, INK),
        Lettering::Flag => (700, 95, WHITE),
        Lettering::Bare => (700, 110, INK),
        Lettering::Numeral => (700, 110, SLATE),
        Lettering::Leftover => (400, 110, SLATE),
        Lettering::Small => (400, 95, SLATE),
        Lettering::Word => (700, 100, TEAL),
        Lettering::UpWord => (700, 100, INK),
        Lettering::TrimWord => (700, 100, RUST),
    };
    Letters { family: fonts::TEXT, weight, tenths_of_point, colour }
}

/// A colour of the pens with a designer's accents in the place of the usual ones.
#[must_use]
pub fn with_accents(colour: &str, accents: Accents) -> String {
    match colour {
        TEAL => accents.notes.to_string(),
        RUST => accents.cuts.to_string(),
        other => other.to_owned(),
    }
}

/// Both tables for a writer outside, with filled flags or without, in a designer's accents: `{"roles": {role:
/// pen}, "lettering": {lettering: letters}}`, keys as in a serialised scene.
#[must_use]
pub fn table(fills: bool, accents: Accents) -> Value {
    let roles = Role::ALL.map(|role| (key(role), value(if fills { pen(role) } else { bare_pen(role) })));
    let lettering = Lettering::ALL.map(|lettering| {
        let mut own = letters(lettering);
        if lettering == Lettering::Flag && !fills {
            own.colour = RUST;
        }
        (key(lettering), value(own))
    });
    let mut both = Map::new();
    both.insert("roles".to_owned(), Value::Object(roles.into_iter().collect()));
    both.insert("lettering".to_owned(), Value::Object(lettering.into_iter().collect()));
    let mut table = Value::Object(both);
    recolour(&mut table, accents);
    table
}

/// Every colour in a table with a designer's accents.
fn recolour(value: &mut Value, accents: Accents) {
    match value {
        Value::String(text) if text.starts_with('#') => *text = with_accents(text, accents),
        Value::Object(map) => map.values_mut().for_each(|value| recolour(value, accents)),
        _ => {}
    }
}

/// A role or lettering as it is spelled in a serialised scene.
fn key(name: impl Serialize) -> String {
    match value(name) {
        Value::String(text) => text,
        other => other.to_string(),
    }
}

fn value(plain: impl Serialize) -> Value {
    serde_json::to_value(plain).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::colour::Colour;

    /// Contrast with white after WCAG 2.2 (relative luminance; formula as published by the W3C).
    fn contrast_with_white(colour: &str) -> f64 {
        let channel = |from: usize| {
            let c = f64::from(u8::from_str_radix(&colour[from..from + 2], 16).unwrap()) / 255.0;
            if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
        };
        1.05 / (0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5) + 0.05)
    }

    #[test]
    fn the_contrast_formula_agrees_with_published_boundaries() {
        // #767676 passes 4.5:1 and #777777 does not; #949494 passes 3:1 and #959595 does not.
        assert!(contrast_with_white("#767676") >= 4.5 && contrast_with_white("#777777") < 4.5);
        assert!(contrast_with_white("#949494") >= 3.0 && contrast_with_white("#959595") < 3.0);
    }

    #[test]
    fn lines_and_letters_have_contrast() {
        for role in Role::ALL {
            let pen = pen(role);
            for colour in [pen.stroke, pen.fill].into_iter().flatten().filter(|c| *c != WHITE) {
                assert!(contrast_with_white(colour) >= 3.0, "{role:?}");
            }
        }
        for lettering in Lettering::ALL {
            let colour = letters(lettering).colour;
            if colour != WHITE {
                assert!(contrast_with_white(colour) >= 4.5, "{lettering:?}");
            }
        }
        let flag = pen(Role::Flag).fill.unwrap();
        assert!(contrast_with_white(flag) >= 4.5, "white digits on a flag");
    }

    #[test]
    fn lines_of_guides_differ_without_their_colours() {
        let pens = guides::Role::ALL.map(guide_pen);
        for (at, one) in pens.iter().enumerate() {
            assert!(contrast_with_white(one.stroke.unwrap()) >= 3.0);
            // Dashes tell them apart, or a width at least twice as wide (ISO 128).
            let alike = |other: &Pen| {
                one.dash == other.dash && one.width_nm.max(other.width_nm) < 2 * one.width_nm.min(other.width_nm)
            };
            assert!(!pens[at + 1..].iter().any(alike), "{one:?}");
        }
    }

    #[test]
    fn the_table_names_every_role() {
        let usual = Accents::default();
        assert_eq!((usual.notes.to_string(), usual.cuts.to_string()), (TEAL.to_owned(), RUST.to_owned()));
        let table = table(true, usual);
        assert_eq!(table["roles"].as_object().unwrap().len(), Role::ALL.len());
        assert_eq!(table["roles"]["hatch-dot"]["fill"], RUST);
        assert_eq!(table["lettering"]["trim-word"]["tenths_of_point"], 100);
        let bare = super::table(false, usual);
        assert_eq!(
            (&bare["roles"]["flag"]["fill"], &bare["lettering"]["flag"]["colour"]),
            (&WHITE.into(), &RUST.into())
        );
        let own = Accents { notes: Colour([0x12, 0x34, 0x56]), cuts: Colour([0x65, 0x43, 0x21]) };
        let own = super::table(true, own).to_string();
        assert!(own.contains("#123456") && own.contains("#654321") && own.contains(INK));
        assert!(!own.contains(TEAL) && !own.contains(RUST));
    }
}
