//! What `check` says of a layer: its copies, what it lies on, how it is placed, and what shows round it.

use crate::assembly::laying::pivot;
use crate::assembly::tell::side;
use crate::design::model::{Along, Arrangement, Bound, Design, Face, Glue, Layer, LayerId, Onto, Part};
use crate::geometry::{Edge, Mirror, Rect};
use crate::layout::place::by_hand;
use crate::length::Length;
use crate::project::Project;
use crate::words::english::{check, listed_words};
use crate::words::laying::{degrees, turn};
use crate::words::{Words, places};

/// A layer in one line: `lantern: 3 of 1 x 1 3/4 in in a row, on the panel, edge to edge below the upper
/// rail; …`, further in the deeper it is put together.
pub(super) fn layer(project: &Project, id: LayerId) -> String {
    let design = &project.design;
    let layer = design.layer(id);
    let piece = design.piece(layer.piece);
    let onto = match layer.onto {
        Onto::Card if layer.face == Face::Front => "the card".to_owned(),
        Onto::Card => format!("the {}", side(Words::english(), design, layer.face)),
        Onto::Layer(below) => name(design, below),
    };
    let how = format!("{}{}{}", copies(project, layer), turned(project, layer), mirrored(layer));
    let mut facts = vec![format!("{how}, on {onto}{}", placing(project, layer))];
    facts.push(borders(project, id));
    facts.extend(gaps(project, layer));
    facts.extend(trimmed(project, id));
    facts.extend(layer.glue.as_ref().map(|glue| {
        match glue.value {
            Glue::Tape => "tape",
            Glue::Liquid => "liquid glue",
            Glue::Foam => "foam",
            Glue::Dot => "glue dots",
        }
        .to_owned()
    }));
    facts.retain(|fact| !fact.is_empty());
    let label = if layer.name == piece.name { layer.name.clone() } else { format!("{} ({})", layer.name, piece.name) };
    let indent = "  ".repeat(depth(design, id));
    format!("{indent}{label}: {}.", facts.join("; "))
}

fn name(design: &Design, id: LayerId) -> String {
    format!("the {}", design.layer(id).name)
}

/// How many units a layer is put together in before it reaches the card.
fn depth(design: &Design, id: LayerId) -> usize {
    std::iter::successors(design.layer(id).unit, |unit| design.layer(*unit).unit).take(design.layers.len()).count()
}

fn says(project: &Project, length: Length) -> Length {
    Length::of(length.nm(), project.units())
}

fn copies(project: &Project, layer: &Layer) -> String {
    let size = project.design.piece(layer.piece).size.in_units(project.units());
    let (columns, rows) = layer.arrangement.columns_rows();
    match layer.arrangement {
        Arrangement::Single => format!("{size}"),
        Arrangement::Row { count, .. } => format!("{count} of {size} in a row"),
        Arrangement::Column { count, .. } => format!("{count} of {size} in a column"),
        Arrangement::Grid { .. } => format!("{columns} x {rows} of {size} in a grid"),
        Arrangement::Steps { count, right, up } => {
            let ways =
                [(right, if right.nm() < 0 { "left" } else { "right" }), (up, if up.nm() < 0 { "down" } else { "up" })];
            let moves: Vec<String> = ways
                .iter()
                .filter(|(by, _)| !by.is_zero())
                .map(|(by, way)| format!("{} {way}", says(project, by.abs())))
                .collect();
            if moves.is_empty() {
                return format!("{count} of {size} one on another");
            }
            format!("{count} of {size} in steps, each {} of the one before", listed_words(&moves))
        }
        Arrangement::Triangle { points_up, .. } => {
            let way = if points_up { "up" } else { "down" };
            format!("{} of {size} in a triangle pointing {way}", layer.arrangement.count())
        }
        Arrangement::Fan { count, step, about } => {
            let about = pivot(Words::english(), about, |by| says(project, by).to_string());
            format!("{count} of {size} in a fan, {} apart about {about}", degrees(Words::english(), step.hundredths()))
        }
        Arrangement::Pinwheel { clockwise } => {
            let (long, short) = (size.width.max(size.height), size.width.min(size.height));
            let way = if clockwise { "clockwise" } else { "anticlockwise" };
            format!("4 of {size} {way} round a square middle of {}", says(project, long - short))
        }
    }
}

fn turned(project: &Project, layer: &Layer) -> String {
    let quarters = match layer.quarter_turns % 4 {
        0 => "",
        1 => ", turned a quarter to the left",
        2 => ", turned half round",
        _ => ", turned a quarter to the right",
    };
    let Some(tilt) = layer.tilt else { return quarters.to_owned() };
    let each = if layer.count() > 1 { "each " } else { "" };
    let about = pivot(Words::english(), tilt.about, |by| says(project, by).to_string());
    format!("{quarters}, {each}turned {} about {about}", turn(Words::english(), tilt.angle.hundredths()))
}

const fn mirrored(layer: &Layer) -> &'static str {
    match layer.mirrored {
        None => "",
        Some(Mirror::LeftToRight) => ", and as many again, mirrored from left to right",
        Some(Mirror::TopToBottom) => ", and as many again, mirrored from top to bottom",
    }
}

/// What places a layer besides the edges and the middle of what it lies on: neighbours with their gaps,
/// what it is level with or midway between, its ring, a shift.
fn placing(project: &Project, layer: &Layer) -> String {
    let design = &project.design;
    let mut told = Vec::new();
    if let Some(middle) = layer.ring.first() {
        told.push(format!("strip {} of a ring round {}", layer.ring.len(), name(design, *middle)));
    }
    for (along, low, high, after, before) in [
        (layer.across, Edge::Left, Edge::Right, "right of", "left of"),
        (layer.up, Edge::Bottom, Edge::Top, "above", "below"),
    ] {
        let beside = |other: LayerId, gap: Length, way: &str| {
            let gap = says(project, gap);
            let gap = if gap.is_zero() { "edge to edge".to_owned() } else { gap.to_string() };
            format!("{gap} {way} {}", name(design, other))
        };
        told.extend(match along {
            Along::Centre | Along::FromLow(_) | Along::FromHigh(_) => None,
            Along::After(other, gap) => Some(beside(other, gap, after)),
            Along::Before(other, gap) => Some(beside(other, gap, before)),
            Along::With(other, Part::Low) => {
                Some(format!("{} level with that of {}", places::edge_name(Words::english(), low), name(design, other)))
            }
            Along::With(other, Part::High) => Some(format!(
                "{} level with that of {}",
                places::edge_name(Words::english(), high),
                name(design, other)
            )),
            Along::With(other, Part::Middle) => {
                let way = if low.is_side() { "across" } else { "up" };
                Some(format!("centred {way} with {}", name(design, other)))
            }
            Along::Midway(one, other) => {
                let bound = |bound: Bound| match bound {
                    Bound::Low => places::edge(Words::english(), low),
                    Bound::High => places::edge(Words::english(), high),
                    Bound::Layer(layer) => name(design, layer),
                };
                let way = if low.is_side() { "across" } else { "up" };
                Some(format!("midway {way} between {} and {}", bound(one), bound(other)))
            }
        });
    }
    let (right, up) = layer.shifted;
    let shifts: Vec<String> =
        [(right, if right < 0 { "left" } else { "right" }), (up, if up < 0 { "down" } else { "up" })]
            .iter()
            .filter(|(by, _)| *by != 0)
            .map(|(by, way)| format!("{} {way}", Length::of(by.abs(), project.units())))
            .collect();
    if !shifts.is_empty() {
        told.push(format!("shifted {}", listed_words(&shifts)));
    }
    told.iter().map(|told| format!(", {told}")).collect()
}

/// What shows at each edge, as laid; what hangs over stands with the trimming. Of a turned layer the
/// least that shows, to the ruler's step.
fn borders(project: &Project, id: LayerId) -> String {
    let placed = project.layout.placed(id);
    let layer = project.design.layer(id);
    let is_turned = layer.tilt.is_some() || matches!(layer.arrangement, Arrangement::Fan { .. });
    let block = if is_turned {
        let copies = by_hand(&project.design, &project.layout, id);
        let bounds = copies.iter().map(|copy| copy.outline.bounds());
        bounds.reduce(Rect::hull).unwrap_or(placed.block)
    } else {
        placed.block
    };
    let shown: Vec<(Edge, Length)> = Edge::ALL
        .into_iter()
        .map(|edge| (edge, Length::of(placed.onto.border(block, edge), project.units())))
        .filter(|(_, shows)| shows.nm() >= 0)
        .map(|(edge, shows)| (edge, if is_turned { shows.floor_to(project.design.workshop.ruler) } else { shows }))
        .collect();
    if shown.is_empty() {
        String::new()
    } else if is_turned {
        format!("at least {}", check::borders(&shown))
    } else {
        check::borders(&shown)
    }
}

fn gaps(project: &Project, layer: &Layer) -> Option<String> {
    let (across, down) = layer.arrangement.gaps(project.units());
    let (across, down) = (says(project, across), says(project, down));
    match layer.arrangement {
        Arrangement::Single | Arrangement::Steps { .. } | Arrangement::Fan { .. } | Arrangement::Pinwheel { .. } => {
            None
        }
        Arrangement::Row { .. } => Some(format!("{across} between them")),
        Arrangement::Column { .. } => Some(format!("{down} between them")),
        Arrangement::Grid { .. } => Some(format!("{across} between columns, {down} between rows")),
        Arrangement::Triangle { across, down, .. } => {
            Some(format!("{} between neighbours, {} between rows", says(project, across), says(project, down)))
        }
    }
}

fn trimmed(project: &Project, id: LayerId) -> Option<String> {
    let design = &project.design;
    let flush = design.layer(id).trim_flush.as_ref()?.value;
    let what = match flush {
        Onto::Card => "the card".to_owned(),
        Onto::Layer(layer) => name(design, layer),
    };
    let placed = project.layout.placed(id);
    if !placed.is_straight() {
        return Some(format!("trimmed flush with {what}"));
    }
    let target = project.layout.rect(design.layer(id).face, flush);
    let over: Vec<(Edge, Length)> = Edge::ALL
        .into_iter()
        .map(|edge| (edge, Length::of(-target.border(placed.block, edge), project.units())))
        .filter(|(_, over)| over.nm() > 0)
        .collect();
    Some(format!("{}, trimmed flush with {what}", check::overhang(&over)))
}
