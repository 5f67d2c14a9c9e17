//! A list of marks in which each has a signal of its own: what shows one mark follows that mark alone.

use super::drawing::role_class;
use crate::plan::ElementId;
use crate::scene::{Mark, Shape};
use leptos::prelude::*;
use std::collections::BTreeMap;

/// What a mark's view is made for once and for all: a mark that keeps its id but changes any of it,
/// as when another plan is opened, is drawn anew.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub(super) struct Key {
    id: String,
    role: &'static str,
    is_circle: bool,
    element: Option<ElementId>,
}

impl Key {
    fn of(mark: &Mark) -> Self {
        Self {
            id: mark.id.clone(),
            role: role_class(&mark.role),
            is_circle: is_circle(mark),
            element: mark.element.clone(),
        }
    }

    fn is_of(&self, mark: &Mark) -> bool {
        self.id == mark.id
            && self.role == role_class(&mark.role)
            && self.is_circle == is_circle(mark)
            && self.element == mark.element
    }
}

const fn is_circle(mark: &Mark) -> bool {
    matches!(mark.shape, Shape::Circle { .. } | Shape::Picture { .. })
}

/// Whether a mark grows with the zoom.
pub(super) const fn is_ground(mark: &Mark) -> bool {
    !matches!(mark.shape, Shape::Dot(_) | Shape::Text { .. })
}

/// Hands on each mark of a list in turn.
type Visit<'a> = &'a dyn Fn(&mut dyn FnMut(&Mark));

#[derive(Clone, Copy)]
pub(super) struct MarkList {
    /// The marks from back to front.
    pub keys: RwSignal<Vec<Key>>,
    marks: StoredValue<BTreeMap<String, ArcRwSignal<Mark>>>,
}

impl MarkList {
    /// The marks of one layer that `visit` hands on, in drawing order, followed wherever `visit`
    /// reads signals: those that grow with the zoom, or those that keep their size.
    pub fn following(ground: bool, visit: impl Fn(&mut dyn FnMut(&Mark)) + 'static) -> Self {
        let list = Self {
            keys: RwSignal::default(),
            marks: StoredValue::default(),
        };
        Effect::new(move |_| {
            list.take(&|take| {
                visit(&mut |mark| {
                    if is_ground(mark) == ground {
                        take(mark);
                    }
                });
            });
        });
        list
    }

    /// The mark of `key`, while it is there.
    pub fn mark(self, key: &Key) -> Option<RwSignal<Mark>> {
        let mark = self.marks.with_value(|marks| marks.get(&key.id).cloned());
        mark.map(RwSignal::from)
    }

    fn take(self, visit: Visit<'_>) {
        let mut count = 0;
        let mut same = true;
        self.keys.with_untracked(|keys| {
            self.marks.update_value(|marks| {
                visit(&mut |mark| {
                    same &= keys.get(count).is_some_and(|key| key.is_of(mark));
                    count += 1;
                    match marks.get(&mark.id) {
                        None => {
                            marks.insert(mark.id.clone(), ArcRwSignal::new(mark.clone()));
                        }
                        Some(known) if known.with_untracked(|known| known != mark) => {
                            known.set(mark.clone());
                        }
                        Some(_) => {}
                    }
                });
            });
            same &= keys.len() == count;
        });
        if same {
            return;
        }
        let mut keys = Vec::with_capacity(count);
        visit(&mut |mark| keys.push(Key::of(mark)));
        self.marks.update_value(|marks| {
            let is_there: std::collections::BTreeSet<&String> =
                keys.iter().map(|key| &key.id).collect();
            marks.retain(|id, _| is_there.contains(id));
        });
        self.keys.set(keys);
    }
}
