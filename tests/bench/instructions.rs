//! Evaluates the run of 20 elements as often as the argument says, and does nothing else:
//! `instructions.mjs` counts the instructions of two such runs and takes the difference.

#![allow(clippy::expect_used, reason = "a bench stops at what it cannot read")]

mod twenty;

use std::hint::black_box;

fn main() {
    // `cargo bench` gives an argument that is no number.
    let times = std::env::args()
        .nth(1)
        .and_then(|argument| argument.parse().ok())
        .unwrap_or(1_u32);
    let run = twenty::run();
    for _ in 0..times {
        black_box(twenty::evaluate(black_box(&run)));
    }
}
