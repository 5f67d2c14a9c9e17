#![no_main]

#[path = "../bodies/typed_length.rs"]
mod body;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| body::typed_length(bytes));
