#![no_main]

#[path = "../bodies/plan_file.rs"]
mod body;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| body::plan_file(bytes));
