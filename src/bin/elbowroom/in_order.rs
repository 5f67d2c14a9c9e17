//! Many threads that take items in order and whose texts are written in the same order, with a bound
//! on what waits.

use super::printer::{Printed, Printer};
use super::progress::Progress;
use super::source::{Item, Source};
use std::collections::BTreeMap;
use std::io::{self, Write};
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};

/// So many items are taken at once: few enough that the last ones are shared out evenly. Of the
/// computation.
const TAKEN: usize = 16;
/// A thread waits before it is so many takings ahead of the slowest, for each thread.
const AHEAD: usize = 4;

/// Answers every item of `source` on so many threads, and what came of it all.
///
/// # Errors
///
/// The first that standard output came to; nothing is worked on after it.
pub fn print_all(printer: &Printer, source: Source, threads: usize) -> io::Result<Printed> {
    let progress = Progress::of(source.count);
    let takings = Mutex::new((0, source));
    let writer = Writer {
        state: Mutex::new(State {
            next: 0,
            waiting: BTreeMap::new(),
            all: Printed::default(),
            progress,
            spare: Vec::new(),
            error: None,
        }),
        moved: Condvar::new(),
        ahead: AHEAD * threads,
    };
    locked(&writer.state).write(&printer.head(), &[]);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some((number, items)) = take(&takings) {
                    let mut printed = Printed {
                        out: locked(&writer.state).spare.pop().unwrap_or_default(),
                        ..Printed::default()
                    };
                    for item in items {
                        printer.print(item, &mut printed);
                    }
                    if !writer.deliver(number, printed) {
                        return;
                    }
                }
            });
        }
    });
    let state = writer.state.into_inner();
    let mut state = state.unwrap_or_else(PoisonError::into_inner);
    state.progress.clear();
    state.error.map_or(Ok(state.all), Err)
}

fn take(takings: &Mutex<(usize, Source)>) -> Option<(usize, Vec<Item>)> {
    let mut takings = locked(takings);
    let (number, source) = &mut *takings;
    let items: Vec<Item> = source.take(TAKEN).collect();
    let own = *number;
    *number += 1;
    (!items.is_empty()).then_some((own, items))
}

/// A thread that died has left nothing half done under a lock.
fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

struct Writer {
    state: Mutex<State>,
    moved: Condvar,
    ahead: usize,
}

struct State {
    /// The number of the taking that is written next.
    next: usize,
    waiting: BTreeMap<usize, Printed>,
    /// The sum of what was written.
    all: Printed,
    progress: Progress,
    /// Memory of texts that were written, to be filled anew: to ask the system for it each time takes
    /// longer than to print.
    spare: Vec<Vec<u8>>,
    error: Option<io::Error>,
}

impl Writer {
    /// Whether more is wanted.
    fn deliver(&self, number: usize, printed: Printed) -> bool {
        let mut state = locked(&self.state);
        while number > state.next + self.ahead && state.error.is_none() {
            state = self
                .moved
                .wait(state)
                .unwrap_or_else(PoisonError::into_inner);
        }
        state.waiting.insert(number, printed);
        loop {
            let next = state.next;
            let Some(printed) = state.waiting.remove(&next) else {
                break;
            };
            state.next += 1;
            state.add(printed);
        }
        self.moved.notify_all();
        state.error.is_none()
    }
}

impl State {
    fn add(&mut self, printed: Printed) {
        let all = &mut self.all;
        all.items += printed.items;
        all.plans += printed.plans;
        all.refused += printed.refused;
        all.times += printed.times;
        all.fault = match (all.fault, printed.fault) {
            (Some(one), Some(other)) => Some(one.min(other)),
            (one, other) => one.or(other),
        };
        self.write(&printed.out, &printed.errors);
        let mut spare = printed.out;
        spare.clear();
        self.spare.push(spare);
        let (items, plans, refused) = (self.all.items, self.all.plans, self.all.refused);
        self.progress.tell(items, plans, refused);
    }

    fn write(&mut self, out: &[u8], errors: &[u8]) {
        if self.error.is_none() {
            let mut stdout = io::stdout().lock();
            let written = stdout.write_all(out).and_then(|()| stdout.flush());
            self.error = written.err();
        }
        // Nobody is left to be told where standard error is gone.
        let _ = io::stderr().write_all(errors);
    }
}
