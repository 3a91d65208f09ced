//! Sheets and names that are said outside the file, for the question what if: `dusk=3 of 6 x 6 in`.
//!
//! What stands after the `=` is read by the reader of `sheets`, in the system of the edition that is
//! planned, so no twin is asked for. The paper's edge strip stays on the sheets, as it would in the
//! file; a final `without edge strip` takes it off.

use super::desk::Desk;
use super::names::{Names, tidy};
use super::text::Text;
use crate::design::model::{Design, PaperId, PieceKind, Sheets};
use crate::design::resize::{Resized, named};
use crate::diagnostic::Finding;
use crate::source::{Source, Span, Spanned};

/// Other sheets of a paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Said {
    /// The paper.
    pub paper: PaperId,
    /// The sheets, with their places in the text that was said.
    pub sheets: Vec<Sheets>,
    /// Whether they have the paper's edge strip.
    pub edge_strip: bool,
}

/// Reads sheets of one of the design's papers.
///
/// # Errors
/// What is wrong with the text, at its place in it.
pub fn said(source: &Source, design: &Design) -> Result<Said, Vec<Finding>> {
    let mut desk = Desk::new(source, design.units, vec![design.units]);
    match read(&mut desk, source.text(), design) {
        Some(said) if desk.findings.is_empty() => Ok(said),
        _ => Err(desk.findings),
    }
}

/// Reads the name of a piece, or `card`.
///
/// # Errors
/// That there is no such piece, with the nearest name.
pub fn said_piece(source: &Source, design: &Design) -> Result<Resized, Vec<Finding>> {
    let name = Text::new(source.text(), Span::new(0, source.text().len()), true);
    if let Some(found) = named(design, &tidy(name.value)) {
        return Ok(found);
    }
    let mut desk = Desk::new(source, design.units, vec![design.units]);
    let plain = design.pieces.iter().filter(|piece| piece.kind == PieceKind::Plain);
    let list = plain.map(|piece| Spanned::new(piece.name.clone(), Span::default())).collect();
    let card: &[&str] = if design.card.is_some() { &["card"] } else { &[] };
    let _ = desk.declared(name, &Names { noun: "piece", unknown: "unknown-piece", list }, card);
    Err(desk.findings)
}

fn read(desk: &mut Desk<'_>, text: &str, design: &Design) -> Option<Said> {
    let whole = Text::new(text, Span::new(0, text.len()), true);
    let Some(at) = text.find('=') else {
        let name = if whole.value.is_empty() { "dusk".to_owned() } else { tidy(whole.value) };
        desk.note(
            Finding::error("bad-size", whole.span, format!("`{}` does not say which sheets", whole.value), "no `=`")
                .help(format!("write it as `{name}=3 of 6 x 6 in`"))
                .plainly("Other sheets are said as the paper's name, an equals sign and the sheets."),
        );
        return None;
    };
    let name = Text::new(&text[..at], Span::new(0, at), true);
    let paper = paper_named(desk, name, design);
    let sheets = Text::new(&text[at + 1..], Span::new(at + 1, text.len()), true);
    let (sheets, edge_strip) = match sheets.before_words(&["without", "edge", "strip"]) {
        Some(sheets) => {
            (sheets.at_last_comma().filter(|(_, rest)| rest.value.is_empty()).map_or(sheets, |s| s.0), false)
        }
        None => (sheets, true),
    };
    if sheets.value.is_empty() {
        desk.note(
            Finding::error("bad-size", sheets.span, "no sheets are said", "nothing behind the `=`")
                .help(format!("write it as `{}=3 of 6 x 6 in`", tidy(name.value)))
                .plainly("Say how many sheets of what size behind the equals sign."),
        );
        return None;
    }
    let sheets = desk.sheets_value("sheets", sheets);
    Some(Said { paper: paper?, sheets: sheets?, edge_strip })
}

/// The paper of a name; a leftover that is kept is no paper at hand.
fn paper_named(desk: &mut Desk<'_>, name: Text<'_>, design: &Design) -> Option<PaperId> {
    let typed = tidy(name.value);
    let kept = design.papers.iter().find(|paper| paper.name == typed).and_then(|paper| paper.kept_from);
    if let Some(source) = kept {
        let source = &design.paper(source).name;
        desk.note(
            Finding::error(
                "unknown-paper",
                name.span,
                format!("`{typed}` is no paper at hand"),
                format!("a leftover kept from `{source}`"),
            )
            .help(format!("say the sheets of `{source}`, such as `{source}=3 of 6 x 6 in`"))
            .plainly(format!("\"{typed}\" is cut from \"{source}\", so only sheets of \"{source}\" can be said.")),
        );
        return None;
    }
    let at_hand: Vec<PaperId> = design.paper_ids().filter(|id| design.paper(*id).kept_from.is_none()).collect();
    let list = at_hand.iter().map(|id| Spanned::new(design.paper(*id).name.clone(), Span::default())).collect();
    let names = Names { noun: "paper", unknown: "unknown-paper", list };
    desk.declared(name, &names, &[]).map(|place| at_hand[place])
}
