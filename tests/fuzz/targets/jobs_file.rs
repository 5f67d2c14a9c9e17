#![no_main]

#[path = "../bodies/jobs_file.rs"]
mod body;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| body::jobs_file(bytes));
