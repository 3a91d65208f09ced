//! Steps and cut rows to sentences.
