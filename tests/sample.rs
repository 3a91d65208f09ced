//! The README's pictures: made from the demos, compared byte for byte.

use crate::support::{demo, editions_at, root};
use std::path::{Path, PathBuf};
use trimwright::design::model::VersionId;
use trimwright::edition::bundle;
use trimwright::handout;
use trimwright::project::Project;

/// Pixels an inch of the page pictures.
const PPI: f32 = 80.0;

fn project(name: &str) -> Project {
    editions_at(&demo(name)).into_iter().next().expect("an edition")
}

fn front(folder: &Path, name: &str, project: &Project) -> (PathBuf, Vec<u8>) {
    (folder.join(format!("{name}-front.png")), bundle::front_png(project, VersionId(0)).expect("a front"))
}

#[test]
fn sample_pictures_are_what_the_program_makes() {
    let folder = root().join("output/sample");
    let mut pictures: Vec<(PathBuf, Vec<u8>)> = Vec::new();
    for name in ["lantern-row", "kitchen-garden"] {
        let project = project(name);
        let pages = handout::page_images(&project, trimwright::design::variants::Wanted::HANDOUT, PPI).expect("pages");
        for (number, page) in pages.into_iter().enumerate().take(3) {
            pictures.push((folder.join(format!("{name}-page-{}.png", number + 1)), page));
        }
        pictures.push(front(&folder, name, &project));
    }
    for name in ["kite-weather", "garden-trellis", "eight-gardens", "frost-window"] {
        pictures.push(front(&folder, name, &project(name)));
    }
    if std::env::var_os("UPDATE_SAMPLES").is_some() {
        std::fs::create_dir_all(&folder).expect("the folder");
        for (path, bytes) in &pictures {
            std::fs::write(path, bytes).expect("written");
        }
    }
    for (path, bytes) in pictures {
        let stands = std::fs::read(&path).unwrap_or_default();
        assert!(
            stands == bytes,
            "{} is stale: run `UPDATE_SAMPLES=1 cargo test sample` and look at it",
            path.display()
        );
    }
}
