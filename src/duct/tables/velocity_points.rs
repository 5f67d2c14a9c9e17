//! Where velocities are read in a duct, and what a reading at one point says of the mean.

use crate::source::{source, uncertain};

source! {
    /// The points of a traverse.
    pub static SOURCE {
        title: "ISO 5802, Industrial fans: performance testing in situ",
        edition: "2001",
        locator: "log-linear rule, six points on a diameter; the mean is that of the velocities",
        standing: Published,
    }
}

/// Six points on a diameter, as shares of it from one wall.
/// Source: [`SOURCE`].
pub const LOG_LINEAR_6: [f64; 6] = [0.032, 0.135, 0.321, 0.679, 0.865, 0.968];

source! {
    /// Of the two factors of the centre line, and of the error of a tap near a bend.
    pub static CENTRE_LINE_SOURCE {
        title: "Power-law profile of turbulent flow in a pipe (Bird, Stewart & Lightfoot, Transport Phenomena); taps near bends by our assumption",
        edition: "2002; 2026",
        locator: "mean over greatest velocity 2 n²/((n + 1)(2 n + 1)) with n about 7; widened where the profile is not grown",
        standing: Assumption,
    }
}

uncertain! {
    /// Mean over centre-line velocity after ten diameters of straight, Reynolds number 20,000 to 60,000.
    pub const CENTRE_AFTER_STRAIGHT {
        low: 0.79,
        likely: 0.81,
        high: 0.83,
        source: CENTRE_LINE_SOURCE,
    }
}

uncertain! {
    /// The same without that straight.
    pub const CENTRE {
        low: 0.75,
        likely: 0.85,
        high: 0.95,
        source: CENTRE_LINE_SOURCE,
    }
}

/// How far off a static pressure may read within [`NEAR_BEND_DIAMETERS`] after a bend, either way, in
/// velocity pressures. Source: [`CENTRE_LINE_SOURCE`].
pub const TAP_NEAR_BEND: f64 = 0.25;
/// How near is near. Source: [`CENTRE_LINE_SOURCE`].
pub const NEAR_BEND_DIAMETERS: f64 = 3.0;
