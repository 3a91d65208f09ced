//! A finished file asks the print dialog for true size.
//!
//! Takes the typesetter's PDF, gives the same pages with the print dialog's scaling switched off in
//! the viewer preferences (ISO 32000-1, table 150: `PrintScaling`), which the typesetter cannot
//! write. Must never know a page.

use lopdf::{Dictionary, Document, Object};

/// The file with `/PrintScaling /None` in its viewer preferences; its other bytes depend on those
/// it was made from alone.
///
/// # Errors
/// A file that cannot be read as a PDF or written again; always a fault of the typesetter.
pub(super) fn unscaled(bytes: &[u8]) -> Result<Vec<u8>, String> {
    let said = |error: lopdf::Error| format!("the finished file cannot be marked for printing at true size: {error}");
    let mut file = Document::load_mem(bytes).map_err(said)?;
    ask_for_true_size(&mut file).map_err(said)?;
    let mut written = Vec::with_capacity(bytes.len());
    file.save_to(&mut written).map_err(|error| said(error.into()))?;
    Ok(written)
}

/// Sets `/PrintScaling /None` in a file's viewer preferences.
///
/// # Errors
/// A file without a catalogue, or one whose preferences are no dictionary.
pub fn ask_for_true_size(file: &mut Document) -> Result<(), lopdf::Error> {
    let preferences = match file.catalog()?.get(b"ViewerPreferences") {
        Ok(Object::Reference(id)) => Some(*id),
        _ => None,
    };
    if let Some(id) = preferences {
        ask(file.get_dictionary_mut(id)?);
        return Ok(());
    }
    let catalog = file.catalog_mut()?;
    if !catalog.has(b"ViewerPreferences") {
        catalog.set("ViewerPreferences", Dictionary::new());
    }
    ask(catalog.get_mut(b"ViewerPreferences").and_then(Object::as_dict_mut)?);
    Ok(())
}

fn ask(preferences: &mut Dictionary) {
    preferences.set("PrintScaling", Object::Name(b"None".to_vec()));
}
