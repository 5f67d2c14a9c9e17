//! Losses of elbows: one file an author or a kind, and the laws that a plan's elbows follow.

mod idelchik;
mod ito;
mod law;
mod linear;
mod method;
mod miller;
mod mitre;
mod rennels;

pub use idelchik::idelchik;
pub use ito::ito;
pub use law::{EXTENSION_SOURCE, ElbowLaw, TightQuarters};
pub use linear::LinearInFriction;
pub use method::{IDELCHIK_SOURCE, ITO_SOURCE, Method, MethodLaw, side_by_side, spread_of_methods};
pub use miller::Miller;
pub use mitre::{mitre, mitre_reynolds_factor};
pub use rennels::{RENNELS_SOURCE, rennels};
