//! A list of marks and what writes each into its element. One effect follows all of a list: a drag
//! changes a few of many marks sixty times a second, and what writes a mark knows what of it is new.

use super::drawing::role_class;
use super::mark_ground::Ground;
use super::mark_screen::{Around, Screen};
use super::store::Store;
use crate::editor::View;
use crate::plan::{ElementId, ThingId};
use crate::scene::{Mark, Shape};
use leptos::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

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
const fn is_ground(mark: &Mark) -> bool {
    !matches!(mark.shape, Shape::Dot(_) | Shape::Text { .. })
}

/// How a list's marks follow the zoom.
#[derive(Clone, Copy)]
pub(super) enum Zoom {
    /// They grow with it.
    Grows,
    /// They keep their size in this window on the plan.
    Keeps(Signal<View>),
}

impl Zoom {
    /// That of the drawing's own marks.
    pub fn on_drawing(store: Store, ground: bool) -> Self {
        if ground {
            Self::Grows
        } else {
            Self::Keeps(store.view.into())
        }
    }
}

/// What shows one mark.
pub(super) enum Writer {
    /// A mark that grows with the zoom.
    Ground(Ground),
    /// A mark that keeps its size.
    Screen(Screen),
    /// A view of its own that follows the mark.
    Signal(ArcRwSignal<Mark>),
}

/// What a mark's look hangs on beside the mark.
struct Seen<'a> {
    selection: Option<&'a ElementId>,
    hovered: Option<&'a ElementId>,
    things: &'a BTreeSet<ThingId>,
    around: Option<Around>,
}

impl Seen<'_> {
    fn is_element_lit(&self, mark: &Mark) -> bool {
        let element = mark.element.as_ref();
        element.is_some() && (element == self.selection || element == self.hovered)
    }

    fn is_thing_lit(&self, mark: &Mark) -> bool {
        let thing = mark.thing.as_ref();
        thing.is_some_and(|id| self.things.contains(id))
    }
}

impl Writer {
    fn write(&mut self, mark: &Mark, seen: &Seen<'_>) {
        match (self, &seen.around) {
            (Self::Ground(ground), _) => {
                ground.write(mark, seen.is_element_lit(mark) || seen.is_thing_lit(mark));
            }
            (Self::Screen(screen), Some(around)) => {
                screen.write(mark, seen.is_element_lit(mark), around);
            }
            // Such a list's marks grow with the zoom.
            (Self::Screen(_), None) => {}
            (Self::Signal(signal), _) => {
                if signal.with_untracked(|known| known != mark) {
                    signal.set(mark.clone());
                }
            }
        }
    }
}

enum Entry {
    /// Its view is not built yet.
    Waiting(Mark),
    Shown(Writer),
}

impl Entry {
    fn take(&mut self, mark: &Mark, seen: &Seen<'_>) {
        match self {
            Self::Waiting(waiting) => waiting.clone_from(mark),
            Self::Shown(writer) => writer.write(mark, seen),
        }
    }
}

/// The marks in the order of the keys, and the place of each id there.
#[derive(Default)]
struct Entries {
    all: Vec<Entry>,
    places: BTreeMap<String, usize>,
}

/// Hands on each mark of a list in turn.
type Visit<'a> = &'a dyn Fn(&mut dyn FnMut(&Mark));

#[derive(Clone, Copy)]
pub(super) struct MarkList {
    /// The marks from back to front.
    pub keys: RwSignal<Vec<Key>>,
    entries: StoredValue<Entries, LocalStorage>,
    /// Told when a view was built, into which nothing is written yet.
    built: RwSignal<()>,
    pub store: Store,
    pub zoom: Zoom,
}

impl MarkList {
    /// Those marks that `visit` hands on which follow the zoom as `zoom` says, in drawing order,
    /// followed wherever `visit` reads signals.
    pub fn following(
        store: Store,
        zoom: Zoom,
        visit: impl Fn(&mut dyn FnMut(&Mark)) + 'static,
    ) -> Self {
        let list = Self {
            keys: RwSignal::default(),
            entries: StoredValue::new_local(Entries::default()),
            built: RwSignal::new(()),
            store,
            zoom,
        };
        let grows = matches!(zoom, Zoom::Grows);
        Effect::new(move |_| {
            list.built.track();
            list.take(&|take| {
                visit(&mut |mark| {
                    if is_ground(mark) == grows {
                        take(mark);
                    }
                });
            });
        });
        list
    }

    /// The mark of `key`, while nothing shows it.
    pub fn waiting(self, key: &Key) -> Option<Mark> {
        self.entries.with_value(|entries| {
            let place = *entries.places.get(&key.id)?;
            match entries.all.get(place)? {
                Entry::Waiting(mark) => Some(mark.clone()),
                Entry::Shown(_) => None,
            }
        })
    }

    /// Has `writer` show the mark of this id from now on.
    pub fn show(self, id: &str, writer: Writer) {
        self.entries.update_value(|entries| {
            let place = entries.places.get(id);
            if let Some(entry) = place.and_then(|place| entries.all.get_mut(*place)) {
                *entry = Entry::Shown(writer);
            }
        });
        self.built.set(());
    }

    /// The mark, for a view of its own that follows it.
    pub fn followed(self, mark: Mark) -> RwSignal<Mark> {
        let id = mark.id.clone();
        let signal = ArcRwSignal::new(mark);
        self.show(&id, Writer::Signal(signal.clone()));
        signal.into()
    }

    /// What the marks' look hangs on now; follows it.
    fn with_seen(self, look: impl FnOnce(&Seen<'_>)) {
        let store = self.store;
        let around = match self.zoom {
            Zoom::Grows => None,
            Zoom::Keeps(view) => Some(Around {
                view: view.get(),
                letter_scale: store.letter_scale.get(),
                diameter: store.diameter.get(),
                words: store.words(),
            }),
        };
        store.selection.with(|selection| {
            store.hovered.with(|hovered| {
                store.things.with(|things| {
                    look(&Seen {
                        selection: selection.as_ref(),
                        hovered: hovered.as_ref(),
                        things,
                        around,
                    });
                });
            });
        });
    }

    fn take(self, visit: Visit<'_>) {
        let mut new_keys = None;
        self.with_seen(|seen| {
            self.entries.update_value(|entries| {
                self.keys.with_untracked(|keys| {
                    if !entries.write(keys, visit, seen) {
                        new_keys = Some(entries.sort_anew(keys, visit, seen));
                    }
                });
            });
        });
        if let Some(keys) = new_keys {
            self.keys.set(keys);
        }
    }
}

impl Entries {
    /// Writes the marks as long as they are those of the keys; gives whether all were.
    fn write(&mut self, keys: &[Key], visit: Visit<'_>, seen: &Seen<'_>) -> bool {
        let mut known = keys.iter().zip(&mut self.all);
        let mut same = true;
        visit(&mut |mark| {
            if !same {
                return;
            }
            match known.next() {
                Some((key, entry)) if key.is_of(mark) => entry.take(mark, seen),
                _ => same = false,
            }
        });
        same && known.next().is_none()
    }

    /// Takes marks of other keys than `old`, and gives theirs. What is shown already stays so.
    fn sort_anew(&mut self, old: &[Key], visit: Visit<'_>, seen: &Seen<'_>) -> Vec<Key> {
        let places = core::mem::take(&mut self.places);
        let all = core::mem::take(&mut self.all).into_iter();
        let mut all: Vec<Option<Entry>> = all.map(Some).collect();
        let mut keys = Vec::with_capacity(old.len());
        visit(&mut |mark| {
            let place = places.get(&mark.id);
            let place = place.filter(|place| old.get(**place).is_some_and(|key| key.is_of(mark)));
            let known = place.and_then(|place| all.get_mut(*place)?.take());
            let mut entry = known.unwrap_or_else(|| Entry::Waiting(mark.clone()));
            entry.take(mark, seen);
            self.places.insert(mark.id.clone(), keys.len());
            self.all.push(entry);
            keys.push(Key::of(mark));
        });
        keys
    }
}
