//! The drawing as an SVG file: the same marks as the page, written by the `svg` crate.

use super::words::{Language, Message, say};
use crate::plan::{Bounds, Plan};
use crate::scene::{Mark, Role, Shape, Step, cividis, scene};
use crate::system::Ledger;
use crate::units::UnitSystem;
use svg::Document;
use svg::node::element::path::Data;
use svg::node::element::{Circle, Group, Image, Path, Text as TextElement};

/// Paper millimetres for each metre of the plan: a scale of 1 to 20.
const MILLIMETRES_PER_METRE: f64 = 50.0;
/// White about the plan, mm.
const MARGIN: f64 = 10.0;
/// Height of letters, mm.
const LETTERS: f64 = 3.0;
/// How far a text stands from the line that it names, mm.
const ASIDE: f64 = 5.5;

/// The drawing of `plan` on paper, true to scale (1 to 20), as the text of an SVG file.
pub fn drawing_svg(
    plan: &Plan,
    ledger: Option<&Ledger>,
    language: Language,
    units: UnitSystem,
) -> String {
    let bounds = Bounds::of(plan);
    let (width, height) = bounds.size();
    let (width, height) = (
        width * MILLIMETRES_PER_METRE + 2.0 * MARGIN,
        height * MILLIMETRES_PER_METRE + 2.0 * MARGIN,
    );
    let sheet = Sheet {
        left: bounds.least.x,
        top: bounds.least.y,
        language,
        units,
    };
    let mut group = Group::new();
    for mark in scene(plan, ledger) {
        group = sheet.add(group, &mark);
    }
    let document = Document::new()
        .set("width", format!("{width:.2}mm"))
        .set("height", format!("{height:.2}mm"))
        .set("viewBox", (0.0, 0.0, width, height))
        .set("font-family", "sans-serif")
        .add(group);
    let mut text = document.to_string();
    text.push('\n');
    text
}

struct Sheet {
    left: f64,
    top: f64,
    language: Language,
    units: UnitSystem,
}

impl Sheet {
    fn place(&self, point: crate::plan::Point) -> (f64, f64) {
        (
            (point.x - self.left) * MILLIMETRES_PER_METRE + MARGIN,
            (point.y - self.top) * MILLIMETRES_PER_METRE + MARGIN,
        )
    }

    fn add(&self, group: Group, mark: &Mark) -> Group {
        let look = Look::of(mark);
        match &mark.shape {
            // Handles belong to the page.
            Shape::Dot(_) => group,
            Shape::Path(steps) => group.add(
                Path::new()
                    .set("d", self.path(steps))
                    .set("fill", look.fill)
                    .set("stroke", look.stroke)
                    .set("stroke-width", look.width)
                    .set("stroke-dasharray", look.dashes)
                    .set("stroke-opacity", look.opacity)
                    .set("stroke-linejoin", "round"),
            ),
            Shape::Circle { centre, radius } => {
                let (x, y) = self.place(*centre);
                group.add(
                    Circle::new()
                        .set("cx", x)
                        .set("cy", y)
                        .set("r", radius.metres() * MILLIMETRES_PER_METRE)
                        .set("fill", look.fill)
                        .set("stroke", look.stroke)
                        .set("stroke-width", look.width),
                )
            }
            Shape::Picture {
                corner,
                width,
                depth,
                coding,
                data,
            } => {
                let (x, y) = self.place(*corner);
                group.add(
                    Image::new()
                        .set("x", x)
                        .set("y", y)
                        .set("width", width.metres() * MILLIMETRES_PER_METRE)
                        .set("height", depth.metres() * MILLIMETRES_PER_METRE)
                        .set("preserveAspectRatio", "none")
                        .set("opacity", 0.5)
                        .set(
                            "href",
                            format!("data:{};base64,{data}", coding.media_type()),
                        ),
                )
            }
            Shape::Text { at, aside, text } => {
                let (mut x, mut y) = self.place(*at);
                if let Some(aside) = aside {
                    (x, y) = (x + aside.x * ASIDE, y + aside.y * ASIDE);
                }
                let words = holdable(&say(self.language, self.units, Message::Drawing(text)));
                let mut group = group;
                if mark.role == Role::Rank {
                    group = group.add(
                        Circle::new()
                            .set("cx", x)
                            .set("cy", y)
                            .set("r", LETTERS * 0.75)
                            .set("fill", "#ffffff")
                            .set("stroke", "#1b1f24")
                            .set("stroke-width", 0.3),
                    );
                }
                group.add(
                    TextElement::new(words)
                        .set("x", x)
                        .set("y", y + LETTERS * 0.35)
                        .set("font-size", LETTERS)
                        .set("text-anchor", "middle")
                        .set("fill", "#1b1f24"),
                )
            }
        }
    }

    fn path(&self, steps: &[Step]) -> Data {
        let mut data = Data::new();
        for step in steps {
            data = match *step {
                Step::Move(to) => data.move_to(self.place(to)),
                Step::Line(to) => data.line_to(self.place(to)),
                Step::Arc {
                    to,
                    radius,
                    clockwise,
                } => {
                    let radius = radius * MILLIMETRES_PER_METRE;
                    let (x, y) = self.place(to);
                    data.elliptical_arc_to((radius, radius, 0, 0, u8::from(clockwise), x, y))
                }
                Step::Close => data.close(),
            };
        }
        data
    }
}

/// How a role looks on paper.
struct Look {
    fill: String,
    stroke: String,
    width: f64,
    dashes: &'static str,
    opacity: f64,
}

impl Look {
    fn of(mark: &Mark) -> Self {
        const HAIRLINE: f64 = 0.25;
        const INK: &str = "#1b1f24";
        let to_scale = mark.width.metres() * MILLIMETRES_PER_METRE;
        let (fill, stroke, width) = match &mark.role {
            Role::OutsideWall => ("none".to_owned(), "#8a9099".to_owned(), to_scale),
            Role::InsideWall => ("none".to_owned(), "#b9bec6".to_owned(), to_scale),
            Role::Window | Role::AirIntake => ("#ffffff".to_owned(), INK.to_owned(), HAIRLINE),
            Role::ObstacleElsewhere | Role::Framing | Role::Zone => {
                ("none".to_owned(), "#6b7280".to_owned(), HAIRLINE)
            }
            Role::Door => ("#ffffff".to_owned(), "#6b7280".to_owned(), HAIRLINE),
            Role::Obstacle => ("#e8eaed".to_owned(), "#6b7280".to_owned(), HAIRLINE),
            Role::Dryer => ("none".to_owned(), INK.to_owned(), HAIRLINE),
            Role::Casing => ("none".to_owned(), INK.to_owned(), to_scale),
            Role::Bore => ("none".to_owned(), "#ffffff".to_owned(), to_scale),
            Role::Flat | Role::Concealed | Role::Corrugation => {
                ("none".to_owned(), INK.to_owned(), to_scale)
            }
            Role::Blockage | Role::Leak => ("none".to_owned(), INK.to_owned(), 4.0 * HAIRLINE),
            Role::WallBox | Role::Wet => ("none".to_owned(), INK.to_owned(), 2.0 * HAIRLINE),
            Role::Core => (
                "none".to_owned(),
                cividis(mark.weight).to_string(),
                to_scale,
            ),
            Role::Floor | Role::Dimension | Role::Extension => {
                ("none".to_owned(), INK.to_owned(), HAIRLINE)
            }
            Role::Picture
            | Role::Ghost
            | Role::Draft
            | Role::Guide
            | Role::Handle
            | Role::Size
            | Role::Label
            | Role::Rank
            | Role::Suspect
            | Role::SuspectLetter
            | Role::Corner(_)
            | Role::NewBend { .. } => ("none".to_owned(), "none".to_owned(), HAIRLINE),
        };
        let (dashes, opacity) = match &mark.role {
            Role::Corrugation => ("0.4 0.8", 0.5),
            Role::Concealed => ("2.5 1.5", 0.25),
            Role::Flat => ("none", 0.15),
            Role::ObstacleElsewhere | Role::Zone => ("1 1", 1.0),
            _ => ("none", 1.0),
        };
        Self {
            fill,
            stroke,
            width,
            dashes,
            opacity,
        }
    }
}

/// Text that XML can hold: a space stands for each control sign and for the two that are no
/// characters (XML 1.0, section 2.2). Marks such as `<` are made inert by the `svg` crate.
fn holdable(text: &str) -> String {
    let is_held = |letter: char| !letter.is_control() && !matches!(letter, '\u{fffe}' | '\u{ffff}');
    let held = |letter: char| if is_held(letter) { letter } else { ' ' };
    text.chars().map(held).collect()
}
