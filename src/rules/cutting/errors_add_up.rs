//! The last of equal pieces is what remains, and takes up the errors of all cuts before it.

use super::rows::{Cut, written};
use crate::cutting::plan::{PartId, SheetPlan, Use};
use crate::design::model::{LayerId, PieceId};
use crate::diagnostic::{Finding, Severity};
use crate::project::Project;
use crate::rules::outlines::{is_turned, on_a_rectangle};
use crate::rules::tell::{Axis, length};
use crate::rules::{Rule, hand};

/// The rule.
pub static RULE: Rule = Rule {
    code: "errors-add-up",
    severity: Severity::Note,
    group: "cutting",
    summary: "the last of equal pieces is what remains, and takes up the errors of all cuts before it",
    page: include_str!("errors_add_up.md"),
    check: Some(check),
};

fn check(project: &Project) -> Vec<Finding> {
    let design = &project.design;
    let mut findings: Vec<Finding> = Vec::new();
    for sheet in &project.plan.sheets {
        for cut in Cut::all(sheet).filter(Cut::is_used_up) {
            // What each cut may be off is the last one's in all.
            let error = design.workshop.cutting_error.nm() * cut.times();
            // A kept leftover was cut to its size a moment ago.
            let is_bought = design.paper(sheet.paper).kept_from.is_none();
            let finding = match closest(project, &cut).filter(|close| close.border < error) {
                Some(close) => Some(too_close(project, &cut, &close, error)),
                None => (is_bought && cut.is_of_the_sheet()).then(|| sheet_used_up(project, &cut, error)),
            };
            findings.extend(finding.filter(|finding| !findings.contains(finding)).into_iter().collect::<Vec<_>>());
        }
    }
    findings
}

impl Cut<'_> {
    /// Whether equal slices use the part up, two or more cuts, all of them wanted. Two equal halves are
    /// what a fold gives and need no word.
    fn is_used_up(&self) -> bool {
        let kept = |id: &PartId| matches!(self.sheet.part(*id).r#use, Use::Piece { .. } | Use::Divided);
        let equal = self.rest().is_some_and(|rest| self.along(rest.rect) == self.row.measure.nm());
        self.times() >= 2 && equal && self.gives.iter().all(kept)
    }

    /// Whether the part is as long, that way, as the sheet without its edge strip.
    fn is_of_the_sheet(&self) -> bool {
        let whole = self.along(self.sheet.part(PartId(0)).rect);
        self.whole() == whole - strip(self.sheet, self.row.from.is_side())
    }
}

/// How much an edge strip takes of a side.
fn strip(sheet: &SheetPlan, across: bool) -> i64 {
    let whole = sheet.part(PartId(0)).rect;
    sheet
        .parts
        .iter()
        .filter(|part| part.r#use == Use::EdgeStrip)
        .filter(|part| if across { part.rect.height() == whole.height() } else { part.rect.width() == whole.width() })
        .map(|part| if across { part.rect.width() } else { part.rect.height() })
        .sum()
}

/// The layer that fits most closely among those that the last slice may come to.
struct Close {
    layer: LayerId,
    piece: PieceId,
    /// The quarter turns that the piece lies in on the sheet.
    turns: u8,
    border: i64,
}

fn closest(project: &Project, cut: &Cut<'_>) -> Option<Close> {
    let last = *cut.gives.last()?;
    let mut found: Vec<Close> = Vec::new();
    for (piece, turns) in cut.pieces_as_long(&[last]) {
        for id in project.design.layer_ids() {
            let layer = project.design.layer(id);
            let single = layer.count() == 1;
            let lies = layer.piece == piece && single && layer.trim_flush.is_none() && !is_turned(layer);
            if !lies || !on_a_rectangle(project, layer) {
                continue;
            }
            let own_width = cut.side(turns) == "wide";
            let axis = if own_width == layer.quarter_turns.is_multiple_of(2) { Axis::Across } else { Axis::Up };
            let placed = project.layout.placed(id);
            let border = placed.shows(axis.low()).min(placed.shows(axis.high()));
            // What reaches past is another rule's.
            if border >= 0 {
                found.push(Close { layer: id, piece, turns, border });
            }
        }
    }
    found.into_iter().min_by_key(|close| close.border)
}

fn too_close(project: &Project, cut: &Cut<'_>, close: &Close, error: i64) -> Finding {
    let design = &project.design;
    let say = |nm: i64| length(project, nm);
    let (piece, layer) = (design.piece(close.piece), design.layer(close.layer));
    let (times, border, each) = (cut.times(), say(close.border), say(design.workshop.cutting_error.nm()));
    let side = cut.side(close.turns);
    let fact = format!("{times} cuts, each up to {each} off, are up to {}", say(error));
    let least = hand::least(project.units()).nm();
    let lower = say((cut.whole() - least) / (times + 1)).floor_to(design.workshop.ruler);
    let shows =
        if border.is_zero() { "nothing shows beside it".to_owned() } else { format!("{border} shows beside it") };
    Finding::note(
        RULE.code,
        written(project, cut.sheet),
        format!("the last {} takes up the errors of the cuts before it", piece.name),
        fact.clone(),
    )
    .also(layer.span, shows)
    .plainly(format!("the last {} is what remains: {fact}, and it must fit more closely than that", piece.name))
    .help(format!("make the {} {lower} {side}, so that the last one is cut by its measure too", piece.name))
}

fn sheet_used_up(project: &Project, cut: &Cut<'_>, error: i64) -> Finding {
    let paper = &project.design.paper(cut.sheet.paper).name;
    let (measure, whole) = (length(project, cut.row.measure.nm()), length(project, cut.whole()));
    let (strips, error) = (cut.times() + 1, length(project, error));
    Finding::note(
        RULE.code,
        written(project, cut.sheet),
        format!("strips of {paper} use its sheet up"),
        format!("{strips} strips of {measure} from {whole}: the last is what remains, up to {error} off"),
    )
    .plainly(format!("{strips} strips of {measure} use the {whole} of {paper} up, so the last one is what remains"))
    .help(format!("measure your sheets: one that is less than {whole} makes the last strip narrow"))
}
