//! The root of a falling function, from a start near it.

use super::{RootError, root};

/// From a start that is near enough a handful of secants will do. Of the computation.
const MOST_SECANTS: usize = 12;

/// Where `function`, which falls, is nought between `lower` and `upper`: secants from `start` and from the
/// place that `second` makes of the value there, which stay between what is known to be too little and too
/// much, and halve that where they would not. A curve on which these come to nothing is searched by
/// [`root`]. Within `tolerance` of what is found it changes its sign, and what is found is as a rule the
/// last place that was looked at; the bounds themselves are looked at only where the search is driven to
/// one.
///
/// ```
/// let beside = |_| 1.4;
/// let root = elbowroom::numeric::falling_root(|x| 2.0 - x * x, 1.3, beside, 0.0, 2.0, 1e-9)?;
/// assert!((root - 2.0_f64.sqrt()).abs() < 1e-11);
/// # Ok::<(), elbowroom::numeric::RootError>(())
/// ```
///
/// # Errors
///
/// `NotBracketed` where it is not nought between the bounds, `NotANumber` where it gives none.
pub fn falling_root(
    mut function: impl FnMut(f64) -> f64,
    start: f64,
    second: impl FnOnce(f64) -> f64,
    lower: f64,
    upper: f64,
    tolerance: f64,
) -> Result<f64, RootError> {
    /// The second place where `second` gives none on the root's side, as a share of the way to the
    /// bound. Of the computation.
    const BESIDE: f64 = 0.01;
    /// How far past a short secant the sign is looked for, as a share of the tolerance: farther than
    /// such a secant is wrong. Of the computation.
    const HAIR: f64 = 1e-3;
    let mut valued = |x: f64| {
        let value = function(x);
        if value.is_nan() {
            Err(RootError::NotANumber { at: x })
        } else {
            Ok(value)
        }
    };
    let (mut low, mut high) = (lower, upper);
    let mut before = start.clamp(lower, upper);
    let mut value_before = valued(before)?;
    let bound = if value_before > 0.0 {
        low = before;
        high
    } else {
        high = before;
        low
    };
    let mut at = second(value_before);
    if !(at > low && at < high) {
        at = before + (bound - before) * BESIDE;
    }
    for _ in 0..MOST_SECANTS {
        let value = valued(at)?;
        if value == 0.0 {
            return Ok(at);
        }
        if value > 0.0 {
            low = low.max(at);
        } else {
            high = high.min(at);
        }
        let secant = at - value * (at - before) / (value - value_before);
        (before, value_before) = (at, value);
        if secant > low && secant < high {
            if (secant - at).abs() < tolerance {
                // A short secant proves nothing where the curve bends: another sign past it does.
                let past = secant + tolerance * HAIR * value.signum();
                let past = past.clamp(lower, upper);
                let value_past = valued(past)?;
                if value_past * value <= 0.0 {
                    return Ok(past);
                }
                if value_past > 0.0 {
                    low = low.max(past);
                } else {
                    high = high.min(past);
                }
                at = (past + tolerance * value.signum()).clamp(lower, upper);
            } else {
                at = secant;
            }
        } else {
            at = f64::midpoint(low, high);
        }
    }
    root(function, low, high, tolerance)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Like blower and run: a curve that falls from a head and one that rises with a power.
    #[test]
    fn it_finds_what_the_bracketed_root_finds() {
        for head in [0.1, 3.0, 250.0] {
            for power in [1.0, 1.85, 2.0, 5.0] {
                for start in [1e-3, 0.2, 0.9, 1.0] {
                    let spare = |x: f64| head - 40.0 * x.powf(power) - head * x * x;
                    let own = falling_root(spare, start, |_| start, 0.0, 1.0, 1e-9);
                    let bracketed = root(spare, 0.0, 1.0, 1e-12);
                    let is_same = own
                        .and_then(|own| Ok((own - bracketed?).abs() < 1e-9))
                        .unwrap_or(false);
                    assert!(is_same, "{head} {power} {start}: {own:?} {bracketed:?}");
                }
            }
        }
    }

    #[test]
    fn a_steep_and_a_stepped_curve_are_found() {
        let steep = falling_root(|x| (0.3 - x).powi(9), 0.9, |_| 0.5, 0.0, 1.0, 1e-9);
        assert!(
            steep.is_ok_and(|found| (found - 0.3).abs() < 1e-9),
            "{steep:?}"
        );
        let step = |x: f64| if x < 0.3 { 1.0 } else { -1.0 };
        let step = falling_root(step, 0.9, |_| 0.5, 0.0, 1.0, 1e-9);
        assert!(
            step.is_ok_and(|found| (found - 0.3).abs() < 1e-9),
            "{step:?}"
        );
    }

    #[test]
    fn without_a_root_it_says_so() {
        for constant in [1.0, -1.0] {
            let found = falling_root(|x| constant - 1e-3 * x, 0.5, |_| 0.6, 0.0, 1.0, 1e-9);
            assert!(
                matches!(found, Err(RootError::NotBracketed { .. })),
                "{found:?}"
            );
        }
        let found = falling_root(|_| f64::NAN, 0.5, |_| 0.6, 0.0, 1.0, 1e-9);
        assert!(
            matches!(found, Err(RootError::NotANumber { .. })),
            "{found:?}"
        );
    }
}
