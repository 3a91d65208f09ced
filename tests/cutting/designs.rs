//! Designs for cutting, built by hand.

use trimwright::design::model::*;
use trimwright::geometry::Edge;
use trimwright::length::{Length, Size, Units};
use trimwright::source::{Span, Spanned};

pub(crate) fn at<T>(value: T) -> Spanned<T> {
    Spanned { value, span: Span::default() }
}

/// Inches in sixty-fourths, so that every fraction of a ruler is a whole number.
pub(crate) fn inch(numerator: i64, denominator: i64) -> Length {
    Length::inch(numerator, denominator)
}

pub(crate) fn mm(mm: i64) -> Length {
    Length::mm(mm)
}

pub(crate) fn size(width: Length, height: Length) -> Size {
    Size::new(width, height)
}

/// Builds a design for `cuts`, or with versions.
pub(crate) struct Desk {
    pub(crate) design: Design,
}

impl Desk {
    pub(crate) fn new(units: Units, cards: u32) -> Self {
        let version = Version { name: String::new(), span: Span::default(), cards, papers: Vec::new() };
        let design = Design {
            units,
            asked: vec![units],
            title: at("test".to_owned()),
            month: None,
            designer: None,
            about: None,
            cards: at(cards),
            workshop: Workshop {
                ruler: Length::either(units, inch(1, 16), mm(1)),
                cutting_error: Length::either(units, inch(1, 32), mm(1)),
                placing_error: Length::either(units, inch(1, 16), Length::new(1_500_000, mm(1).unit())),
            },
            card: None,
            papers: Vec::new(),
            pieces: Vec::new(),
            versions: vec![version],
            front: Vec::new(),
            notes: Vec::new(),
            leftovers: Vec::new(),
            supplies: Vec::new(),
            tools: Vec::new(),
            has_front: false,
        };
        Self { design }
    }

    pub(crate) fn paper(mut self, name: &str, pattern: Pattern, sheets: &[(u32, Size)]) -> Self {
        self.design.papers.push(Paper {
            name: name.to_owned(),
            span: Span::default(),
            sheets: sheets
                .iter()
                .map(|&(count, size)| Sheets { count, size, named: None, span: Span::default() })
                .collect(),
            pattern,
            pattern_span: None,
            edge_strip: None,
            weight: None,
        });
        self
    }

    /// An edge strip for the paper written last.
    pub(crate) fn strip(mut self, width: Length, edge: Edge, beside: bool) -> Self {
        let paper = self.design.papers.last_mut().unwrap();
        paper.edge_strip = Some(EdgeStrip { width, edge, beside, span: Span::default() });
        self
    }

    pub(crate) fn piece(self, name: &str, size: Size, per_card: u32, paper: usize) -> Self {
        self.piece_from(name, size, per_card, From::Paper(PaperId(paper)))
    }

    pub(crate) fn piece_from(mut self, name: &str, size: Size, per_card: u32, from: From) -> Self {
        self.design.pieces.push(Piece {
            name: name.to_owned(),
            span: Span::default(),
            kind: PieceKind::Plain,
            size,
            size_span: Span::default(),
            stated: Stated::Outright,
            from,
            from_span: Span::default(),
            upright: None,
            per_card: Some(per_card),
            stamp: None,
        });
        self
    }

    /// The piece written last has a pattern that must stay upright.
    pub(crate) fn upright(mut self) -> Self {
        self.design.pieces.last_mut().unwrap().upright = Some(true);
        self
    }

    pub(crate) fn versions(mut self, versions: &[(&str, u32, &[(usize, usize)])]) -> Self {
        self.design.versions = versions
            .iter()
            .map(|(name, cards, papers)| Version {
                name: (*name).to_owned(),
                span: Span::default(),
                cards: *cards,
                papers: papers.iter().map(|&(piece, paper)| (PieceId(piece), PaperId(paper))).collect(),
            })
            .collect();
        self
    }
}

/// Lantern Row: eight cards, two 12 x 12 papers that swap parts, one of them one-way with an edge
/// strip, mats and rails from the same cardstock.
pub(crate) fn lantern_row(units: Units) -> Design {
    let pick = |i: Length, m: Length| Length::either(units, i, m);
    let square = size(pick(inch(12, 1), mm(304)), pick(inch(12, 1), mm(304)));
    let letter = size(pick(inch(17, 2), mm(210)), pick(inch(11, 1), mm(297)));
    // A side fold: the base is twice as wide as the card.
    let base = size(pick(inch(17, 2), mm(210)), pick(inch(11, 2), mm(148)));
    let mat = size(pick(inch(4, 1), mm(99)), pick(inch(21, 4), mm(142)));
    let panel = size(pick(inch(15, 4), mm(93)), pick(inch(5, 1), mm(136)));
    let lantern = size(pick(inch(1, 1), mm(25)), pick(inch(7, 4), mm(44)));
    let rail = size(pick(inch(9, 2), mm(115)), pick(inch(1, 4), mm(6)));
    Desk::new(units, 8)
        .paper("dusk", Pattern::OneWay, &[(1, square)])
        .strip(pick(inch(1, 2), mm(13)), Edge::Bottom, true)
        .paper("ember", Pattern::Any, &[(1, square)])
        .paper("slate", Pattern::Any, &[(2, letter)])
        .paper("white", Pattern::Any, &[(4, letter)])
        .piece("base", base, 1, 3)
        .piece("mat", mat, 1, 2)
        .piece_from("panel", panel, 1, From::Varies)
        .piece_from("lantern", lantern, 3, From::Varies)
        .upright()
        .piece("rail", rail, 1, 2)
        .versions(&[("dusk", 4, &[(2, 0), (3, 1)]), ("ember", 4, &[(2, 1), (3, 0)])])
        .design
}

/// Kitchen Garden: twelve cards in millimetres, three papers that give one another's parts.
pub(crate) fn kitchen_garden() -> Design {
    let square = size(mm(304), mm(304));
    let a4 = size(mm(210), mm(297));
    Desk::new(Units::Metric, 12)
        .paper("lettuce", Pattern::Any, &[(1, square)])
        .paper("radish", Pattern::Any, &[(1, square)])
        .paper("carrot", Pattern::Any, &[(1, square)])
        .paper("cream", Pattern::Any, &[(3, a4)])
        .paper("green", Pattern::Any, &[(6, a4)])
        .piece("base", size(mm(105), mm(296)), 1, 4)
        .piece_from("mat", size(mm(97), mm(140)), 1, From::Varies)
        .piece("ground", size(mm(89), mm(132)), 1, 3)
        .piece_from("bed", size(mm(38), mm(30)), 4, From::Varies)
        .piece_from("long bed", size(mm(81), mm(30)), 1, From::Varies)
        .piece("label", size(mm(81), mm(19)), 1, 3)
        .versions(&[
            ("lettuce", 4, &[(1, 0), (3, 1), (4, 2)]),
            ("radish", 4, &[(1, 1), (3, 2), (4, 0)]),
            ("carrot", 4, &[(1, 2), (3, 0), (4, 1)]),
        ])
        .design
}
