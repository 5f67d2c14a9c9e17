//! A probability as a class that a language has a word for, and as a whole percent.

/// How sure something is.
#[derive(Clone, Copy)]
pub(super) enum Chance {
    AlmostSure,
    Likely,
    Possible,
    LessLikely,
    Unlikely,
    VeryUnlikely,
}

/// How a probability stands to the percent beside it.
#[derive(Clone, Copy)]
pub(super) enum Bound {
    /// It is less.
    Under,
    /// It is that.
    About,
    /// It is more.
    Over,
}

impl Chance {
    /// The class of `odds`, 0..1. Where the classes part is of the page's own choice.
    pub(super) fn of(odds: f64) -> Self {
        match odds {
            odds if odds >= 0.9 => Self::AlmostSure,
            odds if odds >= 0.6 => Self::Likely,
            odds if odds >= 0.3 => Self::Possible,
            odds if odds >= 0.1 => Self::LessLikely,
            odds if odds >= 0.02 => Self::Unlikely,
            _ => Self::VeryUnlikely,
        }
    }
}

/// `odds` in percent; never 0 or 100, which no reading can give.
pub(super) fn percent(odds: f64) -> (Bound, String) {
    if odds < 0.01 {
        (Bound::Under, "1 %".to_owned())
    } else if odds > 0.99 {
        (Bound::Over, "99 %".to_owned())
    } else {
        (Bound::About, format!("{:.0} %", odds * 100.0))
    }
}
