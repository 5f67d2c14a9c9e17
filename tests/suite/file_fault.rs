//! What reading a plan's file comes to, without the words of a library.

use crate::tally::Tally;
use elbowroom::plan::{FileError, ValueError, read};

/// What is wrong with a file, with the place where that can be told.
#[derive(Debug, PartialEq)]
pub enum Fault {
    None,
    TooLarge,
    NotText,
    NotJson,
    NotAPlan,
    Version(String),
    Field(String),
    Range(String),
    BadId(String),
    NoSuchWall(String),
    NoPoints,
    NotSettable(String),
    NotBase64(String),
    TooManyPictures(String, usize),
}

/// A spoilt file: what is wrong with it, its bytes, and the fault that reading it must end in.
pub type Case = (&'static str, Vec<u8>, Fault);

/// What reading `bytes` comes to.
pub fn fault(bytes: &[u8]) -> Fault {
    match read(bytes) {
        Ok(_) => Fault::None,
        Err(FileError::TooLarge { .. }) => Fault::TooLarge,
        Err(FileError::NotText) => Fault::NotText,
        Err(FileError::NotJson { line, .. }) => {
            assert!(line >= 1);
            Fault::NotJson
        }
        Err(FileError::NotAPlan) => Fault::NotAPlan,
        Err(FileError::UnknownVersion { found, known }) => {
            assert_eq!(known, 1);
            Fault::Version(found)
        }
        Err(FileError::Field { path, detail }) => {
            assert!(!detail.is_empty());
            Fault::Field(path)
        }
        Err(FileError::Value(ValueError::OutOfRange { path, .. })) => Fault::Range(path),
        Err(FileError::Value(ValueError::BadId { path })) => Fault::BadId(path),
        Err(FileError::Value(ValueError::NoSuchWall { path })) => Fault::NoSuchWall(path),
        Err(FileError::Value(ValueError::NoPoints)) => Fault::NoPoints,
        Err(FileError::Value(ValueError::NotBase64 { path })) => Fault::NotBase64(path),
        Err(FileError::Value(ValueError::NotSettable { path })) => Fault::NotSettable(path),
        Err(FileError::Value(ValueError::TooManyPictures { path, count, .. })) => {
            Fault::TooManyPictures(path, count)
        }
    }
}

/// Holds the fault of each named case against the one that it must end in.
pub fn check(subject: &'static str, cases: Vec<Case>) {
    let mut tally = Tally::new(subject);
    let count = cases.len();
    for (name, bytes, expected) in cases {
        tally.equal(name, &fault(&bytes), &expected);
    }
    tally.finish(count);
}

pub fn field(path: &str) -> Fault {
    Fault::Field(path.to_owned())
}

pub fn range(path: &str) -> Fault {
    Fault::Range(path.to_owned())
}
