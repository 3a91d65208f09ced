//! True-size guides: what is on their pages.

mod pages;
