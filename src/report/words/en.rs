//! American English.

use super::{ActionName, Caution, Label, Message, Refusal};
use crate::plan::{ElbowKind, Field, FileError, Flow, RuleSetId, TerminationKind, ValueError};
use crate::rules::{DeductionNote, Doubt, Verdict};
use crate::scene::Text;
use crate::source::{Reach, Standing};
use crate::system::{ElementKind, Finding};
use crate::units::{Length, LengthTextError, UnitSystem};

pub(super) fn text(units: UnitSystem, message: Message<'_>) -> String {
    match message {
        Message::Label(key) => label(key).to_owned(),
        Message::ActionName(name) => action_name(name).to_owned(),
        Message::Refusal(refusal) => self::refusal(refusal),
        Message::Caution(caution) => self::caution(caution).to_owned(),
        Message::Element(kind) => element(*kind).to_owned(),
        Message::ElementSize(kind) => element_size(units, *kind),
        Message::Drawing(text) => drawing(units, text),
        Message::Finding(finding) => self::finding(units, finding),
        Message::Verdict(verdict) => self::verdict(verdict).to_owned(),
        Message::Doubt(doubt) => self::doubt(doubt).to_owned(),
        Message::DeductionNote(note) => deduction_note(note).to_owned(),
        Message::CodeLength { length, limit, margin } => code_length(units, length, limit, margin),
        Message::RuleSet(RuleSetId::Irc2021) => "IRC 2021, section M1502".to_owned(),
        Message::Flow(Flow::TypicalBlower {}) => label(Label::DriverTypicalBlower).to_owned(),
        Message::Flow(Flow::StatedAirflow { airflow }) => {
            format!("Stated airflow, {}", units.airflow(*airflow))
        }
        Message::Standing(standing) => self::standing(standing).to_owned(),
        Message::Reach(reach) => self::reach(reach).to_owned(),
        Message::Band { low, high } => format!("{low} to {high}"),
        Message::NewTotals { airflow, back_pressure } => {
            format!("Airflow {airflow}, back pressure {back_pressure}.")
        }
        Message::Dominant { element, share, equivalent_length, code_deduction } => {
            dominant(units, *element, share, equivalent_length, code_deduction)
        }
        Message::LengthText(error) => length_text(units, error),
        Message::NotANumber { text } => {
            format!("“{text}” is not a number. Write it like 120 or 12.5.")
        }
        Message::File(error) => file(error),
    }
}

#[allow(clippy::too_many_lines, reason = "one line a key")]
fn label(key: Label) -> &'static str {
    match key {
        Label::ProgramName => "Elbowroom",
        Label::Tagline => "What a dryer's exhaust run costs, bend by bend",
        Label::ExampleTitle => "Example: laundry with a chimney breast",
        Label::ExampleNote => "An invented room and run, to be pulled about.",
        Label::ExampleObstacle => "Chimney breast",
        Label::BlankTitle => "New plan",
        Label::OpenExample => "Example",
        Label::OpenBlank => "Start blank",
        Label::OpenFile => "Open file",
        Label::SaveFile => "Save file",
        Label::SaveDrawing => "Save drawing",
        Label::Undo => "Undo",
        Label::Redo => "Redo",
        Label::Units => "Units",
        Label::UnitsUsCustomary => "ft, in. w.c., cfm",
        Label::UnitsSi => "m, Pa, L/s",
        Label::Drawing => "Drawing",
        Label::DrawingHint => "Drag a round corner to move it. Pull a small diamond to make a bend.",
        Label::DrawingKeys => {
            "With the drawing focused: N and P select the next and previous element, arrow keys move \
             a selected corner (with Shift by a larger step), B makes a bend on a selected leg, \
             Delete removes a selected bend, Escape lets go."
        }
        Label::ZoomIn => "Zoom in",
        Label::ZoomOut => "Zoom out",
        Label::ZoomFit => "Show all",
        Label::Totals => "Clean run",
        Label::Airflow => "Airflow",
        Label::BackPressure => "Back pressure",
        Label::BackPressureHint => "static, at the dryer's outlet",
        Label::Velocity => "Velocity",
        Label::CodeLength => "Code length",
        Label::DevelopedLength => "Developed length",
        Label::EquivalentLength => "Equivalent length",
        Label::NoAirflowFigure => "no airflow",
        Label::Likely => "likely",
        Label::BandPending => "working out the band",
        Label::BandMeaning => {
            "Figures are likely values with a band below: 8 of 10 combinations of the uncertain \
             inputs fall inside it. Hood and blower are assumptions; no open measurement was found."
        }
        Label::Ledger => "Ledger",
        Label::LedgerInRunOrder => "Run order",
        Label::LedgerRanked => "Costliest first",
        Label::LedgerOrder => "Order",
        Label::ColumnElement => "Element",
        Label::ColumnSize => "Size",
        Label::ColumnLoss => "Loss",
        Label::ColumnShare => "Share",
        Label::ColumnCodeDeduction => "Code deduction",
        Label::ColumnRank => "Rank",
        Label::ColumnSum => "Whole run",
        Label::Selected => "Selected",
        Label::NothingSelected => "Select a leg, an elbow or the hood on the drawing or in the ledger to change it.",
        Label::LegLength => "Leg length, corner to corner",
        Label::LegLengthHint => "Everything after the leg moves along.",
        Label::RiseHere => "Rise here",
        Label::RiseHint => "0 for none; a minus makes a drop.",
        Label::ElbowKind => "Elbow",
        Label::ElbowAfterRiserKind => "Elbow after the riser",
        Label::ElbowSegmented => "Segmented (adjustable)",
        Label::ElbowSmooth => "Smooth",
        Label::ElbowRadius => "Centre-line radius",
        Label::InsertBend => "Make a bend in this leg",
        Label::DeleteBend => "Remove this bend",
        Label::LossCoefficient => "Loss coefficient K",
        Label::Roughness => "Wall roughness",
        Label::SourceHeading => "Source",
        Label::AirAndSite => "Air and site",
        Label::AirDriver => "What moves the air",
        Label::DriverTypicalBlower => "Typical full-size blower (assumed)",
        Label::DriverStated => "An airflow that I state",
        Label::Altitude => "Altitude",
        Label::OutdoorTemperature => "Outdoor temperature",
        Label::ExhaustTemperature => "Exhaust temperature",
        Label::CodeCheck => "Code check",
        Label::RuleSet => "Rule set",
        Label::PathThroughFittings => "The path through elbows counts as length too (the stricter reading)",
        Label::MeasuredLength => "Measured length",
        Label::Deductions => "Deductions for elbows",
        Label::CodeSourceNote => {
            "Table M1502.4.6.1; the rows for 8 in radius at 90° and for 10 in were read at second \
             hand. The locally adopted code and the dryer maker's instructions decide."
        }
        Label::Findings => "Remarks",
        Label::Cautions => "Cautions",
        Label::ScopeNote => {
            "Not covered: booster fans, shafts shared by several dryers, dryers without a vent."
        }
        Label::Dismiss => "Close",
        Label::Legend => "Share of the loss",
        Label::LegendLow => "little",
        Label::LegendHigh => "most",
        Label::ShareOfLoss => "share of the loss",
    }
}

fn action_name(name: ActionName) -> &'static str {
    match name {
        ActionName::MoveCorner => "move corner",
        ActionName::MoveTermination => "move termination",
        ActionName::InsertBend => "make bend",
        ActionName::DeleteBend => "remove bend",
        ActionName::SetLegLength => "set leg length",
        ActionName::SetRise => "set rise",
        ActionName::SetElbow => "change elbow",
        ActionName::SetAir => "change air or site",
        ActionName::SetCode => "change code reading",
        ActionName::OpenPlan => "open plan",
    }
}

fn caution(caution: Caution) -> &'static str {
    match caution {
        Caution::LintBurns => {
            "Lint burns. A dryer's exhaust run is kept clean from lint screen to hood."
        }
        Caution::OutdoorsOnly => {
            "Exhaust goes outdoors and nowhere else, with no screen on the termination, and no \
             plastic or foil duct inside walls."
        }
        Caution::GasExhaust => {
            "A gas dryer's exhaust carries combustion products. If it is blocked, carbon monoxide \
             can enter the house: stop the dryer, ventilate, have it serviced."
        }
        Caution::BeforeOpening => {
            "Disconnect power, and shut the gas, before a dryer is moved or its run opened. Take \
             care at height."
        }
        Caution::CodeDecides => {
            "The locally adopted code, the dryer maker's instructions and licensed trades decide, \
             not this page."
        }
    }
}

fn element(kind: ElementKind) -> &'static str {
    match kind {
        ElementKind::Straight { .. } => "Straight, rigid duct",
        ElementKind::Elbow { elbow: ElbowKind::Smooth, .. } => "Smooth elbow",
        ElementKind::Elbow { elbow: ElbowKind::Segmented, .. } => "Segmented elbow",
        ElementKind::Termination { termination: TerminationKind::WallHood } => "Wall hood",
    }
}

fn element_size(units: UnitSystem, kind: ElementKind) -> String {
    match kind {
        ElementKind::Straight { length, .. } => units.length(length).to_string(),
        ElementKind::Elbow { angle, radius, .. } => {
            format!("{:.0}°, radius {}", angle.degrees(), small(units, radius))
        }
        ElementKind::Termination { .. } => String::new(),
    }
}

/// A part's size: inches alone or millimetres, without feet.
fn small(units: UnitSystem, length: Length) -> String {
    match units {
        UnitSystem::UsCustomary => {
            let inches = (length.inches() * 100.0).round() / 100.0;
            format!("{inches} in")
        }
        UnitSystem::Si => format!("{:.0} mm", length.metres() * 1000.0),
    }
}

fn drawing(units: UnitSystem, text: &Text) -> String {
    match text {
        Text::LegLength(length) => units.length(*length).to_string(),
        Text::Rise(rise) if *rise < Length::ZERO => format!("down {}", units.length(-*rise)),
        Text::Rise(rise) => format!("up {}", units.length(*rise)),
        Text::Rank(rank) => rank.to_string(),
        Text::Dryer => "Dryer".to_owned(),
        Text::Name(name) => name.clone(),
    }
}

fn dominant(
    units: UnitSystem,
    element: ElementKind,
    share: f64,
    equivalent_length: Length,
    code_deduction: Option<Length>,
) -> String {
    let name = self::element(element);
    let size = element_size(units, element);
    let comma = if size.is_empty() { "" } else { ", " };
    let costs = format!(
        "Costliest: {name}{comma}{size}. It takes {:.0} % of the loss, as much as {} of straight duct",
        share * 100.0,
        units.equivalent_length(equivalent_length)
    );
    match code_deduction {
        Some(deduction) => format!(
            "{costs}; the code deducts {}.",
            units.equivalent_length(deduction)
        ),
        None => format!("{costs}."),
    }
}

fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Meets => "Meets",
        Verdict::DoesNotMeet => "Does not meet",
        Verdict::CannotTell => "Cannot tell",
    }
}

fn doubt(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::RadiusBelowTable => {
            "An elbow's radius is under 4 in, for which the table has no row: its deduction is at \
             least the 4 in row's."
        }
        Doubt::DiameterNotInTable => "The table is for 4 in duct only.",
        Doubt::ElbowsOverlap => {
            "Elbows overlap as drawn, so the length is not one that can be built."
        }
    }
}

fn deduction_note(note: DeductionNote) -> &'static str {
    match note {
        DeductionNote::NextSmallerRadius => "next smaller listed radius taken",
        DeductionNote::NextLargerAngle => "next larger listed angle taken",
        DeductionNote::OverNinety => "over 90°: a 90 and the rest",
        DeductionNote::AtLeast => "at least this: radius under the table",
    }
}

fn code_length(units: UnitSystem, length: Length, limit: Length, margin: Length) -> String {
    let (margin, side) = if margin < Length::ZERO {
        (-margin, "over")
    } else {
        (margin, "to spare")
    };
    format!(
        "{} of {}, {} {side}",
        units.length(length),
        units.length(limit),
        units.length(margin)
    )
}

fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "published",
        Standing::CommonPractice => "common practice, no source",
        Standing::Assumption => "assumption",
        Standing::Memory => "from memory",
    }
}

fn reach(reach: Reach) -> &'static str {
    match reach {
        Reach::Within => "within the source's range",
        Reach::AtEdge => "at the edge of the source's range",
        Reach::Beyond => "beyond the source's range",
    }
}

fn finding(units: UnitSystem, finding: &Finding) -> String {
    match finding {
        Finding::ElbowsOverlap { overlap, .. } => format!(
            "Two fittings need {} more room than there is between them. Move a corner or take a \
             smaller radius.",
            units.length(*overlap)
        ),
        Finding::PointsCoincide { .. } => {
            "Two corners lie on one another; the second is left out. Move or remove one.".to_owned()
        }
        Finding::OutsideSource { .. } => {
            "An elbow's angle or radius is beyond what its formula was measured for: its figure is \
             a guess."
                .to_owned()
        }
        Finding::TransitionalFlow => {
            "The air is so slow that it is neither smooth nor turbulent: friction is not determined."
                .to_owned()
        }
        Finding::NoAirflow => {
            "The blower cannot move air through this run. Check rises and the stated air."
                .to_owned()
        }
    }
}

fn refusal(refusal: &Refusal) -> String {
    match refusal {
        Refusal::TerminationStays => {
            "The run has to end somewhere: move the termination instead of removing it.".to_owned()
        }
        Refusal::NoSuchElement => "That part of the run is no longer there.".to_owned(),
        Refusal::LegTooShort => {
            "That would leave a leg shorter than 2 in (50 mm). Nothing was changed.".to_owned()
        }
        Refusal::Value(error) => value(error),
    }
}

fn value(error: &ValueError) -> String {
    match error {
        ValueError::OutOfRange { path, value, field: Field { least, greatest } } => format!(
            "{path} is {value}; it can be from {least} to {greatest}. Nothing was changed."
        ),
        ValueError::BadId { path } => format!(
            "{path} is empty, too long, used twice, or has signs other than letters, digits, - and _."
        ),
        ValueError::NoSuchWall { path } => format!("{path} names a wall that is not in the plan."),
        ValueError::NoPoints => {
            "run.points is empty; a run needs one point at least, where it ends.".to_owned()
        }
    }
}

fn length_text(units: UnitSystem, error: &LengthTextError) -> String {
    let example = match units {
        UnitSystem::UsCustomary => "12' 6\", 12.5 ft, 150 in or 3.8 m",
        UnitSystem::Si => "3.8 m, 380 cm, 3800 mm or 12' 6\"",
    };
    let what = match error {
        LengthTextError::Empty => "Nothing was typed.".to_owned(),
        LengthTextError::TooLong => "That is too long for one length.".to_owned(),
        LengthTextError::NotUnderstood { part } => format!("“{part}” was not understood."),
        LengthTextError::AmbiguousComma { part } => {
            format!("“{part}” could be thousands or decimals: write it without the comma.")
        }
        LengthTextError::NumberMissing { unit } => format!("“{unit}” has no number before it."),
        LengthTextError::UnitMissing { number } => format!("“{number}” has no unit after it."),
        LengthTextError::UnitOrder { unit } => {
            format!("“{unit}” comes too late: write feet before inches.")
        }
        LengthTextError::ZeroDivisor => "A fraction cannot have 0 below its line.".to_owned(),
        LengthTextError::TooLarge { metres, limit_metres } => {
            format!("{metres:.0} m is more than a plan can hold ({limit_metres:.0} m).")
        }
    };
    format!("{what} Write it like {example}.")
}

fn file(error: &FileError) -> String {
    let what = match error {
        FileError::TooLarge { bytes, limit } => {
            format!("The file has {bytes} bytes; a plan has at most {limit}.")
        }
        FileError::NotText => "The file is not text.".to_owned(),
        FileError::NotJson { line, column } => {
            format!("The file is not complete JSON: line {line}, column {column}.")
        }
        FileError::NotAPlan => {
            "The file does not say that it is a plan (format “elbowroom-plan”).".to_owned()
        }
        FileError::UnknownVersion { found, known } if found.is_empty() => {
            format!("The file has no version; version {known} can be read.")
        }
        FileError::UnknownVersion { found, known } => {
            format!("The file's version is {found}; version {known} can be read.")
        }
        FileError::Field { path, detail } => format!("At {path}: {detail}."),
        FileError::Value(error) => value(error),
    };
    format!("{what} The open plan is as it was.")
}
