//! Photos of the finished card, and what is wrong with a picture.

use super::beside::is_beside;
use super::desk::{Desk, Field};
use crate::design::model::Photo;
use crate::design::nodes::Node;
use crate::diagnostic::Finding;
use crate::picture::{Format, MOST_PIXELS, Picture, PictureFault};
use crate::source::Span;
use std::sync::Arc;

/// What a picture is used for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Use {
    Logo,
    Photo,
}

/// Why there is no picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum NoPicture {
    /// The file cannot be read, and why.
    Unread(String),
    /// It holds no picture that can be printed.
    Fault(PictureFault),
    /// It is drawn: no photo.
    Drawn,
}

impl<'a> Desk<'a> {
    /// The picture in a file beside the design.
    pub(super) fn picture_at(&self, name: &str) -> Result<Arc<Picture>, Option<NoPicture>> {
        let read = match self.source.beside(name) {
            Some(Ok(_)) => self.source.picture(name),
            Some(Err(cause)) => return Err(Some(NoPicture::Unread(cause.clone()))),
            None => None,
        };
        let unread = || NoPicture::Unread("there is no such file".to_owned());
        read.ok_or_else(unread).and_then(|read| read.map_err(NoPicture::Fault)).map_err(Some)
    }

    /// `photo: card.jpg`, or `photo: {file: card.jpg, alt: ...}`.
    pub(super) fn photo(&mut self, field: Field<'a>) -> Option<Photo> {
        let (file, alt) = match field.node {
            Node::Map(_) => {
                let fields = self.fields(field.node, "the photo", field.key, &["alt", "file"])?;
                let alt = fields.get("alt").map(|field| self.told(field));
                let file = self.required(&fields, "file", "card.jpg").and_then(|field| self.text(field))?;
                let alt = match alt {
                    Some(alt) => Some(alt?),
                    None => None,
                };
                (file, alt)
            }
            _ => (self.text(field)?, None),
        };
        let found = if is_beside(file.value) { self.picture_at(file.value) } else { Err(None) };
        let found = found.and_then(|picture| match picture.format {
            Format::Svg => Err(Some(NoPicture::Drawn)),
            Format::Jpeg | Format::Png => Ok(picture),
        });
        match found {
            Ok(picture) => Some(Photo { file: file.owned(), alt, picture }),
            Err(fault) => {
                self.note(unreadable(Use::Photo, file.value, file.span, fault));
                None
            }
        }
    }
}

/// What is said of a picture that cannot be printed; one without a fault lies outside the design's folder.
pub(super) fn unreadable(used: Use, name: &str, span: Span, fault: Option<NoPicture>) -> Finding {
    let (what, kinds) = match used {
        Use::Logo => ("the logo", "SVG or PNG"),
        Use::Photo => ("the photo", "JPEG or PNG"),
    };
    let name: String = name.chars().take(60).collect();
    let Some(fault) = fault else {
        let home = if used == Use::Logo { "the imprint" } else { "the design" };
        return Finding::error(
            "unreadable-picture",
            span,
            format!("`{name}` lies outside the folder of {home}"),
            format!("not a file beside {home}"),
        )
        .help(format!("put {what} beside {home}, or in 1 folder there, and write its name"))
        .plainly(format!("A picture is read only from the folder of {home}."));
    };
    let (fact, help) = told(&fault, kinds);
    Finding::error("unreadable-picture", span, format!("{what} `{name}` cannot be printed"), fact.clone())
        .help(help)
        .plainly(format!("{}{} {name} cannot be printed: {fact}.", what[..1].to_uppercase(), &what[1..]))
}

fn told(fault: &NoPicture, kinds: &str) -> (String, String) {
    let again = format!("save it once more as 1 {kinds} file");
    match fault {
        NoPicture::Unread(cause) => {
            (cause.clone(), "put 1 file of this name there, and let everybody read it".to_owned())
        }
        NoPicture::Drawn => ("it is an SVG, which is no photo".to_owned(), again),
        NoPicture::Fault(fault) => match fault {
            PictureFault::Other { kind: Some(kind) } => (format!("it is a file of the kind {kind}"), again),
            PictureFault::Other { kind: None } => ("it is no picture".to_owned(), again),
            PictureFault::TooManyPixels { width, height } => (
                format!("it claims {width} x {height} pixels, and {} million are read", MOST_PIXELS / 1_000_000),
                "bring it down to 2000 pixels along its longer side, which is all that paper shows".to_owned(),
            ),
            PictureFault::TooSmall { width, height } => (
                format!("it has {width} x {height} pixels"),
                "save it with 300 pixels or more along its shorter side".to_owned(),
            ),
            PictureFault::TooThin => (
                "it is more than 20 times as long as it is wide".to_owned(),
                "cut it to a form that is at most 20 to 1".to_owned(),
            ),
            PictureFault::CutShort => ("the file ends before the picture does".to_owned(), again),
            PictureFault::Broken { says } => {
                let says: String = says.chars().take(120).collect();
                (format!("it cannot be decoded: {}", says.trim_end_matches(['.', '!'])), again)
            }
            PictureFault::Element { name, line } => (
                format!("line {line} holds `{name}`, which is no plain shape"),
                "keep shapes alone: turn text and copies into paths, and save pictures within it as 1 PNG".to_owned(),
            ),
            PictureFault::PointsElsewhere { to, line } => (
                format!("line {line} points at `{to}`, which is not in it"),
                "keep everything in the 1 file: take out what points to other files and pages".to_owned(),
            ),
            PictureFault::Nothing => ("nothing is drawn in it".to_owned(), again),
        },
    }
}
