//! What the tool in hand does, in a line below the drawing.

use super::store::Store;
use crate::editor::Tool;
use leptos::prelude::*;

#[component]
pub(super) fn ToolHint() -> impl IntoView {
    let store = expect_context::<Store>();
    let hint = move || match store.tool.get() {
        Tool::Pick => fixed!(HintPick),
        Tool::Place => fixed!(HintPlace),
        Tool::Wall { .. } => fixed!(HintWall),
        Tool::Opening(_) => fixed!(HintOpening),
        Tool::Obstacle(_) | Tool::Zone(_) => fixed!(HintRectangle),
        Tool::Run => fixed!(HintRun),
        Tool::Scale => fixed!(HintScale),
    };
    view! {
        <p class="fine" data-testid="tool-hint">{hint}</p>
    }
}
