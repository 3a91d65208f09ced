//! The bundled typefaces: one list for every writer.
//!
//! The family names here are the ones inside the files; a missing family drops text silently in
//! some renderers, so nobody else spells them.

pub mod metrics;

/// The display face: titles, step numbers.
pub const DISPLAY: &str = "Fredoka";
/// The text face: everything else.
pub const TEXT: &str = "Nunito";

/// Every face: `(family, weight, bytes)`.
pub const FACES: [(&str, u16, &[u8]); 3] = [
    (DISPLAY, 600, include_bytes!("../templates/fonts/Fredoka-SemiBold.ttf")),
    (TEXT, 400, include_bytes!("../templates/fonts/Nunito-Regular.ttf")),
    (TEXT, 700, include_bytes!("../templates/fonts/Nunito-Bold.ttf")),
];
