//! Parts of the page that a first look does not need: each is built in a task of its own, one after each
//! frame, so that what stands already is seen and answers while the rest is still to come.

use super::rest::{Part, Rest, rest};
use super::search_client::Reroutes;
use super::side::Side;
use super::soon::{after, next_frame};
use super::store::Store;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::time::Duration;

/// How far the page has come.
#[derive(Clone, Copy)]
pub(super) struct Turns {
    turn: RwSignal<usize>,
    rest: StoredValue<Option<&'static Rest>>,
}

impl Turns {
    /// The turn that comes last.
    const LAST: usize = 10;

    /// Begins once the program's other file is there.
    pub fn start(store: Store, reroutes: Reroutes, side: Side) -> Self {
        let turns = Self {
            turn: RwSignal::new(0),
            rest: StoredValue::new(None),
        };
        let owner = Owner::current().unwrap_or_default();
        spawn_local(async move {
            let rest = rest().await;
            turns.rest.set_value(Some(rest));
            owner.with(|| (rest.begin)(store, reroutes, side));
            turns.go_on();
        });
        turns
    }

    fn go_on(self) {
        next_frame(move || {
            let after_the_frame = move || {
                self.turn.update(|turn| *turn += 1);
                if self.turn.get_untracked() < Self::LAST {
                    self.go_on();
                }
            };
            after(Duration::ZERO, after_the_frame);
        });
    }
}

/// A part that stands from its turn on, 1 to [`Turns::LAST`].
#[component]
pub(super) fn Later(turn: usize, part: Part) -> impl IntoView {
    let turns: Turns = expect_context();
    let is_due = Memo::new(move |_| turns.turn.get() >= turn);
    view! {
        <Show when=move || is_due.get()>
            {turns.rest.get_value().map(|rest| (rest.build)(part))}
        </Show>
    }
}
