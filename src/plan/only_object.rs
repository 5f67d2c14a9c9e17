//! A record whose fields can all be left out is read from an object alone: by itself it would take a list
//! too.

use core::fmt::{Formatter, Result as FormatResult};
use core::marker::PhantomData;
use serde::de::value::MapAccessDeserializer;
use serde::de::{Deserialize, Deserializer, MapAccess, Visitor};

/// Reads a record from an object, and from nothing else.
pub(super) fn read<'de, T: Deserialize<'de>, D: Deserializer<'de>>(
    reader: D,
) -> Result<T, D::Error> {
    struct Object<T>(PhantomData<T>);
    impl<'de, T: Deserialize<'de>> Visitor<'de> for Object<T> {
        type Value = T;
        fn expecting(&self, out: &mut Formatter<'_>) -> FormatResult {
            out.write_str("an object")
        }
        fn visit_map<A: MapAccess<'de>>(self, fields: A) -> Result<T, A::Error> {
            T::deserialize(MapAccessDeserializer::new(fields))
        }
    }
    reader.deserialize_map(Object(PhantomData))
}
