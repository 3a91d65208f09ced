//! Contrast of every colour by the formula of WCAG 2.2 (relative luminance as the W3C publishes it;
//! 1.4.3: text 4.5:1, 1.4.11: lines that carry meaning 3:1; ratios are not rounded).

use super::shown;
use crate::support::root;
use std::collections::BTreeMap;
use trimwright::drawing::scene::{Lettering, Role};
use trimwright::drawing::style;

fn luminance(colour: &str) -> f64 {
    let channel = |from: usize| {
        let c = f64::from(u8::from_str_radix(&colour[from..from + 2], 16).expect("a colour")) / 255.0;
        if c <= 0.04045 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
}

fn contrast(one: &str, other: &str) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

const TEXT: f64 = 4.5;
const LINE: f64 = 3.0;

/// The colours of the pages by their names, as the template lists them, each with what the comment
/// behind it says.
fn listed() -> BTreeMap<String, (String, String)> {
    let look = std::fs::read_to_string(root().join("templates/look.typ")).expect("the template");
    let colour = |line: &str| {
        let (name, rest) = line.strip_prefix("#let ")?.split_once(" = rgb(\"")?;
        let (colour, rest) = rest.split_once("\")")?;
        Some((name.to_owned(), (colour.to_owned(), rest.trim().trim_start_matches("//").trim().to_owned())))
    };
    look.lines().filter_map(colour).collect()
}

#[test]
fn the_formula_agrees_with_published_ratios() {
    // Boundaries on white as contrast checkers publish them: #767676 passes 4.5:1 and #777777 does
    // not; #949494 passes 3:1 and #959595 does not. Black on white is 21:1 by the formula's making.
    assert!((contrast("#000000", "#FFFFFF") - 21.0).abs() < 1e-9);
    assert!(contrast("#767676", style::WHITE) >= TEXT && contrast("#777777", style::WHITE) < TEXT);
    assert!(contrast("#949494", style::WHITE) >= LINE && contrast("#959595", style::WHITE) < LINE);
}

#[test]
fn every_colour_of_the_pages_has_contrast_or_is_decoration() {
    let listed = listed();
    assert!(listed.len() >= 6, "{listed:?}");
    for (name, (colour, comment)) in &listed {
        let ratio = contrast(colour, style::WHITE);
        if comment.starts_with("decoration only") {
            continue;
        }
        assert!(ratio >= TEXT, "{name}: {ratio}");
        // The comment says the ratio, rounded down to a tenth or to the nearest.
        let said: f64 = comment.split([',', ' ']).next().and_then(|first| first.parse().ok()).expect("a ratio");
        assert!((said - ratio).abs() < 0.1, "{name}: {said} is said, {ratio} it is");
    }
}

#[test]
fn pages_and_figures_share_their_colours() {
    let listed = listed();
    for (name, colour) in [("ink", style::INK), ("slate", style::SLATE), ("teal", style::TEAL), ("rust", style::RUST)] {
        assert_eq!(listed[name].0, colour, "{name}");
    }
}

#[test]
fn no_other_template_names_a_colour() {
    for entry in std::fs::read_dir(root().join("templates")).expect("templates") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|ending| ending == "typ") && !path.ends_with("look.typ") {
            let text = std::fs::read_to_string(&path).expect("a template");
            assert!(!text.contains("rgb(\"") && !text.contains("luma("), "{}", path.display());
        }
    }
}

/// Every pair that a figure makes: letters on the paper, on the hatch's paper and on a flag; lines on
/// white, and the white edge that parts a flag from what lies under it.
#[test]
fn every_pair_of_a_figure_has_contrast() {
    for role in Role::ALL {
        let pen = style::pen(role);
        for colour in [pen.stroke, pen.fill].into_iter().flatten().filter(|colour| *colour != style::WHITE) {
            assert!(contrast(colour, style::WHITE) >= LINE, "{role:?}");
        }
    }
    for lettering in Lettering::ALL {
        let ground = match lettering {
            Lettering::Flag => style::pen(Role::Flag).fill.expect("a flag is filled"),
            _ => style::WHITE,
        };
        assert!(contrast(style::letters(lettering).colour, ground) >= TEXT, "{lettering:?}");
    }
}

/// The colours that letters are printed in, as they stand in the file itself.
#[test]
fn printed_letters_have_contrast() {
    let file = lopdf::Document::load_mem(&super::INCH.1).expect("a PDF");
    let mut seen = std::collections::BTreeSet::new();
    for run in shown::pages(&file).iter().flat_map(|page| &page.runs).filter(|run| !run.text.trim().is_empty()) {
        let colour = format!("#{:02X}{:02X}{:02X}", run.paint[0], run.paint[1], run.paint[2]);
        // White letters stand on flags alone.
        let ground = if colour == style::WHITE { style::RUST } else { style::WHITE };
        assert!(contrast(&colour, ground) >= TEXT, "{run:?} in {colour}");
        seen.insert(colour);
    }
    let known = [style::INK, style::SLATE, style::TEAL, style::RUST, style::WHITE].map(str::to_owned);
    assert!(seen.len() >= 4 && seen.iter().all(|colour| known.contains(colour)), "{seen:?}");
}
