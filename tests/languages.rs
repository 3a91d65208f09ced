//! Designs in several languages: what is read, what is missing, and that nothing but words changes.

use crate::support::{demo, editions_at, found, root, run, trimwright};
use trimwright::edition::bundle::{bundle, in_language};
use trimwright::handout::Told;
use trimwright::project::Project;
use trimwright::words::{self, Language, Words};

fn german() -> Language {
    Language::of_tag("de").expect("German")
}

/// A small design with one paper and one piece; `top` are more lines.
fn wren(title: &str, top: &str, paper: &str, piece: &str) -> String {
    format!(
        "title: {title}\nmonth: 2026-04\ncards: 2\nunits: metric\n{top}\
         card: {{size: A6, fold: side, from: white}}\npapers:\n  white: {{sheets: 2 of A4{paper}}}\n\
         pieces:\n  mat: {{size: 97 x 140 mm, from: white{piece}}}\nfront:\n  - {{place: mat, centre: both ways, glue: tape}}\n"
    )
}

const BOTH: &str = "language: en and de\n";
const PAPER: &str = ", name: {de: Weiß}";
const PIECE: &str = ", name: {de: {one: Blatt, many: Blätter}}";

#[test]
fn a_design_in_both_languages_is_sound() {
    let text = wren("{en: Wren, de: Zaunkönig}", BOTH, PAPER, PIECE);
    let outcome = run(&text);
    assert!(outcome.findings.is_empty(), "{:#?}", outcome.findings);
    let project = &outcome.editions[0];
    let told = project.told_in(german());
    assert_eq!(told.design.title.value, "Zaunkönig");
    assert_eq!(
        told.design.pieces.iter().map(|piece| piece.name.as_str()).collect::<Vec<_>>(),
        ["Kartenrohling", "Blatt"]
    );
    assert_eq!((told.design.papers[0].name.as_str(), told.design.layers[0].name.as_str()), ("Weiß", "Blatt"));
    assert_eq!(words::counted(told.words(), 3, "Blatt"), "3\u{a0}Blätter");
    // What the design itself refers to stays.
    assert_eq!((project.design.title.value.as_str(), project.design.pieces[1].name.as_str()), ("Wren", "mat"));
    let english = project.told_in(Language::ENGLISH);
    assert_eq!((english.design.title.value.as_str(), english.design.pieces[0].name.as_str()), ("Wren", "base"));
}

#[test]
fn a_design_in_german_alone_speaks_german() {
    let outcome = run(&wren("Zaunkönig", "language: de\n", "", ""));
    assert!(outcome.findings.is_empty(), "{:#?}", outcome.findings);
    let told = outcome.editions[0].told_in(german());
    assert_eq!((told.words().language(), told.design.pieces[0].name.as_str()), (german(), "Kartenrohling"));
    assert_eq!(words::counted(told.words(), 2, "mat"), "2\u{a0}×\u{a0}mat");
}

#[test]
fn what_is_missing_is_found_where_it_stands() {
    let missing = |title, paper, piece| {
        let found = found(&wren(title, BOTH, paper, piece));
        assert!(found.iter().all(|one| one.starts_with("not-in-every-language@")), "{found:?}");
        found.iter().map(|one| one.rsplit('@').next().unwrap().parse().unwrap()).collect::<Vec<u32>>()
    };
    assert_eq!(missing("Wren", PAPER, PIECE), [1]);
    assert_eq!(missing("{en: Wren, de: Zaunkönig}", "", PIECE), [8]);
    assert_eq!(missing("{en: Wren, de: Zaunkönig}", PAPER, ""), [10]);
    assert_eq!(missing("{de: Zaunkönig}", PAPER, PIECE), [1]);
    assert_eq!(missing("Wren", "", ""), [1, 8, 10]);
}

#[test]
fn slips_are_said() {
    let language = |line: &str| found(&wren("Wren", line, "", ""));
    assert_eq!(language("language: fr\n"), ["bad-word@5"]);
    assert_eq!(language("language: en and en\n"), ["repeated-key@5"]);
    assert_eq!(language("language: en and\n"), ["bad-word@5"]);
    assert_eq!(language("language: [en]\n"), ["wrong-kind@5"]);
    assert_eq!(found(&wren("{en: Wren, fr: Roitelet}", "", "", "")), ["unknown-key@1"]);
    assert_eq!(found(&wren("{en: Wren, en: Wren}", "", "", "")), ["repeated-key@1"]);
    assert_eq!(found(&wren("{en: , de: Zaunkönig}", "", "", "")), ["missing-key@1"]);
    assert_eq!(found(&wren("Wren", "", "", ", name: {de: {one: Blatt}}")), ["missing-key@9"]);
    assert_eq!(found(&wren("Wren", "", "", ", name: [Blatt]")), ["wrong-kind@9"]);
}

/// A German text is as long as it is: its place is looked at too.
#[test]
fn every_language_is_held_to_its_place() {
    let long = ", name: {de: Unterlageausdemgutenkartonvomvorjahr}";
    assert_eq!(found(&wren("{en: Wren, de: Zaunkönig}", BOTH, PAPER, long)), ["text-too-long@10"]);
    let sign = ", name: {de: 灯}";
    assert_eq!(found(&wren("{en: Wren, de: Zaunkönig}", BOTH, sign, PIECE)), ["missing-glyph@8"]);
}

/// The same sizes, places, cuts and steps; only words are others.
#[test]
fn nothing_but_words_changes() {
    let name = "kitchen-garden";
    let project: Project = editions_at(&demo(name)).remove(0);
    let told = project.told_in(german());
    assert_eq!((&told.plan, &told.layout), (&project.plan, &project.layout));
    let bare = |project: &Project| {
        let mut design = project.design.clone();
        for piece in &mut design.pieces {
            (piece.name, piece.span, piece.greeting) = (String::new(), trimwright::source::Span::default(), None);
        }
        (design.pieces, design.card, design.cards)
    };
    assert_eq!(bare(&told), bare(&project));
}

#[test]
fn german_has_its_own_numbers_and_units() {
    let say = Words::of(german());
    assert_eq!(say.measured("12.5 x 20 mm"), "12,5 x 20 mm");
    assert_eq!(say.measured("3 3/4 x 5 in"), "3 3/4 x 5 Zoll");
    assert_eq!(words::cards(say, 1), "1 Karte");
    assert_eq!(words::listed_words(say, &["a", "b", "c"].map(str::to_owned)), "a, b und c");
    assert_eq!(words::pages::month(say, 2027, 3), "März 2027");
}

#[test]
fn an_edition_holds_each_language() {
    let outcome = run(&wren("{en: Wren, de: Zaunkönig}", BOTH, PAPER, PIECE));
    let bundle = bundle(&outcome.editions, "wren", &[], &Told::default()).expect("an edition");
    let names: Vec<String> = bundle.files.keys().map(|name| name.display().to_string()).collect();
    assert_eq!(names, ["front.png", "handout-a4-metric-de.pdf", "handout-a4-metric.pdf", "plan-a4-metric.json"]);
    assert_eq!(in_language("leaf-letter-inch.pdf", german()), "leaf-letter-inch-de.pdf");
}

#[test]
fn a_language_can_be_asked_for_from_outside() {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("wren.yaml"), wren("Wren", "", "", "")).expect("written");
    let output = trimwright(folder.path(), &["publish", "wren.yaml", "--language", "de"]);
    let (told, talk) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    assert_eq!(output.status.code(), Some(0), "{talk}");
    assert!(told.contains("handout-a4-metric-de.pdf"), "{told}");
    assert!(talk.contains("not-in-every-language"), "{talk}");
    let output = trimwright(folder.path(), &["publish", "wren.yaml", "--language", "fr"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&output.stderr).contains("there are words for en and de"));
}

#[test]
fn the_example_in_the_readme_is_sound() {
    let readme = std::fs::read_to_string(root().join("README.md")).expect("the README");
    let section = readme.split_once("**Languages.**").expect("a section").1;
    let example = section.split_once("```yaml\n").expect("a block").1.split_once("```").expect("its end").0;
    let text = format!(
        "month: 2026-11\ncards: 4\nunits: metric\ncard: {{size: A6, fold: side, from: white}}\n{}",
        example.replace("papers:\n  dusk", "papers:\n  white: {sheets: 2 of A4, name: {de: Weiß}}\n  dusk")
    );
    // A frame is only proposed.
    let said: Vec<String> = found(&text).into_iter().filter(|one| !one.starts_with("hard-by-eye@")).collect();
    assert_eq!(said, Vec::<String>::new(), "{text}");
    let told = run(&text).editions[0].told_in(german()).into_owned();
    assert_eq!(told.design.layers[0].name, "oberes Blatt");
    assert_eq!(told.design.versions[0].name, "Dämmerung");
}
