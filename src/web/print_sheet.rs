//! What is printed by itself: a sheet that is there only while it is printed.

use super::print_part::print_part;
use super::soon::next_frame;
use leptos::prelude::*;

/// A sheet on its way to the printer.
#[derive(Clone)]
pub(super) struct PrintedSheet {
    /// What the style sheet knows it by.
    pub name: &'static str,
    /// Its classes.
    pub class: &'static str,
    /// The inside of its element.
    pub html: String,
}

/// The sheet that is there to be printed.
#[derive(Clone, Copy)]
pub(super) struct Printing(pub RwSignal<Option<PrintedSheet>>);

impl Printing {
    /// Prints a sheet and takes it away again.
    pub fn print(self, sheet: PrintedSheet) {
        let name = sheet.name;
        self.0.set(Some(sheet));
        // The sheet stands from the next frame on.
        next_frame(move || print_part(name, move || self.0.set(None)));
    }
}

/// The paper; nothing while nothing is printed.
#[component]
pub(super) fn PrintSheet() -> impl IntoView {
    let Printing(printing) = expect_context();
    move || {
        let PrintedSheet { class, html, .. } = printing.get()?;
        let class = format!("print-sheet {class}");
        Some(view! { <article class=class inner_html=html/> })
    }
}
