//! Published figures, one file a publication or a kind of part, each with its source.

pub mod blockage;
pub mod blower;
pub mod carry_speed;
pub mod close_elbows;
pub mod cycle_phase;
pub mod emissivity;
pub mod fault_odds;
pub mod flexible_duct;
pub mod insulation;
pub mod leak;
pub mod make_up_air;
pub mod miller_bend;
pub mod mitre_reynolds;
pub mod rigid_duct;
pub mod segmented_elbow;
pub mod sharp_mitre;
pub mod site_reading;
pub mod termination;
pub mod test_effort;
pub mod trade_parts;
pub mod velocity_points;
pub mod wall_box;
