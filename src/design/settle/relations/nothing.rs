//! Sizes by relation of which nothing is left: the fact, and the number that would leave something.

use super::super::desk::Desk;
use super::follow::Sides;
use crate::design::model::{Extent, Measure, Of, Relation, Stated, edges_of};
use crate::diagnostic::Finding;
use crate::geometry::Edge;
use crate::length::Length;
use crate::source::Span;

impl Desk<'_> {
    /// Notes every side that comes to nothing or less; a border all round once for both sides.
    pub(super) fn nothing_left(&mut self, failed: &[(usize, Extent)], sides: &Sides<'_>) {
        for (n, (piece, extent)) in failed.iter().enumerate() {
            let Some((stated, span)) = sides.stated(*piece) else { continue };
            match stated {
                Stated::Outright => {}
                Stated::AllRound { of, border } => {
                    let both: Vec<Length> = failed
                        .iter()
                        .filter(|(other, _)| other == piece)
                        .filter_map(|(_, extent)| sides.known(*of, *extent))
                        .collect();
                    let again = failed[..n].iter().any(|(other, _)| other == piece);
                    if let Some(narrow) = both.into_iter().min().filter(|_| !again) {
                        self.border_too_wide(sides.name(*of), narrow, *border, span);
                    }
                }
                Stated::ByEdge { of, edges } => {
                    if let Some(whole) = sides.known(*of, *extent) {
                        let edges: Vec<(Edge, Length)> = edges_of(edges, *extent).collect();
                        self.edges_too_wide(sides.name(*of), whole, *extent, &edges, span);
                    }
                }
                Stated::BySide { .. } => {
                    if let Some(side) = stated.side(*extent) {
                        self.side_is_nothing(side, *extent, sides);
                    }
                }
            }
        }
    }

    fn nothing_of(&mut self, span: Span, fact: String, help: String, plain: String) {
        let mut finding =
            Finding::error("size-not-positive", span, "nothing is left of this piece", fact).help(help).plainly(plain);
        finding.edition = self.both().then_some(self.units);
        self.note(finding);
    }

    fn border_too_wide(&mut self, of: &str, narrow: Length, border: Length, span: Span) {
        self.nothing_of(
            span,
            format!("{border} on both sides of {narrow} leaves nothing"),
            format!("take a border under {}, half of the {narrow} of the {of}", narrow.half()),
            format!("The border is so wide that nothing of the {of} is left."),
        );
    }

    fn edges_too_wide(&mut self, of: &str, whole: Length, extent: Extent, edges: &[(Edge, Length)], span: Span) {
        let told: Vec<String> = edges.iter().map(|(edge, length)| format!("{length} at the {}", edge.word())).collect();
        let verb = if told.len() == 1 { "leaves" } else { "leave" };
        self.nothing_of(
            span,
            format!("{} of {whole} {verb} nothing", told.join(" and ")),
            format!("take less than {whole} off the {} of the {of}", extent.word()),
            format!("So much is taken off that nothing of the {of} is left."),
        );
    }

    /// The largest gap, in usual steps of the ruler, that leaves something of the room.
    fn most_gap(&self, room: Length, gaps: i64) -> String {
        let step = Length::either(self.units, Length::inch(1, 16), Length::mm(1));
        let most = Length::new((room.nm() - 1).div_euclid(gaps), room.unit()).floor_to(step);
        if most.is_zero() {
            "leave the gap out, or share among fewer than 2".to_owned()
        } else {
            format!("take a gap of at most {most}")
        }
    }

    fn side_is_nothing(&mut self, side: &Relation, own: Extent, sides: &Sides<'_>) {
        let known = |of: Of, extent: Extent| sides.known(of, extent);
        let Some(measure) = side.measure.result(own, known) else { return };
        if measure.nm() > 0 {
            let Some(change) = side.change else { return };
            let what = told(&side.measure, own, sides);
            self.nothing_of(
                side.span,
                format!("{measure} {} {} leaves nothing", change.word(), change.length()),
                format!("take less than {measure}{}", what.map_or_else(String::new, |what| format!(", {what}"))),
                format!("So much is taken off that no {} is left.", own.word()),
            );
            return;
        }
        let whole = |of: Of| known(of, own).unwrap_or(measure);
        match &side.measure {
            Measure::Rest { of, after, gap } => {
                let room = whole(*of);
                let pieces =
                    after.iter().fold(Length::new(0, room.unit()), |all, piece| all + whole(Of::Piece(*piece)));
                let gaps = *gap * i64::try_from(after.len()).unwrap_or(i64::MAX);
                let gaps = if gaps.is_zero() { String::new() } else { format!(" and gaps of {gaps}") };
                self.nothing_of(
                    side.span,
                    format!("pieces of {pieces}{gaps} leave nothing"),
                    format!("keep them under {room} together, the {} of the {}", own.word(), sides.name(*of)),
                    format!("The pieces take so much that nothing of the {} is left.", sides.name(*of)),
                );
            }
            Measure::Share { of, count, gap } if *count > 1 => {
                let room = whole(*of);
                let gaps = i64::from(*count) - 1;
                let between = if gaps == 1 { "1 gap".to_owned() } else { format!("{gaps} gaps") };
                self.nothing_of(
                    side.span,
                    format!("{between} of {gap} {} nothing of {room}", if gaps == 1 { "leaves" } else { "leave" }),
                    self.most_gap(room, gaps),
                    format!("The gaps take so much that nothing of the {} is left.", sides.name(*of)),
                );
            }
            Measure::Own(_)
            | Measure::Same(..)
            | Measure::Part { .. }
            | Measure::Drawn { .. }
            | Measure::Share { .. } => self.nothing_of(
                side.span,
                format!("comes to {measure}"),
                "make it more than 0".to_owned(),
                format!("No {} is left.", own.word()),
            ),
        }
    }
}

/// What a measure is, for the one who must take less than it.
fn told(measure: &Measure, own: Extent, sides: &Sides<'_>) -> Option<String> {
    let side = |of: Of, side: Extent| format!("the {} of the {}", side.word(), sides.name(of));
    Some(match measure {
        Measure::Own(_) | Measure::Drawn { .. } => return None,
        Measure::Same(of, extent) => side(*of, *extent),
        Measure::Part { of, side: extent, parts } => {
            let part = match parts {
                2 => "half of",
                3 => "a third of",
                _ => "a quarter of",
            };
            format!("{part} {}", side(*of, *extent))
        }
        Measure::Rest { of, .. } => format!("the rest of {}", side(*of, own)),
        Measure::Share { of, .. } => format!("the share of {}", side(*of, own)),
    })
}
