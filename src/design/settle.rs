//! Nodes to the settled design.
