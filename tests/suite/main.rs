//! The core against figures from outside it: one module a subject.
//!
//! Each check names the source of what it expects, each tolerance is a constant with its reason.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test stops at what it cannot read"
)]

mod reference;
mod seeded;
mod tally;

mod air;
mod bends;
mod dependencies;
mod dust;
mod friction;
mod heat;
mod sobol;

mod bands;
mod leaks;
mod operating;
mod runs;
mod worked_examples;

mod random_plan;

mod heat_findings;
mod heat_properties;
mod hot_readings;
mod monotone;
mod parts;
mod physics;
mod sources;
mod symmetry;

mod clearance;

mod code_findings;
mod code_termination;
mod irc;
mod rule_sets;

mod keys;

mod lengths;

mod example_file;
mod file_fault;
mod plan_file;
mod plan_file_faults;
mod plan_file_fields;
mod plan_file_random;
mod schema;
mod schema_bounds;
mod schema_form;

mod terminal;

mod elevation;
mod room_marks;
mod suspect_marks;

mod fault_cases;
mod fault_finder;
mod fault_world;
mod reading_values;
mod site_readings;
mod visits;

mod cut_list;
mod handover;

mod editor_actions;
mod editor_model;
mod editor_promises;
mod editor_room;

mod random_room;
mod reroute_wishes;
mod reroutes;
mod route_enumerator;
mod turn_costs;

mod handover_samples;
mod language_files;
mod language_plans;
mod language_values;
mod lessons;
mod message_samples;
mod reroute_samples;
mod share_link;
mod side_by_side;
mod side_samples;
mod site_samples;
mod trouble_samples;

mod prose;
mod rooms;
mod rust_text;

mod corpus;
