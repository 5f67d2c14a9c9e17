//! Lengths as people type them: `12' 6"`, `12ft 6in`, `12.5 ft`, `150"`, `3.8m`, `3 1/2"`, `5-1/2"`.

use super::number_text::is_ambiguous;
use super::{Length, METRES_PER_FOOT, METRES_PER_INCH, UnitSystem};

/// The longest text that is looked at; a typed length is far shorter.
const LONGEST_TEXT: usize = 64;
/// The largest size that means anything on a plan, m.
const LARGEST_METRES: f64 = 1000.0;

/// Why a typed length was not understood.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum LengthTextError {
    /// Nothing was typed.
    Empty,
    /// More than a length was typed.
    TooLong,
    /// This part is neither a number nor a unit.
    NotUnderstood {
        /// The part as typed.
        part: String,
    },
    /// A comma that may part thousands or decimals.
    AmbiguousComma {
        /// The number as typed.
        part: String,
    },
    /// A number stands where a unit was awaited, or a unit without its number.
    NumberMissing {
        /// The unit that has no number before it.
        unit: String,
    },
    /// Two numbers follow one another and are no mixed fraction.
    UnitMissing {
        /// The number that has no unit after it.
        number: String,
    },
    /// The units do not go together or come in the wrong order, such as inches before feet.
    UnitOrder {
        /// The unit that came too late.
        unit: String,
    },
    /// A fraction with nothing below its line.
    ZeroDivisor,
    /// Larger than a plan can hold.
    TooLarge {
        /// What it came to, m.
        metres: f64,
        /// The limit, m.
        limit_metres: f64,
    },
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Unit {
    Feet,
    Inches,
    Metres,
    Centimetres,
    Millimetres,
}

impl Unit {
    fn metres(self) -> f64 {
        match self {
            Self::Feet => METRES_PER_FOOT,
            Self::Inches => METRES_PER_INCH,
            Self::Metres => 1.0,
            Self::Centimetres => 0.01,
            Self::Millimetres => 0.001,
        }
    }

    fn named(name: &str) -> Option<Self> {
        Some(match name {
            "'" | "ft" | "foot" | "feet" => Self::Feet,
            "\"" | "in" | "inch" | "inches" => Self::Inches,
            "m" | "meter" | "meters" | "metre" | "metres" => Self::Metres,
            "cm" | "centimeter" | "centimeters" | "centimetre" | "centimetres" => Self::Centimetres,
            "mm" | "millimeter" | "millimeters" | "millimetre" | "millimetres" => Self::Millimetres,
            _ => return None,
        })
    }

    /// The unit that may follow this one in a sum such as `12 ft 6 in` or `3 m 20 cm`.
    fn may_be_followed_by(self, next: Self) -> bool {
        matches!(
            (self, next),
            (Self::Feet, Self::Inches)
                | (Self::Metres, Self::Centimetres | Self::Millimetres)
                | (Self::Centimetres, Self::Millimetres)
        )
    }
}

#[derive(Debug, Clone, PartialEq)]
enum Token {
    /// A plain number, its text, and whether it was written with a point or comma.
    Number {
        value: f64,
        text: String,
        whole: bool,
    },
    Fraction(f64, String),
    Unit(Unit, String),
    Plus,
    Minus,
    Hyphen,
    Comma,
}

/// The length that `text` means. A number without a unit is taken in feet or in metres, as
/// `bare_unit` has it; after feet, a bare number is inches. A leading minus makes a drop.
///
/// ```
/// use elbowroom::units::{parse_length, UnitSystem};
/// let length = parse_length("12' 6 1/2\"", UnitSystem::UsCustomary)?;
/// assert!((length.inches() - 150.5).abs() < 1e-9);
/// # Ok::<(), elbowroom::units::LengthTextError>(())
/// ```
pub fn parse_length(text: &str, bare_unit: UnitSystem) -> Result<Length, LengthTextError> {
    if text.chars().count() > LONGEST_TEXT {
        return Err(LengthTextError::TooLong);
    }
    let tokens = tokens(text)?;
    let negative = matches!(tokens.first(), Some(Token::Minus | Token::Hyphen));
    let signed = negative || matches!(tokens.first(), Some(Token::Plus));
    let mut rest = &tokens[usize::from(signed)..];
    if rest.is_empty() {
        return Err(LengthTextError::Empty);
    }
    let mut metres = 0.0;
    let mut last: Option<Unit> = None;
    while !rest.is_empty() {
        // `12'-6"` and `12 ft, 6 in`: what parts two quantities says nothing.
        if last.is_some()
            && let [Token::Hyphen | Token::Comma, after @ ..] = rest
            && !after.is_empty()
        {
            rest = after;
        }
        let (value, text, after) = number(rest)?;
        let (unit, after) = match after {
            // `8-ft` is how signs and schedules write it.
            [Token::Unit(unit, name), after @ ..]
            | [Token::Hyphen, Token::Unit(unit, name), after @ ..] => {
                if let Some(last) = last
                    && !last.may_be_followed_by(*unit)
                {
                    return Err(LengthTextError::UnitOrder { unit: name.clone() });
                }
                (*unit, after)
            }
            [] => (unit_of_bare_number(last, bare_unit, &text)?, after),
            _ => return Err(LengthTextError::UnitMissing { number: text }),
        };
        metres += value * unit.metres();
        last = Some(unit);
        rest = after;
    }
    if metres > LARGEST_METRES {
        return Err(LengthTextError::TooLarge {
            metres,
            limit_metres: LARGEST_METRES,
        });
    }
    Ok(Length::from_metres(if negative { -metres } else { metres }))
}

fn unit_of_bare_number(
    last: Option<Unit>,
    bare_unit: UnitSystem,
    text: &str,
) -> Result<Unit, LengthTextError> {
    match (last, bare_unit) {
        (Some(Unit::Feet), _) => Ok(Unit::Inches),
        (Some(_), _) => Err(LengthTextError::UnitMissing {
            number: text.to_owned(),
        }),
        (None, UnitSystem::UsCustomary) => Ok(Unit::Feet),
        (None, UnitSystem::Si) => Ok(Unit::Metres),
    }
}

/// One number at the head of `tokens`: `12`, `12.5`, `1/2`, `3 1/2` or `3-1/2`.
fn number(tokens: &[Token]) -> Result<(f64, String, &[Token]), LengthTextError> {
    match tokens {
        [
            Token::Number {
                value,
                text,
                whole: true,
            },
            Token::Fraction(part, _),
            rest @ ..,
        ]
        | [
            Token::Number {
                value,
                text,
                whole: true,
            },
            Token::Hyphen,
            Token::Fraction(part, _),
            rest @ ..,
        ] => Ok((value + part, text.clone(), rest)),
        [Token::Number { value, text, .. }, rest @ ..] => Ok((*value, text.clone(), rest)),
        [Token::Fraction(part, text), rest @ ..] => Ok((*part, text.clone(), rest)),
        [Token::Unit(_, name), ..] => Err(LengthTextError::NumberMissing { unit: name.clone() }),
        [Token::Plus, ..] => Err(not_understood("+")),
        [Token::Comma, ..] => Err(not_understood(",")),
        [Token::Minus | Token::Hyphen, ..] => Err(not_understood("-")),
        [] => Err(LengthTextError::Empty),
    }
}

fn not_understood(part: &str) -> LengthTextError {
    LengthTextError::NotUnderstood {
        part: part.to_owned(),
    }
}

fn tokens(text: &str) -> Result<Vec<Token>, LengthTextError> {
    let plain = plain(text);
    let mut tokens = Vec::new();
    let mut rest = plain.as_str();
    while let Some(first) = rest.chars().next() {
        let length = match first {
            ' ' => 1,
            '-' => {
                tokens.push(Token::Hyphen);
                1
            }
            '+' => {
                tokens.push(Token::Plus);
                1
            }
            ',' => {
                tokens.push(Token::Comma);
                1
            }
            '\u{2212}' => {
                tokens.push(Token::Minus);
                first.len_utf8()
            }
            '0'..='9' | '.' => {
                let length = span(rest, |letter| matches!(letter, '0'..='9' | '.' | ',' | '/'));
                tokens.push(number_token(&rest[..length])?);
                length
            }
            '\'' | '"' => {
                // Two feet marks are how some keyboards write inches.
                let length = if rest.starts_with("''") { 2 } else { 1 };
                let inches = first == '"' || length == 2;
                let unit = if inches { Unit::Inches } else { Unit::Feet };
                tokens.push(Token::Unit(unit, rest[..length].to_owned()));
                length
            }
            _ if first.is_alphabetic() => {
                let length = span(rest, char::is_alphabetic);
                let name = &rest[..length];
                let unit = Unit::named(name).ok_or_else(|| LengthTextError::NotUnderstood {
                    part: name.to_owned(),
                })?;
                tokens.push(Token::Unit(unit, name.to_owned()));
                // `12 ft. 6 in.`: the full stop of an abbreviation belongs to it.
                length + usize::from(rest[length..].starts_with('.'))
            }
            _ => {
                return Err(LengthTextError::NotUnderstood {
                    part: first.to_string(),
                });
            }
        };
        rest = &rest[length..];
    }
    Ok(tokens)
}

fn span(text: &str, belongs: impl Fn(char) -> bool) -> usize {
    text.find(|letter| !belongs(letter)).unwrap_or(text.len())
}

fn number_token(text: &str) -> Result<Token, LengthTextError> {
    let wrong = || LengthTextError::NotUnderstood {
        part: text.to_owned(),
    };
    if let Some((over, under)) = text.split_once('/') {
        let over: u32 = over.parse().map_err(|_| wrong())?;
        let under: u32 = under.parse().map_err(|_| wrong())?;
        if under == 0 {
            return Err(LengthTextError::ZeroDivisor);
        }
        let value = f64::from(over) / f64::from(under);
        return Ok(Token::Fraction(value, text.to_owned()));
    }
    if is_ambiguous(text) {
        return Err(LengthTextError::AmbiguousComma {
            part: text.to_owned(),
        });
    }
    let value: f64 = text.replacen(',', ".", 1).parse().map_err(|_| wrong())?;
    Ok(Token::Number {
        value,
        text: text.to_owned(),
        whole: !text.contains(['.', ',']),
    })
}

/// The text in small letters with typographic marks and vulgar fractions made plain.
fn plain(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for letter in text.trim().chars() {
        match letter {
            '\u{2032}' | '\u{2019}' | '\u{2018}' | '`' | '\u{b4}' => plain.push('\''),
            '\u{2033}' | '\u{201d}' | '\u{201c}' => plain.push('"'),
            '\u{2013}' | '\u{2014}' | '\u{2010}' | '\u{2011}' => plain.push('-'),
            '\u{2044}' | '\u{2215}' => plain.push('/'),
            '\u{a0}' | '\u{202f}' | '\u{2009}' | '\t' => plain.push(' '),
            '\u{bc}' => plain.push_str(" 1/4"),
            '\u{bd}' => plain.push_str(" 1/2"),
            '\u{be}' => plain.push_str(" 3/4"),
            '\u{215b}' => plain.push_str(" 1/8"),
            '\u{215c}' => plain.push_str(" 3/8"),
            '\u{215d}' => plain.push_str(" 5/8"),
            '\u{215e}' => plain.push_str(" 7/8"),
            _ => plain.extend(letter.to_lowercase()),
        }
    }
    plain
}
