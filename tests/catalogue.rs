//! The reader's sentences: every language says all of them, and none stands outside the catalogues.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;
use trimwright::words::{Inline, Language, Line, Words, cutting, making, pages};

use crate::support::root;

/// What a message of a catalogue uses.
#[derive(Debug, Default, Clone)]
struct Said {
    /// Its arguments.
    args: BTreeSet<String>,
    /// Other messages of the file.
    others: BTreeSet<String>,
    /// Arguments that its comment names: `# $name: the bare name`.
    offered: BTreeSet<String>,
}

fn inline(part: &InlineExpression<&str>, said: &mut Said) {
    match part {
        InlineExpression::VariableReference { id } => {
            said.args.insert(id.name.to_owned());
        }
        InlineExpression::MessageReference { id, .. } => {
            said.others.insert(id.name.to_owned());
        }
        InlineExpression::FunctionReference { arguments, .. } => {
            arguments.positional.iter().for_each(|part| inline(part, said));
        }
        InlineExpression::Placeable { expression } => expression_of(expression, said),
        InlineExpression::TermReference { id, .. } => panic!("a term has no arguments: {}", id.name),
        InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
    }
}

fn expression_of(expression: &Expression<&str>, said: &mut Said) {
    match expression {
        Expression::Inline(part) => inline(part, said),
        Expression::Select { selector, variants } => {
            inline(selector, said);
            variants.iter().for_each(|variant| pattern(&variant.value, said));
        }
    }
}

fn pattern(pattern: &Pattern<&str>, said: &mut Said) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            expression_of(expression, said);
        }
    }
}

/// The messages of a file; a file that does not read fails.
fn messages(file: &str) -> BTreeMap<String, Said> {
    let resource = parser::parse(file).unwrap_or_else(|(_, errors)| panic!("{errors:?}"));
    let mut found = BTreeMap::new();
    for entry in &resource.body {
        match entry {
            Entry::Message(message) => {
                let mut said = Said::default();
                pattern(message.value.as_ref().expect("a message has a value"), &mut said);
                for line in message.comment.iter().flat_map(|comment| &comment.content) {
                    said.offered.extend(line.split('$').skip(1).map(|rest| {
                        rest.split(|c: char| !(c.is_ascii_alphanumeric() || c == '-')).next().unwrap_or("").to_owned()
                    }));
                }
                assert!(found.insert(message.id.name.to_owned(), said).is_none(), "{} twice", message.id.name);
            }
            Entry::Junk { content } => panic!("does not read: {content}"),
            _ => {}
        }
    }
    found
}

/// The arguments of a message and of what it refers to.
fn all_args(of: &str, messages: &BTreeMap<String, Said>, seen: &mut BTreeSet<String>) -> BTreeSet<String> {
    let Some(said) = messages.get(of).filter(|_| seen.insert(of.to_owned())) else { return BTreeSet::new() };
    let mut args: BTreeSet<String> = said.args.union(&said.offered).cloned().collect();
    said.others.iter().for_each(|other| args.extend(all_args(other, messages, seen)));
    args
}

/// Strings between quotes in Rust, comments and tests left out.
fn literals(text: &str) -> Vec<String> {
    let text = text.split("#[cfg(test)]").next().unwrap_or("");
    let mut found = Vec::new();
    for line in text.lines().map(str::trim).filter(|line| !line.starts_with("//")) {
        let mut parts = line.split('"');
        parts.next();
        while let (Some(inside), Some(_)) = (parts.next(), parts.next()) {
            found.push(inside.to_owned());
        }
    }
    found
}

/// What the program asks its catalogues for.
fn asked() -> BTreeSet<String> {
    let texts = files_under(&root().join("src/words")).into_iter().map(|file| std::fs::read_to_string(file).unwrap());
    texts.flat_map(|text| literals(&text)).collect()
}

/// What is wrong with a catalogue beside the first one.
fn faults(first: &BTreeMap<String, Said>, other: &BTreeMap<String, Said>, asked: &BTreeSet<String>) -> Vec<String> {
    let mut faults = Vec::new();
    for id in first.keys().filter(|id| asked.contains(*id) && !other.contains_key(*id)) {
        faults.push(format!("{id} is not said"));
    }
    let referred: BTreeSet<&String> = other.values().flat_map(|said| &said.others).collect();
    for id in other.keys().filter(|id| !asked.contains(*id) && !referred.contains(id)) {
        faults.push(format!("{id} is never used"));
    }
    for (id, said) in other {
        for missing in said.others.iter().filter(|other_id| !other.contains_key(*other_id)) {
            faults.push(format!("{id} refers to {missing}, which is not there"));
        }
        if !asked.contains(id) {
            continue;
        }
        let known = all_args(id, first, &mut BTreeSet::new());
        for arg in all_args(id, other, &mut BTreeSet::new()).difference(&known) {
            faults.push(format!("{id} is not given ${arg}"));
        }
    }
    faults
}

#[test]
fn every_language_says_all_that_is_asked_for() {
    let asked = asked();
    let first = messages(Language::ENGLISH.file());
    assert!(first.len() > 300, "{} messages", first.len());
    for language in Language::all() {
        let own = messages(language.file());
        let faults = faults(&first, &own, &asked);
        assert!(faults.is_empty(), "{}: {faults:#?}", language.tag());
    }
}

#[test]
fn what_a_language_lacks_is_seen() {
    let asked: BTreeSet<String> = ["a", "b"].map(str::to_owned).into();
    let first = messages("a = { $x } and { b }\n# $y: may be said\nb = { $z }\n");
    assert!(faults(&first, &first, &asked).is_empty());
    let other = messages("a = { $x } { $y } { own }\nown = { $u }\nspare = x\n");
    let expected = ["b is not said", "spare is never used", "a is not given $u"];
    assert_eq!(faults(&first, &other, &asked), expected);
    assert_eq!(faults(&first, &messages("a = { gone }\nb = x"), &asked), ["a refers to gone, which is not there"]);
}

/// `say.tell("…")` and the tables of fixed words name messages that are there.
#[test]
fn every_message_asked_for_is_there() {
    for file in files_under(&root().join("src/words")) {
        let text = std::fs::read_to_string(&file).unwrap();
        let text = text.split("#[cfg(test)]").next().unwrap_or("");
        let told = text.split("tell(\"").skip(1).filter_map(|rest| rest.split('"').next());
        let fixed = text.lines().filter(|line| line.starts_with("    ") && line.ends_with("\";"));
        let fixed = fixed.filter_map(|line| line.split(" = \"").nth(1)).map(|rest| rest.trim_end_matches("\";"));
        for id in told.chain(fixed) {
            assert!(Words::english().has(id), "{}: {id}", file.display());
        }
    }
}

/// A name is data: nothing in it is markup of Fluent, of ours or of a page.
#[test]
fn a_hostile_name_prints_as_it_stands() {
    for name in [
        "{ $name }",
        "{",
        "}}",
        "<strong>x</strong>",
        "<b>",
        "a~b",
        "\u{10f700}a\u{10f701}",
        "\u{10f703}7\u{10f706}",
        "\u{10f707}",
        "\u{10f727}\u{10f720}",
        "a\nb",
        "PLURAL($name)",
        "\u{2068}x\u{2069}",
    ] {
        for language in Language::all() {
            let say = Words::of(language);
            let capital = trimwright::words::english::capital(name);
            assert_eq!(pages::for_paper(say, name).0.len(), 1, "{name:?}");
            assert!(pages::for_paper(say, name).to_text().contains(&capital), "{name:?}");
            assert_eq!(pages::piece_name(say, 1, name), name);
            let row = cutting::missing(say, 1, name, name);
            assert!(row.contains(name) && row.contains(&capital), "{row:?}");
            let piece = making::Named { name: name.into(), ring: Some(3) };
            let line = making::print(say, &piece, name);
            assert!(line.0.contains(&Inline::Strong(name.trim_end_matches('.').to_owned())), "{line:?}");
            assert!(line.to_text().contains(&format!("{name}\u{a0}(3)")), "{line:?}");
        }
    }
}

#[test]
fn marked_runs_come_through() {
    let say = Words::english();
    let line = pages::left(say, &[(2, "12 x 1 1/2".to_owned(), 3), (4, "3/4 x 5".to_owned(), 1)]);
    let expected = Line::plain("Left over: ")
        .leftover(2)
        .text(" ")
        .measure("12 x 1 1/2")
        .text(", 3 of them · ")
        .leftover(4)
        .text(" ")
        .measure("3/4 x 5");
    assert_eq!(line, expected);
    let lead = pages::cutting_lead(say, trimwright::length::Units::Inch);
    assert!(lead.0.contains(&Inline::Cut("1".to_owned())) && lead.0.contains(&Inline::Ring(1)), "{lead:?}");
}

/// Words between quotes that are told to nobody: keys, names of files, messages to people who change the code.
fn is_told(literal: &str) -> bool {
    let bare: String = literal.split('{').map(|part| part.rsplit('}').next().unwrap_or("")).collect();
    let words = bare.split(|c: char| c.is_whitespace() || c == '\u{a0}').filter(|word| {
        let word = word.trim_matches(|c: char| !c.is_alphanumeric());
        word.chars().count() > 1 && word.chars().all(char::is_alphabetic)
    });
    words.count() > 1
}

/// Lines that hold an error of our own or an invariant.
const NOT_TOLD: [&str; 6] = ["expect(", "panic!(", "assert", "unreachable!(", "Failure", "failed("];

/// Files whose words are markup, or faults of the program and of a designer's templates.
const NOT_FOR_READERS: [&str; 5] =
    ["drawing/svg.rs", "handout/mod.rs", "handout/templates.rs", "handout/true_size.rs", "handout/world.rs"];

#[test]
fn no_reader_s_words_stand_outside_the_catalogue() {
    let mut found = Vec::new();
    for place in ["assembly", "drawing", "handout"] {
        let files = files_under(&root().join("src").join(place));
        for file in files.into_iter().filter(|file| !NOT_FOR_READERS.iter().any(|end| file.ends_with(end))) {
            let text = std::fs::read_to_string(&file).unwrap();
            let text = text.split("#[cfg(test)]").next().unwrap_or("");
            for line in text.lines().filter(|line| NOT_TOLD.iter().all(|sign| !line.contains(sign))) {
                let told = literals(line).into_iter().filter(|literal| is_told(literal));
                found.extend(told.map(|literal| format!("{}: {literal}", file.display())));
            }
        }
    }
    for file in files_under(&root().join("templates")).into_iter().filter(|file| ends(file, "typ")) {
        for line in std::fs::read_to_string(&file).unwrap().lines().filter(|line| !line.trim().starts_with("//")) {
            let code = line.split(" // ").next().unwrap_or(line);
            let told = literals(code).into_iter().filter(|literal| is_told(literal));
            let typeset = code.split('[').skip(1).filter_map(|rest| rest.split(']').next());
            let typeset = typeset.filter(|text| is_told(text) && !text.contains(['#', '(', '=', '.', '"']));
            found.extend(told.chain(typeset.map(str::to_owned)).map(|text| format!("{}: {text}", file.display())));
        }
    }
    assert!(found.is_empty(), "{found:#?}");
}

#[test]
fn words_outside_the_catalogue_would_be_seen() {
    assert!(is_told("Turn it over"));
    assert!(is_told("{name} from {paper} and others"));
    for other in ["step-picture", "{} {}", "M 0 0 L", "{name} ({ring})", "sheet"] {
        assert!(!is_told(other), "{other}");
    }
}

/// Every file under a folder, in order.
fn files_under(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() { files.extend(files_under(&path)) } else { files.push(path) }
    }
    files.sort();
    files
}

fn ends(file: &Path, with: &str) -> bool {
    file.extension().is_some_and(|ending| ending == with)
}
