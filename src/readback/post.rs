//! The base, the envelope and the post as `check` reads them back.

use crate::design::model::{Card, Design, Fold};
use crate::length::{Length, Units};
use crate::paper::envelope::{chosen, sides};
use crate::paper::foam::thin_foam;
use crate::paper::grain::folds;
use crate::paper::made::Made;
use crate::paper::post::{Posted, Reason, Verdict, verdicts};
use crate::paper::post_limits::Ratio;
use crate::paper::stock::stock;
use crate::paper::tell::{measure, thickness, thickness_past};
use crate::project::Project;
use crate::weight::Grammage;
use crate::words::english::post;

/// Paper is scored before it is folded from this weight on: condat-pap.com, a paper mill.
const SCORED: Grammage = Grammage::grams(150);

/// How the base folds; nothing of a flat card.
pub(super) fn base(project: &Project, card: &Card) -> Option<String> {
    let design = &project.design;
    if card.fold == Fold::None {
        return None;
    }
    let stock = stock(design, card.from);
    let grain = folds(design, &project.plan).map(|folds| post::grain(folds.with, folds.across, folds.is_stated));
    let thick = thickness(stock.thickness, project.units());
    let score = stock.grammage >= SCORED;
    Some(post::base(stock.grammage.whole(), &thick, stock.assumed, score, grain.as_deref()))
}

/// The envelope, and how the card is posted in it, a country a line.
pub(super) fn posted(project: &Project, card: &Card, made: &Made) -> Vec<String> {
    let (design, units) = (&project.design, project.units());
    let Some(envelope) = chosen(design, made.thickness()) else { return vec![post::no_envelope().to_owned()] };
    let name = envelope.named.map(|named| named.full_name());
    let size = envelope.size.in_units(units).to_string();
    let mass = made.posted(envelope.size);
    let foam = has_foam(design).then(|| thin_foam(units).to_string());
    let thick = made.posted_thickness();
    let mut lines = vec![
        post::envelope(name.as_deref(), &size, envelope.stated.is_some()),
        post::posted(
            &thickness(thick, units),
            foam.as_deref(),
            made.whole,
            mass.grams(),
            made.has_unweighed,
            made.is_assumed,
        ),
    ];
    let (long, short) = sides(envelope.size);
    let (card_long, card_short) = sides(card.size);
    if card_long > long || card_short > short {
        return lines;
    }
    let posted = Posted { long, short, thick, weight: mass.milligrams(), is_uneven: made.is_uneven };
    lines.extend(verdicts(posted).iter().map(told));
    lines.push(post::ask().to_owned());
    lines
}

fn has_foam(design: &Design) -> bool {
    design.layers.iter().any(|layer| crate::paper::made::foams(layer) > 0)
}

fn told(verdict: &Verdict) -> String {
    let units = verdict.service.units;
    let reasons = |why: &[Reason]| why.iter().map(|why| reason(*why, units)).collect::<Vec<_>>().join(", ");
    let mut said = match verdict.class {
        None if verdict.refused => format!("not taken: {}", reasons(&verdict.why)),
        None => format!("{}: {}", verdict.service.larger, reasons(&verdict.why)),
        Some(class) if verdict.why.is_empty() => class.name.to_owned(),
        Some(class) => format!("{}: {}", class.name, reasons(&verdict.why)),
    };
    if !verdict.by_hand.is_empty() {
        said = format!("{said}, but not by machine: {}", reasons(&verdict.by_hand));
    }
    if verdict.may_be_rigid {
        said = format!("{said}, if it bends; foam and decorations may make it a parcel");
    }
    post::service(verdict.service.country, &said, verdict.service.document)
}

fn reason(reason: Reason, units: Units) -> String {
    let length = |nm| measure(nm, units);
    let limit = |nm| Length::of(nm, units);
    match reason {
        Reason::TooLong(is, most) => format!("{} long, where {} is the most", length(is), limit(most)),
        Reason::TooHigh(is, most) => format!("{} high, where {} is the most", length(is), limit(most)),
        Reason::TooShort(is, least) => format!("{} long, where {} is the least", length(is), limit(least)),
        Reason::TooLow(is, least) => format!("{} high, where {} is the least", length(is), limit(least)),
        Reason::TooThick(is, most) => {
            format!("{} thick, where {} is the most", thickness_past(is, limit(most), units), limit(most))
        }
        Reason::TooThin(is, least) => {
            format!("about {} thick, where {} is the least", thickness(is, units), limit(least))
        }
        Reason::TooHeavy(is, most) => {
            format!("about {} g, where {} g is the most", (is + 999) / 1000, most / 1000)
        }
        Reason::TooSquare(ratio) => format!("under {} times as long as high", decimal(ratio)),
        Reason::TooSlender(ratio) => format!("over {} times as long as high", decimal(ratio)),
        Reason::Uneven => "uneven with foam or decorations".to_owned(),
    }
}

fn decimal((above, below): Ratio) -> String {
    let tenths = above * 10 / below;
    format!("{}.{}", tenths / 10, tenths % 10)
}
