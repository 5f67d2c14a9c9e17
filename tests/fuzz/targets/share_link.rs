#![no_main]

#[path = "../bodies/share_link.rs"]
mod body;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| body::share_link(bytes));
