//! The steps that can be undone, by name.

use crate::report::words::ActionName;

pub(super) fn action_name(name: ActionName) -> &'static str {
    match name {
        ActionName::MoveCorner => "mover esquina",
        ActionName::TakeReroute => "usar otro recorrido",
        ActionName::MoveTermination => "mover la terminación",
        ActionName::InsertBend => "hacer una curva",
        ActionName::DeleteBend => "quitar la curva",
        ActionName::DrawLeg => "dibujar tramo",
        ActionName::AddThing => "dibujar",
        ActionName::MoveThings => "mover",
        ActionName::RemoveThings => "quitar",
        ActionName::CopyThings => "copiar",
        ActionName::TurnThings => "girar un cuarto de vuelta",
        ActionName::MirrorThings => "reflejar",
        ActionName::SetThing => "cambiar",
        ActionName::SetPicture => "imagen",
        ActionName::SetLegLength => "fijar el largo del tramo",
        ActionName::SetRise => "fijar la subida",
        ActionName::SetElbow => "cambiar el codo",
        ActionName::SetLeg => "cambiar el ducto",
        ActionName::SetTermination => "cambiar la terminación",
        ActionName::SetBendMethod => "cambiar el método de los codos",
        ActionName::SetOverride => "fijar un valor propio",
        ActionName::SetAir => "cambiar el aire o el sitio",
        ActionName::SetCode => "cambiar la lectura del código",
        ActionName::BeginVisit => "iniciar visita",
        ActionName::PrepareVisit => "preparar visita",
        ActionName::NoteVisit => "nota",
        ActionName::AddReading => "agregar lectura",
        ActionName::AddLook => "agregar inspección",
        ActionName::AddRepair => "agregar reparación",
        ActionName::RemoveEntry => "quitar anotación",
        ActionName::FitBlower => "soplador según las lecturas",
        ActionName::SetHandover => "cambiar la hoja de entrega",
        ActionName::SetTitle => "nombrar el trabajo",
        ActionName::AddPicture => "agregar una foto a la visita",
        ActionName::RemovePicture => "quitar una foto de la visita",
        ActionName::OpenPlan => "abrir plano",
    }
}
