//! A whole project written out by hand, so that drawing is tested without the stages before it.

use trimwright::assembly::model::{Action, Step, Steps};
use trimwright::cutting::plan::{Aim, Aims, CutPlan, CutRow, Part, PartId, SheetPlan, Use};
use trimwright::design::model::{
    Along, Arrangement, Card, Design, EdgeStrip, Face, Fixed, Fold, Frames, From, Layer, LayerId, LayerSpans, Month,
    Onto, Paper, PaperId, Pattern, Piece, PieceId, PieceKind, Sheets, Side, Stated, Version, VersionId, Work, Workshop,
};
use trimwright::geometry::{Angle, Edge, Polygon, Rect, Region};
use trimwright::layout::model::{Laid, Layout, Placed};
use trimwright::length::{Length, Size, Unit, Units};
use trimwright::paper::made::made;
use trimwright::project::Project;
use trimwright::shape::{Form, Shape};
use trimwright::source::{Span, Spanned};
use trimwright::weight::parse_weight;
use trimwright::words::{Language, Words};

/// Eighths of an inch.
pub(crate) const fn e(eighths: i64) -> i64 {
    eighths * 3_175_000
}

pub(crate) const fn len(eighths: i64) -> Length {
    Length::new(e(eighths), Unit::Inch)
}

pub(crate) const fn size(width: i64, height: i64) -> Size {
    Size::new(len(width), len(height))
}

/// A rectangle in eighths: left, bottom, width, height.
pub(crate) const fn rect(left: i64, bottom: i64, width: i64, height: i64) -> Rect {
    Rect::at(e(left), e(bottom), e(width), e(height))
}

pub(crate) const NOWHERE: Span = Span::new(0, 0);

pub(crate) fn said<T>(value: T) -> Spanned<T> {
    Spanned::new(value, NOWHERE)
}

pub(crate) fn paper(name: &str, sheet: Size, pattern: Pattern, weight: Option<&str>) -> Paper {
    Paper {
        name: name.to_owned(),
        span: NOWHERE,
        sheets: vec![Sheets { count: 2, size: sheet, named: None, span: NOWHERE }],
        pattern,
        pattern_span: (pattern != Pattern::Any).then_some(NOWHERE),
        edge_strip: None,
        weight: weight.map(|weight| said(parse_weight(weight).expect("a weight"))),
        thickness: None,
        grain: None,
        back: None,
        different: None,
        kept_from: None,
        fixed: Fixed::default(),
        also: Vec::new(),
        ways: 1,
        cells: None,
    }
}

pub(crate) fn piece(name: &str, size: Size, from: From) -> Piece {
    Piece {
        name: name.to_owned(),
        span: NOWHERE,
        kind: if name == "base" { PieceKind::Base } else { PieceKind::Plain },
        size,
        shape: Shape::by_hand(Form::Rectangle, size.width.nm(), size.height.nm()),
        shape_span: NOWHERE,
        size_span: NOWHERE,
        stated: Stated::Outright,
        from,
        from_span: NOWHERE,
        upright: None,
        per_card: None,
        greeting: None,
        side: Side::Front,
    }
}

pub(crate) fn layer(name: &str, piece: usize, onto: Onto, unit: Option<usize>, across: Along, up: Along) -> Layer {
    Layer {
        name: name.to_owned(),
        piece: PieceId(piece),
        face: Face::Front,
        onto,
        unit: unit.map(LayerId),
        across,
        up,
        shifted: (0, 0),
        arrangement: Arrangement::Single,
        mirrored: None,
        quarter_turns: 0,
        tilt: None,
        ring: Vec::new(),
        shows: None,
        trim_flush: None,
        glue: None,
        span: NOWHERE,
        spans: LayerSpans::default(),
    }
}

/// A layer laid; `trimmed` only where it is cut level afterwards.
pub(crate) fn placed(layer: usize, onto: Rect, copies: &[Rect], trimmed: Option<&[Rect]>) -> Placed {
    let trimmed = trimmed.unwrap_or(copies);
    Placed {
        layer: LayerId(layer),
        face: Face::Front,
        frame: Vec::new(),
        laid: copies
            .iter()
            .zip(trimmed)
            .map(|(copy, trimmed)| Laid {
                outline: Polygon::from(*copy),
                shown: Region::from(*trimmed),
                angle: Angle::NONE,
                mirrored: false,
            })
            .collect(),
        onto,
        copies: copies.to_vec(),
        trimmed: trimmed.iter().map(|rect| Some(*rect)).collect(),
        block: copies.iter().copied().reduce(Rect::hull).unwrap(),
    }
}

pub(crate) fn step(number: u32, work: Work, action: Action) -> Step {
    Step { number: Some(number), work, action, times: 8, notes: Vec::new(), checkpoint: Vec::new() }
}

/// Builds a sheet's tree of parts in eighths of an inch, the way a hand cuts it.
pub(crate) struct Sheet {
    plan: SheetPlan,
    next: u32,
    leftover: u32,
}

impl Sheet {
    pub(crate) fn new(paper: usize, width: i64, height: i64, diagram: usize) -> Self {
        let whole = Part { parent: None, rect: rect(0, 0, width, height), r#use: Use::Divided };
        Self {
            plan: SheetPlan {
                paper: PaperId(paper),
                kind: 0,
                kept: false,
                numbers: vec![1],
                diagram,
                width: len(width),
                height: len(height),
                slack: Size::new(len(width), len(height)),
                parts: vec![whole],
                cuts: Vec::new(),
            },
            next: 1,
            leftover: 0,
        }
    }

    /// One printed row: `counts` cuts on each of `parts` at `measure` from `from`. Gives the slices
    /// and the rest of each part.
    pub(crate) fn cut(&mut self, parts: &[PartId], from: Edge, measure: i64, counts: &[u32]) -> Vec<Vec<PartId>> {
        let mut gives = Vec::new();
        for (part, count) in parts.iter().zip(counts) {
            let mut rest = self.plan.parts[part.0].rect;
            let mut own = Vec::new();
            for _ in 0..*count {
                let mut slice = rest;
                match from {
                    Edge::Left => (slice.right, rest.left) = (rest.left + e(measure), rest.left + e(measure)),
                    Edge::Right => (slice.left, rest.right) = (rest.right - e(measure), rest.right - e(measure)),
                    Edge::Top => (slice.bottom, rest.top) = (rest.top - e(measure), rest.top - e(measure)),
                    Edge::Bottom => (slice.top, rest.bottom) = (rest.bottom + e(measure), rest.bottom + e(measure)),
                }
                own.push(self.part(*part, slice));
            }
            own.push(self.part(*part, rest));
            gives.push(own);
        }
        let cuts = counts.iter().sum();
        self.plan.cuts.push(CutRow {
            n: self.next,
            parts: parts.to_vec(),
            from,
            measure: len(measure),
            cuts,
            gives: gives.concat(),
        });
        self.next += cuts;
        gives
    }

    fn part(&mut self, parent: PartId, rect: Rect) -> PartId {
        self.plan.parts.push(Part { parent: Some(parent), rect, r#use: Use::Divided });
        PartId(self.plan.parts.len() - 1)
    }

    pub(crate) fn piece(&mut self, parts: &[PartId], piece: usize, quarter_turns: u8) {
        for part in parts {
            self.plan.parts[part.0].r#use = Use::Piece { piece: PieceId(piece), version: None, quarter_turns };
        }
    }

    pub(crate) fn strip(&mut self, part: PartId) {
        self.plan.parts[part.0].r#use = Use::EdgeStrip;
    }

    /// The plan; every part that nothing became of is left over.
    pub(crate) fn done(mut self) -> SheetPlan {
        for n in 0..self.plan.parts.len() {
            let is_parent = self.plan.parts.iter().any(|part| part.parent == Some(PartId(n)));
            if self.plan.parts[n].r#use == Use::Divided && !is_parent {
                self.plan.parts[n].r#use = Use::Leftover;
                self.leftover += 1;
            }
        }
        self.plan
    }
}

pub(crate) const SHEET: PartId = PartId(0);

/// Dusk: one-way, 12 x 12 1/2 in with its edge strip, 4 panels and 12 lanterns.
pub(crate) fn dusk() -> SheetPlan {
    let mut sheet = Sheet::new(1, 96, 100, 0);
    let off = sheet.cut(&[SHEET], Edge::Bottom, 4, &[1]);
    sheet.strip(off[0][0]);
    let strips = sheet.cut(&[off[0][1]], Edge::Top, 40, &[2]);
    let panels = sheet.cut(&strips[0][..2], Edge::Left, 30, &[3, 1]);
    sheet.piece(&panels[0][..3], 2, 0);
    sheet.piece(&panels[1][..1], 2, 0);
    let rows = sheet.cut(&[panels[1][1]], Edge::Top, 14, &[2]);
    let lanterns = sheet.cut(&rows[0][..2], Edge::Left, 8, &[4, 8]);
    sheet.piece(&lanterns[0][..4], 3, 0);
    sheet.piece(&lanterns[1][..8], 3, 0);
    sheet.done()
}

/// Ember: may be turned, 12 x 12 in, a lying panel, lanterns in one strip.
pub(crate) fn ember() -> SheetPlan {
    let mut sheet = Sheet::new(2, 96, 96, 1);
    let top = sheet.cut(&[SHEET], Edge::Top, 14, &[1]);
    let strip = sheet.cut(&[top[0][1]], Edge::Top, 40, &[1]);
    let short = sheet.cut(&[strip[0][1]], Edge::Left, 40, &[1]);
    let panels = sheet.cut(&[strip[0][0]], Edge::Left, 30, &[3]);
    sheet.piece(&panels[0][..3], 2, 0);
    let lying = sheet.cut(&[short[0][0]], Edge::Top, 30, &[1]);
    sheet.piece(&lying[0][..1], 2, 1);
    let lanterns = sheet.cut(&[top[0][0]], Edge::Left, 8, &[11]);
    sheet.piece(&lanterns[0], 3, 0);
    sheet.done()
}

/// Slate: letter, two narrow slices from the side first, 4 mats and 4 rails.
pub(crate) fn slate() -> SheetPlan {
    let mut sheet = Sheet::new(3, 68, 88, 2);
    let side = sheet.cut(&[SHEET], Edge::Left, 2, &[2]);
    let strips = sheet.cut(&[side[0][2]], Edge::Top, 42, &[2]);
    let mats = sheet.cut(&strips[0][..2], Edge::Left, 32, &[1, 1]);
    sheet.piece(&mats.concat(), 1, 0);
    let rails = sheet.cut(&side[0][..2], Edge::Top, 36, &[2, 2]);
    for own in rails {
        sheet.piece(&own[..2], 4, 1);
    }
    sheet.done()
}

/// White: letter, two bases.
pub(crate) fn white() -> SheetPlan {
    let mut sheet = Sheet::new(0, 68, 88, 3);
    let halves = sheet.cut(&[SHEET], Edge::Top, 44, &[1]);
    sheet.piece(&halves[0], 0, 0);
    sheet.done()
}

fn glue(layer: usize, loose: bool) -> Action {
    Action::Glue { layer: LayerId(layer), loose }
}

/// Eight cards in two versions: a mat, a panel, a rail cut too long, three lanterns under it.
pub(crate) fn lantern_row() -> Project {
    let letter = size(68, 88);
    let mut papers = vec![
        paper("white", letter, Pattern::Any, Some("110 lb cover")),
        paper("dusk", size(96, 96), Pattern::OneWay, None),
        paper("ember", size(96, 96), Pattern::Any, None),
        paper("slate", letter, Pattern::Any, Some("80 lb cover")),
    ];
    papers[1].edge_strip = Some(EdgeStrip { width: len(4), edge: Edge::Bottom, beside: true, span: NOWHERE });
    let mut rail = layer("rail", 4, Onto::Layer(LayerId(0)), Some(0), Along::Centre, Along::FromHigh(len(6)));
    rail.trim_flush = Some(said(Onto::Layer(LayerId(0))));
    let below = Along::Before(LayerId(2), len(0));
    let mut lantern = layer("lantern", 3, Onto::Layer(LayerId(1)), Some(0), Along::Centre, below);
    lantern.arrangement = Arrangement::Row { count: 3, gap: len(2) };
    let version = |name: &str, panel: usize, lantern: usize| Version {
        name: name.to_owned(),
        span: NOWHERE,
        cards: 4,
        papers: vec![(PieceId(2), PaperId(panel)), (PieceId(3), PaperId(lantern))],
        side: None,
        photo: None,
    };
    let design = Design {
        units: Units::Inch,
        asked: vec![Units::Inch],
        asked_span: None,
        languages: vec![Language::ENGLISH],
        words: Words::english().clone(),
        has_readers_names: false,
        untold: Vec::new(),
        restated: Vec::new(),
        title: said("Lantern Row".to_owned()),
        month: Some(said(Month { year: 2026, month: 11 })),
        designer: None,
        imprint: None,
        photo: None,
        about: None,
        cards: said(8),
        workshop: Workshop {
            ruler: Length::inch(1, 16),
            cutting_error: Length::inch(1, 32),
            placing_error: Length::inch(1, 16),
            trimmer: Length::inch(12, 1),
            trimmer_span: None,
        },
        card: Some(Card { size: size(34, 44), span: NOWHERE, fold: Fold::Side, from: PaperId(0), base: PieceId(0) }),
        papers,
        pieces: vec![
            piece("base", size(68, 44), From::Paper(PaperId(0))),
            piece("mat", size(32, 42), From::Paper(PaperId(3))),
            piece("panel", size(30, 40), From::Varies),
            piece("lantern", size(8, 14), From::Varies),
            piece("rail", size(36, 2), From::Paper(PaperId(3))),
        ],
        versions: vec![version("dusk", 1, 2), version("ember", 2, 1)],
        envelope: None,
        layers: vec![
            layer("mat", 1, Onto::Card, None, Along::Centre, Along::Centre),
            layer("panel", 2, Onto::Layer(LayerId(0)), Some(0), Along::Centre, Along::Centre),
            rail,
            lantern,
        ],
        notes: Vec::new(),
        leftovers: Vec::new(),
        allow: Vec::new(),
        handouts: Vec::new(),
        frames: Frames::No,
        supplies: Vec::new(),
        tools: Vec::new(),
        has_front: true,
    };
    let (card, mat, panel) = (rect(0, 0, 34, 44), rect(1, 1, 32, 42), rect(2, 2, 30, 40));
    let lanterns = [rect(3, 21, 8, 14), rect(13, 21, 8, 14), rect(23, 21, 8, 14)];
    let layout = Layout {
        card: Some(size(34, 44)),
        faces: vec![(Face::Front, card)],
        layers: vec![
            placed(0, card, &[mat], None),
            placed(1, mat, &[panel], None),
            placed(2, mat, &[rect(-1, 35, 36, 2)], Some(&[rect(1, 35, 32, 2)])),
            placed(3, panel, &lanterns, None),
        ],
    };
    let aim = Aim { found: 8, bound: 8, proven: true };
    let plan = CutPlan {
        units: Units::Inch,
        cards: 8,
        most: None,
        aims: Aims { cards: aim, sheets: aim, diagrams: aim, cuts: aim, changes: aim, leftover: aim },
        sheets: vec![white(), dusk(), ember(), slate()],
        missing: Vec::new(),
    };
    let steps = Steps {
        steps: vec![
            step(1, Work::Folding, Action::ScoreAndFold { piece: PieceId(0) }),
            step(2, Work::Sorting, Action::Sort),
            step(3, Work::Units, glue(1, true)),
            step(4, Work::Units, glue(2, true)),
            step(5, Work::Units, glue(3, true)),
            step(6, Work::Units, Action::Trim { layer: LayerId(2), loose: true }),
            step(7, Work::Layering, glue(0, false)),
        ],
    };
    whole(design, layout, plan, steps)
}

/// A project of the values of its stages.
pub(crate) fn whole(design: Design, layout: Layout, plan: CutPlan, steps: Steps) -> Project {
    Project {
        made: made(&design, &layout),
        design,
        layout,
        plan,
        steps,
        others: Vec::new(),
        told: Vec::new(),
        made_in: None,
    }
}

pub(crate) const FIRST: VersionId = VersionId(0);
pub(crate) const SECOND: VersionId = VersionId(1);
