//! How sure the difference of the two runs is: asked of the worker once the hand rests, one at a time.

use super::errand_client::run;
use super::errand_protocol::{Done, Errand};
use super::side::Side;
use super::store::Store;
use crate::plan::Plan;
use crate::report::DifferenceBands;
use leptos::prelude::*;
use std::sync::Arc;
use wasm_bindgen_futures::spawn_local;

/// The first and the second.
type Pair = (Arc<Plan>, Arc<Plan>);

/// What was answered last, and of which two plans.
#[derive(Clone, Copy)]
pub(super) struct SideBands {
    answered: RwSignal<Option<(Pair, Option<DifferenceBands>)>>,
    under_way: StoredValue<bool>,
}

impl SideBands {
    pub fn new() -> Self {
        Self {
            answered: RwSignal::new(None),
            under_way: StoredValue::new(false),
        }
    }

    /// Asks anew wherever one of the two plans has changed and the two are shown.
    pub fn follow(self, store: Store, side: Side) {
        Effect::new(move |_| {
            let is_wanted = side.is_open.get() && !store.is_dragging();
            let _ = pair(store, side);
            if is_wanted && !self.under_way.get_value() {
                self.under_way.set_value(true);
                spawn_local(self.ask(store, side));
            }
        });
    }

    async fn ask(self, store: Store, side: Side) {
        while let Some(wanted) = untrack(|| pair(store, side)) {
            let is_known = self.answered.with_untracked(|known| {
                known
                    .as_ref()
                    .is_some_and(|(pair, _)| is_same(pair, &wanted))
            });
            if is_known {
                break;
            }
            let errand = Errand::Compare {
                first: Box::new(wanted.0.without_pictures()),
                second: Box::new(wanted.1.without_pictures()),
            };
            let bands = match run(errand).await {
                Some(Done::Compared(bands)) => bands,
                _ => None,
            };
            self.answered.set(Some((wanted, bands)));
        }
        self.under_way.set_value(false);
    }

    /// The bands of the two as they are now; none while they are worked out.
    pub fn now(self, store: Store, side: Side) -> Option<DifferenceBands> {
        let now = pair(store, side)?;
        self.answered.with(|known| {
            let (pair, bands) = known.as_ref()?;
            bands.filter(|_| is_same(pair, &now))
        })
    }
}

fn pair(store: Store, side: Side) -> Option<Pair> {
    side.with_both(store, |first, second| {
        (Arc::clone(&first.plan), Arc::clone(&second.plan))
    })
}

fn is_same(one: &Pair, other: &Pair) -> bool {
    Arc::ptr_eq(&one.0, &other.0) && Arc::ptr_eq(&one.1, &other.1)
}
