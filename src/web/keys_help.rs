//! The list of every key, by place. `tests/suite/keys.rs` holds it against `keys.rs`.

use super::over_page::OverPage;
use super::store::{Store, label_text};
use crate::report::words::Label;
use leptos::prelude::*;

/// Keys that do the same, as `KeyboardEvent.key` names them, with what is held beside them.
type Row = (&'static [&'static str], Label);

/// Keys that act while the drawing has the focus.
const ON_DRAWING: &[Row] = &[
    (&["N"], Label::KeyNext),
    (&["P"], Label::KeyPrevious),
    (
        &["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"],
        Label::KeyMove,
    ),
    (&["Shift+ArrowLeft", "Shift+ArrowRight"], Label::KeyMoveFar),
    (&["T"], Label::KeyNextThing),
    (&["Shift+T"], Label::KeyPreviousThing),
    (&["X"], Label::KeyKeepThings),
    (&["Ctrl+A"], Label::KeyAll),
    (&["L"], Label::KeyLength),
    (&["B"], Label::KeyBend),
    (&["C"], Label::ThingCopy),
    (&["M"], Label::ThingMirror),
    (&["Q"], Label::ThingTurn),
    (&["R"], Label::KeyDrawRun),
    (&["W"], Label::ToolOutsideWall),
    (&["I"], Label::ToolInsideWall),
    (&["G"], Label::ToolWindow),
    (&["D"], Label::ToolDoor),
    (&["A"], Label::ToolAirIntake),
    (&["O"], Label::ToolObstacle),
    (&["Z"], Label::ToolZone),
    (&["Enter"], Label::KeyPutPoint),
    (&["Delete", "Backspace"], Label::KeyRemove),
    (&["Escape"], Label::KeyLetGo),
    (&["+", "="], Label::ZoomIn),
    (&["-"], Label::ZoomOut),
    (&["0"], Label::ZoomFit),
    (&["Ctrl+Z"], Label::Undo),
    (&["Ctrl+Shift+Z", "Ctrl+Y"], Label::Redo),
    (&["?"], Label::KeyHelp),
];

/// Keys that act wherever the focus is.
const EVERYWHERE: &[Row] = &[
    (&["Tab"], Label::KeyTab),
    (&["Shift+Tab"], Label::KeyTabBack),
    (&["Space"], Label::KeyPress),
    (&["Enter"], Label::KeyTake),
    (&["Escape"], Label::KeyClose),
];

/// The list as a dialog.
#[component]
pub(super) fn KeysHelp() -> impl IntoView {
    let store = expect_context::<Store>();
    view! {
        <OverPage name="keys-help" title=Label::Keys is_open=store.shows_keys>
            {table(Label::KeysOnDrawing, ON_DRAWING)}
            {table(Label::KeysEverywhere, EVERYWHERE)}
            <p class="fine">{label_text(Label::KeysCommand)}</p>
        </OverPage>
    }
}

fn table(place: Label, rows: &'static [Row]) -> impl IntoView {
    let rows = rows.iter().map(|(keys, does)| {
        view! {
            <tr>
                <th scope="row">{keys.iter().map(|key| view! { <kbd>{cap(key)}</kbd> " " }).collect_view()}</th>
                <td>{label_text(*does)}</td>
            </tr>
        }
    });
    view! {
        <table>
            <caption>{label_text(place)}</caption>
            <thead>
                <tr>
                    <th scope="col">{label_text(Label::KeysColumnKey)}</th>
                    <th scope="col">{label_text(Label::KeysColumnDoes)}</th>
                </tr>
            </thead>
            <tbody>{rows.collect_view()}</tbody>
        </table>
    }
}

/// A key as its cap shows it.
fn cap(key: &str) -> String {
    key.replace("ArrowLeft", "\u{2190}")
        .replace("ArrowRight", "\u{2192}")
        .replace("ArrowUp", "\u{2191}")
        .replace("ArrowDown", "\u{2193}")
}
