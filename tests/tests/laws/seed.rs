//! One seed a run, printed, so that a failure can be run again.

use proptest::test_runner::{Config, RngSeed};
use std::hash::{BuildHasher, Hasher, RandomState};

/// The settings of a law: those of the environment, with a seed that is printed.
pub(crate) fn config() -> Config {
    let mut config = Config::default();
    let seed = match config.rng_seed {
        RngSeed::Fixed(seed) => seed,
        // The standard library's own hash keys are the one source of chance at hand.
        RngSeed::Random => RandomState::new().build_hasher().finish(),
    };
    config.rng_seed = RngSeed::Fixed(seed);
    println!("PROPTEST_RNG_SEED={seed} PROPTEST_CASES={}", config.cases);
    config
}
