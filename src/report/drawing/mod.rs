//! The drawing as an SVG file: the same marks as the page, written by the `svg` crate.

mod foot;
mod look;
mod texts;

use super::words::Language;
use crate::plan::{Bounds, Plan, Point};
use crate::scene::{Mark, Shape, Step, scene};
use crate::system::Ledger;
use crate::units::UnitSystem;
use foot::FOOT;
use look::Look;
use svg::Document;
use svg::node::element::path::Data;
use svg::node::element::{Circle, Group, Image, Path, Rectangle, Text as TextElement};
pub(super) use texts::holdable;
use texts::{LETTERS, PlacedText, RANK_RADIUS, placed_texts};

/// The scale of a drawing that is saved by itself.
const SAVED_SCALE: u32 = 20;
/// White about the drawing, mm.
const MARGIN: f64 = 3.0;
/// The colour of lines and letters.
const INK: &str = "#1b1f24";
/// Letters that every system draws alike or has a like of.
pub(super) const FONTS: &str = "Arial, 'Liberation Sans', Helvetica, sans-serif";

/// How a drawing is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DrawingWish {
    /// The language.
    pub language: Language,
    /// The units.
    pub units: UnitSystem,
    /// One to so many.
    pub scale: u32,
    /// Whether a bar and words at the foot say the scale.
    pub tells_scale: bool,
}

/// The drawing of `plan` on paper, true to scale (1 to 20), as the text of an SVG file.
pub fn drawing_svg(
    plan: &Plan,
    ledger: Option<&Ledger>,
    language: Language,
    units: UnitSystem,
) -> String {
    let wish = DrawingWish {
        language,
        units,
        scale: SAVED_SCALE,
        tells_scale: true,
    };
    let mut text = drawing_at(plan, ledger, wish);
    text.push('\n');
    text
}

/// The drawing of `plan`, true to the wished scale, with a bar that shows it, as an SVG element.
pub fn drawing_at(plan: &Plan, ledger: Option<&Ledger>, wish: DrawingWish) -> String {
    let marks = scene(plan, ledger);
    let sheet = Sheet::of(plan, &marks, wish);
    let (width, height) = sheet.size();
    let mut group = Group::new();
    for mark in &marks {
        group = sheet.add(group, mark);
    }
    for text in &sheet.texts {
        group = sheet.text(group, text);
    }
    let paper = Rectangle::new()
        .set("width", width)
        .set("height", height)
        .set("fill", "#ffffff");
    let document = Document::new()
        .set("width", format!("{width:.3}mm"))
        .set("height", format!("{height:.3}mm"))
        .set("viewBox", (0.0, 0.0, width, height))
        .set("font-family", FONTS)
        .add(paper)
        .add(group);
    if wish.tells_scale {
        document.add(sheet.foot()).to_string()
    } else {
        document.to_string()
    }
}

/// How wide the drawing is on paper, mm.
pub(super) fn drawing_width(plan: &Plan, ledger: Option<&Ledger>, wish: DrawingWish) -> f64 {
    Sheet::of(plan, &scene(plan, ledger), wish).size().0
}

/// The greatest usual scale at which the drawing fits into `room`, mm by mm.
pub fn fitting_scale(
    plan: &Plan,
    ledger: Option<&Ledger>,
    language: Language,
    units: UnitSystem,
    room: (f64, f64),
) -> u32 {
    /// Inches to the foot by halves; round numbers.
    const US_CUSTOMARY: [u32; 14] = [
        12, 16, 24, 32, 48, 64, 96, 128, 192, 384, 768, 1_536, 6_144, 24_576,
    ];
    const SI: [u32; 14] = [
        10, 20, 25, 50, 75, 100, 200, 250, 500, 1_000, 2_000, 5_000, 10_000, 25_000,
    ];
    let scales = match units {
        UnitSystem::UsCustomary => US_CUSTOMARY,
        UnitSystem::Si => SI,
    };
    let marks = scene(plan, ledger);
    let fits = |scale: u32| {
        let wish = DrawingWish {
            language,
            units,
            scale,
            tells_scale: true,
        };
        let (width, height) = Sheet::of(plan, &marks, wish).size();
        width <= room.0 && height <= room.1
    };
    let fitting = scales.into_iter().find(|scale| fits(*scale));
    fitting.unwrap_or(scales[scales.len() - 1])
}

struct Sheet {
    /// The corners of all that is drawn, mm from the plan's own zero.
    least: (f64, f64),
    greatest: (f64, f64),
    texts: Vec<PlacedText>,
    wish: DrawingWish,
}

impl Sheet {
    fn of(plan: &Plan, marks: &[Mark], wish: DrawingWish) -> Self {
        let bounds = Bounds::of(plan);
        let millimetres = 1000.0 / f64::from(wish.scale);
        let scaled = |point: Point| (point.x * millimetres, point.y * millimetres);
        let mut sheet = Self {
            least: scaled(bounds.least),
            greatest: scaled(bounds.greatest),
            texts: placed_texts(plan, marks, wish),
            wish,
        };
        // A text may stand beyond everything that it names.
        for text in &sheet.texts {
            let ((left, top), (right, bottom)) = text.corners();
            sheet.least = (sheet.least.0.min(left), sheet.least.1.min(top));
            sheet.greatest = (sheet.greatest.0.max(right), sheet.greatest.1.max(bottom));
        }
        sheet
    }

    fn millimetres_per_metre(&self) -> f64 {
        1000.0 / f64::from(self.wish.scale)
    }

    /// Width and height with margins and foot, mm; the foot's text has room at least.
    fn size(&self) -> (f64, f64) {
        let width = self.greatest.0 - self.least.0 + 2.0 * MARGIN;
        let height = self.greatest.1 - self.least.1 + 2.0 * MARGIN;
        if !self.wish.tells_scale {
            return (width, height);
        }
        (width.max(self.foot_width()), height + FOOT)
    }

    /// From the plan's own zero to the paper's corner, mm.
    fn shifted(&self, (x, y): (f64, f64)) -> (f64, f64) {
        (x - self.least.0 + MARGIN, y - self.least.1 + MARGIN)
    }

    fn place(&self, point: Point) -> (f64, f64) {
        let millimetres = self.millimetres_per_metre();
        self.shifted((point.x * millimetres, point.y * millimetres))
    }

    fn add(&self, group: Group, mark: &Mark) -> Group {
        let look = Look::of(mark, self.millimetres_per_metre());
        match &mark.shape {
            // Handles belong to the page; texts lie over everything else.
            Shape::Dot(_) | Shape::Text { .. } => group,
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
                        .set("r", radius.metres() * self.millimetres_per_metre())
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
                        .set("width", width.metres() * self.millimetres_per_metre())
                        .set("height", depth.metres() * self.millimetres_per_metre())
                        .set("preserveAspectRatio", "none")
                        .set("opacity", 0.5)
                        .set(
                            "href",
                            format!("data:{};base64,{data}", coding.media_type()),
                        ),
                )
            }
        }
    }

    /// A placed text; a rank stands in a circle.
    fn text(&self, group: Group, text: &PlacedText) -> Group {
        let (x, y) = self.shifted(text.at);
        let mut group = group;
        if text.is_rank {
            group = group.add(
                Circle::new()
                    .set("cx", x)
                    .set("cy", y)
                    .set("r", RANK_RADIUS)
                    .set("fill", "#ffffff")
                    .set("stroke", INK)
                    .set("stroke-width", 0.3),
            );
        }
        let words = TextElement::new(text.words.clone())
            .set("x", x)
            .set("y", y + LETTERS * 0.35)
            .set("font-size", LETTERS)
            .set("text-anchor", "middle")
            .set("fill", INK);
        group.add(if text.is_rank {
            words
        } else {
            // White about the letters, where they lie over a line.
            words
                .set("stroke", "#ffffff")
                .set("stroke-width", 0.7)
                .set("stroke-linejoin", "round")
                .set("paint-order", "stroke")
        })
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
                    let radius = radius * self.millimetres_per_metre();
                    let (x, y) = self.place(to);
                    data.elliptical_arc_to((radius, radius, 0, 0, u8::from(clockwise), x, y))
                }
                Step::Close => data.close(),
            };
        }
        data
    }
}
