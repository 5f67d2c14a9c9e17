//! The scale of a drawing: a bar of a round length, and the scale in words.

use super::texts::{LETTERS, text_width};
use super::{INK, MARGIN, Sheet};
use crate::report::words::{HandoverMessage, Message, say};
use crate::scene::scale_bar;
use crate::units::Length;
use svg::node::element::path::Data;
use svg::node::element::{Group, Path, Text};

/// How high the strip at the foot is, mm.
pub(super) const FOOT: f64 = 9.0;
/// The longest scale bar, mm, and the number of pixels that the page's own longest bar has.
const LONGEST_BAR: f64 = 50.0;
const PAGE_BAR: f64 = 90.0;

impl Sheet {
    /// How wide the foot is at least.
    pub(super) fn foot_width(&self) -> f64 {
        self.bar() + text_width(&self.scale_words()) + 5.0 * MARGIN
    }

    fn scale_words(&self) -> String {
        let message = HandoverMessage::Scale(self.wish.scale);
        say(
            self.wish.language,
            self.wish.units,
            Message::Handover(message),
        )
    }

    /// The length that the scale bar stands for.
    fn bar_length(&self) -> Length {
        let metres = LONGEST_BAR / self.millimetres_per_metre();
        scale_bar(self.wish.units, metres / PAGE_BAR)
    }

    /// The scale bar's length on paper, mm.
    fn bar(&self) -> f64 {
        self.bar_length().metres() * self.millimetres_per_metre()
    }

    /// The scale bar and the scale in words.
    pub(super) fn foot(&self) -> Group {
        let (_, height) = self.size();
        let (from, to) = (2.0 * MARGIN, 2.0 * MARGIN + self.bar());
        let line = height - MARGIN;
        let bar = Data::new()
            .move_to((from, line))
            .line_to((to, line))
            .move_to((from, line - 1.5))
            .line_to((from, line + 1.0))
            .move_to((to, line - 1.5))
            .line_to((to, line + 1.0));
        let length = self.wish.units.length(self.bar_length()).to_string();
        let words = |text: String, x: f64, y: f64| {
            Text::new(text)
                .set("x", x)
                .set("y", y)
                .set("font-size", LETTERS)
                .set("fill", INK)
        };
        Group::new()
            .add(
                Path::new()
                    .set("class", "scale-bar")
                    .set("d", bar)
                    .set("fill", "none")
                    .set("stroke", INK)
                    .set("stroke-width", 0.4),
            )
            .add(words("0".to_owned(), from - 0.7, line - 2.4))
            .add(words(length, to, line - 2.4).set("text-anchor", "middle"))
            .add(words(self.scale_words(), to + 2.0 * MARGIN, line))
    }
}
