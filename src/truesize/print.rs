//! The sheets for a printer: a tagged PDF, set by the press of the handout.
//!
//! Takes sheets, gives PDF bytes (PDF/UA-1 and PDF/A-2a) that depend on them alone. The template
//! `templates/true-size.typ` draws what it is given where it is given it; the words round the guides are set by it.

use super::scene::{self, Drawn, Picture};
use super::{below, title_of};
use crate::design::model::Design;
use crate::drawing::style;
use crate::fonts;
use crate::geometry::Point;
use crate::guides::model::{GuideSheet, Label};
use crate::handout::{self, Templates};
use crate::length::NM_PER_INCH;
use crate::project::Project;
use crate::words::{pages, true_size as words};
use serde_json::{Map, Value, json};

/// The template that the pages begin with.
const TEMPLATE: &str = "/true-size.typ";

/// Sets sheets of one edition, all of one page, in the language of the project.
///
/// # Errors
/// What the typesetter refuses: a letter that the bundled faces lack, sentences that do not fit over their guides.
pub fn print(project: &Project, sheets: &[GuideSheet], draft: bool, templates: &Templates) -> Result<Vec<u8>, String> {
    let first = sheets.first().ok_or("there are no sheets to print")?;
    let say = project.words();
    let design = &project.design;
    let giver = design.giver().unwrap_or_default();
    let month = design.month.map(|month| pages::month(say, month.value.year, month.value.month));
    let accents = design.accents();
    let data = json!({
        "paper": first.page.word(),
        "zoom": 10,
        "fills": true,
        "lang": pages::lang(say),
        "file-title": words::sheets_title(say, &title_of(project)),
        "author": design.giver().into_iter().collect::<Vec<_>>(),
        "accents": {"notes": accents.notes.to_string(), "cuts": accents.cuts.to_string()},
        "style": {"roles": pens(design), "lettering": letterings(sheets)},
        "margin": GuideSheet::MARGIN,
        "footer": {
            "left": giver,
            "title": design.title.value,
            "rest": pages::footer_rest(say, month.as_deref(), design.units),
        },
        "draft": draft.then(|| pages::draft(say)),
        "below": below(project),
        "faults": {
            "heading": "the heading does not fit on its page",
            "sentences": "the sentences do not fit on their page",
            "below": "the caution does not fit on its page",
        },
        "sheets": sheets.iter().map(|sheet| sheet_data(project, sheet)).collect::<Vec<_>>(),
    });
    handout::set_by(templates, TEMPLATE, &data, handout::date_of(design))
}

/// The pens by the words of the lines.
fn pens(design: &Design) -> Value {
    let pen = |drawn: Drawn| {
        let pen = drawn.pen();
        let colour = style::with_accents(pen.stroke.unwrap_or(style::INK), design.accents());
        (drawn.word().to_owned(), json!({"stroke": colour, "width_nm": pen.width_nm, "dash": pen.dash}))
    };
    Drawn::ALL.map(pen).into_iter().collect::<Map<_, _>>().into()
}

/// The word of the letters of a label: its size and weight.
fn lettering(label: &Label) -> String {
    format!("{}-{}", if label.bold { "bold" } else { "regular" }, label.size)
}

/// Every kind of letters on the sheets.
fn letterings(sheets: &[GuideSheet]) -> Value {
    let mut all = Map::new();
    let labels = sheets.iter().flat_map(|sheet| sheet.guides.iter().flat_map(|guide| &guide.labels));
    let beside = scene::beside("", 0, 0);
    for label in labels.chain([&beside]) {
        let tenths = label.size as f64 * 720.0 / NM_PER_INCH as f64;
        let weight = if label.bold { 700 } else { 400 };
        let letters = json!({"family": fonts::TEXT, "weight": weight, "tenths_of_point": tenths, "colour": style::INK});
        all.insert(lettering(label), letters);
    }
    all.into()
}

fn sheet_data(project: &Project, sheet: &GuideSheet) -> Value {
    let say = project.words();
    let (_, height) = sheet.page.size_nm();
    json!({
        "heading": sheet.heading,
        "head": scene::head(sheet),
        "sentences": sheet.sentences,
        "page": format!("{} {} {} {}", pages::page(say), sheet.number, pages::of(say), sheet.of),
        "pictures": scene::pictures(sheet, say).iter().map(|picture| picture_data(picture, height)).collect::<Vec<_>>(),
    })
}

/// A picture as the templates draw one: from the upper left corner of the page.
fn picture_data(picture: &Picture, height: i64) -> Value {
    let at = |point: &Point| json!({"x": point.x, "y": height - point.y});
    let strokes = picture.strokes.iter().map(|(drawn, line)| {
        json!({
            "kind": "path",
            "role": drawn.word(),
            "points": line.points.iter().map(at).collect::<Vec<_>>(),
            "closed": line.closed,
        })
    });
    let labels = picture.labels.iter().map(|label| {
        json!({
            "role": lettering(label),
            "text": label.text,
            "at": at(&label.at),
            "turned": label.turned,
        })
    });
    json!({"alt": picture.alt, "strokes": strokes.collect::<Vec<_>>(), "labels": labels.collect::<Vec<_>>()})
}
