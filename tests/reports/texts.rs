//! Texts as they come on paper, held to the faces and to widths counted by hand.

use crate::support::{found, run};

fn kite(title: &str, extra: &str) -> String {
    format!(
        "title: {title}
month: 2026-04
cards: 2
units: inch
card: {{size: 4 1/4 x 5 1/2 in, fold: side, from: white}}
papers:
  white: {{sheets: 1 of letter}}
  slate: {{sheets: 1 of letter}}
pieces:
  mat: {{size: 4 x 5 1/4 in, from: slate}}
front:
  - place: mat
    centre: both ways
    glue: tape
{extra}"
    )
}

/// Letters of the Unicode blocks Basic Latin and Latin-1 Supplement (The Unicode Standard, charts U0000 and
/// U0080), without those that have no picture.
#[test]
fn the_letters_of_western_europe_can_be_printed() {
    let letters: String =
        (0x21_u32..=0x7e).chain(0xa1..=0xff).filter_map(char::from_u32).filter(|c| *c != '\u{ad}').collect();
    for chunk in letters.chars().collect::<Vec<_>>().chunks(20) {
        let title: String = chunk.iter().filter(|c| !matches!(c, '"' | '\\')).collect();
        assert_eq!(found(&kite(&format!("\"{title}\""), "")), [""; 0], "{title}");
    }
    assert_eq!(found(&kite("Kite 灯籠", "")), ["missing-glyph@1"]);
    assert_eq!(found(&kite("Kite ½ – ¾ “quoted” … × ·", "")), [""; 0]);
}

/// Ten capitals M of the display face: the face's own advance, read with ttf-parser, gives the width of the line.
#[test]
fn a_text_is_measured_with_its_face() {
    let (_, _, bytes) = trimwright::fonts::FACES[0];
    let face = ttf_parser::Face::parse(bytes, 0).unwrap();
    let m = face.glyph_index('M').unwrap();
    let wide = f64::from(face.glyph_hor_advance(m).unwrap()) / f64::from(face.units_per_em());
    // A title's letters are no smaller than 20 pt where it takes two lines of 105 mm; a point is 25.4 / 72 mm.
    let most = (105.0 / (wide * 20.0 * 25.4 / 72.0)).floor() as usize;
    assert_eq!(found(&kite(&"M".repeat(most), "")), [""; 0]);
    assert_eq!(found(&kite(&"M".repeat(most + 1), "")), ["text-too-long@1"]);
    let line = "M".repeat(most);
    assert_eq!(found(&kite(&format!("{line} {line}"), "")), [""; 0]);
    let outcome = run(&kite(&format!("{line} {line} M"), ""));
    assert_eq!(outcome.findings.len(), 1);
    assert!(!outcome.has_errors(), "three lines are ugly and not wrong");
    assert_eq!(outcome.findings[0].primary.text, "takes 3 lines of 105 mm, and 2 are there");
}

#[test]
fn a_note_needs_its_work() {
    for (work, wrong) in [
        ("stamping", true),
        ("putting together", true),
        ("folding", false),
        ("cutting", false),
        ("decorating", false),
        ("posting", false),
        ("mat", false),
    ] {
        let text = kite("Kite", &format!("notes:\n  - on: {work}\n    say: Take care.\n"));
        let wanted: &[&str] = if wrong { &["note-without-its-work@17"] } else { &[] };
        assert_eq!(found(&text), wanted, "{work}");
    }
}

/// What other YAML readers make of these words: yes and no are true and false in YAML 1.1 (yaml.org, type bool);
/// a `#` behind a blank starts a comment, and `: ` parts key and value (YAML 1.2, 6.6 and 7.4).
#[test]
fn what_yaml_makes_of_a_text_is_said() {
    for title in ["#10", "yes", "No", "Bows: October", "Card #10"] {
        assert_eq!(found(&kite(title, "")), ["yaml-surprise@1"], "{title}");
        assert_eq!(found(&kite(&format!("\"{title}\""), "")), [""; 0], "{title}");
    }
}
