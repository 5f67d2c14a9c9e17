//! Parts of the page that a first look does not need: each is built in a task of its own, one after each
//! frame, so that what stands already is seen and answers while the rest is still to come.

use super::soon::{after, next_frame};
use leptos::prelude::*;
use std::time::Duration;

/// How far the page has come.
#[derive(Clone, Copy)]
pub(super) struct Turns(RwSignal<usize>);

impl Turns {
    /// The turn that comes last.
    const LAST: usize = 10;

    /// Begins with the next frame.
    pub fn start() -> Self {
        let turns = Self(RwSignal::new(0));
        turns.go_on();
        turns
    }

    fn go_on(self) {
        next_frame(move || {
            let after_the_frame = move || {
                self.0.update(|turn| *turn += 1);
                if self.0.get_untracked() < Self::LAST {
                    self.go_on();
                }
            };
            after(Duration::ZERO, after_the_frame);
        });
    }
}

/// What is in it stands from its turn on, 1 to [`Turns::LAST`].
#[component]
pub(super) fn Later(turn: usize, children: ChildrenFn) -> impl IntoView {
    let Turns(turns) = expect_context();
    let is_due = Memo::new(move |_| turns.get() >= turn);
    view! { <Show when=move || is_due.get()>{children()}</Show> }
}
