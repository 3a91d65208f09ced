//! Which handouts are made of one design: what they hold, on which page, how they are printed.
//!
//! Takes words such as `handout in large print on A4`, gives a [`Wanted`]. Must never know a page's look.

use crate::length::Units;

/// What a file is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Form {
    /// All that a reader needs.
    Handout,
    /// One leaf for the trimmer, printed on both sides: front, cut list, diagrams, borders to show.
    Leaf,
    /// The handout with all that was found, allowed and proven, for the designer alone.
    DesignersCopy,
    /// The pieces of one card at half size, to cut and build from plain paper first.
    TryOut,
}

/// The paper that is printed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Page {
    /// US Letter.
    Letter,
    /// A4.
    A4,
}

impl Page {
    /// What readers of a system print on at home.
    #[must_use]
    pub const fn usual(units: Units) -> Self {
        match units {
            Units::Inch => Self::Letter,
            Units::Metric => Self::A4,
        }
    }

    /// Its word in file names and templates.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Letter => "letter",
            Self::A4 => "a4",
        }
    }

    /// Width and height, nanometres: ANSI/ASME Y14.1 size A, 8 1/2 x 11 in; ISO 216 A4, 210 x 297 mm.
    #[must_use]
    pub const fn size_nm(self) -> (i64, i64) {
        match self {
            Self::Letter => (215_900_000, 279_400_000),
            Self::A4 => (210_000_000, 297_000_000),
        }
    }
}

/// A handout that is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Wanted {
    /// What it is for.
    pub form: Form,
    /// Its page; none: what readers of the edition's units print on.
    pub page: Option<Page>,
    /// Whether letters are large.
    pub large: bool,
    /// Whether hatches and other filled areas are printed.
    pub fills: bool,
}

impl Wanted {
    /// The handout as most readers print it.
    pub const HANDOUT: Self = Self { form: Form::Handout, page: None, large: false, fills: true };

    /// From words: a form, then what is unlike the usual, in any order.
    ///
    /// # Errors
    /// What is wrong, as a clause: "`x` is no handout".
    pub fn read(words: &str) -> Result<Self, Unknown> {
        let tidy = words.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase().replace('’', "'");
        let found = FORMS.iter().find_map(|(word, form)| {
            let rest = tidy.strip_prefix(word)?;
            (rest.is_empty() || rest.starts_with(' ')).then_some((*form, rest.trim_start()))
        });
        let (form, mut rest) = found.ok_or(Unknown::Form)?;
        let mut wanted = Self { form, ..Self::HANDOUT };
        let mut seen = [false; 3];
        while !rest.is_empty() {
            let (word, turn) =
                TURNS.iter().find(|(word, _)| after(rest, word).is_some()).ok_or_else(|| Unknown::Turn(rest.into()))?;
            let kind = match turn {
                Turn::Large => {
                    wanted.large = true;
                    0
                }
                Turn::NoFills => {
                    wanted.fills = false;
                    1
                }
                Turn::On(page) => {
                    wanted.page = Some(*page);
                    2
                }
            };
            if std::mem::replace(&mut seen[kind], true) {
                return Err(Unknown::Twice(rest.into()));
            }
            rest = after(rest, word).unwrap_or_default();
        }
        if wanted.large && wanted.form != Form::Handout {
            return Err(Unknown::NotLarge);
        }
        Ok(wanted)
    }

    /// Every handout that there is on the usual page.
    #[must_use]
    pub fn all() -> Vec<Self> {
        let of = |form| Self { form, ..Self::HANDOUT };
        vec![
            Self::HANDOUT,
            Self { fills: false, ..Self::HANDOUT },
            Self { large: true, ..Self::HANDOUT },
            Self { large: true, fills: false, ..Self::HANDOUT },
            of(Form::Leaf),
            Self { fills: false, ..of(Form::Leaf) },
            of(Form::TryOut),
            of(Form::DesignersCopy),
        ]
    }

    /// Every way to say one, to be offered for a misspelt one.
    #[must_use]
    pub fn sayings() -> Vec<String> {
        let mut sayings = Vec::new();
        for (form, _) in FORMS {
            for large in ["", " in large print"] {
                for fills in ["", " without fills"] {
                    for page in ["", " on letter", " on A4"] {
                        let saying = format!("{form}{large}{fills}{page}");
                        if Self::read(&saying).is_ok() {
                            sayings.push(saying);
                        }
                    }
                }
            }
        }
        sayings
    }
}

/// The forms, by their words.
pub const FORMS: [(&str, Form); 4] = [
    ("handout", Form::Handout),
    ("one leaf", Form::Leaf),
    ("designer's copy", Form::DesignersCopy),
    ("try-out page", Form::TryOut),
];

/// What is unlike the usual.
#[derive(Clone, Copy)]
enum Turn {
    Large,
    NoFills,
    On(Page),
}

const TURNS: [(&str, Turn); 4] = [
    ("in large print", Turn::Large),
    ("without fills", Turn::NoFills),
    ("on letter", Turn::On(Page::Letter)),
    ("on a4", Turn::On(Page::A4)),
];

/// What follows some words, without a comma or an "and" before the next.
fn after<'t>(text: &'t str, words: &str) -> Option<&'t str> {
    let rest = text.strip_prefix(words)?;
    let rest = if rest.is_empty() { rest } else { rest.strip_prefix(',').or_else(|| rest.strip_prefix(' '))? };
    let rest = rest.trim_start();
    Some(rest.strip_prefix("and ").unwrap_or(rest))
}

/// Why words ask for no handout.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unknown {
    /// They start with no known form.
    Form,
    /// What follows is not known.
    Turn(String),
    /// One thing is said twice, or against itself.
    Twice(String),
    /// Only the handout has large letters: the others hold as much as their page does.
    NotLarge,
}

impl Unknown {
    /// The measured fact, for a label.
    #[must_use]
    pub fn label(&self) -> String {
        match self {
            Self::Form => "no handout is called so".to_owned(),
            Self::Turn(rest) => format!("`{rest}` says nothing about a handout"),
            Self::Twice(rest) => format!("`{rest}` says once more what was said"),
            Self::NotLarge => "only the handout itself is made in large print".to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_read() {
        let large = Wanted { large: true, page: Some(Page::A4), ..Wanted::HANDOUT };
        assert_eq!(Wanted::read("handout"), Ok(Wanted::HANDOUT));
        assert_eq!(Wanted::read(" Handout  in large print on A4"), Ok(large));
        assert_eq!(Wanted::read("handout on a4, in large print"), Ok(large));
        assert_eq!(Wanted::read("handout in large print and on a4"), Ok(large));
        assert_eq!(
            Wanted::read("one leaf without fills"),
            Ok(Wanted { form: Form::Leaf, fills: false, ..Wanted::HANDOUT })
        );
        assert_eq!(Wanted::read("designer’s copy").unwrap().form, Form::DesignersCopy);
    }

    #[test]
    fn other_words_are_refused() {
        assert_eq!(Wanted::read("handouts"), Err(Unknown::Form));
        assert_eq!(Wanted::read(""), Err(Unknown::Form));
        assert_eq!(Wanted::read("handout in print"), Err(Unknown::Turn("in print".to_owned())));
        assert_eq!(Wanted::read("handout on A4 on letter"), Err(Unknown::Twice("on letter".to_owned())));
        assert_eq!(Wanted::read("one leaf in large print"), Err(Unknown::NotLarge));
        assert_eq!(Wanted::read("handout on a4x"), Err(Unknown::Turn("on a4x".to_owned())));
    }

    #[test]
    fn every_saying_is_read() {
        let sayings = Wanted::sayings();
        assert_eq!(sayings.len(), 12 + 3 * 6);
        assert!(sayings.iter().all(|saying| Wanted::read(saying).is_ok()));
    }
}
