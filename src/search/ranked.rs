//! Places of a list in an order.

use core::cmp::Ordering;

/// `places` in an order, those that are alike as they were: one sorting for all that the search sorts
/// keeps the worker's program small.
pub(super) fn ranked(
    places: impl Iterator<Item = usize>,
    order: &dyn Fn(usize, usize) -> Ordering,
) -> Vec<usize> {
    let mut places: Vec<usize> = places.collect();
    sort(&mut places, order);
    places
}

fn sort(places: &mut [usize], order: &dyn Fn(usize, usize) -> Ordering) {
    places.sort_by(|one, other| order(*one, *other));
}
