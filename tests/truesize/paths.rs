//! Paths read back from the PDFs' content by a general library, with all that moves them, against the sheets.

use super::both;
use lopdf::content::{Content, Operation};
use lopdf::{Document, Object};
use trimwright::guides::model::{GuideSheet, Line};

/// A path as it is stroked.
#[derive(Debug, Clone)]
pub(super) struct Stroked {
    /// Corners, nm from the lower left.
    pub(super) points: Vec<(f64, f64)>,
    pub(super) closed: bool,
    /// Dashes and gaps, nm.
    pub(super) dash: Vec<f64>,
    /// Width, nm.
    pub(super) width: f64,
    /// The layer that it lies in.
    pub(super) layer: Option<String>,
}

/// A thousandth of a millimetre, nm.
const MICROMETRE: f64 = 1000.0;

const NM_PER_POINT: f64 = 25_400_000.0 / 72.0;

type Matrix = [f64; 6];

/// `first`, then `second` (ISO 32000-1, 8.3.4).
fn then([a, b, c, d, e, f]: Matrix, [k, l, m, n, o, p]: Matrix) -> Matrix {
    [a * k + b * m, a * l + b * n, c * k + d * m, c * l + d * n, e * k + f * m + o, e * l + f * n + p]
}

fn numbers(operands: &[Object]) -> Vec<f64> {
    operands.iter().filter_map(|operand| operand.as_float().ok()).map(f64::from).collect()
}

/// The names of layers by the names that a page's content calls them.
fn layer_of(file: &Document, page: lopdf::ObjectId, operation: &Operation) -> Option<String> {
    if operation.operands.first()?.as_name().ok()? != b"OC" {
        return None;
    }
    let called = operation.operands.get(1)?.as_name().ok()?;
    let (direct, shared) = file.get_page_resources(page).ok()?;
    let resources = direct.or_else(|| file.get_dictionary(*shared.first()?).ok())?;
    let groups = resources.get_deref(b"Properties", file).ok()?.as_dict().ok()?;
    let name = groups.get_deref(called, file).ok()?.as_dict().ok()?.get(b"Name").ok()?;
    lopdf::decode_text_string(name).ok()
}

/// Every stroked path of each page.
pub(super) fn pages(bytes: &[u8]) -> Vec<Vec<Stroked>> {
    let file = Document::load_mem(bytes).expect("a PDF");
    file.page_iter().map(|page| stroked(&file, page)).collect()
}

#[derive(Clone)]
struct State {
    moved: Matrix,
    dash: Vec<f64>,
    width: f64,
}

fn stroked(file: &Document, page: lopdf::ObjectId) -> Vec<Stroked> {
    let content = Content::decode(&file.get_page_content(page)).expect("content");
    let mut state = State { moved: [1.0, 0.0, 0.0, 1.0, 0.0, 0.0], dash: Vec::new(), width: 1.0 };
    let mut layers: Vec<Option<String>> = Vec::new();
    let (mut kept, mut found) = (Vec::new(), Vec::new());
    let mut paths: Vec<(Vec<(f64, f64)>, bool)> = Vec::new();
    for operation in &content.operations {
        let given = numbers(&operation.operands);
        let moved = state.moved;
        let at = |x: f64, y: f64| {
            let [.., x, y] = then([1.0, 0.0, 0.0, 1.0, x, y], moved);
            (x * NM_PER_POINT, y * NM_PER_POINT)
        };
        // Nothing on these pages is scaled but by one number both ways.
        let scale = moved[0].hypot(moved[1]) * NM_PER_POINT;
        match operation.operator.as_str() {
            "q" => kept.push(state.clone()),
            "Q" => state = kept.pop().expect("what was kept"),
            "cm" => state.moved = then(given.try_into().expect("six numbers"), state.moved),
            "w" => state.width = given[0] * scale,
            "d" => {
                let dash = operation.operands[0].as_array().expect("dashes");
                state.dash = numbers(dash).into_iter().map(|length| length * scale).collect();
            }
            "m" => paths.push((vec![at(given[0], given[1])], false)),
            "l" => paths.last_mut().expect("a path").0.push(at(given[0], given[1])),
            "c" => paths.last_mut().expect("a path").0.push(at(given[4], given[5])),
            "h" => paths.last_mut().expect("a path").1 = true,
            "re" => {
                let [x, y, width, height] = given.try_into().expect("four numbers");
                let corners = [(x, y), (x + width, y), (x + width, y + height), (x, y + height)];
                paths.push((corners.map(|(x, y)| at(x, y)).to_vec(), true));
            }
            "S" | "s" | "B" => {
                for (mut points, closed) in std::mem::take(&mut paths) {
                    // A writer may draw the last side and close the path as well.
                    if closed && points.len() > 1 && points.first() == points.last() {
                        let _ = points.pop();
                    }
                    let closed = closed || operation.operator == "s";
                    let layer = layers.iter().rev().flatten().next().cloned();
                    found.push(Stroked { points, closed, dash: state.dash.clone(), width: state.width, layer });
                }
            }
            "f" | "f*" | "n" | "W n" => paths.clear(),
            "BDC" | "BMC" => layers.push(layer_of(file, page, operation)),
            "EMC" => drop(layers.pop()),
            "Do" => panic!("a form that is not walked"),
            _ => {}
        }
    }
    found
}

/// Whether a path is a line, corner by corner, to a micrometre.
fn is(path: &Stroked, line: &Line) -> bool {
    path.closed == line.closed
        && path.points.len() == line.points.len()
        && path
            .points
            .iter()
            .zip(&line.points)
            .all(|((x, y), point)| (x - point.x as f64).abs() <= MICROMETRE && (y - point.y as f64).abs() <= MICROMETRE)
}

/// Lines of sheets that no path is, and paths above the foot that are no line.
pub(super) fn faults(bytes: &[u8], sheets: &[GuideSheet], has_layers: bool) -> Vec<String> {
    let pages = pages(bytes);
    assert_eq!(pages.len(), sheets.len());
    let mut faults = Vec::new();
    for (mut paths, sheet) in pages.into_iter().zip(sheets) {
        for line in sheet.guides.iter().flat_map(|guide| &guide.lines) {
            let role = line.role;
            match paths.iter().position(|path| is(path, line)) {
                None => faults.push(format!("page {}: no path is {line:?}", sheet.number)),
                Some(at) => {
                    let path = paths.remove(at);
                    let pen = trimwright::drawing::style::guide_pen(role);
                    let dash: Vec<f64> = pen.dash.unwrap_or_default().iter().map(|length| *length as f64).collect();
                    let alike = |(one, other): (&f64, &f64)| (one - other).abs() <= MICROMETRE;
                    let is_so = dash.len() == path.dash.len() && dash.iter().zip(&path.dash).all(alike);
                    if !is_so || (path.width - pen.width_nm as f64).abs() > MICROMETRE {
                        faults.push(format!("page {}: {path:?} is not drawn as {role:?}", sheet.number));
                    }
                    if has_layers && path.layer.as_deref() != Some(role.word()) {
                        faults.push(format!("page {}: {path:?} is not in the layer of {role:?}", sheet.number));
                    }
                }
            }
        }
        let foot = (GuideSheet::MARGIN + GuideSheet::FOOT) as f64;
        let above = |path: &&Stroked| path.points.iter().any(|point| point.1 > foot - 1.0);
        faults.extend(paths.iter().filter(above).map(|path| format!("page {}: {path:?} is no line", sheet.number)));
    }
    faults
}

#[test]
fn paths_come_back_to_a_micrometre() {
    for made in both() {
        let (print, layered) = (faults(&made.print, &made.sheets, false), faults(&made.layered, &made.sheets, true));
        assert!(print.is_empty() && layered.is_empty(), "{print:#?}{layered:#?}");
    }
}

#[test]
fn a_corner_two_micrometres_off_would_be_seen() {
    for made in both() {
        let mut sheets = made.sheets.clone();
        sheets[1].guides[0].lines[0].points[17].y += 2000;
        for bytes in [&made.print, &made.layered] {
            // The line is not there, and a path is there that is no line.
            assert_eq!(faults(bytes, &sheets, false).len(), 2);
        }
        // Another role is another pen and another layer.
        let mut sheets = made.sheets.clone();
        sheets[0].guides[1].lines[0].role = trimwright::guides::model::Role::Score;
        assert_eq!(faults(&made.print, &sheets, false).len(), 1);
        assert_eq!(faults(&made.layered, &sheets, true).len(), 2);
    }
}
