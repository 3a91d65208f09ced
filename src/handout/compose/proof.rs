//! What only the designer sees: findings, allowed rules, the design read back, what the plan rests on.

use crate::cutting::plan::Aim;
use crate::handout::Told;
use crate::handout::data::{ProofPages, ProofPart, ProofTable, Said, said};
use crate::project::Project;
use crate::readback::read_back;
use crate::words::Line;
use crate::words::variants as words;

pub(super) fn pages(project: &Project, told: &Told) -> ProofPages {
    let say = project.words();
    let lines = |texts: &[String]| texts.iter().map(|text| said(&Line::plain(text.trim().to_owned()))).collect();
    let part = |title: String, lines: Vec<Said>| ProofPart { title, lines };
    let found = if told.findings.is_empty() { vec![said(&words::nothing_found(say))] } else { lines(&told.findings) };
    let mut parts = vec![part(words::found(say), found)];
    if !told.allowed.is_empty() {
        parts.push(part(words::allowed(say), lines(&told.allowed)));
    }
    parts.push(part(words::read_back(say), lines(&read_back(project))));
    ProofPages {
        title: words::for_the_designer(say),
        lead: said(&words::designers_lead(say)),
        parts,
        aims: aims(project),
    }
}

fn aims(project: &Project) -> ProofTable {
    let say = project.words();
    let aims = project.plan.aims;
    let count = |value: u64| value.to_string();
    let area = |value: u64| words::area(say, value, project.units());
    let row = |name: &str, aim: Aim, shown: &dyn Fn(u64) -> String| {
        [name.to_owned(), shown(aim.found), shown(aim.bound), words::proven(say, aim.proven)]
    };
    let own = [aims.cards, aims.sheets, aims.diagrams, aims.cuts, aims.changes, aims.leftover];
    let names = words::aims(say);
    let rows = names
        .iter()
        .zip(own)
        .enumerate()
        .map(|(at, (name, aim))| if at == 5 { row(name, aim, &area) } else { row(name, aim, &count) });
    ProofTable {
        title: words::proof(say),
        note: said(&words::proof_note(say)),
        heads: words::proof_heads(say),
        rows: rows.collect(),
    }
}
