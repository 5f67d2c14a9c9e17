//! A label: one way of having come to a station.

use super::field::Station;
use super::heading::Way;
use super::rates::Rates;
use super::terminal::Terminal;

/// A straight longer by less than this, m, is not longer: sums in another order. Of the computation.
const ROUNDING: f64 = 1e-11;

/// A way of having come to a station on a heading. Loss is not one number here, because it hangs on
/// the airflow and the code counts elbows otherwise: straight length and elbows stay apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Label {
    pub station: Station,
    pub way: Way,
    /// Set where the run ends with this label.
    pub terminal: Option<Terminal>,
    /// Straight duct so far, the tangents of every bend so far taken off, m.
    pub straight: f64,
    /// How much of the leg under way is left for the next bend's tangent, m; capped at a 90's.
    pub spare: f64,
    /// The turn at the outlet where that faces none of the eight ways, rad.
    pub outlet_turn: f64,
    /// The way on which it left the outlet.
    pub outlet_way: Way,
    /// Elbows of 45 deg so far.
    pub at_45: u8,
    /// Elbows of 90 deg so far, those of risers too.
    pub at_90: u8,
    /// Whether the run has gone straight out of the dryer so far.
    pub is_first_leg: bool,
    /// The label that it came from.
    pub before: Option<u32>,
}

impl Label {
    /// Whether whatever can follow `other` can follow this at no more of anything.
    pub(super) fn is_no_worse_than(&self, other: &Self) -> bool {
        self.straight <= other.straight + ROUNDING
            && self.at_45 <= other.at_45
            && self.at_90 <= other.at_90
            && self.outlet_turn <= other.outlet_turn
            && self.spare >= other.spare - ROUNDING
    }

    /// What it has lost at the airflow of `rates`, Pa.
    pub(super) fn loss(&self, rates: &Rates) -> f64 {
        self.straight * rates.straight
            + f64::from(self.at_45) * rates.at_45
            + f64::from(self.at_90) * rates.at_90
            + rates.at_outlet[usize::from(self.outlet_way.0)]
    }
}
