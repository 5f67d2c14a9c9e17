//! Values between the points of a table.

/// The value of a table at (`x`, `y`), straight in both directions between its points; its rim
/// holds beyond it. Each direction is given by its rising places and the place wanted; `at` gives
/// the table's value by row and column.
///
/// ```
/// let table = [[0.0, 1.0], [2.0, 3.0]];
/// let places = [0.0, 1.0];
/// let value = elbowroom::numeric::bilinear((&places, 0.5), (&places, 0.5), |row, column| table[row][column]);
/// assert_eq!(value, 1.5);
/// ```
pub fn bilinear(x: (&[f64], f64), y: (&[f64], f64), at: impl Fn(usize, usize) -> f64) -> f64 {
    let (row, down) = place(x.0, x.1);
    let (column, across) = place(y.0, y.1);
    let along = |row: usize| {
        let (left, right) = (at(row, column), at(row, column + 1));
        left + (right - left) * across
    };
    let (upper, lower) = (along(row), along(row + 1));
    upper + (lower - upper) * down
}

/// The place before `wanted` among two or more rising `places`, and how far `wanted` lies on the way
/// to the next, 0..1.
fn place(places: &[f64], wanted: f64) -> (usize, f64) {
    let before = places
        .partition_point(|place| *place <= wanted)
        .saturating_sub(1)
        .min(places.len() - 2);
    let (from, to) = (places[before], places[before + 1]);
    (before, ((wanted - from) / (to - from)).clamp(0.0, 1.0))
}
