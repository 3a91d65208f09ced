//! The layers of the cut file: what they say of themselves, and that a reader that switches one off loses just its
//! lines. Two readers in no kinship: poppler (C++), hayro (Rust).

use super::{A4, Written, both, paths, written};
use crate::handout::ink::Grey;
use crate::support::tool;
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};
use lopdf::{Dictionary, Document, Object};
use trimwright::guides::model::{GuideSheet, Role};

fn groups(file: &Document) -> Vec<(lopdf::ObjectId, Dictionary)> {
    let properties =
        file.catalog().expect("a catalogue").get(b"OCProperties").expect("layers").as_dict().expect("them");
    let listed = properties.get(b"OCGs").expect("groups").as_array().expect("groups");
    assert_eq!(
        properties
            .get(b"D")
            .and_then(Object::as_dict)
            .and_then(|usual| usual.get(b"Order"))
            .expect("order")
            .as_array()
            .expect("order"),
        listed
    );
    listed
        .iter()
        .map(|id| id.as_reference().expect("a reference"))
        .map(|id| (id, file.get_dictionary(id).expect("a group").clone()))
        .collect()
}

#[test]
fn layers_say_what_is_done_along_their_lines() {
    for made in both() {
        let file = Document::load_mem(&made.layered).expect("a PDF");
        assert_eq!(file.version, "1.7");
        let said: Vec<(String, Option<String>, Option<String>)> = groups(&file)
            .iter()
            .map(|(_, group)| {
                let metadata = group.get(b"GTS_Metadata").and_then(Object::as_dict).ok();
                let of = |key: &[u8]| {
                    let name = metadata?.get(key).ok()?.as_name().ok()?;
                    Some(String::from_utf8_lossy(name).into_owned())
                };
                let name = lopdf::decode_text_string(group.get(b"Name").expect("a name")).expect("text");
                (name, of(b"GTS_ProcStepsGroup"), of(b"GTS_ProcStepsType"))
            })
            .collect();
        // The PDF Association's open model of PDF (Arlington), `GTS_ProcStepsGroup.tsv`: values after ISO 19593-1.
        let step = |name: &str, group: &str, kind: &str| {
            let some = |word: &str| Some(word.to_owned()).filter(|word| !word.is_empty());
            (name.to_owned(), some(group), some(kind))
        };
        let expected = [
            step("cut", "Structural", "Cutting"),
            step("score", "Structural", "Creasing"),
            step("fold", "Structural", "Folding"),
            step("draw", "", ""),
            step("notes", "Legend", ""),
        ];
        assert_eq!(said, expected);
        // Nothing claims another standard, and no layer's dictionary is left of the writer's own.
        let text = String::from_utf8_lossy(&made.layered).into_owned();
        assert!(!text.contains("GTS_PDFX") && !text.contains("Illustrator") && text.contains("/ID"));
    }
}

#[test]
fn page_boxes_are_exact() {
    // ANSI/ASME Y14.1 size A and ISO 216, in points of 1/72 in.
    for (made, width, height) in [(both()[0], 612.0, 792.0), (both()[1], 210.0 * 72.0 / 25.4, 297.0 * 72.0 / 25.4)] {
        let file = Document::load_mem(&made.layered).expect("a PDF");
        for page in file.page_iter() {
            let page = file.get_dictionary(page).expect("a page");
            for key in [b"MediaBox".as_slice(), b"TrimBox", b"CropBox"] {
                let sides = page.get(key).expect("a box").as_array().expect("a box");
                let sides: Vec<f64> = sides.iter().map(|side| f64::from(side.as_float().expect("a number"))).collect();
                let expected = [0.0, 0.0, width, height];
                // 0.0001 pt are 0.04 micrometres.
                assert!(sides.iter().zip(expected).all(|(side, said)| (side - said).abs() < 1e-4), "{sides:?}");
            }
        }
    }
}

/// The file with one layer switched off.
fn without(bytes: &[u8], role: Role) -> Vec<u8> {
    let mut file = Document::load_mem(bytes).expect("a PDF");
    let at = Role::ALL.iter().position(|one| *one == role).expect("a role");
    let off = groups(&file)[at].0;
    let properties = file.catalog_mut().expect("a catalogue").get_mut(b"OCProperties").expect("layers");
    let usual = properties.as_dict_mut().and_then(|all| all.get_mut(b"D")).and_then(Object::as_dict_mut).expect("D");
    usual.set("OFF", vec![Object::Reference(off)]);
    let mut bytes = Vec::new();
    file.save_to(&mut bytes).expect("written");
    bytes
}

/// Pixels an inch.
const COARSE: f64 = 100.0;
const PIXEL: f64 = 25_400_000.0 / COARSE;

/// The first page by poppler.
fn by_poppler(bytes: &[u8]) -> Grey {
    let folder = tempfile::tempdir().expect("a folder");
    let prefix = folder.path().join("page");
    let path = written(bytes, folder.path());
    let _ = tool(
        "pdftoppm",
        &["-r", "100", "-gray", "-singlefile", "-f", "1", "-l", "1", &path, &prefix.to_string_lossy()],
    );
    Grey::read(&std::fs::read(prefix.with_extension("pgm")).expect("a picture"))
}

/// The first page by hayro.
fn by_hayro(bytes: &[u8]) -> Grey {
    let pdf = Pdf::new(bytes.to_vec()).expect("a PDF");
    let scale = (COARSE / 72.0) as f32;
    let settings = RenderSettings { x_scale: scale, y_scale: scale, bg_color: WHITE, ..RenderSettings::default() };
    let pixels = render(&pdf.pages()[0], &RenderCache::new(), &InterpreterSettings::default(), &settings);
    let grey = |pixel: &[u8]| ((u32::from(pixel[0]) + u32::from(pixel[1]) + u32::from(pixel[2])) / 3) as u8;
    Grey {
        width: usize::from(pixels.width()),
        height: usize::from(pixels.height()),
        values: pixels.data_as_u8_slice().chunks_exact(4).map(grey).collect(),
    }
}

/// Pixels within two of the lines of some roles on the first page, legend and bars left out.
fn near(sheet: &GuideSheet, (width, height): (usize, usize), is_meant: impl Fn(Role) -> bool) -> Vec<bool> {
    let mut mask = vec![false; width * height];
    for line in sheet.guides.iter().flat_map(|guide| &guide.lines).filter(|line| is_meant(line.role)) {
        let ends = if line.closed { line.points.len() } else { line.points.len() - 1 };
        for n in 0..ends {
            let (from, to) = (line.points[n], line.points[(n + 1) % line.points.len()]);
            let steps = (from.distance(to) as f64 / PIXEL).ceil().max(1.0) as i64;
            for step in 0..=steps {
                let share = |from: i64, to: i64| from as f64 + (to - from) as f64 * step as f64 / steps as f64;
                let x = (share(from.x, to.x) / PIXEL) as i64;
                let y = height as i64 - 1 - (share(from.y, to.y) / PIXEL) as i64;
                for (dx, dy) in (-2..=2).flat_map(|dx| (-2..=2).map(move |dy| (dx, dy))) {
                    let at = usize::try_from((y + dy) * width as i64 + x + dx).expect("inside the page");
                    mask[at] = true;
                }
            }
        }
    }
    mask
}

/// What is wrong with a page that was drawn with a layer and without it.
fn faults(sheet: &GuideSheet, role: Role, with: &Grey, without: &Grey) -> Vec<String> {
    let size = (with.width, with.height);
    let (own, others) = (near(sheet, size, |one| one == role), near(sheet, size, |one| one != role));
    let (mut vanished, mut lost, mut left) = (0, 0, 0);
    for at in 0..with.values.len() {
        let (dark, still) = (with.values[at] < 200, without.values[at] < 200);
        // Notes are words and bars too: all that is no line of another role.
        let is_own = if role == Role::Note { !others[at] } else { own[at] };
        match (dark, still) {
            (true, false) if is_own => vanished += 1,
            (true, false) if !others[at] || !own[at] => lost += 1,
            (_, true) if is_own && !others[at] => left += 1,
            _ => {}
        }
    }
    let mut faults = Vec::new();
    if vanished < 30 {
        faults.push(format!("only {vanished} pixels of {role:?} vanish"));
    }
    if lost > 0 {
        faults.push(format!("{lost} pixels vanish that are not {role:?}"));
    }
    // A label may lie near to a line of another role: only words stay there.
    if left > 0 {
        faults.push(format!("{left} pixels of {role:?} stay"));
    }
    faults
}

fn switched(made: &Written, draw: impl Fn(&[u8]) -> Grey) -> Vec<String> {
    let with = draw(&made.layered);
    let sheet = &made.sheets[0];
    Role::ALL.into_iter().flat_map(|role| faults(sheet, role, &with, &draw(&without(&made.layered, role)))).collect()
}

#[test]
fn a_layer_switched_off_takes_just_its_lines_in_poppler() {
    for made in both() {
        let faults = switched(made, by_poppler);
        assert!(faults.is_empty(), "{faults:#?}");
    }
}

#[test]
fn a_layer_switched_off_takes_just_its_lines_in_a_second_reader() {
    for made in both() {
        let faults = switched(made, by_hayro);
        assert!(faults.is_empty(), "{faults:#?}");
    }
}

#[test]
fn a_layer_that_takes_too_much_would_be_seen() {
    let (with, score) = (by_poppler(&A4.layered), by_poppler(&without(&A4.layered, Role::Score)));
    let sheet = &A4.sheets[0];
    assert!(!faults(sheet, Role::Cut, &with, &score).is_empty());
    assert!(!faults(sheet, Role::Score, &with, &with).is_empty());
    assert!(!faults(sheet, Role::Score, &with, &by_poppler(&without(&A4.layered, Role::Cut))).is_empty());
}

#[test]
fn every_stroke_lies_in_a_layer() {
    for made in both() {
        for path in paths::pages(&made.layered).into_iter().flatten() {
            assert!(path.layer.is_some(), "{path:?}");
        }
    }
}
