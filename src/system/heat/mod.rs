//! Temperature, moisture and water along the run.
//!
//! The run is cut into stretches that lie in one surrounding (`stretch`), and the air is marched
//! along them (`march`). What comes of it is a `HeatProfile`, and the air's density element by
//! element for the pressures (`air_along`).

mod air_along;
mod at_airflow;
mod findings;
mod heat_run;
mod line;
mod low_point;
mod march;
mod profile;
mod stretch;
mod surroundings;
mod upgrade;

pub use air_along::{AirAlong, LocalAir};
pub use at_airflow::heat_at;
pub(super) use findings::findings;
pub(super) use heat_run::HeatRun;
pub use line::{HeatPoint, WetStretch, heat_line, wet_stretches};
pub use low_point::{LowPoint, low_points};
pub(super) use march::march;
pub use profile::{ElementHeat, HeatCell, HeatProfile};
pub use surroundings::{SURROUNDINGS_SOURCE, surrounding_temperature};
pub use upgrade::{InsulationUpgrade, insulated, insulation_resistance, insulation_that_dries};
