//! Places of the run by a short name in the file: an element, a spot to read at, a thing mended.

use super::element::is_id;
use super::{ElementId, NodeId, Part};
use serde::{Deserialize, Serialize};

impl ElementId {
    /// The element of a name such as `leg:p3` or `elbow:@outlet`; none where it is no such name.
    ///
    /// ```
    /// use elbowroom::plan::ElementId;
    /// assert_eq!(ElementId::from_key("elbow:p1").unwrap().to_string(), "elbow:p1");
    /// assert!(ElementId::from_key("elbow:").is_none());
    /// ```
    pub fn from_key(key: &str) -> Option<Self> {
        let (part, node) = key.split_once(':')?;
        let part = Part::ALL
            .into_iter()
            .find(|candidate| candidate.key() == part)?;
        let node = if node == "@outlet" {
            NodeId::Outlet
        } else if is_id(node) {
            NodeId::Point(node.into())
        } else {
            return None;
        };
        Some(Self { node, part })
    }
}

/// A place to read at, or a joint to open.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum Spot {
    /// The dryer's outlet.
    Outlet,
    /// The joint where this element begins.
    Before(ElementId),
    /// The hood or cap at the end.
    Hood,
}

/// A text is no name of a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("not a place of the run")]
pub struct NoPlace;

impl core::fmt::Display for Spot {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Outlet => out.write_str("outlet"),
            Self::Hood => out.write_str("hood"),
            Self::Before(element) => element.fmt(out),
        }
    }
}

impl TryFrom<String> for Spot {
    type Error = NoPlace;
    fn try_from(text: String) -> Result<Self, NoPlace> {
        match text.as_str() {
            "outlet" => Ok(Self::Outlet),
            "hood" => Ok(Self::Hood),
            key => ElementId::from_key(key).map(Self::Before).ok_or(NoPlace),
        }
    }
}

impl From<Spot> for String {
    fn from(spot: Spot) -> Self {
        spot.to_string()
    }
}

/// What was cleaned or mended.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum Mended {
    /// The lint screen.
    LintScreen,
    /// The dryer's blower.
    Blower,
    /// The leaking joint.
    Leak,
    /// The way of the air into the room.
    MakeUpAir,
    /// The whole run.
    WholeRun,
    /// One element of the run; of the termination, its flap or its opening.
    Element(ElementId),
}

impl Mended {
    const NAMED: [(Self, &'static str); 5] = [
        (Self::LintScreen, "lint_screen"),
        (Self::Blower, "blower"),
        (Self::Leak, "leak"),
        (Self::MakeUpAir, "make_up_air"),
        (Self::WholeRun, "whole_run"),
    ];
}

impl core::fmt::Display for Mended {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let named = Self::NAMED.iter().find(|(what, _)| what == self);
        match (self, named) {
            (Self::Element(element), _) => element.fmt(out),
            (_, Some((_, name))) => out.write_str(name),
            _ => Ok(()),
        }
    }
}

impl TryFrom<String> for Mended {
    type Error = NoPlace;
    fn try_from(text: String) -> Result<Self, NoPlace> {
        let named = Self::NAMED.into_iter().find(|(_, name)| *name == text);
        named
            .map(|(what, _)| what)
            .or_else(|| ElementId::from_key(&text).map(Self::Element))
            .ok_or(NoPlace)
    }
}

impl From<Mended> for String {
    fn from(mended: Mended) -> Self {
        mended.to_string()
    }
}

/// An element as its name in the file.
pub mod element_key {
    use super::{ElementId, NoPlace};
    use serde::{Deserialize, Deserializer, Serializer, de::Error};

    /// Writes the name.
    pub fn serialize<S: Serializer>(id: &ElementId, out: S) -> Result<S::Ok, S::Error> {
        out.collect_str(id)
    }

    /// Reads it.
    pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<ElementId, D::Error> {
        let key = String::deserialize(from)?;
        ElementId::from_key(&key).ok_or_else(|| D::Error::custom(NoPlace))
    }
}
