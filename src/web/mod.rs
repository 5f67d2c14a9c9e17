//! The page: components, effects and the worker. The only room that names the browser; it holds no
//! formula and decides nothing of what is drawn.

mod air_panel;
mod app;
mod band_client;
mod band_protocol;
mod band_worker;
mod code_findings;
mod code_label_card;
mod code_maker;
mod code_panel;
mod code_tables;
mod draft_view;
mod draw_length;
mod drawing;
mod elevation_keys;
mod elevation_marks;
mod elevation_panel;
mod elevation_pointer;
mod field;
mod files;
mod header;
mod keep;
mod keep_store;
mod keep_view;
mod keys;
mod keys_help;
mod large_type;
mod ledger;
mod leg_fields;
mod mark_view;
mod own_value;
mod panic_report;
mod picture;
mod pointer;
mod pressure_panel;
mod scale_bar_view;
mod selected_panel;
mod selected_sheet;
mod spoken;
mod store;
mod termination_fields;
mod thing_fields;
mod tool_bar;
mod totals;

pub use app::start;
pub use band_worker::start_worker;
