//! What heat and moisture give reason to remark on.

use super::{HeatProfile, low_points, wet_stretches};
use crate::duct::tables::carry_speed;
use crate::system::ledger::Ledger;
use crate::system::{CompiledRun, ElementKind, Finding};
use crate::units::Temperature;

/// Wet walls, dips, slow air, and upsizing that makes it slow.
pub(in crate::system) fn findings(
    run: &CompiledRun,
    ledger: &Ledger,
    profile: Option<&HeatProfile>,
) -> Vec<Finding> {
    let mut found = Vec::new();
    if let Some(profile) = profile {
        let wet = wet_stretches(run, profile).into_iter();
        found.extend(wet.map(|stretch| Finding::WetWall {
            freezes: stretch.coldest_wall < Temperature::from_celsius(0.0),
            stretch,
        }));
    }
    let dips = low_points(run, profile).into_iter();
    found.extend(dips.map(Finding::Dip));
    let carry = carry_speed::COMMON_PRACTICE;
    let straights = ledger
        .rows
        .iter()
        .filter(|row| matches!(row.element.kind, ElementKind::Straight { .. }));
    let slowest = straights.min_by(|a, b| {
        let (a, b) = (a.state.velocity, b.state.velocity);
        a.metres_per_second().total_cmp(&b.metres_per_second())
    });
    if let Some(row) = slowest.filter(|row| row.state.velocity < carry) {
        found.push(Finding::SlowAir {
            element: row.element.id.clone(),
            velocity: row.state.velocity,
            carries: carry,
        });
    }
    for pair in ledger.rows.windows(2) {
        let [change, after] = pair else { continue };
        let wider = matches!(change.element.kind, ElementKind::AreaChange { area_ratio } if area_ratio > 1.0);
        if wider {
            found.push(Finding::UpsizingSlows {
                element: change.element.id.clone(),
                before: change.state.velocity,
                after: after.state.velocity,
            });
        }
    }
    found
}
