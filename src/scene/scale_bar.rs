//! The length that a small scale bar stands for.

use crate::units::{Length, UnitSystem};

/// The longest bar, px.
const LONGEST: f64 = 90.0;
/// One, two and five times powers of ten, in feet or metres, from a tenth on; feet are halved and
/// quartered below one.
const US_CUSTOMARY_FEET: [f64; 10] = [0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0];
const SI_METRES: [f64; 10] = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0];

/// The greatest round length whose bar is short enough at `metres_per_pixel`; the least one where
/// none is.
pub fn scale_bar(units: UnitSystem, metres_per_pixel: f64) -> Length {
    let lengths = match units {
        UnitSystem::UsCustomary => US_CUSTOMARY_FEET.map(Length::from_feet),
        UnitSystem::Si => SI_METRES.map(Length::from_metres),
    };
    let longest = Length::from_metres(LONGEST * metres_per_pixel);
    let fitting = lengths.iter().rev().find(|length| **length <= longest);
    fitting.copied().unwrap_or(lengths[0])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_bar_is_round_and_fits() {
        let near = |a: Length, b: f64| (a.metres() - b).abs() < 1e-12;
        // 90 px of 1 cm are 0.9 m, 2.95 ft.
        assert!(near(scale_bar(UnitSystem::Si, 0.01), 0.5));
        assert!(near(scale_bar(UnitSystem::UsCustomary, 0.01), 0.6096));
        assert!(near(scale_bar(UnitSystem::Si, 1e-6), 0.1));
        assert!(near(scale_bar(UnitSystem::Si, 1e6), 100.0));
    }
}
