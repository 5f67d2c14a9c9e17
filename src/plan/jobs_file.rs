//! Many plans in one file: all the jobs of a browser, to be taken elsewhere.

use super::file::{FileError, from_value, parsed};
use super::{Plan, write};
use serde_json::Value;

const FORMAT: &str = "elbowroom-jobs";
const VERSION: u64 = 1;
/// Some hundred jobs with pictures, bytes.
const LARGEST_FILE: usize = 64 << 20;
/// The most jobs that are read.
const MOST_JOBS: usize = 1000;

/// The plans of a file of jobs, or of a plan's own file; each job that cannot be read stands with its
/// error, so that one does not hold up the others.
///
/// # Errors
///
/// A [`FileError`] where it is neither. `TooLarge` also for more jobs than are read.
///
/// ```
/// use elbowroom::plan::{blank, read_jobs, write_jobs};
/// let plans = [blank("Attic".into()), blank("Basement".into())];
/// let read = read_jobs(write_jobs(&plans).as_bytes()).expect("it was just written");
/// assert!(read.into_iter().eq(plans.into_iter().map(Ok)));
/// ```
pub fn read_jobs(bytes: &[u8]) -> Result<Vec<Result<Plan, FileError>>, FileError> {
    let mut value = parsed(bytes, LARGEST_FILE)?;
    let head = value.as_object_mut().ok_or(FileError::NotAPlan)?;
    if head.get("format").and_then(Value::as_str) != Some(FORMAT) {
        return from_value(value).map(|plan| vec![Ok(plan)]);
    }
    let version = head.get("version");
    if version.and_then(Value::as_u64) != Some(VERSION) {
        return Err(FileError::unknown_version(version, VERSION));
    }
    let Some(Value::Array(jobs)) = head.remove("jobs") else {
        return Err(FileError::NotAPlan);
    };
    if jobs.len() > MOST_JOBS {
        return Err(FileError::TooLarge {
            bytes: bytes.len(),
            limit: LARGEST_FILE,
        });
    }
    Ok(jobs.into_iter().map(from_value).collect())
}

/// `plans` as the text of one file.
pub fn write_jobs<'a>(plans: impl IntoIterator<Item = &'a Plan>) -> String {
    let jobs: Vec<String> = plans.into_iter().map(write).collect();
    let jobs = jobs.join(",\n");
    format!("{{\n\"format\": \"{FORMAT}\",\n\"version\": {VERSION},\n\"jobs\": [\n{jobs}]\n}}\n")
}
