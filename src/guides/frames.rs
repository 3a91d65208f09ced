//! Placing frames as guides: what is cut, what stands on them, what is said of them.

use super::draft::{Draft, Known, SMALL, cut_along, open, width};
use super::frame::Frame;
use super::half::Half;
use super::model::{Label, Role};
use super::names::{ground, size, slug};
use crate::design::model::Design;
use crate::geometry::{Corner, Point, Polygon, Rect};
use crate::length::Length;
use crate::words::{guides, places};

/// The guide of a whole frame.
pub(super) fn draft(design: &Design, frame: &Frame) -> Draft {
    let say = design.words();
    let layers: Vec<String> = frame.layers.iter().map(|layer| design.layer(*layer).name.clone()).collect();
    let title = guides::frame(say, false, &layers, &ground(design, frame.face, frame.on));
    let bounds = frame.outline.bounds();
    let alt = guides::frame_alt(say, &title, &size(design, bounds), &openings(design, frame));
    let mut draft = Draft {
        word: slug("frame", &layers),
        notes: vec![guides::size(say, &size(design, bounds))],
        title,
        alt,
        known: vec![Known::Frame],
        lines: frame.body.parts().iter().flat_map(cut_along).collect(),
        labels: Vec::new(),
    };
    let highest = frame.openings.bounds().map_or(bounds.bottom, |openings| openings.top);
    mark_top(design, &mut draft, &frame.outline, highest);
    draft
}

/// The openings in words: size and place of each.
pub(super) fn openings(design: &Design, frame: &Frame) -> Vec<String> {
    let say = design.words();
    let from = frame.outline.bounds();
    let number = |nm: i64| Length::of(nm, design.units).to_string();
    let told = frame.openings.parts().iter().map(|part| {
        let own = part.bounds();
        guides::opening(say, &size(design, own), &number(own.left - from.left), &number(own.bottom - from.bottom))
    });
    told.collect()
}

/// "top" with an arrow in the arm along the upper edge.
pub(super) fn mark_top(design: &Design, draft: &mut Draft, outline: &Polygon, highest: i64) {
    let bounds = outline.bounds();
    let text = guides::top(design.words());
    let half = width(&text, SMALL, true) / 2;
    // The arrow stands to the left of the word: 2 mm wide, 3 mm high.
    let (across, high) = (1_000_000, 3_000_000);
    let middle = (highest + bounds.top) / 2;
    let x = bounds.middle().x;
    let baseline = middle - SMALL * 7 / 20;
    draft.labels.push(Label {
        text,
        at: Point::new(x + across + 500_000, baseline),
        size: SMALL,
        turned: false,
        bold: true,
    });
    let tip = Point::new(x - half, middle + high / 2);
    draft.lines.push(open(Role::Note, vec![tip.moved(0, -high), tip]));
    let barbs = vec![tip.moved(-across, -across), tip, tip.moved(across, -across)];
    draft.lines.push(open(Role::Note, barbs));
}

/// The guide of half a frame.
pub(super) fn half_draft(design: &Design, frame: &Frame, half: &Half) -> Draft {
    let say = design.words();
    let layers: Vec<String> = frame.layers.iter().map(|layer| design.layer(*layer).name.clone()).collect();
    let title = guides::frame(say, true, &layers, &ground(design, frame.face, frame.on));
    let bounds = half.outline.bounds();
    let corner = places::corner_name(say, half.corner);
    let mut draft = Draft {
        word: slug("half-frame", &layers),
        notes: vec![guides::corner(say, &corner)],
        alt: guides::frame_alt(say, &title, &size(design, bounds), &openings(design, frame)),
        title,
        known: vec![Known::Half],
        lines: cut_along(&half.outline),
        labels: Vec::new(),
    };
    let inner = frame.openings.bounds().unwrap_or(bounds);
    // "top" stands in the level arm, which runs along the upper or the lower edge.
    let arm = match half.corner {
        Corner::UpperLeft | Corner::UpperRight => Rect { bottom: inner.top, ..bounds },
        Corner::LowerLeft | Corner::LowerRight => Rect { top: inner.bottom, ..bounds },
    };
    mark_top(design, &mut draft, &Polygon::from(arm), arm.bottom);
    draft
}
