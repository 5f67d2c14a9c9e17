//! What differs between the two runs, in words, and whether that is one thing or several.

use super::side::Side;
use super::side_words::{say, side_text};
use super::store::Store;
use crate::plan::{Difference, differences};
use crate::report::words::{SideLabel, SideMessage};
use leptos::prelude::*;

/// So many are told one by one.
const TOLD: usize = 8;

#[component]
pub(super) fn SideDifferences() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let found: Memo<Vec<Difference>> = Memo::new(move |_| {
        side.with_both(store, |first, second| {
            differences(&first.plan, &second.plan)
        })
        .unwrap_or_default()
    });
    let count = move || {
        let count = found.with(Vec::len);
        let text = say(store, SideMessage::DifferenceCount(count));
        if count == 0 {
            format!("{text} {}", side_text(SideLabel::NothingDiffersHint))
        } else {
            text
        }
    };
    let list = move || {
        found.with(|found| {
            let told = found.iter().take(TOLD);
            let told = told.map(|one| say(store, SideMessage::Difference(one)));
            let more = (found.len() > TOLD).then(|| side_text(SideLabel::More));
            told.chain(more)
                .map(|text| view! { <li>{text}</li> })
                .collect_view()
        })
    };
    view! {
        <div class="side-differences">
            <h3>{side_text(SideLabel::Differences)}</h3>
            <p data-testid="side-count">{count}</p>
            <ul>{list}</ul>
        </div>
    }
}
