//! The colour of a share: one perceptually even ramp that colour-blind people can order.

/// A colour, 0..255 a channel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Colour {
    /// Red.
    pub red: u8,
    /// Green.
    pub green: u8,
    /// Blue.
    pub blue: u8,
}

impl core::fmt::Display for Colour {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "#{:02x}{:02x}{:02x}", self.red, self.green, self.blue)
    }
}

/// Ten even stops of the cividis ramp.
/// Source: J. R. Nuñez, C. R. Anderton and R. S. Renslow, PLoS ONE 13 (2018) e0199239; the stops as
/// viridisLite tabulates them (from memory).
const STOPS: [(u8, u8, u8); 10] = [
    (0x00, 0x20, 0x4d),
    (0x00, 0x33, 0x6f),
    (0x39, 0x48, 0x6b),
    (0x57, 0x5c, 0x6d),
    (0x70, 0x71, 0x73),
    (0x8a, 0x87, 0x79),
    (0xa6, 0x9d, 0x75),
    (0xc4, 0xb5, 0x6c),
    (0xe4, 0xcf, 0x5b),
    (0xff, 0xea, 0x46),
];

/// The colour of `weight`, 0..1 (cut to that): dark blue for little, yellow for much.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    clippy::cast_precision_loss,
    reason = "indices into ten stops and channels of 0..255"
)]
pub fn cividis(weight: f64) -> Colour {
    let place = weight.clamp(0.0, 1.0) * (STOPS.len() - 1) as f64;
    let below = (place as usize).min(STOPS.len() - 2);
    let share = place - below as f64;
    let (from, to) = (STOPS[below], STOPS[below + 1]);
    let mix = |from: u8, to: u8| {
        (f64::from(from) + (f64::from(to) - f64::from(from)) * share).round() as u8
    };
    Colour {
        red: mix(from.0, to.0),
        green: mix(from.1, to.1),
        blue: mix(from.2, to.2),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Lightness grows along the ramp, so that it can be ordered without seeing colour.
    #[test]
    fn the_ramp_grows_lighter() {
        let lightness = |weight: f64| {
            let colour = cividis(weight);
            0.2126 * f64::from(colour.red)
                + 0.7152 * f64::from(colour.green)
                + 0.0722 * f64::from(colour.blue)
        };
        for percent in 1..=100_i32 {
            let (before, after) = (f64::from(percent - 1) / 100.0, f64::from(percent) / 100.0);
            assert!(lightness(after) >= lightness(before), "{percent} %");
        }
        assert_eq!(cividis(1.0).to_string(), "#ffea46");
    }
}
