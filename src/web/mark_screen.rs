//! What is written of a mark that keeps its size on the screen into its element, as in `mark_ground`.

use super::drawing::role_class;
use super::mark_ground::set;
use crate::editor::View;
use crate::plan::Heading;
use crate::report::words::FirstWords;
use crate::scene::{Mark, Role, Shape, Text};
use crate::units::{Length, UnitSystem};
use web_sys::Element;

/// How far a text stands from the duct that it names, px, and from its centre line at least.
const ASIDE: f64 = 11.0;
const LEAST_ASIDE: f64 = 18.0;
/// A leg shorter than this on the screen, px, shows neither its length nor the place for a new bend
/// until it is selected.
const SHORT_LEG: f64 = 52.0;
/// A text that stands this much to one side of its line begins, or ends, at the line.
const BESIDE: f64 = 0.7;

/// What a mark's place on the screen hangs on, beside the mark.
#[derive(Clone, Copy)]
pub(super) struct Around {
    /// The window on the marks.
    pub view: View,
    /// How many times larger than drawn the letters are.
    pub letter_scale: f64,
    /// The run's nominal diameter, from which the texts keep clear.
    pub diameter: Length,
    /// The page's words, in its units.
    pub words: FirstWords,
}

/// How a mark is shown beside its place.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Look {
    Plain,
    Lit,
    /// A leg too short for what stands on it.
    Quiet,
}

/// The element of a mark, and what was written into it last.
pub(super) struct Screen {
    element: Element,
    typed: bool,
    look: Option<Look>,
    place: Option<(f64, f64)>,
    anchor: Option<&'static str>,
    text: Option<(Text, UnitSystem)>,
}

impl Screen {
    /// Nothing is written yet. `typed` tells a text that is typed where it stands.
    pub fn new(element: Element, typed: bool) -> Self {
        Self {
            element,
            typed,
            look: None,
            place: None,
            anchor: None,
            text: None,
        }
    }

    /// Writes what is new.
    pub fn write(&mut self, mark: &Mark, lit: bool, around: &Around) {
        let look = if lit {
            Look::Lit
        } else if is_short(mark, around) {
            Look::Quiet
        } else {
            Look::Plain
        };
        if self.look.replace(look) != Some(look) {
            self.write_look(mark, look);
        }
        let (at, aside, text) = match &mark.shape {
            Shape::Dot(at) => (*at, None, None),
            Shape::Text { at, aside, text } => (*at, *aside, Some(text)),
            // These grow with the zoom.
            Shape::Path(_) | Shape::Circle { .. } | Shape::Picture { .. } => return,
        };
        let place = place(around.view.place(at), aside, around);
        if self.place.replace(place) != Some(place) {
            let (x, y) = place;
            set(&self.element, "transform", &format!("translate({x} {y})"));
        }
        if let Some(text) = text {
            self.write_text(text, aside, around.words);
        }
    }

    fn write_look(&self, mark: &Mark, look: Look) {
        let class = role_class(&mark.role);
        let typed = if self.typed { " typed" } else { "" };
        let look = match look {
            Look::Plain => "",
            Look::Lit => " lit",
            Look::Quiet => " quiet",
        };
        set(&self.element, "class", &format!("{class}{look}{typed}"));
    }

    fn write_text(&mut self, text: &Text, aside: Option<Heading>, words: FirstWords) {
        let anchor = anchor(aside);
        if self.anchor.replace(anchor) != Some(anchor) {
            set(&self.element, "text-anchor", anchor);
        }
        let is_old = |(old, units): &(Text, UnitSystem)| old == text && *units == words.units;
        if self.text.as_ref().is_some_and(is_old) {
            return;
        }
        self.text = Some((text.clone(), words.units));
        let words = words.drawing(text);
        let Some(letters) = self.element.last_element_child() else {
            return;
        };
        match letters.first_child() {
            // A new node would be laid out anew.
            Some(node) => node.set_node_value(Some(&words)),
            None => letters.set_text_content(Some(&words)),
        }
    }
}

/// Whether the mark stands on a leg too short for it.
fn is_short(mark: &Mark, around: &Around) -> bool {
    let leg = match (&mark.shape, &mark.role) {
        (
            Shape::Text {
                text: Text::LegLength(length),
                ..
            },
            _,
        ) => *length,
        (_, Role::NewBend { leg, .. }) => *leg,
        _ => return false,
    };
    leg.metres() < SHORT_LEG * around.letter_scale * around.view.metres_per_pixel
}

/// Where a mark at `x` and `y` stands once it is moved aside, px to a hundredth.
fn place((x, y): (f64, f64), aside: Option<Heading>, around: &Around) -> (f64, f64) {
    let hundredths = |pixels: f64| (pixels * 100.0).round() / 100.0;
    let half = around.diameter.metres() / 2.0 / around.view.metres_per_pixel;
    let scale = around.letter_scale;
    let reach = (half + ASIDE * scale).max(LEAST_ASIDE * scale);
    let (right, down) = aside.map_or((0.0, 0.0), |aside| (aside.x * reach, aside.y * reach));
    (hundredths(x + right), hundredths(y + down))
}

const fn anchor(aside: Option<Heading>) -> &'static str {
    match aside {
        Some(aside) if aside.x > BESIDE => "start",
        Some(aside) if aside.x < -BESIDE => "end",
        _ => "middle",
    }
}
