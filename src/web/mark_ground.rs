//! What is written of a mark that grows with the zoom into its element. One effect a mark, and only
//! what is new is written: a drag changes a few of many marks sixty times a second.

use super::drawing::role_class;
use crate::plan::Point;
use crate::scene::{Colour, Mark, Role, Shape, Step, cividis};
use std::fmt::Write;
use web_sys::Element;

/// How many steps of colour the cores show: more than are told apart, fewer than a drag runs through.
const SHADES: f64 = 64.0;

/// The element of a mark, and what was written into it last.
pub(super) struct Ground {
    element: Element,
    lit: Option<bool>,
    shape: Option<Shape>,
    width: Option<f64>,
    colour: Option<Colour>,
}

impl Ground {
    /// Nothing is written yet.
    pub fn new(element: Element) -> Self {
        Self {
            element,
            lit: None,
            shape: None,
            width: None,
            colour: None,
        }
    }

    /// Writes what is new.
    pub fn write(&mut self, mark: &Mark, lit: bool) {
        if self.lit.replace(lit) != Some(lit) {
            set_class(&self.element, role_class(&mark.role), lit, "lit");
        }
        if self.shape.as_ref() != Some(&mark.shape) {
            self.write_shape(&mark.shape);
            self.shape = Some(mark.shape.clone());
        }
        let width = stroke(mark.width.metres());
        if width > 0.0 && self.width.replace(width) != Some(width) {
            self.set("stroke-width", width);
        }
        if mark.role == Role::Core {
            let colour = cividis((mark.weight * SHADES).round() / SHADES);
            if self.colour.replace(colour) != Some(colour) {
                set(&self.element, "stroke", &colour.to_string());
            }
        }
    }

    fn write_shape(&self, shape: &Shape) {
        match shape {
            Shape::Path(steps) => set(&self.element, "d", &path(steps)),
            Shape::Circle { centre, radius } => {
                self.set("cx", centre.x);
                self.set("cy", centre.y);
                self.set("r", radius.metres());
            }
            Shape::Picture {
                corner,
                width,
                depth,
                ..
            } => {
                self.set("x", corner.x);
                self.set("y", corner.y);
                self.set("width", width.metres());
                self.set("height", depth.metres());
            }
            // These keep their size on the screen.
            Shape::Dot(_) | Shape::Text { .. } => {}
        }
    }

    fn set(&self, name: &str, metres: f64) {
        set(&self.element, name, &drawn(metres).to_string());
    }
}

/// Writes an attribute.
pub(super) fn set(element: &Element, name: &str, value: &str) {
    // A name of plain letters is never refused.
    let _ = element.set_attribute(name, value);
}

/// Writes the class of a role, with one more where `also` says so.
pub(super) fn set_class(element: &Element, class: &str, also: bool, more: &str) {
    if also {
        set(element, "class", &format!("{class} {more}"));
    } else {
        set(element, "class", class);
    }
}

/// Metres as they are drawn: to a tenth of a millimetre, which no zoom shows.
fn drawn(metres: f64) -> f64 {
    (metres * 1e4).round() / 1e4
}

/// A line's width as it is drawn: to a millimetre. With each move of a drag the widths of all cores
/// change by less than is seen.
fn stroke(metres: f64) -> f64 {
    (metres * 1e3).round() / 1e3
}

fn path(steps: &[Step]) -> String {
    let mut data = String::new();
    for step in steps {
        // Writing into a string cannot fail.
        let _ = match *step {
            Step::Move(Point { x, y }) => write!(data, "M{} {}", drawn(x), drawn(y)),
            Step::Line(Point { x, y }) => write!(data, "L{} {}", drawn(x), drawn(y)),
            Step::Arc {
                to: Point { x, y },
                radius,
                clockwise,
            } => {
                let (radius, sweep) = (drawn(radius), u8::from(clockwise));
                write!(
                    data,
                    "A{radius} {radius} 0 0 {sweep} {} {}",
                    drawn(x),
                    drawn(y)
                )
            }
            Step::Close => write!(data, "Z"),
        };
    }
    data
}
