//! Where the texts of a drawing stand on paper: beside what they name, clear of the duct and of one
//! another as far as there is room.

use super::DrawingWish;
use crate::plan::{Heading, Plan, Point};
use crate::report::words::{Message, say};
use crate::scene::{Mark, Role, Shape, Step, Text};

/// Height of letters, mm.
pub(super) const LETTERS: f64 = 2.6;
/// Of the circle about a rank, mm.
pub(super) const RANK_RADIUS: f64 = 1.95;
/// How wide a letter is taken to be, in heights: the widest of common sans-serif letters in the mean.
const LETTER_WIDTH: f64 = 0.58;
/// From the duct to a text, mm.
const GAP: f64 = 0.9;
/// The most letters of a name.
const LONGEST_NAME: usize = 40;
/// Of more texts, or more places of the duct, none is moved out of another's way: no house has them.
const MOST_TEXTS: usize = 200;
const MOST_PLACES: usize = 4_000;
/// What lying on another text, or on a place of the duct, is worth of moving aside, mm; and how much more
/// a rank stays by its element than a length does.
const ON_TEXT: f64 = 30.0;
const ON_DUCT: f64 = 4.0;
const RANK_STAYS: f64 = 2.5;
/// From place to place along the duct, mm.
const STEP: f64 = 1.5;

/// A text and the middle of where it stands, mm from the plan's own zero.
pub(super) struct PlacedText {
    pub at: (f64, f64),
    pub words: String,
    pub is_rank: bool,
}

impl PlacedText {
    fn half(&self) -> (f64, f64) {
        if self.is_rank {
            (RANK_RADIUS, RANK_RADIUS)
        } else {
            (text_width(&self.words) / 2.0, LETTERS * 0.55)
        }
    }

    /// The corners of the room that it takes up.
    pub(super) fn corners(&self) -> ((f64, f64), (f64, f64)) {
        let ((x, y), (half, tall)) = (self.at, self.half());
        ((x - half, y - tall), (x + half, y + tall))
    }

    fn meets(&self, other: &Self) -> bool {
        let ((left, top), (right, bottom)) = self.corners();
        let ((other_left, other_top), (other_right, other_bottom)) = other.corners();
        left < other_right && other_left < right && top < other_bottom && other_top < bottom
    }

    /// Whether it lies on a round place of this radius.
    fn covers(&self, (x, y): (f64, f64), radius: f64) -> bool {
        let ((left, top), (right, bottom)) = self.corners();
        (left - radius..right + radius).contains(&x) && (top - radius..bottom + radius).contains(&y)
    }
}

/// All texts of `marks`, placed.
pub(super) fn placed_texts(plan: &Plan, marks: &[Mark], wish: DrawingWish) -> Vec<PlacedText> {
    let millimetres = 1000.0 / f64::from(wish.scale);
    let scaled = |point: Point| (point.x * millimetres, point.y * millimetres);
    let radius = plan.run.diameter.metres() / 2.0 * millimetres;
    let duct = duct_places(marks, &scaled);
    let texts = marks.iter().filter_map(|mark| match &mark.shape {
        Shape::Text { at, aside, text } => Some((mark, scaled(*at), *aside, text)),
        _ => None,
    });
    let moves = texts.clone().count() <= MOST_TEXTS && duct.len() <= MOST_PLACES;
    let mut placed: Vec<PlacedText> = Vec::new();
    for (mark, at, aside, text) in texts {
        let words = words(text, wish);
        let is_rank = matches!(mark.role, Role::Rank);
        let mut text = PlacedText { at, words, is_rank };
        let Some(aside) = aside else {
            placed.push(text);
            continue;
        };
        let places = places(&text, at, aside, radius);
        let meant = places[0];
        #[allow(clippy::cast_precision_loss, reason = "a few")]
        let cost = |text: &PlacedText| {
            let on_texts = placed.iter().filter(|other| text.meets(other)).count() as f64;
            let on_duct = duct.iter().filter(|at| text.covers(**at, radius)).count() as f64;
            let off = (text.at.0 - meant.0).hypot(text.at.1 - meant.1);
            let off = if is_rank { off * RANK_STAYS } else { off };
            on_texts * ON_TEXT + on_duct * ON_DUCT + off
        };
        text.at = meant;
        if moves {
            let mut least = cost(&text);
            let mut best = meant;
            for place in places {
                text.at = place;
                let own = cost(&text);
                if own < least {
                    (least, best) = (own, place);
                }
            }
            text.at = best;
        }
        placed.push(text);
    }
    placed
}

/// Where a text may stand, the place that it is meant for first: farther off, on the other side, and
/// moved along.
fn places(text: &PlacedText, at: (f64, f64), aside: Heading, radius: f64) -> Vec<(f64, f64)> {
    /// Rows farther off.
    const ROWS: [f64; 4] = [0.0, 1.0, 2.0, 3.0];
    /// Of its own extent.
    const ALONG: [f64; 3] = [0.0, 0.9, -0.9];
    let (half, tall) = text.half();
    let mut found = Vec::new();
    for row in ROWS {
        for along in ALONG {
            for side in [1.0, -1.0] {
                let (right, down) = (aside.x * side, aside.y * side);
                // As far as its own edge is clear of the duct.
                let own = right.abs() * half + down.abs() * tall;
                let reach = radius + GAP + own + row * (LETTERS + GAP);
                let shift = along * 2.0 * (down.abs() * half + right.abs() * tall);
                found.push((
                    at.0 + right * reach - down * shift,
                    at.1 + down * reach + right * shift,
                ));
            }
        }
    }
    found
}

/// Places along the duct, close together.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    clippy::cast_precision_loss,
    reason = "a bounded number of places"
)]
fn duct_places(marks: &[Mark], scaled: &dyn Fn(Point) -> (f64, f64)) -> Vec<(f64, f64)> {
    let mut found = Vec::new();
    for mark in marks.iter().filter(|mark| mark.role == Role::Casing) {
        match &mark.shape {
            Shape::Circle { centre, .. } => found.push(scaled(*centre)),
            Shape::Path(steps) => {
                let mut at = None;
                for step in steps {
                    let to = match step {
                        Step::Move(to) | Step::Line(to) | Step::Arc { to, .. } => scaled(*to),
                        Step::Close => continue,
                    };
                    if let (Some((x, y)), false) = (at, matches!(step, Step::Move(_))) {
                        let (right, down): (f64, f64) = (to.0 - x, to.1 - y);
                        let steps = (right.hypot(down) / STEP).ceil().clamp(1.0, 1e3);
                        let share = |step: usize| step as f64 / steps;
                        found.extend(
                            (0..=steps as usize)
                                .map(|step| (x + right * share(step), y + down * share(step))),
                        );
                    }
                    at = Some(to);
                }
            }
            _ => {}
        }
        if found.len() > MOST_PLACES {
            break;
        }
    }
    found
}

fn words(text: &Text, wish: DrawingWish) -> String {
    let words = holdable(&say(wish.language, wish.units, Message::Drawing(text)));
    if words.chars().count() <= LONGEST_NAME {
        return words;
    }
    let short: String = words.chars().take(LONGEST_NAME - 1).collect();
    format!("{}\u{2026}", short.trim_end())
}

/// About how wide a text is, mm.
#[allow(clippy::cast_precision_loss, reason = "a short text")]
pub(super) fn text_width(text: &str) -> f64 {
    text.chars().count() as f64 * LETTERS * LETTER_WIDTH
}

/// Text that XML can hold: a space stands for each control sign and for the two that are no
/// characters (XML 1.0, section 2.2), and for signs that turn the direction of what follows. Marks such
/// as `<` are made inert by the `svg` crate.
pub(in crate::report) fn holdable(text: &str) -> String {
    let turns = |letter: char| matches!(letter, '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    let is_held = |letter: char| {
        !letter.is_control() && !turns(letter) && !matches!(letter, '\u{fffe}' | '\u{ffff}')
    };
    let held = |letter: char| if is_held(letter) { letter } else { ' ' };
    text.chars().map(held).collect()
}
