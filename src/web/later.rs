//! The page is built in turns, each in a task of its own, so that no task holds the browser up for long:
//! first what a first look needs, behind what `index.html` shows until then, and once that is seen the
//! rest, one part after each frame.

use super::panic_report::tell_whole;
use super::rest::{Part, Rest, rest};
use super::search_client::Reroutes;
use super::side::Side;
use super::soon::{after, next_frame};
use super::store::Store;
use gloo_timers::future::TimeoutFuture;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

/// Whether every part of the page stands.
static IS_BUILT: AtomicBool = AtomicBool::new(false);

/// The page while not all of it stands, for whoever is read it.
const BUSY: &str = "aria-busy";

fn page() -> Option<web_sys::Element> {
    document().get_element_by_id("app")
}

fn is_built() {
    IS_BUILT.store(true, Ordering::Relaxed);
    // An attribute that cannot be taken off leaves the page to be used all the same.
    let _ = page().map(|page| page.remove_attribute(BUSY));
    tell_whole();
}

/// Returns once every part of the page stands.
pub(super) async fn built() {
    /// A frame at 60 in a second, ms.
    const A_FRAME: u32 = 16;
    while !IS_BUILT.load(Ordering::Relaxed) {
        TimeoutFuture::new(A_FRAME).await;
    }
}

/// How far the page has come.
#[derive(Clone, Copy)]
pub(super) struct Turns {
    turn: RwSignal<usize>,
    rest: StoredValue<Option<&'static Rest>>,
}

impl Turns {
    /// The last turn of what a first look needs.
    const FIRST_LOOK: usize = 5;
    /// The turn that comes last.
    const LAST: usize = 22;

    /// Before the first turn.
    pub fn new() -> Self {
        Self {
            turn: RwSignal::new(0),
            rest: StoredValue::new(None),
        }
    }

    /// Takes the turns of the first look, then calls `show` and goes on once the program's other file
    /// is there.
    pub fn start(
        self,
        store: Store,
        reroutes: Reroutes,
        side: Side,
        show: impl FnOnce() + 'static,
    ) {
        let _ = page().map(|page| page.set_attribute(BUSY, "true"));
        let owner = Owner::current().unwrap_or_default();
        self.first_look(move || {
            show();
            spawn_local(async move {
                let rest = rest().await;
                self.rest.set_value(Some(rest));
                owner.with(|| (rest.begin)(store, reroutes, side));
                self.go_on();
            });
        });
    }

    fn first_look(self, then: impl FnOnce() + 'static) {
        after(Duration::ZERO, move || {
            if self.turn.get_untracked() == Self::FIRST_LOOK {
                then();
            } else {
                self.turn.update(|turn| *turn += 1);
                self.first_look(then);
            }
        });
    }

    fn go_on(self) {
        next_frame(move || {
            let after_the_frame = move || {
                self.turn.update(|turn| *turn += 1);
                if self.turn.get_untracked() < Self::LAST {
                    self.go_on();
                } else {
                    // What the last turn built stands by then.
                    after(Duration::ZERO, is_built);
                }
            };
            after(Duration::ZERO, after_the_frame);
        });
    }
}

/// What stands from its turn on, from 1 to [`Turns::FIRST_LOOK`] with the first look.
#[component]
pub(super) fn InTurn(turn: usize, children: ChildrenFn) -> impl IntoView {
    let turns: Turns = expect_context();
    let is_due = Memo::new(move |_| turns.turn.get() >= turn);
    view! { <Show when=move || is_due.get()>{children()}</Show> }
}

/// A part of the rest that stands from its turn on, up to [`Turns::LAST`].
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
