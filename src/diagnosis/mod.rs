//! What readings mean: the clean prediction beside each, the odds of every fault from all of them
//! together, and the test that tells the most next.
//!
//! Knows nothing of the page.

mod before_after;
mod blower_fit;
mod cause;
mod clean;
mod curves;
mod evidence;
mod gaussian;
mod information;
mod limit;
mod model;
mod next_test;
mod odds;
mod particle;
mod plausible;
mod predict;
mod run_air;
mod temperatures;
mod test;
mod visit_meaning;
mod weigh;

pub use before_after::{BeforeAfter, before_and_after};
pub use blower_fit::{BlowerFit, fit_blower};
pub use cause::{Cause, CauseKind};
pub use clean::{CLEAN_DRAWS, CleanReading, clean_plan, clean_readings};

pub use limit::{AgainstLimit, against_limit};
pub use model::reachable_joints;
pub use odds::{CauseOdds, Caveat, Diagnosis, Explained, diagnose};
pub use plausible::{Objection, Plausibility, plausibility};
pub use test::{Suggestion, Test, TestCaution};
pub use visit_meaning::{VisitMeaning, visit_meaning};
