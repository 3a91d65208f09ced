//! Drawing tests.

mod fixture;
mod read;

use fixture::{FIRST, SECOND, lantern_row};
use trimwright::drawing::figures::Room;
use trimwright::drawing::figures::front::front;
use trimwright::drawing::figures::sheet::sheet;
use trimwright::drawing::figures::small;
use trimwright::drawing::figures::step::step;
use trimwright::drawing::scene::Scene;
use trimwright::length::Units;
use trimwright::preview;
use trimwright::project::Project;

/// Every figure of a project, as the pages take them.
fn figures(project: &Project) -> Vec<Scene> {
    let mut scenes = Vec::new();
    for version in project.design.version_ids() {
        let width = if version.0 == 0 { 1056 } else { 743 };
        scenes.extend(front(project, version, Room::tenths_of_mm(width, 960)));
    }
    scenes.extend((0..project.plan.sheets.len()).filter_map(|n| sheet(project, n)));
    scenes.extend((0..project.steps.steps.len()).filter_map(|n| step(project, n)));
    for paper in project.design.paper_ids() {
        scenes.push(small::swatch(project, paper, Room::tenths_of_mm(430, 60)));
        scenes.extend(small::blank_sheet(project, paper));
    }
    scenes.extend(small::blank_card(project, 20));
    scenes.push(small::print_bars());
    scenes.push(small::legend());
    scenes
}

#[test]
#[ignore = "writes pictures to look at"]
fn look() {
    let put = |folder: &str, project: &Project| {
        let folder = std::env::temp_dir().join("look").join(folder);
        std::fs::create_dir_all(&folder).unwrap();
        let start = std::time::Instant::now();
        let scenes = figures(project);
        eprintln!("{} figures in {:?}", scenes.len(), start.elapsed());
        for scene in scenes {
            let pixels = u32::try_from(scene.width / 84_667).unwrap();
            std::fs::write(folder.join(format!("{}.png", scene.name)), preview::png(&scene, pixels).unwrap()).unwrap();
            eprintln!("{} {} x {} {}", scene.name, scene.width, scene.height, scene.alt);
        }
    };
    put("hand", &lantern_row());
    let design =
        |name: &str| std::fs::read_to_string(format!("{}/designs/{name}.yaml", env!("CARGO_MANIFEST_DIR"))).unwrap();
    put("lantern-inch", &read::project(&design("lantern-row"), Units::Inch));
    put("lantern-metric", &read::project(&design("lantern-row"), Units::Metric));
    put("kitchen", &read::project(&design("kitchen-garden"), Units::Metric));
    let _ = (FIRST, SECOND);
}
