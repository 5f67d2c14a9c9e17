//! Numerical tools: a bracketed root with a promised tolerance, and a low-discrepancy sample.
//!
//! Knows nothing of ducts.

mod root;
mod sobol;

pub use root::{RootError, root};
pub use sobol::{SOBOL_DIMENSIONS, Sobol};
