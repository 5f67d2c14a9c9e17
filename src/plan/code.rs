//! The document's choice of code: the rule set, how it is read, the dryer maker's limits, and what
//! was seen on site. Names alone; the facts stand in `rules`.

use super::RuleTopic;
use crate::units::{Length, Pressure};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// The rule set and how it is read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CodeChoice {
    /// Which rules apply; the user picks, nothing is guessed from a place.
    pub rule_set: RuleSetId,
    /// Whether the path through a fitting counts as length beside its deduction.
    pub path_through_fittings_counts: bool,
    /// What the dryer's maker allows, as far as it was typed.
    #[serde(
        default,
        skip_serializing_if = "MakerLimits::is_empty",
        deserialize_with = "super::only_object::read"
    )]
    pub maker: MakerLimits,
    /// The rules that somebody looked at on site and found kept.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub seen_on_site: BTreeSet<RuleTopic>,
}

impl CodeChoice {
    /// A rule set in its stricter reading, with nothing typed and nothing seen.
    pub const fn of(rule_set: RuleSetId) -> Self {
        Self {
            rule_set,
            path_through_fittings_counts: true,
            maker: MakerLimits {
                length: None,
                at_45: None,
                at_90: None,
                back_pressure: None,
            },
            seen_on_site: BTreeSet::new(),
        }
    }
}

/// What the dryer's maker allows; nothing is known until it is typed.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MakerLimits {
    /// The longest exhaust duct.
    #[serde(rename = "length_m", default, skip_serializing_if = "Option::is_none")]
    pub length: Option<Length>,
    /// What a 45 deg elbow takes off it.
    #[serde(
        rename = "deduction_45_m",
        default,
        skip_serializing_if = "Option::is_none"
    )]
    pub at_45: Option<Length>,
    /// What a 90 deg elbow takes off it.
    #[serde(
        rename = "deduction_90_m",
        default,
        skip_serializing_if = "Option::is_none"
    )]
    pub at_90: Option<Length>,
    /// The greatest static pressure at the dryer's outlet.
    #[serde(
        rename = "back_pressure_pa",
        default,
        skip_serializing_if = "Option::is_none"
    )]
    pub back_pressure: Option<Pressure>,
}

impl MakerLimits {
    fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// The rule sets that can be picked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum RuleSetId {
    /// International Residential Code 2021.
    #[serde(rename = "irc_2021")]
    Irc2021,
    /// International Residential Code 2018.
    #[serde(rename = "irc_2018")]
    Irc2018,
    /// International Residential Code 2015.
    #[serde(rename = "irc_2015")]
    Irc2015,
    /// International Residential Code 2012.
    #[serde(rename = "irc_2012")]
    Irc2012,
    /// An International Residential Code before 2012.
    #[serde(rename = "irc_before_2012")]
    IrcBefore2012,
    /// International Mechanical Code, section 504.
    #[serde(rename = "imc_504")]
    Imc504,
    /// International Fuel Gas Code, section 614.
    #[serde(rename = "ifgc_614")]
    Ifgc614,
    /// Uniform Mechanical Code and California Mechanical Code, section 504.
    #[serde(rename = "umc_504")]
    Umc504,
    /// The dryer maker's own limits.
    #[serde(rename = "dryer_maker")]
    DryerMaker,
}
