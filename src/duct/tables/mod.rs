//! Published figures, one file a publication or a kind of part, each with its source.

pub mod blower;
pub mod mitre_reynolds;
pub mod rigid_duct;
pub mod segmented_elbow;
pub mod wall_hood;
