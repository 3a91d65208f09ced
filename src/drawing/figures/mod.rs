//! One figure a file.
