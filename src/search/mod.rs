//! Other routes for a run, and upgrades of the run as it is: what is asked, a stepper that works on
//! it in pieces, and suggestions held against the present run by the full model.
//!
//! Knows nothing of the page. A search is cancelled by dropping it.

mod choice;
mod labels;
mod request;
mod route;
mod space;
mod stepper;
mod suggestion;
mod track_graph;
mod upgrade;

pub use request::{Options, Request, Tracks};
pub use stepper::{Blocked, Progress, Reply, Search};
pub use suggestion::{Change, Figures, Suggestion};
