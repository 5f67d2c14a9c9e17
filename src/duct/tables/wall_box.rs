//! The recessed box in the wall where the transition duct meets the duct in the wall.

use crate::source::{source, uncertain};

source! {
    /// The box spares the transition duct a squeeze; its own port costs about as much as a poor joint.
    pub static SOURCE {
        title: "Project assumption for the port of a recessed wall box; no measured figure was found",
        edition: "2026",
        locator: "K 0.10, believed from 0 to 0.3; a bend in the box is an element of its own",
        standing: Assumption,
    }
}

uncertain! {
    /// Loss coefficient on the duct's velocity pressure.
    pub const K {
        low: 0.0,
        likely: 0.1,
        high: 0.3,
        source: SOURCE,
    }
}
