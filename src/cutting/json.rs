//! The plan as JSON, for programs that build on it.
//!
//! Lengths are whole nanometres with the unit in the key; the origin is the sheet's lower left corner
//! as it lies with its "up" upward; `aims.leftover` is an area in whole square micrometres, since
//! square nanometres of a sheet pass the whole numbers that other readers of JSON keep exactly.

use super::plan::{Aim, CutPlan, CutRow, Part, PartId, SheetPlan, Use};
use crate::design::model::{Design, Side};
use serde_json::{Map, Value, json};

/// The version of the shape below.
pub const VERSION: u32 = 1;

/// The plan: `{version, units, cards, most?, aims, totals, sheets, spares}`.
#[must_use]
pub fn to_json(design: &Design, plan: &CutPlan) -> Value {
    let mut root = Map::new();
    root.insert("version".into(), VERSION.into());
    root.insert("units".into(), plan.units.word().into());
    root.insert("cards".into(), plan.cards.into());
    if let Some(most) = plan.most {
        root.insert("most".into(), most.into());
    }
    let aims = &plan.aims;
    root.insert(
        "aims".into(),
        json!({
            "cards": aim(aims.cards),
            "sheets": aim(aims.sheets),
            "diagrams": aim(aims.diagrams),
            "cuts": aim(aims.cuts),
            "changes": aim(aims.changes),
            "leftover": aim(aims.leftover),
        }),
    );
    root.insert(
        "totals".into(),
        json!({
            "sheets": plan.sheets_used(),
            "diagrams": plan.diagrams(),
            "cuts": plan.cuts(),
            "changes": plan.changes(),
        }),
    );
    root.insert("sheets".into(), plan.sheets.iter().map(|one| sheet(design, one)).collect());
    let spares = plan.spares(design).into_iter().map(|spare| {
        let (paper, piece) = (&design.paper(spare.paper).name, &design.piece(spare.piece).name);
        json!({"paper": paper, "piece": piece, "count": spare.count})
    });
    root.insert("spares".into(), spares.collect());
    Value::Object(root)
}

fn aim(aim: Aim) -> Value {
    json!({"found": aim.found, "bound": aim.bound, "proven": aim.proven})
}

fn sheet(design: &Design, sheet: &SheetPlan) -> Value {
    let parts: Vec<Value> = sheet.parts.iter().enumerate().map(|(id, one)| part(design, PartId(id), one)).collect();
    json!({
        "paper": design.paper(sheet.paper).name,
        "numbers": sheet.numbers,
        "kept": sheet.kept,
        "diagram": sheet.diagram + 1,
        "width_nm": sheet.width.nm(),
        "height_nm": sheet.height.nm(),
        "slack_width_nm": sheet.slack.width.nm(),
        "slack_height_nm": sheet.slack.height.nm(),
        "parts": parts,
        "cuts": sheet.cuts.iter().map(row).collect::<Vec<_>>(),
    })
}

fn part(design: &Design, id: PartId, part: &Part) -> Value {
    let mut value = Map::new();
    value.insert("id".into(), id.0.into());
    value.insert("parent".into(), part.parent.map_or(Value::Null, |parent| parent.0.into()));
    value.insert("x_nm".into(), part.rect.left.into());
    value.insert("y_nm".into(), part.rect.bottom.into());
    value.insert("width_nm".into(), part.rect.width().into());
    value.insert("height_nm".into(), part.rect.height().into());
    let word = match part.r#use {
        Use::Divided => "divided",
        Use::Piece { .. } => "piece",
        Use::Leftover => "leftover",
        Use::EdgeStrip => "edge-strip",
    };
    value.insert("use".into(), word.into());
    if let Use::Piece { piece, version, quarter_turns } = part.r#use {
        value.insert("piece".into(), design.piece(piece).name.clone().into());
        // A piece without a version shows the same side in all.
        let side = version.or_else(|| design.version_ids().next()).map(|version| design.side_of(piece, version));
        if side == Some(Side::Back) {
            value.insert("side".into(), "back".into());
        }
        if let Some(version) = version.map(|version| &design.version(version).name).filter(|name| !name.is_empty()) {
            value.insert("version".into(), version.clone().into());
        }
        value.insert("quarter_turns".into(), quarter_turns.into());
    }
    Value::Object(value)
}

fn row(row: &CutRow) -> Value {
    let ids = |parts: &[PartId]| parts.iter().map(|part| part.0).collect::<Vec<_>>();
    json!({
        "n": row.n,
        "parts": ids(&row.parts),
        "from": row.from.word(),
        "measure_nm": row.measure.nm(),
        "cuts": row.cuts,
        "gives": ids(&row.gives),
    })
}
