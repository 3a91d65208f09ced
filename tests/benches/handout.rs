//! How long a handout takes: `cargo bench --bench handout`.
//!
//! One design published as a whole process; its handout set within a process; the bare typesetter on the same
//! finished document, templates and data in memory; and every handout that there is of one design in one run.
//! The most memory that a run of the program held is printed, where the system tells it.

#![expect(clippy::print_stdout, reason = "memory and ratios are for people")]

use criterion::{Criterion, criterion_group, criterion_main};
use std::hint::black_box;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};
use trimwright::design::variants::Wanted;
use trimwright::fonts::FACES;
use trimwright::handout::{self, Templates, Told};
use trimwright::pipeline;
use trimwright::project::Project;
use trimwright::source::Source;
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration as Span, Smart};
use typst::syntax::{FileId, RootedPath, Source as Template, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Features, Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

/// A design with one edition, no photo and no imprint.
const DESIGN: &str = "kitchen-garden";

fn design() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("designs").join(format!("{DESIGN}.yaml"))
}

/// The words for every handout on the usual page but the first.
fn all_but_the_first() -> Vec<String> {
    let usual = Wanted::sayings().into_iter().filter(|words| !words.contains(" on "));
    usual.skip(1).flat_map(|words| ["--also".to_owned(), words]).collect()
}

/// The program from its start to its end; the most memory it held, kB, where the system tells it.
fn publish(more: &[String]) -> Option<u64> {
    let folder = tempfile::tempdir().expect("a folder");
    let mut run = Command::new(env!("CARGO_BIN_EXE_trimwright"))
        .arg("publish")
        .arg(design())
        .arg("--to")
        .arg(folder.path())
        .args(more)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .expect("the program starts");
    let status = format!("/proc/{}/status", run.id());
    let mut most = None;
    loop {
        // What the system keeps is the highest mark so far: the last look before the end is the one that counts.
        if let Ok(text) = std::fs::read_to_string(&status)
            && let Some(line) = text.lines().find_map(|line| line.strip_prefix("VmHWM:"))
        {
            most = line.trim().trim_end_matches("kB").trim().parse().ok().or(most);
        }
        if let Some(status) = run.try_wait().expect("the program ends") {
            assert!(status.success(), "a sound design is published");
            return most;
        }
        std::thread::sleep(Duration::from_millis(1));
    }
}

fn project() -> Project {
    let source = Source::new(DESIGN, std::fs::read_to_string(design()).expect("the design"));
    pipeline::run(&source, DESIGN).editions.remove(0)
}

/// The finished document: templates and data, and the typesetter's library and faces as the program has them.
struct Finished {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    sources: Vec<(FileId, Template)>,
    data: [(FileId, Bytes); 2],
}

impl Finished {
    fn new(json: &[u8]) -> Self {
        let [data, drawn] = handout::parted(json).expect("data");
        let id = |name: &str| {
            let path = VirtualPath::new(format!("/{name}")).expect("a path");
            RootedPath::new(VirtualRoot::Project, path).intern()
        };
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("templates");
        let template = |name: &str| {
            let text = std::fs::read_to_string(folder.join(name)).expect("a template");
            (id(name), Template::new(id(name), text))
        };
        let fonts: Vec<Font> = FACES.iter().flat_map(|(_, _, bytes)| Font::iter(Bytes::new(*bytes))).collect();
        let features: Features = std::iter::once(Feature::A11yExtras).collect();
        Self {
            library: LazyHash::new(Library::builder().with_features(features).build()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
            sources: Templates::names().map(template).collect(),
            data: [(id("data.json"), Bytes::new(data)), (id("drawn.json"), Bytes::new(drawn))],
        }
    }

    /// Sets it from nothing.
    fn set(&self) -> Vec<u8> {
        let document = typst::compile::<PagedDocument>(self).output.expect("it is set");
        let options = PdfOptions {
            ident: Smart::Custom("bench".to_owned()),
            timestamp: Datetime::from_ymd_hms(2027, 1, 1, 0, 0, 0).map(Timestamp::new_utc),
            standards: PdfStandards::new(&[PdfStandard::Ua_1, PdfStandard::A_2a]).expect("standards"),
            ..PdfOptions::default()
        };
        let bytes = typst_pdf::pdf(&document, &options).expect("it is written");
        typst::comemo::evict(0);
        bytes
    }
}

impl World for Finished {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    fn main(&self) -> FileId {
        self.sources[0].0
    }

    fn source(&self, id: FileId) -> FileResult<Template> {
        let found = self.sources.iter().find(|(source, _)| *source == id);
        found
            .map(|(_, source)| source.clone())
            .ok_or_else(|| FileError::NotFound(id.vpath().get_without_slash().into()))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let found = self.data.iter().find(|(data, _)| *data == id);
        found.map(|(_, bytes)| bytes.clone()).ok_or_else(|| FileError::NotFound("no file".into()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.fonts.get(index).cloned()
    }

    fn today(&self, _: Option<Span>) -> Option<Datetime> {
        None
    }
}

fn one_handout(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("one handout");
    group.sample_size(10).measurement_time(Duration::from_secs(10));
    let project = project();
    let told = Told::default();
    let data = serde_json::to_vec(&handout::compose(&project, Wanted::HANDOUT, &told)).expect("data");
    let finished = Finished::new(&data);
    group.bench_function("bare typesetter", |bencher| bencher.iter(|| black_box(finished.set())));
    group.bench_function("composed and set", |bencher| {
        bencher.iter(|| handout::typeset(black_box(&project), Wanted::HANDOUT, &told));
    });
    group.bench_function("published as a process", |bencher| bencher.iter(|| publish(&[])));
    group.finish();
}

fn all_in_one_run(criterion: &mut Criterion) {
    let all = all_but_the_first();
    let mut group = criterion.benchmark_group("all handouts in one run");
    group.sample_size(10).measurement_time(Duration::from_secs(10));
    group.bench_function("published as a process", |bencher| bencher.iter(|| publish(&all)));
    group.finish();
}

/// Once: what a whole process takes against the bare typesetter, and the most memory held.
fn against_the_bare(_: &mut Criterion) {
    let project = project();
    let told = Told::default();
    let finished =
        Finished::new(&serde_json::to_vec(&handout::compose(&project, Wanted::HANDOUT, &told)).expect("data"));
    let timed = |work: &dyn Fn()| {
        let start = Instant::now();
        work();
        start.elapsed()
    };
    let least = |work: &dyn Fn()| (0..5).map(|_| timed(work)).min().unwrap_or_default();
    let bare = least(&|| drop(finished.set()));
    let whole = least(&|| {
        publish(&[]);
    });
    println!(
        "{DESIGN}: bare typesetter {bare:.1?}, whole process {whole:.1?}, {:.2} times",
        whole.as_secs_f64() / bare.as_secs_f64()
    );
    for (name, more) in [("one handout", Vec::new()), ("all handouts", all_but_the_first())] {
        match publish(&more) {
            Some(most) => println!("{DESIGN}, {name}: {:.0} MB at the most", most as f64 / 1024.0),
            None => println!("{DESIGN}, {name}: the system does not tell the memory"),
        }
    }
}

criterion_group!(setting, one_handout, all_in_one_run, against_the_bare);
criterion_main!(setting);
