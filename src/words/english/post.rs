//! What `check` tells a designer of the base, the envelope and the post.

/// The base: `The base is 298 g/m2 and about 0.33 mm thick: score it; its fold runs with the grain.`
#[must_use]
pub fn base(grams: i64, thick: &str, is_assumed: bool, score: bool, grain: Option<&str>) -> String {
    let taken = if is_assumed { "is taken for" } else { "is" };
    let mut said = format!("The base {taken} {grams} g/m2 and about {thick} thick");
    let told: Vec<&str> = score.then_some("score it").into_iter().chain(grain).collect();
    if !told.is_empty() {
        said = format!("{said}: {}", told.join("; "));
    }
    format!("{said}.")
}

/// How the folds of the bases run: `its fold runs with the grain`.
#[must_use]
pub fn grain(with: u32, across: u32, is_stated: bool) -> String {
    let usual = if is_stated { "" } else { ", if the sheets are grain long as letter usually is" };
    match (with, across) {
        (_, 0) => format!("its fold runs with the grain{usual}"),
        (0, _) => format!("its fold runs across the grain{usual}"),
        _ => format!("{with} fold with the grain and {across} across it{usual}"),
    }
}

/// The envelope: `Envelope: A2 envelope, 5 3/4 x 4 3/8 in, the smallest with a name that takes the card.`
#[must_use]
pub fn envelope(name: Option<&str>, size: &str, is_stated: bool) -> String {
    let name = name.map_or_else(|| size.to_owned(), |name| format!("{name}, {size}"));
    let why = if is_stated { "" } else { ", the smallest with a name that takes the card" };
    format!("Envelope: {name}{why}.")
}

/// No envelope: `Envelope: none with a name takes the card.`
#[must_use]
pub const fn no_envelope() -> &'static str {
    "Envelope: none with a name takes the card."
}

/// The card as it is posted: `In its envelope it is about 3.1 mm thick, with foam of 1.5 mm, and weighs about
/// 21 g, without glue, foam and decorations.`
#[must_use]
pub fn posted(
    thick: &str,
    foam: Option<&str>,
    is_whole: bool,
    grams: i64,
    unweighed: bool,
    is_assumed: bool,
) -> String {
    let least = if is_whole { "about" } else { "at least" };
    let foam = foam.map_or_else(String::new, |foam| format!(", with foam of {foam},"));
    let bare = if unweighed { ", glue, foam and decorations not counted" } else { ", glue not counted" };
    let taken = if is_assumed { "; paper without a weight is taken for a usual one" } else { "" };
    format!("In its envelope it is {least} {thick} thick{foam} and weighs about {grams} g{bare}{taken}.")
}

/// What a service makes of it: `United States: letter, but not by machine: uneven (DMM 101, …).`
#[must_use]
pub fn service(country: &str, verdict: &str, document: &str) -> String {
    format!("  {country}: {verdict} ({document}).")
}

/// Whom to ask.
#[must_use]
pub const fn ask() -> &'static str {
    "  Ask your post office; rules and limits change."
}
