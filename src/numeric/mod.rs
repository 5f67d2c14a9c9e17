//! Numerical tools: roots with a promised tolerance, and a low-discrepancy sample.
//!
//! Knows nothing of ducts.

mod falling_root;
mod interpolation;
mod root;
mod sobol;

pub use falling_root::falling_root;
pub use interpolation::bilinear;
pub use root::{RootError, root};
pub use sobol::{SOBOL_DIMENSIONS, Sobol};
