//! A root between two bounds.

/// Halving alone needs about 60 steps from any bracket that a plan can give; the method needs
/// fewer than 15 on every curve of this project.
const MOST_STEPS: usize = 100;

/// Why no root was found.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum RootError {
    /// The function has the same sign at both bounds.
    NotBracketed {
        /// Its value at the lower bound.
        at_lower: f64,
        /// Its value at the upper bound.
        at_upper: f64,
    },
    /// The function gave a value that is not a number.
    NotANumber {
        /// Where it did.
        at: f64,
    },
}

/// A root of `function` between `lower` and `upper`, within `tolerance` of a sign change, by
/// inverse quadratic interpolation guarded by halving (T. R. Chandrupatla, "A new hybrid
/// quadratic/bisection algorithm for finding the zero of a nonlinear function", Advances in
/// Engineering Software 28 (1997) 145-149).
///
/// ```
/// let root = elbowroom::numeric::root(|x| x * x - 2.0, 0.0, 2.0, 1e-12)?;
/// assert!((root - 2.0_f64.sqrt()).abs() < 1e-12);
/// # Ok::<(), elbowroom::numeric::RootError>(())
/// ```
pub fn root(
    mut function: impl FnMut(f64) -> f64,
    lower: f64,
    upper: f64,
    tolerance: f64,
) -> Result<f64, RootError> {
    let mut valued = |x: f64| {
        let value = function(x);
        if value.is_nan() {
            Err(RootError::NotANumber { at: x })
        } else {
            Ok((x, value))
        }
    };
    let (mut a, mut b) = (valued(lower)?, valued(upper)?);
    if a.1 == 0.0 {
        return Ok(a.0);
    }
    if b.1 == 0.0 {
        return Ok(b.0);
    }
    if a.1.signum() == b.1.signum() {
        return Err(RootError::NotBracketed {
            at_lower: a.1,
            at_upper: b.1,
        });
    }
    let mut share = 0.5;
    for _ in 0..MOST_STEPS {
        let new = valued(a.0 + share * (b.0 - a.0))?;
        let c;
        if new.1.signum() == a.1.signum() {
            c = a;
        } else {
            c = b;
            b = a;
        }
        a = new;
        let best = if a.1.abs() < b.1.abs() { a } else { b };
        let span = (b.0 - a.0).abs();
        let near = tolerance.max(f64::EPSILON * best.0.abs()) / span;
        if best.1 == 0.0 || near > 0.5 {
            return Ok(best.0);
        }
        let xi = (a.0 - b.0) / (c.0 - b.0);
        let phi = (a.1 - b.1) / (c.1 - b.1);
        let curve_fits = phi * phi < xi && (1.0 - phi).powi(2) < 1.0 - xi;
        share = if curve_fits {
            a.1 / (b.1 - a.1) * c.1 / (b.1 - c.1)
                + (c.0 - a.0) / (b.0 - a.0) * a.1 / (c.1 - a.1) * b.1 / (c.1 - b.1)
        } else {
            0.5
        };
        share = share.clamp(near, 1.0 - near);
    }
    Ok(if a.1.abs() < b.1.abs() { a.0 } else { b.0 })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_steep_curve_is_found_within_the_promise() {
        let found = root(|x| (x - 1.0).powi(3), 0.0, 5.0, 1e-9);
        assert!(found.is_ok_and(|x| (x - 1.0).abs() < 1e-4));
        let found = root(|x| x.exp() - 100.0, 0.0, 20.0, 1e-12);
        assert!(found.is_ok_and(|x| (x - 100.0_f64.ln()).abs() < 2e-12));
    }

    #[test]
    fn no_sign_change_is_said() {
        assert!(matches!(
            root(|x| x * x + 1.0, -1.0, 1.0, 1e-9),
            Err(RootError::NotBracketed { .. })
        ));
    }
}
