//! The imprint that designs share: what it gives them, and how its faults are told in its own file.

use crate::support::{pictured, png, root, trimwright};
use std::path::Path;
use trimwright::cli::report;
use trimwright::diagnostic::Finding;
use trimwright::mend;
use trimwright::pipeline::{self, Outcome};
use trimwright::source::Source;

const LEAF: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\"><path d=\"M0 0 H40 V20 Z\"/></svg>";

const HOUSE: &str = "name: Marram Street\nlogo: leaf.svg\naccents: {notes: \"#2C5E4A\", cuts: \"#8C3B4A\"}\nterms: For cards \
                     that are given away.\nweb: marram-street.example\n";

fn design(more: &str) -> String {
    format!(
        "title: Kite
month: 2026-04
{more}
cards: 2
units: inch and metric
card: {{size: 4 1/4 x 5 1/2 in | 105 x 148 mm, fold: side, from: white}}
papers: {{white: {{sheets: 2 of letter}}}}
pieces: {{tag: {{size: 2 x 1 in | 51 x 24 mm, from: white}}}}
front:
  - {{place: tag, centre: both ways, glue: liquid}}
"
    )
}

fn source(more: &str, house: &str) -> Source {
    Source::new("month/kite.yaml", design(more))
        .with_beside("look/house.yaml", Ok(house.as_bytes().to_vec()))
        .with_beside("look/leaf.svg", Ok(LEAF.as_bytes().to_vec()))
        .with_beside("card.jpg", Ok(pictured(900, 1200, image::ImageFormat::Jpeg)))
}

fn run(more: &str, house: &str) -> Outcome {
    pipeline::run(&source(more, house), "kite")
}

const NAMED: &str = "imprint: look/house.yaml";

#[test]
fn every_edition_has_the_imprint() {
    let outcome = run(NAMED, HOUSE);
    assert!(outcome.findings.iter().all(|finding| finding.file.is_none()), "{:#?}", outcome.findings);
    assert_eq!(outcome.editions.len(), 2);
    for project in &outcome.editions {
        let design = &project.design;
        let imprint = design.imprint.as_ref().expect("an imprint");
        assert_eq!(design.giver(), Some("Marram Street"));
        assert_eq!(
            (design.accents().notes.to_string(), design.accents().cuts.to_string()),
            ("#2C5E4A".into(), "#8C3B4A".into())
        );
        assert_eq!(imprint.web.as_ref().map(|web| web.target.as_str()), Some("https://marram-street.example"));
        assert_eq!(imprint.logo.as_ref().map(|logo| (logo.width, logo.height)), Some((10_000, 5_000)));
    }
    let own = run(&format!("{NAMED}\ndesigner: Ada of the Lane"), HOUSE);
    assert_eq!(own.editions[0].design.giver(), Some("Ada of the Lane"), "the design wins");
    let bare = run(NAMED, "web: marram-street.example");
    assert_eq!(bare.editions[0].design.accents(), run("", "").editions[0].design.accents(), "the usual ones");
}

/// The one finding of an imprint, and what stands at its place.
fn only(house: &str) -> (Finding, String) {
    let source = source(NAMED, house);
    let findings = pipeline::run(&source, "kite").findings;
    let mut own: Vec<Finding> = findings.into_iter().filter(|finding| finding.file.is_some()).collect();
    assert_eq!(own.len(), 1, "both editions find the same once: {own:#?}");
    let finding = own.remove(0);
    let at = source.file("look/house.yaml").slice(finding.primary.span).to_owned();
    (finding, at)
}

#[test]
fn faults_are_told_in_the_imprints_own_file() {
    for (typed, instead, code, at) in [
        ("name:", "nam:", "unknown-key", "nam"),
        ("#2C5E4A", "#7FB0C0", "weak-accent", "#7FB0C0"),
        ("\"#2C5E4A\"", "teal", "bad-colour", "teal"),
        ("\"#2C5E4A\"", "#2C5E4A", "not-yaml", ""),
        ("leaf.svg", "fern.svg", "unreadable-picture", "fern.svg"),
        ("leaf.svg", "../leaf.svg", "unreadable-picture", "../leaf.svg"),
        ("leaf.svg", "/etc/passwd", "unreadable-picture", "/etc/passwd"),
        ("leaf.svg", "house.yaml", "unreadable-picture", "house.yaml"),
        ("marram-street.example", "javascript:alert(1)", "bad-address", "javascript:alert(1)"),
        ("For cards", "For 灯 cards", "missing-glyph", "For 灯 cards that are given away."),
        ("name: Marram Street", "name: Marram Street\nname: Other", "repeated-key", "name"),
        ("name: Marram Street", "name: [a]", "wrong-kind", "a"),
    ] {
        let house = HOUSE.replacen(typed, instead, 1);
        assert_ne!(house, HOUSE, "{typed}");
        let (finding, place) = only(&house);
        assert_eq!(finding.code, code, "{instead}: {finding:#?}");
        assert!(code == "not-yaml" || place == at, "{instead}: {place}");
        assert_eq!(finding.file.as_deref(), Some("look/house.yaml"));
    }
    let (weak, _) = only(&HOUSE.replace("#2C5E4A", "#7FB0C0"));
    // WCAG 2.2 by hand: 7F, B0 and C0 are 0.2122, 0.4342 and 0.5271 of full light; the luminance is 0.3937.
    assert_eq!(weak.primary.text, "2.36:1 against white, and letters need 4.5:1");
    assert!(only("- a list").0.code == "wrong-kind" && only("").0.code != "not-a-design");
}

#[test]
fn the_report_names_the_file_and_shows_its_lines() {
    let source = source(NAMED, &HOUSE.replace("#2C5E4A", "#7FB0C0"));
    let outcome = mend::suggest(&source, "kite", pipeline::run(&source, "kite"));
    let found: Vec<Finding> = outcome.findings.into_iter().filter(|finding| finding.file.is_some()).collect();
    let text = report::text(&source, &found, false);
    assert!(text.contains("--> month/look/house.yaml:3:19"), "{text}");
    assert!(text.contains("3 | accents: {notes: \"#7FB0C0\", cuts: \"#8C3B4A\"}"), "{text}");
    let plain = report::plain(&source, &found);
    assert!(plain.starts_with("Line 3 of look/house.yaml: The accent #7FB0C0 is too pale"), "{plain}");
    let json = report::json(&[(source.clone(), found)]);
    assert_eq!(
        (&json["findings"][0]["file"], &json["findings"][0]["line"]),
        (&"month/look/house.yaml".into(), &3.into())
    );
    assert_eq!(json["findings"][0]["edits"], serde_json::json!([]));
    // Only the design itself is ever mended.
    let slip = Source::new("kite.yaml", design(NAMED))
        .with_beside("look/house.yaml", Ok(HOUSE.replace("terms:", "trems:").into_bytes()))
        .with_beside("look/leaf.svg", Ok(LEAF.as_bytes().to_vec()));
    assert!(mend::certain(&slip, "kite").changes.is_empty());
}

#[test]
fn an_imprint_that_cannot_be_read_is_told_in_the_design() {
    let at = |name: &str, bytes: Option<Result<Vec<u8>, String>>| {
        let mut source = Source::new("kite.yaml", design(&format!("imprint: {name}")));
        if let Some(bytes) = bytes {
            source = source.with_beside(name, bytes);
        }
        let found = pipeline::run(&source, "kite").findings;
        let finding = found.iter().find(|finding| finding.code == "unreadable-imprint").expect("a finding").clone();
        assert!(finding.file.is_none() && source.slice(finding.primary.span).contains(name.trim_matches('\'')));
        finding.primary.text
    };
    assert_eq!(at("house.yaml", None), "there is no such file");
    assert_eq!(at("house.yaml", Some(Err("you may not read it".to_owned()))), "you may not read it");
    assert_eq!(at("house.yaml", Some(Ok(vec![0xff, 0xfe]))), "it holds bytes that are no UTF-8 text");
    for name in ["../house.yaml", "/etc/passwd", "'c:house.yaml'", "'..\\house.yaml'"] {
        assert_eq!(at(name, None), "not a file beside the design", "{name}");
    }
}

#[test]
fn photos_are_of_the_set_and_of_versions() {
    let versions = "versions:\n  - {name: dusk, cards: 1, photo: {file: card.jpg, alt: A kite at dusk.}}\n  - {name: dawn, cards: 1}";
    let outcome = run(&format!("photo: card.jpg\n{versions}"), "");
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    let design = &outcome.editions[0].design;
    let photos: Vec<_> = design.photos().map(|(photo, version)| (photo.alt.is_some(), version)).collect();
    assert_eq!(photos, [(false, None), (true, Some("dusk"))]);
    // Among several figures a photo is 38 mm wide at most; 3 to 4 as it was taken.
    assert_eq!(design.printed(design.photo.as_ref().unwrap()), (38_000_000, 50_666_666));
    let alone = run("photo: card.jpg", "");
    let design = &alone.editions[0].design;
    assert_eq!(design.printed(design.photo.as_ref().unwrap()), (67_500_000, 90_000_000));
}

fn write(path: &Path, bytes: &[u8]) {
    std::fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
    std::fs::write(path, bytes).expect("written");
}

#[test]
fn pictures_are_read_from_the_designs_folder_only() {
    let home = tempfile::tempdir().unwrap();
    let folder = home.path().join("month");
    write(&home.path().join("card.png"), &png(600, 800));
    write(&folder.join("look/house.yaml"), HOUSE.as_bytes());
    write(&folder.join("look/leaf.svg"), LEAF.as_bytes());
    write(&folder.join("text.png"), b"no picture");
    write(&folder.join("large.png"), &vec![b' '; 33 << 20]);
    let check = |more: &str| {
        write(&folder.join("kite.yaml"), design(more).as_bytes());
        let output = trimwright(&folder, &["check", "--all", "kite.yaml"]);
        (output.status.code(), String::from_utf8(output.stdout).unwrap() + &String::from_utf8(output.stderr).unwrap())
    };
    let refused = |more: &str, wanted: &str| {
        let (code, said) = check(more);
        assert!(code == Some(1) && said.contains(wanted), "{more}: {code:?} {said}");
    };
    assert_eq!(check(NAMED).0, Some(0), "{}", check(NAMED).1);
    refused("photo: ../card.png", "lies outside the folder of the design");
    refused("photo: /etc/hostname", "lies outside the folder of the design");
    refused("photo: card.png", "there is no such file");
    refused("photo: text.png", "it is no picture");
    refused("photo: look", "it is no file");
    refused("photo: large.png", "it is larger than");
    refused("imprint: look", "it is no file");
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink("../card.png", folder.join("linked.png")).unwrap();
        refused("photo: linked.png", "leads out of the design's folder");
        std::os::unix::fs::symlink("../../card.png", folder.join("look/linked.png")).unwrap();
        write(&folder.join("look/other.yaml"), b"logo: linked.png");
        refused("imprint: look/other.yaml", "leads out of the design's folder");
    }
    // A new month from another folder takes everything along.
    write(&folder.join("photos/card.jpg"), &pictured(900, 1200, image::ImageFormat::Jpeg));
    assert_eq!(check(&format!("{NAMED}\nphoto: photos/card.jpg")).0, Some(0));
    let like = trimwright(home.path(), &["new", "next", "--like", "month/kite.yaml"]);
    assert_eq!(like.status.code(), Some(0), "{}", String::from_utf8_lossy(&like.stderr));
    for name in ["next.yaml", "look/house.yaml", "look/leaf.svg", "photos/card.jpg"] {
        assert!(home.path().join(name).exists(), "{name}");
    }
    assert_eq!(trimwright(home.path(), &["check", "next.yaml"]).status.code(), Some(0));
}

/// The README's imprint, as it stands there.
#[test]
fn the_readmes_imprint_is_read_without_a_fault() {
    let readme = std::fs::read_to_string(root().join("README.md")).expect("the README");
    let from = readme.find("# house.yaml\n").expect("the example");
    let house = &readme[from..from + readme[from..].find("```").expect("its end")];
    let outcome = run(NAMED, house);
    assert!(!outcome.has_errors(), "{:#?}", outcome.findings);
    let imprint = outcome.editions[0].design.imprint.as_ref().expect("an imprint");
    assert!(imprint.logo.is_some() && imprint.terms.is_some() && imprint.web.is_some());
}
