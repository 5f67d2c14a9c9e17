//! Numerical tools: a bracketed root with a promised tolerance, and a low-discrepancy sample.
//!
//! Knows nothing of ducts.

mod interpolation;
mod root;
mod sobol;

pub use interpolation::bilinear;
pub use root::{RootError, root};
pub use sobol::{SOBOL_DIMENSIONS, Sobol};
