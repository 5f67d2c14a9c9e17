//! Reroutes: a search over what is drawn, and what changing the present run would gain.
//!
//! The graph is sparse: its tracks lie where a duct can pass close to something (a face, a wall, a
//! bay's middle, an opening's limit, the present run), so no grid has to be fine enough for a gap.
//! `Search` is a stepper: whoever drives it decides how long, and it is cancelled by being dropped.
//! Everything that it offers was judged by the full model. Knows nothing of the page.

mod request;
pub use request::{Options, Request};

mod stepper;
pub use stepper::{Progress, Reply, Search};

mod candidate;
mod change;
mod gain;
mod suggestion;
pub use candidate::{Candidate, Figures};
pub use change::Change;
pub use gain::{Doubt, Gain};
pub use suggestion::{Blocked, Suggestion};

mod dryer_place;
mod routes;

mod blocker;
mod field;
mod frontier;
mod heading;
mod label;
mod moves;
mod outlet;
mod rates;
mod route;
mod terminal;
mod to_go;
mod tracks;

mod cut_corner;
mod long_radius;
mod move_dryer;
mod offset;
mod upgrade;

mod different;
mod legal;
mod ranked;
