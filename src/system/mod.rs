//! The plan's elements become losses: the compiled run, the blower, the operating point, and the
//! ledger that every screen, sheet and file is fed from.
//!
//! Knows nothing of drawing or code.

mod assessment;
mod band;
mod blower;
mod compiled;
mod finding;
mod input;
mod ledger;
mod operating_point;

pub use assessment::{Assessment, assess};
pub use band::{BAND_SAMPLES, Band, Bands, bands};
pub use blower::Blower;
pub use compiled::{CompiledElement, CompiledRun, Driver, ElementKind, Evaluation};
pub use finding::Finding;
pub use input::{Draw, Input};
pub use ledger::{Ledger, LedgerRow};
pub use operating_point::{OperatingPoint, OperatingPointError, operating_point};
