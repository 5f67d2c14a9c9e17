//! What a class guessed, beside the figure.

/// How guesses spread, and where the figure lies among them; all in one unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GuessSpread {
    /// How many guesses there are.
    pub count: usize,
    /// The least.
    pub least: f64,
    /// The one in the middle; of an even count the mean of the two there.
    pub median: f64,
    /// The greatest.
    pub greatest: f64,
    /// How many lie below the figure.
    pub below: usize,
    /// How many lie above it.
    pub above: usize,
}

impl GuessSpread {
    /// The spread of `guesses` about `figure`; none without a guess.
    ///
    /// ```
    /// use elbowroom::report::GuessSpread;
    /// let spread = GuessSpread::of(&[140.0, 90.0, 120.0, 100.0], 118.0).expect("four guesses");
    /// assert_eq!((spread.least, spread.median, spread.greatest), (90.0, 110.0, 140.0));
    /// assert_eq!((spread.below, spread.above), (2, 2));
    /// ```
    pub fn of(guesses: &[f64], figure: f64) -> Option<Self> {
        let mut sorted = guesses.to_vec();
        sorted.sort_by(f64::total_cmp);
        let (least, greatest) = (*sorted.first()?, *sorted.last()?);
        let count = sorted.len();
        let upper = sorted[count / 2];
        let median = if count.is_multiple_of(2) {
            f64::midpoint(sorted[count / 2 - 1], upper)
        } else {
            upper
        };
        Some(Self {
            count,
            least,
            median,
            greatest,
            below: sorted.iter().filter(|guess| **guess < figure).count(),
            above: sorted.iter().filter(|guess| **guess > figure).count(),
        })
    }
}
