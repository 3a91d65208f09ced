//! Pieces that are what a window of another piece leaves over.

use super::desk::Desk;
use super::names::{Names, tidy};
use super::text::Text;
use crate::design::model::{From, Piece, PieceId};
use crate::diagnostic::Finding;
use crate::shape::Form;

impl<'a> Desk<'a> {
    /// `window of frame`, `window 2 of frame`; the outer none where the text is about no window (a paper may
    /// be called so), the inner one where the piece is unknown. Pieces are numbered as written.
    pub(super) fn left_by_a_window(&mut self, text: Text<'a>, pieces: &Names, papers: &Names) -> Option<Option<From>> {
        if papers.position(&tidy(text.value)).is_some() {
            return None;
        }
        let (window, frame) = text.at_word("of")?;
        let (word, number) = window.first_word();
        if !word.value.eq_ignore_ascii_case("window") {
            return None;
        }
        let number = if number.value.is_empty() { Some(1) } else { self.count_in("window", number, 50) };
        let frame = self.declared(frame, pieces, &[]);
        let (Some(number), Some(frame)) = (number, frame) else { return Some(None) };
        Some(Some(From::Window(PieceId(frame), number as usize - 1)))
    }

    /// Whether every piece that a window leaves over is no larger than the window; the faults are noted.
    /// As a window is smaller than its piece, none can come from itself in the end.
    pub(super) fn fit_their_windows(&mut self, pieces: &[Piece]) -> bool {
        let mut all = true;
        for piece in pieces {
            let From::Window(frame, number) = piece.from else { continue };
            let frame = &pieces[frame.0];
            let Some(window) = frame.shape.windows.get(number) else {
                all = false;
                let has = frame.shape.windows.len();
                self.note(
                    Finding::error(
                        "no-such-window",
                        piece.from_span,
                        format!("`{}` has no window {}", frame.name, number + 1),
                        format!("{has} windows there"),
                    )
                    .also(frame.span, format!("`{}` is written here", frame.name))
                    .help(format!("name 1 window that it has, or add `window:` to `{}`", frame.name))
                    .plainly(format!("{} is cut from a window that is not there.", piece.name)),
                );
                continue;
            };
            let (width, height) = (piece.blank().width.nm(), piece.blank().height.nm());
            let fits = width <= window.width && height <= window.height;
            let is_waste = piece.shape.form == window.form && (width, height) == (window.width, window.height);
            if fits && (window.form == Form::Rectangle || is_waste) {
                continue;
            }
            all = false;
            let unit = piece.size.width.unit();
            let room = crate::geometry::Rect::at(0, 0, window.width, window.height).size(unit);
            let mut finding = Finding::error(
                "larger-than-its-window",
                piece.size_span,
                format!("`{}` does not fit into what the window leaves over", piece.name),
                if fits { "another shape than the window".to_owned() } else { format!("the window is {room}") },
            )
            .also(frame.shape_span, format!("the window of `{}`", frame.name))
            .help(if fits {
                format!("give it the window's own shape and its size, {room}, or cut the window as a rectangle")
            } else {
                format!("make it {room} or smaller")
            })
            .plainly(format!("{} is larger than the paper that comes out of the window.", piece.name));
            finding.edition = self.both().then_some(self.units);
            self.note(finding);
        }
        all
    }
}
