//! What leaves the core: the figures of a plan, the drawing as an SVG file, and the words.
//!
//! Knows no physics: it receives results.

mod drawing;
mod figures;
pub mod words;

pub use drawing::drawing_svg;
pub use figures::{AirFigures, CodeFigures, ElementFigures, Figures, Totals, figures};
