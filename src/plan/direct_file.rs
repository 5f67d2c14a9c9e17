//! A plan's file read straight into a plan, with no tree of JSON between: for programs that read many
//! thousands. What it refuses is read again the plain way, which alone says what is wrong.

use super::file::{FORMAT, LARGEST_FILE, VERSION};
use super::{FileError, Plan, read, validate};
use serde::de::value::CowStrDeserializer;
use serde::de::{DeserializeSeed, Error as _, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, forward_to_deserialize_any};
use serde_json::Value;
use std::borrow::Cow;
use std::fmt;

/// Reads a plan just as [`read`] does, in less time and with more code.
///
/// ```
/// use elbowroom::plan::{blank, read, read_directly, write};
/// let text = write(&blank("Attic".into()));
/// assert_eq!(read_directly(text.as_bytes()), read(text.as_bytes()));
/// ```
pub fn read_directly(bytes: &[u8]) -> Result<Plan, FileError> {
    direct(bytes).map_or_else(|| read(bytes), Ok)
}

fn direct(bytes: &[u8]) -> Option<Plan> {
    let text = core::str::from_utf8(bytes).ok();
    let text = text.filter(|text| text.len() <= LARGEST_FILE)?;
    let mut head = Head::default();
    let mut json = serde_json::Deserializer::from_str(text);
    let plan = Plan::deserialize(Headed {
        inner: &mut json,
        head: &mut head,
    });
    let plan = plan.ok()?;
    json.end().ok()?;
    let is_plan = head.format.as_ref().and_then(Value::as_str) == Some(FORMAT)
        && head.version.as_ref().and_then(Value::as_u64) == Some(VERSION);
    (is_plan && validate(&plan).is_ok()).then_some(plan)
}

/// The fields of a file that are no part of the plan.
#[derive(Default)]
struct Head {
    format: Option<Value>,
    version: Option<Value>,
}

/// Hands a plan its fields and keeps those of the head.
struct Headed<'h, D> {
    inner: D,
    head: &'h mut Head,
}

impl<'de, D: Deserializer<'de>> Deserializer<'de> for Headed<'_, D> {
    type Error = D::Error;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, D::Error> {
        self.inner.deserialize_map(HeadedVisitor {
            inner: visitor,
            head: self.head,
        })
    }

    forward_to_deserialize_any! {
        bool i8 i16 char i32 str i64 string i128 bytes u8 byte_buf u16 option u32 unit u64 unit_struct
        u128 newtype_struct f32 seq f64 tuple tuple_struct map struct enum identifier ignored_any
    }
}

struct HeadedVisitor<'h, V> {
    inner: V,
    head: &'h mut Head,
}

impl<'de, V: Visitor<'de>> Visitor<'de> for HeadedVisitor<'_, V> {
    type Value = V::Value;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.inner.expecting(out)
    }

    fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<V::Value, A::Error> {
        self.inner.visit_map(HeadedMap {
            inner: map,
            head: self.head,
        })
    }
}

struct HeadedMap<'h, A> {
    inner: A,
    head: &'h mut Head,
}

impl<'de, A: MapAccess<'de>> MapAccess<'de> for HeadedMap<'_, A> {
    type Error = A::Error;

    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, A::Error> {
        while let Some(Key(key)) = self.inner.next_key()? {
            let place = match &*key {
                "format" => &mut self.head.format,
                "version" => &mut self.head.version,
                _ => return seed.deserialize(CowStrDeserializer::new(key)).map(Some),
            };
            // Of a field that stands twice the plain reader takes the last.
            if place.replace(self.inner.next_value()?).is_some() {
                return Err(A::Error::duplicate_field("head"));
            }
        }
        Ok(None)
    }

    fn next_value_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<S::Value, A::Error> {
        self.inner.next_value_seed(seed)
    }
}

/// A field's name, borrowed where it holds nothing escaped.
#[derive(Deserialize)]
struct Key<'a>(#[serde(borrow)] Cow<'a, str>);
