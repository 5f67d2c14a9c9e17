//! Fixed texts of the site readings.

use crate::report::words::SiteLabel;

#[allow(clippy::too_many_lines, reason = "one line a key")]
pub(super) const fn site_label(key: SiteLabel) -> &'static str {
    match key {
        SiteLabel::Heading => "Site readings",
        SiteLabel::Hint => {
            "Type what a gauge shows. Beside it stands what the clean run would read under the same conditions, and below it what the readings mean and what to test next."
        }
        SiteLabel::PreparationHeading => "Before the first reading",
        SiteLabel::AlwaysHeats => {
            "This dryer cannot run without heat (no test with a joint open is offered)"
        }
        SiteLabel::EntryHeading => "New reading",
        SiteLabel::Quantity => "What was read",
        SiteLabel::StaticPressure => "Static pressure",
        SiteLabel::VelocityVane => "Velocity, vane or hot wire",
        SiteLabel::VelocityPitot => "Velocity pressure, pitot tube",
        SiteLabel::Temperature => "Temperature",
        SiteLabel::At => "Where",
        SiteLabel::Value => "Reading",
        SiteLabel::ValueHint => "The figure on the gauge.",
        SiteLabel::ValuesHint => "One figure, or those of a traverse with spaces between them.",
        SiteLabel::Pattern => "Probe",
        SiteLabel::AgainstOutdoors => {
            "The gauge's other side is open to the outdoors, not to the room"
        }
        SiteLabel::Conditions => "Conditions and gauge",
        SiteLabel::Heat => "Heat on",
        SiteLabel::ScreenNotClean => "Lint screen not cleaned",
        SiteLabel::DrumNotEmpty => "Drum not empty",
        SiteLabel::FlapHeld => "Flap held open",
        SiteLabel::DoorOpen => "Door or window open",
        SiteLabel::OpenJoint => "Joint that was open",
        SiteLabel::NoJointOpen => "None, run joined",
        SiteLabel::Add => "Add reading",
        SiteLabel::EntriesHeading => "This visit, in order",
        SiteLabel::ColumnRead => "Read",
        SiteLabel::ColumnClean => "Clean run",
        SiteLabel::ColumnAgainst => "Dryer maker's limit",
        SiteLabel::NothingYet => "Nothing was entered yet.",
        SiteLabel::Remove => "Remove",
        SiteLabel::OddsHeading => "What it means",
        SiteLabel::OddsHint => {
            "The chance that each fault is there now. Two faults at once count for both. Starting odds and efforts are common practice, no source."
        }
        SiteLabel::NothingWrong => "Nothing wrong",
        SiteLabel::NothingThatMatters => "Nothing that costs over 10 % of airflow",
        SiteLabel::AirflowNow => "Airflow now, against the clean run",
        SiteLabel::WouldRead => "What it would explain",
        SiteLabel::Mended => "Cleaned or mended",
        SiteLabel::NextHeading => "Next test",
        SiteLabel::RunnerUp => "Or",
        SiteLabel::Settled => {
            "Settled: more tests would tell little. Clean or mend what is named first, then read again. Where the first two lie side by side, open the joint between them and look into both."
        }
        SiteLabel::EnterReading => "Enter this reading",
        SiteLabel::FoundClear => "It was clear",
        SiteLabel::FoundBlocked => "Something in the way",
        SiteLabel::FitBlower => "Take the blower from these readings",
        SiteLabel::FitBlowerHint => {
            "To fit this dryer's own blower, read static pressure and velocity at the outlet, once with the run joined and once with the outlet open."
        }
        SiteLabel::NewVisit => "Begin a new visit",
        SiteLabel::Date => "Date",
        SiteLabel::Note => "Note",
        SiteLabel::WorkingOut => "working out what it means",
        SiteLabel::VisitsHeading => "Visits to this dryer",
        SiteLabel::EarlierVisit => {
            "An earlier visit is open. Its readings are held against the plan as it is now, and what is added goes to this visit."
        }
        SiteLabel::AfterHeading => "Before and after",
        SiteLabel::AfterHint => {
            "Read again what was read before the cleaning, under the same conditions: the two then stand side by side here."
        }
        SiteLabel::ColumnBefore => "Before",
        SiteLabel::ColumnAfter => "After",
        SiteLabel::AirflowBefore => "Airflow before, against the clean run",
        SiteLabel::PicturesHeading => "Pictures",
        SiteLabel::PicturesHint => {
            "Made small and stripped of place and camera before they are kept, in the job's file and nowhere else. Up to 12 a job."
        }
        SiteLabel::AddBefore => "Add a picture from before",
        SiteLabel::AddAfter => "Add a picture from after",
        SiteLabel::PictureUnreadable => "This file is no picture that the browser can read.",
        SiteLabel::Print => "Print this visit",
        SiteLabel::PrintHint => "On Letter or A4, in black on white.",
        SiteLabel::PrintNumber => "No.",
        SiteLabel::PrintEntry => "Reading, look or repair",
        SiteLabel::PrintRank => "Rank",
        SiteLabel::PrintFault => "Fault",
        SiteLabel::PrintOdds => "Chance that it is there now",
        SiteLabel::PrintFreeArea => "Area",
        SiteLabel::PrintAirflow => "Airflow",
        SiteLabel::PrintSettled => "Settled: more tests would tell little.",
        SiteLabel::PrintFoot => {
            "Clean run: the drawing without lint, leak or stuck flap, under the reading's own conditions; in brackets the 10th to 90th percentile of all uncertain inputs. A verdict stands only beside a limit typed from the dryer maker's instructions. Starting odds are common practice, no source."
        }
        SiteLabel::Done => "done",
        SiteLabel::NotDone => "not done",
        SiteLabel::LikelyPlaces => {
            "Rings A, B, C on the drawing: where the fault most likely sits."
        }
    }
}
