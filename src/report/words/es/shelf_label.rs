//! Fixed texts about the jobs that are kept.

use crate::report::words::ShelfLabel;

pub(super) fn shelf_label(key: ShelfLabel) -> &'static str {
    match key {
        ShelfLabel::Jobs => "Trabajos",
        ShelfLabel::Meaning => {
            "Todo trabajo que se modificó se guarda en este navegador. Los importantes deben estar también en un archivo: el navegador puede borrar lo que guarda."
        }
        ShelfLabel::ThisJob => "Nombre del trabajo abierto",
        ShelfLabel::Note => "Nota",
        ShelfLabel::Find => "Buscar por nombre o nota",
        ShelfLabel::Name => "Nombre",
        ShelfLabel::OpenNow => "abierto ahora",
        ShelfLabel::Open => "Abrir",
        ShelfLabel::Copy => "Copiar",
        ShelfLabel::Delete => "Eliminar",
        ShelfLabel::CopyOf => "copia",
        ShelfLabel::None => {
            "Todavía no hay ningún trabajo guardado en este navegador. El primer cambio guarda uno."
        }
        ShelfLabel::NoneFound => {
            "Ningún trabajo guardado tiene ese texto en su nombre o en su nota."
        }
        ShelfLabel::SaveAll => "Guardar todos los trabajos en un archivo",
        ShelfLabel::AddFrom => "Agregar trabajos de un archivo",
        ShelfLabel::Added => "Trabajos agregados",
        ShelfLabel::NotRead => "No leídos",
        ShelfLabel::Deleted => "Eliminado",
        ShelfLabel::PutBack => "Recuperarlo",
        ShelfLabel::StorageFailed => {
            "El navegador no lo hizo. Los trabajos quedan como están; guardar cada uno en un archivo sigue funcionando."
        }
        ShelfLabel::ChangedElsewhere => {
            "Otra pestaña modificó este trabajo mientras tanto, así que se dejó como estaba. La lista lo muestra como está ahora."
        }
        ShelfLabel::Unreadable => "Este registro no se puede leer como plano. Queda como está.",
        ShelfLabel::SaveEntry => "Guardar el registro en un archivo",
        ShelfLabel::KeepBoth => "Conservar el mío como otro trabajo",
        ShelfLabel::OpenOther => "Abrir el otro",
        ShelfLabel::FileName => "trabajos",
    }
}
