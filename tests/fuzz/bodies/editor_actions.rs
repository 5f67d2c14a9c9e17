//! Any bytes as what a person does: each eight of them are the seed of one of the random actions of the
//! property tests, and the same model watches. So the fuzzer repeats, swaps and joins sequences of
//! actions, and what it keeps is a sequence that led somewhere new.

use crate::editor_actions::step;
use crate::editor_model::Watched;
use crate::example_file::example;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};

/// The most steps of one sequence.
const MOST_STEPS: usize = 40;
/// Bytes of a step.
const A_STEP: usize = 8;
/// Bytes of a seed.
const SEED: usize = 32;

/// Fails by a panic.
pub fn editor_actions(bytes: &[u8]) {
    let steps = step();
    let mut watched = Watched::new(example());
    for bytes in bytes.chunks_exact(A_STEP).take(MOST_STEPS) {
        let mut seed = [0; SEED];
        seed[..A_STEP].copy_from_slice(bytes);
        let random = TestRng::from_seed(RngAlgorithm::ChaCha, &seed);
        let mut runner = TestRunner::new_with_rng(Config::default(), random);
        let tree = steps.new_tree(&mut runner).expect("no step is refused");
        let action = tree.current().action(&watched.state);
        if let Err(error) = watched.take(&action) {
            panic!("{action:?}: {error}");
        }
    }
}
