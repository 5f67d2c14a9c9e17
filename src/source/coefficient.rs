//! A number's source and standing, and an uncertain number as low, likely and high.

use serde::Serialize;

/// How much a number can be leaned on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// In a standard, handbook or paper that the locator points into.
    Published,
    /// Published, but read in another text that reports it.
    SecondHand,
    /// What the trade does, with no source that could be cited.
    CommonPractice,
    /// Chosen by this project for want of a figure.
    Assumption,
    /// Held to be published, but known from memory alone.
    Memory,
    /// Typed by the user.
    Typed,
}

/// One citation.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Source {
    /// Author and title, or what is assumed.
    pub title: &'static str,
    /// Edition or year.
    pub edition: &'static str,
    /// Page, table, equation or diagram; for an assumption, what it rests on.
    pub locator: &'static str,
    /// How much it can be leaned on.
    pub standing: Standing,
}

/// An uncertain number: the least, the likeliest and the greatest value that is believable, and
/// where they come from.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Coefficient {
    /// The least believable value.
    pub low: f64,
    /// The value that every likely figure is computed with.
    pub likely: f64,
    /// The greatest believable value.
    pub high: f64,
    /// Where the three come from.
    pub source: &'static Source,
}

impl Coefficient {
    /// The value below which the share `quantile` (0..1) of a triangular distribution over low,
    /// likely and high lies. A likely value outside low..high is pulled in first.
    ///
    /// ```
    /// use elbowroom::duct::tables::rigid_duct::ROUGHNESS;
    /// assert_eq!(ROUGHNESS.at(0.0), ROUGHNESS.low);
    /// assert_eq!(ROUGHNESS.at(1.0), ROUGHNESS.high);
    /// ```
    pub fn at(&self, quantile: f64) -> f64 {
        let width = self.high - self.low;
        if width <= 0.0 {
            return self.likely;
        }
        let rise = (self.likely - self.low).clamp(0.0, width);
        if quantile * width <= rise {
            self.low + (quantile * width * rise).sqrt()
        } else {
            self.high - ((1.0 - quantile) * width * (width - rise)).sqrt()
        }
    }
}
