/** The share `at` of `values`, straight between neighbours. */
export function percentile(values, at) {
  const sorted = [...values].sort((a, b) => a - b);
  const place = at * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below] + (sorted[above] - sorted[below]) * (place - below);
}
