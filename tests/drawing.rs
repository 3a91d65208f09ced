//! Drawing tests.

mod fixture;

use fixture::{FIRST, SECOND, lantern_row};
use trimwright::drawing::figures::Room;
use trimwright::drawing::figures::front::front;
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::figures::small;
use trimwright::drawing::figures::step::step;
use trimwright::drawing::scene::Scene;
use trimwright::preview;

#[test]
#[ignore = "writes pictures to look at"]
fn look() {
    let folder = std::env::temp_dir().join("look");
    std::fs::create_dir_all(&folder).unwrap();
    let project = lantern_row();
    let put = |scene: &Scene| {
        let pixels = u32::try_from(scene.width / 84_667).unwrap();
        std::fs::write(folder.join(format!("{}.png", scene.name)), preview::png(scene, pixels).unwrap()).unwrap();
        std::fs::write(folder.join(format!("{}.svg", scene.name)), trimwright::drawing::svg::svg(scene)).unwrap();
        eprintln!("{} {} x {} {}", scene.name, scene.width, scene.height, scene.alt);
    };
    put(&front(&project, FIRST, Room::tenths_of_mm(1057, 1100)).unwrap());
    for n in 0..project.plan.sheets.len() {
        put(&sheet(&project, n).unwrap());
    }
    for n in 0..project.steps.steps.len() {
        if let Some(scene) = step(&project, n) {
            put(&scene);
        }
    }
    for paper in project.design.paper_ids() {
        put(&small::swatch(&project, paper, Room::tenths_of_mm(430, 60)));
        put(&small::blank_sheet(&project, paper).unwrap());
    }
    put(&small::blank_card(&project, 20).unwrap());
    put(&small::print_bars());
    put(&small::legend());
    put(&front(&project, SECOND, Room::tenths_of_mm(743, 1100)).unwrap());
}
