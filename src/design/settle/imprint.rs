//! The imprint: the designer's own look, read from a file beside the design, its faults told in that file.

use super::beside::{beside, is_beside};
use super::desk::{Desk, Field, Fields};
use super::photo::{Use, unreadable};
use crate::colour::{Colour, TEXT_CONTRAST, ratio};
use crate::design::model::{Accents, Imprint, Untold, Web};
use crate::design::nodes::{self, Node};
use crate::diagnostic::Finding;
use crate::picture::Picture;
use crate::source::{Span, Spanned};
use std::sync::Arc;

const KEYS: [&str; 5] = ["accents", "name", "logo", "terms", "web"];

impl<'a> Desk<'a> {
    /// `imprint: house.yaml`.
    pub(super) fn imprint(&mut self, field: Field<'a>) -> Option<Imprint> {
        let text = self.text(field)?;
        let (file, span) = (text.value, text.span);
        if !is_beside(file) {
            self.note(
                Finding::error(
                    "unreadable-imprint",
                    span,
                    format!("`{file}` lies outside the design's folder"),
                    "not a file beside the design",
                )
                .help(
                    "put the imprint beside the design, or in 1 folder there, and write its name, such as `house.yaml`",
                )
                .plainly("An imprint is read only from the folder of the design."),
            );
            return None;
        }
        let unread = |cause: &str| {
            Finding::error("unreadable-imprint", span, format!("the imprint `{file}` cannot be read"), cause)
                .help("put 1 text file of this name beside the design, and let everybody read it")
                .plainly(format!("The imprint {file} cannot be read: {cause}."))
        };
        let fault = match self.source.beside(file) {
            Some(Ok(bytes)) if std::str::from_utf8(bytes).is_ok() => None,
            Some(Ok(_)) => Some("it holds bytes that are no UTF-8 text"),
            Some(Err(cause)) => Some(cause.as_str()),
            None => Some("there is no such file"),
        };
        if let Some(cause) = fault {
            self.note(unread(cause));
            return None;
        }
        let source = self.source.file(file);
        let root = match nodes::read(&source) {
            Ok(root) => root,
            Err(finding) => {
                self.findings.push(finding.in_file(file));
                return None;
            }
        };
        let mut own = Desk::new(&source, self.units, self.asked.clone());
        (own.language, own.languages) = (self.language, self.languages.clone());
        let imprint = own.imprint_at(&root, file, self);
        let (found, heard) = (own.findings, own.heard);
        self.untold.extend(own.untold.into_iter().map(|untold| Untold { file: Some(file.to_owned()), ..untold }));
        self.heard.join(heard);
        self.findings.extend(found.into_iter().map(|finding| finding.in_file(file)));
        imprint
    }

    /// The imprint in a file of its own; `design` is the desk of the design that names it.
    fn imprint_at(&mut self, root: &'a Node, file: &str, design: &Desk<'_>) -> Option<Imprint> {
        let first = match root {
            Node::Map(map) => map.entries.first().map_or(map.span, |(key, _)| key.span),
            other => Span::new(other.span().start, other.span().start),
        };
        let top = self.fields(root, "the imprint", first, &KEYS)?;
        let name = top.get("name").and_then(|field| self.words(field));
        let logo = top.get("logo").and_then(|field| self.logo(field, file, design));
        let accents = top.get("accents").map(|field| self.accents(field));
        let terms = top.get("terms").and_then(|field| self.told(field));
        let web = top.get("web").and_then(|field| self.web(field));
        Some(Imprint { file: file.to_owned(), name, logo, accents: accents.unwrap_or_default(), terms, web })
    }

    fn logo(&mut self, field: Field<'a>, file: &str, design: &Desk<'_>) -> Option<Arc<Picture>> {
        let text = self.text(field)?;
        let found = match is_beside(text.value) {
            true => design.picture_at(&beside(file, text.value)),
            false => Err(None),
        };
        match found {
            Ok(picture) => Some(picture),
            Err(fault) => {
                self.note(unreadable(Use::Logo, text.value, text.span, fault));
                None
            }
        }
    }

    /// Both accents; where one is not said or will not do, the usual one.
    fn accents(&mut self, field: Field<'a>) -> Accents {
        let usual = Accents::default();
        let Some(fields) = self.fields(field.node, "the accents", field.key, &["notes", "cuts"]) else { return usual };
        Accents {
            notes: self.accent(&fields, "notes").unwrap_or(usual.notes),
            cuts: self.accent(&fields, "cuts").unwrap_or(usual.cuts),
        }
    }

    fn accent(&mut self, fields: &Fields<'a>, name: &'static str) -> Option<Colour> {
        let text = fields.get(name).and_then(|field| self.words(field))?;
        let typed: String = text.value.chars().take(40).collect();
        let Some(colour) = Colour::parse(&text.value) else {
            self.note(
                Finding::error(
                    "bad-colour",
                    text.span,
                    format!("`{typed}` is not a colour"),
                    "not `#` and 6 digits from 0 to 9 and A to F",
                )
                .help("write the colour as `\"#0E5F70\"`: 2 digits each for red, green and blue, in quotes")
                .plainly(format!("\"{typed}\" is not a colour that can be printed.")),
            );
            return None;
        };
        let contrast = colour.contrast_with_white();
        if contrast < TEXT_CONTRAST {
            let dark = colour.darkened_to(TEXT_CONTRAST);
            self.note(
                Finding::error(
                    "weak-accent",
                    text.span,
                    format!("the accent of `{name}` is too pale for white paper"),
                    format!("{} against white, and letters need {}", ratio(contrast), ratio(TEXT_CONTRAST)),
                )
                .help(format!("make it \"{dark}\", the nearest darker one, with {}", ratio(dark.contrast_with_white())))
                .plainly(format!("The accent {colour} is too pale to be read on white paper.")),
            );
            return None;
        }
        Some(colour)
    }

    /// `heron-lane.example` or `https://heron-lane.example/kits`.
    fn web(&mut self, field: Field<'a>) -> Option<Web> {
        let text = self.words(field)?;
        match target(&text.value) {
            Some(target) => Some(Web { shown: Spanned::new(text.value, text.span), target }),
            None => {
                let typed: String = text.value.chars().take(40).collect();
                self.note(
                    Finding::error(
                        "bad-address",
                        text.span,
                        format!("`{typed}` is not a web address"),
                        "not a name with a dot in it, without blanks",
                    )
                    .help("write 1 address, such as `heron-lane.example` or `https://heron-lane.example/kits`")
                    .plainly(format!("\"{typed}\" is not the address of a web page.")),
                );
                None
            }
        }
    }
}

/// Where an address leads: `https://` in front where nothing is said; none where it is no address of a page.
fn target(address: &str) -> Option<String> {
    let (scheme, rest) = match address.split_once("://") {
        Some((scheme, rest)) if scheme.eq_ignore_ascii_case("https") => ("https", rest),
        Some((scheme, rest)) if scheme.eq_ignore_ascii_case("http") => ("http", rest),
        Some(_) => return None,
        None => ("https", address),
    };
    let host = rest.split(['/', '?', '#']).next().unwrap_or_default();
    let is_label = |label: &str| {
        let inner = label.chars().all(|sign| sign.is_alphanumeric() || sign == '-');
        !label.is_empty() && inner && !label.starts_with('-') && !label.ends_with('-')
    };
    let labels: Vec<&str> = host.split('.').collect();
    let plain = rest.chars().all(|sign| !sign.is_whitespace() && !sign.is_control() && !"\"<>\\^`{|}".contains(sign));
    (labels.len() > 1 && labels.into_iter().all(is_label) && plain && rest.len() <= 200)
        .then(|| format!("{scheme}://{rest}"))
}

#[cfg(test)]
mod tests {
    use super::target;

    #[test]
    fn addresses_of_pages_alone_are_taken() {
        assert_eq!(target("heron-lane.example").as_deref(), Some("https://heron-lane.example"));
        assert_eq!(target("HTTP://a.example/x?y#z").as_deref(), Some("http://a.example/x?y#z"));
        for wrong in [
            "javascript:alert(1)",
            "file:///etc/passwd",
            "ftp://a.example",
            "a@b.example",
            "nowhere",
            "a..example",
            "two words.example",
            "https://",
            "a.example/<b>",
            "-a.example",
            "a.example:80",
        ] {
            assert_eq!(target(wrong), None, "{wrong}");
        }
    }
}
