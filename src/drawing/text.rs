//! Widths of texts in the bundled faces.
