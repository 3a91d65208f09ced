//! The sheets for cutting machines and print shops: a PDF whose layers are what is done along their lines.
//!
//! Takes sheets, gives PDF bytes that depend on them alone: the pages of the printed sheets, a layer (optional-content
//! group) each for cut, score, fold, draw and notes. Words, bars and what the lines mean are notes. Must never know
//! what a layer is called in a dictionary: `layers` does.

use super::scene::{self, Drawn, Picture};
use super::{below, layers, title_of};
use crate::colour::Colour;
use crate::drawing::style;
use crate::fonts::{self, metrics};
use crate::geometry::Point;
use crate::guides::model::{GuideSheet, Label, Line, Role};
use crate::handout;
use crate::length::NM_PER_INCH;
use crate::project::Project;
use crate::words::{pages, true_size as words};
use printpdf::{
    Color, FontId, Layer, LayerInternalId, LineDashPattern, LinePoint, Op, ParsedFont, PdfDocument, PdfFont,
    PdfFontHandle, PdfPage, PdfSaveOptions, Pt, Rect, Rgb, TextItem, TextMatrix,
};

/// Writes sheets of one edition, in the language of the project.
///
/// # Errors
/// A letter that the bundled faces lack; what the writer says.
pub fn layered(project: &Project, sheets: &[GuideSheet], draft: bool) -> Result<Vec<u8>, String> {
    let mut file = PdfDocument::new("");
    for role in Role::ALL {
        file.resources.layers.map.insert(layer_id(role), Layer::new(role.word()));
    }
    for bold in [false, true] {
        let bytes = fonts::FACES
            .iter()
            .find(|(family, weight, _)| *family == fonts::TEXT && *weight == weight_of(bold))
            .map(|(.., bytes)| *bytes)
            .unwrap_or_default();
        let face = ParsedFont::from_bytes(bytes, 0, &mut Vec::new()).ok_or("a bundled face cannot be read")?;
        file.resources.fonts.map.insert(font_id(bold), PdfFont::new(face));
    }
    for sheet in sheets {
        file.pages.push(page(project, sheet, draft)?);
    }
    let mut warnings = Vec::new();
    let made = printpdf::serialize::to_lopdf_doc(&file, &PdfSaveOptions::default(), &mut warnings);
    if let Some(warning) = warnings.first() {
        return Err(format!("the layered file cannot be written: {warning:?}"));
    }
    let design = &project.design;
    let about = layers::About {
        title: words::cut_file_title(project.words(), &title_of(project)),
        author: design.giver().map(str::to_owned),
        date: handout::date_of(design),
        lang: pages::lang(project.words()),
    };
    layers::finished(made, &about)
}

/// Sorted as the layers are listed; also the name in a page's content.
fn layer_id(role: Role) -> LayerInternalId {
    let number = Role::ALL.iter().position(|one| *one == role).unwrap_or_default() + 1;
    LayerInternalId(format!("layer-{number}-{}", role.word()))
}

fn font_id(bold: bool) -> FontId {
    FontId(if bold { "bold" } else { "regular" }.to_owned())
}

const fn weight_of(bold: bool) -> u16 {
    if bold { 700 } else { 400 }
}

/// Nanometres as points. A page is under 1000 pt high, so that a point off its place by what this number cannot hold is
/// off by less than 0.02 µm.
fn pt(nm: i64) -> Pt {
    Pt((nm as f64 * 72.0 / NM_PER_INCH as f64) as f32)
}

fn page(project: &Project, sheet: &GuideSheet, draft: bool) -> Result<PdfPage, String> {
    let pictures = scene::pictures(sheet, project.words());
    let (foot, guides): (Vec<&Picture>, Vec<&Picture>) = {
        let (guides, foot) = pictures.split_at(sheet.guides.len());
        (foot.iter().collect(), guides.iter().collect())
    };
    let mut ops = Vec::new();
    for role in Role::ALL {
        ops.push(Op::BeginLayer { layer_id: layer_id(role) });
        let of_role = |picture: &&Picture| {
            let strokes = picture.strokes.iter().filter(|(drawn, _)| *drawn == Drawn::As(role));
            strokes.cloned().collect::<Vec<_>>()
        };
        draw(project, guides.iter().flat_map(of_role), &mut ops);
        if role == Role::Note {
            draw(project, foot.iter().flat_map(|picture| picture.strokes.iter().cloned()), &mut ops);
            let labels = pictures.iter().flat_map(|picture| &picture.labels);
            for label in round(project, sheet, draft).iter().chain(labels) {
                write(label, &mut ops)?;
            }
        }
        ops.push(Op::EndLayer);
    }
    let (width, height) = sheet.page.size_nm();
    let all = Rect { x: Pt(0.0), y: Pt(0.0), width: pt(width), height: pt(height), mode: None, winding_order: None };
    Ok(PdfPage { media_box: all.clone(), trim_box: all.clone(), crop_box: all, ops })
}

fn draw(project: &Project, strokes: impl Iterator<Item = (Drawn, Line)>, ops: &mut Vec<Op>) {
    let mut last = None;
    for (drawn, line) in strokes {
        if last != Some(drawn) {
            let pen = drawn.pen();
            ops.push(Op::SetOutlineColor { col: colour(project, pen.stroke.unwrap_or(style::INK)) });
            ops.push(Op::SetOutlineThickness { pt: pt(pen.width_nm) });
            let dash: Vec<f32> = pen.dash.unwrap_or_default().iter().map(|length| pt(*length).0).collect();
            ops.push(Op::SetLineDashPattern { dash: LineDashPattern::new(0.0, &dash) });
            last = Some(drawn);
        }
        let point = |point: &Point| LinePoint { p: printpdf::Point { x: pt(point.x), y: pt(point.y) }, bezier: false };
        let points = line.points.iter().map(point).collect();
        ops.push(Op::DrawLine { line: printpdf::Line { points, is_closed: line.closed } });
    }
}

fn colour(project: &Project, colour: &str) -> Color {
    ink(&style::with_accents(colour, project.design.accents()))
}

fn ink(colour: &str) -> Color {
    let Colour(parts) = Colour::parse(colour).unwrap_or(Colour([0; 3]));
    let [r, g, b] = parts.map(|byte| f32::from(byte) / 255.0);
    Color::Rgb(Rgb { r, g, b, icc_profile: None })
}

/// Puts a label where it stands; its colour is that of the letters in the printed sheets.
fn write(label: &Label, ops: &mut Vec<Op>) -> Result<(), String> {
    let missing = |letter: &char| !metrics::draws(fonts::TEXT, weight_of(label.bold), *letter);
    if let Some(letter) = label.text.chars().find(missing) {
        return Err(format!("the typefaces cannot print `{letter}` in `{}`", label.text));
    }
    let half = scene::width(&label.text, label.size, label.bold) / 2;
    let matrix = if label.turned {
        let at = label.at.moved(0, -half);
        TextMatrix::Raw([0.0, 1.0, -1.0, 0.0, pt(at.x).0, pt(at.y).0])
    } else {
        let at = label.at.moved(-half, 0);
        TextMatrix::Raw([1.0, 0.0, 0.0, 1.0, pt(at.x).0, pt(at.y).0])
    };
    ops.extend([
        Op::StartTextSection,
        Op::SetFillColor { col: ink(style::INK) },
        Op::SetFont { font: PdfFontHandle::External(font_id(label.bold)), size: pt(label.size) },
        Op::SetTextMatrix { matrix },
        Op::ShowText { items: vec![TextItem::Text(label.text.clone())] },
        Op::EndTextSection,
    ]);
    Ok(())
}

/// The letters of head and foot: heading, sentences, caution, last line, tenths of a point.
const HEADING: i64 = 180;
const SENTENCE: i64 = 100;
const CAUTION: i64 = 90;

/// What stands round the guides: heading and sentences above them, how to print and the caution below.
fn round(project: &Project, sheet: &GuideSheet, draft: bool) -> Vec<Label> {
    let say = project.words();
    let (width, height) = sheet.page.size_nm();
    let live = width - 2 * GuideSheet::MARGIN;
    let mut labels = Vec::new();
    // Lines from the left margin downward, from the capitals of the first.
    let mut lines = |texts: &[String], size: i64, bold: bool, top: i64| {
        let mut y = top - size * 705 / 1000;
        for line in texts.iter().flat_map(|text| broken(text, size, bold, live)) {
            let at = Point::new(GuideSheet::MARGIN + scene::width(&line, size, bold) / 2, y);
            labels.push(Label { text: line, at, size, turned: false, bold });
            y -= size * 125 / 100;
        }
        y
    };
    let mark = if draft { format!("{} · ", pages::draft(say)) } else { String::new() };
    let heading = format!("{mark}{}", sheet.heading);
    let size = [HEADING, 150, 120, 100, 80].map(scene::tenths_of_point);
    let fits = |size: &&i64| scene::width(&heading, **size, true) <= live;
    let size = *size.iter().find(fits).unwrap_or(&size[4]);
    let top = height - GuideSheet::MARGIN;
    lines(&[heading], size, true, top);
    let small = scene::tenths_of_point(SENTENCE);
    let sentences: Vec<String> = sheet.sentences.iter().map(|sentence| scene::with_signs(sentence)).collect();
    lines(&sentences, small, false, top - scene::tenths_of_point(HEADING) * 705 / 1000 - 4_000_000);
    lines(&below(project), scene::tenths_of_point(CAUTION), false, GuideSheet::MARGIN + 19_000_000);
    let page = format!("{} {} {} {}", pages::page(say), sheet.number, pages::of(say), sheet.of);
    let last = format!("{} · {page}", project.design.title.value);
    lines(&[last], scene::tenths_of_point(CAUTION), false, GuideSheet::MARGIN + 3_200_000);
    labels
}

/// A text in lines no wider than `room`, broken at spaces; a word that is wider stands alone.
fn broken(text: &str, size: i64, bold: bool, room: i64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        match lines.last_mut() {
            Some(line) if scene::width(&format!("{line} {word}"), size, bold) <= room => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
