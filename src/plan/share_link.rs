//! A whole job in a link: its file, compressed, in letters that an address can hold, behind the `#`,
//! which a browser never sends to a server.

use super::file::{compact, read};
use super::{FileError, Plan};
use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::deflate::compress_to_vec_zlib;
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::{
    TINFL_FLAG_PARSE_ZLIB_HEADER, TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF,
};
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};
use serde::{Deserialize, Serialize};

/// Stands before the version.
const MARK: &str = "job-";
const VERSION: &str = "1";
/// Stands after the version.
const END_OF_MARK: char = '.';
/// The longest link, in letters, its address included. RFC 9112, section 3, recommends that what speaks
/// HTTP takes request lines of 8,000 octets at least, so what handles addresses is made for such;
/// that some messengers cut earlier is common practice, no source.
pub const LONGEST_LINK: usize = 8000;
/// The largest job that a link may unfold to, bytes: ten times what so short a link holds of any drawn
/// plan, and little enough that a hostile one fills no memory.
const LARGEST_JOB: usize = 256 << 10;
/// The closest packing; a link is made seldom.
const LEVEL: u8 = 10;

/// Why there is no link, or no job in one. The open plan stays as it is.
#[derive(Debug, Clone, PartialEq, thiserror::Error, Serialize, Deserialize)]
#[error("{self:?}")]
pub enum LinkError {
    /// More letters than a link may have.
    TooLong {
        /// What it has.
        letters: usize,
        /// The most that it may have.
        limit: usize,
    },
    /// It does not say that it holds a job.
    NotAJob,
    /// A version that this program does not know.
    UnknownVersion {
        /// The version found.
        found: String,
        /// The version that is read.
        known: String,
    },
    /// A letter that no link has, as where a messenger broke it in two.
    StrangeLetter {
        /// How many letters stand before it behind the mark.
        after: usize,
    },
    /// It ends too early: a part was cut off.
    CutShort {
        /// How many letters there are behind the mark.
        letters: usize,
    },
    /// It is whole in form, but not what was sent: a letter was changed.
    Damaged,
    /// It unfolds to more than a job can be.
    TooLarge {
        /// The most that is unfolded, bytes.
        limit: usize,
    },
    /// What it holds is no plan that can be read.
    Plan(FileError),
}

/// The link to `plan`, its pictures left out, behind the page's own `address`.
///
/// # Errors
///
/// [`LinkError::TooLong`], or [`LinkError::TooLarge`] for a job that is larger than is read again.
///
/// ```
/// use elbowroom::plan::{blank, read_link, write_link};
/// let plan = blank("Attic".into());
/// let link = write_link(&plan, "https://a.page/").expect("a small job");
/// let (address, fragment) = link.split_once('#').expect("a mark between the two");
/// assert_eq!(address, "https://a.page/");
/// assert_eq!(read_link(fragment), Ok(plan));
/// ```
pub fn write_link(plan: &Plan, address: &str) -> Result<String, LinkError> {
    let text = compact(&plan.without_pictures());
    if text.len() > LARGEST_JOB {
        return Err(LinkError::TooLarge { limit: LARGEST_JOB });
    }
    let packed = URL_SAFE_NO_PAD.encode(compress_to_vec_zlib(text.as_bytes(), LEVEL));
    let link = format!("{address}#{MARK}{VERSION}{END_OF_MARK}{packed}");
    within_length(&link)?;
    Ok(link)
}

/// Whether what stands behind an address's `#` says that it is a job.
pub fn is_link(fragment: &str) -> bool {
    fragment.starts_with(MARK)
}

/// The job in what stands behind a link's `#`.
///
/// # Errors
///
/// A [`LinkError`] for anything else.
pub fn read_link(fragment: &str) -> Result<Plan, LinkError> {
    within_length(fragment)?;
    let marked = fragment.strip_prefix(MARK).ok_or(LinkError::NotAJob)?;
    let (version, packed) = marked
        .split_once(END_OF_MARK)
        .ok_or(LinkError::CutShort { letters: 0 })?;
    if version != VERSION {
        /// So much of a foreign version is told.
        const TOLD: usize = 20;
        return Err(LinkError::UnknownVersion {
            found: version.chars().take(TOLD).collect(),
            known: VERSION.to_owned(),
        });
    }
    let strange = |letter: char| !(letter.is_ascii_alphanumeric() || matches!(letter, '-' | '_'));
    if let Some(after) = packed.chars().position(strange) {
        return Err(LinkError::StrangeLetter { after });
    }
    let bytes = URL_SAFE_NO_PAD
        .decode(packed)
        .map_err(|_| LinkError::CutShort {
            letters: packed.len(),
        })?;
    let text = unfolded(&bytes).map_err(|why| match why {
        TINFLStatus::HasMoreOutput => LinkError::TooLarge { limit: LARGEST_JOB },
        TINFLStatus::FailedCannotMakeProgress | TINFLStatus::NeedsMoreInput => {
            LinkError::CutShort {
                letters: packed.len(),
            }
        }
        _ => LinkError::Damaged,
    })?;
    read(&text).map_err(LinkError::Plan)
}

fn within_length(link: &str) -> Result<(), LinkError> {
    let letters = link.chars().count();
    if letters > LONGEST_LINK {
        return Err(LinkError::TooLong {
            letters,
            limit: LONGEST_LINK,
        });
    }
    Ok(())
}

/// What `bytes` unfold to, checked against the sum at their end; nothing may stand behind that.
fn unfolded(bytes: &[u8]) -> Result<Vec<u8>, TINFLStatus> {
    let flags = TINFL_FLAG_PARSE_ZLIB_HEADER | TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
    let mut out = vec![0; LARGEST_JOB];
    let mut state = Box::new(DecompressorOxide::new());
    let (status, taken, given) = decompress(&mut state, bytes, &mut out, 0, flags);
    match status {
        TINFLStatus::Done if taken == bytes.len() => {
            out.truncate(given);
            Ok(out)
        }
        TINFLStatus::Done => Err(TINFLStatus::Failed),
        other => Err(other),
    }
}
