//! Pens and letters: the only file that knows them.
