//! The steps that can be undone, by name.

use crate::report::words::ActionName;

pub(in crate::report::words) const fn action_name(name: ActionName) -> &'static str {
    match name {
        ActionName::MoveCorner => "move corner",
        ActionName::TakeReroute => "take reroute",
        ActionName::MoveTermination => "move termination",
        ActionName::InsertBend => "make bend",
        ActionName::DeleteBend => "remove bend",
        ActionName::DrawLeg => "draw leg",
        ActionName::AddThing => "draw",
        ActionName::MoveThings => "move",
        ActionName::RemoveThings => "remove",
        ActionName::CopyThings => "copy",
        ActionName::TurnThings => "quarter turn",
        ActionName::MirrorThings => "mirror",
        ActionName::SetThing => "change",
        ActionName::SetPicture => "picture",
        ActionName::SetLegLength => "set leg length",
        ActionName::SetRise => "set rise",
        ActionName::SetElbow => "change elbow",
        ActionName::SetLeg => "change duct",
        ActionName::SetTermination => "change termination",
        ActionName::SetBendMethod => "change bend method",
        ActionName::SetOverride => "set own value",
        ActionName::SetAir => "change air or site",
        ActionName::SetCode => "change code reading",
        ActionName::BeginVisit => "begin visit",
        ActionName::PrepareVisit => "prepare visit",
        ActionName::NoteVisit => "note",
        ActionName::AddReading => "add reading",
        ActionName::AddLook => "add look",
        ActionName::AddRepair => "add repair",
        ActionName::RemoveEntry => "remove entry",
        ActionName::FitBlower => "blower from readings",
        ActionName::SetTitle => "name job",
        ActionName::SetHandover => "change the handover sheet",
        ActionName::AddPicture => "add picture to the visit",
        ActionName::RemovePicture => "remove picture from the visit",
        ActionName::OpenPlan => "open plan",
    }
}
