//! Every line within what a printer reaches, no guide on another, the bars at their length.

use trimwright::design::variants::Page;
use trimwright::geometry::Rect;
use trimwright::guides::model::{GuideSheet, Line, Role};
use trimwright::guides::sheets;
use trimwright::project::Project;

use crate::support::{demos, editions_at};

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

pub(super) fn each_project(mut with: impl FnMut(&str, &Project)) {
    for path in demos() {
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        editions_at(&path, &name).iter().for_each(|project| with(&name, project));
    }
}

#[test]
fn pages_of_the_demos_hold() {
    each_project(|name, project| {
        for page in [Page::Letter, Page::A4] {
            let sheets = sheets(&project.design, &project.layout, page);
            hold(name, &sheets);
            for sheet in &sheets {
                println!(
                    "{name} {} {}/{}: {:?}",
                    page.word(),
                    sheet.number,
                    sheet.of,
                    sheet.guides.iter().map(|g| &g.title).collect::<Vec<_>>()
                );
            }
        }
    });
}
