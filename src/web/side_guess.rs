//! Guess first: the second run's figures are hidden until a class has committed itself.

use super::side::Side;
use super::side_words::{say, side_text};
use super::store::Store;
use crate::plan::Quantity;
use crate::report::words::{Message, SideLabel, SideMessage};
use crate::report::{GuessSpread, quantity_of, quantity_shown};
use crate::units::{Length, UnitSystem, parse_length, parse_number};
use leptos::html;
use leptos::prelude::*;

/// More guesses than any class has.
const MOST_GUESSES: usize = 200;

/// What is guessed, and the guesses.
#[derive(Clone, Copy)]
pub(super) struct Guess {
    is_on: RwSignal<bool>,
    asks: RwSignal<Quantity>,
    /// In SI, in the order in which they came.
    given: RwSignal<Vec<f64>>,
    is_shown: RwSignal<bool>,
}

impl Guess {
    pub fn new() -> Self {
        Self {
            is_on: RwSignal::new(false),
            asks: RwSignal::new(Quantity::Airflow),
            given: RwSignal::new(Vec::new()),
            is_shown: RwSignal::new(false),
        }
    }

    /// Whether the figures are hidden.
    pub fn hides(self) -> bool {
        self.is_on.get() && !self.is_shown.get()
    }

    /// Whether the figures were hidden and are shown now.
    pub fn is_answered(self) -> bool {
        self.is_on.get() && self.is_shown.get()
    }

    /// The figure that is asked for.
    pub fn asked(self) -> Quantity {
        self.asks.get()
    }

    /// Asks for a figure anew.
    pub fn ask(self, quantity: Quantity) {
        self.asks.set(quantity);
        self.given.set(Vec::new());
        self.is_shown.set(false);
        self.is_on.set(true);
    }

    /// Nothing is hidden or asked.
    pub fn lay_down(self) {
        self.is_on.set(false);
        self.is_shown.set(false);
        self.given.set(Vec::new());
    }
}

#[component]
pub(super) fn SideGuess() -> impl IntoView {
    let side = expect_context::<Side>();
    let Guess {
        is_on,
        is_shown,
        asks,
        ..
    } = side.guess;
    let turn = move |_| {
        if is_on.get_untracked() {
            side.guess.lay_down();
        } else {
            side.guess.ask(asks.get_untracked());
        }
    };
    view! {
        <div class="side-guess">
            <button
                type="button"
                class="toggle"
                aria-pressed=move || is_on.get().to_string()
                on:click=turn
            >
                {side_text(SideLabel::GuessFirst)}
            </button>
            <Show when=move || is_on.get()>
                <Show when=move || is_shown.get() fallback=|| view! { <Asking/> }>
                    <Spread/>
                    <button type="button" on:click=move |_| side.guess.ask(asks.get_untracked())>
                        {side_text(SideLabel::GuessAgain)}
                    </button>
                </Show>
            </Show>
        </div>
    }
}

/// What is asked, a field for the next guess, and those that are in.
#[component]
fn Asking() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let Guess {
        asks,
        given,
        is_shown,
        ..
    } = side.guess;
    let field = NodeRef::<html::Input>::new();
    let wrong = RwSignal::new(String::new());
    let add = move || {
        let Some(input) = field.get_untracked() else {
            return;
        };
        match understood(store, asks.get_untracked(), &input.value()) {
            Ok(guess) => {
                given.update(|given| {
                    if given.len() < MOST_GUESSES {
                        given.push(guess);
                    }
                });
                wrong.set(String::new());
                input.set_value("");
            }
            Err(why) => wrong.set(why),
        }
        let _ = input.focus();
    };
    let choices = Quantity::ALL.map(|quantity| {
        let place = place_of(quantity).to_string();
        view! {
            <option value=place selected=move || asks.get() == quantity>
                {move || say(store, SideMessage::Quantity(quantity))}
            </option>
        }
    });
    let choose = move |event| {
        let place = event_target_value(&event).parse::<usize>().ok();
        if let Some(quantity) = place.and_then(|place| Quantity::ALL.get(place)) {
            side.guess.ask(*quantity);
        }
    };
    let labelled = move || {
        let unit = quantity_shown(store.units.get(), asks.get(), 0.0).unit;
        let name = side_text(SideLabel::GuessField);
        if unit.is_empty() {
            name
        } else {
            format!("{name} ({unit})")
        }
    };
    view! {
        <p class="fine">{side_text(SideLabel::GuessHint)}</p>
        <div class="field">
            <label for="side-asks">{side_text(SideLabel::GuessWhat)}</label>
            <select id="side-asks" on:change=choose>{choices}</select>
        </div>
        <div class="field">
            <label for="side-guess">{labelled}</label>
            <input
                node_ref=field
                id="side-guess"
                type="text"
                inputmode="decimal"
                autocomplete="off"
                aria-describedby="side-guess-wrong"
                aria-invalid=move || (!wrong.with(String::is_empty)).to_string()
                on:keydown=move |event| if event.key() == "Enter" { add(); }
            />
            <p id="side-guess-wrong" class="field-note" role="alert">{move || wrong.get()}</p>
        </div>
        <div class="more-buttons">
            <button type="button" on:click=move |_| add()>{side_text(SideLabel::GuessAdd)}</button>
            <button
                type="button"
                disabled=move || given.with(Vec::is_empty)
                on:click=move |_| is_shown.set(true)
            >
                {side_text(SideLabel::GuessShow)}
            </button>
        </div>
        <Given/>
    }
}

/// The guesses that are in, each to be taken out.
#[component]
fn Given() -> impl IntoView {
    let store = expect_context::<Store>();
    let Guess { asks, given, .. } = expect_context::<Side>().guess;
    let list = move || {
        let (units, quantity) = (store.units.get(), asks.get());
        let one = |(place, guess): (usize, f64)| {
            let shown = quantity_shown(units, quantity, guess).to_string();
            let named = format!("{}: {shown}", side_text(SideLabel::GuessTakeOut));
            let take_out = move |_| {
                given.update(|given| {
                    given.remove(place);
                });
            };
            view! {
                <li>
                    {shown}
                    <button type="button" aria-label=named on:click=take_out>"\u{d7}"</button>
                </li>
            }
        };
        given.get().into_iter().enumerate().map(one).collect_view()
    };
    view! {
        <Show
            when=move || !given.with(Vec::is_empty)
            fallback=|| view! { <p class="fine">{side_text(SideLabel::GuessNone)}</p> }
        >
            <ul class="side-guesses" aria-label=side_text(SideLabel::GuessList)>{list}</ul>
        </Show>
    }
}

/// How the guesses spread, and where the figure lies among them.
#[component]
fn Spread() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let Guess { asks, given, .. } = side.guess;
    let spread = move || {
        let (units, quantity) = (store.units.get(), asks.get());
        let figure = side.with_both(store, |_, second| quantity_of(&second.figures, quantity));
        let figure = figure.flatten()?;
        let spread = given.with(|given| GuessSpread::of(given, figure))?;
        let show = |figure: f64| quantity_shown(units, quantity, figure).to_string();
        Some(say(
            store,
            SideMessage::Guesses {
                spread: &spread,
                least: &show(spread.least),
                median: &show(spread.median),
                greatest: &show(spread.greatest),
                figure: &show(figure),
            },
        ))
    };
    view! { <p class="side-spread" role="status">{spread}</p> }
}

fn place_of(quantity: Quantity) -> usize {
    let mut all = Quantity::ALL.iter();
    all.position(|one| *one == quantity).unwrap_or(0)
}

/// A guess as typed, in SI.
fn understood(store: Store, quantity: Quantity, text: &str) -> Result<f64, String> {
    let units = store.units.get_untracked();
    if matches!(quantity, Quantity::DevelopedLength | Quantity::CodeLength) {
        return parse_length(text, units)
            .map(Length::metres)
            .map_err(|error| store.say(Message::LengthText(&error)));
    }
    let typed = parse_number(text).ok_or_else(|| store.say(Message::NotANumber { text }))?;
    Ok(in_si(units, quantity, typed))
}

fn in_si(units: UnitSystem, quantity: Quantity, figure: f64) -> f64 {
    match quantity {
        Quantity::Airflow => units.airflow_from(figure).cubic_metres_per_second(),
        Quantity::BackPressure | Quantity::Loss | Quantity::Draught => {
            units.pressure_from(figure).pascals()
        }
        Quantity::Velocity => units.velocity_from(figure).metres_per_second(),
        Quantity::DevelopedLength | Quantity::EquivalentLength | Quantity::CodeLength => {
            match units {
                UnitSystem::UsCustomary => Length::from_feet(figure).metres(),
                UnitSystem::Si => figure,
            }
        }
    }
}
