//! What leaves the core: the figures of a plan, drawings, tables and sheets as files, the answers to other
//! programs, and all words.
//!
//! Knows no physics: it receives results.

pub mod answer;
mod code_figures;
mod csv;
pub mod cut_list;
mod cut_list_table;
mod drawing;
mod example;
mod figures;
mod guesses;
pub mod handover;
mod heat_figures;
mod ledger_table;
mod plot_svg;
mod pressure_readings;
pub mod reroute_words;
mod sheet;
mod sheet_html;
mod side_by_side;
mod site_speaker;
mod visit_sheet;
pub mod words;

pub use code_figures::{CheckFigures, CodeFigures};
pub use csv::{CsvCell, CsvTable};
pub use cut_list_table::cut_list_csv;
pub use drawing::{DrawingWish, drawing_at, drawing_svg, fitting_scale};
pub use example::the_example;
pub use figures::{AirFigures, ElementFigures, Figures, Totals, figures};
pub use guesses::GuessSpread;
pub use heat_figures::{ElementHeatFigures, HeatFigures};
pub use ledger_table::{ledger_csv, ledger_table};
pub use plot_svg::{heat_svg, pressure_svg};
pub use pressure_readings::pressure_readings;
pub use sheet::{Sheet, SheetDrawing, SheetPart, SheetPicture, SheetTable};
pub use sheet_html::{Paper, sheet_file, sheet_html};
pub use side_by_side::{
    DifferenceBands, ElementLoss, ElementPair, SideBySide, TotalPair, difference_bands,
    quantity_of, quantity_shown, side_by_side,
};
pub use site_speaker::SiteSpeaker;
pub use visit_sheet::{VisitSheet, visit_sheet};
