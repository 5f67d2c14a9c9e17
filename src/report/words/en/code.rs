//! The code check: sets, verdicts, the length rule, and code beside air.

use super::{element, element_size};
use crate::plan::RuleSetId;
use crate::report::words::first_letter::lower_first;
use crate::report::words::listing::those_so;
use crate::report::words::rule_figure::{Side, length_margin, parted};
use crate::rules::{DeductionNote, Doubt, Practice, Verdict};
use crate::system::ElementKind;
use crate::units::{Length, UnitSystem};
use std::fmt::Write;

pub(super) fn rule_set(set: RuleSetId) -> &'static str {
    match set {
        RuleSetId::Irc2021 => "IRC 2021, section M1502",
        RuleSetId::Irc2018 => "IRC 2018, section M1502",
        RuleSetId::Irc2015 => "IRC 2015, section M1502",
        RuleSetId::Irc2012 => "IRC 2012, section M1502",
        RuleSetId::IrcBefore2012 => "IRC before 2012",
        RuleSetId::Imc504 => "IMC, section 504",
        RuleSetId::Ifgc614 => "IFGC, section 614 (gas)",
        RuleSetId::Umc504 => "UMC and CMC, section 504",
        RuleSetId::DryerMaker => "Dryer maker's limit",
    }
}

pub(in crate::report::words) const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Meets => "Meets",
        Verdict::DoesNotMeet => "Does not meet",
        Verdict::CannotTell => "Cannot tell",
        Verdict::CheckOnSite => "Check on site",
    }
}

pub(super) fn doubt(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::RadiusBelowTable => {
            "An elbow's radius is under 4 in, or it has none: the table has no row for it, and its \
             deduction is at least the 4 in row's 5 ft."
        }
        Doubt::DiameterNotInTable => "The table is for 4 in duct only.",
        Doubt::FlexibleInRun => {
            "Flexible duct is used past the transition: codes do not allow it there, and the table \
             has no row for it."
        }
        Doubt::EstimatedLength => {
            "The limit lies within what is only estimated: measure the estimated or concealed \
             stretch to settle it."
        }
        Doubt::ElbowsOverlap => {
            "Elbows overlap as drawn, so the length is not one that can be built."
        }
        Doubt::AngleNotNamed => {
            "The rule set names nothing for an elbow of this angle; it is counted as nothing here."
        }
        Doubt::MakerElbowNotTyped => {
            "The dryer maker's deduction for an elbow was not typed; it is counted as nothing here."
        }
        Doubt::LimitNotTyped => "The dryer maker's length was not typed.",
    }
}

pub(super) fn deduction_note(note: DeductionNote) -> &'static str {
    match note {
        DeductionNote::NextSmallerRadius => "next smaller listed radius taken",
        DeductionNote::NextLargerAngle => "next larger listed angle taken",
        DeductionNote::OverNinety => "over 90°: a 90 and the rest",
        DeductionNote::AtLeast => "at least this: radius under the table",
        DeductionNote::InTheLimit => "one of the two 90s that the limit has in it",
        DeductionNote::NotNamed => "not named for this angle: counted as nothing",
    }
}

pub(super) fn code_length(units: UnitSystem, length: Length, limit: Option<Length>) -> String {
    let Some(limit) = limit else {
        return format!("{}, no limit typed", units.length(length));
    };
    format!(
        "{} of {}, {}",
        units.length(length),
        units.length(limit),
        spare(length_margin(units, length, limit))
    )
}

/// A margin as words: how much, and on which side of the limit.
pub(super) fn spare((margin, side): (String, Side)) -> String {
    let side = match side {
        Side::ToSpare => "to spare",
        Side::Over => "over",
        Side::Short => "short",
    };
    format!("{margin} {side}")
}

pub(super) fn practice(practice: Practice) -> &'static str {
    match practice {
        Practice::OverGrade => "Set the outlet at least 12 in (300 mm) above the ground.",
        Practice::Insulation => "Insulate duct in unheated spaces, to R-8.",
        Practice::Fall => {
            "Let the duct fall toward the outlet, with no dips where water can stand."
        }
    }
}

pub(super) fn times(factor: f64) -> String {
    if factor >= 10.0 {
        format!("{factor:.0} times")
    } else {
        format!("{factor:.1} times")
    }
}

pub(super) fn disagreement(
    units: UnitSystem,
    air: Length,
    code: Length,
    most: Option<(&ElementKind, Length, Length)>,
    uncounted: Option<(&ElementKind, Length)>,
) -> String {
    let length = |length: Length| units.equivalent_length(length).to_string();
    // Writing into a string cannot fail.
    let mut text = format!(
        "The air finds the run as long as {} of straight duct; the code counts {}.",
        length(air),
        length(code)
    );
    if let Some((kind, air, code)) = most {
        let (factor, air_is_more) = parted(air, code);
        let (more, less) = if air_is_more {
            ("air", "the code")
        } else {
            ("the code", "air")
        };
        let _ = write!(
            text,
            " They part most on {}: {} in air and {} in the code, {} as much by {more} as by {less}.",
            named(units, *kind),
            length(air),
            length(code),
            times(factor)
        );
    }
    if let Some((kind, air)) = uncounted {
        let _ = write!(
            text,
            " The code does not count {}, which costs {} in air.",
            named(units, *kind),
            length(air)
        );
    }
    text
}

/// An element in the middle of a sentence.
pub(super) fn named(units: UnitSystem, kind: ElementKind) -> String {
    let name = lower_first(element(kind));
    let size = element_size(units, kind);
    if size.is_empty() {
        format!("the {name}")
    } else {
        format!("the {name} ({size})")
    }
}

/// How many findings have each verdict, those with none of it left out.
pub(super) fn findings_count(meet: usize, not: usize, open: usize) -> String {
    let counts = [(meet, "met"), (not, "not met"), (open, "cannot be told")];
    those_so(counts.map(|(count, word)| (count > 0, format!("{count} {word}"))))
}
