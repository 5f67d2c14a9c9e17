//! What leaves the core: the figures of a plan, the drawing as an SVG file, and the words.
//!
//! Knows no physics: it receives results.

pub mod answer;
mod code_figures;
mod drawing;
mod figures;
mod heat_figures;
mod site_speaker;
mod visit_sheet;
pub mod words;

pub use code_figures::{CheckFigures, CodeFigures};
pub use drawing::drawing_svg;
pub use figures::{AirFigures, ElementFigures, Figures, Totals, figures};
pub use heat_figures::{ElementHeatFigures, HeatFigures};
pub use site_speaker::SiteSpeaker;
pub use visit_sheet::{VisitSheet, visit_sheet};
