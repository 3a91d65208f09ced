//! Dimension lines after ISO 129-1.
