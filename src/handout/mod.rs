//! The handout: everything the reader holds, as one tagged PDF.

mod world;
