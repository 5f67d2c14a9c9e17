//! Elbowroom: a browser planner and fault-finder for clothes-dryer exhaust runs.
//!
//! The rooms, in reading order; each uses only rooms above it.

pub mod units;

pub mod numeric;

pub mod source;

pub mod air;

pub mod duct;

pub mod plan;

pub mod system;

pub mod rules;

pub mod scene;

pub mod search;

pub mod diagnosis;

pub mod report;

pub mod editor;

#[cfg(feature = "web")]
pub mod web;
