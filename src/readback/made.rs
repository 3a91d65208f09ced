//! What `check` says of a piece beyond its size: what it is made from and how, its words, and what all cards
//! take of decorations and glue.

use crate::assembly::finishing::cut_name;
use crate::assembly::totals::totals;
use crate::design::model::{Design, From, How, PieceId, PieceKind};
use crate::length::{Length, Size};
use crate::project::Project;
use crate::shape::{End, Form, Making, Window};
use crate::words::english::{capital, counted, listed_words};

/// A line for every piece that is more than a rectangle to lay: `word: cut by die from 68 x 24 mm; die-cut
/// words: hush.`
pub(super) fn made(project: &Project) -> Vec<String> {
    let design = &project.design;
    let is_laid = |id: &PieceId| !matches!(design.piece(*id).kind, PieceKind::Kept { .. });
    design.piece_ids().filter(is_laid).filter_map(|id| piece(design, id)).collect()
}

fn piece(design: &Design, id: PieceId) -> Option<String> {
    let own = design.piece(id);
    let mut facts = Vec::new();
    if own.from != From::Bought {
        let blank = own.blank().in_units(design.units);
        let form = form(design, &own.shape.form);
        match (own.shape.making, form) {
            (Making::Die { .. }, form) => facts.push(format!("{}cut by die from {blank}", before(form))),
            (Making::Punch { .. }, form) => facts.push(format!("{}punched from {blank}", before(form))),
            (Making::ByHand, Some(form)) => facts.push(format!("{form}, cut from {blank}")),
            (Making::ByHand, None) => {}
        }
        let name = cut_name(design, id);
        if name != own.name {
            facts.push(format!("cut as a {name}"));
        }
    }
    facts.extend(own.shape.windows.iter().map(|own| window(design, own)));
    if let From::Window(frame, _) = own.from {
        facts.push(format!("what the window of the {} leaves over", design.piece(frame).name));
    }
    if let Some(words) = &own.greeting {
        let how = match words.how {
            How::Stamped => "stamped",
            How::Printed => "printed before cutting",
            How::DieCut => "die-cut words",
        };
        facts.push(format!("{how}: {}", words.words.value.trim_end_matches('.')));
    }
    if let PieceKind::Decoration { thick: Some(thick), .. } = own.kind {
        facts.push(format!("{} thick", says(design, thick.nm())));
    }
    (!facts.is_empty()).then(|| format!("{}: {}.", own.name, facts.join("; ")))
}

fn before(form: Option<String>) -> String {
    form.map_or_else(String::new, |form| format!("{form}, "))
}

fn says(design: &Design, nm: i64) -> Length {
    Length::of(nm, design.units)
}

fn form(design: &Design, form: &Form) -> Option<String> {
    let end = |end: &End, edge: &str| match end {
        End::Fishtail { depth } => format!("fishtail at the {edge}, {} deep", says(design, *depth)),
        End::Pointed { depth } => format!("pointed at the {edge}, {} deep", says(design, *depth)),
    };
    Some(match form {
        Form::Rectangle => return None,
        Form::Triangle { right_angle } => format!("triangle, right angle at {}", right_angle.word()),
        Form::Diamond => "diamond".to_owned(),
        Form::Polygon { corners } => format!("a shape of {} corners", corners.len()),
        Form::Drawn { name, .. } => format!("the outline in {name}"),
        Form::Ended { edge, end: own, opposite } => {
            let own = end(own, edge.word());
            let other = opposite.as_ref().map(|other| end(other, edge.opposite().word()));
            other.map_or(own.clone(), |other| format!("{own}, {other}"))
        }
        Form::Rounded { radius, corners } if corners.len() == 4 => {
            format!("all corners rounded, {}", says(design, *radius))
        }
        Form::Rounded { radius, corners } => {
            let corners: Vec<String> = corners.iter().map(|corner| corner.word().to_owned()).collect();
            format!("rounded at {}, {}", listed_words(&corners), says(design, *radius))
        }
        Form::Circle => "circle".to_owned(),
        Form::Oval => "oval".to_owned(),
    })
}

fn window(design: &Design, window: &Window) -> String {
    let size = Size::new(says(design, window.width), says(design, window.height));
    let how = match window.making {
        Making::ByHand => "by hand",
        Making::Die { .. } => "by die",
        Making::Punch { .. } => "by punch",
    };
    let form = form(design, &window.form).map_or_else(String::new, |form| format!(", {form}"));
    format!(
        "window of {size}{form}, {} from the left, {} from the bottom, {how}",
        says(design, window.left),
        says(design, window.bottom)
    )
}

/// Decorations, ribbon, and what holds everything, over all cards.
pub(super) fn in_all(project: &Project) -> Vec<String> {
    let design = &project.design;
    let totals = totals(design);
    let mut lines = Vec::new();
    for (piece, count) in &totals.counted {
        let own = design.piece(*piece);
        lines.push(format!("{} of {} in all.", counted(*count, &own.name), own.size.in_units(design.units)));
    }
    for roll in &totals.rolls {
        let name = capital(&design.piece(roll.piece).name);
        let each = says(design, roll.each.nm());
        lines.push(format!("{name}: {} of {each}, {} in all.", counted(roll.count, "length"), says(design, roll.all)));
    }
    let mut glue = Vec::new();
    if totals.tape > 0 {
        glue.push(format!("{} of tape", says(design, totals.tape)));
    }
    if totals.liquid > 0 {
        glue.push(format!("liquid glue for {}", counted(totals.liquid, "piece")));
    }
    let few = |count: i64| u32::try_from(count).unwrap_or(u32::MAX);
    if totals.foam > 0 {
        glue.push(counted(few(totals.foam), "foam square"));
    }
    if totals.dots > 0 {
        glue.push(counted(few(totals.dots), "glue dot"));
    }
    if !glue.is_empty() {
        lines.push(format!("Glue in all: {}.", listed_words(&glue)));
    }
    lines
}
