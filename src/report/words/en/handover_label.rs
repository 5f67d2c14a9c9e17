//! Fixed texts of the handover sheet, its panel and its files.

use crate::report::words::HandoverLabel;

#[allow(clippy::too_many_lines, reason = "one line a text")]
pub(super) const fn handover_label(key: HandoverLabel) -> &'static str {
    match key {
        HandoverLabel::Heading => "Handover",
        HandoverLabel::Hint => {
            "A sheet for whoever gets the job next: drawing, figures, what was found, what to do, parts to buy. Made from the plan as it is now."
        }
        HandoverLabel::ReadBy => "Made for",
        HandoverLabel::Customer => "the customer, in plain words",
        HandoverLabel::Trade => "the trade, in full",
        HandoverLabel::Language => "Language of the sheet",
        HandoverLabel::Paper => "Paper",
        HandoverLabel::Letter => "Letter",
        HandoverLabel::A4 => "A4",
        HandoverLabel::Date => "Date",
        HandoverLabel::MadeFor => "For",
        HandoverLabel::MadeBy => "By",
        HandoverLabel::Remarks => "Remarks",
        HandoverLabel::Stock => "Pipe is bought in lengths of",
        HandoverLabel::StockHint => {
            "Commas between them, at most eight. Empty for 2, 3, 5 and 10 ft."
        }
        HandoverLabel::TextsHint => "Kept with the job. Nothing is filled in by itself.",
        HandoverLabel::Preview => "Make the sheet",
        HandoverLabel::PreviewWait => "The sheet is being made.",
        HandoverLabel::PreviewFailed => {
            "The sheet was not made. The plan is as it was; try again, or reload the page."
        }
        HandoverLabel::Print => "Print or save as PDF",
        HandoverLabel::PrintHint => {
            "Print at 100 %, not fitted to the page, so that the drawing keeps its scale."
        }
        HandoverLabel::SaveHtml => "Sheet, one HTML file",
        HandoverLabel::SaveDrawingSvg => "Drawing, SVG",
        HandoverLabel::SaveDrawingPng => "Drawing, PNG",
        HandoverLabel::SavePressureSvg => "Pressure line, SVG",
        HandoverLabel::SaveHeatSvg => "Temperature line, SVG",
        HandoverLabel::SaveLedgerCsv => "Ledger, CSV",
        HandoverLabel::SaveCutListCsv => "Cut list, CSV",
        HandoverLabel::Files => "Save as a file",
        HandoverLabel::FilesHint => {
            "All from the same figures as the page. The SVG is true to scale."
        }
        HandoverLabel::NotSaved => {
            "The file was not made. There may be nothing to draw: the plan moves no air, or its air keeps its temperature."
        }
        HandoverLabel::SheetTitle => "Dryer exhaust: handover",
        HandoverLabel::DrawingHeading => "Drawing",
        HandoverLabel::DrawingName => "Plan of the room with the exhaust run and its lengths",
        HandoverLabel::FoundHeading => "What was found",
        HandoverLabel::FiguresHeading => "Figures",
        HandoverLabel::ColumnFigure => "Figure",
        HandoverLabel::ColumnClean => "Clean run",
        HandoverLabel::ColumnBand => "10th to 90th percentile",
        HandoverLabel::ColumnBefore => "Before",
        HandoverLabel::ColumnAfter => "After",
        HandoverLabel::ColumnOffered => "With the change",
        HandoverLabel::TakenNote => {
            "The run was changed. Before: as it was drawn then. After: as it is drawn here."
        }
        HandoverLabel::OfferedNote => {
            "A change of the run is offered below. Before: as it is drawn here."
        }
        HandoverLabel::PredictedNote => "Predicted for the run as drawn and clean, not measured.",
        HandoverLabel::CodeHeading => "Code check",
        HandoverLabel::ColumnSection => "Section",
        HandoverLabel::ColumnRule => "Rule",
        HandoverLabel::ColumnVerdict => "Finding",
        HandoverLabel::ColumnMeasured => "Measured, limit, margin",
        HandoverLabel::OnSiteHeading => "To be looked at on site",
        HandoverLabel::Seen => "seen",
        HandoverLabel::NotSeen => "not seen",
        HandoverLabel::StepsHeading => "What to do, in this order",
        HandoverLabel::NothingToDo => "Nothing was found that has to be done.",
        HandoverLabel::LedgerHeading => "Ledger",
        HandoverLabel::ColumnNumber => "No.",
        HandoverLabel::ColumnLength => "Developed length",
        HandoverLabel::ColumnLossLow => "Loss, 10th percentile",
        HandoverLabel::ColumnLossHigh => "Loss, 90th percentile",
        HandoverLabel::PartsHeading => "Parts to buy",
        HandoverLabel::ColumnPart => "Part",
        HandoverLabel::ColumnPartSize => "Size",
        HandoverLabel::ColumnCount => "Number",
        HandoverLabel::ColumnPartLength => "Length",
        HandoverLabel::CutsHeading => "How the pipe is cut",
        HandoverLabel::ColumnStock => "Stock",
        HandoverLabel::ColumnCuts => "Cut into",
        HandoverLabel::ColumnLeft => "Left over",
        HandoverLabel::TooLong => "The run is longer than a house's: its pipe is not cut up here.",
        HandoverLabel::PipeNotKnown => {
            "Lengths marked estimated or concealed have to be measured before anything is cut."
        }
        HandoverLabel::SourcesHeading => "Assumptions and sources",
        HandoverLabel::BandMeaning => {
            "A band runs from the 10th to the 90th percentile of all uncertain inputs drawn together. Predicted figures are for a clean run, unless the drawing says otherwise."
        }
        HandoverLabel::SignHeading => "Handed over",
        HandoverLabel::Signature => "Signature",
        HandoverLabel::CsvPart => "part",
        HandoverLabel::CsvCut => "cut",
        HandoverLabel::CsvKind => "Line",
        HandoverLabel::CsvFromPart => "For part",
        HandoverLabel::AlongTheRun => "developed length",
        HandoverLabel::FileLedger => "ledger",
        HandoverLabel::FileCutList => "cut-list",
        HandoverLabel::FilePressure => "pressure-line",
        HandoverLabel::FileHeat => "temperature-line",
        HandoverLabel::FileSheet => "handover",
    }
}
