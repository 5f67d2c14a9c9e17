//! Two elbows close together: a wider band, never a claimed value.

use crate::source::{Coefficient, source};

source! {
    /// What is known of elbows in combination.
    pub static SOURCE {
        title: "Idelchik, Handbook of Hydraulic Resistance, elbows in combination; 180 deg bend formulas",
        edition: "3rd",
        locator: "folded into a U with no gap 0.6 to 0.8 of two apart; sharp ones in a Z up to 1.8 at 1.8 D and 1.05 at 10 D",
        standing: Memory,
    }
}

/// Elbows farther apart than this, in diameters, do not feel one another. Source: [`SOURCE`].
pub const FAR: f64 = 10.0;

/// How two elbows lie to one another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fold {
    /// Both turn the same way round.
    Same,
    /// The second turns back, and both are sharp.
    OppositeSharp,
    /// The second turns back, or turns out of the plane of the first.
    Other,
}

/// What the first elbow may do to the second's K when `gap` diameters lie between them: a factor
/// whose likely value is 1.
///
/// ```
/// use elbowroom::duct::tables::close_elbows::{factor, Fold};
/// assert_eq!(factor(Fold::Same, 0.0).low, 0.6);
/// assert_eq!(factor(Fold::OppositeSharp, 1.8).high, 1.8);
/// ```
pub fn factor(fold: Fold, gap: f64) -> Coefficient {
    /// The gap of the worst case of sharp elbows in a Z, and its factor and that at `FAR`.
    /// Source: [`SOURCE`].
    const WORST_GAP: f64 = 1.8;
    const SHARP: (f64, f64) = (1.8, 1.05);
    /// Our assumption for rounded elbows, for which no figure was found. Source: [`SOURCE`].
    const ROUNDED: f64 = 1.2;
    const FOLDED: f64 = 0.6;
    let near = (1.0 - gap / FAR).clamp(0.0, 1.0);
    let (low, high) = match fold {
        Fold::Same => (1.0 - (1.0 - FOLDED) * near, 1.0),
        Fold::OppositeSharp => {
            let along = ((gap - WORST_GAP) / (FAR - WORST_GAP)).clamp(0.0, 1.0);
            (1.0, SHARP.0 + (SHARP.1 - SHARP.0) * along)
        }
        Fold::Other => (
            1.0 - (1.0 - FOLDED) / 2.0 * near,
            1.0 + (ROUNDED - 1.0) * near,
        ),
    };
    Coefficient {
        low,
        likely: 1.0,
        high,
        source: &SOURCE,
    }
}
