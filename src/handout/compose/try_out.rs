//! The pieces of one card at half size, to be built from plain paper before the good paper is cut.

use super::leaf;
use crate::design::model::{PieceId, VersionId};
use crate::drawing::figures::{self, Room};
use crate::drawing::scale::Print;
use crate::geometry::Rect;
use crate::handout::data::{Figure, TryOutPages, said};
use crate::project::Project;
use crate::words::variants as words;

/// The version that is tried.
const TRIED: VersionId = VersionId(0);
/// The page's live width and the least gap between two pieces, nm.
const LIVE: i64 = 184_000_000;
const GAP: i64 = 6_000_000;
/// A caption takes so much of the width at least, nm.
const CAPTION: i64 = 34_000_000;

pub(super) fn pages(project: &Project) -> TryOutPages {
    let say = project.words();
    let design = &project.design;
    let folds = design.card.as_ref().is_some_and(|card| !card.fold.scores(card.size).is_empty());
    let finished = figures::front::front(project, TRIED, Room::tenths_of_mm(1056, 1200));
    TryOutPages {
        title: words::try_out(say),
        lead: said(&words::try_out_lead(say)),
        lines: words::try_out_how(say, folds).iter().map(said).collect(),
        caution: said(&words::try_out_caution(say)),
        bars: figures::small::print_bars(say, Print::NORMAL),
        finished: finished
            .map(|scene| Figure { caption: said(&words::as_it_will_be(say, &design.version(TRIED).name)), scene }),
        rows: rows(pieces(project)),
        steps: leaf::lines(project),
        steps_title: words::where_things_go(say),
    }
}

/// One figure a piece, with as many outlines as one card needs: the base first, then large to small.
fn pieces(project: &Project) -> Vec<Figure> {
    let say = project.words();
    let design = &project.design;
    let base = design.card.as_ref().map(|card| card.base);
    let mut own: Vec<PieceId> = design.piece_ids().filter(|piece| design.per_card(*piece) > 0).collect();
    own.sort_by_key(|piece| {
        (Some(*piece) != base, std::cmp::Reverse(Rect::of(design.piece(*piece).size).area()), *piece)
    });
    own.into_iter()
        .filter_map(|piece| {
            let count = design.per_card(piece);
            let scene = figures::try_out::piece(project, piece, count, LIVE)?;
            let paper = design.paper_of(piece, TRIED).map_or("", |paper| design.paper(paper).name.as_str());
            let caption = said(&words::try_piece(say, count, &design.piece(piece).name, design.ring(piece), paper));
            Some(Figure { caption, scene })
        })
        .collect()
}

/// Figures side by side, as many as a row holds, in order.
fn rows(figures: Vec<Figure>) -> Vec<Vec<Figure>> {
    let mut rows: Vec<Vec<Figure>> = Vec::new();
    let mut wide = 0;
    for figure in figures {
        let own = figure.scene.width.max(CAPTION);
        match rows.last_mut() {
            Some(row) if wide + GAP + own <= LIVE => {
                wide += GAP + own;
                row.push(figure);
            }
            _ => {
                wide = own;
                rows.push(vec![figure]);
            }
        }
    }
    rows
}
