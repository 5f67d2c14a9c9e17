//! Where a number comes from, and how sure it is.
//!
//! Knows nothing of formulas.

mod coefficient;
mod declare;
mod reach;

pub use coefficient::{Coefficient, Source, Standing};
pub(crate) use declare::{source, uncertain};
pub use reach::{Ranged, Reach};
