//! A scene as SVG.
