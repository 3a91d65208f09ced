//! The YAML as a spanned node tree.
