//! What the posts of some countries take as a letter: every limit, with its document, in this one file.
//!
//! Rules of the post change, and prices more so: none stands here. What was found in no document is left
//! open. The sizes that standardized letters have by the agreement of the posts (shorter side 90 to 120 mm,
//! longer side 140 to 235 mm, longer at least 1.4 times the shorter: koreapost.go.kr/eng/subIndex/4424.do,
//! the former article 203) are the least of Canada and Germany too.

use crate::length::{Length, Units};

/// A longer and a shorter side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sides {
    /// The longer.
    pub long: Length,
    /// The shorter.
    pub short: Length,
}

/// A part over another part.
pub type Ratio = (i64, i64);

/// One class of a service.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Class {
    /// Its name in plain words.
    pub name: &'static str,
    /// The smallest sides.
    pub least: Option<Sides>,
    /// The largest sides.
    pub most: Sides,
    /// The thinnest.
    pub thinnest: Option<Length>,
    /// The thickest.
    pub thickest: Length,
    /// The heaviest, milligrams.
    pub heaviest: i64,
    /// The longer side is at least so many times the shorter one.
    pub ratio: Option<Ratio>,
}

/// What a letter must be for the post's machines to take it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Machine {
    /// The longer side is at least so many times the shorter one,
    pub least_ratio: Ratio,
    /// and at most so many times.
    pub most_ratio: Ratio,
    /// One larger than these either way
    pub large: Sides,
    /// is at least so thick.
    pub large_thinnest: Length,
}

/// The letters of one country.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Service {
    /// The country.
    pub country: &'static str,
    /// The units of its limits.
    pub units: Units,
    /// The classes, the smallest first.
    pub classes: &'static [Class],
    /// What something is that no class takes since it is too large, thick or heavy.
    pub larger: &'static str,
    /// What its machines take, where that was found.
    pub machine: Option<Machine>,
    /// Whether a letter must bend, so that an uneven one may be a parcel.
    pub bends: bool,
    /// The document.
    pub document: &'static str,
}

const fn inches(long: Length, short: Length) -> Sides {
    Sides { long, short }
}

const fn mm(long: i64, short: i64) -> Sides {
    Sides { long: Length::mm(long), short: Length::mm(short) }
}

/// pe.usps.com/Archive/NHTML/DMMArchive20210124/101.htm: 1.1 letters, 1.2 nonmachinable letters (a: ratio,
/// d: uneven, f: thickness). 3.5 ounces of 28.349 523 g.
const UNITED_STATES: Service = Service {
    country: "United States",
    units: Units::Inch,
    classes: &[Class {
        name: "letter",
        least: Some(inches(Length::inch(5, 1), Length::inch(7, 2))),
        most: inches(Length::inch(23, 2), Length::inch(49, 8)),
        thinnest: Some(Length::inch(7, 1000)),
        thickest: Length::inch(1, 4),
        heaviest: 99_223,
        ratio: None,
    }],
    larger: "a large envelope or a parcel",
    machine: Some(Machine {
        least_ratio: (13, 10),
        most_ratio: (5, 2),
        large: inches(Length::inch(6, 1), Length::inch(17, 4)),
        large_thinnest: Length::inch(9, 1000),
    }),
    bends: false,
    document: "DMM 101, archive of 24 January 2021",
};

/// ask.ofcom.org.uk/help/post/largeletter (sizes), antalis.co.uk (weights).
const UNITED_KINGDOM: Service = Service {
    country: "United Kingdom",
    units: Units::Metric,
    classes: &[
        Class {
            name: "letter",
            least: None,
            most: mm(240, 165),
            thinnest: None,
            thickest: Length::mm(5),
            heaviest: 100_000,
            ratio: None,
        },
        Class {
            name: "large letter",
            least: None,
            most: mm(353, 250),
            thinnest: None,
            thickest: Length::mm(25),
            heaviest: 750_000,
            ratio: None,
        },
    ],
    larger: "a parcel",
    machine: None,
    bends: false,
    document: "the regulator's page on large letters, undated",
};

/// canadapost lettermail/size-requirements.page.
const CANADA: Service = Service {
    country: "Canada",
    units: Units::Metric,
    classes: &[
        Class {
            name: "standard letter",
            least: Some(mm(140, 90)),
            most: mm(245, 156),
            thinnest: Some(Length::of(180_000, Units::Metric)),
            thickest: Length::mm(5),
            heaviest: 50_000,
            ratio: None,
        },
        Class {
            name: "oversize letter",
            least: Some(mm(140, 90)),
            most: mm(380, 270),
            thinnest: Some(Length::of(180_000, Units::Metric)),
            thickest: Length::mm(20),
            heaviest: 500_000,
            ratio: None,
        },
    ],
    larger: "a parcel",
    machine: None,
    bends: false,
    document: "size requirements of its post, undated",
};

/// zeit-heute.de, 12 February 2025 (sizes, weights, squares); helpster.de (ratio).
const GERMANY: Service = Service {
    country: "Germany",
    units: Units::Metric,
    classes: &[
        Class {
            name: "standard letter",
            least: Some(mm(140, 90)),
            most: mm(235, 125),
            thinnest: None,
            thickest: Length::mm(5),
            heaviest: 20_000,
            ratio: Some((14, 10)),
        },
        Class {
            name: "compact letter",
            least: Some(mm(100, 70)),
            most: mm(235, 125),
            thinnest: None,
            thickest: Length::mm(10),
            heaviest: 50_000,
            ratio: Some((14, 10)),
        },
        Class {
            name: "large letter",
            least: Some(mm(100, 70)),
            most: mm(353, 250),
            thinnest: None,
            thickest: Length::mm(20),
            heaviest: 500_000,
            ratio: None,
        },
    ],
    larger: "a parcel",
    machine: None,
    bends: false,
    document: "a newspaper's table of 12 February 2025",
};

/// auspost.com.au domestic-letters, after 15 April 2024 (thickness, what bends); yuanzhou.org (sizes).
const AUSTRALIA: Service = Service {
    country: "Australia",
    units: Units::Metric,
    classes: &[
        Class {
            name: "small letter",
            least: None,
            most: mm(240, 130),
            thinnest: None,
            thickest: Length::mm(5),
            heaviest: 250_000,
            ratio: None,
        },
        Class {
            name: "large letter",
            least: None,
            most: mm(360, 260),
            thinnest: None,
            thickest: Length::mm(20),
            heaviest: 500_000,
            ratio: None,
        },
    ],
    larger: "a parcel",
    machine: None,
    bends: true,
    document: "its post's page on domestic letters, after 15 April 2024",
};

/// The services, in the order in which `check` names them.
pub const SERVICES: [Service; 5] = [UNITED_STATES, CANADA, UNITED_KINGDOM, GERMANY, AUSTRALIA];

/// The thickest letter of an edition's readers: 1/4 in in the United States; 5 mm in Canada, the United
/// Kingdom, Germany and Australia.
#[must_use]
pub const fn thickest_letter(units: Units) -> Length {
    Length::either(units, UNITED_STATES.classes[0].thickest, CANADA.classes[0].thickest)
}

/// The smallest letter of an edition's readers: 5 x 3 1/2 in in the United States, 140 x 90 mm in Canada.
#[must_use]
pub const fn smallest_letter(units: Units) -> Sides {
    match units {
        Units::Inch => inches(Length::inch(5, 1), Length::inch(7, 2)),
        Units::Metric => mm(140, 90),
    }
}

/// How many times the shorter side the longer one of a letter is, at the least and, where that was found, at
/// the most: 1.3 and 2.5 for the machines of the United States, 1.4 for a standard letter in Germany.
#[must_use]
pub const fn usual_ratio(units: Units) -> (Ratio, Option<Ratio>, &'static str) {
    match units {
        Units::Inch => ((13, 10), Some((5, 2)), UNITED_STATES.country),
        Units::Metric => ((14, 10), None, GERMANY.country),
    }
}
