//! Demand.
