//! Properties over random values: the same values every time, ten times as many on request.

use proptest::strategy::Strategy;
use proptest::test_runner::{Config, RngAlgorithm, TestCaseResult, TestRng, TestRunner};

/// What the random values are drawn from; any other seed is as good.
const SEED: [u8; 32] = *b"elbowroom: a seed of thirty-two.";
/// How many times as many cases are tried when `ELBOWROOM_FULL=1` stands in the environment.
const FULL: u32 = 10;

/// Tries `property` on `cases` values of `strategy` and fails with the smallest value found that
/// breaks it.
pub fn check<S: Strategy>(cases: u32, strategy: &S, property: impl Fn(S::Value) -> TestCaseResult) {
    let full = std::env::var("ELBOWROOM_FULL").is_ok_and(|value| value == "1");
    let config = Config {
        cases: if full { cases * FULL } else { cases },
        failure_persistence: None,
        ..Config::default()
    };
    let random = TestRng::from_seed(RngAlgorithm::ChaCha, &SEED);
    let outcome = TestRunner::new_with_rng(config, random).run(strategy, property);
    if let Err(error) = outcome {
        panic!("{error}");
    }
}
