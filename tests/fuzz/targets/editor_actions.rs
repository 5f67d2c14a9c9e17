#![no_main]
#![allow(dead_code, reason = "of the property tests only what draws and watches is used")]

#[path = "../bodies/editor_actions.rs"]
mod body;
#[path = "../../suite/editor_actions.rs"]
mod editor_actions;
#[path = "../../suite/editor_model.rs"]
mod editor_model;
#[path = "../../suite/editor_room.rs"]
mod editor_room;
#[path = "../../suite/example_file.rs"]
mod example_file;
#[path = "../../suite/random_plan.rs"]
mod random_plan;
#[path = "../../suite/seeded.rs"]
mod seeded;
#[path = "../../suite/symmetry.rs"]
mod symmetry;
#[path = "../../suite/tally.rs"]
mod tally;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| body::editor_actions(bytes));
