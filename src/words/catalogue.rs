//! One language's catalogue: a Project Fluent file, and what its language does with names and numbers.
//!
//! Takes the name of a message and its arguments, gives a [`Line`] or a string. Must never hold a
//! sentence: they stand in the files of `templates/words`.

use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Arc, OnceLock};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use super::{Line, english, marks};

/// What the program knows of a language besides its sentences.
struct Known {
    /// Its tag, as BCP 47 has it.
    tag: &'static str,
    /// Its catalogue.
    file: &'static str,
    /// The plural of a name that a design gives to a piece, by rule.
    plural: fn(&str) -> String,
}

/// The languages, English first. A further one is one file and one entry.
const LANGUAGES: [Known; 2] = [
    Known { tag: "en", file: include_str!("../../templates/words/en.ftl"), plural: english::plural },
    // No rule gives the plural of a German name: where a design does not say it, several stand as `4 × Laterne`.
    Known { tag: "de", file: include_str!("../../templates/words/de.ftl"), plural: str::to_owned },
];

/// A language with a catalogue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Language(usize);

impl Language {
    /// What the designer reads, and what a handout is written in where nothing else is asked for.
    pub const ENGLISH: Self = Self(0);

    /// Every language.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..LANGUAGES.len()).map(Self)
    }

    /// The language of a tag, `en`; none where there is no catalogue.
    #[must_use]
    pub fn of_tag(tag: &str) -> Option<Self> {
        LANGUAGES.iter().position(|known| known.tag.eq_ignore_ascii_case(tag)).map(Self)
    }

    /// Its tag, as BCP 47 has it: `en`.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        LANGUAGES[self.0].tag
    }

    /// Its catalogue as it is written.
    #[must_use]
    pub const fn file(self) -> &'static str {
        LANGUAGES[self.0].file
    }
}

impl Default for Language {
    fn default() -> Self {
        Self::ENGLISH
    }
}

/// Names of which a design says the plural, each with it.
pub type Plurals = BTreeMap<String, String>;

/// One language's catalogue, ready to speak, with the plurals that a design says.
#[derive(Clone)]
pub struct Words {
    language: Language,
    bundle: Arc<FluentBundle<FluentResource>>,
    plurals: Plurals,
    /// Between whole numbers and tenths.
    decimal: String,
    /// Units' signs as measures are given, each with this language's.
    units: Vec<(&'static str, String)>,
}

impl PartialEq for Words {
    fn eq(&self, other: &Self) -> bool {
        (self.language, &self.plurals) == (other.language, &other.plurals)
    }
}

impl Eq for Words {}

impl fmt::Debug for Words {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.debug_struct("Words").field("language", &self.language).finish_non_exhaustive()
    }
}

impl Words {
    /// The catalogue of a language; read once.
    #[must_use]
    pub fn of(language: Language) -> &'static Self {
        static CATALOGUES: [OnceLock<Words>; LANGUAGES.len()] = [const { OnceLock::new() }; LANGUAGES.len()];
        CATALOGUES[language.0].get_or_init(|| Self::read(language, &LANGUAGES[language.0]))
    }

    /// The catalogue that the designer reads.
    #[must_use]
    pub fn english() -> &'static Self {
        Self::of(Language::ENGLISH)
    }

    /// The catalogue of a language, with the plurals of names that a design says.
    #[must_use]
    pub fn with_plurals(language: Language, plurals: Plurals) -> Self {
        Self { plurals, ..Self::of(language).clone() }
    }

    /// Its language.
    #[must_use]
    pub const fn language(&self) -> Language {
        self.language
    }

    fn read(language: Language, known: &Known) -> Self {
        let tag: LanguageIdentifier = known.tag.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        bundle.set_use_isolating(false);
        let file = FluentResource::try_new(marks::read_signs(known.file)).unwrap_or_else(|(file, errors)| {
            debug_assert!(errors.is_empty(), "{}: {errors:?}", known.tag);
            file
        });
        let repeated = bundle.add_resource(file).err();
        debug_assert!(repeated.is_none(), "{}: {repeated:?}", known.tag);
        let plural = known.plural;
        let functions = [
            bundle.add_function("PLURAL", move |args, _| {
                on_text(args, &|name| marks::many(name).map_or_else(|| plural(name), str::to_owned))
            }),
            bundle.add_function("OWN-PLURAL", |args, _| {
                on_text(args, &|name| if marks::many(name).is_some() { "yes" } else { "no" }.to_owned())
            }),
            bundle.add_function("CAPITAL", |args, _| on_text(args, &english::capital)),
        ];
        debug_assert!(functions.iter().all(Result::is_ok));
        let (decimal, units) = (String::new(), Vec::new());
        let mut words = Self { language, bundle: Arc::new(bundle), plurals: Plurals::default(), decimal, units };
        words.decimal = words.tell("decimal-sign").string();
        words.units = [("in", "unit-in"), ("mm", "unit-mm"), ("cm", "unit-cm"), ("m", "unit-m")]
            .map(|(sign, id)| (sign, words.tell(id).string()))
            .to_vec();
        words
    }

    /// A message, to be given its arguments.
    #[must_use]
    pub fn tell<'a>(&'a self, id: &'a str) -> Tell<'a> {
        Tell { words: self, id, args: FluentArgs::new() }
    }

    /// A measure in this language's habit: its decimal sign and its signs of units.
    /// `measure` is as lengths print themselves: `3 3/4`, `12.5 x 20 mm`.
    #[must_use]
    pub fn measured(&self, measure: &str) -> String {
        let word = |word: &str| {
            if let Some((_, sign)) = self.units.iter().find(|(sign, _)| *sign == word) {
                return sign.clone();
            }
            let is_number = word.contains('.') && word.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
            if is_number { word.replace('.', &self.decimal) } else { word.to_owned() }
        };
        measure.split(' ').map(word).collect::<Vec<_>>().join(" ")
    }

    /// Whether there is such a message.
    #[must_use]
    pub fn has(&self, id: &str) -> bool {
        self.bundle.has_message(id)
    }

    fn format(&self, id: &str, args: &FluentArgs<'_>) -> Option<String> {
        let pattern = self.bundle.get_message(id).and_then(|message| message.value());
        debug_assert!(pattern.is_some(), "{}: no message {id}", self.language.tag());
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern?, Some(args), &mut errors).into_owned();
        debug_assert!(errors.is_empty(), "{}: {id}: {errors:?}", self.language.tag());
        errors.is_empty().then_some(text)
    }
}

fn on_text<'a>(args: &[FluentValue<'a>], change: &dyn Fn(&str) -> String) -> FluentValue<'a> {
    match args {
        [FluentValue::String(text)] => FluentValue::from(change(text)),
        _ => FluentValue::Error,
    }
}

/// A message with its arguments.
#[derive(Debug)]
pub struct Tell<'a> {
    words: &'a Words,
    id: &'a str,
    args: FluentArgs<'a>,
}

impl<'a> Tell<'a> {
    /// With a number of things; decides on singular and plural.
    #[must_use]
    pub fn count(mut self, key: &'a str, count: impl TryInto<u32>) -> Self {
        self.args.set(key, count.try_into().unwrap_or(u32::MAX));
        self
    }

    /// With hundredths of something; decides on singular and plural alone, the number is given as a size.
    #[must_use]
    pub fn hundredths(mut self, key: &'a str, hundredths: u32) -> Self {
        self.args.set(key, f64::from(hundredths) / 100.0);
        self
    }

    /// With a name or other words as they stand: data, never markup.
    #[must_use]
    pub fn name(mut self, key: &'a str, name: &str) -> Self {
        let named = match self.words.plurals.get(name) {
            Some(many) => marks::named(name, many),
            None => marks::escaped(name),
        };
        self.args.set(key, named);
        self
    }

    /// With the key of a kind, which the message selects by: `left`, `tape`.
    #[must_use]
    pub fn kind(mut self, key: &'a str, kind: &'static str) -> Self {
        self.args.set(key, kind);
        self
    }

    /// With something that holds or does not: `yes` or `no`.
    #[must_use]
    pub fn whether(self, key: &'a str, holds: bool) -> Self {
        self.kind(key, if holds { "yes" } else { "no" })
    }

    /// With a measure or size, never broken over lines.
    #[must_use]
    pub fn measure(mut self, key: &'a str, measure: &str) -> Self {
        self.args.set(key, marks::measure(&self.words.measured(measure)));
        self
    }

    /// With a measure or size as plain words.
    #[must_use]
    pub fn size(self, key: &'a str, size: &str) -> Self {
        let size = self.words.measured(size);
        self.name(key, &size)
    }

    /// With a piece's ring number.
    #[must_use]
    pub fn ring(mut self, key: &'a str, ring: u32) -> Self {
        self.args.set(key, marks::ring(ring));
        self
    }

    /// With a leftover's number.
    #[must_use]
    pub fn leftover(mut self, key: &'a str, number: u32) -> Self {
        self.args.set(key, marks::leftover(number));
        self
    }

    /// With a cut's number, or a run of them.
    #[must_use]
    pub fn cut(mut self, key: &'a str, cut: &str) -> Self {
        self.args.set(key, marks::cut(cut));
        self
    }

    /// With words that the catalogue has given before.
    #[must_use]
    pub fn part(mut self, key: &'a str, part: &Line) -> Self {
        self.args.set(key, marks::line(part));
        self
    }

    /// What it says. Where a language fails, English speaks.
    #[must_use]
    pub fn line(self) -> Line {
        let own = self.words.format(self.id, &self.args);
        let text = own.or_else(|| Words::english().format(self.id, &self.args));
        marks::apart(&text.unwrap_or_default())
    }

    /// The same as a string: a ring as `(4)`, a leftover as `iv`.
    #[must_use]
    pub fn string(self) -> String {
        self.line().to_text()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const OTHER: Known = Known {
        tag: "de",
        file: "decimal-sign = ,\nunit-in = Zoll\nunit-mm = mm\nunit-cm = cm\nunit-m = m\n\
               size-told = { $size } { PLURAL($name) }, { $count ->\n    [one] ein Blatt\n   *[other] { $count } Blatt\n}\n",
        plural: str::to_owned,
    };

    /// Decimal comma: CLDR 46, numbers of `de`.
    #[test]
    fn a_language_has_its_own_numbers() {
        let words = Words::read(Language::ENGLISH, &OTHER);
        assert_eq!(words.measured("12.5 x 20 mm"), "12,5 x 20 mm");
        assert_eq!(words.measured("3 3/4 in"), "3 3/4 Zoll");
        assert_eq!(words.measured("1.2.x"), "1.2.x");
        let told = words.tell("size-told").count("count", 2_u32).name("name", "Laterne").measure("size", "1.5 in");
        assert_eq!(told.string(), "1,5 Zoll Laterne, 2 Blatt");
        assert_eq!(Words::english().measured("12.5 x 20 mm"), "12.5 x 20 mm");
    }

    #[test]
    fn english_has_a_tag() {
        assert_eq!(Language::of_tag("EN"), Some(Language::ENGLISH));
        assert_eq!(Language::of_tag("xx"), None);
        assert_eq!(Language::ENGLISH.tag(), "en");
    }

    /// A mistake in a catalogue is seen by every test that says the sentence.
    #[test]
    #[should_panic(expected = "no message")]
    fn a_missing_message_is_a_fault() {
        let _ = Words::english().tell("no-such-message").line();
    }

    #[test]
    #[should_panic(expected = "counted")]
    fn a_missing_argument_is_a_fault() {
        let _ = Words::english().tell("counted").count("count", 2_u32).line();
    }
}
