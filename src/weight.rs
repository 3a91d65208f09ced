//! The weight of paper: the grades that pounds are counted by, and grammage.
//!
//! A weight in pounds is that of a ream of 500 sheets of the grade's basis size; grammage is the weight of
//! a square metre (ISO 536). 1 in = 25.4 mm and 1 lb = 453.592 37 g are exact, so grammage is worked out in
//! whole milligrams a square metre and rounded half up once.

/// The grades of paper that pounds are counted by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Grade {
    /// Bond, writing and ledger paper.
    Bond,
    /// Text, book and offset paper.
    Text,
    /// Cover: most cardstock.
    Cover,
    /// Index.
    Index,
    /// Vellum bristol.
    Bristol,
    /// Tag.
    Tag,
}

/// The words that packets use for a grade.
const WORDS: [(&str, Grade); 11] = [
    ("bond", Grade::Bond),
    ("writing", Grade::Bond),
    ("ledger", Grade::Bond),
    ("text", Grade::Text),
    ("book", Grade::Text),
    ("offset", Grade::Text),
    ("cover", Grade::Cover),
    ("index", Grade::Index),
    ("bristol", Grade::Bristol),
    ("vellum bristol", Grade::Bristol),
    ("tag", Grade::Tag),
];

impl Grade {
    /// Every grade.
    pub const ALL: [Self; 6] = [Self::Bond, Self::Text, Self::Cover, Self::Index, Self::Bristol, Self::Tag];

    /// Its name.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Bond => "bond",
            Self::Text => "text",
            Self::Cover => "cover",
            Self::Index => "index",
            Self::Bristol => "bristol",
            Self::Tag => "tag",
        }
    }

    /// The grade of a word as packets have it, lower case: `book` and `offset` are text.
    #[must_use]
    pub fn of(word: &str) -> Option<Self> {
        WORDS.iter().find(|(known, _)| *known == word).map(|(_, grade)| *grade)
    }

    /// Its basis size in half inches: 17 x 22 in, 25 x 38, 20 x 26, 25 1/2 x 30 1/2, 22 1/2 x 28 1/2, 24 x 36.
    #[must_use]
    pub const fn basis(self) -> (i64, i64) {
        match self {
            Self::Bond => (34, 44),
            Self::Text => (50, 76),
            Self::Cover => (40, 52),
            Self::Index => (51, 61),
            Self::Bristol => (45, 57),
            Self::Tag => (48, 72),
        }
    }
}

/// Milligrams a square metre.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Grammage(i64);

impl Grammage {
    /// So many milligrams a square metre.
    #[must_use]
    pub const fn milligrams(milligrams: i64) -> Self {
        Self(milligrams)
    }

    /// So many grams a square metre.
    #[must_use]
    pub const fn grams(grams: i64) -> Self {
        Self(grams * 1000)
    }

    /// So many thousandths of a pound of a grade, rounded half up to a milligram.
    #[must_use]
    pub fn pounds(thousandths: i64, grade: Grade) -> Self {
        // lb x 453 592.37 mg / (500 x 0.000 645 16 m2 x area in square inches), a quarter of a square inch
        // to each square half inch, numerator and denominator times 100.
        let (width, height) = grade.basis();
        let above = i128::from(thousandths) * 45_359_237 * 4;
        let below = 32_258 * i128::from(width * height);
        Self(i64::try_from((above * 2 + below).div_euclid(below * 2)).unwrap_or(i64::MAX))
    }

    /// In milligrams a square metre.
    #[must_use]
    pub const fn mg(self) -> i64 {
        self.0
    }

    /// In whole grams a square metre, rounded half up.
    #[must_use]
    pub const fn whole(self) -> i64 {
        self.0.saturating_add(500).div_euclid(1000)
    }

    /// In grams to one decimal, rounded half up: `297.5`.
    #[must_use]
    pub fn tenths(self) -> String {
        let tenths = self.0.saturating_add(50).div_euclid(100);
        format!("{}.{}", tenths / 10, tenths % 10)
    }
}

/// A weight as it is written, and what it comes to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Weight {
    /// As written: `80 lb cover`, `216 gsm`.
    pub written: String,
    /// Of a square metre.
    pub grammage: Grammage,
    /// The grade, where it is said.
    pub grade: Option<Grade>,
}

/// Why a text is no weight.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum WeightFault {
    /// It is no number with `lb` or `gsm` behind it.
    Unreadable,
    /// So many thousandths of a pound, of no grade.
    NoGrade(i64),
    /// Its grade has this word, which is none.
    UnknownGrade(String),
}

/// How pounds and how grams a square metre are written, the longest first.
const POUNDS: [&str; 6] = ["pounds", "pound", "lbs.", "lb.", "lbs", "lb"];
const GRAMS: [&str; 5] = ["g/m\u{b2}", "g/m2", "gsm", "grams", "g"];
/// What a packet says behind a grade, which is none itself.
const SHEETS: [&str; 4] = ["cardstock", "paper", "stock", "card"];

/// Reads `80 lb cover`, `80lb text`, `216 gsm`, `216 g/m2`, `216 gsm cover`.
///
/// # Errors
/// The fault, where it is none of these.
pub fn parse_weight(text: &str) -> Result<Weight, WeightFault> {
    let tidied = text.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    let digits = tidied.find(|sign: char| !sign.is_ascii_digit() && sign != '.').unwrap_or(tidied.len());
    let (number, rest) = tidied.split_at(digits);
    let thousandths = thousandths(number).ok_or(WeightFault::Unreadable)?;
    let rest = rest.trim_start_matches([' ', '-']);
    let behind = |signs: &[&str]| {
        let unit = |sign: &&str| rest.strip_prefix(*sign).filter(|rest| !rest.starts_with(char::is_alphanumeric));
        signs.iter().find_map(unit).map(str::trim)
    };
    let written = text.trim().to_owned();
    if let Some(grade) = behind(&POUNDS) {
        let grade = grade_of(grade)?.ok_or(WeightFault::NoGrade(thousandths))?;
        return Ok(Weight { written, grammage: Grammage::pounds(thousandths, grade), grade: Some(grade) });
    }
    let grade = grade_of(behind(&GRAMS).ok_or(WeightFault::Unreadable)?)?;
    Ok(Weight { written, grammage: Grammage::milligrams(thousandths), grade })
}

/// The grade that these words say; none where they say none.
fn grade_of(words: &str) -> Result<Option<Grade>, WeightFault> {
    let mut said: Vec<&str> = words.split(' ').filter(|word| !word.is_empty()).collect();
    if let Some(grade) = Grade::of(&said.join(" ")) {
        return Ok(Some(grade));
    }
    while said.last().is_some_and(|word| SHEETS.contains(word)) {
        said.pop();
    }
    if said.is_empty() {
        return Ok(None);
    }
    let word = said.join(" ");
    Grade::of(&word).map(Some).ok_or(WeightFault::UnknownGrade(word))
}

/// A decimal number of at most three places in thousandths.
fn thousandths(number: &str) -> Option<i64> {
    let (whole, part) = number.split_once('.').unwrap_or((number, ""));
    if whole.is_empty() || whole.len() > 9 || part.len() > 3 || part.contains('.') || number.ends_with('.') {
        return None;
    }
    let whole: i64 = whole.parse().ok()?;
    let part: i64 = format!("{part:0<3}").parse().ok()?;
    Some(whole * 1000 + part)
}
