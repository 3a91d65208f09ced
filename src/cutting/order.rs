//! Order.
