//! Builders that read like what they test.

pub(crate) mod dice;

use proptest::prelude::ProptestConfig;
use proptest::test_runner::RngSeed;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::{Arc, Mutex, OnceLock};
use trimwright::cutting::plan::CutPlan;
use trimwright::cutting::search::plan_within;
use trimwright::cutting::search::sheet::{Budget, Limits};
use trimwright::design::model::Design;
use trimwright::files::Disk;
use trimwright::pipeline::{self, Outcome};
use trimwright::project::Project;
use trimwright::source::Source;

/// The settings of a law over random designs: the same ones in every run, so that a change is judged by what
/// it changes. `PROPTEST_RNG_SEED=7 cargo test` draws others.
pub(crate) fn cases(cases: u32) -> ProptestConfig {
    let drawn = ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() };
    match drawn.rng_seed {
        RngSeed::Random => ProptestConfig { rng_seed: RngSeed::Fixed(1), ..drawn },
        RngSeed::Fixed(_) => drawn,
    }
}

/// Runs a design text through every stage.
pub(crate) fn run(text: &str) -> Outcome {
    pipeline::run(&Source::new("design.yaml", text), "design")
}

/// The first edition of a design that must have no error.
pub(crate) fn sound(text: &str) -> Project {
    let outcome = run(text);
    let errors: Vec<String> = outcome.findings.iter().map(|f| format!("{}: {}", f.code, f.message)).collect();
    assert!(!outcome.has_errors(), "{errors:#?}");
    outcome.editions.into_iter().next().expect("an edition")
}

/// `code@line` of every finding.
pub(crate) fn found(text: &str) -> Vec<String> {
    let source = Source::new("design.yaml", text);
    let outcome = pipeline::run(&source, "design");
    outcome
        .findings
        .iter()
        .map(|finding| format!("{}@{}", finding.code, source.position(finding.primary.span.start).line))
        .collect()
}

/// A plan that is quickly found, for tests of many designs: whole, though neither its sheets nor its cuts need be
/// the fewest.
pub(crate) fn quick(design: &Design) -> CutPlan {
    let all = Limits::default();
    let (fit, cuts) = (Budget { pairs: 1_000_000, ..all.fit }, Budget { pairs: 100_000, ..all.cuts });
    plan_within(design, &Limits { fit, cuts, ways: 0, looks: 1, nodes: 100, ..all })
}

/// A picture of a size, light and dark by rule, as PNG.
pub(crate) fn png(width: u32, height: u32) -> Vec<u8> {
    pictured(width, height, image::ImageFormat::Png)
}

/// A picture of a size, light and dark by rule: what it looks like tells which way it is turned.
pub(crate) fn pictured(width: u32, height: u32, format: image::ImageFormat) -> Vec<u8> {
    let shade = |x: u32, y: u32| {
        let (x, y) = (x * 255 / width, y * 255 / height);
        image::Rgb([x, y, (x + y) / 2].map(|value| u8::try_from(value.min(255)).unwrap_or(u8::MAX)))
    };
    let mut bytes = std::io::Cursor::new(Vec::new());
    image::RgbImage::from_fn(width, height, shade).write_to(&mut bytes, format).expect("a picture");
    bytes.into_inner()
}

/// The project's own folder.
pub(crate) fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// A demo design's path.
pub(crate) fn demo(name: &str) -> PathBuf {
    root().join("designs").join(format!("{name}.yaml"))
}

/// Every demo design, sorted.
pub(crate) fn demos() -> Vec<PathBuf> {
    let mut demos: Vec<PathBuf> = std::fs::read_dir(root().join("designs"))
        .expect("designs/")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "yaml"))
        .collect();
    demos.sort();
    demos
}

/// A design file with the drawings beside it, called `name`.
pub(crate) fn source_at(path: &Path, name: &str) -> Source {
    let text = std::fs::read_to_string(path).expect("the design");
    pipeline::with_drawings(Source::new(name, text), &Disk, path)
}

/// Every edition of a demo design; planned once for all tests.
pub(crate) fn editions_at(path: &Path) -> Vec<Project> {
    type Kept = Arc<OnceLock<Vec<Project>>>;
    static PLANNED: Mutex<BTreeMap<PathBuf, Kept>> = Mutex::new(BTreeMap::new());
    let own = PLANNED.lock().expect("no test panicked here").entry(path.to_owned()).or_default().clone();
    let name = path.file_stem().expect("a name").to_string_lossy();
    own.get_or_init(|| pipeline::run(&source_at(path, &name), &name).editions).clone()
}

/// The program, run in a folder.
pub(crate) fn trimwright(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_trimwright"))
        .current_dir(folder)
        .env_remove("CLICOLOR_FORCE")
        .args(arguments)
        .output()
        .expect("the program starts")
}

/// A general-purpose tool that the tests need; its output must be a success.
pub(crate) fn tool(name: &str, arguments: &[&str]) -> String {
    let output = Command::new(name)
        .args(arguments)
        .output()
        .unwrap_or_else(|error| panic!("`{name}` is needed (see the README's apt-get line): {error}"));
    assert!(output.status.success(), "{name} {arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// Every Rust file below a folder, sorted.
pub(crate) fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
    found.sort();
    found
}
