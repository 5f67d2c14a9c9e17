//! The page, in two files: what the first look needs, and the rest.
//!
//! The one place with unsafe code: a macro makes the boundary between the two, and what crosses it are
//! calls of foreign functions.
#![allow(unsafe_code)]

use elbowroom::web::{REST, Rest};
use leptos::wasm_split::{SplitLoaderError, wasm_split};

#[allow(
    clippy::unnecessary_wraps,
    reason = "what can fail to be fetched gives a result"
)]
#[wasm_split(rest, wasm_split_path = leptos::wasm_split, fallible)]
fn rest() -> Result<&'static Rest, SplitLoaderError> {
    Ok(&REST)
}

fn main() {
    elbowroom::web::start(|| Box::pin(async { rest().await.ok() }));
}
