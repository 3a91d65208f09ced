//! How a finished card in its envelope is posted.

use super::post_limits::{Class, Machine, Ratio, SERVICES, Service, Sides};

/// What is handed to the post.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Posted {
    /// The longer side, nanometres.
    pub long: i64,
    /// The shorter side, nanometres.
    pub short: i64,
    /// Where it is thickest, nanometres.
    pub thick: i64,
    /// Milligrams.
    pub weight: i64,
    /// Whether foam or a decoration makes it uneven.
    pub is_uneven: bool,
}

/// Why a class or a machine does not take it: what it is, and the limit; nanometres, or milligrams.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reason {
    /// Its longer side is too long.
    TooLong(i64, i64),
    /// Its shorter side is too high.
    TooHigh(i64, i64),
    /// Its longer side is too short.
    TooShort(i64, i64),
    /// Its shorter side is too low.
    TooLow(i64, i64),
    /// Too thick.
    TooThick(i64, i64),
    /// Too thin.
    TooThin(i64, i64),
    /// Too heavy.
    TooHeavy(i64, i64),
    /// Nearer to a square than the least ratio.
    TooSquare(Ratio),
    /// Longer than the greatest ratio.
    TooSlender(Ratio),
    /// Uneven.
    Uneven,
}

impl Reason {
    /// Whether a larger class does not mend it.
    const fn is_small(self) -> bool {
        matches!(self, Self::TooShort(..) | Self::TooLow(..) | Self::TooThin(..))
    }
}

/// What a service makes of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Verdict {
    /// The service.
    pub service: Service,
    /// The class that takes it; none where it is no letter of any class.
    pub class: Option<Class>,
    /// Whether it is too small to be posted at all.
    pub refused: bool,
    /// Why it is not of the smallest class, if it is not; of all reasons where no class takes it, those of
    /// the largest.
    pub why: Vec<Reason>,
    /// Why the machines of the class do not take it.
    pub by_hand: Vec<Reason>,
    /// Whether it may be taken for a parcel since it does not bend.
    pub may_be_rigid: bool,
}

/// What every service makes of it.
#[must_use]
pub fn verdicts(posted: Posted) -> Vec<Verdict> {
    SERVICES.into_iter().map(|service| judge(service, posted)).collect()
}

/// What a service makes of it.
#[must_use]
pub fn judge(service: Service, posted: Posted) -> Verdict {
    let against: Vec<Vec<Reason>> = service.classes.iter().map(|class| not_of(class, posted)).collect();
    let taken = against.iter().position(Vec::is_empty);
    let class = taken.map(|n| service.classes[n]);
    let why = if class.is_some() { against.first() } else { against.last() }.cloned().unwrap_or_default();
    let refused = class.is_none() && why.iter().any(|reason| reason.is_small());
    let by_hand = match (taken, service.machine) {
        (Some(0), Some(machine)) => not_by(&machine, posted),
        _ => Vec::new(),
    };
    let may_be_rigid = service.bends && posted.is_uneven && class.is_some();
    Verdict { service, class, refused, why, by_hand, may_be_rigid }
}

/// Why it is not of a class; nothing where it is.
fn not_of(class: &Class, posted: Posted) -> Vec<Reason> {
    let Posted { long, short, thick, weight, .. } = posted;
    let Sides { long: most_long, short: most_short } = class.most;
    let mut why = Vec::new();
    if let Some(least) = class.least {
        why.extend((long < least.long.nm()).then(|| Reason::TooShort(long, least.long.nm())));
        why.extend((short < least.short.nm()).then(|| Reason::TooLow(short, least.short.nm())));
    }
    why.extend((long > most_long.nm()).then(|| Reason::TooLong(long, most_long.nm())));
    why.extend((short > most_short.nm()).then(|| Reason::TooHigh(short, most_short.nm())));
    let thinnest = class.thinnest.map_or(0, |thinnest| thinnest.nm());
    why.extend((thick < thinnest).then_some(Reason::TooThin(thick, thinnest)));
    why.extend((thick > class.thickest.nm()).then(|| Reason::TooThick(thick, class.thickest.nm())));
    why.extend((weight > class.heaviest).then_some(Reason::TooHeavy(weight, class.heaviest)));
    why.extend(class.ratio.filter(|ratio| is_squarer(posted, *ratio)).map(Reason::TooSquare));
    why
}

/// Why machines do not take it; nothing where they do. The ratios themselves are allowed.
fn not_by(machine: &Machine, posted: Posted) -> Vec<Reason> {
    let mut why = Vec::new();
    why.extend(is_squarer(posted, machine.least_ratio).then_some(Reason::TooSquare(machine.least_ratio)));
    why.extend(is_slenderer(posted, machine.most_ratio).then_some(Reason::TooSlender(machine.most_ratio)));
    let is_large = posted.long > machine.large.long.nm() || posted.short > machine.large.short.nm();
    let thinnest = machine.large_thinnest.nm();
    why.extend((is_large && posted.thick < thinnest).then_some(Reason::TooThin(posted.thick, thinnest)));
    why.extend(posted.is_uneven.then_some(Reason::Uneven));
    why
}

/// Whether the longer side is under so many times the shorter one.
#[must_use]
pub fn is_squarer(posted: Posted, (above, below): Ratio) -> bool {
    i128::from(posted.long) * i128::from(below) < i128::from(posted.short) * i128::from(above)
}

/// Whether the longer side is over so many times the shorter one.
#[must_use]
pub fn is_slenderer(posted: Posted, (above, below): Ratio) -> bool {
    i128::from(posted.long) * i128::from(below) > i128::from(posted.short) * i128::from(above)
}
