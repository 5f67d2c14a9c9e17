//! Fixed texts of the code check.

use crate::report::words::CodeLabel;

pub(super) fn code_label(key: CodeLabel) -> &'static str {
    match key {
        CodeLabel::FindingsHeading => "What the rules say of the plan",
        CodeLabel::OnSiteHeading => "To check on site",
        CodeLabel::OnSiteHint => {
            "A drawing cannot show these. Tick what was looked at and found so; the ticks are kept with the plan."
        }
        CodeLabel::ShowOnDrawing => "Show",
        CodeLabel::SourceHeading => "Where this was read",
        CodeLabel::SideBySide => "Rule sets side by side",
        CodeLabel::SideBySideHint => {
            "The length of this run as each set counts it, with the path through elbows and without. The chosen reading is marked; press another to choose it."
        }
        CodeLabel::ColumnRuleSet => "Rule set",
        CodeLabel::ColumnPath => "Path through elbows",
        CodeLabel::ColumnMeasured => "Measured",
        CodeLabel::ColumnDeductions => "Deduc\u{ad}tions",
        CodeLabel::ColumnTotal => "Total",
        CodeLabel::ColumnLimit => "Limit",
        CodeLabel::ColumnMargin => "Margin",
        CodeLabel::ColumnVerdict => "Verdict",
        CodeLabel::PathCounts => "counts",
        CodeLabel::PathLeftOut => "left out",
        CodeLabel::Chosen => "chosen",
        CodeLabel::CodeAgainstAir => "Code against air",
        CodeLabel::CodeAgainstAirHint => {
            "The code counts feet, the air loses pressure. Both as straight duct of the run's size, element by element."
        }
        CodeLabel::ColumnAir => "In air",
        CodeLabel::ColumnCode => "In the code",
        CodeLabel::ColumnTimes => "Air over code",
        CodeLabel::NotCounted => "not counted",
        CodeLabel::WholeRun => "Whole run",
        CodeLabel::MakerHeading => "Dryer maker's limits",
        CodeLabel::MakerHint => {
            "From the dryer's own instructions. Nothing is checked against what is not typed. The maker's length goes with the maker's own elbow values, never with a code's table."
        }
        CodeLabel::NotTyped => "not typed",
        CodeLabel::AdviceHeading => "Practice, not code",
        CodeLabel::LabelHeading => "Permanent label",
        CodeLabel::LabelAsked => "The chosen rule set asks for this label.",
        CodeLabel::LabelNotAsked => {
            "As far as the plan shows, the chosen rule set asks for no label. It does no harm."
        }
        CodeLabel::LabelCardTitle => "Dryer exhaust duct",
        CodeLabel::LabelCardLength => "Equivalent length",
        CodeLabel::LabelCardBy => "Counted by",
        CodeLabel::LabelCardPlace => {
            "Keep within 6 ft (1.8 m) of the duct's connection. Before another dryer is connected, its instructions must allow this length."
        }
        CodeLabel::LabelPrint => "Print the label",
        CodeLabel::NotCovered => {
            "Not covered here: dryers of several storeys on one duct, which the code allows only in an engineered shaft."
        }
    }
}
