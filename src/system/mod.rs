//! The plan's elements become losses: the compiled run, the blower, the operating point, heat and
//! moisture, and the ledger that every screen, sheet and file is fed from.
//!
//! Knows nothing of drawing or code.

mod assessment;
mod band;
mod blower;
mod bore;
mod compile;
mod compiled;
mod element;
mod finding;
mod heat;
mod input;
mod law;
mod ledger;
mod operating_point;
mod phase;
mod pressure_line;
mod share;
mod sources;

pub use assessment::{Assessment, assess};
pub use band::{
    BAND_SAMPLES, Band, BandDetail, Bands, DETAIL_SAMPLES, Drawn, ElementBands, band_detail, bands,
    bands_solved_anew,
};
pub use blower::Blower;
pub use bore::{Bore, State};
pub use compiled::{CompiledRun, Driver, Evaluation};
pub use element::{CompiledElement, ElementKind};
pub use finding::Finding;
pub use heat::{
    AirAlong, ElementHeat, HeatCell, HeatPoint, HeatProfile, InsulationUpgrade, LocalAir, LowPoint,
    SURROUNDINGS_SOURCE, WetStretch, heat_at, heat_line, insulated, insulation_resistance,
    insulation_that_dries, low_points, surrounding_temperature, wet_stretches,
};
pub use input::{COEFFICIENTS, Draw, EACH_ELEMENT_SOURCE, INPUTS, USER_SOURCE};
pub use ledger::{Ledger, LedgerRow};
pub use operating_point::{OperatingPoint, OperatingPointError, operating_point};
pub use phase::exhaust_in;
pub use pressure_line::{PressurePoint, pressure_line};
pub use share::{LEAST_SHARE, Share};
pub use sources::{SOURCES, Subject, subject_of};
