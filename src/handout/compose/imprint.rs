//! The designer's own look, and photos of the finished card.

use crate::design::model::Design;
use crate::handout::data::{AccentColours, ImprintData, PhotoFigure, StoredPicture, WebLink, said};
use crate::handout::world::Stored;
use crate::length::NM_PER_MM;
use crate::picture::Picture;
use crate::project::Project;
use crate::words::{Line, pages as words};
use std::sync::Arc;

/// The most room of a logo on the front page: three of twelve columns, mm.
const LOGO: (i64, i64) = (43, 20);

pub(super) fn accents(design: &Design) -> AccentColours {
    let accents = design.accents();
    AccentColours { notes: accents.notes.to_string(), cuts: accents.cuts.to_string() }
}

pub(super) fn imprint(design: &Design) -> Option<ImprintData> {
    let say = design.words();
    let imprint = design.imprint.as_ref()?;
    let logo = imprint.logo.as_ref().map(|logo| {
        let (width, height) = logo.within(LOGO.0 * NM_PER_MM, LOGO.1 * NM_PER_MM);
        let name = imprint.name.as_ref().map(|name| name.value.as_str()).or_else(|| design.giver());
        StoredPicture {
            path: logo_path(logo),
            alt: name.map_or_else(|| words::logo(say), str::to_owned),
            width,
            height,
        }
    });
    Some(ImprintData {
        logo,
        title: if imprint.terms.is_some() { words::terms(say) } else { words::on_the_web(say) },
        terms: imprint.terms.as_ref().map(|terms| said(&Line::plain(terms.value.clone()))),
        web: imprint.web.as_ref().map(|web| WebLink { shown: web.shown.value.clone(), target: web.target.clone() }),
    })
}

pub(super) fn photos(design: &Design) -> Vec<PhotoFigure> {
    let say = design.words();
    let figure = |(at, (photo, version)): (usize, (&crate::design::model::Photo, Option<&str>))| {
        let (width, height) = design.printed(photo);
        let alt = photo.alt.as_ref().map(|alt| alt.value.clone());
        PhotoFigure {
            caption: said(&words::photo_caption(say, version)),
            photo: StoredPicture {
                path: photo_path(at, &photo.picture),
                alt: alt.unwrap_or_else(|| words::photo_alt(say, &design.title.value, version)),
                width,
                height,
            },
        }
    };
    design.photos().enumerate().map(figure).collect()
}

/// Every picture of the pages, where the data says that it lies.
pub(in crate::handout) fn stored(project: &Project) -> Vec<Stored> {
    let design = &project.design;
    let logo = design.imprint.as_ref().and_then(|imprint| imprint.logo.as_ref());
    let photos = design.photos().enumerate();
    let photos = photos.map(|(at, (photo, _))| (photo_path(at, &photo.picture), Arc::clone(&photo.picture)));
    logo.map(|logo| (logo_path(logo), Arc::clone(logo))).into_iter().chain(photos).collect()
}

fn logo_path(logo: &Picture) -> String {
    format!("/logo.{}", logo.format.ending())
}

fn photo_path(at: usize, photo: &Picture) -> String {
    format!("/photo-{}.{}", at + 1, photo.format.ending())
}
