//! A blockage in a duct, and one at its end.

/// Loss of total pressure at a thin blockage with the free share `free` (above 0 to 1) of the duct's
/// area, in velocity pressures of the duct: K = (1 + 0.707 sqrt(1 - a) - a)² / a².
///
/// Source: [`SOURCE`](crate::duct::tables::blockage::SOURCE).
///
/// ```
/// use elbowroom::duct::blockage;
/// // a 0.5: (1 + 0.707 * 0.70711 - 0.5)² / 0.25 = 3.9993, worked by hand.
/// assert!((blockage::in_duct(0.5) - 3.9993).abs() < 1e-4);
/// assert_eq!(blockage::in_duct(1.0), 0.0);
/// ```
pub fn in_duct(free: f64) -> f64 {
    ((1.0 + 0.707 * (1.0 - free).sqrt() - free) / free).powi(2)
}

/// K of a termination whose opening is reduced to the free share `free`, from its K with the opening
/// whole: (1 + sqrt(K_b))² + (K - 1). A restriction at the end gets no velocity back.
///
/// ```
/// use elbowroom::duct::blockage;
/// assert_eq!(blockage::at_end(1.0, 2.0), 2.0);
/// // a 0.5: (1 + sqrt(3.9993))² + 1 = 9.9990 (worked by hand), a bare half-open end 8.999.
/// assert!((blockage::at_end(0.5, 2.0) - 9.9990).abs() < 1e-3);
/// ```
pub fn at_end(free: f64, whole: f64) -> f64 {
    (1.0 + in_duct(free).sqrt()).powi(2) + (whole - 1.0)
}
