//! What a layer is in the file's dictionaries, and what the writer of pages leaves to be done.
//!
//! Takes the pages as the writer gives them, gives a file whose layers say what is done along their lines, by the
//! processing steps of ISO 19593-1:2018, and whose bytes depend on its content alone.
//!
//! Source of the keys and their values, the standard itself being sold only: the PDF Association's open model of
//! PDF (Arlington, `GTS_ProcStepsGroup.tsv`, after tables 2 and 3 of the standard), and the CIP4 XJDF specification
//! (partial content by `ProcStepsGroup`), which says that the dictionary is `GTS_Metadata` of the optional-content
//! group. The model requires a type in the group `Structural`, and has `Cutting`, `Creasing` and `Folding` there.
//! From memory: that `Legend` is what informs a reader and has no types. The standard's rules on colours of separations
//! and on overprinting are not followed: lines are drawn in ink that any reader shows.

use crate::guides::model::Role;
use crate::handout::ask_for_true_size;
use lopdf::{Dictionary, Document, Object, ObjectId, StringFormat, dictionary, text_string};

/// What a file says of itself.
pub(super) struct About {
    /// Its title.
    pub(super) title: String,
    /// Who gives it away.
    pub(super) author: Option<String>,
    /// Year, month and day of its making.
    pub(super) date: (i32, u8, u8),
    /// The tag of its language.
    pub(super) lang: String,
}

/// The processing step of a role: its group and its type. What is drawn by hand is none of the standard's.
const fn step(role: Role) -> Option<(&'static str, Option<&'static str>)> {
    match role {
        Role::Cut => Some(("Structural", Some("Cutting"))),
        Role::Score => Some(("Structural", Some("Creasing"))),
        Role::Fold => Some(("Structural", Some("Folding"))),
        Role::Draw => None,
        Role::Note => Some(("Legend", None)),
    }
}

/// A layer's dictionary.
fn group(role: Role) -> Dictionary {
    let mut group = dictionary! {
        "Type" => "OCG",
        "Name" => text_string(role.word()),
        "Intent" => vec!["View".into(), "Design".into()],
        "Usage" => dictionary! {
            "CreatorInfo" => dictionary! { "Creator" => text_string("trimwright"), "Subtype" => "Technical" },
        },
    };
    if let Some((of, kind)) = step(role) {
        let mut metadata = dictionary! { "GTS_ProcStepsGroup" => of };
        if let Some(kind) = kind {
            metadata.set("GTS_ProcStepsType", kind);
        }
        group.set("GTS_Metadata", metadata);
    }
    group
}

/// The file with its layers described, everything else in order, as bytes.
pub(super) fn finished(mut file: Document, about: &About) -> Result<Vec<u8>, String> {
    let said = |error: lopdf::Error| format!("the layered file cannot be finished: {error}");
    describe_layers(&mut file).map_err(said)?;
    file.catalog_mut().map_err(said)?.set("Lang", text_string(&about.lang));
    ask_for_true_size(&mut file).map_err(said)?;
    if let Ok(preferences) = file.catalog_mut().and_then(|catalog| catalog.get_mut(b"ViewerPreferences"))
        && let Ok(preferences) = preferences.as_dict_mut()
    {
        preferences.set("DisplayDocTitle", true);
    }
    let (year, month, day) = about.date;
    let date = || Object::String(format!("D:{year:04}{month:02}{day:02}000000Z").into_bytes(), StringFormat::Literal);
    let mut info = dictionary! {
        "Title" => text_string(&about.title),
        "Creator" => text_string("trimwright"),
        "CreationDate" => date(),
        "ModDate" => date(),
    };
    if let Some(author) = &about.author {
        info.set("Author", text_string(author));
    }
    let info = file.add_object(info);
    file.trailer.set("Info", info);
    file.version = "1.7".to_owned();
    file.prune_objects();
    file.compress();
    // The identity of the file is its content; a first writing without one gives what it is the hash of.
    file.trailer.remove(b"ID");
    let hash = typst::utils::hash128(&bytes(&mut file)?).to_be_bytes().to_vec();
    let id = Object::String(hash, StringFormat::Hexadecimal);
    file.trailer.set("ID", vec![id.clone(), id]);
    bytes(&mut file)
}

fn bytes(file: &mut Document) -> Result<Vec<u8>, String> {
    let mut bytes = Vec::new();
    file.save_to(&mut bytes).map_err(|error| format!("the layered file cannot be written: {error}"))?;
    Ok(bytes)
}

/// Each group as this file describes it, and the groups in the order of the roles.
fn describe_layers(file: &mut Document) -> lopdf::Result<()> {
    let properties = file.catalog()?.get(b"OCProperties")?.as_dict()?;
    let ids =
        properties.get(b"OCGs")?.as_array()?.iter().map(Object::as_reference).collect::<lopdf::Result<Vec<_>>>()?;
    let mut ordered: Vec<ObjectId> = Vec::new();
    for role in Role::ALL {
        let named = |id: &&ObjectId| {
            let name = file.get_dictionary(**id).and_then(|group| group.get(b"Name")).and_then(Object::as_str);
            name.is_ok_and(|name| name == role.word().as_bytes())
        };
        let id = *ids.iter().find(named).ok_or(lopdf::Error::ObjectNotFound((0, 0)))?;
        ordered.push(id);
    }
    for (role, id) in Role::ALL.into_iter().zip(&ordered) {
        file.objects.insert(*id, group(role).into());
    }
    let listed: Vec<Object> = ordered.into_iter().map(Object::Reference).collect();
    let usual = dictionary! {
        "Name" => text_string("trimwright"),
        "BaseState" => "ON",
        "Order" => listed.clone(),
        "OFF" => Vec::<Object>::new(),
    };
    file.catalog_mut()?.set("OCProperties", dictionary! { "OCGs" => listed, "D" => usual });
    Ok(())
}
