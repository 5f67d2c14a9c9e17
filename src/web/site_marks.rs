//! The likely places of a fault on the drawing.

use super::mark_list::{MarkList, Zoom};
use super::mark_view::Layer;
use super::store::Store;
use crate::plan::ElementId;
use crate::scene::{Mark, suspect_marks};
use leptos::prelude::*;
use std::sync::Arc;

/// How many places are marked, and the odds below which none is.
const MARKED: usize = 3;
const LEAST_MARKED: f64 = 0.05;

/// The marks of one layer: rings, which grow with the zoom, or their letters.
#[component]
pub(super) fn SuspectMarks(ground: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let marks: Memo<Vec<Mark>> = Memo::new(move |_| {
        let suspects = suspects(store);
        if suspects.is_empty() {
            return Vec::new();
        }
        // Under the hand the places move at once, and what was told of them was told of the others.
        let held = store.held();
        let is_told = store.plan.with(|plan| Arc::ptr_eq(&plan.0, &held));
        if is_told {
            suspect_marks(&held, &suspects)
        } else {
            Vec::new()
        }
    });
    let list = MarkList::following(store, Zoom::on_drawing(store, ground), move |take| {
        marks.with(|marks| marks.iter().for_each(&mut *take));
    });
    view! { <Layer list/> }
}

/// The likeliest places, each once.
fn suspects(store: Store) -> Vec<(ElementId, f64)> {
    let site = store.site();
    let diagnosis = site.as_ref().and_then(|site| site.diagnosis.as_ref());
    let causes = diagnosis.into_iter().flat_map(|found| &found.causes);
    let mut suspects: Vec<(ElementId, f64)> = Vec::new();
    for odds in causes.filter(|odds| odds.probability >= LEAST_MARKED) {
        let Some(element) = &odds.cause.element else {
            continue;
        };
        if suspects.len() < MARKED && suspects.iter().all(|(known, _)| known != element) {
            suspects.push((element.clone(), odds.probability));
        }
    }
    suspects
}
