#![no_main]

#[path = "../bodies/lesson_file.rs"]
mod body;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| body::lesson_file(bytes));
