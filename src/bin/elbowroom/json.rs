//! JSON in one line, letter for letter as `serde_json` writes it, in half the time: answers are mostly
//! texts that hold nothing to escape, and names of fields that never do.

use serde::ser::{
    Error as _, Serialize, SerializeMap, SerializeSeq, SerializeStruct, SerializeStructVariant,
    SerializeTuple, SerializeTupleStruct, SerializeTupleVariant, Serializer,
};
use serde_json::Error;

/// Writes `value` to the end of `out`.
pub fn write(out: &mut Vec<u8>, value: &impl Serialize) -> Result<(), Error> {
    value.serialize(Json { out })
}

struct Json<'a> {
    out: &'a mut Vec<u8>,
}

impl<'a> Json<'a> {
    /// What the library writes its own way.
    fn plainly(self, value: &(impl Serialize + ?Sized)) -> Result<(), Error> {
        serde_json::to_writer(self.out, value)
    }

    fn open(self, open: u8, close: &'static [u8]) -> Inside<'a> {
        self.out.push(open);
        Inside {
            out: self.out,
            is_first: true,
            close,
        }
    }

    /// A variant that holds something: an object with its name alone.
    fn variant(self, name: &str) -> Self {
        self.out.push(b'{');
        write_name(self.out, name);
        self
    }
}

fn write_name(out: &mut Vec<u8>, name: &str) {
    out.push(b'"');
    out.extend_from_slice(name.as_bytes());
    out.extend_from_slice(b"\":");
}

/// Whether a text stands in JSON as it is (RFC 8259, section 7). Without a way out in the middle it is
/// many letters at once for the processor.
fn is_plain(text: &str) -> bool {
    let is_escaped = |byte: u8| matches!(byte, 0..0x20 | b'"' | b'\\');
    !text.bytes().fold(false, |any, byte| any | is_escaped(byte))
}

macro_rules! plainly {
    ($($name:ident: $kind:ty),* $(,)?) => {
        $(fn $name(self, value: $kind) -> Result<(), Error> {
            self.plainly(&value)
        })*
    };
}

impl<'a> Serializer for Json<'a> {
    type Ok = ();
    type Error = Error;
    type SerializeSeq = Inside<'a>;
    type SerializeTuple = Inside<'a>;
    type SerializeTupleStruct = Inside<'a>;
    type SerializeTupleVariant = Inside<'a>;
    type SerializeMap = Inside<'a>;
    type SerializeStruct = Inside<'a>;
    type SerializeStructVariant = Inside<'a>;

    plainly! {
        serialize_i8: i8, serialize_i16: i16, serialize_i32: i32, serialize_i64: i64,
        serialize_u8: u8, serialize_u16: u16, serialize_u32: u32, serialize_u64: u64,
        serialize_f32: f32, serialize_f64: f64, serialize_char: char, serialize_bytes: &[u8],
    }

    fn serialize_bool(self, value: bool) -> Result<(), Error> {
        self.out
            .extend_from_slice(if value { b"true" } else { b"false" });
        Ok(())
    }

    fn serialize_str(self, text: &str) -> Result<(), Error> {
        if !is_plain(text) {
            return self.plainly(text);
        }
        self.out.push(b'"');
        self.out.extend_from_slice(text.as_bytes());
        self.out.push(b'"');
        Ok(())
    }

    fn serialize_none(self) -> Result<(), Error> {
        self.serialize_unit()
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), Error> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<(), Error> {
        self.out.extend_from_slice(b"null");
        Ok(())
    }

    fn serialize_unit_struct(self, _: &'static str) -> Result<(), Error> {
        self.serialize_unit()
    }

    fn serialize_unit_variant(
        self,
        _: &'static str,
        _: u32,
        name: &'static str,
    ) -> Result<(), Error> {
        self.serialize_str(name)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        value: &T,
    ) -> Result<(), Error> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        name: &'static str,
        value: &T,
    ) -> Result<(), Error> {
        let Json { out } = self.variant(name);
        value.serialize(Json { out: &mut *out })?;
        out.push(b'}');
        Ok(())
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Inside<'a>, Error> {
        Ok(self.open(b'[', b"]"))
    }

    fn serialize_tuple(self, _: usize) -> Result<Inside<'a>, Error> {
        Ok(self.open(b'[', b"]"))
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Inside<'a>, Error> {
        Ok(self.open(b'[', b"]"))
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        name: &'static str,
        _: usize,
    ) -> Result<Inside<'a>, Error> {
        Ok(self.variant(name).open(b'[', b"]}"))
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Inside<'a>, Error> {
        Ok(self.open(b'{', b"}"))
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Inside<'a>, Error> {
        Ok(self.open(b'{', b"}"))
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        name: &'static str,
        _: usize,
    ) -> Result<Inside<'a>, Error> {
        Ok(self.variant(name).open(b'{', b"}}"))
    }
}

/// Within a list or an object.
struct Inside<'a> {
    out: &'a mut Vec<u8>,
    is_first: bool,
    close: &'static [u8],
}

impl Inside<'_> {
    fn comma(&mut self) {
        if !self.is_first {
            self.out.push(b',');
        }
        self.is_first = false;
    }

    fn item<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
        self.comma();
        value.serialize(Json { out: self.out })
    }

    fn field<T: Serialize + ?Sized>(&mut self, name: &str, value: &T) -> Result<(), Error> {
        self.comma();
        write_name(self.out, name);
        value.serialize(Json { out: self.out })
    }

    #[allow(clippy::unnecessary_wraps, reason = "each of serde's ends may fail")]
    fn close(self) -> Result<(), Error> {
        self.out.extend_from_slice(self.close);
        Ok(())
    }
}

macro_rules! list {
    ($($kind:ident, $item:ident);* $(;)?) => {
        $(impl $kind for Inside<'_> {
            type Ok = ();
            type Error = Error;

            fn $item<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
                self.item(value)
            }

            fn end(self) -> Result<(), Error> {
                self.close()
            }
        })*
    };
}

list! {
    SerializeSeq, serialize_element;
    SerializeTuple, serialize_element;
    SerializeTupleStruct, serialize_field;
    SerializeTupleVariant, serialize_field;
}

macro_rules! object {
    ($($kind:ident),*) => {
        $(impl $kind for Inside<'_> {
            type Ok = ();
            type Error = Error;

            fn serialize_field<T: Serialize + ?Sized>(
                &mut self,
                name: &'static str,
                value: &T,
            ) -> Result<(), Error> {
                self.field(name, value)
            }

            fn end(self) -> Result<(), Error> {
                self.close()
            }
        })*
    };
}

object! { SerializeStruct, SerializeStructVariant }

impl SerializeMap for Inside<'_> {
    type Ok = ();
    type Error = Error;

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), Error> {
        self.comma();
        let before = self.out.len();
        key.serialize(Json { out: self.out })?;
        // A key is a text; nothing that is answered has another.
        if self.out.get(before) != Some(&b'"') {
            return Err(Error::custom("key"));
        }
        self.out.push(b':');
        Ok(())
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
        value.serialize(Json { out: self.out })
    }

    fn end(self) -> Result<(), Error> {
        self.close()
    }
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test stops at what it cannot read")]
mod tests {
    use serde::Serialize;
    use std::collections::BTreeMap;

    #[derive(Serialize)]
    struct All {
        text: &'static str,
        plain: &'static str,
        numbers: Vec<f64>,
        whole: (i64, u8),
        none: Option<u8>,
        some: Option<bool>,
        unit: (),
        map: BTreeMap<&'static str, Kind>,
        #[serde(flatten)]
        inner: Inner,
    }

    #[derive(Serialize)]
    struct Inner {
        letter: char,
        empty: [u8; 0],
    }

    #[derive(Serialize)]
    enum Kind {
        Unit,
        One(f32),
        Two(u16, i8),
        Named { field: Tagged },
    }

    #[derive(Serialize)]
    #[serde(tag = "kind", rename_all = "snake_case")]
    enum Tagged {
        Bare,
        Full { value: Option<f64> },
    }

    #[test]
    fn every_kind_of_value_is_written_as_the_library_writes_it() {
        let map = [
            ("a", Kind::Unit),
            ("b", Kind::One(0.5)),
            ("c", Kind::Two(7, -7)),
            (
                "d",
                Kind::Named {
                    field: Tagged::Bare,
                },
            ),
            (
                "e \"quoted\"",
                Kind::Named {
                    field: Tagged::Full { value: Some(-0.0) },
                },
            ),
        ];
        let all = All {
            text: "\u{0} \u{1f} \n \" \\ / \u{7f} \u{e9} \u{2028} \u{1f300}",
            plain: "as it is: \u{e9}\u{1f300}",
            numbers: vec![0.1, 1.0, -0.0, 1e300, 5e-324, f64::NAN, f64::INFINITY],
            whole: (i64::MIN, 255),
            none: None,
            some: Some(true),
            unit: (),
            map: map.into(),
            inner: Inner {
                letter: '"',
                empty: [],
            },
        };
        let mut out = b"before".to_vec();
        super::write(&mut out, &all).expect("it can be written");
        let expected = serde_json::to_string(&all).expect("it can be written");
        assert_eq!(
            String::from_utf8(out).expect("it is text"),
            format!("before{expected}")
        );
        let mut out = Vec::new();
        assert!(super::write(&mut out, &BTreeMap::from([(vec![1], 2)])).is_err());
    }
}
