//! Every line within what a printer reaches, no guide on another, the bars at their length.

use trimwright::design::model::Design;
use trimwright::design::variants::Page;
use trimwright::geometry::{Polygon, Rect};
use trimwright::guides::frame::Frame;
use trimwright::guides::model::{Guide, GuideSheet, Line, Role};
use trimwright::guides::{asked, sheets};
use trimwright::layout::model::Layout;

use super::{laid, of_demos};
use crate::sound;

fn box_of<'a>(lines: impl IntoIterator<Item = &'a Line>) -> Option<Rect> {
    let points = lines.into_iter().flat_map(|line| line.points.iter());
    points.map(|point| Rect::between(*point, *point)).reduce(Rect::hull)
}

fn live(page: Page) -> Rect {
    let (width, height) = page.size_nm();
    Rect::at(0, 0, width, height).grown(-12_700_000)
}

/// What holds of any pages.
pub(super) fn hold(name: &str, sheets: &[GuideSheet]) {
    for (sheet, number) in sheets.iter().zip(1..) {
        assert_eq!((sheet.number, sheet.of as usize), (number, sheets.len()), "{name}");
        assert_eq!(sheet.bars.iter().map(|bar| bar.length).collect::<Vec<_>>(), [50_800_000, 50_000_000], "{name}");
        let live = live(sheet.page);
        for bar in &sheet.bars {
            assert!(live.contains(Rect::at(bar.at.x, bar.at.y, bar.length, 0)), "{name}: a bar leaves the page");
        }
        let boxes: Vec<Rect> = sheet.guides.iter().map(|guide| box_of(&guide.lines).unwrap()).collect();
        for (index, (own, guide)) in boxes.iter().zip(&sheet.guides).enumerate() {
            assert!(live.contains(*own), "{name}: {} leaves the page: {own:?}", guide.word);
            assert!(own.bottom > sheet.bars[0].at.y, "{name}: {} lies on the bars", guide.word);
            for other in &boxes[..index] {
                assert!(own.overlap(*other).is_none(), "{name}: {} lies on another", guide.word);
            }
            for line in &guide.lines {
                assert!(line.role != Role::Cut || line.closed, "{name}: {} is cut along an open line", guide.word);
            }
        }
    }
    let mut words: Vec<&str> = sheets.iter().flat_map(|sheet| &sheet.guides).map(|guide| guide.word.as_str()).collect();
    words.sort_unstable();
    let all = words.len();
    words.dedup();
    assert_eq!(words.len(), all, "{name}: two guides bear one word");
}

/// The rings of a guide as they lie on the page enclose what the frame does: nothing is scaled.
fn encloses(guide: &Guide, frame: &Frame, name: &str) {
    let rings = guide.lines.iter().filter(|line| line.role == Role::Cut);
    let mut own: Vec<i128> = rings.map(|line| Polygon::new(line.points.clone()).unwrap().area2()).collect();
    let mut wanted: Vec<i128> = frame
        .body
        .parts()
        .iter()
        .flat_map(Polygon::rings)
        .map(|ring| Polygon::new(ring.to_vec()).unwrap().area2())
        .collect();
    own.sort_unstable();
    wanted.sort_unstable();
    assert_eq!(own, wanted, "{name}: {}", guide.word);
    let (lies, straight) = (box_of(&guide.lines).unwrap(), frame.outline.bounds());
    let sides = |rect: Rect| (rect.width().min(rect.height()), rect.width().max(rect.height()));
    assert_eq!(sides(lies), sides(straight), "{name}: {}", guide.word);
}

fn whole_frames_are_true(design: &Design, layout: &Layout, sheets: &[GuideSheet], name: &str) {
    let all: Vec<&Guide> = sheets.iter().flat_map(|sheet| &sheet.guides).collect();
    let whole = all.iter().filter(|guide| guide.word.starts_with("frame-") && !guide.word.contains("-part-"));
    let halves = all.iter().filter(|guide| guide.word.starts_with("half-frame-")).count();
    let parted = all.iter().filter(|guide| guide.word.ends_with("-part-1") && guide.word.starts_with("frame-")).count();
    let frames = asked::frames(design, layout);
    assert_eq!(whole.clone().count() + halves + parted, frames.len(), "{name}: every frame has its guide");
    for frame in &frames {
        let names = frame.layers.iter().flat_map(|layer| design.layer(*layer).name.split(' '));
        let word = names.fold("frame".to_owned(), |word, name| format!("{word}-{}", name.to_lowercase()));
        if let Some(guide) = whole.clone().find(|guide| guide.word == word) {
            encloses(guide, frame, name);
        } else {
            assert!(halves + parted > 0, "{name}: {word}");
        }
    }
}

#[test]
fn pages_of_the_demos_hold() {
    let mut count = 0;
    for (name, design, layout) in of_demos() {
        for page in [Page::Letter, Page::A4] {
            let sheets = sheets(&design, &layout, page);
            hold(&name, &sheets);
            whole_frames_are_true(&design, &layout, &sheets, &name);
            count += sheets.len();
        }
    }
    assert!(count > 10, "{count} pages");
}

fn pages_of_sound_designs(seeds: impl Iterator<Item = u64>) {
    for seed in seeds {
        let text = format!("{}\nframes: all that help\n", sound::design(seed));
        for (design, layout) in laid(&text) {
            let sheets = sheets(&design, &layout, Page::usual(design.units));
            hold(&format!("sound design {seed}"), &sheets);
            whole_frames_are_true(&design, &layout, &sheets, &format!("sound design {seed}"));
        }
    }
}

#[test]
fn pages_of_sound_designs_hold() {
    pages_of_sound_designs((0..500).filter(|seed| seed % 20 == 0));
}

#[test]
#[ignore = "minutes: run by name"]
fn pages_of_sound_designs_hold_all() {
    pages_of_sound_designs(0..500);
}
